"""While the sheet is panned: what comes into view is painted in blocks, as many as a frame has time for.

The kept pictures are moved on before the window reaches their edge. What is in sight comes first, then what
lies round it, so that a hand that goes on finds painted ground. At rest all is painted anew.
"""

from __future__ import annotations

import sys
import time
from collections.abc import Callable, Iterator
from functools import partial

from attrs import evolve, frozen
from PySide6.QtCore import QPoint, QRect, QRectF
from PySide6.QtGui import QRegion

from yardplan.drawing.view import PlanView
from yardplan.window.canvas.pictures import StillPicture, rects_of
from yardplan.window.canvas.scene import Scene
from yardplan.window.canvas.view import View

#: A frame paints blocks for so long, seconds; then the hand goes before.
BUDGET = 0.0025
#: Among more plants than these a frame may take longer, for there is more to paint; so may one in which the
#: hand holds still.
_MANY, _BUDGET_OF_MORE = 1000, 0.008
#: A picture is moved on when less than this share of the window's width or height is left beyond its edge.
_AHEAD = 0.1
#: The least and the greatest area of a block, and that of the first, square pixels.
_LEAST, _MOST, _FIRST = 128.0 * 128.0, 512.0 * 512.0, 192.0 * 192.0
#: A block should take about so long, seconds; the next is so many times larger or smaller.
_BLOCK_TIME, _CHANGE = 0.001, 1.3

#: Time the thread itself worked, where the machine tells it finely: another program's turn is not ours.
_clock = time.perf_counter if sys.platform == "win32" else time.thread_time
#: Ink reaches so far beyond what it belongs to, pixels.
_BEYOND = 8.0


@frozen
class _Layer:
    """A kept picture and how a block of it is painted."""

    picture: StillPicture
    paint: Callable[[QRect], None]


class Motion:
    """Keeps the pictures of a scene ahead of the hand; asked once a frame."""

    def __init__(self, scene: Scene) -> None:
        self._scene = scene
        self._area, self._took = _FIRST, _BLOCK_TIME
        self._last, self._still = View(), False

    def step(self, view: View, ratio: float) -> bool:
        """Paint what came into view, as far as the time of one frame goes.

        True when something in sight is still bare: another frame is wanted at once.
        """
        if not self._scene.ground.picture.at_scale(view):
            return False
        until = _clock() + self._budget()
        layers = [layer for layer in self._layers(ratio) if layer.picture.at_scale(view)]
        _follow([layer.picture for layer in layers], view)
        while (found := self._next(layers, view)) is not None:
            self._paint(*found)
            if _clock() + self._took > until:
                break
        return any(_in_sight(layer.picture, view) for layer in layers)

    def _budget(self) -> float:
        more = self._still or len(self._scene.open_yard.shown_yard.plantings) > _MANY
        return _BUDGET_OF_MORE if more else BUDGET

    def pans(self, view: View) -> bool:
        """True where a zoom has ended and the sheet is shifted: it is painted sharp first."""
        before, self._last, self._still = self._last, view, self._last == view
        sharp = self._scene.ground.picture.at_scale(view)
        return not sharp and before.scale == view.scale and before.centre != view.centre

    def _layers(self, ratio: float) -> Iterator[_Layer]:
        """The kept pictures that are in use, from the ground up."""
        scene, ground, calm = self._scene, self._scene.ground, self._scene.calm
        shadows, clear, live = scene.shadows, scene.clear, ground.live

        def make(view: View) -> PlanView:
            return scene.plan_view(view, ratio)

        def part(picture: StillPicture, block: QRect) -> PlanView:
            """The view of a block, told where names stand."""
            area, shown = QRectF(block).adjusted(-_BEYOND, -_BEYOND, _BEYOND, _BEYOND), make(picture.view)
            return evolve(shown, window=area, keep_clear=tuple(ground.words_near(shown, area)))

        yield _Layer(ground.picture, partial(ground.reveal, ground.picture, make))
        if ground.parted and scene.layers.shadows and not scene.shade_moves:
            yield _Layer(
                shadows.picture, lambda block: shadows.reveal(block, part(shadows.picture, block), live)
            )
        if ground.parted:
            yield _Layer(ground.top, partial(ground.reveal, ground.top, make))
        yield _Layer(clear.picture, lambda block: clear.reveal(block, part(clear.picture, block)))
        yield _Layer(calm.picture, lambda block: calm.reveal(_place(calm.picture, block), make))

    def _next(self, layers: list[_Layer], view: View) -> tuple[_Layer, QRect] | None:
        """The next block to paint: one in sight, the ground before its marks; else one beyond the edge."""
        for seen in (True, False):
            for layer in layers:
                bare, window = layer.picture.bare, _window(layer.picture, view)
                wanted = bare.intersected(window) if seen else bare
                if not wanted.isEmpty():
                    return layer, self._block(bare, _nearest(wanted, window.center()), window.center())
        return None

    def _block(self, bare: QRegion, seed: QPoint, middle: QPoint) -> QRect:
        """A piece of what is bare, from a place of it outward, of the size that time allows.

        Of a square and two strips the one that holds most: each block has its price, however small.
        """
        pieces = (bare.intersected(_outward(seed, middle, *size)) for size in _sizes(self._area))
        return max(pieces, key=_area_of).boundingRect()

    def _paint(self, layer: _Layer, block: QRect) -> None:
        """Paint one block; the next is smaller where this one took long."""
        began = _clock()
        layer.paint(block)
        layer.picture.bare = layer.picture.bare.subtracted(QRegion(block))
        # One block held up by something else on the machine does not count in full.
        self._took = (self._took + min(_clock() - began, 3 * self._took)) / 2
        if self._took > 1.5 * _BLOCK_TIME:
            self._area = max(self._area / _CHANGE, _LEAST)
        elif self._took < _BLOCK_TIME:
            self._area = min(self._area * _CHANGE, _MOST)


def _sizes(area: float) -> tuple[tuple[int, int], ...]:
    """A square, a wide and a high strip of an area, pixels."""
    side = round(area**0.5)
    return ((side, side), (4 * side, side // 4), (side // 4, 4 * side))


def _outward(seed: QPoint, middle: QPoint, wide: int, high: int) -> QRect:
    """A rectangle of that size at a place, on the side away from the middle."""
    left = seed.x() if seed.x() >= middle.x() else seed.x() + 1 - wide
    top = seed.y() if seed.y() >= middle.y() else seed.y() + 1 - high
    return QRect(left, top, wide, high)


def _area_of(region: QRegion) -> int:
    return sum(rect.width() * rect.height() for rect in rects_of(region))


def _nearest(region: QRegion, middle: QPoint) -> QPoint:
    """The place of a region nearest the middle, counted along both sides."""
    x, y = middle.x(), middle.y()
    places = (
        QPoint(min(max(x, rect.left()), rect.right()), min(max(y, rect.top()), rect.bottom()))
        for rect in rects_of(region)
    )
    return min(places, key=lambda place: (place - middle).manhattanLength())


def _follow(pictures: list[StillPicture], view: View) -> None:
    """Move pictures on before the window leaves them: one in a frame, and any that it has left."""
    ahead_x, ahead_y = _AHEAD * view.width, _AHEAD * view.height
    moved = False
    for picture in pictures:
        whole, window = QRectF(0, 0, picture.view.width, picture.view.height), picture.window_in(view)
        near = window.adjusted(-ahead_x, -ahead_y, ahead_x, ahead_y)
        if not whole.contains(window) or not (moved or whole.contains(near)):
            picture.carry(view)
            moved = True


def _window(picture: StillPicture, view: View) -> QRect:
    return picture.window_in(view).toAlignedRect()


def _in_sight(picture: StillPicture, view: View) -> bool:
    return not picture.bare.isEmpty() and picture.bare.intersects(_window(picture, view))


def _place(picture: StillPicture, block: QRect) -> tuple[float, float, float, float]:
    """The ground under a block, metres."""
    left, top = picture.view.to_metres(block.left(), block.top())
    right, bottom = picture.view.to_metres(block.left() + block.width(), block.top() + block.height())
    return (left, bottom, right, top)
