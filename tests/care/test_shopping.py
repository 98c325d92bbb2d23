import csv
import io
import math

import pytest
from attrs import evolve
from support import cares
from support.builders import plant, yard_of

from yardplan.care.shopping import Item, Shopping, shopping
from yardplan.checks.survey import survey_of
from yardplan.units import FOOT, INCH
from yardplan.yard.planting import Bed, Container, PlantKey
from yardplan.yard.site import Soil
from yardplan.yard.yard import Yard


def items(yard: Yard) -> dict[str, Item]:
    return {item.key: item for item in shopping(survey_of(yard)).items}


def test_plants_by_variety_and_stock() -> None:
    found = items(yard_of(
        plant("A1", "apple:Idared", (3, 4), rootstock="B.9"),
        plant("A2", "apple:Idared", (9, 4), rootstock="B.9"),
        plant("A3", "apple:Idared", (15, 4)), plant("X1", "no such:Thing", (20, 4)),
    ))
    assert found["plant:apple:Idared:B.9"].quantity == 2
    assert found["plant:apple:Idared:B.9"].name == "Apple ‘Idared’, on B.9"
    assert not found["plant:apple:Idared:B.9"].note
    assert found["plant:apple:Idared"].quantity == 1
    assert found["plant:apple:Idared"].note == "planned as semi-dwarf"
    assert found["plant:no such:Thing"].name == "No such ‘Thing’"
    assert found["stake"].quantity == 2
    assert found["guard"].quantity == 3


def test_posts_and_wire_of_a_row() -> None:
    found = items(cares.orchard(cares.site()))
    assert found["post"].quantity == math.ceil(4.5 / (20 * FOOT)) + 1
    assert found["wire"].quantity == pytest.approx(4.5 * 2 * 1.1)
    assert found["strainer"].quantity == 2


def test_mulch_ring_of_one_tree() -> None:
    found = items(yard_of(plant("A1", "apple:Idared", (3, 4), rootstock="MM106")))
    ring = math.pi * (4 * FOOT) ** 2 / 4
    assert found["mulch"].quantity == pytest.approx(ring * 3 * INCH * 1000)


def test_soil_work_is_bought() -> None:
    found = items(cares.orchard(cares.site(soil=Soil(ph=6.0, texture="loam", drainage="good"))))
    assert found["sulfur"].unit == "kg"
    assert found["sulfur"].quantity > 0
    assert "lime" not in found


def test_beds_and_pots() -> None:
    bed = Bed(id="E1", outline=((0, 0), (3, 0), (3, 2), (0, 2)), raised=0.3,
              plant=PlantKey("strawberry", "Elsanta"), spacing=0.5)
    pots = tuple(Container(id=f"K{n}", place=(9, n), volume=60) for n in (1, 2))
    yard = evolve(yard_of(site=cares.site()), beds=(bed,), containers=pots)
    found = items(yard)
    assert found["edging"].quantity == 10
    assert found["bed soil"].quantity == pytest.approx(1800)
    assert found["pot:60"].quantity == 2
    assert found["potting mix"].quantity == 120
    assert found["plant:strawberry:Elsanta"].quantity == 24
    counted = shopping(survey_of(yard), {"E1": 20})
    assert next(item for item in counted.items if item.key.startswith("plant")).quantity == 20


def test_prices_and_total() -> None:
    yard = evolve(cares.orchard(cares.site()), prices={"wire": 2.0, "post": 10.0}, currency="NZ$")
    bought = shopping(survey_of(yard))
    assert bought.currency == "NZ$"
    # 4.5 m of two wires and a tenth over are 9.9 m: 10 m are bought.
    assert bought.total == pytest.approx(2 * 10 + 20)
    assert bought.unpriced == len(bought.items) - 2
    assert shopping(survey_of(cares.orchard(cares.site()))).total is None


def test_csv_is_plain_and_harmless() -> None:
    bad = Shopping(items=(Item(key="x", name='=HYPERLINK("http://x")', quantity=1, unit="", note="a,b"),))
    text = bad.csv()
    assert text.endswith("\r\n")
    rows = list(csv.reader(io.StringIO(text, newline="")))
    assert rows[0][0] == "item"
    assert rows[1][0].startswith("'=")
    assert rows[1][-1] == "a,b"
    assert {len(row) for row in rows} == {7}


@pytest.mark.parametrize(("quantity", "unit", "metric", "imperial"), [
    (151, "", "151", "151"), (29.93, "m", "30 m", "99 ft"), (151.8, "m²", "152 m²", "1,634 sq ft"),
    (1.51, "kg", "1.6 kg", "3.4 lb"), (1747, "L", "1,750 L", "62 cu ft"), (55, "L", "55 L", "2 cu ft"),
])
def test_amounts_as_they_are_bought(quantity: float, unit: str, metric: str, imperial: str) -> None:
    item = Item(key="x", name="x", quantity=quantity, unit=unit)
    assert item.amount == metric
    assert evolve(item, system="imperial").amount == imperial


def test_a_price_is_of_the_unit_in_which_it_is_bought() -> None:
    wire = Item(key="wire", name="Wire", quantity=30.0, unit="m", system="imperial")
    assert (wire.bought, wire.sold_by) == (99.0, "ft")
    priced = evolve(wire, base_price=wire.kept_price(0.10))
    assert priced.price == pytest.approx(0.10)
    assert priced.cost == pytest.approx(9.90)
    # Shown in metres the same price is that of a metre.
    assert evolve(priced, system="metric").price == pytest.approx(0.10 / FOOT)


def test_a_rootstock_stands_once_in_a_name() -> None:
    yard = yard_of(plant("P1", "european pear:Seckel", (3, 4), rootstock="Quince C", form="cordon, Quince C"))
    (line,) = [item for key, item in items(yard).items() if key.startswith("plant")]
    assert line.name == "European pear ‘Seckel’, on Quince C, cordon"
