"""Keys pressed by a slip: half way through an outline a letter takes up no other tool, and undo and Del take
back the last corner; Del on the lot line, which stays, says so."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, QObject, Qt
from PySide6.QtGui import QKeyEvent, QKeySequence

from yardplan.language import tr

if TYPE_CHECKING:
    from yardplan.window.canvas.canvas import Canvas

_PLAIN = Qt.KeyboardModifier.NoModifier
_SHIFT = Qt.KeyboardModifier.ShiftModifier


class HalfDrawn(QObject):
    """Hears the sheet's keys before the commands do, so that corners set are not lost by a slip.

    A word typed where a number was meant would else take up one tool after the other, and undo would take
    back what was finished long ago.
    """

    def __init__(self, canvas: Canvas) -> None:
        super().__init__(canvas)
        self._canvas = canvas
        canvas.installEventFilter(self)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if event.type() not in (QEvent.Type.ShortcutOverride, QEvent.Type.KeyPress):
            return False
        if not isinstance(event, QKeyEvent) or not self._ours(event):
            return False
        event.accept()
        if event.type() == QEvent.Type.KeyPress:
            self._use(event)
        return True

    def _ours(self, event: QKeyEvent) -> bool:
        tool = self._canvas.tool
        if tool.half_drawn:
            return _takes_back(event) or (_is_letter(event) and not tool.hears(event.text()))
        return event.key() == Qt.Key.Key_Delete and self._canvas.open_yard.selection == {"lot"}

    def _use(self, event: QKeyEvent) -> None:
        canvas = self._canvas
        if not canvas.tool.half_drawn:
            canvas.desk.tell(
                tr("The lot line stays: drag its corners, or draw it anew with the tool Lot line")
            )
        elif _takes_back(event):
            canvas.tool.on_key("backspace")
            canvas.refresh_tool()
        else:
            canvas.desk.tell(
                tr("Not finished yet: Enter ends it, Backspace takes back the last corner, Esc gives it up")
            )


def _takes_back(event: QKeyEvent) -> bool:
    return event.matches(QKeySequence.StandardKey.Undo) or event.key() == Qt.Key.Key_Delete


def _is_letter(event: QKeyEvent) -> bool:
    return event.modifiers() in (_PLAIN, _SHIFT) and event.text().isalpha()
