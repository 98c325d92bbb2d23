"""What a change that is only tried would bring: findings that come and go, in one line under the field."""

from __future__ import annotations

from collections.abc import Sequence

from yardplan.checks.finding import Finding, Weight
from yardplan.checks.wording import names_of, say
from yardplan.language import tr, tr_n
from yardplan.window.open_yard import OpenYard

#: So many findings are named; of the others the number is told.
_NAMED = 2
_COUNTED = (Weight.CONFLICT, Weight.CAUTION)


def changes(before: Sequence[Finding], now: Sequence[Finding]) -> tuple[list[Finding], list[Finding]]:
    """Conflicts and cautions that came, and those that went; those not computed anew count as unchanged."""
    was = {finding.key: finding for finding in before if finding.weight in _COUNTED}
    stands = {finding.key: finding for finding in now if finding.weight in _COUNTED}
    came = [finding for key, finding in stands.items() if key not in was]
    return came, [finding for key, finding in was.items() if key not in stands]


def _named(open_yard: OpenYard, findings: Sequence[Finding]) -> str:
    names = names_of(open_yard.shown_yard)
    told = [say(finding, names, open_yard.units).title for finding in findings[:_NAMED]]
    more = len(findings) - len(told)
    return "; ".join([*told, *([tr_n("{n} more", "{n} more", more)] if more else [])])


def trial_words(open_yard: OpenYard, before: Sequence[Finding]) -> str:
    """What the change tried now would bring, against the findings before it."""
    came, went = changes(before, open_yard.findings)
    said = []
    if came:
        said.append(tr("New: {findings}.", findings=_named(open_yard, came)))
    if went:
        said.append(tr("Gone: {findings}.", findings=_named(open_yard, went)))
    if not said:
        said.append(tr("No conflict or caution more or less."))
    return " ".join([*said, tr("Enter takes it, Esc leaves it.")])
