"""`yardplan export` as a process."""

from __future__ import annotations

import csv
import json
import subprocess
import sys
from pathlib import Path

import ezdxf
import pytest

from yardplan.files.reading import read_yard
from yardplan.shipped import folder

SAMPLE = folder("sample_yards") / "walled_town_garden.yard"


def export(*words: object) -> subprocess.CompletedProcess[str]:
    return subprocess.run(
        [sys.executable, "-m", "yardplan", "export", *map(str, words)],
        capture_output=True, text=True, check=False,
    )


def test_each_format_by_the_ending_of_its_name(tmp_path: Path) -> None:
    yard = read_yard(SAMPLE)
    for ending in ("geojson", "csv", "dxf"):
        done = export(SAMPLE, tmp_path / f"garden.{ending}")
        assert (done.returncode, done.stderr) == (0, "")
        assert f"{len(yard.plantings)} plants" in done.stdout
    document = json.loads((tmp_path / "garden.geojson").read_text(encoding="utf-8"))
    assert len(document["features"]) == len(yard.ids()) + 1
    with (tmp_path / "garden.csv").open(encoding="utf-8", newline="") as file:
        assert {row["key"] for row in csv.DictReader(file)} >= {p.id for p in yard.plantings}
    circles = ezdxf.readfile(tmp_path / "garden.dxf").modelspace().query('CIRCLE[layer=="PLANTS"]')
    assert len(circles) == len(yard.plantings)


@pytest.mark.parametrize(
    ("name", "says"), [("garden.pdf", "the ending must be one of"), ("nowhere/garden.csv", "was not written")]
)
def test_what_cannot_be_written_is_one_line(tmp_path: Path, name: str, says: str) -> None:
    done = export(SAMPLE, tmp_path / name)
    assert done.returncode == 2
    assert says in done.stderr
    assert done.stderr.count("\n") == 1
    assert list(tmp_path.iterdir()) == []


def test_a_damaged_yard_is_one_line(tmp_path: Path) -> None:
    (tmp_path / "bad.yard").write_text("{", encoding="utf-8")
    done = export(tmp_path / "bad.yard", tmp_path / "out.csv")
    assert done.returncode == 2
    assert "bad.yard is damaged" in done.stderr
    assert not (tmp_path / "out.csv").exists()
