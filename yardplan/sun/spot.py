"""Light at a spot: its hours, the bar of when in a day the sun reaches it and what blocks it, its year."""

from __future__ import annotations

from datetime import UTC, date, datetime

import numpy as np
from attrs import frozen

from yardplan.sun.exposure import Blocker, Blocks, batches_of, exposure_of, sums, surfaces_of
from yardplan.sun.leaves import through
from yardplan.sun.light import PlantLight, owners_of, plant_light, setting_of
from yardplan.sun.position import Floats
from yardplan.sun.scene import BEHIND_HORIZON, HORIZON, OPEN, SLOPE, Scene, kept_from
from yardplan.sun.season import (
    YEAR,
    Detail,
    Positions,
    one_day,
    season_dates,
    season_positions,
    steps_of,
)
from yardplan.sun.targets import spot_target
from yardplan.yard.ground import Point

#: Steps of the day bar, minutes.
BAR_STEP = 10.0


@frozen
class Stretch:
    """A stretch of a day, as UTC moments, with the share of the beam that arrives and what takes most of it.

    `by` is None where the sun is clear; the lowest altitude counts as the day's ends.
    """

    start: datetime
    end: datetime
    light: float
    by: str | None


@frozen
class Day:
    """One day at a spot: hours of sun, hours of an open place, and the day bar."""

    day: date
    hours: float
    open_hours: float
    bar: tuple[Stretch, ...]


@frozen(kw_only=True)
class Spot:
    """Light of a point of the ground or above it: season figures, one day, and hours by month of the year."""

    place: Point
    height: float
    season: PlantLight
    day: Day
    months: tuple[float, ...]
    open_months: tuple[float, ...]


_KEY = ""


class _Look:
    """A spot and its casters, ready to be asked about sets of positions."""

    def __init__(self, scene: Scene, place: Point, height: float) -> None:
        self.scene = scene
        self.surfaces = surfaces_of([spot_target(_KEY, "plant", place, height)], 1)
        self.batches = batches_of(scene.all_casters(), scene.gradient)
        self.owners = owners_of(scene)

    def light(self, positions: Positions) -> PlantLight:
        """The figures over a set of positions."""
        setting = setting_of(self.scene, positions)
        blocks = Blocker(self.surfaces, setting.sun, self.scene.gradient, self.owners).blocks(self.batches)
        shown = self.surfaces.shown_to(setting.sun)
        exposure = exposure_of(shown, blocks, setting.sun, max(len(self.owners), 1))
        return plant_light(_KEY, exposure.hours[0], exposure.losses[0], list(self.owners), setting)

    def steps(self, positions: Positions) -> tuple[Floats, list[str | None]]:
        """At each position the share of the beam that arrives, and what takes most."""
        hidden = kept_from(self.scene, positions)
        setting = setting_of(self.scene, positions)
        blocks = Blocker(self.surfaces, setting.sun, self.scene.gradient, self.owners).blocks(self.batches)
        light = np.zeros(len(positions))
        depth = sums(blocks.ray, blocks.depth, len(setting.sun))
        light[hidden == OPEN] = through(depth)
        taker: list[str | None] = [
            HORIZON if kind == BEHIND_HORIZON else SLOPE if kind != OPEN else None for kind in hidden
        ]
        open_at = np.flatnonzero(hidden == OPEN)
        for ray, owner in _darkest(blocks).items():
            taker[open_at[ray]] = list(self.owners)[owner]
        return light, taker


def _darkest(blocks: Blocks) -> dict[int, int]:
    """The owner of the greatest depth on each ray; of equal ones the first in the yard's order."""
    order = np.lexsort((-blocks.owner, blocks.depth))
    return dict(zip(blocks.ray[order].tolist(), blocks.owner[order].tolist(), strict=True))


def day_at(scene: Scene, place: Point, day: date, height: float = 0.0, step: float = BAR_STEP) -> Day:
    """One day at a spot. Where the sun never stands high enough the bar is empty and the hours are 0."""
    return _day(_Look(scene, place, height), day, step)


def _day(look: _Look, day: date, step: float) -> Day:
    positions = steps_of(day, look.scene.site, step, 0.5)
    if not len(positions):
        return Day(day, 0.0, 0.0, ())
    light, takers = look.steps(positions)
    weights = positions.weight("season")
    return Day(
        day, float(light @ weights), float(weights.sum()), _bar(positions.times, light, takers, step * 60.0)
    )


def _bar(times: Floats, light: Floats, takers: list[str | None], seconds: float) -> tuple[Stretch, ...]:
    """Join neighbouring steps that are alike."""
    bar: list[Stretch] = []
    for at, share, by in zip(times, light, takers, strict=True):
        start, end = (datetime.fromtimestamp(at + side * seconds / 2.0, UTC) for side in (-1.0, 1.0))
        last = bar[-1] if bar else None
        alike = last is not None and last.by == by and abs(last.light - share) < 1e-6
        if last is not None and alike and abs((start - last.end).total_seconds()) < 1.0:
            bar[-1] = Stretch(last.start, end, last.light, by)
        else:
            bar.append(Stretch(start, end, float(share), by))
    return tuple(bar)


#: The year's course: every so many days, steps of so many minutes.
_YEAR_DAYS, _YEAR_STEP = 10, 30.0


def _course(look: _Look) -> tuple[tuple[float, ...], tuple[float, ...]]:
    """Mean hours of each month at the spot and at an open place, January first."""
    got, open_ = np.zeros(12), np.zeros(12)
    number = np.zeros(12)
    for day in season_dates(("01-01", "12-31"), _YEAR_DAYS):
        positions = one_day(day, look.scene.site, _YEAR_STEP)
        number[day.month - 1] += 1
        open_[day.month - 1] += positions.total("season")
        if len(positions):
            got[day.month - 1] += look.steps(positions)[0] @ positions.weight("season")
    return tuple((got / number).tolist()), tuple((open_ / number).tolist())


def spot_at(scene: Scene, place: Point, day: date | None = None, height: float = 0.0,
            detail: Detail = "live") -> Spot:
    """Everything about the light at a point; `day` defaults to the midsummer day.

    `height` in metres above the ground. A point inside a building gets no sun, under its name.
    """
    look = _Look(scene, place, height)
    on = day or date(YEAR, 12 if scene.site.southern else 6, 21)
    months, open_months = _course(look)
    return Spot(
        place=place, height=height, season=look.light(season_positions(scene.site, detail)),
        day=_day(look, on, BAR_STEP), months=months, open_months=open_months,
    )


def hours_on(scene: Scene, place: Point, day: date, height: float = 0.0) -> float:
    """Hours of direct sun at a point on one date."""
    return day_at(scene, place, day, height).hours

