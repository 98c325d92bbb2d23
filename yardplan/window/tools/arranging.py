"""Putting several things in order: in line, evenly spaced, mirrored, turned, repeated. Yard in, yard out."""

from __future__ import annotations

import math
import re
from collections.abc import Callable
from typing import Any, Literal

from attrs import evolve, frozen

from yardplan.language import tr
from yardplan.units import System, UnitError
from yardplan.window.canvas.geometry import middle, polar
from yardplan.window.tools.typed import parse_angle, parse_degrees, parse_typed
from yardplan.yard import edits
from yardplan.yard.ground import Building, Dimension, Picture, Point
from yardplan.yard.groups import units_of
from yardplan.yard.handles import covered
from yardplan.yard.pictures import corners
from yardplan.yard.planting import Planting
from yardplan.yard.yard import Thing, Yard

Line = Literal["left", "right", "top", "bottom", "middle across", "middle up"]
Way = Literal["across", "up"]
#: Copies made at once at most: more is a slip of the finger.
MOST_COPIES = 200


def _chosen(yard: Yard, ids: frozenset[str]) -> list[Thing]:
    """The things to arrange: a plant in a pot goes with its pot, so only the pot is placed."""
    vessels = {plant.id for plant in yard.plantings if plant.container in ids}
    return [thing for thing in yard.things() if thing.id in ids and thing.id not in vessels]


@frozen
class _Part:
    """What is put in order as one: a thing, or a group with all its things."""

    things: tuple[Thing, ...]

    def reach(self, axis: int) -> tuple[float, float]:
        """The least and greatest x (axis 0) or y (1)."""
        reaches = [_reach(thing, axis) for thing in self.things]
        return min(low for low, _ in reaches), max(high for _, high in reaches)

    def middle(self, axis: int) -> float:
        """The middle of the one thing, or of the box round the group."""
        if len(self.things) == 1:
            return middle(covered(self.things[0]))[axis]
        return sum(self.reach(axis)) / 2

    def shifted(self, yard: Yard, axis: int, by: float) -> Yard:
        """The yard with the part elsewhere."""
        ids = frozenset(thing.id for thing in self.things)
        return edits.move(yard, ids, (by, 0.0) if axis == 0 else (0.0, by))


def _parts(yard: Yard, ids: frozenset[str]) -> list[_Part]:
    """What is to be arranged: groups whole, except where one group is all there is."""
    placed = {thing.id: thing for thing in _chosen(yard, ids)}
    parts = (tuple(placed[key] for key in part if key in placed) for part in units_of(yard, ids))
    return [_Part(things) for things in parts if things]


def _reach(thing: Thing, axis: int) -> tuple[float, float]:
    values = [point[axis] for point in covered(thing)]
    return min(values), max(values)


_LINES: dict[Line, tuple[int, Callable[[float, float], float]]] = {
    "left": (0, lambda low, high: low), "right": (0, lambda low, high: high),
    "bottom": (1, lambda low, high: low), "top": (1, lambda low, high: high),
    "middle across": (0, lambda low, high: (low + high) / 2),
    "middle up": (1, lambda low, high: (low + high) / 2),
}


def align(yard: Yard, ids: frozenset[str], line: Line) -> Yard:
    """Bring things to one line: the outermost of them, or the middle of all."""
    axis, pick = _LINES[line]
    parts = _parts(yard, ids)
    if len(parts) < 2:
        return yard
    reaches = [part.reach(axis) for part in parts]
    target = pick(min(low for low, _ in reaches), max(high for _, high in reaches))
    for part, (low, high) in zip(parts, reaches, strict=True):
        yard = part.shifted(yard, axis, target - pick(low, high))
    return yard


def space_evenly(yard: Yard, ids: frozenset[str], way: Way) -> Yard:
    """Leave the first and the last where they are and put the others at equal steps between them."""
    axis = 0 if way == "across" else 1
    parts = sorted(_parts(yard, ids), key=lambda part: part.middle(axis))
    if len(parts) < 3:
        return yard
    places = [part.middle(axis) for part in parts]
    step = (places[-1] - places[0]) / (len(parts) - 1)
    for number, (part, place) in enumerate(zip(parts, places, strict=True)):
        yard = part.shifted(yard, axis, places[0] + number * step - place)
    return yard


def middle_of_all(yard: Yard, ids: frozenset[str]) -> Point:
    """The middle of the box round all the things."""
    things = _chosen(yard, ids)
    (left, right), (bottom, top) = (
        (min(_reach(t, axis)[0] for t in things), max(_reach(t, axis)[1] for t in things)) for axis in (0, 1)
    )
    return ((left + right) / 2, (bottom + top) / 2)


def mirror(yard: Yard, ids: frozenset[str], way: Way) -> Yard:
    """Swap left and right (`across`) or top and bottom (`up`) about the middle of all."""
    if not _chosen(yard, ids):
        return yard
    return mirror_at(yard, ids, middle_of_all(yard, ids), 90.0 if way == "across" else 0.0)


def mirror_at(yard: Yard, ids: frozenset[str], through: Point, degrees: float) -> Yard:
    """Mirror things at a line through a point, its direction in degrees counter-clockwise from the right."""
    x0, y0 = through
    # Exact for upright and level lines: the cosine of 180 degrees is -1, its sine all but 0.
    c, s = math.cos(math.radians(2 * degrees)), round(math.sin(math.radians(2 * degrees)), 15)

    def mapped(point: Point) -> Point:
        x, y = point[0] - x0, point[1] - y0
        return (x0 + c * x + s * y, y0 + s * x - c * y)

    yard = edits.place_by(yard, ids, mapped)
    for thing in yard.things():
        if thing.id in edits.together(yard, ids):
            yard = edits.replace(yard, _mirrored(thing, degrees % 180))
    return yard


def _mirrored(thing: Any, degrees: float) -> Any:
    """The directions that a thing keeps besides its points; `degrees` that of the line, 0 to 180."""
    turn = 2 * degrees
    if isinstance(thing, Planting):
        return evolve(thing, facing=(turn - thing.facing) % 360)
    if isinstance(thing, Building) and thing.ridge_angle is not None:
        # A mirrored lean-to keeps its high edge on the left of its direction: the direction turns about.
        about = 180.0 if thing.roof == "lean-to" else 0.0
        return evolve(thing, ridge_angle=(turn - thing.ridge_angle + about) % 360)
    if isinstance(thing, Dimension):
        return evolve(thing, off=-thing.off)
    return _upright(thing, degrees > 0) if isinstance(thing, Picture) else thing


def _upright(picture: Picture, across: bool) -> Picture:
    """A picture that covers the mirrored ground, itself not mirrored; its base was mirrored before."""
    a, b = picture.base
    if across:
        return evolve(picture, base=(b, a))
    # Its upper edge came to lie below its lower one, as far as it is high.
    above = corners(picture)[3]
    x, y = above[0] - a[0], above[1] - a[1]
    return evolve(picture, base=((a[0] - x, a[1] - y), (b[0] - x, b[1] - y)))


def turn(yard: Yard, ids: frozenset[str], degrees: float, about: Point | None = None) -> Yard:
    """Turn things counter-clockwise about a point, or the middle of all."""
    if not _chosen(yard, ids):
        return yard
    return edits.rotate(yard, ids, about if about is not None else middle_of_all(yard, ids), degrees)


def parse_turn(text: str, system: System) -> tuple[float, Point | None]:
    """`45`, `-22°30'`, or about a point `45 @ 4; 2.5`: degrees and the point, if any. Raises UnitError."""
    degrees, sign, place = text.partition("@")
    return parse_degrees(degrees), _point(place, system) if sign else None


def parse_mirror(text: str, system: System, *, north: float = 0.0) -> tuple[Point, float]:
    """The line to mirror at, `4; 2.5 < 90` or `4; 2.5 < N 45 E`: a point and degrees. Raises UnitError.

    Without a direction the line is upright.
    """
    place, sign, direction = text.partition("<")
    return _point(place, system), parse_angle(direction, north) if sign else 90.0


def _point(text: str, system: System) -> Point:
    entry = parse_typed(text, system)
    if entry.form != "place":
        raise UnitError(tr("'{text}' is not a place: write right and up like 4; 2.5", text=text.strip()))
    return (entry.first, entry.second)


def repeat(yard: Yard, ids: frozenset[str], count: int, step: Point) -> tuple[Yard, frozenset[str]]:
    """`count` of the things in all, each `step` further; returns the yard and the ids of all."""
    every = set(ids)
    for number in range(1, count):
        yard, keys = edits.duplicate(yard, ids, (step[0] * number, step[1] * number))
        every |= set(keys)
    return yard, frozenset(every)


def parse_repeat(text: str, system: System, *, north: float = 0.0) -> tuple[int, Point]:
    """`5 x 2.5 m` or `5 x 8' < 90`: how many in all and the step. Raises UnitError.

    `north`: where true north lies, degrees clockwise from the top, for a step along a bearing.
    """
    match = re.fullmatch(r"\s*(\d{1,4})\s*(?:x|×|\*|times|at)\s*(.+)", text, re.IGNORECASE)
    if match is None:
        raise UnitError(
            tr(
                "'{typed}': write how many and how far apart, for example 5 x 2.5 m or 5 x 8' < 90",
                typed=text,
            )
        )
    count = int(match[1])
    if not 2 <= count <= MOST_COPIES:
        raise UnitError(
            tr(
                "{count} of them: from 2 to {most} can be made at once",
                count=count,
                most=MOST_COPIES,
            )
        )
    entry = parse_typed(match[2], system, north=north)
    if entry.form not in ("length", "angle"):
        raise UnitError(tr("'{typed}' is not one distance", typed=match[2]))
    return count, polar((0.0, 0.0), entry.first, entry.second if entry.form == "angle" else 0.0)
