"""Soil work before planting as steps in their order: tests, sulfur, limestone, raised beds, with amounts."""

from __future__ import annotations

import datetime as dt
from collections.abc import Iterator, Sequence
from functools import cache

from attrs import evolve, frozen

from yardplan.care.measures import bulk_words, said
from yardplan.care.season import Season, bloom_for
from yardplan.care.tables import rows_of
from yardplan.care.things import care_things
from yardplan.checks.soil_plan import SoilPlan, instead_of, soil_plans
from yardplan.checks.soil_tables import Spread
from yardplan.checks.survey import Survey
from yardplan.language import decimals, tr
from yardplan.units import System, format_area, format_length, format_weight

_LITRES = 1000.0
#: A month in days, for counting back from planting.
_MONTH = 30.44


@frozen(kw_only=True)
class SoilStep:
    """One step. `things` the ids it is for; `months` before planting (0: at planting);

    `day` that falls on where the planting year is set; `kilograms` (low, high) for the whole place;
    `litres` of fill; `area` m2 and `depth` m worked.
    """

    step: str
    title: str
    things: tuple[str, ...]
    what: str
    months: float = 0.0
    day: dt.date | None = None
    kilograms: tuple[float, float] | None = None
    litres: float | None = None
    area: float | None = None
    depth: float | None = None
    reason: str = ""
    source: str = ""

    def how(self, system: System) -> str:
        """How the step is done, measures in the reader's units."""
        return said(tr(_texts()[self.step][1]), system)

    def amount(self, system: System) -> str:
        """The amount in words: `1.5 kg to 2.0 kg on 12 m², 0.20 m deep`."""
        parts: list[str] = []
        if self.kilograms is not None:
            low, high = (format_weight(kg, system) for kg in self.kilograms)
            parts.append(low if low == high else tr("{low} to {high}", low=low, high=high))
        if self.litres is not None:
            parts.append(tr("{litres} of fill", litres=bulk_words(self.litres, system)))
        if self.area is not None and parts:
            area = format_area(self.area, system)
            depth = format_length(self.depth, system) if self.depth else ""
            parts.append(tr("on {area}, {depth} deep", area=area, depth=depth) if depth
                         else tr("on {area}", area=area))
        return " ".join(parts)


@cache
def _texts() -> dict[str, tuple[str, str, str]]:
    """Title, words and source id of each step."""
    return {row["step"]: (row["title"], row["words"], row["source"]) for row in rows_of("soil-steps.csv")}


def soil_work(survey: Survey) -> tuple[SoilStep, ...]:
    """All soil work of a yard, earliest first; nothing where every soil fits and is known."""
    plans = soil_plans(survey)
    planting = _planting_days(survey)
    steps = list(_tests(survey, plans))
    for group in _alike(plans):
        steps += _steps(survey, group, planting.get(group[0].rooting.id))
    steps.sort(key=lambda step: (-step.months, step.things))
    return tuple(steps)


def too_limy(survey: Survey) -> tuple[str, ...]:
    """Kinds planted in ground with free lime that they suffer from and that no work here changes."""
    return tuple(dict.fromkeys(
        tr(plan.rooting.crop.name) for plan in soil_plans(survey)
        if plan.way == "bed" and plan.rooting.home != "container" and instead_of(plan, survey.rules) is None
    ))


def _planting_days(survey: Survey) -> dict[str, dt.date]:
    """The spring day by which each thing with a planting year goes into the ground."""
    bloom = bloom_for(survey.yard, survey.catalogue.cultivars)
    return {
        thing.id: Season(survey.yard.site, thing.planted, bloom).last_frost.first
        for thing in care_things(survey) if thing.planted is not None
    }


def _alike(plans: Sequence[SoilPlan]) -> list[list[SoilPlan]]:
    """Plans of one kind, soil and remedy together, so that one bag serves a row of bushes."""
    found: dict[tuple[object, ...], list[SoilPlan]] = {}
    for plan in plans:
        home = plan.rooting.id if plan.rooting.home != "ground" else ""
        rooting = plan.rooting
        key = (plan.way, rooting.crop.id, rooting.soil, home, rooting.depth, len(plan.dressings))
        found.setdefault(key, []).append(plan)
    return list(found.values())


def _tests(survey: Survey, plans: Sequence[SoilPlan]) -> Iterator[SoilStep]:
    """Tests that are still to be made before anything is bought."""
    lead = survey.rules.value("sulfur-lead")
    unknown = tuple(plan.rooting.id for plan in plans if plan.way == "unknown")
    if unknown:
        yield _made("test", unknown, tr("pH not known"), months=lead)
    grounded = tuple(plan.rooting.id for plan in plans if plan.rooting.home == "ground")
    if grounded and survey.yard.site.soil.drainage is None:
        yield _made("drain", grounded, tr("drainage not known"), months=lead)


def _made(step: str, things: tuple[str, ...], reason: str, *, months: float = 0.0) -> SoilStep:
    title, _, source = _texts()[step]
    return SoilStep(
        step=step, title=tr(title), things=things, what="", reason=reason, months=months, source=source
    )


def _steps(survey: Survey, group: Sequence[SoilPlan], planting: dt.date | None) -> Iterator[SoilStep]:
    """The steps for plants that need the same."""
    plan = group[0]
    if plan.way in ("fits", "unknown"):
        return
    if plan.rooting.home == "container":
        yield _step("repot", group, planting)
    elif plan.way == "bed":
        # Kinds that only suffer in limy ground are not given a bed each: the check says what else helps.
        if instead_of(plan, survey.rules) is not None:
            yield _bed(survey, group, planting)
    else:
        yield from _dressings(group, planting, "sulfur" if plan.way == "acidify" else "lime")


def _step(
    step: str, group: Sequence[SoilPlan], planting: dt.date | None, months: float = 0.0,
    amounts: Sequence[Spread] = (), litres: float | None = None,
) -> SoilStep:
    rooting = group[0].rooting
    title, _, source = _texts()[step]
    low, high = rooting.crop.ph or (0.0, 14.0)
    ph = tr("not known") if rooting.soil.ph is None else decimals(f"{rooting.soil.ph:.1f}")
    kind = tr(rooting.crop.name)
    day = None if planting is None else planting - dt.timedelta(days=round(months * _MONTH))
    return SoilStep(
        step=step, title=tr(title), things=tuple(plan.rooting.id for plan in group), what=kind,
        months=months, day=day, litres=litres, area=sum(plan.rooting.area for plan in group),
        kilograms=(sum(a.low for a in amounts), sum(a.high for a in amounts)) if amounts else None,
        depth=rooting.depth,
        reason=tr("pH {ph}, {crop} wants {low} to {high}", ph=ph, crop=kind, low=decimals(f"{low:.1f}"),
                  high=decimals(f"{high:.1f}")),
        source=source,
    )


def _bed(survey: Survey, group: Sequence[SoilPlan], planting: dt.date | None) -> SoilStep:
    depth = survey.rules.value("raised-bed-depth")
    area = sum(plan.rooting.area for plan in group)
    return evolve(_step("bed", group, planting, litres=area * depth * _LITRES), depth=depth)


def _dressings(group: Sequence[SoilPlan], planting: dt.date | None, material: str) -> Iterator[SoilStep]:
    """Each dressing of a material, with a test before every further one."""
    for number, dressing in enumerate(group[0].dressings):
        if number:
            yield _step("retest", group, planting, dressing.months)
        amounts = [plan.dressings[number].amount for plan in group]
        yield _step(material, group, planting, dressing.months, amounts)
