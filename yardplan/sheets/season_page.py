"""The season on paper: bloom, partners in bloom, harvest and frost of every variety, with a key."""

from __future__ import annotations

from collections.abc import Sequence

from attrs import evolve
from PySide6.QtCore import QRectF

from yardplan.checks.survey import Survey
from yardplan.drawing.lettering import FACT
from yardplan.drawing.season import SeasonChart, SeasonLayout, draw_season
from yardplan.drawing.season_picture import GUTTER, season_chart
from yardplan.drawing.style import UNIT_MM
from yardplan.language import later, tr
from yardplan.plants.bloom import BloomAt
from yardplan.plants.heat import day_of
from yardplan.plants.pollen_place import place_for
from yardplan.plants.season import overlaps, season_lines
from yardplan.sheets.document import Page
from yardplan.sheets.paper import Paper
from yardplan.sheets.surface import Surface
from yardplan.sheets.tables import MARGIN, draw_foot, draw_page_title, put

#: Where the chart begins, and height of a row and of its months and frost words, millimetres.
_TOP, _ROW, _HEAD = 26.0, 6.2, 14.0
#: Room for the words on partners, style units.
_ASIDE = 190.0
_LINE = 4.6
_KEY = (
    later("Petal: from first flower over full bloom (dot) to petal fall; dashed where the dates come from "
          "another place or the bloom class is not known. Hatched bar: ripe."),
    later("Pale ends: all of it may lie so much earlier or later in the average year. Dashed line: frost "
          "dates."),
)


def season_pages(survey: Survey, paper: Paper, day: str = "") -> tuple[Page, ...]:
    """Pages of the season chart; `day` (`MM-DD`) is marked."""
    site = survey.yard.site
    place = place_for(site, survey.rules.local, survey.catalogue.cultivars)
    lines = season_lines(survey.stand, place, site)
    chart = evolve(season_chart(site, lines, overlaps(lines, place)), together=())
    if day:
        chart = evolve(chart, day=day_of(day))
    notes = _notes(place.bloom, bool(lines))
    room = paper.high - _TOP - MARGIN - _HEAD - _LINE * len(notes) - 4.0
    each = max(1, int(room / _ROW))
    parts = [chart.rows[at:at + each] for at in range(0, len(chart.rows), each)] or [()]
    return tuple(
        Page(paper, _title(number),
             _SeasonPage(evolve(chart, rows=rows), paper, site.name, notes, (number + 1, len(parts))))
        for number, rows in enumerate(parts)
    )


def _title(number: int) -> str:
    return tr("{title}, page {n}", title=tr("Season"), n=number + 1) if number else tr("Season")


def _notes(bloom: BloomAt | None, planted: bool) -> tuple[str, ...]:
    """The key, and what the dates rest on."""
    if not planted:
        return (tr("Nothing is planted yet."),)
    key = tuple(map(tr, _KEY))
    if bloom is not None and bloom.basis == "nothing" and bloom.too_mild:
        return (*key, tr("Winters are too mild here to reckon bloom: give one date of bloom seen here."))
    if bloom is None or bloom.basis == "nothing":
        words = tr("Bloom is not dated here: give twelve monthly means or one date of bloom seen here.")
        return (*key, words)
    rests = {
        "monthly means": tr("Bloom follows from the monthly mean temperatures of the site"),
        "observed date": tr("Bloom is set right by what was seen on the spot"),
        "station": tr("Bloom is moved here from {place}",
                      place=bloom.station.name if bloom.station else tr("another place")),
    }[bloom.basis]
    error = tr("{fact}: about {n} days either way.", fact=rests, n=f"{bloom.error:.0f}")
    return (*key, error, *bloom.faults)


class _SeasonPage:
    """Draws one page."""

    def __init__(
        self, chart: SeasonChart, paper: Paper, name: str, notes: Sequence[str], count: tuple[int, int]
    ) -> None:
        self.chart, self.paper, self.name = chart, paper, name
        self.notes, self.count = notes, count

    def __call__(self, surface: Surface) -> None:
        draw_page_title(surface, tr("Season"), self.name)
        high = _HEAD + _ROW * max(1, len(self.chart.rows))
        box = surface.rect(MARGIN, _TOP, self.paper.wide - 2 * MARGIN, high)
        draw_season(surface.painter, SeasonLayout(
            chart=self.chart, box=QRectF(box), unit=surface.unit, row_height=_ROW / UNIT_MM, aside=_ASIDE,
            gutter=GUTTER, vector=True,
        ))
        for number, note in enumerate(self.notes):
            put(surface, MARGIN, _TOP + high + 3.0 + number * _LINE, note, FACT)
        number, of = self.count
        draw_foot(surface, self.paper, tr("page {n} of {count}", n=number, count=of) if of > 1 else "")
