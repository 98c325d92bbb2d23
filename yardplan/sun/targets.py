"""Points that stand for the surface of a crown, a row or a bed, each with its area and outward side.

The light of a crown is the share of the beam striking its sunlit surface that other things let through:
at each position of the sun a point counts by the area it shows to the sun. The plant's own crown is left out,
so that a plant alone in the open gets the full hours of an open place. Beds and mats face straight up.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from itertools import pairwise
from typing import Literal

import numpy as np
import shapely
from attrs import frozen
from shapely.geometry import MultiPolygon

from yardplan.sun.casters import Crown
from yardplan.sun.convex import polygons_of
from yardplan.sun.position import Floats
from yardplan.yard.ground import Outline, Point

Kind = Literal["plant", "row", "bed"]


@frozen(eq=False)
class Target:
    """Where light is wanted: `points` (k, 3) with heights above the ground under them, `areas` (k, 3) outward
    vectors as long as the area each point stands for (in true space)."""

    id: str
    kind: Kind
    points: Floats
    areas: Floats


def spread_points(number: int) -> Floats:
    """Evenly spread points of the unit square: the additive sequence of the plastic number, (number, 2)."""
    plastic = 1.32471795724474602596
    steps = np.arange(1, number + 1)[:, None] * np.array([1.0 / plastic, 1.0 / plastic**2])
    return np.asarray((0.5 + steps) % 1.0)


def _sphere(number: int) -> Floats:
    """Evenly spread points of the unit sphere, on a spiral by the golden angle."""
    z = 1.0 - (2.0 * np.arange(number) + 1.0) / number
    turn = np.arange(number) * math.pi * (3.0 - math.sqrt(5.0))
    flat = np.sqrt(1.0 - z**2)
    return np.column_stack([flat * np.cos(turn), flat * np.sin(turn), z])


#: Points about the trunk (k, 3) and their outward areas (k, 3).
Surface = tuple[Floats, Floats]


def _ellipsoid(c: Crown, number: int, unit: Floats | None = None, middle: float | None = None) -> Surface:
    half = (c.top - c.base) / 2.0 if middle is None else c.top - middle
    middle = (c.top + c.base) / 2.0 if middle is None else middle
    unit = _sphere(number) if unit is None else unit
    scale = np.array([c.radius, c.radius, half])
    areas = unit * (scale.prod() / scale) / number
    return unit * scale + np.array([0.0, 0.0, middle]), areas


def _dome(c: Crown, number: int) -> Surface:
    unit = _sphere(2 * number)
    return _ellipsoid(c, number, unit[unit[:, 2] > 0.0][:number], c.base)


def _ring(turn: Floats) -> tuple[Floats, Floats]:
    return np.cos(2.0 * math.pi * turn), np.sin(2.0 * math.pi * turn)


def _shared(number: int, side: float, lid: float) -> int:
    """How many of the points go to the lid, at least one where it has any area."""
    return min(max(round(number * lid / (side + lid)), 1), number - 1)


def _lid(c: Crown, number: int) -> Surface:
    place = spread_points(number)
    x, y = _ring(place[:, 0])
    out = c.radius * np.sqrt(place[:, 1])
    areas = np.tile([0.0, 0.0, math.pi * c.radius**2 / number], (number, 1))
    return np.column_stack([x * out, y * out, np.full(number, c.top)]), areas


def _cylinder(c: Crown, number: int) -> Surface:
    side = 2.0 * math.pi * c.radius * (c.top - c.base)
    above = _shared(number, side, math.pi * c.radius**2)
    place = spread_points(number - above)
    x, y = _ring(place[:, 0])
    z = c.base + place[:, 1] * (c.top - c.base)
    wall = np.column_stack([c.radius * x, c.radius * y, z])
    areas = np.column_stack([x, y, np.zeros_like(x)]) * side / len(place)
    return _stacked((wall, areas), _lid(c, above))


def _cone_side(c: Crown, number: int, tip_up: bool) -> Surface:
    """The sloping side; evenly by area, the distance from the tip goes with the square root."""
    place = spread_points(number)
    x, y = _ring(place[:, 0])
    out = np.sqrt(place[:, 1])
    height = c.top - c.base
    z = c.top - out * height if tip_up else c.base + out * height
    slant = math.hypot(c.radius, height)
    rise = (1.0 if tip_up else -1.0) * c.radius
    normals = np.column_stack([x * height, y * height, np.full(number, rise)]) / slant
    area = math.pi * c.radius * slant / number
    return np.column_stack([c.radius * out * x, c.radius * out * y, z]), normals * area


def _vase(c: Crown, number: int) -> Surface:
    side = math.pi * c.radius * math.hypot(c.radius, c.top - c.base)
    above = _shared(number, side, math.pi * c.radius**2)
    return _stacked(_cone_side(c, number - above, tip_up=False), _lid(c, above))


def _stacked(one: Surface, other: Surface) -> Surface:
    return np.concatenate([one[0], other[0]]), np.concatenate([one[1], other[1]])


_SURFACES: dict[str, Callable[[Crown, int], Surface]] = {
    "ellipsoid": _ellipsoid, "dome": _dome, "cylinder": _cylinder, "vase": _vase,
    "cone": lambda c, number: _cone_side(c, number, tip_up=True),
}


def _turned(vectors: Floats, north: float) -> Floats:
    """Vectors turned with the compass: `north` degrees clockwise."""
    c, s = math.cos(math.radians(north)), math.sin(math.radians(north))
    return np.asarray(vectors @ np.array([[c, -s, 0.0], [s, c, 0.0], [0.0, 0.0, 1.0]]))


def crown_target(crown: Crown, number: int, gradient: Point = (0.0, 0.0), *, north: float = 0.0,
                 flat: bool = False) -> Target:
    """The surface of a crown; `flat` takes only its top, for mats.

    The points keep their places by the compass (`north` as in Site), so that turning a yard and its north
    together changes nothing.
    """
    surface = _lid(crown, number) if flat else _SURFACES[crown.shape](crown, number)
    about, areas = (_turned(vectors, north) for vectors in surface)
    points = about + np.array([*crown.place, 0.0])
    points[:, 2] -= about[:, :2] @ np.array(gradient)
    return Target(crown.owner, "plant", points, areas)


def band_target(owner: str, kind: Kind, line: Outline, width: float, base: float, top: float,
                number: int) -> Target | None:
    """Top and both sides of a row or a flat-trained plant, following the ground."""
    ends = [(np.array(a), np.array(b)) for a, b in pairwise(line) if a != b]
    if not ends or top <= base:
        return None
    lengths = np.array([np.hypot(*(b - a)) for a, b in ends])
    place = spread_points(number)
    stretch = np.searchsorted(np.cumsum(lengths) / lengths.sum(), place[:, 0]).clip(max=len(ends) - 1)
    start = np.concatenate([[0.0], np.cumsum(lengths)])
    along = (place[:, 0] * lengths.sum() - start[stretch]) / lengths[stretch]
    # Walk round the section: one side up, the top across, the other side down.
    high = top - base
    walk = place[:, 1] * (2.0 * high + width)
    left, right = walk < high, walk >= high + width
    z = np.where(left, base + walk, np.where(right, base + (2.0 * high + width - walk), top))
    across = np.where(left, 0.5, np.where(right, -0.5, 0.5 - (walk - high) / max(width, 1e-9))) * width
    points, areas = np.empty((number, 3)), np.empty((number, 3))
    for k, s in enumerate(stretch):
        a, b = ends[s]
        direction = (b - a) / lengths[s]
        side = np.array([-direction[1], direction[0]])
        points[k] = (*(a + along[k] * (b - a) + across[k] * side), z[k])
        areas[k] = (*side, 0.0) if left[k] else (*-side, 0.0) if right[k] else (0.0, 0.0, 1.0)
    return Target(owner, kind, points, areas)


def _frame(outline: Outline) -> Floats:
    """Axes along and across the first side, as columns: points lie alike however the bed is turned."""
    sides = np.diff(np.array(outline), axis=0)
    along = sides[int(np.argmax(np.hypot(*sides.T) > 0.0))]
    along = along / max(float(np.hypot(*along)), 1e-12)
    return np.array([[along[0], -along[1]], [along[1], along[0]]])


def area_target(owner: str, outline: Outline, height: float, number: int) -> Target | None:
    """A bed: points spread evenly over its area at a height, facing up. None where it has no area."""
    shape = MultiPolygon(polygons_of(outline))
    if shape.is_empty:
        return None
    frame = _frame(outline)
    shape = MultiPolygon(polygons_of([(float(x), float(y)) for x, y in np.array(outline) @ frame]))
    x0, y0, x1, y1 = shape.bounds
    tries = math.ceil(number * (x1 - x0) * (y1 - y0) / shape.area * 1.5) + 8
    inside = np.empty((0, 2))
    shapely.prepare(shape)
    while len(inside) < number:
        spots = spread_points(tries) * [x1 - x0, y1 - y0] + [x0, y0]
        inside = spots[shapely.contains_xy(shape, spots[:, 0], spots[:, 1])]
        tries *= 2
    points = np.column_stack([inside[:number] @ frame.T, np.full(number, height)])
    return Target(owner, "bed", points, np.tile([0.0, 0.0, 1.0], (number, 1)))


