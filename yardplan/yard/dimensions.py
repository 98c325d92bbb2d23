"""Dimension lines follow what they measure: an end that lies on a thing goes where that place of it goes.

Nothing of this is kept in the document: whether an end lies on a corner, an edge, a centre or the lot line is
seen from the figures before each edit. An end on a corner follows the corner; one on an edge stays while the
edge still runs through it, and goes along where it does not. A locked dimension line stays.
"""

from __future__ import annotations

import math
from collections.abc import Collection, Iterator
from typing import Any

from attrs import evolve, frozen

from yardplan.yard.edges import LOT, is_closed
from yardplan.yard.edits import OUTLINE_FIELD, points_of
from yardplan.yard.ground import Dimension, Outline, Picture, Point
from yardplan.yard.positions import hand_on
from yardplan.yard.yard import COLLECTIONS, Yard

#: An end lies on what is nearer than this, metres: half a millimetre.
NEAR = 0.0005


@frozen
class _Hold:
    """What the end of a dimension line lies on: a corner or edge (counted from 0) of a thing, or its centre.

    `where` the list of the thing and its place there; the lot line has none.
    """

    key: str
    where: tuple[str, int] | None
    sort: str
    number: int
    closed: bool


#: The holds of the ends of each dimension line of the yard seen last.
_kept: list[tuple[Yard, dict[str, tuple[tuple[_Hold, ...], ...]]]] = []


def _near(a: Point, b: Point) -> bool:
    return math.dist(a, b) <= NEAR


def centre(points: Outline) -> Point:
    """The centroid of an outline, metres."""
    area = cx = cy = 0.0
    x0, y0 = points[0]
    for (ax, ay), (bx, by) in zip(points, (*points[1:], points[0]), strict=True):
        cross = (ax - x0) * (by - y0) - (bx - x0) * (ay - y0)
        area, cx, cy = area + cross, cx + (ax + bx - 2 * x0) * cross, cy + (ay + by - 2 * y0) * cross
    return (x0 + cx / (3 * area), y0 + cy / (3 * area)) if abs(area) > 1e-9 else points[0]


def _edge(points: Outline, number: int) -> tuple[Point, Point]:
    return points[number], points[(number + 1) % len(points)]


def _on_edge(a: Point, b: Point, place: Point) -> bool:
    long = math.dist(a, b)
    return long > NEAR and abs(math.dist(a, place) + math.dist(place, b) - long) <= NEAR * NEAR / long


def _sorts(points: Outline, closed: bool, place: Point) -> Iterator[tuple[str, int]]:
    """What of one outline or line the place lies on, corners first."""
    yield from (("corner", n) for n, point in enumerate(points) if _near(point, place))
    count = len(points) if closed and len(points) > 2 else len(points) - 1
    yield from (("edge", n) for n in range(count) if _on_edge(*_edge(points, n), place))
    if closed and len(points) > 2 and _near(centre(points), place):
        yield ("centre", 0)


def _outlines(yard: Yard) -> Iterator[tuple[str, tuple[str, int] | None, Outline, bool]]:
    """All that can be measured: key, where it stands, points, whether they close."""
    if yard.lot:
        yield LOT, None, yard.lot, True
    for name in COLLECTIONS:
        for number, thing in enumerate(getattr(yard, name)):
            if not isinstance(thing, Dimension | Picture):
                closed = type(thing) in OUTLINE_FIELD and is_closed(yard, thing.id)
                yield thing.id, (name, number), points_of(thing), closed


def _held_by(yard: Yard, ends: Collection[Point]) -> dict[Point, tuple[_Hold, ...]]:
    """Of each place the holds of the firmest sort: corners, else edges, else centres."""
    found: dict[Point, list[_Hold]] = {end: [] for end in ends}
    for key, where, points, closed in _outlines(yard):
        left, right = min(x for x, _ in points) - NEAR, max(x for x, _ in points) + NEAR
        for end in found:
            if left <= end[0] <= right:
                holds = (_Hold(key, where, *sort, closed) for sort in _sorts(points, closed, end))
                found[end] += [hold for hold in (next(holds, None),) if hold is not None]
    return {end: _firmest(holds) for end, holds in found.items()}


def _firmest(holds: list[_Hold]) -> tuple[_Hold, ...]:
    for sort in ("corner", "edge", "centre"):
        chosen = tuple(hold for hold in holds if hold.sort == sort)
        if chosen:
            return chosen
    return ()


def _holds(yard: Yard) -> dict[str, tuple[tuple[_Hold, ...], ...]]:
    """What the ends of each dimension line lie on; kept for the yard asked about last."""
    if not _kept or _kept[0][0] is not yard:
        held = _held_by(yard, {end for line in yard.dimensions for end in line.ends})
        _kept[:] = [(yard, {line.id: tuple(held[end] for end in line.ends) for line in yard.dimensions})]
    return _kept[0][1]


def hung_on(yard: Yard, ids: Collection[str]) -> frozenset[str]:
    """The dimension lines of which an end lies on one of these things or the lot line."""
    if not yard.dimensions or not ids:
        return frozenset()
    return frozenset(
        key for key, ends in _holds(yard).items() if any(hold.key in ids for holds in ends for hold in holds)
    )


def followed(before: Yard, after: Yard) -> Yard:
    """The yard after an edit, its dimension lines gone along with what they measured before it.

    Lines that the edit itself changed, made or took away are left as they are.
    """
    if not before.dimensions or not after.dimensions:
        return after
    then = {line.id: line for line in before.dimensions}
    lines = tuple(
        _line_after(line, before, after) if line == then.get(line.id) and not line.locked else line
        for line in after.dimensions
    )
    if all(one is other for one, other in zip(lines, after.dimensions, strict=True)):
        return after
    hand_on(after.dimensions, lines)
    return evolve(after, dimensions=lines)


def _line_after(line: Dimension, before: Yard, after: Yard) -> Dimension:
    holds = _holds(before)[line.id]
    ends = tuple(_end_after(end, of, before, after) for end, of in zip(line.ends, holds, strict=True))
    return line if ends == line.ends or _near(*ends) else evolve(line, ends=ends)


def _end_after(end: Point, holds: tuple[_Hold, ...], before: Yard, after: Yard) -> Point:
    """Where an end goes; it stays while one of what it lies on stays."""
    places = [_place_after(end, hold, before, after) for hold in holds]
    return places[0] if places and end not in places else end


def _pair(hold: _Hold, before: Yard, after: Yard) -> tuple[Outline, Outline] | None:
    """The points of a held thing before and after; None where they are the same or no longer match."""
    if hold.where is None:
        old, new = before.lot, after.lot
    else:
        things: tuple[Any, ...] = getattr(after, hold.where[0])
        thing = getattr(before, hold.where[0])[hold.where[1]]
        at = things[hold.where[1]] if hold.where[1] < len(things) else None
        if at is None or at.id != hold.key:
            at = after.find(hold.key)
        if at is thing or at is None:
            return None
        old, new = points_of(thing), points_of(at)
    return None if old == new or len(old) != len(new) else (old, new)


def _place_after(end: Point, hold: _Hold, before: Yard, after: Yard) -> Point:
    pair = _pair(hold, before, after)
    if pair is None:
        return end
    old, new = pair
    if hold.sort == "corner":
        return end if _near(new[hold.number], old[hold.number]) else new[hold.number]
    if hold.sort == "centre":
        return centre(new)
    (a, _), (c, d) = _edge(old, hold.number), _edge(new, hold.number)
    long, along = math.dist(c, d), math.dist(a, end)
    if _on_edge(c, d, end) or long < NEAR:
        return end
    share = min(along / long, 1.0)
    return (c[0] + (d[0] - c[0]) * share, c[1] + (d[1] - c[1]) * share)
