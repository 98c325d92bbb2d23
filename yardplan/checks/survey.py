"""The survey: a yard joined with plant facts, sizes at the chosen year, rules in force and light."""

from __future__ import annotations

from collections.abc import Mapping
from functools import cached_property
from typing import Any

from attrs import evolve, frozen

from yardplan.checks.compass import compass
from yardplan.checks.finding import Figure, Finding, Mark, Weight
from yardplan.checks.layout import Layout, layout_of, moved_layout
from yardplan.checks.rules import Rules
from yardplan.plants.catalogue import Catalogue
from yardplan.plants.catalogue import catalogue as shipped
from yardplan.plants.stand import Stand, Standing, StandingBed, StandingRow
from yardplan.plants.standing import moved_stand, stand_of
from yardplan.yard.change import Change
from yardplan.yard.ground import Point
from yardplan.yard.yard import Yard


@frozen(kw_only=True, slots=False, eq=False)
class Survey:
    """What every check reads. Built once a run; `light` and `bloom` are None until computed.

    `base` is the catalogue without the yard's own cultivars, `before` the layout to take over from.
    """

    yard: Yard
    catalogue: Catalogue
    stand: Stand
    rules: Rules
    light: Any = None
    bloom: Any = None
    base: Catalogue | None = None
    before: Layout | None = None

    @cached_property
    def layout(self) -> Layout:
        """Places and sizes as arrays, taken over from the survey before where nothing moved."""
        if self.before is not None:
            return moved_layout(self.before, self.yard, self.stand)
        return layout_of(self.yard, self.stand)

    @cached_property
    def plants(self) -> Mapping[str, Standing]:
        """Plants and standing trees by id."""
        return {plant.id: plant for plant in self.stand.plants}

    @cached_property
    def rows(self) -> Mapping[str, StandingRow]:
        """Rows by id."""
        return {row.id: row for row in self.stand.rows}

    @cached_property
    def beds(self) -> Mapping[str, StandingBed]:
        """Beds by id."""
        return {bed.id: bed for bed in self.stand.beds}

    def direction(self, start: Point, end: Point) -> str:
        """The compass word from one place to another, honouring the site's north."""
        return compass(start, end, self.yard.site.north)

    def finding(
        self, check: str, kind: str, weight: Weight, things: tuple[str, ...], rule: str,
        figures: Mapping[str, Figure], marks: tuple[Mark, ...] = (),
    ) -> Finding:
        """A finding by a rule of the table; names the rule where the yard's own figure is in force."""
        held = dict(figures)
        if self.rules.is_local(rule):
            held["local_rule"] = Figure(rule, "text")
        return Finding(
            check=check, kind=kind, weight=weight, things=things, figures=held, marks=marks, source=rule
        )


def survey_of(
    yard: Yard, catalogue: Catalogue | None = None, year: int | None = None, *,
    stand: Stand | None = None, light: Any = None, bloom: Any = None,
) -> Survey:
    """Survey a yard at a year after planting (None: full size), by the shipped catalogue if none is given.

    Own cultivars in the yard's file are added to the catalogue.
    """
    known = catalogue if catalogue is not None else shipped()
    return Survey(
        yard=yard, rules=Rules(yard.rules), light=light, bloom=bloom, base=known,
        catalogue=known.with_own(yard.own_cultivars) if yard.own_cultivars else known,
        stand=stand if stand is not None else stand_of(yard, known, year),
    )


def moved_survey(survey: Survey, yard: Yard, change: Change, *, light: Any = None) -> Survey:
    """The survey after a change: while things only move, all that did not move is taken over.

    Marks of work done and prices leave all as it is. After any other change the yard is surveyed anew,
    with the light of before unless a new one is given.
    """
    if change.only_records:
        return evolve(survey, yard=yard)
    rules = survey.rules if yard.rules is survey.yard.rules else Rules(yard.rules)
    shown = light if light is not None else survey.light
    if not change.only_moves:
        return survey_of(yard, survey.base, survey.stand.year, light=shown)
    return Survey(
        yard=yard, catalogue=survey.catalogue, rules=rules,
        stand=moved_stand(survey.stand, yard, change),
        light=shown, base=survey.base,
        bloom=survey.bloom, before=survey.layout,
    )
