"""Paints one task of care: a box to tick, what, for which plants, when, and its days in the month."""

from __future__ import annotations

import datetime as dt
from functools import lru_cache

from PySide6.QtCore import QEvent, QModelIndex, QPersistentModelIndex, QPoint, QRect, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFontMetrics, QMouseEvent, QPainter, QPen
from PySide6.QtWidgets import QListView, QStyle, QStyledItemDelegate, QStyleOptionViewItem

from yardplan.window.panels.care_rows import LINE_ROLE, CareLine, CareRows, month_days
from yardplan.window.theme import BASE, SMALL, TARGET, Colours, colours_now, font, scaled

_PAD, _GAP, _BOX = 7, 3, 16
_HEADING = 26
#: Height of the strip that shows the days of the month.
_STRIP = 14
_WRAP = int(Qt.TextFlag.TextWordWrap)

_Index = QModelIndex | QPersistentModelIndex


def _left() -> int:
    """Pixels from the edge of a card to its words."""
    return _PAD + scaled(_BOX) + 9


@lru_cache(maxsize=4096)
def _height(text: str, size: int, bold: bool, width: int) -> int:
    """Pixels that a wrapped text takes at a width."""
    metrics = QFontMetrics(font(size, bold=bold))
    return metrics.boundingRect(QRect(0, 0, max(width, 40), 100_000), _WRAP, text).height()


class CareCard(QStyledItemDelegate):
    """The delegate of a list of CareRows."""

    def __init__(self, view: QListView) -> None:
        super().__init__(view)
        self._view = view

    def _rows(self) -> CareRows:
        model = self._view.model()
        assert isinstance(model, CareRows)
        return model

    def _width(self) -> int:
        return max(80, self._view.viewport().width() - _left() - _PAD - 4)

    def sizeHint(self, _option: QStyleOptionViewItem, index: _Index) -> QSize:
        line: CareLine = index.data(LINE_ROLE)
        width = self._width()
        high = _height(line.title, BASE, True, width) + _height(_under(line), SMALL + 1, False, width)
        high += _STRIP if self._rows().view == "month" else 0
        high = max(high + 2 * _PAD, TARGET)
        return QSize(width, high + 2 * _GAP + (scaled(_HEADING) if line.heading else 0))

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: _Index) -> None:
        line: CareLine = index.data(LINE_ROLE)
        colours = colours_now()
        painter.save()
        area: QRect = option.rect
        if line.heading:
            painter.setFont(font(BASE, bold=True))
            painter.setPen(QColor(colours.ink))
            head = QRect(area.left() + _PAD, area.top(), area.width(), scaled(_HEADING))
            painter.drawText(head, int(Qt.AlignmentFlag.AlignVCenter), line.heading)
            area = area.adjusted(0, scaled(_HEADING), 0, 0)
        box = area.adjusted(1, _GAP, -1, -_GAP)
        chosen = bool(option.state & QStyle.StateFlag.State_Selected)
        painter.fillRect(box, QColor(colours.chosen if chosen else colours.card))
        painter.setPen(QPen(QColor(colours.edge if chosen else colours.rule), 1))
        painter.drawRect(box.adjusted(0, 0, -1, -1))
        self._text(painter, box, line, colours)
        if option.state & QStyle.StateFlag.State_HasFocus:
            painter.setPen(QPen(QColor(colours.focus), 2))
            painter.drawRect(box.adjusted(1, 1, -2, -2))
        painter.restore()

    def _text(self, painter: QPainter, box: QRect, line: CareLine, c: Colours) -> None:
        width, left, top = self._width(), box.left() + _left(), box.top() + _PAD
        if line.work is not None:
            _tick(painter, tick_box(box), done=line.done is not None, c=c)
        title_ink = c.muted if line.done else c.ink
        runs = ((line.title, BASE, True, title_ink), (_under(line), SMALL + 1, False, c.muted))
        for text, size, bold, ink in runs:
            high = _height(text, size, bold, width)
            painter.setFont(font(size, bold=bold))
            painter.setPen(QColor(ink))
            painter.drawText(QRect(left, top, width, high), _WRAP, text)
            top += high
        if self._rows().view == "month":
            self._strip(painter, QRect(left, top + 4, width, _STRIP - 6), line, c)

    def _strip(self, painter: QPainter, strip: QRect, line: CareLine, c: Colours) -> None:
        """The month's days as a line, the task's as a bar on it, today as an upright."""
        first, last = month_days(self._rows().year, self._rows().month)
        days = (last - first).days + 1

        def place(day: dt.date) -> float:
            return strip.left() + strip.width() * max(0, min((day - first).days, days)) / days

        painter.setPen(QPen(QColor(c.edge), 1))
        middle = strip.center().y()
        painter.drawLine(strip.left(), middle, strip.right(), middle)
        for week in range(0, days, 7):
            x = int(place(first + dt.timedelta(days=week)))
            painter.drawLine(x, strip.top(), x, strip.bottom())
        start, end = place(line.shown.start), place(line.shown.end + dt.timedelta(days=1))
        painter.fillRect(
            QRectF(start, strip.top() + 1, max(end - start, 3.0), strip.height() - 1),
            QColor(c.muted if line.done else c.leaf),
        )
        today = dt.date.today()
        if first <= today <= last:
            painter.setPen(QPen(QColor(c.conflict), 2))
            x = int(place(today))
            painter.drawLine(x, strip.top() - 2, x, strip.bottom())

    def editorEvent(
        self, event: QEvent, model: object, option: QStyleOptionViewItem, index: _Index
    ) -> bool:
        """A click on the box marks the task; the card around it only chooses it."""
        line: CareLine = index.data(LINE_ROLE)
        if event.type() != QEvent.Type.MouseButtonRelease or line.work is None:
            return False
        assert isinstance(event, QMouseEvent)
        area: QRect = option.rect.adjusted(0, scaled(_HEADING) if line.heading else 0, 0, 0)
        near = tick_box(area.adjusted(1, _GAP, -1, -_GAP)).adjusted(-5, -5, 5, 5)
        if not near.contains(event.position().toPoint()):
            return False
        self._rows().mark(index.row(), line.done is None)
        return True


def tick_box(box: QRect) -> QRect:
    """Where the box to tick stands in a card."""
    return QRect(box.left() + _PAD, box.top() + _PAD + 1, scaled(_BOX), scaled(_BOX))


def _under(line: CareLine) -> str:
    return f"{line.dates}   {line.plants}"


def _tick(painter: QPainter, box: QRect, *, done: bool, c: Colours) -> None:
    """An empty box, or one with a tick: a form, not only a colour."""
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setPen(QPen(QColor(c.edge), 1.4))
    painter.setBrush(QColor(c.leaf if done else c.card))
    painter.drawRect(box)
    if done:
        painter.setPen(QPen(QColor(c.card), 2.0))
        painter.translate(box.topLeft())
        painter.scale(box.width() / _BOX, box.height() / _BOX)
        painter.drawPolyline([QPoint(4, 8), QPoint(7, 11), QPoint(12, 5)])
    painter.restore()
