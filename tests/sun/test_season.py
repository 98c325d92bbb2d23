from __future__ import annotations

import itertools
from datetime import date

import numpy as np
import pytest

from yardplan.sun import season
from yardplan.sun.leaves import depths, leaf_dates, leaf_share, monthly_light, through
from yardplan.sun.position import declination, half_day, refraction
from yardplan.yard.site import Site


@pytest.mark.parametrize("latitude", [-55.0, 0.0, 42.0, 64.0])
@pytest.mark.parametrize("detail", ["live", "full"])
def test_open_hours_are_the_time_above_the_lowest_altitude(latitude: float, detail: season.Detail) -> None:
    site = Site(latitude=latitude)
    positions = season.season_positions(site, detail)
    dates = season.season_dates(site.growing_season, 1)
    noon = np.array([np.datetime64(day, "s").astype(float) + 43200 for day in dates])
    exact = 2 * half_day(declination(noon), latitude, 5.0 - float(refraction(5.0)))
    assert positions.total("season") == pytest.approx(float(exact.mean()), abs=0.03)


def test_months_of_the_season_are_those_counted() -> None:
    assert list(season.months_of(season.season_positions(Site(latitude=42.0)))) == [4, 5, 6, 7, 8, 9]
    assert list(season.months_of(season.season_positions(Site(latitude=-42.0)))) == [1, 2, 3, 10, 11, 12]


def test_a_month_of_its_own_adds_up_to_its_days() -> None:
    positions = season.season_positions(Site(latitude=42.0), "full")
    months = [positions.total(f"month {month}") for month in range(4, 10)]
    assert np.mean(months) == pytest.approx(positions.total("season"), abs=0.1)
    assert positions.total("month 12") == 0.0
    assert max(months) == months[2]


def test_morning_is_before_ten_solar() -> None:
    positions = season.season_positions(Site(latitude=42.0))
    counted = positions.weight("morning") > 0
    assert positions.hours[counted].max() < 10.0
    assert positions.total("morning") == pytest.approx(positions.total("season") / 2 - 2.0, abs=0.15)


def test_the_sky_is_the_same_all_round_and_adds_up_to_one() -> None:
    parts = season.sky_parts(6)
    assert len(parts) == 145
    assert parts.total("sky") == pytest.approx(1.0)
    assert (parts.vectors[:, :2] * parts.weight("sky")[:, None]).sum(axis=0) == pytest.approx(
        [0, 0], abs=1e-9
    )


def test_dates_are_spread_over_a_season_that_spans_new_year() -> None:
    dates = season.season_dates(("10-01", "03-31"), 10)
    assert dates[0] >= date(season.YEAR, 10, 1)
    assert dates[-1] <= date(season.YEAR + 1, 3, 31)
    assert {(b - a).days for a, b in itertools.pairwise(dates)} <= {10, 11}
    assert season.season_dates(("02-29", "02-29"), 10)[0].month == 2


@pytest.mark.parametrize("latitude", [90.0, -90.0, 78.0])
def test_polar_places_have_positions_without_error(latitude: float) -> None:
    winter = season.one_day(date(2026, 12 if latitude > 0 else 6, 21), Site(latitude=latitude), 20.0)
    assert len(winter) == 0
    assert winter.total("season") == 0.0
    summer = season.one_day(date(2026, 6 if latitude > 0 else 12, 21), Site(latitude=latitude), 20.0)
    assert summer.total("season") == pytest.approx(24.0)


def test_beam_grows_with_altitude_to_a_clear_noon() -> None:
    light = season.beam(np.array([0.0, 5.0, 30.0, 90.0]))
    assert np.all(np.diff(light) > 0)
    # A clear sea-level noon beam is a little under 1 kW/m2 (common practice).
    assert 0.85 < light[-1] < 1.0


def test_leaves_turn_by_half_a_year_in_the_south() -> None:
    north, south = leaf_share(42.0, None), leaf_share(-42.0, None)
    assert north[6] == south[0] == 1.0
    assert north[0] == 0.0
    assert south[6] == 0.0
    for month in range(12):
        assert north[month] == pytest.approx(south[(month + 6) % 12], abs=0.12)


def test_leaves_come_later_to_the_north_and_higher_up() -> None:
    assert leaf_dates(50.0, None)[0] > leaf_dates(42.0, None)[0]
    assert leaf_dates(42.0, 800.0)[0] == pytest.approx(leaf_dates(42.0, None)[0] + 28.0)
    out, fall = leaf_dates(70.0, 3000.0)
    assert out < fall


def test_light_of_a_crown_through_the_year() -> None:
    light = monthly_light(0.2, 0.65, 42.0, None)
    assert light[0] == 0.65
    assert light[6] == 0.2
    assert 0.2 < light[3] < 0.65
    assert monthly_light(0.08, 0.08, 42.0, None) == (0.08,) * 12
    assert monthly_light(-3.0, 7.0, 42.0, None)[0] == 1.0


def test_depths_are_whole_and_turn_back_into_light() -> None:
    deep = depths((0.0, 1.0, 0.5, 0.2))
    assert deep.dtype == np.int32
    assert through(deep) == pytest.approx([0.0, 1.0, 0.5, 0.2], abs=2e-4)
    assert float(through(deep)[0]) == 0.0
