"""What care is given to: every plant, row and bed of a yard with the facts care depends on."""

from __future__ import annotations

from attrs import frozen

from yardplan.checks.soil_plan import soil_plans
from yardplan.checks.survey import Survey
from yardplan.language import tr
from yardplan.plants.crop import Crop, CropForm, Rootstock, Size
from yardplan.plants.cultivar import Cultivar
from yardplan.plants.forms import form_for
from yardplan.plants.stand import Standing, StandingBed, StandingRow
from yardplan.yard.planting import Bed, Planting, PlantKey, Row


@frozen(kw_only=True)
class CareThing:
    """One plant, row or bed to be cared for.

    `cultivar` is a stand-in with only its crop where the variety is not known (`known` False);
    `planted` the year, None when not set; `count` plants in it; `mature` size of one plant;
    `acidify` True where the soil of the place is to be made more acid.
    """

    id: str
    name: str
    key: PlantKey
    crop: Crop
    cultivar: Cultivar
    placed: Planting | Row | Bed
    known: bool
    planted: int | None
    count: int
    mature: Size
    form: CropForm | None = None
    stock: Rootstock | None = None
    pot: bool = False
    acidify: bool = False
    length: float = 0.0

    @property
    def habit(self) -> str:
        """Habit by which it is pruned."""
        return self.mature.habit

    def age(self, season: int) -> int | None:
        """Years in the ground counting the first as 1; None when the planting year is not set."""
        return None if self.planted is None else season - self.planted + 1


def care_things(survey: Survey) -> tuple[CareThing, ...]:
    """Everything planted whose kind is known, in the yard's order; standing trees are left to their owner."""
    sour = {plan.rooting.id for plan in soil_plans(survey) if plan.way == "acidify"}
    found = [
        _thing(plant.id, plant.thing, plant.crop, plant.cultivar, plant.mature, plant.id in sour,
               pot=plant.container is not None)
        for plant in survey.stand.plants if isinstance(plant.thing, Planting) and plant.crop is not None
    ]
    found += [
        _thing(row.id, row.row, row.crop, row.cultivar, row.plant or row.mature, row.id in sour)
        for row in survey.stand.rows if row.crop is not None
    ]
    found += [
        _thing(bed.id, bed.bed, bed.crop, bed.cultivar, bed.size, bed.id in sour)
        for bed in survey.stand.beds if bed.crop is not None and bed.size is not None
    ]
    return tuple(found)


def _thing(
    name: str, placed: Planting | Row | Bed, crop: Crop, cultivar: Cultivar | None, mature: Size, sour: bool,
    *, pot: bool = False,
) -> CareThing:
    key = placed.plant or PlantKey(crop.id, "")
    stock_name = getattr(placed, "rootstock", None)
    stock = crop.rootstock(stock_name) if stock_name else None
    return CareThing(
        id=name, name=key.cultivar or crop.name, key=PlantKey(crop.id, key.cultivar), crop=crop,
        placed=placed,
        cultivar=cultivar or Cultivar(crop=crop.id, name=key.cultivar), known=cultivar is not None,
        planted=placed.planted, count=count_of(placed), mature=mature,
        form=form_for(crop, cultivar, getattr(placed, "form", None), stock), stock=stock, pot=pot,
        acidify=sour, length=length_of(placed),
    )


def count_of(placed: Planting | Row | Bed) -> int:
    """Plants in a planting, row or bed; a bed is filled by its pattern and spacing."""
    if isinstance(placed, Planting):
        return 1
    if isinstance(placed, Row):
        return placed.count
    return bed_count(placed)


def bed_count(bed: Bed) -> int:
    """Plants that fill a bed: its area by the area each plant takes in its pattern; 0 without a spacing."""
    if bed.spacing is None or bed.spacing <= 0 or len(bed.outline) < 3:
        return 0
    each = bed.spacing**2 * (3**0.5 / 2 if bed.pattern == "triangular" else 1.0)
    return max(1, int(area_of(bed) / each + 1e-9))


def area_of(bed: Bed) -> float:
    """Area of a bed, m2 (shoelace)."""
    points = bed.outline
    turned = zip(points, (*points[1:], points[0]), strict=True)
    return abs(sum(x1 * y2 - x2 * y1 for (x1, y1), (x2, y2) in turned)) / 2


def length_of(placed: Planting | Row | Bed) -> float:
    """Length of a row, metres; 0 for others."""
    if not isinstance(placed, Row):
        return 0.0
    return max(placed.count - 1, 0) * placed.spacing


def flowering(survey: Survey) -> list[tuple[str, Cultivar]]:
    """Every kind in or beside the yard that can be in flower, standing trees included: (name, cultivar)."""
    found: dict[tuple[str, str], tuple[str, Cultivar]] = {}
    all_standing: tuple[Standing | StandingRow | StandingBed, ...] = (
        *survey.stand.plants, *survey.stand.rows, *survey.stand.beds
    )
    for thing in all_standing:
        if thing.crop is None:
            continue
        cultivar = thing.cultivar or Cultivar(crop=thing.crop.id, name="")
        kind = tr(thing.crop.name)
        name = f"{cultivar.name} ({kind})" if cultivar.name else kind
        found.setdefault((cultivar.crop, cultivar.name), (name, cultivar))
    return list(found.values())
