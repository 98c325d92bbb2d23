"""Qt's events as plain values: pointer in metres, pinches as a factor, keys that begin a number.

And the other way round: the pointer's shape tells what a press would do.
"""

from __future__ import annotations

from PySide6.QtCore import QEvent, QPointF, Qt
from PySide6.QtGui import QDropEvent, QKeyEvent, QMouseEvent, QNativeGestureEvent
from PySide6.QtWidgets import QGestureEvent, QPinchGesture

from yardplan.window.canvas.view import MAX_NOTCHES, NOTCH, View
from yardplan.window.tools.event import Kind, Pointer
from yardplan.window.tools.select import SelectTool
from yardplan.window.tools.tool import Tool

#: The keyboard came here by Tab or Shift+Tab.
BY_TAB = (Qt.FocusReason.TabFocusReason, Qt.FocusReason.BacktabFocusReason)
_Key = Qt.KeyboardModifier


def pointer_of(view: View, event: QMouseEvent | QDropEvent, kind: Kind) -> Pointer:
    """What a tool hears of a pointer event."""
    keys, place = event.modifiers(), event.position()
    return Pointer(
        kind=kind,
        place=view.to_metres(place.x(), place.y()),
        pixel=1 / view.scale,
        dragging=bool(event.buttons() & Qt.MouseButton.LeftButton),
        shift=bool(keys & _Key.ShiftModifier),
        ctrl=bool(keys & _Key.ControlModifier),
        alt=bool(keys & _Key.AltModifier),
    )


def pinch_of(event: QEvent) -> tuple[float, QPointF] | None:
    """By how much fingers on a touchpad or screen zoom, and about which pixel; None for no pinch."""
    if isinstance(event, QNativeGestureEvent):
        if event.gestureType() != Qt.NativeGestureType.ZoomNativeGesture:
            return None
        limit = NOTCH**MAX_NOTCHES
        return min(max(1 + event.value(), 1 / limit), limit), event.position()
    if isinstance(event, QGestureEvent):
        pinch = event.gesture(Qt.GestureType.PinchGesture)
        if isinstance(pinch, QPinchGesture):
            return pinch.scaleFactor(), pinch.centerPoint()
    return None


def begins_entry(event: QKeyEvent) -> bool:
    """True for a key that begins a number."""
    plain = not event.modifiers() & (_Key.ControlModifier | _Key.AltModifier)
    return plain and event.text() != "" and event.text() in "0123456789.,-+"


def cursor_for(tool: Tool, *, panning: bool, space: bool, over: bool) -> Qt.CursorShape:
    """The shape for a tool in use; `space`: the space bar is held, `over`: the pointer is on a thing."""
    if panning:
        return Qt.CursorShape.ClosedHandCursor
    if space:
        return Qt.CursorShape.OpenHandCursor
    if not isinstance(tool, SelectTool):
        return Qt.CursorShape.CrossCursor
    if tool.over_length:
        return Qt.CursorShape.IBeamCursor
    return Qt.CursorShape.PointingHandCursor if over and not tool.busy else Qt.CursorShape.ArrowCursor
