"""The strip under a plan: scale bar, a bar to measure, cautions, which sheet this is, and the title block."""

from __future__ import annotations

from attrs import frozen
from PySide6.QtCore import QLineF, QPointF, QRectF, Qt

from yardplan.drawing.breaking import broken
from yardplan.drawing.furniture import draw_scale_bar, draw_title_block
from yardplan.drawing.lettering import FACT, Type, draw_text, text_size
from yardplan.drawing.style import FINE, HAIR, MEDIUM, THIN, colour, mitred, pen
from yardplan.drawing.view import PlanView
from yardplan.language import tr
from yardplan.sheets.cautions import cautions
from yardplan.sheets.paper import Paper
from yardplan.sheets.surface import Surface
from yardplan.sheets.tiling import Tile, Tiling

#: The bar to measure, millimetres: 100 mm, or 4 inches exactly.
BAR_METRIC, BAR_IMPERIAL = 100.0, 101.6
_TITLE_WIDE = 74.0
_LEFT_WIDE = 110.0
#: Height of the cautions under the rest on narrow sheets, millimetres.
_NARROW_CAUTIONS = 19.6
#: Where the picture of all sheets begins, right of the longest scale bar.
_INDEX_IN = 62.0
_CAUTION = Type(11.0, ink="ink")
_CAUTION_HEAD = Type(11.0, "bold", ink="ink")


@frozen(kw_only=True, eq=False)
class Band:
    """Where the strip lies (millimetres) and what it says."""

    paper: Paper
    margin: float
    top: float
    height: float
    narrow: bool
    facts: list[str]
    tiling: Tiling
    part: Tile
    imperial: bool


def draw_frame(surface: Surface, paper: Paper, margin: float, field_high: float) -> None:
    """A heavy frame round field and strip, a lighter line between them."""
    painter, u = surface.painter, surface.unit
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.setPen(mitred(pen("ink", MEDIUM, u)))
    painter.drawRect(surface.rect(margin, margin, paper.wide - 2 * margin, paper.high - 2 * margin))
    painter.setPen(mitred(pen("ink", FINE, u)))
    y = margin + field_high
    painter.drawLine(surface.point(margin, y), surface.point(paper.wide - margin, y))


def draw_band(surface: Surface, view: PlanView, band: Band) -> None:
    """Draw the whole strip."""
    right = band.paper.wide - band.margin
    upper = band.height if not band.narrow else band.height - _NARROW_CAUTIONS
    title = surface.rect(right - _TITLE_WIDE, band.top, _TITLE_WIDE, upper)
    draw_title_block(surface.painter, view, title, band.facts)
    draw_scale_bar(surface.painter, view, surface.point(band.margin + 5.0, band.top + 8.0))
    _draw_measure(surface, band, band.top + (21.5 if not band.narrow else 21.0))
    if band.narrow:
        room = (band.margin + 4.0, band.top + upper + 1.2, band.paper.wide - 2 * band.margin - 8.0,
                _NARROW_CAUTIONS - 1.4)
        surface.painter.setPen(pen("ink", HAIR, surface.unit))
        y = band.top + upper
        surface.painter.drawLine(surface.point(band.margin, y), surface.point(right, y))
    else:
        left = band.margin + _LEFT_WIDE
        room = (left, band.top + 2.0, right - _TITLE_WIDE - left - 4.0, band.height - 3.0)
    _draw_cautions(surface, view, room)
    if len(band.tiling.tiles) > 1:
        _draw_index(surface, band, surface.point(band.margin + _INDEX_IN, band.top + 3.0))


def bar_length(imperial: bool) -> float:
    """Length of the bar to measure, millimetres."""
    return BAR_IMPERIAL if imperial else BAR_METRIC


def _draw_measure(surface: Surface, band: Band, y: float) -> None:
    """A bar of exact length with a tick at each part, and what to do when it is not."""
    painter, u = surface.painter, surface.unit
    x, length = band.margin + 5.0, bar_length(band.imperial)
    parts = 4 if band.imperial else 10
    painter.setPen(mitred(pen("ink", FINE, u)))
    painter.drawLine(QLineF(surface.point(x, y), surface.point(x + length, y)))
    for i in range(parts + 1):
        tall = 1.8 if i in (0, parts) else 1.0
        at = x + length * i / parts
        painter.drawLine(QLineF(surface.point(at, y - tall), surface.point(at, y + tall)))
    words = tr("4 inches") if band.imperial else "100 mm"
    text = tr("Measure this bar: {length}. If it is not, print again at 100 %.", length=words)
    draw_text(painter, surface.lettering, QRectF(surface.point(x, y + 2.0), surface.point(x, y)), text, FACT)


def _draw_cautions(surface: Surface, view: PlanView, room: tuple[float, float, float, float]) -> None:
    """As many whole sentences as there is room for, the first always."""
    x, y, wide, high = room
    line = text_size("N", _CAUTION, surface.unit)[1] / surface.dots
    for i, sentence in enumerate(cautions(view.yard)):
        face = _CAUTION_HEAD if i == 0 else _CAUTION
        lines = broken(sentence, wide * surface.dots, face, surface.unit)
        if i and y + len(lines) * line > room[1] + high:
            continue
        for text in lines:
            corner = surface.point(x, y)
            draw_text(surface.painter, surface.lettering, QRectF(corner, corner), text, face)
            y += line


def _draw_index(surface: Surface, band: Band, corner: QPointF) -> None:
    """A small picture of all sheets with this one filled."""
    painter, tiling = surface.painter, band.tiling
    side = min(18.0 / tiling.columns, 11.0 / tiling.rows, 5.0) * surface.dots
    painter.setPen(mitred(pen("ink", THIN, surface.unit)))
    for part in tiling.tiles:
        painter.setBrush(colour("ink" if part == band.part else "paper"))
        painter.drawRect(QRectF(corner.x() + part.column * side, corner.y() + part.row * side, side, side))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    words = tr("sheet {name} of {count}", name=band.part.name, count=len(tiling.tiles))
    at = corner + QPointF(side * tiling.columns + 1.5 * surface.dots, -0.4 * surface.dots)
    draw_text(painter, surface.lettering, QRectF(at, at), words, FACT)
