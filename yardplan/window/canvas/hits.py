"""What lies under a place: small things before large ones, near centres before far ones."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from typing import TYPE_CHECKING

from yardplan.window.canvas.geometry import distance, distance_to_line, inside
from yardplan.yard.edits import points_of
from yardplan.yard.ground import Outline, Point, Service
from yardplan.yard.handles import covered, line_of
from yardplan.yard.yard import Thing, Yard

if TYPE_CHECKING:
    from yardplan.plants.stand import Stand

#: A plant whose size is not known is as wide as this for the pointer, metres.
SMALL = 0.5

#: Id and how far off the pointer is, in metres; less is better.
Hit = tuple[str, float]


def thing_at(yard: Yard, stand: Stand, place: Point, reach: float) -> str | None:
    """The id of the thing under a place, `lot` for the lot line, None for bare ground.

    `reach` is how far the pointer may miss a line or a small thing, in metres.
    """
    for group in (_dots, _plants, _lines, _areas, _next_to_plants):
        best = min(group(yard, stand, place, reach), key=lambda hit: hit[1], default=None)
        if best is not None:
            return best[0]
    if yard.lot and distance_to_line(yard.lot, place, closed=True) <= reach:
        return "lot"
    return next((picture for picture, _ in _pictures(yard, stand, place, reach)), None)


def all_at(yard: Yard, stand: Stand, place: Point, reach: float) -> tuple[str, ...]:
    """Every thing under a place, best first: for stepping through what lies on top of each other."""
    found: list[str] = []
    for group in (_dots, _plants, _lines, _areas, _next_to_plants, _pictures):
        hits = sorted(group(yard, stand, place, reach), key=lambda hit: hit[1])
        found += [key for key, _ in hits if key not in found]
    return tuple(found)


def things_within(yard: Yard, left: float, bottom: float, right: float, top: float) -> frozenset[str]:
    """Ids of the things whose points all lie in an upright rectangle."""
    return frozenset(
        thing.id
        for thing in yard.things()
        if all(left <= x <= right and bottom <= y <= top for x, y in covered(thing))
    )


def _dots(yard: Yard, stand: Stand, place: Point, reach: float) -> Iterator[Hit]:
    """Gates, notes and pots: small, so the pointer may miss them a little."""
    things: tuple[tuple[Thing, float], ...] = (
        *((gate, max(gate.width / 2, reach)) for gate in yard.gates),
        *((note, 2 * reach) for note in yard.notes),
    )
    for thing, far in things:
        off = distance(points_of(thing)[0], place)
        if off <= far:
            yield thing.id, off


def _plants(yard: Yard, stand: Stand, place: Point, reach: float) -> Iterator[Hit]:
    known: set[str] = set()
    for plant in stand.plants:
        known.add(plant.id)
        off = distance(plant.place, place)
        if off <= max(plant.size.spread / 2, reach) and not plant.beyond_lot:
            yield plant.id, off
    for planting in yard.plantings:
        if planting.id not in known and (off := distance(planting.place, place)) <= max(SMALL, reach):
            yield planting.id, off
    for pot in yard.containers:
        if (off := distance(pot.place, place)) <= max(pot.diameter / 2, reach):
            # A plant standing in the pot is meant before its pot.
            yield pot.id, off + reach


def _next_to_plants(yard: Yard, stand: Stand, place: Point, reach: float) -> Iterator[Hit]:
    """Standing trees are wide: what stands beneath them comes first."""
    for tree in yard.standing_trees:
        if (off := distance(tree.place, place)) <= max(tree.spread / 2, reach):
            yield tree.id, off


def _lines(yard: Yard, stand: Stand, place: Point, reach: float) -> Iterator[Hit]:
    widths = {row.id: row.size.spread / 2 for row in stand.rows}
    lines: list[tuple[str, Outline, float]] = [
        *((row.id, row.line, max(widths.get(row.id, 0.0), reach)) for row in yard.rows),
        *((wall.id, wall.line, max(wall.thickness / 2, reach)) for wall in yard.barriers),
        *((pipe.id, pipe.points, reach) for pipe in yard.services if not pipe.area),
        *((length.id, line_of(length), reach) for length in yard.dimensions),
    ]
    for key, points, far in lines:
        off = distance_to_line(points, place)
        if off <= far:
            yield key, off


def _areas(yard: Yard, stand: Stand, place: Point, reach: float) -> Iterator[Hit]:
    """Areas, the one drawn on top first: beds over buildings over paving."""
    fields: list[Service] = [service for service in yard.services if service.area]
    layers: tuple[tuple[tuple[Thing, ...], float], ...] = (
        (yard.beds, 0.0), (yard.buildings, 1.0), (tuple(fields), 2.0), (yard.pavings, 3.0),
    )
    for things, rank in layers:
        for thing in things:
            points = points_of(thing)
            if inside(points, place) or distance_to_line(points, place, closed=True) <= reach / 2:
                yield thing.id, rank


def _pictures(yard: Yard, stand: Stand, place: Point, reach: float) -> Iterator[Hit]:
    """Pictures under the plan, the last drawn first; one that is locked is bare ground."""
    for picture in reversed(yard.pictures):
        if not picture.locked and inside(covered(picture), place):
            yield picture.id, 0.0


#: How a canvas asks what lies under a place.
Finder = Callable[[Point, float], str | None]
