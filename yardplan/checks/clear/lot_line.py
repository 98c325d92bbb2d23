"""The lot line: nothing outside it, and the distance that a country's law or your own figure asks for."""

from __future__ import annotations

from collections.abc import Iterator

import numpy as np
import shapely
from attrs import evolve

from yardplan.checks.check import Wording
from yardplan.checks.clear.country import LineLaw, country_of, law_for
from yardplan.checks.finding import Figure, Finding, Mark, Weight
from yardplan.checks.overlaps import TOUCH
from yardplan.checks.shortfall import in_ground
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


def _rows_outside(survey: Survey) -> Iterator[Finding]:
    lot = shapely.Polygon(survey.yard.lot)
    lines = [(row.id, shapely.LineString(row.row.line)) for row in survey.layout.rows]
    areas = [(bed.id, shapely.Polygon(bed.outline)) for bed in survey.yard.beds if len(bed.outline) >= 3]
    for thing, shape in (*lines, *areas):
        out = float(shape.hausdorff_distance(shape.intersection(lot))) if not lot.covers(shape) else 0.0
        if out > survey.rules.value("clearance-tolerance") or (out > 0 and not lot.intersects(shape)):
            shown = {"short": Figure(out, "length")}
            yield survey.finding(
                NAME, "row_outside", Weight.CONFLICT, (thing, "lot"), "lot-stem-share", shown,
                (Mark(_points(shape), "line"),),
            )


def _points(shape: shapely.Geometry) -> tuple[tuple[float, float], ...]:
    return tuple((float(x), float(y)) for x, y in shapely.get_coordinates(shape))


def _own_law(survey: Survey, height: float, tall: float) -> LineLaw | None:
    """The yard's own figures as a law, where they are entered."""
    name = "lot-line-tall" if height > tall else "lot-line-low"
    if not survey.rules.is_local(name):
        return None
    return LineLaw("", tall, survey.rules.value(name), "", name)


def _by_law(survey: Survey, column: int) -> Iterator[Finding]:
    layout = survey.layout
    country = country_of(survey.yard.site)
    tall = survey.rules.value("lot-line-height")
    inside = -layout.gaps[:, column]
    for i in np.nonzero(in_ground(survey) & (inside >= 0))[0]:
        height = float(layout.height[i])
        own = _own_law(survey, height, tall)
        law = own or law_for(country, height)
        if law is None or inside[i] >= law.distance - survey.rules.value("clearance-tolerance"):
            continue
        near, place = layout.nearest(int(i), column), layout.plants[i].place
        shown = {
            "distance": Figure(float(inside[i]), "length"), "wanted": Figure(law.distance, "length"),
            "short": Figure(law.distance - float(inside[i]), "length"), "height": Figure(height, "length"),
            "direction": Figure(survey.direction(near, place), "text"),
        }
        if not own:
            shown |= {"country": Figure(country, "text"), "law": Figure(law.note, "text")}
        made = survey.finding(
            NAME, "law_own" if own else "law", Weight.CONFLICT, (layout.plants[i].id, "lot"),
            law.note if own else law.source, shown, (Mark((place, near), "line"),),
        )
        yield made if own else evolve(made, source=law.source)


def run(survey: Survey) -> list[Finding]:
    """Findings on the lot line."""
    columns = survey.layout.columns("lot")
    if not columns:
        return []
    return [
        *_outside(survey, columns[0]), *_rows_outside(survey), *_by_law(survey, columns[0]),
    ]


WORDING = {
    "outside": Wording(
        "{a} stands {short} outside the lot line.", "Move it {short} or more to the {direction}.",
        "outside the lot line",
    ),
    "row_outside": Wording(
        "{a} reaches {short} outside the lot line.", "Shift or shorten it by {short}.", "outside the lot "
        "line",
    ),
    "law": Wording(
        "{a} (about {height} tall) stands {distance} inside the lot line. The usual figure there "
        "({country}) is "
        "{wanted}. {law}.",
        "Move {a} {short} to the {direction}. This is a summary, not advice: check locally.",
        "{short} short of the legal distance",
    ),
    "law_own": Wording(
        "{a} (about {height} tall) stands {distance} inside the lot line; your local figure is {wanted}.",
        "Move {a} {short} to the {direction}, or ask your neighbour and the council.",
        "{short} short of the local distance",
    ),
}
