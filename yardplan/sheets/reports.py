"""What the checks found, as tables with reasons and sources: findings, light, pollination, soil work."""

from __future__ import annotations

from collections.abc import Iterable, Mapping

from yardplan.care.soil_work import SoilStep, soil_work, too_limy
from yardplan.checks.finding import Finding, Severity, Weight
from yardplan.checks.pollination import outlooks_for
from yardplan.checks.said_once import said_alike
from yardplan.checks.survey import Survey
from yardplan.checks.wording import STAKE_WORDS, cited, names_of, say
from yardplan.language import all_of, day_month, decimals, later, tr, whole_date
from yardplan.plants.fruit_set import FruitSet, fruit_sets
from yardplan.plants.stand import Standing, StandingBed, StandingRow
from yardplan.sheets.tables import Column, Table
from yardplan.sun.light import LightReport, PlantLight
from yardplan.sun.scene import FAR_WORDS
from yardplan.units import System, format_coarse

_WEIGHTS = {
    Weight.CONFLICT: later("Conflict"), Weight.CAUTION: later("Caution"), Weight.ADVICE: later("Advice"),
}
#: What is at stake stands in bold where it is the law or somebody's safety.
_GRAVE: tuple[Severity, ...] = ("law", "safety")
#: Things that take less than this many hours a day are not named.
_WORTH_NAMING = 0.1


def findings_table(found: Iterable[Finding], names: Mapping[str, str], units: System) -> Table:
    """Every finding: how much it matters, what is at stake, what is wrong, what clears it, by which rule.

    What is said of many plants alike is said once, with all their names.
    """
    told = [(finding, say(finding, names, units)) for finding in found]
    rows = []
    for first, *more in said_alike((finding, said.title) for finding, said in told):
        finding, said = told[first]
        others = [names.get(thing, thing) for number in more for thing in told[number][0].things]
        likewise = f" {tr('Likewise: {things}', things=all_of(others))}." if others else ""
        rows.append((
            tr(_WEIGHTS[finding.weight]), said.stake, said.title, said.message + likewise, said.clears,
            said.source_text,
        ))
    return Table(
        title=tr("Conflicts, cautions and advice"),
        columns=(
            Column(tr("Weight"), 9, strong=True),
            Column(tr("At stake"), 9, strong_words=frozenset(tr(STAKE_WORDS[one]) for one in _GRAVE)),
            Column(tr("In short"), 17), Column(tr("What"), 34), Column(tr("What clears it"), 28),
            Column(tr("By which rule"), 22),
        ),
        rows=tuple(rows),
        notes=() if rows else (tr("Nothing was found."),),
    )


def light_table(survey: Survey, report: LightReport) -> Table:
    """Direct sun of every plant, row and bed, against its need, and who takes how much."""
    names = names_of(survey)
    stand = survey.stand
    things: tuple[Standing | StandingRow | StandingBed, ...] = (*stand.plants, *stand.rows, *stand.beds)
    rows = []
    for thing in things:
        light = report.of(thing.id)
        if light is None or (thing.crop is None and thing.id not in names):
            continue
        rows.append(_light_row(thing.id, names, light, thing.crop.sun_needed if thing.crop else None))
    first, last = report.season
    return Table(
        title=tr("Light"),
        columns=(
            Column(tr("Key"), 8, strong=True), Column(tr("Plant"), 22), Column(tr(
                "Sun at the crown",
            ), 11, right=True),
            Column(tr("Needs"), 8, right=True), Column(tr("Open ground"), 9, right=True),
            Column(tr("Midsummer"), 10, right=True), Column(tr("Darkest month"), 11, right=True),
            Column(tr("Before mid-morning"), 11, right=True), Column(tr("Taken by"), 40),
        ),
        rows=tuple(rows),
        notes=(
            tr("Hours of direct sun a day on the crown, mean of the season {first} to {last}.",
               first=_day(first), last=_day(last)),
            tr("Clear sky is assumed; clouds take their share from every place alike."),
        ),
    )


def _light_row(
    thing_id: str, names: Mapping[str, str], light: PlantLight, needed: float | None
) -> tuple[str, ...]:
    worth = [(taker, hours) for taker, hours in light.shaded_by if hours >= _WORTH_NAMING]
    called = dict(names) | {taker: tr(words) for taker, words in FAR_WORDS.items()}
    takers = [f"{_hours(hours)} {called.get(taker, taker)}" for taker, hours in worth]
    return (
        thing_id, names.get(thing_id, thing_id).removesuffix(f" ({thing_id})"), _hours(light.hours),
        "" if needed is None else tr("{hours} h", hours=f"{needed:.0f}"), _hours(light.open_hours),
        _hours(light.hours_midsummer), _hours(light.hours_worst_month), _hours(light.hours_morning),
        ", ".join(takers),
    )


def _day(month_day: str) -> str:
    month, day = map(int, month_day.split("-"))
    return day_month(month, day)


def _hours(hours: float) -> str:
    return tr("{hours} h", hours=decimals(f"{hours:.1f}"))


def pollination_table(survey: Survey, units: System) -> Table:
    """Every plant that flowers for fruit: the crop to expect, its best partner, why others do not serve."""
    return Table(
        title=tr("Pollination"),
        columns=(
            Column(tr("Key"), 7, strong=True), Column(tr("Plant"), 17), Column(tr("To expect"), 15),
            Column(tr("Best partner"), 18), Column(tr("Distance"), 9, right=True), Column(tr(
                "In bloom together",
            ), 14),
            Column(tr("Pollen taken"), 9), Column(tr("Why; what crossing adds; why not others"), 44),
        ),
        rows=tuple(_pollen_row(one, units) for one in fruit_sets(outlooks_for(survey))),
        notes=(
            tr("Distance from trunk to trunk. Pollen taken: the share that the plant's own alleles let "
               "pass."),
            tr("Days in bloom together are those of an average year; how often: in usual, some or few "
               "years."),
        ),
    )


def _pollen_row(one: FruitSet, units: System) -> tuple[str, ...]:
    partner = one.donor or (tr("none here") if one.expected not in {None, "alone"} else "")
    far = "" if one.distance is None else format_coarse(one.distance, units)
    reasons = ". ".join(words[:1].upper() + words[1:] for words in (one.why, one.gain) if words)
    return (one.thing, one.name, one.words, partner, far, one.days, one.taken, reasons)


def soil_table(survey: Survey, units: System) -> Table:
    """Work on the soil, step by step."""
    steps, limy = soil_work(survey), too_limy(survey)
    notes = [] if steps or limy else [tr("What is known of the soil suits everything planted.")]
    if limy:
        notes.append(tr(
            "The ground is limy, and no work changes that, for: {kinds}. The conflicts and cautions say what "
            "helps.", kinds=", ".join(limy),
        ))
    return Table(
        title=tr("Soil work"),
        columns=(
            Column(tr("Step"), 18, strong=True), Column(tr("For"), 20), Column(tr("When"), 14), Column(tr(
                "How much",
            ), 20),
            Column(tr("How"), 38), Column(tr("Source"), 22),
        ),
        rows=tuple(_soil_row(step, units) for step in steps),
        notes=(
            *notes,
            tr("A soil test comes first: amounts follow from what is known of the soil and are estimates."),
            tr("Follow the label of every material."),
        ),
    )


def _soil_row(step: SoilStep, units: System) -> tuple[str, ...]:
    if step.day is not None:
        when = whole_date(step.day)
    elif step.months > 0:
        when = tr("{n} months before planting", n=decimals(f"{step.months:g}"))
    else:
        when = tr("at planting")
    return (step.title, step.what, when, step.amount(units), step.how(units), cited(step.source))
