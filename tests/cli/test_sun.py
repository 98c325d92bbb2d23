from __future__ import annotations

import json
from pathlib import Path

import pytest
from support.builders import plant, yard_of

from yardplan.cli import main
from yardplan.files.writing import save
from yardplan.yard import edits
from yardplan.yard.planting import Bed, PlantKey
from yardplan.yard.yard import Yard


@pytest.fixture
def yard() -> Yard:
    bed = Bed(id="D1", outline=((20, 2), (24, 2), (24, 4), (20, 4)), plant=PlantKey("strawberry", "Honeoye"))
    return yard_of(
        plant("A1", "apple:Liberty", (8, 8)), plant("A2", "apple:Enterprise", (12, 9)), beds=(bed,)
    )


@pytest.fixture
def file(yard: Yard, tmp_path: Path) -> str:
    save(tmp_path / "a.yard", yard)
    return str(tmp_path / "a.yard")


def _json(capsys: pytest.CaptureFixture[str], *words: str) -> dict[str, object]:
    assert main(["sun", *words, "--json"]) == 0
    found: dict[str, object] = json.loads(capsys.readouterr().out)
    return found


def test_json_holds_every_figure(file: str, capsys: pytest.CaptureFixture[str]) -> None:
    found = _json(capsys, file)
    assert [p["id"] for p in found["plants"]] == ["A1", "A2"]  # type: ignore[attr-defined]
    assert [b["id"] for b in found["beds"]] == ["D1"]  # type: ignore[attr-defined]
    one = found["plants"][0]  # type: ignore[index]
    assert {
        "id",
        "hours",
        "hours_midsummer",
        "hours_worst_month",
        "hours_morning",
        "open_light",
        "shaded_by",
    } <= set(one)
    taken = sum(by["hours"] for by in one["shaded_by"])
    assert taken == pytest.approx(one["hours_open"] - one["hours"], abs=1e-4)
    assert 0.0 < one["open_light"] <= 1.0


def test_young_trees_leave_more_light(file: str, capsys: pytest.CaptureFixture[str]) -> None:
    young, mature = _json(capsys, file, "--year", "1"), _json(capsys, file, "--year", "mature")
    assert (young["year"], mature["year"]) == (1, "mature")
    assert young["plants"][0]["hours"] > mature["plants"][0]["hours"]  # type: ignore[index]


def test_a_date_adds_its_hours_and_the_suns_rise(file: str, capsys: pytest.CaptureFixture[str]) -> None:
    found = _json(capsys, file, "--date", "2026-12-21")
    assert found["day"] == "rises and sets"
    assert str(found["sunrise"]).startswith("2026-12-21T07:")
    assert found["plants"][0]["hours_on_date"] < 8.0  # type: ignore[index]


def test_a_table_for_people(file: str, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["sun", file, "--date", "2026-06-21"]) == 0
    out = capsys.readouterr().out
    assert "hours of direct sun a day, 1 April to 30 September" in out
    assert "sunrise" in out
    assert "Liberty (A1)" in out
    assert "h Enterprise (A2)" in out


def test_an_empty_yard_says_so(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    save(tmp_path / "e.yard", yard_of())
    assert main(["sun", str(tmp_path / "e.yard")]) == 0
    assert "no plants" in capsys.readouterr().out


def test_polar_night_is_said(yard: Yard, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    save(tmp_path / "p.yard", edits.set_site(yard, latitude=80.0))
    assert main(["sun", str(tmp_path / "p.yard"), "--date", "2026-12-21"]) == 0
    assert "never rises" in capsys.readouterr().out


@pytest.mark.parametrize(
    ("words", "said"),
    [
        (("--date", "21 June"), "write a date as YYYY-MM-DD"),
        (("--year=-3",), "--year"),
    ],
)
def test_bad_words_end_with_one_line(
    file: str, capsys: pytest.CaptureFixture[str], words: tuple[str, ...], said: str
) -> None:
    assert main(["sun", file, *words]) == 2
    error = capsys.readouterr().err
    assert said in error
    assert len(error.strip().splitlines()) == 1


def test_an_unknown_zone_ends_with_one_line(
    yard: Yard, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    save(tmp_path / "z.yard", edits.set_site(yard, time_zone="Mars/Olympus"))
    assert main(["sun", str(tmp_path / "z.yard")]) == 2
    assert "Mars/Olympus" in capsys.readouterr().err
