"""The small field that takes typed lengths while drawing; it opens by itself when a digit is typed."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeyEvent, QPalette
from PySide6.QtWidgets import QLabel, QLineEdit, QVBoxLayout, QWidget

from yardplan.language import tr


class LengthEntry(QWidget):
    """One line; Enter sends what was typed, Esc closes. What is wrong shows beneath."""

    #: A text to hand to the tool.
    sent = Signal(str)
    closed = Signal()

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self.line = QLineEdit(self)
        self.line.setAccessibleName(tr("Length, angle or place"))
        self.line.setPlaceholderText("12' 6\"  3.8 m  3.8 m < 90  12 x 8  4; 2.5")
        self.line.setMinimumWidth(230)
        self.fault = QLabel(self)
        self.fault.setObjectName("fault")
        # Words over lines of the plan are read on ground of their own.
        self.fault.setAutoFillBackground(True)
        self.fault.setBackgroundRole(QPalette.ColorRole.Base)
        self.fault.setWordWrap(True)
        self.fault.setTextFormat(Qt.TextFormat.PlainText)
        box = QVBoxLayout(self)
        box.setContentsMargins(0, 0, 0, 0)
        box.addWidget(self.line)
        box.addWidget(self.fault)
        self.fault.hide()
        self.setFocusProxy(self.line)
        self.line.returnPressed.connect(lambda: self.sent.emit(self.line.text()))
        self.line.textEdited.connect(lambda _text: self.show_fault(None))
        self.hide()

    def begin(self, text: str) -> None:
        """Open with the first characters typed."""
        self.line.setText(text)
        self.show_fault(None)
        self.show()
        self.raise_()
        self.line.setFocus(Qt.FocusReason.OtherFocusReason)
        self.line.end(False)

    def show_fault(self, error: ValueError | None) -> None:
        """Say what is wrong, or nothing."""
        self.fault.setText(str(error) if error else "")
        self.fault.setVisible(error is not None)
        self.adjustSize()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Escape:
            self.closed.emit()
        # Any other key the line leaves over (Enter) ends here: on the sheet it would end the outline.
        event.accept()
