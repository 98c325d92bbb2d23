"""Walks over widgets that tests of the window share."""

from __future__ import annotations

from collections.abc import Iterator

from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QAccessible
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractItemView,
    QAbstractScrollArea,
    QAbstractSlider,
    QCheckBox,
    QLabel,
    QLineEdit,
    QMenuBar,
    QPushButton,
    QScrollBar,
    QTabBar,
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


def shown_parts(root: QWidget) -> Iterator[QWidget]:
    """Every part that shows, the root too; parts of other windows are left out."""
    for widget in (root, *root.findChildren(QWidget)):
        if widget.isVisible() and widget.window() is root.window():
            yield widget


def small_pieces(root: QWidget, target: int = 24) -> list[str]:
    """Pieces to hit that are no widgets of their own, or take no focus, and are smaller than the target."""
    found = []
    for widget in shown_parts(root):
        if isinstance(widget, QTabBar):
            boxes = [(widget.tabText(i), widget.tabRect(i).size()) for i in range(widget.count())]
        elif isinstance(widget, QAbstractButton):
            boxes = [(spoken_name(widget), widget.size())]
        elif isinstance(widget, QMenuBar):
            boxes = [(action.text(), widget.actionGeometry(action).size()) for action in widget.actions()]
        elif isinstance(widget, QAbstractItemView) and widget.model() is not None:
            boxes = _rows(widget)
        else:
            continue
        small = [(name, size) for name, size in boxes if min(size.width(), size.height()) < target]
        found += [f"{name}: {_size(size)}" for name, size in small]
    return found


def _rows(view: QAbstractItemView) -> list[tuple[str, QSize]]:
    """The first rows of a list as they are painted, as wide as the list."""
    model = view.model()
    rows = range(min(model.rowCount(), 3))
    boxes = [(str(model.index(row, 0).data()), view.visualRect(model.index(row, 0))) for row in rows]
    wide = view.viewport().width()
    return [(f"row {words}", QSize(wide, box.height())) for words, box in boxes if box.isValid()]


def cut_text(root: QWidget) -> list[str]:
    """Labels, buttons and tabs whose words do not fit, and parts that stick out of what holds them.

    What ends in dots on purpose tells the whole on hover and to screen readers, and is left out.
    """
    found = []
    for widget in shown_parts(root):
        name = f"{type(widget).__name__} {spoken_name(widget):.40}"
        needs = _needs(widget)
        if needs is not None and (needs.width() > widget.width() or needs.height() > widget.height()):
            found.append(f"{name}: needs {_size(needs)}, has {_size(widget.size())}")
        elif needs is not None and _sticks_out(widget, root):
            found.append(f"{name}: sticks out")
    return found


def _size(size: QSize) -> str:
    return f"{size.width()} x {size.height()}"


def _needs(widget: QWidget) -> QSize | None:
    """The least room in which all words of a part can be read; None for parts without words of their own."""
    if isinstance(widget, QLabel):
        text = widget.text()
        if not text or type(widget).__name__ in ("Elided", "_Elided"):
            return None
        if widget.wordWrap():
            return QSize(0, widget.heightForWidth(widget.width()) - 1)
        return widget.fontMetrics().size(0, text) - QSize(1, 1)
    if isinstance(widget, (QPushButton, QCheckBox)):
        words = widget.fontMetrics().size(Qt.TextFlag.TextShowMnemonic.value, widget.text())
        beside = widget.iconSize().width() if not widget.icon().isNull() else 0
        # What the style puts round the words counts too: a button squeezed below it cuts them.
        padded = widget.sizeHint().width() - 2 if isinstance(widget, QPushButton) else 0
        return QSize(max(words.width() + beside, padded), words.height())
    if isinstance(widget, QLineEdit):
        return QSize(0, widget.fontMetrics().height())
    return None


def _sticks_out(widget: QWidget, root: QWidget) -> bool:
    """True when a part is cut off by what holds it; what a scroll area holds can be scrolled to."""
    part = widget
    while part is not root:
        around = part.parentWidget()
        if around is None or isinstance(around.parentWidget(), QAbstractScrollArea):
            return False
        if not around.rect().adjusted(-2, -2, 2, 2).contains(part.geometry()):
            return True
        part = around
    return False
