"""Which country's presets hold for a site, and what they say; presets always say: check locally."""

from __future__ import annotations

import csv
from functools import cache

from attrs import frozen

from yardplan.shipped import resource
from yardplan.yard.site import Site

#: Names and other codes under which a region may be given.
_NAMES = {
    "france": "FR", "germany": "DE", "deutschland": "DE", "italy": "IT", "italia": "IT", "austria": "AT",
    "united kingdom": "GB", "uk": "GB", "great britain": "GB", "england": "GB", "scotland": "GB",
    "wales": "GB", "united states": "US", "usa": "US", "canada": "CA", "netherlands": "NL", "australia": "AU",
}


@frozen
class LineLaw:
    """A distance from the lot line for plants taller than a height, metres."""

    country: str
    taller_than: float
    distance: float
    source: str
    note: str


@cache
def line_laws(country: str) -> tuple[LineLaw, ...]:
    """The presets of a country, lowest plants first; empty where none is known."""
    with resource("checks", "lot-line-law.csv").open(encoding="utf-8", newline="") as file:
        laws = [
            LineLaw(
                row["country"], float(row["taller_than_m"]), float(row["distance_m"]), row["source"],
                row["note"],
            )
            for row in csv.DictReader(file)
            if row["country"] == country
        ]
    return tuple(sorted(laws, key=lambda law: law.taller_than))


@cache
def dig_words(country: str) -> tuple[str, str]:
    """What to do before digging in a country, and the source id."""
    with resource("checks", "dig-first.csv").open(encoding="utf-8", newline="") as file:
        table = {row["country"]: (row["words"], row["source"]) for row in csv.DictReader(file)}
    return table.get(country, table["other"])


def country_of(site: Site) -> str:
    """The two-letter country of a site's region (`US-NY`, `FR`, `Germany`), or empty."""
    region = (site.region or "").strip()
    named = _NAMES.get(region.lower())
    if named:
        return named
    code = region[:2].upper()
    bare = len(region) == 2 or (len(region) > 2 and not region[2].isalnum())
    return code if bare and code.isalpha() else ""


def state_of(site: Site) -> str:
    """The state or province of a region like `US-NY`, or empty."""
    region = (site.region or "").strip()
    return region[3:].upper() if len(region) > 3 and not region[2].isalnum() else ""
