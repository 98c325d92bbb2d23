import json
from pathlib import Path

import icalendar
import pytest
from support import cares

from yardplan.cli import main
from yardplan.files.writing import save


@pytest.fixture
def yard_file(tmp_path: Path) -> Path:
    path = tmp_path / "t.yard"
    save(path, cares.orchard(cares.site()))
    return path


def test_table(yard_file: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["care", str(yard_file), "--year", "2027"]) == 0
    out = capsys.readouterr().out
    assert out.startswith("Test yard: care 2027, ")
    assert "No spray from " in out
    assert "Left out then: " in out
    assert "Harvest of the season from spring 2027: Idared (apple)" in out
    assert "Water in a week without rain, for one plant, row or bed, by the inch-a-week rule:" in out
    assert "A1 Idared: " in out


def test_json_and_calendar_tell_the_same(yard_file: Path, capsys: pytest.CaptureFixture[str]) -> None:
    calendar = yard_file.with_suffix(".ics")
    assert main(["care", str(yard_file), "--year", "2027", "--json", "--ics", str(calendar)]) == 0
    told = json.loads(capsys.readouterr().out)
    events = icalendar.Calendar.from_ical(calendar.read_bytes()).walk("VEVENT")
    assert {task["uid"] for task in told["tasks"]} == {str(event["UID"]) for event in events}
    assert {"refused_sprays", "harvest", "year", "undated"} <= set(told)
    assert told["refused_sprays"][0]["because_of"]
    water = {one["things"][0]: one for one in told["water"]}
    assert water["A1"]["by"] == "an inch a week"
    assert water["A1"]["litres_a_week"]["2027-07"] == pytest.approx(25.4 * water["A1"]["ground_m2"], rel=0.01)


def test_calendar_alone_prints_nothing(yard_file: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["care", str(yard_file), "--year", "2027", "--ics", str(yard_file.with_suffix(".ics"))]) == 0
    assert capsys.readouterr().out == ""


@pytest.mark.parametrize(("words", "said"), [
    (["--year", "soon"], "write a calendar year"), (["--year", "1200"], "write a calendar year"),
    (["--ics", "/nowhere/at/all.ics"], "cannot be written"), (["--persons", "many"], "how many people"),
    (["--persons", "0"], "how many people"),
])
def test_errors_are_one_line(
    yard_file: Path, capsys: pytest.CaptureFixture[str], words: list[str], said: str
) -> None:
    assert main(["care", str(yard_file), *words]) == 2
    error = capsys.readouterr().err
    assert said in error
    assert error.count("\n") == 1


def test_household(yard_file: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["care", str(yard_file), "--year", "2027", "--persons", "2"]) == 0
    out = capsys.readouterr().out
    assert "Need of the household: 2.8 kg a week." in out
    assert "Far more than that in the weeks from 2027-" in out
    assert main(["care", str(yard_file), "--year", "2027", "--persons", "2", "--json"]) == 0
    told = json.loads(capsys.readouterr().out)
    assert told["need_kg_a_week"] == pytest.approx(2.8)
    assert len(told["years"]) == 10
