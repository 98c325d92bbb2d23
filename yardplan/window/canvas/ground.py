"""The picture of all that stays: ground, shadows, plants, labels; mended where a thing comes or goes.

Painting a full yard takes many frames' time, so a press and a release mend only the places concerned. Labels
keep their places meanwhile; they are arranged anew when the hand rests.
"""

from __future__ import annotations

from collections.abc import Callable, Collection, Iterable
from typing import TYPE_CHECKING

import numpy as np
from attrs import evolve
from numpy.typing import NDArray
from PySide6.QtCore import QPointF, QRect, QRectF
from PySide6.QtGui import QPainter, QRegion

from yardplan.drawing.furniture import draw_grid
from yardplan.drawing.style import colour
from yardplan.drawing.view import PlanView
from yardplan.window.canvas.boxes import Boxes
from yardplan.window.canvas.pictures import StillPicture
from yardplan.window.canvas.shade import Shade, ground_under
from yardplan.window.canvas.view import Bounds, View

if TYPE_CHECKING:
    from yardplan.drawing.ground_labels import Label

#: Ink of a symbol reaches so far beyond its box, pixels.
_BEYOND = 8.0
#: So few labels are not sorted out before they are drawn.
_FEW = 40
#: Above so many places to mend everything is painted again.
_MANY = 60

MakeView = Callable[[View], PlanView]


class GroundPicture:
    """Kept in step by `touch` (things changed) and `set_live` (things taken up or put down)."""

    def __init__(self, shade: Shade) -> None:
        self.picture = StillPicture(colour("paper"))
        #: What stands on the ground, apart from it while light or shadows change between the two.
        self.top = StillPicture()
        self.parted = False
        self.shade = shade
        self._live: frozenset[str] = frozenset()
        self._labels: tuple[Label, ...] = ()
        self._label_boxes: NDArray[np.float64] = np.empty((0, 4))
        #: Boxes of all labels in their order, as they are tested for being seen.
        self._upright: NDArray[np.float64] = np.empty((0, 4))
        self._boxes = Boxes()
        self._places: list[Bounds] = []
        self._label_places: list[QRectF] = []
        self._again: set[str] = set()
        #: True when labels keep places that a new arrangement might better.
        self.unsettled = False

    def forget(self) -> None:
        """Too much changed: paint all of it again."""
        self.picture.forget()
        self.top.forget()

    def rearrange(self) -> None:
        """Paint all of it again with labels in their best places; nothing else changed."""
        self.picture.forget(behind=False)
        self.top.forget()

    def part(self, parted: bool) -> None:
        """Keep what stands on the ground in a picture of its own, or all in one, which is shown faster."""
        if parted != self.parted:
            self.parted = parted
            self.forget()

    def set_live(self, live: frozenset[str]) -> None:
        """Things taken up leave the picture, things put down come back."""
        changed = live ^ self._live
        self._live = live
        if changed:
            self._mark(changed)

    @property
    def live(self) -> frozenset[str]:
        """What is taken up and not in the picture."""
        return self._live

    def touch(self, ids: Collection[str]) -> None:
        """Things that stay in the picture moved or changed."""
        still = frozenset(ids) - self._live
        if still:
            self._mark(still)

    def _mark(self, ids: Collection[str]) -> None:
        """What is drawn of these things now goes; what is to be drawn is found when it is painted."""
        self._again |= set(ids)
        self._places += self._boxes.of(ids)
        self._places += self.shade.boxes(ids)
        self._label_places += [label.box for label in self._labels if label.thing in ids]

    def bring_up(self, view: View, ratio: float, make: MakeView) -> None:
        """Make the picture right for this view."""
        if self.picture.fits(view) and not self._again:
            return
        if self.picture.fits(view) and len(self._again) <= _MANY:
            self._mend(make(self.picture.view))
            return
        self.picture.renew(view, ratio, lambda painter, wide: self._paint_all(painter, make(wide)))
        if self.parted:
            self.top.renew(view, ratio, lambda p, wide: self._paint_top(p, self._still(make(wide))))

    def _paint_all(self, painter: QPainter, shown: PlanView) -> None:
        if not shown.yard.lot and next(iter(shown.yard.things()), None) is None:
            # An empty sheet: the drawing office need not be loaded for its dots.
            if shown.layers.grid:
                draw_grid(painter, shown)
            self._keep(())
            self._done()
            return
        from yardplan.drawing.labels import arranged

        shown = self._still(shown)
        self._boxes.follow(shown)
        self._keep(arranged(shown))
        self._paint(painter, shown)
        self._done()
        self.unsettled = False

    def _mend(self, shown: PlanView) -> None:
        from yardplan.drawing.labels import arrange

        shown = evolve(shown, without=self._live)
        again = frozenset(self._again)
        self._boxes.follow(shown)
        back = again - self._live
        kept = tuple(label for label in self._labels if label.thing not in back)
        new = arrange(evolve(shown, only=back, without=frozenset())) if back else ()
        self._keep((*kept, *new))
        self._places += self._boxes.of(again) + self.shade.boxes(again)
        self._label_places += [label.box for label in new]
        region = self._region(shown)
        part = self._part(shown, QRectF(region.boundingRect()))
        self.picture.patch(region, lambda painter: self._paint(painter, part))
        self.picture.tell_wide(region)
        if self.parted:
            self.top.patch(region, lambda painter: self._paint_top(painter, part))
        self._done()
        self.unsettled = True

    def reveal(self, picture: StillPicture, make: MakeView, block: QRect) -> None:
        """Paint a block of one of its two pictures that a pan brought into view."""
        shown = make(picture.view)
        # Ink of what stands beside the block reaches into it.
        round_it = QRectF(block).adjusted(-_BEYOND, -_BEYOND, _BEYOND, _BEYOND)
        part = self._part(evolve(shown, without=self._live), round_it)
        paint = self._paint_top if picture is self.top else self._paint
        picture.patch(QRegion(block), lambda painter: paint(painter, part))

    def _part(self, shown: PlanView, window: QRectF) -> PlanView:
        """A part of the view of what stays, with the shadows that may fall on it."""
        part = evolve(shown, window=window)
        if self.parted or not shown.layers.shadows:
            return part
        return evolve(part, shadows=self.shade.still_in(self._live, ground_under(shown, window)))

    def _still(self, shown: PlanView) -> PlanView:
        """The view of what stays, with its shadows where they belong to this picture."""
        shown = evolve(shown, without=self._live)
        if self.parted or not shown.layers.shadows:
            return shown
        return evolve(shown, shadows=self.shade.still(self._live))

    def _paint(self, painter: QPainter, shown: PlanView) -> None:
        from yardplan.drawing.painter import draw_flat, draw_ground

        if self.parted:
            draw_flat(painter, shown)
            return
        draw_ground(painter, shown)
        self._paint_plants(painter, shown)

    def _paint_top(self, painter: QPainter, shown: PlanView) -> None:
        from yardplan.drawing.painter import draw_built

        draw_built(painter, shown)
        self._paint_plants(painter, shown)

    def _paint_plants(self, painter: QPainter, shown: PlanView) -> None:
        from yardplan.drawing.labels import draw_arranged
        from yardplan.drawing.painter import draw_plants

        draw_plants(painter, shown)
        if shown.layers.labels:
            draw_arranged(painter, shown, self._labels_in(shown))

    def _labels_in(self, shown: PlanView) -> Iterable[Label]:
        """The labels that may be seen in a view's window."""
        if shown.window is None or len(self._labels) < _FEW:
            return self._labels
        x, y = shown.origin
        wanted = shown.window.translated(-x, -y)
        left, top, wide, high = self._upright.T
        near = (
            (left <= wanted.right()) & (left + wide >= wanted.left())
            & (top <= wanted.bottom()) & (top + high >= wanted.top())
        )
        return [self._labels[number] for number in np.flatnonzero(near).tolist()]

    def _region(self, shown: PlanView) -> QRegion:
        away = QPointF(*shown.origin)
        rects = [box.translated(away) for box in self._label_places]
        rects += [QRectF(shown.at((a, d)), shown.at((c, b))) for a, b, c, d in self._places]
        region = QRegion()
        for rect in rects:
            region = region.united(rect.adjusted(-_BEYOND, -_BEYOND, _BEYOND, _BEYOND).toAlignedRect())
        return region

    def _keep(self, labels: tuple[Label, ...]) -> None:
        self._labels = labels
        boxes = [label.box.getRect() for label in labels if not label.turned]
        self._label_boxes = np.array(boxes, dtype=float).reshape(-1, 4)
        everyone = [label.box.getRect() for label in labels]
        self._upright = np.array(everyone, dtype=float).reshape(-1, 4)

    def _done(self) -> None:
        self._again, self._places, self._label_places = set(), [], []

    @property
    def labels(self) -> tuple[Label, ...]:
        """The labels shown; the same object while none of them changes."""
        return self._labels

    def words_near(self, shown: PlanView, area: QRectF) -> list[QRectF]:
        """Boxes of the labels that stand in an area of the device, for other words to keep clear of."""
        left, top, wide, high = self._label_boxes.T
        x, y = shown.origin
        near = (
            (left + x <= area.right()) & (left + wide + x >= area.left())
            & (top + y <= area.bottom()) & (top + high + y >= area.top())
        )
        return [QRectF(a + x, b + y, c, d) for a, b, c, d in self._label_boxes[near].tolist()]
