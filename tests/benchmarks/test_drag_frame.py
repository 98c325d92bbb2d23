"""Frames of a drag, a pan and a zoom on a full yard: from the event to the painted sheet, on one core.

Real pointer and wheel events go to the canvas; a frame is what the window's thread works until the sheet is
painted: tool, trial, near checks, marks, words, painting. Light and slow checks work beside it and are not
counted. The time of a million additions stands beside the figures: machines, and one machine at two hours,
differ by a factor of two.
"""

from __future__ import annotations

import gc
import os
import time
from collections.abc import Callable

import pytest
from attrs import evolve
from PySide6.QtCore import QEvent, QPoint, QPointF, Qt
from PySide6.QtGui import QPaintEvent, QWheelEvent
from PySide6.QtWidgets import QApplication
from support.frames import mouse, orchard, told

from yardplan.window.canvas.canvas import Canvas
from yardplan.window.open_yard import OpenYard

FRAMES = 90
#: Bars of a whole frame, milliseconds at the 95th percentile, by the number of plants.
BARS = {500: 8.0, 5000: 16.0}
_LEFT, _MIDDLE, _NONE = Qt.MouseButton.LeftButton, Qt.MouseButton.MiddleButton, Qt.MouseButton.NoButton


class Watched(Canvas):
    """Counts the times it was painted."""

    painted = 0

    def paintEvent(self, event: QPaintEvent) -> None:
        super().paintEvent(event)
        self.painted += 1


def wheel(canvas: Canvas, place: QPointF, notches: int) -> None:
    turn = QPoint(0, 120 * notches)
    QApplication.sendEvent(canvas, QWheelEvent(
        place, canvas.mapToGlobal(place), QPoint(), turn, _NONE, Qt.KeyboardModifier.ControlModifier,
        Qt.ScrollPhase.NoScrollPhase, False,
    ))


def frames(canvas: Watched, step: Callable[[int], None], count: int = FRAMES) -> list[float]:
    """Processor milliseconds of the window's thread for each step until it is painted."""
    taken = []
    for number in range(count):
        before = canvas.painted
        began = time.thread_time()
        step(number)
        while canvas.painted == before:
            QApplication.processEvents()
        taken.append((time.thread_time() - began) * 1e3)
    return taken


def million_additions() -> float:
    """Milliseconds: how fast this core is just now."""
    began, total = time.thread_time(), 0
    for number in range(1_000_000):
        total += number
    return (time.thread_time() - began) * 1e3


@pytest.fixture
def one_core():
    """Keep the process on one core, as the bars have it, where the system lets it."""
    if not hasattr(os, "sched_setaffinity"):
        yield
        return
    before = os.sched_getaffinity(0)
    os.sched_setaffinity(0, {max(before)})
    yield
    os.sched_setaffinity(0, before)


@pytest.fixture(params=list(BARS))
def canvas(qtbot, request, one_core):
    yard = OpenYard(orchard(request.param))
    made = Watched(yard)
    qtbot.addWidget(made)
    made.resize(1600, 1000)
    with qtbot.waitExposed(made):
        made.show()
    made.fit()
    qtbot.waitUntil(lambda: made.scene.ground.picture.painted > 0)
    # The light of thousands of plants takes minutes; frames do not wait for it.
    yard.checks.stop()
    made.repaint()
    gc.collect()
    gc.freeze()
    # As in the program: the collector runs between gestures, on the window's thread.
    gc.disable()
    yield made
    yard.close()
    gc.enable()
    gc.unfreeze()


def test_a_frame_of_a_drag(canvas, benchmark):
    count = len(canvas.open_yard.yard.plantings)
    start = canvas.view.to_pixels(canvas.open_yard.yard.find(f"A{count // 2}").place)
    step = QPointF(0.11, -0.1) * canvas.view.scale
    mouse(canvas, QEvent.Type.MouseButtonPress, start, _LEFT)
    # Far enough to be a drag: the press takes the plant out of the picture, once.
    begin = frames(
        canvas, lambda n: mouse(canvas, QEvent.Type.MouseMove, start + step * (9 + n * 9), _LEFT), 4
    )
    taken = frames(canvas, lambda n: mouse(canvas, QEvent.Type.MouseMove, start + step * (40 + n), _LEFT))
    mouse(canvas, QEvent.Type.MouseButtonRelease, start, _LEFT)
    benchmark.pedantic(canvas.repaint, rounds=5)
    benchmark.extra_info.update(
        told("drag", taken), begin_ms=[round(one, 1) for one in begin],
        bar_p95_ms=BARS[count], million_additions_ms=round(million_additions(), 1),
    )


def test_a_frame_of_a_pan(canvas, benchmark):
    count, middle = len(canvas.open_yard.yard.plantings), QPointF(800, 500)
    mouse(canvas, QEvent.Type.MouseButtonPress, middle, _MIDDLE)
    taken = frames(
        canvas, lambda n: mouse(canvas, QEvent.Type.MouseMove, middle + QPointF(7.0, 4.0) * (n + 1), _MIDDLE)
    )
    mouse(canvas, QEvent.Type.MouseButtonRelease, middle, _MIDDLE)
    benchmark.pedantic(canvas.repaint, rounds=3)
    benchmark.extra_info.update(
        told("pan", taken), bar_p95_ms=BARS[count], million_additions_ms=round(million_additions(), 1),
    )


def bare_share(canvas: Canvas) -> float:
    """How much of the window shows ground that is not painted yet."""
    picture = canvas.scene.ground.picture
    window = picture.window_in(canvas.view).toAlignedRect()
    bare = sum(rect.width() * rect.height() for rect in picture.bare.intersected(window))
    return bare / (window.width() * window.height())


@pytest.mark.parametrize("step", [36.0, 120.0])
def test_a_frame_of_a_long_pan(canvas, benchmark, step):
    """Two windows to the right and one down, over ground full of plants: at a steady hand and at a fling."""
    count, middle = len(canvas.open_yard.yard.plantings), QPointF(800, 500)
    left, _, _, top = canvas.scene.extent()
    canvas.set_view(evolve(canvas.view.at_scale(25.0), centre=(left + 30.0, top - 20.0)))
    canvas.repaint()
    bare: list[float] = []

    def pan(number: int) -> None:
        bare.append(bare_share(canvas))
        place = middle - QPointF(step, 0.3 * step) * (number + 1)
        mouse(canvas, QEvent.Type.MouseMove, place, _MIDDLE)

    mouse(canvas, QEvent.Type.MouseButtonPress, middle, _MIDDLE)
    taken = frames(canvas, pan, round(3200 / step))
    mouse(canvas, QEvent.Type.MouseButtonRelease, middle, _MIDDLE)
    benchmark.pedantic(canvas.repaint, rounds=3)
    benchmark.extra_info.update(
        told("long_pan", taken), bar_p95_ms=BARS[count], most_bare_share=round(max(bare), 3),
        million_additions_ms=round(million_additions(), 1),
    )


def test_a_frame_of_a_zoom(canvas, benchmark):
    count, place = len(canvas.open_yard.yard.plantings), QPointF(700, 400)
    taken = frames(canvas, lambda n: wheel(canvas, place, 1 if n % 12 < 6 else -1), 48)
    benchmark.pedantic(canvas.repaint, rounds=3)
    benchmark.extra_info.update(
        told("zoom", taken), bar_p95_ms=BARS[count], million_additions_ms=round(million_additions(), 1),
    )
