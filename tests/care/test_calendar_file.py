import datetime as dt
import sys

import icalendar
import pytest
import vobject
from attrs import evolve
from hypothesis import HealthCheck, given, settings
from support import cares, strategies
from support.builders import plant

from yardplan.care.calendar_file import CalendarError, calendar_file, description, uid
from yardplan.care.tasks import CarePlan, CareTask, care_plan
from yardplan.checks.survey import survey_of
from yardplan.files.reading import read_yard
from yardplan.files.writing import save
from yardplan.yard import edits
from yardplan.yard.identity import begun, named
from yardplan.yard.yard import Yard

NOW = dt.datetime(2027, 1, 2, 3, 4, 5, tzinfo=dt.UTC)


YARD = cares.orchard(cares.site())


def plan() -> CarePlan:
    return cares.plan(YARD)


def events(data: bytes) -> dict[str, icalendar.Event]:
    return {str(event["UID"]): event for event in icalendar.Calendar.from_ical(data).walk("VEVENT")}


def test_read_back_with_the_library() -> None:
    made = plan()
    found = events(calendar_file(made, YARD, now=NOW))
    assert len(found) == len(made.tasks)
    for task in made.tasks:
        event = found[uid(YARD, task.id)]
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
    calendar = vobject.readOne(calendar_file(made, YARD, now=NOW).decode())
    found = {event.uid.value: event for event in calendar.vevent_list}
    for task in made.tasks:
        event = found[uid(YARD, task.id)]
        assert event.dtstart.value == task.start
        assert event.summary.value == f"{task.title}: {task.what}"
        assert event.description.value == description(task)


def test_second_export_is_the_same_but_for_the_stamp() -> None:
    one = calendar_file(plan(), YARD, now=NOW)
    assert one == calendar_file(plan(), YARD, now=NOW)
    later = calendar_file(plan(), YARD, now=NOW + dt.timedelta(days=9))
    assert set(events(one)) == set(events(later))


def test_names_of_events_last_and_differ_between_yards() -> None:
    kept = named(YARD)
    assert uid(kept, "x") == uid(YARD, "x")
    renamed = edits.set_site(kept, name="Another name", latitude=-20.0)
    assert uid(renamed, "x") == uid(kept, "x")
    assert uid(begun(kept), "x") != uid(kept, "x")
    assert uid(edits.set_site(YARD, name="Another"), "x") != uid(YARD, "x")


def imported(calendar: dict[str, icalendar.Event], data: bytes) -> dict[str, icalendar.Event]:
    """What a calendar program holds after taking in a file: events of a known name are replaced."""
    return calendar | events(data)


def test_second_import_of_a_changed_yard_does_not_double(tmp_path) -> None:
    save(tmp_path / "one.yard", named(YARD))
    held = imported({}, calendar_file(plan(), read_yard(tmp_path / "one.yard"), now=NOW))
    first = len(held)
    # The file moves, the yard is called otherwise, a tree is moved and one is added of the same kind.
    (tmp_path / "one.yard").rename(tmp_path / "two.yard")
    again = edits.set_site(read_yard(tmp_path / "two.yard"), name="Orchard by the lake")
    again = edits.move(again, {"A1", "R1"}, (2.0, 1.0))
    again = edits.add(again, plant("A2", "apple:Idared", (3, 9), rootstock="M26", planted=2023))
    held = imported(held, calendar_file(cares.plan(again), again, now=NOW))
    assert len(held) == first
    assert any("A2" in str(event["DESCRIPTION"]) for event in held.values())


def test_two_years_in_one_file_hold_new_year_once() -> None:
    years = [cares.plan(YARD, year) for year in (2027, 2028)]
    both = {task.id for task in years[0].tasks} & {task.id for task in years[1].tasks}
    assert both
    data = calendar_file(years, YARD, now=NOW)
    found = icalendar.Calendar.from_ical(data).walk("VEVENT")
    assert len(found) == len({task.id for plan in years for task in plan.tasks}) == len(events(data))
    assert b"care 2027 and 2028" in data


def test_done_marks_are_told() -> None:
    made = plan()
    first = made.tasks[0]
    found = events(calendar_file(made, evolve(YARD, done={first.id: "2027-01-05"}), NOW))
    assert str(found[uid(YARD, first.id)]["DESCRIPTION"]).startswith("Done 2027-01-05")


def test_missing_library_is_said_in_one_line(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setitem(sys.modules, "icalendar", None)
    with pytest.raises(CalendarError, match="pip install icalendar"):
        calendar_file(plan(), YARD)


@settings(max_examples=15, deadline=None, suppress_health_check=[HealthCheck.too_slow])
@given(strategies.yards())
def test_any_yard_writes_a_calendar_that_reads(yard: Yard) -> None:
    made = care_plan(survey_of(yard), 2027)
    data = calendar_file(made, yard, now=NOW)
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
