"""Shapes that move: every shift at which a line or an outline would meet something that stays."""

from __future__ import annotations

from itertools import pairwise
from typing import TypeVar

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely.affinity import scale
from shapely.geometry.base import BaseGeometry

from yardplan.yard.ground import Outline, Point

Array = NDArray[np.float64]
Shapes = NDArray[np.object_]
#: One shape or many.
S = TypeVar("S", BaseGeometry, Shapes)

#: A shape that fills its hull to this share bulges everywhere: what it covers on its way is a hull again.
_CONVEX = 1.0 - 1e-9


def moved(shape: S, by: Point) -> S:
    """Shapes shifted by metres."""
    shifted: S = shapely.transform(shape, lambda points: points + by)
    return shifted


def meeting_line(shape: BaseGeometry, line: Outline) -> BaseGeometry:
    """Where (0, 0) comes to lie when `line`, drawn about (0, 0), is shifted so that it meets the shape.

    The Minkowski sum of the shape and the line turned about: the shape drawn along each of its stretches.
    """
    turned = [(-x, -y) for x, y in line]
    if shape.is_empty or not turned:
        return shapely.Polygon()
    if len(turned) == 1:
        return moved(shape, turned[0])
    return shapely.union_all([_drawn(shape, a, b) for a, b in pairwise(turned)])


def meeting_discs(discs: Shapes, line: Outline) -> Shapes:
    """The same for many discs, or other shapes that bulge everywhere, one by one."""
    ends = [moved(discs, (-x, -y)) for x, y in line]
    if len(ends) == 1:
        return ends[0]
    pairs = (shapely.multipolygons(np.stack(pair, axis=-1)) for pair in pairwise(ends))
    swept = np.stack([np.asarray(shapely.convex_hull(pair), dtype=object) for pair in pairs])
    return np.asarray(swept[0] if len(swept) == 1 else shapely.union_all(swept, axis=0), dtype=object)


def meeting_area(shape: BaseGeometry, outline: Outline) -> BaseGeometry:
    """The same for the area within an outline: it also meets what lies wholly within it."""
    if shape.is_empty or len(outline) < 3:
        return meeting_line(shape, outline)
    within = [holding(point, outline) for point in _one_of_each(shape)]
    return shapely.union_all([meeting_line(shape, (*outline, outline[0])), *within])


def holding(point: Point, outline: Outline) -> BaseGeometry:
    """Where (0, 0) comes to lie when the area within `outline` is shifted so that it holds a point."""
    area = shapely.Polygon(outline).buffer(0)
    return moved(scale(area, -1.0, -1.0, origin=(0.0, 0.0)), point)


def _one_of_each(shape: BaseGeometry) -> list[Point]:
    """A point of every piece."""
    points = [part.representative_point() for part in getattr(shape, "geoms", (shape,)) if not part.is_empty]
    return [(float(point.x), float(point.y)) for point in points]


def _drawn(shape: BaseGeometry, a: Point, b: Point) -> BaseGeometry:
    """Everything that a shape covers on its way from a shift by `a` to one by `b`."""
    ends = [moved(shape, a), moved(shape, b)]
    if isinstance(shape, shapely.Polygon) and shape.area >= _CONVEX * shape.convex_hull.area:
        return shapely.GeometryCollection(ends).convex_hull
    sides = _sides(shape, a, b)
    return shapely.union_all([*ends, *sides[shapely.is_valid(sides) & ~shapely.is_empty(sides)]])


def _sides(shape: BaseGeometry, a: Point, b: Point) -> Shapes:
    """What each edge covers on the way: parallelograms."""
    edges = _edges(shape)
    corners = np.concatenate([edges + a, edges + b], axis=1)
    return np.asarray(shapely.convex_hull(shapely.linestrings(corners)), dtype=object)


def _edges(shape: BaseGeometry) -> Array:
    """Both ends of every edge, (n, 2, 2); a point is an edge without length."""
    points, ring = shapely.get_coordinates(
        [part for piece in shapely.get_parts(shape) for part in _lines(piece)], return_index=True
    )
    joined = ring[1:] == ring[:-1]
    edges = np.stack([points[:-1][joined], points[1:][joined]], axis=1)
    alone = points[np.bincount(ring)[ring] == 1]
    return np.concatenate([edges, np.stack([alone, alone], axis=1)])


def _lines(piece: BaseGeometry) -> list[BaseGeometry]:
    return [piece.exterior, *piece.interiors] if isinstance(piece, shapely.Polygon) else [piece]
