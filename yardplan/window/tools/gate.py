"""Mark a gate: the way into the yard."""

from __future__ import annotations

from yardplan.language import later, tr
from yardplan.window.canvas.geometry import distance, nearest_on, stretches
from yardplan.window.tools.dropped import DropTool
from yardplan.yard import edits
from yardplan.yard.ground import Gate, Point
from yardplan.yard.yard import Yard

#: A gate farther than this from every line is a slip of the hand, metres.
_REACH = 0.5


class GateTool(DropTool):
    """A gate, from where plants must be reachable."""

    name, key, icon = later("Gate"), "G", "gate"
    about = later("Click on the fence, wall or lot line where one enters the yard")

    def drop(self, place: Point) -> None:
        yard = self.open_yard.yard
        made = Gate(id=edits.next_key(yard, "GT"), place=place)
        self.open_yard.commit(tr("Mark gate"), edits.add(yard, made), selection={made.id})
        if not _in_a_line(yard, place):
            self.desk.tell(tr("This gate stands in no fence, wall or lot line: drag it there"))


def _in_a_line(yard: Yard, place: Point) -> bool:
    """True when a gate at a place stands in something that it opens, or no line is drawn to stand in."""
    lines = [stretches(barrier.line, closed=False) for barrier in yard.barriers]
    lines.append(stretches(yard.lot, closed=True))
    edges = [edge for line in lines for edge in line]
    return not edges or min(distance(nearest_on(a, b, place), place) for a, b in edges) <= _REACH
