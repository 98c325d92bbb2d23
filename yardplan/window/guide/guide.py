"""Leads through the steps: goes on when a step was really done, and can be left at any time."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, QObject, Qt, QTimer
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QApplication, QWidget

from yardplan.language import tr
from yardplan.window.canvas.voice import say
from yardplan.window.guide.steps import STEPS, Aim, words_of
from yardplan.window.guide.strip import GuideBar, GuideStrip, Ring

if TYPE_CHECKING:
    from yardplan.window.main_window import MainWindow

#: How often the guide looks whether the step is done and where its control is, milliseconds.
_LOOK_MS = 150


class Guide(QObject):
    """The guided start of one window."""

    def __init__(self, window: MainWindow) -> None:
        super().__init__(window)
        self._window = window
        self.number = 0
        self.strip = GuideStrip()
        self.bar = GuideBar(self.strip)
        self.ring = Ring(window)
        window.addToolBar(Qt.ToolBarArea.TopToolBarArea, self.bar)
        self.bar.hide()
        self.strip.shown_wanted.connect(self.go_there)
        self.strip.next_wanted.connect(self.next_step)
        self.strip.leave_wanted.connect(self.leave)
        # Looked at from time to time: controls move with every layout, and a step may be done in any way.
        self._timer = QTimer(self)
        self._timer.setInterval(_LOOK_MS)
        self._timer.timeout.connect(self.look)
        window.open_yard.closing.connect(self._timer.stop)

    @property
    def on(self) -> bool:
        """True while it leads."""
        return self._timer.isActive()

    @property
    def over(self) -> bool:
        """True when all steps are behind."""
        return self.number >= len(STEPS)

    def begin(self) -> None:
        """Show the first step that is not done yet."""
        self.number = 0
        while not self.over and STEPS[self.number].done(self._window):
            self.number += 1
        self.bar.show()
        self._window.canvas.installEventFilter(self)
        self._timer.start()
        self._say()

    def leave(self) -> None:
        """Close the guide; the keyboard goes back to the sheet or the panel for a new yard."""
        self._timer.stop()
        self._window.canvas.removeEventFilter(self)
        self.ring.hide()
        inside = self.strip.isAncestorOf(QApplication.focusWidget() or self._window)
        self.bar.hide()
        if inside:
            self._window.canvas.setFocus(Qt.FocusReason.OtherFocusReason)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Esc on the sheet, where it has nothing else to back out of, leaves the guide."""
        if event.type() == QEvent.Type.KeyPress and isinstance(event, QKeyEvent):
            tool = self._window.canvas.tool
            if event.key() == Qt.Key.Key_Escape and tool.icon == "select" and not tool.busy:
                self.leave()
        return bool(super().eventFilter(watched, event))

    def look(self) -> None:
        """Go on when the step is done, and keep the ring at its control."""
        if not self.over and STEPS[self.number].done(self._window):
            self.next_step()
        elif not self.over and self.strip.words.text() != tr(words_of(STEPS[self.number], self._window)):
            self._say()
        aim = self._aim()
        self.ring.surround(aim.area(self._window) if aim is not None else None)

    def next_step(self) -> None:
        """The step after this one, done or left out."""
        self.number += 1
        self._say()

    def go_there(self) -> None:
        """Put the keyboard on the control pointed at."""
        aim = self._aim()
        if aim is not None:
            aim.focus()

    def _aim(self) -> Aim | None:
        return None if self.over else STEPS[self.number].aim(self._window)

    def _say(self) -> None:
        if self.over:
            words = tr("F1 explains whatever has the keyboard or the tool you chose. "
                       "The guide is in the Help menu.")
            self.strip.say("", tr("That was the whole round"), words, last=True)
        else:
            step = STEPS[self.number]
            number = tr("step {n} of {all}", n=self.number + 1, all=len(STEPS))
            self.strip.say(number, tr(step.title), tr(words_of(step, self._window)))
        spoken: QWidget = self.strip
        say(spoken, spoken.accessibleDescription())
