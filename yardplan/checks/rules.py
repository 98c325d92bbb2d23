"""The figures that checks measure against: data with a source, each replaceable in the yard (local rules)."""

from __future__ import annotations

import csv
from collections.abc import Mapping
from functools import cache
from pathlib import Path
from typing import get_args

from attrs import field, frozen

from yardplan.checks.finding import Figure, Measure, Severity
from yardplan.language import decimals, later, tr
from yardplan.plants.limits import LIMIT_FILES
from yardplan.shipped import resource
from yardplan.units import FOOT, INCH, POUND, US_GALLON

#: What one of the unit is in base units, and the measure of the result.
UNITS: dict[str, tuple[float, Measure]] = {
    "m": (1.0, "length"),
    later("ft"): (FOOT, "length"),
    later("in"): (INCH, "length"),
    later("sq ft"): (FOOT**2, "area"),
    later("share"): (1.0, "share"),
    later("times height"): (1.0, "share"),
    later("count"): (1.0, "count"),
    later("zones"): (1.0, "count"),
    later("years"): (1.0, "count"),
    later("months"): (1.0, "count"),
    later("hours"): (1.0, "hours"),
    later("days"): (1.0, "days"),
    later("C"): (1.0, "temperature"),
    later("C difference"): (1.0, "temperature difference"),
    "pH": (1.0, "ph"),
    later("litres"): (1.0, "volume"),
    later("US gal"): (US_GALLON, "volume"),
    later("lb/100 sq ft"): (POUND / (100 * FOOT**2), "weight"),
}


class RuleError(ValueError):
    """A rule that is not known, or a figure outside what the rule allows; said in words for a person."""


@frozen(kw_only=True)
class Rule:
    """One figure with its source; `low` and `high` are the allowed range of a local figure, in `unit`."""

    name: str
    value: float
    unit: str
    low: float
    high: float
    severity: Severity
    source: str
    note: str

    @property
    def measure(self) -> Measure:
        """What the figure measures."""
        return UNITS[self.unit][1]

    def in_base(self, value: float) -> float:
        """A figure in the rule's unit turned to base units."""
        return value * UNITS[self.unit][0]

    def checked(self, value: float) -> float:
        """The figure itself. Raises RuleError with the allowed range when it lies outside."""
        if not self.low <= value <= self.high:
            figures = (("value", value), ("low", self.low), ("high", self.high))
            raise RuleError(
                tr(
                    "{rule}: {value} is outside {low} to {high} {unit}", rule=self.name, unit=tr(self.unit),
                    **{name: decimals(f"{number:g}") for name, number in figures},
                )
            )
        return value


def _rule(row: Mapping[str, str], where: str) -> Rule:
    """One row of the table. Raises RuleError naming the file, row and column."""
    numbers: dict[str, float] = {}
    for column in ("value", "low", "high"):
        try:
            numbers[column] = float(row[column])
        except (TypeError, ValueError):
            raise RuleError(f"{where}, column {column}: '{row[column]}' is not a number") from None
    if row["unit"] not in UNITS:
        raise RuleError(f"{where}, column unit: '{row['unit']}' is not a unit of this table")
    if row["severity"] not in get_args(Severity):
        raise RuleError(f"{where}, column severity: '{row['severity']}' is not known")
    rule = Rule(
        name=row["rule"], unit=row["unit"], severity=row["severity"],  # type: ignore[arg-type]
        source=row["source"], note=row["note"], **numbers,
    )
    rule.checked(rule.value)
    return rule


def read_rules(path: Path) -> dict[str, Rule]:
    """The rules of a table by name. Raises RuleError at the first fault."""
    rules: dict[str, Rule] = {}
    with path.open(encoding="utf-8", newline="") as file:
        for number, row in enumerate(csv.DictReader(file), start=2):
            where = f"{path.name}, row {number}"
            rule = _rule(row, where)
            if rule.name in rules:
                raise RuleError(f"{where}: the rule {rule.name} stands there twice")
            rules[rule.name] = rule
    return rules


@cache
def shipped_rules() -> Mapping[str, Rule]:
    """The rules that come with the program."""
    return read_rules(resource("rules.csv"))


@cache
def shipped_figures() -> Mapping[str, Rule]:
    """Every figure a yard may set: the rules, then what pollen, bloom, chill and frost are judged by."""
    figures = dict(shipped_rules())
    for name in LIMIT_FILES:
        figures |= read_rules(resource("pollen", name))
    return figures


def _none() -> Mapping[str, float]:
    return {}


@frozen
class Rules:
    """The rules in force in one yard: the shipped table with the yard's local figures over it."""

    local: Mapping[str, float] = field(factory=_none)
    table: Mapping[str, Rule] = field(factory=shipped_rules)
    _values: dict[str, float] = field(init=False, factory=dict, repr=False, eq=False)

    def __attrs_post_init__(self) -> None:
        for name, rule in self.table.items():
            local = self.local.get(name)
            # A figure outside the allowed range is named by a finding and not used.
            usable = local is not None and rule.low <= local <= rule.high
            self._values[name] = rule.in_base(local if usable and local is not None else rule.value)

    def rule(self, name: str) -> Rule:
        """The rule of that name. Raises RuleError when there is none."""
        try:
            return self.table[name]
        except KeyError:
            raise RuleError(f"there is no rule named {name}") from None

    def value(self, name: str) -> float:
        """The figure in base units (metres, share, hours ...), the yard's own where it has one."""
        try:
            return self._values[name]
        except KeyError:
            raise RuleError(f"there is no rule named {name}") from None

    def figure(self, name: str) -> Figure:
        """The figure with its measure, ready for a finding."""
        return Figure(self.value(name), self.rule(name).measure)

    def is_local(self, name: str) -> bool:
        """True where the yard's own figure is in force."""
        rule, local = self.table.get(name), self.local.get(name)
        return rule is not None and local is not None and rule.low <= local <= rule.high

    def refused(self) -> tuple[str, ...]:
        """Names of local figures that cannot be used: outside the allowed range, or of no known rule."""
        return tuple(sorted(name for name in self.local if not self.is_local(name)))

    def source_of(self, name: str) -> str:
        """The source id behind a rule."""
        return self.rule(name).source
