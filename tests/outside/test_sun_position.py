"""Where the sun stands, against NREL's solar position algorithm (pvlib) and printed examples."""

from __future__ import annotations

from datetime import UTC, date, datetime, timedelta

import numpy as np
import pandas as pd
import pvlib
import pytest

from yardplan.sun import clock, position
from yardplan.yard.site import Site

#: The bar set for this program, degrees on the sphere.
BAR = 0.02


def _spa(times: np.ndarray, latitude: float, longitude: float) -> pd.DataFrame:
    """NREL/TP-560-34302 as pvlib has it, sea level, standard pressure."""
    at = pd.to_datetime(times, unit="s", utc=True)
    return pvlib.solarposition.spa_python(
        at, latitude, longitude, altitude=0, pressure=101325, temperature=12, delta_t=None
    )


@pytest.mark.parametrize("latitude", [-66.0, -45.0, -23.0, 0.0, 23.0, 45.0, 66.0])
def test_within_a_fiftieth_of_a_degree_of_spa(latitude: float) -> None:
    rng = np.random.default_rng(int(latitude) + 100)
    first, last = (datetime(year, 1, 1, tzinfo=UTC).timestamp() for year in (1950, 2101))
    times = rng.uniform(first, last, 3000)
    longitude = float(rng.uniform(-180.0, 180.0))
    spa = _spa(times, latitude, longitude)
    ours = position.sun_vectors(times, latitude, longitude)
    theirs = position.vectors_of(spa["elevation"].to_numpy(), spa["azimuth"].to_numpy())
    apart = np.degrees(np.linalg.norm(np.cross(ours, theirs), axis=1))
    assert apart.max() < BAR
    assert np.sum(ours * theirs, axis=1).min() > 0.99
    altitude, _ = position.altitude_azimuth(ours)
    high = altitude > 0.5
    seen = altitude + position.refraction(altitude)
    assert np.abs(seen - spa["apparent_elevation"].to_numpy())[high].max() < BAR


def _at(year: int, month: int, day: int, hour: int, minute: int, second: int, zone: float) -> float:
    return (datetime(year, month, day, hour, minute, second, tzinfo=UTC) - timedelta(hours=zone)).timestamp()


#: Place, time and printed result. Sources: (1) NREL/TP-560-34302, table A5.1: zenith 50.127954 without
#: refraction, azimuth 194.340241; (2) documentation of a public port of the NOAA sheet; (3), (4) unit test of
#: a public SPA port, zenith with refraction at 1000 hPa and 20 C.
PRINTED = [
    (_at(2003, 10, 17, 12, 30, 30, -7), 39.742476, -105.1786, 90 - 50.127954, 194.340241, False),
    (_at(2010, 6, 21, 9, 54, 0, -6), 40.0, -105.0, 47.34693, 98.30692, False),
    (_at(2010, 6, 21, 9, 54, 0, -6), 40.0, -105.0, 47.36178, 98.30692, True),
    (_at(2012, 12, 22, 12, 0, 0, 0), -41.0, 0.0, 90 - 17.5658, 359.08592, True),
    (_at(2012, 12, 22, 12, 0, 0, 0), -3.0, 0.0, 90 - 20.4285, 180.790356, True),
]


@pytest.mark.parametrize(("at", "latitude", "longitude", "altitude", "azimuth", "refracted"), PRINTED)
def test_printed_examples(
    at: float, latitude: float, longitude: float, altitude: float, azimuth: float, refracted: bool
) -> None:
    high, turn = position.altitude_azimuth(position.sun_vectors(at, latitude, longitude))
    seen = high + position.refraction(high) if refracted else high
    assert seen[0] == pytest.approx(altitude, abs=BAR)
    away = (turn[0] - azimuth + 180.0) % 360.0 - 180.0
    assert abs(away) * np.cos(np.radians(altitude)) < BAR


def test_rise_and_set_of_the_spa_report() -> None:
    """Table A5.1 prints sunrise 06:12:43 and sunset 17:20:19 for the UT day (set of the day before)."""
    site = Site(latitude=39.742476, longitude=-105.1786)
    rise = clock.sun_times(date(2003, 10, 17), site).rise
    sets = clock.sun_times(date(2003, 10, 16), site).set
    assert rise is not None
    assert sets is not None
    assert abs(rise.timestamp() - _at(2003, 10, 17, 6, 12, 43, -7)) < 30.0
    assert abs(sets.timestamp() - _at(2003, 10, 16, 17, 20, 19, -7)) < 30.0


def test_meeus_25_a() -> None:
    """Astronomical Algorithms, 2nd ed., example 25.a: 1992 October 13.0 TD, ra 198.38083, dec -7.78507."""
    place = position.apparent_place(2448908.5)
    assert np.degrees(place.right_ascension) % 360.0 == pytest.approx(198.38083, abs=1e-4)
    assert np.degrees(place.declination) == pytest.approx(-7.78507, abs=1e-4)


def test_meeus_28_equation_of_time() -> None:
    """Astronomical Algorithms, example 28.b: 1992 October 13.0, equation of time +13 min 42.7 s."""
    at = datetime(1992, 10, 13, tzinfo=UTC).timestamp()
    assert float(position.equation_of_time(at)) == pytest.approx(13.0 + 42.7 / 60.0, abs=0.02)


#: SPA report, table A4.1.
JULIAN = [
    (datetime(2000, 1, 1, 12, tzinfo=UTC), 2451545.0),
    (datetime(1999, 1, 1, tzinfo=UTC), 2451179.5),
    (datetime(1987, 6, 19, 12, tzinfo=UTC), 2446966.0),
    (datetime(1988, 1, 27, tzinfo=UTC), 2447187.5),
    (datetime(1900, 1, 1, tzinfo=UTC), 2415020.5),
]


@pytest.mark.parametrize(("at", "day"), JULIAN)
def test_julian_days_of_the_spa_report(at: datetime, day: float) -> None:
    assert float(position.julian_day(at.timestamp())) == day


@pytest.mark.parametrize("latitude", [-60.0, -30.0, 0.0, 35.0, 64.0])
def test_rise_and_set_against_spa(latitude: float) -> None:
    """pvlib's sun_rise_set_transit_spa, within half a minute; the report's altitude of -0.8333 degrees."""
    site = Site(latitude=latitude, longitude=10.0)
    for month in (1, 4, 6, 9, 12):
        day = date(2027, month, 21)
        ours = clock.sun_times(day, site)
        index = pd.DatetimeIndex([pd.Timestamp(day, tz="UTC") + pd.Timedelta(hours=12)])
        spa = pvlib.solarposition.sun_rise_set_transit_spa(index, latitude, 10.0)
        for name, found in (("sunrise", ours.rise), ("sunset", ours.set), ("transit", ours.noon)):
            expected = spa[name].iloc[0]
            assert found is not None
            # SPA names the event of the UT day; ours that of the place's solar day.
            apart = (found.timestamp() - expected.timestamp() + 43200.0) % 86400.0 - 43200.0
            assert abs(apart) < 60.0, (day, name)
