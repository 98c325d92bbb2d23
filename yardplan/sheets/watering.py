"""Water on paper: what each plant, row and bed is given in a dry week of every month, in both units."""

from __future__ import annotations

import datetime as dt
import math
from collections.abc import Iterable, Sequence

from yardplan.care.season import Season, bloom_for
from yardplan.care.things import care_things
from yardplan.care.watering import WaterNeed, both, month_word, water_needs
from yardplan.checks.survey import Survey
from yardplan.language import later, tr
from yardplan.sheets.tables import Column, Table
from yardplan.units import System, format_area


def water_table(survey: Survey, year: int, units: System) -> Table:
    """What each plant, row and bed is given in a dry week of every month of a season, in both units."""
    season = Season(survey.yard.site, year, bloom_for(survey.yard, survey.catalogue.cultivars))
    needs = [need for need in water_needs(care_things(survey), survey.catalogue, season) if need.weeks]
    months = sorted({month for need in needs for month, _ in need.weeks})
    return Table(
        title=tr("Water, season from spring {year}", year=year),
        columns=(
            Column(tr("Plants"), 21, strong=True), Column(tr("Ground"), 8, right=True),
            *(Column(month_word(month.month), 10, right=True) for month in months),
        ),
        rows=tuple(_water_row(need, months, units) for need in needs),
        notes=tuple(_water_notes(needs)) if needs else (tr("There is nothing to water."),),
    )


#: How the figures are to be read; the conversion is arithmetic (25.4 mm, 0.3048 m, 3.785 L).
_WATER_NOTES = (
    later("Amounts are of one week without rain, for one plant, one whole row or one bed."),
    later("Rain counts: 1 mm on 1 m² is 1 L; 1 in on 1 sq ft is 0.62 gal (2.4 L)."),
    later("Feel the soil a hand deep before watering; sand dries sooner, clay later."),
)


def _water_notes(needs: Sequence[WaterNeed]) -> Iterable[str]:
    if any(need.rule for need in needs):
        yield tr("By the inch-a-week rule: this place's lowest and highest temperatures are not known.")
    else:
        yield tr("From evaporation at this place by its lowest and highest temperatures (FAO paper 56).")
    kinds = ", ".join(dict.fromkeys(need.what for need in needs if need.estimate))
    if kinds:
        yield tr("An estimate, for want of a table of their kind: {kinds}.", kinds=kinds)
    yield from map(tr, _WATER_NOTES)


def _water_row(need: WaterNeed, months: Sequence[dt.date], units: System) -> tuple[str, ...]:
    weeks = dict(need.weeks)
    area = format_area(math.pi * (need.across / 2) ** 2, units)
    cells = (both(weeks[month], units) if month in weeks else "" for month in months)
    return (f"{', '.join(need.things)} {need.what}", area, *cells)
