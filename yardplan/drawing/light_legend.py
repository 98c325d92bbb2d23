"""The legend of the light overlay: each class of hours with its tone, its limits and its name."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QPainter

from yardplan.drawing.lettering import Type, draw_text, text_size
from yardplan.drawing.light_picture import TONES
from yardplan.drawing.style import THIN, colour, mitred, pen
from yardplan.drawing.view import PlanView
from yardplan.sun.classes import classes

_HEAD = Type(11.0, "medium")
_LINE = Type(11.0)
_SWATCH, _GAP, _PAD = 22.0, 7.0, 8.0
TITLE = "Direct sun, hours a day"


def _words() -> list[str]:
    """A line a class, lightest first: `8 h and more: full sun for fruit`."""
    held = classes()
    lines = []
    for number, one in reversed(list(enumerate(held))):
        if number == len(held) - 1:
            span = f"{one.low:g} h and more"
        else:
            span = f"{one.low:g} to {held[number + 1].low:g} h" if one.low else f"under {held[1].low:g} h"
        lines.append(f"{span}: {one.name}")
    return lines


def legend_size(view: PlanView, note: str = "") -> tuple[float, float]:
    """Width and height that the legend needs, device pixels. `note` is a last line, e.g. the season."""
    u = view.unit
    lines = _words()
    wide = max(text_size(line, _LINE, u)[0] for line in lines) + (_SWATCH + _GAP) * u
    heads = [TITLE, note] if note else [TITLE]
    wide = max([wide, *(text_size(head, _HEAD, u)[0] for head in heads)])
    high = (len(lines) + len(heads)) * _step(u)
    return wide + 2 * _PAD * u, high + 2 * _PAD * u


def _step(unit: float) -> float:
    return text_size("0", _LINE, unit)[1] * 1.25


def draw_light_legend(painter: QPainter, view: PlanView, corner: QPointF, note: str = "") -> QRectF:
    """Draw the legend with its top left at `corner`; returns the box it covers."""
    u = view.unit
    box = QRectF(corner.x(), corner.y(), *legend_size(view, note))
    painter.save()
    painter.setPen(mitred(pen("ink", THIN, u)))
    painter.setBrush(colour("paper"))
    painter.drawRect(box)
    x, y = box.left() + _PAD * u, box.top() + _PAD * u
    draw_text(painter, view, QRectF(x, y, 0, 0), TITLE, _HEAD)
    for words, tone in zip(_words(), reversed(TONES), strict=True):
        y += _step(u)
        swatch = QRectF(x, y + 1.5 * u, _SWATCH * u, _step(u) - 4 * u)
        painter.setBrush(colour("ink", tone))
        painter.setPen(mitred(pen("leaf", THIN, u)))
        painter.drawRect(swatch)
        draw_text(painter, view, QRectF(x + (_SWATCH + _GAP) * u, y, 0, 0), words, _LINE)
    if note:
        draw_text(painter, view, QRectF(x, y + _step(u), 0, 0), note, _LINE)
    painter.restore()
    return box
