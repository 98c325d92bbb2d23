"""The legend of the light overlay: each class with its tone, its limits and its name."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QPainter

from yardplan.drawing.lettering import Type, draw_text, text_size
from yardplan.drawing.light_picture import tones
from yardplan.drawing.style import THIN, colour, mitred, pen
from yardplan.drawing.view import PlanView
from yardplan.language import day_month, decimals, later, tr
from yardplan.sun.classes import Measure, classes
from yardplan.sun.light import LightReport

_HEAD = Type(11.0, "medium")
_LINE = Type(11.0)
_SWATCH, _GAP, _PAD = 22.0, 7.0, 8.0
TITLE = later("Direct sun, hours a day")


def legend_words(measure: Measure = "hours") -> list[str]:
    """A line a class, most first: `8 h and more: full sun for fruit`."""
    held = classes(measure)
    unit = "%" if measure.startswith("share") else tr("h")
    lines = []
    for number, one in reversed(list(enumerate(held))):
        if number == len(held) - 1:
            span = tr("{low} {unit} and more", low=decimals(f"{one.low:g}"), unit=unit)
        else:
            words = later("{low} to {high} {unit}") if one.low else later("under {high} {unit}")
            above = decimals(f"{held[number + 1].low:g}")
            span = tr(words, low=decimals(f"{one.low:g}"), high=above, unit=unit)
        lines.append(f"{span}: {tr(one.name)}")
    return lines


def say_day(month_day: str) -> str:
    """`1 April` for `04-01`."""
    month, day = map(int, month_day.split("-"))
    return day_month(month, day)


def report_note(report: LightReport) -> str:
    """Of which days and which size a report's ground is, and what open ground has."""
    first, last = (say_day(day) for day in report.season)
    if first == last:
        days = tr("on {day}", day=first)
    else:
        days = tr("mean, {first} to {last}", first=first, last=last)
    size = tr("full size") if report.year is None else tr("at planting")
    if report.year:
        size = tr("year {n}", n=report.year)
    open_ = tr("open ground {hours} h", hours=decimals(f"{report.open_hours:.1f}"))
    if report.open_hours <= 0.0:
        open_ = tr("the sun does not rise high enough")
    return "\n".join((days, f"{size}; {open_}", tr("clear sky assumed")))


def _notes(note: str) -> list[str]:
    return note.split("\n") if note else []


def legend_size(
    view: PlanView, note: str = "", *, measure: Measure = "hours", title: str = TITLE
) -> tuple[float, float]:
    """Width and height that the legend needs, device pixels. `note` last lines, e.g. the season."""
    u = view.unit
    lines = legend_words(measure)
    wide = max(text_size(line, _LINE, u)[0] for line in lines) + (_SWATCH + _GAP) * u
    notes = [text_size(line, _LINE, u)[0] for line in _notes(note)]
    wide = max([wide, text_size(tr(title), _HEAD, u)[0], *notes])
    high = (len(lines) + 1 + len(_notes(note))) * _step(u)
    return wide + 2 * _PAD * u, high + 2 * _PAD * u


def _step(unit: float) -> float:
    # Whole pixels, on which letters are set: else the lines stand unevenly.
    return float(round(text_size("0", _LINE, unit)[1] * 1.25))


def draw_light_legend(
    painter: QPainter, view: PlanView, corner: QPointF, note: str = "", *, measure: Measure = "hours",
    title: str = TITLE,
) -> QRectF:
    """Draw the legend with its top left at `corner`; returns the box it covers."""
    u = view.unit
    box = QRectF(corner.x(), corner.y(), *legend_size(view, note, measure=measure, title=title))
    painter.save()
    painter.setPen(mitred(pen("ink", THIN, u)))
    painter.setBrush(colour("paper"))
    painter.drawRect(box)
    x, y = box.left() + _PAD * u, box.top() + _PAD * u
    draw_text(painter, view, QRectF(x, y, 0, 0), tr(title), _HEAD)
    for words, tone in zip(legend_words(measure), reversed(tones(measure)), strict=True):
        y += _step(u)
        _swatch(painter, QRectF(x, y + 1.5 * u, _SWATCH * u, _step(u) - 4 * u), tone, u)
        draw_text(painter, view, QRectF(x + (_SWATCH + _GAP) * u, y, 0, 0), words, _LINE)
    for line in _notes(note):
        y += _step(u)
        draw_text(painter, view, QRectF(x, y, 0, 0), line, _LINE)
    painter.restore()
    return box


def _swatch(painter: QPainter, box: QRectF, tone: float, unit: float) -> None:
    painter.setBrush(colour("ink", tone))
    painter.setPen(mitred(pen("leaf", THIN, unit)))
    painter.drawRect(box)
