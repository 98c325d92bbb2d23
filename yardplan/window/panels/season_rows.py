"""What the season chart shows of a yard: bloom and harvest bands, frost, days in bloom together."""

from __future__ import annotations

from collections.abc import Mapping

from attrs import evolve, frozen

from yardplan.checks.pollination import outlooks_for
from yardplan.checks.survey import Survey
from yardplan.drawing.season import Band, FrostLine, SeasonChart, SeasonRow, Together
from yardplan.plants.bloom import BloomAt, BloomBand, bloom_of
from yardplan.plants.pollen_place import place_for
from yardplan.window.panels.days import day_number
from yardplan.yard.planting import PlantKey
from yardplan.yard.site import Site

_YEAR = 365


@frozen
class Season:
    """The chart without day and choice, the things behind each row, and the bands by plant."""

    chart: SeasonChart
    things: Mapping[str, tuple[str, ...]]
    bands: Mapping[str, BloomBand]
    note: str = ""

    def row_of(self, thing_id: str) -> str | None:
        """The row in which a thing is shown."""
        return next((row for row, ids in self.things.items() if thing_id in ids), None)


def _in_year(day: float) -> float:
    return (day - 1) % _YEAR + 1


def _band(band: BloomBand | None) -> Band | None:
    if band is None:
        return None
    return Band(_in_year(band.first), _in_year(band.fall), _in_year(band.full))


def _plants(survey: Survey) -> dict[PlantKey, list[str]]:
    """The things of the plan by variety, in the plan's order."""
    found: dict[PlantKey, list[str]] = {}
    yard = survey.yard
    placed = [(plant.plant, plant.id) for plant in yard.plantings]
    placed += [(row.plant, row.id) for row in yard.rows]
    placed += [(bed.plant, bed.id) for bed in yard.beds if bed.plant is not None]
    for key, thing_id in placed:
        found.setdefault(key, []).append(thing_id)
    return found


def frost_lines(site: Site) -> tuple[FrostLine, ...]:
    """The frost days of the site that are known."""
    lines = []
    if site.last_frost:
        lines.append(FrostLine(day_number(site.last_frost), "last frost, 5 years of 10", True))
    if site.first_frost:
        lines.append(FrostLine(day_number(site.first_frost), "first frost, 5 years of 10", False))
    return tuple(lines)


def bloom_for(survey: Survey) -> BloomAt:
    """Bloom at the survey's place, with the yard's own figures."""
    place = place_for(survey.yard.site, survey.rules.local, survey.catalogue.cultivars)
    return place.bloom or bloom_of(survey.yard.site)


def _note(bloom: BloomAt) -> str:
    """Why there are no dates, and what to do, where that is so."""
    if bloom.faults:
        return bloom.faults[0]
    if bloom.basis == "nothing":
        if bloom.too_mild:
            return "Winters are too mild here to reckon bloom: enter a bloom date you have seen (site card)."
        return "Bloom dates are not known here: give the place or its monthly means (site card)."
    return ""


def season_of(survey: Survey) -> Season:
    """The season of all that is planted, a row a variety."""
    bloom = bloom_for(survey)
    rows, things, bands = [], {}, {}
    for key, ids in _plants(survey).items():
        cultivar = survey.catalogue.cultivar(key)
        band = bloom.band(cultivar) if cultivar is not None else None
        label = ids[0]
        name = key.cultivar if len(ids) == 1 else f"{key.cultivar} ×{len(ids)}"
        rows.append(SeasonRow(thing=label, name=name, bloom=_band(band), pale=bloom.basis == "station"))
        things[label] = tuple(ids)
        if band is not None:
            bands[label] = band
    site = survey.yard.site
    chart = SeasonChart(rows=tuple(rows), frosts=frost_lines(site), southern=site.southern)
    return Season(chart, things, bands, _note(bloom) if rows else "")


def together_with(season: Season, survey: Survey, thing_id: str) -> tuple[Together, ...]:
    """The days that a plant and its best partner are in bloom together."""
    outlooks = outlooks_for(survey)
    outlook = outlooks[thing_id]
    if outlook is None or outlook.donor is None:
        return ()
    donor = outlooks.net.nodes[outlook.donor].id
    overlap = outlooks.net.verdict(outlook.donor, outlook.receiver).overlap
    one, other = season.row_of(thing_id), season.row_of(donor)
    if one is None or other is None or one == other or not {one, other} <= season.bands.keys():
        return ()
    first, second = season.bands[one], season.bands[other]
    start, end = max(first.first, second.first), min(first.fall, second.fall)
    if overlap is None or end <= start:
        return ()
    return (Together(one, other, _in_year(start), _in_year(end), round(overlap.shared)),)


def with_choice(season: Season, survey: Survey, chosen: frozenset[str], day: str, hour: float) -> SeasonChart:
    """The chart with the chosen day and what is selected."""
    rows = {row for row in map(season.row_of, chosen) if row is not None}
    together = together_with(season, survey, next(iter(chosen))) if len(chosen) == 1 else ()
    return evolve(
        season.chart, day=float(day_number(day)), hour=hour, chosen=frozenset(rows), together=together
    )
