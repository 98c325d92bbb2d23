"""`yardplan settle`: what moves, what is left, and nothing written unless a file is named."""

from __future__ import annotations

import json
from pathlib import Path

import pytest
from support.builders import plant, yard_of

from yardplan.cli import main
from yardplan.files.reading import read_yard
from yardplan.files.writing import save


@pytest.fixture
def crowded(tmp_path: Path) -> Path:
    path = tmp_path / "crowded.yard"
    save(path, yard_of(plant("A1", "apple:Liberty", (8, 10)), plant("A2", "apple:Gala", (9, 10))))
    return path


def test_nothing_is_written_without_out(crowded: Path, capsys: pytest.CaptureFixture[str]) -> None:
    before = crowded.read_bytes()
    assert main(["settle", str(crowded)]) == 0
    text = capsys.readouterr().out
    assert crowded.read_bytes() == before
    assert "Nothing was written" in text
    assert "(A1)" in text or "(A2)" in text


def test_out_holds_the_settled_yard(
    crowded: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    out = tmp_path / "settled.yard"
    assert main(["settle", str(crowded), "--out", str(out), "--json"]) == 0
    told = json.loads(capsys.readouterr().out)
    assert told["cleared"] == 1
    assert told["left"] == []
    assert told["written"] == str(out)
    (move,) = told["moves"]
    assert read_yard(out).find(move["plant"]).place == tuple(move["to"])
    assert main(["check", str(out)]) == 0


def test_conflicts_that_are_left_exit_with_1(crowded: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["settle", str(crowded), "--only", "A1"]) == 0
    capsys.readouterr()
    yard = read_yard(crowded)
    save(crowded, yard_of(*yard.plantings, plant("CH1", "sweet cherry:Bing", (20, 10))))
    assert main(["settle", str(crowded)]) == 1
    assert "left: Bing (CH1) sets no fruit alone" in capsys.readouterr().out


def test_a_yard_without_conflicts_stays(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    path = tmp_path / "calm.yard"
    save(path, yard_of(plant("A1", "apple:Liberty", (8, 10)), plant("A2", "apple:Gala", (18, 10))))
    assert main(["settle", str(path)]) == 0
    assert capsys.readouterr().out == "There is no conflict: nothing moves.\n"


@pytest.mark.parametrize(
    ("words", "said"),
    [(["--only", "Z9"], "Z9 is no plant"), (["--out", "/nowhere/at/all.yard"], "not written")],
)
def test_errors_are_one_line(
    crowded: Path, capsys: pytest.CaptureFixture[str], words: list[str], said: str
) -> None:
    assert main(["settle", str(crowded), *words]) == 2
    error = capsys.readouterr().err
    assert said in error
    assert error.count("\n") == 1
