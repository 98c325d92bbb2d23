"""Draw the lot line."""

from __future__ import annotations

from attrs import evolve

from yardplan.language import later, tr
from yardplan.window.tools.areas import AreaTool
from yardplan.yard import edits
from yardplan.yard.ground import Curve, Outline


class LotTool(AreaTool):
    """The lot line: corners, a rectangle, or lengths with angles or bearings; or a curve."""

    name, key, icon = later("Lot line"), "L", "lot"
    about = later("Draw the line round the ground that may be planted")
    what = later("lot")

    def hint(self) -> str:
        if self.open_yard.yard.lot and not self.corners and self.form == "corners":
            return tr("The lot is drawn. The tool Select moves its corners and lengths; "
                      "a click here begins it anew")
        return super().hint()

    def made(self, points: Outline, curve: Curve | None) -> None:
        yard = evolve(edits.set_lot(self.open_yard.yard, points), lot_curve=curve)
        self.open_yard.commit(tr("Draw the lot line"), yard, selection={"lot"})
