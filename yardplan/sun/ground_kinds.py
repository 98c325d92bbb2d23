"""The ground by other measures than the season's mean: midsummer, worst month, morning, a date, open light.

Each also before anything is planted, and as the hours that the planting takes. Worked out whole, or while
things are dragged with only the moving shadows done anew; both give the same figures.
"""

from __future__ import annotations

from collections.abc import Collection, Sequence
from datetime import date
from typing import Literal

import numpy as np
from attrs import frozen
from numpy.typing import NDArray

from yardplan.sun.classes import Measure
from yardplan.sun.field import Progress, field_of
from yardplan.sun.grid import Grid, grid_over
from yardplan.sun.light import GroundField, setting_of
from yardplan.sun.moving import MovingField
from yardplan.sun.parameters import figure
from yardplan.sun.position import Floats
from yardplan.sun.scene import Scene, before_planting
from yardplan.sun.season import (
    TALLIES,
    Detail,
    Positions,
    midsummer_of,
    months_of,
    over_dates,
    season_positions,
)
from yardplan.sun.spans import Beams, beams_of

Kind = Literal["season", "midsummer", "worst month", "morning", "date", "open light"]
KINDS: tuple[Kind, ...] = ("season", "midsummer", "worst month", "morning", "date", "open light")
#: With what is planted, without it, or what the planting takes.
Planting = Literal["planted", "bare", "taken"]
PLANTINGS: tuple[Planting, ...] = ("planted", "bare", "taken")
_PERCENT = 100.0
Hours = NDArray[np.float32]


@frozen
class Wanted:
    """What the ground is asked for; `day` counts for the kind `date` only, None there is midsummer."""

    kind: Kind = "season"
    planting: Planting = "planted"
    day: date | None = None

    @property
    def measure(self) -> Measure:
        """What the numbers are: hours a day, percent of open light, or how much of these is taken."""
        share = self.kind == "open light"
        if self.planting == "taken":
            return "share taken" if share else "taken"
        return "share" if share else "hours"


@frozen(eq=False)
class _Part:
    """Beams that count towards one tally, and what an open place gets by it."""

    beams: Beams
    weights: Floats
    total: float


def _positions(scene: Scene, wanted: Wanted, detail: Detail) -> Positions:
    if wanted.kind != "date":
        return season_positions(scene.site, detail)
    day = wanted.day or midsummer_of(scene.site)
    return over_dates([day], scene.site, figure(f"{detail}_day_step"), staggered=False)


def _tallies(wanted: Wanted, positions: Positions) -> list[str]:
    if wanted.kind == "worst month":
        return [f"month {month}" for month in months_of(positions)]
    if wanted.kind == "open light":
        return ["light", "sky"]
    return [wanted.kind if wanted.kind in ("midsummer", "morning") else "season"]


def _parts(scene: Scene, wanted: Wanted, detail: Detail) -> list[_Part]:
    positions = _positions(scene, wanted, detail)
    setting = setting_of(scene, positions)
    parts = []
    for tally in _tallies(wanted, positions):
        weights = setting.sun.weights[TALLIES.index(tally)]
        counted = weights > 0.0
        beams = beams_of(setting.sun.true[counted], setting.sun.months[counted], scene.gradient)
        parts.append(_Part(beams, weights[counted], setting.totals[tally]))
    return parts


def _combined(wanted: Wanted, parts: Sequence[_Part], fields: Sequence[Hours], grid: Grid) -> Hours:
    """One figure a cell from those of the tallies; nothing where the sun never rises high enough."""
    if not fields:
        return np.zeros((grid.rows, grid.cols), dtype=np.float32)
    if wanted.kind == "worst month":
        return np.asarray(np.minimum.reduce(list(fields)))
    if wanted.kind != "open light":
        return fields[0]
    direct, sky = (_share(field, part.total) for field, part in zip(fields, parts, strict=True))
    diffuse = figure("diffuse_share") if parts[0].total > 0.0 else 1.0
    return np.clip(_PERCENT * ((1.0 - diffuse) * direct + diffuse * sky), 0.0, _PERCENT)


def _share(field: Hours, total: float) -> Hours:
    return field / np.float32(total) if total > 0.0 else np.zeros_like(field)


def _open(wanted: Wanted, parts: Sequence[_Part]) -> float:
    """What open ground has."""
    if wanted.kind == "open light":
        return _PERCENT
    return min((part.total for part in parts), default=0.0)


def _scenes(scene: Scene, planting: Planting) -> tuple[Scene, ...]:
    """The scenes to look at; of two the second is taken from the first."""
    if planting == "planted":
        return (scene,)
    bare = before_planting(scene)
    return (bare,) if planting == "bare" else (bare, scene)


def _made(wanted: Wanted, parts: Sequence[_Part], grid: Grid, each: Sequence[Sequence[Hours]]) -> GroundField:
    found = [_combined(wanted, parts, fields, grid) for fields in each]
    hours = found[0] if len(found) == 1 else np.maximum(found[0] - found[1], 0.0)
    return GroundField(grid=grid, hours=hours, open_hours=_open(wanted, parts), measure=wanted.measure)


def ground_of(scene: Scene, wanted: Wanted, detail: Detail = "full", progress: Progress | None = None, *,
              cell: float | None = None) -> GroundField:
    """The ground of a scene by what is wanted. `progress` as in light.light_report."""
    parts, grid = _parts(scene, wanted, detail), grid_over(scene.bounds, detail, cell)
    scenes = _scenes(scene, wanted.planting)
    steps = len(scenes) * max(len(parts), 1)
    each: list[list[Hours]] = []
    for looked in scenes:
        each.append([])
        for part in parts:
            done = sum(len(fields) for fields in each)
            casters = looked.all_casters()
            tell = _stretch(progress, done / steps, 1.0 / steps)
            each[-1].append(field_of(casters, part.beams, part.weights[None, :], grid, tell)[0])
    return _made(wanted, parts, grid, each)


def _stretch(progress: Progress | None, start: float, length: float) -> Progress | None:
    if progress is None:
        return None
    tell = progress
    return lambda share: tell(start + length * share)


class MovingGround:
    """The ground while the things `ids` are moved or changed; built at the press."""

    def __init__(self, scene: Scene, ids: Collection[str], wanted: Wanted, detail: Detail = "live", *,
                 cell: float | None = None) -> None:
        self.ids, self.wanted, self._size = frozenset(ids), wanted, (detail, cell)
        self.grid = grid_over(scene.bounds, detail, cell)
        self._parts = _parts(scene, wanted, detail)
        self._each = self._grounds(scene)

    def _grounds(self, scene: Scene) -> list[list[MovingField]]:
        return [
            [MovingField(looked.all_casters(without=self.ids), p.beams, p.weights, self.grid)
             for p in self._parts]
            for looked in _scenes(scene, self.wanted.planting)
        ]

    def field(self, scene: Scene) -> GroundField:
        """The ground with the things where they are in `scene`; over the lot as it is there."""
        grid = grid_over(scene.bounds, *self._size)
        if grid != self.grid:
            self.grid = grid
            self._each = self._grounds(scene)
        scenes = _scenes(scene, self.wanted.planting)
        each = [
            [part.with_casters(looked.casters_of(self.ids)) for part in fields]
            for looked, fields in zip(scenes, self._each, strict=True)
        ]
        return _made(self.wanted, self._parts, self.grid, each)
