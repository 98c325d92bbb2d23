"""Room between plants, rows, beds and edges: crowns at full size (rules spacing-* and the gaps)."""

from __future__ import annotations

from yardplan.checks.check import Check
from yardplan.checks.finding import Finding
from yardplan.checks.room import beds, crowns, pairs, rows
from yardplan.checks.survey import Survey
from yardplan.language import later

_PARTS = (pairs, rows, beds, crowns)


def run(survey: Survey) -> list[Finding]:
    """Findings on room at full size, whatever year is shown."""
    return [finding for part in _PARTS for finding in part.run(survey)]


CHECK = Check(
    name="spacing",
    title=later("Room between plants"),
    run=run,
    wording={kind: words for part in _PARTS for kind, words in part.WORDING.items()},
)
