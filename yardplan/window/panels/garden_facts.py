"""Ornament through the year and resistance to the usual diseases, read when a card asks for them."""

from __future__ import annotations

import csv
from collections.abc import Mapping
from functools import cache

from yardplan.checks.wording import cited
from yardplan.language import later, tr
from yardplan.plants.cultivar import MEMORY, Cultivar
from yardplan.shipped import resource

Row = Mapping[str, str]

#: Columns of the ornament table with the words they stand under.
ORNAMENT = {
    "flower_colour": later("Flowers"),
    "fragrance": later("Scent"),
    "spring_foliage": later("Leaves in spring"),
    "summer_foliage": later("Leaves in summer"),
    "autumn_colour": later("Autumn colour"),
    "winter_interest": later("In winter"),
    "form": later("Habit"),
    "wildlife": later("Wildlife"),
}
#: Facts that hold for a whole kind stand under this word in the table's cultivar column.
_ALL = "all"


@cache
def _rows(name: str) -> tuple[Row, ...]:
    with resource("plants", name).open(encoding="utf-8-sig", newline="") as file:
        return tuple(csv.DictReader(file))


def _named(cultivar: Cultivar) -> set[str]:
    """The names under which a variety may stand: its own and that of the variety it is a sport of."""
    return {name.casefold() for name in (cultivar.name, cultivar.sport_of) if name}


def source_words(ids: str) -> tuple[str, bool]:
    """Sources in words, and whether the row is from memory alone."""
    names = [part.strip() for part in ids.split(";") if part.strip()]
    sure = [name for name in names if name != MEMORY]
    return "; ".join(cited(name) for name in sure) or cited(MEMORY), not sure


def ornament(cultivar: Cultivar) -> list[tuple[str, str, str, bool]]:
    """Name, value, source and from-memory mark of each ornamental fact; the variety's own go first."""
    names = _named(cultivar)
    rows = [row for row in _rows("ornament.csv") if row["crop"] == cultivar.crop]
    own = [row for row in rows if row["cultivar_or_all"].casefold() in names]
    kind = [row for row in rows if row["cultivar_or_all"].casefold() == _ALL]
    found = []
    for column, words in ORNAMENT.items():
        row = next((row for row in (*own, *kind) if row[column].strip()), None)
        if row is not None:
            source, memory = source_words(row["sources"])
            found.append((tr(words), tr(row[column].strip()), source, memory))
    return found


def resistance(cultivar: Cultivar) -> list[tuple[str, str, str, bool]]:
    """Name, value, source and from-memory mark for each disease that the table rates the variety for."""
    names = _named(cultivar)
    found = []
    for row in _rows("disease-resistance.csv"):
        if row["crop"] == cultivar.crop and row["cultivar"].casefold() in names:
            source, memory = source_words(row["sources"])
            problem = tr(row["problem"])
            found.append((problem[:1].upper() + problem[1:], tr(row["resistance"]), source, memory))
    return found
