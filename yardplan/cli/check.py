"""`yardplan check FILE`: what the checks find, as a table or as JSON."""

from __future__ import annotations

import argparse
import textwrap
from collections.abc import Iterable
from typing import Any

from yardplan.checks.finding import Finding, Weight
from yardplan.checks.run import counts, findings
from yardplan.checks.survey import Survey, survey_of
from yardplan.checks.wording import names_of, say, severity_of
from yardplan.cli.output import CommandError, print_json
from yardplan.files.errors import YardFileError
from yardplan.files.reading import read_yard
from yardplan.plants.catalogue import catalogue
from yardplan.plants.standing import stand_of
from yardplan.sun.light import light_report
from yardplan.sun.scene import scene_of
from yardplan.units import System
from yardplan.yard.planting import Bed, Planting, Row
from yardplan.yard.yard import Yard

_WIDTH = 100
#: So many keys of plants are named to somebody who named a wrong one.
_KEYS_TOLD = 12
#: Years after planting that can be asked for; every kind is full grown well before.
LATEST_YEAR = 100


def add_parser(subparsers: Any) -> None:
    """Add the command's words and options."""
    parser = subparsers.add_parser(
        "check", help="check a yard",
        description="Check a yard: exit 0 without conflicts, 1 with, 2 on an error.",
    )
    parser.add_argument("file", help="a yard file (.yard)")
    parser.add_argument("--year", default="mature", help="years after planting, or 'mature' (the default)")
    parser.add_argument("--json", action="store_true", help="print JSON")
    parser.add_argument("--units", choices=("imperial", "metric"), help="units (default: the yard's)")


def year_of(text: str) -> int | None:
    """The year asked for; None means full size. Raises CommandError."""
    if text == "mature":
        return None
    if not text.isdecimal() or int(text) > LATEST_YEAR:
        raise CommandError(f"--year {text}: write a whole number from 0 to {LATEST_YEAR}, or mature")
    return int(text)


def yard_in(path: str) -> Yard:
    """The yard in a file. Raises CommandError with every fault, one a line."""
    try:
        return read_yard(path)
    except YardFileError as error:
        raise CommandError(str(error)) from None


def keys_of(things: Iterable[Planting | Row | Bed]) -> str:
    """The keys of plants as a person may name them: `it has A1, A2 and 3 more`."""
    keys = [thing.id for thing in things if thing.plant is not None]
    more = f" and {len(keys) - _KEYS_TOLD} more" if len(keys) > _KEYS_TOLD else ""
    return f"it has {', '.join(keys[:_KEYS_TOLD])}{more}" if keys else "it has none"


def surveyed(yard: Yard, year: int | None) -> Survey:
    """The survey of a yard with its light."""
    stand = stand_of(yard, catalogue(), year)
    return survey_of(yard, year=year, stand=stand, light=light_report(scene_of(yard, stand)))


def as_json(survey: Survey, found: list[Finding], system: System) -> dict[str, Any]:
    """The findings as plain values; figures in base units (metres, hours, shares, degrees C, kg, litres)."""
    names = names_of(survey)
    tally = counts(found)
    return {
        "yard": survey.yard.site.name,
        "year": "mature" if survey.stand.year is None else survey.stand.year,
        "counts": {weight.value: tally[weight] for weight in Weight},
        "findings": [_one(finding, names, system) for finding in found],
    }


def _one(finding: Finding, names: dict[str, str], system: System) -> dict[str, Any]:
    said = say(finding, names, system)
    return {
        "check": finding.check, "kind": finding.kind, "weight": finding.weight.value,
        "severity": severity_of(finding), "things": list(finding.things),
        "title": said.title, "message": said.message,
        "figures": {
            name: {"value": figure.value, "measure": figure.measure}
            for name, figure in finding.figures.items()
        },
        "rule": finding.source, "source": said.source_text, "clears": said.clears,
    }


def print_findings(survey: Survey, found: list[Finding], system: System) -> None:
    """Print the findings for a person, grouped by weight, each with what is at stake and what clears it."""
    names = names_of(survey)
    year = "at full size" if survey.stand.year is None else f"in year {survey.stand.year}"
    tally = counts(found)
    summary = ", ".join(_tally(tally[weight], weight) for weight in Weight)
    print(f"{survey.yard.site.name}, {year}: {summary}")
    for finding in found:
        said = say(finding, names, system)
        head = f"{finding.weight.value:<9}{severity_of(finding):<7}{finding.check:<13}"
        indent = " " * len(head)
        print(textwrap.fill(head + said.message, _WIDTH, subsequent_indent=indent))
        print(textwrap.fill(indent + said.clears, _WIDTH, subsequent_indent=indent))


def _tally(number: int, weight: Weight) -> str:
    plural = {"conflict": "conflicts", "caution": "cautions", "advice": "pieces of advice"}
    word = {"advice": "piece of advice"}.get(weight.value, weight.value)
    return f"{number or 'no'} {word if number == 1 else plural[weight.value]}"


def run(args: argparse.Namespace) -> int:
    """Check the yard: 0 without conflicts, 1 with. Raises CommandError."""
    return report(yard_in(args.file), args)


def report(yard: Yard, args: argparse.Namespace) -> int:
    """Print what the checks find in a yard: 0 without conflicts, 1 with. Raises CommandError."""
    survey = surveyed(yard, year_of(args.year))
    found = findings(survey)
    system: System = args.units or yard.site.units
    if args.json:
        print_json(as_json(survey, found, system))
    else:
        print_findings(survey, found, system)
    return 1 if counts(found)[Weight.CONFLICT] else 0
