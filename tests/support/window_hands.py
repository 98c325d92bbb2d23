"""Hands on the real window: clicks, drags and keys at places of the ground, as Qt events."""

from __future__ import annotations

from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QWidget

from yardplan.window.canvas.canvas import Canvas
from yardplan.window.main_window import MainWindow
from yardplan.yard.ground import Point

_LEFT = Qt.MouseButton.LeftButton
NONE = Qt.KeyboardModifier.NoModifier


def pixel(canvas: Canvas, place: Point) -> QPoint:
    """Where a place of the ground lies on the canvas."""
    return canvas.view.to_pixels(place).toPoint()


def click(canvas: Canvas, place: Point, keys: Qt.KeyboardModifier = NONE) -> None:
    """Move there and click."""
    QTest.mouseMove(canvas, pixel(canvas, place))
    QTest.mouseClick(canvas, _LEFT, keys, pixel(canvas, place))


def hover(canvas: Canvas, place: Point) -> None:
    """Move there with no button down."""
    QTest.mouseMove(canvas, pixel(canvas, place))


def drag(canvas: Canvas, start: Point, *way: Point, keys: Qt.KeyboardModifier = NONE) -> None:
    """Press, go through places, let go at the last."""
    QTest.mouseMove(canvas, pixel(canvas, start))
    QTest.mousePress(canvas, _LEFT, keys, pixel(canvas, start))
    for place in way:
        _move_pressed(canvas, pixel(canvas, place), keys)
    QTest.mouseRelease(canvas, _LEFT, keys, pixel(canvas, way[-1]))


def _move_pressed(canvas: Canvas, at: QPoint, keys: Qt.KeyboardModifier) -> None:
    """A move with the button down, sent as an event, since QTest's own carries no modifiers."""
    from PySide6.QtCore import QEvent, QPointF
    from PySide6.QtGui import QMouseEvent

    event = QMouseEvent(
        QEvent.Type.MouseMove, QPointF(at), QPointF(canvas.mapToGlobal(at)), Qt.MouseButton.NoButton, _LEFT,
        keys,
    )
    QApplication.sendEvent(canvas, event)


def press_key(widget: QWidget, key: Qt.Key, keys: Qt.KeyboardModifier = NONE) -> None:
    """One key."""
    QTest.keyClick(widget, key, keys)


def type_length(canvas: Canvas, text: str) -> None:
    """Type on the sheet: the first character opens the entry, the rest goes into it, Enter sends it."""
    QTest.keyClicks(canvas, text[0])
    QTest.keyClicks(canvas.entry.line, text[1:])
    QTest.keyClick(canvas.entry.line, Qt.Key.Key_Return)


def trigger(window: MainWindow, name: str) -> None:
    """Use a command of the menus."""
    window.actions_[name].trigger()
