"""The shopping list of a plan: plants, stakes, posts, wire, mulch, soil work, netting, edging, with prices.

Quantities are estimates to buy by; figures and their sources stand in resources/care/figures.csv. Prices are
the user's own, per unit, in any currency.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping, Sequence

from attrs import frozen

from yardplan.care.conditions import needs_stake
from yardplan.care.soil_work import soil_work
from yardplan.care.tables import figures, groups, rows_for
from yardplan.care.things import CareThing, area_of, care_things, count_of
from yardplan.checks.survey import Survey
from yardplan.files.exchange.cells import to_csv
from yardplan.language import decimals, thousands, tr
from yardplan.plants.crop import Crop
from yardplan.units import FOOT, INCH, POUND, US_GALLON, System
from yardplan.yard.planting import Bed, Planting, Row

#: Habits of rows that hang on wires.
_WIRED = ("vine", "cane", "flat-trained")
_LITRES = 1000.0


@frozen(kw_only=True)
class Item:
    """One line. `key` names it in the yard's prices; `quantity` in `unit`: a count, m, m², kg or L.

    `system` the units it is bought in; `base_price` of one base unit, None when the user gave none.
    """

    key: str
    name: str
    quantity: float
    unit: str
    note: str = ""
    base_price: float | None = None
    system: System = "metric"

    @property
    def _sold(self) -> tuple[str, float]:
        """The unit it is bought in, and base units to one of it."""
        return _SOLD[self.system].get(self.unit, ("", 1.0))

    @property
    def sold_by(self) -> str:
        """The unit it is bought in: `ft`, `cu ft`; nothing for pieces."""
        return self._sold[0]

    @property
    def bought(self) -> float:
        """The quantity to buy in that unit, rounded up to what is sold."""
        exact = self.quantity / self._sold[1]
        step = 0.1 if self.unit == "kg" else 10.0 if self.sold_by == "L" and exact > _BULK else 1.0
        return round(math.ceil(exact / step - 1e-9) * step, 1)

    @property
    def amount(self) -> str:
        """The quantity to buy in words."""
        return f"{thousands(self.bought, int(self.bought % 1 > 0))} {self.sold_by}".rstrip()

    @property
    def price(self) -> float | None:
        """Price of one of the unit it is bought in; None without one."""
        return None if self.base_price is None else self.base_price * self._sold[1]

    def kept_price(self, typed: float) -> float:
        """The price that the yard keeps, of one base unit, for one typed in the unit it is bought in."""
        return typed / self._sold[1]

    @property
    def cost(self) -> float | None:
        """What is bought times its price; None without a price."""
        return None if self.price is None else self.bought * self.price


#: Litres above which nobody counts single ones.
_BULK = 100.0
#: How each base unit is sold, and base units to one of it: loose material by the litre or cubic foot.
_SOLD: Mapping[System, Mapping[str, tuple[str, float]]] = {
    "metric": {unit: (unit, 1.0) for unit in ("m", "m²", "kg", "L")},
    "imperial": {
        "m": ("ft", FOOT), "m²": ("sq ft", FOOT**2), "kg": ("lb", POUND), "L": ("cu ft", FOOT**3 * 1000.0),
    },
}


@frozen(kw_only=True)
class Shopping:
    """The list, the currency of its prices, and the total of the priced lines (None when none is priced)."""

    items: tuple[Item, ...]
    currency: str = ""

    @property
    def total(self) -> float | None:
        """Sum of the lines with a price."""
        costs = [item.cost for item in self.items if item.cost is not None]
        return sum(costs) if costs else None

    @property
    def unpriced(self) -> int:
        """Lines without a price, which the total leaves out."""
        return sum(item.price is None for item in self.items)

    def csv(self) -> str:
        """The list as CSV (RFC 4180) as it is bought; cells that look like formulas are made harmless."""
        heads = ("item", "quantity", "unit", "price", "cost", "currency", "note")
        rows = [
            (item.name, item.bought, item.sold_by, _cents(item.price), _cents(item.cost), self.currency,
             item.note)
            for item in self.items
        ]
        return to_csv(heads, rows)


def _cents(money: float | None) -> float | None:
    return None if money is None else round(money, 2)


def shopping(
    survey: Survey, bed_counts: Mapping[str, int] | None = None, system: System | None = None
) -> Shopping:
    """Everything to buy for a surveyed yard; lines that come to nothing are left out.

    `bed_counts`: plants in each bed as they are drawn; without them beds are counted by area. `system` the
    units in which all is bought, the yard's unless others are asked for.
    """
    things = care_things(survey)
    lines = [
        *_plants(survey, bed_counts or {}), *_stakes(things), *_supports(things), *_mulch(things),
        *_soil(survey), *_nets(things), *_beds(survey.yard.beds), *_pots(survey),
    ]
    prices: Mapping[str, float] = survey.yard.prices
    return Shopping(
        items=tuple(
            Item(key=key, name=name, quantity=quantity, unit=unit, note=note, base_price=prices.get(key),
                 system=system or survey.yard.site.units)
            for key, name, quantity, unit, note in lines if quantity > 0
        ),
        currency=survey.yard.currency,
    )


_Line = tuple[str, str, float, str, str]


def _plants(survey: Survey, bed_counts: Mapping[str, int]) -> Iterator[_Line]:
    """Plants by variety, rootstock and form, whether the catalogue knows them or not."""
    found: dict[tuple[str, str, str, str], int] = {}
    placed: tuple[Planting | Row | Bed, ...] = (
        *survey.yard.plantings, *survey.yard.rows, *survey.yard.beds
    )
    for thing in placed:
        if thing.plant is None:
            continue
        stock, form = getattr(thing, "rootstock", None) or "", getattr(thing, "form", None) or ""
        key = (thing.plant.crop, thing.plant.cultivar, stock, form)
        found[key] = found.get(key, 0) + bed_counts.get(thing.id, count_of(thing))
    for (crop, cultivar, stock, form), count in sorted(found.items()):
        known = survey.catalogue.crop(crop)
        kind = tr(known.name if known is not None else crop)
        parts = (tr("on {rootstock}", rootstock=stock) if stock else "", tr(without_stock(form, stock)))
        words = "".join(f", {word}" for word in parts if word)
        name = f"{kind[:1].upper()}{kind[1:]} ‘{cultivar}’{words}"
        yield (f"plant:{crop}:{cultivar}:{stock}:{form}".rstrip(":"), name, float(count), "",
               "" if words else _as_planned(known))


def _as_planned(crop: Crop | None) -> str:
    """What the plan counts on where neither rootstock nor form was chosen: others grow to other sizes."""
    if crop is None or not crop.rootstocks:
        return ""
    return tr("planned as {form}", form=tr(crop.usual_form))


def without_stock(form: str, stock: str) -> str:
    """The words of a form without the rootstock that is told beside it: `cordon` for `cordon, Quince C`."""
    return ", ".join(word for word in form.split(", ") if word != stock) if stock else form


def _stakes(things: Sequence[CareThing]) -> Iterator[_Line]:
    trees = [thing for thing in things if isinstance(thing.placed, Planting) and not thing.pot]
    staked = sum(needs_stake(tree) and tree.habit != "flat-trained" for tree in trees)
    yield "stake", tr("Stake with tie"), float(staked), "", tr("rootstocks that do not stand alone")
    guards = sum(tree.crop.id in groups()["tree fruit"] for tree in trees)
    yield "guard", tr("Trunk guard against voles and rabbits"), float(guards), "", ""


def _supports(things: Sequence[CareThing]) -> Iterator[_Line]:
    """Posts and wire of rows that hang on wires, and of trees trained flat by themselves."""
    posts = wire = 0.0
    for thing in things:
        length = _wired_length(thing)
        if length <= 0:
            continue
        flat = thing.habit == "flat-trained"
        apart = figures()["flat post spacing"] if flat else figures()["post spacing trellis"] * FOOT
        names = {"flat-trained": "flat wires", "vine": "vine wires"}
        wires = figures()[names.get(thing.habit, "row wires")]
        posts += math.ceil(length / apart - 1e-9) + 1
        wire += length * wires * (1 + figures()["wire spare"])
    note = tr("rows on wires and flat-trained trees; less where a wall or fence carries them")
    yield "post", tr("Post, about 8 ft (2.4 m)"), posts, "", note
    yield "wire", tr("Wire"), wire, "m", note
    wires = float(sum(_wires(thing) for thing in things))
    yield "strainer", tr("Wire strainer or turnbuckle"), wires, "", tr("one a wire")


def _wires(thing: CareThing) -> int:
    names = {"flat-trained": "flat wires", "vine": "vine wires"}
    return int(figures()[names.get(thing.habit, "row wires")]) if _wired_length(thing) > 0 else 0


def _wired_length(thing: CareThing) -> float:
    """Metres of wire support a planting stands along; 0 where it stands free."""
    if thing.pot or thing.habit not in _WIRED:
        return 0.0
    if isinstance(thing.placed, Row):
        return max(thing.length, thing.mature.spread) if thing.placed.supported else 0.0
    single = isinstance(thing.placed, Planting) and thing.habit != "cane"
    return thing.mature.spread if single else 0.0


def _mulch(things: Sequence[CareThing]) -> Iterator[_Line]:
    """Mulch for the first year: rings, strips and beds, by the kinds that the care table mulches."""
    area = sum(_mulched(thing) for thing in things)
    litres = area * figures()["mulch depth"] * INCH * _LITRES
    yield "mulch", tr("Mulch"), litres, "L", tr("bark, chip, straw or needles")


def _mulched(thing: CareThing) -> float:
    if thing.pot or not any(row.kind == "mulch" for row in rows_for(thing.crop.id)):
        return 0.0
    if isinstance(thing.placed, Bed):
        return area_of(thing.placed)
    if isinstance(thing.placed, Row):
        return max(thing.length, thing.placed.spacing) * 2 * figures()["bush mulch"]
    across = min(figures()["mulch ring"] * FOOT, thing.mature.spread)
    return math.pi * across**2 / 4


def _soil(survey: Survey) -> Iterator[_Line]:
    """Sulfur and limestone (the upper amounts), and fill for raised beds of acid soil."""
    steps = soil_work(survey)
    for step, name in (("sulfur", tr("Elemental sulfur")), ("lime", tr("Ground limestone"))):
        most = sum(one.kilograms[1] for one in steps if one.step == step and one.kilograms)
        note = tr("the most that may be needed; test again before each further dressing")
        yield step, name, most, "kg", note
    fill = sum(one.litres for one in steps if one.step == "bed" and one.litres)
    yield "acid fill", tr("Acid mix for a raised bed, half peat"), fill, "L", ""


def _nets(things: Sequence[CareThing]) -> Iterator[_Line]:
    """Net cloth for the kinds that the care table nets."""
    area = 0.0
    for thing in things:
        if thing.pot or not any(row.kind == "net" for row in rows_for(thing.crop.id)):
            continue
        spread = thing.mature.spread
        if isinstance(thing.placed, Bed):
            area += area_of(thing.placed)
        elif isinstance(thing.placed, Row):
            area += max(thing.length, spread) * spread
        else:
            area += math.pi * spread**2 / 4
    cloth = area * figures()["net over crown"]
    yield "net", tr("Bird netting, fine mesh"), cloth, "m²", tr("crowns at full size")


def _beds(beds: Sequence[Bed]) -> Iterator[_Line]:
    edging = sum(_round(bed) for bed in beds)
    yield "edging", tr("Edging of beds"), edging, "m", ""
    raised = sum(area_of(bed) * bed.raised for bed in beds if len(bed.outline) >= 3)
    yield "bed soil", tr("Soil for raised beds"), raised * _LITRES, "L", ""


def _round(bed: Bed) -> float:
    points = bed.outline
    return sum(math.dist(a, b) for a, b in zip(points, (*points[1:], points[0]), strict=True))


def _pots(survey: Survey) -> Iterator[_Line]:
    found: dict[float, int] = {}
    for pot in survey.yard.containers:
        found[pot.volume] = found.get(pot.volume, 0) + 1
    for volume, count in sorted(found.items()):
        name = tr("Container, {litres} L ({gallons} gal)", litres=decimals(f"{volume:g}"),
                  gallons=f"{volume / US_GALLON:.0f}")
        yield f"pot:{volume:g}", name, float(count), "", ""
    yield "potting mix", tr("Potting mix"), sum(v * n for v, n in found.items()), "L", ""
