"""The whole document: one frozen value that holds a yard."""

from __future__ import annotations

from collections.abc import Collection, Iterator, Mapping
from typing import Any

from attrs import field, fields, frozen

from yardplan.yard.ground import (
    Barrier,
    Building,
    Curve,
    Dimension,
    Gate,
    Note,
    Outline,
    Paving,
    Picture,
    Service,
    StandingTree,
)
from yardplan.yard.planting import Bed, Container, Planting, Row
from yardplan.yard.positions import chosen, positions
from yardplan.yard.site import Site

Thing = (
    Building | Barrier | Paving | Service | StandingTree | Gate | Note | Planting | Row | Bed | Container
    | Dimension | Picture
)

#: The lists of things in the order in which they are written and listed.
COLLECTIONS: dict[str, type] = {
    "buildings": Building,
    "barriers": Barrier,
    "pavings": Paving,
    "services": Service,
    "standing_trees": StandingTree,
    "gates": Gate,
    "plantings": Planting,
    "rows": Row,
    "beds": Bed,
    "containers": Container,
    "notes": Note,
    "dimensions": Dimension,
    "pictures": Picture,
}
LIST_OF: dict[type, str] = {kind: name for name, kind in COLLECTIONS.items()}
#: What is drawn and planted, and so differs between variants; the rest is the yard's own.
PLAN_FIELDS: tuple[str, ...] = (
    "lot", "lot_curve", *(name for name in COLLECTIONS if name != "pictures"), "groups",
)


@frozen(kw_only=True)
class Group:
    """Things that are picked and moved together: `members` are their ids; names are unique in a yard."""

    name: str
    members: tuple[str, ...]


@frozen(kw_only=True)
class Variant:
    """A plan kept under a name; `kept` the day it was kept (`YYYY-MM-DD`).

    `plan` holds the fields of PLAN_FIELDS and nothing of the site (see yard.variants).
    """

    name: str
    kept: str = ""
    plan: Yard


def _nothing() -> Mapping[str, Any]:
    return {}


@frozen(kw_only=True)
class Yard:
    """A yard: site, lot line, what stands there, what is planted, own cultivars and local rules.

    `lot_curve`: what the lot line was drawn along where it is curved; `lot` follows it.
    `own_cultivars`: facts of cultivars the user added, as plain records (see plants.catalogue).
    `rules`: local figures by rule name that replace ours, in the rule's unit.
    `groups`: things picked together; `variants`: other plans of this yard, by name.
    `done`: marks of finished care tasks by task id. `prices`: by item key, in `currency`.
    `uid` names the yard for good, whatever it is called and wherever its file lies (see yard.identity).
    `extra`: fields of the file that this version does not know, by their owner (`/` the yard, `/site`,
    `#A1` the thing with that id); kept and written back.
    """

    site: Site = field(factory=Site)
    lot: Outline = ()
    lot_curve: Curve | None = None
    buildings: tuple[Building, ...] = ()
    barriers: tuple[Barrier, ...] = ()
    pavings: tuple[Paving, ...] = ()
    services: tuple[Service, ...] = ()
    standing_trees: tuple[StandingTree, ...] = ()
    gates: tuple[Gate, ...] = ()
    plantings: tuple[Planting, ...] = ()
    rows: tuple[Row, ...] = ()
    beds: tuple[Bed, ...] = ()
    containers: tuple[Container, ...] = ()
    notes: tuple[Note, ...] = ()
    dimensions: tuple[Dimension, ...] = ()
    pictures: tuple[Picture, ...] = ()
    groups: tuple[Group, ...] = ()
    variants: tuple[Variant, ...] = ()
    own_cultivars: tuple[Mapping[str, Any], ...] = ()
    rules: Mapping[str, float] = field(factory=_nothing)
    done: Mapping[str, str] = field(factory=_nothing)
    prices: Mapping[str, float] = field(factory=_nothing)
    currency: str = ""
    uid: str = ""
    extra: Mapping[str, Any] = field(factory=_nothing)

    def things(self) -> Iterator[Thing]:
        """Everything that has an id, list by list."""
        for name in COLLECTIONS:
            yield from getattr(self, name)

    def find(self, thing_id: str) -> Thing | None:
        """The thing with that id, or None."""
        return next(iter(self.named((thing_id,))), None)

    def named(self, ids: Collection[str]) -> list[Thing]:
        """The things with these ids, in the order of the lists; none is looked for through thousands."""
        return [thing for name in COLLECTIONS for thing in chosen(getattr(self, name), ids)]

    def ids(self) -> set[str]:
        """The ids of all things."""
        return set[str]().union(*(positions(getattr(self, name)) for name in COLLECTIONS))


def list_name(thing: Thing) -> str:
    """The name of the yard's list that holds things of this kind, e.g. `plantings`."""
    return LIST_OF[type(thing)]


def field_names(kind: type) -> tuple[str, ...]:
    """The field names of a value class, in order."""
    return tuple(f.name for f in fields(kind))
