"""What clear ground is asked for: a plant that looks for a place, and the yard without it."""

from __future__ import annotations

import math
from collections.abc import Mapping
from functools import cached_property, lru_cache

import numpy as np
import shapely
from attrs import evolve, frozen
from shapely.geometry.base import BaseGeometry

from yardplan.arrange.discs import Shapes, corners
from yardplan.checks.finding import Figure
from yardplan.checks.layout import Feature
from yardplan.checks.survey import Survey
from yardplan.plants.stand import Stand, Standing
from yardplan.plants.standing import stand_of
from yardplan.sun.convex import polygons_of
from yardplan.yard import edits
from yardplan.yard.edits import points_of
from yardplan.yard.ground import Outline, Point
from yardplan.yard.planting import Planting
from yardplan.yard.yard import Yard

#: Closed ground is known so far beyond the lot, metres; without a lot clear ground is looked for as far out.
AROUND = 10.0


@frozen(kw_only=True, eq=False)
class Closed:
    """Ground where a plant would raise a conflict: by which check and kind, with which things."""

    geometry: BaseGeometry
    check: str
    kind: str
    things: tuple[str, ...] = ()
    figures: Mapping[str, Figure]


@frozen(eq=False, slots=False)
class Asked:
    """The plant, the yard without it (`survey`) and with it (`present`).

    `moved` False for a plant that is not planted yet; `room` the ground on which a place is looked for,
    known `around` it so many metres.
    """

    survey: Survey
    present: Survey
    plant: Standing
    moved: bool
    room: BaseGeometry
    around: float = AROUND

    @cached_property
    def known(self) -> BaseGeometry:
        """The room and some ground about it."""
        shape = shapely.union_all([self.room, shapely.Point(self.plant.place)]).buffer(self.around)
        return shape.envelope

    @cached_property
    def alone(self) -> Survey:
        """The plant with the ground, without any other plant: what distances are wanted of it."""
        planting = self.plant.thing
        assert isinstance(planting, Planting)  # only plants of the plan look for a place
        yard = evolve(self.survey.yard, plantings=(planting,), rows=(), standing_trees=())
        stand = Stand(year=self.survey.stand.year, plants=(self.plant,))
        return evolve(self.survey, yard=yard, stand=stand)

    def closed(
        self, geometry: BaseGeometry, check: str, kind: str, things: tuple[str, ...] = (), **figures: Figure
    ) -> Closed:
        """Closed ground, cut to what is known."""
        return Closed(
            geometry=cut(geometry, self.known), check=check, kind=kind, things=things, figures=figures
        )


def asked_of(survey: Survey, planting: Planting) -> Asked:
    """Ask for a plant: one of the survey's yard that may move, or one in hand whose id is free.

    Where a plant stands in a container, what else stands in it goes along and is left out of the count.
    """
    standing = survey.plants.get(planting.id)
    moved = standing is not None and isinstance(standing.thing, Planting)
    if not moved or standing is None:
        standing = _sized(survey, planting)
    together = edits.together(survey.yard, {planting.id}) if moved else frozenset({planting.id})
    rest = without(survey, together - {planting.container or ""})
    present = survey if moved else _with(survey, planting, standing)
    return Asked(rest, present, standing, moved, room_of(survey.yard))


def _sized(survey: Survey, planting: Planting) -> Standing:
    """A plant that is not in the yard, with its facts and sizes."""
    bare = Yard(
        site=survey.yard.site, plantings=(planting,), containers=survey.yard.containers,
        own_cultivars=survey.yard.own_cultivars,
    )
    return stand_of(bare, survey.catalogue, survey.stand.year).plants[0]


def without(survey: Survey, ids: frozenset[str]) -> Survey:
    """The survey of a yard without some plants; all else is taken over."""
    stand = survey.stand
    kept = tuple(plant for plant in stand.plants if plant.id not in ids)
    yard = evolve(survey.yard, plantings=tuple(p for p in survey.yard.plantings if p.id not in ids))
    return evolve(survey, yard=yard, stand=evolve(stand, plants=kept), light=None, before=None)


def _with(survey: Survey, planting: Planting, standing: Standing) -> Survey:
    yard = evolve(survey.yard, plantings=(*survey.yard.plantings, planting))
    stand = evolve(survey.stand, plants=(*survey.stand.plants, standing))
    return evolve(survey, yard=yard, stand=stand, light=None, before=None)


def room_of(yard: Yard) -> BaseGeometry:
    """The lot, or where none is drawn the ground around everything."""
    if len(yard.lot) >= 3:
        return shapely.union_all(polygons_of(yard.lot))
    points: list[Point] = [point for thing in yard.things() for point in points_of(thing)] or [(0.0, 0.0)]
    return shapely.MultiPoint(points).envelope.buffer(AROUND).envelope


def disc(middle: Point, radius: float) -> BaseGeometry:
    """All places within a distance of a point; nothing where it is not above 0."""
    return grown(shapely.Point(middle), radius)


def grown(shape: BaseGeometry, by: float) -> BaseGeometry:
    """All places within a distance of a shape; below 0 those so deep inside an area."""
    if by == 0.0:
        return shape
    return shape.buffer(by, quad_segs=corners(abs(by))) if math.isfinite(by) else shapely.Polygon()


def cut(shape: BaseGeometry, box: BaseGeometry) -> BaseGeometry:
    """The part of a shape within a box; itself where it lies within."""
    part: BaseGeometry = cut_all(np.array([shape], dtype=object), box)[0]
    return part


def cut_all(shapes: Shapes, box: BaseGeometry) -> Shapes:
    """The parts of shapes within a box."""
    edges, (left, bottom, right, top) = shapely.bounds(shapes), box.bounds
    out = (edges[:, 0] < left) | (edges[:, 1] < bottom) | (edges[:, 2] > right) | (edges[:, 3] > top)
    within = shapes.copy()
    within[out] = shapely.intersection(shapes[out], box)
    return within


def shape_of(feature: Feature) -> BaseGeometry:
    """A feature as a shape: an area where it encloses one, else its line or point."""
    return _shape(feature.points, feature.closed)


@lru_cache(maxsize=1024)
def _shape(points: Outline, closed: bool) -> BaseGeometry:
    areas = polygons_of(points) if closed else []
    return shapely.union_all(areas) if areas else line_of(points)


def line_of(points: Outline) -> BaseGeometry:
    """A line, or a point where there is only one."""
    return shapely.LineString(points) if len(points) > 1 else shapely.Point(points[0])


def length(value: float) -> Figure:
    """A distance in metres as a figure."""
    return Figure(float(value), "length")
