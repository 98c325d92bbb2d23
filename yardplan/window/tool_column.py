"""The tools with their words, down the left side."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QPoint, QRect, QSize, Qt
from PySide6.QtGui import QAction, QIcon, QPaintEvent
from PySide6.QtWidgets import (
    QStyle,
    QStyleOptionToolButton,
    QStylePainter,
    QToolBar,
    QToolButton,
    QVBoxLayout,
    QWidget,
)

from yardplan.window.icons import SIDE, icon
from yardplan.window.theme import colours_now

#: Width and height within a button, pixels; the picture begins and the word begins so far in.
_WIDTH, _HEIGHT = 112, 22
_PICTURE_AT, _WORD_AT = 8, 38


class _ToolButton(QToolButton):
    """Picture and word from the left, so that the words of all tools begin below each other."""

    def __init__(self, action: QAction) -> None:
        super().__init__()
        self.setDefaultAction(action)
        self.setAutoRaise(True)
        self.setAccessibleName(action.text())
        self.setAccessibleDescription(action.statusTip())
        self.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        # By style sheet, since the program's own style sheet sets a smaller size for other buttons.
        self.setStyleSheet(f"min-width: {_WIDTH}px; max-width: {_WIDTH}px; min-height: {_HEIGHT}px;")

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QStylePainter(self)
        option = QStyleOptionToolButton()
        self.initStyleOption(option)
        option.text = ""
        option.icon = QIcon()
        painter.drawComplexControl(QStyle.ComplexControl.CC_ToolButton, option)
        picture = self.icon().pixmap(QSize(SIDE, SIDE), self.devicePixelRatioF())
        painter.drawPixmap(QPoint(_PICTURE_AT, (self.height() - SIDE) // 2), picture)
        words = QRect(_WORD_AT, 0, self.width() - _WORD_AT, self.height())
        flags = Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft
        painter.drawText(words, flags, self.text())


class ToolColumn(QToolBar):
    """One button a tool: picture and word."""

    def __init__(self, actions: Sequence[QAction]) -> None:
        super().__init__("Tools")
        self.setObjectName("tools")
        self.setOrientation(Qt.Orientation.Vertical)
        self.setMovable(False)
        self._tools = tuple(actions)
        self.dress()
        column = QWidget()
        box = QVBoxLayout(column)
        box.setContentsMargins(4, 6, 4, 6)
        box.setSpacing(2)
        self.buttons = tuple(_ToolButton(action) for action in actions)
        for button in self.buttons:
            box.addWidget(button)
        box.addStretch()
        self.addWidget(column)

    def dress(self) -> None:
        """Draw the pictures in the ink of the present scheme."""
        for action in self._tools:
            action.setIcon(icon(action.objectName().removeprefix("tool "), colours_now().ink))
