"""Snapping: a place near something worth meeting is drawn to it, and says to what.

Order: corners, centres and the middles of edges, equal steps in a line of plants, square corners while
drawing a line, edges, lines through other things, and the grid last. A typed number never comes here: it
always wins.
"""

from __future__ import annotations

import math
from collections.abc import Collection, Iterable, Iterator
from typing import Literal

from attrs import frozen

from yardplan.units import FOOT, INCH, System
from yardplan.window.canvas.geometry import bearing, distance, halfway, middle, nearest_on, polar, stretches
from yardplan.yard.curves import grips
from yardplan.yard.edits import OUTLINE_FIELD, points_of
from yardplan.yard.ground import Barrier, Dimension, Outline, Picture, Point, Service
from yardplan.yard.planting import Row
from yardplan.yard.yard import Thing, Yard

SnapKind = Literal["none", "corner", "centre", "middle", "equal steps", "square", "edge", "in line", "grid"]

#: Pointer reach for snapping, in pixels.
REACH_PIXELS = 9.0
#: Steps to which places are rounded, and the far larger dots of the grid drawn: metres.
GRID_STEP: dict[System, float] = {"metric": 0.1, "imperial": 3 * INCH}
GRID_DOTS: dict[System, float] = {"metric": 1.0, "imperial": 5 * FOOT}
#: Directions worth meeting besides those of the line before, degrees.
_TURNS = (0.0, 45.0, 90.0, 135.0, 180.0, 225.0, 270.0, 315.0)


@frozen
class Snapped:
    """Where a place was drawn to: `kind` says to what, `guides` are lines that show it."""

    point: Point
    kind: SnapKind = "none"
    guides: tuple[tuple[Point, Point], ...] = ()


def _is_closed(thing: Thing) -> bool:
    return not isinstance(thing, Barrier | Row) and not (isinstance(thing, Service) and not thing.area)


class Targets:
    """Everything in a yard that a place can snap to, gathered once per gesture."""

    def __init__(self, yard: Yard, leave_out: Collection[str] = ()) -> None:
        self.corners: list[Point] = list(grips(yard.lot_curve) if yard.lot_curve else yard.lot)
        self.centres: list[Point] = []
        self.plants: list[Point] = []
        self.edges: list[tuple[Point, Point]] = list(stretches(yard.lot, closed=True))
        #: Halfway along straight edges.
        self.middles: list[Point] = [] if yard.lot_curve else [halfway(a, b) for a, b in self.edges]
        for thing in yard.things():
            if thing.id not in leave_out:
                self._take(thing)

    def _take(self, thing: Thing) -> None:
        if isinstance(thing, Picture | Dimension):
            return
        points = points_of(thing)
        if type(thing) not in OUTLINE_FIELD:
            self.centres.append(points[0])
            self.plants.append(points[0])
            return
        curve = getattr(thing, "curve", None)
        self.corners += grips(curve) if curve is not None else points
        edges = stretches(points, closed=_is_closed(thing))
        self.edges += edges
        if curve is None:
            self.middles += (halfway(a, b) for a, b in edges)
        if _is_closed(thing) and len(points) > 2:
            self.centres.append(middle(points))


class Snapper:
    """Draws places to targets. `on` is the visible switch; a held key suspends it for one gesture."""

    def __init__(self) -> None:
        self.on = True
        self._key: tuple[int, frozenset[str]] | None = None
        self._yard: Yard | None = None
        self._targets = Targets(Yard())

    def targets(self, yard: Yard, leave_out: Collection[str]) -> Targets:
        """The targets of a yard, kept while the same yard is asked for."""
        key = frozenset(leave_out)
        if self._yard is not yard or self._key != (id(yard), key):
            self._yard, self._key = yard, (id(yard), key)
            self._targets = Targets(yard, key)
        return self._targets

    def snap(
        self,
        yard: Yard,
        place: Point,
        reach: float,
        *,
        system: System,
        leave_out: Collection[str] = (),
        line: Outline = (),
    ) -> Snapped:
        """Draw a place to what is within `reach` metres; `line` is the line being drawn so far."""
        if not self.on:
            return Snapped(place)
        targets = self.targets(yard, leave_out)
        step = GRID_STEP[system]
        finders = (
            _to_points(place, reach, targets, line),
            _to_equal_steps(place, reach, targets),
            _to_square(place, reach, line, step),
            _to_edges(place, reach, targets, line),
            _in_line(place, reach, targets, step),
        )
        found = next((snapped for snapped in finders if snapped is not None), None)
        return found or Snapped(_rounded(place, step), "grid")


def _rounded(place: Point, step: float) -> Point:
    # Rounded again to a tenth of a millimetre so that 0.1 * 3 is written as 0.3.
    return (round(round(place[0] / step) * step, 4), round(round(place[1] / step) * step, 4))


def _nearest(place: Point, points: Iterable[Point], reach: float) -> Point | None:
    best = min(points, key=lambda p: distance(p, place), default=None)
    return best if best is not None and distance(best, place) <= reach else None


def _to_points(place: Point, reach: float, targets: Targets, line: Outline) -> Snapped | None:
    first = line[:1] if len(line) > 2 else ()
    corner = _nearest(place, (*first, *targets.corners), reach)
    if corner is not None:
        return Snapped(corner, "corner")
    centre = _nearest(place, targets.centres, reach)
    if centre is not None:
        return Snapped(centre, "centre")
    half = _nearest(place, targets.middles, reach)
    return Snapped(half, "middle") if half is not None else None


def _to_equal_steps(place: Point, reach: float, targets: Targets) -> Snapped | None:
    """The next place of a line of plants: as far from the nearest as that one from its own neighbour."""
    plants = targets.plants
    if len(plants) < 2:
        return None
    near = min(plants, key=lambda p: distance(p, place))
    step = distance(near, place)
    others = (p for p in plants if p is not near and distance(p, near) <= 2 * step + reach)
    best: tuple[float, Snapped] | None = None
    for other in others:
        for wanted in _steps_of(near, other):
            off = distance(wanted, place)
            if off <= reach and (best is None or off < best[0]):
                best = (off, Snapped(wanted, "equal steps", ((other, near), (near, wanted))))
    return best[1] if best else None


def _steps_of(near: Point, other: Point) -> Iterator[Point]:
    """Beyond `near` by the same step, and midway between the two."""
    yield (2 * near[0] - other[0], 2 * near[1] - other[1])
    yield ((near[0] + other[0]) / 2, (near[1] + other[1]) / 2)


def _to_square(place: Point, reach: float, line: Outline, step: float) -> Snapped | None:
    """Square to the stretch before, or along the drawing's axes and their halves."""
    if not line:
        return None
    last = line[-1]
    far = distance(last, place)
    if far <= reach:
        return None
    base = bearing(line[-2], last) if len(line) > 1 else 0.0
    toward = bearing(last, place)
    turns = {turn % 360 for turn in _TURNS} | {(base + turn) % 360 for turn in _TURNS[::2]}
    turn = min(turns, key=lambda t: abs((t - toward + 180) % 360 - 180))
    across = abs(far * math.sin(math.radians(turn - toward)))
    if across > reach:
        return None
    length = round(far * math.cos(math.radians(turn - toward)) / step) * step
    if length <= 0:
        return None
    x, y = polar(last, length, turn)
    met = (round(x, 4), round(y, 4))
    return Snapped(_closing(met, line, reach) or met, "square", ((last, met),))


def _closing(met: Point, line: Outline, reach: float) -> Point | None:
    """Where a square corner would also stand level with the first corner, so that an outline closes."""
    if len(line) < 2:
        return None
    first, last = line[0], line[-1]
    if abs(met[0] - first[0]) <= reach and abs(met[1] - last[1]) < 1e-6:
        return (first[0], met[1])
    if abs(met[1] - first[1]) <= reach and abs(met[0] - last[0]) < 1e-6:
        return (met[0], first[1])
    return None


def _to_edges(place: Point, reach: float, targets: Targets, line: Outline) -> Snapped | None:
    best: tuple[float, Snapped] | None = None
    for a, b in targets.edges:
        foot = nearest_on(a, b, place)
        off = distance(foot, place)
        if off <= reach and (best is None or off < best[0]):
            square = nearest_on(a, b, line[-1]) if line else foot
            met = square if line and distance(square, place) <= reach else foot
            best = (off, Snapped(met, "edge", ((a, b),)))
    return best[1] if best else None


def _in_line(place: Point, reach: float, targets: Targets, step: float) -> Snapped | None:
    """Level with or plumb above another thing's centre."""
    x = min(targets.centres, key=lambda p: abs(p[0] - place[0]), default=None)
    y = min(targets.centres, key=lambda p: abs(p[1] - place[1]), default=None)
    on_x = x is not None and abs(x[0] - place[0]) <= reach / 2
    on_y = y is not None and abs(y[1] - place[1]) <= reach / 2
    if not (on_x or on_y):
        return None
    round_x, round_y = _rounded(place, step)
    met = (x[0] if on_x and x else round_x, y[1] if on_y and y else round_y)
    guides = tuple((target, met) for target, used in ((x, on_x), (y, on_y)) if target and used)
    return Snapped(met, "in line", guides)
