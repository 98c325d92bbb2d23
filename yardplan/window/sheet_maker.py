"""Sheets of the yard shown, made while the window stays alive: a share done is told after each step."""

from __future__ import annotations

import datetime as dt
from collections.abc import Callable, Sequence
from functools import partial
from pathlib import Path

from attrs import evolve, frozen

from yardplan.care.tasks import day_words
from yardplan.checks.survey import Survey
from yardplan.checks.wording import names_of, say
from yardplan.language import tr
from yardplan.sheets.assembly import SHEETS, SheetOrder, assemble
from yardplan.sheets.document import Document, Page
from yardplan.sheets.paper import SheetError, paper_named, parse_scale
from yardplan.sheets.pdf import write_pdf
from yardplan.sheets.png import write_png
from yardplan.sheets.svg import write_svg
from yardplan.sheets.titles import document_title
from yardplan.window.open_yard import OpenYard

#: Told the share done, 0 to 1; raises Stopped when the work is no longer wanted.
Progress = Callable[[float], None]
#: Share of the time that putting the pages together takes; the rest is drawing them.
_ASSEMBLY = 0.4
#: How much longer than others a sheet takes to put together: light is worked out where it is not known yet.
_WEIGHTS = {"light": 8.0, "care": 2.0}


class Stopped(Exception):
    """Ends the making of sheets that are no longer wanted."""


@frozen(kw_only=True)
class SheetWish:
    """What is wanted. `paper` a name, "" for the usual one; `scale` as typed; `year` of care and harvest.

    `persons` the household fed from the yard, None when not given.
    """

    what: tuple[str, ...]
    paper: str = ""
    scale: str = "fit"
    year: int
    marks: bool = False
    persons: float | None = None


def make(open_yard: OpenYard, wish: SheetWish, progress: Progress) -> Document:
    """The sheets as one document. Raises SheetError in words, Stopped when told to stop."""
    if not wish.what:
        raise SheetError(tr("tick at least one sheet"))
    order = _order(open_yard, wish)
    pages: list[Page] = []
    wanted = [name for name in SHEETS if name in wish.what]
    whole = sum(_WEIGHTS.get(name, 1.0) for name in wanted)
    done = 0.0
    for name in wanted:
        weight = _WEIGHTS.get(name, 1.0)
        told = partial(_told, progress, done / whole, weight / whole)
        made = assemble(evolve(order, told=told), (name,))
        pages += made.pages
        done += weight
        progress(_ASSEMBLY * done / whole)
    return Document(title=document_title(open_yard.shown_yard.site.name, wanted), pages=tuple(pages))


def _told(progress: Progress, before: float, part: float, share: float) -> None:
    """Tell how far a part of the assembly is, itself a part of the whole."""
    progress(_ASSEMBLY * (before + part * share))


def _order(open_yard: OpenYard, wish: SheetWish) -> SheetOrder:
    survey, units = _printable(open_yard), open_yard.units
    names = names_of(survey)
    return SheetOrder(
        survey=survey, units=units, date=day_words(dt.date.today()), year=wish.year, marks=wish.marks,
        scale=parse_scale(wish.scale), paper=paper_named(wish.paper) if wish.paper else None,
        findings=open_yard.findings, persons=wish.persons, day=open_yard.moment.day,
        light=open_yard.light_on_paper(),
        said={finding.key: say(finding, names, units).title for finding in open_yard.findings},
    )


def _printable(open_yard: OpenYard) -> Survey:
    """The survey; without its light where that is old or coarse, so that it is worked out for the sheet."""
    survey, light = open_yard.survey, open_yard.light
    if light is not None and light.detail == "full" and open_yard.checks.light_fresh:
        return evolve(survey, light=light)
    return evolve(survey, light=None)


def write(document: Document, path: Path, progress: Progress) -> list[Path]:
    """Write a PDF, or one SVG or PNG a page; returns what was written. Raises SheetError, Stopped."""

    def told(share: float) -> None:
        progress(_ASSEMBLY + (1 - _ASSEMBLY) * share)

    ending = path.suffix.lower()
    if ending == ".pdf":
        write_pdf(document, path, told)
        return [path]
    if ending not in (".svg", ".png"):
        raise SheetError(tr("{name}: the name must end in .pdf, .svg or .png", name=path.name))
    paths = _paths(document.pages, path)
    for number, (page, target) in enumerate(zip(document.pages, paths, strict=True), 1):
        if ending == ".svg":
            write_svg(page, target, document.title)
        else:
            write_png(page, target)
        told(number / len(paths))
    return paths


def _paths(pages: Sequence[Page], path: Path) -> list[Path]:
    """The name itself for one page, numbered for more."""
    if len(pages) == 1:
        return [path]
    return [path.with_name(f"{path.stem}-{number}{path.suffix}") for number in range(1, len(pages) + 1)]
