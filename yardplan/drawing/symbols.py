"""One plant drawn from above at the painter's (0, 0)."""

from __future__ import annotations

from typing import Literal

from attrs import frozen
from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QPainter, QPainterPath, QTransform

from yardplan.drawing.habits import FORMS
from yardplan.drawing.shapes import circle, square
from yardplan.drawing.style import (
    CAUTION_DASH,
    FINE,
    HAIR,
    HEAVY,
    MATURE_DASH,
    MEDIUM,
    STANDING_DASH,
    THIN,
    colour,
    pen,
)
from yardplan.plants.crop import Habit

#: Below this radius, in style units, strokes within the outline would run together.
BARE = 6.0
#: Below this radius a stem would fill the outline.
DOTTED = 3.2
#: How much of the ground shows through a crown.
_CROWN_COVER = 0.78


Dress = Literal["", "conflict", "caution"]


@frozen
class Look:
    """How one plant is drawn. Lengths in device pixels; `facing` degrees counter-clockwise.

    `mature` radius at maturity (0: not shown), `pot` side of its container (0: in the ground),
    `standing` True for a tree that is there already. `dress`: only the mark of a finding, no plant.
    """

    habit: Habit
    radius: float
    mature: float = 0.0
    facing: float = 0.0
    pot: float = 0.0
    standing: bool = False
    unit: float = 1.0
    dress: Dress = ""

    @property
    def reach(self) -> float:
        """Farthest ink from the stem."""
        return max(self.radius, self.mature, self.pot * 0.75) + (8.0 if self.dress else 3.0) * self.unit


def edge(look: Look, grow: float = 0.0) -> QPainterPath:
    """The outline that marks and hit tests follow, `grow` pixels wider."""
    form = FORMS[look.habit]
    path = form.edge(max(look.radius + grow, look.unit), look.unit)
    return QTransform().rotate(-look.facing).map(path) if form.turns else path


def draw_symbol(painter: QPainter, look: Look) -> None:
    """Draw the plant: size at the chosen year solid, size at maturity a thin outer line."""
    if look.dress:
        _draw_dress(painter, look)
        return
    painter.save()
    if look.mature > look.radius + 1.5 * look.unit:
        _draw_mature(painter, look)
    if FORMS[look.habit].turns:
        painter.rotate(-look.facing)
    # A wide crown hides its pot, which is then drawn through it; a small one stands in its pot.
    inside = look.pot > 2 * look.radius
    if inside:
        _draw_pot(painter, look)
    _draw_crown(painter, look)
    if look.pot > 0 and not inside:
        _draw_pot(painter, look)
        _draw_stem(painter, look, max(look.radius, look.unit))
    painter.restore()


def _draw_dress(painter: QPainter, look: Look) -> None:
    """The outline of a mark: heavy for a conflict, a dashed ring round the plant for a caution."""
    painter.setBrush(Qt.BrushStyle.NoBrush)
    if look.dress == "conflict":
        painter.setPen(pen("conflict", HEAVY, look.unit))
        painter.drawPath(edge(look))
    else:
        painter.setPen(pen("caution", MEDIUM, look.unit, CAUTION_DASH))
        grow = 4.0 * look.unit
        painter.drawPath(edge(look, grow) if FORMS[look.habit].turns else circle(look.radius + grow))


def _draw_mature(painter: QPainter, look: Look) -> None:
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.setPen(pen("muted", THIN, look.unit, MATURE_DASH if look.standing else ()))
    if FORMS[look.habit].turns:
        turned = QTransform().rotate(-look.facing)
        painter.drawPath(turned.map(FORMS[look.habit].edge(look.mature, look.unit)))
    else:
        painter.drawEllipse(QPointF(0, 0), look.mature, look.mature)


def _draw_crown(painter: QPainter, look: Look) -> None:
    form, r, u = FORMS[look.habit], max(look.radius, 1.5 * look.unit), look.unit
    ink = "muted" if look.standing else "ink"
    bare = r < BARE * u
    outline = circle(r) if bare and not form.turns else form.outline(r, u)
    line = pen(ink, THIN if bare else FINE, u, STANDING_DASH if look.standing else ())
    if not (look.standing or bare or form.open):
        # The same outline a little down and to the right: the heavier far side of a drawn crown.
        painter.setPen(pen(ink, FINE, u))
        painter.drawPath(outline.translated(0.55 * u, 0.7 * u))
    painter.setPen(line)
    painter.setBrush(colour("crown", 0.5 if look.standing else _CROWN_COVER))
    if form.open and not bare:
        painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawPath(outline)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    if not bare:
        painter.setPen(pen(ink, FINE if form.open else THIN, u, alpha=0.7 if look.standing else 0.9))
        painter.drawPath(form.inner(r, u))
    if r >= DOTTED * u:
        _draw_stem(painter, look, r)


def _draw_stem(painter: QPainter, look: Look, r: float) -> None:
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(colour("muted" if look.standing else "ink"))
    size = min(max(0.045 * r, 1.4 * look.unit), 3.2 * look.unit, 0.5 * r)
    painter.drawEllipse(QPointF(0, 0), size, size)


def _draw_pot(painter: QPainter, look: Look) -> None:
    """A double square: the vessel seen through the crown."""
    u = look.unit
    side = max(look.pot, 7 * u)
    painter.setBrush(colour("paper", 0.85))
    painter.setPen(pen("ink", FINE, u))
    painter.drawPath(square(side))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    if side > 14 * u:
        painter.setPen(pen("ink", HAIR, u))
        painter.drawPath(square(side - 5 * u))
