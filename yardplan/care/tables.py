"""The tables of care: what is done to which crop, when, why and with what caution (resources/care)."""

from __future__ import annotations

import csv
from collections.abc import Iterator, Mapping
from functools import cache
from typing import Literal, cast, get_args

from attrs import frozen

from yardplan.plants.cultivar import MEMORY
from yardplan.shipped import resource

Kind = Literal[
    "prune", "thin", "feed", "acidify", "mulch", "water", "net", "frost", "protect", "guard", "spray",
    "scout", "harvest", "store", "plant",
]
KINDS: tuple[str, ...] = get_args(Kind)
#: Latest year after planting that a row can name.
LAST_YEAR = 1000


class CareTableError(ValueError):
    """A care table that cannot be used: file, row and column in words."""


@frozen(kw_only=True)
class CareRow:
    """One yearly task of some crops.

    `start`, `end` days from its `anchor`; `every` (least, most) days between repeats within the window;
    `years` first and last year after planting (1 is the planting year); `each_years` years between repeats
    (soil tests, re-potting); `only` the conditions under which it applies (see care.conditions).
    """

    id: str
    kind: Kind
    crops: frozenset[str]
    title: str
    anchor: str
    start: int
    end: int
    every: tuple[int, int] | None
    years: tuple[int, int]
    each_years: int
    only: tuple[str, ...]
    when: str
    why: str
    cautions: tuple[str, ...]
    sources: tuple[str, ...]

    @property
    def memory(self) -> bool:
        """True when no source but memory vouches for the row."""
        return set(self.sources) == {MEMORY}

    @property
    def spray(self) -> str:
        """What is sprayed (`oil`, `fungicide`, `insecticide`), or nothing."""
        return next((word.removeprefix("spray=") for word in self.only if word.startswith("spray=")), "")


def rows_of(name: str) -> Iterator[dict[str, str]]:
    """The rows of one table under resources/care."""
    with resource("care", name).open(encoding="utf-8", newline="") as file:
        yield from csv.DictReader(file)


def _words(text: str, mark: str = ";") -> tuple[str, ...]:
    return tuple(word.strip() for word in text.split(mark) if word.strip())


@cache
def figures() -> Mapping[str, float]:
    """The figures of resources/care/figures.csv by name, in the units given there."""
    return {row["figure"]: float(row["value"]) for row in rows_of("figures.csv")}


@cache
def hanging() -> frozenset[str]:
    """Crops that are picked after frost on purpose."""
    return frozenset(row["crop"] for row in rows_of("hangs.csv"))


@cache
def groups() -> Mapping[str, frozenset[str]]:
    """Crops by the name of their care group."""
    found: dict[str, set[str]] = {}
    for row in rows_of("groups.csv"):
        found.setdefault(row["group"], set()).add(row["crop"])
    return {name: frozenset(crops) for name, crops in found.items()}


def crops_of(names: str) -> frozenset[str]:
    """The crops that `apple; bush currants` stands for: groups, or crops by their own id."""
    found: set[str] = set()
    for name in _words(names):
        found |= groups().get(name, frozenset({name}))
    return frozenset(found)


def _span(text: str) -> tuple[int, int] | None:
    """Read `7` or `7-14`."""
    if not text:
        return None
    low, _, high = text.partition("-")
    return int(low), int(high or low)


def _years(text: str) -> tuple[int, int]:
    """Read `1-3`, `4-` or nothing."""
    if not text or text.startswith("every-"):
        return 0, LAST_YEAR
    low, _, high = text.partition("-")
    return int(low), int(high) if high else LAST_YEAR


def _row(row: Mapping[str, str]) -> CareRow:
    if row["kind"] not in KINDS:
        raise CareTableError(f"tasks.csv, {row['id']}, column kind: '{row['kind']}' is no kind of work")
    each = int(row["years"].removeprefix("every-")) if row["years"].startswith("every-") else 1
    return CareRow(
        id=row["id"], kind=cast(Kind, row["kind"]), crops=crops_of(row["for"]), title=row["title"],
        anchor=row["anchor"], start=int(row["from_days"]), end=int(row["to_days"]),
        every=_span(row["every_days"]), years=_years(row["years"]), each_years=each,
        only=_conditions(row["only"]), when=row["when"], why=row["why"],
        cautions=_words(row["cautions"]), sources=_words(row["sources"]),
    )


def _conditions(text: str) -> tuple[str, ...]:
    """Conditions stand apart by spaces; words after `=` may hold spaces themselves."""
    found: list[str] = []
    for word in text.split():
        if found and "=" in found[-1] and "=" not in word and word not in _PLAIN:
            found[-1] += f" {word}"
        else:
            found.append(word)
    return tuple(found)


_PLAIN = ("ground", "pot", "fruiting", "frost", "staked", "ph-high")


@cache
def care_rows() -> tuple[CareRow, ...]:
    """Every row of the task table. Raises CareTableError on a bad one."""
    return tuple(_row(row) for row in rows_of("tasks.csv"))


@cache
def rows_for(crop: str) -> tuple[CareRow, ...]:
    """The rows of one crop, in table order."""
    return tuple(row for row in care_rows() if crop in row.crops)


@cache
def cautions() -> Mapping[str, tuple[str, str]]:
    """Words of each caution and its source id, by code."""
    return {row["code"]: (row["text"], row["source"]) for row in rows_of("cautions.csv")}


@cache
def anchor_days() -> Mapping[tuple[str, str], tuple[int, str]]:
    """Days from full bloom and source id by (anchor, care group)."""
    return {
        (row["anchor"], row["group"]): (int(row["days_from_full_bloom"]), row["source"])
        for row in rows_of("anchors.csv")
    }


def anchor_offset(anchor: str, crop: str) -> tuple[int, str] | None:
    """Days from full bloom to a stage of a crop, and its source; None when it is no stage of bloom."""
    rows = [(group, found) for (name, group), found in anchor_days().items() if name == anchor]
    fits = [found for group, found in rows if crop in groups()[group]]
    return fits[0] if fits else None


@cache
def usual_months() -> Mapping[str, tuple[str, str]]:
    """Usual dates (`MM-DD`, northern hemisphere): frosts, and harvest of crops without a harvest row."""
    return {row["what"]: (row["from"], row["to"]) for row in rows_of("months.csv")}
