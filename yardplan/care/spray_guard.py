"""The spray guard: no spray that can harm bees while anything in or beside the yard is in flower.

Days are closed from some days before the first open flower of each variety to the fall of its petals
(figures.csv); what product will be used is not known, so every spray counts as one that can harm bees.
Nothing is sprayed on a plant that is being picked. The label, the law and the extension service go first.
"""

from __future__ import annotations

import datetime as dt
from collections.abc import Iterable, Sequence
from functools import cache
from itertools import groupby

from attrs import frozen

from yardplan.care.season import Season, whole_months
from yardplan.care.tables import figures, groups, rows_of
from yardplan.language import tr
from yardplan.plants.cultivar import Cultivar

_DAY = dt.timedelta(days=1)


@frozen
class Closed:
    """Days on which nothing is sprayed, and what closes them: a variety in bloom, or a harvest.

    `unknown` the kind by itself where its bloom here is not known.
    """

    first: dt.date
    last: dt.date
    name: str
    harvest: bool = False
    unknown: str = ""

    def holds(self, day: dt.date) -> bool:
        """True when that day is closed."""
        return self.first <= day <= self.last


@frozen
class Window:
    """A part of a spray's time: open, or refused because of what stands in `by`."""

    first: dt.date
    last: dt.date
    by: tuple[Closed, ...] = ()

    @property
    def open(self) -> bool:
        """True where a spray may be placed."""
        return not self.by


def bloom_closed(kinds: Iterable[tuple[str, Cultivar]], seasons: Sequence[Season]) -> list[Closed]:
    """Closed days of every kind in flower, in the order of the days."""
    lead = dt.timedelta(days=figures()["spray lead before bloom"])
    found: list[Closed] = []
    for season in seasons:
        for name, cultivar in kinds:
            bloom = season.blooms(cultivar)
            if bloom is None:
                found += _unknown(name, cultivar, season)
                continue
            first, last, by_month = bloom
            if by_month:
                first, last = whole_months(first, last)
            found.append(Closed(first - lead, last, name))
    return sorted(found, key=lambda closed: (closed.first, closed.name))


def _unknown(name: str, cultivar: Cultivar, season: Season) -> list[Closed]:
    """Days closed for a kind whose bloom here cannot be told.

    Herbs and flowers close the frost-free season, woody kinds the whole year; kinds bees do not visit none.
    """
    if cultivar.crop in not_visited():
        return []
    words = tr("{plant}, whose bloom here is not known", plant=name)
    if cultivar.crop in groups()["herbaceous"]:
        before = dt.timedelta(days=figures()["flowers from before last frost"])
        return [Closed(season.last_frost.first - before, season.first_frost.last, words, unknown=name)]
    return [Closed(dt.date(season.year, 1, 1), dt.date(season.year, 12, 31), words, unknown=name)]


@cache
def not_visited() -> frozenset[str]:
    """Crops whose flowers bees do not visit or that do not come to flower (no-bees.csv)."""
    return frozenset(row["crop"] for row in rows_of("no-bees.csv"))


def bloom_unknown(kinds: Iterable[tuple[str, Cultivar]], season: Season) -> tuple[str, ...]:
    """Kinds visited by bees whose bloom here cannot be told: they close the calendar to sprays."""
    return tuple(
        name for name, cultivar in kinds
        if cultivar.crop not in not_visited() and season.blooms(cultivar) is None
    )


def windows(first: dt.date, last: dt.date, closed: Iterable[Closed]) -> list[Window]:
    """The days from first to last cut into open and refused parts, in order."""
    near = [one for one in closed if one.first <= last and one.last >= first]
    days = [first + _DAY * step for step in range((last - first).days + 1)]
    found: list[Window] = []
    for is_open, run in groupby(days, key=lambda day: not any(one.holds(day) for one in near)):
        part = list(run)
        by = () if is_open else tuple(one for one in near if one.first <= part[-1] and one.last >= part[0])
        found.append(Window(part[0], part[-1], by))
    return found
