"""Where there is still room: boxes and discs filed by grid cell, so that each question looks at a few."""

from __future__ import annotations

import math
from collections import defaultdict

from PySide6.QtCore import QRectF

Disc = tuple[float, float, float, str]


class Room:
    """Room left on the device: a crowd kept from before, shifted by an offset, and boxes taken since."""

    def __init__(self, under: Crowd, offset: tuple[float, float]) -> None:
        self._under, self._offset = under, offset
        self._own: list[QRectF] = []

    def free(self, box: QRectF) -> bool:
        """True when no words stand in a device box."""
        if any(box.intersects(other) for other in self._own):
            return False
        return self._under.free_of_words(box.translated(-self._offset[0], -self._offset[1]))

    def free_of_crowns(self, box: QRectF) -> bool:
        """True when no crown reaches into a device box."""
        return self._under.free_of_crowns(box.translated(-self._offset[0], -self._offset[1]))

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
