"""Draw a building."""

from __future__ import annotations

from yardplan.language import later, mid_sentence, tr
from yardplan.window.tools.corners import CornersTool
from yardplan.yard import edits
from yardplan.yard.ground import Building, Outline

#: Usual eaves and ridge in metres of a one-storey house and of a shed: common practice, shown to be changed.
HOUSE = (2.8, 5.5)
SHED = (2.2, 2.8)


class BuildingTool(CornersTool):
    """A building: the first one drawn is the house."""

    name, key, icon = later("Building"), "B", "building"
    about = later("Draw a house, garage or shed")
    what = later("building")

    def finish(self, points: Outline) -> None:
        yard = self.open_yard.yard
        first = not any(not building.beyond_lot for building in yard.buildings)
        eaves, ridge = HOUSE if first else SHED
        made = Building(
            id=edits.next_key(yard, "BL"), name=tr("House") if first else tr("Shed"), footprint=points,
            eaves=eaves, ridge=ridge, roof="gable" if len(points) == 4 else "flat",
        )
        if made.roof == "flat":
            made = Building(id=made.id, name=made.name, footprint=points, eaves=eaves, ridge=eaves)
        self.open_yard.commit(
            tr("Draw {what}", what=mid_sentence(made.name)), edits.add(yard, made), selection={made.id}
        )
