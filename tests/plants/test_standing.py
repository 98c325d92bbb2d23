import time

import pytest
from support.builders import plant, yard_of

from yardplan.plants.catalogue import catalogue
from yardplan.plants.standing import moved_stand, stand_of
from yardplan.yard import edits
from yardplan.yard.change import difference
from yardplan.yard.ground import StandingTree
from yardplan.yard.planting import Bed, Container, PlantKey, Row
from yardplan.yard.yard import Yard


def mixed() -> Yard:
    return yard_of(
        plant("A1", "apple:Liberty", (3, 4), rootstock="M26"),
        plant("B1", "northern highbush blueberry:Duke", (6, 4), container="pot"),
        plant("X1", "moon fruit:Silver", (9, 4)),
        plant("A2", "apple:Gala", (12, 4), group="pair"),
        containers=(Container(id="pot", place=(6.0, 4.0), volume=60.0),),
        standing_trees=(
            StandingTree(id="T1", kind="crabapple", cultivar="Dolgo", place=(20.0, 25.0), height=6.0,
                         spread=5.0),
            StandingTree(id="T2", kind="red oak", place=(40.0, 5.0), height=18.0, spread=14.0),
            StandingTree(id="T3", kind="strange tree", place=(41.0, 5.0), height=8.0, spread=4.0,
                         light_share=0.5, evergreen=True, crown_base=9.0),
        ),
        rows=(
            Row(id="R1", plant=PlantKey("grape", "Concord"), line=((1.0, 10.0), (9.0, 10.0)), count=4,
                spacing=2.4),
            Row(id="R2", plant=PlantKey("red raspberry", "Heritage"), line=((1.0, 12.0), (9.0, 12.0)),
                count=12, spacing=0.6, width=0.8),
        ),
        beds=(
            Bed(id="Bed1", outline=((1.0, 14.0), (5.0, 14.0), (5.0, 15.0)),
                plant=PlantKey("strawberry", "Albion")),
            Bed(id="Bed2", outline=((6.0, 14.0), (8.0, 14.0), (8.0, 15.0))),
        ),
    )


def test_plants_are_joined_with_their_facts() -> None:
    stand = stand_of(mixed(), catalogue(), None)
    apple, berry, unknown, grouped, crab, oak, strange = stand.plants
    assert apple.cultivar is not None
    assert apple.size is apple.mature
    assert not apple.touching
    assert grouped.touching
    assert berry.container is not None
    assert berry.planted
    assert (unknown.cultivar, unknown.crop) == (None, None)
    assert unknown.size.estimate
    assert crab.crop is catalogue().crops["crabapple"]
    assert crab.cultivar is catalogue().cultivars[PlantKey("crabapple", "Dolgo")]
    assert (crab.planted, crab.beyond_lot) == (False, True)
    assert oak.size.habit == "shade tree"
    assert (oak.size.height, oak.light_leaf) == (18.0, 0.18)
    assert (strange.crop, strange.evergreen, strange.light_leaf, strange.light_bare) == (None, True, 0.5, 0.5)
    assert strange.size.crown_base == 8.0


def test_rows_are_as_wide_as_what_stands_in_them() -> None:
    vines, canes = stand_of(mixed(), catalogue(), None).rows
    assert vines.size.spread == pytest.approx(0.9144)
    assert vines.plant is not None
    assert vines.plant.spread > 2
    assert canes.size.spread == 0.8
    assert stand_of(mixed(), catalogue(), 1).rows[1].size.spread <= 0.8


def test_beds_know_what_grows_in_them() -> None:
    berries, empty = stand_of(mixed(), catalogue(), None).beds
    assert berries.cultivar is not None
    assert berries.size is not None
    assert (empty.size, empty.cultivar) == (None, None)


def test_a_year_makes_plants_smaller_and_says_so() -> None:
    now = stand_of(mixed(), catalogue(), 2)
    apple = now.plants[0]
    assert now.year == 2
    assert apple.size.spread < apple.mature.spread
    assert apple.size.estimate
    assert not apple.mature.estimate


def test_own_cultivars_of_the_yard_are_known() -> None:
    own = ({"crop": "apple", "name": "Old Garden"},)
    yard = yard_of(plant("A1", "apple:Old Garden", (1, 1)), own_cultivars=own)
    found = stand_of(yard, catalogue(), None).plants[0].cultivar
    assert found is not None
    assert found.own


@pytest.mark.parametrize("ids", [
    {"A1"}, {"pot"}, {"B1", "pot"}, {"T1"}, {"R1"}, {"Bed1"}, {"A1", "R2", "Bed2"},
])
def test_a_moved_stand_is_that_of_the_moved_yard(ids: set[str]) -> None:
    yard = mixed()
    stand = stand_of(yard, catalogue(), 3)
    later = edits.move(yard, ids, (0.7, -0.3))
    moved = moved_stand(stand, later, difference(yard, later))
    assert moved == stand_of(later, catalogue(), 3)
    still = [plant for plant in stand.plants if plant.id not in ids and plant.container is None]
    assert all(any(plant is other for other in moved.plants) for plant in still)


def test_other_changes_need_the_catalogue() -> None:
    yard = mixed()
    stand = stand_of(yard, catalogue(), None)
    later = edits.remove(yard, {"A1"})
    change = difference(yard, later)
    with pytest.raises(ValueError, match="catalogue"):
        moved_stand(stand, later, change)
    assert moved_stand(stand, later, change, catalogue()) == stand_of(later, catalogue(), None)
    assert moved_stand(stand, yard, difference(yard, yard)) is stand


def test_a_drag_over_500_plants_is_followed_within_a_millisecond() -> None:
    apples = (plant(f"A{n}", "apple:Liberty", (n % 25, n // 25), rootstock="M26") for n in range(500))
    yard = yard_of(*apples)
    stand = stand_of(yard, catalogue(), None)
    later = edits.move(yard, {"A7"}, (1.0, 0.0))
    change = difference(yard, later)
    times = []
    for _ in range(20):
        start = time.perf_counter()
        moved_stand(stand, later, change)
        times.append(time.perf_counter() - start)
    assert min(times) < 0.001
