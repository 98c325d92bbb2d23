"""The light report: hours of direct sun at every crown, row and bed and over the ground, and who takes them.

Hours are the time a day with the sun at or above the lowest altitude, times the share of the beam let
through, averaged over the season's dates and over the part of the crown's surface that faces the sun.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from datetime import date

import numpy as np
from attrs import evolve, field, frozen
from numpy.typing import NDArray

from yardplan.sun.classes import Measure
from yardplan.sun.exposure import (
    Blocker,
    Exposure,
    Sun,
    Surfaces,
    batches_of,
    exposure_of,
    surfaces_of,
)
from yardplan.sun.field import field_of
from yardplan.sun.grid import Grid, grid_over
from yardplan.sun.parameters import count, figure
from yardplan.sun.position import Floats
from yardplan.sun.scene import (
    BEHIND_HORIZON,
    BEHIND_SLOPE,
    HORIZON,
    OPEN,
    SLOPE,
    Scene,
    kept_from,
    levelled,
    on_drawing,
)
from yardplan.sun.season import (
    TALLIES,
    Detail,
    Positions,
    joined,
    months_of,
    over_dates,
    season_positions,
    sky_parts,
)
from yardplan.sun.spans import beams_of
from yardplan.sun.targets import PATTERNS
from yardplan.yard.ground import Point

#: Called with the share done, 0 to 1; may raise to stop the work.
Progress = Callable[[float], None]
_HAIR, _DIGITS = 1e-9, 9


@frozen(kw_only=True)
class PlantLight:
    """Light of one plant, row or bed. Hours a day; `open_light` share of an open place's light, 0 to 1.

    `open_hours` is what an open place gets; `shaded_by` (id, hours) of all that takes light, most first,
    adds up to `open_hours` - `hours`. The ids `horizon` and `slope` stand for sky line and the ground's tilt.
    `worst_month` 1 to 12, 0 where the sun never rises high enough.
    """

    id: str
    hours: float
    hours_midsummer: float
    hours_worst_month: float
    worst_month: int
    hours_morning: float
    open_light: float
    open_hours: float
    shaded_by: tuple[tuple[str, float], ...]


@frozen(kw_only=True, eq=False)
class GroundField:
    """Hours of direct sun a day over the ground, (rows, cols) float32; `open_hours` of open ground.

    `measure` says where the numbers are something else: percent of open light, or what planting takes.
    """

    grid: Grid
    hours: NDArray[np.float32]
    open_hours: float
    measure: Measure = "hours"

    def at(self, point: Point) -> float | None:
        """Hours in the cell that holds a point, or None outside the field."""
        cell = self.grid.cell_at(point)
        return None if cell is None else float(self.hours[cell])


@frozen(kw_only=True, eq=False)
class LightReport:
    """Light of a yard at a year, at live or full detail."""

    year: int | None
    detail: Detail
    season: tuple[str, str]
    plants: Mapping[str, PlantLight]
    rows: Mapping[str, PlantLight]
    beds: Mapping[str, PlantLight]
    field: GroundField
    open_hours: float

    def of(self, thing_id: str) -> PlantLight | None:
        """Light of a plant, row or bed by id."""
        return self.plants.get(thing_id) or self.rows.get(thing_id) or self.beds.get(thing_id)


@frozen(eq=False)
class Setting:
    """Positions as the yard meets them: those that reach it, what an open place gets by tally, the months
    that count, and the season's hours lost to all alike."""

    sun: Sun
    totals: Mapping[str, float]
    months: tuple[int, ...]
    lost_to_all: tuple[tuple[str, float], ...] = field()


def setting_of(scene: Scene, positions: Positions) -> Setting:
    """Sort positions into those that reach the yard and those behind the horizon or the slope.

    What these take is theirs alone, whatever else stands in the way.
    """
    hidden = kept_from(scene, positions)
    reach = positions.chosen(hidden == OPEN)
    true = on_drawing(reach.vectors, scene.site.north)
    season = positions.weight("season")
    lost = tuple(
        (name, float(season[hidden == kind].sum()))
        for name, kind in ((HORIZON, BEHIND_HORIZON), (SLOPE, BEHIND_SLOPE)) if np.any(season[hidden == kind])
    )
    patterns = np.arange(len(positions))[hidden == OPEN] % PATTERNS
    sun = Sun(true, levelled(true, scene.gradient), reach.months, reach.weights, patterns)
    totals = dict(zip(TALLIES, positions.weights.sum(axis=1).tolist(), strict=True))
    return Setting(sun, totals, tuple(months_of(positions)), lost)


def owners_of(scene: Scene) -> dict[str, int]:
    """Numbers for everything that can take light."""
    return {owner: number for number, owner in enumerate(scene.casters)}


def samples(detail: Detail) -> int:
    """Points on each crown."""
    return count(f"{detail}_samples")


def scene_surfaces(scene: Scene, number: int) -> Surfaces:
    """Points on everything whose light is wanted."""
    return surfaces_of([subject.target(number) for subject in scene.subjects.values()], number)


#: Rays worked on at once.
_RAYS = 2_000_000


def _exposure(scene: Scene, setting: Setting, number: int, progress: Progress | None) -> Exposure:
    """Light of all subjects, a few positions at a time."""
    surfaces, owners = scene_surfaces(scene, number), owners_of(scene)
    batches = batches_of(scene.all_casters(), scene.gradient)
    hours = np.zeros((len(surfaces), len(TALLIES)))
    losses = np.zeros((len(surfaces), max(len(owners), 1)))
    step = max(1, _RAYS // max(1, len(surfaces) * number))
    for start in range(0, len(setting.sun) if len(surfaces) else 0, step):
        sun = setting.sun.part(start, start + step)
        blocks = Blocker(surfaces, sun, scene.gradient, owners).blocks(batches)
        part = exposure_of(surfaces.shown_to(sun), blocks, sun, losses.shape[1])
        hours += part.hours
        losses += part.losses
        if progress is not None:
            progress(min(start + step, len(setting.sun)) / len(setting.sun))
    return Exposure(hours, losses)


def plant_light(
    thing_id: str, hours: Floats, losses: Floats, owners: list[str], setting: Setting
) -> PlantLight:
    """Figures of one thing from its tallies and its losses by owner."""
    total, got = setting.totals, dict(zip(TALLIES, hours.tolist(), strict=True))
    by = [(owners[n], float(losses[n])) for n in np.flatnonzero(losses > 0.0)] + list(setting.lost_to_all)
    # Rounded, so that of months that are alike the first is named whatever the order of sums.
    months = [(round(got[f"month {month}"], _DIGITS), month) for month in setting.months]
    worst, month = min(months) if months else (0.0, 0)
    return PlantLight(
        id=thing_id, hours=_clean(got["season"]), hours_midsummer=_clean(got["midsummer"]),
        hours_worst_month=_clean(worst), worst_month=month, hours_morning=_clean(got["morning"]),
        open_light=_open_light(got, total),
        open_hours=total["season"], shaded_by=tuple(sorted(by, key=lambda pair: (-pair[1], pair[0]))),
    )


def _clean(hours: float) -> float:
    """Hours without the hair that rounding leaves where everything is shaded."""
    return 0.0 if hours < _HAIR else float(hours)


def _open_light(got: Mapping[str, float], total: Mapping[str, float]) -> float:
    """Direct share times direct light plus diffuse share times view of the sky; the sky alone without sun."""
    sky = got["sky"] / total["sky"] if total["sky"] > 0.0 else 1.0
    if total["light"] <= 0.0:
        return sky
    diffuse = figure("diffuse_share")
    return _clean(min((1.0 - diffuse) * got["light"] / total["light"] + diffuse * sky, 1.0))


def ground_field(scene: Scene, setting: Setting, grid: Grid, progress: Progress | None = None) -> GroundField:
    """Season mean of hours over the ground."""
    season = setting.sun.weights[0]
    counted = season > 0.0
    beams = beams_of(setting.sun.true[counted], setting.sun.months[counted], scene.gradient)
    hours = field_of(scene.all_casters(), beams, season[None, counted], grid, progress)[0]
    return GroundField(grid=grid, hours=hours, open_hours=setting.totals["season"])


def report_of(scene: Scene, setting: Setting, lights: Mapping[str, PlantLight], ground: GroundField,
              detail: Detail) -> LightReport:
    """Put lights by id into a report."""
    kinds: dict[str, dict[str, PlantLight]] = {"plant": {}, "row": {}, "bed": {}}
    for subject in scene.subjects.values():
        kinds[subject.kind][subject.id] = lights[subject.id]
    return LightReport(
        year=scene.year, detail=detail, season=scene.site.growing_season, plants=kinds["plant"],
        rows=kinds["row"], beds=kinds["bed"], field=ground, open_hours=setting.totals["season"],
    )


def _scaled(progress: Progress | None, start: float, end: float) -> Progress | None:
    if progress is None:
        return None
    tell = progress
    return lambda share: tell(start + share * (end - start))


def light_report(scene: Scene, detail: Detail = "full", progress: Progress | None = None, *,
                 cell: float | None = None, positions: Positions | None = None) -> LightReport:
    """Light of everything in a scene: `live` is coarse and quick, `full` refined.

    `progress` is called with the share done and may raise to stop. `cell` in metres and `positions` replace
    the usual ones.
    """
    setting = setting_of(scene, positions or season_positions(scene.site, detail))
    number = samples(detail)
    exposure = _exposure(scene, setting, number, _scaled(progress, 0.0, 0.5))
    owners = list(scene.casters)
    lights = {
        key: plant_light(key, exposure.hours[n], exposure.losses[n], owners, setting)
        for n, key in enumerate(scene.subjects)
    }
    grid = grid_over(scene.bounds, detail, cell)
    ground = ground_field(scene, setting, grid, _scaled(progress, 0.5, 1.0))
    return report_of(scene, setting, lights, ground, detail)


def day_report(scene: Scene, day: date, detail: Detail = "full", progress: Progress | None = None, *,
               cell: float | None = None) -> LightReport:
    """The same for one date: all hours are those of that day, leaves as in its month.

    `hours_midsummer` is 0 in it. In polar night all hours are 0.
    """
    positions = joined([
        over_dates([day], scene.site, figure(f"{detail}_day_step"), staggered=False), sky_parts(day.month)
    ])
    report = light_report(scene, detail, progress, cell=cell, positions=positions)
    return evolve(report, season=(day.strftime("%m-%d"), day.strftime("%m-%d")))
