"""Currants and gooseberries under state law in the United States: what is barred, and what to ask."""

from __future__ import annotations

import csv
from functools import cache

from attrs import evolve, frozen

from yardplan.checks.check import Check, Wording
from yardplan.checks.clear.country import country_of, state_of
from yardplan.checks.finding import Figure, Finding, Weight
from yardplan.checks.grouping import grouped
from yardplan.checks.spots import Spot, spots
from yardplan.checks.survey import Survey
from yardplan.language import later
from yardplan.shipped import resource

NAME = "ribes law"
_GROUPS = ("ribes black", "ribes red")


@frozen
class StateRule:
    """What a state says of a group of plants; `barred` True where it forbids them outright."""

    barred: bool
    words: str
    source: str


@cache
def state_rules() -> dict[tuple[str, str], StateRule]:
    """The rules by state and group."""
    with resource("checks", "ribes-law.csv").open(encoding="utf-8", newline="") as file:
        return {
            (row["state"], row["plants"]): StateRule(row["barred"] == "yes", row["words"], row["source"])
            for row in csv.DictReader(file)
        }


def _finding(survey: Survey, spot: Spot, group: str, state: str) -> Finding:
    rule = state_rules().get((state, group))
    kind = "barred" if rule is not None and rule.barred else "limited" if rule is not None else "ask"
    weight = Weight.CONFLICT if kind == "barred" else Weight.CAUTION if kind == "limited" else Weight.ADVICE
    shown = {"law": Figure(rule.words, "text")} if rule is not None else {}
    made = survey.finding(NAME, kind, weight, (spot.id,), "ribes-pine-black", shown, (spot.mark,))
    return evolve(made, source=rule.source if rule is not None else "ribes-trade-list")


def run(survey: Survey) -> list[Finding]:
    """Findings on currants and gooseberries in the United States; elsewhere nothing is said."""
    if country_of(survey.yard.site) != "US":
        return []
    state = state_of(survey.yard.site)
    found = []
    for spot in spots(survey):
        group = next((name for name in _GROUPS if spot.planned and spot.in_group(name)), None)
        if group is not None:
            found.append(_finding(survey, spot, group, state))
    return grouped(found, ("law",))


CHECK = Check(
    name=NAME,
    title=later("Currants and the law"),
    run=run,
    near=False,
    places=False,
    severity="law",
    wording={
        "barred": Wording(
            "{law}. They host the blister rust of white pines: {things}.",
            "Choose another fruit, and check the state rule.",
            "barred by the state",
        ),
        "limited": Wording(
            "{law}: {things}.",
            "Ask the state's forest service before you buy plants.",
            "state rule on currants",
        ),
        "ask": Wording(
            "Some states limit currants and gooseberries for the sake of white pines: {things}.",
            "Check the state rule before you buy plants.",
            "check the state rule",
        ),
    },
)
