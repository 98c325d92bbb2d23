"""Draw a bed."""

from __future__ import annotations

from yardplan.language import later, tr
from yardplan.window.tools.corners import CornersTool
from yardplan.yard import edits
from yardplan.yard.ground import Outline
from yardplan.yard.planting import Bed


class BedTool(CornersTool):
    """A bed with soil of its own; its crop and soil are set in its fields."""

    name, key, icon = later("Bed"), "D", "bed"
    about = later("Draw a bed with soil of its own")
    what = later("bed")

    def finish(self, points: Outline) -> None:
        yard = self.open_yard.yard
        made = Bed(id=edits.next_key(yard, "BD"), outline=points)
        self.open_yard.commit(tr("Draw bed"), edits.add(yard, made), selection={made.id})
