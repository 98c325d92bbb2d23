"""Which casters stand between a point and the sun: rays against solids, in closed form.

Rays run from a point (height above the ground under it) towards the sun. For a crown they are taken back to
true space about its trunk, where z = height + gradient . (p - trunk) and the crown stands upright; flat-faced
solids are kept on ground made level, where the sun's height is s_z - gradient . s_xy.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Any

import numpy as np
from attrs import frozen
from numpy.typing import NDArray

from yardplan.sun.casters import Crown, Prism
from yardplan.sun.parameters import Shape
from yardplan.sun.position import Floats
from yardplan.yard.ground import Point

Bools = NDArray[np.bool_]
#: A hit must end at least this far ahead of the point, metres.
AHEAD = 1e-9
_NOTHING = 1e-15


@frozen(eq=False)
class Rays:
    """Points (..., 3) and directions (..., 3), both on the drawing with z above the ground made level."""

    points: Floats
    directions: Floats
    gradient: Point


@frozen(eq=False)
class Crowns:
    """Crowns of one shape as columns, one a ray bundle: shaped so that they spread over the rays."""

    x: Floats
    y: Floats
    radius: Floats
    base: Floats
    top: Floats

    def taken(self, index: NDArray[np.signedinteger[Any]]) -> Crowns:
        """Columns for bundles of rays, (m, 1)."""
        return Crowns(*(column[index][:, None] for column in
                        (self.x, self.y, self.radius, self.base, self.top)))

    def upright(self, rays: Rays) -> tuple[Floats, Floats, Floats, Floats, Floats, Floats]:
        """Points from the trunk's foot and directions in true space: x, y, z, dx, dy, dz."""
        gx, gy = rays.gradient
        x, y = rays.points[..., 0] - self.x, rays.points[..., 1] - self.y
        dx, dy, dz = (rays.directions[..., axis] for axis in range(3))
        return x, y, rays.points[..., 2] + gx * x + gy * y, dx, dy, dz + gx * dx + gy * dy


def crown_columns(crowns: Sequence[Crown]) -> Crowns:
    """Columns of several crowns, (c,)."""
    table = np.array([[*c.place, c.radius, c.base, c.top] for c in crowns]).reshape(-1, 5)
    return Crowns(*table.T)


def _quadratic(a: Floats, half_b: Floats, c: Floats) -> tuple[Floats, Floats, Bools]:
    """Roots of a t^2 + 2 half_b t + c in order, and where they are real. `a` may be of either sign."""
    a = np.where(np.abs(a) < _NOTHING, _NOTHING, a)
    inside = half_b**2 - a * c
    root = np.sqrt(np.maximum(inside, 0.0))
    one, two = (-half_b - root) / a, (-half_b + root) / a
    return np.minimum(one, two), np.maximum(one, two), inside > 0.0


Passage = tuple[Floats, Floats, Bools, Floats, Floats]


def _ball(crowns: Crowns, rays: Rays, middle: Floats, half: Floats) -> Passage:
    """Where rays enter and leave an ellipsoid, whether they do, and their height and climb."""
    x, y, z, dx, dy, dz = crowns.upright(rays)
    r2, v2 = crowns.radius**2, half**2
    level = z - middle
    a = (dx**2 + dy**2) / r2 + dz**2 / v2
    b = (x * dx + y * dy) / r2 + level * dz / v2
    c = (x**2 + y**2) / r2 + level**2 / v2 - 1.0
    enter, leave, real = _quadratic(a, b, c)
    return enter, leave, real, z, dz


def _hits_ellipsoid(crowns: Crowns, rays: Rays) -> Bools:
    middle, half = (crowns.top + crowns.base) / 2.0, (crowns.top - crowns.base) / 2.0
    _, leave, real, _, _ = _ball(crowns, rays, middle, half)
    return np.asarray(real & (leave > AHEAD))


def _meets(crowns: Crowns, z: Floats, dz: Floats, enter: Floats, leave: Floats) -> Bools:
    """Whether a climbing ray is inside between its entry and exit, ahead and between base and top."""
    start = np.maximum(np.maximum(enter, (crowns.base - z) / dz), 0.0)
    return np.asarray(np.minimum(leave, (crowns.top - z) / dz) > start + AHEAD)


def _hits_dome(crowns: Crowns, rays: Rays) -> Bools:
    enter, leave, real, z, dz = _ball(crowns, rays, crowns.base, crowns.top - crowns.base)
    return np.asarray(real & _meets(crowns, z, dz, enter, leave))


def _hits_cylinder(crowns: Crowns, rays: Rays) -> Bools:
    x, y, z, dx, dy, dz = crowns.upright(rays)
    enter, leave, real = _quadratic(dx**2 + dy**2, x * dx + y * dy, x**2 + y**2 - crowns.radius**2)
    return np.asarray(real & _meets(crowns, z, dz, enter, leave))


def _hits_pointed(crowns: Crowns, rays: Rays, tip_up: bool) -> Bools:
    """A cone with its tip up or a vase with its tip down: the nappe between base and top."""
    x, y, z, dx, dy, dz = crowns.upright(rays)
    grow = (crowns.radius / (crowns.top - crowns.base)) ** 2
    level = z - (crowns.top if tip_up else crowns.base)
    a = dx**2 + dy**2 - grow * dz**2
    b = x * dx + y * dy - grow * level * dz
    c = x**2 + y**2 - grow * level**2
    first, second, real = _quadratic(a, b, c)
    # A ray steeper than the sides (a < 0) lies in the lower nappe before the first root, in the upper after
    # the second; a flatter one lies within between the two.
    steep = a < 0.0
    enter = np.where(steep, -np.inf if tip_up else second, first)
    leave = np.where(steep, first if tip_up else np.inf, second)
    return np.asarray(real & _meets(crowns, z, dz, enter, leave))


_TESTS: dict[Shape, Callable[[Crowns, Rays], Bools]] = {
    "ellipsoid": _hits_ellipsoid,
    "dome": _hits_dome,
    "cylinder": _hits_cylinder,
    "cone": lambda crowns, rays: _hits_pointed(crowns, rays, True),
    "vase": lambda crowns, rays: _hits_pointed(crowns, rays, False),
}


def crown_hits(shape: Shape, crowns: Crowns, rays: Rays) -> Bools:
    """Rays that a crown of the shape stands in the way of; a ray that starts inside counts."""
    return _TESTS[shape](crowns, rays)


@frozen(eq=False)
class Faces:
    """Flat-faced solids with one number of faces: `normals` (c, f, 3) of length 1 and `offsets` (c, f)."""

    normals: Floats
    offsets: Floats

    def taken(self, index: NDArray[np.signedinteger[Any]]) -> Faces:
        """The faces for bundles of rays, (m, f, 3) and (m, f)."""
        return Faces(self.normals[index], self.offsets[index])


def face_columns(prisms: Sequence[Prism]) -> Faces:
    """Faces of solids that have the same number of them."""
    normals = np.array([p.solid.normals for p in prisms])
    lengths = np.linalg.norm(normals, axis=2)
    return Faces(normals / lengths[:, :, None], np.array([p.solid.offsets for p in prisms]) / lengths)


def _component(vectors: Floats, normals: Floats) -> Floats:
    """Component of vectors (m, k, 3) along one normal a bundle (m, 3), as (m, k)."""
    return np.asarray(
        vectors[..., 0] * normals[:, 0:1] + vectors[..., 1] * normals[:, 1:2]
        + vectors[..., 2] * normals[:, 2:3]
    )


def prism_hits(faces: Faces, rays: Rays, margin: float | Floats = 0.0) -> Bools:
    """Rays (m, k) that pass a flat-faced solid, one a bundle, whose faces stand `margin` further out."""
    start, end = np.zeros(rays.points.shape[:-1]), np.full(rays.points.shape[:-1], np.inf)
    for face in range(faces.normals.shape[1]):
        normals = faces.normals[:, face]
        gap = faces.offsets[:, face : face + 1] + margin - _component(rays.points, normals)
        speed = _component(rays.directions, normals)
        level = np.abs(speed) < _NOTHING
        at = gap / np.where(level, _NOTHING, speed)
        start = np.where(~level & (speed < 0.0), np.maximum(start, at), start)
        end = np.where(~level & (speed > 0.0), np.minimum(end, at), end)
        end = np.where(level & (gap < 0.0), -np.inf, end)
    return np.asarray(end > start + AHEAD)


@frozen(eq=False)
class Drums:
    """Upright drums about things for a quick look: centres (c, 3), radii `wide`, half heights `tall` (c,)."""

    centres: Floats
    wide: Floats
    tall: Floats

    @property
    def radii(self) -> Floats:
        """Radii of the balls about the drums."""
        return np.hypot(self.wide, self.tall)


def drum_about(points: Floats) -> tuple[Floats, float, float]:
    """Centre, radius and half height of the drum about points (k, 3)."""
    low, high = points.min(axis=0), points.max(axis=0)
    centre = (low + high) / 2.0
    wide = float(np.hypot(*(points[:, :2] - centre[:2]).T).max())
    return centre, wide, float(high[2] - low[2]) / 2.0


def drums_of(casters: Sequence[Crown | Prism], gradient: Point) -> Drums:
    """A drum about every caster, on ground made level, where a crown leans by the gradient."""
    centres, wide, tall = np.zeros((len(casters), 3)), np.zeros(len(casters)), np.zeros(len(casters))
    steep = float(np.hypot(*gradient))
    for number, caster in enumerate(casters):
        if isinstance(caster, Crown):
            centres[number] = (*caster.place, (caster.top + caster.base) / 2.0)
            wide[number] = caster.radius
            tall[number] = (caster.top - caster.base) / 2.0 + steep * caster.radius
        else:
            centres[number], wide[number], tall[number] = drum_about(caster.solid.corners)
    return Drums(centres, wide, tall)


Ints = NDArray[np.signedinteger[Any]]
Triples = tuple[Ints, Ints, Ints]


def may_hit(casters: Drums, targets: Drums, directions: Floats) -> Triples:
    """Numbers of casters, targets and directions (n, 3) for which a ray between the drums is possible.

    Seen from the sun a drum is no wider than its diameter and no higher than wide sin a + tall cos a.
    """
    flat = np.maximum(np.hypot(directions[:, 0], directions[:, 1]), _NOTHING)
    length = np.hypot(flat, directions[:, 2])
    sine, cosine = directions[:, 2] / length, flat / length
    ux, uy = directions[:, 0] / flat, directions[:, 1] / flat
    frame = np.stack([-uy, ux])
    wide = casters.wide[:, None] + targets.wide[None, :]
    here = (targets.centres[:, :2] @ frame).astype(np.float32)
    there = (casters.centres[:, :2] @ frame).astype(np.float32)
    across = there[:, None, :] - here[None, :, :]
    # Short numbers are quick; the room grows by what they may round off.
    farthest = np.fmax(*(np.fmax.reduce(np.abs(part), axis=None, initial=1.0) for part in (here, there)))
    rounding = 1e-6 * float(farthest)
    room = (wide + rounding).astype(np.float32)
    caster, target, beam = np.nonzero(np.abs(across, out=across) <= room[:, :, None])
    # The rest is looked at for those few that lie in the beam's own strip of ground.
    x, y, z = (casters.centres[caster] - targets.centres[target]).T
    along = x * ux[beam] + y * uy[beam]
    wide, tall = wide[caster, target], casters.tall[caster] + targets.tall[target]
    sine, cosine = sine[beam], cosine[beam]
    possible = np.abs(along * sine - z * cosine) <= wide * sine + tall * cosine
    possible &= -(along * cosine + z * sine) <= wide * cosine + tall * sine
    return caster[possible], target[possible], beam[possible]
