"""Setting out: from the plan to pegs in the ground with two tapes, or along a baseline.

A place is fixed by its distances from two points that can be found on the ground. The error of such a
fix grows as the tapes cross more flatly, so the pair with the smallest expected error is chosen.
"""

from __future__ import annotations

import csv
import math
from collections.abc import Iterable, Sequence
from functools import cache
from itertools import combinations

from attrs import frozen

from yardplan.language import later, tr
from yardplan.shipped import resource
from yardplan.yard.ground import Point
from yardplan.yard.handles import handles_of
from yardplan.yard.planting import Bed, Row
from yardplan.yard.yard import Yard

#: Pegs set before that are tried as starts of tapes, the nearest ones.
_PEGS_TRIED = 12


@cache
def figures() -> dict[str, float]:
    """The figures of resources/setting_out.csv by name, in the units given there."""
    with resource("setting_out.csv").open(encoding="utf-8", newline="") as file:
        return {row["figure"]: float(row["value"]) for row in csv.DictReader(file)}


class SettingOutError(ValueError):
    """Two measures that cannot both be right, said in words for a person."""


@frozen
class FixedPoint:
    """A point that can be found on the ground again: a house corner, a gate post, a lot corner peg.

    `error` in metres: how surely it is known, where it is a peg set before.
    """

    name: str
    place: Point
    error: float = 0.0


@frozen(kw_only=True)
class TwoTapes:
    """A place fixed by two tapes: metres from `first` and from `second`.

    `left` True: the place lies to the left when looking from the first point to the second.
    `error` expected in metres; `crossing` angle of the tapes in degrees.
    """

    first: FixedPoint
    second: FixedPoint
    from_first: float
    from_second: float
    left: bool
    crossing: float
    error: float

    @property
    def weak(self) -> bool:
        """True when the tapes cross too flatly for a sure fix."""
        narrow = figures()["narrowest crossing"]
        return not narrow <= self.crossing <= 180 - narrow


@frozen(kw_only=True)
class Offset:
    """A place by a baseline: metres `along` it from its start, then square off it, to the left or right."""

    along: float
    off: float
    left: bool

    @property
    def long(self) -> bool:
        """True when the offset is longer than can be kept square by eye."""
        return self.off > figures()["longest offset"]


@frozen(kw_only=True)
class Peg:
    """One peg: the key it carries, where it stands, how it is found, and a check against another peg."""

    key: str
    place: Point
    tapes: TwoTapes | None
    offset: Offset | None
    check_with: str | None = None
    check_distance: float | None = None


def fixed_points(yard: Yard) -> tuple[FixedPoint, ...]:
    """Points of the yard that can be found on the ground: building corners, gate posts, lot corners."""
    found: list[FixedPoint] = []
    for building in yard.buildings:
        if building.beyond_lot:
            continue
        found += _corners(building.name or building.id, building.footprint)
    found += [
        FixedPoint(tr("{gate} ({key}) middle", gate=gate.name, key=gate.id), gate.place)
        for gate in yard.gates
    ]
    found += _corners(tr("lot line"), yard.lot)
    return tuple(found)


def _corners(name: str, outline: tuple[Point, ...]) -> list[FixedPoint]:
    return [
        FixedPoint(tr("{thing}, corner {number}", thing=name, number=number), place)
        for number, place in enumerate(outline, 1)
    ]


def tape_error(length: float) -> float:
    """Expected error of one taped length, metres."""
    return max(figures()["least error"], figures()["tape error"] * length)


def crossing_angle(place: Point, first: Point, second: Point) -> float:
    """The angle in degrees at which tapes from two points meet at a place."""
    a = math.atan2(first[1] - place[1], first[0] - place[0])
    b = math.atan2(second[1] - place[1], second[0] - place[0])
    turn = abs(math.degrees(a - b)) % 360
    return min(turn, 360 - turn)


def fix(place: Point, first: FixedPoint, second: FixedPoint) -> TwoTapes:
    """The two tape distances that give a place, with the error to expect."""
    one, two = math.dist(place, first.place), math.dist(place, second.place)
    angle = crossing_angle(place, first.place, second.place)
    sine = max(math.sin(math.radians(angle)), 1e-6)
    tapes = max(tape_error(one), tape_error(two)) * figures()["crossing factor"]
    error = (tapes + max(first.error, second.error)) / sine
    return TwoTapes(
        first=first, second=second, from_first=one, from_second=two,
        left=_side(first.place, second.place, place) > 0, crossing=angle, error=error,
    )


def _side(start: Point, end: Point, place: Point) -> float:
    """Positive when a place lies to the left of the line from start to end."""
    return (end[0] - start[0]) * (place[1] - start[1]) - (end[1] - start[1]) * (place[0] - start[0])


def place_of(tapes: TwoTapes) -> Point:
    """The place that two tape distances give (trilateration). Raises SettingOutError on a measuring slip."""
    (x1, y1), (x2, y2) = tapes.first.place, tapes.second.place
    base = math.dist((x1, y1), (x2, y2))
    one, two = tapes.from_first, tapes.from_second
    if base == 0 or one + two < base or abs(one - two) > base:
        raise SettingOutError(
            tr("the tapes from {first} and {second} do not meet: measure again", first=tapes.first.name,
               second=tapes.second.name)
        )
    along = (one**2 - two**2 + base**2) / (2 * base)
    off = math.sqrt(max(one**2 - along**2, 0.0)) * (1 if tapes.left else -1)
    ux, uy = (x2 - x1) / base, (y2 - y1) / base
    return (x1 + along * ux - off * uy, y1 + along * uy + off * ux)


def best_fix(
    place: Point, points: tuple[FixedPoint, ...], set_before: Sequence[FixedPoint] = ()
) -> TwoTapes | None:
    """The pair of points with the smallest expected error; None without two of them.

    Where no two fixed points lie within reach of a tape, pegs `set_before` serve beside them.
    """
    reach = figures()["longest tape"]

    def near(some: Iterable[FixedPoint]) -> list[FixedPoint]:
        return [p for p in some if 0 < math.dist(p.place, place) <= reach]

    best = _best_pair(place, near(points))
    if best is None and set_before:
        pegs_near = sorted(near(set_before), key=lambda p: math.dist(p.place, place))
        best = _best_pair(place, near(points) + pegs_near[:_PEGS_TRIED])
    return best or _best_pair(place, points)


def _best_pair(place: Point, points: Iterable[FixedPoint]) -> TwoTapes | None:
    pairs = (pair for pair in combinations(points, 2) if pair[0].place != pair[1].place)
    return min((fix(place, *pair) for pair in pairs), key=lambda tapes: tapes.error, default=None)


def offset_of(place: Point, start: Point, end: Point) -> Offset:
    """A place by distance along a baseline and the distance square off it."""
    length = math.dist(start, end)
    ux, uy = (end[0] - start[0]) / length, (end[1] - start[1]) / length
    dx, dy = place[0] - start[0], place[1] - start[1]
    off = -dx * uy + dy * ux
    return Offset(along=dx * ux + dy * uy, off=abs(off), left=off > 0)


def place_at(offset: Offset, start: Point, end: Point) -> Point:
    """The place that a baseline offset gives: the inverse of `offset_of`."""
    length = math.dist(start, end)
    ux, uy = (end[0] - start[0]) / length, (end[1] - start[1]) / length
    off = offset.off if offset.left else -offset.off
    return (start[0] + offset.along * ux - off * uy, start[1] + offset.along * uy + off * ux)


def baseline(yard: Yard) -> tuple[FixedPoint, FixedPoint] | None:
    """The longest wall of a building, else the longest lot line: the line to measure from."""
    houses = [(b.name or b.id, b.footprint) for b in yard.buildings if not b.beyond_lot]
    name, outline = max(houses, key=lambda house: _longest(house[1]), default=(tr("lot line"), yard.lot))
    if len(outline) < 2:
        return None
    sides = [(i, (i + 1) % len(outline)) for i in range(len(outline))]
    i, j = max(sides, key=lambda side: math.dist(outline[side[0]], outline[side[1]]))
    corners = _corners(name, outline)
    return corners[i], corners[j]


def _longest(outline: tuple[Point, ...]) -> float:
    return max((math.dist(a, b) for a, b in zip(outline, (*outline[1:], outline[0]), strict=True)), default=0)


def places(yard: Yard) -> list[tuple[str, Point]]:
    """What needs a peg: every plant, pot, row end and bed corner."""
    found = [(plant.id, plant.place) for plant in yard.plantings]
    found += [(pot.id, pot.place) for pot in yard.containers if not _holds(yard, pot.id)]
    several: tuple[Row | Bed, ...] = (*yard.rows, *yard.beds)
    for thing in several:
        word = later("{key} end {n}") if isinstance(thing, Row) else later("{key} corner {n}")
        ends = enumerate(handles_of(yard, thing.id), 1)
        found += [(tr(word, key=thing.id, n=n), place) for n, place in ends]
    return found


def _holds(yard: Yard, container: str) -> bool:
    return any(plant.container == container for plant in yard.plantings)


def pegs(yard: Yard) -> list[Peg]:
    """Every peg in the order of work: nearest to the baseline first, each checked against its neighbour."""
    points, line = fixed_points(yard), baseline(yard)
    todo = places(yard)
    if line is not None:
        todo.sort(key=lambda item: _order(offset_of(item[1], line[0].place, line[1].place)))
    result: list[Peg] = []
    before: list[FixedPoint] = []
    for key, place in todo:
        tapes = best_fix(place, points, before)
        near = _check_peg(place, tapes, result)
        if tapes is not None:
            before.append(FixedPoint(key, place, tapes.error))
        result.append(Peg(
            key=key, place=place, tapes=tapes,
            offset=offset_of(place, line[0].place, line[1].place) if line else None,
            check_with=near.key if near else None,
            check_distance=math.dist(near.place, place) if near else None,
        ))
    return result


def _check_peg(place: Point, tapes: TwoTapes | None, done: Sequence[Peg]) -> Peg | None:
    """The nearest peg set before that the tapes do not start from: another measure, not the same again."""
    used = {tapes.first.name, tapes.second.name} if tapes is not None else set()
    others = [peg for peg in done if peg.key not in used] or done
    return min(others, key=lambda peg: math.dist(peg.place, place), default=None)


def _order(offset: Offset) -> tuple[float, float]:
    """Strips of a long offset's depth from the baseline outwards, each walked from end to end."""
    return (math.floor(offset.off / figures()["strip depth"]), offset.along)


def square_corner(longest: float) -> tuple[float, float, float]:
    """The largest 3-4-5 triangle whose longer leg fits, metres: legs and diagonal."""
    step = max(math.floor(longest / 4 * 10) / 10, 0.1)
    return (3 * step, 4 * step, 5 * step)
