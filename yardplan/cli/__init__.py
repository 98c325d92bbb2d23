"""The command line: `yardplan [FILE]` opens the window; commands compute without Qt."""

from __future__ import annotations

import sys
from collections.abc import Sequence
from importlib import import_module
from typing import TYPE_CHECKING

from yardplan import __version__
from yardplan.cli.output import CommandError

if TYPE_CHECKING:
    import argparse

#: Command modules in the order of the help text; each has `add_parser(subparsers)` and `run(args)`.
COMMANDS = (
    "check", "soil", "pollen", "bloom", "partners", "settle", "plants", "sun", "sheet", "care", "export",
    "doctor",
)


def _parser(names: Sequence[str]) -> argparse.ArgumentParser:
    import argparse

    parser = argparse.ArgumentParser(
        prog="yardplan",
        description="Plan a fruit yard to scale. Without a command: open the window.",
        epilog="yardplan [FILE] opens the window, with a yard if one is named.",
    )
    parser.add_argument("--version", action="version", version=f"yardplan {__version__}")
    subparsers = parser.add_subparsers(dest="command", metavar="COMMAND")
    for name in names:
        import_module(f"yardplan.cli.{name}").add_parser(subparsers)
    return parser


def main(argv: Sequence[str] | None = None) -> int:
    """Run one command and return its exit code: 0 fine, 1 conflicts found, 2 an error."""
    words = list(sys.argv[1:] if argv is None else argv)
    if not words or (words[0] not in COMMANDS and not words[0].startswith("-")):
        return _open_window(words)
    # Only the module of the command asked for is imported; help needs them all.
    names = (words[0],) if words[0] in COMMANDS else COMMANDS
    args = _parser(names).parse_args(words)
    try:
        return int(import_module(f"yardplan.cli.{args.command}").run(args))
    except CommandError as error:
        print(f"yardplan: {error}", file=sys.stderr)
        return 2


def _open_window(words: Sequence[str]) -> int:
    """Open the window, or say in one line why not and show the yard's check instead."""
    opening = import_module("yardplan.cli.opening")
    try:
        return int(opening.run(words))
    except CommandError as error:
        print(f"yardplan: {error}", file=sys.stderr)
        return 2
