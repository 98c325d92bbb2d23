"""Shadows on the plan at the chosen day and hour: still things once, dragged things anew."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import date
from typing import TYPE_CHECKING

from attrs import evolve
from shapely.geometry import MultiPolygon, Polygon

from yardplan.window.open_yard import Moment, OpenYard
from yardplan.yard.ground import Outline
from yardplan.yard.yard import Yard

if TYPE_CHECKING:
    from yardplan.sun.scene import Scene

#: A year of 365 days: a day of no year is meant.
_YEAR = 2023


class Shade:
    """Shadow outlines of the yard shown."""

    def __init__(self, open_yard: OpenYard) -> None:
        self._yard = open_yard
        self._scene: Scene | None = None
        self._of: tuple[Yard, int | None] | None = None

    def still(self, live: frozenset[str]) -> tuple[Outline, ...]:
        """Shadows of everything that is not being dragged."""
        scene = self._scene_now()
        if scene is None:
            return ()
        kept = {key: parts for key, parts in scene.casters.items() if key not in live}
        return _outlines(evolve(scene, casters=kept), self._yard.moment)

    def moving(self, live: frozenset[str]) -> tuple[Outline, ...]:
        """Shadows of the dragged things where they are now."""
        from yardplan.sun.scene import moved_scene

        if self._scene is None:
            return ()
        own = self._yard
        scene = moved_scene(self._scene, own.shown_yard, own.stand, live)
        moved = {key: parts for key, parts in scene.casters.items() if key in live}
        return _outlines(evolve(scene, casters=moved), own.moment)

    def _scene_now(self) -> Scene | None:
        from yardplan.sun.position import LatitudeError
        from yardplan.sun.scene import scene_of

        own = self._yard
        key = (own.shown_yard, own.year)
        if self._of is None or self._of[0] is not key[0] or self._of[1] != key[1]:
            try:
                self._scene = scene_of(own.shown_yard, own.stand)
            except LatitudeError:
                self._scene = None
            self._of = key
        return self._scene


def _outlines(scene: Scene, moment: Moment) -> tuple[Outline, ...]:
    from yardplan.sun.clock import moment as at
    from yardplan.sun.shadows import shadows_at

    month, day = (int(part) for part in moment.day.split("-"))
    when = at(date(_YEAR, month, min(day, 28) if month == 2 else day), moment.hour, scene.site, "solar")
    shadows = shadows_at(scene, when).shadows
    return tuple(ring for shadow in shadows for ring in _rings(shadow.outline))


def _rings(shape: Polygon | MultiPolygon) -> Iterable[Outline]:
    """The outer rings of a shape, metres."""
    for part in shape.geoms if isinstance(shape, MultiPolygon) else (shape,):
        if not part.is_empty:
            yield tuple((x, y) for x, y, *_ in part.exterior.coords)
