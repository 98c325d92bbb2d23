"""What is selected: corner ticks round a plant, grips on the corners of an outline."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPainterPath

from yardplan.drawing.outlines import Outlines
from yardplan.drawing.style import FINE, MEDIUM, colour, pen
from yardplan.drawing.view import PlanView
from yardplan.yard.edits import OUTLINE_FIELD
from yardplan.yard.handles import handles_of

#: Side of a grip, style units; the area that answers to the pointer is larger.
GRIP = 8.0


def draw_selection(painter: QPainter, view: PlanView, outlines: Outlines) -> None:
    """Show every selected thing of the view."""
    for thing_id in sorted(view.selection):
        if not view.draws(thing_id):
            continue
        grips = _corners(view, thing_id)
        if grips:
            _draw_outline(painter, view, outlines, thing_id)
            _draw_grips(painter, view, grips)
        else:
            _draw_ticks(painter, view, outlines.box(thing_id))


def _corners(view: PlanView, thing_id: str) -> list[QPointF]:
    """Device corners of a thing with an outline; none for a thing at one place."""
    if thing_id == "lot":
        return [view.at(point) for point in handles_of(view.yard, thing_id)]
    thing = view.yard.find(thing_id)
    if thing is None or type(thing) not in OUTLINE_FIELD:
        return []
    return [view.at(point) for point in handles_of(view.yard, thing_id)]


def _draw_outline(painter: QPainter, view: PlanView, outlines: Outlines, thing_id: str) -> None:
    path = outlines.of(thing_id)
    if path is not None and thing_id != "lot":
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.setPen(pen("caution", FINE, view.unit))
        painter.drawPath(path)


def _draw_grips(painter: QPainter, view: PlanView, corners: list[QPointF]) -> None:
    side = GRIP * view.unit
    painter.setPen(pen("caution", MEDIUM, view.unit))
    painter.setBrush(colour("paper"))
    for corner in corners:
        painter.drawRect(QRectF(corner.x() - side / 2, corner.y() - side / 2, side, side))
    painter.setBrush(Qt.BrushStyle.NoBrush)


def _draw_ticks(painter: QPainter, view: PlanView, box: QRectF | None) -> None:
    """Four corner ticks a little outside the box."""
    if box is None:
        return
    u = view.unit
    frame = box.adjusted(-5 * u, -5 * u, 5 * u, 5 * u)
    arm = min(9 * u, frame.width() / 3)
    path = QPainterPath()
    for corner, dx, dy in (
        (frame.topLeft(), 1, 1), (frame.topRight(), -1, 1),
        (frame.bottomRight(), -1, -1), (frame.bottomLeft(), 1, -1),
    ):
        path.moveTo(corner + QPointF(0, dy * arm))
        path.lineTo(corner)
        path.lineTo(corner + QPointF(dx * arm, 0))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.setPen(pen("caution", MEDIUM, u))
    painter.drawPath(path)
