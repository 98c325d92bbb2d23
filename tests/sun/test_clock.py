from __future__ import annotations

from datetime import UTC, date, datetime

import pytest
from attrs import evolve

from yardplan.sun import clock, position
from yardplan.yard.site import Site

NEW_YORK = Site(latitude=42.0, longitude=-76.0, time_zone="America/New_York")


def test_daylight_and_standard_time_by_the_zone() -> None:
    assert clock.moment(date(2026, 7, 1), 12.0, NEW_YORK) == datetime(2026, 7, 1, 16, tzinfo=UTC)
    assert clock.moment(date(2026, 1, 1), 12.0, NEW_YORK) == datetime(2026, 1, 1, 17, tzinfo=UTC)


def test_without_a_zone_the_longitude_gives_whole_hours() -> None:
    assert clock.moment(date(2026, 7, 1), 12.0, evolve(NEW_YORK, time_zone=None)).hour == 17


def test_an_unknown_zone_is_named() -> None:
    for name in ("Mars/Olympus", "../etc", ""):
        with pytest.raises(clock.ZoneError, match="is not known"):
            clock.zone_of(evolve(NEW_YORK, time_zone=name))


@pytest.mark.parametrize("hours", [0.5, 6.0, 9.75, 12.0, 20.0])
def test_solar_time_both_ways(hours: float) -> None:
    for month in range(1, 13):
        at = clock.moment(date(2026, month, 15), hours, NEW_YORK, "solar")
        day, shown = clock.shown(at, NEW_YORK, "solar")
        assert day == date(2026, month, 15)
        assert shown == pytest.approx(hours, abs=1e-3)


def test_at_solar_noon_the_sun_is_due_south_or_north() -> None:
    for latitude, azimuth in ((42.0, 180.0), (-42.0, 0.0)):
        site = evolve(NEW_YORK, latitude=latitude)
        at = clock.moment(date(2026, 5, 3), 12.0, site, "solar").timestamp()
        _, turn = position.altitude_azimuth(position.sun_vectors(at, latitude, site.longitude))
        assert abs((turn[0] - azimuth + 180.0) % 360.0 - 180.0) < 0.01


def test_rise_comes_before_noon_before_set() -> None:
    times = clock.sun_times(date(2026, 3, 20), NEW_YORK)
    assert times.day == "rises and sets"
    assert times.rise is not None
    assert times.set is not None
    assert times.rise < times.noon < times.set
    assert (times.set - times.rise).total_seconds() == pytest.approx(12.15 * 3600, abs=300)


@pytest.mark.parametrize(
    ("latitude", "month", "day"),
    [
        (80.0, 6, "never sets"),
        (80.0, 12, "never rises"),
        (-80.0, 6, "never rises"),
        (90.0, 6, "never sets"),
    ],
)
def test_polar_day_and_night_without_error(latitude: float, month: int, day: str) -> None:
    times = clock.sun_times(date(2026, month, 21), evolve(NEW_YORK, latitude=latitude))
    assert times.day == day
    assert times.rise is None
    assert times.set is None


def test_clock_text_rounds_to_the_minute() -> None:
    assert clock.clock_text(datetime(2026, 7, 1, 16, 59, 40, tzinfo=UTC), NEW_YORK) == "13:00"
    assert clock.clock_text(datetime(2026, 7, 2, 3, 59, 40, tzinfo=UTC), NEW_YORK) == "00:00"
