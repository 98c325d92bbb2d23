"""What the plants of this yard drink in a week of each month: by evapotranspiration, or an inch a week."""

from __future__ import annotations

import datetime as dt
import math
from collections.abc import Iterable, Sequence
from functools import lru_cache

from attrs import evolve, frozen

from yardplan.care.season import Season
from yardplan.care.things import CareThing, area_of
from yardplan.care.water import (
    coefficients,
    container_litres_a_day,
    figures,
    inch_a_week_litres,
    monthly_reference,
    stages,
    weekly_litres,
)
from yardplan.language import later, tr
from yardplan.plants.catalogue import Catalogue
from yardplan.plants.crop import Size
from yardplan.plants.growth import mature_size, size_at
from yardplan.units import System, format_volume
from yardplan.yard.planting import Bed, Row
from yardplan.yard.site import Site

_MID_MONTH = 15
_OTHER: dict[System, System] = {"metric": "imperial", "imperial": "metric"}


@frozen(kw_only=True)
class WaterNeed:
    """What one plant, a whole row or a bed is given in a dry week of each month.

    `things` ids that share the figures; `weeks` (first day of the month, litres a week) in order, empty
    where they are not known; `across` diameter of the watered ground, metres; `rule` True by the
    inch-a-week rule; `estimate` True where no table has the kind.
    """

    things: tuple[str, ...]
    what: str
    each: str
    across: float
    weeks: tuple[tuple[dt.date, float], ...]
    rule: bool = False
    estimate: bool = False

    @property
    def most(self) -> float:
        """Litres of the thirstiest week; 0 where nothing is known."""
        return max((litres for _, litres in self.weeks), default=0.0)


@lru_cache(maxsize=8)
def references(site: Site) -> tuple[float, ...] | None:
    """Reference evapotranspiration of the twelve months, mm a day; None without monthly lows and highs."""
    if site.monthly_lows is None or site.monthly_highs is None:
        return None
    if len(site.monthly_lows) != 12 or len(site.monthly_highs) != 12:
        return None
    return monthly_reference(site.latitude, site.monthly_lows, site.monthly_highs)


def watered_area(thing: CareThing, size: Size) -> float:
    """Ground that a plant of that size, a whole row or a bed drinks from, m2.

    A crown takes the ground under it, a wall of leaves (cordon, espalier, vine on wires) ground half as
    deep as it is high.
    """
    if isinstance(thing.placed, Bed):
        return area_of(thing.placed)
    deep = size.spread if size.depth is None else max(size.depth, figures()["leaf wall"] * size.height)
    if isinstance(thing.placed, Row):
        return thing.count * min(thing.placed.spacing, size.spread) * deep
    return size.spread * deep if size.depth is not None else math.pi * size.spread**2 / 4


def water_need(thing: CareThing, catalogue: Catalogue, season: Season, years: int | None = None) -> WaterNeed:
    """What a thing is given in the weeks of a season, at its age.

    `years`: the age taken where the planting year is not set (None: full size).
    """
    age = thing.age(season.year)
    age = years if age is None else age
    full = mature_size(catalogue, thing.placed)
    size = full if age is None else size_at(catalogue, thing.placed, max(age, 0))
    area, whole = watered_area(thing, size), watered_area(thing, full)
    across = 2 * math.sqrt(area / math.pi)
    return WaterNeed(
        things=(thing.id,), what=thing.name, each=_each(thing), across=across,
        weeks=_weeks(thing, season, across, min(1.0, area / whole) if whole else 1.0),
        rule=references(season.site) is None and not thing.pot,
        estimate=coefficients(thing.crop.id).estimate,
    )


def _each(thing: CareThing) -> str:
    if isinstance(thing.placed, Row):
        return "row"
    return "bed" if isinstance(thing.placed, Bed) else "pot" if thing.pot else "plant"


def _weeks(
    thing: CareThing, season: Season, across: float, cover: float
) -> tuple[tuple[dt.date, float], ...]:
    """Litres of a dry week by month, months with none left out. A pot's are not known without a climate.

    None is given once the leaves are down, where the first frost is known: cold ends a short season before
    the days of the stages are over.
    """
    known = references(season.site)
    if known is None and thing.pot:
        return ()
    crop, course = coefficients(thing.crop.id), stages(thing.crop.id, season.site.latitude)
    start = season.find(course.start, thing.cultivar) or season.last_frost
    bare = None if course.rest or season.leaf_fall.by_month else season.leaf_fall.first
    found = []
    for month in _months(start.first):
        if bare is not None and month > bare > start.first:
            break
        factor = course.coefficient(crop, (month.replace(day=_MID_MONTH) - start.first).days)
        if factor <= 0:
            continue
        if known is None:
            litres = inch_a_week_litres(across)
        elif thing.pot:
            litres = 7 * container_litres_a_day(across, factor, known[month.month - 1])
        else:
            litres = weekly_litres(across, factor, known[month.month - 1], cover=cover)
        found.append((month, litres))
    return tuple(found)


def _months(start: dt.date) -> list[dt.date]:
    """The first days of twelve months, from that of a date on."""
    first = start.year * 12 + start.month - 1
    return [dt.date(number // 12, number % 12 + 1, 1) for number in range(first, first + 12)]


def water_needs(
    things: Iterable[CareThing], catalogue: Catalogue, season: Season, years: int | None = None
) -> list[WaterNeed]:
    """The needs of all things; those of one kind that get the same stand together. `years` as before."""
    found: dict[tuple[object, ...], WaterNeed] = {}
    for thing in things:
        need = water_need(thing, catalogue, season, years)
        key = (thing.key, need.each, tuple((month, round(litres, 1)) for month, litres in need.weeks))
        same = found.get(key)
        found[key] = need if same is None else evolve(same, things=same.things + need.things)
    return list(found.values())


def both(litres: float, system: System) -> str:
    """A volume in the units asked for, the others beside: `54 L (14 gal)`."""
    return f"{format_volume(litres, system)} ({format_volume(litres, _OTHER[system])})"


def _range(low: float, high: float, system: System) -> str:
    """`54 to 71 L (14 to 19 gal)`, or one figure where both are said alike."""
    ends = [[format_volume(one, units) for one in (low, high)] for units in (system, _OTHER[system])]
    here, there = (one if one == other else tr("{low} to {high}", low=one.rpartition(" ")[0], high=other)
                   for one, other in ends)
    return f"{here} ({there})"


def water_words(needs: Sequence[WaterNeed], system: System) -> str:
    """The thirstiest week in words: `about 40 to 65 L (11 to 17 gal) a plant in a dry midsummer week`."""
    known = [need.most for need in needs if need.weeks]
    if not known:
        return ""
    amount = _range(min(known), max(known), system)
    kinds = {need.each for need in needs}
    rule = tr("inch-a-week rule") if any(need.rule for need in needs) else tr("from evaporation here")
    if kinds == {"row"}:
        return tr("about {amount} a row in a dry midsummer week ({rule})", amount=amount, rule=rule)
    if kinds == {"pot"}:
        return tr("about {amount} a pot in a dry midsummer week ({rule})", amount=amount, rule=rule)
    if kinds == {"bed"}:
        return tr("about {amount} a bed in a dry midsummer week ({rule})", amount=amount, rule=rule)
    return tr("about {amount} a plant in a dry midsummer week ({rule})", amount=amount, rule=rule)


def week_lines(needs: Sequence[WaterNeed], first: dt.date, last: dt.date, system: System) -> tuple[str, ...]:
    """A line for each need: `A1, A2 Idared: May 24 L (6.3 gal), June 40 L (11 gal) a week`."""
    lines = []
    for need in needs:
        within = [
            (month, litres) for month, litres in need.weeks
            if (month.year, month.month) >= (first.year, first.month) and month <= last
        ]
        if within:
            weeks = ", ".join(f"{month_word(month.month)} {both(litres, system)}" for month, litres in within)
            lines.append(tr("{keys} {plant}: {amounts} a week", keys=", ".join(need.things), plant=need.what,
                            amounts=weeks))
    return tuple(lines)


def month_word(number: int) -> str:
    """A month's short name."""
    return tr(_MONTHS[number - 1])


_MONTHS = (
    later("Jan"), later("Feb"), later("Mar"), later("Apr"), later("May"), later("June"), later("July"),
    later("Aug"), later("Sept"), later("Oct"), later("Nov"), later("Dec"),
)
