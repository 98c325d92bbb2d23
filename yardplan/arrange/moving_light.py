"""Ground closed to things that move together by light: what they get there, and what they take from others.

They shade each other in the same way wherever they stand. What they take from a neighbour is counted for each
on its own by the reversed shadow; where two may stand in one ray's way, so that the sum tells too much, the
neighbour's rays are cast.
"""

from __future__ import annotations

from functools import cached_property

import numpy as np
from attrs import evolve
from numpy.typing import NDArray
from shapely.geometry.base import BaseGeometry

from yardplan.arrange.closed import Closed
from yardplan.arrange.closed_light import LEANING, LightPass, Progress
from yardplan.arrange.contours import Lattice, Mask, crossed, nodes_of
from yardplan.arrange.moving import Moving
from yardplan.checks.finding import Figure
from yardplan.checks.light import NAME
from yardplan.plants.crop import Crop
from yardplan.plants.stand import Standing, StandingBed, StandingRow
from yardplan.plants.standing import moved_stand
from yardplan.sun.casters import Caster
from yardplan.sun.light import samples
from yardplan.sun.places import Neighbour, PlaceLight, counted
from yardplan.sun.reversed import is_exact
from yardplan.sun.scene import Scene, scene_of
from yardplan.sun.season import Detail
from yardplan.yard import edits
from yardplan.yard.change import difference

Array = NDArray[np.float64]


class MovingLightPass(LightPass):
    """Light of several things; (0, 0) of what moves is their anchor."""

    def __init__(self, moving: Moving, open_: BaseGeometry, progress: Progress | None = None) -> None:
        """As the pass of anything; `moving` says what moves."""
        super().__init__(moving.survey, open_, progress)
        self.moving = moving

    @cached_property
    def home(self) -> Scene:
        """The things alone, their anchor at (0, 0)."""
        moving, (x, y) = self.moving, self.moving.anchor
        before = moving.present
        yard = edits.move(before.yard, moving.ids, (-x, -y))
        stand = moved_stand(before.stand, yard, difference(before.yard, yard)) if (x, y) != (0.0, 0.0) else (
            before.stand
        )
        scene = scene_of(yard, stand)
        return evolve(
            scene, casters={key: parts for key, parts in scene.casters.items() if key in moving.ids},
            subjects={key: one for key, one in scene.subjects.items() if key in moving.ids},
        )

    @cached_property
    def own(self) -> list[Caster]:
        """The casters of all of them about the anchor."""
        return self.home.all_casters()

    def takers(self) -> list[tuple[str, Crop]]:
        """Those of them of which is known what they need."""
        grown: list[Standing | StandingRow | StandingBed] = [
            *self.moving.plants, *self.moving.rows, *self.moving.beds,
        ]
        known = [(one.id, one.crop) for one in grown if one.crop is not None]
        return [(key, crop) for key, crop in known if key in self.home.subjects]

    def light_of(self, key: str, detail: Detail) -> PlaceLight:
        """The light of one of them wherever they stand, in the shade of the others as they go along."""
        target = self.home.subjects[key].target(samples(detail))
        mates = _without(self.home, key)
        return PlaceLight(self.scene, target, counted(self.scene, detail), detail, mates)

    def made(
        self, geometry: BaseGeometry, kind: str, things: tuple[str, ...], **figures: Figure
    ) -> Closed:
        """Closed ground of the anchor, cut to what is known."""
        return self.moving.closed(geometry, NAME, kind, things, **figures)

    def _left(self, one: Neighbour, spare: float, detail: Detail, nodes: Lattice, cells: Mask) -> Array:
        """Hours above the limit that are left to a neighbour, the anchor at each node; `cells` count."""
        taken = [self._taken_by(list(parts), one, nodes) for parts in self.home.casters.values() if parts]
        left: Array = spare - sum(taken, np.zeros((nodes.rows, nodes.cols)))
        doubtful = np.zeros(left.shape, dtype=bool)
        if len(taken) > 1:
            # The sum is never too little, and the greatest of them never too much.
            doubtful = (left < 0.0) & (spare - np.max(taken, axis=0) >= 0.0)
        if not is_exact(self.own, self.scene.gradient):
            doubtful |= (np.abs(left) < LEANING) | crossed(left)
        doubtful &= nodes_of(cells)
        if doubtful.any():
            left[doubtful] = self._cast(one, detail).hours(-nodes.at(doubtful)) - (one.hours - spare)
        return left

    def _cast(self, one: Neighbour, detail: Detail) -> PlaceLight:
        """A neighbour's light among the things that move, by rays: they stay and it is shifted instead."""
        target = self.scene.subjects[one.id].target(samples(detail))
        mates = _without(self.scene, one.id)
        return PlaceLight(self.home, target, counted(self.scene, detail), detail, mates)


def _without(scene: Scene, key: str) -> Scene:
    """A scene without the casters of one thing: nothing stands in its own light."""
    return evolve(scene, casters={owner: parts for owner, parts in scene.casters.items() if owner != key})

