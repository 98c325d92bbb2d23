"""The tools with their words, down the left side."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QAction, QResizeEvent
from PySide6.QtWidgets import QFrame, QPushButton, QScrollArea, QToolBar, QVBoxLayout, QWidget

from yardplan.language import tr
from yardplan.window.theme import colours_now, scaled

#: Width and height within a button, pixels.
_WIDTH, _HEIGHT = 112, 26
#: Side of a tool's picture, pixels.
_SIDE = 22
#: The column is at least so high, pixels; what has no room is scrolled to.
_LEAST = 160


class _ToolButton(QPushButton):
    """Picture and word from the left, so that the words of all tools begin below each other."""

    def __init__(self, action: QAction) -> None:
        super().__init__(action.text())
        self._action = action
        self.setCheckable(True)
        self.setToolTip(action.toolTip())
        self.setAccessibleName(action.text())
        self.setAccessibleDescription(action.statusTip())
        self.setIconSize(QSize(scaled(_SIDE), scaled(_SIDE)))
        self.clicked.connect(self._use)
        action.toggled.connect(self.setChecked)

    def _use(self) -> None:
        self._action.trigger()
        # A click on the tool in use leaves it in use.
        self.setChecked(self._action.isChecked())


class _Scrolled(QScrollArea):
    """A column that scrolls in a low window or with large text, so that no tool is cut off."""

    def __init__(self, column: QWidget) -> None:
        super().__init__()
        self._column = column
        self.setWidget(column)
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)

    def sizeHint(self) -> QSize:
        column = self._column.sizeHint()
        bar = self.verticalScrollBar()
        return QSize(column.width() + (bar.sizeHint().width() if bar.maximum() else 0), column.height())

    def minimumSizeHint(self) -> QSize:
        return QSize(self.sizeHint().width(), scaled(_LEAST))

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self.updateGeometry()


class ToolColumn(QToolBar):
    """One button a tool: picture and word."""

    def __init__(self, actions: Sequence[QAction]) -> None:
        super().__init__(tr("Tools"))
        self.setObjectName("tools")
        self.setOrientation(Qt.Orientation.Vertical)
        self.setMovable(False)
        self._tools = tuple(actions)
        column = QWidget()
        box = QVBoxLayout(column)
        box.setContentsMargins(4, 6, 4, 6)
        box.setSpacing(2)
        self.buttons = tuple(_ToolButton(action) for action in actions)
        for button in self.buttons:
            box.addWidget(button)
        box.addStretch()
        self.addWidget(_Scrolled(column))
        self._dress_buttons()

    def dress(self) -> None:
        """Draw pictures and buttons in the colours of the present scheme."""
        from yardplan.window.icons import icon

        self._dress_buttons()
        for action, button in zip(self._tools, self.buttons, strict=True):
            picture = icon(action.objectName().removeprefix("tool "), colours_now().ink)
            action.setIcon(picture)
            button.setIcon(picture)

    def _dress_buttons(self) -> None:
        c = colours_now()
        style = (
            f"QPushButton {{ text-align: left; padding: 2px 6px; border: 1px solid transparent;"
            f" background: transparent; border-radius: 4px; font-weight: normal;"
            f" min-width: {scaled(_WIDTH)}px; min-height: {scaled(_HEIGHT)}px; }}"
            f"QPushButton:hover {{ background: {c.card}; border-color: {c.rule}; }}"
            f"QPushButton:checked {{ background: {c.chosen}; border-color: {c.leaf}; }}"
            f"QPushButton:focus {{ border: 2px solid {c.focus}; padding: 1px 5px; }}"
        )
        self.setStyleSheet(style)
