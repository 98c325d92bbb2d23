"""What reaches beyond the lot line: beds, rows, and what stands there and is not marked as next door's.

Whose ground it is, is property law: only a survey tells where the line runs. So beds and rows out there are
conflicts, and what is drawn as standing there already is a caution: it may be a slip of the pen.
"""

from __future__ import annotations

from collections.abc import Iterator
from functools import lru_cache

import numpy as np
import shapely
from attrs import frozen
from shapely.geometry.base import BaseGeometry

from yardplan.checks.check import Wording
from yardplan.checks.finding import Figure, Finding, Mark, Weight
from yardplan.checks.shapes import area_of, coordinates, has_area, line_of
from yardplan.checks.survey import Survey
from yardplan.yard.ground import Outline

NAME, RULE = "clearance", "lot-line-drawn"

#: A line or rim out there is measured at so many metres, so that the middle of a long one counts too.
_STEP = 0.25
#: Ways that lead over the verge to the street, where the lot ends before it does.
_LEADS_OUT = ("drive", "path")


@frozen(eq=False)
class _Drawn:
    """One thing against the lot line; `closed` True for an area. `streets` are what it may lead out to."""

    id: str
    kind: str
    weight: Weight
    points: Outline
    closed: bool
    streets: tuple[Outline, ...] = ()

    @property
    def shape(self) -> BaseGeometry:
        """The area, or the line where there is none."""
        return area_of(self.points) if self.closed and has_area(self.points) else line_of(self.points)


def _planned(survey: Survey) -> Iterator[_Drawn]:
    """Rows and beds: they are for the person to place, so out there they are conflicts."""
    for row in survey.stand.rows:
        if row.row.line:
            yield _Drawn(row.id, "row_outside", Weight.CONFLICT, row.row.line, False)
    for bed in survey.yard.beds:
        if has_area(bed.outline):
            yield _Drawn(bed.id, "row_outside", Weight.CONFLICT, bed.outline, True)


def _standing(survey: Survey) -> Iterator[_Drawn]:
    """Buildings, barriers and paving, but for next door's and streets, which are there to lie outside."""
    yard, kind, weight = survey.yard, "drawn_beyond", Weight.CAUTION
    for building in yard.buildings:
        if not building.beyond_lot and building.footprint:
            yield _Drawn(building.id, kind, weight, building.footprint, True)
    for barrier in yard.barriers:
        if not barrier.beyond_lot and barrier.line:
            yield _Drawn(barrier.id, kind, weight, barrier.line, False)
    streets = tuple(paving.outline for paving in yard.pavings if paving.kind == "street" and paving.outline)
    for paving in yard.pavings:
        if paving.kind != "street" and not paving.beyond_lot and paving.outline:
            leads = streets if paving.kind in _LEADS_OUT else ()
            yield _Drawn(paving.id, kind, weight, paving.outline, True, leads)


@lru_cache(maxsize=8)
def _room(lot: Outline, slack: float) -> BaseGeometry:
    """The lot and as much around it as counts as inside."""
    room = area_of(lot).buffer(slack)
    shapely.prepare(room)
    return room


def _outside(drawn: _Drawn, lot: BaseGeometry, slack: float) -> list[BaseGeometry]:
    """The pieces of a thing out of the lot, without those that lead to a street."""
    pieces = shapely.get_parts(drawn.shape.difference(lot))
    streets = [area_of(street) for street in drawn.streets]
    return [
        piece for piece in pieces
        if not piece.is_empty and not any(piece.distance(street) <= slack for street in streets)
    ]


def _finding(survey: Survey, drawn: _Drawn) -> list[Finding]:
    """The finding of a thing that is not covered by the lot; none where it only leads to a street."""
    lot, slack = area_of(survey.yard.lot), survey.rules.value(RULE)
    pieces = _outside(drawn, lot, slack)
    if not pieces:
        return []
    points = shapely.points(shapely.get_coordinates(shapely.segmentize(np.array(pieces), _STEP)))
    far = float(shapely.distance(points, lot).max())
    if far <= slack and drawn.shape.intersects(lot):
        return []
    marks = tuple(_mark(piece) for piece in pieces)
    return [
        survey.finding(
            NAME, drawn.kind, drawn.weight, (drawn.id, "lot"), RULE, {"short": Figure(far, "length")}, marks
        )
    ]


def _mark(piece: BaseGeometry) -> Mark:
    if isinstance(piece, shapely.Polygon):
        return Mark(coordinates(piece.exterior)[:-1], "area")
    return Mark(coordinates(piece), "line")


def _found(survey: Survey) -> list[Finding]:
    """All of them; one whose thing did not move is the very finding of before."""
    yard, slack = survey.yard, survey.rules.value(RULE)
    drawn = [*_planned(survey), *_standing(survey)]
    shapes = np.array([one.shape for one in drawn], dtype=object)
    covered = shapely.covers(_room(yard.lot, slack), shapes)
    within = covered & (shapely.intersects(area_of(yard.lot), shapes))
    found: list[Finding] = []
    for number in np.flatnonzero(~within):
        one = drawn[number]
        of = (one.points, yard.lot, survey.rules, yard.pavings if one.streets else None)
        found += survey.layout.remembered(
            (NAME, "beyond", one.id), of, lambda one=one: _finding(survey, one)  # type: ignore[misc]
        )
    return found


def run(survey: Survey) -> list[Finding]:
    """Findings on what reaches beyond the lot line; none without a lot."""
    if not has_area(survey.yard.lot):
        return []
    of = (*survey.layout.ground, survey.stand.rows, survey.rules)
    return survey.layout.remembered((NAME, "beyond"), of, lambda: _found(survey))


WORDING = {
    "row_outside": Wording(
        "{a} reaches {short} outside the lot line.",
        "Shift or shorten it by {short}. What lies beyond the line is not yours to plant without leave; only "
        "a survey tells where it runs.",
        "outside the lot line",
    ),
    "drawn_beyond": Wording(
        "{a} is drawn {short} beyond the lot line.",
        "Draw it inside the line, or tick 'Next door, outside the lot' where it is not yours. If it does "
        "stand there, ask a licensed surveyor where the line runs; local code says what may stand by it.",
        "drawn beyond the lot line",
    ),
}
