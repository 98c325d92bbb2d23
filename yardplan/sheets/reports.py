"""What the checks found, as tables with reasons and sources: findings, light, pollination, soil work."""

from __future__ import annotations

from collections.abc import Iterable, Mapping

from yardplan.care.soil_work import SoilStep, soil_work
from yardplan.checks.finding import Finding, Weight
from yardplan.checks.pollination import outlooks_for
from yardplan.checks.survey import Survey
from yardplan.checks.wording import cited, names_of, say
from yardplan.plants.fruit_set import FruitSet, fruit_sets
from yardplan.plants.stand import Standing, StandingBed, StandingRow
from yardplan.sheets.tables import Column, Table
from yardplan.sun.light import LightReport, PlantLight
from yardplan.units import System, format_coarse

_WEIGHTS = {Weight.CONFLICT: "Conflict", Weight.CAUTION: "Caution", Weight.ADVICE: "Advice"}
#: Things that take less than this many hours a day are not named.
_WORTH_NAMING = 0.1


def findings_table(found: Iterable[Finding], names: Mapping[str, str], units: System) -> Table:
    """Every finding: what is wrong with its figure, what clears it, by which rule."""
    rows = []
    for finding in found:
        said = say(finding, names, units)
        rows.append((_WEIGHTS[finding.weight], said.title, said.message, said.clears, said.source_text))
    return Table(
        title="Conflicts, cautions and advice",
        columns=(
            Column("Weight", 9, strong=True), Column("In short", 17), Column("What", 34),
            Column("What clears it", 28), Column("By which rule", 22),
        ),
        rows=tuple(rows),
        notes=() if rows else ("Nothing was found.",),
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
        title="Light",
        columns=(
            Column("Key", 8, strong=True), Column("Plant", 22), Column("Sun at the crown", 11, right=True),
            Column("Needs", 8, right=True), Column("Open ground", 9, right=True),
            Column("Midsummer", 10, right=True), Column("Darkest month", 11, right=True),
            Column("Before mid-morning", 11, right=True), Column("Taken by", 40),
        ),
        rows=tuple(rows),
        notes=(
            f"Hours of direct sun a day on the crown, mean of the season {_day(first)} to {_day(last)}.",
            "Clear sky is assumed; clouds take their share from every place alike.",
        ),
    )


def _light_row(
    thing_id: str, names: Mapping[str, str], light: PlantLight, needed: float | None
) -> tuple[str, ...]:
    worth = [(taker, hours) for taker, hours in light.shaded_by if hours >= _WORTH_NAMING]
    takers = [f"{hours:.1f} h {names.get(taker, taker)}" for taker, hours in worth]
    return (
        thing_id, names.get(thing_id, thing_id).removesuffix(f" ({thing_id})"), f"{light.hours:.1f} h",
        "" if needed is None else f"{needed:.0f} h", f"{light.open_hours:.1f} h",
        f"{light.hours_midsummer:.1f} h", f"{light.hours_worst_month:.1f} h", f"{light.hours_morning:.1f} h",
        ", ".join(takers),
    )


def _day(month_day: str) -> str:
    month, day = month_day.split("-")
    return f"{int(day)} {_MONTHS[int(month) - 1]}"


_MONTHS = (
    "January", "February", "March", "April", "May", "June", "July", "August", "September", "October",
    "November", "December",
)


def pollination_table(survey: Survey, units: System) -> Table:
    """Every plant that flowers for fruit: the crop to expect, its best partner, why others do not serve."""
    return Table(
        title="Pollination",
        columns=(
            Column("Key", 7, strong=True), Column("Plant", 17), Column("To expect", 15),
            Column("Best partner", 18), Column("Distance", 9, right=True), Column("In bloom together", 14),
            Column("Pollen taken", 9), Column("Why; what crossing adds; why not others", 44),
        ),
        rows=tuple(_pollen_row(one, units) for one in fruit_sets(outlooks_for(survey))),
        notes=(
            "Distance from trunk to trunk. Pollen taken: the share that the plant's own alleles let pass.",
            "Days in bloom together are those of an average year; how often: in usual, some or few years.",
        ),
    )


def _pollen_row(one: FruitSet, units: System) -> tuple[str, ...]:
    partner = one.donor or ("none here" if one.expected not in {None, "alone"} else "")
    far = "" if one.distance is None else format_coarse(one.distance, units)
    reasons = ". ".join(words[:1].upper() + words[1:] for words in (one.why, one.gain) if words)
    return (one.thing, one.name, one.words, partner, far, one.days, one.taken, reasons)


def soil_table(survey: Survey, units: System) -> Table:
    """Work on the soil, step by step."""
    steps = soil_work(survey)
    return Table(
        title="Soil work",
        columns=(
            Column("Step", 18, strong=True), Column("For", 20), Column("When", 14), Column("How much", 20),
            Column("How", 38), Column("Source", 22),
        ),
        rows=tuple(_soil_row(step, units) for step in steps),
        notes=(
            *(() if steps else ("What is known of the soil suits everything planted.",)),
            "A soil test comes first: amounts follow from what is known of the soil and are estimates.",
            "Follow the label of every material.",
        ),
    )


def _soil_row(step: SoilStep, units: System) -> tuple[str, ...]:
    if step.day is not None:
        when = f"{step.day.day} {_MONTHS[step.day.month - 1]} {step.day.year}"
    elif step.months > 0:
        when = f"{step.months:g} months before planting"
    else:
        when = "at planting"
    return (step.title, step.what, when, step.amount(units), step.how(units), cited(step.source))
