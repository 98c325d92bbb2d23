"""Grips of the selected thing: square ones at its corners, a round one to turn it."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from yardplan.language import tr
from yardplan.window.canvas.geometry import distance, middle, nearest_on, stretches
from yardplan.window.open_yard import OpenYard
from yardplan.window.tools.naming import names_of
from yardplan.window.tools.tool import Handle
from yardplan.yard import edges, edits
from yardplan.yard.edits import OUTLINE_FIELD
from yardplan.yard.ground import Barrier, Dimension, Outline, Picture, Point, Service
from yardplan.yard.handles import covered, handles_of, with_handles
from yardplan.yard.planting import Row
from yardplan.yard.positions import chosen
from yardplan.yard.yard import Thing, Yard

if TYPE_CHECKING:
    from yardplan.plants.stand import Stand

#: The grip that turns, in place of a corner's number.
TURN: Final = -1
#: The turning grip stands so far above the thing, as a share of its height, and at least so many metres.
_ABOVE, _LEAST = 0.15, 0.6
#: And at least so many pixels, past the length that stands on the upper edge.
_PAST_LENGTHS = 34.0


def outline_of(yard: Yard, key: str) -> Outline:
    """The places that can be gripped: corners, points of a curve, ends of a line."""
    return handles_of(yard, key)


def is_closed(yard: Yard, key: str) -> bool:
    """True where the last corner joins the first."""
    thing = yard.find(key)
    return not isinstance(thing, Barrier | Row) and not (isinstance(thing, Service) and not thing.area)


def middle_of(yard: Yard, ids: frozenset[str]) -> Point:
    """The middle of things: the outline's middle for one, else of the box round all."""
    outlines = [covered(thing) for thing in yard.named(ids)]
    if len(outlines) == 1:
        return middle(outlines[0])
    xs = [x for points in outlines for x, _ in points]
    ys = [y for points in outlines for _, y in points]
    return ((min(xs) + max(xs)) / 2, (min(ys) + max(ys)) / 2)


def _turn_place(open_yard: OpenYard, pixel: float) -> Point | None:
    """Where the round grip stands: above whatever has a direction."""
    yard, selection = open_yard.shown_yard, open_yard.selection
    things = [thing for thing in yard.named(selection) if not thing.locked]
    if not things or (len(things) == 1 and not _can_turn(things[0], open_yard.stand)):
        return None
    points = [point for thing in things for point in covered(thing)]
    top, bottom = max(y for _, y in points), min(y for _, y in points)
    left, right = min(x for x, _ in points), max(x for x, _ in points)
    return ((left + right) / 2, top + max((top - bottom) * _ABOVE, _LEAST, _PAST_LENGTHS * pixel))


def _can_turn(thing: Thing, stand: Stand) -> bool:
    """Things with a direction: outlines, lines and flat-trained plants."""
    plants = chosen(stand.plants, (thing.id,))
    return type(thing) in OUTLINE_FIELD or any(plant.size.habit == "flat-trained" for plant in plants)


def handles(open_yard: OpenYard, pixel: float = 0.0) -> tuple[Handle, ...]:
    """The grips of the selection; `pixel` metres per pixel as it is shown."""
    yard, selection = open_yard.shown_yard, open_yard.selection
    made: list[Handle] = []
    if len(selection) == 1:
        key = next(iter(selection))
        thing = yard.find(key)
        if key == "lot" or (thing is not None and not thing.locked):
            made += [Handle(place=point) for point in outline_of(yard, key)]
    return (*made, *turn_handle(open_yard, pixel))


def turn_handle(open_yard: OpenYard, pixel: float = 0.0) -> tuple[Handle, ...]:
    """The round grip of the selection; the square ones are drawn with the selection itself."""
    place = _turn_place(open_yard, pixel)
    return (Handle(place=place, round=True),) if place is not None else ()


def grip_at(open_yard: OpenYard, place: Point, reach: float, pixel: float = 0.0) -> int | None:
    """The number of the corner grip under a place, TURN for the round one, None for none."""
    best: tuple[float, int] | None = None
    for number, handle in enumerate(handles(open_yard, pixel)):
        off = distance(handle.place, place)
        if off <= reach and (best is None or off < best[0]):
            best = (off, TURN if handle.round else number)
    return best[1] if best else None


def measured_from(yard: Yard, key: str, grip: int) -> Outline:
    """The place from which a dragged grip keeps to right angles and round lengths, if there is one."""
    curve, thing = edits.curve_of(yard, key), yard.find(key)
    if curve is not None and curve.kind == "circle":
        return curve.points
    if isinstance(thing, Dimension) and grip >= len(thing.ends):
        return ()
    return (outline_of(yard, key)[grip - 1 if not isinstance(thing, Dimension) else 1 - grip],)


def neighbours(yard: Yard, key: str, grip: int) -> Outline:
    """The places whose distances are told while a grip is dragged: corners beside it, a circle's centre."""
    curve, thing = edits.curve_of(yard, key), yard.find(key)
    if curve is not None and curve.kind != "rounded":
        return curve.points if curve.kind == "circle" else ()
    if isinstance(thing, Dimension):
        return ()
    points, closed = outline_of(yard, key), is_closed(yard, key) and not isinstance(thing, Picture)
    sides = [points[grip - 1]] if grip or closed else []
    if grip + 1 < len(points) or closed:
        sides.append(points[(grip + 1) % len(points)])
    return tuple(sides)


def add_corner(open_yard: OpenYard, place: Point, reach: float) -> bool:
    """Double click on an edge of the selected thing puts a corner there; True when it did."""
    if len(open_yard.selection) != 1:
        return False
    yard, key = open_yard.yard, next(iter(open_yard.selection))
    if not _takes_corners(yard, key):
        return False
    points, closed = outline_of(yard, key), is_closed(yard, key)
    # On the outline as it is drawn: a curve bulges away from the straight edges between its points.
    _, foot = _nearest(stretches(edges.outline_of(yard, key), closed=closed), place)
    number, _ = _nearest(stretches(points, closed=closed), foot)
    if distance(foot, place) > reach or any(distance(foot, corner) < reach / 4 for corner in points):
        return False
    new = (*points[: number + 1], foot, *points[number + 1 :])
    open_yard.commit(tr("Add corner to {thing}", thing=names_of(yard, {key})), with_outline(yard, key, new))
    return True


def _takes_corners(yard: Yard, key: str) -> bool:
    """False for what has its number of grips: circles, dimensions, pictures."""
    curve = edits.curve_of(yard, key)
    fixed = isinstance(yard.find(key), Dimension | Picture) or (curve is not None and curve.kind == "circle")
    return bool(outline_of(yard, key)) and not fixed


def _nearest(run: tuple[tuple[Point, Point], ...], place: Point) -> tuple[int, Point]:
    """The number of the edge nearest to a place, and the nearest place on it."""
    feet = [nearest_on(a, b, place) for a, b in run]
    number = min(range(len(feet)), key=lambda n: distance(feet[n], place))
    return number, feet[number]


def remove_corner(open_yard: OpenYard, place: Point, reach: float) -> bool:
    """Take out the corner under a place; True when there was one and enough are left."""
    grip = grip_at(open_yard, place, reach)
    if grip is None or grip == TURN:
        return False
    yard, key = open_yard.yard, next(iter(open_yard.selection))
    points = outline_of(yard, key)
    if not _takes_corners(yard, key) or len(points) <= (3 if is_closed(yard, key) else 2):
        return False
    new = (*points[:grip], *points[grip + 1 :])
    open_yard.commit(
        tr("Remove corner of {thing}", thing=names_of(yard, {key})), with_outline(yard, key, new)
    )
    return True


def with_outline(yard: Yard, key: str, points: Outline) -> Yard:
    """The yard with other corners for the lot or one thing."""
    return with_handles(yard, key, points)
