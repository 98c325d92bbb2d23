"""The year's care as rows of a list: of one month, of the year, or the sprays that were not placed."""

from __future__ import annotations

import calendar
import datetime as dt
from collections.abc import Iterable, Mapping
from typing import Any, Literal

from attrs import evolve, frozen
from PySide6.QtCore import QAbstractListModel, QModelIndex, QObject, QPersistentModelIndex, Qt

from yardplan.care.tasks import CarePlan, CareTask, Refusal, care_plan
from yardplan.care.together import Work, together
from yardplan.language import tr
from yardplan.plants.sources import written_out
from yardplan.window.open_yard import OpenYard
from yardplan.window.panels.days import MONTHS, SHORT_MONTHS
from yardplan.yard.change import Change

#: Role under which a row hands out its CareLine.
LINE_ROLE = int(Qt.ItemDataRole.UserRole) + 1

View = Literal["month", "year", "refused"]


@frozen(kw_only=True)
class CareLine:
    """One row: work that is done together, or one refused spray.

    `heading` stands above it where a new month begins; `done` the day all of it was marked done.
    """

    work: Work | None = None
    refusal: Refusal | None = None
    heading: str = ""
    done: str | None = None

    @property
    def shown(self) -> Work | Refusal:
        """The work, or the refusal."""
        found = self.work or self.refusal
        assert found is not None
        return found

    @property
    def things(self) -> tuple[str, ...]:
        """Keys of all the plants."""
        return self.shown.things

    @property
    def title(self) -> str:
        """What is to be done, how often, and for which years where no planting year is given."""
        if self.work is None:
            return self.refusal.title if self.refusal is not None else ""
        task = self.work.first
        words = f"{task.title}, {task.repeats}" if task.repeats else task.title
        return f"{words} ({task.ages})" if task.ages else words

    @property
    def plants(self) -> str:
        """Varieties or kinds with the keys on the plan."""
        if self.refusal is not None:
            return f"{self.refusal.what}: {', '.join(self.refusal.things)}"
        tasks = self.work.tasks if self.work is not None else ()
        return "; ".join(f"{one.what}: {', '.join(one.things)}" for one in tasks)

    @property
    def dates(self) -> str:
        """`about 24 Apr to 9 May`."""
        first, last = short(self.shown.start), short(self.shown.end)
        days = first if first == last else tr("{first} to {last}", first=first, last=last)
        return tr("about {days}", days=days) if self.work is not None and self.work.about else days

    @property
    def spoken(self) -> str:
        """Everything in one run of words, for screen readers."""
        state = tr("done") if self.done else tr("to do") if self.work is not None else tr("not placed")
        return f"{self.title}. {self.plants}. {self.dates}. {state}."

    @property
    def details(self) -> str:
        """All that is known of it: when, why, how much, cautions, sources."""
        if self.work is None:
            because = self.refusal.because if self.refusal is not None else ""
            return tr("No spray on these days, in bloom or being picked: {plants}.", plants=because)
        work, task = self.work, self.work.first
        lines = (
            tr("Done on {day}.", day=self.done) if self.done else "",
            _sentence(task.when),
            _sentence(task.why),
            *(_sentence(amount) for amount in work.amounts),
            *(_sentence(line) for line in work.weeks),
            *work.notes,
            *work.cautions,
            _sentence(_basis(task)),
            tr("From memory, not confirmed by a source.") if task.memory else "",
            tr("Source: {sources}", sources="; ".join(written_out(work.sources))),
        )
        return "\n".join(line for line in lines if line)


def _sentence(text: str) -> str:
    return f"{text[:1].upper()}{text[1:]}." if text and not text.endswith(".") else text


def _basis(task: CareTask) -> str:
    if task.basis:
        return tr("dates {basis}", basis=task.basis)
    days = f"{task.about:.0f}"
    return tr("dates of an average year, about {days} days either way", days=days) if task.about else ""


def short(day: dt.date) -> str:
    """`24 Apr`."""
    return tr("{day} {month}", day=day.day, month=tr(SHORT_MONTHS[day.month - 1]))


def month_days(year: int, month: int) -> tuple[dt.date, dt.date]:
    """First and last day of a month."""
    return dt.date(year, month, 1), dt.date(year, month, calendar.monthrange(year, month)[1])


def _done(work: Work | None, marks: Mapping[str, str]) -> str | None:
    """The latest day of the marks, when every task has one."""
    days = [marks.get(task.id) for task in work.tasks] if work is not None else []
    known = [day for day in days if day is not None]
    return max(known) if known and len(known) == len(days) else None


_Index = QModelIndex | QPersistentModelIndex


class CareRows(QAbstractListModel):
    """Follows the open yard while it is watched; dates are reckoned anew only when they can change."""

    def __init__(self, open_yard: OpenYard, year: int, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._open_yard = open_yard
        self._plan: CarePlan | None = None
        self._read: tuple[CarePlan, list[Work]] | None = None
        self._lines: list[CareLine] = []
        self.year, self.month = year, 1
        self.view: View = "month"
        self.kind = ""
        self.only_open = False
        self._watched = True
        open_yard.shown.connect(self._shown)
        open_yard.loaded.connect(self.reckon)

    @property
    def plan(self) -> CarePlan:
        """The care of the year shown."""
        if self._plan is None:
            self._plan = care_plan(self._open_yard.survey, self.year, self._open_yard.units)
        return self._plan

    @property
    def _works(self) -> list[Work]:
        """The plan's tasks as they are read together."""
        if self._read is None or self._read[0] is not self.plan:
            self._read = (self.plan, together(self.plan.tasks))
        return self._read[1]

    def rowCount(self, parent: _Index = QModelIndex()) -> int:  # noqa: B008 - Qt's own signature
        return 0 if parent.isValid() else len(self._lines)

    def data(self, index: _Index, role: int = int(Qt.ItemDataRole.DisplayRole)) -> Any:
        if not index.isValid() or not 0 <= index.row() < len(self._lines):
            return None
        line = self._lines[index.row()]
        if role == LINE_ROLE:
            return line
        if role in (int(Qt.ItemDataRole.DisplayRole), int(Qt.ItemDataRole.AccessibleTextRole)):
            return line.spoken
        if role == int(Qt.ItemDataRole.CheckStateRole) and line.work:
            return Qt.CheckState.Checked if line.done else Qt.CheckState.Unchecked
        return None

    def flags(self, index: _Index) -> Qt.ItemFlag:
        flags = Qt.ItemFlag.ItemIsEnabled | Qt.ItemFlag.ItemIsSelectable
        return flags | Qt.ItemFlag.ItemIsUserCheckable if self.view != "refused" else flags

    def line(self, number: int) -> CareLine:
        """The row of that number."""
        return self._lines[number]

    def show(
        self, *, year: int | None = None, month: int | None = None, view: View | None = None,
        kind: str | None = None, only_open: bool | None = None,
    ) -> None:
        """Show another year, month, view, kind of work, or only what is still to do."""
        if year is not None and year != self.year:
            self.year, self._plan = year, None
        self.month = self.month if month is None else month
        self.view = self.view if view is None else view
        self.kind = self.kind if kind is None else kind
        self.only_open = self.only_open if only_open is None else only_open
        self._put()

    def watch(self, on: bool) -> None:
        """Follow the yard only while somebody looks: dates of a large yard take a fifth of a second."""
        self._watched = on
        if on and self._plan is None:
            self._put()

    def reckon(self) -> None:
        """Reckon all dates anew, now or when somebody looks."""
        self._plan = None
        if self._watched:
            self._put()

    def mark(self, number: int, done: bool, today: dt.date | None = None) -> None:
        """Mark a task done, or to do again: one undo step of the yard."""
        work = self._lines[number].work
        if work is None:
            return
        yard = self._open_yard.yard
        names = {task.id for task in work.tasks}
        marks = {name: day for name, day in yard.done.items() if name not in names}
        if done:
            marks |= dict.fromkeys(names, (today or dt.date.today()).isoformat())
        title = work.first.title
        text = tr("Mark done: {task}", task=title) if done else tr("Mark to do: {task}", task=title)
        self._open_yard.commit(text, evolve(yard, done=marks))

    def _shown(self, change: Change) -> None:
        if self._open_yard.on_trial or self._plan is None:
            return
        if change.only_records:
            self._remark()  # cheap, and rows keep their place
        else:
            self.reckon()

    def _remark(self) -> None:
        """Take up the done marks; rows keep their place unless done ones are hidden."""
        if self.only_open:
            self._put()
            return
        marks = self._open_yard.shown_yard.done
        self._lines = [evolve(line, done=_done(line.work, marks)) for line in self._lines]
        if self._lines:
            self.dataChanged.emit(self.index(0), self.index(len(self._lines) - 1))

    def _put(self) -> None:
        self.beginResetModel()
        self._lines = self._refused() if self.view == "refused" else self._tasks()
        self.endResetModel()

    def _refused(self) -> list[CareLine]:
        return [CareLine(refusal=one) for one in sorted(self.plan.refusals, key=lambda one: one.start)]

    def _tasks(self) -> list[CareLine]:
        """Tasks of the month or the year, with a heading where a month begins."""
        marks = self._open_yard.shown_yard.done
        lines: list[CareLine] = []
        before = ""
        for work in self._wanted():
            done = _done(work, marks)
            if self.only_open and done:
                continue
            heading = "" if self.view == "month" else self._heading(work)
            lines.append(CareLine(work=work, heading=heading if heading != before else "", done=done))
            before = heading
        return lines

    def _wanted(self) -> Iterable[Work]:
        first, last = month_days(self.year, self.month)
        for work in self._works:
            if self.kind and work.first.kind != self.kind:
                continue
            if self.view == "year" or (work.start <= last and work.end >= first):
                yield work

    def _heading(self, work: Work) -> str:
        if work.start.year < self.year:
            return tr("Begun in {year}", year=self.year - 1)
        return tr(MONTHS[work.start.month - 1])
