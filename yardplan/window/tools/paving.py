"""Draw ground that carries no plants: path, drive, terrace."""

from __future__ import annotations

from yardplan.language import later, tr
from yardplan.window.tools.corners import CornersTool
from yardplan.yard import edits
from yardplan.yard.ground import Outline, Paving


class PavingTool(CornersTool):
    """Paving: drawn as a terrace, made a path, drive or pond in its fields."""

    name, key, icon = later("Paving"), "V", "paving"
    about = later("Draw a path, drive, terrace or pond")
    what = later("paving")

    def finish(self, points: Outline) -> None:
        yard = self.open_yard.yard
        made = Paving(id=edits.next_key(yard, "PV"), name=tr("Terrace"), kind="terrace", outline=points)
        self.open_yard.commit(tr("Draw paving"), edits.add(yard, made), selection={made.id})
