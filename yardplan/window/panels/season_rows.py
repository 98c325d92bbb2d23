"""What the season chart shows of a yard: bloom and harvest bands, frost, days in bloom together."""

from __future__ import annotations

from attrs import evolve, frozen

from yardplan.checks.pollination import outlooks_for
from yardplan.checks.survey import Survey
from yardplan.drawing.season import SeasonChart, SeasonRow, Together
from yardplan.drawing.season_picture import season_chart
from yardplan.language import tr
from yardplan.plants.bloom import BloomAt, bloom_of
from yardplan.plants.pollen_place import place_for
from yardplan.plants.season import SeasonLine, overlaps, season_lines
from yardplan.window.panels.days import day_number, day_of_number, say_day


@frozen
class Season:
    """The lines of the planned varieties, the chart of them without day and choice, and what is missing."""

    lines: tuple[SeasonLine, ...]
    chart: SeasonChart
    note: str = ""

    def line_of(self, thing_id: str) -> SeasonLine | None:
        """The line in which a thing is shown."""
        return next((line for line in self.lines if thing_id in line.things), None)

    def things_of(self, row: str) -> tuple[str, ...]:
        """The ids behind a row of the chart, named by its first thing."""
        line = self.line_of(row)
        return line.things if line is not None else ()


def _note(bloom: BloomAt) -> str:
    """Why there are no dates, and what to do, where that is so."""
    if bloom.faults:
        return bloom.faults[0]
    if bloom.basis == "nothing":
        if bloom.too_mild:
            return tr(
                "Winters are too mild here to reckon bloom: enter a bloom day you have seen (site card)."
            )
        return tr("Bloom dates are not known here: give the place or its monthly means (site card).")
    return ""


def season_of(survey: Survey) -> Season:
    """The season of all that is planted, a line a variety, earliest bloom first."""
    site = survey.yard.site
    place = place_for(site, survey.rules.local, survey.catalogue.cultivars)
    lines = tuple(season_lines(survey.stand, place, site))
    chart = evolve(season_chart(site, lines, overlaps(lines, place)), together=())
    rows = tuple(
        evolve(row, name=f"{row.name} ×{len(line.things)}") if len(line.things) > 1 else row
        for row, line in zip(chart.rows, lines, strict=True)
    )
    note = _note(place.bloom or bloom_of(site)) if lines else ""
    return Season(lines, evolve(chart, rows=rows), note)


def together_with(season: Season, survey: Survey, thing_id: str) -> tuple[Together, ...]:
    """The days that a plant and its best partner are in bloom together."""
    outlooks = outlooks_for(survey)
    outlook = outlooks[thing_id]
    if outlook is None or outlook.donor is None:
        return ()
    one = season.line_of(thing_id)
    other = season.line_of(outlooks.net.nodes[outlook.donor].id)
    overlap = outlooks.net.verdict(outlook.donor, outlook.receiver).overlap
    if one is None or other is None or one is other or overlap is None:
        return ()
    return season_chart(survey.yard.site, (one, other), ((one, other, overlap),)).together


def with_choice(season: Season, survey: Survey, chosen: frozenset[str], day: str, hour: float) -> SeasonChart:
    """The chart with the chosen day and what is selected."""
    lines = [line for line in map(season.line_of, chosen) if line is not None]
    together = together_with(season, survey, next(iter(chosen))) if len(chosen) == 1 else ()
    rows = frozenset(line.things[0] for line in lines)
    return evolve(season.chart, day=float(day_number(day)), hour=hour, chosen=rows, together=together)


def row_words(row: SeasonRow) -> list[str]:
    """A row in sentences: bloom with its error, days shared with partners, harvest."""
    words = []
    if row.bloom is not None:
        first, last = _days(row.bloom.start), _days(row.bloom.end)
        plant = f"{row.thing} {row.name}"
        words.append(tr(
            "{plant} blooms {first} to {last}, {days} days either way",
            plant=plant, first=first, last=last, days=f"{row.bloom.error:.0f}",
        ) if row.bloom.error else tr("{plant} blooms {first} to {last}", plant=plant, first=first, last=last))
    if row.shared:
        words.append(tr("in bloom {shared}", shared=row.shared))
    if row.harvest is not None:
        words.append(
            tr(
                "{name} ripens {first} to {last}",
                name=row.name,
                first=_days(row.harvest.start),
                last=_days(row.harvest.end),
            )
        )
    return words


def _days(day: float) -> str:
    return say_day(day_of_number(round(day)))
