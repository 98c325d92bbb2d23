"""Puts the panels into the window once it shows: they need the catalogue, the sheet does not."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt

from yardplan.window.sides import WIDTH, Side

if TYPE_CHECKING:
    from yardplan.window.main_window import MainWindow


def furnish(window: MainWindow) -> None:
    """Build the side and the season strip and lay them in their docks."""
    side = Side(window.open_yard)
    window.side = side
    window.side_dock.setWidget(side)
    window.resizeDocks([window.side_dock], [WIDTH], Qt.Orientation.Horizontal)
