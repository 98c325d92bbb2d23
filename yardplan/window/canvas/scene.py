"""What the canvas paints, layer by layer: the still picture, what is dragged, marks, the tool's overlay."""

from __future__ import annotations

from attrs import evolve
from PySide6.QtCore import QRectF
from PySide6.QtGui import QPainter

from yardplan.drawing.style import colour, pen
from yardplan.drawing.view import Layers, PlanView
from yardplan.window.canvas.overlay_paint import paint_overlay
from yardplan.window.canvas.pictures import StillPicture
from yardplan.window.canvas.view import Bounds, View, bounds_of
from yardplan.window.open_yard import OpenYard
from yardplan.window.tools.desk import Desk
from yardplan.window.tools.tool import Tool
from yardplan.yard.change import Change
from yardplan.yard.edits import points_of
from yardplan.yard.ground import Outline, Point

try:
    from yardplan.drawing import painter as plan
except ImportError:
    from yardplan.window.canvas import sketch as plan

#: The sheet's edge lies so many pixels within the canvas, its frame so many more.
SHEET_INSET, FRAME_INSET = 8, 8
#: Ground shown round everything when the yard is fitted, metres.
_ROUND = 1.5


class Scene:
    """Keeps pictures of what does not change and paints the rest each frame."""

    fit_margin = 56.0

    def __init__(self, open_yard: OpenYard, desk: Desk) -> None:
        self.open_yard, self.desk = open_yard, desk
        self.layers = Layers()
        self.still = StillPicture()
        self._live: frozenset[str] = frozenset()

    # What has to be painted afresh

    def forget(self) -> None:
        """Everything changed."""
        self.still.forget()

    def forget_marks(self) -> None:
        """Findings changed."""

    def follow(self, change: Change, live: frozenset[str]) -> None:
        """The shown yard changed; what only concerns dragged things leaves the still picture alone."""
        self.set_live(live)
        if change.whole or not (change.touched | change.removed) <= self._live:
            self.still.forget()

    def set_live(self, live: frozenset[str]) -> None:
        """Things being dragged are painted apart from the still picture."""
        if live != self._live:
            self._live = live
            self.still.forget()

    # Places

    def extent(self) -> Bounds:
        """All there is, with some ground round it; 30 m by 20 m for an empty yard."""
        yard = self.open_yard.shown_yard
        points: list[Point] = list(yard.lot)
        for thing in yard.things():
            points += points_of(thing)
        box = bounds_of(tuple(points))
        if box is None:
            return (0.0, 0.0, 30.0, 20.0)
        return (box[0] - _ROUND, box[1] - _ROUND, box[2] + _ROUND, box[3] + _ROUND)

    def selected_points(self) -> Outline:
        """Every point of what is selected."""
        yard, chosen = self.open_yard.shown_yard, self.open_yard.selection
        points: list[Point] = list(yard.lot) if "lot" in chosen else []
        for thing in yard.things():
            if thing.id in chosen:
                points += points_of(thing)
        return tuple(points)

    # Painting

    def plan_view(self, view: View, ratio: float) -> PlanView:
        """The drawing's view of the yard for this view of the sheet."""
        yard = self.open_yard
        origin = view.to_pixels((0.0, 0.0))
        return PlanView(
            yard=yard.shown_yard, stand=yard.stand, scale=view.scale, origin=(origin.x(), origin.y()),
            ratio=ratio, window=QRectF(0, 0, view.width, view.height), units=yard.units,
            layers=self.layers, selection=yard.selection, findings=yard.findings,
        )

    def paint(
        self, painter: QPainter, view: View, *, ratio: float, resting: bool, tool: Tool,
        hovered: str | None, focused: bool,
    ) -> None:
        """One frame. `resting`: no pan or zoom is under way, so the still picture is brought up to date."""
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.fillRect(0, 0, view.width, view.height, colour("room"))
        sheet = QRectF(0, 0, view.width, view.height).adjusted(
            SHEET_INSET, SHEET_INSET, -SHEET_INSET, -SHEET_INSET
        )
        painter.fillRect(sheet, colour("paper"))
        painter.save()
        painter.setClipRect(sheet)
        if not self.still.fits(view) and (resting or self.still.empty):
            self.still.renew(view, ratio, lambda p, v: self._paint_still(p, v, ratio))
        self.still.show(painter, view)
        shown = self.plan_view(view, ratio)
        if self._live:
            self._paint_live(painter, shown)
        plan.draw_findings(painter, shown)
        paint_overlay(painter, view, tool.overlay(), self.desk.snapped)
        painter.restore()
        self._paint_frame(painter, sheet, focused)

    def _paint_still(self, painter: QPainter, view: View, ratio: float) -> None:
        shown = evolve(self.plan_view(view, ratio), without=self._live)
        plan.draw_ground(painter, shown)
        plan.draw_plants(painter, shown)
        plan.draw_words(painter, shown)

    def _paint_live(self, painter: QPainter, shown: PlanView) -> None:
        dragged = evolve(shown, only=self._live)
        plan.draw_ground(painter, dragged)
        plan.draw_plants(painter, dragged)
        plan.draw_words(painter, dragged)

    def _paint_frame(self, painter: QPainter, sheet: QRectF, focused: bool) -> None:
        painter.setBrush(colour("paper", 0.0))
        painter.setPen(pen("caution", 2.0) if focused else pen("rule", 1.0))
        painter.drawRect(sheet)
        painter.setPen(pen("ink", 1.0))
        painter.drawRect(sheet.adjusted(FRAME_INSET, FRAME_INSET, -FRAME_INSET, -FRAME_INSET))
