"""`yardplan export FILE OUT`: the yard in another format, chosen by the ending of OUT."""

from __future__ import annotations

import argparse
from pathlib import Path
from typing import Any

from yardplan.cli.output import CommandError
from yardplan.files.errors import YardFileError, reason
from yardplan.files.exchange.formats import FORMATS, Spreads
from yardplan.files.exchange.outline import ExchangeError
from yardplan.files.reading import read_yard
from yardplan.files.writing import write_whole
from yardplan.plants.catalogue import catalogue
from yardplan.plants.standing import stand_of
from yardplan.yard.yard import Yard


def add_parser(subparsers: Any) -> None:
    """Add the command's words and options."""
    parser: argparse.ArgumentParser = subparsers.add_parser(
        "export", help="write a yard in another format",
        description="Write a yard as GeoJSON (maps), CSV (table of plants) or DXF (drawing programs).",
    )
    parser.add_argument("file", help="a yard file (.yard)")
    parser.add_argument("out", help="the file to write: its ending .geojson, .csv or .dxf says the format")


def run(args: argparse.Namespace) -> int:
    """Write the file; 0 when done. Raises CommandError."""
    out = Path(args.out)
    write = FORMATS.get(out.suffix.lower())
    if write is None:
        raise CommandError(f"{out.name}: the ending must be one of {', '.join(FORMATS)}")
    try:
        yard = read_yard(args.file)
        text = write(yard, _spreads(yard))
        write_whole(out.resolve(), text.encode("utf-8"))
    except (YardFileError, ExchangeError) as error:
        raise CommandError(str(error)) from None
    except OSError as error:
        raise CommandError(f"{out.name} was not written: {reason(error)} ({out.parent})") from None
    print(f"{out}: {_counted(yard)}")
    return 0


def _spreads(yard: Yard) -> Spreads:
    stand = stand_of(yard, catalogue(), None)
    return {plant.id: plant.size.spread for plant in stand.plants if plant.planted}


def _counted(yard: Yard) -> str:
    words = (("plants", yard.plantings), ("rows", yard.rows), ("beds", yard.beds))
    return ", ".join(f"{len(things)} {word}" for word, things in words)
