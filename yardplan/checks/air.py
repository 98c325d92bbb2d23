"""Air and slope: shelter from wind, cold pockets uphill of fences and at the foot of a slope, steepness."""

from __future__ import annotations

from collections.abc import Iterator

import numpy as np
import shapely

from yardplan.checks.check import Check, Wording
from yardplan.checks.finding import Figure, Finding, Mark, Weight
from yardplan.checks.grouping import grouped
from yardplan.checks.lines import Array
from yardplan.checks.shapes import has_area
from yardplan.checks.shortfall import Mask
from yardplan.checks.survey import Survey
from yardplan.language import later
from yardplan.yard.ground import Barrier, Building

NAME = "air"

#: Cosine of the widest angle between the slope and the way to a barrier that still dams cold air.
_ACROSS = float(np.cos(np.radians(45)))


def downhill(survey: Survey) -> Array:
    """The direction on the drawing in which the ground falls, a unit vector."""
    site = survey.yard.site
    turn = np.radians(site.slope_aspect + site.north)
    return np.array([np.sin(turn), np.cos(turn)])


def _solid(survey: Survey, thing: object) -> bool:
    if isinstance(thing, Barrier):
        return thing.light_share <= survey.rules.value("solid-light-share")
    return isinstance(thing, Building)


def _dams(survey: Survey) -> Iterator[Finding]:
    """Plants on the uphill side of something solid that lies across the slope."""
    layout, value = survey.layout, survey.rules.value
    fall = downhill(survey)
    for column in layout.columns("barrier", "building"):
        feature = layout.features[column]
        if not _solid(survey, feature.thing):
            continue
        gap = layout.gaps[:, column]
        for i in np.nonzero(layout.planted & (gap > 0) & (gap < value("cold-pocket-reach")))[0]:
            near = layout.nearest(int(i), column)
            way = np.subtract(near, layout.xy[i]) / max(float(gap[i]), 1e-9)
            if float(way @ fall) < _ACROSS:
                continue
            shown = {
                "distance": Figure(float(gap[i]), "length"), "gap": survey.rules.figure("drain-gap"),
                "reach": survey.rules.figure("cold-pocket-reach"),
            }
            yield survey.finding(
                NAME, "cold_pocket", Weight.CAUTION, (layout.plants[i].id, feature.id), "cold-pocket-reach",
                shown, (Mark((layout.plants[i].place, near), "line"),),
            )


def _foot(survey: Survey) -> Iterator[Finding]:
    """One advice for the plants on the lowest strip of a sloping lot."""
    layout = survey.layout
    if not has_area(survey.yard.lot) or not len(layout.plants):
        return
    fall = downhill(survey)
    lowest = float((np.array(survey.yard.lot) @ fall).max())
    strip = survey.rules.value("cold-pocket-reach")
    low = layout.planted & (layout.xy @ fall > lowest - strip) & (layout.xy @ fall <= lowest)
    things = tuple(sorted(layout.plants[i].id for i in np.nonzero(low)[0]))
    if things:
        shown = {"reach": Figure(strip, "length"), "count": Figure(len(things), "count")}
        yield survey.finding(NAME, "slope_foot", Weight.ADVICE, things, "cold-pocket-reach", shown)


def _cold_rows(survey: Survey) -> Iterator[Finding]:
    """Rows that run across a slope hold cold air like a hedge."""
    fall = downhill(survey)
    for row, line in zip(survey.layout.rows, survey.layout.row_lines, strict=True):
        ends = shapely.get_coordinates(line)
        way = ends[-1] - ends[0]
        long = float(np.hypot(*way))
        if long > 0 and abs(float(way @ fall)) / long < 1 - _ACROSS:
            shown = {"gap": survey.rules.figure("drain-gap")}
            yield survey.finding(
                NAME, "row_across", Weight.ADVICE, (row.id,), "drain-gap", shown,
                (Mark(row.row.line, "line"),),
            )


def _sheltered(survey: Survey) -> Mask:
    """Plants within reach of the shelter of a building, wall, fence or hedge: some heights from it."""
    layout, times = survey.layout, survey.rules.value("windbreak-reach")
    sheltered = np.zeros(len(layout.plants), dtype=bool)
    for column in layout.columns("barrier", "building"):
        thing = layout.features[column].thing
        height = thing.eaves if isinstance(thing, Building) else getattr(thing, "height", 0.0)
        sheltered |= np.abs(layout.gaps[:, column]) <= times * height
    return sheltered


def _windswept(survey: Survey) -> list[Finding]:
    """Kinds that want shelter from wind and have none in reach, said once."""
    layout = survey.layout
    bare = layout.planted & layout.members("wants shelter") & ~_sheltered(survey)
    shown = {"times": Figure(survey.rules.value("windbreak-reach"), "count")}
    return grouped(
        survey.finding(
            NAME, "windswept", Weight.ADVICE, (layout.plants[i].id,), "windbreak-reach", shown,
            (Mark((layout.plants[i].place,)),),
        )
        for i in np.nonzero(bare)[0]
    )


def run(survey: Survey) -> list[Finding]:
    """Findings on wind and cold air; nothing is said of cold air where the ground is level."""
    site, value = survey.yard.site, survey.rules.value
    if site.slope < value("cold-barrier-slope"):
        return _windswept(survey)
    found = [*_windswept(survey), *_dams(survey), *_foot(survey), *_cold_rows(survey)]
    if site.slope > value("good-slope-high") and (survey.yard.plantings or survey.yard.rows):
        shown = {"slope": Figure(site.slope, "share"), "limit": survey.rules.figure("good-slope-high")}
        found.append(survey.finding(NAME, "steep", Weight.ADVICE, (), "good-slope-high", shown))
    return found


CHECK = Check(
    name=NAME,
    title=later("Wind, cold air and slope"),
    run=run,
    near=False,
    wording={
        "cold_pocket": Wording(
            "{a} stands {distance} uphill of {b}, which dams the cold air that runs down on clear nights.",
            "Move it more than {reach} away, or leave a gap of {gap} at the foot of {b} for the air to "
            "drain.",
            "in a frost pocket",
        ),
        "windswept": Wording(
            "Nothing shelters these from wind, which tears their shoots: {things}.",
            "Set them within about {times} heights of a hedge, fence or building, or plant a windbreak that "
            "lets half the wind through.",
            "no shelter from wind",
        ),
        "slope_foot": Wording(
            "On the lowest {reach} of the lot, where cold air gathers if the ground levels out below: "
            "{things}.",
            "Put early bloomers higher up the slope, and keep the lower edge open.",
            "at the foot of the slope",
        ),
        "row_across": Wording(
            "The row {a} runs across the slope and can hold cold air like a hedge.",
            "Turn it down the slope, or leave {gap} free under the lowest wire and gaps in the row.",
            "row across the slope",
        ),
        "steep": Wording(
            "The ground rises {slope}; above {limit} work is hard and bare soil washes away.",
            "Terrace it, or keep the ground covered and work along the contour.",
            "steep ground",
        ),
    },
)
