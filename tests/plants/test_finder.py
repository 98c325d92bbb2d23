import pytest

from yardplan.plants.catalogue import catalogue
from yardplan.plants.cultivar import Cultivar, SelfFruit
from yardplan.plants.finder import Filters, hardy_in, meets, search, zone_number


def names(words: str, filters: Filters | None = None) -> list[str]:
    return [cultivar.name for cultivar in search(catalogue(), words, filters)]


def test_the_name_itself_comes_first() -> None:
    assert names("liberty")[0] == "Liberty"
    assert names("queen cox")[0] == "Queen Cox"


def test_all_words_must_be_found_in_any_order() -> None:
    assert names("apple lib") == names("lib apple") == ["Liberty"]
    assert names("liberty moon") == []


def test_kind_species_and_notes_are_searched() -> None:
    found = search(catalogue(), "haskap")
    assert {cultivar.crop for cultivar in found[:10]} == {"honeyberry/haskap"}
    assert all("kolomikta" in cultivar.species for cultivar in search(catalogue(), "kolomikta actinidia"))


def test_no_words_find_everything() -> None:
    assert len(names("")) == len(catalogue().cultivars)


@pytest.mark.parametrize("filters", [
    Filters(crop="apple"), Filters(zone="3a"), Filters(self_fruitful=True), Filters(spread_up_to=1.0),
    Filters(height_up_to=1.2), Filters(container=True), Filters(chill_up_to=300), Filters(ripening="late"),
    Filters(thornless=True), Filters(zone="9b", chill_up_to=400, self_fruitful=True),
])
def test_each_filter_keeps_some_and_drops_some(filters: Filters) -> None:
    kept = names("", filters)
    assert 0 < len(kept) < len(catalogue().cultivars)
    assert all(meets(cultivar, filters) for cultivar in search(catalogue(), "", filters))


def test_unknown_facts_do_not_meet_a_filter() -> None:
    bare = Cultivar(crop="apple", name="Bare")
    assert not meets(bare, Filters(zone="5b"))
    assert not meets(bare, Filters(chill_up_to=1000))
    assert not meets(bare, Filters(spread_up_to=10))
    assert meets(bare, Filters())


def test_zone_limits() -> None:
    plant = Cultivar(crop="apple", name="x", zone_min="4", zone_max="7", self_fruitful=SelfFruit.NO)
    assert [hardy_in(plant, zone) for zone in ("3b", "4a", "7b", "8a")] == [False, True, True, False]
    half = Cultivar(crop="apple", name="x", zone_min="3b")
    assert [hardy_in(half, zone) for zone in ("3a", "3b", "13b")] == [False, True, True]
    assert hardy_in(Cultivar(crop="apple", name="x"), "5") is None
    with pytest.raises(ValueError, match="not a hardiness zone"):
        zone_number("warm")
