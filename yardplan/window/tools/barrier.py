"""Draw a wall, fence or hedge."""

from __future__ import annotations

from yardplan.language import later, tr
from yardplan.window.tools.corners import CornersTool
from yardplan.yard import edits
from yardplan.yard.ground import Barrier, Outline


class BarrierTool(CornersTool):
    """A line that keeps out light and people: drawn as a fence, made a wall or hedge in its fields."""

    name, key, icon = later("Wall, fence"), "F", "barrier"
    about = later("Draw a wall, fence or hedge")
    closed, least, what = False, 2, later("fence")

    def finish(self, points: Outline) -> None:
        yard = self.open_yard.yard
        made = Barrier(id=edits.next_key(yard, "WF"), name=tr("Fence"), line=points)
        self.open_yard.commit(tr("Draw fence"), edits.add(yard, made), selection={made.id})
