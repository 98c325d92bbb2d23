"""The season chart as a picture file."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path

from attrs import evolve
from PySide6.QtCore import QRectF
from PySide6.QtGui import QGuiApplication, QImage, QPainter

from yardplan.drawing.season import (
    Band,
    FrostLine,
    SeasonChart,
    SeasonLayout,
    SeasonRow,
    Together,
    draw_season,
)
from yardplan.drawing.style import colour
from yardplan.language import tr, tr_n
from yardplan.plants.bloom import Overlap
from yardplan.plants.heat import YEAR, day_of
from yardplan.plants.season import SeasonLine
from yardplan.yard.site import Site

#: Width, height of one row, and height of the months and frost words, in pixels at 96 dpi.
_WIDTH, _ROW, _HEAD = 1440, 22, 56
#: Room for the words on partners at the right, and how many partners are named.
ASIDE, _PARTNERS = 210.0, 2
#: Room for keys and names at the left.
GUTTER = 190.0
_SCALE = 2.0


def _in_year(day: float) -> float:
    return (day - 1) % YEAR + 1


def season_chart(
    site: Site, lines: Sequence[SeasonLine], pairs: Sequence[tuple[SeasonLine, SeasonLine, Overlap]] = ()
) -> SeasonChart:
    """The chart of the lines: bloom, harvest, frost dates, and the days that pairs share."""
    frosts = []
    if site.last_frost:
        frosts.append(FrostLine(day_of(site.last_frost), tr("last frost, 5 years of 10"), True))
    if site.first_frost:
        frosts.append(FrostLine(day_of(site.first_frost), tr("first frost, 5 years of 10"), False))
    return SeasonChart(
        rows=tuple(_row(line, shared_words(line, pairs)) for line in lines), frosts=tuple(frosts),
        southern=site.southern,
        together=tuple(one for pair in pairs if (one := _together(*pair)) is not None),
    )


def shared_words(line: SeasonLine, pairs: Sequence[tuple[SeasonLine, SeasonLine, Overlap]]) -> str:
    """With whom a line blooms longest: `11 days with A3, 9 with A1`; kinds that cannot cross left out."""
    found = sorted(
        ((-round(shared.shared), other.things[0]) for one, two, shared in pairs
         for me, other in ((one, two), (two, one)) if me is line and shared.shared >= 0.5),
    )[:_PARTNERS]
    if not found:
        return ""
    (days, first), *more = ((-less, thing) for less, thing in found)
    words = [tr_n("{n} day with {thing}", "{n} days with {thing}", days, thing=first)]
    return ", ".join([*words, *(tr("{n} with {thing}", n=days, thing=thing) for days, thing in more)])


def _row(line: SeasonLine, shared: str) -> SeasonRow:
    bloom, harvest = line.bloom, line.harvest
    return SeasonRow(
        thing=line.things[0], name=line.cultivar.name,
        bloom=None if bloom is None else Band(
            _in_year(bloom.first), _in_year(bloom.fall), _in_year(bloom.full), bloom.error
        ),
        harvest=None if harvest is None else Band(
            _in_year(harvest.first), _in_year(harvest.last), error=harvest.spread
        ),
        pale=bloom is not None and (bloom.basis == "station" or not bloom.classed), shared=shared,
    )


def _together(one: SeasonLine, other: SeasonLine, shared: Overlap) -> Together | None:
    if one.bloom is None or other.bloom is None or shared.shared < 1:
        return None
    start, end = max(one.bloom.first, other.bloom.first), min(one.bloom.fall, other.bloom.fall)
    if end <= start:
        return None
    return Together(one.things[0], other.things[0], _in_year(start), _in_year(end), round(shared.shared))


def save_season(
    out: Path, site: Site, lines: Sequence[SeasonLine],
    pairs: Sequence[tuple[SeasonLine, SeasonLine, Overlap]] = (),
) -> bool:
    """Draw the chart into a PNG; False when it is no .png name or could not be written."""
    if out.suffix.lower() != ".png":
        return False
    # Text needs an application object; a run of the command line has none yet and no screen either.
    kept = QGuiApplication.instance() or QGuiApplication(["yardplan", "-platform", "offscreen"])
    width, height = round(_WIDTH * _SCALE), round((_HEAD + _ROW * max(1, len(lines))) * _SCALE)
    image = QImage(width, height, QImage.Format.Format_RGB32)
    image.fill(colour("paper"))
    painter = QPainter(image)
    # Frames of every pair would hide the bands: words in a column of their own name the best partners.
    chart = evolve(season_chart(site, lines, pairs), together=())
    draw_season(painter, SeasonLayout(
        chart=chart, box=QRectF(0, 0, width, height), unit=_SCALE, ratio=1.0, row_height=_ROW, aside=ASIDE,
        gutter=GUTTER,
    ))
    painter.end()
    saved = image.save(str(out))
    del kept
    return bool(saved)
