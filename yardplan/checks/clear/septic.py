"""Septic field and tank, and wells: roots, tilling, sprays."""

from __future__ import annotations

from collections.abc import Iterator

import numpy as np
import shapely
from shapely.geometry.base import BaseGeometry

from yardplan.checks.check import Wording
from yardplan.checks.finding import Figure, Finding, Mark, Weight
from yardplan.checks.shapes import area_of, has_area, line_of
from yardplan.checks.shortfall import Limit, Mask, figures, in_ground, limit, marks, nearer, trees
from yardplan.checks.survey import Survey
from yardplan.yard.ground import Service

NAME = "clearance"


def _woody(survey: Survey) -> Mask:
    woody: Mask = in_ground(survey) & ~survey.layout.members("herbaceous")
    return woody


def field_conflicts(survey: Survey) -> Limit:
    """Nearer to a field than the least distance of all, a woody plant is a conflict."""
    layout, value = survey.layout, survey.rules.value
    floor = value("septic-field-floor")
    by_height = np.maximum(value("septic-field-height") * layout.height, floor)
    wanted = np.where(trees(survey), by_height, floor)
    wanted = np.where(layout.members("water-seeking"), value("septic-thirsty"), wanted)
    return limit(survey, "septic_field", floor, wanted, _woody(survey))


def tank_conflicts(survey: Survey) -> Limit:
    """Nearer to a tank than the bare legal distance a plant is a conflict."""
    wanted = survey.rules.value("septic-tank")
    return limit(survey, "septic_tank", wanted, wanted, in_ground(survey))


def _field(survey: Survey, column: int) -> Iterator[Finding]:
    thirsty, wooded = survey.layout.members("water-seeking"), trees(survey)
    closed = field_conflicts(survey)
    for short in nearer(survey, column, closed.wanted, _woody(survey)):
        weight = Weight.CONFLICT if short.gap < closed.under[short.index] else Weight.CAUTION
        shown = figures(survey, short) | {"height": Figure(short.plant.mature.height, "length")}
        rule = "septic-field-height" if wooded[short.index] else "septic-field-floor"
        if thirsty[short.index]:
            rule = "septic-thirsty"
        yield survey.finding(NAME, "septic_field", weight, short.things, rule, shown, marks(survey, short))


def _on_the_field(survey: Survey, service: Service) -> Iterator[Finding]:
    """Beds and rows on a field: no tilling, no watering, no food crops of the ground."""
    if not service.area or not has_area(service.points):
        return
    field = area_of(service.points)
    shapes: list[tuple[str, BaseGeometry]] = [
        (bed.id, area_of(bed.outline)) for bed in survey.yard.beds if has_area(bed.outline)
    ]
    shapes += [(row.id, line_of(row.row.line)) for row in survey.stand.rows]
    for thing, shape in shapes:
        if shape.intersects(field):
            mark = Mark(tuple((x, y) for x, y in shapely.get_coordinates(shape)), "line")
            yield survey.finding(
                NAME, "on_septic_field", Weight.CONFLICT, (thing, service.id), "septic-field-floor", {},
                (mark,),
            )


def _tank(survey: Survey, column: int) -> Iterator[Finding]:
    for short in nearer(survey, column, tank_conflicts(survey).wanted, in_ground(survey)):
        yield survey.finding(
            NAME, "septic_tank", Weight.CONFLICT, short.things, "septic-tank", figures(survey, short),
            marks(survey, short),
        )


def _well(survey: Survey, column: int) -> Iterator[Finding]:
    for short in nearer(survey, column, survey.rules.value("well-rig"), in_ground(survey)):
        yield survey.finding(
            NAME, "well", Weight.CAUTION, short.things, "well-rig", figures(survey, short),
            marks(survey, short),
        )
    layout = survey.layout
    spray = survey.rules.value("well-spray")
    near = int((in_ground(survey) & (layout.gaps[:, column] < spray)).sum())
    if near:
        shown = {"wanted": Figure(spray, "length"), "count": Figure(near, "count")}
        yield survey.finding(
            NAME, "well_spray", Weight.ADVICE, (layout.features[column].id,), "well-spray", shown
        )


def run(survey: Survey) -> list[Finding]:
    """Findings on septic works and wells."""
    found: list[Finding] = []
    for column, feature in enumerate(survey.layout.features):
        if feature.sort == "septic field":
            found.extend(_field(survey, column))
            if isinstance(feature.thing, Service):
                found.extend(_on_the_field(survey, feature.thing))
        elif feature.sort == "septic tank":
            found.extend(_tank(survey, column))
        elif feature.sort == "well":
            found.extend(_well(survey, column))
    return found


WORDING = {
    "septic_field": Wording(
        "{a} stands {distance} from {b}; its roots need {wanted} ({height} tall at full size).",
        "Move {a} {short} to the {direction}; ask the health department for the local distance.",
        "{short} too near the septic field",
    ),
    "on_septic_field": Wording(
        "{a} lies on {b}: no tilling, no watering and no food crops there, its lines may lie 6 in down.",
        "Move it off the field and leave grass there.",
        "on the septic field",
    ),
    "septic_tank": Wording(
        "{a} stands {distance} from {b}; at least {wanted} is asked for.",
        "Move {a} {short} to the {direction}; ask the health department for the local distance.",
        "{short} too near the septic tank",
    ),
    "well": Wording(
        "{a} stands {distance} from {b}; a service rig needs {wanted}.",
        "Move {a} {short} to the {direction}.",
        "{short} too near the well",
    ),
    "well_spray": Wording(
        "Plants stand within {wanted} of {a} ({count} in all).",
        "Do not mix or store sprays or manure within {wanted} of it; the label and the local code decide.",
        "mind the well",
    ),
}
