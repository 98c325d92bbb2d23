"""Paints what tools show on top of the drawing: lines being drawn, grips, words, what was snapped to."""

from __future__ import annotations

from functools import lru_cache

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QFont, QFontMetricsF, QPainter, QPen, QPolygonF

from yardplan.drawing.style import colour, pen
from yardplan.language import later, tr
from yardplan.window.canvas.snapping import SnapKind, Snapped
from yardplan.window.canvas.view import View
from yardplan.window.theme import scaled
from yardplan.window.tools.tool import Disc, Handle, Look, Overlay, Stroke, Words
from yardplan.yard.ground import Outline

#: Side of a grip in pixels; it answers within 24 (WCAG 2.2, 2.5.8).
GRIP = 9.0
#: Words on the sheet are never smaller than this, pixels.
WORDS_PIXELS = 12

#: Where the words of a snap begin, seen from its place.
_SAID_AT = QPointF(10, 18)

_PENS: dict[Look, tuple[str, float, tuple[float, ...]]] = {
    "line": ("ink", 1.8, ()),
    "curve": ("ink", 1.8, ()),
    "guide": ("caution", 1.2, (5.0, 4.0)),
    "band": ("caution", 1.2, (4.0, 3.0)),
    "ghost": ("ink", 1.2, (3.0, 3.0)),
}


#: What a place was drawn to, as it is said beside the mark.
SNAP_WORDS: dict[SnapKind, str] = {
    "corner": later("corner"), "centre": later("centre"),
    "middle": later("middle of the edge"), "equal steps": later("equal steps"),
    "square": later("square corner"), "edge": later("edge"), "in line": later("in line"),
    "grid": later("grid"),
}


def paint_overlay(painter: QPainter, view: View, overlay: Overlay, snapped: Snapped) -> None:
    """Everything a tool shows, and the mark of what was snapped to."""
    for stroke in overlay.strokes:
        _stroke(painter, view, stroke)
    for disc in overlay.discs:
        _disc(painter, view, disc)
    paint_snap(painter, view, snapped)
    for handle in overlay.handles:
        _handle(painter, view, handle)
    for words in overlay.words:
        _words(painter, view, words)


def polygon(view: View, points: Outline) -> QPolygonF:
    """The pixels of some places."""
    return QPolygonF([view.to_pixels(point) for point in points])


def look_pen(look: Look) -> QPen:
    """The pen of an overlay look."""
    return pen(*_PENS[look][:2], dash=_PENS[look][2])


def _stroke(painter: QPainter, view: View, stroke: Stroke) -> None:
    shape = polygon(view, stroke.points)
    if stroke.look == "band":
        painter.setBrush(colour("caution", 0.08))
        painter.setPen(look_pen("band"))
        painter.drawPolygon(shape)
        return
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.setPen(look_pen(stroke.look))
    if stroke.closed:
        painter.drawPolygon(shape)
    else:
        painter.drawPolyline(shape)
    if stroke.look == "line":
        painter.setBrush(colour("paper"))
        painter.setPen(pen("ink", 1.2))
        for place in shape.toList():
            painter.drawEllipse(place, 3.0, 3.0)


def _disc(painter: QPainter, view: View, disc: Disc) -> None:
    painter.setPen(look_pen(disc.look))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    radius = disc.radius * view.scale
    painter.drawEllipse(view.to_pixels(disc.centre), radius, radius)


def _handle(painter: QPainter, view: View, handle: Handle) -> None:
    place = view.to_pixels(handle.place)
    painter.setPen(pen("ink", 1.4))
    painter.setBrush(colour("paper"))
    if handle.round:
        _turn_grip(painter, place)
    else:
        painter.drawRect(QRectF(place.x() - GRIP / 2, place.y() - GRIP / 2, GRIP, GRIP))


def _turn_grip(painter: QPainter, place: QPointF) -> None:
    """A bent arrow on a disc of paper: what turns."""
    painter.setPen(Qt.PenStyle.NoPen)
    painter.drawEllipse(place, GRIP, GRIP)
    painter.setPen(pen("ink", 1.6))
    side = 1.3 * GRIP
    box = QRectF(place.x() - side / 2, place.y() - side / 2, side, side)
    painter.drawArc(box, -30 * 16, 270 * 16)
    tip = QPointF(box.right() - 0.067 * side, place.y() + side / 4)
    painter.drawPolyline(QPolygonF([tip + QPointF(-4.5, -1.5), tip, tip + QPointF(1.5, -4.5)]))


def words_boxes(view: View, overlay: Overlay, snapped: Snapped) -> tuple[QRectF, ...]:
    """Where the words of a tool, and of what was snapped to, stand: pixels of the window."""
    boxes = []
    if overlay.words or snapped.kind != "none":
        _, size = _letters(scaled(WORDS_PIXELS))
        boxes = [_tag_box(size, view.to_pixels(words.place), words.text) for words in overlay.words]
        if snapped.kind != "none":
            corner, words = view.to_pixels(snapped.point) + _SAID_AT, tr(SNAP_WORDS[snapped.kind])
            boxes.append(size.boundingRect(words).translated(corner))
    return tuple(boxes)


@lru_cache(maxsize=8)
def _letters(pixels: int) -> tuple[QFont, QFontMetricsF]:
    """The letters of a tool's words and their measures, kept: they are asked for in every frame."""
    font = QFont()
    font.setPixelSize(pixels)
    return font, QFontMetricsF(font)


def _tag_box(size: QFontMetricsF, place: QPointF, text: str) -> QRectF:
    box = QRectF(0, 0, size.horizontalAdvance(text) + 10, size.height() + 4)
    box.moveCenter(place)
    return box


def _words(painter: QPainter, view: View, words: Words) -> None:
    tag(painter, view.to_pixels(words.place), words.text)


def tag(painter: QPainter, place: QPointF, text: str, ink: str = "ink") -> QRectF:
    """Words on a small piece of paper, so that they can be read over any line."""
    font, size = _letters(scaled(WORDS_PIXELS))
    painter.setFont(font)
    box = _tag_box(size, place, text)
    painter.setPen(pen(ink, 0.8))
    painter.setBrush(colour("paper", 0.94))
    painter.drawRoundedRect(box, 3, 3)
    painter.setPen(colour(ink))
    painter.drawText(box, Qt.AlignmentFlag.AlignCenter, text)
    return box


def paint_snap(painter: QPainter, view: View, snapped: Snapped) -> None:
    """What a place was drawn to: guides, a mark of its own form, and its name."""
    if snapped.kind == "none":
        return
    painter.setPen(look_pen("guide"))
    for start, end in snapped.guides:
        painter.drawLine(view.to_pixels(start), view.to_pixels(end))
    place = view.to_pixels(snapped.point)
    painter.setPen(pen("caution", 1.2 if snapped.kind == "grid" else 1.8))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    _snap_mark(painter, place, snapped.kind)
    painter.setPen(colour("caution"))
    painter.setFont(_letters(scaled(WORDS_PIXELS))[0])
    painter.drawText(place + _SAID_AT, tr(SNAP_WORDS[snapped.kind]))


def _snap_mark(painter: QPainter, place: QPointF, kind: SnapKind) -> None:
    """A ring for centres, a square for corners, a triangle for middles, else a cross, of the grid upright."""
    if kind == "centre":
        painter.drawEllipse(place, 6, 6)
    elif kind in ("corner", "square"):
        painter.drawRect(QRectF(place.x() - 6, place.y() - 6, 12, 12))
    elif kind == "middle":
        painter.drawPolygon([place + QPointF(0, -7), place + QPointF(7, 5), place + QPointF(-7, 5)])
    elif kind == "grid":
        # The two lines of the grid that meet in the point, open in the middle so that it can be seen.
        for x, y in ((1, 0), (-1, 0), (0, 1), (0, -1)):
            painter.drawLine(place + QPointF(2 * x, 2 * y), place + QPointF(9 * x, 9 * y))
    else:
        painter.drawLine(QPointF(place.x() - 6, place.y() - 6), QPointF(place.x() + 6, place.y() + 6))
        painter.drawLine(QPointF(place.x() - 6, place.y() + 6), QPointF(place.x() + 6, place.y() - 6))
