"""Draw a bed."""

from __future__ import annotations

from yardplan.language import later, tr
from yardplan.window.tools.areas import AreaTool
from yardplan.yard import edits
from yardplan.yard.ground import Curve, Outline
from yardplan.yard.planting import Bed


class BedTool(AreaTool):
    """A bed with soil of its own; its crop and soil are set in its fields."""

    name, key, icon = later("Bed"), "D", "bed"
    about = later("Draw a bed with soil of its own")
    what = later("bed")

    def made(self, points: Outline, curve: Curve | None) -> None:
        yard = self.open_yard.yard
        made = Bed(id=edits.next_key(yard, "BD"), outline=points, curve=curve)
        self.open_yard.commit(tr("Draw bed"), edits.add(yard, made), selection={made.id})
