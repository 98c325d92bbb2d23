"""Whether a row of the care table applies to a plant: age, form, cane type, soil, container, zone, health."""

from __future__ import annotations

import csv
from collections.abc import Callable, Mapping, Sequence
from functools import cache

from yardplan.care.tables import LAST_YEAR, CareRow, rows_for
from yardplan.care.things import CareThing
from yardplan.checks.zones import site_zone
from yardplan.language import tr
from yardplan.shipped import resource
from yardplan.yard.site import Site

#: Words of the rootstock table for stocks that want a stake.
_STAKED = ("yes", "early years")
#: Plants named beside the years of work; a sheet has no room for more.
_MOST_NAMED = 3
_RESISTANT = ("resistant", "very resistant", "immune")


def by_age(row: CareRow, thing: CareThing, season: int) -> bool:
    """True when the plant is of an age for the task; an unknown planting year leaves every age open."""
    age = thing.age(season)
    if age is None:
        return True
    if age < 1 or (row.each_years > 1 and age % row.each_years != 0):
        return False
    return row.years[0] <= age <= row.years[1]


def age_words(row: CareRow, things: Sequence[CareThing]) -> str:
    """For which years a task is, where the planting year is not known: `years 1 to 3`.

    Year 1 is the planting year. Where that of others is known it names the plants it is said of, if they are
    few.
    """
    unknown = [thing.id for thing in things if thing.planted is None]
    years = _years_words(row) if unknown else ""
    if not years or len(unknown) == len(things):
        return years
    if len(unknown) > _MOST_NAMED:
        return tr("{years} where no planting year is given", years=years)
    return tr("{plants}: {years}", plants=", ".join(unknown), years=years)


def _years_words(row: CareRow) -> str:
    """The years of a row in words; nothing for work of all years."""
    first, last = max(row.years[0], 1), row.years[1]
    if last >= LAST_YEAR:
        return tr("from year {first}", first=first) if first > 1 else ""
    if first == last:
        return tr("planting year") if first == 1 else tr("year {first} only", first=first)
    return tr("years {first} to {last}", first=first, last=last)


def applies(row: CareRow, thing: CareThing, site: Site) -> bool:
    """True when every condition of the row holds; what is not known holds a condition open, never shut."""
    return all(_holds(word, thing, site) for word in row.only)


def _holds(word: str, thing: CareThing, site: Site) -> bool:
    name, _, value = word.partition("=")
    tests: dict[str, Callable[[], bool]] = {
        "ground": lambda: not thing.pot, "pot": lambda: thing.pot,
        "fruiting": lambda: thing.cultivar.sex != "male", "frost": lambda: not thing.pot,
        "staked": lambda: needs_stake(thing),
        "ph-high": lambda: thing.acidify, "spray": lambda: True,
        "habit": lambda: thing.habit in value.split(","),
        "type": lambda: _of_type(thing, value.split(",")),
        "problem": lambda: not _resists(thing, value.split(",")),
        "zone<": lambda: _cold(site, int(value)),
    }
    return tests[name]()


def needs_stake(thing: CareThing) -> bool:
    """True on a rootstock that the tables say never or at first does not stand alone."""
    return thing.stock is not None and thing.stock.support.startswith(_STAKED)


def _of_type(thing: CareThing, words: list[str]) -> bool:
    """A kind without a known type takes the usual one: summer-bearing canes, June-bearing strawberries."""
    kind = thing.cultivar.type.casefold()
    known = ("floricane", "primocane", "june-bearing", "day-neutral", "everbearing", "alpine")
    if not any(word in kind for word in known):
        return words[0] in ("floricane", "june-bearing")
    return any(word in kind for word in words)


def _cold(site: Site, warmest: int) -> bool:
    """True when the site's zone is that number or colder, or not known."""
    zone = site_zone(site.zone)
    return zone is None or zone.step < 2 * warmest


@cache
def _resistance() -> Mapping[tuple[str, str, str], str]:
    with resource("plants", "disease-resistance.csv").open(encoding="utf-8", newline="") as file:
        return {
            (row["crop"], row["cultivar"], row["problem"]): row["resistance"] for row in csv.DictReader(file)
        }


def resistance(thing: CareThing, problem: str) -> str:
    """How a variety stands a disease (`resistant`, `susceptible` ...); empty when not known."""
    return _resistance().get((thing.cultivar.crop, thing.cultivar.name, problem), "")


def _resists(thing: CareThing, problems: list[str]) -> bool:
    """True only when the variety is known to resist each of the diseases."""
    return all(resistance(thing, problem) in _RESISTANT for problem in problems)


def harvest_row(thing: CareThing, site: Site) -> CareRow | None:
    """The row that picking of a plant goes by, None when the care table has none."""
    return next((
        row for row in rows_for(thing.crop.id)
        if row.kind == "harvest" and row.start == 0 and row.end > 0 and applies(row, thing, site)
    ), None)
