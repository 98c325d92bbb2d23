"""Mark a tree that stands there already, in the yard or next door."""

from __future__ import annotations

from yardplan.language import later, tr
from yardplan.window.canvas.geometry import inside
from yardplan.window.tools.dropped import DropTool
from yardplan.yard import edits
from yardplan.yard.ground import Point, StandingTree

#: Height and spread in metres of a young shade tree; a guess to be corrected in the fields. Its pollen serves
#: no fruit, so that no partner is made up.
HEIGHT, SPREAD = 8.0, 6.0
KIND = later("shade tree, small")


class StandingTreeTool(DropTool):
    """A standing tree; its kind and size are set in its fields."""

    name, key, icon = later("Standing tree"), "T", "tree"
    about = later("Click where the tree stands, in the yard or next door")

    def drop(self, place: Point) -> None:
        yard = self.open_yard.yard
        made = StandingTree(
            id=edits.next_key(yard, "N"), kind=KIND, place=place, height=HEIGHT, spread=SPREAD,
            donor="seedling", beyond_lot=bool(yard.lot) and not inside(yard.lot, place),
        )
        self.open_yard.commit(tr("Mark standing tree"), edits.add(yard, made), selection={made.id})
