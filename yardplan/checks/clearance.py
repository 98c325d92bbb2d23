"""Distances from what is there: buildings, lot line, septic works, lines, paving, water, streets."""

from __future__ import annotations

from yardplan.checks.check import Check
from yardplan.checks.clear import buildings, lines_above, lines_below, lot_line, paving, septic, sight
from yardplan.checks.finding import Finding
from yardplan.checks.survey import Survey

_PARTS = (buildings, lot_line, septic, lines_below, lines_above, paving, sight)


def run(survey: Survey) -> list[Finding]:
    """Findings on clearances at full size, whatever year is shown."""
    return [finding for part in _PARTS for finding in part.run(survey)]


CHECK = Check(
    name="clearance",
    title="Clear of buildings, lines and neighbours",
    run=run,
    wording={kind: words for part in _PARTS for kind, words in part.WORDING.items()},
)
