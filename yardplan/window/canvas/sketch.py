"""Plain lines in place of the drawing office's plan; gone once that is in the tree."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtGui import QPainter

from yardplan.drawing.style import LOT_DASH, pen
from yardplan.drawing.view import PlanView
from yardplan.yard.edits import OUTLINE_FIELD, points_of


def draw_ground(painter: QPainter, view: PlanView) -> None:
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.setPen(pen("ink", 1.6, dash=LOT_DASH))
    if view.only is None and view.yard.lot:
        painter.drawPolygon(view.polygon(view.yard.lot))
    painter.setPen(pen("ink", 1.6))
    for thing in view.yard.things():
        if view.draws(thing.id) and type(thing) in OUTLINE_FIELD:
            painter.drawPolygon(view.polygon(points_of(thing)))


def draw_plants(painter: QPainter, view: PlanView) -> None:
    painter.setPen(pen("ink", 1.6))
    for thing in view.yard.things():
        if view.draws(thing.id) and type(thing) not in OUTLINE_FIELD:
            painter.drawEllipse(view.at(points_of(thing)[0]), 2 * view.scale, 2 * view.scale)


def draw_words(painter: QPainter, view: PlanView) -> None:
    """Nothing."""


def draw_findings(painter: QPainter, view: PlanView) -> None:
    painter.setPen(pen("caution", 3))
    for thing in view.yard.things():
        if thing.id in view.selection:
            for point in points_of(thing):
                painter.drawEllipse(view.at(point), 5, 5)
