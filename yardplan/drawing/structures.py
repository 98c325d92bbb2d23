"""Lot line, buildings, walls, fences, hedges and gates."""

from __future__ import annotations

import math
from itertools import pairwise

from PySide6.QtCore import QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPainterPath

from yardplan.drawing.patterns import LEAST_EDGE, Segment, hatch, inset, steady
from yardplan.drawing.roofs import roof_plan
from yardplan.drawing.shapes import polyline, scalloped_band
from yardplan.drawing.style import (
    BOLD,
    FINE,
    HAIR,
    HEAVY,
    LOT_DASH,
    MEDIUM,
    OVERHANG_DASH,
    STANDING_DASH,
    THIN,
    colour,
    mitred,
    pen,
)
from yardplan.drawing.view import PlanView
from yardplan.yard.ground import Barrier, Building, Gate, Point


def lines_of(view: PlanView, segments: tuple[Segment, ...]) -> list[QLineF]:
    """Segments in metres as device lines."""
    return [QLineF(view.at(a), view.at(b)) for a, b in segments]


def draw_lot(painter: QPainter, view: PlanView) -> None:
    """The lot line: long-short-short dashes, and a small ring at each corner; a curved one has none."""
    if len(view.yard.lot) < 2 or not view.draws("lot") or not _line_seen(view):
        return
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.setPen(pen("ink", MEDIUM, view.unit, LOT_DASH))
    corners = view.corners(view.yard.lot)
    painter.drawPath(polyline(corners, closed=len(view.yard.lot) > 2))
    if view.yard.lot_curve is not None:
        return
    painter.setPen(pen("ink", FINE, view.unit))
    painter.setBrush(colour("paper"))
    for corner in corners:
        painter.drawEllipse(corner, 2.4 * view.unit, 2.4 * view.unit)


def _line_seen(view: PlanView) -> bool:
    """True where a stretch of the lot line may be in the window: dashes are costly to lay."""
    lot = view.yard.lot
    return any(view.sees_points(stretch) for stretch in pairwise((*lot, lot[0])))


def draw_building(painter: QPainter, view: PlanView, building: Building) -> None:
    """Heavy walls, roof planes hatched the way their water runs, ridge and hips, eaves dashed."""
    if len(building.footprint) < 3 or not view.sees_points(building.footprint):
        return
    ink = "muted" if building.beyond_lot else "ink"
    corners = view.polygon(building.footprint)
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(colour("roof"))
    painter.drawPolygon(corners)
    _draw_roof(painter, view, building, ink)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    if building.overhang > view.length(2.0):
        painter.setPen(pen("muted", THIN, view.unit, OVERHANG_DASH))
        for outline in inset(building.footprint, -building.overhang):
            painter.drawPolygon(view.polygon(outline))
    if building.beyond_lot:
        painter.setPen(pen(ink, FINE, view.unit, STANDING_DASH))
    else:
        painter.setPen(mitred(pen(ink, HEAVY, view.unit)))
    painter.drawPolygon(corners)


def _draw_roof(painter: QPainter, view: PlanView, building: Building, ink: str) -> None:
    plan = roof_plan(building)
    for plane in plan.planes:
        level = plane.falls is None
        turned = 45.0 if plane.falls is None else plane.falls
        # Planes that face down or right on the sheet are hatched closer, as if light came from the top left.
        shaded = not level and math.cos(math.radians(turned + 45.0)) > 0.3
        gap = steady(view.length(5.0 if shaded else 9.0))
        painter.setPen(pen("hatch", HAIR, view.unit))
        painter.drawLines(lines_of(view, hatch(plane.outline, turned, gap)))
    painter.setPen(pen(ink, THIN, view.unit))
    painter.drawLines(lines_of(view, plan.hips))
    painter.setPen(pen(ink, FINE, view.unit))
    painter.drawLines(lines_of(view, plan.ridges))


def draw_barrier(painter: QPainter, view: PlanView, barrier: Barrier) -> None:
    """A wall solid, a fence a line with crosses, a hedge scalloped."""
    if len(barrier.line) < 2 or not view.sees_points(barrier.line):
        return
    drawn = {"wall": _draw_wall, "fence": _draw_fence, "hedge": _draw_hedge}
    drawn[barrier.kind](painter, view, barrier)


def _draw_wall(painter: QPainter, view: PlanView, wall: Barrier) -> None:
    """Solid to true thickness, never thinner than a heavy line."""
    weight = max(wall.thickness * view.scale / view.unit, BOLD)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.setPen(mitred(pen("muted" if wall.beyond_lot else "ink", weight, view.unit)))
    painter.drawPath(polyline(view.corners(wall.line)))


def _draw_fence(painter: QPainter, view: PlanView, fence: Barrier) -> None:
    ink = "muted" if fence.beyond_lot else "ink"
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.setPen(pen(ink, THIN, view.unit))
    painter.drawPath(polyline(view.corners(fence.line)))
    arm = 3.0 * view.unit
    path = QPainterPath()
    for place, angle in _stations(view, fence.line, 30.0):
        for turn in (math.pi / 4, -math.pi / 4):
            step = QPointF(arm * math.cos(angle + turn), -arm * math.sin(angle + turn))
            path.moveTo(place - step)
            path.lineTo(place + step)
    painter.setPen(pen(ink, FINE, view.unit))
    painter.drawPath(path)


def _stations(view: PlanView, line: tuple[Point, ...], step: float) -> list[tuple[QPointF, float]]:
    """Places evenly spaced along each edge, about `step` style units apart, with the edge's direction."""
    places = []
    for a, b in pairwise(line):
        length = math.dist(a, b)
        if length <= LEAST_EDGE:
            continue
        count = max(1, round(length / view.length(step)))
        angle = math.atan2(b[1] - a[1], b[0] - a[0])
        for i in range(count):
            part = (i + 0.5) / count
            places.append((view.at((a[0] + (b[0] - a[0]) * part, a[1] + (b[1] - a[1]) * part)), angle))
    return places


def _draw_hedge(painter: QPainter, view: PlanView, hedge: Barrier) -> None:
    half = max(hedge.thickness * view.scale / 2, 2.5 * view.unit)
    band = scalloped_band(view.corners(hedge.line), half * 0.8, max(half * 1.1, 6 * view.unit))
    band.setFillRule(Qt.FillRule.WindingFill)
    painter.setBrush(colour("crown", 0.9))
    ink = "muted" if hedge.beyond_lot else "ink"
    painter.setPen(pen(ink, FINE, view.unit, STANDING_DASH if hedge.beyond_lot else ()))
    painter.drawPath(band)
    painter.setBrush(colour(ink))
    painter.setPen(Qt.PenStyle.NoPen)
    if half > 4 * view.unit:
        for place, _ in _stations(view, hedge.line, max(2.2 * half / view.unit, 12.0)):
            painter.drawEllipse(place, 1.1 * view.unit, 1.1 * view.unit)


def draw_gate(painter: QPainter, view: PlanView, gate: Gate) -> None:
    """An opening in the nearest line with two posts, the leaf and its swing."""
    if not view.sees_points((gate.place,), 60.0):
        return
    angle = _line_direction(view, gate.place)
    half = gate.width * view.scale / 2
    painter.save()
    painter.translate(view.at(gate.place))
    painter.rotate(-math.degrees(angle))
    u = view.unit
    painter.setPen(mitred(pen("paper", BOLD + 3.5, u)))
    painter.drawLine(QPointF(-half, 0), QPointF(half, 0))
    painter.setPen(pen("ink", FINE, u))
    painter.drawLine(QPointF(-half, 0), QPointF(-half, -2 * half))
    painter.setPen(pen("muted", HAIR, u, STANDING_DASH))
    painter.drawArc(QRectF(-3 * half, -2 * half, 4 * half, 4 * half), 0, 90 * 16)
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(colour("ink"))
    for x in (-half, half):
        painter.drawRect(QRectF(x - 2.2 * u, -2.2 * u, 4.4 * u, 4.4 * u))
    painter.restore()


def _line_direction(view: PlanView, place: Point) -> float:
    """Direction of the nearest barrier or lot edge, in radians; 0 where there is none."""
    edges: list[Segment] = []
    for barrier in view.yard.barriers:
        edges += zip(barrier.line, barrier.line[1:], strict=False)
    if len(view.yard.lot) > 2:
        edges += zip(view.yard.lot, (*view.yard.lot[1:], view.yard.lot[0]), strict=True)
    edges = [edge for edge in edges if math.dist(*edge) > LEAST_EDGE]
    if not edges:
        return 0.0
    (x0, y0), (x1, y1) = min(edges, key=lambda e: _gap(place, e))
    return math.atan2(y1 - y0, x1 - x0)


def _gap(place: Point, edge: Segment) -> float:
    """Distance of a point from an edge."""
    (x0, y0), (x1, y1) = edge
    dx, dy = x1 - x0, y1 - y0
    part = ((place[0] - x0) * dx + (place[1] - y0) * dy) / (dx * dx + dy * dy)
    part = max(0.0, min(1.0, part))
    return math.dist(place, (x0 + part * dx, y0 + part * dy))


