"""Fillings of the screen by small pictures laid side by side: for shapes too many to cut lines to."""

from __future__ import annotations

import math
from functools import lru_cache

from PySide6.QtCore import QLineF, Qt
from PySide6.QtGui import QBrush, QPixmap, QTransform

from yardplan.drawing.painting import painting
from yardplan.drawing.style import pen


@lru_cache(maxsize=16)
def _tile(period: int, ink: str, weight: float, alpha: float, ratio: float) -> QPixmap:
    """One period, device pixels, of lines that rise to the right; it fits to itself on all sides."""
    made = QPixmap(period, period)
    made.fill(Qt.GlobalColor.transparent)
    with painting(made) as painter:
        painter.setPen(pen(ink, weight, ratio, alpha=alpha))
        for aside in (-period, 0, period):
            painter.drawLine(QLineF(aside - 1, period + 1, aside + period + 1, -1))
    return made


def hatch_brush(gap: float, ink: str, weight: float, *, alpha: float, ratio: float) -> QBrush:
    """Lines rising to the right, `gap` pixels apart to the next whole device pixel, as a brush.

    `weight` in style units of one pixel, `ratio` device pixels per pixel of a dense screen.
    """
    period = max(round(gap * math.sqrt(2.0) * ratio), 2)
    brush = QBrush(_tile(period, ink, weight, alpha, ratio))
    # A brush knows nothing of dense screens: its picture is shrunk to their pixels.
    brush.setTransform(QTransform.fromScale(1.0 / ratio, 1.0 / ratio))
    return brush
