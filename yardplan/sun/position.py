"""Where the sun stands: low-accuracy formulas of Meeus with apparent sidereal time and parallax.

Source: J. Meeus, Astronomical Algorithms, 2nd ed. 1998, chapters 12, 16, 22 and 25 (stated accuracy
0.01 degree). Times are UTC as seconds since 1970; angles in degrees; azimuth clockwise from true north;
vectors are (east, north, up) of length 1. TT - UT is left out: it moves the result by less than 0.001 degree.
"""

from __future__ import annotations

from typing import Any

import numpy as np
from attrs import frozen
from numpy.typing import ArrayLike, NDArray

Floats = NDArray[np.floating[Any]]

UNIX_EPOCH_JD = 2440587.5
J2000_JD = 2451545.0
#: Centre of the disc at rise and set: 34' of refraction and 16' of semi-diameter (SPA report, 3.14.2).
HORIZON_ALTITUDE = -0.8333
#: Horizontal parallax of the sun, degrees: 8.794 arc-seconds.
PARALLAX = 0.002443


class LatitudeError(ValueError):
    """A latitude or longitude that is not on Earth."""


def check_place(latitude: float, longitude: float) -> None:
    """Raise LatitudeError, in words, when the place is not on Earth."""
    if not -90.0 <= latitude <= 90.0:
        raise LatitudeError(f"latitude {latitude:g} is outside -90 to 90 degrees")
    if not -180.0 <= longitude <= 360.0:
        raise LatitudeError(f"longitude {longitude:g} is outside -180 to 180 degrees")


def julian_day(times: ArrayLike) -> Floats:
    """Julian day of UTC seconds since 1970."""
    return np.asarray(times, dtype=np.float64) / 86400.0 + UNIX_EPOCH_JD


@frozen(eq=False)
class Ecliptic:
    """Apparent place of the sun and sidereal time, radians; `mean_longitude`, `nutation` in degrees."""

    right_ascension: Floats
    declination: Floats
    sidereal: Floats
    mean_longitude: Floats
    nutation: Floats


def apparent_place(jd: ArrayLike) -> Ecliptic:
    """The sun's apparent right ascension and declination (Meeus 25.2 to 25.8) and sidereal time (12.4)."""
    d = np.asarray(jd, dtype=np.float64) - J2000_JD
    t = d / 36525.0
    mean_longitude = 280.46646 + 36000.76983 * t + 0.0003032 * t**2
    m = np.radians(357.52911 + 35999.05029 * t - 0.0001537 * t**2)
    centre = (
        (1.914602 - 0.004817 * t - 0.000014 * t**2) * np.sin(m)
        + (0.019993 - 0.000101 * t) * np.sin(2 * m)
        + 0.000289 * np.sin(3 * m)
    )
    node = np.radians(125.04 - 1934.136 * t)
    longitude = np.radians(mean_longitude + centre - 0.00569 - 0.00478 * np.sin(node))
    tilt = np.radians(
        23.43929111 - 0.013004167 * t - 1.64e-7 * t**2 + 5.04e-7 * t**3 + 0.00256 * np.cos(node)
    )
    nutation = -0.00478 * np.sin(node) * np.cos(tilt)
    sidereal = 280.46061837 + 360.98564736629 * d + 0.000387933 * t**2 - t**3 / 38710000.0 + nutation
    return Ecliptic(
        np.arctan2(np.cos(tilt) * np.sin(longitude), np.cos(longitude)),
        np.arcsin(np.sin(tilt) * np.sin(longitude)),
        np.radians(sidereal), mean_longitude, nutation,
    )


def _hour_angle(place: Ecliptic, longitude: float) -> Floats:
    """Local hour angle, radians, -pi to pi."""
    angle = place.sidereal + np.radians(longitude) - place.right_ascension
    return np.asarray((angle + np.pi) % (2 * np.pi) - np.pi)


def sun_vectors(times: ArrayLike, latitude: float, longitude: float) -> Floats:
    """Unit vectors (east, north, up) to the sun, shape (n, 3), without refraction.

    Raises LatitudeError for a place that is not on Earth.
    """
    check_place(latitude, longitude)
    place = apparent_place(np.atleast_1d(julian_day(times)))
    angle = _hour_angle(place, longitude)
    sin_lat, cos_lat = np.sin(np.radians(latitude)), np.cos(np.radians(latitude))
    sin_dec, cos_dec = np.sin(place.declination), np.cos(place.declination)
    vectors = np.stack([
        -cos_dec * np.sin(angle),
        sin_dec * cos_lat - cos_dec * np.cos(angle) * sin_lat,
        sin_dec * sin_lat + cos_dec * np.cos(angle) * cos_lat,
    ], axis=1)
    return _with_parallax(vectors)


def _with_parallax(vectors: Floats) -> Floats:
    """Lower the vectors by the sun's parallax, as seen from the ground and not from the Earth's centre."""
    lowered = vectors.copy()
    lowered[:, 2] -= np.radians(PARALLAX)
    return np.asarray(lowered / np.linalg.norm(lowered, axis=1, keepdims=True))


def altitude_azimuth(vectors: Floats) -> tuple[Floats, Floats]:
    """True altitude and azimuth of unit vectors, degrees."""
    east, north, up = vectors[..., 0], vectors[..., 1], vectors[..., 2]
    altitude = np.degrees(np.arctan2(up, np.hypot(east, north)))
    return altitude, np.degrees(np.arctan2(east, north)) % 360.0


def vectors_of(altitude: ArrayLike, azimuth: ArrayLike) -> Floats:
    """Unit vectors (east, north, up) of altitudes and azimuths in degrees."""
    high, turn = np.radians(np.asarray(altitude, float)), np.radians(np.asarray(azimuth, float))
    return np.stack([np.cos(high) * np.sin(turn), np.cos(high) * np.cos(turn), np.sin(high)], axis=-1)


def refraction(altitude: ArrayLike) -> Floats:
    """Degrees to add to a true altitude, at 1010 hPa and 10 C (Meeus 16.4); none below -1 degree."""
    true = np.asarray(altitude, dtype=np.float64)
    held = np.maximum(true, -1.0)
    lift = 1.02 / 60.0 / np.tan(np.radians(held + 10.3 / (held + 5.11)))
    return np.where(true > -1.0, np.maximum(lift, 0.0), 0.0)


def declination(times: ArrayLike) -> Floats:
    """Apparent declination in degrees."""
    return np.degrees(apparent_place(julian_day(times)).declination)


def equation_of_time(times: ArrayLike) -> Floats:
    """Apparent minus mean solar time, minutes (Meeus 28.1)."""
    place = apparent_place(julian_day(times))
    degrees = (
        place.mean_longitude - 0.0057183 - np.degrees(place.right_ascension) + place.nutation
    )
    return np.asarray(((degrees + 180.0) % 360.0 - 180.0) * 4.0)


def solar_hour(times: ArrayLike, longitude: float) -> Floats:
    """True solar time in hours, 0 to 24; 12 when the sun is due south or north."""
    angle = _hour_angle(apparent_place(julian_day(times)), longitude)
    return np.asarray((np.degrees(angle) / 15.0 + 12.0) % 24.0)


def half_day(sun_declination: Any, latitude: float, altitude: float = HORIZON_ALTITUDE) -> Floats:
    """Hours from the sun's passing an altitude to noon: 0 if it never rises so high, 12 if it never sinks.

    cos H = (sin altitude - sin lat sin dec) / (cos lat cos dec); `sun_declination` in degrees.
    """
    dec, lat = np.radians(np.asarray(sun_declination, float)), np.radians(latitude)
    over = np.sin(np.radians(altitude)) - np.sin(lat) * np.sin(dec)
    under = np.maximum(np.cos(lat) * np.cos(dec), 1e-12)
    return np.asarray(np.degrees(np.arccos(np.clip(over / under, -1.0, 1.0))) / 15.0)
