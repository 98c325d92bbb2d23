"""Curved outlines: circles, smooth curves through points and rounded corners, as outlines with many corners.

The corners lie on the curve and the edges between them keep within TOLERANCE of it, so that checks, light and
areas see the true shape to a few millimetres.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterable

from attrs import evolve

from yardplan.yard.ground import Curve, Outline, Point

#: How far an edge may lie from its curve, metres.
TOLERANCE = 0.002
#: An outline farther from its curve than this was changed elsewhere, metres.
_APART = 0.01
#: Places are kept to a tenth of a millimetre.
_DIGITS = 4
#: Points nearer than this are one, metres.
_SAME = 1e-3


def outline_of(curve: Curve) -> Outline:
    """The outline that a curve stands for, corners counter-clockwise for a circle, else in drawn order."""
    if curve.kind == "circle":
        points = _circle(curve.points[0], curve.radius)
    elif curve.kind == "smooth":
        points = _smooth(_apart(curve.points))
    else:
        points = _rounded(_apart(curve.points), curve.radius)
    return tuple((round(x, _DIGITS), round(y, _DIGITS)) for x, y in points)


def fits(curve: Curve, outline: Outline) -> bool:
    """True where an outline is the curve's, as far as a file written by a person can tell."""
    own = outline_of(curve) if curve.points else ()
    return len(own) == len(outline) and all(
        math.dist(a, b) <= _APART for a, b in zip(own, outline, strict=True)
    )


def mapped(curve: Curve, by: Callable[[Point], Point]) -> Curve:
    """The curve moved, turned or mirrored."""
    return evolve(curve, points=tuple(by(point) for point in curve.points))


def grips(curve: Curve) -> Outline:
    """The places by which a curve is changed: its points, or the four ends of a circle's axes."""
    if curve.kind != "circle":
        return curve.points
    (x, y), r = curve.points[0], curve.radius
    return ((x + r, y), (x, y + r), (x - r, y), (x, y - r))


def with_grip(curve: Curve, number: int, to: Point) -> Curve:
    """The curve with one grip somewhere else; of a circle any grip sets the radius."""
    if curve.kind == "circle":
        return evolve(curve, radius=math.dist(curve.points[0], to))
    return evolve(curve, points=(*curve.points[:number], to, *curve.points[number + 1 :]))


def largest_radius(points: Outline) -> float:
    """The greatest radius at which some corner of an outline can still be rounded, metres."""
    rounded = (_fillet(*corner) for corner in _corners(_apart(points)))
    return max((room * math.tan(half) for room, half in rounded), default=0.0)


def _circle(centre: Point, radius: float) -> list[Point]:
    """A multiple of four corners, so that the circle reaches its full width and depth."""
    count = 4 * max(math.ceil(_steps(radius, 2 * math.pi) / 4), 2)
    turns = (2 * math.pi * k / count for k in range(count))
    return [(centre[0] + radius * math.cos(t), centre[1] + radius * math.sin(t)) for t in turns]


def _steps(radius: float, sweep: float) -> int:
    """Edges for an arc of `sweep` radians: the height of each segment, r (1 - cos(a/2)), is bounded."""
    if radius <= TOLERANCE:
        return 1
    return max(math.ceil(abs(sweep) / (2 * math.acos(1 - TOLERANCE / radius))), 1)


def _apart(points: Iterable[Point]) -> list[Point]:
    """The points without those that repeat the one before, and without a last that repeats the first."""
    kept: list[Point] = []
    for point in points:
        if not kept or math.dist(kept[-1], point) > _SAME:
            kept.append(point)
    if len(kept) > 1 and math.dist(kept[0], kept[-1]) <= _SAME:
        kept.pop()
    return kept


def _smooth(points: list[Point]) -> list[Point]:
    """A closed centripetal Catmull-Rom curve: no loops or cusps within a stretch (Yuksel et al. 2011)."""
    count = len(points)
    if count < 3:
        return points
    run: list[Point] = []
    for k in range(count):
        before, a, b, after = (points[(k + step) % count] for step in (-1, 0, 1, 2))
        run += _flattened(a, _handle(before, a, b), _handle(after, b, a), b)
    return run


def _handle(before: Point, at: Point, towards: Point) -> Point:
    """The control point beside `at` of the cubic that runs from it towards the next point.

    Centripetal knots: parameter steps are square roots of distances (Barry and Goldman 1988).
    """
    d1, d2 = math.sqrt(math.dist(before, at)), math.sqrt(math.dist(at, towards))
    own, scale = 2 * d1 * d1 + 3 * d1 * d2 + d2 * d2, 3 * d1 * (d1 + d2)
    x, y = ((d1 * d1 * towards[i] - d2 * d2 * before[i] + own * at[i]) / scale for i in (0, 1))
    return (x, y)


def _flattened(a: Point, b: Point, c: Point, d: Point) -> list[Point]:
    """Places along a cubic from its start to just before its end.

    A chord of one nth of it lies within max|second derivative| / (8 n^2) of the curve.
    """
    bend = 6 * max(
        math.hypot(p[0] - 2 * q[0] + r[0], p[1] - 2 * q[1] + r[1]) for p, q, r in ((a, b, c), (b, c, d))
    )
    count = max(math.ceil(math.sqrt(bend / (8 * TOLERANCE))), 1)
    return [_on_cubic(a, b, c, d, k / count) for k in range(count)]


def _on_cubic(a: Point, b: Point, c: Point, d: Point, t: float) -> Point:
    s = 1 - t
    weights = (s * s * s, 3 * s * s * t, 3 * s * t * t, t * t * t)
    x, y = (sum(w * p[i] for w, p in zip(weights, (a, b, c, d), strict=True)) for i in (0, 1))
    return (x, y)


def _corners(points: list[Point]) -> list[tuple[Point, Point, Point]]:
    """Each corner between the ones before and after it; none of fewer than three."""
    count = len(points)
    return [(points[k - 1], points[k], points[(k + 1) % count]) for k in range(count if count > 2 else 0)]


def _fillet(before: Point, at: Point, after: Point) -> tuple[float, float]:
    """Room on both edges for a rounding, metres, and half the angle between them, radians."""
    u, v = (before[0] - at[0], before[1] - at[1]), (after[0] - at[0], after[1] - at[1])
    turn = math.atan2(abs(u[0] * v[1] - u[1] * v[0]), u[0] * v[0] + u[1] * v[1])
    return min(math.hypot(*u), math.hypot(*v)) / 2, turn / 2


def _rounded(points: list[Point], radius: float) -> list[Point]:
    """Corners rounded off by arcs that meet both edges square to the radius; smaller where room is short."""
    run: list[Point] = []
    for before, at, after in _corners(points):
        run += _arc(before, at, after, radius)
    return run or points


def _arc(before: Point, at: Point, after: Point, radius: float) -> list[Point]:
    room, half = _fillet(before, at, after)
    reach = min(radius / math.tan(half), room) if half > 1e-6 else 0.0
    # A corner that hardly turns, and an edge that goes straight back, are left as they are.
    if reach < _SAME or math.pi / 2 - half < 1e-3:
        return [at]
    radius = reach * math.tan(half)
    start, end = _toward(at, before, reach), _toward(at, after, reach)
    middle = _toward(at, ((start[0] + end[0]) / 2, (start[1] + end[1]) / 2), math.hypot(reach, radius))
    first = math.atan2(start[1] - middle[1], start[0] - middle[0])
    sweep = math.remainder(math.atan2(end[1] - middle[1], end[0] - middle[0]) - first, 2 * math.pi)
    count = _steps(radius, sweep)
    turns = (first + sweep * k / count for k in range(count + 1))
    return [(middle[0] + radius * math.cos(t), middle[1] + radius * math.sin(t)) for t in turns]


def _toward(a: Point, b: Point, far: float) -> Point:
    long = math.dist(a, b)
    return (a[0] + (b[0] - a[0]) * far / long, a[1] + (b[1] - a[1]) * far / long)
