"""The look of the sheet: palette, line weights and pens. Sizes are in style units.

One style unit is one logical pixel on the screen and 0.22 mm on paper, so the same drawing keeps its
proportions on both; `PlanView.unit` says how many device pixels it is.
"""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from contextvars import ContextVar
from functools import lru_cache

from attrs import frozen
from PySide6.QtCore import Qt
from PySide6.QtGui import QBrush, QColor, QPen

#: Millimetres of paper that stand for one style unit (11 units: 2.4 mm, about 7 point).
UNIT_MM = 0.22


@frozen
class Palette:
    """Colours of the sheet as `#RRGGBB`. Each text and mark colour is tested against each ground.

    `conflict` is a little deeper than the office's #C2410C, which misses 4.5:1 on roof, soil and frost.
    """

    paper: str = "#FBFAF5"
    room: str = "#ECEAE4"
    panel: str = "#F5F3EE"
    ink: str = "#22303A"
    muted: str = "#5C6B73"
    rule: str = "#C9C6BC"
    conflict: str = "#B93A0B"
    caution: str = "#0B5C8F"
    leaf: str = "#4E6B52"
    roof: str = "#F1EEE6"
    soil: str = "#F3ECDF"
    stone: str = "#F4F2EB"
    water: str = "#EAF1F2"
    crown: str = "#F4F6EE"
    clear: str = "#EEF3EA"
    frost: str = "#E3EDF3"
    hatch: str = "#B4B1A6"


PALETTE = Palette()
#: For paper: white ground, and lines that only fill are dark enough to survive a printer.
PRINTED = Palette(
    paper="#FFFFFF", room="#FFFFFF", panel="#FFFFFF", rule="#9A978D", roof="#F7F5EF", soil="#F8F3E9",
    stone="#F9F7F2", water="#F1F6F7", crown="#FAFBF7", clear="#F4F8F1", hatch="#A5A298",
)
#: Colours that may carry words, marks that must be seen, and grounds either can fall on.
TEXT_COLOURS = ("ink", "muted", "conflict", "caution", "leaf")
GROUNDS = ("paper", "room", "panel", "roof", "soil", "stone", "water", "crown", "clear", "frost")

#: Line weights in style units.
HAIR, THIN, FINE, MEDIUM, HEAVY, BOLD = 0.6, 0.85, 1.25, 1.6, 2.2, 3.0

#: Plants of a bed that take less room than this on the sheet are dots, not symbols: 2.4 mm on paper. A symbol
#: narrower than the smallest letters (`fonts.FLOOR`) is no longer told by its shape, and its lines, which
#: keep their weight, close up into a black field.
SYMBOL_FLOOR = 11.0
#: How wide such a dot is, and the room it needs so that a bed of them stays a light tone: a dot then covers
#: about a tenth of its plant's room. Closer ones are left to the bed's stipple.
BED_DOT, BED_DOT_ROOM = 1.4, 4.0

#: Dash patterns in style units: drawn, left out, ...
LOT_DASH = (22.0, 5.0, 4.5, 5.0, 4.5, 5.0)
STANDING_DASH = (5.0, 3.0)
MATURE_DASH = (1.5, 2.6)
CAUTION_DASH = (7.0, 3.5)
OVERHANG_DASH = (4.0, 3.0)


def luminance(colour: str) -> float:
    """Relative luminance of an sRGB colour (WCAG 2.2, definition of relative luminance)."""
    parts = [int(colour[i : i + 2], 16) / 255 for i in (1, 3, 5)]
    r, g, b = (v / 12.92 if v <= 0.04045 else ((v + 0.055) / 1.055) ** 2.4 for v in parts)
    return 0.2126 * r + 0.7152 * g + 0.0722 * b


def contrast(one: str, other: str) -> float:
    """Contrast ratio of two colours, 1 to 21 (WCAG 2.2, definition of contrast ratio)."""
    dark, light = sorted((luminance(one), luminance(other)))
    return (light + 0.05) / (dark + 0.05)


_palette: ContextVar[Palette] = ContextVar("palette", default=PALETTE)


@contextmanager
def on_white_paper() -> Iterator[None]:
    """Within it everything is drawn for print: white ground, fillings a little darker."""
    token = _palette.set(PRINTED)
    try:
        yield
    finally:
        _palette.reset(token)


def colour(name: str, alpha: float = 1.0) -> QColor:
    """A palette colour by name, or a `#RRGGBB` value, with an opacity from 0 to 1."""
    return _colour(name if name.startswith("#") else getattr(_palette.get(), name), alpha)


@lru_cache(maxsize=512)
def _colour(value: str, alpha: float) -> QColor:
    made = QColor(value)
    made.setAlphaF(alpha)
    return made


def pen(
    name: str, weight: float, unit: float = 1.0, dash: tuple[float, ...] = (), alpha: float = 1.0
) -> QPen:
    """A round-ended pen: `weight` and `dash` in style units, `unit` device pixels each."""
    value = name if name.startswith("#") else getattr(_palette.get(), name)
    return _pen(value, weight, unit, dash, alpha)


@lru_cache(maxsize=1024)
def _pen(value: str, weight: float, unit: float, dash: tuple[float, ...], alpha: float) -> QPen:
    made = QPen(QBrush(_colour(value, alpha)), weight * unit)
    made.setCapStyle(Qt.PenCapStyle.FlatCap if dash else Qt.PenCapStyle.RoundCap)
    made.setJoinStyle(Qt.PenJoinStyle.RoundJoin)
    if dash:
        made.setDashPattern([part / weight for part in dash])
    return made


def bevelled(made: QPen) -> QPen:
    """The pen with cut corners, for outlines of very many corners: rounding each takes ten times as long."""
    cut = QPen(made)
    cut.setJoinStyle(Qt.PenJoinStyle.BevelJoin)
    cut.setCapStyle(Qt.PenCapStyle.FlatCap)
    return cut


def mitred(made: QPen) -> QPen:
    """The pen with sharp corners, for walls and frames."""
    sharp = QPen(made)
    sharp.setJoinStyle(Qt.PenJoinStyle.MiterJoin)
    sharp.setCapStyle(Qt.PenCapStyle.FlatCap)
    return sharp
