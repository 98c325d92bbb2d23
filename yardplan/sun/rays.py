"""Which casters stand between a point and the sun: rays against solids, in closed form.

Rays run from a point (height above the ground under it) towards the sun. For a crown they are taken back to
true space about its trunk, where z = height + gradient . (p - trunk) and the crown stands upright; flat-faced
solids are kept on ground made level, where the sun's height is s_z - gradient . s_xy.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence

import numpy as np
from attrs import frozen
from numpy.typing import NDArray

from yardplan.sun.casters import Caster, Crown, Prism
from yardplan.sun.position import Floats
from yardplan.yard.ground import Point

Bools = NDArray[np.bool_]
#: A hit must end at least this far ahead of the point, metres.
AHEAD = 1e-9
_NOTHING = 1e-15


@frozen(eq=False)
class Rays:
    """Points (n, 3) and directions (n, 3), both on the drawing with z above the ground made level."""

    points: Floats
    directions: Floats
    gradient: Point

    def true_height(self, about: Point) -> tuple[Floats, Floats, Floats, Floats, Floats, Floats]:
        """Points from a trunk's foot and directions in true space: x, y, z, dx, dy, dz."""
        gx, gy = self.gradient
        x, y = self.points[..., 0] - about[0], self.points[..., 1] - about[1]
        dx, dy, dz = (self.directions[..., axis] for axis in range(3))
        return x, y, self.points[..., 2] + gx * x + gy * y, dx, dy, dz + gx * dx + gy * dy


Span = tuple[Floats, Floats]


def _quadratic(a: Floats, half_b: Floats, c: Floats) -> tuple[Floats, Floats, Bools]:
    """Roots of a t^2 + 2 half_b t + c in order, and where they are real. `a` may be of either sign."""
    a = np.where(np.abs(a) < _NOTHING, _NOTHING, a)
    inside = half_b**2 - a * c
    root = np.sqrt(np.maximum(inside, 0.0))
    one, two = (-half_b - root) / a, (-half_b + root) / a
    return np.minimum(one, two), np.maximum(one, two), inside > 0.0


def _slab(z: Floats, dz: Floats, low: float, high: float) -> Span:
    """Where a climbing ray lies between two heights."""
    return (low - z) / dz, (high - z) / dz


def _ball(crown: Crown, rays: Rays, middle: float, half: float) -> tuple[Floats, Floats, Bools, Floats, Floats]:
    x, y, z, dx, dy, dz = rays.true_height(crown.place)
    r2, v2 = crown.radius**2, half**2
    level = z - middle
    a = (dx**2 + dy**2) / r2 + dz**2 / v2
    b = (x * dx + y * dy) / r2 + level * dz / v2
    c = (x**2 + y**2) / r2 + level**2 / v2 - 1.0
    enter, leave, real = _quadratic(a, b, c)
    return enter, leave, real, z, dz


def _hits_ellipsoid(crown: Crown, rays: Rays) -> Bools:
    middle, half = (crown.top + crown.base) / 2.0, (crown.top - crown.base) / 2.0
    _, leave, real, _, _ = _ball(crown, rays, middle, half)
    return real & (leave > AHEAD)


def _hits_dome(crown: Crown, rays: Rays) -> Bools:
    enter, leave, real, z, dz = _ball(crown, rays, crown.base, crown.top - crown.base)
    start = np.maximum(np.maximum(enter, (crown.base - z) / dz), 0.0)
    return real & (leave > start + AHEAD)


def _hits_cylinder(crown: Crown, rays: Rays) -> Bools:
    x, y, z, dx, dy, dz = rays.true_height(crown.place)
    enter, leave, real = _quadratic(dx**2 + dy**2, x * dx + y * dy, x**2 + y**2 - crown.radius**2)
    low, high = _slab(z, dz, crown.base, crown.top)
    start = np.maximum(np.maximum(enter, low), 0.0)
    return real & (np.minimum(leave, high) > start + AHEAD)


def _hits_pointed(crown: Crown, rays: Rays, tip: float) -> Bools:
    """A cone with its tip up or a vase with its tip down: the nappe between base and top."""
    x, y, z, dx, dy, dz = rays.true_height(crown.place)
    grow = (crown.radius / (crown.top - crown.base)) ** 2
    level = z - tip
    a = dx**2 + dy**2 - grow * dz**2
    b = x * dx + y * dy - grow * level * dz
    c = x**2 + y**2 - grow * level**2
    first, second, real = _quadratic(a, b, c)
    low, high = _slab(z, dz, crown.base, crown.top)
    # A ray steeper than the sides (a < 0) lies in the lower nappe before the first root, in the upper after
    # the second; a flatter one lies within between the two.
    steep = a < 0.0
    up = tip > crown.base
    enter = np.where(steep, -np.inf if up else second, first)
    leave = np.where(steep, first if up else np.inf, second)
    start = np.maximum(np.maximum(enter, low), 0.0)
    return real & (np.minimum(leave, high) > start + AHEAD)


_TESTS: dict[str, Callable[[Crown, Rays], Bools]] = {
    "ellipsoid": _hits_ellipsoid,
    "dome": _hits_dome,
    "cylinder": _hits_cylinder,
    "cone": lambda crown, rays: _hits_pointed(crown, rays, crown.top),
    "vase": lambda crown, rays: _hits_pointed(crown, rays, crown.base),
}


def hits_prism(prism: Prism, rays: Rays, margin: float | Floats = 0.0) -> Bools:
    """Rays that pass a flat-faced solid, whose faces stand `margin` metres further out."""
    shape = rays.points.shape[:-1]
    start, end = np.zeros(shape), np.full(shape, np.inf)
    for normal, offset in zip(prism.solid.normals, prism.solid.offsets, strict=True):
        gap = offset + margin * float(np.linalg.norm(normal)) - rays.points @ normal
        speed = rays.directions @ normal
        at = gap / np.where(np.abs(speed) < _NOTHING, _NOTHING, speed)
        level = np.abs(speed) < _NOTHING
        start = np.where(~level & (speed < 0.0), np.maximum(start, at), start)
        end = np.where(~level & (speed > 0.0), np.minimum(end, at), end)
        end = np.where(level & (gap < 0.0), -np.inf, end)
    return np.asarray(end > start + AHEAD)


def hits(caster: Caster, rays: Rays) -> Bools:
    """Rays that the caster stands in the way of; a ray that starts inside counts."""
    if isinstance(caster, Prism):
        return hits_prism(caster, rays)
    return _TESTS[caster.shape](caster, rays)


@frozen(eq=False)
class Balls:
    """Balls about casters for the quick look: centres (c, 3) and radii (c,)."""

    centres: Floats
    radii: Floats


def balls_of(casters: Sequence[Caster], gradient: Point) -> Balls:
    """A ball about every caster, on ground made level."""
    centres, radii = np.zeros((len(casters), 3)), np.zeros(len(casters))
    lean = 1.0 + float(np.hypot(*gradient))
    for number, caster in enumerate(casters):
        if isinstance(caster, Crown):
            centres[number] = (*caster.place, (caster.top + caster.base) / 2.0)
            radii[number] = np.hypot(caster.radius, (caster.top - caster.base) / 2.0) * lean
        else:
            centres[number] = caster.solid.centre
            radii[number] = caster.solid.reach
    return Balls(centres, radii)


def may_hit(balls: Balls, centre: Floats, radius: float, directions: Floats) -> Bools:
    """Casters (c) and directions (n) for which a ray from within a ball can meet the caster's ball, (c, n)."""
    to = balls.centres - centre
    reach = (balls.radii + radius)[:, None]
    speed = np.linalg.norm(directions, axis=1)
    ahead = (to @ directions.T) / speed
    away2 = np.sum(to**2, axis=1)[:, None] - ahead**2
    return np.asarray((away2 <= reach**2) & (ahead >= -reach))
