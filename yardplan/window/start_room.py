"""Room for the start panel: what it must not cover, and the season strip put away in a low window."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QRectF, Qt

from yardplan.window.canvas.furnishing import field_of, with_boxes
from yardplan.window.theme import scaled

if TYPE_CHECKING:
    from yardplan.window.canvas.canvas import Canvas
    from yardplan.window.dialogs.start_panel import StartPanel
    from yardplan.window.main_window import MainWindow

#: Below this height of the window, grown with the text, the panel and the season strip have no room together.
_LOW = 600


def furniture_of(canvas: Canvas) -> tuple[QRectF, tuple[QRectF, ...]]:
    """The field within the sheet's frame and the boxes of its furniture, the north arrow first. Pixels."""
    field = field_of(canvas.width(), canvas.height())
    return field, with_boxes(canvas.scene.plan_view(canvas.view, 1.0), field).keep_clear


class RoomForStart(QObject):
    """Follows the start panel: the season of an empty yard gives way to it where the window is low."""

    def __init__(self, window: MainWindow, panel: StartPanel) -> None:
        super().__init__(window)
        self._window = window
        self._put_away = False
        panel.came.connect(self._came)
        panel.went.connect(self._went)
        if panel.isVisible():
            self._came()

    def _came(self) -> None:
        dock = self._window.season_dock
        if not dock.isHidden() and self._window.height() < scaled(_LOW):
            self._put_away = True
            self._show_season(False)

    def _went(self) -> None:
        if self._put_away:
            self._put_away = False
            self._show_season(True)

    def _show_season(self, shown: bool) -> None:
        """The command in the menu stays in step."""
        dock = self._window.season_dock
        high = dock.height()
        dock.setVisible(shown)
        self._window.actions_["season"].setChecked(shown)
        if shown:
            self._window.resizeDocks([dock], [high], Qt.Orientation.Vertical)
