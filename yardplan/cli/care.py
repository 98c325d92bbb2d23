"""`yardplan care FILE`: the year's care as a table, as JSON, or as a calendar file."""

from __future__ import annotations

import argparse
import datetime as dt
import math
import textwrap
from pathlib import Path
from typing import Any

from yardplan.care.calendar_file import CalendarError, calendar_file, uid
from yardplan.care.harvest import HarvestCrop, HarvestPlan, harvest_plan
from yardplan.care.season import Season, bloom_for
from yardplan.care.tasks import CarePlan, CareTask, Refusal, care_plan, day_words
from yardplan.care.things import care_things
from yardplan.care.watering import WaterNeed, water_needs, week_lines
from yardplan.checks.survey import Survey, survey_of
from yardplan.cli.check import yard_in
from yardplan.cli.output import CommandError, print_json, print_table
from yardplan.plants.sources import written_out
from yardplan.units import System, format_weight

_WIDTH = 100
#: Calendar years that can be asked for.
_YEARS = (1900, 2200)
_MOST_PERSONS = 10_000


def add_parser(subparsers: Any) -> None:
    """Add the command's words and options."""
    parser = subparsers.add_parser(
        "care", help="the year's work in a yard",
        description="Care tasks by date for every plant of a yard, from bloom and frost dates at its place.",
    )
    parser.add_argument("file", help="a yard file (.yard)")
    parser.add_argument("--year", help="calendar year (default: this year)")
    parser.add_argument("--ics", metavar="OUT", help="write an iCalendar file (RFC 5545)")
    parser.add_argument("--json", action="store_true", help="print JSON")
    parser.add_argument("--persons", help="household to be fed: tells weeks with too much and too little")
    parser.add_argument("--units", choices=("imperial", "metric"), help="units (default: the yard's)")


def _year(text: str | None) -> int:
    if text is None:
        return dt.date.today().year
    if not text.isdecimal() or not _YEARS[0] <= int(text) <= _YEARS[1]:
        raise CommandError(f"--year {text}: write a calendar year from {_YEARS[0]} to {_YEARS[1]}")
    return int(text)


def _persons(text: str | None) -> float | None:
    if text is None:
        return None
    try:
        persons = float(text)
    except ValueError:
        persons = 0.0
    if not 0 < persons <= _MOST_PERSONS:
        raise CommandError(f"--persons {text}: write how many people eat from the yard, for example 4")
    return persons


def run(args: argparse.Namespace) -> int:
    """Print the care of a year, or write it as a calendar. Raises CommandError."""
    year, yard = _year(args.year), yard_in(args.file)
    system: System = args.units or yard.site.units
    survey = survey_of(yard)
    plan = care_plan(survey, year, system)
    harvest = harvest_plan(survey, year, _persons(args.persons))
    if args.ics:
        _write(plan, survey, Path(args.ics))
    if args.json:
        print_json(as_json(plan, harvest, survey))
    elif not args.ics:
        _print(plan, survey, system)
        _print_harvest(harvest, system)
        _print_water(_water(survey, year), system)
    return 0


def _water(survey: Survey, year: int) -> list[WaterNeed]:
    """What everything is given in the dry weeks of the season that begins in the year's spring."""
    season = Season(survey.yard.site, year, bloom_for(survey.yard, survey.catalogue.cultivars))
    return [need for need in water_needs(care_things(survey), survey.catalogue, season) if need.weeks]


def _write(plan: CarePlan, survey: Survey, path: Path) -> None:
    try:
        path.write_bytes(calendar_file(plan, survey.yard))
    except CalendarError as error:
        raise CommandError(str(error)) from None
    except OSError as error:
        raise CommandError(f"{path} cannot be written: {error.strerror or error}") from None


def as_json(plan: CarePlan, harvest: HarvestPlan, survey: Survey) -> dict[str, Any]:
    """The plan as plain values; dates are ISO 8601, weights kilograms."""
    return {
        "yard": survey.yard.site.name, "year": plan.year,
        "tasks": [_task(task, survey) for task in plan.tasks],
        "refused_sprays": [_refusal(one) for one in plan.refusals],
        "bloom_unknown": list(plan.bloom_unknown), "undated": list(plan.undated),
        "harvest": [
            {"things": list(one.things), "plant": one.what, "from": one.first.isoformat(),
             "to": one.last.isoformat(), "by_month": one.by_month, "ripens": one.ripens or None,
             "notes": list(one.notes),
             "kg": None if one.kilograms is None else [round(kg, 1) for kg in one.kilograms]}
            for one in harvest.crops
        ],
        "water": [_water_json(need) for need in _water(survey, plan.year)],
        "need_kg_a_week": harvest.need,
        "gluts": [week.start.isoformat() for week in harvest.gluts],
        "gaps": [week.start.isoformat() for week in harvest.gaps],
        "years": [
            {"year": one.start.year, "kg": [round(one.low, 1), round(one.high, 1)]} for one in harvest.years
        ],
    }


def _task(task: CareTask, survey: Survey) -> dict[str, Any]:
    return {
        "id": task.id, "uid": uid(survey.yard, task.id), "kind": task.kind,
        "things": list(task.things), "plant": task.what, "title": task.title,
        "years": task.ages or None, "from": task.start.isoformat(), "to": task.end.isoformat(),
        "every_days": list(task.every) if task.every else None, "when": task.when, "why": task.why,
        "amount": task.amount, "weeks": list(task.weeks), "notes": list(task.notes),
        "cautions": list(task.cautions),
        "sources": dict(zip(task.sources, written_out(task.sources), strict=True)),
        "by_month": task.by_month, "about_days": round(task.about, 1), "from_memory": task.memory,
        "done": survey.yard.done.get(task.id),
    }


def _refusal(one: Refusal) -> dict[str, Any]:
    return {
        "task": one.task, "title": one.title, "plant": one.what, "from": one.start.isoformat(),
        "to": one.end.isoformat(), "because_of": list(one.blockers),
    }


def _print(plan: CarePlan, survey: Survey, system: System) -> None:
    """The year as a table, then what was refused and what is not known."""
    print(f"{survey.yard.site.name}: care {plan.year}, {len(plan.tasks)} tasks")
    rows = [
        (("about " if task.about else "") + task.start.isoformat(), task.end.isoformat(), task.kind,
         task.heading, task.what, _marks(task))
        for task in plan.tasks
    ]
    print_table(("from", "to", "work", "task", "plants", "note"), rows)
    for one in plan.refusals:
        days = f"{day_words(one.start)} to {day_words(one.end)}"
        _say(f"No spray from {days}, in bloom or being picked: {one.because}. "
             f"Left out then: {one.title}, {one.what}.")
    if plan.by_month:
        _say("Tasks marked 'by month' rest on usual months: give the site monthly temperatures and frosts.")
    if plan.by_years:
        _say("Where no planting year is given, work says for which years it is; year 1 is the planting year.")
    if plan.bloom_unknown:
        _say(f"Bloom here is not known of {', '.join(plan.bloom_unknown)}: no spray is placed.")
    if plan.undated:
        kinds = ", ".join(plan.undated)
        _say(f"Work that hangs on bloom or ripening is not dated for {kinds}: give the site temperatures, or "
             "a bloom date seen here.")


def _print_harvest(harvest: HarvestPlan, system: System) -> None:
    """What is picked when and how much, then gluts and gaps."""
    for crop in harvest.crops:
        amount = _amount(crop, system)
        days = f"{day_words(crop.first)} to {day_words(crop.last)}"
        doubt = f" {crop.doubt.capitalize()}." if crop.doubt else ""
        _say(f"Harvest of the season from spring {harvest.year}: {crop.what}, {days}, {amount}.{doubt}")
    if harvest.need is not None:
        _say(f"Need of the household: {format_weight(harvest.need, system)} a week.")
    for name, weeks in (("Far more than that", harvest.gluts), ("Less than that", harvest.gaps)):
        if weeks and harvest.need is not None:
            _say(f"{name} in the weeks from {', '.join(week.start.isoformat() for week in weeks)}.")


def _water_json(need: WaterNeed) -> dict[str, Any]:
    return {
        "things": list(need.things), "plant": need.what, "each": need.each,
        "ground_m2": round(math.pi * (need.across / 2) ** 2, 2),
        "by": "an inch a week" if need.rule else "evaporation", "estimate": need.estimate,
        "litres_a_week": {f"{month:%Y-%m}": round(litres, 1) for month, litres in need.weeks},
    }


def _print_water(needs: list[WaterNeed], system: System) -> None:
    """A line for each plant: its amounts by month, in both units."""
    if not needs:
        return
    rule = "the inch-a-week rule" if any(need.rule for need in needs) else "evaporation here"
    _say(f"Water in a week without rain, for one plant, row or bed, by {rule}:")
    for line in week_lines(needs, dt.date.min, dt.date.max, system):
        _say(f"  {line}")


def _amount(crop: HarvestCrop, system: System) -> str:
    if crop.kilograms is None:
        return "amount not known"
    low, high = (format_weight(kg, system) for kg in crop.kilograms)
    full = " (full crop: no planting year)" if crop.full else ""
    return f"about {low} to {high}{full}" if crop.kilograms[1] > 0 else "nothing yet"


def _marks(task: CareTask) -> str:
    marks = ("by month" if task.by_month else "", "from memory" if task.memory else "")
    return ", ".join(mark for mark in marks if mark)


def _say(text: str) -> None:
    print(textwrap.fill(text, _WIDTH, subsequent_indent="  "))
