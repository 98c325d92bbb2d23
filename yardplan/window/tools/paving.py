"""Draw ground that carries no plants: path, drive, terrace."""

from __future__ import annotations

from yardplan.window.tools.corners import CornersTool
from yardplan.yard import edits
from yardplan.yard.ground import Outline, Paving


class PavingTool(CornersTool):
    """Paving: drawn as a terrace, made a path, drive or pond in its fields."""

    name, key, icon = "Paving", "V", "paving"
    about = "Draw a path, drive, terrace or pond"
    what = "paving"

    def finish(self, points: Outline) -> None:
        yard = self.open_yard.yard
        made = Paving(id=edits.next_key(yard, "PV"), name="Terrace", kind="terrace", outline=points)
        self.open_yard.commit("Draw paving", edits.add(yard, made), selection={made.id})
