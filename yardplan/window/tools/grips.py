"""Grips of the selected thing: square ones at its corners, a round one to turn it."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from yardplan.language import tr
from yardplan.window.canvas.geometry import distance, middle, nearest_on, stretches
from yardplan.window.open_yard import OpenYard
from yardplan.window.tools.naming import names_of
from yardplan.window.tools.tool import Handle
from yardplan.yard import edits
from yardplan.yard.edits import OUTLINE_FIELD, points_of
from yardplan.yard.ground import Barrier, Outline, Point, Service
from yardplan.yard.planting import Row
from yardplan.yard.positions import chosen
from yardplan.yard.yard import Thing, Yard

if TYPE_CHECKING:
    from yardplan.plants.stand import Stand

#: The grip that turns, in place of a corner's number.
TURN: Final = -1
#: The turning grip stands so far above the thing, as a share of its height, and at least so many metres.
_ABOVE, _LEAST = 0.15, 0.6


def outline_of(yard: Yard, key: str) -> Outline:
    """The corners that can be gripped: of the lot or of a thing drawn by corners."""
    if key == "lot":
        return yard.lot
    thing = yard.find(key)
    return points_of(thing) if thing is not None and type(thing) in OUTLINE_FIELD else ()


def is_closed(yard: Yard, key: str) -> bool:
    """True where the last corner joins the first."""
    thing = yard.find(key)
    return not isinstance(thing, Barrier | Row) and not (isinstance(thing, Service) and not thing.area)


def middle_of(yard: Yard, ids: frozenset[str]) -> Point:
    """The middle of things: the outline's middle for one, else of the box round all."""
    outlines = [points_of(thing) for thing in yard.named(ids)]
    if len(outlines) == 1:
        return middle(outlines[0])
    xs = [x for points in outlines for x, _ in points]
    ys = [y for points in outlines for _, y in points]
    return ((min(xs) + max(xs)) / 2, (min(ys) + max(ys)) / 2)


def _turn_place(open_yard: OpenYard) -> Point | None:
    """Where the round grip stands: above whatever has a direction."""
    yard, selection = open_yard.shown_yard, open_yard.selection
    things = [thing for thing in yard.named(selection) if not thing.locked]
    if not things or (len(things) == 1 and not _can_turn(things[0], open_yard.stand)):
        return None
    points = [point for thing in things for point in points_of(thing)]
    top, bottom = max(y for _, y in points), min(y for _, y in points)
    left, right = min(x for x, _ in points), max(x for x, _ in points)
    return ((left + right) / 2, top + max((top - bottom) * _ABOVE, _LEAST))


def _can_turn(thing: Thing, stand: Stand) -> bool:
    """Things with a direction: outlines, lines and flat-trained plants."""
    plants = chosen(stand.plants, (thing.id,))
    return type(thing) in OUTLINE_FIELD or any(plant.size.habit == "flat-trained" for plant in plants)


def handles(open_yard: OpenYard) -> tuple[Handle, ...]:
    """The grips of the selection."""
    yard, selection = open_yard.shown_yard, open_yard.selection
    made: list[Handle] = []
    if len(selection) == 1:
        key = next(iter(selection))
        thing = yard.find(key)
        if key == "lot" or (thing is not None and not thing.locked):
            made += [Handle(place=point) for point in outline_of(yard, key)]
    return (*made, *turn_handle(open_yard))


def turn_handle(open_yard: OpenYard) -> tuple[Handle, ...]:
    """The round grip of the selection; the square ones are drawn with the selection itself."""
    place = _turn_place(open_yard)
    return (Handle(place=place, round=True),) if place is not None else ()


def grip_at(open_yard: OpenYard, place: Point, reach: float) -> int | None:
    """The number of the corner grip under a place, TURN for the round one, None for none."""
    best: tuple[float, int] | None = None
    for number, handle in enumerate(handles(open_yard)):
        off = distance(handle.place, place)
        if off <= reach and (best is None or off < best[0]):
            best = (off, TURN if handle.round else number)
    return best[1] if best else None


def add_corner(open_yard: OpenYard, place: Point, reach: float) -> bool:
    """Double click on an edge of the selected thing puts a corner there; True when it did."""
    if len(open_yard.selection) != 1:
        return False
    yard, key = open_yard.yard, next(iter(open_yard.selection))
    points = outline_of(yard, key)
    edges = stretches(points, closed=is_closed(yard, key))
    feet = [nearest_on(a, b, place) for a, b in edges]
    ranked = ((distance(foot, place), number, foot) for number, foot in enumerate(feet))
    off, number, foot = min(ranked, default=(reach + 1, 0, place))
    if off > reach or any(distance(foot, corner) < reach / 4 for corner in points):
        return False
    new = (*points[: number + 1], foot, *points[number + 1 :])
    open_yard.commit(tr("Add corner to {thing}", thing=names_of(yard, {key})), with_outline(yard, key, new))
    return True


def remove_corner(open_yard: OpenYard, place: Point, reach: float) -> bool:
    """Take out the corner under a place; True when there was one and enough are left."""
    grip = grip_at(open_yard, place, reach)
    if grip is None or grip == TURN:
        return False
    yard, key = open_yard.yard, next(iter(open_yard.selection))
    points = outline_of(yard, key)
    if len(points) <= (3 if is_closed(yard, key) else 2):
        return False
    new = (*points[:grip], *points[grip + 1 :])
    open_yard.commit(
        tr("Remove corner of {thing}", thing=names_of(yard, {key})), with_outline(yard, key, new)
    )
    return True


def with_outline(yard: Yard, key: str, points: Outline) -> Yard:
    """The yard with other corners for the lot or one thing."""
    if key == "lot":
        return edits.set_lot(yard, points)
    thing = yard.find(key)
    return edits.replace(yard, edits.with_points(thing, points)) if thing is not None else yard
