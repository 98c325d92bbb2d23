import pytest

from yardplan.plants.catalogue import catalogue
from yardplan.plants.cultivar import SelfFruit
from yardplan.yard.planting import PlantKey

RECORD = {
    "crop": "apple", "name": "Old Garden", "self_fruitful": "no", "bloom_season": "mid", "zone_min": "4",
    "chill_hours": [800, 1000], "height": 3.5, "s_alleles": ["S3", "S9"], "ploidy": 2, "pollen_good": True,
    "source": "label of the nursery",
}


def test_an_own_cultivar_is_found_like_any_other() -> None:
    known = catalogue().with_own((RECORD,))
    own = known.cultivar(PlantKey("apple", "Old Garden"))
    assert known.own_faults == ()
    assert own is not None
    assert own.own
    assert own.self_fruitful is SelfFruit.NO
    assert own.height == (3.5, 3.5)
    assert own.s_alleles == ("S3", "S9")
    assert own.sources_of("zone_min") == ("label of the nursery",)
    assert own in known.search("garden old")
    assert catalogue().cultivar(PlantKey("apple", "Old Garden")) is None


def test_an_own_cultivar_goes_before_a_shipped_one() -> None:
    known = catalogue().with_own(({"crop": "apple", "name": "Liberty", "zone_min": "3"},))
    liberty = known.cultivar(PlantKey("apple", "Liberty"))
    assert liberty is not None
    assert (liberty.own, liberty.zone_min, liberty.ploidy) == (True, "3", None)


@pytest.mark.parametrize(("change", "fault"), [
    ({"crop": "moon fruit"}, "crop 'moon fruit' is not known"),
    ({"name": ""}, "crop and name are needed"),
    ({"zone_min": "cold"}, "zone_min: 'cold' is not a hardiness zone"),
    ({"zone_min": 4}, "zone_min: must be text"),
    ({"chill_hours": [900, 100]}, "chill_hours: must run from low to high"),
    ({"chill_hours": "many"}, "chill_hours: must be a number or a pair"),
    ({"height": 0}, "height: must be more than nothing"),
    ({"height": float("nan")}, "height: must be a number"),
    ({"s_alleles": "3 and 9"}, "s_alleles: '3 and 9' is not a row of S-alleles"),
    ({"ploidy": 2.5}, "ploidy: must be a whole number"),
    ({"pollen_good": "yes"}, "pollen_good: must be true or false"),
    ({"bloom_season": "soon"}, "bloom_season: 'soon' is not one of"),
    ({"self_fruitful": "maybe"}, "self_fruitful: 'maybe' is not yes"),
    ({"colour": "red"}, "'colour' is not a fact of a cultivar"),
])
def test_bad_records_are_told_and_left_out(change: dict[str, object], fault: str) -> None:
    known = catalogue().with_own(({**RECORD, **change}, RECORD))
    assert len(known.own_faults) == 1
    assert known.own_faults[0].startswith("own cultivar 1")
    assert fault in known.own_faults[0]
    assert known.cultivar(PlantKey("apple", "Old Garden")) is not None


def test_unknown_facts_may_be_null() -> None:
    known = catalogue().with_own(({"crop": "apple", "name": "Bare", "zone_min": None},))
    assert known.own_faults == ()


def test_the_same_records_are_read_once() -> None:
    records = (RECORD,)
    assert catalogue().with_own(records) is catalogue().with_own(records)
