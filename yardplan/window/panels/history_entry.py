"""What grew on a spot before, typed as kinds with the last year each stood there: `tomato 2024; apple`."""

from __future__ import annotations

import re

from yardplan.checks import groups
from yardplan.language import tr
from yardplan.plants.catalogue import catalogue
from yardplan.window.panels.entry import EntryError, Reading
from yardplan.yard.planting import Earlier

#: Years that can be meant; those of planting run as far.
_FIRST_YEAR, _LAST_YEAR = 1800, 2200
_LONGEST = 60
_KIND_AND_YEAR = re.compile(r"(?P<kind>.*?)[\s,]*(?:(?:until|bis)\s+)?(?P<year>\d+)?", re.IGNORECASE)


def _kinds() -> dict[str, str]:
    """The kinds that the rules know of what grew before, by their names in the language shown."""
    hosts = (member.name for member in groups.members("verticillium host"))
    return {tr(kind).casefold(): kind for kind in (*hosts, *catalogue().crops)}


def _one(part: str) -> Earlier:
    match = _KIND_AND_YEAR.fullmatch(part)
    kind = " ".join(match["kind"].split()) if match else ""
    year = match["year"] if match else None
    if not any(letter.isalpha() for letter in kind):
        raise EntryError(tr("'{typed}' names no kind: write for example tomato 2024; apple", typed=part))
    if len(kind) > _LONGEST:
        raise EntryError(tr("a kind has {most} letters at most", most=_LONGEST))
    if year is not None and not _FIRST_YEAR <= int(year) <= _LAST_YEAR:
        raise EntryError(tr("{year} is outside {low} to {high}", year=year, low=_FIRST_YEAR, high=_LAST_YEAR))
    return Earlier(crop=_kinds().get(kind.casefold(), kind), until=None if year is None else int(year))


def read_earlier(typed: str) -> tuple[Earlier, ...]:
    """Kinds and years as typed, parted by semicolons; the year may be left out. Raises EntryError."""
    return tuple(_one(part.strip()) for part in typed.split(";") if part.strip())


def show_earlier(earlier: tuple[Earlier, ...]) -> str:
    """Kinds and years as they are typed."""
    return "; ".join(f"{tr(each.crop)} {each.until or ''}".rstrip() for each in earlier)


def echo_earlier(earlier: tuple[Earlier, ...]) -> str:
    """What was understood, in words."""
    said = [
        tr("{kind}, year not known", kind=tr(each.crop)) if each.until is None
        else tr("{kind} until {year}", kind=tr(each.crop), year=each.until)
        for each in earlier
    ]
    return f"= {'; '.join(said)}" if said else ""


READING = Reading(read_earlier, show_earlier, echo_earlier)
