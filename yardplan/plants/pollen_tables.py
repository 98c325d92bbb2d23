"""The rules of pollination as data: families, named pairs, kin groups. Read from resources/pollen."""

from __future__ import annotations

import csv
from collections.abc import Iterator, Mapping
from functools import cache
from typing import Literal, cast, get_args

from attrs import frozen

from yardplan.shipped import resource
from yardplan.yard.planting import PlantKey

#: How partners are told apart within a family: `alleles` one S locus, share of pollen counted; `dominance`
#: hazelnut; `pairs` no usable allele rule, only published pairs; `kin` unrelated groups; `sexes` male and
#: female plants; `open` any other clone.
System = Literal["alleles", "dominance", "pairs", "kin", "sexes", "open"]
Answer = Literal["yes", "partly", "no", "not proved"]

#: In a table of pairs: any cultivar of the crop.
ANY = "*"


class TableError(ValueError):
    """A table that cannot be used: file, row and column in words."""


@frozen(kw_only=True)
class PollenCrop:
    """How one crop is pollinated. `series`: the set of allele labels; those of two series never compare."""

    crop: str
    species: str
    family: str
    system: System
    series: str
    needs_pollen: bool
    note: str
    source: str


@frozen(kw_only=True)
class Published:
    """A published statement on a pair or on two crops: verdict, words and source id."""

    verdict: Answer
    words: str
    source: str


@frozen(kw_only=True)
class Gain:
    """What crossing adds to a kind that also sets fruit alone."""

    words: str
    source: str


@frozen(kw_only=True)
class SeedlingKind:
    """How a standing tree of unknown parentage counts: as which crop and cultivar (`*`: none named)."""

    crop: str
    donor: str
    words: str
    source: str


def rows(name: str) -> Iterator[tuple[int, dict[str, str]]]:
    """Rows of a table in resources/pollen with line numbers. Raises TableError on a bad row."""
    with resource("pollen", name).open(encoding="utf-8", newline="") as file:
        for number, row in enumerate(csv.DictReader(file), start=2):
            if None in row or None in row.values():
                raise TableError(f"{name}, row {number}: wrong number of columns")
            yield number, {key: value.strip() for key, value in row.items()}


def _one_of(kind: object, value: str, where: str) -> str:
    if value not in get_args(kind):
        raise TableError(f"{where}: '{value}' is not one of {', '.join(get_args(kind))}")
    return value


@cache
def _crops() -> Mapping[str, tuple[PollenCrop, ...]]:
    found: dict[str, tuple[PollenCrop, ...]] = {}
    for number, row in rows("crops.csv"):
        where = f"crops.csv, row {number}, column system"
        crop = PollenCrop(
            crop=row["crop"], species=row["species"], family=row["family"], series=row["series"],
            system=cast("System", _one_of(System, row["system"], where)),
            needs_pollen=row["pollen"] == "needed", note=row["note"], source=row["source"],
        )
        found[crop.crop] = (*found.get(crop.crop, ()), crop)
    return found


@cache
def pollen_crop(crop: str, species: str = "") -> PollenCrop | None:
    """How a crop is pollinated, by species where the crop holds kinds that do not cross; None: not known."""
    kinds = _crops().get(crop, ())
    exact = [kind for kind in kinds if kind.species == species]
    return exact[0] if exact else next(iter(kinds), None)


def _published(row: Mapping[str, str], where: str) -> Published:
    verdict = cast("Answer", _one_of(Answer, row["verdict"], f"{where}, column verdict"))
    return Published(verdict=verdict, words=row["words"], source=row["source"])


@cache
def _pairs() -> Mapping[tuple[str, str, str, str], Published]:
    found: dict[tuple[str, str, str, str], Published] = {}
    for number, row in rows("pairs.csv"):
        said = _published(row, f"pairs.csv, row {number}")
        there = (row["donor_crop"], row["donor"], row["receiver_crop"], row["receiver"])
        found.setdefault(there, said)
        if row["both_ways"] == "yes":
            found.setdefault((*there[2:], *there[:2]), said)
    return found


@cache
def published_pair(donor: PlantKey, receiver: PlantKey) -> Published | None:
    """What is published on one pair; a named cultivar goes before any cultivar of the crop."""
    donors, receivers = (donor.cultivar, ANY), (receiver.cultivar, ANY)
    # Both named, then one of them named, then a word on all: the closest statement rules.
    for one, other in ((0, 0), (0, 1), (1, 0), (1, 1)):
        said = _pairs().get((donor.crop, donors[one], receiver.crop, receivers[other]))
        if said is not None:
            return said
    return None


@cache
def _crosses() -> Mapping[tuple[str, str], Published]:
    return {
        (row["donor_crop"], row["receiver_crop"]): _published(row, f"cross.csv, row {number}")
        for number, row in rows("cross.csv")
    }


def published_cross(donor_crop: str, receiver_crop: str) -> Published | None:
    """What is published on pollen of one crop on another."""
    return _crosses().get((donor_crop, receiver_crop))


@cache
def expressed_alleles() -> Mapping[str, tuple[str, ...]]:
    """Hazelnut cultivars whose pollen is known to show these alleles only."""
    return {row["cultivar"]: tuple(row["pollen_alleles"].split()) for _, row in rows("hazelnut.csv")}


@cache
def kin_groups() -> Mapping[PlantKey, tuple[str, str]]:
    """Cultivars too near of kin to set each other: key -> (group, source id)."""
    return {
        PlantKey(row["crop"], row["cultivar"]): (row["group"], row["source"]) for _, row in rows("kin.csv")
    }


@cache
def _gains() -> Mapping[tuple[str, str], Gain]:
    return {
        (row["crop"], row["cultivar"]): Gain(words=row["words"], source=row["source"])
        for _, row in rows("crossing.csv")
    }


def crossing_gain(key: PlantKey) -> Gain | None:
    """What a partner adds for a cultivar that sets alone, its own figure before the crop's."""
    return _gains().get((key.crop, key.cultivar)) or _gains().get((key.crop, ""))


@frozen(kw_only=True)
class Ratio:
    """Takers that one giver serves, at most; `layout` where the givers should stand, in words."""

    receivers: float
    words: str
    source: str
    layout: str


@cache
def _ratios() -> Mapping[str, Ratio]:
    return {
        row["crop"]: Ratio(
            receivers=float(row["receivers_per_donor"]), words=row["words"], source=row["source"],
            layout=row["layout"],
        )
        for _, row in rows("ratios.csv")
    }


def donor_ratio(crop: str) -> Ratio | None:
    """How many takers of a crop one giver serves; None where nothing is published."""
    return _ratios().get(crop)


@cache
def seedling_kinds() -> Mapping[str, SeedlingKind]:
    """Kinds of standing trees whose unknown seedlings can be counted, by kind."""
    return {
        row["kind"]: SeedlingKind(
            crop=row["crop"], donor=row["donor"], words=row["words"], source=row["source"]
        )
        for _, row in rows("seedlings.csv")
    }
