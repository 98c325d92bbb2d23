"""Sets of sun positions over a season, and what each position counts towards.

Best use of few positions: many dates, coarse steps that are shifted from date to date by golden-ratio
fractions, so that the errors of different dates even out. Each date's steps are scaled so that they add up
to the time that the sun really stands above the lowest altitude.
"""

from __future__ import annotations

import calendar
from collections.abc import Iterable, Sequence
from datetime import UTC, date, datetime, timedelta
from typing import Literal

import numpy as np
from attrs import evolve, field, frozen
from numpy.typing import NDArray

from yardplan.sun import clock, position
from yardplan.sun.parameters import count, figure
from yardplan.sun.position import Floats
from yardplan.yard.site import Site

Detail = Literal["live", "full"]
#: A common year between two leap years' phases; hours differ by less than 0.01 from year to year.
YEAR = 2026
_GOLDEN = 0.6180339887498949
_TWELVE = tuple(f"month {month}" for month in range(1, 13))
#: What a position can count towards; each is a row of `Positions.weights`.
TALLIES = ("season", "midsummer", "morning", "light", "sky", *_TWELVE)


@frozen(eq=False)
class Positions:
    """Directions to the sun and what they count.

    `vectors` (n, 3) east, north, up, true; `months` 0 to 11; `hours` true solar time; `weights`
    (tallies, n) in hours a day, or in parts of open light for `light` and `sky`; `times` UTC seconds (nan for
    parts of the sky).
    """

    vectors: Floats
    months: NDArray[np.int64]
    hours: Floats
    times: Floats
    weights: Floats = field()

    def __len__(self) -> int:
        return len(self.vectors)

    def weight(self, tally: str) -> Floats:
        """The weights of one tally."""
        return np.asarray(self.weights[TALLIES.index(tally)])

    def total(self, tally: str) -> float:
        """What an open place gets, hours a day."""
        return float(self.weight(tally).sum())

    def chosen(self, keep: NDArray[np.bool_]) -> Positions:
        """Some of the positions."""
        return Positions(
            self.vectors[keep], self.months[keep], self.hours[keep], self.times[keep], self.weights[:, keep]
        )

    @property
    def altitudes(self) -> Floats:
        """True altitudes, degrees."""
        return position.altitude_azimuth(self.vectors)[0]


def joined(parts: Sequence[Positions]) -> Positions:
    """Several sets one after the other."""
    return Positions(
        np.concatenate([p.vectors for p in parts]), np.concatenate([p.months for p in parts]),
        np.concatenate([p.hours for p in parts]), np.concatenate([p.times for p in parts]),
        np.concatenate([p.weights for p in parts], axis=1),
    )


def season_dates(season: tuple[str, str], every: int, year: int = YEAR) -> list[date]:
    """A date in the middle of each of the equal parts, about `every` days long, that a season falls into."""
    first, last = _day(season[0], year), _day(season[1], year)
    if last < first:
        last = _day(season[1], year + 1)
    days = (last - first).days + 1
    parts = max(1, round(days / every))
    return [first + timedelta(days=int((n + 0.5) * days / parts)) for n in range(parts)]


def _day(text: str, year: int) -> date:
    """`MM-DD` in a year; a 29 February in a common year is the 28th."""
    month, day = (int(part) for part in text.split("-"))
    return date(year, month, min(day, calendar.monthrange(year, month)[1]))


def steps_of(day: date, site: Site, step: float, phase: float) -> Positions:
    """The positions of one day, `step` minutes apart, above the lowest altitude.

    `phase` 0 to 1 shifts the steps. The weight `season` holds the hours each stands for.
    """
    number = max(1, round(1440.0 / step))
    seconds = 86400.0 / number
    start = clock.mean_noon(day, site.longitude) - 43200.0
    times = start + (np.arange(number) + phase) * seconds
    vectors = position.sun_vectors(times, site.latitude, site.longitude)
    altitude, _ = position.altitude_azimuth(vectors)
    high = altitude + position.refraction(altitude) >= figure("lowest_altitude")
    weights = np.zeros((len(TALLIES), int(high.sum())))
    weights[0] = _scaled(seconds / 3600.0, int(high.sum()), day, site)
    return Positions(
        vectors[high], np.full(len(weights[0]), day.month - 1),
        position.solar_hour(times[high], site.longitude), times[high], weights,
    )


def _scaled(hours: float, number: int, day: date, site: Site) -> float:
    """Hours of one step, so that all add up to the day's time above the lowest altitude."""
    low = figure("lowest_altitude")
    true = low - float(position.refraction(low))
    dec = position.declination(clock.true_noon(day, site.longitude))
    exact = 2.0 * float(position.half_day(dec, site.latitude, true))
    if number == 0 or exact <= 0.0:
        return hours
    factor = exact / (number * hours)
    # Near the polar circle a coarse step can miss most of a short day: its own length is the better guess.
    return hours * min(max(factor, 0.5), 2.0)


def _tallied(day: Positions, dates: int, monthly: float) -> Positions:
    """One date of a season with its hours shared out to the tallies."""
    hours = day.weights[0].copy()
    weights = np.zeros_like(day.weights)
    weights[TALLIES.index("season")] = hours / dates
    weights[TALLIES.index("morning")] = hours / dates * (day.hours < figure("morning_ends"))
    weights[TALLIES.index("light")] = hours / dates * beam(day.altitudes)
    if len(day):
        weights[TALLIES.index(_TWELVE[day.months[0]])] = hours * monthly
    return evolve(day, weights=weights)


def beam(altitude: Floats) -> Floats:
    """Clear-sky direct light on level ground, kW/m2, by true altitude in degrees.

    DNI = 1.353 x 0.7^(AM^0.678) (Meinel and Meinel, Applied Solar Energy, 1976; from memory), air mass AM by
    Kasten and Young, Applied Optics 28 (1989) 4735-4738 (from memory).
    """
    high = np.maximum(altitude, 0.0)
    mass = 1.0 / (np.sin(np.radians(high)) + 0.50572 * (high + 6.07995) ** -1.6364)
    return np.asarray(1.353 * 0.7 ** (mass**0.678) * np.sin(np.radians(high)))


def over_dates(dates: Sequence[date], site: Site, step: float, *, staggered: bool = True) -> Positions:
    """Positions of several dates, tallied as a season and by month."""
    in_month = {month: sum(d.month == month for d in dates) for month in {d.month for d in dates}}
    parts = []
    for number, day in enumerate(dates):
        phase = (0.5 + number * _GOLDEN) % 1.0 if staggered else 0.5
        parts.append(_tallied(steps_of(day, site, step, phase), len(dates), 1.0 / in_month[day.month]))
    return joined(parts)


def midsummer_of(site: Site, year: int = YEAR) -> date:
    """21 June, or 21 December in the south."""
    return date(year, 12, 21) if site.southern else date(year, 6, 21)


def one_day(day: date, site: Site, step: float, tally: str = "season") -> Positions:
    """Positions of one day counted towards one tally."""
    steps = steps_of(day, site, step, 0.5)
    weights = np.zeros_like(steps.weights)
    weights[TALLIES.index(tally)] = steps.weights[0]
    return evolve(steps, weights=weights)


#: Parts in each 12 degree band of the 145-part sky, from the horizon up (CIE 1989).
SKY_BANDS = (30, 30, 24, 24, 18, 12, 6, 1)


def sky_parts(month: int) -> Positions:
    """The 145 parts of the sky, weighted by solid angle times sine of altitude; `month` sets the leaves."""
    vectors, weights = [], []
    for band, parts in enumerate(SKY_BANDS):
        low, high = np.radians(12.0 * band), np.radians(min(12.0 * (band + 1), 90.0))
        middle = np.degrees((low + high) / 2.0) if parts > 1 else 90.0
        vectors.append(position.vectors_of(np.full(parts, middle), (np.arange(parts) + 0.5) * 360.0 / parts))
        # Integral of sin(altitude) over the part: half the difference of the squared sines, shared out.
        weights.append(np.full(parts, (np.sin(high) ** 2 - np.sin(low) ** 2) / parts))
    tallies = np.zeros((len(TALLIES), 145))
    tallies[TALLIES.index("sky")] = np.concatenate(weights)
    return Positions(
        np.concatenate(vectors), np.full(145, month - 1), np.full(145, np.nan), np.full(145, np.nan), tallies
    )


def season_positions(site: Site, detail: Detail = "live") -> Positions:
    """Everything a light report counts: the season, the midsummer day and the sky."""
    dates = season_dates(site.growing_season, count(f"{detail}_days"))
    midsummer = midsummer_of(site)
    return joined([
        over_dates(dates, site, figure(f"{detail}_step")),
        one_day(midsummer, site, figure(f"{detail}_midsummer_step"), "midsummer"),
        sky_parts(midsummer.month),
    ])


def moment_position(at: datetime, site: Site) -> Positions:
    """The one position of a moment (UTC), whatever its altitude."""
    times = np.array([at.astimezone(UTC).timestamp()])
    weights = np.zeros((len(TALLIES), 1))
    weights[0] = 1.0
    return Positions(
        position.sun_vectors(times, site.latitude, site.longitude), np.array([at.month - 1]),
        position.solar_hour(times, site.longitude), times, weights,
    )


def months_of(positions: Positions) -> Iterable[int]:
    """Months (1 to 12) towards which any position counts."""
    held = positions.weights[TALLIES.index(_TWELVE[0]) :].sum(axis=1)
    return [month + 1 for month in range(12) if held[month] > 0.0]
