"""Buried services: distance from located lines, and the call before every dig."""

from __future__ import annotations

from collections.abc import Iterator

import numpy as np
from attrs import evolve

from yardplan.checks.check import Wording
from yardplan.checks.clear.country import country_of, dig_words
from yardplan.checks.finding import Figure, Finding, Weight
from yardplan.checks.shortfall import Limit, Mask, figures, in_ground, limit, marks, nearer
from yardplan.checks.survey import Survey
from yardplan.language import later

NAME = "clearance"

BURIED = ("power", "gas", "water", "sewer", "drain", "communications", "irrigation", "other")


def _large(survey: Survey) -> Mask:
    large: Mask = survey.layout.height >= survey.rules.value("service-large-height")
    return large


def conflicts(survey: Survey) -> Limit:
    """Within the strip where only hands may dig, a plant on a buried line is a conflict."""
    value = survey.rules.value
    wanted = np.where(_large(survey), value("service-large"), value("service-small"))
    return limit(survey, "buried", value("service-dig"), wanted, in_ground(survey))


def _near(survey: Survey, column: int) -> Iterator[Finding]:
    large, closed = _large(survey), conflicts(survey)
    for short in nearer(survey, column, closed.wanted, in_ground(survey)):
        weight = Weight.CONFLICT if short.gap < closed.under[short.index] else Weight.CAUTION
        shown = figures(survey, short) | {
            "line": Figure(short.feature.sort, "text"), "dig": survey.rules.figure("service-dig"),
        }
        rule = "service-large" if large[short.index] else "service-small"
        yield survey.finding(NAME, "buried", weight, short.things, rule, shown, marks(survey, short))


def _ask_first(survey: Survey) -> list[Finding]:
    """One advice a yard: have the lines marked before the first hole."""
    if not (survey.yard.plantings or survey.yard.rows or survey.yard.beds):
        return []
    country = country_of(survey.yard.site)
    words, source = dig_words(country)
    shown = {"ask": Figure(words, "text"), "dig": survey.rules.figure("service-dig")}
    if not country:
        shown["missing"] = Figure(later("country"), "text")
    made = survey.finding(NAME, "ask_first", Weight.ADVICE, (), "service-dig", shown)
    return [evolve(made, source=source)]


def run(survey: Survey) -> list[Finding]:
    """Findings on buried services."""
    columns = survey.layout.columns(*BURIED)
    return [*(f for column in columns for f in _near(survey, column)), *_ask_first(survey)]


WORDING = {
    "buried": Wording(
        "{a} stands {distance} from {b}, a buried line ({line}); {wanted} keeps roots and spades off it.",
        "Move {a} {short} to the {direction}. Have the line marked before you dig, and dig only by hand "
        "within {dig} of the marks.",
        "{short} too near the {line} line",
    ),
    "ask_first": Wording(
        "Buried lines may cross any yard, and their depth and place shift with time. {ask}.",
        "Have the lines marked, find private ones (lights, watering, pet fence) yourself, and dig by hand "
        "within {dig} of the marks.[ Enter the {missing} in the site card: lot-line and digging rules hang "
        "on it.]",
        "ask before you dig",
    ),
}
