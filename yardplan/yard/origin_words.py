"""Where facts of the site came from, in words: kept in English in the yard file, said in the language shown.

A text is made of the pieces below. `origin_said` finds them again, so that files of all ages and languages
read alike; what it does not know, such as the name of a station or what a person wrote, stays as it is.
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from yardplan.language import later, tr

#: Shown with every US zone, as the publisher asks.
ZONE_SENTENCE = later(
    "Looked up by ZIP code; this program is not the official USDA Plant Hardiness Zone Map."
)
#: How well stations match a place; files from before say the first word alone.
GRADES = {
    "good": later("good match"), "fair": later("fair match"), "poor": later("poor match"),
    "none": later("no match"),
}
#: Sources of monthly figures, before the years they stand for.
KINDS = {
    "NOAA8110": later("NOAA normals"), "WMO9120": later("WMO normals"),
    "CHELSA": later("climate model CHELSA"),
}
ZIP_PLACE = later("ZIP code {zip}; US Census Bureau and GeoNames")
OF_TOWN = later("that of {town}, {km} km away; GeoNames")
OF_NEAREST_TOWN = later("that of the nearest town; GeoNames")
OF_ZIP = later("the ZIP code's; US Census Bureau")
NEAREST_PLACE = later("the nearest place of 1,000 people; slopes differ")
ZIP_ZONE = later("ZIP code {zip}, USDA 2023.")
ZIP_ZONE_OFF = later("ZIP code {zip}, {km} km away, USDA 2023.")
ABOUT_ZONE = later(
    "about zone {zone}, give or take one: estimated from monthly temperatures (yearly minimum about "
    "{low} °C)"
)
STATION = later("{station}, {km} km away, {height}, {source}")
NO_HEIGHT = later("height difference not known")
ABOVE, BELOW = later("place {metres} m above it"), later("place {metres} m below it")
WORSE_NEAR_WATER = later(
    "{text}. Near a coast, a large lake or in a narrow valley count it one grade worse"
)
RARE = later("frost is rare: under two days a year at {station}")
ALL_YEAR = later("frost is possible in every month at {station}")
FREEZE_DATES, FROST_DAYS = later("freeze dates"), later("estimated from frost days by month")
USUAL_SPREAD = later("one-in-ten dates by the usual spread")
FROST_GUIDE = later("a guide: cold hollows run two weeks later")
LOT_LINE = later("lot line in {file}")

#: Tried in this order: the more particular ones first.
_PATTERNS = (
    WORSE_NEAR_WATER, ZIP_PLACE, OF_TOWN, OF_NEAREST_TOWN, OF_ZIP, NEAREST_PLACE, ZIP_ZONE_OFF, ZIP_ZONE,
    ABOUT_ZONE, RARE, ALL_YEAR, LOT_LINE, STATION, NO_HEIGHT, ABOVE, BELOW, FREEZE_DATES, FROST_DAYS,
    USUAL_SPREAD, FROST_GUIDE,
)


def _pattern(text: str) -> re.Pattern[str]:
    """What fits a text with its holes filled. Only a whole text may hold `;`, which parts pieces."""
    found = re.escape(text).replace(r"\{text\}", "(?P<text>.+)")
    return re.compile(re.sub(r"\\\{(\w+)\\\}", r"(?P<\1>[^;]+)", found))


_READ = tuple((text, _pattern(text)) for text in _PATTERNS)


def origin_said(text: str) -> str:
    """A text from the yard file in the language shown."""
    return next(_said(text), tr(text))


def _part(words: str, name: str, part: str) -> str:
    """What fills a hole: said where it is words of ours, left alone where it is a name or a figure."""
    ours = name in ("text", "height", "source") or words in (RARE, ALL_YEAR)
    return origin_said(part) if ours else part


def _said(text: str) -> Iterator[str]:
    """Ways to say a text by its pieces."""
    if text.endswith(f" {ZONE_SENTENCE}"):
        yield f"{origin_said(text.removesuffix(ZONE_SENTENCE).rstrip())} {tr(ZONE_SENTENCE)}"
    for words, pattern in _READ:
        found = pattern.fullmatch(text)
        if found:
            yield tr(words, **{name: _part(words, name, part) for name, part in found.groupdict().items()})
    grade, colon, rest = text.partition(": ")
    for short, words in GRADES.items():
        if colon and grade in (short, words):
            yield f"{tr(words)}: {origin_said(rest)}"
    for words in KINDS.values():
        if text.startswith(f"{words} "):
            yield tr(words) + text.removeprefix(words)
    if "; " in text:
        yield "; ".join(origin_said(part) for part in text.split("; "))
