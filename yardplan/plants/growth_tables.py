"""The figures of growth as data: curves of the vigour classes, measured trees, sizes at planting."""

from __future__ import annotations

import math
from collections.abc import Mapping
from functools import cache
from types import MappingProxyType

from attrs import evolve, frozen

from yardplan.plants.tables import Row, Table
from yardplan.shipped import resource
from yardplan.units import FOOT


@frozen
class Curve:
    """A growth curve of one measure: share of full size at t years, 0 to 1."""

    p: float
    k: float

    def share(self, years: float) -> float:
        """Share of full size; 0 before planting."""
        return 0.0 if years <= 0 else float((1.0 - math.exp(-self.k * years)) ** self.p)


@frozen
class GrowthClass:
    """The curves of one vigour class; `years` to 95 percent of full size."""

    vigour: str
    years: float
    spread: Curve
    height: Curve
    sources: tuple[str, ...]

    def at_years(self, years_to_95: float) -> GrowthClass:
        """The same shape for another time to 95 percent."""
        faster = self.years / years_to_95
        return evolve(
            self, years=years_to_95,
            spread=Curve(self.spread.p, self.spread.k * faster),
            height=Curve(self.height.p, self.height.k * faster),
        )


@frozen
class Measured:
    """A curve fitted to measured trees, metres; not read beyond `valid` years."""

    start: float
    end: float
    k: float
    p: float
    valid: float

    def size(self, years: float) -> float:
        """Metres at t years since planting, held level beyond the ages that were measured."""
        t = min(max(years, 0.0), self.valid)
        return float(self.start + (self.end - self.start) * (1.0 - math.exp(-self.k * t)) ** self.p)


@frozen
class MeasuredKind:
    """Measured height and crown diameter of one tree group."""

    height: Measured
    spread: Measured
    sources: tuple[str, ...]


def _ids(row: Row) -> tuple[str, ...]:
    return tuple(cite.source for cite in row.cites())


@cache
def growth_classes() -> Mapping[str, GrowthClass]:
    """The vigour classes by name. Raises TableError when the file is bad."""
    found: dict[str, GrowthClass] = {}
    with Table(resource("plants", "growth-classes.csv"), ("vigour", "years_to_95", "sources")) as table:
        for row in table:
            years = row.real("years_to_95") or 1.0
            found[row.needed("vigour")] = GrowthClass(
                row.text("vigour"), years,
                Curve(row.real("spread_p"), row.real("spread_k_t95") / years),
                Curve(row.real("height_p"), row.real("height_k_t95") / years), _ids(row),
            )
    return MappingProxyType(found)


@cache
def measured_kinds() -> Mapping[str, MeasuredKind]:
    """The measured growth curves by species. Raises TableError when the file is bad."""
    halves: dict[str, dict[str, Measured]] = {}
    sources: dict[str, tuple[str, ...]] = {}
    with Table(resource("plants", "growth-curves.csv"), ("species", "variable", "a_m", "sources")) as table:
        for row in table:
            measure = row.one_of("variable", ("height", "crown diameter"))
            halves.setdefault(row.needed("species"), {})[measure] = Measured(
                row.real("s0_m"), row.real("a_m"), row.real("k_per_year"), row.real("p"),
                row.real("valid_to_age"),
            )
            sources[row.text("species")] = _ids(row)
    return MappingProxyType({
        species: MeasuredKind(half["height"], half["crown diameter"], sources[species])
        for species, half in halves.items() if len(half) == 2
    })


@frozen
class Adjustment:
    """How a trait of the cultivar changes the spread: a factor, and the limits of the combined factor."""

    factor: float
    lowest: float
    highest: float


@cache
def vigour_adjustments() -> Mapping[str, Adjustment]:
    """The adjustments by trait (middle of the printed range). Raises TableError when the file is bad."""
    found: dict[str, Adjustment] = {}
    with Table(resource("plants", "vigour-adjustment.csv"), ("trait", "sources")) as table:
        for row in table:
            percent = (row.real("spread_percent_low") + row.real("spread_percent_high")) / 2
            found[row.needed("trait")] = Adjustment(
                1 + percent / 100, row.real("combined_low"), row.real("combined_high")
            )
    return MappingProxyType(found)


@cache
def planting_sizes() -> Mapping[str, tuple[float, float]]:
    """Height and spread at planting by habit, metres. Raises TableError when the file is bad."""
    found: dict[str, tuple[float, float]] = {}
    with Table(resource("plants", "planting-sizes.csv"), ("stock", "habits", "sources")) as table:
        for row in table:
            height, spread = row.pair("height_ft", FOOT), row.pair("spread_ft", FOOT)
            if height is None or spread is None:
                row.fault("height_ft_low", "a size at planting needs height and spread")
                continue
            for habit in row.words("habits"):
                found[habit] = (sum(height) / 2, sum(spread) / 2)
    return MappingProxyType(found)


@cache
def limits() -> Mapping[str, float]:
    """The single figures of growth-limits.csv by name, metres and shares. Raises TableError."""
    with Table(resource("plants", "growth-limits.csv"), ("name", "value", "unit", "sources")) as table:
        found = {row.needed("name"): row.real("value") for row in table}
    return MappingProxyType(found)
