"""The strip above the sheet that says the step, and the ring round the control it points at."""

from __future__ import annotations

from PySide6.QtCore import QRect, Qt, QTimer, Signal
from PySide6.QtGui import QColor, QKeyEvent, QPainter, QPaintEvent, QPen, QResizeEvent
from PySide6.QtWidgets import QHBoxLayout, QSizePolicy, QToolBar, QVBoxLayout, QWidget

from yardplan.language import tr
from yardplan.window.panels.parts import button, label
from yardplan.window.theme import colours_now

#: The ring's line, and its distance from the control, pixels.
_LINE, _AROUND = 3, 4


class GuideStrip(QWidget):
    """Which step it is, what to do, and three buttons; Esc leaves the guide."""

    shown_wanted = Signal()
    next_wanted = Signal()
    leave_wanted = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setAccessibleName(tr("Guided start"))
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.number = label("", "small")
        self.title = label("", "heading")
        self.words = label("", "plain", wrap=True)
        self.show_me = button(tr("Go there"), tip=tr("Put the keyboard on the control"))
        self.next = button(tr("Next step"), tip=tr("Leave this step out"))
        self.leave = button(tr("Skip the guide"), tip=tr("Close it (Esc); Help has it again"))
        text, head, line = QVBoxLayout(), QHBoxLayout(), QHBoxLayout(self)
        head.setSpacing(10)
        head.addWidget(self.title)
        head.addWidget(self.number)
        head.addStretch()
        text.setSpacing(2)
        text.addLayout(head)
        text.addWidget(self.words)
        line.setContentsMargins(14, 8, 12, 8)
        line.setSpacing(8)
        line.addLayout(text, 1)
        for part in (self.show_me, self.next, self.leave):
            line.addWidget(part)
        self.show_me.clicked.connect(self.shown_wanted)
        self.next.clicked.connect(self.next_wanted)
        self.leave.clicked.connect(self.leave_wanted)

    def say(self, number: str, title: str, words: str, *, last: bool = False) -> None:
        """Show a step; after the `last` one only the way out is left."""
        self.number.setText(number)
        self.title.setText(title)
        self.words.setText(words)
        self._fit()
        self.show_me.setVisible(not last)
        self.next.setVisible(not last)
        self.leave.setText(tr("Close the guide") if last else tr("Skip the guide"))
        self.leave.setAccessibleName(self.leave.text())
        self.setAccessibleDescription(f"{number} {title}. {words}")

    def _fit(self) -> None:
        """As tall as the words need at this width: a bar does not ask a wrapped text for its height."""
        self.words.setFixedHeight(self.words.heightForWidth(max(self.words.width(), 1)))

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        QTimer.singleShot(0, self, self._fit)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Escape:
            self.leave_wanted.emit()
        else:
            super().keyPressEvent(event)


class GuideBar(QToolBar):
    """Holds the strip between the menus and the sheet."""

    def __init__(self, strip: GuideStrip) -> None:
        super().__init__(tr("Guided start"))
        self.setObjectName("guide")
        self.setMovable(False)
        self.toggleViewAction().setVisible(False)
        self.addWidget(strip)


class Ring(QWidget):
    """A ring over the window round a control; it takes no click and no focus."""

    def __init__(self, window: QWidget) -> None:
        super().__init__(window)
        self._around = window
        self.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.hide()

    def surround(self, area: QRect | None) -> None:
        """Lie round an area of the window, or hide."""
        if area is None:
            self.hide()
            return
        around = area.adjusted(-_AROUND, -_AROUND, _AROUND, _AROUND).intersected(self._around.rect())
        if self.geometry() != around:
            self.setGeometry(around)
        if self.isHidden():
            self.show()
            self.raise_()

    def paintEvent(self, _event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(QPen(QColor(colours_now().focus), _LINE))
        half = _LINE / 2
        painter.drawRoundedRect(self.rect().toRectF().adjusted(half, half, -half, -half), 6, 6)
