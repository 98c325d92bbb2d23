"""`yardplan sheet FILE -o OUT.pdf`: planting plan, schedule and key on paper, true to scale."""

from __future__ import annotations

import argparse
from collections.abc import Callable
from datetime import date
from importlib import import_module
from pathlib import Path
from typing import Any

from yardplan.checks.run import findings
from yardplan.checks.survey import Survey, survey_of
from yardplan.checks.wording import names_of, say
from yardplan.cli.check import yard_in, year_of
from yardplan.cli.output import CommandError
from yardplan.plants.catalogue import catalogue
from yardplan.plants.standing import stand_of
from yardplan.sun.light import light_report
from yardplan.sun.scene import scene_of
from yardplan.yard.yard import Yard

_MONTHS = (
    "January", "February", "March", "April", "May", "June", "July", "August", "September", "October",
    "November", "December",
)


def add_parser(subparsers: Any) -> None:
    """Add the command's words and options."""
    parser = subparsers.add_parser(
        "sheet", help="plan and lists on paper",
        description="Write the planting plan and its lists as PDF, SVG or PNG, true to scale.",
    )
    parser.add_argument("file", help="a yard file (.yard)")
    parser.add_argument("-o", "--output", required=True, metavar="OUT", help="OUT.pdf, OUT.svg or OUT.png")
    parser.add_argument(
        "--what", default="plan,schedule,key",
        help="sheets, parted by commas: plan, schedule, key, setting-out, shopping, findings, light, "
        "pollination, season, soil, care, harvest, or all (default: plan,schedule,key)",
    )
    parser.add_argument("--scale", default="fit", help="1:100, 1:50, 1/8 in (to the foot), 1 in = 10 ft, fit")
    parser.add_argument("--paper", help="A4, A3, Letter or Tabloid (default: by the yard's units)")
    parser.add_argument("--year", default="mature", help="years after planting, or 'mature' (the default)")
    parser.add_argument("--units", choices=("imperial", "metric"), help="units (default: the yard's)")
    parser.add_argument("--day", type=month_day, metavar="MM-DD", help="day marked in the season")
    parser.add_argument("--marks", action="store_true", help="show conflicts and cautions on the plan")


def month_day(text: str) -> str:
    """A day as `MM-DD`. Raises ArgumentTypeError for anything else."""
    try:
        return f"{date.fromisoformat(f'2001-{text}'):%m-%d}"
    except ValueError:
        raise argparse.ArgumentTypeError(f"'{text}' is no day: write MM-DD, for example 04-24") from None


def run(args: argparse.Namespace) -> int:
    """Write the sheets; prints what was written."""
    try:
        # All that draws is loaded here, so that a missing Qt is one line and not a fault half way.
        for name in ("assembly", "pdf", "png", "svg"):
            import_module(f"yardplan.sheets.{name}")
        from yardplan.sheets.paper import SheetError
    except ImportError as error:
        raise CommandError(
            f"sheets need PySide6, which cannot be loaded here: {error}; see: yardplan doctor"
        ) from None
    try:
        written = _write(args)
    except SheetError as error:
        raise CommandError(str(error)) from None
    for path in written:
        print(path)
    return 0


def _write(args: argparse.Namespace) -> list[Path]:
    from yardplan.sheets.assembly import SheetOrder, assemble
    from yardplan.sheets.paper import paper_named, parse_scale
    from yardplan.sheets.session import ensure_application

    yard = yard_in(args.file)
    writer = _writer_for(Path(args.output))
    units = args.units or yard.site.units
    what = [word.strip() for word in args.what.split(",") if word.strip()]
    checked = args.marks or bool({"all", "findings"} & set(what))
    survey = _survey(yard, year_of(args.year), lit=checked or "light" in what)
    found = findings(survey) if checked else []
    names, today = names_of(survey), date.today()
    ensure_application()
    document = assemble(
        SheetOrder(
            survey=survey, units=units, date=date_words(today), year=today.year, marks=args.marks,
            day=args.day or "", scale=parse_scale(args.scale),
            paper=paper_named(args.paper) if args.paper else None,
            findings=tuple(found), said={finding.key: say(finding, names, units).title for finding in found},
        ),
        what,
    )
    return writer(document, Path(args.output))


def _survey(yard: Yard, year: int | None, *, lit: bool) -> Survey:
    """The survey; with its light only where a sheet needs it, because light takes longest."""
    stand = stand_of(yard, catalogue(), year)
    return survey_of(yard, year=year, stand=stand, light=light_report(scene_of(yard, stand)) if lit else None)


def date_words(day: date) -> str:
    """A date in words: "24 April 2027"."""
    return f"{day.day} {_MONTHS[day.month - 1]} {day.year}"


def _write_pdf(document: Any, path: Path) -> list[Path]:
    from yardplan.sheets.pdf import write_pdf

    write_pdf(document, path)
    return [path]


def _page_paths(document: Any, path: Path) -> list[Path]:
    """One file a page: the name itself for one, numbered for more."""
    if len(document.pages) == 1:
        return [path]
    return [path.with_name(f"{path.stem}-{n + 1}{path.suffix}") for n in range(len(document.pages))]


def _write_svg(document: Any, path: Path) -> list[Path]:
    from yardplan.sheets.svg import write_svg

    paths = _page_paths(document, path)
    for page, target in zip(document.pages, paths, strict=True):
        write_svg(page, target, document.title)
    return paths


def _write_png(document: Any, path: Path) -> list[Path]:
    from yardplan.sheets.png import write_png

    paths = _page_paths(document, path)
    for page, target in zip(document.pages, paths, strict=True):
        write_png(page, target)
    return paths


_WRITERS: dict[str, Callable[[Any, Path], list[Path]]] = {
    ".pdf": _write_pdf, ".svg": _write_svg, ".png": _write_png,
}


def _writer_for(path: Path) -> Callable[[Any, Path], list[Path]]:
    writer = _WRITERS.get(path.suffix.lower())
    if writer is None:
        raise CommandError(f"{path.name}: the name must end in .pdf, .svg or .png")
    return writer


