"""Puts the panels into the window once it shows: they need the catalogue, the sheet does not."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt

from yardplan.window.panels.year_control import YearControl
from yardplan.window.sides import WIDTH, Side

if TYPE_CHECKING:
    from yardplan.window.main_window import MainWindow


def furnish(window: MainWindow) -> None:
    """Build the side, the season strip and the year control and lay them in their places."""
    side = Side(window.open_yard)
    window.side = side
    window.side_dock.setWidget(side)
    year = YearControl(window.open_yard)
    window.menuBar().setCornerWidget(year, Qt.Corner.TopRightCorner)
    year.show()
    window.resizeDocks([window.side_dock], [WIDTH], Qt.Orientation.Horizontal)
