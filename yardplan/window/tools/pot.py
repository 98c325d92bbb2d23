"""Put down a pot."""

from __future__ import annotations

from yardplan.language import later, tr
from yardplan.window.tools.dropped import DropTool
from yardplan.yard import edits
from yardplan.yard.ground import Point
from yardplan.yard.planting import Container

#: A usual tub for a small fruit bush, litres and metres across: common practice, shown to be changed.
VOLUME, ACROSS = 45.0, 0.45


class PotTool(DropTool):
    """A pot or tub; a plant dropped on it stands in it."""

    name, key, icon = later("Pot"), "O", "pot"
    about = later("Click where the pot shall stand")

    def drop(self, place: Point) -> None:
        yard = self.open_yard.yard
        made = Container(id=edits.next_key(yard, "PT"), place=place, volume=VOLUME, diameter=ACROSS)
        self.open_yard.commit(tr("Put down pot"), edits.add(yard, made), selection={made.id})
