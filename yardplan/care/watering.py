"""What a plant of this yard drinks in a midsummer week: by evapotranspiration, or the inch-a-week rule."""

from __future__ import annotations

import math
from collections.abc import Iterable
from functools import lru_cache

from yardplan.care.things import CareThing, area_of
from yardplan.care.water import coefficients, inch_a_week_litres, monthly_reference, weekly_litres
from yardplan.plants.catalogue import Catalogue
from yardplan.plants.growth import mature_size, size_at
from yardplan.units import System, format_volume
from yardplan.yard.planting import Bed, Row
from yardplan.yard.site import Site


@lru_cache(maxsize=8)
def peak_reference(site: Site) -> float | None:
    """Reference evapotranspiration of the thirstiest month, mm a day; None without monthly lows and highs."""
    if site.monthly_lows is None or site.monthly_highs is None:
        return None
    if len(site.monthly_lows) != 12 or len(site.monthly_highs) != 12:
        return None
    return max(monthly_reference(site.latitude, site.monthly_lows, site.monthly_highs))


def watered_area(thing: CareThing, spread: float) -> float:
    """Ground under a plant's crown, a whole row's strip, or a bed, m2."""
    if isinstance(thing.placed, Bed):
        return area_of(thing.placed)
    if isinstance(thing.placed, Row):
        return max(thing.length, spread) * spread
    return math.pi * spread**2 / 4


def litres_a_week(
    thing: CareThing, catalogue: Catalogue, site: Site, season: int, years: int | None = None
) -> float:
    """Litres in a midsummer week without rain, for the plant, the whole row or bed at its age.

    `years`: the age taken where the planting year is not set (None: full size).
    """
    age = thing.age(season)
    age = years if age is None else age
    full = mature_size(catalogue, thing.placed).spread
    spread = full if age is None else size_at(catalogue, thing.placed, max(age, 0)).spread
    area = watered_area(thing, spread)
    across = 2 * math.sqrt(area / math.pi)
    reference = peak_reference(site)
    if reference is None:
        return inch_a_week_litres(across)
    cover = min(1.0, (spread / full) ** 2) if full else 1.0
    return weekly_litres(across, coefficients(thing.crop.id).mid, reference, cover=cover)


def water_words(
    things: Iterable[CareThing], catalogue: Catalogue, site: Site, season: int, years: int | None,
    system: System,
) -> str:
    """The amount in words, a range over the plants: `40 to 65 L a plant in a dry midsummer week (rule)`."""
    given = list(things)
    amounts = [litres_a_week(thing, catalogue, site, season, years) for thing in given]
    low, high = format_volume(min(amounts), system), format_volume(max(amounts), system)
    amount = low if low == high else f"{low} to {high}"
    kinds = {type(thing.placed) for thing in given}
    each = {frozenset({Row}): "a row", frozenset({Bed}): "a bed"}.get(frozenset(kinds), "a plant")
    rule = "from evaporation here" if peak_reference(site) is not None else "inch-a-week rule"
    return f"about {amount} {each} in a dry midsummer week ({rule})"
