"""Plant what is in hand: the yard is shown with it under the pointer, a click plants it."""

from __future__ import annotations

from yardplan.language import later, tr
from yardplan.window.canvas.geometry import distance
from yardplan.window.open_yard import InHand
from yardplan.window.tools.dropped import DropTool
from yardplan.yard import edits
from yardplan.yard.ground import Point
from yardplan.yard.planting import Container, Planting
from yardplan.yard.yard import Yard


class PlantTool(DropTool):
    """Plants the plant in hand, in the ground or in the pot under the pointer."""

    name, key, icon = later("Plant"), "P", "plant"
    about = later("Click where the plant shall stand")
    _key: str = ""

    def ready(self) -> str | None:
        if self.open_yard.in_hand is None:
            return tr("Pick a plant from the list, then click where it shall stand")
        return None

    def hint(self) -> str:
        problem = self.ready()
        in_hand = self.open_yard.in_hand
        if problem or in_hand is None:
            return problem or ""
        return tr("Click to plant {cultivar}; or type a place like 4; 2.5", cultivar=in_hand.plant.cultivar)

    def follow(self, place: Point) -> None:
        yard, self._key = self._with(place)
        self.open_yard.show_trial(yard)

    def drop(self, place: Point) -> None:
        yard, key = self._with(place)
        in_hand = self.open_yard.in_hand
        self._key = ""
        if in_hand is not None:
            self.open_yard.commit(
                tr("Plant {cultivar}", cultivar=in_hand.plant.cultivar), yard, selection={key}
            )

    def _with(self, place: Point) -> tuple[Yard, str]:
        """The committed yard with the plant in hand at a place, and the plant's key."""
        in_hand, yard = self.open_yard.in_hand, self.open_yard.yard
        if in_hand is None:
            return yard, ""
        key = edits.next_key(yard, self._letter(in_hand))
        pot = pot_at(yard, place)
        planting = Planting(
            id=key, plant=in_hand.plant, place=pot.place if pot else place, form=in_hand.form,
            rootstock=in_hand.rootstock, container=pot.id if pot else None,
        )
        return edits.add(yard, planting), key

    def _letter(self, in_hand: InHand) -> str:
        crop = self.open_yard.catalogue.crop(in_hand.plant.crop)
        return crop.letter if crop is not None else in_hand.plant.crop[:1].upper()

    @property
    def live(self) -> frozenset[str]:
        return frozenset({self._key}) if self._key and self.open_yard.on_trial else frozenset()


def pot_at(yard: Yard, place: Point) -> Container | None:
    """The empty pot that a place falls into, or None."""
    taken = {plant.container for plant in yard.plantings}
    return next(
        (
            pot for pot in yard.containers
            if pot.id not in taken and distance(pot.place, place) <= pot.diameter / 2
        ),
        None,
    )
