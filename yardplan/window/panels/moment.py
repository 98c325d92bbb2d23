"""Day and hour that drive the shadows, by the sun's or the site's clock; sunrise, sunset, the day played."""

from __future__ import annotations

from attrs import evolve
from PySide6.QtCore import QSignalBlocker, Qt, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QBoxLayout, QHBoxLayout, QSlider, QWidget

from yardplan.language import later, tr
from yardplan.window.light.clocks import CLOCKS, clock_words, day_span, on_clock, sun_words, zone_fault
from yardplan.window.open_yard import OpenYard
from yardplan.window.panels.days import day_number, day_of_number, say_day
from yardplan.window.panels.entry import TextEntry, day_reading
from yardplan.window.panels.parts import Combo, button, label
from yardplan.window.theme import scaled
from yardplan.yard.change import Change

#: The hour slider steps by ten minutes.
_STEPS = 6
_PLAY, _STOP = later("Play"), later("Stop")

#: Pixels that the fields need on two lines, on one, with the clock beside them, then with sunrise and sunset.
_TWO_LINES, _NARROWEST, _WITH_CLOCK, _WITH_SUN = 170, 430, 570, 690


def say_hour(hour: float) -> str:
    """`15:20` for 15.33 hours."""
    minutes = round(hour * 60) % (24 * 60)
    return f"{minutes // 60}:{minutes % 60:02d}"


class MomentBar(QWidget):
    """The day as a field with steps to both sides, the hour as a slider, by the sun's or the site's clock."""

    day_changed = Signal(str)
    hour_changed = Signal(float)
    #: The day is to be played, or to stop.
    play_clicked = Signal()

    def __init__(self, open_yard: OpenYard, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._open_yard = open_yard
        self.day = TextEntry(tr("Day of the year"), day_reading(optional=False))
        self.day.echo_label.setMaximumHeight(0)
        self.day.setFixedWidth(scaled(100))
        self.before = button("‹", "step", name=tr("One week earlier"), tip=tr("One week earlier"))
        self.after = button("›", "step", name=tr("One week later"), tip=tr("One week later"))
        for step in (self.before, self.after):
            step.setFixedWidth(scaled(26))
        self.hour = QSlider(Qt.Orientation.Horizontal)
        self.hour.setRange(0, 24 * _STEPS)
        self.hour.setPageStep(_STEPS)
        self.hour.setMinimumWidth(80)
        self.hour_text = label("", "heading")
        self.hour_text.setFixedWidth(scaled(40))
        self.clock = Combo()
        self.clock.addItems([""] * len(CLOCKS))
        self.clock.setMinimumContentsLength(9)
        self.clock.setAccessibleName(tr("Clock of the hour"))
        self.sun = label("", "muted")
        self.play = button(tr(_PLAY), name=tr("Play the day"), tip=tr("Shadows from sunrise to sunset"))
        widest = max(self.play.fontMetrics().horizontalAdvance(tr(words)) for words in (_PLAY, _STOP))
        self.play.setFixedWidth(widest + scaled(28))
        self.setMinimumWidth(scaled(_TWO_LINES))
        self._lay_out()
        self._connect()
        self.refresh()

    def _lay_out(self) -> None:
        self._lines = QBoxLayout(QBoxLayout.Direction.LeftToRight, self)
        self._lines.setContentsMargins(0, 0, 0, 0)
        day, hour = QHBoxLayout(), QHBoxLayout()
        self._shadows, at = label(tr("Shadows"), "muted"), label(tr("at"), "muted")
        for part in (self._shadows, self.before, self.day, self.after):
            day.addWidget(part)
        # On two lines the fields stay together at the left.
        day.addStretch(1)
        hour.addWidget(at)
        hour.addWidget(self.hour, 1)
        for after in (self.hour_text, self.clock, self.sun, self.play):
            hour.addWidget(after)
        self._lines.addLayout(day)
        self._lines.addLayout(hour, 1)
        for line in (self._lines, day, hour):
            line.setSpacing(4)

    def _connect(self) -> None:
        self.day.entered.connect(self.set_day)
        self.before.clicked.connect(lambda: self.step(-7))
        self.after.clicked.connect(lambda: self.step(7))
        self.hour.valueChanged.connect(lambda value: self.set_hour(value / _STEPS))
        self.clock.activated.connect(self._choose_clock)
        self.play.clicked.connect(self.play_clicked)
        self._open_yard.moment_changed.connect(self.refresh)
        self._open_yard.loaded.connect(self.refresh)
        self._open_yard.shown.connect(self._shown)

    def _shown(self, change: Change) -> None:
        if "site" in change.whole:
            self.refresh()

    def _choose_clock(self, number: int) -> None:
        """The same instant by another clock."""
        open_yard = self._open_yard
        open_yard.set_moment(on_clock(open_yard.moment, open_yard.shown_yard.site, CLOCKS[number]))
        self.refresh()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """In a narrow window what matters least goes first, so that no word is cut."""
        super().resizeEvent(event)
        beside = self.width() >= scaled(_NARROWEST)
        self.sun.setVisible(self.width() >= scaled(_WITH_SUN))
        self.clock.setVisible(self.width() >= scaled(_WITH_CLOCK))
        self._shadows.setVisible(beside)
        direction = QBoxLayout.Direction
        self._lines.setDirection(direction.LeftToRight if beside else direction.TopToBottom)

    def show_playing(self, playing: bool) -> None:
        """The button says what it does now."""
        self.play.setText(tr(_STOP) if playing else tr(_PLAY))
        self.play.setAccessibleName(tr("Stop playing the day") if playing else tr("Play the day"))

    def set_day(self, day: str) -> None:
        """Show the shadows of another day (`MM-DD`)."""
        self._open_yard.set_moment(evolve(self._open_yard.moment, day=day))
        self.day_changed.emit(day)

    def set_hour(self, hour: float) -> None:
        """Show the shadows of another hour of the chosen clock."""
        self._open_yard.set_moment(evolve(self._open_yard.moment, hour=hour))
        self.hour_changed.emit(hour)

    def step(self, days: int) -> None:
        """Go some days on or back."""
        self.set_day(day_of_number(day_number(self._open_yard.moment.day) + days))

    def refresh(self) -> None:
        """Show the moment in force."""
        moment = self._open_yard.moment
        if not self.day.busy:
            self.day.show_value(moment.day)
        with QSignalBlocker(self.hour):
            self.hour.setValue(round(moment.hour * _STEPS))
        self.hour_text.setText(say_hour(moment.hour))
        day, hour = say_day(moment.day), say_hour(moment.hour)
        self.hour.setAccessibleName(tr("Hour of the day: {hour}", hour=hour))
        self.setAccessibleName(tr("Shadows on {day} at {hour}", day=day, hour=hour))
        self._show_clock()

    def _show_clock(self) -> None:
        """The clocks by their names on that day; sunrise and sunset by the one chosen."""
        moment, site = self._open_yard.moment, self._open_yard.shown_yard.site
        fault = zone_fault(site)
        with QSignalBlocker(self.clock):
            for number, kind in enumerate(CLOCKS):
                self.clock.setItemText(number, clock_words(moment, site, kind))
            self.clock.setCurrentIndex(CLOCKS.index(moment.clock))
        self.clock.setToolTip(fault or tr("Sun time: 12:00 is when the sun stands highest"))
        self.hour.setToolTip(tr("Hour by {clock}", clock=self.clock.currentText()))
        words = sun_words(moment, site)
        self.sun.setText(words)
        self.sun.setToolTip(tr("Sunrise and sunset by {clock}", clock=self.clock.currentText()))
        self.play.setEnabled(day_span(moment, site) is not None)
