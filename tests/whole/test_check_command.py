"""`yardplan check` and `yardplan soil` as a person runs them: as processes."""

from __future__ import annotations

import json
import re
import subprocess
import sys
from pathlib import Path

import pytest
from support.builders import plant, yard_of

from yardplan.files.writing import save
from yardplan.yard.planting import Container
from yardplan.yard.site import Site, Soil
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
    assert "conflict growth spacing " in done.stdout


def test_json_has_the_promised_fields(crowded: Path):
    done = run("check", str(crowded), "--json")
    assert done.returncode == 1
    findings = json.loads(done.stdout)["findings"]
    for finding in findings:
        assert {"check", "weight", "things", "message", "figures", "source", "clears"} <= finding.keys()
        assert finding["message"]
        assert finding["clears"]
        assert isinstance(finding["source"], str)
    spacing = next(f for f in findings if f["check"] == "spacing")
    assert spacing["things"] == ["A1", "A2"]
    assert (spacing["weight"], spacing["severity"]) == ("conflict", "growth")
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


@pytest.fixture
def sour(tmp_path: Path) -> Path:
    soil = Soil(ph=6.5, texture="clay", drainage="good")
    site = Site(name="Sour", latitude=42.0, zone="5b", soil=soil, units="imperial", last_frost="05-15")
    return _saved(
        tmp_path / "sour.yard",
        yard_of(
            plant("B1", "northern highbush blueberry:Patriot", (15, 10), planted=2028),
            plant("A1", "apple:Liberty", (8, 10)), site=site,
        ),
    )


def test_soil_amounts_as_a_table(sour: Path):
    done = run("soil", str(sour))
    assert (done.returncode, done.stderr) == (0, "")
    assert "Patriot (B1): pH 6.5, wants 4.5 to 5.5" in done.stdout
    # Both weights stand together, the reader's own first; the dressings follow with a test between.
    said = " ".join(done.stdout.split())
    assert re.search(r"\d lb \([\d. to]+ kg\) of elemental sulfur on [\d.]+ sq ft \([\d.]+ m²\)", said)
    assert "In this order:" in said
    assert "by 16 May 2027 (12 months before planting): Work in elemental sulfur:" in said
    assert said.index("Work in elemental") < said.index("Test again before the next dressing for")
    assert "Liberty (A1): pH 6.5, wants 6.0 to 7.0: the soil suits" in done.stdout


def test_soil_amounts_as_json(sour: Path):
    done = run("soil", str(sour), "--json")
    told = json.loads(done.stdout)
    first, second = told["soil"]
    assert (first["thing"], first["what"], first["material"]) == ("B1", "acidify", "elemental sulfur")
    assert 0 < first["kg"]["low"] <= first["kg"]["high"]
    assert sum(d["kg"]["high"] for d in first["dressings"]) == pytest.approx(first["kg"]["high"])
    assert first["lb"]["low"] == pytest.approx(first["kg"]["low"] / 0.45359237)
    assert (second["what"], second["kg"]) == ("fits", None)
    steps = [step for step in told["steps"] if "B1" in step["things"]]
    assert [step["step"] for step in steps] == ["sulfur", "retest", "sulfur"]
    assert [step["date"] for step in steps] == sorted(step["date"] for step in steps)
    assert sum(step["kg"]["high"] for step in steps if step["kg"]) == pytest.approx(first["kg"]["high"])


def test_soil_that_cannot_be_mended_gets_a_bed_or_a_container_with_its_fill(tmp_path: Path):
    site = Site(name="Chalk", latitude=42.0, zone="5b", soil=Soil(ph=7.9, lime=True, texture="loam"))
    path = _saved(tmp_path / "chalk.yard", yard_of(
        plant("B1", "northern highbush blueberry:Patriot", (15, 10)),
        plant("B2", "northern highbush blueberry:Patriot", (20, 10), container="K1"), site=site,
        containers=(Container(id="K1", place=(20, 10), volume=60.0, soil=Soil(ph=7.2)),),
    ))
    said = " ".join(run("soil", str(path)).stdout.split())
    assert "(B1): pH 7.9, wants 4.5 to 5.5: this ground cannot be made acid. Build a raised bed" in said
    assert "of fill, half peat, half composted pine bark or acid potting mix; or use a container from" in said
    assert "(B2): pH 7.2, wants 4.5 to 5.5: fill the container anew with 60 L (16 gal) of a mix" in said
    ground, pot = json.loads(run("soil", str(path), "--json").stdout)["soil"]
    bed = ground["instead"]
    assert bed["fill_litres"] == pytest.approx(1000 * bed["bed_area_m2"] * bed["bed_depth_m"])
    assert bed["container_litres"] == pytest.approx(5 * 3.785411784)
    assert (pot["what"], pot["refill_litres"], pot["kg"]) == ("refill", 60.0, None)


def test_soil_of_a_missing_file(tmp_path: Path):
    done = run("soil", str(tmp_path / "none.yard"))
    assert (done.returncode, len(done.stderr.splitlines())) == (2, 1)


def test_check_names_the_soil(sour: Path):
    done = run("check", str(sour), "--json")
    assert "soil" in {f["check"] for f in json.loads(done.stdout)["findings"]}
