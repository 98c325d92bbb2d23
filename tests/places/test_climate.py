"""The rule of choice among stations, with stations made for the test and with the shipped ones."""

from __future__ import annotations

import pytest
from attrs import evolve
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from yardplan.places import climate
from yardplan.places.climate import StationUse, climate_at, frost_at, lapse, moved, zone_for
from yardplan.places.lookup import distance_km, place_at
from yardplan.places.tables import OBSERVED, Place, Station, cells_of, station, table

FLAT = Station(
    id="X1", name="Flat", country="US", latitude=42.0, longitude=-76.0, elevation=100.0, period="1991-2020",
    source="WMO9120", means=(10.0,) * 12, frost="N", last_frost="05-10", last_frost_10="05-24",
    first_frost="10-10", first_frost_10="09-25", extreme_low=-20.0,
)


def use(found: Station = FLAT, distance: float = 10.0, height: float | None = 0.0) -> StationUse:
    return StationUse(station=found, distance=distance, height=height, cost=distance + abs(height or 0) / 5)


def test_a_place_500_m_higher_is_colder_by_the_fitted_lapse() -> None:
    assert moved(FLAT.means, use(height=500.0), southern=False)[0] == pytest.approx(10 - 5 * 0.41)
    assert moved(FLAT.means, use(height=500.0), southern=False)[3] == pytest.approx(10 - 5 * 0.61)


def test_the_lapse_turns_by_half_a_year_in_the_south() -> None:
    assert lapse(southern=True)[6] == lapse(southern=False)[0]
    assert lapse(southern=True)[0] == lapse(southern=False)[6]


def test_older_us_normals_are_brought_to_the_later_level() -> None:
    older = evolve(FLAT, source="NOAA8110")
    assert moved(older.means, use(older), southern=False)[11] == pytest.approx(10.74)
    assert moved(FLAT.means, use(), southern=False)[11] == 10.0


def test_frost_moves_later_and_earlier_with_height() -> None:
    frost = frost_at([use(height=200.0)], southern=False)
    assert (frost.last, frost.last_10, frost.first, frost.first_10) == ("05-18", "06-01", "10-05", "09-20")
    lower = frost_at([use(height=-100.0)], southern=False)
    assert (lower.last, lower.first) == ("05-06", "10-12")


def test_without_a_one_in_ten_date_the_usual_spread_is_used_and_said() -> None:
    bare = evolve(FLAT, last_frost_10=None, first_frost_10=None, frost="F")
    frost = frost_at([use(bare)], southern=False)
    assert (frost.last_10, frost.first_10, frost.ten_percent_estimated) == ("05-25", "09-26", True)


def test_frost_of_a_station_too_far_or_too_high_is_not_used() -> None:
    assert frost_at([use(distance=61.0)], southern=False).kind == "unknown"
    assert frost_at([use(height=401.0)], southern=False).kind == "unknown"
    silent = evolve(FLAT, frost="", last_frost=None)
    assert frost_at([use(silent), use(distance=40.0)], southern=False).use == use(distance=40.0)


@pytest.mark.parametrize("kind", ["rare", "allyear"])
def test_rare_frost_and_frost_all_year_have_no_dates(kind: str) -> None:
    frost = frost_at([use(evolve(FLAT, frost=kind, last_frost=None))], southern=False)
    assert (frost.kind, frost.last, frost.first) == (kind, None, None)


def test_the_grade_falls_with_distance_and_height() -> None:
    grade = climate._grade
    assert grade([use(distance=30.0, height=150.0)], 250.0) == "good"
    assert grade([use(distance=31.0)], 100.0) == "fair"
    assert grade([use(height=-151.0)], 0.0) == "fair"
    assert grade([use(distance=60.0, height=300.0)], 400.0) == "fair"
    assert grade([use(distance=61.0)], 100.0) == "poor"
    high = use(evolve(FLAT, elevation=301.0))
    assert grade([use(height=None), high], None) == "fair"
    assert grade([use(height=None), use(height=None)], None) == "good"


@pytest.mark.parametrize(
    ("celsius", "zone"),
    [(-60, "1a"), (-20.55, "6b"), (-17.9, "6b"), (-17.7, "7a"), (-1.0, "10a"), (1.6, "10a"), (30, "13b")],
)
def test_zone_of_an_extreme_minimum(celsius: float, zone: str) -> None:
    assert zone_for(celsius) == zone


def test_in_the_middle_of_an_ocean_nothing_is_said() -> None:
    got = climate_at(place_at(-48.0, -120.0))
    assert (got.grade, got.means, got.frost.kind, got.extreme_low) == ("none", None, "unknown", None)


def test_stations_are_within_limits_and_cheapest_first() -> None:
    got = climate_at(place_at(46.0, 11.1, 200.0))
    assert len(got.uses) == 3
    assert [u.cost for u in got.uses] == sorted(u.cost for u in got.uses)
    assert all(u.distance <= 100 and abs(u.height or 0) <= 600 for u in got.uses)


def test_a_higher_yard_at_the_same_spot_is_colder_in_every_month() -> None:
    low, high = climate_at(place_at(46.8, 8.2, 500.0)), climate_at(place_at(46.8, 8.2, 800.0))
    assert low.means is not None
    assert high.means is not None
    assert sum(high.means) < sum(low.means)


@given(st.integers(0, 12_770))
@settings(max_examples=40, deadline=None)
def test_at_a_station_its_own_values_count_most(number: int) -> None:
    """At a sure station the estimate lies within 3 degrees of the station itself, brought to its level."""
    found = station(cells_of(table(OBSERVED).lines[number]))
    assume(not found.doubtful and found.elevation is not None)
    place = Place(
        name="", region="", country=found.country, latitude=found.latitude, longitude=found.longitude,
        elevation=found.elevation,
    )
    got = climate_at(place)
    assert got.grade == "good"
    assert distance_km((found.latitude, found.longitude), (place.latitude, place.longitude)) == 0
    own = moved(found.means, StationUse(station=found, distance=0, height=0.0, cost=0), found.latitude < 0)
    assert got.means is not None
    assert max(abs(a - b) for a, b in zip(got.means, own, strict=True)) < 3
