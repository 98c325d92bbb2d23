"""A box beside the plan: not modal, and Enter in a field finishes the field instead of pressing a button.

Every box has a button that closes it and one that Enter presses, outside of fields.
"""

from __future__ import annotations

from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QCloseEvent, QKeyEvent
from PySide6.QtWidgets import (
    QAbstractItemView,
    QAbstractSpinBox,
    QComboBox,
    QDialog,
    QHBoxLayout,
    QLineEdit,
    QPlainTextEdit,
    QPushButton,
    QTextEdit,
    QToolButton,
    QWidget,
)

from yardplan.language import tr
from yardplan.window.open_yard import OpenYard
from yardplan.window.panels.parts import button
from yardplan.window.theme import scaled

#: Left of the screen for the frame of a box, pixels.
_FRAME = 40


def roomy(box: QWidget, width: int, height: int) -> QSize:
    """The first size of a box, grown with the text, and never larger than the screen. Pixels."""
    screen = box.screen().availableSize()
    room = QSize(screen.width() - _FRAME, screen.height() - _FRAME)
    return QSize(scaled(width), scaled(height)).boundedTo(room)


def press_by_enter(main: QPushButton) -> None:
    """Make a button the one that Enter presses while no field has the focus; it stands in its box already."""
    main.setAutoDefault(True)
    main.setDefault(True)


def close_button(box: QDialog) -> QPushButton:
    """A button that closes the box."""
    made = button(tr("Close"))
    made.clicked.connect(box.reject)
    return made


def closing_line(box: QDialog) -> QHBoxLayout:
    """The last line of a box that has nothing else to press: a button that closes it, pressed by Enter."""
    line, close = QHBoxLayout(), close_button(box)
    close.setParent(box)
    press_by_enter(close)
    line.addStretch()
    line.addWidget(close)
    return line


#: In these Enter belongs to what is typed or chosen.
_FIELDS = (QLineEdit, QAbstractSpinBox, QComboBox, QAbstractItemView, QTextEdit, QPlainTextEdit)


class BesideBox(QDialog):
    """A box that stays open while one works on the plan; Esc closes it."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setModal(False)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Enter presses the button that has the focus, else the main one; never out of a field."""
        focus = self.focusWidget()
        if event.key() not in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            super().keyPressEvent(event)
        elif isinstance(focus, QPushButton | QToolButton):
            focus.click()
        elif not isinstance(focus, _FIELDS):
            super().keyPressEvent(event)


class TrialBox(QDialog):
    """A box that shows on the plan what it would draw; Esc, Cancel and closing leave the plan as it was."""

    def __init__(self, open_yard: OpenYard, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._open_yard = open_yard
        self.setModal(True)

    def reject(self) -> None:
        self._open_yard.drop_trial()
        super().reject()

    def closeEvent(self, event: QCloseEvent) -> None:
        self._open_yard.drop_trial()
        super().closeEvent(event)
