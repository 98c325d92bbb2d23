"""Clear ground of things that move together: rows, beds, plants in their pots, several plants as they stand.

Ground is told for their anchor, the middle of the box round them. What they do to each other does not change
when they move, so only what stays is counted.
"""

from __future__ import annotations

from collections.abc import Collection, Iterator

import shapely
from shapely.geometry.base import BaseGeometry

from yardplan.arrange.clear_ground import ClearGround, by_steps, heard, lit, opened
from yardplan.arrange.closed import Closed
from yardplan.arrange.closed_clearance import closed_clearance
from yardplan.arrange.closed_light import Progress
from yardplan.arrange.closed_lines import closed_lines
from yardplan.arrange.closed_neighbours import closed_neighbours
from yardplan.arrange.closed_room import closed_room
from yardplan.arrange.closed_soil import closed_soil
from yardplan.arrange.moving import Moving, moving_of
from yardplan.arrange.moving_light import MovingLightPass
from yardplan.arrange.moving_pollen import closed_to_pollen, unset
from yardplan.arrange.swept import moved
from yardplan.checks import beds, drainage, soil
from yardplan.checks.finding import Weight
from yardplan.checks.pollination import NAME as POLLINATION
from yardplan.checks.run import CHECKS
from yardplan.checks.survey import Survey
from yardplan.plants.stand import Standing
from yardplan.sun.season import Detail
from yardplan.yard.planting import Planting


def clear_ground_together(
    survey: Survey, ids: Collection[str], *, light: Detail | None = "full", progress: Progress | None = None
) -> ClearGround | None:
    """Clear ground of things of the survey's yard; None where they are not plants, rows, beds and pots alone.

    `light`: at which detail light is counted; None leaves it out (quick). `progress` hears 0 to 1.
    """
    details: tuple[Detail, ...] = () if light is None else (light,)
    steps = list(steps_together(survey, ids, details, progress))
    return steps[-1] if steps else None


def steps_together(
    survey: Survey, ids: Collection[str], details: tuple[Detail, ...] = ("live", "full"),
    progress: Progress | None = None,
) -> Iterator[ClearGround]:
    """The same in steps: at once without light, then with it ever finer; none where nothing can be told."""
    moving = moving_of(survey, ids)
    if moving is None:
        return
    alone = _one_plant(moving)
    if alone is not None:
        yield from by_steps(survey, alone, details, progress)
        return
    ground = _by_room(moving, progress)
    yield ground
    light = MovingLightPass(moving, ground.open, progress)
    for detail in details:
        yield lit(ground, tuple(light.closed(detail)), detail)


def _one_plant(moving: Moving) -> Planting | None:
    """The one plant that moves, in its pot or not; None for anything more."""
    if moving.rows or moving.beds or len(moving.plants) != 1:
        return None
    thing = moving.plants[0].thing
    return thing if isinstance(thing, Planting) else None


def _by_room(moving: Moving, progress: Progress | None) -> ClearGround:
    """Everything but light."""
    closed = tuple(
        one for part in (_of_plants(moving, progress), closed_lines(moving), closed_to_pollen(moving))
        for one in heard(part, progress) if not one.geometry.is_empty
    )
    return ClearGround(
        plant=min(moving.ids), open=opened(_room(moving), closed), closed=closed, anywhere=_anywhere(moving),
        light=None, anchor=moving.anchor,
    )


def _room(moving: Moving) -> BaseGeometry:
    """Where the anchor may lie at all: each plant on the room, and the anchor not far off it."""
    room = moving.known
    for plant in moving.plants:
        room = room.intersection(moved(moving.room, moving.shift_of(plant.place)))
    return room if moving.plants or moving.survey.yard.lot else room.intersection(moving.room)


def _of_plants(moving: Moving, progress: Progress | None) -> Iterator[Closed]:
    """What closes ground to each of the plants, told for the anchor."""
    for plant in moving.plants:
        asked = moving.asked(plant)
        parts = [closed_room, closed_clearance, closed_neighbours]
        if not _in_own_bed(moving, plant):
            parts.append(closed_soil)
        closed = [one for part in parts for one in heard(part(asked), progress)]
        yield from moving.for_anchor(closed, plant.place)


def _in_own_bed(moving: Moving, plant: Standing) -> bool:
    """True for a plant in a bed that moves along: it keeps its soil."""
    here = shapely.Point(plant.place)
    return any(shapely.Polygon(bed.bed.outline).buffer(0).covers(here) for bed in moving.beds)


def _anywhere(moving: Moving) -> tuple[tuple[str, str], ...]:
    """Conflicts of the things that do not depend on where they stand."""
    found = {
        (finding.check, finding.kind) for check in CHECKS if not check.places
        for finding in check.run(moving.alone)
        if finding.weight is Weight.CONFLICT and not moving.ids.isdisjoint(finding.things)
    }
    # The soil of a row is that of the yard, that of a bed and of plants in it its own: neither changes when
    # they move, nor does how many plants a row takes.
    lines = {row.id for row in moving.rows} | {bed.id for bed in moving.beds}
    lines |= {plant.id for plant in moving.plants if _in_own_bed(moving, plant)}
    found |= {
        (finding.check, finding.kind) for check in (soil.CHECK, drainage.CHECK, beds.CHECK)
        for finding in check.run(moving.alone)
        if finding.weight is Weight.CONFLICT and not lines.isdisjoint(finding.things)
    }
    if unset(moving):
        found.add((POLLINATION, "unset"))
    return tuple(sorted(found))
