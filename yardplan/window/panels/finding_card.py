"""Paints one finding as a card: a bar and a sign by weight, the figure, and what clears it."""

from __future__ import annotations

from functools import lru_cache

from attrs import frozen
from PySide6.QtCore import QModelIndex, QPersistentModelIndex, QRect, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFontMetrics, QPainter, QPen
from PySide6.QtWidgets import QListView, QStyle, QStyledItemDelegate, QStyleOptionViewItem

from yardplan.checks.finding import Weight
from yardplan.checks.wording import Said
from yardplan.language import mid_sentence, tr
from yardplan.window.panels.finding_rows import ROW_ROLE, Row
from yardplan.window.panels.parts import SIGN_OF, draw_sign, kept_together
from yardplan.window.theme import BASE, SMALL, Colours, colours_now, font, scaled

_GAP, _PAD, _BAR, _SIGN = 3, 7, 5, 12
_LEFT = _BAR + _PAD
_WRAP = int(Qt.TextFlag.TextWordWrap)
#: So many heights are kept for each card shown, as if there were this many at least.
_KEPT, _FEW = 3, 20
#: Pixels by which the size of the texts is known.
_UNIT = 100
#: How strongly what is cleared or not yet computed again is drawn.
PALE = 0.88


@frozen
class _Line:
    """One run of text in a card: what it says, its colour by name, its size, bold or not."""

    text: str
    colour: str
    size: int = SMALL + 1
    bold: bool = False


def _words(row: Row) -> str:
    """The message with what happened to it during the gesture."""
    message = row.said.message
    if row.cleared:
        return tr("Cleared: {message}", message=message)
    if row.stale:
        return tr("Computing again: {message}", message=message)
    return tr("Changed: {message}", message=message) if row.changed else message


def lines_of(row: Row) -> list[_Line]:
    """The runs under the title: the figure, and what clears it."""
    lines = [_Line(kept_together(_words(row)), "muted")]
    if row.likewise:
        lines.append(_Line(kept_together(row.likewise), "muted"))
    if row.said.clears and not row.cleared:
        lines.append(_Line(kept_together(row.said.clears), "link"))
    return lines


@lru_cache(maxsize=4096)
def _height(text: str, size: int, bold: bool, width: int) -> int:
    """Pixels that a wrapped text takes at a width."""
    metrics = QFontMetrics(font(size, bold=bold))
    return metrics.boundingRect(QRect(0, 0, max(width, 40), 100_000), _WRAP, text).height()


def _weight_width(row: Row) -> int:
    return QFontMetrics(font(SMALL)).horizontalAdvance(mid_sentence(row.told)) + 4


def _beside() -> int:
    """Pixels from the left of the text to the title, beside its sign."""
    return scaled(_SIGN) + 6


def _title_width(row: Row, width: int) -> int:
    return width - _beside() - _weight_width(row)


class FindingCard(QStyledItemDelegate):
    """Draws the cards of the findings list."""

    def __init__(self, view: QListView) -> None:
        super().__init__(view)
        self._view = view
        #: Heights of cards by what is said on them; a list asks for all of them whenever a row comes or goes.
        self._heights: dict[tuple[object, ...], tuple[Said, int]] = {}

    def _text_width(self) -> int:
        return self._view.viewport().width() - _LEFT - _PAD - 2

    def sizeHint(self, _option: QStyleOptionViewItem, index: QModelIndex | QPersistentModelIndex) -> QSize:
        height = self._card_height(index.data(ROW_ROLE))
        return QSize(self._view.viewport().width(), height + 2 * (_PAD - 1) + 2 * _GAP)

    def _card_height(self, row: Row) -> int:
        width = self._text_width()
        state = (row.cleared, row.stale, row.changed, row.likewise)
        key = (id(row.said), *state, width, scaled(_UNIT))
        known = self._heights.get(key)
        # The words themselves are kept too: without them their number could come to stand for others.
        if known is None or known[0] is not row.said:
            height = self._title_height(row, width)
            height += sum(_height(x.text, x.size, x.bold, width) for x in lines_of(row))
            if len(self._heights) > _KEPT * max(self._view.model().rowCount(), _FEW):
                self._heights.clear()
            known = self._heights[key] = (row.said, height)
        return known[1]

    def _chosen(self, index: QModelIndex | QPersistentModelIndex) -> bool:
        chosen = self._view.selectionModel()
        return chosen is not None and chosen.isSelected(index)

    def _title_height(self, row: Row, width: int) -> int:
        return _height(row.said.title, BASE, True, _title_width(row, width))

    def paint(
        self, painter: QPainter, option: QStyleOptionViewItem, index: QModelIndex | QPersistentModelIndex
    ) -> None:
        row: Row = index.data(ROW_ROLE)
        colours = colours_now()
        box: QRect = option.rect.adjusted(1, _GAP, -1, -_GAP)
        chosen = self._chosen(index)
        painter.save()
        self._ground(
            painter, box, colours, chosen=chosen, hovered=_has(option, QStyle.StateFlag.State_MouseOver)
        )
        if row.cleared or row.stale:
            painter.setOpacity(PALE)
        _bar(painter, box, row.finding.weight, colours, gone=row.cleared)
        self._text(painter, box, row, colours)
        painter.setOpacity(1.0)
        if _has(option, QStyle.StateFlag.State_HasFocus):
            painter.setPen(QPen(QColor(colours.focus), 2))
            painter.drawRect(box.adjusted(1, 1, -1, -1))
        painter.restore()

    def _ground(self, painter: QPainter, box: QRect, c: Colours, *, chosen: bool, hovered: bool) -> None:
        painter.fillRect(box, QColor(c.chosen if chosen else c.card))
        painter.setPen(QPen(QColor(c.edge if hovered or chosen else c.rule), 1))
        painter.drawRect(box.adjusted(0, 0, -1, -1))

    def _text(self, painter: QPainter, box: QRect, row: Row, c: Colours) -> None:
        width = self._text_width()
        left, top = box.left() + _LEFT, box.top() + _PAD - 1
        sign = "good" if row.cleared else SIGN_OF[row.finding.weight]
        draw_sign(painter, QRectF(left, top + scaled(3), scaled(_SIGN), scaled(_SIGN)), sign, c)
        painter.setFont(font(SMALL))
        painter.setPen(QColor(c.muted))
        head = QRect(left, top, width, scaled(16))
        painter.drawText(head, int(Qt.AlignmentFlag.AlignRight), mid_sentence(row.told))
        title = QRect(
            left + _beside(), top, _title_width(row, width), self._title_height(row, width)
        )
        painter.setFont(font(BASE, bold=True))
        painter.setPen(QColor(c.ink))
        painter.drawText(title, _WRAP, row.said.title)
        top = title.bottom() + 1
        for line in lines_of(row):
            height = _height(line.text, line.size, line.bold, width)
            painter.setFont(font(line.size, bold=line.bold))
            painter.setPen(QColor(getattr(c, line.colour)))
            painter.drawText(QRect(left, top, width, height), _WRAP, line.text)
            top += height


def _has(option: QStyleOptionViewItem, flag: QStyle.StateFlag) -> bool:
    return bool(option.state & flag)


def _bar(painter: QPainter, box: QRect, weight: Weight, c: Colours, *, gone: bool) -> None:
    """The bar at the card's left: full for a conflict, dashed for a caution, a thin line for advice."""
    colour = QColor(c.muted if gone or weight is Weight.ADVICE else getattr(c, weight.value))
    if weight is Weight.CONFLICT:
        painter.fillRect(QRect(box.left(), box.top(), _BAR, box.height()), colour)
    elif weight is Weight.CAUTION:
        for top in range(box.top(), box.bottom(), 10):
            painter.fillRect(QRect(box.left(), top, _BAR - 1, min(6, box.bottom() - top)), colour)
    else:
        painter.fillRect(QRect(box.left(), box.top(), 2, box.height()), colour)
