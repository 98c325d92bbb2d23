"""Walks over widgets that tests of the window share."""

from __future__ import annotations

from collections.abc import Iterator

from PySide6.QtCore import Qt
from PySide6.QtGui import QAccessible
from PySide6.QtWidgets import (
    QAbstractItemView,
    QAbstractScrollArea,
    QAbstractSlider,
    QLabel,
    QScrollBar,
    QWidget,
)


def focusable(root: QWidget) -> Iterator[QWidget]:
    """Every visible part of a widget that takes the focus by Tab or click."""
    for widget in (root, *root.findChildren(QWidget)):
        if isinstance(widget, QScrollBar) or not widget.isVisibleTo(root) or widget.focusProxy() is not None:
            continue
        plain_scroll = type(widget).__name__ == "QScrollArea"
        if widget.focusPolicy() != Qt.FocusPolicy.NoFocus and not plain_scroll:
            yield widget


def spoken_name(widget: QWidget) -> str:
    """What a screen reader says for a widget."""
    if widget.accessibleName():
        return widget.accessibleName()
    interface = QAccessible.queryAccessibleInterface(widget)
    return interface.text(QAccessible.Text.Name) if interface is not None else ""


def unnamed(root: QWidget) -> list[str]:
    """The focusable parts that a screen reader cannot name."""
    nameless = [widget for widget in focusable(root) if not spoken_name(widget)]
    return [f"{type(widget).__name__} in {type(widget.parent()).__name__}" for widget in nameless]


def too_small(root: QWidget, target: int = 24) -> list[str]:
    """Parts to click that are smaller than the smallest target (WCAG 2.2, 2.5.8)."""
    found = []
    for widget in focusable(root):
        if isinstance(widget, (QAbstractItemView, QAbstractScrollArea, QLabel)):
            continue
        wide, high = widget.width(), widget.height()
        if isinstance(widget, QAbstractSlider):
            wide = max(wide, high)
        if high < target or wide < target:
            found.append(f"{type(widget).__name__} {spoken_name(widget)}: {wide} x {high}")
    return found
