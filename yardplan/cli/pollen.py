"""`yardplan pollen CROP:CULTIVAR CROP:CULTIVAR`: whether each sets fruit on the other, step by step."""

from __future__ import annotations

import argparse
from difflib import get_close_matches
from typing import Any

from yardplan.cli.output import CommandError, print_json, print_table
from yardplan.files.errors import YardFileError
from yardplan.files.reading import read_yard
from yardplan.plants.catalogue import Catalogue, catalogue
from yardplan.plants.cultivar import Cultivar
from yardplan.plants.pollen import ANYWHERE, Verdict, better_crossed, sets_fruit
from yardplan.plants.pollen_place import place_of
from yardplan.plants.pollen_reason import PollenPlace, Reason
from yardplan.plants.sources import written_out
from yardplan.yard.planting import PlantKey


def add_parser(subparsers: Any) -> None:
    """Add the command's words and options."""
    parser = subparsers.add_parser(
        "pollen", help="say whether two plants set fruit on each other",
        description="Whether each of two plants sets fruit on the other, with the reason of each step.",
    )
    parser.add_argument("first", metavar="CROP:CULTIVAR", help="for example apple:Liberty")
    parser.add_argument("second", metavar="CROP:CULTIVAR")
    parser.add_argument("--site", metavar="FILE", help="judge bloom at the place of this yard file")
    parser.add_argument("--json", action="store_true", help="print JSON")


def run(args: argparse.Namespace) -> int:
    """Print both directions; 0 always, 2 through CommandError when a plant or the file cannot be used."""
    known, place = _known_and_place(args.site)
    first, second = _plant(args.first, known), _plant(args.second, known)
    there, back = sets_fruit(first, second, place=place), sets_fruit(second, first, place=place)
    if args.json:
        print_json({
            "a": str(first.key), "b": str(second.key), "a_to_b": _as_json(there), "b_to_a": _as_json(back),
        })
    else:
        _print(first, second, there)
        print()
        _print(second, first, back)
    return 0


def _known_and_place(site: str | None) -> tuple[Catalogue, PollenPlace]:
    known = catalogue()
    if site is None:
        return known, ANYWHERE
    try:
        yard = read_yard(site)
    except YardFileError as error:
        raise CommandError(" ".join(str(error).split())) from None
    known = known.with_own(yard.own_cultivars) if yard.own_cultivars else known
    return known, place_of(yard.site, yard.rules, known.cultivars)


def _plant(text: str, known: Catalogue) -> Cultivar:
    """The plant named. Raises CommandError with near names when the catalogue has none."""
    try:
        key = PlantKey.parse(text)
    except ValueError as error:
        raise CommandError(str(error)) from None
    found = known.cultivar(key)
    if found is not None:
        return found
    near = near_names(key, known)
    hint = f"; did you mean {' or '.join(near)}?" if near else "; `yardplan plants` lists what there is"
    raise CommandError(f"{key} is not in the catalogue{hint}")


def near_names(key: PlantKey, known: Catalogue, count: int = 3) -> list[str]:
    """Keys of the catalogue that read much like one that is not there."""
    names = {str(one).casefold(): str(one) for one in (*known.cultivars, *known.names)}
    crop = known.crop(key.crop)
    start = f"{crop.id}:" if crop is not None else str(key)
    inside = {name: text for name, text in names.items() if text.startswith(start)}
    for pool in (inside, names):
        found = get_close_matches(str(key).casefold(), pool, n=count, cutoff=0.75)
        if found:
            return [pool[name] for name in found]
    return []


def reason_json(reason: Reason) -> dict[str, Any]:
    """A step as plain values."""
    return {
        "step": reason.step, "result": reason.result, "words": reason.words,
        "source": written_out((reason.source,))[0],
    }


def _as_json(verdict: Verdict) -> dict[str, Any]:
    return {
        "verdict": verdict.verdict,
        "share": verdict.share,
        "overlap_days": None if verdict.overlap is None else round(verdict.overlap.days, 1),
        "overlap": None if verdict.overlap is None else verdict.overlap.often,
        "needs_partner": verdict.needed,
        "sets_alone": verdict.alone.value,
        "reasons": [reason_json(reason) for reason in verdict.reasons],
    }


def _print(donor: Cultivar, receiver: Cultivar, verdict: Verdict) -> None:
    print(f"{donor.key} sets fruit on {receiver.key}: {verdict.verdict}")
    print_table(
        ("step", "result", "why"),
        [(reason.step, reason.result, reason.words) for reason in verdict.reasons],
    )
    gain = better_crossed(receiver)
    if not verdict.needed:
        print(f"{receiver.name} needs no partner" + (f"; {gain.words}." if gain else "."))
    if verdict.half and verdict.verdict != "no":
        print("Only part of the pollen is taken: enough in most years, thin in poor ones.")
