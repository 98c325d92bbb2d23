"""The catalogue as rows: a list model and the two-line row it is drawn as."""

from __future__ import annotations

from typing import Any

from PySide6.QtCore import (
    QAbstractListModel,
    QMimeData,
    QModelIndex,
    QObject,
    QPersistentModelIndex,
    QRect,
    QSize,
    Qt,
)
from PySide6.QtGui import QColor, QFontMetrics, QPainter, QPen
from PySide6.QtWidgets import QListView, QStyle, QStyledItemDelegate, QStyleOptionViewItem

from yardplan.language import tr
from yardplan.plants.cultivar import Cultivar
from yardplan.window.canvas.plant_drop import PLANT_MIME
from yardplan.window.panels.catalogue_filter import fact_words, memory_columns, zone_words
from yardplan.window.theme import BASE, SMALL, colours_now, font, scaled

CULTIVAR_ROLE = int(Qt.ItemDataRole.UserRole) + 1
_HEIGHT = 42
#: Stands at the end of a row whose facts are partly from memory; the line above the list says so.
MEMORY_MARK = "†"

_Index = QModelIndex | QPersistentModelIndex


class CatalogueRows(QAbstractListModel):
    """The varieties listed."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._cultivars: list[Cultivar] = []

    def show_cultivars(self, cultivars: list[Cultivar]) -> bool:
        """List these; True when they are others than before."""
        if cultivars == self._cultivars:
            return False
        self.beginResetModel()
        self._cultivars = cultivars
        self.endResetModel()
        return True

    def cultivar(self, row: int) -> Cultivar:
        """The variety in that row."""
        return self._cultivars[row]

    def rowCount(self, parent: _Index = QModelIndex()) -> int:  # noqa: B008 - Qt's own signature
        return 0 if parent.isValid() else len(self._cultivars)

    def data(self, index: _Index, role: int = int(Qt.ItemDataRole.DisplayRole)) -> Any:
        if not index.isValid() or index.row() >= len(self._cultivars):
            return None
        cultivar = self._cultivars[index.row()]
        if role == CULTIVAR_ROLE:
            return cultivar
        if role in (Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.AccessibleTextRole):
            return spoken(cultivar)
        if role == Qt.ItemDataRole.ToolTipRole and memory_columns(cultivar):
            return tr("Partly written down from memory: the card says which facts")
        return None

    def flags(self, index: _Index) -> Qt.ItemFlag:
        plain = super().flags(index)
        return plain | Qt.ItemFlag.ItemIsDragEnabled if index.isValid() else plain

    def mimeTypes(self) -> list[str]:
        return [PLANT_MIME]

    def mimeData(self, indexes: Any) -> QMimeData:
        data = QMimeData()
        for index in indexes[:1]:
            data.setData(PLANT_MIME, str(self.cultivar(index.row()).key).encode())
        return data


def spoken(cultivar: Cultivar) -> str:
    """A row in words, for screen readers."""
    parts = [
        cultivar.name,
        tr(cultivar.crop),
        zone_words(cultivar),
        fact_words(cultivar).replace(" · ", ", "),
    ]
    if memory_columns(cultivar):
        parts.append(tr("partly from memory"))
    return ", ".join(part for part in parts if part)


class CatalogueRow(QStyledItemDelegate):
    """Draws a variety on two lines: name and kind, then the facts that decide."""

    def __init__(self, view: QListView) -> None:
        super().__init__(view)
        self._view = view

    def sizeHint(self, _option: QStyleOptionViewItem, _index: _Index) -> QSize:
        return QSize(120, scaled(_HEIGHT))

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: _Index) -> None:
        cultivar: Cultivar = index.data(CULTIVAR_ROLE)
        c = colours_now()
        box: QRect = option.rect
        state = option.state
        painter.save()
        if state & (QStyle.StateFlag.State_Selected | QStyle.StateFlag.State_MouseOver):
            chosen = bool(state & QStyle.StateFlag.State_Selected)
            painter.fillRect(box, QColor(c.chosen if chosen else c.panel))
        painter.setPen(QColor(c.rule))
        painter.drawLine(box.bottomLeft(), box.bottomRight())
        inner = box.adjusted(8, 4, -8, -3)
        kind_width = _right(painter, inner, _kind_words(cultivar), c.muted)
        _left(painter, inner, cultivar.name, c.ink, BASE, bold=True, keep=kind_width)
        lower = inner.adjusted(0, scaled(18), 0, 0)
        mark_width = _right(painter, lower, MEMORY_MARK, c.caution) if memory_columns(cultivar) else 0
        _left(painter, lower, fact_words(cultivar), c.muted, SMALL, bold=False, keep=mark_width)
        if state & QStyle.StateFlag.State_HasFocus:
            painter.setPen(QPen(QColor(c.focus), 2))
            painter.drawRect(box.adjusted(1, 1, -1, -1))
        painter.restore()


def _kind_words(cultivar: Cultivar) -> str:
    return " · ".join(part for part in (tr(cultivar.crop), zone_words(cultivar)) if part)


def _right(painter: QPainter, box: QRect, text: str, colour: str) -> int:
    """Draw small words at the right; returns the width they take with a gap."""
    painter.setFont(font(SMALL))
    painter.setPen(QColor(colour))
    painter.drawText(box, int(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignTop), text)
    return QFontMetrics(font(SMALL)).horizontalAdvance(text) + 8


def _left(painter: QPainter, box: QRect, text: str, colour: str, size: int, *, bold: bool, keep: int) -> None:
    """Draw words at the left, cut with dots where they would run into what is kept free at the right."""
    face = font(size, bold=bold)
    painter.setFont(face)
    painter.setPen(QColor(colour))
    cut = QFontMetrics(face).elidedText(text, Qt.TextElideMode.ElideRight, box.width() - keep)
    painter.drawText(box, int(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignTop), cut)
