"""Commands for named variants: keep the plan as one, list and compare them."""

from __future__ import annotations

import datetime
from typing import TYPE_CHECKING

from yardplan.language import tr
from yardplan.window import variants_kept
from yardplan.window.actions import Command
from yardplan.yard.edits import EditError

if TYPE_CHECKING:
    from yardplan.window.dialogs.variants_box import VariantsBox
    from yardplan.window.main_window import MainWindow


class VariantCommands:
    """Adds its actions to the menu Edit."""

    def __init__(self, window: MainWindow) -> None:
        self._window = window
        self.box: VariantsBox | None = None
        edit = window.menus["Edit"]
        edit.addSeparator()
        edit.addAction(window.actions_.add("keep variant", Command(
            words=tr("Keep t&his plan as a variant…"), does=self.keep,
            tip=tr("The plan gets a name and stays in the yard's file, to go back to or to compare"))))
        edit.addAction(window.actions_.add("variants", Command(
            words=tr("&Variants…"), does=self.show,
            tip=tr("Open, name and delete variants; two or more side by side with what comes of them"))))

    def keep(self) -> None:
        """Ask for a name and keep the plan under it."""
        yard = self._window.open_yard
        typed = self._window.questions.line(variants_kept.question(), variants_kept.suggested(yard))
        if typed is None:
            return
        try:
            self._window.commands.say(variants_kept.keep(yard, typed, datetime.date.today()))
        except EditError as error:
            self._window.questions.tell_fault(tr("Nothing was kept"), str(error))

    def show(self) -> None:
        """The list of variants and their comparison."""
        from yardplan.window.dialogs.variants_box import VariantsBox

        if self.box is None:
            window = self._window
            self.box = VariantsBox(window.open_yard, window.questions.line, window)
        self.box.show()
        self.box.raise_()
        self.box.activateWindow()
