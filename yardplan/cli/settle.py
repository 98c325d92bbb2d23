"""`yardplan settle FILE`: move plants to clear ground until no conflict is left that moving can cure."""

from __future__ import annotations

import argparse
from pathlib import Path
from typing import Any

from yardplan.arrange.settle import Move, Settled, settle
from yardplan.checks.compass import compass
from yardplan.checks.wording import names_of, say
from yardplan.cli.check import keys_of, surveyed, yard_in
from yardplan.cli.output import CommandError, print_json, print_table
from yardplan.files.errors import YardFileError
from yardplan.files.writing import save
from yardplan.units import System, format_coarse, format_length
from yardplan.yard.yard import Yard


def add_parser(subparsers: Any) -> None:
    """Add the command's words and options."""
    parser = subparsers.add_parser(
        "settle", help="move plants clear of conflicts",
        description="Move unlocked plants to the nearest clear places. Without --out nothing is written. "
                    "Exit 0 when no conflict is left, 1 when some are, 2 on an error.",
    )
    parser.add_argument("file", help="a yard file (.yard)")
    parser.add_argument("--out", metavar="OUT", help="write the settled yard to this file")
    parser.add_argument("--only", metavar="ID", nargs="+", help="move only these plants")
    parser.add_argument("--json", action="store_true", help="print JSON")


def run(args: argparse.Namespace) -> int:
    """Settle the yard: 0 without conflicts left, 1 with. Raises CommandError."""
    yard = yard_in(args.file)
    unknown = sorted(set(args.only or ()) - {plant.id for plant in yard.plantings})
    if unknown:
        raise CommandError(f"{unknown[0]} is no plant of this yard; {keys_of(yard.plantings)}")
    done = settle(surveyed(yard, None), args.only)
    if args.out is not None:
        _write(Path(args.out), done.yard)
    if args.json:
        print_json(as_json(yard, done, args.out))
    else:
        _print(yard, done, args.out)
    return 1 if done.left else 0


def _write(path: Path, yard: Yard) -> None:
    try:
        save(path, yard)
    except (OSError, YardFileError) as error:
        raise CommandError(f"{path} was not written: {error}") from None


def as_json(yard: Yard, done: Settled, out: str | None) -> dict[str, Any]:
    """What settling did, as plain values in metres."""
    names, system = names_of(yard), yard.site.units
    return {
        "yard": yard.site.name,
        "cleared": done.cleared,
        "moves": [
            {"plant": move.id, "from": list(move.start), "to": list(move.end), "distance": move.far}
            for move in done.moves
        ],
        "left": [
            {"check": one.check, "kind": one.kind, "things": list(one.things),
             "message": say(one, names, system).message}
            for one in done.left
        ],
        "written": out,
    }


def _print(yard: Yard, done: Settled, out: str | None) -> None:
    names, system = names_of(yard), yard.site.units
    if done.moves:
        print_table(("move", "by", "to the", "to x; y"), [_cells(yard, m, names, system) for m in done.moves])
    elif not done.left:
        print("There is no conflict: nothing moves.")
    else:
        print("No move clears a conflict.")
    for one in done.left:
        print(f"left: {say(one, names, system).message}")
    if done.moves:
        print(f"Written to {out}." if out else "Nothing was written; name a file with --out to keep this.")


def _cells(yard: Yard, move: Move, names: dict[str, str], system: System) -> tuple[str, str, str, str]:
    x, y = (format_length(value, system) for value in move.end)
    return (
        names[move.id], format_coarse(move.far, system), compass(move.start, move.end, yard.site.north),
        f"{x}; {y}",
    )
