"""Every text that a window shows, tips or speaks, gathered from its widgets, actions and models."""

from __future__ import annotations

import re
from collections.abc import Iterator

from PySide6.QtCore import QAbstractItemModel, QAbstractListModel, QModelIndex, QObject, Qt
from PySide6.QtGui import QAction
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractItemView,
    QComboBox,
    QDockWidget,
    QLabel,
    QLineEdit,
    QMenu,
    QPlainTextEdit,
    QTabWidget,
    QWidget,
)

from support import texts

#: Rows of a long list that are read.
_ROWS = 25
#: Letters from which on the words around the names tell a language.
_TELLING = 10
_ROLES = (
    Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.ToolTipRole, Qt.ItemDataRole.AccessibleTextRole,
)


def seen_in(top: QObject) -> set[str]:
    """The texts of a widget, of all within it and of its actions."""
    found: set[str] = set()
    for part in (top, *top.findChildren(QObject)):
        if isinstance(part, QAction):
            found |= {part.text(), part.toolTip(), part.statusTip()}
        elif isinstance(part, QWidget):
            found |= set(_of_widget(part))
    return {text for text in found if text and re.search(r"[^\W\d_]{2}", text)}


def _of_widget(part: QWidget) -> Iterator[str]:
    yield from (part.windowTitle(), part.toolTip(), part.accessibleName(), part.accessibleDescription())
    match part:
        case QLabel() | QAbstractButton():
            yield part.text()
        case QLineEdit():
            yield from (part.placeholderText(), part.text())
        case QMenu():
            yield part.title()
        case QDockWidget():
            yield part.windowTitle()
        case QPlainTextEdit():
            yield part.placeholderText()
        case QComboBox():
            yield from (part.itemText(number) for number in range(part.count()))
        case QTabWidget():
            yield from (part.tabText(number) for number in range(part.count()))
        case QAbstractItemView() if part.model() is not None:
            yield from _of_model(part.model())


def _of_model(model: QAbstractItemModel) -> Iterator[str]:
    one = isinstance(model, QAbstractListModel)
    columns = range(1 if one else model.columnCount(QModelIndex()))
    for column in columns:
        yield str(model.headerData(column, Qt.Orientation.Horizontal, Qt.ItemDataRole.DisplayRole) or "")
    for row in range(min(model.rowCount(QModelIndex()), _ROWS)):
        for column in columns:
            for role in _ROLES:
                yield str(model.index(row, column).data(role) or "")


def english_among(seen: set[str], known: texts.Translations) -> list[str]:
    """Those that are said as in English although the language has other words, whole or filled in."""
    forms = {form for value in known.values() for form in ([value] if isinstance(value, str) else value)}
    plain = {text.replace("&", "") for text, own in known.items() if own != text} - {
        form.replace("&", "") for form in forms
    }
    filled = _patterns([text for text, own in known.items() if own != text])
    own = _patterns(sorted(forms))
    lines = {line.strip() for text in seen for line in text.replace("&", "").splitlines()}
    return sorted(
        line for line in lines
        if line in plain or (filled.fullmatch(line) and not own.fullmatch(line))
    )


def _patterns(known: list[str]) -> re.Pattern[str]:
    """What texts with names in them look like once filled in; only those with a few words of their own."""
    found = []
    for text in known:
        parts = re.split(r"\{\w+\}", text.replace("&", ""))
        if len(parts) > 1 and sum(len(re.sub(r"\W", "", part)) for part in parts) >= _TELLING:
            found.append(".+".join(re.escape(part) for part in parts))
    return re.compile("|".join(found) or r"(?!)")
