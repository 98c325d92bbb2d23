"""Light at a spot: its hours, the bar of when in a day the sun reaches it and what blocks it, its year.

The bar reads without colour: clear sun is paper, sun through a crown is hatched, shade is solid; who casts
it stands below in words. Columns of the year have the open place's hours as outlines.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Mapping

from attrs import frozen
from PySide6.QtCore import QLineF, QRectF, Qt
from PySide6.QtGui import QPainter

from yardplan.drawing.breaking import broken
from yardplan.drawing.lettering import Type, draw_text, text_size
from yardplan.drawing.style import FINE, HAIR, THIN, colour, mitred, pen
from yardplan.drawing.view import PlanView
from yardplan.language import day_month, decimals, percent, tr
from yardplan.sun import clock
from yardplan.sun.clock import Clock
from yardplan.sun.scene import FAR_WORDS
from yardplan.sun.spot import Spot, Stretch
from yardplan.yard.site import Site

_HEAD = Type(12.0, "bold")
_TEXT = Type(11.0)
_SMALL = Type(10.0, ink="muted")
_MONTHS = "JFMAMJJASOND"
_BAR, _YEAR, _GAP, _PAD = 20.0, 64.0, 7.0, 10.0
#: Lines of who blocks, at most.
_LINES = 5
#: From here on a stretch counts as clear sun, and below as full shade.
_CLEAR, _DARK = 0.98, 0.02
_SHADE, _DAPPLE = 0.45, 0.12


@frozen(kw_only=True)
class SpotChart:
    """What is drawn: the spot, names of things by id, site and clock; `width` in style units."""

    spot: Spot
    names: Mapping[str, str]
    site: Site
    width: float = 300.0
    clock: Clock = "zone"


def spot_lines(chart: SpotChart) -> list[str]:
    """The figures in words: season, then morning, midsummer, darkest month and share of open light."""
    light = chart.spot.season
    return [
        tr("{hours} h of direct sun a day", hours=_tenth(light.hours)),
        tr("of {hours} h in the open; {share} of open light", hours=_tenth(light.open_hours),
           share=percent(light.open_light)),
        tr("before 10 by the sun {hours} h; midsummer {midsummer} h", hours=_tenth(light.hours_morning),
           midsummer=_tenth(light.hours_midsummer)),
    ]


def _figure_lines(chart: SpotChart, room: float, view: PlanView) -> list[tuple[str, Type]]:
    """The figures in words, each on as many lines as it needs, with its type."""
    lines = []
    for number, text in enumerate(spot_lines(chart)):
        face = _TEXT if number else _HEAD
        lines += [(piece, face) for piece in broken(text, room, face, view.unit)]
    return lines


def _day_title(chart: SpotChart) -> str:
    day = chart.spot.day
    by = tr("sun time") if chart.clock == "solar" else tr("local time")
    return tr("{day}, {clock}: {hours} of {open} h", day=day_month(day.day.month, day.day.day), clock=by,
              hours=_tenth(day.hours), open=_tenth(day.open_hours))


def _broken(texts: Iterable[str], room: float, view: PlanView) -> list[str]:
    return [piece for text in texts for piece in broken(text, room, _TEXT, view.unit)]


def _tenth(hours: float) -> str:
    return decimals(f"{hours:.1f}")


def blocked_lines(chart: SpotChart) -> list[str]:
    """Who blocks the sun, from when to when by the site's clock, in order; the shortest left out."""
    shaded = [one for one in chart.spot.day.bar if one.by is not None and one.light < _CLEAR]
    longest = sorted(shaded, key=_minutes, reverse=True)[:_LINES]
    return [_blocked(one, chart) for one in shaded if one in longest]


def _minutes(one: Stretch) -> float:
    return (one.end - one.start).total_seconds() / 60.0


def _blocked(one: Stretch, chart: SpotChart) -> str:
    by = one.by or ""
    name = tr(FAR_WORDS[by]) if by in FAR_WORDS else chart.names.get(by, by)
    start, end = (clock.clock_text(at, chart.site, chart.clock) for at in (one.start, one.end))
    if one.light <= _DARK:
        return tr("{start} to {end} {thing}", start=start, end=end, thing=name)
    return tr("{start} to {end} {thing}, {share} through", start=start, end=end, thing=name,
              share=percent(one.light))


def chart_height(chart: SpotChart, view: PlanView, wide: float | None = None) -> float:
    """Device pixels that the chart needs in a box `wide` device pixels, its own width where none is given."""
    u, line = view.unit, _line(view)
    room = (chart.width * u if wide is None else wide) - 2 * _PAD * u
    day = _broken([_day_title(chart), *blocked_lines(chart)], room, view)
    texts = len(_figure_lines(chart, room, view)) + len(day) + 4
    return texts * line + (_BAR + _YEAR + 4 * _GAP + 2 * _PAD) * u


def _line(view: PlanView) -> float:
    return text_size("0", _TEXT, view.unit)[1] * 1.15


def draw_spot_chart(painter: QPainter, view: PlanView, box: QRectF, chart: SpotChart) -> float:
    """Draw the chart into a box from its top; returns the height used, device pixels."""
    painter.save()
    u = view.unit
    x, y = box.left() + _PAD * u, box.top() + _PAD * u
    wide = box.width() - 2 * _PAD * u
    for text, face in _figure_lines(chart, wide, view):
        draw_text(painter, view, QRectF(x, y, 0, 0), text, face)
        y += _line(view)
    y = _draw_day(painter, view, QRectF(x, y + _GAP * u, wide, 0), chart)
    y = _draw_year(painter, view, QRectF(x, y + _GAP * u, wide, 0), chart)
    painter.restore()
    return y + _PAD * u - box.top()


def _hours(chart: SpotChart) -> tuple[float, float]:
    """First and last whole clock hour of the bar."""
    bar = chart.spot.day.bar
    start, end = _clock(bar[0].start, chart), _clock(bar[-1].end, chart)
    return math.floor(start), math.ceil(end if end > start else end + 24.0)


def _clock(at: object, chart: SpotChart) -> float:
    return clock.shown(at, chart.site, chart.clock)[1]  # type: ignore[arg-type]


def _draw_day(painter: QPainter, view: PlanView, at: QRectF, chart: SpotChart) -> float:
    """The day's heading, bar, clock and who blocks; returns the y below."""
    day, u = chart.spot.day, view.unit
    y = _draw_lines(painter, view, at, at.top(), [_day_title(chart)])
    if not day.bar:
        low = tr("the sun does not rise high enough")
        draw_text(painter, view, QRectF(at.left(), y, 0, 0), low, _SMALL)
        return y + _line(view)
    bar = QRectF(at.left(), y, at.width(), _BAR * u)
    _draw_bar(painter, view, bar, chart)
    y = bar.bottom() + _line(view)
    return _draw_lines(painter, view, at, y, blocked_lines(chart))


def _draw_lines(painter: QPainter, view: PlanView, at: QRectF, y: float, texts: Iterable[str]) -> float:
    """Texts below each other from `y` down, none wider than the place; returns the y below."""
    for text in _broken(texts, at.width(), view):
        draw_text(painter, view, QRectF(at.left(), y, 0, 0), text, _TEXT)
        y += _line(view)
    return y


def _draw_bar(painter: QPainter, view: PlanView, bar: QRectF, chart: SpotChart) -> None:
    first, last = _hours(chart)
    scale = bar.width() / (last - first)
    start = _clock(chart.spot.day.bar[0].start, chart)
    left = bar.left() + (start - first) * scale
    for one in chart.spot.day.bar:
        width = _minutes(one) / 60.0 * scale
        _draw_stretch(painter, view, QRectF(left, bar.top(), width, bar.height()), one.light)
        left += width
    painter.setPen(mitred(pen("ink", FINE, view.unit)))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawRect(bar)
    hours, widest = last - first, text_size("20", _SMALL, view.unit)[0] + 4 * view.unit
    step = next((step for step in (2, 4, 6) if step * scale >= widest and hours <= 8 * step), 12)
    for hour in range(int(first), int(last) + 1, step):
        x = bar.left() + (hour - first) * scale
        painter.drawLine(QLineF(x, bar.bottom(), x, bar.bottom() + 3 * view.unit))
        text = f"{hour % 24}"
        wide = text_size(text, _SMALL, view.unit)[0]
        x = min(max(x - wide / 2, bar.left()), bar.right() - wide)
        draw_text(painter, view, QRectF(x, bar.bottom() + 2 * view.unit, 0, 0), text, _SMALL)


def _draw_stretch(painter: QPainter, view: PlanView, box: QRectF, light: float) -> None:
    """Paper where the sun is clear, hatched where some gets through, solid in shade."""
    if light >= _CLEAR:
        return
    painter.fillRect(box, colour("ink", _SHADE if light <= _DARK else _DAPPLE))
    if light > _DARK:
        painter.setPen(pen("ink", HAIR, view.unit))
        gap = 4.0 * view.unit
        for step in range(int((box.width() + box.height()) / gap) + 1):
            x = box.left() + step * gap
            top, bottom = min(x, box.right()), max(x - box.height(), box.left())
            painter.drawLine(QLineF(top, box.top() + (x - top), bottom, box.top() + (x - bottom)))


def _draw_year(painter: QPainter, view: PlanView, at: QRectF, chart: SpotChart) -> float:
    """Columns of the months: hours at the spot, solid, inside those of an open place; returns the y below."""
    u = view.unit
    draw_text(painter, view, QRectF(at.left(), at.top(), 0, 0), tr("Hours a day through the year"), _TEXT)
    top = at.top() + _line(view) + _line(view)
    most = max(*chart.spot.open_months, 1.0)
    column = at.width() / 12.0
    for month, (got, open_) in enumerate(zip(chart.spot.months, chart.spot.open_months, strict=True)):
        left, high = at.left() + month * column, _YEAR * u
        whole = QRectF(left + 2 * u, top + high * (1 - open_ / most), column - 4 * u, high * open_ / most)
        filled = QRectF(whole.left(), top + high * (1 - got / most), whole.width(), high * got / most)
        painter.fillRect(filled, colour("ink", 0.30))
        painter.setPen(mitred(pen("ink", THIN, u)))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawRect(whole)
        _centred(painter, view, left + column / 2, whole.top() - _line(view), f"{got:.0f}")
        _centred(painter, view, left + column / 2, top + high, _MONTHS[month])
    return top + _YEAR * u + _line(view)


def _centred(painter: QPainter, view: PlanView, x: float, y: float, text: str) -> None:
    wide = text_size(text, _SMALL, view.unit)[0]
    draw_text(painter, view, QRectF(x - wide / 2, y, 0, 0), text, _SMALL)
