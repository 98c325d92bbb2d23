"""What lies under the pointer."""

import pytest
from support.builders import plant, yard_of

from yardplan.plants.catalogue import catalogue
from yardplan.plants.standing import stand_of
from yardplan.window.canvas.geometry import area_of, inside, middle, nearest_on
from yardplan.window.canvas.hits import all_at, thing_at, things_within
from yardplan.yard.ground import Barrier, Building, Gate, Note, Paving, StandingTree
from yardplan.yard.planting import Bed, Container, PlantKey, Row

YARD = yard_of(
    plant("A1", "apple:Liberty", (5, 5)),
    plant("A2", "apple:Enterprise", (7, 5)),
    plant("F1", "fig:Celeste", (25, 15), container="PT1"),
    buildings=(Building(id="BL1", footprint=((12, 12), (20, 12), (20, 18), (12, 18))),),
    barriers=(Barrier(id="WF1", line=((0, 10), (10, 10))),),
    pavings=(Paving(id="PV1", outline=((10, 0), (30, 0), (30, 9), (10, 9))),),
    beds=(Bed(id="BD1", outline=((12, 2), (16, 2), (16, 6), (12, 6))),),
    rows=(
        Row(id="R1", plant=PlantKey("red raspberry", "Nova"), line=((2, 14), (9, 14)), count=8, spacing=1),
    ),
    containers=(Container(id="PT1", place=(25, 15), volume=40),),
    gates=(Gate(id="GT1", place=(0, 3)),),
    notes=(Note(id="NT1", place=(28, 18), text="water"),),
    standing_trees=(StandingTree(id="N1", kind="crabapple", place=(5, 4), height=8, spread=9),),
)
STAND = stand_of(YARD, catalogue(), None)


@pytest.mark.parametrize(
    ("place", "key"),
    [
        ((5, 5.2), "A1"), ((7, 5), "A2"), ((6.4, 5), "A2"), ((16, 15), "BL1"), ((5, 10.1), "WF1"),
        ((20, 4), "PV1"), ((14, 4), "BD1"), ((4, 14.2), "R1"), ((0.2, 3), "GT1"), ((28.1, 18), "NT1"),
        ((2, 2), "N1"), ((15, 0.1), "PV1"), ((29.95, 15), "lot"), ((22, 10.8), None),
    ],
)
def test_what_lies_there(place, key):
    assert thing_at(YARD, STAND, place, 0.3) == key


def test_a_plant_comes_before_its_pot():
    found = all_at(YARD, STAND, (25, 15), 0.3)
    assert found[:2] == ("F1", "PT1")


def test_a_band_takes_what_lies_wholly_inside():
    assert things_within(YARD, 11, 1, 17, 7) == {"BD1"}
    assert things_within(YARD, 0, 0, 30, 20) == YARD.ids()


def test_a_plant_not_in_the_catalogue_can_still_be_pointed_at():
    yard = yard_of(plant("X1", "moonfruit:Nobody Knows", (5, 5)))
    assert thing_at(yard, stand_of(yard, catalogue(), None), (5, 5.1), 0.3) == "X1"


def test_plane_geometry():
    square = ((0, 0), (4, 0), (4, 4), (0, 4))
    assert inside(square, (1, 1))
    assert not inside(square, (5, 1))
    assert middle(square) == (2, 2)
    assert middle(((0, 0), (4, 2))) == (2, 1)
    # An L of three unit squares: its centroid is the mean of the three middles.
    corner = ((0, 0), (2, 0), (2, 1), (1, 1), (1, 2), (0, 2))
    assert middle(corner) == pytest.approx((5 / 6, 5 / 6))
    assert area_of(corner) == 3
    assert nearest_on((0, 0), (4, 0), (9, 3)) == (4, 0)
