"""Bringing things into line, spacing, mirroring, turning, repeating: pure functions on yards."""

import pytest
from hypothesis import given
from hypothesis import strategies as st
from support.builders import plant, yard_of

from yardplan.units import UnitError
from yardplan.window.tools import arranging
from yardplan.yard.ground import Building
from yardplan.yard.planting import Container

A1, A2, A3 = (plant(f"A{n}", "apple:Liberty", p) for n, p in ((1, (2, 3)), (2, (5, 7)), (3, (12, 4))))
HOUSE = Building(
    id="BL1", footprint=((10, 10), (14, 10), (14, 12), (10, 12)), roof="lean-to", ridge_angle=0.0
)
YARD = yard_of(A1, A2, A3, buildings=(HOUSE,))
THREE = frozenset({"A1", "A2", "A3"})


def places(yard):
    return [p.place for p in yard.plantings]


def flat(yard):
    return [value for place in places(yard) for value in place]


@pytest.mark.parametrize(
    ("line", "expected"),
    [
        ("left", [(2, 3), (2, 7), (2, 4)]), ("right", [(12, 3), (12, 7), (12, 4)]),
        ("bottom", [(2, 3), (5, 3), (12, 3)]), ("top", [(2, 7), (5, 7), (12, 7)]),
        ("middle across", [(7, 3), (7, 7), (7, 4)]), ("middle up", [(2, 5), (5, 5), (12, 5)]),
    ],
)
def test_in_line(line, expected):
    assert places(arranging.align(YARD, THREE, line)) == expected


def test_a_building_is_brought_into_line_by_its_edge():
    yard = arranging.align(YARD, frozenset({"A1", "BL1"}), "right")
    assert yard.find("A1").place == (14, 3)
    assert yard.find("BL1") == HOUSE


def test_evenly_spaced_the_ends_stay():
    assert places(arranging.space_evenly(YARD, THREE, "across")) == [(2, 3), (7, 7), (12, 4)]
    assert arranging.space_evenly(YARD, frozenset({"A1", "A2"}), "across") == YARD


def test_mirrored_a_lean_to_keeps_its_high_side():
    # High edge on the left of direction 0 degrees: the top one. Swapped, it is the bottom one.
    yard = arranging.mirror(YARD, frozenset({"BL1"}), "up")
    assert yard.find("BL1").ridge_angle == 180.0


@given(way=st.sampled_from(["across", "up"]))
def test_mirrored_twice_is_where_it_was(way):
    twice = arranging.mirror(arranging.mirror(YARD, THREE, way), THREE, way)
    assert flat(twice) == pytest.approx(flat(YARD))


def test_four_quarter_turns_are_none():
    yard = YARD
    for _ in range(4):
        yard = arranging.turn(yard, THREE, 90)
    assert flat(yard) == pytest.approx(flat(YARD))


def test_a_plant_in_a_pot_is_aligned_once_with_its_pot():
    pot = Container(id="PT1", place=(5, 5), volume=40)
    yard = yard_of(plant("F1", "fig:Celeste", (5, 5), container="PT1"), A3, containers=(pot,))
    moved = arranging.align(yard, frozenset({"F1", "PT1", "A3"}), "right")
    assert moved.find("PT1").place == moved.find("F1").place == (12, 5)


def test_repeated_in_a_row():
    yard, every = arranging.repeat(YARD, frozenset({"A1"}), 4, (2.5, 0.0))
    assert [yard.find(key).place for key in sorted(every)] == [(2, 3), (4.5, 3), (7, 3), (9.5, 3)]


@pytest.mark.parametrize(
    ("typed", "count", "step"),
    [("5 x 2.5 m", 5, (2.5, 0)), ("3 x 10' < 90", 3, (0, 3.048)), ("2 at 4", 2, (4, 0))],
)
def test_what_can_be_typed_for_a_row(typed, count, step):
    found = arranging.parse_repeat(typed, "metric")
    assert found[0] == count
    assert found[1] == pytest.approx(step)


@pytest.mark.parametrize("typed", ["five", "1 x 2", "999 x 2", "4 x up", "4 x 2 x 3"])
def test_what_cannot_is_said(typed):
    with pytest.raises(UnitError):
        arranging.parse_repeat(typed, "metric")


def test_turned_about_a_typed_point():
    yard = yard_of(plant("A1", "apple:Liberty", (6, 5)), plant("A2", "apple:Liberty", (8, 5)))
    degrees, about = arranging.parse_turn("-90° @ 4; 5 m", "metric")
    turned = arranging.turn(yard, frozenset({"A1", "A2"}), degrees, about)
    assert [plant.place for plant in turned.plantings] == [pytest.approx((4, 3)), pytest.approx((4, 1))]
    assert arranging.parse_turn("22°30'", "metric") == (22.5, None)


def test_mirrored_at_a_typed_line():
    house = Building(id="BL1", footprint=((6, 1), (10, 1), (10, 4), (6, 4)), ridge_angle=20.0, roof="gable")
    yard = yard_of(plant("A1", "apple:Liberty", (6, 5)), buildings=(house,))
    ids = frozenset({"A1", "BL1"})
    line = arranging.parse_mirror("5; 0 < 90", "metric")
    upright = arranging.mirror_at(yard, ids, *line)
    assert upright.plantings[0].place == (4, 5)
    assert upright.buildings[0].footprint == ((4, 1), (0, 1), (0, 4), (4, 4))
    assert upright.buildings[0].ridge_angle == 160.0
    through, turn = arranging.parse_mirror("0; 0 < N 45 E", "metric")
    slanting = arranging.mirror_at(yard, ids, through, turn)
    assert slanting.plantings[0].place == pytest.approx((5, 6))
    assert slanting.buildings[0].ridge_angle == pytest.approx(70.0)


@pytest.mark.parametrize("typed", ["nan", "inf @ 1; 2", "45 @ 3 m", "45 @", "x"])
def test_no_turn_is_refused(typed):
    """`nan` was once taken for a number of degrees."""
    with pytest.raises(UnitError):
        arranging.parse_turn(typed, "metric")
