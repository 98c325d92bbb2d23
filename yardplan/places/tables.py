"""The shipped tables of towns, ZIP codes and climate stations, each read once when first asked for."""

from __future__ import annotations

import csv
import gzip
from array import array
from collections.abc import Mapping
from functools import cache
from typing import NamedTuple

from attrs import evolve, frozen

from yardplan.shipped import resource

TOWNS, ZIPS = "towns.csv.gz", "us_zip.csv.gz"
OBSERVED, MODELLED = "stations.csv.gz", "stations_modelled.csv.gz"

Months = tuple[float, ...]


@frozen(kw_only=True)
class Place:
    """A place found by name, ZIP code or position. `elevation` metres; `zone` a USDA half-zone.

    `found_by` says how: `town`, `zip` or `position`. `guessed` where the name was not typed like this.
    """

    name: str
    region: str
    country: str
    latitude: float
    longitude: float
    elevation: float | None = None
    time_zone: str | None = None
    population: int = 0
    zone: str | None = None
    zip_code: str | None = None
    found_by: str = "town"
    guessed: bool = False

    @property
    def label(self) -> str:
        """Name, region and country as one line."""
        return ", ".join(part for part in (self.name, self.region, self.country) if part)


@frozen(kw_only=True)
class Station:
    """A climate station. Temperatures in degrees C, Jan to Dec; frost dates `MM-DD`.

    `frost` is `N` (NOAA freeze dates), `F` (estimated of frost-day counts), `rare`, `allyear` or empty.
    `doubtful` True where its position could not be settled; `extreme_low` estimated mean yearly minimum.
    """

    id: str
    name: str
    country: str
    latitude: float
    longitude: float
    elevation: float | None
    period: str
    source: str
    means: Months
    lows: Months | None = None
    highs: Months | None = None
    frost: str = ""
    last_frost: str | None = None
    last_frost_10: str | None = None
    first_frost: str | None = None
    first_frost_10: str | None = None
    extreme_low: float | None = None
    doubtful: bool = False

    @property
    def modelled(self) -> bool:
        """True for a value of a climate model at this position, False for an observed one."""
        return self.source == "CHELSA"


class Table(NamedTuple):
    """A table by position: degrees, and the lines as text.

    Numbers and texts, not a list per line: tens of thousands of lists would slow every later collection
    of the interpreter's garbage, so also the window.
    """

    latitudes: array[float]
    longitudes: array[float]
    lines: list[str]


def text_of(name: str) -> str:
    """The text of a shipped table."""
    return gzip.decompress(resource("places", name).read_bytes()).decode("utf-8")


@cache
def figures() -> Mapping[str, tuple[float, ...]]:
    """The figures by which stations are chosen, from figures.csv."""
    with resource("places", "figures.csv").open(encoding="utf-8", newline="") as file:
        return {row["name"]: tuple(map(float, row["value"].split())) for row in csv.DictReader(file)}


def figure(name: str) -> float:
    """One figure of figures.csv."""
    return figures()[name][0]


@cache
def table(name: str) -> Table:
    """The lines of a table that have a position; it stands in the fourth and fifth column of all of them."""
    made = Table(array("d"), array("d"), [])
    for line in text_of(name).split("\n")[1:]:
        cells = line.split(",", 5) if '"' not in line else cells_of(line)
        if len(cells) > 4 and cells[3]:
            made.latitudes.append(float(cells[3]))
            made.longitudes.append(float(cells[4]))
            made.lines.append(line)
    return made


def cells_of(line: str) -> list[str]:
    """The cells of a line. Few have quotes; splitting the others is quicker than csv."""
    return next(csv.reader([line])) if '"' in line else line.rstrip("\r").split(",")


def _maybe(text: str) -> float | None:
    return float(text) if text else None


def town(cells: list[str]) -> Place:
    """A town of its line."""
    name, region, country, latitude, longitude, elevation, zone, population = cells[:8]
    return Place(
        name=name, region=region, country=country, latitude=float(latitude), longitude=float(longitude),
        elevation=_maybe(elevation), time_zone=zone, population=int(population or 0),
    )


def zip_place(cells: list[str]) -> Place:
    """A ZIP code of its line; the time zone is left open."""
    code, name, state, latitude, longitude, elevation, zone = cells[:7]
    return Place(
        name=name, region=state, country="US", latitude=float(latitude), longitude=float(longitude),
        elevation=_maybe(elevation), zone=zone or None, zip_code=code, found_by="zip",
    )


def _months(cells: list[str]) -> Months | None:
    return tuple(map(float, cells)) if all(cells) else None


def station(cells: list[str]) -> Station:
    """A station of its line, observed (51 columns) or modelled (21)."""
    means = _months(cells[7:19])
    assert means is not None
    modelled = Station(
        id=cells[0], name=readable(cells[1]), country=cells[2], latitude=float(cells[3]),
        longitude=float(cells[4]), elevation=_maybe(cells[5]), period=cells[6], source=cells[-1], means=means,
    )
    if len(cells) < 51:
        return modelled
    return evolve(
        modelled, lows=_months(cells[19:31]), highs=_months(cells[31:43]),
        last_frost=cells[43] or None, last_frost_10=cells[44] or None, first_frost=cells[45] or None,
        first_frost_10=cells[46] or None, frost=cells[47], extreme_low=_maybe(cells[48]),
        doubtful="p" in cells[49],
    )


def readable(name: str) -> str:
    """A station's name with spaces between run-together words and without shouting."""
    spaced = "".join(
        f" {letter}" if i and letter.isupper() and name[i - 1].islower() else letter
        for i, letter in enumerate(name)
    )
    return spaced.title() if spaced.isupper() else spaced
