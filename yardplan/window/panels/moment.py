"""Day and hour that drive the shadows: a day to type or step, an hour to slide."""

from __future__ import annotations

from attrs import evolve
from PySide6.QtCore import QSignalBlocker, Qt, Signal
from PySide6.QtWidgets import QHBoxLayout, QSlider, QWidget

from yardplan.window.open_yard import OpenYard
from yardplan.window.panels.days import day_number, day_of_number, say_day
from yardplan.window.panels.entry import TextEntry, day_reading
from yardplan.window.panels.parts import button, label

#: The hour slider steps by ten minutes.
_STEPS = 6


def say_hour(hour: float) -> str:
    """`15:20` for 15.33 hours."""
    minutes = round(hour * 60) % (24 * 60)
    return f"{minutes // 60}:{minutes % 60:02d}"


class MomentBar(QWidget):
    """The day as a field with steps to both sides, the hour as a slider; sun time, 12:00 at its highest."""

    day_changed = Signal(str)
    hour_changed = Signal(float)

    def __init__(self, open_yard: OpenYard, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._open_yard = open_yard
        self.day = TextEntry("Day of the year", day_reading(optional=False))
        self.day.echo_label.setMaximumHeight(0)
        self.day.setFixedWidth(112)
        self.before = button("‹", "step", name="One week earlier", tip="One week earlier")
        self.after = button("›", "step", name="One week later", tip="One week later")
        for step in (self.before, self.after):
            step.setFixedWidth(26)
        self.hour = QSlider(Qt.Orientation.Horizontal)
        self.hour.setRange(4 * _STEPS, 22 * _STEPS)
        self.hour.setPageStep(_STEPS)
        self.hour.setMinimumWidth(110)
        self.hour.setToolTip("Sun time: 12:00 is when the sun stands highest")
        self.hour_text = label("", "heading")
        self.hour_text.setFixedWidth(44)
        line = QHBoxLayout(self)
        line.setContentsMargins(0, 0, 0, 0)
        line.setSpacing(4)
        for part in (label("Shadows on", "muted"), self.before, self.day, self.after, label("at", "muted")):
            line.addWidget(part)
        line.addWidget(self.hour, 1)
        line.addWidget(self.hour_text)
        self._connect()
        self.refresh()

    def _connect(self) -> None:
        self.day.entered.connect(self.set_day)
        self.before.clicked.connect(lambda: self.step(-7))
        self.after.clicked.connect(lambda: self.step(7))
        self.hour.valueChanged.connect(lambda value: self.set_hour(value / _STEPS))
        self._open_yard.moment_changed.connect(self.refresh)

    def set_day(self, day: str) -> None:
        """Show the shadows of another day (`MM-DD`)."""
        self._open_yard.set_moment(evolve(self._open_yard.moment, day=day))
        self.day_changed.emit(day)

    def set_hour(self, hour: float) -> None:
        """Show the shadows of another hour (sun time)."""
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
        self.hour.setAccessibleName(f"Hour of the day: {say_hour(moment.hour)}")
        self.setAccessibleName(f"Shadows on {say_day(moment.day)} at {say_hour(moment.hour)}")
