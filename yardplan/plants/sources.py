"""The bibliography: what stands behind each source id."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from functools import cache
from types import MappingProxyType

from attrs import frozen

from yardplan.plants.cultivar import MEMORY
from yardplan.plants.tables import Row, Table
from yardplan.shipped import folder


@frozen
class Source:
    """One source; `year` and `where` are empty where they are not known."""

    id: str
    title: str
    publisher: str = ""
    year: str = ""
    where: str = ""

    def __str__(self) -> str:
        if self.id == MEMORY:
            return "from memory"
        named = self.publisher if self.publisher not in self.title else ""
        year = self.year if self.year not in self.title else ""
        return ", ".join(part for part in (named, self.title, year, self.where) if part)


@cache
def bibliography() -> Mapping[str, Source]:
    """All sources by id: resources/sources.csv and the lists named like it in the folders below.

    Raises TableError when a file is bad or gives an id another meaning.
    """
    sources: dict[str, Source] = {}
    top = folder("resources")
    for path in sorted((*top.glob("*sources.csv"), *top.glob("*/*sources.csv"))):
        with Table(path, ("id", "title", "publisher", "year", "where")) as table:
            for row in table:
                _take(sources, row)
    return MappingProxyType(sources)


def _take(sources: dict[str, Source], row: Row) -> None:
    key = row.needed("id")
    source = Source(key, row.needed("title"), row.text("publisher"), row.text("year"), row.text("where"))
    if sources.setdefault(key, source) != source:
        row.fault("id", f"'{key}' is there already with another meaning")


def written_out(ids: Iterable[str]) -> tuple[str, ...]:
    """Source ids as text for a person; an id that is not in the bibliography stays as it is."""
    known = bibliography()
    return tuple(str(known[key]) if key in known else key for key in ids)
