"""A variety dragged out of the catalogue onto the sheet: tried under the pointer, planted at the drop."""

from __future__ import annotations

from PySide6.QtCore import QMimeData

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
