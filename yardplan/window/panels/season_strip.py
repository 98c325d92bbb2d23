"""The strip along the bottom: bloom, harvest and frost through the year, day and hour of the shadows."""

from __future__ import annotations

from attrs import evolve
from PySide6.QtCore import QEvent, QPointF, QRectF, QSize, Qt, QTimer, Signal
from PySide6.QtGui import (
    QColor,
    QFontMetrics,
    QHelpEvent,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPaintEvent,
    QPen,
    QResizeEvent,
    QWheelEvent,
)
from PySide6.QtWidgets import QHBoxLayout, QSizePolicy, QToolTip, QVBoxLayout, QWidget

from yardplan.drawing.season import (
    FrostLine,
    SeasonChart,
    SeasonLayout,
    SeasonRow,
    draw_season,
    height_for,
)
from yardplan.drawing.style import PALETTE
from yardplan.language import later, tr
from yardplan.window.open_yard import OpenYard
from yardplan.window.panels.days import day_of_number, say_day
from yardplan.window.panels.moment import MomentBar
from yardplan.window.panels.parts import Elided, label
from yardplan.window.panels.season_rows import Season, row_words, season_of, with_choice
from yardplan.window.theme import SMALL, font, scaled, text_scale
from yardplan.yard.change import Change

#: Days that the keys step.
_KEY_DAYS = {
    Qt.Key.Key_Left: -1, Qt.Key.Key_Right: 1, Qt.Key.Key_PageUp: -30, Qt.Key.Key_PageDown: 30,
}
#: Partner lines of the chart follow a drag when the hand rests so long, milliseconds.
_REST_MS = 150
_HINT = later("Drag to choose the day; click a name to select the plant")
_EMPTY = later("Plant something, and its bloom and harvest show here.")


#: Room for the names at the left, style units, and the share of the strip that they take at most.
_NAMES, _NAMES_SHARE = 150.0, 0.36
#: A frost line is pointed at within so many pixels.
_FROST_NEAR = 4
#: Height without rows, pixels: the sheet needs the room.
_EMPTY_LEAST = 78
#: Rows that always show, and pixels of the strip from which on it has a heading.
_ROWS_LEAST, _HEADED = 2, 320


class ChartView(QWidget):
    """The chart: drag or arrow keys set the day, a click on a name selects the plant, the wheel scrolls."""

    day_picked = Signal(str)
    row_picked = Signal(str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.chart = SeasonChart()
        #: The rows that the spoken description tells of.
        self.spoken_rows: tuple[SeasonRow, ...] | None = None
        #: What is said while there are no rows.
        self.empty_words = ""
        self._first = 0
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self._keep_room()
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)

    def sizeHint(self) -> QSize:
        return QSize(600, int(min(max(scaled(height_for(self.chart.rows)), scaled(96)), scaled(150))))

    def show_chart(self, chart: SeasonChart) -> None:
        """Show another chart, at the same row."""
        if chart == self.chart:
            return
        self.chart = chart
        self._keep_room()
        self._first = min(self._first, self._last_first())
        self.update()

    def _keep_room(self) -> None:
        """Never lower than some rows, or without rows than what is said then."""
        rows = min(len(self.chart.rows), _ROWS_LEAST)
        self.setMinimumHeight(scaled(height_for(self.chart.rows[:rows])) if rows else _EMPTY_LEAST)

    def layout_now(self) -> SeasonLayout:
        """Where everything lies now."""
        ratio = self.devicePixelRatioF()
        return evolve(self._layout(), ratio=ratio, first=self._first)

    def _layout(self) -> SeasonLayout:
        """Large text in a narrow strip leaves the names less room, so that the months keep some."""
        gutter = min(_NAMES, _NAMES_SHARE * self.width() / text_scale())
        return SeasonLayout(self.chart, QRectF(self.rect()), unit=text_scale(), gutter=gutter)

    def _last_first(self) -> int:
        room = len(self._layout().seen)
        return max(0, len(self.chart.rows) - max(room, 1))

    def scroll_to(self, row: int) -> None:
        """Bring a row into view."""
        seen = self.layout_now().seen
        if len(seen) and row not in seen:
            self._first = min(row, self._last_first())
            self.update()

    def paintEvent(self, _event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.fillRect(self.rect(), QColor(PALETTE.paper))
        draw_season(painter, self.layout_now())
        if self.empty_words and not self.chart.rows:
            painter.setFont(font(SMALL + 1))
            painter.setPen(QColor(PALETTE.muted))
            # Large text in a narrow strip: there are no names yet, so the words may have their room too.
            field = self.layout_now().field.adjusted(0, 0, 0, -scaled(8))
            if QFontMetrics(painter.font()).horizontalAdvance(self.empty_words) > field.width():
                field = QRectF(self.rect()).adjusted(8, 0, -8, 0)
            middle = int(Qt.AlignmentFlag.AlignCenter | Qt.TextFlag.TextWordWrap)
            around = painter.boundingRect(field, middle, self.empty_words).adjusted(-8, -2, 8, 2)
            painter.fillRect(around, QColor(PALETTE.paper))
            painter.drawText(field, middle, self.empty_words)
        hidden = len(self.chart.rows) - len(self.layout_now().seen)
        if hidden > 0:
            painter.setFont(font(SMALL))
            painter.setPen(QColor(PALETTE.muted))
            words = tr("{n} more: scroll", n=hidden)
            room = round(self.layout_now().field.left()) - 16
            shown = QFontMetrics(painter.font()).elidedText(words, Qt.TextElideMode.ElideRight, room)
            painter.drawText(self.rect().adjusted(12, 0, 0, -4), int(Qt.AlignmentFlag.AlignBottom), shown)
        if self.hasFocus():
            painter.setPen(QPen(QColor(PALETTE.caution), 2))
            painter.drawRect(self.rect().adjusted(1, 1, -1, -1))

    def mousePressEvent(self, event: QMouseEvent) -> None:
        if event.button() != Qt.MouseButton.LeftButton:
            return
        layout = self.layout_now()
        if event.position().x() < layout.field.left():
            row = layout.row(event.position().y())
            if row is not None:
                self.row_picked.emit(self.chart.rows[row].thing)
            return
        self._pick(event.position())

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        if event.buttons() & Qt.MouseButton.LeftButton:
            self._pick(event.position())

    def _pick(self, place: QPointF) -> None:
        self.day_picked.emit(day_of_number(round(self.layout_now().day(place.x()))))

    def words_at(self, place: QPointF) -> str:
        """A row says its days and partners; frost lines and bare ground the frost dates and what can be done.

        At the foot there may be room for dates only, or for none.
        """
        layout = self.layout_now()
        row = layout.row(place.y())
        frosts = self.chart.frosts
        near = [line for line in frosts if abs(layout.x(line.day) - place.x()) <= scaled(_FROST_NEAR)]
        if row is not None and not near and (words := row_words(self.chart.rows[row])):
            return "\n".join(words)
        return "\n".join([*([] if near else [tr(_HINT)]), *map(frost_said, near or frosts)])

    def event(self, event: QEvent) -> bool:
        if isinstance(event, QHelpEvent) and event.type() == QEvent.Type.ToolTip:
            QToolTip.showText(event.globalPos(), self.words_at(QPointF(event.pos())), self)
            return True
        return super().event(event)

    def wheelEvent(self, event: QWheelEvent) -> None:
        step = -1 if event.angleDelta().y() > 0 else 1
        self._first = min(max(self._first + step, 0), self._last_first())
        self.update()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        key = Qt.Key(event.key())
        if key in _KEY_DAYS and self.chart.day is not None:
            self.day_picked.emit(day_of_number(round(self.chart.day) + _KEY_DAYS[key]))
        elif key in (Qt.Key.Key_Up, Qt.Key.Key_Down):
            self._first = min(max(self._first + (1 if key == Qt.Key.Key_Down else -1), 0), self._last_first())
            self.update()
        else:
            super().keyPressEvent(event)


class SeasonStrip(QWidget):
    """The season of what is planted, and the moment that drives the shadows on the plan."""

    day_changed = Signal(str)
    hour_changed = Signal(float)

    def __init__(self, open_yard: OpenYard, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._open_yard = open_yard
        self._season: Season | None = None
        self.moment = MomentBar(open_yard)
        self.heading = label(tr("Season"), "heading")
        self.heading.hide()
        self.note = Elided("", "muted")
        self.chart = ChartView()
        self._lay_out()
        self._soon = QTimer(self)
        self._soon.setSingleShot(True)
        self._soon.timeout.connect(self.refresh)
        self._connect()
        self.refresh()

    def _lay_out(self) -> None:
        top = QHBoxLayout()
        # The edge that is dragged to make the strip taller reaches this far into it.
        top.setContentsMargins(10, 8, 10, 0)
        top.setSpacing(14)
        top.addWidget(self.heading)
        top.addWidget(self.note, 1)
        top.addWidget(self.moment, 3)
        box = QVBoxLayout(self)
        box.setContentsMargins(0, 0, 0, 0)
        box.setSpacing(3)
        box.addLayout(top)
        box.addWidget(self.chart, 1)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """In a narrow strip the day and hour need the room of the heading."""
        super().resizeEvent(event)
        self.heading.setVisible(self.width() >= scaled(_HEADED))

    def _connect(self) -> None:
        open_yard = self._open_yard
        open_yard.shown.connect(self._shown)
        open_yard.loaded.connect(self._forget)
        open_yard.selection_changed.connect(self._refresh_soon)
        open_yard.moment_changed.connect(self._refresh_soon)
        self.chart.day_picked.connect(self._pick_day)
        self.chart.row_picked.connect(self._pick_row)
        self.moment.day_changed.connect(self.day_changed)
        self.moment.hour_changed.connect(self.hour_changed)

    def _shown(self, change: Change) -> None:
        """Moves change no date, only who is near whom: that can wait until the hand rests a moment."""
        if change.only_moves:
            self._soon.start(_REST_MS)
            return
        self._season = None
        self._refresh_soon()

    def _forget(self) -> None:
        self._season = None
        self._refresh_soon()

    def _refresh_soon(self) -> None:
        self._soon.start(0)

    def refresh(self) -> None:
        """Show the season of the yard as it is shown now."""
        self._soon.stop()
        open_yard = self._open_yard
        survey = open_yard.survey
        if self._season is None:
            self._season = season_of(survey)
        moment = open_yard.moment
        chart = with_choice(self._season, survey, open_yard.selection, moment.day, moment.hour)
        self.chart.show_chart(chart)
        # Where there is nothing to show, the words have the whole chart; beside the day they would be cut.
        self.chart.empty_words = self._season.note or tr(_EMPTY)
        note = self._season.note if chart.rows else ""
        self.note.setText(note)
        self.note.setToolTip(note)
        self.note.setVisible(bool(self.note.text()))
        self._follow_selection()
        self.chart.setAccessibleName(tr("Season chart, {day}", day=say_day(moment.day)))
        if self.chart.spoken_rows is not chart.rows:
            self.chart.spoken_rows = chart.rows
            self.chart.setAccessibleDescription(spoken(chart))

    def _follow_selection(self) -> None:
        """Bring the chosen row into view, with its partner's if both have room."""
        chart = self.chart.chart
        partners = {thing for pair in chart.together for thing in (pair.one, pair.other)}
        chosen = [n for n, row in enumerate(chart.rows) if row.thing in chart.chosen]
        both = [n for n, row in enumerate(chart.rows) if row.thing in partners] or chosen
        if chosen and max(both) - min(both) < len(self.chart.layout_now().seen):
            self.chart.scroll_to(max(both))
            self.chart.scroll_to(min(both))
        elif chosen:
            self.chart.scroll_to(chosen[0])

    def _pick_day(self, day: str) -> None:
        self._open_yard.set_moment(evolve(self._open_yard.moment, day=day))
        self.day_changed.emit(day)

    def _pick_row(self, row: str) -> None:
        if self._season is not None:
            self._open_yard.select(self._season.things_of(row))


def spoken(chart: SeasonChart) -> str:
    """The chart in sentences, for screen readers."""
    parts = []
    for row in chart.rows:
        parts += row_words(row)
    parts += map(frost_said, chart.frosts)
    return ". ".join(parts)


def frost_said(line: FrostLine) -> str:
    """A frost line with its date."""
    return f"{line.words}: {say_day(day_of_number(round(line.day)))}"
