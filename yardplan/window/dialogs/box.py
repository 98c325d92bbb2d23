"""A box beside the plan: not modal, and Enter in a field finishes the field instead of pressing a button."""

from __future__ import annotations

from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QDialog, QWidget

from yardplan.window.theme import scaled

#: Left of the screen for the frame of a box, pixels.
_FRAME = 40


def roomy(box: QWidget, width: int, height: int) -> QSize:
    """The first size of a box, grown with the text, and never larger than the screen. Pixels."""
    screen = box.screen().availableSize()
    room = QSize(screen.width() - _FRAME, screen.height() - _FRAME)
    return QSize(scaled(width), scaled(height)).boundedTo(room)


class BesideBox(QDialog):
    """A box that stays open while one works on the plan; Esc closes it."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setModal(False)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() not in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            super().keyPressEvent(event)
