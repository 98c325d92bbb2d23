from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from yardplan.plants.catalogue import catalogue
from yardplan.plants.crop import Size
from yardplan.plants.cultivar import MEMORY
from yardplan.plants.growth import grown, growth_of, mature_size, size_after, size_at, tree_size
from yardplan.plants.growth_tables import Curve, growth_classes
from yardplan.units import FOOT
from yardplan.yard.planting import Planting, PlantKey

KEYS = sorted(catalogue().cultivars)
TREES = sorted(catalogue().tree_kinds)


def planting(what: str, **fields: Any) -> Planting:
    return Planting(id="1", plant=PlantKey.parse(what), place=(0.0, 0.0), **fields)


def full(what: str, **fields: Any) -> Size:
    return mature_size(catalogue(), planting(what, **fields))


def test_rootstock_sets_the_size_of_a_tree() -> None:
    dwarf, tall = full("apple:Liberty", rootstock="M27"), full("apple:Liberty", rootstock="Antonovka 313")
    assert dwarf.spread == pytest.approx(5 * FOOT)
    assert dwarf.height == pytest.approx(5 * FOOT)
    assert tall.spread == pytest.approx(25 * FOOT)
    assert not dwarf.estimate
    assert "rhs-rootstocks-359" in dwarf.sources


def test_a_small_fruit_has_its_cultivars_own_size() -> None:
    duke = full("northern highbush blueberry:Duke")
    assert (duke.height, duke.spread) == (pytest.approx(5 * FOOT), pytest.approx(4.5 * FOOT))
    assert duke.sources == (MEMORY,)


def test_wires_hold_the_height_of_a_vine() -> None:
    vine = full("hardy kiwi:Ananasnaya")
    assert vine.habit == "vine"
    assert vine.height == pytest.approx(6.5 * FOOT)
    assert vine.spread == pytest.approx(12.5 * FOOT)


def test_an_arbour_carries_its_leaves_overhead() -> None:
    arbour = full("grape:Concord", form="arbour")
    assert arbour.crown_base > 1.9
    assert arbour.height > arbour.crown_base
    assert full("apple:Liberty").crown_base <= full("apple:Liberty").height / 2


def test_triploids_grow_wider_and_within_the_limits() -> None:
    plain, triploid = full("apple:Liberty", rootstock="M26"), full("apple:Jonagold", rootstock="M26")
    assert triploid.spread / plain.spread == pytest.approx(1.20)
    assert triploid.height == plain.height
    assert full("apple:Oregon Spur").spread / full("apple:Red Delicious").spread == pytest.approx(0.85)


def test_a_flat_trained_tree_keeps_its_panel_whatever_its_stock() -> None:
    espalier = full("apple:Jonagold", form="espalier", rootstock="MM106")
    assert espalier.habit == "flat-trained"
    assert espalier.depth == pytest.approx(1.5 * FOOT)
    assert espalier == full("apple:Liberty", form="espalier")


def test_training_shapes_a_tree_whose_stock_gives_its_size() -> None:
    bush = full("apple:Liberty", rootstock="M26")
    leader = full("apple:Liberty", rootstock="M26", form="leader")
    assert (bush.habit, leader.habit) == ("bush", "central leader")
    assert bush.spread == leader.spread
    spindle = full("apple:Liberty", rootstock="M9 T337", form="spindle")
    assert spindle.spread < full("apple:Liberty", rootstock="M9 T337").spread


def test_the_users_own_figures_go_first() -> None:
    own = full("apple:Liberty", rootstock="M26", spread=2.5, height=1.0)
    assert (own.spread, own.height, own.sources) == (2.5, 1.0, ("the user",))
    assert own.crown_base <= 0.5
    mixed = full("apple:Liberty", rootstock="M26", spread=2.5)
    assert mixed.height == full("apple:Liberty", rootstock="M26").height


def test_species_or_type_sets_the_usual_form() -> None:
    assert full("persimmon:Meader").height > full("persimmon:Fuyu").height
    day_neutral = grown(catalogue(), planting("strawberry:Albion"))
    assert day_neutral.form is not None
    assert day_neutral.form.form.startswith("hill bed")


@pytest.mark.parametrize("what", ["apple:Nobody Knows", "moon fruit:Silver"])
def test_an_unknown_plant_has_a_size_all_the_same(what: str) -> None:
    known = grown(catalogue(), planting(what))
    assert known.cultivar is None
    assert known.mature.spread > 0
    assert known.mature.estimate is (known.crop is None)
    assert size_after(known, 5).estimate


def test_unknown_rootstock_and_form_fall_back_to_the_usual() -> None:
    assert full("apple:Liberty", rootstock="X999", form="cloud") == full("apple:Liberty")


def test_small_fruit_grows_by_its_crops_years_and_trees_by_their_stock() -> None:
    berry = growth_of(grown(catalogue(), planting("strawberry:Albion")))
    assert berry.years == 1
    assert berry.spread.share(1) == pytest.approx(growth_classes()["standard"].spread.share(18))
    assert growth_of(grown(catalogue(), planting("apple:Liberty", rootstock="M7"))).vigour == "semi-dwarf"


def test_an_unpruned_kind_follows_its_measured_curve() -> None:
    crab = size_at(catalogue(), planting("crabapple:Dolgo"), 10)
    assert "usfs-urban-trees-curves" in crab.sources


def test_nothing_is_there_before_planting() -> None:
    assert Curve(2.5, 0.3).share(0) == Curve(2.5, 0.3).share(-3) == 0


def inside(size: Size, mature: Size) -> bool:
    return (
        0 < size.spread <= mature.spread and 0 < size.height <= mature.height
        and 0 <= size.crown_base < 0.9 * size.height and (size.depth is None or size.depth > 0)
    )


@given(st.sampled_from(KEYS), st.integers(0, 60), st.integers(0, 60))
def test_plants_grow_with_the_years_and_never_beyond_full_size(key: PlantKey, one: int, other: int) -> None:
    known = grown(catalogue(), Planting(id="1", plant=key, place=(0.0, 0.0)))
    early, late = (size_after(known, year) for year in sorted((one, other)))
    assert inside(early, known.mature)
    assert inside(late, known.mature)
    assert early.spread <= late.spread
    assert early.height <= late.height


@given(st.sampled_from(TREES), st.integers(0, 120), st.integers(0, 120))
def test_yard_trees_grow_with_the_years(name: str, one: int, other: int) -> None:
    kind = catalogue().tree_kinds[name]
    early, late = (tree_size(kind, year) for year in sorted((one, other)))
    assert inside(early, tree_size(kind))
    assert early.spread <= late.spread <= tree_size(kind).spread
    assert early.height <= late.height <= tree_size(kind).height


@given(st.sampled_from(KEYS), st.data())
def test_every_stock_and_form_gives_a_sound_size(key: PlantKey, data: st.DataObject) -> None:
    crop = catalogue().crops[key.crop]
    form = data.draw(st.sampled_from([None, *(form.form for form in crop.forms)]))
    stock = data.draw(st.sampled_from([None, *(stock.name for stock in crop.rootstocks)]))
    size = full(str(key), form=form, rootstock=stock)
    assert inside(size, size)
    assert size.sources
