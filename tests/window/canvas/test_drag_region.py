"""A frame of a drag paints only where ink was and is: the screen must look as if all had been painted."""

from __future__ import annotations

import numpy as np
import pytest
from PySide6.QtCore import QEvent, QPointF, Qt
from PySide6.QtGui import QImage, QMouseEvent, QPaintEvent
from PySide6.QtWidgets import QApplication

from yardplan.files.reading import read_yard
from yardplan.shipped import folder
from yardplan.window.canvas.canvas import Canvas
from yardplan.window.canvas.shade import Shade
from yardplan.window.open_yard import OpenYard


class Watched(Canvas):
    """Notes how much of it each paint event covers."""

    shares: list[float]

    def paintEvent(self, event: QPaintEvent) -> None:
        box = event.region().boundingRect()
        self.shares.append(box.width() * box.height() / (self.width() * self.height()))
        super().paintEvent(event)


def _send(canvas: Canvas, kind: QEvent.Type, place: QPointF, buttons: Qt.MouseButton) -> None:
    far = canvas.mapToGlobal(place)
    keys = Qt.KeyboardModifier.AltModifier
    event = QMouseEvent(kind, place, far, Qt.MouseButton.LeftButton, buttons, keys)
    QApplication.sendEvent(canvas, event)


def _on_screen(canvas: Canvas) -> QImage:
    return canvas.screen().grabWindow(canvas.winId()).toImage().convertToFormat(QImage.Format.Format_RGB32)


def _steady(canvas: Canvas) -> None:
    """Let paint events through until none is due: clear ground that comes paints all of the sheet once."""
    while canvas.open_yard.clear.busy:
        QApplication.processEvents()
    for _ in range(4):
        QApplication.processEvents()


def _first_plant(canvas: Canvas) -> str:
    return canvas.open_yard.yard.plantings[0].id


@pytest.mark.parametrize("name", ["first_orchard", "walled_town_garden"])
def test_parts_painted_add_up_to_the_whole(qtbot, monkeypatch, name):
    monkeypatch.setattr("yardplan.window.canvas.scene._WORDS_EVERY", 0.0)
    path = folder("sample_yards") / f"{name}.yard"
    yard = OpenYard(read_yard(path))
    canvas = Watched(yard)
    canvas.shares = []
    qtbot.addWidget(canvas)
    canvas.resize(900, 640)
    with qtbot.waitExposed(canvas):
        canvas.show()
    canvas.fit()
    qtbot.waitUntil(lambda: not yard.checks.busy, timeout=30_000)
    _steady(canvas)
    # Light that answers when it likes would change the screen between two looks.
    monkeypatch.setattr(yard.checks._drag_light, "follow", lambda *_: None)
    start = canvas.view.to_pixels(yard.yard.find(_first_plant(canvas)).place)
    _send(canvas, QEvent.Type.MouseButtonPress, start, Qt.MouseButton.LeftButton)
    for step in range(1, 9):
        canvas.shares.clear()
        place = start + QPointF(9.0 * step, 5.0 * step)
        _send(canvas, QEvent.Type.MouseMove, place, Qt.MouseButton.LeftButton)
        _steady(canvas)
        seen = _on_screen(canvas)
        canvas.repaint()
        whole = _on_screen(canvas)
        assert seen == whole, f"frame {step}"
    yard.close()
    assert canvas.scene._live


def test_a_frame_paints_a_part_of_a_large_yard(qtbot):
    from support.builders import plant, yard_of

    many = [plant(f"A{n}", "apple:Liberty", (5 + n % 12 * 6, 5 + n // 12 * 6)) for n in range(144)]
    yard = OpenYard(yard_of(*many, width=80, depth=80))
    canvas = Watched(yard)
    canvas.shares = []
    qtbot.addWidget(canvas)
    canvas.resize(1400, 900)
    with qtbot.waitExposed(canvas):
        canvas.show()
    canvas.fit()
    yard.checks.stop()
    _steady(canvas)
    start = canvas.view.to_pixels(yard.yard.find("A70").place)
    _send(canvas, QEvent.Type.MouseButtonPress, start, Qt.MouseButton.LeftButton)
    for step in range(1, 7):
        canvas.shares.clear()
        _send(
            canvas, QEvent.Type.MouseMove, start + QPointF(8.0 * step, 4.0 * step), Qt.MouseButton.LeftButton
        )
        _steady(canvas)
    assert 0.0 < max(canvas.shares) < 0.5
    seen = _on_screen(canvas)
    canvas.repaint()
    assert seen == _on_screen(canvas)
    yard.close()


def test_the_shadow_of_a_plant_goes_with_it(qtbot):
    from support.builders import plant, yard_of

    from yardplan.yard.edits import move

    yard = OpenYard(yard_of(plant("A1", "apple:Liberty", (5, 5)), plant("A2", "apple:Akane", (12, 5))))
    yard.checks.stop()
    kept = Shade(yard)
    yard.shown.connect(kept.follow)
    kept.still(frozenset())
    for step in range(1, 5):
        yard.show_trial(move(yard.yard, {"A1"}, (0.7 * step, 0.3 * step)))
        scratch = Shade(yard).moving(frozenset({"A1"}))
        for ring, other in zip(kept.moving(frozenset({"A1"})), scratch, strict=True):
            assert np.allclose(ring, other, atol=1e-9)
    yard.close()
