"""Winter chill: the three models used in the trade, and a rough estimate from monthly temperatures.

Chilling hours (chilling-hours-1949), Utah units (utah-chill-1974) and the dynamic model's portions
(dynamic-chill-1990) are computed from hourly temperatures. Catalogue figures are hours at or under 7 C.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import cast

import numpy as np
from attrs import frozen
from numpy.typing import ArrayLike, NDArray

from yardplan.plants.heat import HALF_YEAR, YEAR, daily_means, monthly_means_of, parameter
from yardplan.plants.limits import shipped_limits
from yardplan.yard.site import Site

Floats = NDArray[np.float64]

#: Upper limit of a chilling hour, 45 F in degrees C.
CHILL_CEILING = 7.2
#: Utah units of an hour by temperature: upper limits (inclusive), and units below each and above the last.
_UTAH_LIMITS = np.array([1.4, 2.4, 9.1, 12.4, 15.9, 18.0])
_UTAH_UNITS = np.array([0.0, 0.5, 1.0, 0.5, 0.0, -0.5, -1.0])
#: Parameters of the dynamic model: activation energies over the gas constant (K), rates per hour, slope, K.
_E0, _E1, _A0, _A1, _SLOPE, _TF = 4153.5, 12888.8, 139_500.0, 2.567e18, 1.6, 277.0
_KELVIN = 273.0
#: Daily range assumed where monthly highs and lows are not known, degrees C (from memory).
_USUAL_RANGE = 10.0
#: Days in which winter chill is counted: 1 November to 28 February (common practice), half a year on south.
_WINTER = range(305, 305 + 120)
#: Estimates are rough: hours are rounded to this.
_ROUNDED = 50


def chilling_hours(hourly: ArrayLike, *, frost_counts: bool = False) -> float:
    """Hours from 0 to 7.2 C, both included; with `frost_counts` every hour at or under 7.2 C (older use)."""
    t = np.asarray(hourly, dtype=float)
    cold = t <= CHILL_CEILING
    return float(np.count_nonzero(cold if frost_counts else cold & (t >= 0.0)))


def utah_units(hourly: ArrayLike) -> float:
    """Utah chill units of hourly temperatures, degrees C; warm hours count against."""
    t = np.asarray(hourly, dtype=float)
    return float(_UTAH_UNITS[np.searchsorted(_UTAH_LIMITS, t, side="left")].sum())


def chill_portions(hourly: ArrayLike) -> Floats:
    """Chill portions gathered up to and including each hour, by the dynamic model."""
    kelvin = np.asarray(hourly, dtype=float) + _KELVIN
    strength = np.exp(_SLOPE * _TF * (kelvin - _TF) / kelvin)
    kept = strength / (1.0 + strength)
    target = (_A0 / _A1) * np.exp((_E1 - _E0) / kelvin)
    left = np.exp(-_A1 * np.exp(-_E1 / kelvin))
    portions = np.zeros(kelvin.size)
    precursor = 0.0
    share = 0.0
    for hour in range(kelvin.size):
        # What reached 1 in the hour before turned to portions by the share of the hour before it.
        start = precursor * (1.0 - share) if precursor >= 1.0 else precursor
        precursor = float(target[hour] - (target[hour] - start) * left[hour])
        if precursor >= 1.0:
            portions[hour] = precursor * share
        share = float(kept[hour])
    return cast("Floats", np.cumsum(portions))


def day_length(day: int, latitude: float) -> float:
    """Hours between sunrise and sunset on a day of the year (declination 23.45 degrees at most)."""
    tilt = math.radians(23.45) * math.sin(2 * math.pi * (284 + day) / YEAR)
    hour_angle = -math.tan(math.radians(max(-66.0, min(66.0, latitude)))) * math.tan(tilt)
    return 24 / math.pi * math.acos(max(-1.0, min(1.0, hour_angle)))


def hourly_temperatures(
    lows: Sequence[float], highs: Sequence[float], latitude: float, first_day: int = 1
) -> Floats:
    """Hourly temperatures from daily extremes: a sine by day, a logarithmic fall by night.

    Shape (24 x days,). Source: hourly-temperatures-1990, from memory.
    """
    next_lows = [*lows[1:], lows[-1]]
    curve = np.array([
        value
        for number, (low, high, after) in enumerate(zip(lows, highs, next_lows, strict=True), start=first_day)
        for value in _day_curve(low, high, day_length((number - 1) % YEAR + 1, latitude), after)
    ])
    # Each day's curve starts at sunrise: turn it so that the first value is midnight.
    sunrise = round(12 - day_length(first_day, latitude) / 2)
    return np.roll(curve, sunrise)


def _day_curve(low: float, high: float, length: float, next_low: float) -> list[float]:
    """24 hourly values from one sunrise to the next."""
    values = []
    sunset = low + (high - low) * math.sin(math.pi * length / (length + 4))
    night = max(24 - length, 1.0)
    for hour in range(24):
        if hour <= length:
            values.append(low + (high - low) * math.sin(math.pi * hour / (length + 4)))
        else:
            fall = math.log(hour - length + 1) / math.log(night + 1)
            values.append(sunset - (sunset - next_low) * fall)
    return values


@frozen(kw_only=True)
class SiteChill:
    """Estimate of the average winter: `hours` at or under 7 C (to 50), mean of the `coldest` month."""

    hours: float
    coldest: float

    @property
    def may_fail(self) -> bool:
        """True where winters may be too warm for kinds that need chill."""
        return self.coldest > shipped_limits()["chill-warm-winter"].value


def site_chill(site: Site) -> SiteChill | None:
    """Chill of a site's average winter from its monthly temperatures; None when they are not known.

    Hours known on the spot stand in place of the estimate.
    """
    monthly = monthly_means_of(site)
    if monthly is None or len(monthly) != 12:
        return None
    hours = site.chill_hours
    if hours is None:
        hours = round(_winter_hours(site, daily_means(monthly)) / _ROUNDED) * _ROUNDED
    return SiteChill(hours=hours, coldest=float(min(monthly)))


def _winter_hours(site: Site, means: Floats) -> float:
    ranges = np.full(YEAR, _USUAL_RANGE)
    if site.monthly_lows and site.monthly_highs and len(site.monthly_lows) == len(site.monthly_highs) == 12:
        ranges = daily_means(site.monthly_highs) - daily_means(site.monthly_lows)
    turn = HALF_YEAR if site.southern else 0
    days = (np.array(_WINTER) - 1 + turn) % YEAR
    # Hours of a day about its mean, days about theirs: the share of hours under the ceiling.
    hours = means[days, None] + ranges[days, None] / 2 * np.sin(2 * np.pi * np.arange(24) / 24)
    z = (CHILL_CEILING - hours) / parameter("scatter")
    return float((0.5 * (1 + np.vectorize(math.erf)(z / math.sqrt(2)))).sum())
