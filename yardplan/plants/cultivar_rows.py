"""Reads the cultivar tables: tree fruit, small fruit, wild plants, and the sports and synonyms."""

from __future__ import annotations

import re
from functools import cache

from attrs import evolve, frozen

from yardplan.language import tr
from yardplan.plants.cultivar import Cited, Cultivar, SelfFruit
from yardplan.plants.tables import Row, Table
from yardplan.shipped import resource
from yardplan.units import FOOT
from yardplan.yard.planting import PlantKey

#: Column of a table -> field of `Cultivar`, where the names differ.
FIELD_OF = {
    "incompat_group": "incompatibility_group", "height_ft": "height", "spread_ft": "spread",
    "container_ok": "container",
}
SELF_FRUIT = {
    "yes": SelfFruit.YES, "partly": SelfFruit.PARTLY, "partial": SelfFruit.PARTLY, "no": SelfFruit.NO,
    "n/a": SelfFruit.NOT_APPLICABLE, "": SelfFruit.UNKNOWN,
}
SEASONS = frozenset({
    "", "n/a", "very early", "early", "early-mid", "mid", "mid-late", "late",
    "spring", "summer", "spring-fall",
})
_ALLELE = re.compile(r"S(?:\d+|[A-Za-z])'?")
_ZONE = re.compile(r"(?:\d|1[0-3])[ab]?")
_COLUMNS = ("crop", "species", "cultivar", "self_fruitful", "bloom_season", "zone_min", "zone_max",
            "chill_hours", "harvest_season", "note", "sources")


@frozen
class Clone:
    """A sport or another name of a cultivar: for pollination the same plant."""

    crop: str
    parent: str
    name: str
    synonym: bool
    other_names: tuple[str, ...]
    cited: tuple[Cited, ...]


@cache
def _by_field(cited: tuple[Cited, ...]) -> tuple[Cited, ...]:
    return tuple(Cited(c.source, tuple(FIELD_OF.get(name, name) for name in c.columns)) for c in cited)


@cache
def parse_alleles(text: str) -> tuple[str, ...]:
    """Read `S3S4'` as ("S3", "S4'"). Raises ValueError when anything else is in the text."""
    found = tuple(_ALLELE.findall(text))
    if "".join(found) != text:
        raise ValueError(tr("'{text}' is not a row of S-alleles such as S3S9", text=text))
    return found


def is_zone(text: str) -> bool:
    """True for a USDA zone from 0 to 13, with or without a half: `4`, `3b`."""
    return _ZONE.fullmatch(text) is not None


def _zone(row: Row, column: str) -> str | None:
    value = row.text(column)
    if value and not is_zone(value):
        row.fault(column, f"'{value}' is not a hardiness zone such as 4 or 3b")
    return value or None


def _self_fruit(row: Row) -> SelfFruit:
    value = row.text("self_fruitful")
    if value not in SELF_FRUIT:
        row.fault("self_fruitful", f"'{value}' is not yes, partly, no or n/a")
    return SELF_FRUIT.get(value, SelfFruit.UNKNOWN)


def _alleles(row: Row) -> tuple[str, ...]:
    try:
        return parse_alleles(row.text("s_alleles"))
    except ValueError as error:
        row.fault("s_alleles", str(error))
        return ()


def _sex(kind: str) -> str:
    word = kind.partition(" ")[0]
    return word if word in ("female", "male") and " and " not in kind else ""


def _known(text: str) -> str:
    return "" if text == "n/a" else text


def _cultivar(row: Row) -> Cultivar:
    ploidy = row.number_or_none("ploidy")
    good = row.text("pollen_good")
    kind = row.text("type")
    return Cultivar(
        crop=row.needed("crop"), name=row.needed("cultivar"), species=row.text("species"), type=kind,
        sex=_sex(kind), self_fruitful=_self_fruit(row), cross_benefit=_known(row.text("cross_benefit")),
        bloom_season=_known(row.one_of("bloom_season", SEASONS)),
        bloom_order=row.number_or_none("bloom_order"), ploidy=None if ploidy is None else int(ploidy),
        pollen_good=None if not good else row.yes("pollen_good"), s_alleles=_alleles(row),
        incompatibility_group=row.text("incompat_group"), pollination_group=row.text("pollination_group"),
        zone_min=_zone(row, "zone_min"), zone_max=_zone(row, "zone_max"),
        chill_hours=row.span("chill_hours"), harvest_season=row.text("harvest_season"),
        height=row.span("height_ft", FOOT), spread=row.span("spread_ft", FOOT),
        container=_known(row.text("container_ok")), thornless=_known(row.text("thornless")),
        note=row.text("note"), cited=_by_field(row.cites()),
    )


def read_cultivars() -> dict[PlantKey, Cultivar]:
    """All cultivars of the tables, in table order. Raises TableError listing what is wrong."""
    found: dict[PlantKey, Cultivar] = {}
    for name in ("tree-fruit-cultivars", "small-fruit-cultivars", "wild-plants"):
        with Table(resource("plants", f"{name}.csv"), _COLUMNS) as table:
            for row in table:
                cultivar = _cultivar(row)
                if cultivar.key in found:
                    row.fault("cultivar", f"{cultivar.key} is there twice")
                found[cultivar.key] = cultivar
    return found


def read_clones() -> tuple[Clone, ...]:
    """The sports and synonyms. Raises TableError listing what is wrong."""
    path = resource("plants", "clones.csv")
    with Table(path, ("crop", "parent", "clone", "kind", "other_names", "sources")) as table:
        return tuple(
            Clone(
                row.needed("crop"), row.needed("parent"), row.needed("clone"),
                row.one_of("kind", ("sport", "synonym")) == "synonym", row.words("other_names"), row.cites(),
            )
            for row in table
        )


def with_clones(
    cultivars: dict[PlantKey, Cultivar], clones: tuple[Clone, ...]
) -> tuple[dict[PlantKey, Cultivar], dict[PlantKey, PlantKey]]:
    """Cultivars with `sport_of` set and sports added, and the other names each with the key it stands for.

    A sport that no table describes takes its parent's facts, with the source of the sport for its name.
    A parent no table describes is left as a mere name: its sports stay unknown.
    """
    joined = dict(cultivars)
    names: dict[PlantKey, PlantKey] = {}
    for clone in clones:
        key, parent = PlantKey(clone.crop, clone.name), PlantKey(clone.crop, clone.parent)
        if clone.synonym:
            names[key] = parent
        elif key in cultivars:
            joined[key] = evolve(cultivars[key], sport_of=clone.parent)
        elif parent in cultivars:
            joined[key] = _sport(cultivars[parent], clone)
        names.update({PlantKey(clone.crop, other): key for other in clone.other_names})
    return joined, {name: key for name, key in names.items() if key in joined and name not in joined}


def _sport(parent: Cultivar, clone: Clone) -> Cultivar:
    named = tuple(Cited(cite.source, ("sport_of",)) for cite in clone.cited)
    return evolve(
        parent, name=clone.name, sport_of=clone.parent, cited=(*parent.cited, *named),
        note=f"a sport of {clone.parent}, whose facts are shown",
    )
