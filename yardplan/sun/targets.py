"""Points that stand for the surface of a crown, a row or a bed, each with its area and outward side.

The light of a crown is the share of the beam striking its sunlit surface that other things let through:
at each position of the sun a point counts by the area it shows to the sun. The plant's own crown is left out,
so that a plant alone in the open gets the full hours of an open place. Beds and mats face straight up.

Few points stand for a surface at one position of the sun, but neighbouring positions take other ones: the
pattern comes in `PATTERNS` turns, and over a season their errors even out.
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
#: Turns of the pattern of points, taken in order by the positions of the sun.
PATTERNS = 8
_GOLDEN = (math.sqrt(5.0) - 1.0) / 2.0


@frozen(eq=False)
class Target:
    """Where light is wanted: `points` (patterns, k, 3) with heights above the ground under them, `areas`
    (patterns, k, 3) outward vectors as long as the area each point stands for (in true space)."""

    id: str
    kind: Kind
    points: Floats
    areas: Floats


#: Points (patterns, k, 3) and their outward areas (patterns, k, 3).
Surface = tuple[Floats, Floats]


def _spiral(number: int) -> tuple[Floats, Floats]:
    """Evenly spread points of a strip: steps 0 to 1 and turns by the golden ratio, (patterns, number)."""
    pattern = np.arange(PATTERNS)[:, None]
    step = np.arange(number)[None, :]
    # Each pattern lies between the points of the one before, along and round.
    along = (step + (pattern * _GOLDEN + 0.5) % 1.0) / number
    return along, (step + pattern / PATTERNS) * _GOLDEN % 1.0


def _ring(turn: Floats) -> tuple[Floats, Floats]:
    return np.cos(2.0 * math.pi * turn), np.sin(2.0 * math.pi * turn)


def _points(x: Floats, y: Floats, z: Floats | float) -> Floats:
    return np.stack(np.broadcast_arrays(x, y, z), axis=-1)


def _stacked(*parts: Surface) -> Surface:
    return (
        np.concatenate([points for points, _ in parts], axis=1),
        np.concatenate([areas for _, areas in parts], axis=1),
    )


def _sphere(number: int, lowest: float) -> Floats:
    """Evenly spread points of the unit sphere above a height."""
    step, turn = _spiral(number)
    z = 1.0 - (1.0 - lowest) * step
    x, y = _ring(turn)
    flat = np.sqrt(1.0 - z**2)
    return _points(flat * x, flat * y, z)


def _round(c: Crown, unit: Floats, middle: float, half: float, share: float) -> Surface:
    """Points of the sphere stretched to the crown; each stands for `share` of the sphere's 4 pi."""
    scale = np.array([c.radius, c.radius, half])
    areas = unit * (scale.prod() / scale) * share
    return unit * scale + np.array([0.0, 0.0, middle]), areas


def _ellipsoid(c: Crown, number: int) -> Surface:
    middle, half = (c.top + c.base) / 2.0, (c.top - c.base) / 2.0
    return _round(c, _sphere(number, -1.0), middle, half, 4.0 * math.pi / number)


def _dome(c: Crown, number: int) -> Surface:
    return _round(c, _sphere(number, 0.0), c.base, c.top - c.base, 2.0 * math.pi / number)


def _lid(c: Crown, number: int) -> Surface:
    step, turn = _spiral(number)
    x, y = _ring(turn)
    out = c.radius * np.sqrt(step)
    points = _points(x * out, y * out, c.top)
    return points, np.broadcast_to([0.0, 0.0, math.pi * c.radius**2 / number], points.shape)


def _cylinder(c: Crown, number: int) -> Surface:
    """Half of the points stand on the lid: a high sun sees little else."""
    side = 2.0 * math.pi * c.radius * (c.top - c.base)
    step, turn = _spiral(number - number // 2)
    x, y = _ring(turn)
    wall = _points(c.radius * x, c.radius * y, c.base + step * (c.top - c.base))
    areas = _points(x, y, 0.0) * side / (number - number // 2)
    return _stacked((wall, areas), _lid(c, number // 2))


def _cone_side(c: Crown, number: int, tip_up: bool) -> Surface:
    """The sloping side; evenly by area, the distance from the tip goes with the square root."""
    step, turn = _spiral(number)
    x, y = _ring(turn)
    out = np.sqrt(step)
    height = c.top - c.base
    z = c.top - out * height if tip_up else c.base + out * height
    rise = (1.0 if tip_up else -1.0) * c.radius
    # Unit normals times the area: the slant length of the one cancels against that of the other.
    areas = _points(x * height, y * height, rise) * math.pi * c.radius / number
    return _points(c.radius * out * x, c.radius * out * y, z), areas


def _cone(c: Crown, number: int) -> Surface:
    return _cone_side(c, number, tip_up=True)


def _vase(c: Crown, number: int) -> Surface:
    return _stacked(_cone_side(c, number - number // 2, tip_up=False), _lid(c, number // 2))


_SURFACES: dict[str, Callable[[Crown, int], Surface]] = {
    "ellipsoid": _ellipsoid, "dome": _dome, "cylinder": _cylinder, "vase": _vase, "cone": _cone,
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
    points[..., 2] -= about[..., :2] @ np.array(gradient)
    return Target(crown.owner, "plant", points, areas)


@frozen(eq=False)
class _Line:
    """The straight stretches of a line: their starts, directions and lengths."""

    starts: Floats
    directions: Floats
    lengths: Floats

    def at(self, share: Floats) -> tuple[Floats, Floats]:
        """Points at shares of the whole length, and the direction of the line there."""
        ends = np.cumsum(self.lengths)
        along = share * ends[-1]
        stretch = np.searchsorted(ends, along).clip(max=len(ends) - 1)
        along = along - (ends - self.lengths)[stretch]
        directions = self.directions[stretch]
        return self.starts[stretch] + along[..., None] * directions, directions


def _line(line: Outline) -> _Line | None:
    ends = [(np.array(a, float), np.array(b, float)) for a, b in pairwise(line) if a != b]
    if not ends:
        return None
    lengths = np.array([np.hypot(*(b - a)) for a, b in ends])
    directions = np.array([b - a for a, b in ends]) / lengths[:, None]
    return _Line(np.array([a for a, _ in ends]), directions, lengths)


def band_target(owner: str, kind: Kind, line: Outline, width: float, base: float, top: float,
                number: int) -> Target | None:
    """Both sides and the top of a row or a flat-trained plant, following the ground; None without a size."""
    laid = _line(line)
    if laid is None or top <= base:
        return None
    third = number // 3
    faces = [
        _face(laid, side, width, (base, top), count)
        for side, count in ((1.0, third), (-1.0, third), (0.0, number - 2 * third))
    ]
    return Target(owner, kind, *_stacked(*faces))


def _face(laid: _Line, side: float, width: float, heights: tuple[float, float], number: int) -> Surface:
    """Points of the left (1) or right (-1) side, or of the top (0)."""
    step, other = _spiral(number)
    middle, along = laid.at(step)
    left = np.stack([-along[..., 1], along[..., 0]], axis=-1)
    length, (base, top) = float(laid.lengths.sum()), heights
    if side == 0.0:
        x, y = np.moveaxis(middle + left * ((other - 0.5) * width)[..., None], -1, 0)
        areas = np.broadcast_to([0.0, 0.0, length * width / number], (*x.shape, 3))
        return _points(x, y, top), areas
    x, y = np.moveaxis(middle + left * side * width / 2.0, -1, 0)
    areas = _points(left[..., 0], left[..., 1], 0.0) * side * length * (top - base) / number
    return _points(x, y, base + other * (top - base)), areas


def _frame(outline: Outline) -> Floats:
    """Axes along and across the first side, as columns: points lie alike however the bed is turned."""
    sides = np.diff(np.array(outline), axis=0)
    along = sides[int(np.argmax(np.hypot(*sides.T) > 0.0))]
    along = along / max(float(np.hypot(*along)), 1e-12)
    return np.array([[along[0], -along[1]], [along[1], along[0]]])


def _spread(number: int) -> Floats:
    """Evenly spread points of the unit square: the additive sequence of the plastic number, (number, 2)."""
    plastic = 1.32471795724474602596
    steps = np.arange(1, number + 1)[:, None] * np.array([1.0 / plastic, 1.0 / plastic**2])
    return np.asarray((0.5 + steps) % 1.0)


def area_target(owner: str, outline: Outline, height: float, number: int) -> Target | None:
    """A bed: points spread evenly over its area at a height, facing up. None where it has no area."""
    if not polygons_of(outline):
        return None
    frame = _frame(outline)
    shape = MultiPolygon(polygons_of([(float(x), float(y)) for x, y in np.array(outline) @ frame]))
    inside = _inside(shape, number * PATTERNS) @ frame.T
    # Every eighth point of the sequence makes a pattern of its own.
    x, y = inside.reshape(number, PATTERNS, 2).transpose(2, 1, 0)
    return facing_up(owner, "bed", _points(x, y, height))


def _inside(shape: MultiPolygon, number: int) -> Floats:
    """So many evenly spread points inside a shape, (number, 2)."""
    x0, y0, x1, y1 = shape.bounds
    tries = math.ceil(number * (x1 - x0) * (y1 - y0) / shape.area * 1.2) + 8
    shapely.prepare(shape)
    inside = np.empty((0, 2))
    while len(inside) < number:
        spots = _spread(tries) * [x1 - x0, y1 - y0] + [x0, y0]
        inside = spots[shapely.contains_xy(shape, spots[:, 0], spots[:, 1])]
        tries *= 2
    return inside[:number]


def facing_up(owner: str, kind: Kind, points: Floats) -> Target:
    """Points (patterns, k, 3) of level ground, all of one weight."""
    return Target(owner, kind, points, np.broadcast_to([0.0, 0.0, 1.0], points.shape))


def spot_target(owner: str, kind: Kind, place: Point, height: float, number: int = 1) -> Target:
    """One point, as often as points are wanted."""
    return facing_up(owner, kind, np.broadcast_to([*place, height], (PATTERNS, number, 3)))
