"""Rows and planted beds: the line and the plants on it, each habit in its own hand."""

from __future__ import annotations

import math
from collections.abc import Callable, Iterable
from functools import lru_cache
from itertools import pairwise

import shapely
from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPainterPath
from shapely.geometry import Polygon

from yardplan.drawing.patterns import along, area, ring, widened
from yardplan.drawing.plants import plain_look, stamp
from yardplan.drawing.shapes import leaf, polyline
from yardplan.drawing.style import (
    BED_DOT,
    BED_DOT_ROOM,
    FINE,
    HAIR,
    MATURE_DASH,
    SYMBOL_FLOOR,
    THIN,
    colour,
    pen,
)
from yardplan.drawing.view import PlanView
from yardplan.plants.crop import Size
from yardplan.plants.stand import StandingBed, StandingRow
from yardplan.yard.ground import Outline, Point
from yardplan.yard.planting import Bed, Row

Place = tuple[Point, float]
#: A bed drawn with more plants than this is shown by its stipple alone.
MOST_IN_BED = 4000


@lru_cache(maxsize=4096)
def row_places(line: Outline, count: int, spacing: float) -> tuple[Place, ...]:
    """Where each plant of a row stands, and the row's direction there in radians."""
    return tuple(along(line, i * spacing) for i in range(max(count, 0)))


def run_of(row: Row) -> Outline:
    """The planted part of the row's line, from the first plant to the last, corners kept."""
    return _run(row.line, max(row.count - 1, 0) * row.spacing)


@lru_cache(maxsize=4096)
def _run(line: Outline, length: float) -> Outline:
    points, gone = [line[0]], 0.0
    for a, b in pairwise(line):
        gone += math.dist(a, b)
        if gone >= length:
            break
        points.append(b)
    end, _ = along(line, length)
    if end != points[-1]:
        points.append(end)
    return tuple(points)


@lru_cache(maxsize=1024)
def band_outline(line: Outline, width: float) -> Outline:
    """The strip a row covers: its run widened by half its width on all sides."""
    if len(line) < 2 or width <= 0:
        return ()
    band = widened(shapely.LineString(line), width / 2, cap_style="square", join_style="mitre")
    return ring(band) if isinstance(band, Polygon) and not band.is_empty else ()


def draw_row(painter: QPainter, view: PlanView, standing: StandingRow) -> None:
    """A row with its plants."""
    row = standing.row
    if not row.line or not view.sees_points(row.line, 60.0 + standing.size.spread * view.scale / view.unit):
        return
    painter.setBrush(Qt.BrushStyle.NoBrush)
    draw = _ROWS.get(standing.size.habit, _draw_symbols)
    draw(painter, view, standing)


def _draw_band(painter: QPainter, view: PlanView, standing: StandingRow) -> None:
    """The ground the row covers, lightly tinted, and a thin line for its full width."""
    run = run_of(standing.row)
    painter.setPen(pen("muted", HAIR, view.unit, MATURE_DASH))
    painter.setBrush(colour("crown", 0.6))
    painter.drawPolygon(view.polygon(band_outline(run, standing.size.spread)))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    if view.layers.mature and standing.mature.spread > standing.size.spread + view.length(2.0):
        painter.drawPolygon(view.polygon(band_outline(run, standing.mature.spread)))


def _spots(view: PlanView, row: Row, closest: float) -> list[tuple[QPointF, float]]:
    """Device places of the row's plants; every second, third ... where they would run together."""
    step = max(1, math.ceil(view.length(closest) / max(row.spacing, 1e-3)))
    places = row_places(row.line, row.count, row.spacing)
    return [(view.at(point), angle) for point, angle in places[::step]]


def _turned(place: QPointF, x: float, y: float, angle: float) -> QPointF:
    """A place given along and square to (left of) the row, on the device."""
    c, s = math.cos(angle), math.sin(angle)
    return QPointF(place.x() + x * c - y * s, place.y() - x * s - y * c)


def _draw_canes(painter: QPainter, view: PlanView, standing: StandingRow) -> None:
    """Rayed ticks on both sides of the row's line."""
    _draw_band(painter, view, standing)
    u, row = view.unit, standing.row
    reach = max(standing.size.spread / 2 * view.scale * 0.86, 4.5 * u)
    # Rays of neighbours must not cross, or the row reads as a lattice.
    aside = min(0.36 * max(row.spacing * view.scale, 7.0 * u), 0.6 * reach)
    path = polyline(view.corners(run_of(row)))
    for place, angle in _spots(view, row, 7.0):
        for side in (-1, 1):
            for part in (-1, 0, 1):
                path.moveTo(_turned(place, part * 0.12 * aside, 0.0, angle))
                path.lineTo(_turned(place, part * aside, side * reach * (0.8 if part else 1.0), angle))
    painter.setPen(pen("ink", FINE, u))
    painter.drawPath(path)
    _draw_stems(painter, view, row, 7.0)


def _draw_stems(painter: QPainter, view: PlanView, row: Row, closest: float) -> None:
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(colour("ink"))
    for place, _ in _spots(view, row, closest):
        painter.drawEllipse(place, 1.7 * view.unit, 1.7 * view.unit)
    painter.setBrush(Qt.BrushStyle.NoBrush)


def _draw_posts(painter: QPainter, view: PlanView, row: Row) -> None:
    """End posts of a trellis."""
    if not row.supported:
        return
    u = view.unit
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(colour("ink"))
    run = run_of(row)
    for place in (view.at(run[0]), view.at(run[-1])):
        painter.drawRect(QRectF(place.x() - 2.6 * u, place.y() - 2.6 * u, 5.2 * u, 5.2 * u))
    painter.setBrush(Qt.BrushStyle.NoBrush)


def _draw_vines(painter: QPainter, view: PlanView, standing: StandingRow) -> None:
    """Leaf pairs along the wire, a trunk at each plant, posts at the ends."""
    _draw_band(painter, view, standing)
    u, row = view.unit, standing.row
    run = run_of(row)
    painter.setPen(pen("ink", FINE, u))
    painter.drawPath(polyline(view.corners(run)))
    half = max(standing.size.spread / 2 * view.scale, 5 * u)
    blade = min(half, 13 * u)
    path = QPainterPath()
    for place, angle in _leaf_spots(view, run, max(1.5 * blade, 9 * u)):
        for side in (-1, 1):
            base = _turned(place, -0.3 * blade, 0.0, angle)
            path.addPath(leaf(base, _turned(place, 0.35 * blade, side * 0.8 * blade, angle), 0.32))
    painter.setPen(pen("ink", THIN, u))
    painter.setBrush(colour("paper"))
    painter.drawPath(path)
    _draw_stems(painter, view, row, 7.0)
    _draw_posts(painter, view, row)


def _leaf_spots(view: PlanView, run: Outline, step: float) -> list[tuple[QPointF, float]]:
    spots = []
    for a, b in pairwise(run):
        angle = math.atan2(b[1] - a[1], b[0] - a[0])
        count = max(1, int(math.dist(a, b) * view.scale / step))
        for i in range(count):
            part = (i + 0.5) / count
            spots.append((view.at((a[0] + (b[0] - a[0]) * part, a[1] + (b[1] - a[1]) * part)), angle))
    return spots


def _draw_combs(painter: QPainter, view: PlanView, standing: StandingRow) -> None:
    """Flat-trained plants: a spine along the wall and teeth to the open side."""
    _draw_band(painter, view, standing)
    u, row = view.unit, standing.row
    run = run_of(row)
    half = max(standing.size.spread / 2 * view.scale, 4 * u)
    path = polyline(view.corners(run))
    for i, (place, angle) in enumerate(_leaf_spots(view, run, 6 * u)):
        path.moveTo(place)
        path.lineTo(_turned(place, 0.0, half * (0.95 if i % 2 else 0.65), angle))
    painter.setPen(pen("ink", FINE, u))
    painter.drawPath(path)
    _draw_stems(painter, view, row, 7.0)
    _draw_posts(painter, view, row)


def _draw_mats(painter: QPainter, view: PlanView, standing: StandingRow) -> None:
    """A matted row: its band and the plants set in it, or dots where these would run together into black."""
    _draw_band(painter, view, standing)
    row, spread = standing.row, standing.size.spread
    room = min(spread, row.spacing) * view.scale / view.unit
    if room >= SYMBOL_FLOOR:
        _draw_plants(painter, view, standing, min(spread, row.spacing * 1.1))
    elif room >= BED_DOT_ROOM:
        _draw_dots(painter, view, [point for point, _ in row_places(row.line, row.count, row.spacing)])


def _draw_dots(painter: QPainter, view: PlanView, places: Iterable[Point]) -> None:
    painter.setPen(pen("leaf", BED_DOT, view.unit))
    painter.drawPoints([view.at(place) for place in places])


def _draw_symbols(painter: QPainter, view: PlanView, standing: StandingRow) -> None:
    """Bushes or trees in a row: a thin line and their symbols."""
    painter.setPen(pen("muted", HAIR, view.unit))
    painter.drawPath(polyline(view.corners(run_of(standing.row))))
    _draw_plants(painter, view, standing, standing.size.spread)


def _draw_plants(painter: QPainter, view: PlanView, standing: StandingRow, spread: float) -> None:
    row, size = standing.row, standing.size
    drawn = Size(spread=spread, height=size.height, crown_base=size.crown_base, habit=size.habit)
    step = max(1, math.ceil(view.length(5.0) / max(row.spacing, 1e-3)))
    for point, angle in row_places(row.line, row.count, row.spacing)[::step]:
        stamp(painter, view, point, plain_look(view, drawn, math.degrees(angle)))


_ROWS: dict[str, Callable[[QPainter, PlanView, StandingRow], None]] = {
    "cane": _draw_canes, "vine": _draw_vines, "flat-trained": _draw_combs, "mat": _draw_mats,
}


def bed_places(bed: Bed) -> tuple[Point, ...]:
    """Where the plants of a planted bed stand, half a spacing from its edge; () when not known."""
    if bed.plant is None or not bed.spacing or len(bed.outline) < 3:
        return ()
    return _bed_places(bed.outline, bed.spacing, bed.pattern)


@lru_cache(maxsize=256)
def _bed_places(outline: Outline, spacing: float, pattern: str) -> tuple[Point, ...]:
    inner = widened(area(outline), -spacing / 2 + 1e-6)
    if inner.is_empty:
        return ()
    left, bottom, right, top = inner.bounds
    rise = spacing * (math.sqrt(0.75) if pattern == "triangular" else 1.0)
    columns, lines = int((right - left) / spacing) + 1, int((top - bottom) / rise) + 1
    if columns * lines > MOST_IN_BED:
        return ()
    x0 = (left + right - (columns - 1) * spacing) / 2
    y0 = (bottom + top - (lines - 1) * rise) / 2
    shift = spacing / 2 if pattern == "triangular" else 0.0
    grid = [
        (x0 + i * spacing + (shift if j % 2 else 0.0), y0 + j * rise)
        for j in range(lines) for i in range(columns)
    ]
    shapely.prepare(inner)
    return tuple(p for p in grid if shapely.intersects_xy(inner, p[0], p[1]))


def draw_bed_plants(painter: QPainter, view: PlanView, standing: StandingBed) -> None:
    """The plants of a planted bed: symbols, or dots where these would run together into black."""
    bed, size = standing.bed, standing.size
    if size is None or not view.sees_points(bed.outline):
        return
    places = bed_places(bed)
    room = min(size.spread, bed.spacing or size.spread) * view.scale / view.unit
    if room >= SYMBOL_FLOOR:
        for place in places:
            stamp(painter, view, place, plain_look(view, size))
    elif room >= BED_DOT_ROOM:
        _draw_dots(painter, view, places)
