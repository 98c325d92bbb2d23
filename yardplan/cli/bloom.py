"""`yardplan bloom FILE`: when what is planned blooms and ripens there, and what blooms together."""

from __future__ import annotations

import argparse
from datetime import date
from pathlib import Path
from typing import Any

from yardplan.checks.survey import Survey, survey_of
from yardplan.cli.check import yard_in
from yardplan.cli.output import CommandError, print_json, print_table
from yardplan.plants.bloom import BloomAt, BloomBand
from yardplan.plants.pollen_place import place_for
from yardplan.plants.pollen_reason import PollenPlace
from yardplan.plants.season import SeasonLine, overlaps, season_lines

#: What the dates rest on, in words.
_BASIS = {
    "monthly means": "from the site's monthly mean temperatures",
    "observed date": "set right by bloom seen on the spot",
    "station": "moved here from another place",
    "nothing": "not dated",
}


def add_parser(subparsers: Any) -> None:
    """Add the command's words and options."""
    parser = subparsers.add_parser("bloom", help="say when the plants of a yard bloom and ripen")
    parser.add_argument("file", help="a yard file (.yard)")
    parser.add_argument("--json", action="store_true", help="print JSON")
    parser.add_argument("--png", metavar="OUT", help="draw the season chart into a picture")


def run(args: argparse.Namespace) -> int:
    """Print the season; 0, or 2 through CommandError."""
    survey = survey_of(yard_in(args.file))
    place = place_for(survey.yard.site, survey.rules.local, survey.catalogue.cultivars)
    lines = season_lines(survey.stand, place, survey.yard.site)
    if args.png:
        _draw(args.png, survey, lines, place)
    if args.json:
        print_json(_as_json(survey, lines, place))
    elif not args.png:
        _print(lines, place)
    return 0


def _as_json(survey: Survey, lines: list[SeasonLine], place: PollenPlace) -> dict[str, Any]:
    bloom = place.bloom
    return {
        "yard": survey.yard.site.name,
        "basis": bloom.basis if bloom else "nothing",
        "station": bloom.station.name if bloom and bloom.station else None,
        "faults": list(bloom.faults) if bloom else [],
        "plants": [_line_json(line) for line in lines],
        "overlaps": [
            {
                "a": str(one.cultivar.key), "b": str(other.cultivar.key),
                "days": round(shared.days, 1), "years": round(shared.years, 2), "often": shared.often,
                "by": shared.by,
            }
            for one, other, shared in overlaps(lines, place)
        ],
    }


def _line_json(line: SeasonLine) -> dict[str, Any]:
    return {
        "plant": str(line.cultivar.key),
        "things": list(line.things),
        "bloom": None if line.bloom is None else _band_json(line.bloom),
        "harvest": None if line.harvest is None else {
            "first": line.harvest.dates[0], "last": line.harvest.dates[1], "spread": line.harvest.spread,
        },
        "frost_risk": None if line.frost is None else {
            "share": round(line.frost.share, 3), "kills_c": line.frost.kill.celsius,
        },
    }


def _band_json(band: BloomBand) -> dict[str, Any]:
    first, full, fall = band.dates
    return {
        "first": first, "full": full, "petal_fall": fall, "error_days": round(band.error, 1),
        "scatter_days": round(band.scatter, 1), "basis": band.basis, "class_known": band.classed,
    }


def _words(month_day: str) -> str:
    month, day = month_day.split("-")
    return date(2000, int(month), int(day)).strftime("%-d %b")


def _print(lines: list[SeasonLine], place: PollenPlace) -> None:
    if not lines:
        print("Nothing is planted yet.")
        return
    bloom = place.bloom
    print_table(
        ("plant", "things", "first flower", "full bloom", "petal fall", "ripe", "frost at bloom"),
        [_cells(line) for line in lines],
    )
    if bloom is not None:
        print(_note(bloom))
        for fault in bloom.faults:
            print(f"{fault}.")
        unsure = [str(line.cultivar.key) for line in lines if line.bloom and not line.bloom.classed]
        if unsure:
            print(f"Bloom class not known, dated as mid-season: {', '.join(unsure)}.")
    pairs = overlaps(lines, place)
    if pairs:
        print()
        print_table(
            ("blooms", "with", "days", "how often"),
            [(one.cultivar.name, other.cultivar.name, f"{shared.shared:.0f}", shared.often)
             for one, other, shared in pairs],
        )


def _note(bloom: BloomAt) -> str:
    station = f" ({bloom.station.name})" if bloom.basis == "station" and bloom.station else ""
    if bloom.basis == "nothing" and bloom.too_mild:
        return "Winters are too mild here to reckon bloom from temperatures: enter one bloom date seen here."
    if bloom.basis == "nothing":
        return "Bloom is not dated: enter monthly mean temperatures or one observed date."
    return (
        f"Bloom is {_BASIS[bloom.basis]}{station}: about {bloom.error:.0f} days either way for the average "
        f"year, {max(8.0, bloom.error):.0f} for a single year."
    )


def _cells(line: SeasonLine) -> tuple[str, ...]:
    dates = tuple(map(_words, line.bloom.dates)) if line.bloom else ("-", "-", "-")
    ripe = " to ".join(map(_words, line.harvest.dates)) if line.harvest else "-"
    frost = f"{line.frost.share:.0%} of years" if line.frost else "-"
    return (str(line.cultivar.key), ", ".join(line.things), *dates, ripe, frost)


def _draw(out: str, survey: Survey, lines: list[SeasonLine], place: PollenPlace) -> None:
    """Draw the season chart into a PNG. Raises CommandError when it cannot be written."""
    try:
        from yardplan.drawing.season_picture import save_season
    except ImportError as error:
        raise CommandError(f"the chart needs PySide6 and its libraries: {error}") from None
    if not save_season(Path(out), survey.yard.site, lines, overlaps(lines, place)):
        raise CommandError(f"{out}: the picture could not be written; name a .png file in a folder of yours")
