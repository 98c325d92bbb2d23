"""Light of a plant over many places where it could stand, and the rays that its neighbours live by.

Both count exactly what a light report counts: the same points of each crown, the same positions of the sun.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence

import numpy as np
from attrs import frozen

from yardplan.plants.stand import Standing
from yardplan.sun.exposure import Batch, Blocker, Sun, Surfaces, batches_of, sums, surfaces_of
from yardplan.sun.leaves import DEPTH_UNIT
from yardplan.sun.light import Setting, owners_of, samples, setting_of
from yardplan.sun.position import Floats
from yardplan.sun.rays import Drums
from yardplan.sun.reversed import Rays
from yardplan.sun.scene import Scene, plant_target
from yardplan.sun.season import Detail, season_positions
from yardplan.sun.targets import Target
from yardplan.yard.ground import Point

#: Numbers held at once while places are worked through: few, so that work that is dropped soon ends.
_NUMBERS = 300_000
#: Casters tested together: with many targets small batches, as in a light report.
_TOGETHER = 6
#: Called with the share done; raises to stop.
Progress = Callable[[float], None]


def counted(scene: Scene, detail: Detail) -> Setting:
    """The positions of the sun that count towards the season's hours."""
    positions = season_positions(scene.site, detail)
    return setting_of(scene, positions.chosen(positions.weight("season") > 0.0))


class PlaceLight:
    """Hours of sun a day of one thing wherever it stands, among casters that stay."""

    def __init__(
        self, scene: Scene, target: Target, setting: Setting, detail: Detail, mates: Scene | None = None
    ) -> None:
        """`scene` is the yard without the thing, `target` its surface about (0, 0).

        `mates` casts shade on it in the same way wherever it stands: what moves along.
        """
        self._sun, self._gradient, self._owners = setting.sun, scene.gradient, owners_of(scene)
        self._batches: list[Batch] = batches_of(scene.all_casters(), scene.gradient, _TOGETHER)
        one = surfaces_of([Target("", target.kind, target.points, target.areas)], samples(detail))
        self._one = one
        x, y = target.points[..., :2].reshape(-1, 2).mean(axis=0)
        #: The middle of the thing as seen from its place.
        self.middle: Point = (float(x), float(y))
        self._shown = one.shown_to(self._sun)[0]
        self._weights = self._sun.weights[0]
        if mates is not None and mates.casters:
            batches = batches_of(mates.all_casters(), scene.gradient, _TOGETHER)
            blocks = Blocker(one, self._sun, scene.gradient, owners_of(mates)).blocks(batches)
            depth = sums(blocks.ray, blocks.depth, self._shown.size).reshape(self._shown.shape)
            self._shown = self._shown * np.exp(depth * (-1.0 / DEPTH_UNIT))

    def hours(self, places: Floats, progress: Progress | None = None) -> Floats:
        """Hours a day at places (m, 2), as a light report would tell them."""
        found = np.zeros(len(places))
        step = max(1, _NUMBERS // max(self._shown.size, 1))
        for start in range(0, len(places), step):
            found[start : start + step] = self._some(places[start : start + step])
            if progress is not None:
                progress(min(start + step, len(places)) / len(places))
        return found

    def _some(self, places: Floats) -> Floats:
        blocks = Blocker(self._at(places), self._sun, self._gradient, self._owners).blocks(self._batches)
        depth = sums(blocks.ray, blocks.depth, len(places) * self._shown.size)
        light = np.exp(depth * (-1.0 / DEPTH_UNIT)).reshape(len(places), *self._shown.shape)
        hours: Floats = np.einsum("pnk,nk,n->p", light, self._shown, self._weights, optimize=True)
        return hours

    def _at(self, places: Floats) -> Surfaces:
        many, shift = len(places), np.column_stack([places, np.zeros(len(places))])
        drums = self._one.drums
        moved = Drums(drums.centres + shift, np.repeat(drums.wide, many), np.repeat(drums.tall, many))
        return Surfaces(
            ("",) * many, self._one.points + shift[:, None, None, :],
            np.broadcast_to(self._one.areas, (many, *self._one.areas.shape[1:])), moved,
        )


@frozen(eq=False)
class Neighbour:
    """Something planted, the hours of sun it gets, and the rays that bring them."""

    id: str
    hours: float
    rays: Rays


def neighbours(
    scene: Scene, ids: Sequence[str], setting: Setting, detail: Detail
) -> Iterator[Neighbour]:
    """The things named with the light they get in a scene; each ray carries what reaches its point."""
    number, sun = samples(detail), setting.sun
    owners = owners_of(scene)
    batches = batches_of(scene.all_casters(), scene.gradient, _TOGETHER)
    step = max(1, _NUMBERS // max(len(sun) * number, 1))
    for start in range(0, len(ids), step):
        some = ids[start : start + step]
        surfaces = surfaces_of([scene.subjects[key].target(number) for key in some], number)
        blocks = Blocker(surfaces, sun, scene.gradient, owners).blocks(batches)
        shown = surfaces.shown_to(sun)
        depth = sums(blocks.ray, blocks.depth, shown.size).reshape(shown.shape)
        carried = shown * np.exp(depth * (-1.0 / DEPTH_UNIT)) * sun.weights[0][:, None]
        for n, key in enumerate(some):
            yield Neighbour(key, float(carried[n].sum()), _rays(surfaces.points[n], carried[n], sun))


def _rays(points: Floats, carried: Floats, sun: Sun) -> Rays:
    """The rays of one thing: `points` (patterns, k, 3), `carried` (n, k) hours; dark ones are left out."""
    beam, point = np.nonzero(carried > 0.0)
    t = sun.level[:, :2] / sun.level[:, 2:]
    x, y, z = points[sun.patterns[beam], point].T
    return Rays(x, y, z, t[beam, 0], t[beam, 1], sun.months[beam], carried[beam, point])


def plant_about(scene: Scene, plant: Standing, detail: Detail) -> Target:
    """The crown of a plant about a trunk at (0, 0)."""
    target = plant_target(plant, scene.site, scene.gradient, samples(detail))
    return Target("", "plant", target.points - np.array([*plant.place, 0.0]), target.areas)


def open_hours(setting: Setting) -> float:
    """Hours a day of an open place."""
    return float(setting.totals["season"])
