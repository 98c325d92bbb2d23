"""Edges between panels that can be dragged: drawn thin, but 24 px wide to the hand (WCAG 2.2, 2.5.8)."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject, QPointF, QRect, QRectF, Qt
from PySide6.QtGui import (
    QColor,
    QEnterEvent,
    QMouseEvent,
    QPainter,
    QPaintEvent,
    QPen,
    QRegion,
    QResizeEvent,
)
from PySide6.QtWidgets import QDockWidget, QMainWindow, QSplitter, QSplitterHandle, QWidget

from yardplan.language import tr
from yardplan.window.theme import TARGET, colours_now

#: What a handle takes from the panels, and the length of its mark, pixels.
_THIN, _MARK = 8, 32
#: The part of a grip that lies before its edge, towards the sheet: there is more bare room than in a panel.
_BEFORE = 13


class _Handle(QSplitterHandle):
    """A short line; what is grabbed reaches into the panels beside it."""

    def __init__(self, orientation: Qt.Orientation, parent: QSplitter) -> None:
        super().__init__(orientation, parent)
        self.setToolTip(tr("Drag to share the height"))

    def resizeEvent(self, _event: QResizeEvent) -> None:
        # The splitter lays its handle out by what is inside these margins, and keeps it above the panels.
        # Qt's own answer to this event would take the mask away, which sends the event again.
        more = (TARGET - _THIN) // 2
        self.setContentsMargins(0, more, 0, more)
        self.setAttribute(Qt.WidgetAttribute.WA_MouseNoMask, True)
        self.setMask(QRegion(self.contentsRect()))

    def enterEvent(self, event: QEnterEvent) -> None:
        super().enterEvent(event)
        self.update()

    def leaveEvent(self, event: QEvent) -> None:
        super().leaveEvent(event)
        self.update()

    def paintEvent(self, _event: QPaintEvent) -> None:
        c, middle = colours_now(), QRectF(self.rect()).center()
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        pen = QPen(QColor(c.focus if self.underMouse() else c.edge), 2.4, c=Qt.PenCapStyle.RoundCap)
        painter.setPen(pen)
        half = QPointF(_MARK / 2, 0)
        painter.drawLine(middle - half, middle + half)


class Splitter(QSplitter):
    """Panels above each other; the edge between them is dragged."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(Qt.Orientation.Vertical, parent)
        self.setChildrenCollapsible(False)
        self.setHandleWidth(_THIN)

    def createHandle(self) -> QSplitterHandle:
        return _Handle(self.orientation(), self)


#: One step of a panel's size by keyboard, pixels.
_STEP = 32


def step_dock(window: QMainWindow, dock: QDockWidget, steps: int) -> float:
    """Make a dock at the right or below larger or smaller by keyboard; gives its share of the window.

    A dock that is folded away is shown first. It keeps what its parts and the sheet need.
    """
    dock.show()
    wide = window.dockWidgetArea(dock) == Qt.DockWidgetArea.RightDockWidgetArea
    across = Qt.Orientation.Horizontal if wide else Qt.Orientation.Vertical
    size = dock.width() if wide else dock.height()
    window.resizeDocks([dock], [max(size + steps * _STEP, 1)], across)
    layout = window.layout()
    if layout is not None:
        layout.activate()
    return dock.width() / window.width() if wide else dock.height() / window.height()


class DockEdge(QWidget):
    """Lies over the thin line between the sheet and a dock at the right or below; sets the dock's size."""

    def __init__(self, window: QMainWindow, dock: QDockWidget, orientation: Qt.Orientation) -> None:
        super().__init__(window)
        self._window, self._dock = window, dock
        self._across = orientation
        self._start: tuple[QPointF, int] | None = None
        wide = orientation == Qt.Orientation.Horizontal
        self.setCursor(Qt.CursorShape.SplitHCursor if wide else Qt.CursorShape.SplitVCursor)
        self.setToolTip(tr("Drag to make the panel larger or smaller"))
        self.setAccessibleName(tr("Edge of {panel}", panel=dock.windowTitle()))
        dock.installEventFilter(self)
        self._follow()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Stay at the dock."""
        if event.type() in (QEvent.Type.Resize, QEvent.Type.Move, QEvent.Type.Show, QEvent.Type.Hide):
            self._follow()
        return bool(super().eventFilter(watched, event))

    def _follow(self) -> None:
        dock = self._dock.geometry()
        if self._across == Qt.Orientation.Horizontal:
            area = QRect(dock.left() - _BEFORE, dock.top(), TARGET, dock.height())
        else:
            area = QRect(dock.left(), dock.top() - _BEFORE - 2, dock.width(), TARGET)
        self.setGeometry(area)
        self.setVisible(self._dock.isVisible())
        self.raise_()

    def mousePressEvent(self, event: QMouseEvent) -> None:
        if event.button() == Qt.MouseButton.LeftButton:
            self._start = (event.globalPosition(), self._size())

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        if self._start is None:
            return
        pressed, size = self._start
        way = pressed - event.globalPosition()
        by = way.x() if self._across == Qt.Orientation.Horizontal else way.y()
        self._window.resizeDocks([self._dock], [max(round(size + by), 1)], self._across)

    def mouseReleaseEvent(self, _event: QMouseEvent) -> None:
        self._start = None
        self.update()

    def enterEvent(self, event: QEnterEvent) -> None:
        super().enterEvent(event)
        self.update()

    def leaveEvent(self, event: QEvent) -> None:
        super().leaveEvent(event)
        self.update()

    def _size(self) -> int:
        return self._dock.width() if self._across == Qt.Orientation.Horizontal else self._dock.height()

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Nothing but a line where the hand is."""
        if not (self.underMouse() or self._start is not None):
            return
        painter = QPainter(self)
        painter.setPen(QPen(QColor(colours_now().focus), 2))
        if self._across == Qt.Orientation.Horizontal:
            painter.drawLine(_BEFORE - 2, 0, _BEFORE - 2, self.height())
        else:
            painter.drawLine(0, _BEFORE, self.width(), _BEFORE)
