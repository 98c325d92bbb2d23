"""Rows against what lies on, under and over the ground: paving, water, buried services, overhead lines."""

from __future__ import annotations

from collections.abc import Iterator

from yardplan.checks.check import Wording
from yardplan.checks.clear.lines_below import BURIED
from yardplan.checks.clear.paving import PAVED, WATER
from yardplan.checks.finding import Figure, Finding, Mark, Weight
from yardplan.checks.layout import Feature
from yardplan.checks.shapes import area_of, line_of
from yardplan.checks.survey import Survey
from yardplan.plants.stand import StandingRow

NAME = "clearance"


def _gap(row: StandingRow, feature: Feature) -> float:
    """Distance from a row's line to a feature, metres; 0 where they cross or one holds the other."""
    shape = area_of(feature.points) if feature.closed else line_of(feature.points)
    return float(line_of(row.row.line).distance(shape))


def _made(
    survey: Survey, row: StandingRow, feature: Feature, kind: str, weight: Weight, rule: str,
    shown: dict[str, Figure],
) -> Finding:
    mark = Mark(row.row.line, "line")
    return survey.finding(NAME, kind, weight, (row.id, feature.id), rule, shown, (mark,))


def _buried(survey: Survey, row: StandingRow, feature: Feature) -> Iterator[Finding]:
    value, gap = survey.rules.value, _gap(row, feature)
    wanted = value("service-small")
    if gap < wanted - value("clearance-tolerance"):
        shown = {
            "distance": Figure(gap, "length"), "wanted": Figure(wanted, "length"),
            "short": Figure(wanted - gap, "length"), "line": Figure(feature.sort, "text"),
            "dig": survey.rules.figure("service-dig"),
        }
        weight = Weight.CONFLICT if gap < value("service-dig") else Weight.CAUTION
        yield _made(survey, row, feature, "row_buried", weight, "service-small", shown)


def _overhead(survey: Survey, row: StandingRow, feature: Feature) -> Iterator[Finding]:
    value, height = survey.rules.value, row.mature.height
    low, mid = value("overhead-low-height"), value("overhead-mid-height")
    side = 0.0 if height <= low else value("overhead-low-side" if height <= mid else "overhead-mid-side")
    gap = _gap(row, feature)
    if gap < side - value("clearance-tolerance"):
        rule = "overhead-low-height" if gap < value("overhead-low-side") else "overhead-mid-height"
        shown = {
            "height": Figure(height, "length"), "distance": Figure(gap, "length"),
            "tallest": survey.rules.figure(rule), "short": Figure(side - gap, "length"),
        }
        yield _made(survey, row, feature, "row_overhead", Weight.CONFLICT, rule, shown)


def _across(survey: Survey, row: StandingRow, feature: Feature) -> Iterator[Finding]:
    if _gap(row, feature) <= 0:
        yield _made(survey, row, feature, "row_across", Weight.CONFLICT, "paving-stem", {})


def run(survey: Survey) -> list[Finding]:
    """Findings on rows; against buildings and the lot line see the spacing check."""
    found: list[Finding] = []
    for row in survey.layout.rows:
        for feature in survey.layout.features:
            if feature.sort in BURIED:
                found.extend(_buried(survey, row, feature))
            elif feature.sort == "overhead line":
                found.extend(_overhead(survey, row, feature))
            elif feature.sort in PAVED + WATER:
                found.extend(_across(survey, row, feature))
    return found


WORDING = {
    "row_buried": Wording(
        "The row {a} runs {distance} from {b}, a buried line ({line}); {wanted} keeps roots, posts and "
        "spades off it.",
        "Shift the row {short} away. Have the line marked before you dig, and dig only by hand within {dig} "
        "of the marks.",
        "row {short} too near the {line} line",
    ),
    "row_overhead": Wording(
        "The row {a} grows to about {height} and runs {distance} from {b}; nothing taller than {tallest} "
        "belongs there.",
        "Keep its posts and plants under {tallest}, or shift it {short} away.",
        "row too tall under the line",
    ),
    "row_across": Wording(
        "The row {a} runs across {b}.", "Shorten or shift the row so that it keeps to open ground.",
        "row across {b}",
    ),
}
