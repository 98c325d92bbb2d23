"""Walks over widgets that tests of the window share."""

from __future__ import annotations

from collections.abc import Iterator

from PySide6.QtCore import Qt
from PySide6.QtGui import QAccessible
from PySide6.QtWidgets import QAbstractItemView, QAbstractScrollArea, QAbstractSlider, QScrollBar, QWidget


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
    return [f"{type(w).__name__} in {type(w.parent()).__name__}" for w in focusable(root) if not spoken_name(w)]


def too_small(root: QWidget, target: int = 24) -> list[str]:
    """Parts to click that are smaller than the smallest target (WCAG 2.2, 2.5.8)."""
    found = []
    for widget in focusable(root):
        if isinstance(widget, (QAbstractItemView, QAbstractScrollArea)):
            continue
        length = max(widget.width(), widget.height()) if isinstance(widget, QAbstractSlider) else widget.width()
        if widget.height() < target or length < target:
            found.append(f"{type(widget).__name__} {spoken_name(widget)}: {widget.width()} x {widget.height()}")
    return found
