"""The spot's chart on a piece of paper beside the sheet, and the field for a typed place."""

from __future__ import annotations

from attrs import evolve
from PySide6.QtCore import QRectF, QSize, QTimer, Signal
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QResizeEvent, QShowEvent
from PySide6.QtWidgets import QHBoxLayout, QLineEdit, QSizePolicy, QVBoxLayout, QWidget

from yardplan.checks.wording import names_of
from yardplan.drawing.spot_chart import SpotChart, blocked_lines, chart_height, draw_spot_chart, spot_lines
from yardplan.drawing.style import PALETTE
from yardplan.drawing.view import PlanView, bare_view
from yardplan.language import later, tr
from yardplan.units import UnitError, format_length
from yardplan.window.light.clocks import usable, zone_fault
from yardplan.window.light.spot import SunSpot
from yardplan.window.open_yard import OpenYard
from yardplan.window.panels.parts import button, label
from yardplan.window.theme import text_scale
from yardplan.window.tools.typed import parse_typed

_HINT = (
    later("Take the tool Sun at a spot (H) and point anywhere on the sheet, or type a place above: "
    "its hours, when in the day the sun reaches it, what blocks it, and its year.")
)
#: How strongly a chart of another state of the yard is drawn.
_PALE = 0.4
#: From this size of text on the place has the whole line.
_LARGE = 1.5


class _Chart(QWidget):
    """Draws the chart of the last spot."""

    def __init__(self) -> None:
        super().__init__()
        self.chart: SpotChart | None = None
        self.fresh = True
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def show_chart(self, chart: SpotChart | None, *, fresh: bool) -> None:
        """Show another chart; its height changes in steps, so that nothing below jumps with each line."""
        self.chart, self.fresh = chart, fresh
        self.setVisible(chart is not None)
        if chart is not None:
            self.setMinimumHeight(max(self.minimumHeight(), self.sizeHint().height()))
            self.setAccessibleName(tr("Light at the spot"))
            self.setAccessibleDescription(". ".join([*spot_lines(chart), *blocked_lines(chart)]))
        self.update()

    def _view(self) -> PlanView:
        return bare_view(text_scale(), self.devicePixelRatioF())

    def sizeHint(self) -> QSize:
        return QSize(280, self._height())

    def _height(self) -> int:
        """What the chart needs at this width, in which some lines may have to be broken."""
        return round(chart_height(self.chart, self._view(), self.width())) if self.chart is not None else 0

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        if event.size().width() != event.oldSize().width():
            # Not within the layout that gave this width.
            QTimer.singleShot(0, self, lambda: self.setMinimumHeight(self._height()))

    def paintEvent(self, _event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.fillRect(self.rect(), QColor(PALETTE.paper))
        if self.chart is not None:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            painter.setOpacity(1.0 if self.fresh else _PALE)
            draw_spot_chart(painter, self._view(), QRectF(self.rect()), self.chart)
        painter.end()


class SpotView(QWidget):
    """Follows a SunSpot."""

    #: The tool that points is wanted.
    tool_wanted = Signal()
    #: The chart shows where there was none.
    appeared = Signal()

    def __init__(self, open_yard: OpenYard, spot: SunSpot, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._yard, self._spot = open_yard, spot
        self.place = QLineEdit()
        self.place.setPlaceholderText("x; y")
        self.place.setAccessibleName(
            tr("Place of the spot: distance from the left, distance from the bottom")
        )
        self.place.setToolTip(tr("A place as x; y from the plan's origin, for example 4; 2.5"))
        self.point = button(tr("Point at it"), tip=tr("Take the tool Sun at a spot (H)"))
        self.fault = label("", "fault", wrap=True)
        self.hint = label(tr(_HINT), "muted", wrap=True)
        self.chart = _Chart()
        self._lay_out()
        self.place.returnPressed.connect(self._typed)
        self.point.clicked.connect(self.tool_wanted)
        spot.changed.connect(self.refresh)
        open_yard.loaded.connect(self.refresh)
        open_yard.moment_changed.connect(self.refresh)
        self.refresh()

    def _lay_out(self) -> None:
        line = QHBoxLayout()
        line.setSpacing(6)
        line.addWidget(label(tr("Spot"), "muted"))
        line.addWidget(self.place, 1)
        box = QVBoxLayout(self)
        box.setContentsMargins(0, 0, 0, 0)
        box.setSpacing(4)
        box.addLayout(line)
        if text_scale() < _LARGE:
            line.addWidget(self.point)
        else:
            # Beside it a place in feet would be cut.
            box.addWidget(self.point)
        for part in (self.fault, self.hint, self.chart):
            box.addWidget(part)

    def showEvent(self, _event: QShowEvent) -> None:
        self._spot.catch_up()

    def _typed(self) -> None:
        try:
            made = parse_typed(self.place.text(), self._yard.units)
            if made.form != "place":
                raise UnitError(tr("Type the spot as x; y, for example 4; 2.5"))
        except UnitError as error:
            self._show_fault(str(error))
            return
        self._show_fault("")
        self._spot.look((made.first, made.second), keep=True)

    def _show_fault(self, text: str) -> None:
        self.fault.setText(text)
        self.fault.setVisible(bool(text))

    def refresh(self) -> None:
        """Show what is known of the spot now."""
        spot = self._spot
        self._show_fault("")
        if spot.place is not None and not self.place.hasFocus():
            x, y = (format_length(value, self._yard.units) for value in spot.place)
            self.place.setText(f"{x}; {y}")
        elif spot.place is None:
            self.place.clear()
        known = spot.place is not None and spot.spot is not None
        appears = known and self.chart.chart is None
        self.hint.setVisible(not known)
        self.chart.show_chart(self._chart() if known else None, fresh=spot.fresh)
        if appears:
            self.appeared.emit()

    def _chart(self) -> SpotChart | None:
        known = self._spot.spot
        if known is None:
            return None
        site = self._yard.shown_yard.site
        if zone_fault(site):
            site = evolve(site, time_zone=None)
        names = names_of(self._yard.shown_yard)
        return SpotChart(spot=known, names=names, site=site, clock=usable(self._yard.moment, site))
