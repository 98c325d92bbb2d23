"""The care calendar: tasks by date for every plant of a yard in one calendar year.

A task belongs to a growing season (the year of its spring) and keeps its id in every calendar it shows in,
so that a task over New Year is one task. Where no climate is known it fills whole months and says so.
"""

from __future__ import annotations

import datetime as dt
from collections.abc import Iterator, Sequence
from functools import cached_property

from attrs import evolve, frozen

from yardplan.care.conditions import age_words, applies, by_age
from yardplan.care.frost_nights import stage_words
from yardplan.care.measures import said
from yardplan.care.picking import picking
from yardplan.care.season import Anchored, Season, bloom_for, whole_months
from yardplan.care.spray_guard import Closed, Window, bloom_closed, bloom_unknown, windows
from yardplan.care.tables import LAST_YEAR, CareRow, Kind, cautions, figures, rows_for
from yardplan.care.things import CareThing, care_things, flowering
from yardplan.care.watering import WaterNeed, water_needs, water_words, week_lines
from yardplan.checks.survey import Survey
from yardplan.language import later, tr, whole_date
from yardplan.plants.cultivar import Cultivar
from yardplan.units import System

BY_MONTH = later("by month: no climate known")
#: Work that is done by the day; other work of a kind goes together, by its middle variety.
_BY_VARIETY = ("thin", "frost", "net", "spray", "harvest", "store")

#: Anchors of work for the winter.
_AUTUMN = ("leaf fall", "first frost")


@frozen(kw_only=True)
class CareTask:
    """One piece of work in a span of days.

    `id` stays the same in every export; `things` the ids of the plants; `what` their names in words;
    `start` to `end` inclusive; `every` (least, most) days between repeats; `ages` for which years after
    planting it is, where the planting year is not set (`years 1 to 3`); `basis` tells what the dates
    rest on and `about` their error in days; `weeks` how much water in which month, a line a plant;
    `notes` what holds on these dates only; `memory` True when no source but memory vouches for the task.
    """

    id: str
    row: str
    kind: Kind
    things: tuple[str, ...]
    crop: str
    what: str
    season: int
    title: str
    start: dt.date
    end: dt.date
    every: tuple[int, int] | None = None
    ages: str = ""
    when: str = ""
    why: str = ""
    amount: str = ""
    weeks: tuple[str, ...] = ()
    notes: tuple[str, ...] = ()
    cautions: tuple[str, ...] = ()
    sources: tuple[str, ...] = ()
    basis: str = ""
    about: float = 0.0
    memory: bool = False
    spray: str = ""

    @property
    def by_month(self) -> bool:
        """True when only the usual months stand behind the dates."""
        return self.basis == BY_MONTH

    @property
    def heading(self) -> str:
        """What is done, and for which years it is: `Water young trees (years 1 to 3)`."""
        return f"{self.title} ({self.ages})" if self.ages else self.title

    @property
    def repeats(self) -> str:
        """`every 7 to 14 days`, or nothing."""
        if self.every is None:
            return ""
        low, high = self.every
        if low == high == 1:
            return tr("every day")
        if low == high:
            return tr("every {n} days", n=low)
        return tr("every {low} to {high} days", low=low, high=high)


@frozen(kw_only=True)
class Refusal:
    """A spray that was not placed on some days, and the varieties in bloom or harvests that forbid it."""

    task: str
    title: str
    what: str
    things: tuple[str, ...]
    start: dt.date
    end: dt.date
    closed: tuple[Closed, ...]

    @property
    def blockers(self) -> tuple[str, ...]:
        """Names of what forbids it, each once."""
        return tuple(dict.fromkeys(one.name for one in self.closed))

    @property
    def because(self) -> str:
        """What forbids it in words; kinds whose bloom here is not known stand together at the end."""
        known = dict.fromkeys(one.name for one in self.closed if not one.unknown)
        unknown = dict.fromkeys(one.unknown for one in self.closed if one.unknown)
        parts = [", ".join(known)] if known else []
        if unknown:
            parts.append(tr("not known is the bloom here of {plants}", plants=", ".join(unknown)))
        return "; ".join(parts)


@frozen(kw_only=True)
class CarePlan:
    """The tasks that touch a calendar year, in the order of their dates, and the sprays refused.

    `bloom_unknown` kinds whose bloom here cannot be told; `undated` kinds with work that hangs on dates not
    known here, so that it stands in no calendar.
    """

    year: int
    tasks: tuple[CareTask, ...]
    refusals: tuple[Refusal, ...]
    bloom_unknown: tuple[str, ...] = ()
    undated: tuple[str, ...] = ()

    @property
    def by_month(self) -> bool:
        """True when no dates of the place stand behind any task."""
        return any(task.by_month for task in self.tasks)

    @property
    def by_years(self) -> bool:
        """True when work of several ages stands side by side, as a planting year is not set."""
        return any(task.ages for task in self.tasks)


@frozen(slots=False, eq=False)
class _Planner:
    """Makes the tasks of one yard and year."""

    survey: Survey
    year: int
    system: System

    @cached_property
    def seasons(self) -> tuple[Season, ...]:
        """The seasons whose tasks can touch the calendar year."""
        bloom = bloom_for(self.survey.yard, self.survey.catalogue.cultivars)
        return tuple(Season(self.survey.yard.site, self.year + step, bloom) for step in (-1, 0, 1))

    @cached_property
    def closed(self) -> list[Closed]:
        """Days closed to sprays by bloom, over all the seasons."""
        years = range(self.year - 2, self.year + 3)
        seasons = [Season(self.survey.yard.site, year, self.seasons[0].bloom) for year in years]
        return bloom_closed(flowering(self.survey), seasons)

    @cached_property
    def unknown(self) -> tuple[str, ...]:
        """Kinds whose bloom cannot be told."""
        return bloom_unknown(flowering(self.survey), self.seasons[1])

    def plan(self) -> CarePlan:
        """All tasks and refusals."""
        tasks: list[CareTask] = []
        refusals: list[Refusal] = []
        groups = self._groups(care_things(self.survey))
        undated: dict[str, None] = {}
        for season in self.seasons:
            for row, things in groups:
                made = self._task(season, row, things)
                if made is None:
                    if season.find(row.anchor, _example(things)) is None:
                        undated[tr(things[0].crop.name)] = None
                    continue
                parts = [made] if not row.spray else self._guarded(season, made, things[0], refusals)
                tasks += [part for part in parts if self._touches(part.start, part.end)]
        tasks.sort(key=lambda task: (task.start, task.end, task.id))
        return CarePlan(
            year=self.year, tasks=tuple(tasks), bloom_unknown=self.unknown, undated=tuple(undated),
            refusals=tuple(one for one in refusals if self._touches(one.start, one.end)),
        )

    def _touches(self, start: dt.date, end: dt.date) -> bool:
        return start.year <= self.year <= end.year

    def _groups(self, things: Sequence[CareThing]) -> list[tuple[CareRow, tuple[CareThing, ...]]]:
        """Rows with the plants that share their dates: those of a variety, or of a kind."""
        found: dict[tuple[str, str, str], tuple[CareRow, list[CareThing]]] = {}
        for thing in things:
            for row in rows_for(thing.crop.id):
                if not applies(row, thing, self.survey.yard.site):
                    continue
                key = (row.id, thing.crop.id, thing.key.cultivar if _by_variety(row) else "")
                found.setdefault(key, (row, []))[1].append(thing)
        return [(row, tuple(sharing)) for row, sharing in found.values()]

    def _task(self, season: Season, row: CareRow, things: tuple[CareThing, ...]) -> CareTask | None:
        """The task of one season, or None when its dates are not known or no plant is of the age."""
        aged = tuple(thing for thing in things if by_age(row, thing, season.year))
        span = self._span(season, row, things) if aged else None
        if span is None:
            return None
        anchor, start, end, notes = span
        if anchor.by_month:
            start, end = whole_months(start, end)
        thing = aged[0]
        needs = self._water(season, row, aged)
        named, kind = thing.key.cultivar if _by_variety(row) else "", tr(thing.crop.name)
        return CareTask(
            id=f"{row.id}@{thing.crop.id}{':' + named if named else ''}@{season.year}", row=row.id,
            kind=row.kind, things=tuple(one.id for one in aged), crop=thing.crop.id,
            what=f"{named} ({kind})" if named else kind, season=season.year,
            title=said(tr(row.title), self.system), start=start, end=end, every=row.every,
            ages=age_words(row, aged), when=said(tr(row.when), self.system),
            why=said(tr(row.why), self.system), amount=self._amount(row, aged, needs),
            weeks=week_lines(needs, start, end, self.system), notes=notes,
            cautions=tuple(said(tr(cautions()[code][0]), self.system) for code in row.cautions),
            sources=tuple(dict.fromkeys((*row.sources, *(cautions()[code][1] for code in row.cautions)))),
            basis=BY_MONTH if anchor.by_month else "", about=anchor.about, memory=row.memory,
            spray=row.spray,
        )

    def _span(
        self, season: Season, row: CareRow, things: Sequence[CareThing]
    ) -> tuple[Anchored, dt.date, dt.date, tuple[str, ...]] | None:
        """What a row is counted from, its first and last day, and what there is to say of them."""
        if row.anchor == "harvest":
            picked = picking(things[0], season, self.survey.rules)
            if picked is None:
                return None
            start, end = _counted(row, picked.begins)
            if row.kind != "harvest":
                return picked.begins, start, end, ()
            return picked.begins, start, min(end, picked.end), picked.notes if row.start == 0 else ()
        anchor = season.find(row.anchor, _example(things))
        if anchor is None:
            return None
        start, end = _counted(row, anchor)
        if row.kind == "prune" and row.anchor == "dormant":
            start, end = _before_buds(season, _example(things), start, end)
        if row.kind == "water" and row.anchor not in _AUTUMN and not season.leaf_fall.by_month:
            end = max(start, min(end, season.leaf_fall.first))
        return anchor, start, end, ()

    def _water(self, season: Season, row: CareRow, things: Sequence[CareThing]) -> list[WaterNeed]:
        """What the things of a watering task are given in its season; nothing for others."""
        if row.kind != "water" or row.anchor in _AUTUMN:
            return []
        years = row.years[1] if row.years[1] < LAST_YEAR else None
        return water_needs(things, self.survey.catalogue, season, years)

    def _amount(self, row: CareRow, things: Sequence[CareThing], needs: Sequence[WaterNeed]) -> str:
        """Figures for this yard: water by crown area, frost by bud stage."""
        if row.kind == "frost":
            return stage_words(things[0].crop.id, self.system)
        return water_words(needs, self.system)

    def _guarded(
        self, season: Season, task: CareTask, thing: CareThing, refusals: list[Refusal]
    ) -> Iterator[CareTask]:
        """A spray task cut to the days on which nothing flowers and it is not being picked."""
        picked = picking(thing, season, self.survey.rules)
        closed = list(self.closed)
        words: list[str] = []
        if picked is not None and task.end >= picked.days[0]:
            name = tr("picking of {plant}", plant=task.what)
            closed.append(Closed(*picked.days, name, harvest=True))
        if picked is not None and task.start <= picked.days[0]:
            words.append(
                tr("Picking begins about {date}: the last spray lies at least as many days before it as the "
                   "label says.", date=day_words(picked.days[0]))
            )
        parts = windows(task.start, task.end, closed)
        refusals += [_refusal(task, part) for part in parts if not part.open]
        number = 0
        for before, part in zip((None, *parts), parts, strict=False):
            if not part.open or (part.last - part.first).days + 1 < figures()["least spray window"]:
                continue
            number += 1
            yield _part(task, part, before, number, words)


def _by_variety(row: CareRow) -> bool:
    """True for work whose dates differ from variety to variety."""
    return row.kind in _BY_VARIETY or row.anchor == "harvest"


def _counted(row: CareRow, anchor: Anchored) -> tuple[dt.date, dt.date]:
    """First and last day of a row, counted from its anchor."""
    start = (anchor.first if row.start <= 0 else anchor.last) + dt.timedelta(days=row.start)
    end = (anchor.first if row.end <= 0 else anchor.last) + dt.timedelta(days=row.end)
    return start, end


def _before_buds(
    season: Season, cultivar: Cultivar, start: dt.date, end: dt.date
) -> tuple[dt.date, dt.date]:
    """Winter's cuts end when buds swell; where that comes sooner they begin as much sooner."""
    buds = season.find("bud swell", cultivar)
    if buds is None or buds.by_month or end <= buds.first:
        return start, end
    sooner = start - (end - buds.first)
    if buds.first > season.dormant:
        sooner = max(sooner, min(start, season.dormant))
    return sooner, buds.first


def _example(things: Sequence[CareThing]) -> Cultivar:
    """The variety whose dates stand for all: their own where it is one, else the middle one of the kind."""
    first = things[0].cultivar
    if all(thing.cultivar == first for thing in things):
        return first
    return Cultivar(crop=first.crop, name="", bloom_season="mid")


def _refusal(task: CareTask, part: Window) -> Refusal:
    return Refusal(
        task=task.id, title=task.title, what=task.what, things=task.things, start=part.first,
        end=part.last, closed=part.by,
    )


def _part(task: CareTask, part: Window, before: Window | None, number: int, words: Sequence[str]) -> CareTask:
    """One open part of a spray's time; after bloom it says after whose petals it starts again."""
    notes = list(words)
    if before is not None and before.by and not before.by[0].harvest:
        names = ", ".join(dict.fromkeys(one.name for one in before.by))
        notes.insert(0, tr("Again after petal fall of {plants}.", plants=names))
    return evolve(
        task, id=task.id if number == 1 else f"{task.id}/{number}", start=part.first, end=part.last,
        notes=tuple(notes),
    )


def day_words(day: dt.date) -> str:
    """A date written out: `24 April 2027`."""
    return whole_date(day)


def care_plan(survey: Survey, year: int, system: System | None = None) -> CarePlan:
    """The care of a surveyed yard in a calendar year, in the yard's units unless others are asked for."""
    return _Planner(survey, year, system or survey.yard.site.units).plan()
