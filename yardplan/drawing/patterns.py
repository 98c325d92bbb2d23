"""Fillings cut to an outline by geometry, not by clipping, so that every printer and file shows them alike.

Everything here is in metres. Results are kept, because the still part of a plan is drawn again and again.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from functools import lru_cache
from itertools import pairwise
from typing import Any, cast

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely.geometry import Polygon
from shapely.geometry.base import BaseGeometry

from yardplan.yard.ground import Outline, Point

Segment = tuple[Point, Point]
_Ends = tuple[NDArray[np.float64], NDArray[np.float64]]
#: More lines or dots than this in one outline would be a grey smear: the filling is left out.
MOST = 6000
#: An edge shorter than this, metres, has no direction.
LEAST_EDGE = 1e-9
#: Square metres below which an outline is taken as empty.
LEAST_AREA = 1e-6


def steady(gap: float) -> float:
    """The gap rounded up to a half power of two, so that a filling holds still while the zoom changes."""
    return float(2.0 ** (math.ceil(2.0 * math.log2(max(gap, 1e-6))) / 2.0))


@lru_cache(maxsize=2048)
def polygonal(shape: BaseGeometry) -> BaseGeometry:
    """The areas of a shape, without the lines and points that cutting may leave."""
    return shapely.MultiPolygon([part for part in parts(shape) if isinstance(part, Polygon)])


def area(outline: Outline) -> BaseGeometry:
    """The outline as a valid polygon; empty when it has fewer than three corners or covers nothing."""
    if len(outline) < 3:
        return Polygon()
    made: BaseGeometry = Polygon(outline)
    if not made.is_valid:
        mended = shapely.make_valid(made)
        made = shapely.union_all([part for part in parts(mended) if isinstance(part, Polygon)])
    # Slivers thinner than a hair make buffers and hatching divide by nothing.
    return made if made.area > LEAST_AREA else Polygon()


def ring(shape: Polygon) -> Outline:
    """The corners of a polygon's outer edge, the first not again at the end."""
    return tuple((corner[0], corner[1]) for corner in shape.exterior.coords[:-1])


def parts(shape: BaseGeometry) -> list[BaseGeometry]:
    """The single shapes of which one consists."""
    return [single for part in getattr(shape, "geoms", ()) for single in parts(part)] or (
        [] if hasattr(shape, "geoms") else [shape]
    )


def widened(shape: BaseGeometry, distance: float, **how: Any) -> BaseGeometry:
    """The shape grown by a distance (shrunk when negative). `how` as for shapely's buffer."""
    # Corners that lie on each other make the mitre divide by nothing; the result is right all the same.
    with np.errstate(divide="ignore", invalid="ignore"):
        return cast("BaseGeometry", shapely.buffer(shape, distance, **how))


def _segments(cut: BaseGeometry) -> tuple[Segment, ...]:
    ends = [
        (*line.coords[0], *line.coords[-1])
        for line in parts(cut) if line.geom_type == "LineString" and not line.is_empty
    ]
    return tuple(((x0, y0), (x1, y1)) for x0, y0, x1, y1 in ends)


@lru_cache(maxsize=2048)
def hatch(outline: Outline, degrees: float, gap: float) -> tuple[Segment, ...]:
    """Parallel lines within an outline, turned counter-clockwise from +x, `gap` metres apart."""
    ends = hatch_between((outline,), degrees, gap).reshape(-1, 4).tolist()
    return tuple(((x0, y0), (x1, y1)) for x0, y0, x1, y1 in ends)


def hatch_between(rings: Sequence[Outline], degrees: float, gap: float) -> NDArray[np.float64]:
    """The same lines where an odd number of rings is round them, (n, 2, 2): inside a rim, not its holes.

    Laid out from (0, 0), so that neighbours line up.
    """
    angle = math.radians(degrees)
    along = np.array([math.cos(angle), math.sin(angle)])
    corners = [np.array((*ring, *ring[:1]), dtype=float) for ring in rings if len(ring) > 2]
    if not corners or gap <= 0:
        return np.empty((0, 2, 2))
    starts = np.concatenate([one[:-1] for one in corners])
    ends = np.concatenate([one[1:] for one in corners])
    if math.hypot(*np.ptp(starts, axis=0)) / gap > MOST:
        return np.empty((0, 2, 2))
    across = np.array([-along[1], along[0]])
    line, reach = _crossings((starts @ across / gap, ends @ across / gap), (starts @ along, ends @ along))
    order = np.lexsort((reach, line))
    places: NDArray[np.float64] = line[order, None] * gap * across + reach[order, None] * along
    return places.reshape(-1, 2, 2)


def _crossings(off: _Ends, reach: _Ends) -> _Ends:
    """Which whole numbers lie between the offs of both ends of each edge, and the reach where it has them.

    A corner counts for one of its two edges or for both: every line is crossed an even number of times.
    """
    low, high = np.minimum(*off), np.maximum(*off)
    first = np.ceil(low)
    times = np.maximum(np.ceil(high) - first, 0.0).astype(int)
    edge = np.repeat(np.arange(len(times)), times)
    line = first[edge] + np.arange(len(edge)) - np.repeat(np.cumsum(times) - times, times)
    share = (line - off[0][edge]) / (off[1] - off[0])[edge]
    return line, reach[0][edge] + share * (reach[1] - reach[0])[edge]


def _scatter(shape: BaseGeometry, gap: float, stray: float) -> NDArray[np.float64]:
    """Points of a grid, each pushed aside by an amount that depends only on its place in the grid."""
    left, bottom, right, top = shape.bounds
    columns = np.arange(math.floor(left / gap) - 1, math.ceil(right / gap) + 2)
    rows = np.arange(math.floor(bottom / gap) - 1, math.ceil(top / gap) + 2)
    if len(columns) * len(rows) > MOST:
        return np.empty((0, 2))
    i, j = (part.ravel() for part in np.meshgrid(columns, rows))
    # A sine hash: the same dot falls on the same place in every picture.
    one = np.modf(np.sin(i * 127.1 + j * 311.7) * 43758.5453)[0]
    two = np.modf(np.sin(i * 269.5 + j * 183.3) * 43758.5453)[0]
    return np.stack([(i + stray * one) * gap, (j + stray * two) * gap], axis=1)


@lru_cache(maxsize=1024)
def stipple(outline: Outline, gap: float, margin: float = 0.0, stray: float = 0.42) -> tuple[Point, ...]:
    """Dots about `gap` metres apart within an outline, `margin` metres from its edge."""
    shape = area(outline)
    inner = widened(shape, -margin) if margin else shape
    if inner.is_empty:
        return ()
    dots = _scatter(inner, gap, stray)
    kept = dots[shapely.contains_xy(inner, dots[:, 0], dots[:, 1])] if len(dots) else dots
    return tuple((float(x), float(y)) for x, y in kept)


@lru_cache(maxsize=512)
def inset(outline: Outline, distance: float) -> tuple[Outline, ...]:
    """Outlines `distance` metres inside (or outside, when negative)."""
    shape = widened(area(outline), -distance, join_style="mitre", mitre_limit=2.0)
    return tuple(ring(part) for part in parts(shape) if isinstance(part, Polygon) and not part.is_empty)


@lru_cache(maxsize=512)
def longest_direction(outline: Sequence[Point]) -> float:
    """Degrees counter-clockwise from +x of the outline's longest edge, from 0 up to 180."""
    pairs = list(zip(outline, (*outline[1:], outline[0]), strict=True))
    (x0, y0), (x1, y1) = max(pairs, key=lambda p: math.dist(p[0], p[1]))
    return math.degrees(math.atan2(y1 - y0, x1 - x0)) % 180.0


def cut_lines(lines: Iterable[Segment], outline: Outline) -> tuple[Segment, ...]:
    """The parts of some lines that lie within an outline."""
    given = [segment for segment in lines if segment[0] != segment[1]]
    if not given:
        return ()
    cut = shapely.intersection(shapely.linestrings(given), area(outline))
    return tuple(segment for part in cut for segment in _segments(part))


def along(line: Outline, distance: float) -> tuple[Point, float]:
    """The place `distance` metres along a line and the line's direction there in radians.

    Beyond the end the last edge goes on.
    """
    left = distance
    pairs = [(a, b) for a, b in pairwise(line) if math.dist(a, b) > LEAST_EDGE]
    if not pairs:
        return line[0], 0.0
    for a, b in pairs:
        step = math.dist(a, b)
        if left <= step or (a, b) == pairs[-1]:
            part = left / step
            return (a[0] + (b[0] - a[0]) * part, a[1] + (b[1] - a[1]) * part), math.atan2(
                b[1] - a[1], b[0] - a[0]
            )
        left -= step
    raise AssertionError("unreachable: the last edge takes what is left")


def line_length(line: Outline) -> float:
    """Length of a line in metres."""
    return sum(math.dist(a, b) for a, b in pairwise(line))
