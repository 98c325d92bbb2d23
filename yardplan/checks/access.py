"""Access: a way from the gates to every plant, row and bed, beds one can reach into, room for a ladder."""

from __future__ import annotations

from collections.abc import Iterator

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely.geometry.base import BaseGeometry

from yardplan.checks.check import Check, Wording
from yardplan.checks.finding import Figure, Finding, Mark, Weight
from yardplan.checks.grouping import grouped
from yardplan.checks.shapes import area_of, has_area, line_of
from yardplan.checks.shortfall import Mask
from yardplan.checks.survey import Survey
from yardplan.checks.ways import Shapes, Ways, crown_shapes, ways_of
from yardplan.language import later
from yardplan.yard.planting import Bed

NAME = "access"
_STARTS = {"paving": later("paving"), "largest part": later("largest part")}

#: Directions in which the ring for a ladder is tried, and how many quarters must be free.
_SIDES = 8
_QUARTERS = 2


def _shut_off(survey: Survey, ways: Ways) -> Iterator[Finding]:
    """Plants, rows and beds that no way leads to."""
    layout = survey.layout
    within = ways.width / 2 + survey.rules.value("access-arm")
    shown = {"width": Figure(ways.width, "length")}
    if len(layout.plants):
        gap = shapely.distance(crown_shapes(survey), ways.reached)
        far = np.isnan(gap) | (gap > within)
        for i in np.nonzero(layout.planted & far & _inside_lot(survey))[0]:
            plant = layout.plants[i]
            yield survey.finding(
                NAME, "shut_off", Weight.CAUTION, (plant.id,), "access-way", shown, (Mark((plant.place,)),)
            )
    for row, line in zip(layout.rows, layout.row_lines, strict=True):
        if _too_far(line.buffer(row.mature.spread / 2), ways, within):
            yield survey.finding(
                NAME, "shut_off", Weight.CAUTION, (row.id,), "access-way", shown,
                (Mark(row.row.line, "line"),),
            )


def _too_far(shape: BaseGeometry, ways: Ways, within: float) -> bool:
    return ways.reached.is_empty or float(shape.distance(ways.reached)) > within


def _inside_lot(survey: Survey) -> Mask:
    """Plants inside the lot line; the others are the lot-line rule's."""
    columns = survey.layout.columns("lot")
    return np.asarray((survey.layout.gaps[:, columns] <= 0).all(axis=1), dtype=bool)


def _bed(survey: Survey, ways: Ways, bed: Bed) -> Iterator[Finding]:
    """A bed that no way leads to, or whose middle is out of reach from the sides one can stand at."""
    outline = area_of(bed.outline)
    mark = (Mark(bed.outline, "area"),)
    within = ways.width / 2 + survey.rules.value("access-arm")
    if _too_far(outline, ways, within):
        shown = {"width": Figure(ways.width, "length")}
        yield survey.finding(NAME, "shut_off", Weight.CAUTION, (bed.id,), "access-way", shown, mark)
        return
    arm = survey.rules.value("bed-reach-one")
    slack = survey.rules.value("clearance-tolerance")
    sides = outline.boundary.intersection(ways.reached.buffer(ways.width / 2 + slack))
    missed = outline.difference(sides.buffer(arm + slack / 2))
    if missed.area > slack * outline.area:
        shown = {
            "share": Figure(missed.area / outline.area, "share"), "reach": Figure(arm, "length"),
            "across": Figure(2 * arm, "length"),
        }
        yield survey.finding(NAME, "deep_bed", Weight.ADVICE, (bed.id,), "bed-reach-one", shown, mark)


def _narrow_gates(survey: Survey, ways: Ways) -> Iterator[Finding]:
    slack = survey.rules.value("clearance-tolerance") / 2
    for gate in survey.yard.gates:
        if gate.width < ways.width - slack:
            shown = {
                "gate": Figure(gate.width, "length"), "width": Figure(ways.width, "length"),
                "short": Figure(ways.width - gate.width, "length"),
            }
            yield survey.finding(
                NAME, "narrow_gate", Weight.CAUTION, (gate.id,), "access-way", shown, (Mark((gate.place,)),)
            )


def _rings(survey: Survey, plants: NDArray[np.intp], room: float) -> Shapes:
    """Points in the middle of the ring that a ladder needs round each crown, plant by plant."""
    turns = np.arange(_SIDES) * 2 * np.pi / _SIDES
    around = np.stack([np.cos(turns), np.sin(turns)], axis=1)
    far = survey.layout.reach[plants] + room / 2
    places = survey.layout.xy[plants][:, None, :] + far[:, None, None] * around
    return np.asarray(shapely.points(places.reshape(-1, 2)), dtype=object)


def _free_quarters(survey: Survey, plants: NDArray[np.intp], room: float) -> NDArray[np.intp]:
    """How many quarters round each plant have room for a ladder."""
    walls: list[BaseGeometry] = [area_of(b.footprint) for b in survey.yard.buildings]
    walls += [line_of(b.line) for b in survey.yard.barriers]
    tree = shapely.STRtree([*crown_shapes(survey), *walls])
    point, thing = tree.query(_rings(survey, plants, room), predicate="dwithin", distance=room / 2)
    blocked = np.zeros(len(plants) * _SIDES, dtype=bool)
    blocked[point[thing != plants[point // _SIDES]]] = True
    sides = ~blocked.reshape(-1, _SIDES)
    free: NDArray[np.intp] = (sides & np.roll(sides, -1, axis=1))[:, :: _SIDES // 4].sum(axis=1)
    return free


def _ladders(survey: Survey) -> Iterator[Finding]:
    """Tall plants in the ground with fewer than two free quarters for a ladder's feet."""
    layout, value = survey.layout, survey.rules.value
    tall = layout.planted & ~layout.flat & ~layout.potted & (layout.height > value("ladder-height"))
    plants = np.nonzero(tall)[0]
    if not len(plants):
        return
    room = value("access-ladder")
    for i in plants[_free_quarters(survey, plants, room) < _QUARTERS]:
        shown = {"room": Figure(room, "length"), "height": Figure(float(layout.height[i]), "length")}
        yield survey.finding(
            NAME, "ladder", Weight.ADVICE, (layout.plants[i].id,), "access-ladder", shown,
            (Mark((layout.plants[i].place,)),),
        )


def run(survey: Survey) -> list[Finding]:
    """Findings on ways, beds and ladders."""
    ways = ways_of(survey)
    if ways is None or not (survey.yard.plantings or survey.yard.rows or survey.yard.beds):
        return []
    found = [*_shut_off(survey, ways), *_narrow_gates(survey, ways), *grouped(_ladders(survey))]
    for bed in survey.yard.beds:
        if has_area(bed.outline):
            found.extend(_bed(survey, ways, bed))
    if ways.entered_by != "gate":
        shown = {"start": Figure(_STARTS[ways.entered_by], "text")}
        found.append(survey.finding(NAME, "no_gate", Weight.ADVICE, (), "access-way", shown))
    return found


CHECK = Check(
    name=NAME,
    title=later("Ways and reach"),
    run=run,
    near=False,
    wording={
        "shut_off": Wording(
            "No free way of {width} leads to {a} once everything is full grown.",
            "Leave a way of {width} beside it, or keep what stands in it smaller.",
            "no way in at full size",
        ),
        "narrow_gate": Wording(
            "{a} is {gate} wide; the way you chose needs {width}.",
            "Widen the gate by {short}, or choose a narrower way among the fields of the yard.",
            "gate {short} too narrow",
        ),
        "deep_bed": Wording(
            "{share} of {a} is farther than {reach} from any side you can stand at.",
            "Make it at most {across} wide between two ways, or put a way or stepping stones through it.",
            "{share} out of reach",
        ),
        "ladder": Wording(
            "Picked from a ladder, but with {room} of free ground beyond the crown on fewer than two sides: "
            "{things}.",
            "Leave {room} free on two sides, or choose a form that is picked from the ground. Set ladders "
            "on level ground, away from power lines.",
            "no room for a ladder",
        ),
        "no_gate": Wording(
            "No gate is drawn, so ways are counted from the {start}.",
            "Draw the gate you come in by.",
            "draw a gate",
        ),
    },
)
