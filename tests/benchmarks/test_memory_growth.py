"""A thousand gestures on the canvas: what they leave behind, in blocks and in megabytes of the process."""

from __future__ import annotations

import gc
import resource
import sys
from pathlib import Path

from PySide6.QtCore import QEvent, QPointF, Qt
from PySide6.QtGui import QMouseEvent
from PySide6.QtWidgets import QApplication
from support.builders import plant, yard_of

from yardplan.window.canvas.canvas import Canvas
from yardplan.window.open_yard import OpenYard

_LEFT, _NONE = Qt.MouseButton.LeftButton, Qt.MouseButton.NoButton
WARM, QUARTER = 60, 250


def _send(canvas: Canvas, kind: QEvent.Type, place: tuple[float, float], held: Qt.MouseButton) -> None:
    at = QPointF(canvas.view.to_pixels(place))
    button = _NONE if kind == QEvent.Type.MouseMove else _LEFT
    keys = Qt.KeyboardModifier.NoModifier
    QApplication.sendEvent(canvas, QMouseEvent(kind, at, canvas.mapToGlobal(at), button, held, keys))


def _gestures(canvas: Canvas, count: int) -> None:
    """A plant is dragged there and back, let go of and put into the background, painted at each step."""
    press, move, release = (
        QEvent.Type.MouseButtonPress, QEvent.Type.MouseMove, QEvent.Type.MouseButtonRelease,
    )
    for n in range(count):
        start, end = ((5.0, 5.0), (8.0, 7.0)) if n % 2 == 0 else ((8.0, 7.0), (5.0, 5.0))
        _send(canvas, press, start, _LEFT)
        for place in ((6.5, 6.0), end):
            _send(canvas, move, place, _LEFT)
            canvas.repaint()
        _send(canvas, release, end, _NONE)
        _send(canvas, press, (14.0, 17.0), _LEFT)
        _send(canvas, release, (14.0, 17.0), _NONE)
        canvas.repaint()
        canvas.open_yard.undo_stack.clear()
        QApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)


def _megabytes() -> float:
    """Of the process now, where the system tells it; else the most it had."""
    told = Path("/proc/self/statm")
    if told.exists():
        return int(told.read_text().split()[1]) * resource.getpagesize() / 1e6
    return resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1e3


def test_a_thousand_gestures(qtbot, benchmark):
    yard = OpenYard(
        yard_of(plant("A1", "apple:Liberty", (5, 5)), plant("A2", "apple:Topaz", (20, 12)))
    )
    canvas = Canvas(yard)
    qtbot.addWidget(canvas)
    canvas.resize(480, 360)
    with qtbot.waitExposed(canvas):
        canvas.show()
    canvas.fit()

    def held() -> tuple[int, float]:
        qtbot.waitUntil(lambda: not yard.checks.busy, timeout=60_000)
        gc.collect()
        return sys.getallocatedblocks(), _megabytes()

    _gestures(canvas, WARM)
    told = [held()]
    benchmark.pedantic(_gestures, (canvas, QUARTER), rounds=1)
    told.append(held())
    for _ in range(3):
        _gestures(canvas, QUARTER)
        told.append(held())
    yard.close()
    # What is loaded and kept for the first time falls into the first quarter: the others tell of growth.
    (blocks, size), (more, larger) = told[1], told[-1]
    benchmark.extra_info.update(
        gestures=4 * QUARTER, blocks_a_gesture=round((more - blocks) / (3 * QUARTER), 2),
        bar_blocks_a_gesture=0.5, growth_mb=round(larger - size, 1),
        mb_by_quarter=[round(size, 1) for _, size in told],
    )
