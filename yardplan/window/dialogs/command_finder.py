"""Every command by name: type what you want, press Enter. Also the list of shortcuts."""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import Any

from PySide6.QtCore import (
    QAbstractListModel,
    QEvent,
    QModelIndex,
    QObject,
    QPersistentModelIndex,
    QRect,
    QSize,
    Qt,
)
from PySide6.QtGui import QAction, QColor, QFont, QFontMetrics, QKeyEvent, QKeySequence, QPainter
from PySide6.QtWidgets import (
    QDialog,
    QHBoxLayout,
    QListView,
    QMenu,
    QStyle,
    QStyledItemDelegate,
    QVBoxLayout,
    QWidget,
)

from yardplan.language import tr
from yardplan.window.dialogs.box import close_button, press_by_enter, roomy
from yardplan.window.panels.parts import SearchLine, button, label
from yardplan.window.theme import BASE, SMALL, TARGET, colours_now, font, scaled

_ACTION_ROLE = int(Qt.ItemDataRole.UserRole) + 1
_Index = QModelIndex | QPersistentModelIndex


def command_name(action: QAction) -> str:
    """A command's words without access key and dots; a choice of a menu within a menu with what it sets."""
    words, home = _plain(action.text()).rstrip(".…"), _home(action)
    if home is None or action.actionGroup() is None or _home(home.menuAction()) is None:
        return words
    return tr("{choice}: {value}", choice=_plain(home.title()), value=words)


def menu_name(action: QAction) -> str:
    """The title of the menu of the menu bar in which a command is found, or nothing."""
    home = _home(action)
    outer = _home(home.menuAction()) if home is not None else None
    return "" if home is None else _plain((outer or home).title())


def _home(action: QAction) -> QMenu | None:
    """The menu with a title in which an action stands."""
    menus = [home for home in action.associatedObjects() if isinstance(home, QMenu)]
    return next((menu for menu in menus if menu.title()), None)


def _plain(words: str) -> str:
    return words.replace("&&", "\0").replace("&", "").replace("\0", "&")


def shortcut_words(action: QAction) -> str:
    """The first keys of a command as people see them."""
    return action.shortcut().toString(QKeySequence.SequenceFormat.NativeText)


def matching(actions: Sequence[QAction], words: str, first: Sequence[str] = ()) -> list[QAction]:
    """The commands in which all words are found, the likeliest first.

    Names that are or begin with what was typed, then names whose words begin so, then names that hold it,
    then menus and hints; among equals those of `first` (names of actions, in their order). Without words
    those of `first` come before all others.
    """
    wanted = " ".join(words.casefold().split())
    places = {name: place for place, name in enumerate(first)}
    found = []
    for action in actions:
        name = command_name(action)
        rank = _rank(action, name.casefold(), wanted) if name and not action.isSeparator() else None
        if rank is not None and action.menu() is None:
            place = places.get(action.objectName(), len(places))
            now = action.isEnabled() or not wanted
            found.append(((rank, not now, place, name.casefold()), action))
    return [action for _, action in sorted(found, key=lambda pair: pair[0])]


def _rank(action: QAction, name: str, wanted: str) -> int | None:
    """How well a command fits, 0 the best; None where it does not."""
    parts = wanted.split()
    if name.startswith(wanted):
        return 0 if not wanted or name == wanted else 1
    begins = re.split(r"[^\w]+", name)
    if all(any(begin.startswith(part) for begin in begins) for part in parts):
        return 2
    if all(part in name for part in parts):
        return 3
    text = f"{name} {menu_name(action)} {action.statusTip()} {action.toolTip()}".casefold()
    return 4 if all(part in text for part in parts) else None


class _Commands(QAbstractListModel):
    """The commands found."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._actions: list[QAction] = []

    def show_actions(self, actions: list[QAction]) -> None:
        self.beginResetModel()
        self._actions = actions
        self.endResetModel()

    def action(self, row: int) -> QAction:
        """The command in a row."""
        return self._actions[row]

    def rowCount(self, parent: _Index = QModelIndex()) -> int:  # noqa: B008 - Qt's own signature
        return 0 if parent.isValid() else len(self._actions)

    def data(self, index: _Index, role: int = int(Qt.ItemDataRole.DisplayRole)) -> Any:
        if not index.isValid():
            return None
        action = self._actions[index.row()]
        if role in (Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.AccessibleTextRole):
            now = "" if action.isEnabled() else tr("not now")
            words = [command_name(action), menu_name(action), shortcut_words(action), now]
            return ", ".join(word for word in words if word)
        return action if role == _ACTION_ROLE else None


class _Line(QStyledItemDelegate):
    """A command and its keys on one line."""

    def sizeHint(self, _option: Any, _index: _Index) -> QSize:
        return QSize(200, scaled(TARGET + 4))

    def paint(self, painter: QPainter, option: Any, index: _Index) -> None:
        action: QAction = index.data(_ACTION_ROLE)
        c = colours_now()
        box: QRect = option.rect
        painter.save()
        if option.state & QStyle.StateFlag.State_Selected:
            painter.fillRect(box, QColor(c.chosen))
        inner = box.adjusted(8, 0, -8, 0)
        name, small = font(BASE), font(SMALL + 1)
        keys = shortcut_words(action)
        room = inner.width() - QFontMetrics(small).horizontalAdvance(keys) - 12
        words = command_name(action) + ("" if action.isEnabled() else f"  ({tr('not now')})")
        used = min(QFontMetrics(name).horizontalAdvance(words), room) + 12
        ink = c.ink if action.isEnabled() else c.muted
        _write(painter, inner.adjusted(0, 0, room - inner.width(), 0), words, name, ink)
        _write(painter, inner.adjusted(used, 0, room - inner.width(), 0), menu_name(action), small, c.muted)
        _write(painter, inner.adjusted(room, 0, 0, 0), keys, small, c.muted, right=True)
        painter.restore()


def _write(painter: QPainter, box: QRect, words: str, face: QFont, ink: str, *, right: bool = False) -> None:
    """Words on one line, ending in dots where there is no room."""
    flag = Qt.AlignmentFlag
    shown = QFontMetrics(face).elidedText(words, Qt.TextElideMode.ElideRight, max(box.width(), 0))
    painter.setFont(face)
    painter.setPen(QColor(ink))
    painter.drawText(box, int(flag.AlignVCenter | (flag.AlignRight if right else flag.AlignLeft)), shown)


class CommandFinder(QDialog):
    """A line to type in and the commands that fit; Enter or a click does the chosen one."""

    def __init__(
        self, actions: Sequence[QAction], parent: QWidget | None = None, *, first: Sequence[str] = ()
    ) -> None:
        super().__init__(parent)
        self.setWindowTitle(tr("Find a command"))
        self.resize(roomy(self, 460, 420))
        self._actions, self._first = list(actions), first
        self.commands = _Commands(self)
        self.line = SearchLine(tr("What do you want to do?"))
        self.view = QListView()
        self.view.setAccessibleName(tr("Commands"))
        self.view.setModel(self.commands)
        self.view.setItemDelegate(_Line(self.view))
        self.view.setUniformItemSizes(True)
        self.none = label(
            tr("No command has these words. Try another word, such as plant, print or undo."), "muted",
            wrap=True,
        )
        box = QVBoxLayout(self)
        box.setContentsMargins(12, 12, 12, 12)
        for part in (self.line, self.none, self.view):
            box.addWidget(part)
        self.do = button(tr("Do it"), "main", tip=tr("The command chosen in the list"))
        foot = QHBoxLayout()
        foot.addStretch()
        foot.addWidget(close_button(self))
        foot.addWidget(self.do)
        box.addLayout(foot)
        press_by_enter(self.do)
        self.do.clicked.connect(lambda: self._do(self.view.currentIndex()))
        self.line.installEventFilter(self)
        self.line.textChanged.connect(self._find)
        self.view.activated.connect(self._do)
        self.view.clicked.connect(self._do)
        self._find("")

    def _find(self, words: str) -> None:
        found = matching(self._actions, words, self._first)
        self.commands.show_actions(found)
        self.none.setVisible(not found)
        self.do.setEnabled(bool(found))
        if found:
            self.view.setCurrentIndex(self.commands.index(0))
            self.view.scrollToTop()

    def _do(self, index: QModelIndex) -> None:
        action = self.commands.action(index.row()) if index.isValid() else None
        if action is not None and action.isEnabled():
            self.accept()
            action.trigger()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Arrows walk the list and Enter does it, while the cursor stays in the line."""
        if watched is self.line and isinstance(event, QKeyEvent) and event.type() == QEvent.Type.KeyPress:
            if event.key() in (Qt.Key.Key_Down, Qt.Key.Key_Up, Qt.Key.Key_PageDown, Qt.Key.Key_PageUp):
                self.view.keyPressEvent(event)
                return True
            if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
                self._do(self.view.currentIndex())
                return True
        return bool(super().eventFilter(watched, event))
