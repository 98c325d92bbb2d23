"""Draw the lot line."""

from __future__ import annotations

from yardplan.language import later, tr
from yardplan.window.tools.corners import CornersTool
from yardplan.yard import edits
from yardplan.yard.ground import Outline


class LotTool(CornersTool):
    """The lot line: corners, a rectangle, or lengths with angles or bearings."""

    name, key, icon = later("Lot line"), "L", "lot"
    about = later("Draw the line round the ground that may be planted")
    what = later("lot")

    def finish(self, points: Outline) -> None:
        yard = edits.set_lot(self.open_yard.yard, points)
        self.open_yard.commit(tr("Draw the lot line"), yard, selection={"lot"})
