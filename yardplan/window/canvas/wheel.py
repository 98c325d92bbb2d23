"""What a turn of the wheel or a stroke of two fingers means: zoom or pan."""

from __future__ import annotations

from attrs import field, frozen
from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QWheelEvent

from yardplan.window.canvas.view import MAX_NOTCHES, NOTCH

#: Qt's measure of one notch (QWheelEvent.angleDelta: eighths of a degree, 15 degrees a notch).
_NOTCH_UNITS = 120.0
#: A notch of a plain mouse wheel pans so many pixels when the wheel is set to pan.
_PAN_PIXELS = 80.0


@frozen
class Turn:
    """`zoom` a factor, or 0 for a pan by `pan` pixels."""

    zoom: float = 0.0
    pan: QPointF = field(factory=QPointF)


class Wheel:
    """`zooms`: a plain mouse wheel zooms (else it pans). Ctrl always zooms, a touchpad always pans."""

    def __init__(self) -> None:
        self.zooms = True

    def read(self, event: QWheelEvent) -> Turn:
        """What this event asks for."""
        keys = event.modifiers()
        fingers = event.pixelDelta()
        if keys & Qt.KeyboardModifier.ControlModifier:
            return Turn(zoom=_factor(event.angleDelta().y()))
        if not fingers.isNull():
            return Turn(pan=QPointF(fingers))
        notches = QPointF(event.angleDelta()) / _NOTCH_UNITS
        if keys & Qt.KeyboardModifier.ShiftModifier:
            return Turn(pan=QPointF((notches.y() or notches.x()) * _PAN_PIXELS, 0))
        if self.zooms and notches.y():
            return Turn(zoom=_factor(event.angleDelta().y()))
        return Turn(pan=notches * _PAN_PIXELS)


def _factor(units: float) -> float:
    notches = min(max(units / _NOTCH_UNITS, -MAX_NOTCHES), MAX_NOTCHES)
    return float(NOTCH**notches)
