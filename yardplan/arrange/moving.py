"""Several things that look for a place together, as they stand to each other: plants, rows, beds and pots."""

from __future__ import annotations

import math
from collections.abc import Collection, Iterator
from functools import cached_property

import numpy as np
import shapely
from attrs import evolve, frozen
from shapely.geometry.base import BaseGeometry

from yardplan.arrange.closed import AROUND, Asked, Closed, room_of
from yardplan.arrange.swept import moved
from yardplan.checks.finding import Figure
from yardplan.checks.survey import Survey
from yardplan.plants.stand import Standing, StandingBed, StandingRow
from yardplan.yard import edits
from yardplan.yard.edits import points_of
from yardplan.yard.ground import Outline, Point
from yardplan.yard.planting import Bed, Container, Planting, Row
from yardplan.yard.positions import chosen

#: What clear ground can be asked for.
MOVABLE = (Planting, Row, Bed, Container)


@frozen(eq=False, slots=False)
class Moving:
    """Things of a yard that move together. `survey` the yard without them, `present` with them.

    Ground is told for the `anchor`, the middle of the box round them: where it would come to lie.
    """

    survey: Survey
    present: Survey
    ids: frozenset[str]
    anchor: Point
    room: BaseGeometry

    @cached_property
    def plants(self) -> list[Standing]:
        """Plants of the plan among them."""
        return [plant for plant in chosen(self.present.stand.plants, self.ids) if plant.planted]

    @cached_property
    def rows(self) -> list[StandingRow]:
        """Rows among them that have a line."""
        return [row for row in chosen(self.present.stand.rows, self.ids) if row.row.line]

    @cached_property
    def beds(self) -> list[StandingBed]:
        """Beds among them that enclose something."""
        return [bed for bed in chosen(self.present.stand.beds, self.ids) if len(bed.bed.outline) > 2]

    @cached_property
    def reach(self) -> float:
        """How far the farthest of their points lies from the anchor, metres."""
        points = [point for thing in self.present.yard.named(self.ids) for point in points_of(thing)]
        return max((math.dist(point, self.anchor) for point in points), default=0.0)

    @cached_property
    def known(self) -> BaseGeometry:
        """Ground for the anchor on which reasons are told."""
        return shapely.union_all([self.room, shapely.Point(self.anchor)]).buffer(AROUND + self.reach).envelope

    @cached_property
    def alone(self) -> Survey:
        """The things among the ground and beds of the yard, without any other plant."""
        stand = self.present.stand
        few = evolve(
            stand, plants=tuple(chosen(stand.plants, self.ids)), rows=tuple(chosen(stand.rows, self.ids)),
            beds=tuple(chosen(stand.beds, self.ids)),
        )
        return evolve(self.present, stand=few, light=None, before=None)

    def shift_of(self, place: Point) -> Point:
        """From a place of one of the things to the anchor."""
        return (self.anchor[0] - place[0], self.anchor[1] - place[1])

    def about_anchor(self, points: Outline) -> Outline:
        """Points of one of the things as seen from the anchor."""
        return tuple((x - self.anchor[0], y - self.anchor[1]) for x, y in points)

    def asked(self, plant: Standing) -> Asked:
        """The question for one of the plants, the others out of the way."""
        return Asked(self.survey, self.present, plant, True, self.room, AROUND + 2 * self.reach)

    def for_anchor(self, closed: list[Closed], place: Point) -> list[Closed]:
        """Ground closed to a thing at `place`, told for the anchor."""
        shapes = moved(np.array([one.geometry for one in closed], dtype=object), self.shift_of(place))
        return [
            Closed(geometry=shape, check=one.check, kind=one.kind, things=one.things, figures=one.figures)
            for one, shape in zip(closed, shapes, strict=True)
        ]

    def closed(
        self, geometry: BaseGeometry, check: str, kind: str, things: tuple[str, ...] = (), **figures: Figure
    ) -> Closed:
        """Closed ground of the anchor, cut to what is known."""
        return Closed(
            geometry=geometry.intersection(self.known), check=check, kind=kind, things=things, figures=figures
        )


def moving_of(survey: Survey, ids: Collection[str]) -> Moving | None:
    """Ask for things of a survey's yard; None where others than plants, rows, beds, pots are among them."""
    together = edits.together(survey.yard, ids)
    things = survey.yard.named(together)
    if not things or not all(isinstance(thing, MOVABLE) for thing in things):
        return None
    if all(isinstance(thing, Container) for thing in things):
        return None
    points = [point for thing in things for point in points_of(thing)]
    if not points:
        return None
    xs, ys = [x for x, _ in points], [y for _, y in points]
    anchor = ((min(xs) + max(xs)) / 2.0, (min(ys) + max(ys)) / 2.0)
    return Moving(_without(survey, together), survey, together, anchor, room_of(survey.yard))


def _without(survey: Survey, ids: frozenset[str]) -> Survey:
    """The survey of a yard without the things named; all else is taken over."""
    yard, stand = survey.yard, survey.stand
    left = evolve(
        yard, plantings=tuple(p for p in yard.plantings if p.id not in ids),
        rows=tuple(row for row in yard.rows if row.id not in ids),
        beds=tuple(bed for bed in yard.beds if bed.id not in ids),
        containers=tuple(pot for pot in yard.containers if pot.id not in ids),
    )
    kept = evolve(
        stand, plants=tuple(plant for plant in stand.plants if plant.id not in ids),
        rows=tuple(row for row in stand.rows if row.id not in ids),
        beds=tuple(bed for bed in stand.beds if bed.id not in ids),
    )
    return evolve(survey, yard=left, stand=kept, light=None, before=None)


def shapes_outside(moving: Moving) -> Iterator[tuple[str, Outline, bool]]:
    """The rows and beds that must lie on the lot: id, points about the anchor, True for an area."""
    for row in moving.rows:
        yield row.id, moving.about_anchor(row.row.line), False
    for bed in moving.beds:
        yield bed.id, moving.about_anchor(bed.bed.outline), True
