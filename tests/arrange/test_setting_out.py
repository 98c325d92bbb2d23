"""Setting out: the distances must give the places back."""

import math

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from support.builders import plant, yard_of

from yardplan.arrange import setting_out as so
from yardplan.yard.ground import Building

HOUSE = Building(id="H1", name="House", footprint=((2, 12), (12, 12), (12, 18), (2, 18)), eaves=3, ridge=5)
coordinate = st.floats(-40, 40, allow_nan=False)
point = st.tuples(coordinate, coordinate)


@given(point, point, point)
def test_two_tapes_give_the_place_back_within_a_centimetre(place, a, b):
    assume(math.dist(a, b) > 0.5 and math.dist(place, a) > 0.1 and math.dist(place, b) > 0.1)
    tapes = so.fix(place, so.FixedPoint("a", a), so.FixedPoint("b", b))
    assume(5 < tapes.crossing < 175)
    assert math.dist(so.place_of(tapes), place) < 0.01


@given(point, point, point)
def test_an_offset_gives_the_place_back_within_a_centimetre(place, a, b):
    assume(math.dist(a, b) > 0.5)
    assert math.dist(so.place_at(so.offset_of(place, a, b), a, b), place) < 0.01


def test_tapes_that_cannot_meet_are_a_measuring_slip():
    a, b = so.FixedPoint("post", (0, 0)), so.FixedPoint("corner", (10, 0))
    slip = so.TwoTapes(
        first=a, second=b, from_first=2, from_second=3, left=True, crossing=90, error=0.01
    )
    with pytest.raises(so.SettingOutError, match=r"post.*corner.*measure again"):
        so.place_of(slip)


def test_the_chosen_pair_has_the_smallest_expected_error():
    points = so.fixed_points(yard_of(buildings=(HOUSE,)))
    best = so.best_fix((7, 6), points)
    assert best is not None
    assert not best.weak
    errors = [so.fix((7, 6), p, q).error for p in points for q in points if p is not q]
    assert best.error == pytest.approx(min(errors))


def test_right_angle_crossing_has_the_published_error():
    # Error about tape error x 1.4 / sin(g): derivation from memory, see resources/setting_out.csv.
    tapes = so.fix((3, 4), so.FixedPoint("a", (3, 0)), so.FixedPoint("b", (0, 4)))
    assert tapes.crossing == pytest.approx(90)
    assert tapes.error == pytest.approx(0.01 * 1.4)


def test_every_plant_gets_a_peg_and_all_but_the_first_a_check():
    yard = yard_of(
        plant("A1", "apple:Liberty", (5, 5)), plant("A2", "apple:Spartan", (11, 5)), buildings=(HOUSE,)
    )
    pegs = so.pegs(yard)
    assert {peg.key for peg in pegs} == {"A1", "A2"}
    assert [peg.check_distance for peg in pegs] == [None, pytest.approx(6)]


def test_a_three_four_five_corner_is_square():
    a, b, c = so.square_corner(6.5)
    assert a * a + b * b == pytest.approx(c * c)
    assert b <= 6.5
