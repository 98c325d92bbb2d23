"""The care calendar as an iCalendar file (RFC 5545): all-day events that a calendar takes in again unchanged.

Every event keeps its UID from export to export, so that a second import replaces and does not double.
DTEND is the day after the last (it is exclusive); work that repeats in its window carries a rule that ends
with the window, never a yearly one: dates that hang on bloom move.
"""

from __future__ import annotations

import datetime as dt
import unicodedata
import uuid
from collections.abc import Sequence
from typing import TYPE_CHECKING

from yardplan import __version__
from yardplan.care.tasks import CarePlan, CareTask
from yardplan.language import all_of, tr
from yardplan.plants.sources import written_out
from yardplan.yard.identity import lasting_name
from yardplan.yard.yard import Yard

if TYPE_CHECKING:
    from icalendar import Event

PRODUCT = f"-//yardplan//yardplan {__version__}//EN"
_DAY = dt.timedelta(days=1)
#: Unicode classes of control characters and line and paragraph ends.
_UNFIT = ("Cc", "Zl", "Zp")
#: Names of events are made within this space, so that two programs never make the same one.
_SPACE = uuid.uuid5(uuid.NAMESPACE_URL, "urn:yardplan:care")


class CalendarError(RuntimeError):
    """The library that writes calendars is missing, said in words for a person."""


def uid(yard: Yard, task_id: str) -> str:
    """The lasting, unique name of a task's event: the same however the yard or its file is called."""
    return f"{uuid.uuid5(_SPACE, f'{lasting_name(yard)}/{task_id}')}@yardplan"


def calendar_file(
    plans: CarePlan | Sequence[CarePlan], yard: Yard, now: dt.datetime | None = None
) -> bytes:
    """One plan, or those of several years, as the bytes of an `.ics` file; marks of finished work come along.

    A task over New Year stands in two plans and once in the file. Raises CalendarError when the calendar
    library is not installed.
    """
    try:
        from icalendar import Calendar
    except ImportError as error:
        raise CalendarError(tr("calendars need the library icalendar; run: pip install icalendar")) from error
    given = (plans,) if isinstance(plans, CarePlan) else tuple(plans)
    stamp = (now or dt.datetime.now(dt.UTC)).astimezone(dt.UTC).replace(microsecond=0)
    years = all_of([str(plan.year) for plan in given])
    calendar = Calendar()
    calendar.add("prodid", PRODUCT)
    calendar.add("version", "2.0")
    calendar.add("x-wr-calname", _plain(tr("{yard}: care {years}", yard=yard.site.name, years=years)))
    for task in {task.id: task for plan in given for task in plan.tasks}.values():
        calendar.add_component(_event(task, yard, stamp))
    return bytes(calendar.to_ical())


def _event(task: CareTask, yard: Yard, stamp: dt.datetime) -> Event:
    from icalendar import Event

    event = Event()
    event.add("uid", uid(yard, task.id))
    event.add("dtstamp", stamp)
    event.add("summary", _plain(f"{task.heading}: {task.what}"))
    event.add("dtstart", task.start)
    if task.every is None or task.start == task.end:
        event.add("dtend", task.end + _DAY)
    else:
        event.add("dtend", task.start + _DAY)
        event.add("rrule", {"freq": "daily", "interval": task.every[1], "until": task.end})
    event.add("description", description(task, yard.done.get(task.id)))
    event.add("categories", [task.kind])
    # The yard's work does not make a person busy.
    event.add("transp", "TRANSPARENT")
    return event


def description(task: CareTask, done: str | None = None) -> str:
    """Everything there is to say of a task, line by line."""
    dates = tr(task.basis) or (
        tr("dates of an average year, about {n} days either way", n=f"{task.about:.0f}") if task.about else ""
    )
    sources = "; ".join(written_out(task.sources))
    lines = (
        tr("Done {date}", date=done) if done else "",
        tr("Plants: {keys}", keys=", ".join(task.things)),
        task.repeats, task.when, tr("Why: {why}", why=task.why) if task.why else "", task.amount,
        *task.weeks, *task.notes,
        *(tr("Caution: {text}", text=text) for text in task.cautions), dates,
        tr("Source: {source}", source=sources) if sources else "",
    )
    return "\n".join(_plain(line[:1].upper() + line[1:]) for line in lines if line)


def _plain(text: str) -> str:
    """One line without control characters, which a calendar file may not hold (RFC 5545, 3.1)."""
    return "".join(" " if unicodedata.category(letter) in _UNFIT else letter for letter in text)
