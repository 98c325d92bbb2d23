"""What only the running program knows of its keys, put into the pages of the handbook as they are shown.

`{key NAME}` in a page is the key of that command, `{command NAME}` its words, `{menu NAME}` those of a menu;
`{every command}` is a table of all of them.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping

from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtWidgets import QMenu

from yardplan.language import tr
from yardplan.window.actions import Actions

_TABLES = "{every command}"
_KEY, _COMMAND = re.compile(r"\{key ([^}]+)\}"), re.compile(r"\{command ([^}]+)\}")
_MENU = re.compile(r"\{menu ([^}]+)\}")
#: What every keyboard has at the end of a combination; Qt also names keys such as "Save" of special ones.
_USUAL = re.compile(r"(?:.*\+)?(?:F\d+|.|Del|Ins|Space|Home|End|Backspace|Return|Enter)")


def filled(text: str, actions: Actions, menus: Mapping[str, QMenu]) -> str:
    """A page with its keys. Raises KeyError where it names a command that is not there."""
    named = _KEY.sub(lambda found: _escaped(keys_of(actions[found.group(1)])[0]), text)
    named = _COMMAND.sub(lambda found: _words(actions[found.group(1)].text()), named)
    named = _MENU.sub(lambda found: _words(menus[found.group(1)].title()), named)
    return named.replace(_TABLES, key_tables(menus)) if _TABLES in named else named


def key_tables(menus: Mapping[str, QMenu]) -> str:
    """Markdown: a heading and a table for each menu that holds commands."""
    parts = []
    for menu in menus.values():
        rows = [_row(action) for action in _commands(menu)]
        if rows:
            head = f"| {tr('Command')} | {tr('Keys')} | {tr('What it does')} |\n|---|---|---|"
            parts.append(f"### {_words(menu.title())}\n\n{head}\n" + "\n".join(rows))
    return "\n\n".join(parts)


def keys_of(action: QAction) -> list[str]:
    """The keys that every keyboard has, the first one first."""
    form = QKeySequence.SequenceFormat
    usual = [keys for keys in action.shortcuts() if _USUAL.fullmatch(keys.toString(form.PortableText))]
    return [keys.toString(form.NativeText) for keys in usual]


def _commands(menu: QMenu) -> Iterator[QAction]:
    for action in menu.actions():
        inner = action.menu()
        if isinstance(inner, QMenu):
            yield from (each for each in _commands(inner) if each.objectName())
        elif action.text() and action.objectName():
            yield action


def _row(action: QAction) -> str:
    # The words of these two say what would be undone.
    plain = {"undo": tr("Undo"), "redo": tr("Redo")}
    name = plain.get(action.objectName(), _words(action.text()))
    keys = ", ".join(f"**{_escaped(each)}**" for each in keys_of(action))
    return f"| {_cell(name)} | {keys} | {_cell(action.statusTip())} |"


def _cell(words: str) -> str:
    return words.replace("|", "/").replace("*", "\\*")


def _escaped(keys: str) -> str:
    return keys.replace("\\", "\\\\").replace("[", "\\[").replace("]", "\\]")


def _words(text: str) -> str:
    return text.replace("&", "").rstrip("…")
