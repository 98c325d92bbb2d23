"""What is taken out leaves no ink behind on the sheet."""

import pytest
from PySide6.QtCore import QPoint, QRect, QSize
from support.builders import yard_of

from yardplan.window.canvas.canvas import Canvas
from yardplan.window.tools import commands
from yardplan.yard.ground import Gate


@pytest.mark.parametrize("width", [1.0, 4.0])
def test_a_gate_deleted_is_gone_at_once(opened, qtbot, theme, width):
    """Its leaf swings beyond its place; it stood on the sheet until the next stroke of the pointer."""
    yard = opened(yard_of(gates=(Gate(id="GT1", place=(12.0, 8.0), width=width),)))
    canvas = Canvas(yard)
    qtbot.addWidget(canvas)
    canvas.resize(900, 640)
    with qtbot.waitExposed(canvas):
        canvas.show()
    canvas.fit()
    qtbot.waitUntil(lambda: not yard.checks.busy and yard.light is not None, timeout=10_000)
    half = int(2 * width * canvas.view.scale)
    corner = canvas.view.to_pixels((12.0, 8.0)).toPoint() - QPoint(half, half)
    around = QRect(corner, QSize(2 * half, 2 * half))
    marked = canvas.grab(around).toImage()
    yard.select({"GT1"})
    commands.delete(yard)
    left = canvas.grab(around).toImage()
    canvas.scene.forget()
    bare = canvas.grab(around).toImage()
    assert marked != bare
    assert left == bare
