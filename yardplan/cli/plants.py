"""`yardplan plants [WORDS...]`: look plants up; every fact with its sources as JSON."""

from __future__ import annotations

import argparse
from collections.abc import Sequence
from typing import Any

from attrs import fields

from yardplan.cli.output import CommandError, print_json, print_table
from yardplan.plants.catalogue import Catalogue, catalogue
from yardplan.plants.cultivar import MEMORY, Cultivar, SelfFruit
from yardplan.plants.sources import written_out
from yardplan.plants.tables import TableError
from yardplan.units import format_length

_HEADS = ("kind", "variety", "zones", "by itself", "bloom", "ripens", "spread", "from memory")
_ALONE = {
    SelfFruit.YES: "yes", SelfFruit.PARTLY: "partly", SelfFruit.NO: "needs a partner",
    SelfFruit.NOT_APPLICABLE: "-", SelfFruit.UNKNOWN: "not known",
}
#: Facts whose source the table marks when it is memory alone: the column heads they stand under.
_MARKED = {
    "zone_min": "zones", "self_fruitful": "by itself", "bloom_season": "bloom", "harvest_season": "ripens",
    "spread": "spread",
}
_NOT_FACTS = ("crop", "name", "cited", "own")


def add_parser(subparsers: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
    """Add the command to the command line."""
    parser = subparsers.add_parser(
        "plants", help="look up varieties",
        description="List the varieties in which all words are found, best first. Without words: all.",
    )
    parser.add_argument("words", nargs="*", metavar="WORD", help="kind, variety, species, notes")
    parser.add_argument("--json", action="store_true", help="every fact with its sources, as JSON")


def run(args: argparse.Namespace) -> int:
    """Print what is found and return 0. Raises CommandError when the tables are bad."""
    try:
        known = catalogue()
        found = known.search(" ".join(args.words))
        if args.json:
            print_json([facts(known, cultivar) for cultivar in found])
        elif found:
            print_table(_HEADS, [_line(known, cultivar) for cultivar in found])
    except TableError as error:
        raise CommandError(f"the plant tables cannot be used: {str(error).splitlines()[0]}") from error
    if not found and not args.json:
        print(f"No variety found for: {' '.join(args.words)}")
    return 0


def _line(known: Catalogue, cultivar: Cultivar) -> Sequence[str]:
    crop = known.crops.get(cultivar.crop)
    marked = [
        head for name, head in _MARKED.items() if getattr(cultivar, name) and cultivar.from_memory(name)
    ]
    return (
        crop.name if crop else cultivar.crop, cultivar.name, zones(cultivar),
        cultivar.sex or _ALONE[cultivar.self_fruitful], cultivar.bloom_season or "-",
        cultivar.harvest_season or "-", _span(cultivar.spread), ", ".join(marked),
    )


def zones(cultivar: Cultivar) -> str:
    """The hardiness zones as printed: `4-8`, `from 4`, or `-` where they are not known."""
    if cultivar.zone_min is None:
        return "-" if cultivar.zone_max is None else f"to {cultivar.zone_max}"
    return f"{cultivar.zone_min}-{cultivar.zone_max}" if cultivar.zone_max else f"from {cultivar.zone_min}"


def _span(span: tuple[float, float] | None) -> str:
    return "-" if span is None else f"{format_length(span[0]).removesuffix(' m')}-{format_length(span[1])}"


def facts(known: Catalogue, cultivar: Cultivar) -> dict[str, Any]:
    """All facts of a cultivar as plain values, each with its source ids and whether it is from memory."""
    crop = known.crops.get(cultivar.crop)
    stated = {field.name: getattr(cultivar, field.name) for field in fields(Cultivar)}
    values = {
        name: _plain(value) for name, value in stated.items() if name not in _NOT_FACTS and _given(value)
    }
    ids = dict.fromkeys(source for name in values for source in cultivar.sources_of(name))
    return {
        "plant": str(cultivar.key), "crop": cultivar.crop, "crop_name": crop.name if crop else cultivar.crop,
        "cultivar": cultivar.name, "own": cultivar.own,
        "facts": {
            name: {"value": value, "sources": list(cultivar.sources_of(name)),
                   "from_memory": cultivar.from_memory(name)}
            for name, value in values.items()
        },
        "sources": dict(zip(ids, written_out(ids), strict=True)),
        "any_from_memory": MEMORY in ids,
    }


def _given(value: Any) -> bool:
    return value not in (None, "", (), SelfFruit.UNKNOWN)


def _plain(value: Any) -> Any:
    if isinstance(value, SelfFruit):
        return value.value
    if isinstance(value, tuple):
        return [round(part, 4) if isinstance(part, float) else part for part in value]
    return value
