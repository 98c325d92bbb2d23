"""A variety dragged out of the catalogue onto the sheet: tried under the pointer, planted at the drop."""

from __future__ import annotations

from PySide6.QtCore import QMimeData, Qt
from PySide6.QtGui import QDragEnterEvent, QDragLeaveEvent, QDragMoveEvent, QDropEvent
from PySide6.QtWidgets import QWidget

from yardplan.window.open_yard import InHand
from yardplan.yard.planting import PlantKey

#: The sort of data under which a plant travels: `crop:cultivar` in UTF-8.
PLANT_MIME = "application/x-yardplan-plant"


def plant_in(data: QMimeData) -> InHand | None:
    """The plant that dragged data carries, or None."""
    if not data.hasFormat(PLANT_MIME):
        return None
    try:
        return InHand(plant=PlantKey.parse(bytes(data.data(PLANT_MIME).data()).decode("utf-8")))
    except (UnicodeDecodeError, ValueError):
        return None


class PlantDrops(QWidget):
    """A widget onto which a plant can be dragged; files dragged here are left to the window."""

    def take_plant(self, in_hand: InHand) -> None:
        """A plant comes in: it is in hand from now on."""
        raise NotImplementedError

    def try_plant(self, event: QDropEvent) -> None:
        """Show it under the pointer."""
        raise NotImplementedError

    def leave_plant(self) -> None:
        """The pointer left with it."""
        raise NotImplementedError

    def put_plant(self, event: QDropEvent) -> None:
        """Plant it here."""
        raise NotImplementedError

    def dragEnterEvent(self, event: QDragEnterEvent) -> None:
        in_hand = plant_in(event.mimeData())
        if in_hand is None:
            event.ignore()
            return
        self.take_plant(in_hand)
        event.acceptProposedAction()

    def dragMoveEvent(self, event: QDragMoveEvent) -> None:
        if plant_in(event.mimeData()) is None:
            event.ignore()
            return
        self.try_plant(event)
        event.acceptProposedAction()

    def dragLeaveEvent(self, event: QDragLeaveEvent) -> None:
        self.leave_plant()
        event.accept()

    def dropEvent(self, event: QDropEvent) -> None:
        if plant_in(event.mimeData()) is None:
            event.ignore()
            return
        self.put_plant(event)
        self.setFocus(Qt.FocusReason.MouseFocusReason)
        event.acceptProposedAction()
