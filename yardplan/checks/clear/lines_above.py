"""Overhead lines: how tall a plant may grow beside them, and room for ladders and pole tools."""

from __future__ import annotations

from collections.abc import Iterator

import numpy as np

from yardplan.checks.check import Wording
from yardplan.checks.finding import Figure, Finding, Weight
from yardplan.checks.shortfall import Limit, figures, in_ground, limit, marks, nearer
from yardplan.checks.survey import Survey

NAME = "clearance"


def conflicts(survey: Survey) -> Limit:
    """A plant too tall for its distance from an overhead line is a conflict."""
    layout, value = survey.layout, survey.rules.value
    low, mid = value("overhead-low-height"), value("overhead-mid-height")
    wanted = np.where(
        layout.height <= low, 0.0,
        np.where(layout.height <= mid, value("overhead-low-side"), value("overhead-mid-side")),
    )
    return limit(survey, "overhead", wanted, wanted, in_ground(survey) & (layout.height > low))


def _too_tall(survey: Survey, column: int) -> Iterator[Finding]:
    layout, value = survey.layout, survey.rules.value
    tall = in_ground(survey) & (layout.height > value("overhead-low-height"))
    for short in nearer(survey, column, conflicts(survey).wanted, tall):
        near = short.gap < value("overhead-low-side")
        rule = "overhead-low-height" if near else "overhead-mid-height"
        shown = figures(survey, short) | {
            "height": Figure(short.plant.mature.height, "length"), "tallest": survey.rules.figure(rule),
        }
        yield survey.finding(
            NAME, "overhead", Weight.CONFLICT, short.things, rule, shown, marks(survey, short)
        )


def _tools(survey: Survey, column: int) -> Iterator[Finding]:
    """Plants that are picked or pruned from a ladder within reach of the line."""
    layout, value = survey.layout, survey.rules.value
    laddered = in_ground(survey) & (layout.height > value("ladder-height"))
    laddered &= layout.height <= value("overhead-low-height")
    for short in nearer(survey, column, layout.reach + value("overhead-tools"), laddered):
        shown = figures(survey, short) | {"keep": survey.rules.figure("overhead-tools")}
        yield survey.finding(
            NAME, "overhead_tools", Weight.CAUTION, short.things, "overhead-tools", shown,
            marks(survey, short),
        )


def run(survey: Survey) -> list[Finding]:
    """Findings on overhead lines."""
    columns = survey.layout.columns("overhead line")
    return [f for column in columns for f in (*_too_tall(survey, column), *_tools(survey, column))]


WORDING = {
    "overhead": Wording(
        "{a} grows to about {height} and stands {distance} from {b}; nothing taller than {tallest} belongs "
        "there.",
        "Choose a form that stays under {tallest}, or move {a} {short} to the {direction}. Pruning near a "
        "line is work for the utility.",
        "too tall under the line",
    ),
    "overhead_tools": Wording(
        "{a} is worked from a ladder {distance} from {b}.",
        "Keep people, ladders and pole tools {keep} from the line, or move {a} {short} to the {direction}.",
        "ladder near the line",
    ),
}
