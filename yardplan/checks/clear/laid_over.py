"""Beds laid over what takes their ground: buildings, water, paving, other beds; rows through planted beds."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from functools import lru_cache

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely.geometry.base import BaseGeometry

from yardplan.checks.check import Wording
from yardplan.checks.clear.paving import PAVED, WATER
from yardplan.checks.finding import Figure, Finding, Mark, Weight
from yardplan.checks.ordering import pair_of
from yardplan.checks.overlaps import TOUCH
from yardplan.checks.room.beds import crop_words
from yardplan.checks.shapes import area_of, coordinates, line_of
from yardplan.checks.survey import Survey
from yardplan.plants.stand import StandingBed, StandingRow
from yardplan.yard.ground import Outline

NAME, RULE, DEPTH_RULE = "clearance", "laid-over", "paving-bed-depth"

#: What a bed cannot lie on at all.
NO_GROUND = ("building", *WATER)


@lru_cache(maxsize=1024)
def core_of(outline: Outline, slack: float) -> BaseGeometry:
    """What lies deeper inside an outline than the slack: only a thing that reaches in there lies over it."""
    return area_of(outline).buffer(-slack)


def taken(bed: StandingBed, row: StandingRow) -> bool:
    """True for a bed that is planted with another kind than a row's, which has no business in it."""
    return bed.bed.plant is not None and bed.bed.plant.crop.casefold() != row.row.plant.crop.casefold()


def _meeting(shapes: Sequence[BaseGeometry], cores: Sequence[BaseGeometry]) -> NDArray[np.intp]:
    """Places in the two lists of those that meet, (k, 2)."""
    mine, theirs = (np.array(list(each), dtype=object) for each in (shapes, cores))
    return np.argwhere(shapely.intersects(mine[:, None], theirs[None, :]))


def _wide(overlap: BaseGeometry) -> float:
    """The narrow side of the box that holds the largest piece of an overlap, metres."""
    largest = max(shapely.get_parts(overlap), key=lambda piece: (piece.area, piece.length))
    corners = shapely.get_coordinates(shapely.oriented_envelope(largest))
    return float(np.hypot(*np.diff(corners[:3], axis=0).T).min()) if len(corners) > 3 else 0.0


def _over(
    survey: Survey, kind: str, weight: Weight, things: tuple[str, str], outlines: tuple[Outline, Outline],
) -> Finding:
    """The finding of a bed over an area, with how wide they lie over each other."""

    def made() -> Finding:
        overlap = area_of(outlines[0]).intersection(area_of(outlines[1]))
        figures = {"wide": Figure(_wide(overlap), "length")}
        pieces = [piece for piece in shapely.get_parts(overlap) if isinstance(piece, shapely.Polygon)]
        marks = tuple(Mark(coordinates(piece.exterior)[:-1], "area") for piece in pieces)
        rule = RULE
        if kind == "bed_on_paving":
            rule, figures["deep"] = DEPTH_RULE, survey.rules.figure(DEPTH_RULE)
        return survey.finding(NAME, kind, weight, things, rule, figures, marks)

    return survey.layout.remembered((NAME, kind, *things), (*outlines, survey.rules), made)


def _on_ground(survey: Survey, beds: Sequence[StandingBed]) -> Iterator[Finding]:
    """Beds on buildings, water and paving."""
    solid = [feature for feature in survey.layout.features if feature.sort in NO_GROUND + PAVED]
    slack, deep = survey.rules.value(RULE), survey.rules.value(DEPTH_RULE)
    met = _meeting(
        [area_of(bed.bed.outline) for bed in beds], [core_of(feature.points, slack) for feature in solid]
    )
    for i, j in met:
        bed, feature = beds[i].bed, solid[j]
        things, outlines = (bed.id, feature.id), (bed.outline, feature.points)
        if feature.sort in NO_GROUND:
            kind = "bed_on_building" if feature.sort == "building" else "bed_on_water"
            yield _over(survey, kind, Weight.CONFLICT, things, outlines)
        elif bed.raised < deep - TOUCH:
            yield _over(survey, "bed_on_paving", Weight.CAUTION, things, outlines)


def _on_each_other(survey: Survey, beds: Sequence[StandingBed]) -> Iterator[Finding]:
    """Beds that lie over each other."""
    slack = survey.rules.value(RULE)
    shapes = [area_of(bed.bed.outline) for bed in beds]
    cores = [core_of(bed.bed.outline, slack) for bed in beds]
    for i, j in _meeting(shapes, cores):
        # A narrow bed has no core: so it is enough that the one reaches into the core of the other.
        if i == j or (j < i and shapes[j].intersects(cores[i])):
            continue
        a, b = pair_of(beds[i].bed, beds[j].bed)
        yield _over(survey, "bed_on_bed", Weight.CAUTION, (a.id, b.id), (a.outline, b.outline))


def _rows_through(survey: Survey, beds: Sequence[StandingBed]) -> Iterator[Finding]:
    """Rows through beds that are planted with another kind."""
    rows, slack = [row for row in survey.stand.rows if row.row.line], survey.rules.value(RULE)
    met = _meeting(
        [line_of(row.row.line) for row in rows], [core_of(bed.bed.outline, slack) for bed in beds]
    )
    for i, j in met:
        if taken(beds[j], rows[i]):
            yield _through(survey, rows[i], beds[j])


def _through(survey: Survey, row: StandingRow, bed: StandingBed) -> Finding:
    def made() -> Finding:
        figures = {"crop": Figure(crop_words(bed), "text")}
        marks = (Mark(row.row.line, "line"),)
        return survey.finding(NAME, "row_in_bed", Weight.CONFLICT, (row.id, bed.id), RULE, figures, marks)

    key = (NAME, "row_in_bed", row.id, bed.id)
    return survey.layout.remembered(key, (row.row.line, bed.bed.outline, survey.rules), made)


def _found(survey: Survey) -> list[Finding]:
    beds = [bed for bed in survey.stand.beds if not area_of(bed.bed.outline).is_empty]
    if not beds:
        return []
    return [
        *_on_ground(survey, beds), *_on_each_other(survey, beds), *_rows_through(survey, beds),
    ]


def run(survey: Survey) -> list[Finding]:
    """Findings on beds over each other and over what bears no plants; the very ones of before if all rest."""
    of = (*survey.layout.ground, survey.stand.rows, survey.stand.beds, survey.rules)
    return survey.layout.remembered((NAME, RULE), of, lambda: _found(survey))


WORDING = {
    "bed_on_building": Wording(
        "{a} lies over {b}, up to {wide} wide: nothing grows there.",
        "Move the bed off {b}, or draw it smaller.",
        "bed over {b}",
    ),
    "bed_on_water": Wording(
        "{a} lies over the water of {b}, up to {wide} wide.",
        "Move the bed off {b}, or draw it smaller.",
        "bed over {b}",
    ),
    "bed_on_paving": Wording(
        "{a} lies on {b}, up to {wide} wide: under paving roots find no soil.",
        "Move the bed off {b}, lift the paving there, or build the bed up by {deep} or more, with a way out "
        "for its water.",
        "bed on {b}",
    ),
    "bed_on_bed": Wording(
        "{a} and {b} lie over each other, up to {wide} wide.",
        "Draw them apart, or make one bed of them.",
        "beds over each other",
    ),
    "row_in_bed": Wording(
        "The row {a} runs through the bed {b}, which is planted with {crop}.",
        "Shift the row out of the bed, or plant the bed with something else.",
        "row in a bed of {crop}",
    ),
}
