"""The growth year: grows the whole yard from planting to full size, by mouse, wheel or keys."""

from __future__ import annotations

from PySide6.QtCore import QSignalBlocker, Qt
from PySide6.QtWidgets import QHBoxLayout, QSlider, QWidget

from yardplan.language import tr
from yardplan.window.open_yard import OpenYard
from yardplan.window.panels.parts import label
from yardplan.window.theme import scaled

#: Years the slider goes through before full size; big shade trees still grow then, fruit trees do not.
LAST_YEAR = 25


class YearControl(QWidget):
    """A slider from planting (0) over the years to full size at its right end."""

    def __init__(self, open_yard: OpenYard, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._open_yard = open_yard
        self.text = label("", "muted")
        self.text.setMinimumWidth(scaled(112))
        self.text.setAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
        self.slider = QSlider(Qt.Orientation.Horizontal)
        self.slider.setRange(0, LAST_YEAR + 1)
        self.slider.setPageStep(5)
        self.slider.setMinimumWidth(130)
        self.slider.setToolTip(tr("Years since planting; at the right end everything is at full size"))
        line = QHBoxLayout(self)
        line.setContentsMargins(6, 0, 6, 0)
        line.setSpacing(8)
        line.addWidget(self.text)
        line.addWidget(self.slider, 1)
        self.slider.valueChanged.connect(self._moved)
        open_yard.year_changed.connect(self.refresh)
        self.refresh()

    def refresh(self) -> None:
        """Show the year the yard is shown at."""
        year = self._open_yard.year
        with QSignalBlocker(self.slider):
            self.slider.setValue(LAST_YEAR + 1 if year is None else min(year, LAST_YEAR))
        words = tr("full size") if year is None else tr("planting") if year == 0 else (
            tr("year {year}", year=year)
        )
        text = tr("Growth: {words}", words=words)
        self.text.setText(text)
        self.slider.setAccessibleName(text)

    def _moved(self, value: int) -> None:
        self._open_yard.set_year(None if value > LAST_YEAR else value)
