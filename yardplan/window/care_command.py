"""The command that shows the year's care beside the plan."""

from __future__ import annotations

from typing import TYPE_CHECKING

from yardplan.window.actions import Command

if TYPE_CHECKING:
    from yardplan.window.dialogs.care_box import CareBox
    from yardplan.window.main_window import MainWindow


class CareCommand:
    """Adds its action to the Season menu; the box is built when asked for and kept."""

    def __init__(self, window: MainWindow) -> None:
        self._window = window
        self.box: CareBox | None = None
        action = window.actions_.add("care", Command(
            words="&Care of the year…", does=self.show, keys=("Ctrl+Shift+C",),
            tip="Work by date for every plant, with marks for what is done",
        ))
        window.menus["Season"].addSeparator()
        window.menus["Season"].addAction(action)

    def show(self) -> None:
        """Show the box, in front of the plan."""
        from yardplan.window.dialogs.care_box import CareBox

        if self.box is None:
            self.box = CareBox(self._window.open_yard, self._window)
        self.box.show()
        self.box.raise_()
        self.box.activateWindow()
