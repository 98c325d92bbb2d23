"""Water in the ground: woody roots do not stand in it, shallow ones do not last without it."""

from __future__ import annotations

from collections.abc import Iterator

from yardplan.checks.check import Check, Wording
from yardplan.checks.finding import Figure, Finding, Mark, Weight
from yardplan.checks.grouping import grouped
from yardplan.checks.groups import member
from yardplan.checks.rules import Rules
from yardplan.checks.soil_plan import Rooting, beds_of, rootings
from yardplan.checks.survey import Survey
from yardplan.language import decimals, later, tr
from yardplan.units import INCH

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


def _dry(survey: Survey) -> Iterator[Finding]:
    """Shallow-rooted berries in ground that nothing waters; in containers it is the container rule's."""
    if survey.yard.site.irrigated is not False:
        return
    low, high = (survey.rules.value(name) for name in ("water-week-low", "water-week-high"))
    week = tr(
        "{low_in} to {high_in} in ({low} to {high} mm)", low=f"{low * 1000:.0f}", high=f"{high * 1000:.0f}",
        low_in=decimals(f"{low / INCH:g}"), high_in=decimals(f"{high / INCH:g}"),
    )
    for rooting in rootings(survey):
        if rooting.home != "container" and member("shallow berry", rooting.crop.id) is not None:
            mark = Mark(rooting.outline, "point" if len(rooting.outline) == 1 else "line")
            shown = {"week": Figure(week, "text")}
            yield survey.finding(NAME, "dry", Weight.ADVICE, (rooting.id,), "water-week-low", shown, (mark,))


def run(survey: Survey) -> list[Finding]:
    """Findings on wet and on dry ground; one request for the drainage where it is not known."""
    raised = _raised(survey)
    grounded = [
        rooting for rooting in rootings(survey)
        if rooting.home != "container" and member("herbaceous", rooting.crop.id) is None
    ]
    found = grouped((f for r in grounded for f in _wet(survey, r, raised.get(r.id, 0.0))), ("drainage",))
    found += grouped(_dry(survey))
    unknown = [rooting for rooting in grounded if rooting.soil.drainage is None]
    if unknown:
        shown = {"count": Figure(len(unknown), "count")}
        found.append(
            survey.finding(NAME, "drainage_missing", Weight.ADVICE, (), "poor-drainage-mound", shown)
        )
    return found


CHECK = Check(
    name=NAME,
    title=later("Wet and dry ground"),
    run=run,
    near=False,
    wording={
        "wet": Wording(
            "The ground is of {drainage} drainage, and roots that stand in water suffer: {things}.",
            "Plant on a mound or in a bed raised {mound} or more, drain the ground, or choose a rootstock "
            "that bears wet soil.",
            "{drainage} drainage",
        ),
        "dry": Wording(
            "The site card says that nothing is watered here, and shallow roots want {week} of water a week "
            "while they grow and fruit: {things}.",
            "Lay a drip line or keep a hose within reach and say so in the site card; mulch keeps the ground "
            "moist.",
            "wants water every week",
        ),
        "drainage_missing": Wording(
            "How the ground drains is not entered: it decides which plants need a mound or raised bed.",
            "Dig holes 18 inches (45 cm) deep and fill them: gone within an hour is good, standing over a "
            "day is poor. Enter it in the site card. Have buried lines marked first.",
            "test the drainage",
        ),
    },
)
