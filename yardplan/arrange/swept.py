"""Shapes that move: every shift at which a line or an outline would meet something that stays."""

from __future__ import annotations

from itertools import pairwise

import shapely
from shapely.affinity import scale, translate
from shapely.geometry.base import BaseGeometry

from yardplan.yard.ground import Outline, Point


def meeting_line(shape: BaseGeometry, line: Outline) -> BaseGeometry:
    """Where (0, 0) comes to lie when `line`, drawn about (0, 0), is shifted so that it meets the shape.

    The Minkowski sum of the shape and the line turned about: the shape drawn along each of its stretches.
    """
    turned = [(-x, -y) for x, y in line]
    if shape.is_empty or not turned:
        return shapely.Polygon()
    if len(turned) == 1:
        return translate(shape, *turned[0])
    return shapely.union_all([_drawn(shape, a, b) for a, b in pairwise(turned)])


def meeting_area(shape: BaseGeometry, outline: Outline) -> BaseGeometry:
    """The same for the area within an outline: it also meets what lies wholly within it."""
    if shape.is_empty or len(outline) < 3:
        return meeting_line(shape, outline)
    within = [holding(point, outline) for point in _one_of_each(shape)]
    return shapely.union_all([meeting_line(shape, (*outline, outline[0])), *within])


def holding(point: Point, outline: Outline) -> BaseGeometry:
    """Where (0, 0) comes to lie when the area within `outline` is shifted so that it holds a point."""
    area = shapely.Polygon(outline).buffer(0)
    return translate(scale(area, -1.0, -1.0, origin=(0.0, 0.0)), *point)


def _one_of_each(shape: BaseGeometry) -> list[Point]:
    """A point of every piece."""
    points = [part.representative_point() for part in getattr(shape, "geoms", (shape,)) if not part.is_empty]
    return [(float(point.x), float(point.y)) for point in points]


def _drawn(shape: BaseGeometry, a: Point, b: Point) -> BaseGeometry:
    """Everything that a shape covers on its way from a shift by `a` to one by `b`."""
    ends = [translate(shape, *a), translate(shape, *b)]
    sides = [_side(edge, a, b) for edge in _edges(shape)]
    return shapely.union_all([*ends, *(side for side in sides if side.is_valid and not side.is_empty)])


def _side(edge: tuple[Point, Point], a: Point, b: Point) -> BaseGeometry:
    """What one edge covers on the way: a parallelogram."""
    (px, py), (qx, qy) = edge
    corners = [(px + a[0], py + a[1]), (qx + a[0], qy + a[1]), (qx + b[0], qy + b[1]), (px + b[0], py + b[1])]
    return shapely.MultiPoint(corners).convex_hull


def _edges(shape: BaseGeometry) -> list[tuple[Point, Point]]:
    found: list[tuple[Point, Point]] = []
    for part in shapely.get_parts(shape):
        rings = [part.exterior, *part.interiors] if part.geom_type == "Polygon" else [part]
        for ring in rings:
            points = [(float(x), float(y)) for x, y in shapely.get_coordinates(ring)]
            found += list(pairwise(points)) if len(points) > 1 else [(points[0], points[0])]
    return found
