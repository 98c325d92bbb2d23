"""Clear view where a drive meets a street and at street corners: nothing between a low and a high level."""

from __future__ import annotations

from collections.abc import Iterator
from functools import lru_cache

import numpy as np
import shapely
from attrs import frozen
from shapely.geometry.base import BaseGeometry

from yardplan.checks.check import Wording
from yardplan.checks.finding import Figure, Finding, Mark, Weight
from yardplan.checks.shapes import area_of, has_area
from yardplan.checks.survey import Survey
from yardplan.plants.stand import Standing
from yardplan.yard.ground import Outline, Paving, Point

NAME = "clearance"

#: Paving outlines nearer than this meet.
_MEETS = 0.3


@frozen
class Triangle:
    """A view triangle with the rule that sets its legs and the paving it belongs to."""

    corners: Outline
    rule: str
    paving: str


def _leg(start: Point, towards: Point, length: float) -> Point:
    way = np.subtract(towards, start)
    far = float(np.hypot(*way))
    return float(start[0] + way[0] / far * length), float(start[1] + way[1] / far * length)


def _mouth(drive: Paving, street: BaseGeometry) -> list[tuple[Point, Point]]:
    """The two corners where a drive meets the street, each with the next corner up the drive."""
    outline = drive.outline
    near = [bool(shapely.distance(street, shapely.Point(p)) < _MEETS) for p in outline]
    corners: list[tuple[Point, Point]] = []
    for i, at_street in enumerate(near):
        for step in (-1, 1):
            other = (i + step) % len(outline)
            if at_street and not near[other]:
                corners.append((outline[i], outline[other]))
    return corners


def _drive_triangles(drive: Paving, street: BaseGeometry, leg: float) -> Iterator[Triangle]:
    corners = _mouth(drive, street)
    if len(corners) != 2:
        return
    for (corner, up), (opposite, _) in (corners, corners[::-1]):
        away = (2 * corner[0] - opposite[0], 2 * corner[1] - opposite[1])
        if corner in (opposite, up):
            continue
        yield Triangle((corner, _leg(corner, up, leg), _leg(corner, away, leg)), "sight-drive", drive.id)


def _corner_triangles(lot: Outline, first: Paving, second: Paving, leg: float) -> Iterator[Triangle]:
    """The lot corner where two streets meet."""
    streets = area_of(first.outline), area_of(second.outline)
    if shapely.distance(*streets) > _MEETS:
        return
    crossing = streets[0].intersection(streets[1].buffer(_MEETS)).centroid
    gaps = [float(shapely.distance(crossing, shapely.Point(p))) for p in lot]
    i = int(np.argmin(gaps))
    if gaps[i] <= leg * 2:
        ends = tuple(_leg(lot[i], lot[(i + step) % len(lot)], leg) for step in (-1, 1))
        yield Triangle((lot[i], *ends), "sight-corner", first.id)


@lru_cache(maxsize=8)
def triangles(
    pavings: tuple[Paving, ...], lot: Outline, drive_leg: float, corner_leg: float
) -> tuple[Triangle, ...]:
    """All view triangles of a yard."""
    streets = [paving for paving in pavings if paving.kind == "street" and has_area(paving.outline)]
    drives = [paving for paving in pavings if paving.kind == "drive" and has_area(paving.outline)]
    found: list[Triangle] = []
    for street in streets:
        for drive in drives:
            found.extend(_drive_triangles(drive, area_of(street.outline), drive_leg))
    if has_area(lot):
        for i, first in enumerate(streets):
            for second in streets[i + 1 :]:
                found.extend(_corner_triangles(lot, first, second, corner_leg))
    return tuple(found)


def views_of(survey: Survey) -> tuple[Triangle, ...]:
    """All view triangles of a survey's yard, with the legs in force there."""
    value = survey.rules.value
    return triangles(survey.yard.pavings, survey.yard.lot, value("sight-drive"), value("sight-corner"))


def closed_around(survey: Survey, plant: Standing) -> float | None:
    """How near to a view triangle a plant is a conflict (0: only inside it); None for one that stays low."""
    if plant.mature.height <= survey.rules.value("sight-low"):
        return None
    return 0.0 if plant.mature.crown_base >= survey.rules.value("sight-high") else plant.mature.spread / 2


def run(survey: Survey) -> list[Finding]:
    """Findings on crowns that block the view of a street."""
    layout = survey.layout
    found: list[Finding] = []
    views = views_of(survey)
    if not views or not len(layout.plants):
        return found
    stems = shapely.points(layout.xy)
    for view in views:
        gaps = np.asarray(shapely.distance(area_of(view.corners), stems), dtype=float)
        for i in np.nonzero(layout.planted & (gaps < layout.reach))[0]:
            plant = layout.plants[i]
            around = closed_around(survey, plant)
            if around is None or (gaps[i] > 0 and gaps[i] >= around):
                continue
            shown = {
                "low": survey.rules.figure("sight-low"), "high": survey.rules.figure("sight-high"),
                "legs": survey.rules.figure(view.rule), "height": Figure(plant.mature.height, "length"),
                "short": Figure(float(layout.reach[i] - gaps[i]), "length"),
            }
            found.append(
                survey.finding(
                    NAME, "sight", Weight.CONFLICT, (plant.id, view.paving), view.rule, shown,
                    (Mark(view.corners, "area"),),
                )
            )
    return found


WORDING = {
    "sight": Wording(
        "{a} (about {height} tall) reaches {short} into the view triangle of {b} ({legs} legs): nothing may "
        "stand there between {low} and {high}.",
        "Move it out of the triangle, keep it under {low}, or trim it clear up to {high}; your street code "
        "decides.",
        "blocks the view of the street",
    ),
}
