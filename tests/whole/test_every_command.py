"""Every command as a process: exit codes 0, 1 and 2, shape of its JSON, one line for any bad input."""

from __future__ import annotations

import json
import os
import subprocess
import sys
from pathlib import Path
from typing import Any

import pytest

from yardplan.cli import COMMANDS
from yardplan.shipped import folder

FIRST = str(folder("sample_yards") / "first_orchard.yard")
#: Commands that read a yard, each with the options it cannot do without.
READERS = {
    "check": (), "soil": (), "bloom": (), "partners": (), "settle": (), "sun": (), "care": ("--year", "2027"),
}


def run(*words: str) -> subprocess.CompletedProcess[str]:
    """The program as a process with no screen."""
    bare = {k: v for k, v in os.environ.items() if k not in ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM")}
    return subprocess.run(
        [sys.executable, "-m", "yardplan", *words],
        capture_output=True, text=True, check=False, timeout=120, env=bare,
    )


def damaged(tmp_path: Path, change: dict[str, Any]) -> str:
    """The first orchard with some parts replaced, as a file."""
    path = tmp_path / "changed.yard"
    document = json.loads(Path(FIRST).read_text(encoding="utf-8")) | change
    path.write_text(json.dumps(document), encoding="utf-8")
    return str(path)


@pytest.mark.parametrize("command", COMMANDS)
def test_help_of_every_command(command: str) -> None:
    done = run(command, "--help")
    assert (done.returncode, done.stderr) == (0, "")
    assert f"yardplan {command}" in done.stdout


@pytest.mark.parametrize("command", READERS)
def test_every_reader_gives_json(command: str) -> None:
    done = run(command, FIRST, *READERS[command], "--json")
    expected = 1 if command in ("check", "settle") else 0
    assert (done.returncode, done.stderr) == (expected, "")
    assert isinstance(json.loads(done.stdout), dict)
    assert "NaN" not in done.stdout


@pytest.mark.parametrize("command", READERS)
@pytest.mark.parametrize(
    ("change", "says"),
    [
        ({"version": 999}, "newer yardplan"),
        ({"format": "other"}, "changed.yard"),
        ({"lot": [[0, float("nan")]]}, "NaN"),
        ({"lot": [[0, 1e300], [1, 1], [2, 0]]}, "must lie between"),
    ],
    ids=["newer", "foreign", "no number", "huge"],
)
def test_a_file_that_cannot_be_read_is_one_line(
    tmp_path: Path, command: str, change: dict[str, Any], says: str
) -> None:
    done = run(command, damaged(tmp_path, change), *READERS[command], "--json")
    assert (done.returncode, done.stdout) == (2, "")
    assert len(done.stderr.splitlines()) == 1
    assert says in done.stderr


@pytest.mark.parametrize("outline", [[[1, 1], [1, 1], [1, 1]], [[1, 1], [5, 5], [5, 1], [1, 5]]])
def test_outlines_without_area_are_no_crash(tmp_path: Path, outline: list[Any]) -> None:
    buildings = json.loads(Path(FIRST).read_text(encoding="utf-8"))["buildings"]
    path = damaged(tmp_path, {"buildings": [buildings[0] | {"footprint": outline}, *buildings[1:]]})
    for command, more in READERS.items():
        done = run(command, path, *more, "--json")
        assert done.returncode in (0, 1)
        assert done.stderr == ""
        json.loads(done.stdout)


def test_pollen_both_ways_with_verdicts_and_reasons() -> None:
    done = run("pollen", "apple:Akane", "apple:Topaz", "--json")
    assert (done.returncode, done.stderr) == (0, "")
    both = json.loads(done.stdout)
    for way in ("a_to_b", "b_to_a"):
        assert both[way]["verdict"] in ("yes", "partly", "no", "not proved")
        assert both[way]["reasons"]


def test_pollen_of_a_clone_onto_itself_sets_nothing() -> None:
    both = json.loads(run("pollen", "apple:Akane", "apple:Akane", "--json").stdout)
    assert both["a_to_b"]["verdict"] == both["b_to_a"]["verdict"] == "no"


def test_an_unknown_variety_is_answered_with_near_names() -> None:
    done = run("pollen", "apple:Topas", "apple:Akane")
    assert (done.returncode, done.stdout, len(done.stderr.splitlines())) == (2, "", 1)
    assert "apple:Topaz" in done.stderr


def test_plants_as_json_and_words_that_find_nothing() -> None:
    assert "Akane" in run("plants", "akane", "--json").stdout
    assert run("plants", "no such fruit").returncode == 0


@pytest.mark.parametrize("name", ["plan.geojson", "plan.csv", "plan.dxf"])
def test_export_writes_each_format(tmp_path: Path, name: str) -> None:
    done = run("export", FIRST, str(tmp_path / name))
    assert (done.returncode, done.stderr) == (0, "")
    assert (tmp_path / name).stat().st_size > 500


def test_settled_yard_is_written_and_has_fewer_conflicts(tmp_path: Path) -> None:
    out = tmp_path / "settled.yard"
    run("settle", FIRST, "--out", str(out))
    before, after = (json.loads(run("check", str(path), "--json").stdout) for path in (FIRST, out))
    assert after["counts"]["conflict"] < before["counts"]["conflict"]
