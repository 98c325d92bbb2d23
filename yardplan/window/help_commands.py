"""The commands of the Help menu that explain the program: the handbook and the guided start."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QObject

from yardplan.language import tr
from yardplan.window.actions import Command
from yardplan.window.handbook.command import HandbookCommand

if TYPE_CHECKING:
    from yardplan.window.guide.guide import Guide
    from yardplan.window.main_window import MainWindow

#: Set once the guided start was shown: it comes by itself on the first run only.
_SEEN = "guide/seen"


class HelpCommands(QObject):
    """Adds its actions to the Help menu and shows the guide on the first run."""

    def __init__(self, window: MainWindow) -> None:
        super().__init__(window)
        self._window = window
        self.handbook = HandbookCommand(window)
        self.guide: Guide | None = None
        action = window.actions_.add("guided start", Command(
            words=tr("Guided &start"), does=self.show_guide,
            tip=tr("The first yard step by step, each at its real control")))
        help_menu = window.menus["Help"]
        help_menu.insertAction(help_menu.actions()[1], action)
        help_menu.insertSeparator(help_menu.actions()[2])

    def first_run(self) -> None:
        """Show the guide if it was never shown on this machine and nothing is drawn yet."""
        from yardplan.window.dialogs.start_panel import empty

        if self._window.settings.value(_SEEN) is None and empty(self._window.open_yard):
            self.show_guide().go_there()

    def show_guide(self) -> Guide:
        """The guided start, from the first step that is not done yet."""
        from yardplan.window.guide.guide import Guide

        self._window.settings.setValue(_SEEN, "yes")
        if self.guide is None:
            self.guide = Guide(self._window)
        self.guide.begin()
        return self.guide
