import datetime as dt
import sys

import icalendar
import pytest
import vobject
from hypothesis import HealthCheck, given, settings
from support import cares, strategies

from yardplan.care.calendar_file import CalendarError, calendar_file, description, uid
from yardplan.care.tasks import CarePlan, CareTask, care_plan
from yardplan.checks.survey import survey_of
from yardplan.yard.yard import Yard

NOW = dt.datetime(2027, 1, 2, 3, 4, 5, tzinfo=dt.UTC)


def plan() -> CarePlan:
    return cares.plan(cares.orchard(cares.site()))


def events(data: bytes) -> dict[str, icalendar.Event]:
    return {str(event["UID"]): event for event in icalendar.Calendar.from_ical(data).walk("VEVENT")}


def test_read_back_with_the_library() -> None:
    made = plan()
    found = events(calendar_file(made, "Test yard", now=NOW))
    assert len(found) == len(made.tasks)
    for task in made.tasks:
        event = found[uid("Test yard", task.id)]
        assert event["DTSTART"].dt == task.start
        assert event["DTSTART"].params["VALUE"] == "DATE"
        assert str(event["SUMMARY"]) == f"{task.title}: {task.what}"
        assert str(event["TRANSP"]) == "TRANSPARENT"
        assert event["DTSTAMP"].dt == NOW
        if task.every is None:
            assert event["DTEND"].dt == task.end + dt.timedelta(days=1)
        else:
            assert event["RRULE"]["UNTIL"] == [task.end]
            assert event["RRULE"]["FREQ"] == ["DAILY"]


def test_read_back_with_another_reader() -> None:
    made = plan()
    calendar = vobject.readOne(calendar_file(made, "Test yard", now=NOW).decode())
    found = {event.uid.value: event for event in calendar.vevent_list}
    for task in made.tasks:
        event = found[uid("Test yard", task.id)]
        assert event.dtstart.value == task.start
        assert event.summary.value == f"{task.title}: {task.what}"
        assert event.description.value == description(task)


def test_second_export_is_the_same_but_for_the_stamp() -> None:
    one = calendar_file(plan(), "Test yard", now=NOW)
    assert one == calendar_file(plan(), "Test yard", now=NOW)
    later = calendar_file(plan(), "Test yard", now=NOW + dt.timedelta(days=9))
    assert set(events(one)) == set(events(later))


def test_names_of_events_differ_between_yards() -> None:
    assert uid("One", "x") != uid("Two", "x")
    assert uid("One", "x") == uid("One", "x")


def test_done_marks_are_told() -> None:
    made = plan()
    first = made.tasks[0]
    found = events(calendar_file(made, "Test yard", {first.id: "2027-01-05"}, NOW))
    assert str(found[uid("Test yard", first.id)]["DESCRIPTION"]).startswith("Done 2027-01-05")


def test_missing_library_is_said_in_one_line(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setitem(sys.modules, "icalendar", None)
    with pytest.raises(CalendarError, match="pip install icalendar"):
        calendar_file(plan(), "Test yard")


@settings(max_examples=15, deadline=None, suppress_health_check=[HealthCheck.too_slow])
@given(strategies.yards())
def test_any_yard_writes_a_calendar_that_reads(yard: Yard) -> None:
    made = care_plan(survey_of(yard), 2027)
    data = calendar_file(made, yard.site.name, now=NOW)
    assert len(events(data)) == len(made.tasks)
    lines = data.split(b"\r\n")
    assert all(len(line) <= 75 for line in lines)
    assert b"\n" not in data.replace(b"\r\n", b"")
    data.decode("utf-8")


def test_description_holds_plants_cautions_and_sources() -> None:
    spray = next(task for task in plan().tasks if task.spray)
    words = description(spray)
    assert words.startswith("Plants: ")
    assert "Caution: Read the whole label first" in words
    assert "Source: " in words
    assert isinstance(spray, CareTask)
