"""Edge lengths of what is selected, and dimension lines."""

from __future__ import annotations

import math
from itertools import pairwise

from PySide6.QtCore import QPointF
from PySide6.QtGui import QPainter

from yardplan.drawing.lettering import Type, draw_turned, text_size
from yardplan.drawing.style import THIN, pen
from yardplan.drawing.view import PlanView
from yardplan.units import format_length
from yardplan.yard.edits import OUTLINE_FIELD, points_of
from yardplan.yard.ground import Barrier, Outline, Point, Service
from yardplan.yard.planting import Row

_FACE = Type(11.0, "medium", halo="paper")
#: An outline with more corners than this is a curve: lengths of its edges say nothing.
_MOST_EDGES = 12
_OPEN = (Barrier, Service, Row)
#: How far outside an edge its dimension line runs, style units.
_OFF = 13.0


def draw_dimensions(painter: QPainter, view: PlanView) -> None:
    """Lengths of every edge of the selected things that have edges."""
    if "lot" in view.selection and len(view.yard.lot) > 2 and view.draws("lot"):
        draw_edge_lengths(painter, view, view.yard.lot, closed=True)
    if not view.selection:
        return
    for thing in view.yard.things():
        if thing.id in view.selection and type(thing) in OUTLINE_FIELD and view.draws(thing.id):
            draw_edge_lengths(painter, view, points_of(thing), closed=not isinstance(thing, _OPEN))


def draw_edge_lengths(
    painter: QPainter, view: PlanView, outline: Outline, *, closed: bool, off: float = _OFF
) -> None:
    """A dimension line `off` style units outside each edge (inside, when negative)."""
    if len(outline) > _MOST_EDGES:
        return
    ring = (*outline, outline[0]) if closed and len(outline) > 2 else outline
    side = 1.0 if _turns_left(outline) else -1.0
    for a, b in pairwise(ring):
        draw_dimension(painter, view, a, b, side * off)


def _turns_left(outline: Outline) -> bool:
    pairs = zip(outline, (*outline[1:], outline[0]), strict=True)
    return sum(a[0] * b[1] - b[0] * a[1] for a, b in pairs) > 0


def draw_dimension(painter: QPainter, view: PlanView, a: Point, b: Point, off: float) -> None:
    """A line `off` style units to the right of a-b with short end ticks and its length."""
    length = math.dist(a, b)
    text = format_length(length, view.units)
    u = view.unit
    if length * view.scale < text_size(text, _FACE, u)[0] + 8 * u:
        return
    angle = math.atan2(b[1] - a[1], b[0] - a[0])
    # To the right of the direction in metres, which on the device has y downwards.
    aside = QPointF(math.sin(angle), math.cos(angle)) * (off * u)
    start, end = view.at(a) + aside, view.at(b) + aside
    painter.setPen(pen("muted", THIN, u))
    painter.drawLine(start, end)
    tick = QPointF(math.sin(angle), math.cos(angle)) * (3.5 * u)
    for place in (start, end):
        painter.drawLine(place - tick, place + tick)
    turned = (math.degrees(angle) + 90.0) % 180.0 - 90.0
    draw_turned(painter, view, (start + end) / 2, 90.0 if turned <= -89.9 else turned, text, _FACE)
