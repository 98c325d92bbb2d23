"""Words on the plan: plain, with a halo that breaks the lines behind them, or in a small box."""

from __future__ import annotations

from collections import OrderedDict

from attrs import frozen
from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPainterPath, QPen, QPixmap

from yardplan.drawing.fonts import FLOOR, font, metrics, width
from yardplan.drawing.painting import painting
from yardplan.drawing.style import FINE, colour, pen
from yardplan.drawing.view import PlanView


@frozen
class Type:
    """A face: size in style units, weight, slant, colour, and the colour of its halo ("" for none)."""

    size: float = 12.0
    weight: str = "regular"
    italic: bool = False
    ink: str = "ink"
    halo: str = ""


KEY = Type(11.0, "bold")
NAME = Type(12.0, "medium", halo="paper")
TITLE = Type(13.0, "bold")
FACT = Type(FLOOR, ink="muted")
GROUND = Type(FLOOR, ink="muted", halo="paper")
NOTE = Type(FLOOR, italic=True, halo="paper")
STANDING_NAME = Type(FLOOR, italic=True, ink="muted", halo="paper")
SAID = Type(12.0, "medium")

#: Half the width of a halo, style units.
_HALO = 2.0
_KEPT = 4000


def text_size(text: str, face: Type, unit: float) -> tuple[float, float]:
    """Width and line height of some words in device pixels; lines are parted by newlines."""
    lines = text.split("\n")
    wide = max(width(line, face.size, face.weight, unit, face.italic) for line in lines)
    return wide, metrics(face.size, face.weight, unit, face.italic).height() * len(lines)


def draw_text(painter: QPainter, view: PlanView, box: QRectF, text: str, face: Type) -> None:
    """Words with their top left at the box's; with a halo stamped on the screen, real text on paper."""
    if view.vector:
        _paint_text(painter, view.unit, box.topLeft(), text, face)
        return
    if not face.halo:
        # Quicker painted than stamped where they change from frame to frame, as figures in a drag do.
        _paint_text(painter, view.unit, QPointF(round(box.left()), round(box.top())), text, face)
        return
    picture = _pictures.picture(text, face, view.unit, view.ratio)
    margin = _HALO * view.unit + 1
    painter.drawPixmap(round(box.left() - margin), round(box.top() - margin), picture)


def draw_turned(
    painter: QPainter, view: PlanView, middle: QPointF, degrees: float, text: str, face: Type
) -> None:
    """Words centred on a place and turned counter-clockwise."""
    wide, high = text_size(text, face, view.unit)
    painter.save()
    painter.translate(middle)
    painter.rotate(-degrees)
    _paint_text(painter, view.unit, QPointF(-wide / 2, -high / 2), text, face)
    painter.restore()


def _paint_text(painter: QPainter, unit: float, corner: QPointF, text: str, face: Type) -> None:
    made = font(face.size, face.weight, unit, face.italic)
    measure = metrics(face.size, face.weight, unit, face.italic)
    painter.setFont(made)
    for i, line in enumerate(text.split("\n")):
        base = corner + QPointF(0, measure.ascent() + i * measure.height())
        if face.halo:
            path = QPainterPath()
            path.addText(base, made, line)
            painter.strokePath(path, QPen(pen(face.halo, 2 * _HALO, unit, alpha=0.92)))
        painter.setPen(colour(face.ink))
        painter.drawText(base, line)


class _Pictures:
    """Words painted once; the oldest dropped first."""

    def __init__(self) -> None:
        self._kept: OrderedDict[tuple[str, Type, float, float], QPixmap] = OrderedDict()

    def picture(self, text: str, face: Type, unit: float, ratio: float) -> QPixmap:
        key = (text, face, unit, ratio)
        kept = self._kept.get(key)
        if kept is None:
            kept = self._kept[key] = self._paint(text, face, unit, ratio)
            if len(self._kept) > _KEPT:
                self._kept.popitem(last=False)
        return kept

    @staticmethod
    def _paint(text: str, face: Type, unit: float, ratio: float) -> QPixmap:
        wide, high = text_size(text, face, unit)
        margin = _HALO * unit + 1
        made = QPixmap(round((wide + 2 * margin + 2) * ratio), round((high + 2 * margin + 2) * ratio))
        made.setDevicePixelRatio(ratio)
        made.fill(Qt.GlobalColor.transparent)
        with painting(made) as painter:
            _paint_text(painter, unit, QPointF(margin, margin), text, face)
        return made


_pictures = _Pictures()


def boxed_size(text: str, face: Type, unit: float) -> tuple[float, float]:
    """Width and height of words in a box."""
    wide, high = text_size(text, face, unit)
    return wide + 14 * unit, high + 5 * unit


def draw_boxed(
    painter: QPainter, view: PlanView, box: QRectF, text: str, face: Type, frame: str, weight: float = FINE
) -> None:
    """Words in a paper box with a frame of the given colour, centred."""
    wide, high = text_size(text, face, view.unit)
    painter.setPen(pen(frame, weight, view.unit))
    painter.setBrush(colour("paper"))
    painter.drawRoundedRect(box, 3 * view.unit, 3 * view.unit)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    middle = box.center()
    draw_text(painter, view, QRectF(middle.x() - wide / 2, middle.y() - high / 2, wide, high), text, face)


def draw_pill(painter: QPainter, view: PlanView, box: QRectF, text: str, ink: str = "ink") -> None:
    """A plan key in a round-ended frame."""
    painter.setPen(pen(ink, 1.0, view.unit))
    painter.setBrush(colour("paper"))
    painter.drawRoundedRect(box, box.height() / 2, box.height() / 2)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    face = KEY if ink == "ink" else Type(KEY.size, KEY.weight, ink=ink)
    wide, high = text_size(text, face, view.unit)
    middle = box.center()
    draw_text(painter, view, QRectF(middle.x() - wide / 2, middle.y() - high / 2, wide, high), text, face)


def pill_size(text: str, unit: float) -> tuple[float, float]:
    """Width and height of a key in its frame."""
    wide, high = text_size(text, KEY, unit)
    return max(wide + 9 * unit, high + 5 * unit), high + 1.5 * unit
