"""The line along the bottom: what the next click does, where the pointer is, snapping, light under way."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtGui import QAction
from PySide6.QtWidgets import QLabel, QSizePolicy, QStatusBar, QToolButton, QWidget

from yardplan.language import percent, tr
from yardplan.units import format_length
from yardplan.window.canvas.canvas import Canvas
from yardplan.yard.ground import Point

#: What is told stands so long in place of the hint, milliseconds.
_TOLD_MS = 6000


class _Elided(QLabel):
    """One line cut with an ellipsis when there is no room; the whole in its tip."""

    def __init__(self) -> None:
        super().__init__()
        self._text = ""
        self.setTextFormat(Qt.TextFormat.PlainText)
        self.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)

    def show_text(self, text: str) -> None:
        self._text = text
        self._cut()

    def _cut(self) -> None:
        room = max(self.width() - 4, 20)
        shown = self.fontMetrics().elidedText(self._text, Qt.TextElideMode.ElideRight, room)
        self.setText(shown)
        self.setToolTip(self._text if shown != self._text else "")
        self.setAccessibleName(self._text)

    def resizeEvent(self, event: object) -> None:
        self._cut()


class StatusLine(QStatusBar):
    """Follows the canvas."""

    def __init__(self, canvas: Canvas, snap: QAction, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.canvas = canvas
        self.setSizeGripEnabled(False)
        self.setContentsMargins(0, 0, 6, 0)
        self.hint = _Elided()
        # Begins where the status bar writes what it says for a while.
        self.hint.setObjectName("hint")
        self.place = QLabel()
        self.scale = QLabel()
        self.light = QLabel()
        self.snap = QToolButton()
        self.snap.setDefaultAction(snap)
        self.snap.setAutoRaise(True)
        self.addWidget(self.hint, 1)
        for part in (self.light, self.place, self.scale, self.snap):
            self.addPermanentWidget(part)
        canvas.hint_changed.connect(self.hint.show_text)
        # What was told of the tool before would hide what to do with this one.
        canvas.tool_changed.connect(self.clearMessage)
        canvas.desk.tell = self.tell
        canvas.pointed.connect(self._show_place)
        canvas.view_changed.connect(self._show_scale)
        canvas.open_yard.progress.connect(self._show_light)
        self.hint.show_text(canvas.tool.hint())
        self._show_scale()

    def tell(self, text: str) -> None:
        """Speak something and show it for a while in place of the hint."""
        self.canvas.desk.say(text)
        self.showMessage(text, _TOLD_MS)

    def _show_place(self, place: Point | None) -> None:
        if place is None:
            self.place.clear()
            return
        system = self.canvas.open_yard.units
        self.place.setText(f"{format_length(place[0], system)}; {format_length(place[1], system)}")

    def _show_scale(self) -> None:
        denominator = self.canvas.logicalDpiX() / 0.0254 / self.canvas.view.scale
        self.scale.setText(f"1:{denominator:.0f}")

    def _show_light(self, share: float) -> None:
        self.light.setText("" if share >= 1.0 else tr("sun {share}", share=percent(share)))
