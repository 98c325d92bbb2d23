"""Planted things of every sort as places with a kind: single plants, rows and beds alike."""

from __future__ import annotations

from collections.abc import Iterator

import numpy as np
import shapely
from attrs import frozen
from shapely.geometry.base import BaseGeometry

from yardplan.checks.finding import Mark
from yardplan.checks.groups import is_member, kind_of
from yardplan.checks.lines import Array
from yardplan.checks.shapes import area_of, has_area
from yardplan.checks.survey import Survey
from yardplan.plants.stand import Standing, StandingBed, StandingRow

Grown = Standing | StandingRow | StandingBed


@frozen(eq=False)
class Spot:
    """A planted thing or a standing tree: its kind, shape and mark; `planned` False for standing trees."""

    id: str
    kind: str
    grown: Grown
    shape: BaseGeometry
    mark: Mark
    planned: bool

    def in_group(self, group: str) -> bool:
        """True when it belongs to a group of plants."""
        return is_member(group, self.grown)


def spots(survey: Survey) -> list[Spot]:
    """Every plant, standing tree, row and planted bed."""
    return [*_plants(survey), *_rows(survey), *_beds(survey)]


def _plants(survey: Survey) -> Iterator[Spot]:
    shapes = np.atleast_1d(np.asarray(shapely.points(survey.layout.xy), dtype=object))
    for plant, shape in zip(survey.layout.plants, shapes, strict=True):
        yield Spot(plant.id, kind_of(plant), plant, shape, Mark((plant.place,)), plant.planted)


def _rows(survey: Survey) -> Iterator[Spot]:
    for row, line in zip(survey.layout.rows, survey.layout.row_lines, strict=True):
        yield Spot(row.id, kind_of(row), row, line, Mark(row.row.line, "line"), True)


def _beds(survey: Survey) -> Iterator[Spot]:
    for bed in survey.stand.beds:
        if bed.bed.plant is not None and has_area(bed.bed.outline):
            area = area_of(bed.bed.outline)
            yield Spot(bed.id, kind_of(bed), bed, area, Mark(bed.bed.outline, "area"), True)


def gaps(place: Spot, others: list[Spot]) -> Array:
    """Distances from one spot to others, metres."""
    if not others:
        return np.empty(0)
    shapes = np.array([other.shape for other in others], dtype=object)
    return np.asarray(shapely.distance(place.shape, shapes), dtype=float)
