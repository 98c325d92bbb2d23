"""Mark a gate: the way into the yard."""

from __future__ import annotations

from yardplan.language import later, tr
from yardplan.window.tools.dropped import DropTool
from yardplan.yard import edits
from yardplan.yard.ground import Gate, Point


class GateTool(DropTool):
    """A gate, from where plants must be reachable."""

    name, key, icon = later("Gate"), "G", "gate"
    about = later("Click where one enters the yard")

    def drop(self, place: Point) -> None:
        yard = self.open_yard.yard
        made = Gate(id=edits.next_key(yard, "GT"), place=place)
        self.open_yard.commit(tr("Mark gate"), edits.add(yard, made), selection={made.id})
