"""Frames of a drag in the whole window: panels, list and light beside the sheet, all of them at work.

Wall time from the event to the painted sheet, at sixty moves of the hand a second, beside the processor time
of the window's thread: what the one has more than the other is waiting for work done beside the drag.
"""

from __future__ import annotations

import time
from pathlib import Path

import pytest
from PySide6.QtCore import QEvent, QPointF, QSettings, Qt
from PySide6.QtWidgets import QApplication
from support.frames import mouse, orchard, told

from yardplan.files.reading import read_yard
from yardplan.shipped import folder
from yardplan.window.main_window import MainWindow
from yardplan.window.open_yard import OpenYard

FRAMES, HAND = 180, 1 / 60
_LEFT = Qt.MouseButton.LeftButton


@pytest.fixture(params=["first_orchard", 150, 500])
def window(qtbot, request, tmp_path: Path):
    name = request.param
    yard = orchard(name) if isinstance(name, int) else read_yard(folder("sample_yards") / f"{name}.yard")
    settings = QSettings(str(tmp_path / "settings.ini"), QSettings.Format.IniFormat)
    made = MainWindow(OpenYard(yard), settings=settings, recovery=tmp_path / "recovery")
    qtbot.addWidget(made, before_close_func=lambda one: one.open_yard.undo_stack.setClean())
    made.resize(1280, 800)
    with qtbot.waitExposed(made):
        made.show()
    qtbot.waitUntil(lambda: made.side is not None and not made.open_yard.checks.busy, timeout=120_000)
    return made


def test_a_frame_of_a_drag_in_the_whole_window(window, benchmark) -> None:
    canvas, yard = window.canvas, window.open_yard
    plants = yard.yard.plantings
    start = canvas.view.to_pixels(plants[len(plants) // 2].place)
    step = QPointF(0.05, -0.045) * canvas.view.scale
    mouse(canvas, QEvent.Type.MouseButtonPress, start, _LEFT)
    walls, ours = [], []
    for number in range(FRAMES):
        began, worked = time.perf_counter(), time.thread_time()
        mouse(canvas, QEvent.Type.MouseMove, start + step * (9 + min(number, FRAMES - number)), _LEFT)
        QApplication.processEvents()
        walls.append((time.perf_counter() - began) * 1e3)
        ours.append((time.thread_time() - worked) * 1e3)
        while time.perf_counter() - began < HAND:
            QApplication.processEvents()
            time.sleep(0.001)
    mouse(canvas, QEvent.Type.MouseButtonRelease, start, _LEFT)
    yard.undo_stack.setClean()
    benchmark.pedantic(canvas.repaint, rounds=3)
    benchmark.extra_info.update(told("wall", walls), **told("worked", ours))
