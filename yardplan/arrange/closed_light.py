"""Closed ground: too dark for the plant, or where it would take a neighbour's light below its need.

The plant's own light is computed at nodes of a grid, finer where the limit is near. What it would take of a
neighbour's is one pass over the neighbour's rays: the plant's shadow with the sun reversed, each ray weighted
by the light it brings (see sun.reversed). Both count the same points and positions of the sun as the check.
"""

from __future__ import annotations

from abc import ABC, abstractmethod
from collections.abc import Callable, Iterator
from functools import cached_property, partial

import numpy as np
from attrs import evolve
from numpy.typing import NDArray
from shapely.geometry.base import BaseGeometry

from yardplan.arrange.closed import Asked, Closed
from yardplan.arrange.contours import (
    Lattice,
    Mask,
    below_zero,
    crossed,
    lattice_over,
    near_nodes,
    nodes_of,
    twice_as_fine,
)
from yardplan.arrange.fine_edges import Strips, edge_told_finely, upright_ground
from yardplan.checks.finding import Figure
from yardplan.checks.light import NAME, conflict_hours, grown_in
from yardplan.checks.survey import Survey
from yardplan.plants.crop import Crop
from yardplan.sun.casters import Caster
from yardplan.sun.grid import Grid
from yardplan.sun.places import Neighbour, PlaceLight, counted, neighbours, plant_about
from yardplan.sun.reversed import is_exact, taken_at, taken_by
from yardplan.sun.scene import Scene, plant_casters, scene_of
from yardplan.sun.season import Detail

Array = NDArray[np.float64]
#: Step of the finest grid, metres; the first, coarse one is halved so many times to get there.
_STEP, _HALVINGS = 0.25, 3
_COARSE = 2**_HALVINGS
#: On lots with more nodes than this the steps grow.
_NODES = 60_000
#: A grid is refined where the limit is nearer than half a cell's spread and this, hours a metre of step.
_NEAR = 0.5
#: Rough figures lie within this of the fine ones, hours.
_ROUGH = 0.2
#: On a slope reversed shadows are right but for this, hours; nearer to the limit rays are cast.
LEANING = 0.4
#: Neighbours whose light comes no nearer to the limit than this on the coarse grid are safe, hours.
_SAFE = 0.6
Progress = Callable[[float], None]


class LightPass(ABC):
    """Light of what looks for a place among others that stay, over what is open without light."""

    def __init__(self, survey: Survey, open_: BaseGeometry, progress: Progress | None = None) -> None:
        """`survey` the yard without it; `progress` hears 0 to 1 for each detail, and may raise to stop."""
        self.survey, self.open, self._progress = survey, open_, progress
        self._rough: dict[str, Array] = {}
        self._strips: dict[str, Strips] = {}

    # What looks for a place

    @property
    @abstractmethod
    def own(self) -> list[Caster]:
        """Its casters about (0, 0)."""

    @abstractmethod
    def takers(self) -> list[tuple[str, Crop]]:
        """What of it needs light, by id, with its crop."""

    @abstractmethod
    def light_of(self, key: str, detail: Detail) -> PlaceLight:
        """The light of one of the takers wherever it stands."""

    @abstractmethod
    def made(
        self, geometry: BaseGeometry, kind: str, things: tuple[str, ...], **figures: Figure
    ) -> Closed:
        """Closed ground, cut to what is known."""

    @cached_property
    def scene(self) -> Scene:
        """The yard without it."""
        return scene_of(self.survey.yard, self.survey.stand)

    @cached_property
    def nodes(self) -> Lattice:
        """Nodes over what is open so far."""
        x0, y0, x1, y1 = self.open.bounds
        step = max(_STEP, (max((x1 - x0) * (y1 - y0), 0.0) / _NODES) ** 0.5)
        return lattice_over((x0, y0, x1, y1), step, _COARSE)

    @cached_property
    def cells(self) -> Mask:
        """Cells that touch open ground."""
        return self.nodes.touching(self.open)

    @cached_property
    def _upright(self) -> BaseGeometry:
        return upright_ground(self.scene)

    @cached_property
    def limits(self) -> dict[str, float]:
        """Hours of sun below which each of the others is in conflict, by id."""
        rules = self.survey.rules
        return {one.id: conflict_hours(rules, one.crop) for one in grown_in(self.survey)}

    def closed(self, detail: Detail) -> Iterator[Closed]:
        """Ground that light closes."""
        if self.open.is_empty:
            return
        for key, crop in self.takers():
            dark = self._too_dark(key, crop, detail)
            if dark is not None:
                yield dark
        if self.own and self.limits:
            yield from self._shaded_others(detail)
        self._tell(1.0)

    def _tell(self, share: float) -> None:
        if self._progress is not None:
            self._progress(share)

    # What the others take from it

    def _too_dark(self, key: str, crop: Crop, detail: Detail) -> Closed | None:
        limit = conflict_hours(self.survey.rules, crop)
        light, first = self.light_of(key, detail), key not in self._rough
        if first:
            rough = light if detail == "live" else self.light_of(key, "live")
            self._rough[key] = self._sampled(rough, limit)
            self._strips[key] = Strips(self._upright, light.middle, self.nodes, self.cells)
        margin = self._rough[key] if detail == "live" else self._refined(light, limit, self._rough[key])
        shape = below_zero(np.where(np.isnan(margin), 1.0, margin), self.nodes)

        def above(places: Array) -> Array:
            return np.asarray(light.hours(places, lambda _: self._tell(0.5)) - limit, dtype=np.float64)

        shape = self._strips[key].sharpened(shape, margin, above, _ROUGH)
        return None if shape.is_empty else self.made(shape, "too_dark", (), needed=Figure(limit, "hours"))

    def _sampled(self, light: PlaceLight, limit: float) -> Array:
        """Hours above the limit at every node: computed where it is near, straight in between elsewhere.

        From a coarse grid to ever finer ones; nan where no open ground is near.
        """
        found: Array | None = None
        for level in range(_HALVINGS + 1):
            coarser = 2 ** (_HALVINGS - level)
            nodes, needed = _thinned(self.nodes, coarser), nodes_of(self.cells, coarser)
            if found is None:
                found, wanted = np.full(needed.shape, np.nan), needed
            else:
                wanted = near_nodes(found, _NEAR * nodes.step) & needed
                found = twice_as_fine(found)
                wanted[::2, ::2] = False
            points = nodes.points.reshape(nodes.rows, nodes.cols, 2)
            found[wanted] = light.hours(points[wanted], partial(self._tell_level, level)) - limit
        assert found is not None  # there is at least one level
        return found

    def _tell_level(self, level: int, share: float) -> None:
        self._tell(0.5 * (level + share) / (_HALVINGS + 1))

    def _refined(self, light: PlaceLight, limit: float, rough: Array) -> Array:
        """The same at a finer detail, computed where the rough figures come near the limit."""
        nodes = self.nodes
        wanted = ((np.abs(rough) < _ROUGH) | crossed(rough)) & nodes_of(self.cells)
        points = nodes.points.reshape(nodes.rows, nodes.cols, 2)
        found = rough.copy()
        found[wanted] = light.hours(points[wanted], lambda share: self._tell(0.5 * share)) - limit
        return found

    # What it takes from the others

    def _shaded_others(self, detail: Detail) -> Iterator[Closed]:
        threatened = self._threatened
        if not threatened:
            return
        setting = counted(self.scene, detail)
        for done, one in enumerate(neighbours(self.scene, threatened, setting, detail)):
            self._tell(0.5 + 0.5 * done / len(threatened))
            limit = self.limits[one.id]
            if one.hours < limit:
                continue  # in the dark already, whatever is planted
            left = partial(self._left, one, one.hours - limit, detail)
            shape = edge_told_finely(left(self.nodes, self.cells), self.nodes, self.cells, left)
            if not shape.is_empty:
                yield self.made(
                    shape, "shades", (one.id,), needed=Figure(limit, "hours"),
                    hours=Figure(one.hours, "hours"),
                )

    def _left(self, one: Neighbour, spare: float, detail: Detail, nodes: Lattice, cells: Mask) -> Array:
        """Hours above the limit that are left to a neighbour, with what moves at each node; `cells` count."""
        gradient = self.scene.gradient
        left = spare - self._taken(one, nodes)
        if not is_exact(self.own, gradient):
            doubtful = ((np.abs(left) < LEANING) | crossed(left)) & nodes_of(cells)
            left[doubtful] = spare - taken_at(self.own, one.rays, nodes.at(doubtful), gradient)
        return left

    @cached_property
    def _threatened(self) -> list[str]:
        """Neighbours that might lose too much somewhere on open ground, by a coarse look."""
        coarse, needed = _thinned(self.nodes, 4), nodes_of(self.cells, 4)
        setting = counted(self.scene, "live")
        found = []
        for one in neighbours(self.scene, list(self.limits), setting, "live"):
            self._tell(0.5)
            spare = one.hours - self.limits[one.id]
            if spare >= -_SAFE and self._taken(one, coarse)[needed].max(initial=0.0) > spare - _SAFE:
                found.append(one.id)
        return found

    def _taken(self, one: Neighbour, nodes: Lattice) -> Array:
        """Hours that would be taken from a neighbour, with (0, 0) of what moves at each node."""
        return self._taken_by(self.own, one, nodes)

    def _taken_by(self, casters: list[Caster], one: Neighbour, nodes: Lattice) -> Array:
        half = nodes.step / 2.0
        grid = Grid(nodes.x0 - half, nodes.y0 - half, nodes.step, nodes.rows, nodes.cols)
        return np.asarray(taken_by(casters, one.rays, grid, self.scene.gradient), dtype=np.float64)


class PlantLightPass(LightPass):
    """Light of one plant."""

    def __init__(self, asked: Asked, open_: BaseGeometry, progress: Progress | None = None) -> None:
        """As the pass of anything; `asked` says which plant."""
        super().__init__(asked.survey, open_, progress)
        self.asked = asked

    @cached_property
    def own(self) -> list[Caster]:
        """The plant's crown about a trunk at (0, 0)."""
        here = evolve(self.asked.plant, place=(0.0, 0.0))
        return plant_casters(here, self.scene.site, self.scene.gradient)

    def takers(self) -> list[tuple[str, Crop]]:
        """The plant, where it is known what it needs."""
        plant = self.asked.plant
        return [] if plant.crop is None else [(plant.id, plant.crop)]

    def light_of(self, key: str, detail: Detail) -> PlaceLight:
        """The plant's light wherever it stands."""
        target = plant_about(self.scene, self.asked.plant, detail)
        return PlaceLight(self.scene, target, counted(self.scene, detail), detail)

    def made(
        self, geometry: BaseGeometry, kind: str, things: tuple[str, ...], **figures: Figure
    ) -> Closed:
        """Closed ground, cut to what is known."""
        return self.asked.closed(geometry, NAME, kind, things, **figures)


def _thinned(nodes: Lattice, by: int) -> Lattice:
    """Every so-manieth node each way."""
    return Lattice(
        nodes.x0, nodes.y0, nodes.step * by, (nodes.rows - 1) // by + 1, (nodes.cols - 1) // by + 1
    )
