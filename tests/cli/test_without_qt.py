"""Commands that draw, where Qt is not installed: one line, exit code 2, and no file begun."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import pytest

from yardplan.shipped import folder

SAMPLE = str(folder("sample_yards") / "first_orchard.yard")
#: Run the command line with PySide6 made impossible to import.
_WITHOUT = (
    "import sys; sys.modules['PySide6'] = None; from yardplan.cli import main; sys.exit(main(sys.argv[1:]))"
)


def run(*words: str, cwd: Path) -> subprocess.CompletedProcess[str]:
    return subprocess.run(
        [sys.executable, "-c", _WITHOUT, *words], capture_output=True, text=True, check=False, timeout=120,
        cwd=cwd, env=os.environ | {"PYTHONPATH": str(folder("resources").parent)},
    )


@pytest.mark.parametrize("words", [
    ("sheet", SAMPLE, "-o", "out.pdf"), ("sheet", SAMPLE, "-o", "out.svg", "--what", "care"),
    ("bloom", SAMPLE, "--png", "out.png"), ("sun", SAMPLE, "--png", "out.png"),
])
def test_what_draws_says_what_it_needs(tmp_path: Path, words: tuple[str, ...]) -> None:
    done = run(*words, cwd=tmp_path)
    assert (done.returncode, done.stdout) == (2, "")
    assert len(done.stderr.splitlines()) == 1
    assert "PySide6" in done.stderr
    assert list(tmp_path.iterdir()) == []


def test_what_computes_needs_no_qt(tmp_path: Path) -> None:
    done = run("care", SAMPLE, "--year", "2027", "--ics", "care.ics", cwd=tmp_path)
    assert (done.returncode, done.stderr) == (0, "")
    done = run("export", SAMPLE, "yard.geojson", cwd=tmp_path)
    assert (done.returncode, done.stderr) == (0, "")
