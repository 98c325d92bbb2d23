"""Edges of outlines and lines: an edge takes a typed length, and what is squared stays square."""

from __future__ import annotations

import math
from itertools import pairwise

from yardplan.language import tr
from yardplan.yard import edits
from yardplan.yard.edits import OUTLINE_FIELD, EditError, points_of
from yardplan.yard.ground import Barrier, Dimension, Outline, Picture, Point, Service
from yardplan.yard.planting import Row
from yardplan.yard.yard import Yard

#: The lot line among the ids of things.
LOT = "lot"
#: A corner whose cosine is within this is square: a thirtieth of a degree.
_SQUARE = 6e-4
#: Nothing shorter is an edge, metres.
SHORTEST = 0.01


def outline_of(yard: Yard, key: str) -> Outline:
    """The corners of the lot or of a thing drawn by corners; none for other things."""
    if key == LOT:
        return yard.lot
    thing = yard.find(key)
    return points_of(thing) if thing is not None and type(thing) in OUTLINE_FIELD else ()


def is_closed(yard: Yard, key: str) -> bool:
    """True where the last corner joins the first."""
    thing = yard.find(key)
    return not isinstance(thing, Barrier | Row) and not (isinstance(thing, Service) and not thing.area)


def edges_of(points: Outline, *, closed: bool) -> tuple[tuple[Point, Point], ...]:
    """The edges from corner to corner, and from the last to the first where closed."""
    ring = (*points, points[0]) if closed and len(points) > 2 else points
    return tuple(pairwise(ring))


def straight_edges(yard: Yard, key: str) -> tuple[tuple[Point, Point], ...]:
    """The edges of a thing or the lot that have a length of their own: none of curves and pictures."""
    if edits.curve_of(yard, key) is not None or isinstance(yard.find(key), Dimension | Picture):
        return ()
    return edges_of(outline_of(yard, key), closed=is_closed(yard, key))


def set_length(yard: Yard, key: str, edge: int, length: float) -> Yard:
    """Give one edge of a thing or the lot (edges count from 0) a length in metres.

    Raises EditError when there is no such edge, the thing is locked, or its outline would cross itself.
    """
    thing = yard.find(key)
    if thing is not None and thing.locked:
        raise EditError(tr("This is locked: unlock it to change its edges"))
    if edge >= len(straight_edges(yard, key)):
        raise EditError(tr("There is no edge {number}", number=edge + 1))
    points, closed = outline_of(yard, key), is_closed(yard, key)
    new = with_length(points, edge, length, closed=closed)
    if crosses_itself(new, closed=closed) and not crosses_itself(points, closed=closed):
        raise EditError(tr("This length would make the outline cross itself: try another"))
    if key == LOT:
        return edits.set_lot(yard, new)
    return edits.replace(yard, edits.with_points(thing, new)) if thing is not None else yard


def with_length(points: Outline, edge: int, length: float, *, closed: bool) -> Outline:
    """The corners with the far end of an edge moved along it until it has the length, in metres.

    Of a closed outline the next corner moves too where both are square, so that a rectangle stays one; of an
    open line all that follows moves along, so that its other lengths stay. Raises EditError.
    """
    edges = edges_of(points, closed=closed)
    if not 0 <= edge < len(edges):
        raise EditError(tr("There is no edge {number}", number=edge + 1))
    if length < SHORTEST:
        raise EditError(tr("An edge must be longer than nothing"))
    a, b = edges[edge]
    long = math.dist(a, b)
    if long < SHORTEST / 10:
        raise EditError(tr("This edge has no direction yet: drag one of its corners first"))
    dx, dy = (b[0] - a[0]) / long * (length - long), (b[1] - a[1]) / long * (length - long)
    moving = _moving(points, edge, closed=closed)
    # From the near end, not by a step from the far one, so that a typed length is met to the last digit.
    far = (a[0] + (b[0] - a[0]) / long * length, a[1] + (b[1] - a[1]) / long * length)
    first = (edge + 1) % len(points)
    return tuple(
        far if n == first else (x + dx, y + dy) if n in moving else (x, y) for n, (x, y) in enumerate(points)
    )


def _moving(points: Outline, edge: int, *, closed: bool) -> frozenset[int]:
    """Numbers of the corners that go along with the far end of an edge."""
    count = len(points)
    far = (edge + 1) % count
    if not closed:
        return frozenset(range(far, count))
    if count > 3 and _square(points, far) and _square(points, (far + 1) % count):
        return frozenset({far, (far + 1) % count})
    return frozenset({far})


def _square(points: Outline, corner: int) -> bool:
    """True where two edges of a closed outline meet at a right angle."""
    before, at, after = points[corner - 1], points[corner], points[(corner + 1) % len(points)]
    a, b = (before[0] - at[0], before[1] - at[1]), (after[0] - at[0], after[1] - at[1])
    long = math.hypot(*a) * math.hypot(*b)
    return long > 0 and abs(a[0] * b[0] + a[1] * b[1]) <= _SQUARE * long


def crosses_itself(points: Outline, *, closed: bool) -> bool:
    """True where two edges that are not neighbours meet, or neighbours fold back onto each other."""
    edges = edges_of(points, closed=closed)
    count = len(edges)
    for first in range(count):
        for second in range(first + 1, count):
            if second == first + 1 or (closed and first == 0 and second == count - 1):
                if count > 2 and _folds_back(edges[first], edges[second]):
                    return True
            elif _meet(edges[first], edges[second]):
                return True
    return False


def _folds_back(one: tuple[Point, Point], other: tuple[Point, Point]) -> bool:
    """True when two edges that share a corner lie on one line and go back over each other."""
    (a, b), (c, d) = one, other
    shared, p, q = (b, a, d) if b == c else (a, b, c)
    u, v = (p[0] - shared[0], p[1] - shared[1]), (q[0] - shared[0], q[1] - shared[1])
    long = math.hypot(*u) * math.hypot(*v)
    cross, dot = u[0] * v[1] - u[1] * v[0], u[0] * v[0] + u[1] * v[1]
    return long > 0 and dot > 0 and abs(cross) <= 1e-9 * long


def _turn(a: Point, b: Point, p: Point) -> int:
    """1 when p lies left of the line from a to b, -1 right, 0 on it."""
    cross = (b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0])
    return 0 if abs(cross) <= 1e-9 * max(math.dist(a, b), 1.0) else 1 if cross > 0 else -1


def _meet(one: tuple[Point, Point], other: tuple[Point, Point]) -> bool:
    """True when two edges cross or touch."""
    (a, b), (c, d) = one, other
    turns = _turn(a, b, c), _turn(a, b, d), _turn(c, d, a), _turn(c, d, b)
    if turns[0] * turns[1] < 0 and turns[2] * turns[3] < 0:
        return True
    touching = ((a, b, c), (a, b, d), (c, d, a), (c, d, b))
    return any(turn == 0 and _within(*three) for turn, three in zip(turns, touching, strict=True))


def _within(a: Point, b: Point, p: Point) -> bool:
    """True when a point on the line through a and b lies between them."""
    return (
        min(a[0], b[0]) - 1e-9 <= p[0] <= max(a[0], b[0]) + 1e-9
        and min(a[1], b[1]) - 1e-9 <= p[1] <= max(a[1], b[1]) + 1e-9
    )
