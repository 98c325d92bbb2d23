import time
from pathlib import Path

import pytest

from yardplan.plants import cultivar_rows
from yardplan.plants.catalogue import Catalogue, catalogue
from yardplan.plants.cultivar import MEMORY, SelfFruit
from yardplan.plants.tables import TableError
from yardplan.units import FOOT
from yardplan.yard.planting import PlantKey


def test_crops_have_forms_and_letters_of_their_own() -> None:
    known = catalogue()
    assert len({crop.letter for crop in known.crops.values()}) == len(known.crops)
    assert all(1 <= len(crop.letter) <= 2 for crop in known.crops.values())
    for crop in known.crops.values():
        assert crop.forms, crop.id
        assert crop.sun_needed <= crop.sun_good
        assert 0 < crop.light_leaf <= crop.light_bare <= 1
        assert crop.ph is None or 3.5 <= crop.ph[0] < crop.ph[1] <= 9


def test_every_cultivar_has_its_crop() -> None:
    known = catalogue()
    assert {key.crop for key in known.cultivars} <= known.crops.keys()
    assert all(key == cultivar.key for key, cultivar in known.cultivars.items())


def test_usual_forms_are_in_the_size_table() -> None:
    from yardplan.plants.forms import form_named
    for crop in catalogue().crops.values():
        assert form_named(crop, crop.usual_form) is not None, crop.id
        assert all(form_named(crop, form) for _, form in crop.usual_form_for), crop.id


def test_facts_of_one_cultivar() -> None:
    duke = catalogue().cultivars[PlantKey("northern highbush blueberry", "Duke")]
    assert duke.self_fruitful is SelfFruit.YES
    assert duke.height == pytest.approx((4 * FOOT, 6 * FOOT))
    assert duke.chill_hours == (800, 1000)
    assert duke.sources_of("zone_max") == ("psu-edible-woody",)
    assert duke.sources_of("height") == (MEMORY,)
    assert duke.from_memory("height")
    assert not duke.from_memory("zone_max")


def test_names_are_understood_whatever_their_case_and_alias() -> None:
    known = catalogue()
    assert known.crop("Haskap") is known.crops["honeyberry/haskap"]
    assert known.crop("pear (European)") is known.crops["european pear"]
    assert known.crop("no such fruit") is None
    tundra = known.cultivars[PlantKey("honeyberry/haskap", "Tundra")]
    assert known.cultivar(PlantKey("haskap", "tundra")) is tundra
    assert known.cultivar(PlantKey("apple", "No Such Apple")) is None
    kind = known.tree_kind("Red Oak")
    assert kind is not None
    assert kind.name == "oak, northern red"


def test_male_and_female_plants() -> None:
    known = catalogue()
    assert known.cultivars[PlantKey("hardy kiwi", "Meader Male")].sex == "male"
    assert known.cultivars[PlantKey("hardy kiwi", "Geneva")].sex == "female"
    assert known.cultivars[PlantKey("apple", "Liberty")].sex == ""


def test_a_sport_shows_its_parents_facts_and_whence_it_is_known() -> None:
    known = catalogue()
    sport = known.cultivars[PlantKey("apple", "Jonared")]
    parent = known.cultivars[PlantKey("apple", "Jonathan")]
    assert (sport.sport_of, sport.s_alleles, sport.bloom_order) == (
        "Jonathan", parent.s_alleles, parent.bloom_order
    )
    assert sport.sources_of("sport_of") == ("japanese-fruit-encyclopedia",)


def test_sports_of_a_parent_nobody_describes_are_not_made_up() -> None:
    # Ferrovia is in no table: nothing is known of its spur form either.
    assert catalogue().cultivar(PlantKey("sweet cherry", "Ferrovia Spur")) is None


def test_bad_tables_are_refused_with_file_row_and_column(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    (tmp_path / "plants").mkdir()
    shipped = cultivar_rows.resource("plants", "tree-fruit-cultivars.csv").parent
    for path in shipped.glob("*.csv"):
        text = path.read_text(encoding="utf-8")
        if path.stem == "tree-fruit-cultivars":
            text = text.replace("apple,Malus domestica,Lodi,partly", "apple,Malus domestica,Lodi,perhaps", 1)
            text = text.replace(",S3S4,III,", ",S3+S4,III,", 1)
        (tmp_path / "plants" / path.name).write_text(text, encoding="utf-8")
    monkeypatch.setattr(cultivar_rows, "resource", tmp_path.joinpath)
    with pytest.raises(TableError) as caught:
        cultivar_rows.read_cultivars()
    assert "tree-fruit-cultivars.csv, row 2, column self_fruitful: 'perhaps'" in str(caught.value)
    assert "column s_alleles: 'S3+S4'" in str(caught.value)


def test_loading_is_quick() -> None:
    # The window's start depends on it: aim 60 ms on one core, with room for a busy machine; best of five.
    times = []
    for _ in range(5):
        start = time.perf_counter()
        Catalogue.load()
        times.append(time.perf_counter() - start)
    assert min(times) < 0.06
