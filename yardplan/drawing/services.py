"""Pipes, cables, tanks, fields and wells: dashes broken by a letter, as services are drawn on site plans."""

from __future__ import annotations

import math
from itertools import pairwise

from attrs import frozen
from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QPainter

from yardplan.drawing.fonts import FLOOR
from yardplan.drawing.lettering import Type, draw_text, text_size
from yardplan.drawing.patterns import hatch, steady
from yardplan.drawing.shapes import polyline
from yardplan.drawing.structures import lines_of
from yardplan.drawing.style import FINE, HAIR, THIN, colour, pen
from yardplan.drawing.view import PlanView
from yardplan.language import later
from yardplan.yard.ground import Service, ServiceKind


@frozen
class ServiceLine:
    """Letter in the line's gaps, what the letter stands for, and its dashes in style units."""

    letter: str
    meaning: str
    dash: tuple[float, ...]


SERVICE_LINES: dict[ServiceKind, ServiceLine] = {
    "power": ServiceLine("E", later("electricity, buried"), (9.0, 3.0)),
    "gas": ServiceLine("G", later("gas"), (14.0, 3.0, 2.0, 3.0)),
    "water": ServiceLine("W", later("water"), (16.0, 4.0)),
    "sewer": ServiceLine("S", later("sewer"), (12.0, 3.0, 2.0, 3.0, 2.0, 3.0)),
    "drain": ServiceLine("D", later("drain"), (5.0, 3.0)),
    "communications": ServiceLine("C", later("telephone and data"), (3.0, 2.5)),
    "irrigation": ServiceLine("I", later("irrigation"), (1.8, 3.2)),
    "overhead line": ServiceLine("O", later("overhead line"), (24.0, 4.0)),
    "septic tank": ServiceLine("ST", later("septic tank"), (8.0, 3.0)),
    "septic field": ServiceLine("SF", later("septic field"), (8.0, 3.0)),
    "well": ServiceLine("WL", later("well"), (8.0, 3.0)),
    "other": ServiceLine("U", later("other service"), (6.0, 4.0)),
}
_FACE = Type(FLOOR, "medium", ink="muted", halo="paper")
#: Style units between letters along a line.
_LETTER_STEP = 130.0


def draw_service(painter: QPainter, view: PlanView, service: Service) -> None:
    """A service by its kind: a point, an area or a lettered line."""
    if not service.points or not view.sees_points(service.points):
        return
    painter.setBrush(Qt.BrushStyle.NoBrush)
    if len(service.points) == 1:
        _draw_point(painter, view, service)
    elif service.area:
        _draw_area(painter, view, service)
    else:
        _draw_line(painter, view, service)


def _draw_line(painter: QPainter, view: PlanView, service: Service) -> None:
    line = SERVICE_LINES[service.kind]
    painter.setPen(pen("muted", FINE, view.unit, line.dash))
    corners = view.corners(service.points)
    painter.drawPath(polyline(corners))
    for a, b in pairwise(corners):
        _letter_edge(painter, view, a, b, line.letter)


def _letter_edge(painter: QPainter, view: PlanView, a: QPointF, b: QPointF, letter: str) -> None:
    """Letters along one edge, upright to the reader, with the line broken behind them."""
    length = math.hypot(b.x() - a.x(), b.y() - a.y())
    count = int(length / (_LETTER_STEP * view.unit)) or (1 if length > 34 * view.unit else 0)
    for i in range(count):
        _letter(painter, view, a + (b - a) * ((i + 0.5) / count), letter)


def _letter(painter: QPainter, view: PlanView, place: QPointF, letter: str) -> None:
    u = view.unit
    wide, high = text_size(letter, _FACE, u)
    draw_text(painter, view, QRectF(place.x() - wide / 2, place.y() - high / 2, wide, high), letter, _FACE)


def _draw_area(painter: QPainter, view: PlanView, service: Service) -> None:
    line, u = SERVICE_LINES[service.kind], view.unit
    corners = view.polygon(service.points)
    painter.setPen(pen("rule", HAIR, u))
    painter.drawLines(lines_of(view, hatch(service.points, 0.0, steady(view.length(8.0)))))
    painter.setPen(pen("muted", FINE, u, line.dash))
    painter.drawPolygon(corners)
    _letter(painter, view, corners.boundingRect().center(), line.letter)


def _draw_point(painter: QPainter, view: PlanView, service: Service) -> None:
    """A well or other single point: a ring with a cross."""
    place, u = view.at(service.points[0]), view.unit
    painter.setPen(pen("muted", FINE, u))
    painter.setBrush(colour("paper"))
    painter.drawEllipse(place, 6 * u, 6 * u)
    painter.setPen(pen("muted", THIN, u))
    painter.drawLine(place - QPointF(6 * u, 0), place + QPointF(6 * u, 0))
    painter.drawLine(place - QPointF(0, 6 * u), place + QPointF(0, 6 * u))
    _letter(painter, view, place + QPointF(18 * u, 0), SERVICE_LINES[service.kind].letter)
