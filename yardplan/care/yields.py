"""How much a plant bears: full crop of its form, and the share of it in each year after planting.

Shapes between a first crop and the full one are mostly from memory (yield-by-age.csv says which): estimates.
"""

from __future__ import annotations

import csv
from collections.abc import Mapping
from functools import cache

import numpy as np
from attrs import frozen

from yardplan.care.tables import rows_of
from yardplan.care.things import CareThing, area_of
from yardplan.plants.cultivar import MEMORY
from yardplan.shipped import resource
from yardplan.units import FOOT
from yardplan.yard.planting import Bed, Row

#: Ten feet of row or bed, and ten square feet: the units in which berries are printed.
_TEN_FEET = 10 * FOOT
_TEN_SQUARE_FEET = 10 * FOOT**2


@frozen
class Ramp:
    """Shares (0 to 1) of the full crop by year from planting, 1 the first; `sources` vouch for it."""

    years: tuple[float, ...]
    shares: tuple[float, ...]
    sources: tuple[str, ...] = (MEMORY,)

    def share(self, year: int) -> float:
        """Share of the full crop in a year; nothing before the first, the last value after the last."""
        if year < 1:
            return 0.0
        return float(np.interp(year, self.years, self.shares, left=0.0))


@cache
def _ramps() -> Mapping[tuple[str, str], Ramp]:
    rows: dict[tuple[str, str], list[tuple[float, float, str]]] = {}
    with resource("plants", "yield-by-age.csv").open(encoding="utf-8", newline="") as file:
        for row in csv.DictReader(file):
            year, share = float(row["year_from_planting"]), float(row["percent_of_full_crop"]) / 100
            rows.setdefault((row["crop"], row["form"]), []).append((year, share, row["sources"]))
    return {
        key: Ramp(
            tuple(year for year, _, _ in found), tuple(share for _, share, _ in found),
            tuple(part.split("(")[0].strip() for part in found[0][2].split(";")),
        )
        for key, found in rows.items()
    }


@cache
def _named_rows() -> tuple[dict[str, str], ...]:
    return tuple(rows_of("yield-rows.csv"))


def ramp_for(thing: CareThing) -> Ramp:
    """The ramp of a plant's kind and vigour; without a row, straight from its first to its full crop."""
    vigour = thing.stock.vigour if thing.stock is not None else thing.form.vigour if thing.form else ""
    for row in _named_rows():
        fits = row["vigour"] in ("", vigour) and row["type"] in thing.cultivar.type
        if row["crop"] == thing.crop.id and fits:
            return _ramps()[(row["row_crop"], row["row_form"])]
    first, full = _years(thing)
    return Ramp((first - 1, full), (0.0, 1.0)) if full > first - 1 else Ramp((first - 1, first), (0.0, 1.0))


def _years(thing: CareThing) -> tuple[float, float]:
    """Years to the first and the full crop by stock or form; where nothing is known, a tree's usual ones."""
    for known in (thing.stock, thing.form):
        if known is not None and known.years_to_first_crop and known.years_to_full_crop:
            return known.years_to_first_crop[0], known.years_to_full_crop[1]
    return 3.0, 8.0


def full_crop(thing: CareThing) -> tuple[float, float] | None:
    """Kilograms (low, high) of the whole planting in full crop; None when no yield is published."""
    form = thing.form
    if form is None or form.yield_kg is None or thing.cultivar.sex == "male":
        return None if form is None or form.yield_kg is None else (0.0, 0.0)
    units = _units(thing, form.yield_per)
    return form.yield_kg[0] * units, form.yield_kg[1] * units


def _units(thing: CareThing, per: str) -> float:
    """How many plants, ten feet of row or ten square feet a planting has."""
    if per.startswith("10 ft"):
        return _row_length(thing) / _TEN_FEET
    if per == "10 sq ft":
        placed = thing.placed
        area = area_of(placed) if isinstance(placed, Bed) else thing.count * thing.mature.spread**2
        return area / _TEN_SQUARE_FEET
    return float(thing.count)


def _row_length(thing: CareThing) -> float:
    """Metres of row: a row's own, a bed's area by the distance of rows, or one plant's place in a row."""
    form = thing.form
    if isinstance(thing.placed, Row):
        return max(thing.length, thing.placed.spacing)
    if isinstance(thing.placed, Bed):
        between = form.between_rows[0] if form is not None and form.between_rows else thing.mature.spread
        return area_of(thing.placed) / between if between else 0.0
    return form.in_row[0] if form is not None and form.in_row else thing.mature.spread


def kilograms(thing: CareThing, age: int | None) -> tuple[float, float] | None:
    """Kilograms (low, high) at an age, 1 in the planting year; None age: full crop."""
    full = full_crop(thing)
    if full is None or age is None:
        return full
    share = ramp_for(thing).share(age)
    return full[0] * share, full[1] * share
