"""Every command of the menus with its keys, as the tables of the handbook's page of keys."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtWidgets import QMenu

from yardplan.language import tr

#: Where the tables stand in the page.
PLACE = "{every command}"


def key_tables(menus: Mapping[str, QMenu]) -> str:
    """Markdown: a heading and a table for each menu that holds commands."""
    parts = []
    for menu in menus.values():
        rows = [_row(action) for action in _commands(menu)]
        if rows:
            head = f"| {tr('Command')} | {tr('Keys')} | {tr('What it does')} |\n|---|---|---|"
            parts.append(f"### {_words(menu.title())}\n\n{head}\n" + "\n".join(rows))
    return "\n\n".join(parts)


def _commands(menu: QMenu) -> Iterator[QAction]:
    for action in menu.actions():
        inner = action.menu()
        if isinstance(inner, QMenu):
            yield from (each for each in _commands(inner) if each.objectName())
        elif action.text() and action.objectName():
            yield action


def _row(action: QAction) -> str:
    name = _words(action.text()) if action.objectName() not in ("undo", "redo") else action.objectName()
    cells = (name.capitalize() if name in ("undo", "redo") else name, _keys(action), action.statusTip())
    return "| " + " | ".join(cell.replace("|", "/").replace("\\", "\\\\") for cell in cells) + " |"


def _keys(action: QAction) -> str:
    """The keys a keyboard has; those of special keyboards are left out."""
    shown = [keys.toString(QKeySequence.SequenceFormat.NativeText) for keys in action.shortcuts()]
    return ", ".join(f"**{keys}**" for keys in shown if "+" in keys or len(keys) <= 3)


def _words(text: str) -> str:
    return text.replace("&", "").rstrip("…")
