"""Charts of the harvest: when each variety is picked, how much a week, how much in each of ten years."""

from __future__ import annotations

import datetime as dt
import math
from collections.abc import Sequence

from attrs import frozen
from PySide6.QtCore import QRectF

from yardplan.care.harvest import Amount, HarvestCrop, HarvestPlan
from yardplan.care.tables import figures
from yardplan.care.watering import month_word
from yardplan.drawing.lettering import FACT, Type, text_size
from yardplan.drawing.style import CAUTION_DASH, FINE, HAIR, MEDIUM, colour, pen
from yardplan.language import decimals, tr
from yardplan.sheets.document import Page
from yardplan.sheets.paper import Paper
from yardplan.sheets.surface import Surface
from yardplan.sheets.tables import MARGIN, draw_foot, draw_page_title, put
from yardplan.units import POUND, System

_NAME = Type(11.5)
_HEAD = Type(12.0, "bold")
_GLUT = Type(11.0, "bold", ink="caution", halo="paper")
#: Millimetres: a line of the picking chart, the room for names, where charts begin, the room above columns.
_LINE, _NAMES, _TOP, _ABOVE = 5.0, 62.0, MARGIN + 16.0, 9.0
#: Steps that a scale may have, times a power of ten.
_STEPS = (1.0, 2.0, 5.0, 10.0)


def harvest_pages(plan: HarvestPlan, paper: Paper, units: System, subtitle: str = "") -> tuple[Page, ...]:
    """The charts of a harvest, on as many pages as its varieties need; none where nothing is picked."""
    if not plan.crops:
        return ()
    lines = max(1, int((paper.high - _TOP - MARGIN - 8.0) / _LINE) - 1)
    parts = [plan.crops[i : i + lines] for i in range(0, len(plan.crops), lines)]
    span = _span(plan.crops)
    pages = [
        Page(paper, tr("Picking through the season"), _PickingPage(part, span, paper, subtitle))
        for part in parts
    ]
    if plan.weeks:
        pages.append(Page(paper, tr("Harvest by week and year"), _AmountPage(plan, paper, units, subtitle)))
    return tuple(pages)


def _span(crops: Sequence[HarvestCrop]) -> tuple[dt.date, dt.date]:
    """Whole months from the first picking to the last."""
    first, last = min(crop.first for crop in crops), max(crop.last for crop in crops)
    after = dt.date(last.year + last.month // 12, last.month % 12 + 1, 1)
    return first.replace(day=1), after


def step_of(most: float, lines: int = 5) -> float:
    """A round step that parts a scale up to `most` into at most so many lines."""
    if most <= 0:
        return 1.0
    power = 10.0 ** math.floor(math.log10(most / lines))
    return next(step * power for step in _STEPS if step * power * lines >= most * (1 - 1e-9))


@frozen(eq=False)
class _PickingPage:
    """A line for each variety: pale while it may begin or still go on, strong from the mean first picking."""

    crops: Sequence[HarvestCrop]
    span: tuple[dt.date, dt.date]
    paper: Paper
    subtitle: str

    def __call__(self, surface: Surface) -> None:
        draw_page_title(surface, tr("Picking through the season"), self.subtitle)
        bottom = _TOP + _LINE * (len(self.crops) + 1)
        self._months(surface, bottom)
        for number, crop in enumerate(self.crops):
            self._bar(surface, crop, _TOP + _LINE * (number + 1))
        note = tr("Filled: from the earliest to the latest first picking. Outlined: picking goes on.")
        put(surface, MARGIN, bottom + 2.0, note, FACT)
        draw_foot(
            surface, self.paper, tr("days of an average year; single years differ by a week or more")
        )

    def _x(self, day: dt.date) -> float:
        """Millimetres from the page's left edge."""
        first, last = self.span
        wide = self.paper.wide - 2 * MARGIN - _NAMES
        return MARGIN + _NAMES + wide * (day - first).days / (last - first).days

    def _months(self, surface: Surface, bottom: float) -> None:
        month = self.span[0]
        while month <= self.span[1]:
            x = self._x(month)
            surface.painter.setPen(pen("rule", HAIR, surface.unit))
            surface.painter.drawLine(surface.point(x, _TOP), surface.point(x, bottom))
            if month < self.span[1]:
                put(surface, x + 1.0, _TOP, month_word(month.month), FACT)
            month = dt.date(month.year + month.month // 12, month.month % 12 + 1, 1)

    def _bar(self, surface: Surface, crop: HarvestCrop, y: float) -> None:
        put(surface, MARGIN, y, crop.what, _NAME)
        day = dt.timedelta(days=1)
        begin, end = self._x(crop.first), self._x(crop.last + day)
        if crop.doubt:
            wide = text_size(crop.doubt, FACT, surface.unit)[0] / surface.dots
            put(surface, begin - wide - 1.5, y + 0.6, crop.doubt, FACT)
        surface.painter.setPen(pen("leaf", FINE, surface.unit))
        surface.painter.setBrush(colour("paper"))
        surface.painter.drawRect(_box(surface, begin, y + 0.9, end - begin, _LINE - 2.0))
        sure = self._x(crop.begins[1] + day)
        surface.painter.setBrush(colour("muted" if crop.by_month else "leaf"))
        surface.painter.drawRect(_box(surface, begin, y + 0.9, sure - begin, _LINE - 2.0))


@frozen(eq=False)
class _AmountPage:
    """Columns of each week and of each year: from the low to the high estimate, with the need across them."""

    plan: HarvestPlan
    paper: Paper
    units: System
    subtitle: str

    def __call__(self, surface: Surface) -> None:
        draw_page_title(surface, tr("Harvest by week and year"), self.subtitle)
        room = (self.paper.high - _TOP - MARGIN - 4.0) / 2
        unit = "lb" if self.units == "imperial" else "kg"
        weeks = self.plan.weeks
        names = [_week_name(weeks, number) for number in range(len(weeks))]
        title = tr("{unit} a week, {year}", unit=unit, year=self.plan.year)
        _columns(surface, self._field(_TOP, room), weeks, names, title,
                 self._by, self.plan.need, frozenset(week.start for week in self.plan.gluts))
        years = [str(amount.start.year) for amount in self.plan.years]
        title = tr("{unit} a year", unit=unit)
        _columns(surface, self._field(_TOP + room, room), self.plan.years, years, title, self._by)
        draw_foot(surface, self.paper, self._words(unit))

    @property
    def _by(self) -> float:
        """Figures shown for one kilogram."""
        return 1 / POUND if self.units == "imperial" else 1.0

    def _field(self, y: float, high: float) -> QRectF:
        return QRectF(MARGIN + 12.0, y + _ABOVE, self.paper.wide - 2 * MARGIN - 12.0, high - _ABOVE - 9.0)

    def _words(self, unit: str) -> str:
        """What the columns are, and where there is far too much or nothing."""
        words = [tr("filled: the low estimate; outlined: up to the high one")]
        if self.plan.need is not None:
            need = decimals(f"{self.plan.need * self._by:.1f}")
            words.append(tr("dashed: {need} {unit} a week for the household", need=need, unit=unit))
        if self.plan.gluts:
            over = tr("what the household needs") if self.plan.need is not None else tr("a usual week")
            times = decimals(f"{figures()['glut']:g}")
            words.append(tr("glut: more than {times} times {usual}", times=times, usual=over))
        return "; ".join(words)


def _week_name(weeks: Sequence[Amount], number: int) -> str:
    """The month's name at its first week, nothing at the others."""
    month = weeks[number].start.month
    if number and weeks[number - 1].start.month == month:
        return ""
    return month_word(month)


def _columns(
    surface: Surface, field: QRectF, amounts: Sequence[Amount], names: Sequence[str], title: str, by: float,
    need: float | None = None, gluts: frozenset[dt.date] = frozenset(),
) -> None:
    """A chart of columns in a field (millimetres), figures times `by`; `gluts` are marked by a word."""
    most = max([amount.high for amount in amounts] + [need or 0.0]) * by
    step = step_of(most)
    top = step * math.ceil(most / step - 1e-9) or 1.0
    put(surface, field.left() - 12.0, field.top() - _ABOVE, title, _HEAD)
    for number in range(round(top / step) + 1):
        y = field.bottom() - field.height() * number * step / top
        surface.painter.setPen(pen("rule", MEDIUM if number == 0 else HAIR, surface.unit))
        surface.painter.drawLine(surface.point(field.left(), y), surface.point(field.right(), y))
        figure = decimals(f"{number * step:g}")
        wide = text_size(figure, FACT, surface.unit)[0] / surface.dots
        put(surface, field.left() - wide - 1.5, y - 1.5, figure, FACT)
    each = field.width() / len(amounts)
    surface.painter.setBrush(colour("crown"))
    for number, (amount, name) in enumerate(zip(amounts, names, strict=True)):
        x = field.left() + each * number
        low, high = (field.bottom() - field.height() * kg * by / top for kg in (amount.low, amount.high))
        surface.painter.setPen(pen("leaf", FINE, surface.unit))
        surface.painter.setBrush(colour("leaf"))
        surface.painter.drawRect(_box(surface, x + each * 0.15, low, each * 0.7, field.bottom() - low))
        surface.painter.setBrush(colour("crown"))
        surface.painter.drawRect(_box(surface, x + each * 0.15, high, each * 0.7, low - high))
        put(surface, x + each * 0.1, field.bottom() + 1.0, name, FACT)
        if amount.start in gluts:
            put(surface, x + each * 0.1, high - 3.6, tr("glut"), _GLUT)
    if need is not None:
        y = field.bottom() - field.height() * need * by / top
        surface.painter.setPen(pen("caution", FINE, surface.unit, CAUTION_DASH))
        surface.painter.drawLine(surface.point(field.left(), y), surface.point(field.right(), y))


def _box(surface: Surface, x: float, y: float, wide: float, high: float) -> QRectF:
    return surface.rect(x, y, max(wide, 0.0), max(high, 0.0))
