"""One frame of a drag on a full yard: near checks, painting, both, measured on one core."""

from __future__ import annotations

import gc
import statistics
import time

import pytest
from support.builders import plant, yard_of

from yardplan.window.canvas.canvas import Canvas
from yardplan.window.open_yard import OpenYard
from yardplan.window.tools.event import Pointer

VARIETIES = (
    "apple:Liberty", "apple:Akane", "apple:Fiesta", "apple:Topaz", "european pear:Harrow Delight",
    "tart cherry:Meteor", "apple:Bisbee", "european plum:Mount Royal",
)
#: Metres between plants: an orchard at its usual distances.
APART = 6.0
FRAMES = 60


def orchard(count: int):
    side = round(count**0.5)
    plants = [
        plant(f"A{n}", VARIETIES[n % len(VARIETIES)], (3 + n % side * APART, 3 + n // side * APART))
        for n in range(count)
    ]
    wide = side * APART + 6
    return yard_of(*plants, width=wide, depth=count / side * APART + 6)


def drag_frames(canvas: Canvas, key: str) -> tuple[list[float], list[float]]:
    """Drag one plant over the yard; processor milliseconds a frame for what follows it and to paint."""
    start = canvas.open_yard.yard.find(key).place
    pixel = 1 / canvas.view.scale
    canvas.tool.press(Pointer(kind="press", place=start, dragging=True, pixel=pixel))
    follow, paint = [], []
    for step in range(FRAMES):
        place = (start[0] + 0.5 + step * 0.11, start[1] + step * 0.1)
        began = time.thread_time()
        canvas.tool.move(Pointer(kind="move", place=place, dragging=True, pixel=pixel, alt=True))
        canvas._after_gesture()
        followed = time.thread_time()
        canvas.repaint()
        follow.append((followed - began) * 1e3)
        paint.append((time.thread_time() - followed) * 1e3)
    canvas.tool.cancel()
    return follow[3:], paint[3:]


#: Bars of follow and paint together, milliseconds at the 95th percentile, by the number of plants.
BARS = {500: 8.0, 5000: 16.0}


@pytest.mark.parametrize("count", BARS)
def test_a_frame_of_a_drag(qtbot, benchmark, count):
    yard = OpenYard(orchard(count))
    canvas = Canvas(yard)
    qtbot.addWidget(canvas)
    canvas.resize(1600, 1000)
    with qtbot.waitExposed(canvas):
        canvas.show()
    qtbot.waitUntil(lambda: canvas.scene.ground.picture.painted > 0)
    canvas.fit()
    canvas.repaint()
    yard.checks.stop()
    gc.collect()
    gc.freeze()
    follow, paint = drag_frames(canvas, f"A{count // 2}")
    benchmark.pedantic(canvas.repaint, rounds=5)
    yard.close()
    gc.unfreeze()
    assert canvas.scene.ground.picture.painted
    both = sorted(f + p for f, p in zip(follow, paint, strict=True))
    benchmark.extra_info.update(
        follow_ms=round(statistics.median(follow), 1), paint_ms=round(statistics.median(paint), 1),
        together_ms=round(statistics.median(both), 1), p95_ms=round(both[int(len(both) * 0.95)], 1),
        bar_p95_ms=BARS[count],
    )
