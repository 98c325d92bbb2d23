"""The bibliography: what stands behind each source id."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from functools import cache
from types import MappingProxyType

from attrs import frozen

from yardplan.plants.cultivar import MEMORY
from yardplan.plants.tables import Table
from yardplan.shipped import resource


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
    """All sources by id. Raises TableError when the file is bad."""
    sources: dict[str, Source] = {}
    with Table(resource("sources.csv"), ("id", "title", "publisher", "year", "where")) as table:
        for row in table:
            key = row.needed("id")
            if key in sources:
                row.fault("id", f"'{key}' is there twice")
            sources[key] = Source(
                key, row.needed("title"), row.text("publisher"), row.text("year"), row.text("where")
            )
    return MappingProxyType(sources)


def written_out(ids: Iterable[str]) -> tuple[str, ...]:
    """Source ids as text for a person; an id that is not in the bibliography stays as it is."""
    known = bibliography()
    return tuple(str(known[key]) if key in known else key for key in ids)
