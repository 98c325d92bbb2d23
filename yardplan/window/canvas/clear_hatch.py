"""Clear ground on the canvas: a green hatch where the plant in hand or dragged raises no conflict."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

from attrs import evolve
from PySide6.QtCore import QLineF, QRect, Qt
from PySide6.QtGui import QPainter, QRegion

from yardplan.drawing.style import pen
from yardplan.drawing.view import PlanView
from yardplan.window.canvas.pictures import StillPicture
from yardplan.window.canvas.view import View
from yardplan.window.clear_ground import ClearGroundShown
from yardplan.yard.ground import Outline

if TYPE_CHECKING:
    from yardplan.arrange.clear_ground import ClearGround


#: Half the width of the cross that stands for things dragged together, pixels.
_CROSS = 7.0


class ClearHatch:
    """Keeps a picture of the hatch, painted anew when the ground or the view changes."""

    def __init__(self, shown: ClearGroundShown) -> None:
        self._shown = shown
        self.picture = StillPicture()
        self._of: ClearGround | None = None
        self._pieces: tuple[tuple[Outline, ...], ...] = ()

    def paint(
        self, painter: QPainter, view: View, ratio: float, resting: bool, make: Callable[[View], PlanView]
    ) -> None:
        """Lay the hatch over the ground."""
        ground = self._shown.ground
        if ground is None:
            self.picture.forget()
            return
        stale = ground is not self._of or self.picture.empty
        if stale or (resting and not self.picture.fits(view)):
            self._of = ground
            self._pieces = pieces = ground.pieces()
            self.picture.renew(view, ratio, lambda p, wide: _draw(p, make(wide), pieces))
        self.picture.show(painter, view)
        self._show_anchor(painter, view)

    def reveal(self, block: QRect, shown: PlanView) -> None:
        """Paint a block of the picture that a pan brought into view; its words come at rest."""
        self.picture.patch(QRegion(block), lambda painter: _hatch(painter, shown, self._pieces))

    def _show_anchor(self, painter: QPainter, view: View) -> None:
        """A cross at the middle of things dragged together: the hatch says where that may come to lie."""
        anchor = self._shown.anchor
        if anchor is None:
            return
        place = view.to_pixels(anchor)
        painter.setPen(pen("leaf", 2.0))
        for x, y in ((_CROSS, 0.0), (0.0, _CROSS)):
            painter.drawLine(QLineF(place.x() - x, place.y() - y, place.x() + x, place.y() + y))


def _draw(painter: QPainter, view: PlanView, pieces: tuple[tuple[Outline, ...], ...]) -> None:
    from yardplan.drawing.partners import name_clear_ground

    name_clear_ground(painter, _hatch(painter, view, pieces))


def _hatch(painter: QPainter, view: PlanView, pieces: tuple[tuple[Outline, ...], ...]) -> PlanView:
    from yardplan.drawing.partners import hatch_clear_ground

    shown = evolve(view, clear_ground=pieces)
    hatch_clear_ground(painter, shown)
    # Names under the hatch could not be read. Taken off again, not kept off: a painter held off hundreds of
    # boxes takes ten times as long.
    painter.setCompositionMode(QPainter.CompositionMode.CompositionMode_Clear)
    for box in view.keep_clear:
        painter.fillRect(box.toAlignedRect(), Qt.GlobalColor.transparent)
    painter.setCompositionMode(QPainter.CompositionMode.CompositionMode_SourceOver)
    return shown
