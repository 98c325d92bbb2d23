"""Plant symbols drawn once for the current zoom and stamped from then on.

Painting outlines costs a hundred times more than stamping a small picture; so each distinct symbol is
painted into a pixmap and kept. Radii are rounded to half a device pixel.
"""

from __future__ import annotations

from collections import OrderedDict

from attrs import evolve
from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QPixmap

from yardplan.drawing.painting import painting
from yardplan.drawing.symbols import Look, draw_symbol

#: Symbols wider than this many device pixels are painted directly: few of them fit on a screen.
WIDEST = 640
#: Pixels kept in all sprites together: 64 MB at four bytes each.
MOST_PIXELS = 16_000_000

Key = tuple[Look, float]


def rounded(look: Look) -> Look:
    """The look with radii to half a pixel and its direction to half a degree."""
    return evolve(
        look, radius=round(look.radius * 2) / 2, mature=round(look.mature * 2) / 2,
        facing=round(look.facing * 2) / 2 % 360.0, pot=round(look.pot * 2) / 2,
    )


class SpriteBook:
    """Keeps painted symbols, the least used dropped first."""

    def __init__(self, most_pixels: int = MOST_PIXELS) -> None:
        self._kept: OrderedDict[Key, QPixmap] = OrderedDict()
        self._pixels = 0
        self._most = most_pixels

    def sprite(self, look: Look, ratio: float = 1.0) -> QPixmap | None:
        """The picture of a symbol, its stem in the middle; None when it is too big to keep.

        `ratio` device pixels per painter pixel (high-density screens).
        """
        if 2 * look.reach * ratio > WIDEST:
            return None
        key = (rounded(look), ratio)
        kept = self._kept.get(key)
        if kept is not None:
            self._kept.move_to_end(key)
            return kept
        return self._paint(key)

    def _paint(self, key: Key) -> QPixmap:
        look, ratio = key
        half = int(look.reach) + 2
        made = QPixmap(round(2 * half * ratio), round(2 * half * ratio))
        made.setDevicePixelRatio(ratio)
        made.fill(Qt.GlobalColor.transparent)
        with painting(made) as painter:
            painter.translate(QPointF(half, half))
            draw_symbol(painter, look)
        self._keep(key, made)
        return made

    def _keep(self, key: Key, made: QPixmap) -> None:
        self._kept[key] = made
        self._pixels += made.width() * made.height()
        while self._pixels > self._most and len(self._kept) > 1:
            _, dropped = self._kept.popitem(last=False)
            self._pixels -= dropped.width() * dropped.height()

    def __len__(self) -> int:
        return len(self._kept)

    def clear(self) -> None:
        """Forget every symbol (the screen's density changed)."""
        self._kept.clear()
        self._pixels = 0


BOOK = SpriteBook()
