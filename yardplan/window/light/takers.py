"""Who takes the light of one plant, row or bed: the table, and its marks on the sheet."""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import TYPE_CHECKING

from attrs import frozen

from yardplan.language import decimals, later, tr
from yardplan.sun.scene import HORIZON, SLOPE
from yardplan.window.canvas.geometry import middle, nearest_on, stretches
from yardplan.window.tools.tool import Disc, Overlay, Stroke, Words
from yardplan.yard.edits import points_of
from yardplan.yard.ground import Building, Outline, Point

if TYPE_CHECKING:
    from yardplan.sun.light import PlantLight
    from yardplan.window.open_yard import OpenYard

#: Takers of less than this many hours a day are put together as one line.
WORTH_A_LINE = 0.05
#: Casters marked on the sheet, at most, and from how many hours on.
_MARKED, _WORTH_A_MARK = 6, 0.1
_FAR = {HORIZON: later("the sky line"), SLOPE: later("the slope of the ground")}
#: Metres past the caster at which its words stand.
_PAST = 0.9
OTHERS = later("others together")


@frozen
class Taker:
    """One line of the table: `id` None for several together."""

    id: str | None
    name: str
    hours: float


@frozen(eq=False)
class Taken:
    """The light of a thing and who takes it; the hours of `takers` add up to `missing`."""

    id: str
    name: str
    light: PlantLight
    takers: tuple[Taker, ...]

    @property
    def missing(self) -> float:
        """Hours a day that the thing lacks of what an open place gets."""
        return self.light.open_hours - self.light.hours


def subject_of(open_yard: OpenYard) -> str | None:
    """The one selected thing that has light of its own."""
    light = open_yard.light
    if light is None or len(open_yard.selection) != 1:
        return None
    only = next(iter(open_yard.selection))
    return only if light.of(only) is not None else None


def taken_from(open_yard: OpenYard, thing: str) -> Taken | None:
    """Who takes the light of a thing, most first; None while its light is not known."""
    from yardplan.checks.wording import names_of

    light = open_yard.light.of(thing) if open_yard.light is not None else None
    if light is None:
        return None
    names = names_of(open_yard.shown_yard) | {key: tr(words) for key, words in _FAR.items()}
    worth = [(by, hours) for by, hours in light.shaded_by if hours >= WORTH_A_LINE]
    takers = [Taker(by, names.get(by, by), hours) for by, hours in worth]
    rest = light.open_hours - light.hours - sum(hours for _, hours in worth)
    if rest >= WORTH_A_LINE:
        takers.append(Taker(None, tr(OTHERS), rest))
    return Taken(thing, names.get(thing, thing), light, tuple(takers))


def tenths(hours: Sequence[float], total: float) -> list[float]:
    """The hours to a tenth, rounded so that they add up to the total as it is shown.

    The parts lost by cutting to tenths go to those that lost most.
    """
    cut = [math.floor(value * 10.0 + 1e-9) for value in hours]
    left = round(total * 10.0) - sum(cut)
    by_loss = sorted(range(len(hours)), key=lambda n: cut[n] - hours[n] * 10.0)
    for n in by_loss[: max(left, 0)]:
        cut[n] += 1
    return [value / 10.0 for value in cut]


def marks_of(open_yard: OpenYard, taken: Taken) -> Overlay:
    """The casters outlined, a line from each to the plant, and its hours."""
    yard = open_yard.shown_yard
    subject = yard.find(taken.id)
    if subject is None:
        return Overlay()
    here = middle(points_of(subject))
    strokes: list[Stroke] = []
    discs: list[Disc] = []
    words: list[Words] = []
    for taker in taken.takers[:_MARKED]:
        thing = yard.find(taker.id) if taker.id else None
        if thing is None or taker.id == taken.id or taker.hours < _WORTH_A_MARK:
            continue
        points = points_of(thing)
        there = _nearest(points, here, closed=isinstance(thing, Building))
        strokes.append(Stroke(points=(there, here), look="guide"))
        if len(points) > 1:
            strokes.append(Stroke(points=points, look="guide", closed=isinstance(thing, Building)))
        else:
            discs.append(Disc(centre=there, radius=_reach(open_yard, thing.id), look="guide"))
        words.append(Words(place=_beyond(here, there), text=f"{taker.id} {decimals(f'{taker.hours:.1f}')} h"))
    return Overlay(strokes=tuple(strokes), discs=tuple(discs), words=tuple(words))


def _reach(open_yard: OpenYard, thing: str) -> float:
    """Half the spread of a plant at the year shown."""
    plant = next((p for p in open_yard.stand.plants if p.id == thing), None)
    return max(plant.size.spread / 2 if plant is not None else 0.0, 0.3)


def _beyond(here: Point, there: Point) -> Point:
    """A little past the caster, seen from the plant: the plant itself stays in view."""
    far = math.dist(here, there)
    part = 1.0 + _PAST / far if far > 1e-6 else 1.0
    return (here[0] + part * (there[0] - here[0]), here[1] + part * (there[1] - here[1]))


def _nearest(points: Outline, place: Point, *, closed: bool) -> Point:
    """The point of an outline or line nearest to a place."""
    if len(points) == 1:
        return points[0]
    found = [nearest_on(a, b, place) for a, b in stretches(points, closed=closed)]
    return min(found, key=lambda point: math.dist(point, place))
