"""Harvest of a yard: when each kind is picked here, how much, through the season and the first ten years."""

from __future__ import annotations

import datetime as dt
from collections.abc import Sequence

from attrs import frozen

from yardplan.care.picking import picking
from yardplan.care.season import Season, bloom_for
from yardplan.care.tables import figures
from yardplan.care.things import CareThing, care_things
from yardplan.care.yields import kilograms, ramp_for
from yardplan.checks.ripening import CHECK as RIPENING
from yardplan.checks.rules import Rules
from yardplan.checks.survey import Survey
from yardplan.language import day_month, tr
from yardplan.plants.cultivar import MEMORY
from yardplan.units import System, format_weight

_WEEK = 7


@frozen(kw_only=True)
class HarvestCrop:
    """Picking of one variety in one season.

    `first` to `last` day of picking; `begins` (earliest, latest) day it may begin; `kilograms` (low, high)
    of all its plants this year, None when no yield is published; `full` True where the planting year is not
    set and the full crop is told; `memory` True where the yearly shares are from memory; `ripens` what the
    check of ripening says (`seldom`, `late_years` or nothing), `notes` the same and of frost in sentences.
    """

    things: tuple[str, ...]
    crop: str
    what: str
    first: dt.date
    last: dt.date
    begins: tuple[dt.date, dt.date]
    by_month: bool
    about: float
    kilograms: tuple[float, float] | None
    full: bool
    memory: bool
    sources: tuple[str, ...] = ()
    ripens: str = ""
    notes: tuple[str, ...] = ()

    @property
    def doubt(self) -> str:
        """A warning in the words of the check where the season here is short for it; else nothing."""
        return tr(RIPENING.wording[self.ripens].title) if self.ripens else ""


@frozen
class Amount:
    """Kilograms (low, high) from a day on: of a week, or of a year."""

    start: dt.date
    low: float
    high: float

    @property
    def middle(self) -> float:
        """Middle of the range."""
        return (self.low + self.high) / 2


@frozen(kw_only=True)
class HarvestPlan:
    """The harvest of a year: crops by date, weeks from the first to the last picking, ten years.

    `need` kg a week of the household, None when not given; `gluts` weeks with far more than that (or, without
    a need, than the usual week), `gaps` weeks with too little between the first and last.
    """

    year: int
    crops: tuple[HarvestCrop, ...]
    weeks: tuple[Amount, ...]
    years: tuple[Amount, ...]
    need: float | None
    gluts: tuple[Amount, ...]
    gaps: tuple[Amount, ...]
    unknown: tuple[str, ...] = ()


def household_need(persons: float) -> float:
    """Fruit of a household, kg a week."""
    return persons * figures()["fruit a person a week"]


def harvest_plan(survey: Survey, year: int, persons: float | None = None) -> HarvestPlan:
    """The harvest of a surveyed yard in the season of a year; `persons` to be fed from it, if given."""
    season = Season(survey.yard.site, year, bloom_for(survey.yard, survey.catalogue.cultivars))
    things = care_things(survey)
    made = [_crop(group, season, survey.rules) for group in _by_variety(things)]
    crops = [crop for crop in made if crop is not None]
    crops.sort(key=lambda crop: (crop.first, crop.what))
    weeks = _weeks(crops)
    need = household_need(persons) if persons else None
    usual = need if need is not None else _usual(weeks)
    dated = {name for crop in crops for name in crop.things}
    return HarvestPlan(
        year=year, crops=tuple(crops), weeks=weeks, years=_years(things, year), need=need,
        gluts=tuple(week for week in weeks if usual and week.middle > figures()["glut"] * usual),
        gaps=tuple(week for week in weeks if week.middle < (need or 0.0) or week.high == 0),
        unknown=tuple(thing.id for thing in things if thing.id not in dated and thing.cultivar.sex != "male"),
    )


def _by_variety(things: Sequence[CareThing]) -> list[list[CareThing]]:
    found: dict[tuple[str, str], list[CareThing]] = {}
    for thing in things:
        if thing.cultivar.sex != "male":
            found.setdefault((thing.crop.id, thing.key.cultivar), []).append(thing)
    return list(found.values())


def _crop(group: Sequence[CareThing], season: Season, rules: Rules) -> HarvestCrop | None:
    """Picking of the plants of one variety, None where its time is not known."""
    thing = group[0]
    found = picking(thing, season, rules)
    if found is None:
        return None
    begin, (first, last) = found.begins, found.days
    named = thing.key.cultivar
    return HarvestCrop(
        things=tuple(one.id for one in group), crop=thing.crop.id,
        what=f"{named} ({tr(thing.crop.name)})" if named else tr(thing.crop.name), first=first, last=last,
        begins=(begin.first, begin.last), by_month=begin.by_month, about=begin.about,
        kilograms=_sum(group, season.year), full=any(one.planted is None for one in group),
        memory=any(MEMORY in ramp_for(one).sources for one in group),
        sources=tuple(source for source in begin.source.split(", ") if source),
        ripens="" if found.outlook is None else found.outlook.kind, notes=found.notes,
    )


def _sum(group: Sequence[CareThing], year: int) -> tuple[float, float] | None:
    amounts = [found for one in group if (found := kilograms(one, one.age(year))) is not None]
    if not amounts:
        return None
    return sum(low for low, _ in amounts), sum(high for _, high in amounts)


def _weeks(crops: Sequence[HarvestCrop]) -> tuple[Amount, ...]:
    """Kilograms week by week (Monday on), each crop spread evenly over its picking."""
    known = [crop for crop in crops if crop.kilograms is not None]
    if not known:
        return ()
    start = min(crop.first for crop in known)
    start -= dt.timedelta(days=start.weekday())
    number = (max(crop.last for crop in known) - start).days // _WEEK + 1
    return tuple(_week(known, start + dt.timedelta(days=_WEEK * step)) for step in range(number))


def _week(crops: Sequence[HarvestCrop], start: dt.date) -> Amount:
    low = high = 0.0
    for crop in crops:
        if crop.kilograms is None:
            continue
        days = (min(crop.last, start + dt.timedelta(days=_WEEK - 1)) - max(crop.first, start)).days + 1
        share = max(days, 0) / ((crop.last - crop.first).days + 1)
        low, high = low + crop.kilograms[0] * share, high + crop.kilograms[1] * share
    return Amount(start, low, high)


def _usual(weeks: Sequence[Amount]) -> float | None:
    """The mean of the weeks in which anything is picked."""
    bearing = [week.middle for week in weeks if week.high > 0]
    return sum(bearing) / len(bearing) if bearing else None


def _years(things: Sequence[CareThing], year: int) -> tuple[Amount, ...]:
    """Kilograms of each of the first years; plants without a planting year count as planted in `year`."""
    found: list[Amount] = []
    for step in range(int(figures()["season years"])):
        now = year + step
        ages = ((one, step + 1 if one.planted is None else one.age(now)) for one in things)
        amounts = [amount for one, age in ages if (amount := kilograms(one, age)) is not None]
        found.append(Amount(
            dt.date(now, 1, 1), sum(low for low, _ in amounts), sum(high for _, high in amounts)
        ))
    return tuple(found)


def spans(weeks: Sequence[Amount]) -> list[tuple[dt.date, dt.date]]:
    """First and last day of each run of weeks that follow on each other."""
    found: list[tuple[dt.date, dt.date]] = []
    for week in sorted(weeks, key=lambda one: one.start):
        last = week.start + dt.timedelta(days=_WEEK - 1)
        if found and found[-1][1] + dt.timedelta(days=1) == week.start:
            found[-1] = (found[-1][0], last)
        else:
            found.append((week.start, last))
    return found


def plenty_words(plan: HarvestPlan, system: System) -> tuple[str, ...]:
    """Gluts and gaps of a season in words, against the household's need where it is given."""
    lines: list[str] = []
    gluts, gaps = _spans_said(plan.gluts), _spans_said(plan.gaps)
    if plan.need is not None:
        amount = format_weight(plan.need, system)
        lines.append(tr("The household needs about {amount} a week.", amount=amount))
    if gluts:
        lines.append(
            tr("Far more than that: {spans}.", spans=gluts) if plan.need is not None
            else tr("A glut, far more than in a usual week: {spans}.", spans=gluts)
        )
    if gaps:
        lines.append(
            tr("Less than that: {spans}.", spans=gaps) if plan.need is not None
            else tr("A gap, nothing to pick: {spans}.", spans=gaps)
        )
    return tuple(lines)


def _spans_said(weeks: Sequence[Amount]) -> str:
    return ", ".join(
        tr("{first} to {last}", first=day_month(one.month, one.day), last=day_month(other.month, other.day))
        for one, other in spans(weeks)
    )
