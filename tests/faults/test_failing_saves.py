"""Saves that fail or are killed: the old file stays whole, the message says why."""

from __future__ import annotations

import os
import random
import resource
import signal
import subprocess
import sys
import time
from pathlib import Path

import pytest
from support import builders

from yardplan.files import writing
from yardplan.files.errors import YardFileError
from yardplan.files.reading import read_yard
from yardplan.files.writing import backup_of, save, sweep

OLD = builders.yard_of(builders.plant("A1", "apple:Liberty", (1.0, 2.0)))
BIG = builders.yard_of(
    *(builders.plant(f"A{i}", "apple:Liberty", (i / 7, i / 9), note="x" * 50) for i in range(1, 1200))
)


def test_a_size_limit_stops_the_save_and_keeps_the_old_file(tmp_path: Path) -> None:
    path = tmp_path / "my.yard"
    save(path, OLD)
    before = resource.getrlimit(resource.RLIMIT_FSIZE)
    old_handler = signal.signal(signal.SIGXFSZ, signal.SIG_IGN)
    try:
        resource.setrlimit(resource.RLIMIT_FSIZE, (60_000, before[1]))
        with pytest.raises(YardFileError, match="larger than this system allows"):
            save(path, BIG)
    finally:
        resource.setrlimit(resource.RLIMIT_FSIZE, before)
        signal.signal(signal.SIGXFSZ, old_handler)
    assert read_yard(path) == OLD
    assert [p.name for p in tmp_path.iterdir()] == ["my.yard"]


def _tiny_disk(folder: Path) -> bool:
    """Mount 64 KiB of memory as a disk; False where this is not allowed (no root, in a container)."""
    folder.mkdir()
    done = subprocess.run(
        ["mount", "-t", "tmpfs", "-o", "size=64k", "tmpfs", str(folder)], capture_output=True, check=False
    )
    return done.returncode == 0


def test_a_full_disk_stops_the_save_and_keeps_the_old_file(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """On a real tiny disk where one can be mounted, else on a disk that takes 61,440 bytes and no more."""
    disk = tmp_path / "disk"
    mounted = _tiny_disk(disk)
    path = disk / "my.yard"
    try:
        save(path, OLD)
        if not mounted:
            monkeypatch.setattr(writing.os, "write", _nearly_full(61_440))
        with pytest.raises(YardFileError, match="the disk is full"):
            save(path, BIG)
        assert read_yard(path) == OLD
        assert [p.name for p in disk.iterdir()] == ["my.yard"]
    finally:
        if mounted:
            subprocess.run(["umount", str(disk)], check=True)


def _nearly_full(room: int):  # type: ignore[no-untyped-def]
    """A write that takes what there is room for, then nothing: the short-write trap."""
    left = [room]
    real = os.write

    def write(descriptor: int, data: bytes) -> int:
        taken = bytes(data[: left[0]])
        left[0] -= len(taken)
        return real(descriptor, taken) if taken else 0

    return write


def test_a_short_write_is_noticed(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    path = tmp_path / "my.yard"
    save(path, OLD)
    monkeypatch.setattr(writing.os, "write", _nearly_full(61_440))
    with pytest.raises(YardFileError, match="the disk is full"):
        save(path, BIG)
    assert read_yard(path) == OLD


def test_short_writes_that_go_on_are_finished(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    real = os.write
    monkeypatch.setattr(writing.os, "write", lambda fd, data: real(fd, bytes(data[:1000])))
    save(tmp_path / "my.yard", BIG)
    monkeypatch.undo()
    assert read_yard(tmp_path / "my.yard") == BIG


def test_a_disk_that_gives_back_other_bytes_is_noticed(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    path = tmp_path / "my.yard"
    save(path, OLD)
    real = os.write
    monkeypatch.setattr(writing.os, "write", lambda fd, data: real(fd, b" " * len(data)))
    with pytest.raises(YardFileError, match="the disk reported a fault"):
        save(path, BIG)
    assert read_yard(path) == OLD


@pytest.mark.parametrize("failing", ["fsync", "replace"])
def test_a_fault_of_the_disk_at_any_step_keeps_the_old_file(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, failing: str
) -> None:
    path = tmp_path / "my.yard"
    save(path, OLD)

    def fail(*_: object) -> None:
        raise OSError(5, "Input/output error")

    monkeypatch.setattr(writing.os, failing, fail)
    with pytest.raises(YardFileError, match="the disk reported a fault"):
        save(path, BIG)
    monkeypatch.undo()
    assert read_yard(path) == OLD
    assert [p.name for p in tmp_path.iterdir()] == ["my.yard"]


READ_ONLY = """
import os, sys
from yardplan.files.errors import YardFileError
from yardplan.files.writing import save
from yardplan.yard.yard import Yard
if os.getuid() == 0:
    os.setgid(65534)
    os.setuid(65534)
try:
    save(sys.argv[1], Yard())
except YardFileError as error:
    print(error)
"""


def test_a_folder_without_permission_is_said(tmp_path_factory: pytest.TempPathFactory) -> None:
    """As another user: root may write everywhere."""
    import tempfile

    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        folder.chmod(0o555)
        done = subprocess.run(
            [sys.executable, "-c", READ_ONLY, str(folder / "my.yard")],
            capture_output=True, text=True, check=True,
            env={**os.environ, "PYTHONPATH": os.pathsep.join(p for p in sys.path if p)},
        )
        assert "my.yard was not saved: you have no permission there" in done.stdout
        assert list(folder.iterdir()) == []
        folder.chmod(0o755)


KILLED = """
import sys
from support import builders
from yardplan.files.writing import save
import itertools
yards = [
    builders.yard_of(*(builders.plant(f"A{i}", "apple:Liberty", (i + k, 2.0)) for i in range(400)))
    for k in range(2)
]
print("ready", flush=True)
for yard in itertools.cycle(yards):
    save(sys.argv[1], yard)
"""


def test_killed_at_random_moments_the_file_is_always_whole(tmp_path: Path) -> None:
    path = tmp_path / "my.yard"
    rng = random.Random(5)
    tests = str(Path(__file__).parent.parent)
    for _ in range(6):
        process = subprocess.Popen(
            [sys.executable, "-c", KILLED, str(path)], stdout=subprocess.PIPE, text=True,
            env={**os.environ, "PYTHONPATH": os.pathsep.join([tests, *(p for p in sys.path if p)])},
        )
        with process:
            assert process.stdout is not None
            assert process.stdout.readline().strip() == "ready"
            while not backup_of(path).exists() and process.poll() is None:
                time.sleep(0.01)
            time.sleep(rng.uniform(0.0, 0.15))
            process.kill()
        assert len(read_yard(path).plantings) == 400
        assert len(read_yard(backup_of(path)).plantings) == 400
    sweep(tmp_path, older_than=0.0)
    assert sorted(p.name for p in tmp_path.iterdir()) == ["my.yard", "my.yard~"]
