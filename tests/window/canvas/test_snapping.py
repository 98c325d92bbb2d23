"""Snapping: what a place is drawn to, in which order, and when not."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st
from support.builders import plant, yard_of

from yardplan.window.canvas.snapping import Snapper
from yardplan.yard.ground import Building

HOUSE = Building(id="BL1", footprint=((2.03, 12.07), (12.03, 12.07), (12.03, 18.07), (2.03, 18.07)))
YARD = yard_of(plant("A1", "apple:Liberty", (5.017, 5.013)), buildings=(HOUSE,))
REACH = 0.3


def snap(place, **more):
    return Snapper().snap(YARD, place, REACH, system="metric", **more)


def test_a_corner_comes_first():
    found = snap((12.2, 12.0))
    assert (found.point, found.kind) == ((12.03, 12.07), "corner")


def test_a_centre_is_met():
    found = snap((5.1, 5.2))
    assert (found.point, found.kind) == ((5.017, 5.013), "centre")


def test_what_is_dragged_does_not_attract_itself():
    found = snap((5.1, 5.2), leave_out={"A1"})
    assert (found.point, found.kind) == ((5.1, 5.2), "grid")


def test_an_edge_is_met_where_it_is_nearest():
    found = snap((7.5, 12.2))
    assert found.kind == "edge"
    assert found.point == pytest.approx((7.5, 12.07))


def test_the_middle_of_an_edge_is_met_before_the_edge():
    """HOUSE is 10 m wide: the middle of its lower wall lies 5 m from its corner; of the lot 15 m."""
    found = snap((7.1, 12.2))
    assert found.kind == "middle"
    assert found.point == pytest.approx((7.03, 12.07), abs=1e-9)
    assert snap((15.2, 0.1)).point == (15.0, 0.0)
    assert snap((7.1, 12.2), leave_out={"BL1"}).kind != "middle"


def test_a_line_to_an_edge_may_stand_square_on_it():
    found = snap((7.52, 12.3), line=((7.4, 9.0),))
    assert found.point[0] == pytest.approx(7.4)
    assert found.kind in ("edge", "square")


def test_in_line_with_another_centre():
    found = snap((5.1, 9.04))
    assert (found.kind, found.point[0]) == ("in line", 5.017)
    assert found.guides


def test_equal_steps_in_a_line_of_plants():
    yard = yard_of(plant("A1", "apple:Liberty", (5, 5)), plant("A2", "apple:Liberty", (8.5, 5.5)))
    found = Snapper().snap(yard, (12.1, 6.1), REACH, system="metric")
    assert (found.kind, found.point) == ("equal steps", (12.0, 6.0))


def test_square_to_the_stretch_before():
    # The stretch before runs at 30 degrees; square to it is 120.
    last = (10 + 4 * math.cos(math.radians(30)), 2 + 4 * math.sin(math.radians(30)))
    line = ((10.0, 2.0), last)
    wanted = (last[0] + 3 * math.cos(math.radians(120)), last[1] + 3 * math.sin(math.radians(120)))
    found = snap((wanted[0] + 0.05, wanted[1] + 0.05), line=line)
    assert found.kind == "square"
    assert found.point == pytest.approx(wanted, abs=0.1)


def test_feet_snap_to_three_inches():
    found = Snapper().snap(YARD, (20.01, 3.02), REACH, system="imperial")
    assert found.kind == "grid"
    assert found.point == pytest.approx((263 * 0.0762, 40 * 0.0762), abs=1e-4)


def test_switched_off_it_leaves_places_alone():
    snapper = Snapper()
    snapper.on = False
    assert snapper.snap(YARD, (12.2, 12.0), REACH, system="metric").point == (12.2, 12.0)


@given(x=st.floats(-5, 35), y=st.floats(-5, 25))
def test_a_place_is_never_drawn_far(x, y):
    found = snap((x, y))
    assert math.hypot(found.point[0] - x, found.point[1] - y) <= REACH * 1.5 + 0.1


def test_the_targets_of_one_yard_are_gathered_once():
    snapper = Snapper()
    first = snapper.targets(YARD, ())
    assert snapper.targets(YARD, ()) is first
    assert snapper.targets(yard_of(), ()) is not first
