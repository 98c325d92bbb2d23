"""Summer heat of a site: growing degree days, and the days above 30 C (86 F) that make its heat zone.

Both are estimates from monthly temperatures: degree days are summed over the daily means that meet them
(`heat.expected_heat`); of a day whose usual high is h the share Phi((h - 30) / s) of years is hot.
"""

from __future__ import annotations

import csv
from collections.abc import Mapping
from functools import cache

from attrs import frozen

from yardplan.plants.heat import (
    HALF_YEAR,
    YEAR,
    daily_means,
    day_of,
    expected_heat,
    monthly_means_of,
    normal_share,
    parameter,
)
from yardplan.shipped import resource
from yardplan.yard.site import Site

_MONTHS = 12


@frozen(kw_only=True)
class HeatZone:
    """A class of the heat map: `name` 1 to 12, for more than `low` up to `high` hot days a year."""

    name: str
    low: float
    high: float


@frozen(kw_only=True)
class SiteHeat:
    """`degree_days` degrees C times days over `base` C in the growing season; `hot_days` a year over 30 C.

    `hot_days` and `zone` are None where monthly highs are not known.
    """

    degree_days: float
    base: float
    hot_days: float | None = None
    zone: HeatZone | None = None


@cache
def _figures() -> Mapping[str, float]:
    with resource("plants", "heat.csv").open(encoding="utf-8", newline="") as file:
        return {row["name"]: float(row["value"]) for row in csv.DictReader(file)}


@cache
def heat_zones() -> tuple[HeatZone, ...]:
    """The classes of the published map, coolest first; their columns in the table hold days."""
    with resource("plants", "zones.csv").open(encoding="utf-8-sig", newline="") as file:
        return tuple(
            HeatZone(name=row["zone"], low=float(row["low_F"]), high=float(row["high_F"]))
            for row in csv.DictReader(file) if row["system"] == "AHS heat"
        )


def heat_zone(hot_days: float) -> HeatZone:
    """The class of so many days a year above 30 C; the upper limit belongs to it, none at all to zone 1."""
    zones = heat_zones()
    return next((zone for zone in zones if hot_days <= zone.high), zones[-1])


def site_heat(site: Site) -> SiteHeat | None:
    """Heat of the average year at a site; None while its monthly temperatures are not known."""
    monthly, figures = monthly_means_of(site), _figures()
    if monthly is None or len(monthly) != _MONTHS:
        return None
    first = day_of(f"{int(figures['first_month']):02d}-01")
    end = day_of(f"{int(figures['last_month']):02d}-31")
    turn = HALF_YEAR if site.southern else 0
    days = [(day - 1 + turn) % YEAR for day in range(first, end + 1)]
    base = figures["degree_day_base"]
    heat = expected_heat(daily_means(monthly)[days], base, parameter("scatter"))
    hot = _hot_days(site)
    return SiteHeat(
        degree_days=float(heat.sum()), base=base, hot_days=hot, zone=None if hot is None else heat_zone(hot)
    )


def _hot_days(site: Site) -> float | None:
    highs = site.monthly_highs
    if highs is None or len(highs) != _MONTHS:
        return None
    hot, scatter = _figures()["hot_day"], _figures()["high_scatter"]
    return float(sum(normal_share((high - hot) / scatter) for high in daily_means(highs)))
