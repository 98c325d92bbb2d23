"""The menu that chooses how large text is: as the system, or a share of the usual size."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtGui import QActionGroup
from PySide6.QtWidgets import QMenu

from yardplan.language import tr
from yardplan.window.actions import Actions, Command
from yardplan.window.theme import TEXT_SIZES, Theme

_STAYS_MS = 8000


def text_size_menu(actions: Actions, theme: Callable[[], Theme], say: Callable[[str, int], None]) -> QMenu:
    """One line a size; the choice counts from the next start on, which `say` tells."""
    menu = QMenu(tr("Te&xt size"))
    group = QActionGroup(menu)
    for size in TEXT_SIZES:
        words = tr("As the &system") if size == "system" else tr("{percent} %", percent=size)
        action = actions.add(f"text {size}", Command(
            words=words, does=_chooser(theme, size, say), check=False,
            tip=tr("Size of all text, from the next start on")))
        group.addAction(action)
        menu.addAction(action)
    menu.aboutToShow.connect(lambda: actions[f"text {theme().text_size}"].setChecked(True))
    return menu


def _chooser(theme: Callable[[], Theme], size: str, say: Callable[[str, int], None]) -> Callable[[], None]:
    def choose() -> None:
        theme().choose_text_size(size)
        say(tr("Text changes its size when yardplan is started again."), _STAYS_MS)

    return choose
