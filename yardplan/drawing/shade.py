"""Shadows at a moment, as a flat tone under the plants; and the light of the season as bands with lines."""

from __future__ import annotations

from functools import lru_cache

from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QPainter, QPainterPath, QPolygonF, QTransform

from yardplan.drawing.style import colour
from yardplan.drawing.view import PlanView
from yardplan.yard.ground import Outline

#: Darkness of a shadow; words keep their contrast on it (tested).
SHADOW_ALPHA = 0.10


@lru_cache(maxsize=4096)
def _on_ground(outline: Outline) -> QPolygonF:
    """The outline in metres, closed; kept, because still things throw the same shadow frame after frame."""
    return QPolygonF([QPointF(x, y) for x, y in (*outline, outline[0])])


def draw_shadows(painter: QPainter, view: PlanView) -> None:
    """All shadows as one tone: where two lie over each other it is no darker."""
    path = QPainterPath()
    path.setFillRule(Qt.FillRule.WindingFill)
    to_device = QTransform(view.scale, 0.0, 0.0, -view.scale, *view.origin)
    for outline in view.shadows:
        if len(outline) < 3:
            continue
        shape = to_device.map(_on_ground(outline))
        if view.window is None or view.window.intersects(shape.boundingRect()):
            path.addPolygon(shape)
    if path.isEmpty():
        return
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(colour("ink", SHADOW_ALPHA))
    painter.drawPath(path)
    painter.setBrush(Qt.BrushStyle.NoBrush)
