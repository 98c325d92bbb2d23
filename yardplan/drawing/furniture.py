"""Frame, north arrow, scale bar, title block and the quiet grid of dots."""

from __future__ import annotations

import math
from collections.abc import Sequence

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QPainter

from yardplan.drawing.fonts import width
from yardplan.drawing.lettering import FACT, KEY, TITLE, Type, draw_text, text_size
from yardplan.drawing.shapes import polyline
from yardplan.drawing.style import FINE, HAIR, MEDIUM, THIN, colour, mitred, pen
from yardplan.drawing.view import PlanView
from yardplan.language import decimals, tr
from yardplan.units import FOOT, System

_STEPS = (1.0, 2.0, 5.0)
#: Style units between dots of the grid, at least.
_DOTS_APART = 22.0
_MOST_DOTS = 20_000
#: A scale bar's longest, and the room kept at its right for the last figure, style units.
_BAR_MOST, _BAR_END = 190.0, 56.0


def round_step(least: float) -> float:
    """The smallest of 1, 2, 5 times a power of ten that is not below `least`."""
    power = 10.0 ** math.floor(math.log10(max(least, 1e-9)))
    return next((step * power for step in _STEPS if step * power >= least * (1 - 1e-9)), 10.0 * power)


def grid_step(view: PlanView) -> float:
    """Metres between dots of the grid: a round number of metres or feet that can be told apart."""
    one = FOOT if view.units == "imperial" else 1.0
    return round_step(view.length(_DOTS_APART) / one) * one


def draw_grid(painter: QPainter, view: PlanView) -> None:
    """Dots over the window, or over the yard where no window is set."""
    step = grid_step(view)
    area = view.window or view.polygon(view.yard.lot).boundingRect()
    left, top = view.metres(area.topLeft())
    right, bottom = view.metres(area.bottomRight())
    columns = range(math.ceil(left / step), math.floor(right / step) + 1)
    lines = range(math.ceil(bottom / step), math.floor(top / step) + 1)
    if not 0 < len(columns) * len(lines) <= _MOST_DOTS:
        return
    painter.save()
    # Dots on whole pixels without smoothing: a tenth of the time of as many round ones.
    painter.setRenderHint(QPainter.RenderHint.Antialiasing, False)
    painter.setPen(pen("rule", 1.4, view.unit))
    painter.drawPoints([view.at((i * step, j * step)) for i in columns for j in lines])
    painter.restore()


def draw_sheet(painter: QPainter, sheet: QRectF, unit: float, margin: float = 10.0) -> QRectF:
    """Paper and a double frame; returns the field inside it. `margin` in style units."""
    painter.fillRect(sheet, colour("paper"))
    m = margin * unit
    field = sheet.adjusted(m, m, -m, -m)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.setPen(mitred(pen("ink", MEDIUM, unit)))
    painter.drawRect(field)
    return field


def draw_north(painter: QPainter, view: PlanView, middle: QPointF, radius: float = 24.0) -> None:
    """A ring with a needle, half of it filled, that points to true north."""
    u = view.unit
    r = radius * u
    painter.save()
    painter.translate(middle)
    painter.rotate(view.yard.site.north)
    painter.setPen(pen("ink", FINE, u))
    painter.setBrush(colour("paper"))
    painter.drawEllipse(QPointF(0, 0), r * 0.78, r * 0.78)
    painter.setPen(pen("ink", THIN, u))
    for degrees in range(0, 360, 30):
        t = math.radians(degrees)
        outer = QPointF(math.sin(t), -math.cos(t)) * (r * 0.78)
        painter.drawLine(outer, outer * (0.8 if degrees % 90 == 0 else 0.9))
    tip, foot = QPointF(0, -r), QPointF(0, r * 0.3)
    left, right = QPointF(-r * 0.24, r * 0.5), QPointF(r * 0.24, r * 0.5)
    painter.drawPath(polyline([tip, left, foot], closed=True))
    painter.setBrush(colour("ink"))
    painter.drawPath(polyline([tip, right, foot], closed=True))
    painter.restore()
    _north_letter(painter, view, middle, r)


def _north_letter(painter: QPainter, view: PlanView, middle: QPointF, r: float) -> None:
    """An upright N beyond the tip."""
    t = math.radians(view.yard.site.north)
    wide, high = text_size("N", KEY, view.unit)
    at = middle + QPointF(math.sin(t), -math.cos(t)) * (r + 0.55 * high)
    draw_text(painter, view, QRectF(at.x() - wide / 2, at.y() - high / 2, wide, high), "N", KEY)


def bar_length(view: PlanView, system: System, most: float = _BAR_MOST) -> float:
    """Metres of a scale bar of four parts, a round figure, at most `most` style units long."""
    one = FOOT if system == "imperial" else 1.0
    longest = view.length(most) / one
    power = 10.0 ** math.floor(math.log10(longest))
    best = max(step * power for step in (1.0, 2.0, 4.0, 8.0) if step * power <= longest)
    return best * one


def longest_bar(view: PlanView, corner: QPointF) -> float:
    """Style units of a scale bar from that corner: shorter where its last figure would leave the window."""
    if view.window is None:
        return _BAR_MOST
    return min(_BAR_MOST, max((view.window.right() - corner.x()) / view.unit - _BAR_END, _BAR_END))


def draw_scale_bar(painter: QPainter, view: PlanView, corner: QPointF) -> None:
    """Two bars on one line, metres and feet, the yard's own unit above. `corner` is the lower left."""
    other: System = "metric" if view.units == "imperial" else "imperial"
    _bar(painter, view, corner, view.units, above=True)
    _bar(painter, view, corner, other, above=False)


def _bar(painter: QPainter, view: PlanView, corner: QPointF, system: System, *, above: bool) -> None:
    u = view.unit
    length = bar_length(view, system, longest_bar(view, corner))
    part, high = length * view.scale / 4, (5.0 if above else 3.0) * u
    top = corner.y() - high if above else corner.y() + 1.5 * u
    painter.setPen(pen("ink", HAIR if not above else THIN, u))
    for i in range(4):
        painter.setBrush(colour("ink" if i % 2 == 0 else "paper"))
        painter.drawRect(QRectF(corner.x() + i * part, top, part, high))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    one, name = (FOOT, tr("ft")) if system == "imperial" else (1.0, "m")
    face = Type(11.0, ink="ink" if above else "muted", halo="paper")
    tall = text_size("0", face, u)[1]
    y = top - tall - 1 * u if above else top + high + 1 * u
    for i in (0, 2, 4):
        number = decimals(f"{length / one * i / 4:g}")
        text = number + (f" {name}" if i == 4 else "")
        half = width(number, face.size, face.weight, u) / 2
        draw_text(painter, view, QRectF(corner.x() + i * part - half, y, 0, 0), text, face)


def draw_title_block(painter: QPainter, view: PlanView, box: QRectF, facts: Sequence[str]) -> None:
    """The yard's name and lines of facts in a box at the frame's corner."""
    u = view.unit
    painter.setPen(mitred(pen("ink", FINE, u)))
    painter.setBrush(colour("paper"))
    painter.drawRect(box)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    x, y = box.left() + 10 * u, box.top() + 7 * u
    draw_text(painter, view, QRectF(x, y, 0, 0), view.yard.site.name, TITLE)
    y += text_size(view.yard.site.name, TITLE, u)[1] + 2 * u
    for line in facts:
        draw_text(painter, view, QRectF(x, y, 0, 0), line, FACT)
        y += text_size(line, FACT, u)[1]


def title_block_size(view: PlanView, facts: Sequence[str]) -> tuple[float, float]:
    """Width and height that the title block needs, device pixels."""
    u = view.unit
    lines = [view.yard.site.name, *facts]
    wide = max(text_size(line, TITLE if i == 0 else FACT, u)[0] for i, line in enumerate(lines))
    high = text_size("N", TITLE, u)[1] + len(facts) * text_size("N", FACT, u)[1]
    return wide + 20 * u, high + 16 * u


def site_facts(view: PlanView) -> list[str]:
    """Latitude, zone and soil of the site, as far as known."""
    site = view.yard.site
    side = tr("S") if site.southern else tr("N")
    degrees = decimals(f"{abs(site.latitude):.1f}° {side}")
    words = [degrees]
    if site.zone:
        about = tr("about zone {zone}", zone=site.zone)
        words.append(about if site.zone_estimated else tr("zone {zone}", zone=site.zone))
    ph = "" if site.soil.ph is None else decimals(f"pH {site.soil.ph:.1f}")
    soil = [tr(site.soil.texture or ""), ph]
    known = ", ".join(word for word in soil if word)
    if known:
        words.append(known)
    lines = [site.place] if site.place else []
    if not site.entered:
        # A latitude nobody entered is no fact of this yard.
        lines = [tr("place not entered: sun as at {latitude}", latitude=degrees)]
        words.remove(degrees)
    return [*lines, "   ".join(words)] if words else lines
