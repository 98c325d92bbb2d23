"""Distances from what is there: buildings, lot line, septic works, lines, paving, water, streets."""

from __future__ import annotations

from yardplan.checks.check import Check
from yardplan.checks.clear import (
    beyond,
    buildings,
    laid_over,
    lines_above,
    lines_below,
    lot_line,
    paving,
    rows,
    septic,
    sight,
)
from yardplan.checks.finding import Finding
from yardplan.checks.shortfall import Limit
from yardplan.checks.survey import Survey
from yardplan.language import later

_PARTS = (
    buildings, lot_line, beyond, septic, lines_below, lines_above, paving, sight, rows, laid_over,
)


def run(survey: Survey) -> list[Finding]:
    """Findings on clearances at full size, whatever year is shown."""
    return [finding for part in _PARTS for finding in part.run(survey)]


def conflict_limits(survey: Survey, sort: str) -> list[Limit]:
    """Where the rules about one sort of feature make conflicts; the lot line's own are in `lot_line`."""
    found: list[Limit] = []
    if sort == "building":
        found.append(buildings.conflicts(survey))
    if sort in paving.SOLID:
        found.append(paving.conflicts(survey))
    if sort == "septic field":
        found.append(septic.field_conflicts(survey))
    if sort == "septic tank":
        found.append(septic.tank_conflicts(survey))
    if sort in lines_below.BURIED:
        found.append(lines_below.conflicts(survey))
    if sort == "overhead line":
        found.append(lines_above.conflicts(survey))
    return found


CHECK = Check(
    name="clearance",
    title=later("Clear of buildings, lines and neighbours"),
    run=run,
    wording={kind: words for part in _PARTS for kind, words in part.WORDING.items()},
    severity="care",
    severities={"law": "law", "ask_first": "law"},
)
