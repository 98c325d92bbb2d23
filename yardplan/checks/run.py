"""All checks of the house and the run that gathers their findings in a steady order."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Iterator, Mapping, Sequence

from attrs import evolve

from yardplan.checks import (
    access,
    air,
    beds,
    bloom,
    chill,
    clearance,
    containers,
    drainage,
    frost,
    hardiness,
    known,
    light,
    neighbours,
    pollination,
    ribes_law,
    ripening,
    rotation,
    soil,
    spacing,
)
from yardplan.checks.check import Check
from yardplan.checks.finding import Finding, Weight
from yardplan.checks.ordering import natural_all
from yardplan.checks.survey import Survey
from yardplan.yard.change import Change

#: Every check, in the order in which findings of one weight are listed.
CHECKS: tuple[Check, ...] = (
    spacing.CHECK, clearance.CHECK, light.CHECK, pollination.CHECK, hardiness.CHECK,
    chill.CHECK, frost.CHECK, bloom.CHECK, ripening.CHECK, soil.CHECK, neighbours.CHECK,
    ribes_law.CHECK, access.CHECK, beds.CHECK,
    containers.CHECK, drainage.CHECK, rotation.CHECK, air.CHECK, known.CHECK,
)

_ORDER = {Weight.CONFLICT: 0, Weight.CAUTION: 1, Weight.ADVICE: 2}


def in_order(findings: Iterable[Finding]) -> list[Finding]:
    """Findings by weight, then check, then the keys of their things."""
    rank = {check.name: number for number, check in enumerate(CHECKS)}
    return sorted(
        findings,
        key=lambda f: (
            _ORDER[f.weight], rank.get(f.check, len(rank)), natural_all(f.things), f.kind,
        ),
    )


def _applies(check: Check, survey: Survey, near_only: bool) -> bool:
    if check.light and survey.light is None:
        return False
    return check.near or not near_only


def _may_hold(check: Check, finding: Finding, change: Change | None, survey: Survey) -> bool:
    """True when a finding that was not computed again holds all the same: nothing it speaks of changed."""
    if change is None or check.light:
        return False
    plants_only = change.only_moves and change.moved <= survey.plants.keys()
    return plants_only and change.moved.isdisjoint(finding.things)


def _taken_over(
    check: Check, before: Sequence[Finding], change: Change | None, survey: Survey
) -> Iterator[Finding]:
    """Findings of before; pale (not fresh) where they may no longer hold, none of things that are gone."""
    gone = change.removed if change is not None else frozenset()
    unmoved = change is not None and change.only_moves and not check.places
    for finding in before:
        if not gone.isdisjoint(finding.things):
            continue
        holds = unmoved or not finding.fresh or _may_hold(check, finding, change, survey)
        yield finding if holds else evolve(finding, fresh=False)


def findings(
    survey: Survey, *, near_only: bool = False, change: Change | None = None,
    previous: Sequence[Finding] | None = None,
) -> list[Finding]:
    """Everything the checks find, sorted by weight, check and keys.

    `near_only`: only the quick checks are run. With `previous` (the findings shown so far) the findings of
    checks left out are taken over, as are those of checks that do not look at places while `change` holds
    only moves; the former are marked as not fresh. Checks that read light wait until the survey has it.
    """
    found: list[Finding] = []
    before: dict[str, list[Finding]] = {}
    for finding in previous or ():
        before.setdefault(finding.check, []).append(finding)
    for check in CHECKS:
        unmoved = change is not None and change.only_moves and not check.places and previous is not None
        if not unmoved and _applies(check, survey, near_only):
            found.extend(check.run(survey))
        else:
            found.extend(_taken_over(check, before.get(check.name, ()), change, survey))
    return in_order(found)


def counts(found: Iterable[Finding]) -> Mapping[Weight, int]:
    """How many conflicts, cautions and advices."""
    tally = Counter(finding.weight for finding in found)
    return {weight: tally[weight] for weight in Weight}
