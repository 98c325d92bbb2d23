"""Heat sums from twelve monthly means: how far buds have advanced on each day of the average year.

Daily means run linearly between mid-month nodes that are shifted until every month's mean is met; the
expected heat of a day with mean m over the base b, at day-to-day spread s, is (m-b) Phi(z) + s phi(z) with
z = (m-b)/s. Without that spread cold springs come out wrong. Source: computed-bloom-model.
"""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from functools import cache

import numpy as np
from numpy.typing import NDArray

from yardplan.language import day_month, tr
from yardplan.plants.pollen_tables import TableError, rows
from yardplan.yard.site import Site

Floats = NDArray[np.float64]

_MONTH_DAYS = np.array([31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31])
_ENDS = np.cumsum(_MONTH_DAYS)
_STARTS = _ENDS - _MONTH_DAYS
#: Days of the year, 1 to 365; February has 28.
YEAR = 365
#: Half a year, by which the southern seasons are turned: 15 August is 181 days after 15 February.
HALF_YEAR = 181
_erf = np.vectorize(math.erf, otypes=[float])


@cache
def model() -> Mapping[str, str]:
    """The parameters of the bloom model by name, as text."""
    return {row["name"]: row["value"] for _, row in rows("model.csv")}


def parameter(name: str) -> float:
    """One parameter as a number."""
    return float(model()[name])


def day_of(date: str) -> int:
    """Day of the year, 1 to 365, of `MM-DD` (29 February as 1 March). Raises ValueError."""
    month_text, _, day_text = date.partition("-")
    month, day = int(month_text), int(day_text)
    if not 1 <= month <= 12 or not 1 <= day <= _MONTH_DAYS[month - 1] + (month == 2):
        raise ValueError(
            tr("'{date}' is not a day of the year: write MM-DD, for example 04-24", date=date)
        )
    return int(_STARTS[month - 1]) + day


def date_of(day: float) -> str:
    """`MM-DD` of a day of the year; a part of a day counts as that day, days beyond the year wrap."""
    number = (math.ceil(day - 1e-9) - 1) % YEAR
    month = int(np.searchsorted(_ENDS, number, side="right"))
    return f"{month + 1:02d}-{number - int(_STARTS[month]) + 1:02d}"


def day_words(day: float) -> str:
    """A day of the year in words: `20 April`."""
    month, number = map(int, date_of(day).split("-"))
    return day_month(month, number)


def normal_share(z: float) -> float:
    """Share of a normal spread below z."""
    return 0.5 * (1.0 + math.erf(z / math.sqrt(2.0)))


def monthly_means_of(site: Site) -> tuple[float, ...] | None:
    """Twelve monthly means of a site, halfway between lows and highs where only those are known."""
    if site.monthly_means is not None:
        return site.monthly_means
    if site.monthly_lows is None or site.monthly_highs is None:
        return None
    if len(site.monthly_lows) != len(site.monthly_highs):
        return None
    return tuple((low + high) / 2 for low, high in zip(site.monthly_lows, site.monthly_highs, strict=True))


def daily_means(monthly: Sequence[float], rounds: int | None = None) -> Floats:
    """365 daily means, degrees C, whose monthly means are those given. Raises ValueError unless twelve."""
    wanted = np.asarray(monthly, dtype=float)
    if wanted.shape != (12,) or not np.isfinite(wanted).all():
        raise ValueError("twelve monthly means are needed, January to December")
    middles = (_STARTS + 1 + _ENDS) / 2
    days = np.arange(1, YEAR + 1)
    places = np.concatenate(([middles[-1] - YEAR], middles, [middles[0] + YEAR]))
    nodes = wanted.copy()
    for _ in range(int(parameter("rounds")) if rounds is None else rounds):
        line = np.interp(days, places, np.concatenate(([nodes[-1]], nodes, [nodes[0]])))
        nodes += wanted - np.add.reduceat(line, _STARTS) / _MONTH_DAYS
    return np.asarray(np.interp(days, places, np.concatenate(([nodes[-1]], nodes, [nodes[0]]))), dtype=float)


def expected_heat(means: Floats, base: float, scatter: float) -> Floats:
    """Degree days over `base` to expect on days with these means and this day-to-day spread."""
    z = (means - base) / scatter
    density = np.exp(-0.5 * z * z) / math.sqrt(2 * math.pi)
    shares = 0.5 * (1.0 + _erf(z / math.sqrt(2.0)))
    return np.asarray((means - base) * shares + scatter * density, dtype=float)


class HeatSums:
    """Cumulated heat of the average year at one place, from mid-February (mid-August in the south)."""

    def __init__(self, monthly: Sequence[float], southern: bool = False) -> None:
        """Sum up the year of these twelve monthly means. Raises ValueError unless there are twelve."""
        start = day_of(model()["start"])
        self.start = start + HALF_YEAR if southern else start
        heat = expected_heat(daily_means(monthly), parameter("base"), parameter("scatter"))
        self.sums: Floats = np.cumsum(np.roll(heat, 1 - self.start))
        self.coldest = float(min(monthly))

    def sum_on(self, day: float) -> float:
        """Heat sum at the end of a day of the year (days of the following year may be given as over 365)."""
        after = (day - self.start + 1) % YEAR
        return float(np.interp(after, np.arange(YEAR + 1), np.concatenate(([0.0], self.sums))))

    def day_when(self, total: float) -> float | None:
        """Day of the year (a part of a day included, may exceed 365) on which the sum reaches `total`."""
        if total > self.sums[-1]:
            return None
        sums = np.concatenate(([0.0], self.sums))
        return float(np.interp(total, sums, np.arange(YEAR + 1))) + self.start - 1


@cache
def reference_sums() -> HeatSums:
    """Heat sums of the place by whose spring differences in days are turned into heat."""
    text = model()["reference_means"]
    means = [float(word) for word in text.split()]
    if len(means) != 12:
        raise TableError("model.csv, reference_means: twelve figures are needed")
    return HeatSums(means)
