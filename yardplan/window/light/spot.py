"""The light at a spot that is pointed at: coarse while the pointer moves, refined when it rests."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from threading import Lock
from typing import TYPE_CHECKING

from attrs import frozen
from PySide6.QtCore import QObject, Signal

from yardplan.sun.position import LatitudeError
from yardplan.sun.scene import Scene, scene_of
from yardplan.sun.spot import Spot, spot_at
from yardplan.window.light.refiner import Refiner
from yardplan.window.light.words import date_of
from yardplan.window.workers import Ticket
from yardplan.yard.change import Change
from yardplan.yard.ground import Point
from yardplan.yard.yard import Yard

if TYPE_CHECKING:
    from yardplan.plants.stand import Stand
    from yardplan.sun.season import Detail
    from yardplan.window.open_yard import OpenYard


class _Scenes:
    """The last scene, kept while the pointer moves over the same yard; used on the worker."""

    def __init__(self) -> None:
        self._lock = Lock()
        self._held: tuple[Yard, Stand, Scene] | None = None

    def of(self, yard: Yard, stand: Stand) -> Scene:
        with self._lock:
            held = self._held
        if held is not None and held[0] is yard and held[1] is stand:
            return held[2]
        scene = scene_of(yard, stand)
        with self._lock:
            self._held = (yard, stand, scene)
        return scene


@frozen(eq=False)
class _Answer:
    yard: Yard
    place: Point
    day: date
    spot: Spot | None


class SunSpot(QObject):
    """The spot looked at and what is known of its light; `spot` None where nothing is known (yet)."""

    changed = Signal()

    def __init__(self, open_yard: OpenYard, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._yard = open_yard
        self.place: Point | None = None
        self.kept: Point | None = None
        self.spot: Spot | None = None
        self.fresh = True
        #: Whether anybody looks; what nobody sees is worked out when somebody does.
        self.watched: Callable[[], bool] = lambda: True
        self._scenes = _Scenes()
        self._refiner = Refiner(self)
        self._refiner.done.connect(self._arrived)
        self._refiner.broke.connect(self._broke)
        open_yard.shown.connect(self._shown)
        open_yard.loaded.connect(self.forget)
        open_yard.moment_changed.connect(self._moment_changed)

    @property
    def day(self) -> date:
        """The day of the bar: that of the shadows."""
        return date_of(self._yard.moment.day)

    def look(self, place: Point, *, keep: bool = False) -> None:
        """Look at a place; `keep` it for when the pointer leaves the sheet."""
        if keep:
            self.kept = place
        if place != self.place or self.spot is None:
            self.place = place
            self._ask()
        self.changed.emit()

    def leave(self) -> None:
        """The pointer left: back to the place that is kept, if any."""
        if self.kept is not None and self.kept != self.place:
            self.look(self.kept)

    def forget(self) -> None:
        """Look nowhere."""
        self._refiner.cancel()
        self.place = self.kept = self.spot = None
        self.changed.emit()

    def _ask(self) -> None:
        yard, stand, day, place = self._yard.shown_yard, self._yard.stand, self.day, self.place
        scenes = self._scenes
        self.fresh = False

        def work(_ticket: Ticket, detail: Detail) -> _Answer:
            assert place is not None
            try:
                spot = spot_at(scenes.of(yard, stand), place, day, detail=detail)
            except LatitudeError:
                return _Answer(yard, place, day, None)
            return _Answer(yard, place, day, spot)

        self._refiner.ask(work)

    def _arrived(self, answer: _Answer) -> None:
        self.spot = answer.spot
        same = answer.yard is self._yard.shown_yard and answer.place == self.place
        self.fresh = same and answer.day == self.day
        self.changed.emit()

    def hours(self) -> float | None:
        """Hours of the season's mean at the place looked at: its own figure, or that of its bit of ground."""
        if self.place is None:
            return None
        if self.spot is not None and self.fresh:
            return self.spot.season.hours
        light = self._yard.light
        if light is None or not self._yard.checks.light_fresh:
            return None
        return light.field.at(self.place)

    def _shown(self, change: Change) -> None:
        """The yard changed: the same spot again."""
        if self.place is not None and not (change.nothing or change.only_records):
            self._ask_if_watched()

    def _moment_changed(self) -> None:
        if self.place is not None and self.spot is not None and self.spot.day.day != self.day:
            self._ask_if_watched()

    def _ask_if_watched(self) -> None:
        self.fresh = False
        if self.watched():
            self._ask()

    def catch_up(self) -> None:
        """Somebody looks again."""
        if self.place is not None and not self.fresh and not self.busy:
            self._ask()

    def _broke(self, fault: BaseException) -> None:
        raise fault

    @property
    def busy(self) -> bool:
        """True while an answer is awaited."""
        return self._refiner.busy

    def stop(self) -> None:
        """Cancel and wait; before the window goes."""
        self._refiner.stop()
