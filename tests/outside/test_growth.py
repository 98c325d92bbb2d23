"""Growth against published figures: shares of full size by age, girth of trial trees, measured city trees."""

from __future__ import annotations

import pytest

from yardplan.plants.catalogue import catalogue
from yardplan.plants.growth import mature_size, size_at, tree_size
from yardplan.plants.growth_tables import growth_classes, measured_kinds
from yardplan.units import FOOT
from yardplan.yard.planting import Planting, PlantKey

YEARS = (1, 2, 3, 4, 5, 6, 8, 10, 12, 15, 20)
# Percent of full spread by year for each vigour class (table worked out by hand from the printed curve:
# p = 2.5, k = 3.9 / T95, T95 = 4, 6, 10, 14, 18 years).
SHARES = {
    "very dwarf": (31, 68, 87, 95, 98, 99, 100, 100, 100, 100, 100),
    "dwarf": (16, 45, 68, 82, 91, 95, 99, 100, 100, 100, 100),
    "semi-dwarf": (6, 22, 39, 55, 68, 78, 89, 95, 98, 99, 100),
    "semi-standard": (3, 12, 24, 37, 49, 59, 75, 85, 91, 96, 99),
    "standard": (2, 7, 16, 26, 36, 45, 62, 74, 82, 91, 97),
}


def planting(crop: str, cultivar: str, **fields: str) -> Planting:
    return Planting(id="1", plant=PlantKey(crop, cultivar), place=(0.0, 0.0), **fields)


@pytest.mark.parametrize(("vigour", "percents"), SHARES.items())
def test_share_of_spread_by_year(vigour: str, percents: tuple[int, ...]) -> None:
    curve = growth_classes()[vigour].spread
    assert [round(100 * curve.share(year)) for year in YEARS] == list(percents)


# East Malling trial 1918-1934, 48 apple trees: trunk girth at 4 years 110 mm, at 15 years 409 mm (27 percent;
# stock means 25-31 percent). Data: A Collection of Problems from Many Fields (1985), pp. 357-360. Crown
# diameter keeps in proportion to trunk diameter (Urban Forestry & Urban Greening 44, 126421, 2019).
def test_standard_apple_grows_as_in_the_east_malling_trial() -> None:
    curve = growth_classes()["standard"].spread
    assert curve.share(4) / curve.share(15) == pytest.approx(110 / 409, abs=0.02)
    assert 0.25 <= curve.share(4) / curve.share(15) <= 0.31


# 109 city apples (Urban Tree Database, GTR PSW-GTR-253, 2016): mean crown and height by age, metres.
@pytest.mark.parametrize(("years", "crown", "height"), [
    (5, 3.3, 3.7), (10, 4.9, 4.8), (15, 6.1, 5.7), (20, 6.9, 6.3), (30, 8.1, 7.2),
])
def test_measured_apple_curve(years: int, crown: float, height: float) -> None:
    measured = measured_kinds()["apple (Malus sp. recorded as apple)"]
    assert measured.spread.size(years) == pytest.approx(crown, abs=0.06)
    assert measured.height.size(years) == pytest.approx(height, abs=0.06)


# The same trees against the curve for an unpruned standard apple of 30 ft: their crown sizes scatter by 30
# percent, so the curve must stay within that of the mean.
@pytest.mark.parametrize(("years", "crown"), [(10, 4.9), (15, 6.1), (20, 6.9), (30, 8.1)])
def test_unpruned_apple_is_within_the_scatter_of_city_apples(years: int, crown: float) -> None:
    full = 30 * FOOT
    assert growth_classes()["standard unpruned"].spread.share(years) * full == pytest.approx(crown, rel=0.30)


# Size at the ages printed in the table of fitted curves, every species and both measures.
@pytest.mark.parametrize(("kind", "years", "height", "crown"), [
    ("red oak", 20, 14.3, 11.1), ("pin oak", 20, 14.5, 9.6), ("Norway maple", 20, 11.8, 9.7),
    ("red maple", 20, 12.6, 9.6), ("sugar maple", 20, 13.6, 9.9), ("silver maple", 20, 15.1, 11.1),
    ("littleleaf linden", 20, 14.3, 9.7), ("silver birch", 20, 14.4, 7.6), ("black walnut", 20, 10.8, 8.9),
    ("blue spruce", 20, 8.2, 5.7),
])
def test_yard_trees_at_twenty_years(kind: str, years: int, height: float, crown: float) -> None:
    known = catalogue().tree_kind(kind)
    assert known is not None
    size = tree_size(known, years)
    assert (size.height, size.spread) == (pytest.approx(height, abs=0.06), pytest.approx(crown, abs=0.06))
    assert size.estimate


# eXtension Apples, Standard Apple Rootstocks: an unpruned standard apple is about 30 ft tall and wide; Apple
# Rootstock Info: Seedling: well pruned 16-18 ft tall and 13-16 ft wide (the table's range holds both).
def test_standard_apple_sizes() -> None:
    unpruned = mature_size(catalogue(), planting("apple", "Liberty", form="standard (unpruned)"))
    assert unpruned.height == pytest.approx(27.5 * FOOT)
    pruned = next(f for f in catalogue().crops["apple"].forms if f.form == "standard (pruned)")
    assert pruned.height[0] <= 16 * FOOT <= 18 * FOOT <= pruned.height[1]
    assert pruned.spread[0] <= 13 * FOOT <= 16 * FOOT <= pruned.spread[1]


# RHS advice profile 87: oblique cordons 1.5-2 m tall, about 0.6-0.9 m apart.
def test_cordon_size() -> None:
    cordon = mature_size(catalogue(), planting("apple", "Discovery", form="cordon"))
    assert 1.5 <= cordon.height <= 2.0
    assert cordon.habit == "flat-trained"
    form = next(f for f in catalogue().crops["apple"].forms if f.form.startswith("cordon"))
    assert form.in_row == pytest.approx((0.6, 0.9), abs=0.02)


# RHS advice profile 359: a bush on M9 reaches its size in about five years (UK trade list).
def test_dwarf_tree_fills_its_place_in_five_to_six_years() -> None:
    tree = planting("apple", "Discovery", rootstock="M9 T337")
    full = mature_size(catalogue(), tree)
    assert size_at(catalogue(), tree, 5).spread / full.spread >= 0.9
    assert size_at(catalogue(), tree, 2).spread / full.spread <= 0.5
