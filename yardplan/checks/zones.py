"""Hardiness zones as half steps: reading them, their limits in C, and the RHS rating beside them.

A USDA zone is the mean of the coldest temperature of each year over 30 years, half a zone is 5 F.
"""

from __future__ import annotations

import csv
import re
from functools import cache

from attrs import frozen

from yardplan.shipped import resource

_ZONE = re.compile(r"(1[0-3]|[1-9])\s*([ab]?)", re.IGNORECASE)


@frozen(order=True)
class HalfZone:
    """A half zone by its number, 0 for 1a up to 25 for 13b."""

    step: int

    @property
    def name(self) -> str:
        """As printed: `6b`."""
        return f"{self.step // 2 + 1}{'ab'[self.step % 2]}"

    @property
    def coldest(self) -> float:
        """Lower limit, degrees C: it belongs to the zone."""
        return _limits()[self.name][0]

    @property
    def warmest(self) -> float:
        """Upper limit, degrees C: the first that no longer belongs to the zone."""
        return _limits()[self.name][1]


@cache
def _limits() -> dict[str, tuple[float, float]]:
    """Limits of each half zone in C, from the printed ones in F (the C of the map are rounded)."""
    with resource("plants", "zones.csv").open(encoding="utf-8-sig", newline="") as file:
        return {
            row["zone"]: ((float(row["low_F"]) - 32) / 1.8, (float(row["high_F"]) - 32) / 1.8)
            for row in csv.DictReader(file)
            if row["system"] == "USDA"
        }


def site_zone(text: str | None) -> HalfZone | None:
    """The half zone of a site; a whole zone counts as its colder half. None when unknown or unreadable."""
    return _read(text, "a")


def hardy_to(text: str | None) -> HalfZone | None:
    """The coldest half zone a plant stands: `4` covers all of zone 4."""
    return _read(text, "a")


def warm_to(text: str | None) -> HalfZone | None:
    """The warmest half zone a plant suits: `8` covers all of zone 8."""
    return _read(text, "b")


def _read(text: str | None, half: str) -> HalfZone | None:
    match = _ZONE.fullmatch(text.strip()) if text else None
    if match is None:
        return None
    letter = match[2].lower() or half
    return HalfZone((int(match[1]) - 1) * 2 + "ab".index(letter))


@cache
def _ratings() -> tuple[tuple[str, float], ...]:
    """RHS ratings with the lower limit in C of each, hardiest last; H7 has none."""
    with resource("plants", "zones.csv").open(encoding="utf-8-sig", newline="") as file:
        return tuple(
            (row["zone"], float(row["low_C"]) if row["low_C"] else float("-inf"))
            for row in csv.DictReader(file)
            if row["system"] == "RHS"
        )


def zone_span(text: str | None) -> tuple[float, float] | None:
    """Lower and upper limit in C of a zone as written: half a zone for `6b`, the whole of it for `6`."""
    low, high = hardy_to(text), warm_to(text)
    return None if low is None or high is None else (low.coldest, high.warmest)


def rating_limits(rating: str) -> tuple[float | None, float | None]:
    """Lower and upper limit in C of an RHS rating; None where it is open. Raises KeyError when not known."""
    with resource("plants", "zones.csv").open(encoding="utf-8-sig", newline="") as file:
        limits = {
            row["zone"]: tuple(float(row[name]) if row[name] else None for name in ("low_C", "high_C"))
            for row in csv.DictReader(file) if row["system"] == "RHS"
        }
    low, high = limits[rating]
    return low, high


def rating_needed(celsius: float) -> str:
    """The RHS rating of a plant that stands a temperature: `H6` for -18 C."""
    return next(name for name, low in _ratings() if celsius >= low)
