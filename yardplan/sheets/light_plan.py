"""The light on a plan on paper: its tones and lines, and the legend in the corner that hides least."""

from __future__ import annotations

from attrs import evolve
from PySide6.QtCore import QRectF
from PySide6.QtGui import QPainter

from yardplan.drawing.corners import freest
from yardplan.drawing.light_legend import draw_light_legend, legend_size
from yardplan.drawing.view import PlanView
from yardplan.sun.light import GroundField

#: From the field's edges to the legend, and room left for the north arrow above it, style units.
_INSET, _UNDER_NORTH = 12.0, 110.0


def lit_view(view: PlanView, field: QRectF, light: GroundField | None, note: str) -> PlanView:
    """The view with the light over its ground, where there is any; no words under the legend."""
    if light is None:
        return view
    lit = evolve(view, light=light, layers=evolve(view.layers, light=True))
    return evolve(lit, keep_clear=(*view.keep_clear, legend_box(lit, field, note)))


def legend_box(view: PlanView, field: QRectF, note: str) -> QRectF:
    """Where the legend lies in the field, device pixels."""
    measure = view.light.measure if view.light is not None else "hours"
    wide, high = legend_size(view, note, measure=measure)
    edge = _INSET * view.unit
    left, right = field.left() + edge, field.right() - edge - wide
    top, bottom = field.top() + edge, field.bottom() - edge - high
    boxes = {
        "top left": QRectF(left, top, wide, high),
        "bottom left": QRectF(left, bottom, wide, high),
        "bottom right": QRectF(right, bottom, wide, high),
        "top right": QRectF(right, field.top() + _UNDER_NORTH * view.unit, wide, high),
    }
    return boxes[freest(view, boxes)]


def draw_legend_on(painter: QPainter, view: PlanView, field: QRectF, note: str) -> None:
    """Draw the legend in its corner."""
    if view.light is not None:
        corner = legend_box(view, field, note).topLeft()
        draw_light_legend(painter, view, corner, note, measure=view.light.measure)
