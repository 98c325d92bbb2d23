"""Shadows between the ground and what stands on it, while light or the hour changes there."""

from __future__ import annotations

from collections.abc import Callable

from attrs import evolve
from PySide6.QtCore import QRect
from PySide6.QtGui import QPainter, QRegion

from yardplan.drawing.view import PlanView
from yardplan.window.canvas.pictures import StillPicture
from yardplan.window.canvas.shade import Shade, ground_under
from yardplan.window.canvas.view import View
from yardplan.yard.ground import Outline

MakeView = Callable[[View], PlanView]


class ShadowPicture:
    """Shadows of what is not dragged stay in a picture; those of what is are painted each frame."""

    def __init__(self, shade: Shade) -> None:
        self._shade = shade
        self.picture = StillPicture()
        self._held: list[tuple[Outline, ...]] = []

    def forget(self) -> None:
        """The picture has to be painted again."""
        self.picture.forget()

    def paint_moving(self, painter: QPainter, shown: PlanView) -> None:
        """All shadows at once: the hour changes and none stays."""
        from yardplan.drawing.shade import draw_shadows

        draw_shadows(painter, evolve(shown, shadows=self._shade.still(frozenset())))

    def paint(
        self, painter: QPainter, view: View, shown: PlanView, live: frozenset[str], resting: bool,
        make: MakeView,
    ) -> None:
        """The kept picture, and on it the shadows of what is dragged."""
        from yardplan.drawing.shade import draw_shadows

        self._bring_up(view, shown.ratio, live, resting, make)
        self.picture.show(painter, view)
        if live:
            draw_shadows(painter, evolve(shown, shadows=self._shade.moving(live)))

    def reveal(self, block: QRect, shown: PlanView, live: frozenset[str]) -> None:
        """Paint a block of the picture that a pan brought into view; `shown` looks at that."""
        from yardplan.drawing.shade import draw_shadows

        assert shown.window is not None
        part = evolve(shown, shadows=self._shade.still_in(live, ground_under(shown, shown.window)))
        self.picture.patch(QRegion(block), lambda painter: draw_shadows(painter, part))

    def _bring_up(
        self, view: View, ratio: float, live: frozenset[str], resting: bool, make: MakeView
    ) -> None:
        from yardplan.drawing.shade import draw_shadows

        cast = self._shade.things(live)
        serves = self.picture.fits(view) or not (resting or self.picture.empty)
        if cast == self._held and serves:
            return
        self._held = cast
        rings = tuple(ring for rings in cast for ring in rings)
        self.picture.renew(view, ratio, lambda p, wide: draw_shadows(p, evolve(make(wide), shadows=rings)))
