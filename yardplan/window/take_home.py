"""The commands for what a grower takes along: sheets, shopping list, the year's care."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

from PySide6.QtWidgets import QDialog

from yardplan.language import tr
from yardplan.window.actions import Command

if TYPE_CHECKING:
    from yardplan.window.main_window import MainWindow


class TakeHome:
    """Adds its actions to the menus; boxes are built when asked for and kept, one of a kind."""

    def __init__(self, window: MainWindow) -> None:
        self._window = window
        self.boxes: dict[str, QDialog] = {}
        add = window.actions_.add
        sheets = window.menus["Sheets"]
        sheets.addAction(add("sheets", Command(
            words=tr("&Sheets…"), does=self.show_sheets, keys=("Ctrl+P",),
            tip=tr("Planting plan, lists and calendar: save as PDF, SVG or PNG, or print, true to scale"),
        )))
        sheets.addAction(add("shopping", Command(
            words=tr("Sh&opping list…"), does=self.show_shopping,
            tip=tr("Plants, posts, wire, mulch and soil work, with your own prices"),
        )))
        # Who wants paper looks under File first.
        file, close = window.menus["File"], window.actions_["close"]
        file.insertAction(close, add("print", Command(
            words=tr("&Print or save sheets…"), does=self.show_sheets,
            tip=tr("The plan to scale and its lists, on paper or as a file"),
        )))
        file.insertSeparator(close)
        season = window.menus["Season"]
        season.addSeparator()
        season.addAction(add("care", Command(
            words=tr("&Care of the year…"), does=self.show_care, keys=("Ctrl+Shift+C",),
            tip=tr("Work by date for every plant, with marks for what is done"),
        )))

        season.addAction(add("harvest", Command(
            words=tr("&Harvest…"), does=self.show_harvest,
            tip=tr("What is picked when and how much, gluts and gaps, the first ten years"),
        )))

    def show_sheets(self) -> None:
        """Choose sheets and save or print them."""
        from yardplan.window.dialogs.sheet_box import SheetBox

        self._show("sheets", lambda: SheetBox(self._window.open_yard, self._window))

    def show_shopping(self) -> None:
        """What to buy."""
        from yardplan.window.dialogs.shopping_box import ShoppingBox

        self._show("shopping", lambda: ShoppingBox(self._window.open_yard, self._window))

    def show_care(self) -> None:
        """The work of the year."""
        from yardplan.window.dialogs.care_box import CareBox

        self._show("care", lambda: CareBox(self._window.open_yard, self._window))

    def show_harvest(self) -> None:
        """What the yard bears."""
        from yardplan.window.dialogs.harvest_box import HarvestBox

        self._show("harvest", lambda: HarvestBox(self._window.open_yard, self._window))

    def _show(self, name: str, make: Callable[[], QDialog]) -> None:
        box = self.boxes.get(name)
        if box is None:
            box = self.boxes[name] = make()
        box.show()
        box.raise_()
        box.activateWindow()
