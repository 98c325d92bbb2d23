"""The tools with their words, down the left side."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QAction, QColor
from PySide6.QtWidgets import QToolBar, QToolButton

from yardplan.window.theme import colours_now
from yardplan.window.tool_icons import SIDE, tool_icon

_WIDTH = 122


class ToolColumn(QToolBar):
    """One button a tool: picture and word."""

    def __init__(self, actions: Sequence[QAction]) -> None:
        super().__init__("Tools")
        self.setObjectName("tools")
        self.setOrientation(Qt.Orientation.Vertical)
        self.setMovable(False)
        self.setToolButtonStyle(Qt.ToolButtonStyle.ToolButtonTextBesideIcon)
        self.setIconSize(QSize(SIDE, SIDE))
        self._tools = tuple(actions)
        self.dress()
        for action in actions:
            self.addAction(action)
            button = self.widgetForAction(action)
            if isinstance(button, QToolButton):
                button.setFixedWidth(_WIDTH)
                button.setAccessibleName(action.text())
                button.setFocusPolicy(Qt.FocusPolicy.TabFocus)

    def dress(self) -> None:
        """Draw the pictures in the ink of the present scheme."""
        ink = QColor(colours_now().ink)
        for action in self._tools:
            action.setIcon(tool_icon(action.objectName().removeprefix("tool "), ink))
