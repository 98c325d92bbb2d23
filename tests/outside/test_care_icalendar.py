"""Calendar files against the text of RFC 5545 (Internet Calendaring and Scheduling Core Object, 2009)."""

import datetime as dt
import re

from support import cares

from yardplan.care.calendar_file import calendar_file
from yardplan.care.tasks import CarePlan, CareTask
from yardplan.yard.yard import Yard

NOW = dt.datetime(2007, 4, 23, 12, 34, 32, tzinfo=dt.UTC)


def task(**fields: object) -> CareTask:
    given: dict[str, object] = {
        "id": "x@y@2007", "row": "x", "kind": "scout", "things": ("A1",), "crop": "apple", "what": "apple",
        "season": 2007, "title": "Look", "start": dt.date(2007, 6, 28), "end": dt.date(2007, 7, 8),
    }
    return CareTask(**(given | fields))  # type: ignore[arg-type]


def text(*made: CareTask) -> str:
    plan = CarePlan(year=2007, tasks=made, refusals=())
    return calendar_file(plan, Yard(), now=NOW).decode("utf-8")


def test_all_day_span_as_the_example_of_3_6_1() -> None:
    # RFC 5545, 3.6.1: the festival from 28 June to 8 July 2007 ends on the 9th, which is not part of it.
    written = text(task())
    assert "\r\nDTSTART;VALUE=DATE:20070628\r\n" in written
    assert "\r\nDTEND;VALUE=DATE:20070709\r\n" in written
    assert "\r\nDTSTAMP:20070423T123432Z\r\n" in written
    assert "\r\nTRANSP:TRANSPARENT\r\n" in written
    assert "TZID" not in written


def test_frame_of_a_calendar_object() -> None:
    # RFC 5545, 3.4 and 3.6: PRODID and VERSION once each, components closed, UID and DTSTAMP in each event.
    written = text(task())
    assert written.startswith("BEGIN:VCALENDAR\r\n")
    assert written.endswith("END:VCALENDAR\r\n")
    for name in ("PRODID:", "VERSION:2.0", "BEGIN:VEVENT", "END:VEVENT", "UID:", "DTSTAMP:"):
        assert written.count(f"\r\n{name}") == 1


def test_text_is_escaped_as_in_3_3_11() -> None:
    # RFC 5545, 3.3.11: backslash, semicolon and comma are escaped, a line break is \\n, a colon is not.
    written = text(task(title="a;b,c\\d: e", every=None))
    assert "SUMMARY:a\\;b\\,c\\\\d: e: apple" in written.replace("\r\n ", "")
    assert "DESCRIPTION:Plants: A1" in written
    long = text(task(when="one", why="two")).replace("\r\n ", "")
    assert "Plants: A1\\nOne\\nWhy: two" in long


def test_lines_are_folded_as_in_3_1() -> None:
    # RFC 5545, 3.1: at most 75 octets, without the break; unfolding takes CRLF and one space away.
    words = "Äpfel ausdünnen – " * 12
    data = calendar_file(CarePlan(year=2007, tasks=(task(title=words),), refusals=()), Yard(), now=NOW)
    lines = data.split(b"\r\n")
    assert max(len(line) for line in lines) <= 75
    assert words.strip() in re.sub(b"\r\n[ \t]", b"", data).decode("utf-8")
    for line in lines:
        line.decode("utf-8")


def test_rule_until_is_a_date_where_the_start_is_one() -> None:
    # RFC 5545, 3.3.10: UNTIL has the value type of DTSTART.
    written = text(task(every=(7, 14)))
    assert "\r\nRRULE:FREQ=DAILY;UNTIL=20070708;INTERVAL=14\r\n" in written
    assert "\r\nDTEND;VALUE=DATE:20070629\r\n" in written
    assert "YEARLY" not in calendar_file(cares.plan(cares.orchard(cares.site())), Yard(), now=NOW).decode()
