"""The program as a process where it needs Qt: its doctor, a sheet, the window itself."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

from yardplan.shipped import folder

ROOT = Path(__file__).resolve().parents[2]
SAMPLE = folder("sample_yards") / "first_orchard.yard"


def run(*words: str) -> subprocess.CompletedProcess[str]:
    """The program as a process with no screen."""
    bare = {k: v for k, v in os.environ.items() if k not in ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM")}
    return subprocess.run(
        [sys.executable, "-m", "yardplan", *words],
        capture_output=True, text=True, check=False, timeout=120, env=bare,
    )


def test_doctor_names_what_is_missing() -> None:
    done = run("doctor")
    assert (done.returncode, done.stderr) == (0, "")
    for part in ("Python", "PySide6", "shapely", "numpy", "screen", "shipped files"):
        assert part in done.stdout


def test_a_sheet_without_a_screen(tmp_path: Path) -> None:
    done = run("sheet", str(SAMPLE), "-o", str(tmp_path / "plan.pdf"))
    assert done.returncode == 0, done.stderr
    assert (tmp_path / "plan.pdf").read_bytes().startswith(b"%PDF")


def test_the_window_opens_on_a_yard_and_closes(tmp_path: Path) -> None:
    program = (
        "import sys\n"
        "from PySide6.QtCore import QTimer\n"
        "import yardplan.window.main_window as m\n"
        "build = m.MainWindow.build_side\n"
        "def built(self):\n"
        "    build(self)\n"
        "    print(self.windowTitle(), len(self.open_yard.findings) > 0)\n"
        "    QTimer.singleShot(0, self.close)\n"
        "m.MainWindow.build_side = built\n"
        "from yardplan.cli import main\n"
        f"sys.exit(main([{str(SAMPLE)!r}]))\n"
    )
    done = subprocess.run(
        [sys.executable, "-c", program], capture_output=True, text=True, timeout=120, check=False,
        env={**os.environ, "PYTHONPATH": str(ROOT), "QT_QPA_PLATFORM": "offscreen", "HOME": str(tmp_path)},
    )
    assert done.returncode == 0, done.stderr
    assert "first_orchard.yard" in done.stdout
    assert "True" in done.stdout
    assert "Traceback" not in done.stderr
