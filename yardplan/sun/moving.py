"""Light while things are dragged: at the press the moving casters are taken out, each frame adds their spans.

What is found equals a computation from scratch at the same detail: nothing is moved in steps and nothing
drifts. The ground costs only the cells inside the moving shadows; the other plants only the rays met by them.
"""

from __future__ import annotations

from collections.abc import Collection, Sequence

import numpy as np
from attrs import frozen
from numpy.typing import NDArray

from yardplan.sun.casters import Caster
from yardplan.sun.exposure import (
    Batch,
    Blocker,
    Blocks,
    Exposure,
    Surfaces,
    batches_of,
    exposure_of,
    sums,
    surfaces_of,
)
from yardplan.sun.field import Ledger, chunk_of
from yardplan.sun.grid import Grid, grid_over
from yardplan.sun.leaves import DEPTH_UNIT
from yardplan.sun.light import (
    GroundField,
    LightReport,
    PlantLight,
    Setting,
    owners_of,
    plant_light,
    report_of,
    samples,
    setting_of,
)
from yardplan.sun.position import Floats
from yardplan.sun.scene import Scene
from yardplan.sun.season import Detail, Positions, season_positions
from yardplan.sun.spans import Beams, Ints, Spans, beams_of, spans_of

#: From this part of all cells and positions on, running sums over everything are cheaper.
_DENSE = 3


def _cells(spans: Spans, grid: Grid) -> tuple[Ints, Ints]:
    """Flat index (beam, row, column) of every cell inside the spans, and the number of its span."""
    lengths = spans.end - spans.start
    first = (spans.beam * grid.rows + spans.row) * grid.cols + spans.start
    ends = np.cumsum(lengths)
    span = np.repeat(np.arange(len(lengths)), lengths)
    return np.arange(len(span)) + (first - (ends - lengths))[span], span


class MovingField:
    """The ground's light without the moving casters, and with them wherever they are."""

    def __init__(self, casters: Sequence[Caster], beams: Beams, weights: Floats, grid: Grid) -> None:
        self.grid, self.beams = grid, beams
        # Light of the rest times the weight of the position, one number a cell and position.
        self._rest = np.empty((len(beams), grid.cells), dtype=np.float32)
        self._hours = np.zeros(grid.cells)
        self._left: NDArray[np.float32] | None = None
        self._fill(casters, weights.astype(np.float32))

    def _fill(self, casters: Sequence[Caster], weights: NDArray[np.float32]) -> None:
        step = min(chunk_of(self.grid), max(len(self.beams), 1))
        ledger = Ledger(self.grid, step)
        for start in range(0, len(self.beams), step):
            part = self.beams.part(start, start + step)
            ledger.clear()
            for spans in spans_of(casters, part, self.grid):
                ledger.add(spans)
            light = ledger.light(len(part)).reshape(len(part), -1)
            light *= weights[start : start + step, None]
            self._rest[start : start + step] = light
            self._hours += light.sum(axis=0, dtype=np.float64)

    def with_casters(self, casters: Sequence[Caster]) -> NDArray[np.float32]:
        """Hours in each cell (rows, cols) with the moving casters in place."""
        found = [spans for caster in casters for spans in spans_of([caster], self.beams, self.grid)]
        each = [spans for spans in found if len(spans)]
        covered = sum(int((spans.end - spans.start).sum()) for spans in each)
        if len(each) == 1:
            lost = self._lost_alone(each[0])
        elif covered < self._rest.size // _DENSE:
            lost = self._lost_in_turn(each)
        else:
            lost = self._lost_densely(each)
        return (self._hours - lost).astype(np.float32).reshape(self.grid.rows, self.grid.cols)

    def _lost_alone(self, spans: Spans) -> Floats:
        """Hours that one caster takes; no cell lies in two of its spans."""
        cell, span = _cells(spans, self.grid)
        taken = self._rest.reshape(-1)[cell]
        taken *= -np.expm1(spans.depth * (-1.0 / DEPTH_UNIT)).astype(np.float32)[span]
        return sums(cell % self.grid.cells, taken, self.grid.cells)

    def _lost_in_turn(self, each: Sequence[Spans]) -> Floats:
        """Hours that several casters take: each what those before it left."""
        if self._left is None:
            self._left = np.ones(self._rest.size, dtype=np.float32)
        lost, touched = np.zeros(self.grid.cells), []
        for spans in each:
            cell, span = _cells(spans, self.grid)
            before = self._left[cell]
            after = before * np.exp(spans.depth * (-1.0 / DEPTH_UNIT)).astype(np.float32)[span]
            self._left[cell] = after
            taken = self._rest.reshape(-1)[cell] * (before - after)
            lost += sums(cell % self.grid.cells, taken, self.grid.cells)
            touched.append(cell)
        for cell in touched:
            self._left[cell] = 1.0
        return lost

    def _lost_densely(self, each: Sequence[Spans]) -> Floats:
        """Hours that many casters take, by running sums over all cells."""
        lost, step = np.zeros(self.grid.cells), min(chunk_of(self.grid), max(len(self.beams), 1))
        ledger = Ledger(self.grid, step)
        for start in range(0, len(self.beams), step):
            number = min(step, len(self.beams) - start)
            ledger.clear()
            for spans in each:
                ledger.add(_between(spans, start, start + number))
            dark = ledger.light(number).reshape(number, -1)
            np.subtract(1.0, dark, out=dark)
            lost += np.einsum("nc,nc->c", dark, self._rest[start : start + number])
        return lost


def _between(spans: Spans, start: int, end: int) -> Spans:
    """The spans of some beams in a row, numbered from the first of these."""
    keep = (spans.beam >= start) & (spans.beam < end)
    return Spans(
        spans.beam[keep] - start, spans.row[keep], spans.start[keep], spans.end[keep], spans.depth[keep]
    )


@frozen(eq=False)
class _Rest:
    """Light of the things that stay, without the moving casters. `depth` and `shown` flat over rays."""

    surfaces: Surfaces
    shown: Floats
    depth: Floats
    blocks: Blocks
    exposure: Exposure


class MovingLight:
    """Light of plants, rows and beds: those that stay by the rays that the movers meet, the movers anew."""

    def __init__(self, scene: Scene, ids: Collection[str], setting: Setting, number: int) -> None:
        self.ids, self.setting, self.number = frozenset(ids), setting, number
        self.owners = owners_of(scene)
        for key in ids:
            self.owners.setdefault(key, len(self.owners))
        self.staying = [key for key in scene.subjects if key not in self.ids]
        self.gradient = scene.gradient
        rest = scene.all_casters(without=self.ids)
        # Few targets move, so that many casters can be tested against them in one go.
        self.batches = batches_of(rest, self.gradient, len(rest) + 1)
        self._rest = self._look(scene)
        self._lights_of_rest = self._lights(self.staying, self._rest.exposure)
        self._ratio = np.zeros(self._rest.depth.size)

    def _look(self, scene: Scene) -> _Rest:
        surfaces = surfaces_of([scene.subjects[key].target(self.number) for key in self.staying], self.number)
        blocks = self._blocker(surfaces).blocks(batches_of(scene.all_casters(self.ids), self.gradient))
        shown = surfaces.shown_to(self.setting.sun)
        depth = sums(blocks.ray, blocks.depth, shown.size)
        exposure = exposure_of(shown, blocks, self.setting.sun, len(self.owners))
        return _Rest(surfaces, shown.reshape(-1), depth, blocks, exposure)

    def _blocker(self, surfaces: Surfaces) -> Blocker:
        return Blocker(surfaces, self.setting.sun, self.gradient, self.owners)

    def with_scene(self, scene: Scene) -> dict[str, PlantLight]:
        """Light of everything with the movers where they stand in `scene`."""
        movers = batches_of(scene.casters_of(self.ids), self.gradient)
        lights = self._lights_of_rest | self._staying(movers)
        moving = [key for key in scene.subjects if key in self.ids]
        if moving:
            lights |= self._lights(moving, self._moving(scene, moving, movers))
        return lights

    def _moving(self, scene: Scene, moving: Sequence[str], movers: Sequence[Batch]) -> Exposure:
        surfaces = surfaces_of([scene.subjects[key].target(self.number) for key in moving], self.number)
        blocks = self._blocker(surfaces).blocks([*self.batches, *movers])
        return exposure_of(surfaces.shown_to(self.setting.sun), blocks, self.setting.sun, len(self.owners))

    def _staying(self, movers: Sequence[Batch]) -> dict[str, PlantLight]:
        """Those that the movers shade: what these take, and out of the rest's own share on the same rays."""
        rest, sun = self._rest, self.setting.sun
        blocks = self._blocker(rest.surfaces).blocks(movers)
        if not len(blocks.ray):
            return {}
        rays, where = np.unique(blocks.ray, return_inverse=True)
        added = sums(where, blocks.depth, len(rays))
        before, now = rest.depth[rays], rest.depth[rays] + added
        shown = rest.shown[rays]
        lost_before = shown * -np.expm1(before * (-1.0 / DEPTH_UNIT))
        lost = shown * -np.expm1(now * (-1.0 / DEPTH_UNIT))
        hours = rest.exposure.hours - self._per_beam(rays, lost - lost_before) @ sun.weights.T
        season = sun.weights[0][rays // self.number % len(sun)]
        losses = rest.exposure.losses + self._shares(blocks, (season * lost / now)[where])
        change = season * (lost / now - lost_before / np.maximum(before, 1.0))
        losses += self._shares(*self._met(rays, change))
        touched = np.unique(rays // (self.number * len(sun)))
        ids = [self.staying[n] for n in touched]
        return self._lights(ids, Exposure(hours[touched], losses[touched]))

    def _met(self, rays: Ints, change: Floats) -> tuple[Blocks, Floats]:
        """Rays of the rest that the movers meet too, and how each unit of depth counts otherwise there."""
        self._ratio[rays] = change
        ratio = self._ratio[self._rest.blocks.ray]
        self._ratio[rays] = 0.0
        touched = ratio != 0.0
        return self._rest.blocks.of(touched), ratio[touched]

    def _per_beam(self, rays: Ints, values: Floats) -> Floats:
        size = len(self.staying) * len(self.setting.sun)
        return sums(rays // self.number, values, size).reshape(len(self.staying), -1)

    def _shares(self, blocks: Blocks, per_depth: Floats) -> Floats:
        """Depth times a factor, summed by target and owner."""
        target = blocks.ray // (self.number * len(self.setting.sun))
        size = (len(self.staying), len(self.owners))
        key = target * size[1] + blocks.owner
        return sums(key, blocks.depth * per_depth, size[0] * size[1]).reshape(size)

    def _lights(self, ids: Sequence[str], exposure: Exposure) -> dict[str, PlantLight]:
        owners = list(self.owners)
        return {
            key: plant_light(key, exposure.hours[n], exposure.losses[n], owners, self.setting)
            for n, key in enumerate(ids)
        }


class Drag:
    """Light of a yard while the things `ids` are moved, turned or changed; everything else stays.

    Built at the press from the scene as it stands; `frame` takes the scene with the things where they are now
    (see scene.moved_scene).
    """

    def __init__(self, scene: Scene, ids: Collection[str], detail: Detail = "live", *,
                 cell: float | None = None, positions: Positions | None = None) -> None:
        self.ids, self.detail, self._cell = frozenset(ids), detail, cell
        self.setting = setting_of(scene, positions or season_positions(scene.site, detail))
        self.grid = grid_over(scene.bounds, detail, cell)
        sun, season = self.setting.sun, self.setting.sun.weights[0]
        counted = season > 0.0
        self._beams = beams_of(sun.true[counted], sun.months[counted], scene.gradient)
        self._weights = season[counted]
        self.ground = self._ground(scene)
        self.lights = MovingLight(scene, self.ids, self.setting, samples(detail))

    def _ground(self, scene: Scene) -> MovingField:
        return MovingField(scene.all_casters(without=self.ids), self._beams, self._weights, self.grid)

    def field(self, scene: Scene) -> GroundField:
        """The ground with the things where they are now; over the lot as it is now."""
        grid = grid_over(scene.bounds, self.detail, self._cell)
        if grid != self.grid:
            self.grid = grid
            self.ground = self._ground(scene)
        hours = self.ground.with_casters(scene.casters_of(self.ids))
        return GroundField(
            grid=self.grid, hours=hours, open_hours=self.setting.totals["season"]
        )

    def frame(self, scene: Scene) -> LightReport:
        """The whole report with the things where they are now."""
        lights = self.lights.with_scene(scene)
        return report_of(scene, self.setting, lights, self.field(scene), self.detail)
