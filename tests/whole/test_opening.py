"""`yardplan [FILE]` as a process: the window where a screen is, else one line and the check as a table."""

from __future__ import annotations

import os
import re
import subprocess
import sys
from pathlib import Path

import pytest

from yardplan.shipped import folder

ROOT = Path(__file__).resolve().parents[2]
SAMPLE = folder("sample_yards") / "first_orchard.yard"


def start(*words: str, **settings: str) -> subprocess.CompletedProcess[str]:
    """Run the program without a screen, apart from what `settings` say."""
    environment = {k: v for k, v in os.environ.items() if k not in (
        "DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM",
    )}
    environment |= {"PYTHONPATH": str(ROOT), **settings}
    return subprocess.run(
        [sys.executable, "-m", "yardplan", *words], env=environment, capture_output=True, text=True,
        timeout=120, check=False,
    )



def test_without_a_screen_it_says_so_in_one_line_and_prints_the_check() -> None:
    done = start(str(SAMPLE))
    assert done.returncode == 1, done.stderr
    assert done.stderr.strip().splitlines() == [
        "No display was found, so no window can open; here is this yard's check."
    ]
    assert done.stdout == start("check", str(SAMPLE)).stdout
    assert re.search(r"^conflict .*spacing", done.stdout, re.M)


def test_a_file_that_is_no_yard_is_one_line_and_nothing_else(tmp_path: Path) -> None:
    bad = tmp_path / "bad.yard"
    bad.write_text("{", encoding="utf-8")
    done = start(str(bad))
    assert (done.returncode, done.stdout) == (2, "")
    assert len(done.stderr.splitlines()) == 1
    assert "bad.yard" in done.stderr


@pytest.mark.parametrize(
    ("words", "said"),
    [
        ((), "no display was found"),
        (("nothing_there.yard",), "there is no file nothing_there.yard"),
        ((str(SAMPLE), str(SAMPLE)), "one yard at a time"),
    ],
)
def test_faults_are_one_line_and_exit_2(words: tuple[str, ...], said: str) -> None:
    done = start(*words)
    assert done.returncode == 2
    assert said in done.stderr
    assert len(done.stderr.strip().splitlines()) == 1
    assert "Traceback" not in done.stderr
