"""A picture under the plan: scale by two places, turn, corners; a dimension and its line."""

import math

import pytest
from attrs import evolve

from yardplan.yard import edits, handles, pictures
from yardplan.yard.edits import EditError
from yardplan.yard.ground import Dimension, Picture
from yardplan.yard.yard import Yard

SCAN = Picture(id="PC1", base=((0.0, 0.0), (30.0, 0.0)), pixels=(300, 200), data="AAAA")


def test_two_places_and_a_distance_set_the_scale():
    a, b = (3.0, 4.0), (9.0, 12.0)
    scaled = pictures.to_scale(SCAN, a, b, 25.0)
    assert pictures.size(scaled) == pytest.approx((75.0, 50.0))
    # What lay at a stays; what lay at b is 25 m away in the same direction.
    assert scaled.base[0] == pytest.approx((3 - 3 * 2.5, 4 - 4 * 2.5))


def test_turning_keeps_the_middle_and_the_size():
    turned = pictures.turned_to(SCAN, 30.0)
    assert pictures.turn(turned) == pytest.approx(30.0)
    assert pictures.middle(turned) == pytest.approx((15.0, 10.0))
    assert pictures.size(turned) == pytest.approx((30.0, 20.0))
    corner = pictures.corners(turned)[2]
    assert math.dist(corner, (15.0, 10.0)) == pytest.approx(math.hypot(15, 10))


@pytest.mark.parametrize(
    ("a", "b", "length"), [((1, 1), (1, 1), 5.0), ((0, 0), (1, 0), 0.0), ((0, 0), (1, 0), 1e5)]
)
def test_a_scale_that_cannot_be_meant_is_refused(a, b, length):
    with pytest.raises(EditError):
        pictures.to_scale(SCAN, a, b, length)


def test_a_picture_moves_and_turns_as_things_do():
    yard = edits.rotate(edits.move(Yard(pictures=(SCAN,)), {"PC1"}, (5.0, 5.0)), {"PC1"}, (5.0, 5.0), 90.0)
    (picture,) = yard.pictures
    assert picture.base == (pytest.approx((5.0, 5.0)), pytest.approx((5.0, 35.0)))
    assert handles.covered(picture)[2] == pytest.approx((-15.0, 35.0))


def test_the_line_of_a_dimension_is_moved_across_itself():
    yard = Yard(dimensions=(Dimension(id="DM1", ends=((0.0, 0.0), (4.0, 0.0))),))
    assert handles.handles_of(yard, "DM1") == ((0.0, 0.0), (4.0, 0.0), (2.0, 0.0))
    yard = handles.with_handle(yard, "DM1", 2, (9.0, 1.5))
    assert yard.dimensions[0].off == pytest.approx(1.5)
    assert handles.line_of(yard.dimensions[0]) == ((0.0, 1.5), (4.0, 1.5))
    yard = handles.with_handle(yard, "DM1", 1, (4.0, 3.0))
    assert yard.dimensions[0].ends[1] == (4.0, 3.0)


def test_bending_an_outline_keeps_the_points_it_was_drawn_by():
    square = ((0.0, 0.0), (6.0, 0.0), (6.0, 4.0), (0.0, 4.0))
    yard = Yard(lot=square)
    smooth = handles.bent(yard, "lot", "smooth")
    rounded = handles.bent(smooth, "lot", "rounded", 1.0)
    assert handles.handles_of(rounded, "lot") == square
    assert handles.bent(rounded, "lot", "corners") == yard
    fewer = handles.with_handles(smooth, "lot", square[:3])
    assert fewer.lot_curve == evolve(smooth.lot_curve, points=square[:3])
