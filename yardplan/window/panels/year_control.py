"""The growth year: grows the whole yard from planting to full size, by mouse, wheel or keys."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject, QSignalBlocker, Qt
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import QHBoxLayout, QMenuBar, QSlider, QWidget

from yardplan.language import tr
from yardplan.window.open_yard import OpenYard
from yardplan.window.panels.parts import label

#: Years the slider goes through before full size; big shade trees still grow then, fruit trees do not.
LAST_YEAR = 25
#: Least length of the slider, and where the menus need the room, pixels; what lies round the parts.
_LONG, _SHORT, _AROUND = 130, 80, 24
#: Round the words of a menu, by the style sheet, pixels.
_MENU_PAD = 18


class YearControl(QWidget):
    """A slider from planting (0) over the years to full size at its right end.

    It lies beside the menus: where they need the room, its words are few and its slider is short.
    """

    def __init__(self, open_yard: OpenYard, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._open_yard = open_yard
        self._short = False
        self.text = label("", "muted")
        self.text.setAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
        self.slider = QSlider(Qt.Orientation.Horizontal)
        self.slider.setRange(0, LAST_YEAR + 1)
        self.slider.setPageStep(5)
        self.slider.setToolTip(tr("Years since planting; at the right end everything is at full size"))
        line = QHBoxLayout(self)
        line.setContentsMargins(6, 0, 6, 0)
        line.setSpacing(8)
        line.addWidget(self.text)
        line.addWidget(self.slider, 1)
        self.slider.valueChanged.connect(self._moved)
        open_yard.year_changed.connect(self.refresh)
        self._show_short(short=False)

    def refresh(self) -> None:
        """Show the year the yard is shown at."""
        year = self._open_yard.year
        with QSignalBlocker(self.slider):
            self.slider.setValue(LAST_YEAR + 1 if year is None else min(year, LAST_YEAR))
        self.text.setText(_words(year, short=self._short))
        self.text.setToolTip(_words(year, short=False) if self._short else "")
        self.slider.setAccessibleName(_words(year, short=False))

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self.window().installEventFilter(self)
        self._fit()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Before the window shares out its new width."""
        if event.type() == QEvent.Type.Resize:
            self._fit()
        return bool(super().eventFilter(watched, event))

    def _fit(self) -> None:
        bar = self.parentWidget()
        if isinstance(bar, QMenuBar):
            wanted = self._words_width(short=False) + _LONG + _AROUND
            self._show_short(short=_menus_width(bar) + wanted > self.window().width())

    def _show_short(self, *, short: bool) -> None:
        self._short = short
        self.text.setFixedWidth(self._words_width(short=short))
        self.slider.setMinimumWidth(_SHORT if short else _LONG)
        self.slider.setMaximumWidth(_SHORT if short else 2 * _LONG)
        self.refresh()

    def _words_width(self, *, short: bool) -> int:
        """Of the widest of all years, so that nothing moves while the yard grows."""
        self.text.ensurePolished()
        metrics = self.text.fontMetrics()
        return 4 + max(metrics.horizontalAdvance(_words(year, short=short)) for year in (None, 0, LAST_YEAR))

    def _moved(self, value: int) -> None:
        self._open_yard.set_year(None if value > LAST_YEAR else value)


def _words(year: int | None, *, short: bool) -> str:
    words = tr("full size") if year is None else tr("planting") if year == 0 else (
        tr("year {year}", year=year)
    )
    return words if short else tr("Growth: {words}", words=words)


def _menus_width(bar: QMenuBar) -> int:
    """Pixels that the names of all menus take."""
    metrics = bar.fontMetrics()
    names = [action.text().replace("&", "") for action in bar.actions() if action.isVisible()]
    return sum(metrics.horizontalAdvance(name) + _MENU_PAD for name in names)
