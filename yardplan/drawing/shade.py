"""Shadows at a moment, as a flat tone under the plants; and the light of the season as bands with lines."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtGui import QPainter, QPainterPath

from yardplan.drawing.shapes import polyline
from yardplan.drawing.style import colour
from yardplan.drawing.view import PlanView

#: Darkness of a shadow; words keep their contrast on it (tested).
SHADOW_ALPHA = 0.10


def draw_shadows(painter: QPainter, view: PlanView) -> None:
    """All shadows as one tone: where two lie over each other it is no darker."""
    path = QPainterPath()
    path.setFillRule(Qt.FillRule.WindingFill)
    for outline in view.shadows:
        if len(outline) > 2 and view.sees_points(outline):
            path.addPath(polyline(view.corners(outline), closed=True))
    if path.isEmpty():
        return
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(colour("ink", SHADOW_ALPHA))
    painter.drawPath(path)
    painter.setBrush(Qt.BrushStyle.NoBrush)
