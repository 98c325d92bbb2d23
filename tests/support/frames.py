"""For benchmarks of the hand: a full orchard, pointer events as they come, what many frames took."""

from __future__ import annotations

import statistics
from collections.abc import Sequence

from PySide6.QtCore import QEvent, QPointF, Qt
from PySide6.QtGui import QMouseEvent
from PySide6.QtWidgets import QApplication

from support.builders import plant, yard_of
from yardplan.window.canvas.canvas import Canvas
from yardplan.yard.yard import Yard

VARIETIES = (
    "apple:Liberty", "apple:Akane", "apple:Fiesta", "apple:Topaz", "european pear:Harrow Delight",
    "tart cherry:Meteor", "apple:Bisbee", "european plum:Mount Royal",
)
#: Metres between plants: an orchard at its usual distances.
APART = 6.0


def orchard(count: int) -> Yard:
    """A square of plants of eight varieties."""
    side = round(count**0.5)
    plants = [
        plant(f"A{n}", VARIETIES[n % len(VARIETIES)], (3 + n % side * APART, 3 + n // side * APART))
        for n in range(count)
    ]
    wide = side * APART + 6
    return yard_of(*plants, width=wide, depth=count / side * APART + 6)


def mouse(canvas: Canvas, kind: QEvent.Type, place: QPointF, button: Qt.MouseButton) -> None:
    """Send a pointer event; Alt suspends snapping."""
    held = Qt.MouseButton.NoButton if kind == QEvent.Type.MouseButtonRelease else button
    keys = Qt.KeyboardModifier.AltModifier
    QApplication.sendEvent(canvas, QMouseEvent(kind, place, canvas.mapToGlobal(place), button, held, keys))


def told(name: str, taken: Sequence[float]) -> dict[str, float]:
    """Median, 95th percentile, least and most."""
    ordered = sorted(taken)
    return {
        f"{name}_ms": round(statistics.median(ordered), 1),
        f"{name}_p95_ms": round(ordered[int(len(ordered) * 0.95)], 1),
        f"{name}_least_ms": round(ordered[0], 1), f"{name}_most_ms": round(ordered[-1], 1),
    }
