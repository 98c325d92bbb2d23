"""Zoom about a point, pan, fit: plain numbers."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from yardplan.window.canvas.view import MAX_SCALE, MIN_SCALE, View, bounds_of

coordinates = st.floats(-500, 500)
pixels = st.floats(0, 800)


@given(x=pixels, y=pixels, scale=st.floats(1, 500))
def test_there_and_back(x, y, scale):
    view = View(scale=scale, centre=(3.0, -7.0))
    back = view.to_pixels(view.to_metres(x, y))
    assert (back.x(), back.y()) == pytest.approx((x, y), abs=1e-6)


@given(x=pixels, y=pixels, factor=st.floats(0.2, 5))
def test_what_lies_under_the_pointer_stays_there(x, y, factor):
    view = View(scale=40.0)
    before = view.to_metres(x, y)
    after = view.zoomed(factor, x, y).to_metres(x, y)
    assert after == pytest.approx(before, abs=1e-9)


@given(factor=st.floats(1e-6, 1e6))
def test_zoom_is_clamped(factor):
    assert MIN_SCALE <= View().zoomed(factor, 10, 10).scale <= MAX_SCALE


def test_the_transform_says_the_same_as_to_pixels():
    view = View(scale=17.0, centre=(4.0, 9.0))
    mapped = view.transform.map(2.5, -3.5)
    place = view.to_pixels((2.5, -3.5))
    assert mapped == pytest.approx((place.x(), place.y()))


def test_panning_moves_the_drawing_with_the_pointer():
    view = View(scale=20.0)
    place = view.to_pixels((1.0, 1.0))
    moved = view.panned(30, -12).to_pixels((1.0, 1.0))
    assert (moved.x() - place.x(), moved.y() - place.y()) == pytest.approx((30, -12))


@given(left=coordinates, bottom=coordinates, wide=st.floats(0, 300), tall=st.floats(0, 300))
def test_fitting_shows_everything(left, bottom, wide, tall):
    bounds = (left, bottom, left + wide, bottom + tall)
    a, b, c, d = View().fitted(bounds).bounds
    assert a <= bounds[0]
    assert b <= bounds[1]
    assert c >= bounds[2]
    assert d >= bounds[3]


def test_showing_a_place_in_view_changes_nothing_and_else_moves():
    view = View(scale=20.0)
    assert view.showing((-1, -1, 1, 1)) is view
    far = view.showing((100, 100, 102, 102))
    assert far.scale == view.scale
    assert far.centre == (101, 101)
    wide = view.showing((0, 0, 400, 10))
    assert wide.scale < view.scale


def test_bounds_of_nothing():
    assert bounds_of(()) is None
    assert bounds_of(((1, 5), (3, 2))) == (1, 2, 3, 5)
