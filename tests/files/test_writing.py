"""Saving: whole or not at all, the last good copy kept, links and permissions kept."""

from __future__ import annotations

import os
import stat
import time
from pathlib import Path

import pytest
from support import builders

from yardplan.files.errors import YardFileError
from yardplan.files.reading import read_yard
from yardplan.files.writing import PART, ChangedOnDisk, backup_of, save, stamp_of, sweep
from yardplan.yard.site import Site
from yardplan.yard.yard import Yard

ONE = builders.yard_of(builders.plant("A1", "apple:Liberty", (1.0, 2.0)))
TWO = builders.yard_of(builders.plant("A1", "apple:Liberty", (2.0, 2.0)))
THREE = builders.yard_of(builders.plant("A1", "apple:Liberty", (3.0, 2.0)))


def names(folder: Path) -> list[str]:
    return sorted(path.name for path in folder.iterdir())


def test_the_last_good_copy_is_kept_beside(tmp_path: Path) -> None:
    path = tmp_path / "my.yard"
    for yard in (ONE, TWO, THREE):
        save(path, yard)
    assert read_yard(path) == THREE
    assert read_yard(backup_of(path)) == TWO
    assert names(tmp_path) == ["my.yard", "my.yard~"]


def test_a_damaged_file_does_not_push_out_the_good_copy(tmp_path: Path) -> None:
    path = tmp_path / "my.yard"
    save(path, ONE)
    save(path, TWO)
    path.write_text("damaged", encoding="utf-8")
    save(path, THREE)
    assert read_yard(path) == THREE
    assert read_yard(backup_of(path)) == ONE


def test_saving_twice_the_same_leaves_no_stray(tmp_path: Path) -> None:
    path = tmp_path / "my.yard"
    for _ in range(3):
        save(path, ONE)
    assert names(tmp_path) == ["my.yard", "my.yard~"]


def test_a_link_stays_a_link_and_its_target_is_rewritten(tmp_path: Path) -> None:
    (tmp_path / "real").mkdir()
    target, link = tmp_path / "real" / "my.yard", tmp_path / "link.yard"
    save(target, ONE)
    link.symlink_to(target)
    save(link, TWO)
    assert link.is_symlink()
    assert read_yard(target) == TWO
    assert names(tmp_path) == ["link.yard", "real"]


def test_permission_bits_are_kept_and_new_files_get_the_usual_ones(tmp_path: Path) -> None:
    path = tmp_path / "my.yard"
    save(path, ONE)
    usual = os.umask(0)
    os.umask(usual)
    assert stat.S_IMODE(path.stat().st_mode) == 0o666 & ~usual
    path.chmod(0o640)
    save(path, TWO)
    assert stat.S_IMODE(path.stat().st_mode) == 0o640


@pytest.mark.parametrize(
    ("name", "says"),
    [
        ("nowhere/my.yard", "the file or its folder is not there"),
        ("folder", "that is a folder"),
        ("file/my.yard", "part of the folder name is a file"),
        ("x" * 300 + ".yard", "the name is too long"),
    ],
)
def test_places_that_cannot_be_written(tmp_path: Path, name: str, says: str) -> None:
    (tmp_path / "folder").mkdir()
    (tmp_path / "file").write_text("x", encoding="utf-8")
    with pytest.raises(YardFileError, match=says):
        save(tmp_path / name, ONE)
    assert names(tmp_path) == ["file", "folder"]


def test_a_link_to_itself_is_said(tmp_path: Path) -> None:
    link = tmp_path / "round.yard"
    link.symlink_to(link)
    with pytest.raises(YardFileError, match="leads back to itself"):
        save(link, ONE)


def test_a_yard_that_could_not_be_opened_again_is_not_written(tmp_path: Path) -> None:
    path = tmp_path / "my.yard"
    save(path, ONE)
    for bad in (
        Yard(site=Site(latitude=float("nan"))), Yard(site=Site(latitude=100.0)),
        builders.yard_of(builders.plant("A1", "apple:Liberty", (1, 2), container="C9")),
    ):
        with pytest.raises(YardFileError):
            save(path, bad)
    assert read_yard(path) == ONE
    assert not backup_of(path).exists()


def test_strays_of_killed_saves_are_swept_but_not_those_of_running_ones(tmp_path: Path) -> None:
    old, new, other = (tmp_path / name for name in (f".a.yard.1{PART}", f".b.yard.2{PART}", ".c.part"))
    for path in (old, new, other):
        path.write_text("half", encoding="utf-8")
    long_ago = time.time() - 7200
    os.utime(old, (long_ago, long_ago))
    os.utime(other, (long_ago, long_ago))
    assert sweep(tmp_path) == [old]
    assert names(tmp_path) == [new.name, ".c.part"]
    assert sweep(tmp_path / "nowhere") == []


def test_a_file_changed_by_another_program_is_not_overwritten_unasked(tmp_path: Path) -> None:
    path = tmp_path / "my.yard"
    save(path, ONE)
    opened = stamp_of(path)
    save(path, TWO)
    with pytest.raises(ChangedOnDisk, match="another program has changed it"):
        save(path, THREE, opened)
    assert read_yard(path) == TWO
    save(path, THREE, stamp_of(path))
    assert read_yard(path) == THREE


def test_a_file_that_is_gone_or_only_touched_is_written(tmp_path: Path) -> None:
    path = tmp_path / "my.yard"
    save(path, ONE)
    opened = stamp_of(path)
    os.utime(path, (1, 1))
    save(path, TWO, opened)
    opened = stamp_of(path)
    path.unlink()
    assert stamp_of(path) is None
    save(path, THREE, opened)
    assert read_yard(path) == THREE
