"""Figures that pollen, bloom, chill and frost are judged by: data with a source, replaceable in each yard."""

from __future__ import annotations

import csv
from collections.abc import Mapping
from functools import cache

from attrs import field, frozen

from yardplan.shipped import resource

#: Tables of figures in resources/pollen, all with the columns of the rules.
LIMIT_FILES = ("limits.csv", "ranges.csv")


@frozen
class Limit:
    """One figure as shipped: `low` and `high` bound what a yard may set in its place, all in `unit`."""

    value: float
    unit: str
    low: float
    high: float
    source: str


@cache
def shipped_limits() -> Mapping[str, Limit]:
    """The shipped figures by rule name."""
    found: dict[str, Limit] = {}
    for name in LIMIT_FILES:
        with resource("pollen", name).open(encoding="utf-8", newline="") as file:
            for row in csv.DictReader(file):
                found[row["rule"]] = Limit(
                    value=float(row["value"]), unit=row["unit"], low=float(row["low"]),
                    high=float(row["high"]), source=row["source"],
                )
    return found


def _none() -> Mapping[str, float]:
    return {}


@frozen
class Limits:
    """The figures in force: the shipped ones with a yard's local rules over them."""

    local: Mapping[str, float] = field(factory=_none, hash=False)

    def value(self, name: str) -> float:
        """The figure of that name in its unit. Raises KeyError when there is none.

        A local figure outside what the rule allows is not used.
        """
        shipped = shipped_limits()[name]
        own = self.local.get(name)
        return own if own is not None and shipped.low <= own <= shipped.high else shipped.value

    def known(self, name: str) -> bool:
        """True when there is a figure of that name."""
        return name in shipped_limits()

    def source(self, name: str) -> str:
        """Source id of the shipped figure."""
        return shipped_limits()[name].source
