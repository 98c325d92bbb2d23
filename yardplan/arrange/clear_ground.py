"""Clear ground: every place where a plant raises no conflict, and why the rest is closed.

It counts both ways: what others do to the plant and what the plant would do to others. Conflicts that no
place can cure (too cold, barred, nothing here that sets it) close nothing and are told apart.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from functools import cached_property

import numpy as np
import shapely
from attrs import evolve, frozen
from shapely.geometry.base import BaseGeometry
from shapely.ops import nearest_points

from yardplan.arrange.closed import Asked, Closed, asked_of
from yardplan.arrange.closed_clearance import closed_clearance
from yardplan.arrange.closed_light import PlantLightPass, Progress
from yardplan.arrange.closed_neighbours import closed_neighbours
from yardplan.arrange.closed_pollen import closed_pollen, unset
from yardplan.arrange.closed_room import closed_room
from yardplan.arrange.closed_soil import closed_soil
from yardplan.arrange.discs import Shapes, distinct, taken_off
from yardplan.checks.finding import Finding, Weight
from yardplan.checks.pollination import NAME as POLLINATION
from yardplan.checks.run import CHECKS
from yardplan.checks.survey import Survey
from yardplan.sun.season import Detail
from yardplan.yard.ground import Outline, Point
from yardplan.yard.planting import Planting

#: A place is chosen so far inside the edge, metres, where there is room: the edge is known to this figure.
EDGE = 0.1
#: Pieces for drawing are true to so much, metres: a round edge has half of its corners then.
_DRAWN = 0.02
#: So many shapes are joined and taken off at once.
_AT_ONCE = 256
_PARTS: tuple[Callable[[Asked], Iterator[Closed]], ...] = (
    closed_room, closed_clearance, closed_soil, closed_neighbours, closed_pollen,
)


@frozen(kw_only=True, eq=False)
class ClearGround:
    """Where a plant could stand without a conflict.

    `open` is that ground; `closed` the rest, reason by reason; `anywhere` conflicts (check, kind) that it has
    wherever it stands. `light` the detail at which light was counted, None: not yet. Of several things that
    move together, `plant` is the first and ground is told for their `anchor`, where they stand now; None: for
    the plant's place.
    """

    plant: str
    open: BaseGeometry
    closed: tuple[Closed, ...]
    anywhere: tuple[tuple[str, str], ...]
    light: Detail | None
    anchor: Point | None = None

    @property
    def area(self) -> float:
        """Square metres of open ground."""
        return float(self.open.area)

    def holds(self, place: Point) -> bool:
        """True for a place on open ground."""
        return bool(self.open.covers(shapely.Point(place)))

    def why(self, place: Point) -> list[Closed]:
        """The reasons that close a place, in the order of the checks; empty on open ground."""
        here = shapely.intersects(self._shapes, shapely.Point(place))
        return [self.closed[number] for number in np.flatnonzero(here)]

    @cached_property
    def _shapes(self) -> Shapes:
        return np.array([one.geometry for one in self.closed], dtype=object)

    def nearest(self, place: Point) -> Point | None:
        """The nearest clear place, a little inside the edge where there is room; None where there is none.

        The place itself where it is clear.
        """
        if self.holds(place):
            return place
        for inside in (EDGE, EDGE / 10.0, 0.0):
            room = self.open.buffer(-inside) if inside else self.open
            if not room.is_empty:
                near, _ = nearest_points(room, shapely.Point(place))
                return float(near.x), float(near.y)
        return None

    def pieces(self) -> tuple[tuple[Outline, ...], ...]:
        """Open ground for drawing: of every piece its rim and then its holes; kept once made.

        Within two centimetres of the ground itself.
        """
        return self._pieces

    @cached_property
    def _pieces(self) -> tuple[tuple[Outline, ...], ...]:
        drawn = shapely.get_parts(shapely.simplify(self.open, _DRAWN, preserve_topology=False))
        areas = drawn[(shapely.get_type_id(drawn) == shapely.GeometryType.POLYGON) & ~shapely.is_empty(drawn)]
        rings, piece_of = shapely.get_rings(areas, return_index=True)
        corners, ring_of = shapely.get_coordinates(rings, return_index=True)
        places = list(map(tuple, corners.tolist()))
        ends = np.searchsorted(ring_of, np.arange(len(rings) + 1)).tolist()
        pieces: list[list[Outline]] = [[] for _ in areas]
        for piece, start, end in zip(piece_of.tolist(), ends, ends[1:], strict=False):
            # The last corner of a ring is the first again.
            pieces[piece].append(tuple(places[start : end - 1]))
        return tuple(map(tuple, pieces))


def clear_ground(
    survey: Survey, planting: Planting, *, light: Detail | None = "full", progress: Progress | None = None
) -> ClearGround:
    """Clear ground of a plant: one of the survey's yard that may move, or one that is not planted yet.

    `light`: at which detail light is counted; None leaves it out (quick). `progress` hears 0 to 1.
    """
    details: tuple[Detail, ...] = () if light is None else (light,)
    return list(by_steps(survey, planting, details, progress))[-1]


def by_steps(
    survey: Survey, planting: Planting, details: tuple[Detail, ...] = ("live", "full"),
    progress: Progress | None = None,
) -> Iterator[ClearGround]:
    """The same in steps: at once without light, then with it ever finer."""
    asked = asked_of(survey, planting)
    ground = _by_room(asked, progress)
    yield ground
    light = PlantLightPass(asked, ground.open, progress)
    for detail in details:
        yield lit(ground, tuple(light.closed(detail)), detail)


def _by_room(asked: Asked, progress: Progress | None) -> ClearGround:
    """Everything but light."""
    closed = tuple(
        one for part in _PARTS for one in heard(part(asked), progress) if not one.geometry.is_empty
    )
    return ClearGround(
        plant=asked.plant.id, open=opened(asked.room, closed), closed=closed, anywhere=_anywhere(asked),
        light=None,
    )


def heard(closed: Iterator[Closed], progress: Progress | None) -> Iterator[Closed]:
    """The same, with `progress` asked first: it may end work that nobody waits for."""
    if progress is not None:
        progress(0.0)
    yield from closed


def lit(ground: ClearGround, dark: tuple[Closed, ...], detail: Detail) -> ClearGround:
    """With the ground that light closes taken off what is open without it."""
    return evolve(
        ground, open=opened(ground.open, dark), closed=(*ground.closed, *dark), light=detail,
    )


def opened(room: BaseGeometry, closed: tuple[Closed, ...]) -> BaseGeometry:
    """What is left of a room without closed ground."""
    shapes = np.array([one.geometry for one in closed], dtype=object)
    if len(shapes) > _AT_ONCE:
        shapes = distinct(shapes)
    # The largest first: what they have closed need not be closed again.
    return taken_off(room, shapes[np.argsort(-shapely.area(shapes), kind="stable")], at_once=_AT_ONCE)


def _anywhere(asked: Asked) -> tuple[tuple[str, str], ...]:
    """Conflicts of the plant that do not depend on where it stands."""
    found: list[Finding] = [
        finding for check in CHECKS if not check.places for finding in check.run(asked.alone)
        if finding.weight is Weight.CONFLICT
    ]
    more = [(POLLINATION, "unset")] if unset(asked) else []
    return tuple(sorted({(finding.check, finding.kind) for finding in found})) + tuple(more)
