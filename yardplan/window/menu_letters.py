"""In an open menu a marked letter chooses its command, though the letter alone takes a tool on the sheet."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject, Qt
from PySide6.QtGui import QKeyEvent, QKeySequence
from PySide6.QtWidgets import QMenu, QWidget

_OTHER_KEYS = (
    Qt.KeyboardModifier.ControlModifier | Qt.KeyboardModifier.AltModifier | Qt.KeyboardModifier.MetaModifier
)


class MenuLetters(QObject):
    """Keeps the keys of tools from taking the letters of open menus."""

    def __init__(self, window: QWidget) -> None:
        """For all menus that the window has by now."""
        super().__init__(window)
        for menu in window.findChildren(QMenu):
            self.keep(menu)

    def keep(self, menu: QMenu) -> None:
        """For one menu."""
        menu.installEventFilter(self)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """A shortcut is asked about first: the menu claims its own letters, the rest stay shortcuts."""
        # `type` first: this sees every event of the menus.
        if event.type() != QEvent.Type.ShortcutOverride or not isinstance(watched, QMenu):
            return False
        if not isinstance(event, QKeyEvent) or event.modifiers() & _OTHER_KEYS:
            return False
        if event.text().upper() not in _letters(watched):
            return False
        event.accept()
        return True


def _letters(menu: QMenu) -> set[str]:
    """The letters marked in the words of a menu: `Alt+D` is D."""
    marked = (QKeySequence.mnemonic(action.text()).toString() for action in menu.actions())
    return {keys.rpartition("+")[2].upper() for keys in marked if keys}
