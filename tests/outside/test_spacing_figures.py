"""Spacing against published figures.

Sources beside each check: the average of two mature widths is the common teaching of extension and trade
(University of Georgia CAES Newswire, "Proper landscape plant spacing saves time, money", 27 Apr 2006, argues
for full mature width); Penn State Extension, Fruit Production for the Home Gardener, Table 4.3 p. 57; Iowa
State University Extension, "Spacing of Small Fruits in the Home Garden", 5 Apr 1996; Royal Horticultural
Society, advice profile 87 (cordons); geometry of square and triangular planting.
"""

import math

import pytest
from attrs import evolve
from support.builders import plant, yard_of
from support.stands import Nursery, size

from yardplan.checks import spacing
from yardplan.checks.beds import per_area, plants_in
from yardplan.checks.finding import Weight
from yardplan.checks.room import pairs, rows
from yardplan.checks.survey import survey_of
from yardplan.units import FOOT, INCH
from yardplan.yard.planting import Bed, PlantKey, Row


def overlap_of(distance: float, first: float, second: float) -> tuple[Weight | None, float]:
    yard = yard_of(plant("A1", "apple:X", (10, 10)), plant("A2", "apple:Y", (10 + distance, 10)))
    found = pairs.run(Nursery({"A1": size(first), "A2": size(second)}).survey(yard))
    return (found[0].weight, float(found[0].figures["wanted"].value)) if found else (None, 0.0)


@pytest.mark.parametrize(("first", "second"), [(10, 10), (20, 10), (6, 3), (25, 4.5)])
def test_two_plants_need_the_average_of_their_widths(first: float, second: float):
    """University of Georgia: set plants the average of the two mature widths apart."""
    wanted = (first + second) / 2 * FOOT
    assert overlap_of(wanted, first * FOOT, second * FOOT)[0] is None
    weight, figure = overlap_of(0.5 * wanted, first * FOOT, second * FOOT)
    assert figure == pytest.approx(wanted)
    assert weight is Weight.CONFLICT


@pytest.mark.parametrize(
    ("share", "weight"),
    [
        (1.0, None), (0.95, Weight.ADVICE), (0.91, Weight.ADVICE), (0.85, Weight.CAUTION),
        (0.74, Weight.CONFLICT),
    ],
)
def test_classes_of_overlap(share: float, weight: Weight | None):
    """Common practice: up to 10 percent is within tape and tables, over 25 percent too close."""
    assert overlap_of(share * 4.0, 4.0, 4.0)[0] is weight


PENN_STATE = [("M27", 5), ("B.9", 6), ("M9 T337", 8), ("M26", 8), ("M7", 12), ("MM111", 18), ("seedling", 20)]


@pytest.mark.parametrize(("stock", "feet"), PENN_STATE)
def test_penn_state_in_row_distances_do_not_conflict_beyond_pruned_sizes(stock: str, feet: float):
    """Penn State Table 4.3 sets trees in hedgerows: our full round crown may overlap there, never by half."""
    yard = yard_of(
        plant("A1", "apple:Liberty", (10, 10), rootstock=stock),
        plant("A2", "apple:Enterprise", (10 + feet * FOOT, 10), rootstock=stock), width=60,
    )
    found = [f for f in spacing.run(survey_of(yard)) if f.kind == "overlap"]
    assert all(float(f.figures["overlap"].value) < 0.5 for f in found)


IOWA = [
    ("red raspberry", "Latham", 1.5, 6.0), ("black raspberry", "Jewel", 3.0, 6.0),
    ("red currant", "Red Lake", 4.0, 6.0), ("gooseberry", "Pixwell", 4.0, 6.0),
]


@pytest.mark.parametrize(("crop", "cultivar", "in_row", "between"), IOWA)
def test_iowa_small_fruit_spacing_is_accepted(crop: str, cultivar: str, in_row: float, between: float):
    """Iowa State 1996: in the row red raspberry 1.5-3 ft, black 3 ft, currant and gooseberry 4-5 ft."""
    row = Row(
        id="R1", plant=PlantKey(crop, cultivar), line=((2.0, 10.0), (20.0, 10.0)), count=5,
        spacing=in_row * FOOT,
    )
    assert [f.kind for f in rows.run(survey_of(yard_of(rows=(row,))))] == []
    dense = evolve(row, spacing=in_row * FOOT / 3)
    assert [f.kind for f in rows.run(survey_of(yard_of(rows=(dense,))))] == ["row_dense"]
    beside = evolve(row, id="R2", line=((2.0, 10.0 + between * FOOT), (20.0, 10.0 + between * FOOT)))
    near = rows.run(survey_of(yard_of(rows=(row, beside))))
    assert all(f.weight is not Weight.CONFLICT for f in near)


def test_cordons_of_apple_60_to_90_cm_apart():
    """Royal Horticultural Society profile 87: cordons 60-90 cm apart."""
    at = [
        plant(f"A{i}", "apple:Liberty", (10 + 0.75 * i, 10), form="cordon (vertical)", rootstock="M9 T337")
        for i in range(3)
    ]
    assert [f for f in pairs.run(survey_of(yard_of(*at))) if f.weight is Weight.CONFLICT] == []


@pytest.mark.parametrize(("a", "b"), [(5, 13), (8, 16), (12, 20), (20, 28)])
def test_plants_an_acre(a: float, b: float):
    """43,560 sq ft an acre divided by both distances; a triangle takes 1.155 times a square of its side."""
    acre = 43_560 * FOOT**2
    assert per_area(a * FOOT, b * FOOT) * acre == pytest.approx(43_560 / (a * b))
    assert per_area(1.0, pattern="triangular") == pytest.approx(2 / math.sqrt(3))


#: Plants for 100 square feet by spacing in inches, as ground-cover charts of the trade print them.
ON_100_SQ_FT = {4: 900, 6: 400, 8: 225, 10: 144, 12: 100, 15: 64, 18: 44, 24: 25, 36: 11}


@pytest.mark.parametrize("inches", ON_100_SQ_FT)
def test_plants_on_100_square_feet(inches: float):
    """The chart is 14,400 square inches over the square of the spacing; whole plants fit where it divides."""
    exact = per_area(inches * INCH) * 100 * FOOT**2
    assert int(exact + 1e-9) == ON_100_SQ_FT[inches]
    side = 10 * FOOT
    bed = Bed(id="B1", outline=((0, 0), (side, 0), (side, side), (0, side)))
    fitted = plants_in(bed, inches * INCH)
    if 120 % inches == 0:
        assert fitted == ON_100_SQ_FT[inches]
    else:
        assert fitted == (120 // inches) ** 2 < ON_100_SQ_FT[inches]


@pytest.mark.parametrize(("side", "trees"), [(9, 537.8), (20, 108.9), (10, 435.6)])
def test_trees_an_acre_as_tabled(side: float, trees: float):
    """University of Georgia, Coder, Number of Trees per Acre by Spacing Distance (9 ft: about 538); Kains,
    Five Acres and Independence (1935), Table 17 (20 ft: 108.9); 10 ft from memory.
    """
    assert per_area(side * FOOT) * 43_560 * FOOT**2 == pytest.approx(trees, abs=0.06)


@pytest.mark.parametrize(("inches", "count"), [(4, 9.0), (6, 4.0), (8, 2.25), (12, 1.0)])
def test_bedding_plants_a_square_foot(inches: float, count: float):
    """144 over the square of the spacing in inches, per square foot."""
    assert per_area(inches * 0.0254) * FOOT**2 == pytest.approx(count)
