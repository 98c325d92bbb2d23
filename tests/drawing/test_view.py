"""From metres to the device and back."""

import pytest
from hypothesis import given
from hypothesis import strategies as st
from PySide6.QtCore import QPointF, QRectF
from support.plans import standing, view_of

from yardplan.drawing.view import extent, fitted, paper_unit, placed
from yardplan.yard.yard import Yard

metres = st.floats(-500, 500)


@given(metres, metres, st.floats(0.5, 400))
def test_there_and_back(x, y, scale):
    view = view_of(scale=scale, width=5, depth=5)
    back = view.metres(view.at((x, y)))
    assert back == pytest.approx((x, y), abs=1e-6)


def test_y_goes_up_the_drawing():
    view = view_of()
    assert view.at((0, 1)).y() < view.at((0, 0)).y()


def test_fitted_shows_the_whole_yard_in_the_middle():
    into = QRectF(10, 20, 800, 500)
    view = fitted(view_of(width=30, depth=40), into, beyond=2)
    corners = [view.at(point) for point in view.yard.lot]
    assert all(into.contains(corner) for corner in corners)
    assert view.metres(into.center()) == pytest.approx((15, 20))
    assert placed(view, into, 10).scale == 10


def test_extent_of_an_empty_yard_is_still_a_place():
    left, bottom, right, top = extent(Yard())
    assert right > left
    assert top > bottom


def test_only_and_without():
    view = view_of(standing("A1", (3, 3)), only=frozenset({"A1"}))
    assert view.draws("A1")
    assert not view.draws("A2")
    assert not view_of(without=frozenset({"A1"})).draws("A1")


def test_what_is_out_of_the_window_is_not_seen():
    view = view_of()
    assert view.sees(QPointF(10, 10), 0)
    assert not view.sees(QPointF(-50, 10), 20)
    assert view.sees_points(((-0.1, 3), (-5, 3)))
    assert not view.sees_points(((-90, 3), (-80, 3)))


def test_a_style_unit_on_paper():
    # 0.22 mm at 254 dots per inch (10 dots per mm) is 2.2 dots.
    assert paper_unit(254.0) == pytest.approx(2.2)
