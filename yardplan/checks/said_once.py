"""What is said of many plants alike is said once: findings that share a title, with the first of them."""

from __future__ import annotations

from collections.abc import Iterable

from yardplan.checks.finding import Finding, Weight

#: Checks that say the same of every plant of a variety.
_OF_VARIETIES = frozenset({"pollination", "known", "bloom", "chill"})


def said_alike(titled: Iterable[tuple[Finding, str]]) -> list[tuple[int, ...]]:
    """Numbers of the findings that one card or line holds, in the order of the first of each.

    `titled`: findings with their titles. A conflict always stands for itself.
    """
    groups: dict[tuple[object, ...], list[int]] = {}
    for number, (finding, title) in enumerate(titled):
        alike = (
            finding.check in _OF_VARIETIES and finding.weight is not Weight.CONFLICT
            and len(finding.things) == 1
        )
        key = (finding.check, finding.kind, finding.weight, title) if alike else (number,)
        groups.setdefault(key, []).append(number)
    return [tuple(group) for group in groups.values()]
