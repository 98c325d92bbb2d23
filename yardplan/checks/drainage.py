"""Drainage of the ground: woody roots do not stand in water, and the test that tells."""

from __future__ import annotations

from collections.abc import Iterator

from yardplan.checks.check import Check, Wording
from yardplan.checks.finding import Figure, Finding, Mark, Weight
from yardplan.checks.grouping import grouped
from yardplan.checks.groups import member
from yardplan.checks.rules import Rules
from yardplan.checks.soil_plan import Rooting, beds_of, rootings
from yardplan.checks.survey import Survey

NAME = "drainage"


def _raised(survey: Survey) -> dict[str, float]:
    """How far the bed of each plant (or the planted bed itself) is raised, metres."""
    raised = {plant: bed.raised for plant, bed in beds_of(survey).items()}
    return raised | {bed.id: bed.raised for bed in survey.yard.beds}


def weight_of(rules: Rules, rooting: Rooting, raised: float) -> Weight | None:
    """How much wet ground matters to a plant that roots there; `raised` metres above the ground around."""
    mound, slack = rules.value("poor-drainage-mound"), rules.value("clearance-tolerance")
    herbaceous = member("herbaceous", rooting.crop.id) is not None
    if rooting.home == "container" or herbaceous or raised >= mound - slack:
        return None
    tender = member("wet feet", rooting.crop.id) is not None
    if rooting.soil.drainage == "poor":
        return Weight.CONFLICT if tender else Weight.CAUTION
    return Weight.ADVICE if rooting.soil.drainage == "fair" and tender else None


def _wet(survey: Survey, rooting: Rooting, raised: float) -> Iterator[Finding]:
    weight = weight_of(survey.rules, rooting, raised)
    if weight is None or rooting.soil.drainage is None:
        return
    mound = survey.rules.value("poor-drainage-mound")
    shown = {
        "mound": Figure(mound, "length"), "crop": Figure(rooting.crop.name, "text"),
        "drainage": Figure(rooting.soil.drainage, "text"),
    }
    mark = Mark(rooting.outline, "point" if len(rooting.outline) == 1 else "line")
    yield survey.finding(NAME, "wet", weight, (rooting.id,), "poor-drainage-mound", shown, (mark,))


def run(survey: Survey) -> list[Finding]:
    """Findings on wet ground; one request for the drainage where it is not known."""
    raised = _raised(survey)
    grounded = [
        rooting for rooting in rootings(survey)
        if rooting.home != "container" and member("herbaceous", rooting.crop.id) is None
    ]
    found = grouped((f for r in grounded for f in _wet(survey, r, raised.get(r.id, 0.0))), ("drainage",))
    unknown = [rooting for rooting in grounded if rooting.soil.drainage is None]
    if unknown:
        shown = {"count": Figure(len(unknown), "count")}
        found.append(
            survey.finding(NAME, "drainage_missing", Weight.ADVICE, (), "poor-drainage-mound", shown)
        )
    return found


CHECK = Check(
    name=NAME,
    title="Drainage",
    run=run,
    near=False,
    wording={
        "wet": Wording(
            "The ground is of {drainage} drainage, and roots that stand in water suffer: {things}.",
            "Plant on a mound or in a bed raised {mound} or more, drain the ground, or choose a rootstock "
            "that bears wet soil.",
            "{drainage} drainage",
        ),
        "drainage_missing": Wording(
            "How the ground drains is not entered: it decides which plants need a mound or raised bed.",
            "Dig holes 18 inches (45 cm) deep and fill them: gone within an hour is good, standing over a "
            "day is poor. Enter it in the site card. Have buried lines marked first.",
            "test the drainage",
        ),
    },
)
