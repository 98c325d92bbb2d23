"""`yardplan doctor`: what this machine lacks for yardplan, with the line that mends it."""

from __future__ import annotations

import argparse
from typing import Any

from yardplan.cli.output import print_json
from yardplan.machine import Line, report
from yardplan.shipped import folder


def add_parser(subparsers: Any) -> None:
    """Add the command's words and options."""
    parser = subparsers.add_parser("doctor", help="say what this machine lacks")
    parser.add_argument("--json", action="store_true", help="print JSON")


def _shipped() -> Line:
    try:
        return Line("shipped files", True, str(folder("resources")))
    except FileNotFoundError as error:
        return Line("shipped files", False, str(error))


def run(args: argparse.Namespace) -> int:
    """Print the report; 0 when nothing is missing (a missing screen alone is no fault), else 1."""
    lines = [*report(), _shipped()]
    if args.json:
        print_json({"lines": [{"what": x.what, "fine": x.fine, "detail": x.detail} for x in lines]})
    else:
        for line in lines:
            print(f"{'ok      ' if line.fine else 'MISSING '} {line.what}: {line.detail}")
    return 0 if all(line.fine for line in lines if line.what != "screen") else 1
