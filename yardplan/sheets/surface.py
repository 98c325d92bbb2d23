"""A page while it is drawn: millimetres to device pixels, and a field that cuts off what runs over it."""

from __future__ import annotations

from collections.abc import Callable
from functools import cached_property

from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QPainter

from yardplan.drawing.style import UNIT_MM
from yardplan.drawing.view import PlanView, bare_view

Draw = Callable[[QPainter], None]


class Surface:
    """Draws one page. `dots` device pixels per millimetre of paper."""

    def __init__(self, painter: QPainter, dots: float) -> None:
        self.painter = painter
        self.dots = dots

    @property
    def unit(self) -> float:
        """Device pixels per style unit."""
        return UNIT_MM * self.dots

    @cached_property
    def lettering(self) -> PlanView:
        """A view of nothing, for words."""
        return bare_view(self.unit, vector=True)

    def rect(self, x: float, y: float, wide: float, high: float) -> QRectF:
        """A box in millimetres from the page's upper left corner, in device pixels."""
        return QRectF(x * self.dots, y * self.dots, wide * self.dots, high * self.dots)

    def point(self, x: float, y: float) -> QPointF:
        """A place in millimetres from the page's upper left corner, in device pixels."""
        return QPointF(x * self.dots, y * self.dots)

    def within(self, field: QRectF, draw: Draw) -> None:
        """Draw something cut off at the edges of a field (device pixels)."""
        self.painter.save()
        self.painter.setClipRect(field)
        draw(self.painter)
        self.painter.restore()
