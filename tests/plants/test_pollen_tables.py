"""The tables of pollination and bloom: nothing dangling, every source known, every rule usable."""

import csv

import pytest

from yardplan.plants.bloom_tables import bloom_crops, crop_bloom
from yardplan.plants.catalogue import catalogue
from yardplan.plants.limits import Limits, shipped_limits
from yardplan.plants.pollen_range import SIZES, pollen_range, size_class
from yardplan.plants.pollen_tables import (
    ANY,
    TableError,
    donor_ratio,
    kin_groups,
    pollen_crop,
    published_pair,
    rows,
    seedling_kinds,
)
from yardplan.plants.sources import bibliography
from yardplan.shipped import folder
from yardplan.yard.planting import PlantKey

TABLES = sorted(path.name for path in (folder("resources") / "pollen").glob("*.csv"))


@pytest.mark.parametrize("name", [name for name in TABLES if name != "sources.csv"])
def test_every_row_has_a_known_source(name: str) -> None:
    for number, row in rows(name):
        assert row["source"] in bibliography(), f"{name}, row {number}: {row['source']}"


def test_every_crop_with_cultivars_has_a_rule_and_bloom() -> None:
    crops = {key.crop for key in catalogue().cultivars}
    assert {crop for crop in crops if pollen_crop(crop) is None} == set()
    # Figs, rhubarb and hops are not judged by bloom.
    assert {crop for crop in crops if crop_bloom(crop) is None} == {"fig", "rhubarb", "hops"}


def test_bloom_figures_make_sense() -> None:
    for crop in bloom_crops():
        bloom = crop_bloom(crop)
        assert bloom is not None
        assert 0 < bloom.usable <= 60
        assert bloom.before > 0 < bloom.after
        # Neighbouring classes meet long enough in most years: the published class rule.
        assert bloom.usable - bloom.class_step >= 6, crop


def test_pairs_name_plants_of_the_catalogue() -> None:
    unknown = []
    for number, row in rows("pairs.csv"):
        for crop, cultivar in ((row["donor_crop"], row["donor"]), (row["receiver_crop"], row["receiver"])):
            if cultivar != ANY and catalogue().cultivar(PlantKey(crop, cultivar)) is None:
                unknown.append((number, crop, cultivar))
    assert unknown == []


def test_the_closest_statement_on_a_pair_rules() -> None:
    gala = PlantKey("apple", "Gala")
    evereste, other = PlantKey("crabapple", "Evereste"), PlantKey("crabapple", "Dolgo")
    verdicts = [said.verdict for key in (evereste, other) if (said := published_pair(key, gala)) is not None]
    assert verdicts == ["yes", "partly"]


def test_kin_seedlings_and_ratios_name_known_crops() -> None:
    assert all(catalogue().cultivar(key) is not None for key in kin_groups())
    assert all(pollen_crop(kind.crop) is not None for kind in seedling_kinds().values())
    ratio = donor_ratio("hardy kiwi")
    assert ratio is not None
    assert ratio.receivers == 8
    assert donor_ratio("quince") is None


def test_limits_lie_within_their_bounds() -> None:
    for name, limit in shipped_limits().items():
        assert limit.low <= limit.value <= limit.high, name


def test_the_shipped_files_are_plain_utf8_with_one_header() -> None:
    for name in TABLES:
        with (folder("resources") / "pollen" / name).open(encoding="utf-8", newline="") as file:
            heads = next(csv.reader(file))
        assert len(heads) == len(set(heads))


@pytest.mark.parametrize(
    ("crop", "size", "best", "outer"),
    [("apple", "dwarf", 6, 15), ("apple", "standard", 15, 60), ("european pear", "standard", 15, 30),
     ("pawpaw", "standard", 5, 9), ("hazelnut", "dwarf", 6, 20), ("elderberry", "dwarf", 18, 30),
     ("grape (muscadine)", "dwarf", 15, 30), ("quince", "dwarf", 30, 60)],
)
def test_ranges_by_crop_and_size(crop: str, size: str, best: float, outer: float) -> None:
    reach = pollen_range(crop, size, Limits())  # type: ignore[arg-type]
    assert (reach.best, reach.outer) == (best, outer)


def test_outer_is_never_under_best() -> None:
    for crop in bloom_crops():
        for size in SIZES:
            local = Limits({f"pollen-best-apple-{size}": 90.0})
            reach = pollen_range(crop, size, local)
            assert reach.outer >= reach.best


@pytest.mark.parametrize(("height", "size"), [(2.5, "dwarf"), (4.0, "semi-dwarf"), (8.0, "standard")])
def test_size_classes_by_height(height: float, size: str) -> None:
    assert size_class(height, Limits()) == size


def test_a_short_row_is_named_with_file_and_row(tmp_path: object, monkeypatch: pytest.MonkeyPatch) -> None:
    from pathlib import Path

    bad = Path(str(tmp_path)) / "bad.csv"
    bad.write_text("a,b\n1\n", encoding="utf-8")
    monkeypatch.setattr("yardplan.plants.pollen_tables.resource", lambda *parts: bad)
    with pytest.raises(TableError, match=r"bad\.csv, row 2"):
        list(rows("bad.csv"))
