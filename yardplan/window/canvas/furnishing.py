"""The sheet's own furniture on the screen: paper, frame, north arrow, scale bar and title block."""

from __future__ import annotations

from attrs import evolve
from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QColor, QPainter, QRegion

from yardplan.drawing import furniture
from yardplan.drawing.style import colour, pen
from yardplan.drawing.view import PlanView
from yardplan.window.theme import colours_now

#: The sheet's edge lies so many pixels within the canvas; its frame so many more.
INSET, FRAME = 8.0, 9.0
_NORTH = 24.0
#: Below this width in pixels the title block leaves no ground to draw on, so it is left out.
_NARROW = 480


def sheet_of(width: int, height: int) -> QRectF:
    """The paper within a canvas of that size."""
    return QRectF(0, 0, width, height).adjusted(INSET, INSET, -INSET, -INSET)


def field_of(width: int, height: int) -> QRectF:
    """The ground of the drawing: what lies within the frame."""
    return sheet_of(width, height).adjusted(FRAME, FRAME, -FRAME, -FRAME)


def with_boxes(view: PlanView, field: QRectF) -> PlanView:
    """The view told where the furniture stands, so that no words are put there."""
    boxes = (_north_box(view, field), _bar_box(view, field), *_title_boxes(view, field))
    return evolve(view, keep_clear=boxes)


def _north_box(view: PlanView, field: QRectF) -> QRectF:
    u = view.unit
    return QRectF(field.right() - 80 * u - 8, field.top() + 8, 80 * u, 82 * u)


def _bar_box(view: PlanView, field: QRectF) -> QRectF:
    u = view.unit
    return QRectF(field.left() + 8, field.bottom() - 48 * u - 4, 240 * u, 48 * u)


def _title_boxes(view: PlanView, field: QRectF) -> tuple[QRectF, ...]:
    if field.width() < _NARROW * view.unit:
        return ()
    wide, high = furniture.title_block_size(view, furniture.site_facts(view))
    wide = min(wide, field.width() / 2)
    return (QRectF(field.right() - wide, field.bottom() - high, wide, high),)


def parts(view: PlanView) -> list[QRectF]:
    """Where the furniture leaves ink: its edges and its boxes."""
    wide, high = _size(view)
    field = field_of(wide, high)
    broad = INSET + FRAME + 2
    edges = [
        QRectF(0, 0, wide, broad), QRectF(0, high - broad, wide, broad),
        QRectF(0, 0, broad, high), QRectF(wide - broad, 0, broad, high),
    ]
    return [*edges, _north_box(view, field), _bar_box(view, field), *_title_boxes(view, field)]


def paint_paper(painter: QPainter, view: PlanView) -> None:
    """The room and the edge of the paper; the field is covered by the picture of the ground."""
    wide, high = _size(view)
    whole = QRegion(0, 0, wide, high)
    painter.setClipRegion(whole.subtracted(QRegion(field_of(wide, high).toAlignedRect())))
    painter.fillRect(0, 0, wide, high, QColor(colours_now().room))
    painter.fillRect(sheet_of(wide, high), colour("paper"))
    painter.setClipping(False)


def paint_furniture(painter: QPainter, view: PlanView, *, focused: bool) -> None:
    """Frame, north arrow, scale bar and title block; on top of the drawing."""
    wide, high = _size(view)
    field = field_of(wide, high)
    _mask(painter, wide, high)
    painter.setBrush(colour("paper", 0.0))
    painter.setPen(pen("caution", 2.0) if focused else pen("rule", 1.0))
    painter.drawRect(sheet_of(wide, high))
    painter.setPen(pen("ink", 1.6))
    painter.drawRect(field)
    box = _north_box(view, field)
    middle = QPointF(box.center().x(), box.center().y() + 6 * view.unit)
    furniture.draw_north(painter, view, middle, _NORTH)
    furniture.draw_scale_bar(painter, view, QPointF(field.left() + 22, field.bottom() - 24 * view.unit))
    for title in _title_boxes(view, field):
        furniture.draw_title_block(painter, view, title, furniture.site_facts(view))


def _mask(painter: QPainter, wide: int, high: int) -> None:
    """Paper over whatever was drawn in the margin between the sheet's edge and its frame."""
    sheet, field = sheet_of(wide, high), field_of(wide, high)
    for part in (
        QRectF(sheet.left(), sheet.top(), sheet.width(), FRAME),
        QRectF(sheet.left(), field.bottom(), sheet.width(), FRAME),
        QRectF(sheet.left(), sheet.top(), FRAME, sheet.height()),
        QRectF(field.right(), sheet.top(), FRAME, sheet.height()),
    ):
        painter.fillRect(part, colour("paper"))


def _size(view: PlanView) -> tuple[int, int]:
    assert view.window is not None
    return round(view.window.width()), round(view.window.height())
