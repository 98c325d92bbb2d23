"""Paving, water and beds: what lies flat."""

from __future__ import annotations

import math
from collections.abc import Callable

from PySide6.QtCore import QLineF, QPointF, Qt
from PySide6.QtGui import QPainter, QPainterPath

from yardplan.drawing.patterns import (
    Segment,
    area,
    cut_lines,
    hatch,
    inset,
    longest_direction,
    steady,
    stipple,
)
from yardplan.drawing.style import FINE, HAIR, MEDIUM, STANDING_DASH, THIN, colour, pen
from yardplan.drawing.view import PlanView
from yardplan.yard.ground import Outline, Paving, Point
from yardplan.yard.planting import Bed


def _lines(painter: QPainter, view: PlanView, segments: tuple[Segment, ...]) -> None:
    painter.drawLines([QLineF(view.at(a), view.at(b)) for a, b in segments])


def draw_paving(painter: QPainter, view: PlanView, paving: Paving) -> None:
    """Paving with its joints, water with its waves."""
    if len(paving.outline) < 3 or not view.sees_points(paving.outline):
        return
    ground = "water" if paving.kind in ("pool", "pond") else "stone"
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(colour(ground))
    painter.drawPolygon(view.polygon(paving.outline))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    _FILLINGS[paving.kind](painter, view, paving)
    ink = "muted" if paving.beyond_lot or paving.kind != "pool" else "ink"
    painter.setPen(pen(ink, FINE, view.unit, STANDING_DASH if paving.beyond_lot else ()))
    painter.drawPolygon(view.polygon(paving.outline))


def _draw_slabs(painter: QPainter, view: PlanView, paving: Paving) -> None:
    """Square joints along the longest edge."""
    turned = longest_direction(paving.outline)
    gap = steady(view.length(14.0))
    painter.setPen(pen("hatch", HAIR, view.unit))
    _lines(painter, view, hatch(paving.outline, turned, gap))
    _lines(painter, view, hatch(paving.outline, turned + 90.0, gap))


def _draw_bond(painter: QPainter, view: PlanView, paving: Paving) -> None:
    """A path: courses with joints set over by half, like brick laid flat."""
    gap = steady(view.length(8.0))
    painter.setPen(pen("hatch", HAIR, view.unit))
    _lines(painter, view, _bond(paving.outline, longest_direction(paving.outline), gap))


def _bond(outline: Outline, degrees: float, gap: float) -> tuple[Segment, ...]:
    """Courses along the direction, `gap` apart, and joints twice as far apart between them."""
    courses = hatch(outline, degrees, gap)
    t = math.radians(degrees)
    along, across = (math.cos(t), math.sin(t)), (-math.sin(t), math.cos(t))
    left, bottom, right, top = area(outline).bounds
    corners = ((left, bottom), (left, top), (right, bottom), (right, top))
    u = [c[0] * along[0] + c[1] * along[1] for c in corners]
    v = [c[0] * across[0] + c[1] * across[1] for c in corners]
    joints = []
    for row in range(math.floor(min(v) / gap), math.ceil(max(v) / gap)):
        shift = gap if row % 2 else 0.0
        for step in range(math.floor(min(u) / (2 * gap)) - 1, math.ceil(max(u) / (2 * gap)) + 1):
            x = step * 2 * gap + shift
            joints.append(tuple(
                (x * along[0] + y * across[0], x * along[1] + y * across[1])
                for y in (row * gap, (row + 1) * gap)
            ))
    return courses + cut_lines(((a, b) for a, b in joints), outline)


def _draw_gravel(painter: QPainter, view: PlanView, paving: Paving) -> None:
    """A drive: loose short strokes."""
    u = view.unit
    painter.setPen(pen("hatch", THIN, u))
    dots = stipple(paving.outline, steady(view.length(10.0)), view.length(3.0))
    strokes = []
    for x, y in dots:
        place, lean = view.at((x, y)), math.sin(x * 37.0 + y * 17.0) * 1.4
        step = QPointF(1.8 * u * math.cos(lean), 1.8 * u * math.sin(lean))
        strokes.append(QLineF(place - step, place + step))
    painter.drawLines(strokes)


def _draw_kerb(painter: QPainter, view: PlanView, paving: Paving) -> None:
    """A street: a second line inside its edge."""
    painter.setPen(pen("hatch", HAIR, view.unit))
    for outline in inset(paving.outline, view.length(4.0)):
        painter.drawPolygon(view.polygon(outline))


def _draw_waves(painter: QPainter, view: PlanView, paving: Paving) -> None:
    """Short wave lines on level water; a pool has a coping, a pond none."""
    u = view.unit
    painter.setPen(pen("caution", THIN, u, alpha=0.75))
    path = QPainterPath()
    for x, y in stipple(paving.outline, steady(view.length(24.0)), view.length(10.0), 0.3):
        place = view.at((x, y)) - QPointF(6 * u, 0)
        path.moveTo(place)
        for i in (0, 1):
            path.quadTo(place + QPointF((6 * i + 3) * u, -3 * u), place + QPointF(6 * (i + 1) * u, 0))
    painter.drawPath(path)
    if paving.kind == "pool":
        painter.setPen(pen("ink", HAIR, u))
        for outline in inset(paving.outline, view.length(4.0)):
            painter.drawPolygon(view.polygon(outline))


_FILLINGS: dict[str, Callable[[QPainter, PlanView, Paving], None]] = {
    "terrace": _draw_slabs, "path": _draw_bond, "drive": _draw_gravel, "street": _draw_kerb,
    "pool": _draw_waves, "pond": _draw_waves,
}


def draw_bed(painter: QPainter, view: PlanView, bed: Bed) -> None:
    """A stippled bed; a raised one has a board round it."""
    if len(bed.outline) < 3 or not view.sees_points(bed.outline):
        return
    u = view.unit
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(colour("soil"))
    painter.drawPolygon(view.polygon(bed.outline))
    draw_stipple(painter, view, bed.outline, "hatch")
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.setPen(pen("ink", MEDIUM if bed.raised > 0 else FINE, u))
    painter.drawPolygon(view.polygon(bed.outline))
    if bed.raised > 0:
        painter.setPen(pen("ink", HAIR, u))
        for outline in inset(bed.outline, view.length(3.5)):
            painter.drawPolygon(view.polygon(outline))


def draw_stipple(painter: QPainter, view: PlanView, outline: Outline, name: str) -> None:
    """Dots inside an outline, thicker sown along its edge, as worked soil is drawn by hand."""
    u = view.unit
    painter.setPen(pen(name, 1.5, u))
    _dots(painter, view, stipple(outline, steady(view.length(9.0)), view.length(4.0)))
    painter.setPen(pen(name, 1.2, u))
    rim = set(stipple(outline, steady(view.length(5.0)), view.length(2.0)))
    _dots(painter, view, tuple(rim - set(stipple(outline, steady(view.length(5.0)), view.length(9.0)))))


def _dots(painter: QPainter, view: PlanView, dots: tuple[Point, ...]) -> None:
    painter.drawPoints([view.at(dot) for dot in dots])
