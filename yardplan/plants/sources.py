"""The bibliography: what stands behind each source id."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from functools import cache
from pathlib import Path
from types import MappingProxyType

from attrs import frozen

from yardplan.language import later, tr
from yardplan.plants.cultivar import MEMORY
from yardplan.plants.tables import Row, Table
from yardplan.shipped import folder

#: What has no publisher, by source id: unlike titles, it is said in the language shown.
_OWN = {
    "common-practice": later("Common practice of the trade, no single source"),
    "computed-bloom-model": later("Own computation on published bloom records: error given with it"),
}


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
            return tr("from memory")
        if self.id in _OWN:
            return tr(_OWN[self.id])
        named = self.publisher if self.publisher not in self.title else ""
        year = self.year if self.year not in self.title else ""
        return ", ".join(part for part in (named, self.title, year, self.where) if part)


@cache
def bibliography() -> Mapping[str, Source]:
    """All sources by id: resources/sources.csv and the lists named like it in the folders below.

    An id in two lists keeps its first meaning. Raises TableError when a file is bad.
    """
    sources: dict[str, Source] = {}
    for path in lists():
        with Table(path, ("id", "title", "publisher", "year", "where")) as table:
            for row in table:
                source = _source(row)
                sources.setdefault(source.id, source)
    return MappingProxyType(sources)


def lists() -> list[Path]:
    """The files that make up the bibliography, the general one first."""
    top = folder("resources")
    return [*sorted(top.glob("*sources.csv")), *sorted(top.glob("*/*sources.csv"))]


def _source(row: Row) -> Source:
    return Source(
        row.needed("id"), row.needed("title"), row.text("publisher"), row.text("year"), row.text("where")
    )


def written_out(ids: Iterable[str]) -> tuple[str, ...]:
    """Source ids as text for a person; an id that is not in the bibliography stays as it is."""
    known = bibliography()
    return tuple(str(known[key]) if key in known else tr(key) for key in ids)
