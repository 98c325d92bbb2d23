"""Groups of plants that a rule speaks of (walnuts, rust hosts, thirsty trees), from the shipped table."""

from __future__ import annotations

import csv
import re
from collections.abc import Mapping
from functools import cache

from attrs import frozen

from yardplan.plants.stand import Standing, StandingBed, StandingRow
from yardplan.shipped import resource
from yardplan.yard.ground import StandingTree

_WORDS = re.compile(r"[a-z]+")


@frozen
class Member:
    """One member of a group, with the source that puts it there."""

    group: str
    name: str
    source: str
    note: str = ""


@cache
def _table() -> Mapping[str, tuple[Member, ...]]:
    groups: dict[str, list[Member]] = {}
    with resource("checks", "plant-groups.csv").open(encoding="utf-8", newline="") as file:
        for row in csv.DictReader(file):
            groups.setdefault(row["group"], []).append(
                Member(row["group"], row["member"], row["source"], row["note"])
            )
    return {name: tuple(members) for name, members in groups.items()}


def members(group: str) -> tuple[Member, ...]:
    """The members of a group. Raises KeyError when there is no such group."""
    return _table()[group]


@cache
def member(group: str, kind: str) -> Member | None:
    """The member that a kind of plant is, or None; `walnut (black)` is a `black walnut`.

    A kind belongs to a member when it has all of the member's words; the longest such member counts.
    """
    words = set(_WORDS.findall(kind.lower()))
    fitting = [m for m in members(group) if set(_WORDS.findall(m.name.lower())) <= words]
    return max(fitting, key=lambda m: len(m.name), default=None)


def kind_of(plant: Standing | StandingRow | StandingBed) -> str:
    """The crop of a plant, or what kind of tree stands there; empty when not known."""
    if isinstance(plant, Standing) and isinstance(plant.thing, StandingTree):
        return plant.thing.kind
    if plant.crop is not None:
        return plant.crop.id
    if isinstance(plant, Standing):
        return plant.key.crop if plant.key is not None else ""
    key = plant.row.plant if isinstance(plant, StandingRow) else plant.bed.plant
    return key.crop if key is not None else ""


def is_member(group: str, plant: Standing | StandingRow | StandingBed) -> bool:
    """True when a plant belongs to a group."""
    return member(group, kind_of(plant)) is not None
