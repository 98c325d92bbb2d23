"""Chill of a site and hourly temperatures: rough, rounded, and sensible at the edges."""

import numpy as np
import pytest
from attrs import evolve

from yardplan.plants.chill import chilling_hours, day_length, hourly_temperatures, site_chill
from yardplan.yard.site import Site

#: Monthly means: WMO normals 1991-2020 of Fresno Yosemite and Orlando International airports.
FRESNO = Site(
    latitude=36.8, monthly_means=(8.9, 11.3, 14.1, 16.9, 21.2, 25.4, 28.6, 27.9, 25.0, 19.3, 12.9, 8.6)
)
ORLANDO = Site(
    latitude=28.4, monthly_means=(15.9, 17.6, 19.6, 22.3, 25.2, 27.3, 28.1, 28.1, 27.2, 24.2, 20.1, 17.4)
)


def test_central_california_has_medium_chill_and_florida_little() -> None:
    fresno, orlando = site_chill(FRESNO), site_chill(ORLANDO)
    assert fresno is not None
    assert orlando is not None
    assert 600 <= fresno.hours <= 1100
    assert orlando.hours <= 200
    assert fresno.hours % 50 == orlando.hours % 50 == 0
    assert orlando.may_fail


def test_a_colder_site_has_more_chill_hours_at_or_under_7() -> None:
    means = FRESNO.monthly_means or ()
    colder = site_chill(evolve(FRESNO, monthly_means=tuple(m - 6 for m in means)))
    here = site_chill(FRESNO)
    assert colder is not None
    assert here is not None
    assert colder.hours > here.hours
    assert not colder.may_fail


def test_the_south_counts_its_own_winter() -> None:
    means = FRESNO.monthly_means or ()
    north = site_chill(FRESNO)
    south = site_chill(evolve(FRESNO, latitude=-36.8, monthly_means=(*means[6:], *means[:6])))
    assert north is not None
    assert south is not None
    assert south.hours == pytest.approx(north.hours, abs=100)


def test_no_means_no_chill() -> None:
    assert site_chill(Site()) is None
    assert site_chill(Site(monthly_means=(1.0, 2.0))) is None


def test_hours_run_between_the_day_s_extremes() -> None:
    curve = hourly_temperatures([2.0, 4.0, 3.0], [12.0, 15.0, 11.0], 45.0, first_day=60)
    assert curve.shape == (72,)
    assert curve.min() >= 1.9
    assert curve.max() <= 15.0
    assert np.isfinite(curve).all()
    assert 0 < chilling_hours(curve) < 72


@pytest.mark.parametrize(
    ("latitude", "day", "hours"), [(0.0, 172, 12.0), (45.0, 80, 12.0), (45.0, 172, 15.4)]
)
def test_day_lengths(latitude: float, day: int, hours: float) -> None:
    # Equinox 12 h everywhere; 45 N at the solstice 15.4 h without refraction (closed formula).
    assert day_length(day, latitude) == pytest.approx(hours, abs=0.15)


def test_hours_known_on_the_spot_replace_the_estimate():
    means = (8.0, 9.0, 11.0, 14.0, 18.0, 22.0, 25.0, 25.0, 22.0, 17.0, 12.0, 9.0)
    estimate = site_chill(Site(latitude=33.0, monthly_means=means))
    known = site_chill(Site(latitude=33.0, monthly_means=means, chill_hours=430.0))
    assert estimate is not None
    assert known is not None
    assert known.hours == 430.0
    assert known.coldest == estimate.coldest == 8.0
