"""Dimension lines that stay on the plan: a line between two places with its length."""

from __future__ import annotations

import math

from PySide6.QtCore import QLineF, QPointF, QRectF
from PySide6.QtGui import QPainter

from yardplan.drawing.lettering import Type, draw_turned, text_size
from yardplan.drawing.style import FINE, THIN, pen
from yardplan.drawing.view import PlanView
from yardplan.units import format_length
from yardplan.yard.ground import Dimension
from yardplan.yard.handles import covered, line_of

FACE = Type(11.0, "medium", halo="paper")
#: Half a tick across the end of the line, and how far the lines at its ends run past it, style units.
_TICK, _PAST = 4.0, 4.0
#: The lines at the ends begin so far from what is measured, style units.
_GAP = 3.0


def draw_dimension_lines(painter: QPainter, view: PlanView) -> None:
    """Every dimension line of the yard."""
    if not view.layers.dimensions:
        return
    for dimension in view.yard.dimensions:
        if view.draws(dimension.id) and view.sees_points(covered(dimension)):
            _draw(painter, view, dimension)


def _draw(painter: QPainter, view: PlanView, dimension: Dimension) -> None:
    """Lines out from both ends, the line with slanting ticks, and its length along it."""
    u = view.unit
    ends, (a, b) = view.corners(dimension.ends), view.corners(line_of(dimension))
    painter.setPen(pen("ink", THIN, u))
    for end, far in zip(ends, (a, b), strict=True):
        out = QLineF(end, far)
        if out.length() > _GAP * u:
            step = QPointF(out.dx(), out.dy()) / out.length()
            painter.drawLine(end + step * (_GAP * u), far + step * (_PAST * u))
    painter.drawLine(a, b)
    long = QLineF(a, b)
    if long.length() > 0:
        along = QPointF(long.dx(), long.dy()) / long.length()
        slant = QPointF(along.x() - along.y(), along.y() + along.x()) * (_TICK * u / math.sqrt(2))
        painter.setPen(pen("ink", FINE, u))
        for place in (a, b):
            painter.drawLine(place - slant, place + slant)
    words, degrees = _words(view, dimension)
    draw_turned(painter, view, words.center(), degrees, text_of(view, dimension), FACE)


def text_of(view: PlanView, dimension: Dimension) -> str:
    """The length between the ends."""
    return format_length(math.dist(*dimension.ends), view.units)


def _words(view: PlanView, dimension: Dimension) -> tuple[QRectF, float]:
    """The unturned box of the length and the way it runs: on the line, or past its end if that is short."""
    a, b = view.corners(line_of(dimension))
    size = text_size(text_of(view, dimension), FACE, view.unit)
    line = QLineF(a, b)
    middle = (a + b) / 2
    if line.length() < size[0] + 2 * _TICK * view.unit:
        away = (line.length() + size[0]) / 2 + 2 * _TICK * view.unit
        way = QPointF(line.dx(), line.dy()) / line.length() if line.length() else QPointF(1, 0)
        middle += (way if way.x() >= 0 else -way) * away
    turned = (line.angle() + 90.0) % 180.0 - 90.0
    box = QRectF(0, 0, *size)
    box.moveCenter(middle)
    return box, 90.0 if turned <= -89.9 else turned


def word_boxes(view: PlanView) -> list[QRectF]:
    """Upright device boxes round the lengths, for other words to keep clear of."""
    if not view.layers.dimensions:
        return []
    boxes = []
    for dimension in view.yard.dimensions:
        if view.draws(dimension.id):
            box, degrees = _words(view, dimension)
            turn, middle = math.radians(degrees), box.center()
            wide = abs(box.width() * math.cos(turn)) + abs(box.height() * math.sin(turn))
            high = abs(box.width() * math.sin(turn)) + abs(box.height() * math.cos(turn))
            boxes.append(QRectF(middle.x() - wide / 2, middle.y() - high / 2, wide, high))
    return boxes
