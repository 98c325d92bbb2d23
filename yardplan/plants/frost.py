"""Frost at bloom: in how many years does a killing night come after full bloom?

Risk = 1 - Phi((bloom - D) / s), D the mean date of the last night at or under the temperature that kills one
flower in ten, s the scatter of that date. Colder nights end earlier in spring by some days per degree.
"""

from __future__ import annotations

import csv
from collections.abc import Mapping
from functools import cache

from attrs import frozen

from yardplan.plants.bloom import BloomBand
from yardplan.plants.heat import YEAR, day_of, normal_share
from yardplan.plants.limits import Limits
from yardplan.shipped import resource
from yardplan.yard.site import Site

#: The 10 % point of a normal spread lies this many scatters from its middle.
_TENTH = 1.2816
_STAGES = ("full bloom", "open blossom", "full flower and new fruit")

#: Crops of ours that take the row of their nearest kin in the bud-kill table (from memory).
_ROW_OF: Mapping[str, str] = {
    "crabapple": "apple", "european pear": "pear", "asian pear": "pear", "callery pear": "pear",
    "nectarine": "peach", "sour cherry": "tart cherry", "european plum": "European plum",
    "japanese plum": "European plum", "hybrid plum": "European plum", "serviceberry": "saskatoon",
    "serviceberry (shrub form)": "saskatoon", "northern highbush blueberry": "highbush blueberry",
    "southern highbush blueberry": "highbush blueberry", "half-high blueberry": "highbush blueberry",
    "rabbiteye blueberry": "highbush blueberry", "lowbush blueberry": "highbush blueberry",
}


@frozen(kw_only=True)
class KillPoint:
    """Temperature, degrees C, that kills a tenth of the open flowers in half an hour, and its source."""

    celsius: float
    source: str


@frozen(kw_only=True)
class FrostRisk:
    """Share of years in which such a night comes after full bloom; `date` its mean last day of the year."""

    share: float
    kill: KillPoint
    date: float


@cache
def _table() -> Mapping[str, KillPoint]:
    found: dict[str, KillPoint] = {}
    with resource("plants", "bud-kill.csv").open(encoding="utf-8", newline="") as file:
        for row in csv.DictReader(file):
            if row["stage"] in _STAGES and row["t10_C"]:
                source = row["sources"].split(";")[0].split("(")[0].strip()
                found[row["crop"]] = KillPoint(celsius=float(row["t10_C"]), source=source)
    return found


def kill_point(crop: str) -> KillPoint | None:
    """What open flowers of a crop stand; None when no figure is known."""
    return _table().get(row_of(crop))


def row_of(crop: str) -> str:
    """The crop's name in the bud-kill table."""
    return _ROW_OF.get(crop, crop)


def last_night(site: Site, celsius: float, limits: Limits) -> tuple[float, float] | None:
    """Mean day of the year of the last night at or under a temperature, and its scatter in days.

    None when the site has no last frost date.
    """
    if site.last_frost is None:
        return None
    try:
        even = float(day_of(site.last_frost))
        late = float(day_of(site.last_frost_10)) if site.last_frost_10 else None
    except ValueError:
        return None
    scatter = limits.value("frost-date-scatter")
    if late is not None and late > even:
        scatter = (late - even) / _TENTH
    return even + limits.value("frost-days-per-degree") * celsius, scatter


def frost_risk(crop: str, band: BloomBand, site: Site, limits: Limits) -> FrostRisk | None:
    """Risk of a killing night after full bloom; None when bloom hardiness or frost dates are not known."""
    kill = kill_point(crop)
    night = None if kill is None else last_night(site, kill.celsius, limits)
    if kill is None or night is None:
        return None
    date, scatter = night
    # Spring of one year: count both dates on the same turn of the calendar.
    date += YEAR * round((band.full - date) / YEAR)
    return FrostRisk(share=1 - normal_share((band.full - date) / scatter), kill=kill, date=date)
