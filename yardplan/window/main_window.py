"""The window: the sheet in the middle, tools left, side right, season below, menus above."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QByteArray, QPoint, QSettings, Qt
from PySide6.QtGui import QCloseEvent, QDragEnterEvent, QDropEvent, QShowEvent
from PySide6.QtWidgets import QDockWidget, QMainWindow, QMenu, QWidget

from yardplan.language import tr
from yardplan.window.actions import Actions
from yardplan.window.autosave import Autosave
from yardplan.window.canvas.canvas import Canvas
from yardplan.window.commands_table import CommandTable
from yardplan.window.documents import Documents
from yardplan.window.exchange import Exchange
from yardplan.window.menus import MENUS
from yardplan.window.open_yard import OpenYard
from yardplan.window.panel_commands import PanelCommands
from yardplan.window.picture_commands import ENDINGS as PICTURES
from yardplan.window.place_commands import PlaceCommands
from yardplan.window.questions import Questions
from yardplan.window.recent_menu import fill_recent, fill_samples
from yardplan.window.status_line import StatusLine
from yardplan.window.take_home import TakeHome
from yardplan.window.theme import Theme
from yardplan.window.tool_column import ToolColumn
from yardplan.window.tools.toolbox import TOOLS
from yardplan.window.used_commands import UsedCommands

if TYPE_CHECKING:
    from yardplan.window.arrange_commands import ArrangeCommands
    from yardplan.window.drawing_commands import DrawingCommands
    from yardplan.window.help_commands import HelpCommands
    from yardplan.window.light.room import LightRoom
    from yardplan.window.panels.year_control import YearControl
    from yardplan.window.shape_commands import ShapeCommands
    from yardplan.window.sides import Side
    from yardplan.window.variant_commands import VariantCommands

#: Size of the first window, pixels.
FIRST_SIZE = (1680, 1020)
#: Left for the title bar that the desktop draws, pixels.
_TITLE_BAR = 36
_SIZE_KEY, _STATE_KEY = "window/geometry", "window/state"


class MainWindow(QMainWindow):
    """One yard in one window."""

    def __init__(
        self,
        open_yard: OpenYard | None = None,
        *,
        settings: QSettings | None = None,
        recovery: Path | None = None,
    ) -> None:
        super().__init__()
        self.settings = settings if settings is not None else QSettings()
        self.open_yard = open_yard if open_yard is not None else OpenYard()
        self.open_yard.setParent(self)
        self.questions = Questions(self)
        self.documents = Documents(self.open_yard, self.questions, self.settings, self)
        self.autosave = Autosave(self.open_yard, recovery, self)
        self.canvas = Canvas(self.open_yard)
        self.canvas.desk.ask_text = self._ask_text
        self.setCentralWidget(self.canvas)
        self.actions_ = Actions(self, self.canvas)
        self.used = UsedCommands(self.settings)
        self.actions_.on_use = self.used.note
        self.commands = CommandTable(self)
        self.menus = self.actions_.menus(self, MENUS)
        self.panel_commands = PanelCommands(self)
        self.take_home = TakeHome(self)
        self.exchange = Exchange(self)
        self._place_file_menus()
        self.tools = ToolColumn([self.actions_[f"tool {kind.icon}"] for kind in TOOLS])
        self.addToolBar(Qt.ToolBarArea.LeftToolBarArea, self.tools)
        self.status = StatusLine(self.canvas, self.actions_["snap"], self)
        self.setStatusBar(self.status)
        self.place_commands = PlaceCommands(self)
        self.side_dock = self._dock(tr("Beside the sheet"), "side", Qt.DockWidgetArea.RightDockWidgetArea)
        self.season_dock = self._dock(tr("Season"), "season", Qt.DockWidgetArea.BottomDockWidgetArea)
        self.side: Side | None = None
        self.light_room: LightRoom | None = None
        self.start_panel: QWidget | None = None
        self.arrange_commands: ArrangeCommands | None = None
        self.drawing_commands: DrawingCommands | None = None
        self.shape_commands: ShapeCommands | None = None
        self.variant_commands: VariantCommands | None = None
        self.year: YearControl | None = None
        self.help: HelpCommands | None = None
        self.theme: Theme | None = None
        self.setAcceptDrops(True)
        self._listen()
        self._restore_size()
        self._show_title()

    def _place_file_menus(self) -> None:
        before = self.actions_["save"]
        self.menus["File"].insertMenu(before, self.commands.recent_menu)
        self.menus["File"].insertMenu(before, self.commands.samples_menu)

    def _dock(self, title: str, name: str, area: Qt.DockWidgetArea) -> QDockWidget:
        dock = QDockWidget(title, self)
        dock.setObjectName(name)
        dock.setTitleBarWidget(QWidget())
        dock.setFeatures(QDockWidget.DockWidgetFeature.DockWidgetClosable)
        self.setCorner(Qt.Corner.BottomRightCorner, Qt.DockWidgetArea.RightDockWidgetArea)
        self.addDockWidget(area, dock)
        return dock

    def _listen(self) -> None:
        self.open_yard.title_changed.connect(self._show_title)
        self.open_yard.shown.connect(self._show_title)
        self.canvas.menu_wanted.connect(self.show_context_menu)
        self.canvas.fields_wanted.connect(self.show_fields)
        self.canvas.tool_changed.connect(self._tool_changed)
        self.documents.recent_changed.connect(self._fill_recent)
        self.autosave.failed.connect(lambda text: self.status.showMessage(text, 8000))
        self.menus["File"].aboutToShow.connect(self._fill_recent)
        self.menus["View"].aboutToShow.connect(self.commands.tick_units)
        self._tool_changed()
        self._fill_recent()

    # Parts built once the window shows

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        if self.side is None:
            self.canvas.painted_first.connect(self.build_side, Qt.ConnectionType.QueuedConnection)

    def build_side(self) -> None:
        """The right side and the season need the catalogue: they come once the sheet is on the screen."""
        if self.side is not None:
            return
        from yardplan.window.furnish import furnish

        furnish(self)
        self.canvas.setFocus(Qt.FocusReason.OtherFocusReason)

    # What shows

    def _show_title(self, *_: object) -> None:
        title = f"{self.open_yard.title} \N{EN DASH} yardplan"
        if self.windowTitle() != title:
            self.setWindowTitle(title)
        self.setWindowModified(self.open_yard.unsaved)
        path = self.open_yard.path
        self.setWindowFilePath(str(path) if path else "")
        self.setWindowTitle(title)

    def _tool_changed(self) -> None:
        icon = self.canvas.tool.icon
        if icon in {kind.icon for kind in TOOLS}:
            self.actions_[f"tool {icon}"].setChecked(True)

    def _fill_recent(self) -> None:
        fill_recent(self.commands.recent_menu, self.documents)
        fill_samples(self.commands.samples_menu, self.documents)

    def show_context_menu(self, place: QPoint) -> None:
        """The commands for what is selected, at a place of the screen."""
        menu = QMenu(self)
        self.actions_.fill(menu, self.commands.context_names())
        from yardplan.window.menu_letters import MenuLetters

        for letters in self.findChildren(MenuLetters):
            letters.keep(menu)
        menu.exec(place)

    def show_fields(self) -> None:
        """The fields of what is selected, ready for typing."""
        self._with_side("show_fields")

    def show_choice(self) -> None:
        """The list of plants, ready for a search."""
        self._with_side("show_choice")

    def show_plants(self) -> None:
        """The list of everything on the plan."""
        self._with_side("show_plants")

    def find_command(self) -> None:
        """Type what you want: every command by its words."""
        from yardplan.window.dialogs.command_finder import CommandFinder

        CommandFinder(self.actions_.all(), self, first=self.used.first()).exec()

    def _ask_text(self, question: str, text: str) -> str | None:
        return self.questions.text(question, text)

    def _with_side(self, does: str) -> None:
        self.build_side()
        self.side_dock.show()
        method: Callable[[], None] = getattr(self.side, does)
        method()

    # Files dropped on the window

    def dragEnterEvent(self, event: QDragEnterEvent) -> None:
        if _dropped_path(event) is not None:
            event.acceptProposedAction()

    def dropEvent(self, event: QDropEvent) -> None:
        path = _dropped_path(event)
        if path is not None:
            event.acceptProposedAction()
            if path.suffix.lower() == ".yard":
                self.documents.open_path(path)
            else:
                self._put_picture(path)

    def _put_picture(self, path: Path) -> None:
        """A picture that was dropped goes under the plan."""
        self.build_side()
        if self.drawing_commands is not None:
            self.drawing_commands.pictures.put(path)

    # Closing

    def closeEvent(self, event: QCloseEvent) -> None:
        if not self.documents.may_leave():
            event.ignore()
            return
        self.settings.setValue(_SIZE_KEY, self.saveGeometry())
        self.settings.setValue(_STATE_KEY, self.saveState())
        from yardplan.window.dock_sizes import keep_size

        for dock in (self.side_dock, self.season_dock):
            keep_size(self.settings, dock)
        self.autosave.close()
        self.open_yard.close()
        event.accept()

    def _restore_size(self) -> None:
        kept = self.settings.value(_SIZE_KEY)
        if not (isinstance(kept, QByteArray) and self.restoreGeometry(kept)):
            room = self.screen().availableSize()
            self.resize(min(FIRST_SIZE[0], room.width()), min(FIRST_SIZE[1], room.height() - _TITLE_BAR))
        state = self.settings.value(_STATE_KEY)
        if isinstance(state, QByteArray):
            self.restoreState(state)


def _dropped_path(event: QDropEvent) -> Path | None:
    """The one local `.yard` file or picture that is being dropped, or None."""
    urls = event.mimeData().urls()
    if len(urls) != 1 or not urls[0].isLocalFile():
        return None
    path = Path(urls[0].toLocalFile())
    return path if path.suffix.lower() in {".yard", *PICTURES} else None
