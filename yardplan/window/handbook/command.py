"""F1 and the Help menu: the handbook at the page for what has the focus, in any window of the program."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Qt
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QApplication, QDialog, QMenu, QWidget

from yardplan.language import tr
from yardplan.window.actions import Command
from yardplan.window.languages import in_force

if TYPE_CHECKING:
    from yardplan.window.handbook.pages import Page
    from yardplan.window.handbook.viewer import HandbookWindow
    from yardplan.window.main_window import MainWindow

#: Set on a box that has its own F1.
_HELPED = "has its own F1"


class HandbookCommand(QObject):
    """Adds the command, and F1 to every box as it gets the focus."""

    def __init__(self, window: MainWindow) -> None:
        super().__init__(window)
        self._window = window
        self._shown: HandbookWindow | None = None
        action = window.actions_.add("handbook", Command(
            words=tr("&Handbook"), does=self.show_here, keys=(QKeySequence.StandardKey.HelpContents,),
            tip=tr("The page for what has the focus or for the chosen tool")))
        menu = window.menus["Help"]
        menu.insertAction(menu.actions()[0] if menu.actions() else None, action)  # type: ignore[arg-type]
        app = QApplication.instance()
        if isinstance(app, QApplication):
            app.focusChanged.connect(self._focus_moved)

    def _focus_moved(self, _old: QWidget | None, now: QWidget | None) -> None:
        """A box of this window that gets the focus for the first time gets its F1."""
        box = now.window() if now is not None else None
        if not isinstance(box, QDialog) or box.property(_HELPED) or not self._ours(box):
            return
        box.setProperty(_HELPED, True)
        QShortcut(QKeySequence(QKeySequence.StandardKey.HelpContents), box).activated.connect(self.show_here)

    def _ours(self, box: QWidget) -> bool:
        """True for boxes of this window, also those opened from another box."""
        above = box.parentWidget()
        while above is not None and above is not self._window:
            above = above.parentWidget()
        return above is self._window

    def show_here(self) -> None:
        """The page for what has the focus."""
        from yardplan.window.handbook.topics import topic_of

        focus = QApplication.focusWidget()
        self.show_page(topic_of(None if isinstance(focus, QMenu) else focus))

    def show_page(self, address: str) -> HandbookWindow:
        """A page by its address, `name` or `name#section`."""
        shown = self._viewer()
        shown.go(address)
        shown.show()
        shown.raise_()
        shown.activateWindow()
        return shown

    def _viewer(self) -> HandbookWindow:
        """The one window of the handbook; a box that blocks the others gets one of its own."""
        from yardplan.window.handbook.viewer import HandbookWindow

        blocking = QApplication.activeModalWidget()
        if isinstance(blocking, QWidget):
            made = HandbookWindow(self._pages(), blocking)
            made.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
            return made
        if self._shown is None:
            self._shown = HandbookWindow(self._pages(), self._window)
        return self._shown

    def _pages(self) -> dict[str, Page]:
        from yardplan.window.handbook.key_table import filled
        from yardplan.window.handbook.pages import pages

        window = self._window
        return pages(lambda text: filled(text, window.actions_, window.menus), in_force(window.settings))
