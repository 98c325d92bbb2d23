"""Small plane geometry for pointing at things: distances and insides, in metres."""

from __future__ import annotations

import math
from itertools import pairwise

from yardplan.yard.ground import Outline, Point


def distance(a: Point, b: Point) -> float:
    """Metres between two places."""
    return math.hypot(a[0] - b[0], a[1] - b[1])


def halfway(a: Point, b: Point) -> Point:
    """The place midway between two."""
    return ((a[0] + b[0]) / 2, (a[1] + b[1]) / 2)


def nearest_on(a: Point, b: Point, p: Point) -> Point:
    """The place on the stretch from a to b that is nearest to p."""
    dx, dy = b[0] - a[0], b[1] - a[1]
    long2 = dx * dx + dy * dy
    if long2 == 0:
        return a
    t = min(max(((p[0] - a[0]) * dx + (p[1] - a[1]) * dy) / long2, 0.0), 1.0)
    return (a[0] + t * dx, a[1] + t * dy)


def stretches(points: Outline, *, closed: bool) -> tuple[tuple[Point, Point], ...]:
    """The edges between points, and from the last to the first where closed."""
    if len(points) < 2:
        return ()
    pairs = tuple(pairwise(points))
    return (*pairs, (points[-1], points[0])) if closed and len(points) > 2 else pairs


def distance_to_line(points: Outline, p: Point, *, closed: bool = False) -> float:
    """Metres from p to a line or an outline's edge; to its one point where it has no more."""
    edges = stretches(points, closed=closed)
    if not edges:
        return distance(points[0], p) if points else math.inf
    return min(distance(nearest_on(a, b, p), p) for a, b in edges)


def inside(points: Outline, p: Point) -> bool:
    """Whether p lies within an outline (even-odd rule)."""
    x, y = p
    odd = False
    for (ax, ay), (bx, by) in stretches(points, closed=True):
        if (ay > y) != (by > y) and x < (bx - ax) * (y - ay) / (by - ay) + ax:
            odd = not odd
    return odd


def middle(points: Outline) -> Point:
    """The middle of some points: the centroid of an outline, the mean of two points, the point itself."""
    if len(points) > 2:
        area = cx = cy = 0.0
        x0, y0 = points[0]
        for (ax, ay), (bx, by) in stretches(points, closed=True):
            # Relative to the first corner, so that far-off coordinates lose no digits.
            cross = (ax - x0) * (by - y0) - (bx - x0) * (ay - y0)
            area += cross
            cx += (ax + bx - 2 * x0) * cross
            cy += (ay + by - 2 * y0) * cross
        if abs(area) > 1e-9:
            return (x0 + cx / (3 * area), y0 + cy / (3 * area))
    return (sum(p[0] for p in points) / len(points), sum(p[1] for p in points) / len(points))


def area_of(points: Outline) -> float:
    """Square metres within an outline."""
    total = sum(ax * by - bx * ay for (ax, ay), (bx, by) in stretches(points, closed=True))
    return abs(total) / 2


def length_of(points: Outline) -> float:
    """Metres along a line."""
    return sum(distance(a, b) for a, b in stretches(points, closed=False))


def along(a: Point, towards: Point, length: float) -> Point:
    """The place `length` metres from a in the direction of another; to the right where they coincide."""
    far = distance(a, towards)
    if far < 1e-9:
        return (a[0] + length, a[1])
    return (a[0] + (towards[0] - a[0]) * length / far, a[1] + (towards[1] - a[1]) * length / far)


def polar(a: Point, length: float, degrees: float) -> Point:
    """The place `length` metres from a at an angle counter-clockwise from +x."""
    turn = math.radians(degrees)
    # Rounded far below a tape's breadth, so that a quarter turn of 20 m ends at 20 exactly.
    return (round(a[0] + length * math.cos(turn), 9), round(a[1] + length * math.sin(turn), 9))


def bearing(a: Point, b: Point) -> float:
    """The direction from a to b in degrees counter-clockwise from +x, 0 to 360."""
    return math.degrees(math.atan2(b[1] - a[1], b[0] - a[0])) % 360
