from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from yardplan.sun import position


@given(
    st.floats(-2e9, 4e9),
    st.floats(-90, 90),
    st.floats(-180, 180),
)
def test_vectors_are_unit_and_finite(at: float, latitude: float, longitude: float) -> None:
    vector = position.sun_vectors(at, latitude, longitude)
    assert np.linalg.norm(vector, axis=1) == pytest.approx(1.0)
    altitude, azimuth = position.altitude_azimuth(vector)
    assert -90.0 <= altitude[0] <= 90.0
    assert 0.0 <= azimuth[0] < 360.0
    assert position.vectors_of(altitude, azimuth) == pytest.approx(vector, abs=1e-9)


@pytest.mark.parametrize(("latitude", "longitude"), [(90.5, 0), (-91, 0), (0, 400), (float("nan"), 0)])
def test_a_place_off_the_earth_is_named(latitude: float, longitude: float) -> None:
    with pytest.raises(position.LatitudeError, match="outside"):
        position.sun_vectors(0.0, latitude, longitude)


def test_refraction_lifts_low_suns_most_and_none_far_below() -> None:
    lift = position.refraction(np.array([-5.0, -0.5, 0.0, 5.0, 45.0, 90.0]))
    assert lift[0] == 0.0
    assert lift[1] > lift[2] > lift[3] > lift[4] >= lift[5] >= 0.0
    # About 29' for a true altitude of 0 (Meeus, chapter 16).
    assert lift[2] == pytest.approx(29.0 / 60.0, abs=0.03)


def test_days_of_all_and_of_no_sun() -> None:
    assert float(position.half_day(23.4, 80.0)) == 12.0
    assert float(position.half_day(-23.4, 80.0)) == 0.0
    assert float(position.half_day(23.4, 90.0)) == 12.0
    assert float(position.half_day(0.0, 0.0)) == pytest.approx(6.0, abs=0.1)
