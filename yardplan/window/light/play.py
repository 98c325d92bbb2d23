"""Plays a day: the hour of the shadows runs from sunrise to sunset, and back to where it was."""

from __future__ import annotations

from typing import TYPE_CHECKING

from attrs import evolve
from PySide6.QtCore import QObject, QTimer, Signal

from yardplan.window.light.clocks import day_span

if TYPE_CHECKING:
    from yardplan.window.open_yard import Moment, OpenYard

#: A step of the sun, hours, every so many milliseconds: a summer day lasts some ten seconds.
STEP, EVERY_MS = 0.1, 60


class DayPlay(QObject):
    """Start and stop; stops by itself at sunset, or when somebody else sets the day or the hour."""

    #: It began or ended.
    turned = Signal(bool)

    def __init__(self, open_yard: OpenYard, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._yard = open_yard
        self._before: Moment | None = None
        self._last: Moment | None = None
        self._end = 0.0
        self._timer = QTimer(self)
        self._timer.setInterval(EVERY_MS)
        self._timer.timeout.connect(self.step)
        open_yard.moment_changed.connect(self._moment_changed)
        open_yard.loaded.connect(self.stop)

    @property
    def playing(self) -> bool:
        """True while the hour runs."""
        return self._timer.isActive()

    def turn(self, on: bool) -> None:
        """Start or stop."""
        if on and not self.playing:
            self.start()
        elif not on:
            self.stop()
            self._go_back()

    def start(self) -> None:
        """Begin at sunrise; a day without sun is not played."""
        span = day_span(self._yard.moment, self._yard.shown_yard.site)
        if span is None:
            self.turned.emit(False)
            return
        self._before = self._yard.moment
        self._end = span[1]
        self._timer.start()
        self._set(span[0])
        self.turned.emit(True)

    def step(self) -> None:
        """One step on, or the end."""
        hour = self._yard.moment.hour + STEP
        if hour > self._end:
            self.stop()
            self._go_back()
        else:
            self._set(hour)

    def _set(self, hour: float) -> None:
        self._last = evolve(self._yard.moment, hour=hour)
        self._yard.set_moment(self._last)

    def _moment_changed(self) -> None:
        if self.playing and self._yard.moment != self._last:
            self._before = None
            self.stop()

    def stop(self) -> None:
        """Stand still."""
        if self.playing:
            self._timer.stop()
            self.turned.emit(False)

    def _go_back(self) -> None:
        before, self._before = self._before, None
        if before is not None:
            self._yard.set_moment(before)
