"""Nothing was lost on the way into the tables: row counts, and values as the bulletins print them."""

from __future__ import annotations

import csv
import re
from itertools import pairwise

import pytest

from yardplan.plants.catalogue import Catalogue, catalogue
from yardplan.plants.cultivar import MEMORY
from yardplan.plants.sources import bibliography, lists
from yardplan.plants.tables import parse_cites
from yardplan.shipped import folder, resource
from yardplan.units import FOOT
from yardplan.yard.planting import PlantKey

#: Data rows collected from the bulletins, table by table (counted when they were collected).
COUNTS = {
    "tree-fruit-cultivars": 329, "small-fruit-cultivars": 279, "rootstocks": 105, "crop-size": 151,
    "growth-curves": 70, "bloom-dates": 54, "bud-kill": 77, "harvest": 58, "yield-by-age": 140,
    "ornament": 114, "disease-resistance": 294, "zones": 47,
}


def table(name: str) -> list[dict[str, str]]:
    with resource("plants", f"{name}.csv").open(encoding="utf-8", newline="") as stream:
        return list(csv.DictReader(stream))


@pytest.fixture(scope="module")
def known() -> Catalogue:
    return catalogue()


@pytest.mark.parametrize(("name", "rows"), COUNTS.items())
def test_row_counts(name: str, rows: int) -> None:
    assert len(table(name)) == rows


@pytest.mark.parametrize("name", COUNTS)
def test_every_row_names_sources_that_the_bibliography_holds(name: str) -> None:
    ids = bibliography()
    for number, row in enumerate(table(name), start=2):
        cites = parse_cites(row["sources"])
        assert cites, f"{name} row {number}"
        for cite in cites:
            assert cite.source in ids, f"{name} row {number}: {cite.source}"
            assert set(cite.columns) <= row.keys(), f"{name} row {number}: {cite.columns}"


def test_files_are_utf8_with_plain_line_ends() -> None:
    for path in sorted(folder("resources").joinpath("plants").glob("*.csv")):
        content = path.read_bytes()
        assert b"\r" not in content, path.name
        assert content.decode("utf-8").endswith("\n"), path.name


def test_from_memory_stays_visible() -> None:
    # Counted in the collection: 34 rootstocks and 49 size rows have no published check at all.
    for name, rows in (("rootstocks", 34), ("crop-size", 49)):
        assert sum(row["sources"] == MEMORY for row in table(name)) == rows


def test_an_id_means_one_document() -> None:
    seen: dict[str, str] = {}
    for path in lists():
        with path.open(encoding="utf-8", newline="") as stream:
            for row in csv.DictReader(stream):
                assert seen.setdefault(row["id"], row["title"]) == row["title"], row["id"]


def test_no_firm_or_trade_mark_signs() -> None:
    for name in COUNTS:
        text = resource("plants", f"{name}.csv").read_text(encoding="utf-8")
        assert not re.search("[™®]|brief's", text), name


# NC State Extension HIL-302, Blooming and Ripening Timing of Apple Varieties in North Carolina (1993):
# days of bloom from Red Delicious.
@pytest.mark.parametrize(("name", "days"), [
    ("Lodi", -8), ("Paulared", -7), ("Ginger Gold", -3), ("Gala", -2), ("McIntosh", -1), ("Empire", 0),
    ("Red Delicious", 0), ("Golden Delicious", 1), ("Stayman", 2), ("Rome Beauty", 3), ("Fuji", 4),
])
def test_apple_bloom_order(known: Catalogue, name: str, days: float) -> None:
    cultivar = known.cultivars[PlantKey("apple", name)]
    assert cultivar.bloom_order == days
    assert "nc-hil-302" in cultivar.sources_of("bloom_order")


# Julius Kuehn-Institut, Self-incompatibility (S) genotypes of cultivated sweet cherries, update 2020.
@pytest.mark.parametrize(("name", "alleles", "group"), [
    ("Bing", ("S3", "S4"), "III"), ("Lambert", ("S3", "S4"), "III"), ("Van", ("S1", "S3"), "II"),
    ("Regina", ("S1", "S3"), "II"), ("Kordia", ("S3", "S6"), "VI"), ("Rainier", ("S1", "S4"), "IX"),
    ("Burlat", ("S3", "S9"), "XVI"), ("Sam", ("S2", "S4"), "XIII"), ("Lapins", ("S1", "S4'"), "SC"),
    ("Stella", ("S3", "S4'"), "SC"),
])
def test_sweet_cherry_alleles(known: Catalogue, name: str, alleles: tuple[str, ...], group: str) -> None:
    cultivar = known.cultivars[PlantKey("sweet cherry", name)]
    assert (cultivar.s_alleles, cultivar.incompatibility_group) == (alleles, group)
    assert "jki-cherry-s-2020" in cultivar.sources_of("s_alleles")


# Royal Horticultural Society, Rootstocks for fruit (advice profile 359): height and spread of a bush, ft.
@pytest.mark.parametrize(("name", "height", "spread"), [
    ("M27", (4, 6), (5, 5)), ("M9 T337", (6, 8), (9, 9)), ("M26", (8, 10), (12, 12)),
])
def test_apple_rootstock_sizes(
    known: Catalogue, name: str, height: tuple[float, float], spread: tuple[float, float]
) -> None:
    stock = known.crops["apple"].rootstock(name)
    assert stock is not None
    assert stock.height == pytest.approx([foot * FOOT for foot in height])
    assert stock.spread == pytest.approx([foot * FOOT for foot in spread])
    assert "rhs-rootstocks-359" in stock.sources_of("spread_ft_low")


# Penn State Extension, Fruit Production for the Home Gardener, Table 4.3: percent of a seedling tree.
# Where other sources give a range, it must hold the printed figure.
@pytest.mark.parametrize(("name", "percent"), [
    ("M27", 15), ("M27", 20), ("B.9", 30), ("M9 T337", 35), ("M26", 40), ("M7", 60),
    ("M9 interstem on MM111", 40), ("MM111", 70), ("seedling", 100),
])
def test_apple_rootstock_percent(known: Catalogue, name: str, percent: float) -> None:
    stock = known.crops["apple"].rootstock(name)
    assert stock is not None
    assert stock.percent is not None
    assert stock.percent[0] <= percent <= stock.percent[1]


# University of Minnesota Extension WW-02241, blueberry cultivar table.
def test_half_high_blueberries(known: Catalogue) -> None:
    printed = {"St. Cloud": "no", "Polaris": "no", "Northblue": "yes", "Northsky": "partly"}
    for name, alone in printed.items():
        cultivar = known.cultivars[PlantKey("half-high blueberry", name)]
        assert cultivar.self_fruitful.value == alone
        assert cultivar.zone_min == "3"


# USDA Plant Hardiness Zone Map 2023: zone 1a starts at -60 F, half zones are 5 F wide, 13b ends at 70 F.
def test_hardiness_zones_are_five_degrees_wide() -> None:
    usda = [row for row in table("zones") if row["system"] == "USDA"]
    assert [row["zone"] for row in usda] == [f"{n}{half}" for n in range(1, 14) for half in "ab"]
    assert (usda[0]["low_F"], usda[-1]["high_F"]) == ("-60", "70")
    assert all(float(row["high_F"]) - float(row["low_F"]) == 5 for row in usda)
    assert all(low["high_F"] == high["low_F"] for low, high in pairwise(usda))
    for row in usda:
        assert float(row["low_C"]) == pytest.approx((float(row["low_F"]) - 32) / 1.8, abs=0.06)


# Worked pairs of the pollination table: sports and synonyms that must be known by name.
@pytest.mark.parametrize(("crop", "name", "clone_of"), [
    ("apple", "Starkrimson (red sport)", "Red Delicious"), ("apple", "Tenroy", "Gala"),
    ("apple", "Queen Cox clone 18", "Cox's Orange Pippin"),
    ("european pear", "Starkrimson", "Clapp's Favorite"),
    ("european pear", "Max Red Bartlett", "Bartlett"), ("european pear", "Sensation", "Bartlett"),
    ("sweet cherry", "Compact Stella", "Stella"), ("asian pear", "Gold Nijisseiki", "Nijisseiki"),
])
def test_sports_are_known(known: Catalogue, crop: str, name: str, clone_of: str) -> None:
    cultivar = known.cultivar(PlantKey(crop, name))
    assert cultivar is not None
    assert cultivar.sport_of == clone_of


# One tree, several names (Julius Kuehn-Institut; UK National Fruit Collection; University of Maine; NIAB).
@pytest.mark.parametrize(("crop", "other", "name"), [
    ("european pear", "Williams Bon Chretien", "Bartlett"), ("sweet cherry", "Royal Ann", "Napoleon"),
    ("sweet cherry", "Techlovicka II", "Kordia"), ("asian pear", "20th Century", "Nijisseiki"),
    ("apple", "Red Pippin", "Fiesta"), ("apple", "Crispin", "Mutsu"),
    ("european plum", "Imperial Gage", "Denniston's Superb"),
])
def test_synonyms_lead_to_the_cultivar(known: Catalogue, crop: str, other: str, name: str) -> None:
    assert known.cultivar(PlantKey(crop, other)) is known.cultivars[PlantKey(crop, name)]


# US Forest Service, Urban Tree Database (GTR PSW-GTR-253, 2016): height x crown of city trees at 20 years, m.
@pytest.mark.parametrize(("kind", "height", "crown"), [
    ("oak, northern red", 14.3, 11.1), ("oak, pin", 14.5, 9.6), ("maple, Norway", 11.8, 9.7),
    ("linden, littleleaf", 14.3, 9.7), ("birch, silver", 14.4, 7.6), ("walnut, black", 10.8, 8.9),
    ("spruce, Colorado blue", 8.2, 5.7), ("pear, callery", 9.9, 8.3), ("crabapple", 6.5, 6.9),
])
def test_city_trees_at_twenty_years(kind: str, height: float, crown: float) -> None:
    rows = {row["variable"]: row for row in table("growth-curves") if row["species"].startswith(f"{kind} (")}
    assert float(rows["height"]["size_20y_m"]) == height
    assert float(rows["crown diameter"]["size_20y_m"]) == crown
