"""What casts shade: crowns as solids of revolution, and buildings, barriers and panels with flat faces.

All heights are above the ground under each point. On a slope this shears space so that the ground is level:
upright things stay upright, rays stay straight (the sun's height becomes s_z - gradient . s_xy), and a solid
that is level in truth leans. Buildings are level in truth; walls, fences and rows follow the ground.
"""

from __future__ import annotations

import itertools
import math
from collections.abc import Sequence

import numpy as np
import shapely
from attrs import frozen
from shapely.geometry import MultiPolygon, Polygon

from yardplan.sun.convex import Plane, Solid, clipped, convex_pieces, polygons_of, roofed
from yardplan.sun.parameters import Shape, figure
from yardplan.sun.position import Floats
from yardplan.yard.ground import Barrier, Building, Outline, Point

Light = tuple[float, ...]
OPAQUE_LIGHT: Light = (0.0,) * 12
#: Thinner walls than this are taken as so thick, metres, so that they have two faces.
THINNEST = 0.01


@frozen
class Crown:
    """A crown on the plumb line at `place`: radius, height of its base and top, and light by month."""

    owner: str
    shape: Shape
    place: Point
    radius: float
    base: float
    top: float
    light: Light


@frozen(eq=False)
class Prism:
    """A solid with flat faces that belongs to `owner`, and its light by month."""

    owner: str
    solid: Solid
    light: Light


Caster = Crown | Prism


def sane_height(height: float) -> float:
    """A height to work with: not below 0, not above the tallest counted, 0 when not a number."""
    return min(max(height, 0.0), figure("tallest")) if math.isfinite(height) else 0.0


#: On a slope a crown's base is raised to at most this share of its height.
_HIGHEST_BASE = 0.8


def base_above_ground(shape: Shape, radius: float, base: float, top: float, gradient: Point) -> float:
    """The crown's base, raised on a slope so that no part of the crown dips into the hill.

    A level disc of radius r on ground that rises g must stand g r high; an ellipsoid clears the ground when
    base x top >= (g r)^2.
    """
    rise = math.hypot(*gradient) * radius
    least = {"vase": 0.0, "ellipsoid": rise**2 / top}.get(shape, rise)
    return max(base, min(least, _HIGHEST_BASE * top))


def crown(owner: str, shape: Shape, place: Point, spread: float, base: float, top: float,
          light: Light, gradient: Point = (0.0, 0.0)) -> Crown | None:
    """A crown, or None where it has no width or no height."""
    base, top = sane_height(base), sane_height(top)
    usable = math.isfinite(spread) and all(math.isfinite(v) for v in place)
    if not usable or spread <= 0.0 or top <= base:
        return None
    base = base_above_ground(shape, spread / 2.0, base, top, gradient)
    return Crown(owner, shape, place, spread / 2.0, base, top, light)


def levelled(plane: Plane, gradient: Point, about: Point) -> Plane:
    """A plane that is level-true, in heights above the ground, where the ground at `about` counts as 0."""
    gx, gy = gradient
    return (plane[0] + gx * about[0] + gy * about[1], plane[1] - gx, plane[2] - gy)


@frozen
class _Box:
    """The rectangle about a footprint along its roof: middle, ridge direction, half length and width."""

    middle: Floats
    along: Floats
    half_length: float
    half_width: float

    @property
    def across(self) -> Floats:
        """The direction to the left of the ridge."""
        return np.array([-self.along[1], self.along[0]])


def _ridge_direction(building: Building, shape: Polygon | MultiPolygon) -> Floats:
    if building.ridge_angle is not None:
        angle = math.radians(building.ridge_angle)
        return np.array([math.cos(angle), math.sin(angle)])
    ring = shapely.get_coordinates(shape.minimum_rotated_rectangle)
    sides = np.diff(ring[:3], axis=0)
    longer = sides[int(np.hypot(*sides[1]) > np.hypot(*sides[0]))]
    return np.asarray(longer / np.hypot(*longer))


def _box(building: Building, shape: Polygon | MultiPolygon) -> _Box:
    along = _ridge_direction(building, shape)
    frame = np.column_stack([along, [-along[1], along[0]]])
    local = shapely.get_coordinates(shape.convex_hull) @ frame
    low, high = local.min(axis=0), local.max(axis=0)
    half = (high - low) / 2.0
    return _Box(frame @ ((low + high) / 2.0), along, float(half[0]), float(half[1]))


def _slope(box: _Box, direction: Floats, half: float, low: float, pitch: float) -> Plane:
    """The plane that is `low` at the box's edge on the `direction` side and rises away from it."""
    inward = -direction * pitch
    return (low + pitch * half - float(inward @ box.middle), float(inward[0]), float(inward[1]))


def roof_planes(building: Building, shape: Polygon | MultiPolygon) -> list[Plane]:
    """The planes whose lowest is the roof over `shape` (footprint with its overhang).

    `eaves` is the height of the lower roof edge, `ridge` the highest; one roof spans the whole outline.
    """
    eaves, ridge = sane_height(building.eaves), sane_height(building.ridge)
    rise = ridge - eaves
    box = _box(building, shape)
    if building.roof == "flat" or rise <= 0.0 or box.half_width <= 0.0:
        return [(max(eaves, ridge), 0.0, 0.0)]
    if building.roof == "lean-to":
        return [_slope(box, -box.across, box.half_width, eaves, rise / (2.0 * box.half_width))]
    half = min(box.half_width, box.half_length) if building.roof == "hip" else box.half_width
    pitch = rise / half
    planes = [_slope(box, side * box.across, box.half_width, eaves, pitch) for side in (1.0, -1.0)]
    if building.roof == "hip":
        planes += [_slope(box, side * box.along, box.half_length, eaves, pitch) for side in (1.0, -1.0)]
    return planes


def building_casters(building: Building, gradient: Point = (0.0, 0.0)) -> list[Prism]:
    """A building as convex solids: walls and roof in one where nothing hangs over, else apart."""
    walls = MultiPolygon(polygons_of(building.footprint))
    if walls.is_empty or max(sane_height(building.eaves), sane_height(building.ridge)) <= 0.0:
        return []
    over = max(building.overhang, 0.0) if math.isfinite(building.overhang) else 0.0
    roof = walls.buffer(over, join_style="mitre") if over > 0.0 else walls
    about = (walls.centroid.x, walls.centroid.y)
    planes = [levelled(plane, gradient, about) for plane in roof_planes(building, roof)]
    eaves = levelled((sane_height(building.eaves), 0.0, 0.0), gradient, about)
    if over <= 0.0:
        return [p for ring in convex_pieces(walls) for p in _solid(building.id, ring, 0.0, planes)]
    key = building.id
    body = [p for ring in convex_pieces(walls) for p in _solid(key, ring, 0.0, [eaves])]
    lid = eaves if planes != [eaves] else (eaves[0] - THINNEST, eaves[1], eaves[2])
    return body + [p for ring in convex_pieces(roof) for p in _solid(key, ring, lid, planes)]


def _solid(owner: str, ring: Floats, low: float | Plane, planes: Sequence[Plane]) -> list[Prism]:
    """One piece, cut to where its top lies above its floor: on a slope a building may dip into the hill."""
    floor: Plane = low if isinstance(low, tuple) else (low, 0.0, 0.0)
    for plane in planes:
        normal = np.array([floor[1] - plane[1], floor[2] - plane[2]])
        if np.any(normal != 0.0) or plane[0] <= floor[0]:
            ring = clipped(ring, normal, plane[0] - floor[0])
    if len(ring) < 3:
        return []
    return [Prism(owner, roofed(ring, low, planes), OPAQUE_LIGHT)]


def _stretches(line: Outline) -> list[tuple[Floats, Floats]]:
    """Pairs of ends of a line's straight stretches, without those of no length."""
    points = [np.array(p, dtype=np.float64) for p in line if all(math.isfinite(v) for v in p)]
    return [(a, b) for a, b in itertools.pairwise(points) if np.hypot(*(b - a)) > 1e-6]


def stretch_ring(start: Floats, end: Floats, width: float) -> Floats:
    """The rectangle of one straight stretch, counter-clockwise."""
    along = (end - start) / np.hypot(*(end - start))
    side = np.array([-along[1], along[0]]) * max(width, THINNEST) / 2.0
    return np.array([start - side, end - side, end + side, start + side])


def band_casters(owner: str, line: Outline, width: float, base: float, top: float,
                 light: Light) -> list[Prism]:
    """A wall, fence, hedge or row: every straight stretch is a caster of its own, following the ground."""
    base, top = sane_height(base), sane_height(top)
    if top <= base or not math.isfinite(width):
        return []
    return [
        Prism(owner, roofed(stretch_ring(start, end, width), base, [(top, 0.0, 0.0)]), light)
        for start, end in _stretches(line)
    ]


def barrier_casters(barrier: Barrier, light: Light) -> list[Prism]:
    """A wall, fence or hedge with the light it lets through."""
    return band_casters(barrier.id, barrier.line, barrier.thickness, 0.0, barrier.height, light)


def panel_casters(owner: str, place: Point, facing: float, spread: float, depth: float, base: float,
                  top: float, light: Light) -> list[Prism]:
    """A flat-trained plant that spreads along `facing` (degrees counter-clockwise from +x)."""
    if not (math.isfinite(spread) and spread > 0.0):
        return []
    angle = math.radians(facing)
    half = (math.cos(angle) * spread / 2.0, math.sin(angle) * spread / 2.0)
    line = ((place[0] - half[0], place[1] - half[1]), (place[0] + half[0], place[1] + half[1]))
    return band_casters(owner, line, depth, base, top, light)
