"""Paths, drives, terraces, pools: stems, thirsty roots and falling fruit."""

from __future__ import annotations

from collections.abc import Iterator

import numpy as np

from yardplan.checks.check import Wording
from yardplan.checks.finding import Figure, Finding, Weight
from yardplan.checks.overlaps import TOUCH
from yardplan.checks.shortfall import Limit, figures, in_ground, limit, marks, nearer, trees
from yardplan.checks.survey import Survey

NAME = "clearance"

PAVED = ("path", "drive", "terrace", "street")
WATER = ("pool", "pond")
#: What a stem cannot stand in.
SOLID = (*PAVED, *WATER, "building")


def conflicts(survey: Survey) -> Limit:
    """A stem on paving, in water or in a building is a conflict."""
    return limit(survey, "inside", -TOUCH, 0.0, in_ground(survey))


def _inside(survey: Survey, column: int) -> Iterator[Finding]:
    """Stems that stand on paving, in water or in a building."""
    stems = survey.layout.gaps[:, column] < conflicts(survey).under
    for short in nearer(survey, column, 0.0, stems):
        yield survey.finding(
            NAME, "inside", Weight.CONFLICT, short.things, "paving-stem", figures(survey, short),
            marks(survey, short),
        )


def _paved(survey: Survey, column: int) -> Iterator[Finding]:
    value = survey.rules.value
    wooded = trees(survey) & (survey.layout.gaps[:, column] >= 0)
    rough = survey.layout.members("aggressive roots")
    wanted = np.where(rough, value("paving-thirsty"), value("paving-stem"))
    for short in nearer(survey, column, wanted, wooded):
        strong = bool(rough[short.index])
        rule, weight = ("paving-thirsty", Weight.CAUTION) if strong else ("paving-stem", Weight.ADVICE)
        yield survey.finding(
            NAME, "paving", weight, short.things, rule, figures(survey, short), marks(survey, short)
        )


def _water(survey: Survey, column: int) -> Iterator[Finding]:
    value, height = survey.rules.value, survey.layout.height
    names = np.where(
        height >= value("pool-large-height"), "pool-large",
        np.where(height >= value("pool-medium-height"), "pool-medium", "pool-any"),
    )
    wanted = np.array([value(str(name)) for name in names])
    for short in nearer(survey, column, wanted, trees(survey) & (survey.layout.gaps[:, column] >= 0)):
        shown = figures(survey, short) | {"height": Figure(short.plant.mature.height, "length")}
        yield survey.finding(
            NAME, "pool", Weight.CAUTION, short.things, str(names[short.index]), shown, marks(survey, short)
        )


def run(survey: Survey) -> list[Finding]:
    """Findings on paving, pools, and on plants set inside a building."""
    found: list[Finding] = []
    for column, feature in enumerate(survey.layout.features):
        if feature.sort in SOLID:
            found.extend(_inside(survey, column))
        if feature.sort in PAVED:
            found.extend(_paved(survey, column))
        elif feature.sort in WATER:
            found.extend(_water(survey, column))
    return found


WORDING = {
    "inside": Wording(
        "{a} stands inside {b}.", "Move it {short} or more to the {direction}, or set it in a container.",
        "inside {b}",
    ),
    "paving": Wording(
        "{a} stands {distance} from {b}; {wanted} keeps its roots from lifting the paving.",
        "Move {a} {short} to the {direction}.",
        "{short} too near the paving",
    ),
    "pool": Wording(
        "{a} (about {height} tall) stands {distance} from {b}; {wanted} keeps leaves and fruit out and "
        "roots off its pipes.",
        "Move {a} {short} to the {direction}.",
        "{short} too near the water",
    ),
}
