"""Stands made by hand: plants of given sizes, without a catalogue."""

from __future__ import annotations

from typing import Any

from attrs import evolve

from yardplan.checks.rules import Rules
from yardplan.checks.survey import Survey
from yardplan.plants.crop import Crop, CropForm, Size
from yardplan.plants.stand import Stand, Standing, StandingBed, StandingRow
from yardplan.yard.ground import StandingTree
from yardplan.yard.planting import Planting, PlantKey, Row
from yardplan.yard.yard import Yard


def crop(name: str, **fields: Any) -> Crop:
    """A crop with the given id."""
    given: dict[str, Any] = {
        "genus": "Genus", "family": name, "letter": "A", "habit": "central leader", "usual_form": "tree",
        "sun_needed": 6.0, "sun_good": 8.0,
    }
    return Crop(id=name, name=name, **(given | fields))


def size(spread: float, height: float | None = None, habit: str = "central leader", **fields: Any) -> Size:
    """A size; as high as wide if no height is given."""
    tall = spread if height is None else height
    return Size(spread=spread, height=tall, crown_base=0.5, habit=habit, **fields)  # type: ignore[arg-type]


class Nursery:
    """Sizes and crops to make a stand of a yard with."""

    def __init__(self, sizes: dict[str, Size] | None = None, crops: dict[str, Crop] | None = None) -> None:
        self.sizes = sizes or {}
        self.crops = crops or {}

    def standing(self, yard: Yard, thing: Planting | StandingTree) -> Standing:
        if isinstance(thing, StandingTree):
            seen = size(thing.spread, thing.height)
            return Standing(
                id=thing.id, thing=thing, key=None, place=thing.place, size=seen, mature=seen,
                beyond_lot=thing.beyond_lot,
            )
        grown = self.sizes.get(thing.id) or self.sizes.get(thing.plant.crop) or size(4.0)
        kind = self.crops.get(thing.plant.crop) or crop(thing.plant.crop)
        pot = next((c for c in yard.containers if c.id == thing.container), None)
        form = next((f for f in kind.forms if f.form == (thing.form or kind.usual_form)), None)
        return Standing(
            id=thing.id, thing=thing, key=thing.plant, place=thing.place, size=grown, mature=grown,
            crop=kind, container=pot, touching=bool(form and form.touching),
        )

    def row(self, row: Row) -> StandingRow:
        grown = self.sizes.get(row.id) or size(1.0, 1.8, "cane")
        kind = self.crops.get(row.plant.crop) or crop(row.plant.crop)
        return StandingRow(id=row.id, row=row, size=grown, mature=grown, plant=grown, crop=kind)

    def stand(self, yard: Yard) -> Stand:
        things = (*yard.plantings, *yard.standing_trees)
        return Stand(
            year=None,
            plants=tuple(self.standing(yard, thing) for thing in things),
            rows=tuple(self.row(row) for row in yard.rows),
            beds=tuple(
                StandingBed(id=bed.id, bed=bed, crop=crop(bed.plant.crop) if bed.plant else None)
                for bed in yard.beds
            ),
        )

    def survey(self, yard: Yard, **fields: Any) -> Survey:
        """A survey of the yard with these sizes; no catalogue, no light."""
        return Survey(
            yard=yard, catalogue=None, stand=self.stand(yard), rules=Rules(yard.rules), **fields,  # type: ignore[arg-type]
        )


def key(text: str) -> PlantKey:
    """A plant key from `crop:cultivar`."""
    return PlantKey.parse(text)


def with_forms(kind: Crop, *forms: CropForm) -> Crop:
    """The crop with forms."""
    return evolve(kind, forms=forms)
