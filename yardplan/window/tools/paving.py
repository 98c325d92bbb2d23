"""Draw ground that carries no plants: path, drive, terrace, pool."""

from __future__ import annotations

from yardplan.language import later, tr
from yardplan.window.tools.areas import AreaTool
from yardplan.yard import edits
from yardplan.yard.ground import Curve, Outline, Paving


class PavingTool(AreaTool):
    """Paving: drawn as a terrace, made a path, drive or pond in its fields."""

    name, key, icon = later("Paving"), "V", "paving"
    about = later("Draw a path, drive, terrace or pond")
    what = later("paving")

    def made(self, points: Outline, curve: Curve | None) -> None:
        yard = self.open_yard.yard
        made = Paving(
            id=edits.next_key(yard, "PV"), name=tr("Terrace"), kind="terrace", outline=points, curve=curve
        )
        self.open_yard.commit(tr("Draw paving"), edits.add(yard, made), selection={made.id})
