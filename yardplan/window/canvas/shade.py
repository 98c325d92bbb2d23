"""Shadows on the plan at the chosen day and hour; each thing's outline is kept until the thing changes."""

from __future__ import annotations

from collections.abc import Collection, Iterable
from typing import TYPE_CHECKING, Any

import numpy as np
from attrs import evolve
from numpy.typing import NDArray
from PySide6.QtCore import QRectF

from yardplan.drawing.view import PlanView
from yardplan.window.canvas.view import Bounds, bounds_of
from yardplan.window.open_yard import Moment, OpenYard
from yardplan.yard.change import Change
from yardplan.yard.ground import Outline
from yardplan.yard.positions import chosen
from yardplan.yard.site import Site
from yardplan.yard.yard import Yard

if TYPE_CHECKING:
    from yardplan.plants.stand import Standing
    from yardplan.sun.scene import Scene

_Key = tuple[int | None, Moment, Site]


class Shade:
    """Shadow outlines of the yard shown, by thing."""

    def __init__(self, open_yard: OpenYard) -> None:
        self._own = open_yard
        self._scene: Scene | None = None
        self._yard: Yard | None = None
        self._key: _Key | None = None
        self._rings: dict[str, tuple[Outline, ...]] = {}
        self._moved: set[str] = set()
        #: Plants whose shadow was shifted with them: whose scene is not renewed yet, and what they were.
        self._behind: set[str] = set()
        self._first: dict[str, tuple[Standing, tuple[Outline, ...]]] = {}
        self._round: dict[str, tuple[tuple[Outline, ...], list[Bounds]]] = {}
        #: Boxes round all shadows with their owners, and the yard they were made for.
        self._table: tuple[Yard | None, _Key | None, list[str], NDArray[np.float64]] = (
            None, None, [], np.empty((0, 4)),
        )

    def follow(self, change: Change) -> None:
        """Things changed: their shadows are found again when asked for."""
        self._moved |= change.touched | change.removed

    def still(self, live: frozenset[str]) -> tuple[Outline, ...]:
        """Shadows of everything that is not being dragged."""
        self._bring_up()
        return tuple(ring for key, rings in self._rings.items() if key not in live for ring in rings)

    def still_in(self, live: frozenset[str], place: Bounds) -> tuple[Outline, ...]:
        """Shadows that may fall on a place, of everything that is not being dragged."""
        self._bring_up()
        if self._table[0] is not self._yard or self._table[1] != self._key:
            self._round = {key: self._round_of(key, rings) for key, rings in self._rings.items()}
            known = [(key, box) for key, (_, boxes) in self._round.items() for box in boxes]
            array = np.array([box for _, box in known], dtype=float).reshape(-1, 4)
            self._table = (self._yard, self._key, [key for key, _ in known], array)
        owners, (left, bottom, right, top) = self._table[2], self._table[3].T
        near = (left <= place[2]) & (right >= place[0]) & (bottom <= place[3]) & (top >= place[1])
        # Each owner once, in the order of all.
        keys = dict.fromkeys(owners[number] for number in np.flatnonzero(near).tolist())
        return tuple(ring for key in keys if key not in live for ring in self._rings[key])

    def _round_of(self, key: str, rings: tuple[Outline, ...]) -> tuple[tuple[Outline, ...], list[Bounds]]:
        """A thing's shadows and the boxes round them, taken over while the shadows are the same."""
        before = self._round.get(key)
        if before is not None and before[0] is rings:
            return before
        return rings, [box for box in map(bounds_of, rings) if box is not None]

    def things(self, live: frozenset[str]) -> list[tuple[Outline, ...]]:
        """The shadows of each thing that is not dragged: the same objects as long as none of them changed."""
        self._bring_up()
        return [rings for key, rings in self._rings.items() if key not in live]

    def moving(self, live: frozenset[str]) -> tuple[Outline, ...]:
        """Shadows of the dragged things where they are now."""
        self._bring_up()
        return tuple(ring for key in live for ring in self._rings.get(key, ()))

    def boxes(self, ids: Collection[str]) -> list[Bounds]:
        """The boxes round the shadows of some things as last drawn, metres."""
        found = (bounds_of(ring) for key in ids for ring in self._rings.get(key, ()))
        return [box for box in found if box is not None]

    def _bring_up(self) -> None:
        own = self._own
        key = (own.year, own.moment, own.shown_yard.site)
        if key == self._key and self._yard is own.shown_yard:
            return
        if key == self._key and self._scene is not None:
            self._shift_moved()
            self._renew_moved()
        else:
            self._renew()
        self._key, self._yard, self._moved = key, own.shown_yard, set()

    def _renew(self) -> None:
        self._scene, self._rings, self._behind, self._first = None, {}, set(), {}
        if next(iter(self._own.shown_yard.things()), None) is None:
            return
        from yardplan.sun.position import LatitudeError
        from yardplan.sun.scene import scene_of

        try:
            self._scene = scene_of(self._own.shown_yard, self._own.stand)
        except LatitudeError:
            return
        self._rings = _outlines(self._scene, self._own.moment)

    def _shift_moved(self) -> None:
        """The shadow of a plant that only moved goes with it as it is: heights are above its own ground."""
        for plant in chosen(self._own.stand.plants, self._moved):
            first = self._first.get(plant.id)
            if first is not None and _same_crown(first[0], plant):
                dx, dy = plant.place[0] - first[0].place[0], plant.place[1] - first[0].place[1]
                self._rings[plant.id] = tuple(tuple((x + dx, y + dy) for x, y in ring) for ring in first[1])
                self._moved.discard(plant.id)
                self._behind.add(plant.id)

    def _renew_moved(self) -> None:
        if not self._moved:
            return
        from yardplan.sun.scene import moved_scene

        assert self._scene is not None
        behind = self._moved | self._behind
        self._scene = moved_scene(self._scene, self._own.shown_yard, self._own.stand, behind)
        self._behind = set()
        casters = self._scene.casters
        few = {key: casters[key] for key in self._moved if key in casters}
        fresh = _outlines(evolve(self._scene, casters=few), self._own.moment)
        for key in self._moved:
            self._rings.pop(key, None)
        self._rings |= fresh
        self._first |= {
            plant.id: (plant, self._rings[plant.id])
            for plant in chosen(self._own.stand.plants, self._moved) if plant.id in self._rings
        }


def ground_under(shown: PlanView, area: QRectF) -> Bounds:
    """The ground under an area of the device, metres."""
    (left, top), (right, bottom) = shown.metres(area.topLeft()), shown.metres(area.bottomRight())
    return (left, bottom, right, top)


def _same_crown(one: Standing, other: Standing) -> bool:
    """True when two states of a plant throw the same shadow, each where it stands."""
    facing = getattr(one.thing, "facing", 0.0) == getattr(other.thing, "facing", 0.0)
    light = (one.light_leaf, one.light_bare, one.evergreen)
    return (
        one.size is other.size and one.mature is other.mature and facing
        and light == (other.light_leaf, other.light_bare, other.evergreen)
    )


def _outlines(scene: Scene, moment: Moment) -> dict[str, tuple[Outline, ...]]:
    from yardplan.sun.shadows import shadows_at
    from yardplan.window.light.clocks import instant

    when = instant(moment, scene.site)
    return {shadow.owner: tuple(_rings(shadow.outline)) for shadow in shadows_at(scene, when).shadows}


def _rings(shape: Any) -> Iterable[Outline]:
    """The outer rings of a polygon or several, metres."""
    for part in getattr(shape, "geoms", (shape,)):
        if not part.is_empty:
            yield tuple((x, y) for x, y, *_ in part.exterior.coords)
