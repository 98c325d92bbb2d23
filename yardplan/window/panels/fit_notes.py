"""What fits and what it takes: plants in a bed or row, posts of a trellis, the volume a pot needs."""

from __future__ import annotations

import math

from yardplan.care.tables import figures
from yardplan.checks.beds import bed_spacing, most_in_row, off_north, plants_in, posts
from yardplan.checks.containers import held_in, wanted_volume
from yardplan.checks.survey import Survey
from yardplan.checks.zones import site_zone
from yardplan.language import tr, tr_n
from yardplan.plants.stand import StandingRow
from yardplan.units import FOOT, System, format_length, format_temperature, format_volume
from yardplan.window.open_yard import OpenYard
from yardplan.yard.planting import Bed, Container, Row

_LONG_ENOUGH = 1e-6


def post_distance(row: StandingRow) -> float:
    """Most metres between two posts of a row on wires."""
    flat = row.mature.habit == "flat-trained"
    return figures()["flat post spacing"] if flat else figures()["post spacing trellis"] * FOOT


def row_words(survey: Survey, row: Row, units: System) -> list[str]:
    """Places in a row, its posts, and how far it runs off north and south."""
    standing = survey.rows.get(row.id)
    long = sum(math.dist(a, b) for a, b in zip(row.line, row.line[1:], strict=False))
    if standing is None or long < _LONG_ENOUGH:
        return []
    spacing = format_length(row.spacing, units)
    said = [tr_n(
        "Room for {n} plant.", "Room for {n} plants, {spacing} apart.", most_in_row(row), spacing=spacing
    )]
    if row.supported:
        apart = post_distance(standing)
        said.append(tr_n(
            "{n} post.", "{n} posts for its wires, at most {apart} apart.", posts(long, apart),
            apart=format_length(apart, units),
        ))
    off = off_north(row, survey.yard.site.north)
    said.append(
        tr("Runs north and south.") if round(off) == 0
        else tr("Runs {degrees}° off north and south.", degrees=f"{off:.0f}")
    )
    return said


def bed_words(survey: Survey, bed: Bed, units: System) -> list[str]:
    """How many plants a bed takes by its pattern and spacing."""
    standing = survey.beds.get(bed.id)
    spacing = None if standing is None else bed_spacing(standing)
    if spacing is None:
        return []
    return [tr_n(
        "Room for {n} plant, {spacing} apart.", "Room for {n} plants, {spacing} apart.",
        plants_in(bed, spacing), spacing=format_length(spacing, units),
    )]


def pot_words(survey: Survey, pot: Container, units: System) -> list[str]:
    """What the plants of a pot need, its winter quarters, and how often it is filled anew."""
    plants = held_in(survey).get(pot.id, [])
    if not plants:
        return []
    wanted = format_volume(wanted_volume(survey, plants), units)
    said = [tr_n(
        "The plant in it needs {volume} or more.", "The {n} plants in it need {volume} or more.", len(plants),
        volume=wanted,
    )]
    rules, zone = survey.rules, site_zone(survey.yard.site.zone)
    limit = rules.value("container-root-kill")
    if zone is None or zone.coldest < limit:
        said.append(tr(
            "Its roots die from about {limit}: an unheated shed in winter, and a little water once a month.",
            limit=format_temperature(limit, units),
        ))
    years = f"{rules.value('container-repot'):g}"
    said.append(tr("Re-pot or trim the roots every {years} years or so.", years=years))
    return said


def fit_words(open_yard: OpenYard) -> str:
    """The notes on the one row, bed or pot selected, with the sun on a bed; empty for other things."""
    ids = open_yard.selection
    thing = open_yard.shown_yard.find(next(iter(ids))) if len(ids) == 1 else None
    survey, units = open_yard.survey, open_yard.units
    if isinstance(thing, Row):
        return " ".join(row_words(survey, thing, units))
    if isinstance(thing, Container):
        return " ".join(pot_words(survey, thing, units))
    if not isinstance(thing, Bed):
        return ""
    said = bed_words(survey, thing, units)
    light = open_yard.light
    lit = None if light is None else light.beds.get(thing.id)
    if lit is not None and open_yard.checks.light_fresh:
        said.append(tr("{hours} h of sun a day.", hours=f"{lit.hours:.1f}"))
    return " ".join(said)
