"""Light on crowns, rows and beds: which casters stand between each point and each position of the sun.

Time lost is shared out among the casters in proportion to their optical depth on each ray. That rule does
not depend on any order, and the shares add up to exactly what is missing.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import Any

import numpy as np
from attrs import field, frozen
from numpy.typing import NDArray

from yardplan.sun.casters import Caster, Crown, Prism
from yardplan.sun.leaves import DEPTH_UNIT, depths
from yardplan.sun.position import Floats
from yardplan.sun.rays import Balls, Rays, balls_of, hits, hits_prism, may_hit
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


def _groups(casters: Iterable[Caster]) -> list[list[Caster]]:
    """Casters that count once on a ray: all pieces of an opaque thing together, any other on its own."""
    solid: dict[str, list[Caster]] = {}
    alone: list[list[Caster]] = []
    for caster in casters:
        if isinstance(caster, Prism) and max(caster.light) <= 0.0:
            solid.setdefault(caster.owner, []).append(caster)
        else:
            alone.append([caster])
    return [*solid.values(), *alone]


class Blocker:
    """Finds the rays that casters stand in the way of. `owners` numbers the ids that can take light."""

    def __init__(self, surfaces: Surfaces, sun: Sun, gradient: Point, owners: dict[str, int]) -> None:
        self.surfaces, self.sun, self.gradient, self.owners = surfaces, sun, gradient, owners

    def blocks(self, casters: Sequence[Caster], wanted: Bools | None = None) -> Blocks:
        """All rays to the `wanted` targets (p,) that the casters meet."""
        chosen = np.ones(len(self.surfaces), dtype=bool) if wanted is None else wanted
        parts = []
        for group in _groups(casters):
            owner = group[0].owner
            others = chosen & (np.array(self.surfaces.ids, dtype=object) != owner)
            found = [ray for caster in group if len(ray := self._rays(caster, others))]
            if found:
                ray = found[0] if len(found) == 1 else np.unique(np.concatenate(found))
                parts.append(self._block(ray, group[0]))
        return joined_blocks(parts)

    def _block(self, ray: Ints, caster: Caster) -> Blocks:
        beam = ray // self.surfaces.points.shape[1] % len(self.sun)
        depth = depths(caster.light)[self.sun.months[beam]].astype(np.int64)
        kept = depth > 0
        return Blocks(ray[kept], np.full(int(kept.sum()), self.owners[caster.owner]), depth[kept])

    def _near(self, caster: Caster, wanted: Bools) -> tuple[Ints, Ints]:
        """Targets and positions for which a closer look is needed."""
        which = np.flatnonzero(wanted)
        balls = self.surfaces.balls
        if isinstance(caster, Crown):
            own = balls_of([caster], self.gradient)
            around = Balls(balls.centres[which], balls.radii[which])
            # Seen from the caster the target lies the other way: turn the rays round.
            near = may_hit(around, own.centres[0], float(own.radii[0]), -self.sun.level)
        else:
            rays = Rays(balls.centres[which][:, None, :], self.sun.level[None, :, :], self.gradient)
            near = hits_prism(caster, rays, balls.radii[which][:, None])
        target, beam = np.nonzero(near)
        return which[target], beam

    def _rays(self, caster: Caster, wanted: Bools) -> Ints:
        """Flat indices of the rays that meet one caster."""
        target, beam = self._near(caster, wanted)
        if len(target) == 0:
            return target
        rays = Rays(self.surfaces.points[target], self.sun.level[beam][:, None, :], self.gradient)
        pair, point = np.nonzero(hits(caster, rays))
        number = self.surfaces.points.shape[1]
        return np.asarray((target[pair] * len(self.sun) + beam[pair]) * number + point)


@frozen(eq=False)
class Exposure:
    """Light of targets: `hours` (p, tallies) by the sun's weights, `losses` (p, owners) of the season's hours."""

    hours: Floats
    losses: Floats


def exposure_of(shown: Floats, blocks: Blocks, sun: Sun, owners: int) -> Exposure:
    """Sum up rays. `shown` (p, n, k) from `Surfaces.shown_to`; rays of `blocks` index into it."""
    targets, beams, number = shown.shape
    rays, where = np.unique(blocks.ray, return_inverse=True)
    depth = np.bincount(where, weights=blocks.depth, minlength=len(rays))
    lost = shown.reshape(-1)[rays] * (1.0 - np.exp(depth * (-1.0 / DEPTH_UNIT)))
    beam = rays // number
    per_beam = 1.0 - np.bincount(beam, weights=lost, minlength=targets * beams).reshape(targets, beams)
    season = lost * sun.weights[0][beam % beams]
    share = season[where] * blocks.depth / depth[where]
    key = blocks.ray // (number * beams) * owners + blocks.owner
    losses = np.bincount(key, weights=share, minlength=targets * owners).reshape(targets, owners)
    return Exposure(per_beam @ sun.weights.T, losses)


