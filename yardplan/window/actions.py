"""Every command of the window as an action with words, keys and a tip; menus are lists of their names."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from functools import partial

from attrs import frozen
from PySide6.QtCore import Qt
from PySide6.QtGui import QAction, QActionGroup, QKeySequence
from PySide6.QtWidgets import QMainWindow, QMenu, QWidget

from yardplan.language import tr
from yardplan.window.tools.toolbox import ToolKind

Keys = QKeySequence.StandardKey | str
#: Keys that Qt leaves empty without a desktop theme.
_FALLBACK: dict[QKeySequence.StandardKey, str] = {
    QKeySequence.StandardKey.Quit: "Ctrl+Q",
    QKeySequence.StandardKey.Preferences: "Ctrl+,",
    QKeySequence.StandardKey.Deselect: "Ctrl+Shift+A",
    QKeySequence.StandardKey.SaveAs: "Ctrl+Shift+S",
    QKeySequence.StandardKey.FullScreen: "F11",
}


@frozen(kw_only=True)
class Command:
    """One command. `on_sheet`: its keys work only while the sheet has the keyboard (Del, single letters)."""

    words: str
    does: Callable[[], object]
    keys: tuple[Keys, ...] = ()
    tip: str = ""
    check: bool | None = None
    on_sheet: bool = False
    role: QAction.MenuRole = QAction.MenuRole.NoRole


class Actions:
    """Actions by name."""

    def __init__(self, window: QMainWindow, sheet: QWidget) -> None:
        self._window, self._sheet = window, sheet
        self._actions: dict[str, QAction] = {}
        #: Told the name of each command that is used.
        self.on_use: Callable[[str], None] = lambda _name: None

    def __getitem__(self, name: str) -> QAction:
        return self._actions[name]

    def all(self) -> Sequence[QAction]:
        """Every action, for the command finder and tests."""
        return tuple(self._actions.values())

    def add(self, name: str, command: Command) -> QAction:
        """Make an action of a command. Raises ValueError where another has the name already."""
        if name in self._actions:
            raise ValueError(f"two commands are called {name}")
        action = QAction(command.words, self._window)
        action.setObjectName(name)
        action.setShortcuts([sequence for keys in command.keys for sequence in _sequences(keys)])
        if command.on_sheet:
            action.setShortcutContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
            self._sheet.addAction(action)
        else:
            self._window.addAction(action)
        action.setMenuRole(command.role)
        _set_tip(action, command.tip)
        if command.check is not None:
            action.setCheckable(True)
            action.setChecked(command.check)
        action.triggered.connect(lambda _checked=False: self._do(name, command))
        self._actions[name] = action
        return action

    def _do(self, name: str, command: Command) -> None:
        self.on_use(name)
        command.does()

    def add_existing(self, name: str, action: QAction) -> QAction:
        """Take in an action made elsewhere (undo, redo)."""
        action.setObjectName(name)
        self._window.addAction(action)
        self._actions[name] = action
        return action

    def add_tools(self, kinds: Sequence[ToolKind], use: Callable[[ToolKind], None]) -> QActionGroup:
        """One checkable action a tool, by the tool's icon name."""
        group = QActionGroup(self._window)
        for kind in kinds:
            command = Command(
                words=tr(kind.name),
                does=partial(use, kind),
                keys=(kind.key,),
                tip=tr(kind.about),
                check=False,
                on_sheet=True,
            )
            action = self.add(f"tool {kind.icon}", command)
            group.addAction(action)
        return group

    def fill(self, menu: QMenu, names: Sequence[str]) -> None:
        """Put actions into a menu; an empty name is a line between groups."""
        for name in names:
            if name:
                menu.addAction(self._actions[name])
            else:
                menu.addSeparator()

    def menus(self, window: QMainWindow, layout: Mapping[str, Sequence[str]]) -> dict[str, QMenu]:
        """The menu bar from titles and names of actions."""
        made: dict[str, QMenu] = {}
        for title, names in layout.items():
            menu = window.menuBar().addMenu(tr(title))
            menu.setToolTipsVisible(True)
            self.fill(menu, names)
            made[title.replace("&", "")] = menu
        return made


def _sequences(keys: Keys) -> list[QKeySequence]:
    if isinstance(keys, str):
        return [QKeySequence(keys)]
    found = QKeySequence.keyBindings(keys)
    return found or [QKeySequence(_FALLBACK[keys])] if keys in _FALLBACK else found


def _set_tip(action: QAction, tip: str) -> None:
    """Name, keys and one line; the line also for the status bar."""
    name = action.text().replace("&", "").rstrip("…")
    keys = action.shortcut().toString(QKeySequence.SequenceFormat.NativeText)
    head = f"{name} ({keys})" if keys else name
    action.setToolTip(f"{head}\n{tip}" if tip else head)
    action.setStatusTip(tip)
