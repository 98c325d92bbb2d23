"""`yardplan check` as a person runs it: as processes."""

from __future__ import annotations

import json
import subprocess
import sys
from pathlib import Path

import pytest
from support.builders import plant, yard_of

from yardplan.files.writing import save
from yardplan.yard.yard import Yard


def run(*words: str) -> subprocess.CompletedProcess[str]:
    return subprocess.run(
        [sys.executable, "-m", "yardplan", *words], capture_output=True, text=True, check=False, timeout=120
    )


@pytest.fixture
def crowded(tmp_path: Path) -> Path:
    return _saved(tmp_path / "crowded.yard", yard_of(
        plant("A1", "apple:Liberty", (8, 9), rootstock="M26"),
        plant("A2", "apple:Liberty", (10, 9), rootstock="M26"),
    ))


def _saved(path: Path, yard: Yard) -> Path:
    save(path, yard)
    return path


def test_conflicts_give_exit_1_and_a_table(crowded: Path):
    done = run("check", str(crowded))
    assert (done.returncode, done.stderr) == (1, "")
    assert "Test yard, at full size" in done.stdout
    assert "Liberty (A1) and Liberty (A2) stand 2.0 m apart" in done.stdout
    assert "Move Liberty (A2)" in done.stdout


def test_json_has_the_promised_fields(crowded: Path):
    done = run("check", str(crowded), "--json")
    assert done.returncode == 1
    findings = json.loads(done.stdout)["findings"]
    for finding in findings:
        assert {"check", "weight", "things", "message", "figures", "source", "clears"} <= finding.keys()
    spacing = next(f for f in findings if f["check"] == "spacing")
    assert spacing["things"] == ["A1", "A2"]
    assert spacing["weight"] == "conflict"
    assert spacing["figures"]["distance"]["value"] == pytest.approx(2.0)
    assert {f["check"] for f in findings} >= {"spacing", "pollination"}


def test_a_yard_without_conflicts_gives_exit_0(tmp_path: Path):
    path = _saved(tmp_path / "calm.yard", yard_of(plant("R1", "red currant:Red Lake", (15, 10))))
    done = run("check", str(path), "--json")
    assert done.returncode == 0, done.stdout
    assert json.loads(done.stdout)["counts"]["conflict"] == 0


def test_years_and_units(crowded: Path):
    young = run("check", str(crowded), "--year", "3", "--units", "imperial")
    assert "in year 3" in young.stdout
    assert " ft " in young.stdout


@pytest.mark.parametrize("year", ["soon", "-1", "101", "2.5"])
def test_a_bad_year_is_an_error_of_one_line(crowded: Path, year: str):
    done = run("check", str(crowded), f"--year={year}")
    assert (done.returncode, done.stdout) == (2, "")
    assert len(done.stderr.splitlines()) == 1
    assert "whole number" in done.stderr


@pytest.mark.parametrize("content", [None, "{", '{"format": "other"}', "[]"])
def test_a_file_that_is_no_yard_is_an_error_of_one_line(tmp_path: Path, content: str | None):
    path = tmp_path / "bad.yard"
    if content is not None:
        path.write_text(content, encoding="utf-8")
    done = run("check", str(path), "--json")
    assert (done.returncode, done.stdout) == (2, "")
    assert len(done.stderr.splitlines()) == 1
    assert "bad.yard" in done.stderr
