"""Soil: the pH range of each crop against ground, bed or container, with the amounts that mend it."""

from __future__ import annotations

from yardplan.checks.check import Check, Wording
from yardplan.checks.finding import Figure, Finding, Mark, Weight
from yardplan.checks.grouping import grouped
from yardplan.checks.soil_plan import Rooting, SoilPlan, acid_loving, instead_of, limy, soil_plans
from yardplan.checks.survey import Survey
from yardplan.language import later
from yardplan.yard.ground import Outline

NAME = "soil"

#: Findings of one kind are said together where these figures agree.
_ALIKE = ("home", "ph", "low", "high", "goal", "depth", "months", "dressings")
_HOMES = {"ground": later("ground"), "bed": later("bed"), "container": later("container")}
_DRESSINGS = {1: later("one dressing"), 2: later("two dressings"), 3: later("three dressings")}


def _mark(outline: Outline) -> Mark:
    shape = "point" if len(outline) == 1 else "line" if len(outline) == 2 else "area"
    return Mark(outline, shape)  # type: ignore[arg-type]


def _ph(rooting: Rooting) -> dict[str, Figure]:
    low, high = rooting.crop.ph or (0.0, 14.0)
    shown = {
        "crop": Figure(rooting.crop.name, "text"), "low": Figure(low, "ph"), "high": Figure(high, "ph"),
        "home": Figure(_HOMES[rooting.home], "text"),
    }
    if rooting.soil.ph is not None:
        shown["ph"] = Figure(rooting.soil.ph, "ph")
    return shown


def _amounts(plan: SoilPlan) -> dict[str, Figure]:
    if plan.amount is None or plan.goal is None:
        return {}
    return {
        "least": Figure(plan.amount.low, "weight"),
        **({"most": Figure(plan.amount.high, "weight")} if plan.amount.high > plan.amount.low else {}),
        "goal": Figure(plan.goal, "ph"), "area": Figure(plan.rooting.area, "area"),
        "depth": Figure(plan.rooting.depth, "length"), "gap": Figure(plan.gap, "ph"),
        "months": Figure(plan.dressings[0].months, "count"),
        "dressings": Figure(_DRESSINGS[len(plan.dressings)], "text"),
    }


def _made(
    survey: Survey, plan: SoilPlan, kind: str, weight: Weight, rule: str, more: dict[str, Figure]
) -> Finding:
    rooting = plan.rooting
    return survey.finding(
        NAME, kind, weight, (rooting.id,), rule, _ph(rooting) | more, (_mark(rooting.outline),)
    )


def _acidify(survey: Survey, plan: SoilPlan) -> Finding:
    """Sulfur: a caution, with the way to more acid by peat where sulfur alone will hardly do."""
    acid = acid_loving(plan.rooting.crop)
    ph = plan.rooting.soil.ph or 0.0
    hard = acid and ph > survey.rules.value("ph-warn-acidify")
    kind = "acidify_hard" if hard else "acidify"
    weight = Weight.CAUTION if acid or plan.gap > survey.rules.value("ph-far") else Weight.ADVICE
    rule = "ph-warn-acidify" if hard else "sulfur-one-dose"
    shown = _amounts(plan) | {"retest": survey.rules.figure("sulfur-retest")}
    return _made(survey, plan, kind, weight, rule, shown)


def is_conflict(plan: SoilPlan) -> bool:
    """True where a crop that needs acid soil would root in ground that cannot be made acid."""
    return plan.way == "bed" and plan.rooting.home != "container" and acid_loving(plan.rooting.crop)


def _bed(survey: Survey, plan: SoilPlan) -> Finding:
    """Ground that cannot be made acid: the bed or container that would do, with its size and fill."""
    rooting, value = plan.rooting, survey.rules.value
    free_lime = limy(rooting.soil, survey.rules)
    instead = instead_of(plan, survey.rules)
    if instead is None:
        weight = Weight.CAUTION if plan.gap > value("ph-far") else Weight.ADVICE
        return _made(survey, plan, "limy", weight, "ph-limy", {"gap": Figure(plan.gap, "ph")})
    shown = {
        "depth": Figure(instead.depth, "length"), "area": Figure(instead.area, "area"),
        "fill": Figure(instead.fill, "volume"),
        "pot": survey.rules.figure("container-blueberry"),
    }
    kind = "needs_bed_lime" if free_lime else "needs_bed"
    return _made(survey, plan, kind, Weight.CONFLICT, "ph-limy" if free_lime else "ph-no-acidify", shown)


def _lime(survey: Survey, plan: SoilPlan) -> Finding:
    weight = Weight.CAUTION if plan.gap > survey.rules.value("ph-far") else Weight.ADVICE
    shown = _amounts(plan)
    if len(plan.dressings) > 1:
        shown["between"] = survey.rules.figure("lime-between")
    return _made(survey, plan, "lime", weight, "lime-one-dose", shown)


def _missing(survey: Survey, plans: list[SoilPlan]) -> list[Finding]:
    """One request for the pH that decides something, and one for the texture where amounts hang on it."""
    found = []
    unknown = [plan for plan in plans if plan.way == "unknown"]
    if unknown:
        sour = [plan.rooting.id for plan in unknown if acid_loving(plan.rooting.crop)]
        shown = {"count": Figure(len(unknown), "count")}
        kind = "ph_missing_acid" if sour else "ph_missing"
        weight = Weight.CAUTION if sour else Weight.ADVICE
        found.append(survey.finding(NAME, kind, weight, tuple(sour), "ph-margin", shown))
    vague = tuple(p.rooting.id for p in plans if p.amount is not None and p.rooting.soil.texture is None)
    if vague:
        shown = {"count": Figure(len(vague), "count")}
        found.append(survey.finding(NAME, "texture_missing", Weight.ADVICE, (), "ph-margin", shown))
    return found


def _repot(survey: Survey, plan: SoilPlan) -> Finding:
    """A container whose mix does not suit is filled anew, not mended."""
    weight = Weight.CAUTION if plan.gap > survey.rules.value("ph-margin") else Weight.ADVICE
    return _made(survey, plan, "repot", weight, "ph-margin", {})


def _found(survey: Survey, plan: SoilPlan) -> Finding | None:
    if plan.way in ("fits", "unknown"):
        return None
    if plan.rooting.home == "container":
        return _repot(survey, plan)
    return {"acidify": _acidify, "bed": _bed, "lime": _lime}[plan.way](survey, plan)


def run(survey: Survey) -> list[Finding]:
    """Findings on soil, and requests for the facts that would decide."""
    plans = soil_plans(survey)
    each = [made for plan in plans if (made := _found(survey, plan)) is not None]
    found = grouped(each, _ALIKE, ("least", "most", "area"))
    return [*found, *_missing(survey, plans)]


_SULFUR = later(
    "Work {least}[ to {most}] of elemental sulfur into {area}, {depth} deep, {months} months before "
    "planting, in {dressings}; test again after {retest} months and before each further one."
)

CHECK = Check(
    name=NAME,
    title=later("Soil"),
    run=run,
    near=False,
    wording={
        "acidify": Wording(
            "The {home} has pH {ph} where {low} to {high} is wanted: {things}.",
            _SULFUR,
            "soil pH {ph} too high",
        ),
        "acidify_hard": Wording(
            "The {home} has pH {ph} where {low} to {high} is wanted: {things}. Above pH 6 sulfur alone will "
            "hardly do: much peat or bark is needed besides, and it must be kept up every year.",
            "Work {least}[ to {most}] of elemental sulfur into {area}, {depth} deep, {months} months before "
            "planting, in {dressings}; test again after {retest} months and before each further one. "
            "A raised bed or a container with acid mix is surer.",
            "soil pH {ph} too high",
        ),
        "needs_bed": Wording(
            "{a}: the {home} has pH {ph}; {crop} wants {low} to {high}. Ground this alkaline is not worth "
            "making acid.",
            "Build a raised bed of {area}, {depth} deep ({fill} of fill, half of it peat, half composted "
            "pine bark or acid potting mix), or use a container from {pot} up, and water with rain.",
            "needs a bed of acid soil",
        ),
        "needs_bed_lime": Wording(
            "{a}: the {home} holds free lime[ (pH {ph})] and cannot be made acid; {crop} wants pH {low} to "
            "{high}.",
            "Build a raised bed of {area}, {depth} deep ({fill} of fill, half of it peat), lined off from "
            "the ground, or use a container from {pot} up, and water with rain.",
            "free lime: needs acid soil",
        ),
        "limy": Wording(
            "The {home} holds free lime[ (pH {ph})] and sulfur cannot change that, where pH {low} to {high} "
            "is wanted: {things}. Leaves may turn yellow for want of iron.",
            "Choose a rootstock or kind that bears lime, or a raised bed; treat yellow leaves with chelated "
            "iron by its label.",
            "limy soil",
        ),
        "lime": Wording(
            "The {home} has pH {ph} where {low} to {high} is wanted: {things}.",
            "Spread {least}[ to {most}] of ground limestone on {area} in all, worked {depth} deep, the "
            "first {months} months before planting, in {dressings}[, {between} months apart]. Use more in "
            "proportion where its calcium carbonate equivalent is under 100.",
            "soil pH {ph} too low",
        ),
        "repot": Wording(
            "The mix in the container does not suit[ (pH {ph})], where pH {low} to {high} is wanted: "
            "{things}.",
            "Fill the container with a mix of pH {low} to {high}, and test it every year.",
            "mix does not suit",
        ),
        "ph_missing": Wording(
            "The pH of the soil is not entered: it would decide what to add for your plants ({count}).",
            "Test the soil (a home kit tells to about half a unit) and enter the pH in the site card or the "
            "bed.",
            "enter the soil pH",
        ),
        "ph_missing_acid": Wording(
            "The pH of the soil is not entered. It decides whether {things} can grow in this ground at all.",
            "Test the soil and see whether it fizzes with vinegar; enter both in the site card.",
            "enter the soil pH",
        ),
        "texture_missing": Wording(
            "The texture of the soil is not entered, so the amounts shown run from sand to clay.",
            "Enter the texture in the site card: rub moist soil between the fingers.",
            "enter the soil texture",
        ),
    },
)
