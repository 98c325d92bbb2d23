"""Metres to degrees and back."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from yardplan.files.exchange.georeference import Georeference, area, centre
from yardplan.yard.site import Site


@given(
    st.floats(-70, 70), st.floats(-180, 180), st.floats(-180, 180),
    st.tuples(st.floats(-300, 300), st.floats(-300, 300)),
)
def test_there_and_back_is_the_same_point(
    latitude: float, longitude: float, north: float, point: tuple[float, float]
) -> None:
    at = Georeference(latitude, longitude, north)
    assert at.drawn(at.lon_lat(point)) == pytest.approx(point, abs=1e-6)


def test_up_the_drawing_is_north_when_north_is_up() -> None:
    longitude, latitude = Georeference(45.0, 7.0).lon_lat((0.0, 100.0))
    assert longitude == pytest.approx(7.0)
    assert latitude > 45.0


def test_with_north_turned_to_the_right_of_the_sheet_right_is_north() -> None:
    """`north` 90: true north points along +x, so east points down the sheet."""
    at = Georeference(45.0, 7.0, 90.0)
    longitude, latitude = at.lon_lat((100.0, 0.0))
    assert latitude > 45.0
    assert longitude == pytest.approx(7.0)
    assert at.lon_lat((0.0, -100.0))[0] > 7.0


def test_across_the_date_line() -> None:
    at = Georeference(-17.0, 179.9999)
    longitude, _ = at.lon_lat((100.0, 0.0))
    assert longitude < -179.99
    assert at.drawn((longitude, -17.0))[0] == pytest.approx(100.0, abs=1e-6)


def test_of_a_site() -> None:
    site = Site(latitude=1.0, longitude=2.0, north=3.0)
    assert Georeference.of(site) == Georeference(1.0, 2.0, 3.0)


def test_area_and_centre() -> None:
    square = ((0.0, 0.0), (2.0, 0.0), (2.0, 3.0), (0.0, 3.0))
    assert area(square) == 6.0
    assert area(square[::-1]) == -6.0
    assert centre(square) == (1.0, 1.5)
