"""How far a typed place may go before a thing of the yard leaves the lot, so that a field can refuse it."""

from __future__ import annotations

import math

import shapely
from attrs import frozen

from yardplan.checks.shapes import area_of, has_area
from yardplan.language import tr
from yardplan.units import System, format_length
from yardplan.yard import edits
from yardplan.yard.ground import Barrier, Building, Outline, Point
from yardplan.yard.planting import Bed, Container, Planting, Row
from yardplan.yard.yard import Thing, Yard

#: What belongs inside the lot; mains, streets and gates come in from outside.
_INSIDE = (Planting, Row, Bed, Container, Barrier, Building)
#: A line on the lot line counts as inside, metres.
_SLACK = 0.01
#: Longer than any lot, metres.
_FAR = 10_000.0


@frozen
class Free:
    """How far a thing may be shifted one way (below 0) and the other before it leaves the lot, metres."""

    low: float
    high: float


def free_shift(lot: Outline, points: Outline, way: Point) -> Free | None:
    """Free shift of points along a unit vector; None where one of them is outside the lot already."""
    ground = area_of(lot).buffer(_SLACK)
    low, high = -_FAR, _FAR
    for x, y in points:
        line = shapely.LineString(
            [(x - _FAR * way[0], y - _FAR * way[1]), (x + _FAR * way[0], y + _FAR * way[1])]
        )
        here = shapely.Point(x, y)
        pieces = shapely.get_parts(line.intersection(ground))
        piece = next((one for one in pieces if one.distance(here) < _SLACK / 10), None)
        if piece is None:
            return None
        along = [(px - x) * way[0] + (py - y) * way[1] for px, py in piece.coords]
        low, high = max(low, min(along)), min(high, max(along))
    return Free(min(low + _SLACK, 0.0), max(high - _SLACK, 0.0))


def belongs_inside(yard: Yard, thing: Thing | None) -> bool:
    """True for a thing that should not be typed out of the lot."""
    return isinstance(thing, _INSIDE) and not getattr(thing, "beyond_lot", False) and has_area(yard.lot)


def place_fault(yard: Yard, thing_id: str, path: str, value: float, units: System) -> str:
    """What is wrong with a typed place (`@x`, `@y.2`, `@length`): it would leave the lot; else nothing."""
    thing = yard.find(thing_id)
    if thing is None or not belongs_inside(yard, thing):
        return ""
    points = edits.points_of(thing)
    if path == "@length":
        (x0, y0), (x1, y1) = points[0], points[1]
        now = math.dist(points[0], points[1])
        way = ((x1 - x0) / now, (y1 - y0) / now) if now else (1.0, 0.0)
        moved: Outline = (points[1],)
    else:
        axis, _, number = path[1:].partition(".")
        now = points[int(number or 0)]["xy".index(axis)]
        way = (1.0, 0.0) if axis == "x" else (0.0, 1.0)
        moved = (points[int(number)],) if number else points
    free = free_shift(yard.lot, moved, way)
    if free is None or free.low - _SLACK <= value - now <= free.high + _SLACK:
        return ""
    low, high = (format_length(now + shift, units) for shift in (free.low, free.high))
    if path == "@length":
        return tr("{value} leaves the lot: {most} at most", value=format_length(value, units), most=high)
    return tr(
        "{value} is outside the lot: {low} to {high} here",
        value=format_length(value, units), low=low, high=high,
    )
