"""Where there is still room: boxes and discs filed by grid cell, so that each question looks at a few."""

from __future__ import annotations

import math
from collections import defaultdict
from collections.abc import Iterable, Iterator

import numpy as np
from numpy.typing import NDArray
from PySide6.QtCore import QPointF, QRectF

Disc = tuple[float, float, float, str]
#: Boxes as rows: left, top, width, height.
Boxes = NDArray[np.float64]


class Boxed:
    """Boxes that are only read: a question looks at all of them at once, and none has to be filed."""

    def __init__(self, boxes: Iterable[QRectF]) -> None:
        table = np.array([box.getRect() for box in boxes], dtype=float).reshape(-1, 4)
        self._left, self._top = table[:, 0], table[:, 1]
        self._right, self._bottom = self._left + table[:, 2], self._top + table[:, 3]

    def free_of_words(self, box: QRectF) -> bool:
        """True when no words stand in the box."""
        meets = (
            (self._left < box.right()) & (self._right > box.left())
            & (self._top < box.bottom()) & (self._bottom > box.top())
        )
        return not meets.any()

    def free(self, boxes: Boxes) -> NDArray[np.bool_]:
        """Which of many boxes no words stand in."""
        left, top, wide, high = boxes.T[:, :, None]
        meets = (
            (self._left < left + wide) & (self._right > left)
            & (self._top < top + high) & (self._bottom > top)
        )
        free: NDArray[np.bool_] = ~meets.any(axis=1)
        return free


class Room:
    """Room left on the device: a crowd kept from before, shifted by an offset, and boxes taken since.

    `clear` holds device boxes that are kept clear; it is only read, so that many rooms can share it.
    """

    def __init__(self, under: Crowd, offset: tuple[float, float], clear: Boxed | None = None) -> None:
        self._under, self._offset, self._clear = under, offset, clear
        self._own: list[QRectF] = []

    def free(self, box: QRectF) -> bool:
        """True when no words stand in a device box."""
        if any(box.intersects(other) for other in self._own):
            return False
        if self._clear is not None and not self._clear.free_of_words(box):
            return False
        return self._under.free_of_words(box.translated(-self._offset[0], -self._offset[1]))

    def free_among(self, boxes: Boxes) -> Iterator[QRectF]:
        """Those of many device boxes in which no words stand, in their order."""
        for _, box in self.numbered_free(np.arange(len(boxes)), boxes):
            yield box

    def numbered_free(
        self, numbers: NDArray[np.intp], boxes: Boxes
    ) -> Iterator[tuple[int, QRectF]]:
        """Those of many device boxes in which no words stand, each with its number."""
        free = Boxed(self._own).free(boxes) if self._own else np.ones(len(boxes), dtype=bool)
        if self._clear is not None:
            free &= self._clear.free(boxes)
        x, y = self._offset
        for number, (left, top, wide, high) in zip(numbers[free].tolist(), boxes[free].tolist(), strict=True):
            if self._under.free_of_words(QRectF(left - x, top - y, wide, high)):
                yield number, QRectF(left, top, wide, high)

    def free_of_crowns(self, box: QRectF) -> bool:
        """True when no crown reaches into a device box."""
        return self._under.free_of_crowns(box.translated(-self._offset[0], -self._offset[1]))

    def gaps(self, start: QPointF, end: QPointF, margin: float = 2.0) -> list[tuple[QPointF, QPointF]]:
        """The pieces of a device line that lie `margin` pixels off all words that stood before."""
        away = QPointF(*self._offset)
        spans = self._under.covered(start - away, end - away, margin)
        pieces, done = [], 0.0
        for low, high in [*sorted(spans), (1.0, 1.0)]:
            if low > done:
                pieces.append((start + (end - start) * done, start + (end - start) * low))
            done = max(done, high)
        return pieces

    def take(self, box: QRectF) -> None:
        """Note that words stand in a device box."""
        self._own.append(box)


class Crowd:
    """Boxes taken by words, and discs taken by crowns, in device pixels."""

    def __init__(self, cell: float = 64.0) -> None:
        self._cell = cell
        self._boxes: dict[tuple[int, int], list[QRectF]] = defaultdict(list)
        self._discs: dict[tuple[int, int], list[Disc]] = defaultdict(list)

    def _cells(self, left: float, top: float, right: float, bottom: float) -> list[tuple[int, int]]:
        c = self._cell
        columns = range(math.floor(left / c), math.floor(right / c) + 1)
        lines = range(math.floor(top / c), math.floor(bottom / c) + 1)
        return [(i, j) for i in columns for j in lines]

    def take(self, box: QRectF) -> None:
        """Note that words stand here."""
        for cell in self._cells(box.left(), box.top(), box.right(), box.bottom()):
            self._boxes[cell].append(box)

    def stand(self, x: float, y: float, radius: float, owner: str) -> None:
        """Note that a crown stands here."""
        for cell in self._cells(x - radius, y - radius, x + radius, y + radius):
            self._discs[cell].append((x, y, radius, owner))

    def covered(self, start: QPointF, end: QPointF, margin: float) -> list[tuple[float, float]]:
        """The parts of a line, as shares of its length, that boxes grown by `margin` cover."""
        around = QRectF(start, end).normalized().adjusted(-1, -1, 1, 1)
        found: list[tuple[float, float]] = []
        seen: set[int] = set()
        for cell in self._cells(around.left(), around.top(), around.right(), around.bottom()):
            for box in self._boxes.get(cell, ()):
                if id(box) not in seen:
                    seen.add(id(box))
                    span = _clipped(start, end, box.adjusted(-margin, -margin, margin, margin))
                    found += [span] if span is not None else []
        return found

    def free_of_words(self, box: QRectF) -> bool:
        """True when no words stand in the box."""
        cells = self._cells(box.left(), box.top(), box.right(), box.bottom())
        return not any(box.intersects(other) for cell in cells for other in self._boxes.get(cell, ()))

    def free_of_crowns(self, box: QRectF, owner: str = "") -> bool:
        """True when no crown but the owner's reaches into the box."""
        left, top, right, bottom = box.left(), box.top(), box.right(), box.bottom()
        for cell in self._cells(left, top, right, bottom):
            for x, y, radius, other in self._discs.get(cell, ()):
                dx = x - max(left, min(x, right))
                dy = y - max(top, min(y, bottom))
                if other != owner and dx * dx + dy * dy < radius * radius:
                    return False
        return True


def _clipped(start: QPointF, end: QPointF, box: QRectF) -> tuple[float, float] | None:
    """From where to where, as shares of its length, a line lies in a box (clipping by Liang and Barsky)."""
    low, high = 0.0, 1.0
    for at, step, least, most in (
        (start.x(), end.x() - start.x(), box.left(), box.right()),
        (start.y(), end.y() - start.y(), box.top(), box.bottom()),
    ):
        if step == 0.0:
            if not least <= at <= most:
                return None
            continue
        one, other = sorted(((least - at) / step, (most - at) / step))
        low, high = max(low, one), min(high, other)
    return (low, high) if low < high else None
