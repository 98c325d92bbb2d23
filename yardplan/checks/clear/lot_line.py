"""Plants at the lot line: none outside it, and the distance a country's law or your own figure asks for."""

from __future__ import annotations

from collections.abc import Iterator

import numpy as np
from numpy.typing import NDArray

from yardplan.checks.check import Wording
from yardplan.checks.clear.country import LineLaw, country_of, line_laws
from yardplan.checks.finding import Figure, Finding, Mark, Weight
from yardplan.checks.lines import Array
from yardplan.checks.overlaps import TOUCH
from yardplan.checks.shortfall import Limit, in_ground, limit
from yardplan.checks.survey import Survey

NAME = "clearance"


def _outside(survey: Survey, column: int) -> Iterator[Finding]:
    layout = survey.layout
    for i in np.nonzero(layout.planted & (layout.gaps[:, column] > TOUCH))[0]:
        near = layout.nearest(int(i), column)
        place = layout.plants[i].place
        shown = {
            "short": Figure(float(layout.gaps[i, column]), "length"),
            "direction": Figure(survey.direction(place, near), "text"),
        }
        yield survey.finding(
            NAME, "outside", Weight.CONFLICT, (layout.plants[i].id, "lot"), "lot-stem-share", shown,
            (Mark((place, near), "line"),),
        )


def _laws(survey: Survey) -> tuple[LineLaw, ...]:
    """The yard's own figures where they are entered, else the country's presets; lowest plants first."""
    tall = survey.rules.value("lot-line-height")
    names = (("lot-line-low", 0.0), ("lot-line-tall", tall))
    own = [
        LineLaw("", above, survey.rules.value(name), "", name)
        for name, above in names if survey.rules.is_local(name)
    ]
    return tuple(own) or line_laws(country_of(survey.yard.site))


def _law_of(survey: Survey, laws: tuple[LineLaw, ...]) -> tuple[Array, NDArray[np.intp]]:
    """The distance that the laws ask of every plant, and the number of the law that holds."""
    height = survey.layout.height
    wanted, law_of = np.zeros(len(height)), np.zeros(len(height), dtype=np.intp)
    for number, law in enumerate(laws):
        held = height > law.taller_than
        wanted[held], law_of[held] = law.distance, number
    return wanted, law_of


def conflicts(survey: Survey) -> Limit:
    """Inside the lot but nearer to its line than the law asks; distances are those from within."""
    laws = _laws(survey)
    wanted, _ = _law_of(survey, laws)
    kind = "law" if all(law.country for law in laws) else "law_own"
    return limit(survey, kind, wanted, wanted, in_ground(survey))


def _by_law(survey: Survey, column: int) -> Iterator[Finding]:
    laws = _laws(survey)
    _, law_of = _law_of(survey, laws)
    inside = -survey.layout.gaps[:, column]
    for i in np.nonzero((inside < conflicts(survey).under) & (inside >= -TOUCH))[0]:
        yield _short_of(survey, int(i), column, laws[law_of[i]])


def _short_of(survey: Survey, i: int, column: int, law: LineLaw) -> Finding:
    """The finding of one plant nearer to the lot line than a law or an own figure asks for."""
    layout = survey.layout
    inside = -float(layout.gaps[i, column])
    near, place = layout.nearest(i, column), layout.plants[i].place
    shown = {
        "distance": Figure(inside, "length"), "wanted": Figure(law.distance, "length"),
        "short": Figure(law.distance - inside, "length"),
        "height": Figure(float(layout.height[i]), "length"),
        "direction": Figure(survey.direction(near, place), "text"),
    }
    things, marks = (layout.plants[i].id, "lot"), (Mark((place, near), "line"),)
    if not law.country:
        return survey.finding(NAME, "law_own", Weight.CONFLICT, things, law.note, shown, marks)
    shown |= {"country": Figure(law.country, "text"), "law": Figure(law.note, "text")}
    return Finding(
        check=NAME, kind="law", weight=Weight.CONFLICT, things=things, figures=shown, marks=marks,
        source=law.source,
    )


def run(survey: Survey) -> list[Finding]:
    """Findings on the lot line."""
    columns = survey.layout.columns("lot")
    if not columns:
        return []
    return [*_outside(survey, columns[0]), *_by_law(survey, columns[0])]


WORDING = {
    "outside": Wording(
        "{a} stands {short} outside the lot line.",
        "Move it {short} or more to the {direction}. What lies beyond the line is not yours to plant without "
        "leave; only a survey tells where it runs.",
        "outside the lot line",
    ),
    "law": Wording(
        "{a} (about {height} tall) stands {distance} inside the lot line. The usual figure there "
        "({country}) is {wanted}. {law}.",
        "Move {a} {short} to the {direction}. This is a summary, not advice: check locally.",
        "{short} short of the legal distance",
    ),
    "law_own": Wording(
        "{a} (about {height} tall) stands {distance} inside the lot line; your local figure is {wanted}.",
        "Move {a} {short} to the {direction}, or ask your neighbour and the council.",
        "{short} short of the local distance",
    ),
}
