"""Light on crowns, rows and beds: which casters stand between each point and each position of the sun.

Time lost is shared out among the casters in proportion to their optical depth on each ray. That rule does
not depend on any order, and the shares add up to exactly what is missing.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Mapping, Sequence
from typing import Any

import numpy as np
from attrs import field, frozen
from numpy.typing import NDArray

from yardplan.sun.casters import Caster, Crown, Prism
from yardplan.sun.leaves import DEPTH_UNIT, OPAQUE, depths
from yardplan.sun.parameters import Shape
from yardplan.sun.position import Floats
from yardplan.sun.rays import (
    Crowns,
    Drums,
    Faces,
    Rays,
    crown_columns,
    crown_hits,
    drum_about,
    drums_of,
    face_columns,
    may_hit,
    prism_hits,
)
from yardplan.sun.targets import PATTERNS, Target
from yardplan.yard.ground import Point

Ints = NDArray[np.signedinteger[Any]]
Bools = NDArray[np.bool_]


@frozen(eq=False)
class Sun:
    """Where the sun stands for a set of positions that reach the yard.

    `true` (n, 3) directions on the drawing; `level` the same from ground made level; `months` 0 to 11;
    `weights` (tallies, n), the season's hours first; `patterns` the points each position takes.
    """

    true: Floats
    level: Floats
    months: Ints
    weights: Floats
    patterns: Ints = field()

    def __len__(self) -> int:
        return len(self.true)

    def part(self, start: int, end: int) -> Sun:
        """Some of the positions in a row."""
        cut = slice(start, end)
        weights, patterns = self.weights[:, cut], self.patterns[cut]
        return Sun(self.true[cut], self.level[cut], self.months[cut], weights, patterns)


@frozen(eq=False)
class Surfaces:
    """Targets as arrays: `points` and `areas` (p, patterns, k, 3), drums about them, their ids."""

    ids: tuple[str, ...]
    points: Floats
    areas: Floats
    drums: Drums

    def __len__(self) -> int:
        return len(self.ids)

    @property
    def number(self) -> int:
        """Points of a target that count at one position."""
        return int(self.points.shape[2])

    def shown_to(self, sun: Sun) -> Floats:
        """Share of each surface's lit side that each point stands for, (p, n, k); they add up to 1."""
        shown = np.empty((len(self), len(sun), self.number))
        for pattern in range(PATTERNS):
            own = sun.patterns == pattern
            shown[:, own] = np.einsum("pkd,nd->pnk", self.areas[:, pattern], sun.true[own], optimize=True)
        np.maximum(shown, 0.0, out=shown)
        total = shown.sum(axis=2, keepdims=True)
        dark = total <= 0.0
        shown += dark / self.number
        return np.asarray(shown / np.where(dark, 1.0, total))


def surfaces_of(targets: Sequence[Target], number: int) -> Surfaces:
    """Arrays of the points of several targets, `number` points each."""
    points = np.array([t.points for t in targets]).reshape(-1, PATTERNS, number, 3)
    areas = np.array([t.areas for t in targets]).reshape(-1, PATTERNS, number, 3)
    about = [drum_about(part.reshape(-1, 3)) for part in points]
    centres = np.array([centre for centre, _, _ in about]).reshape(-1, 3)
    wide, tall = (np.array([drum[axis] for drum in about], dtype=np.float64) for axis in (1, 2))
    return Surfaces(tuple(t.id for t in targets), points, areas, Drums(centres, wide, tall))


@frozen(eq=False)
class Blocks:
    """Rays that meet a caster: flat index (target, position, point), owner, depth; all of one length."""

    ray: Ints
    owner: Ints
    depth: Ints

    def of(self, keep: Bools) -> Blocks:
        """Some of them."""
        return Blocks(self.ray[keep], self.owner[keep], self.depth[keep])


def joined_blocks(parts: Sequence[Blocks]) -> Blocks:
    """Several sets one after the other."""
    if not parts:
        none = np.empty(0, dtype=np.int64)
        return Blocks(none, none, none)
    return Blocks(
        np.concatenate([p.ray for p in parts]), np.concatenate([p.owner for p in parts]),
        np.concatenate([p.depth for p in parts]),
    )


@frozen(eq=False)
class Batch:
    """Casters tested together: crowns of one shape, or solids with one number of faces."""

    owners: tuple[str, ...]
    shape: Shape | None
    columns: Crowns | Faces
    drums: Drums
    depths: Ints

    def hits(self, which: Ints, rays: Rays) -> Bools:
        """Rays (m, k) met by one caster a bundle."""
        if self.shape is not None and isinstance(self.columns, Crowns):
            return crown_hits(self.shape, self.columns.taken(which), rays)
        return prism_hits(self.columns.taken(which), rays)  # type: ignore[arg-type]

    def near(self, which: Ints, rays: Rays, margin: Floats) -> Bools:
        """Bundles whose middle ray (m, 1) passes within a margin; crowns have their drum for that."""
        if isinstance(self.columns, Crowns):
            return np.ones(len(which), dtype=bool)
        return prism_hits(self.columns.taken(which), rays, margin[:, None])[:, 0]


#: Casters looked at in one go; keeps the first look small.
_TOGETHER = 6
#: Bundles of rays tested in one go, so that their figures stay in the cache.
_BUNDLES = 1024


def batches_of(casters: Sequence[Caster], gradient: Point, together: int = _TOGETHER) -> list[Batch]:
    """Casters sorted into batches of at most `together`, ready for tests."""
    sorts: dict[Shape | int, list[Caster]] = {}
    for caster in casters:
        key = caster.shape if isinstance(caster, Crown) else len(caster.solid.offsets)
        sorts.setdefault(key, []).append(caster)
    return [
        _batch(group[start : start + together], key if isinstance(key, str) else None, gradient)
        for key, group in sorts.items() for start in range(0, len(group), together)
    ]


def _batch(group: Sequence[Caster], shape: Shape | None, gradient: Point) -> Batch:
    columns: Crowns | Faces
    if shape is None:
        columns = face_columns([c for c in group if isinstance(c, Prism)])
    else:
        columns = crown_columns([c for c in group if isinstance(c, Crown)])
    return Batch(
        tuple(c.owner for c in group), shape, columns, drums_of(group, gradient),
        np.array([depths(c.light) for c in group], dtype=np.int64),
    )


class Blocker:
    """Finds the rays that casters stand in the way of. `owners` numbers the ids that can take light."""

    def __init__(self, surfaces: Surfaces, sun: Sun, gradient: Point, owners: Mapping[str, int]) -> None:
        self.surfaces, self.sun, self.gradient, self.owners = surfaces, sun, gradient, owners
        self._ids = np.array([owners.get(key, -1) for key in surfaces.ids], dtype=np.int64)

    def blocks(self, batches: Sequence[Batch]) -> Blocks:
        """All rays that the casters meet; a thing's own crown is never in its way."""
        if not len(self.surfaces) or not len(self.sun):
            return joined_blocks([])
        return self._once(joined_blocks([self._batch_blocks(batch) for batch in batches]), batches)

    def _once(self, blocks: Blocks, batches: Sequence[Batch]) -> Blocks:
        """Pieces of one opaque thing count once on a ray."""
        pieces = Counter(
            owner for batch in batches
            for owner, depth in zip(batch.owners, batch.depths, strict=True) if depth.min() >= OPAQUE
        )
        many = [self.owners[owner] for owner, number in pieces.items() if number > 1]
        if not many:
            return blocks
        twice = np.isin(blocks.owner, many)
        of_many = blocks.of(twice)
        _, first = np.unique(of_many.ray * (max(many) + 1) + of_many.owner, return_index=True)
        return joined_blocks([
            blocks.of(~twice), Blocks(of_many.ray[first], of_many.owner[first], of_many.depth[first])
        ])

    def _batch_blocks(self, batch: Batch) -> Blocks:
        drums, sun = self.surfaces.drums, self.sun
        owners = np.array([self.owners[owner] for owner in batch.owners])
        caster, target, beam = may_hit(batch.drums, drums, sun.level)
        foreign = owners[caster] != self._ids[target]
        caster, target, beam = caster[foreign], target[foreign], beam[foreign]
        middle = Rays(drums.centres[target][:, None, :], sun.level[beam][:, None, :], self.gradient)
        closer = batch.near(caster, middle, drums.radii[target])
        caster, target, beam = caster[closer], target[closer], beam[closer]
        bundle, point = self._met(batch, caster, target, beam)
        depth = batch.depths[caster[bundle], sun.months[beam[bundle]]]
        ray = (target[bundle] * len(sun) + beam[bundle]) * self.surfaces.number + point
        return Blocks(ray, owners[caster[bundle]], depth).of(depth > 0)

    def _met(self, batch: Batch, caster: Ints, target: Ints, beam: Ints) -> tuple[Ints, Ints]:
        """Bundles and points of the rays that meet their caster, a cacheful at a time."""
        met = np.zeros((len(caster), self.surfaces.number), dtype=bool)
        for start in range(0, len(caster), _BUNDLES):
            cut = slice(start, start + _BUNDLES)
            directions = self.sun.level[beam[cut]][:, None, :]
            points = self.surfaces.points[target[cut], self.sun.patterns[beam[cut]]]
            rays = Rays(points, directions, self.gradient)
            met[cut] = batch.hits(caster[cut], rays)
        bundle, point = np.nonzero(met)
        return bundle, point


@frozen(eq=False)
class Exposure:
    """Light of targets: `hours` (p, tallies) by the sun's weights, `losses` (p, owners) of season hours."""

    hours: Floats
    losses: Floats


def sums(index: Ints, values: Floats | Ints, size: int) -> Floats:
    """Values added up by index, float64 (size,)."""
    return np.bincount(index, weights=values, minlength=size).astype(np.float64, copy=False)


def exposure_of(shown: Floats, blocks: Blocks, sun: Sun, owners: int) -> Exposure:
    """Sum up rays. `shown` (p, n, k) from `Surfaces.shown_to`; rays of `blocks` index into it."""
    targets, beams, number = shown.shape
    depth = sums(blocks.ray, blocks.depth, shown.size)
    lost = shown.reshape(-1) * -np.expm1(depth * (-1.0 / DEPTH_UNIT))
    per_beam = 1.0 - lost.reshape(targets, beams, number).sum(axis=2)
    beam = blocks.ray // number % beams
    share = lost[blocks.ray] * blocks.depth / depth[blocks.ray] * sun.weights[0][beam]
    key = blocks.ray // (number * beams) * owners + blocks.owner
    losses = sums(key, share, targets * owners).reshape(targets, owners)
    return Exposure(per_beam @ sun.weights.T, losses)
