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
from yardplan.sun.leaves import DEPTH_UNIT, depths
from yardplan.sun.parameters import Shape
from yardplan.sun.position import Floats
from yardplan.sun.rays import (
    Balls,
    Rays,
    balls_of,
    crown_columns,
    crown_hits,
    face_columns,
    may_hit,
    prism_hits,
)
from yardplan.sun.targets import Target
from yardplan.yard.ground import Point

Ints = NDArray[np.signedinteger[Any]]
Bools = NDArray[np.bool_]


@frozen(eq=False)
class Sun:
    """Where the sun stands for a set of positions that reach the yard.

    `true` (n, 3) directions on the drawing; `level` the same from ground made level; `months` 0 to 11;
    `weights` (tallies, n), the season's hours first.
    """

    true: Floats
    level: Floats
    months: Ints
    weights: Floats = field()

    def __len__(self) -> int:
        return len(self.true)

    def part(self, start: int, end: int) -> Sun:
        """Some of the positions in a row."""
        cut = slice(start, end)
        return Sun(self.true[cut], self.level[cut], self.months[cut], self.weights[:, cut])


@frozen(eq=False)
class Surfaces:
    """Targets as arrays: `points` (p, k, 3), `areas` (p, k, 3), balls about them, their ids."""

    ids: tuple[str, ...]
    points: Floats
    areas: Floats
    balls: Balls

    def __len__(self) -> int:
        return len(self.ids)

    def shown_to(self, sun: Sun) -> Floats:
        """Share of each surface's lit side that each point stands for, (p, n, k); they add up to 1."""
        shown = np.maximum(np.einsum("pkd,nd->pnk", self.areas, sun.true, optimize=True), 0.0)
        total = shown.sum(axis=2, keepdims=True)
        dark = total <= 0.0
        shown += dark / self.points.shape[1]
        return np.asarray(shown / np.where(dark, 1.0, total))


def surfaces_of(targets: Sequence[Target], number: int) -> Surfaces:
    """Arrays of the points of several targets, `number` points each."""
    points = np.array([t.points for t in targets]).reshape(-1, number, 3)
    areas = np.array([t.areas for t in targets]).reshape(-1, number, 3)
    centres = np.array([t.centre for t in targets]).reshape(-1, 3)
    return Surfaces(
        tuple(t.id for t in targets), points, areas, Balls(centres, np.array([t.reach for t in targets]))
    )


@frozen(eq=False)
class Blocks:
    """Rays that meet a caster: flat index (target, position, point), owner number, depth; all of one length."""

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
class _Batch:
    """Casters tested together: crowns of one shape, or solids with one number of faces."""

    casters: Sequence[Caster]
    shape: Shape | None

    def hits(self, which: Ints, rays: Rays) -> Bools:
        """Rays (m, k) met by one caster a bundle."""
        if self.shape is None:
            prisms = [c for c in self.casters if isinstance(c, Prism)]
            return prism_hits(face_columns(prisms).taken(which), rays)
        crowns = [c for c in self.casters if isinstance(c, Crown)]
        return crown_hits(self.shape, crown_columns(crowns).taken(which), rays)

    def near(self, which: Ints, rays: Rays, margin: Floats) -> Bools:
        """Bundles whose middle ray (m, 1) passes within a margin; crowns have their ball for that."""
        if self.shape is not None:
            return np.ones(len(which), dtype=bool)
        prisms = [c for c in self.casters if isinstance(c, Prism)]
        return prism_hits(face_columns(prisms).taken(which), rays, margin[:, None])[:, 0]


def _batches(casters: Sequence[Caster]) -> list[_Batch]:
    sorts: dict[Shape | int, list[Caster]] = {}
    for caster in casters:
        key = caster.shape if isinstance(caster, Crown) else len(caster.solid.offsets)
        sorts.setdefault(key, []).append(caster)
    return [
        _Batch(group[start : start + _TOGETHER], key if isinstance(key, str) else None)
        for key, group in sorts.items() for start in range(0, len(group), _TOGETHER)
    ]


#: Casters looked at in one go; keeps the first look small.
_TOGETHER = 24


class Blocker:
    """Finds the rays that casters stand in the way of. `owners` numbers the ids that can take light."""

    def __init__(self, surfaces: Surfaces, sun: Sun, gradient: Point, owners: Mapping[str, int]) -> None:
        self.surfaces, self.sun, self.gradient, self.owners = surfaces, sun, gradient, owners

    def blocks(self, casters: Sequence[Caster]) -> Blocks:
        """All rays that the casters meet; a thing's own crown is never in its way."""
        if not len(self.surfaces) or not len(self.sun):
            return joined_blocks([])
        return self._once(joined_blocks([self._batch_blocks(batch) for batch in _batches(casters)]), casters)

    def _once(self, blocks: Blocks, casters: Sequence[Caster]) -> Blocks:
        """Pieces of one opaque thing count once on a ray."""
        pieces = Counter(c.owner for c in casters if max(c.light) <= 0.0)
        many = [self.owners[owner] for owner, number in pieces.items() if number > 1]
        if not many:
            return blocks
        twice = np.isin(blocks.owner, many)
        of_many = blocks.of(twice)
        _, first = np.unique(of_many.ray * (max(many) + 1) + of_many.owner, return_index=True)
        kept = Blocks(of_many.ray[first], of_many.owner[first], of_many.depth[first])
        return joined_blocks([blocks.of(~twice), kept])

    def _foreign(self, batch: _Batch) -> Bools:
        """Casters against targets (c, p): True unless one is the other's own."""
        own = np.array([c.owner for c in batch.casters], dtype=object)
        return np.asarray(own[:, None] != np.array(self.surfaces.ids, dtype=object)[None, :])

    def _batch_blocks(self, batch: _Batch) -> Blocks:
        balls, sun = self.surfaces.balls, self.sun
        near = may_hit(balls_of(batch.casters, self.gradient), balls, sun.level)
        near &= self._foreign(batch)[:, :, None]
        caster, target, beam = np.nonzero(near)
        middle = Rays(balls.centres[target][:, None, :], sun.level[beam][:, None, :], self.gradient)
        closer = batch.near(caster, middle, balls.radii[target])
        caster, target, beam = caster[closer], target[closer], beam[closer]
        rays = Rays(self.surfaces.points[target], sun.level[beam][:, None, :], self.gradient)
        bundle, point = np.nonzero(batch.hits(caster, rays))
        depth_of = np.array([depths(c.light) for c in batch.casters], dtype=np.int64)
        depth = depth_of[caster[bundle], sun.months[beam[bundle]]]
        owner = np.array([self.owners[c.owner] for c in batch.casters])[caster[bundle]]
        number = self.surfaces.points.shape[1]
        ray = (target[bundle] * len(sun) + beam[bundle]) * number + point
        return Blocks(ray, owner, depth).of(depth > 0)


@frozen(eq=False)
class Exposure:
    """Light of targets: `hours` (p, tallies) by the sun's weights, `losses` (p, owners) of the season's hours."""

    hours: Floats
    losses: Floats


def exposure_of(shown: Floats, blocks: Blocks, sun: Sun, owners: int) -> Exposure:
    """Sum up rays. `shown` (p, n, k) from `Surfaces.shown_to`; rays of `blocks` index into it."""
    targets, beams, number = shown.shape
    depth = np.bincount(blocks.ray, weights=blocks.depth, minlength=shown.size)
    lost = shown.reshape(-1) * -np.expm1(depth * (-1.0 / DEPTH_UNIT))
    per_beam = 1.0 - lost.reshape(targets, beams, number).sum(axis=2)
    beam = blocks.ray // number % beams
    share = lost[blocks.ray] * blocks.depth / depth[blocks.ray] * sun.weights[0][beam]
    key = blocks.ray // (number * beams) * owners + blocks.owner
    losses = np.bincount(key, weights=share, minlength=targets * owners).reshape(targets, owners)
    return Exposure(per_beam @ sun.weights.T, losses.astype(np.float64))
