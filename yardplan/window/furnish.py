"""Puts the panels into the window once it shows: they need the catalogue, the sheet does not."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt

from yardplan.window.canvas.show_typed import show_typed
from yardplan.window.dock_sizes import kept_size
from yardplan.window.recent_menu import samples
from yardplan.window.sides import WIDTH, Side
from yardplan.window.theme import scaled
from yardplan.window.tools.toolbox import SELECT

#: Height of the season strip in pixels at first.
SEASON_HEIGHT = 150
#: Shares of the window that the side and the season take at most with large text.
_SIDE_SHARE, _SEASON_SHARE = 0.4, 0.3

if TYPE_CHECKING:
    from pathlib import Path

    from yardplan.window.dialogs.start_panel import StartPanel
    from yardplan.window.main_window import MainWindow


def furnish(window: MainWindow) -> None:
    """Build the side and the season strip and lay them in their docks."""
    from yardplan.window.arrange_commands import ArrangeCommands
    from yardplan.window.canvas.half_drawn import HalfDrawn
    from yardplan.window.drawing_commands import DrawingCommands
    from yardplan.window.edges import DockEdge
    from yardplan.window.help_commands import HelpCommands
    from yardplan.window.light.room import LightRoom
    from yardplan.window.menu_letters import MenuLetters
    from yardplan.window.panels.season_strip import SeasonStrip
    from yardplan.window.panels.year_control import YearControl
    from yardplan.window.shape_commands import ShapeCommands
    from yardplan.window.variant_commands import VariantCommands

    year = window.year = YearControl(window.open_yard)
    window.menuBar().setCornerWidget(year, Qt.Corner.TopRightCorner)
    year.show()
    window.arrange_commands = ArrangeCommands(window)
    window.drawing_commands = DrawingCommands(window)
    window.shape_commands = ShapeCommands(window, window.arrange_commands.arrange)
    window.variant_commands = VariantCommands(window)
    window.tools.dress()
    side = Side(window.open_yard)
    window.side = side
    window.side_dock.setWidget(side)
    strip = SeasonStrip(window.open_yard)
    window.season_dock.setWidget(strip)
    window.season_dock.setVisible(window.actions_["season"].isChecked())
    window.resizeDocks([window.side_dock], [_side_width(window)], Qt.Orientation.Horizontal)
    window.resizeDocks([window.season_dock], [_season_height(window)], Qt.Orientation.Vertical)
    DockEdge(window, window.side_dock, Qt.Orientation.Horizontal)
    DockEdge(window, window.season_dock, Qt.Orientation.Vertical)
    side.card_wanted.connect(window.panel_commands.show_card_of)
    side.site_wanted.connect(window.panel_commands.show_site)
    side.findings.clear_wanted.connect(window.place_commands.move_plant)
    window.light_room = LightRoom(window, side, strip)
    window.help = HelpCommands(window)
    MenuLetters(window)
    HalfDrawn(window.canvas)
    # The status line asks for a click or a typed place: typed keys must arrive on the sheet.
    side.choose.view.keyed.connect(window.canvas.setFocus)
    window.canvas.entry.sent.connect(lambda _text: show_typed(window.canvas))
    _start_panel(window)


def _side_width(window: MainWindow) -> int:
    """As it was left; at first grown with the text, as far as the sheet keeps its share."""
    kept = kept_size(window.settings, window.side_dock)
    return kept[0] if kept else max(WIDTH, min(scaled(WIDTH), round(window.width() * _SIDE_SHARE)))


def _season_height(window: MainWindow) -> int:
    kept = kept_size(window.settings, window.season_dock)
    most = round(window.height() * _SEASON_SHARE)
    return kept[1] if kept else max(SEASON_HEIGHT, min(scaled(SEASON_HEIGHT), most))


def _start_panel(window: MainWindow) -> None:
    """The panel over the empty sheet: a new yard, a sample, or a file."""
    from yardplan.window.dialogs.start_panel import StartPanel
    from yardplan.window.start_room import RoomForStart, furniture_of

    panel = StartPanel(window.open_yard, window.canvas, recent=window.documents.recent(),
                       furniture=lambda: furniture_of(window.canvas))
    window.start_panel = panel
    RoomForStart(window, panel)
    panel.open_wanted.connect(window.documents.open)
    panel.file_chosen.connect(lambda path: _open_chosen(window, path))
    window.canvas.tool_changed.connect(lambda: _free_sheet(window, panel))


def _free_sheet(window: MainWindow, panel: StartPanel) -> None:
    """Who takes up a tool wants to draw: the panel goes, and what was typed in it stays."""
    if panel.isVisible() and window.canvas.tool.icon != SELECT.icon:
        panel.put_away()


def _open_chosen(window: MainWindow, path: Path) -> None:
    """A sample is opened as a copy, a recent file as itself."""
    window.documents.load(path, as_copy=path in samples())
