"""What the checks found, as tables with reasons and sources: findings, light, pollination, soil work."""

from __future__ import annotations

from collections.abc import Iterable, Mapping

from yardplan.care.soil_work import SoilStep, soil_work
from yardplan.checks.finding import Finding, Weight
from yardplan.checks.pollination import outlooks_for
from yardplan.checks.survey import Survey
from yardplan.checks.wording import cited, names_of, say
from yardplan.plants.pollen_net import PollenNet
from yardplan.plants.pollen_outlook import Expected, Outlook, named, others_in_words
from yardplan.plants.stand import Standing, StandingBed, StandingRow
from yardplan.sheets.tables import Column, Table
from yardplan.sun.light import LightReport, PlantLight
from yardplan.units import System, format_coarse

_WEIGHTS = {Weight.CONFLICT: "Conflict", Weight.CAUTION: "Caution", Weight.ADVICE: "Advice"}
#: Things that take less than this many hours a day are not named.
_WORTH_NAMING = 0.1
_EXPECTED: Mapping[Expected, str] = {
    "well": "full crop", "light": "light crop", "not proved": "not proved", "alone": "crops by itself",
    "light alone": "light crop by itself", "none": "no crop",
}


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
    """Every plant that takes pollen: its best partner, how far, how long, and why others do not serve."""
    found = outlooks_for(survey)
    rows = [_pollen_row(found.net, outlook, units) for outlook in found.of if outlook is not None]
    return Table(
        title="Pollination",
        columns=(
            Column("Key", 8, strong=True), Column("Plant", 18), Column("Best partner", 20),
            Column("Distance", 10, right=True), Column("Days together", 9, right=True),
            Column("To expect", 14), Column("Why, and why not others", 46),
        ),
        rows=tuple(rows),
        notes=("Kinds that set fruit by themselves and gain nothing by a partner are left out.",),
    )


def _pollen_row(net: PollenNet, outlook: Outlook, units: System) -> tuple[str, ...]:
    node = net.nodes[outlook.receiver]
    partner = far = days = why = ""
    if outlook.donor is not None:
        verdict = net.verdict(outlook.donor, outlook.receiver)
        partner = named(net, outlook.donor)
        far = format_coarse(float(net.distances[outlook.donor, outlook.receiver]), units)
        if verdict.overlap is not None and verdict.overlap.by == "dates":
            days = f"{verdict.overlap.shared:.0f}"
        why = "; ".join(reason.words for reason in verdict.flagged)
    others = others_in_words(net, outlook)
    reasons = ". ".join(words for words in (why, others) if words)
    expected = _EXPECTED[outlook.expected]
    return (node.id, node.cultivar.name, partner or "none here", far, days, expected, reasons)


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
