"""Many gestures leave no more behind than their steps: no growth of memory.

Blocks that Python holds are counted, which costs nothing; a thousand gestures are in tests/benchmarks.
"""

import gc
import sys

from PySide6.QtCore import QEvent
from PySide6.QtWidgets import QApplication
from support.builders import plant, yard_of
from support.window_hands import click, drag

YARD = yard_of(plant("A1", "apple:Liberty", (5, 5)), plant("A2", "apple:Topaz", (20, 12)))


def gestures(window, count):
    """Drag a plant there and back, select and drop it again; the steps are forgotten as they come."""
    for n in range(count):
        start, end = ((5, 5), (8, 7)) if n % 2 == 0 else ((8, 7), (5, 5))
        drag(window.canvas, start, ((start[0] + end[0]) / 2, 6), end)
        click(window.canvas, (14, 17))
        window.canvas.repaint()
        window.open_yard.undo_stack.clear()
        # What an event loop does between gestures: parts put away with deleteLater go.
        QApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)


def held(window, qtbot):
    """Blocks held when all work of the last gesture is done: its light and findings count both times."""
    qtbot.waitUntil(lambda: not window.open_yard.checks.busy, timeout=60_000)
    gc.collect()
    return sys.getallocatedblocks()


def test_many_gestures_leave_nothing_behind(make_window, qtbot):
    window = make_window(YARD)
    gestures(window, 40)
    before = held(window, qtbot)
    gestures(window, 80)
    after = held(window, qtbot)
    # Caches fill a little yet. A gesture is seven events: one object kept of each would be above this.
    assert after - before < 80 * 6, f"{(after - before) / 80:.1f} blocks a gesture"
