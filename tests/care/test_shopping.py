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
    assert found["plant:apple:Idared"].quantity == 1
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
    assert bought.total == pytest.approx(2 * 4.5 * 2 * 1.1 + 20)
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


@pytest.mark.parametrize(("unit", "metric", "imperial"), [
    ("", "3", "3"), ("m", "3.00 m", "9' 10\""), ("m²", "3.0 m²", "32 sq ft"), ("kg", "3.0 kg", "6.6 lb"),
    ("L", "3.0 L", "0.8 gal"),
])
def test_amounts_in_words(unit: str, metric: str, imperial: str) -> None:
    item = Item(key="x", name="x", quantity=3.0, unit=unit)
    assert item.amount("metric") == metric
    assert item.amount("imperial") == imperial
