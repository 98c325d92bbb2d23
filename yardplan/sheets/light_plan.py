"""The light on a plan on paper: its tones and lines, and the legend in the corner that hides least."""

from __future__ import annotations

from attrs import evolve, frozen
from PySide6.QtCore import QRectF
from PySide6.QtGui import QPainter

from yardplan.drawing.corners import freest
from yardplan.drawing.light_legend import TITLE, draw_light_legend, legend_size
from yardplan.drawing.view import PlanView
from yardplan.sun.light import GroundField

#: From the field's edges to the legend, and room left for the north arrow above it, style units.
_INSET, _UNDER_NORTH = 12.0, 110.0


@frozen(kw_only=True, eq=False)
class PaperLight:
    """The light to lay over a plan; `title` and `note` (lines) head and end its legend."""

    field: GroundField
    title: str = TITLE
    note: str = ""


def lit_view(view: PlanView, field: QRectF, light: PaperLight | None) -> PlanView:
    """The view with the light over its ground, where there is any; no words under the legend."""
    if light is None:
        return view
    lit = evolve(view, light=light.field, layers=evolve(view.layers, light=True))
    return evolve(lit, keep_clear=(*view.keep_clear, legend_box(lit, field, light)))


def legend_box(view: PlanView, field: QRectF, light: PaperLight) -> QRectF:
    """Where the legend lies in the field, device pixels."""
    wide, high = legend_size(view, light.note, measure=light.field.measure, title=light.title)
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


def draw_legend_on(painter: QPainter, view: PlanView, field: QRectF, light: PaperLight) -> None:
    """Draw the legend in its corner."""
    corner = legend_box(view, field, light).topLeft()
    draw_light_legend(
        painter, view, corner, light.note, measure=light.field.measure, title=light.title
    )
