"""How far pollen is carried: best and outer distance per crop and tree size, trunk to trunk."""

from __future__ import annotations

import re
from functools import cache
from typing import Literal

from attrs import frozen

from yardplan.language import later
from yardplan.plants.limits import Limits
from yardplan.plants.pollen_reason import PollenPlace, Reason
from yardplan.units import format_coarse

SizeClass = Literal["dwarf", "semi-dwarf", "standard"]
SIZES: tuple[SizeClass, ...] = ("dwarf", "semi-dwarf", "standard")


@frozen(kw_only=True)
class PollenRange:
    """Up to `best` metres without remark, up to `outer` with one, beyond not counted."""

    best: float
    outer: float
    source: str


def size_class(height: float, limits: Limits) -> SizeClass:
    """Size class of a tree for pollen range, from its height at maturity in metres."""
    if height <= limits.value("pollen-dwarf-height"):
        return "dwarf"
    return "semi-dwarf" if height <= limits.value("pollen-semi-height") else "standard"


@cache
def _slug(crop: str) -> str:
    return re.sub(r"[^a-z]+", "-", crop.lower()).strip("-")


def pollen_range(crop: str, size: SizeClass, limits: Limits) -> PollenRange:
    """The range for a receiving crop and size class; crops without a row of their own take the common one."""
    for tail in (f"{_slug(crop)}-{size}", _slug(crop), "other"):
        if limits.known(f"pollen-best-{tail}"):
            best, outer = limits.value(f"pollen-best-{tail}"), limits.value(f"pollen-outer-{tail}")
            source = limits.source(f"pollen-outer-{tail}")
            return PollenRange(best=best, outer=max(best, outer), source=source)
    raise KeyError(crop)


def smaller(one: SizeClass, other: SizeClass) -> SizeClass:
    """The smaller of two size classes: it sets the range of a pair."""
    return min(one, other, key=SIZES.index)


def distance_step(crop: str, size: SizeClass, distance: float | None, place: PollenPlace) -> Reason:
    """Step 6: is the donor near enough, trunk to trunk?"""
    reach = pollen_range(crop, size, place.limits)
    figures: dict[str, float | str] = {
        "best": format_coarse(reach.best, place.units), "outer": format_coarse(reach.outer, place.units),
    }
    if distance is None:
        return Reason(step="distance", result="unknown", source=reach.source, figures=figures,
                      template=later("not measured: best within {best}, not counted beyond {outer}, trunk to "
                                     "trunk"))
    figures |= {"metres": distance, "apart": format_coarse(distance, place.units)}
    if distance <= reach.best:
        return Reason(step="distance", result="passed", source=reach.source, figures=figures,
                      template=later("{apart} apart, within {best}"))
    if distance <= reach.outer:
        return Reason(step="distance", result="weak", source=reach.source, figures=figures,
                      template=later("{apart} apart: beyond {best} set falls off"))
    return Reason(step="distance", result="failed", source=reach.source, figures=figures,
                  template=later("{apart} apart, beyond {outer}"))
