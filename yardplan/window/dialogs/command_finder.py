"""Every command by name: type what you want, press Enter. Also the list of shortcuts."""

from __future__ import annotations

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
from PySide6.QtGui import QAction, QColor, QFontMetrics, QKeyEvent, QKeySequence, QPainter
from PySide6.QtWidgets import (
    QDialog,
    QListView,
    QMenu,
    QStyle,
    QStyledItemDelegate,
    QVBoxLayout,
    QWidget,
)

from yardplan.language import tr
from yardplan.window.dialogs.box import roomy
from yardplan.window.panels.parts import SearchLine, label
from yardplan.window.theme import BASE, SMALL, TARGET, colours_now, font, scaled

_ACTION_ROLE = int(Qt.ItemDataRole.UserRole) + 1
_Index = QModelIndex | QPersistentModelIndex


def command_name(action: QAction) -> str:
    """A command's words without access key and dots."""
    return action.text().replace("&&", "\0").replace("&", "").replace("\0", "&").rstrip(".…")


def menu_name(action: QAction) -> str:
    """The title of the menu that a command stands in, or nothing."""
    menus = [home for home in action.associatedObjects() if isinstance(home, QMenu)]
    return next((menu.title().replace("&", "") for menu in menus if menu.title()), "")


def shortcut_words(action: QAction) -> str:
    """The first keys of a command as people see them."""
    return action.shortcut().toString(QKeySequence.SequenceFormat.NativeText)


def matching(actions: Sequence[QAction], words: str) -> list[QAction]:
    """The commands in whose name or hint all words are found; names that start so come first."""
    wanted = words.casefold().split()

    def rank(action: QAction) -> tuple[int, str] | None:
        name = command_name(action).casefold()
        text = f"{name} {menu_name(action)} {action.statusTip()} {action.toolTip()}".casefold()
        if not all(word in text for word in wanted):
            return None
        in_name = all(word in name for word in wanted)
        return (0 if wanted and name.startswith(wanted[0]) else 1 if in_name else 2, name)

    named = [(rank(a), a) for a in actions if command_name(a) and not a.isSeparator() and a.menu() is None]
    found = [(place, action) for place, action in named if place is not None]
    return [action for _, action in sorted(found, key=lambda pair: pair[0])]


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
        painter.setFont(font(BASE))
        painter.setPen(QColor(c.ink if action.isEnabled() else c.muted))
        words = command_name(action) + ("" if action.isEnabled() else f"  ({tr('not now')})")
        painter.drawText(inner, int(Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft), words)
        used = QFontMetrics(font(BASE)).horizontalAdvance(words)
        painter.setFont(font(SMALL + 1))
        painter.setPen(QColor(c.muted))
        home = inner.adjusted(used + 12, 0, 0, 0)
        painter.drawText(
            home, int(Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft), menu_name(action)
        )
        keys = shortcut_words(action)
        painter.drawText(inner, int(Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignRight), keys)
        painter.restore()


class CommandFinder(QDialog):
    """A line to type in and the commands that fit; Enter or a click does the chosen one."""

    def __init__(self, actions: Sequence[QAction], parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWindowTitle(tr("Find a command"))
        self.resize(roomy(self, 460, 420))
        self._actions = list(actions)
        self.commands = _Commands(self)
        self.line = SearchLine(tr("What do you want to do?"))
        self.view = QListView()
        self.view.setAccessibleName(tr("Commands"))
        self.view.setModel(self.commands)
        self.view.setItemDelegate(_Line(self.view))
        self.view.setUniformItemSizes(True)
        self.none = label(
            tr("No command has these words. Try another word, such as plant, print or undo."), "muted"
        )
        box = QVBoxLayout(self)
        box.setContentsMargins(12, 12, 12, 12)
        for part in (self.line, self.none, self.view):
            box.addWidget(part)
        self.line.installEventFilter(self)
        self.line.textChanged.connect(self._find)
        self.view.activated.connect(self._do)
        self.view.clicked.connect(self._do)
        self._find("")

    def _find(self, words: str) -> None:
        found = matching(self._actions, words)
        self.commands.show_actions(found)
        self.none.setVisible(not found)
        if found:
            self.view.setCurrentIndex(self.commands.index(0))

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
