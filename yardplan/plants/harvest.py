"""When fruit is ripe: days from full bloom by crop and season class."""

from __future__ import annotations

import csv
import re
from collections.abc import Mapping
from functools import cache

from attrs import frozen

from yardplan.plants.bloom import BloomBand
from yardplan.plants.bloom_tables import class_number
from yardplan.plants.cultivar import Cultivar
from yardplan.plants.heat import date_of
from yardplan.shipped import resource

#: Crops of ours by their names in the harvest table.
_ROWS_OF: Mapping[str, str] = {
    "european pear": "pear", "asian pear": "asian pear", "sour cherry": "tart cherry",
    "hybrid plum": "japanese plum", "northern highbush blueberry": "highbush blueberry",
    "southern highbush blueberry": "highbush blueberry", "half-high blueberry": "highbush blueberry",
    "rabbiteye blueberry": "highbush blueberry", "lowbush blueberry": "highbush blueberry",
    "red raspberry": "raspberry", "yellow raspberry": "raspberry", "purple raspberry": "raspberry",
    "blackberry (erect)": "blackberry", "blackberry (semi-erect)": "blackberry",
    "blackberry (trailing)": "blackberry", "red currant": "red and white currant",
    "white currant": "red and white currant", "serviceberry": "serviceberry / saskatoon",
    "serviceberry (shrub form)": "serviceberry / saskatoon", "honeyberry/haskap": "honeyberry",
    "arctic kiwi": "hardy kiwi", "persimmon": "persimmon (asian and american)", "jostaberry": "black currant",
}
_WIDE = re.compile(r"^(all|as peach|early to late|june-bearing|table)", re.IGNORECASE)
_CLASS = re.compile(r"^(very early|early mid|early|mid late|mid|very late|late)(?:\s+to\s+(mid|late))?")
#: Spread of a harvest date about its middle, days: apples (McIntosh 115-135), others (care reference, 4).
_SPREAD = {"apple": 7.0, "crabapple": 7.0}
_USUAL_SPREAD = 5.0


@frozen(kw_only=True)
class HarvestBand:
    """First and last day of the year on which harvest begins in the average year; may exceed 365.

    `spread` days by which single years lie earlier or later.
    """

    first: float
    last: float
    spread: float
    sources: tuple[str, ...]

    @property
    def dates(self) -> tuple[str, str]:
        """First and last day as `MM-DD`."""
        return (date_of(self.first), date_of(self.last))


@frozen
class _Days:
    """One row: its class words, days from full bloom, source ids."""

    words: str
    low: float
    high: float
    sources: tuple[str, ...]

    @property
    def classes(self) -> tuple[int, int] | None:
        """First and last bloom-like class number the row stands for; None for a row for all."""
        found = _CLASS.match(self.words.lower())
        if found is None or _WIDE.match(self.words):
            return None
        first = class_number(found[1].replace("early mid", "early-mid").replace("mid late", "mid-late"))
        last = class_number(found[2]) if found[2] else first
        return None if first is None or last is None else (first, last)


@cache
def _rows() -> Mapping[str, tuple[_Days, ...]]:
    found: dict[str, tuple[_Days, ...]] = {}
    with resource("plants", "harvest.csv").open(encoding="utf-8", newline="") as file:
        for row in csv.DictReader(file):
            sources = tuple(part.split("(")[0].strip() for part in row["sources"].split(";"))
            days = _Days(
                row["season_class"], float(row["days_after_full_bloom_low"]),
                float(row["days_after_full_bloom_high"]), sources,
            )
            found[row["crop"].lower()] = (*found.get(row["crop"].lower(), ()), days)
    return found


def days_from_bloom(cultivar: Cultivar) -> tuple[float, float, tuple[str, ...]] | None:
    """Days from full bloom to harvest (low, high) and source ids; None when the crop has none.

    Rows that name the cultivar go first, then rows of its season, then rows for all; several are joined.
    """
    rows = _rows().get(_ROWS_OF.get(cultivar.crop, cultivar.crop), ())
    if not rows:
        return None
    chosen = _named(rows, cultivar.name) or _of_season(rows, cultivar.harvest_season)
    chosen = chosen or _for_all(rows) or rows
    return (
        min(row.low for row in chosen), max(row.high for row in chosen),
        tuple(dict.fromkeys(source for row in chosen for source in row.sources)),
    )


def _named(rows: tuple[_Days, ...], name: str) -> tuple[_Days, ...]:
    sure = re.compile(rf"\b{re.escape(name)}\b")
    by_name = tuple(row for row in rows if sure.search(row.words))
    # Tables say Bosc for Beurre Bosc: the last word serves where it stands for itself.
    short = re.compile(rf"\({re.escape(name.split()[-1])}\)") if name.split() else None
    return by_name or tuple(row for row in rows if short is not None and short.search(row.words))


def _of_season(rows: tuple[_Days, ...], season: str) -> tuple[_Days, ...]:
    number = class_number(season)
    if number is None:
        return ()
    fit = [row for row in rows if row.classes and row.classes[0] <= number <= row.classes[1]]
    return tuple(fit) or _nearest(rows, number)


def _nearest(rows: tuple[_Days, ...], number: int) -> tuple[_Days, ...]:
    """For a season without a row of its own: between the rows before and after it, else the nearest."""
    earlier = [row for row in rows if row.classes and row.classes[1] < number]
    later = [row for row in rows if row.classes and row.classes[0] > number]
    if earlier and later:
        before = max(earlier, key=lambda row: row.classes or ())
        return (_between(before, min(later, key=lambda row: row.classes or ()), number),)
    apart = [
        (min(abs(row.classes[0] - number), abs(row.classes[1] - number)), row) for row in rows if row.classes
    ]
    least = min((gap for gap, _ in apart), default=None)
    return tuple(row for gap, row in apart if gap == least)


def _between(before: _Days, after: _Days, number: int) -> _Days:
    """The days of a season that lies between two rows, in proportion to how far it lies from each."""
    start, end = (before.classes or (number, number))[1], (after.classes or (number, number))[0]
    share = (number - start) / (end - start)
    return _Days(
        f"between {before.words} and {after.words}",
        before.low + share * (after.low - before.low), before.high + share * (after.high - before.high),
        tuple(dict.fromkeys((*before.sources, *after.sources))),
    )


def _for_all(rows: tuple[_Days, ...]) -> tuple[_Days, ...]:
    return tuple(row for row in rows if _WIDE.match(row.words))


def harvest_band(cultivar: Cultivar, bloom: BloomBand) -> HarvestBand | None:
    """When a cultivar is ripe where it blooms so; None when no days are known."""
    days = days_from_bloom(cultivar)
    if days is None:
        return None
    return HarvestBand(
        first=bloom.full + days[0], last=bloom.full + days[1],
        spread=_SPREAD.get(cultivar.crop, _USUAL_SPREAD), sources=days[2],
    )
