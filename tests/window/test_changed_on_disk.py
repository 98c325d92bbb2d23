"""A yard file that another program changed is not overwritten unasked."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtWidgets import QApplication
from support import builders

from yardplan.files.reading import read_yard
from yardplan.files.writing import ChangedOnDisk, save
from yardplan.window.open_yard import OpenYard
from yardplan.yard import edits

ONE = builders.yard_of(builders.plant("A1", "apple:Liberty", (5.0, 5.0)))
OTHER = builders.yard_of(builders.plant("A1", "apple:Liberty", (9.0, 9.0)))


def test_the_first_save_is_refused_and_the_second_replaces(qapp: QApplication, tmp_path: Path) -> None:
    path = tmp_path / "my.yard"
    save(path, ONE)
    shown = OpenYard()
    try:
        shown.open(path)
        save(path, OTHER)
        shown.commit("Move", edits.move(shown.yard, {"A1"}, (1.0, 0.0)))
        with pytest.raises(ChangedOnDisk):
            shown.save()
        assert shown.unsaved
        assert read_yard(path) == OTHER
        shown.save()
        assert read_yard(path) == shown.yard
        assert not shown.unsaved
        # Saving again and again is no change by another.
        shown.commit("Move", edits.move(shown.yard, {"A1"}, (1.0, 0.0)))
        shown.save()
        assert read_yard(path) == shown.yard
    finally:
        shown.close()


def test_save_as_over_another_file_is_the_person_s_choice(qapp: QApplication, tmp_path: Path) -> None:
    path, target = tmp_path / "my.yard", tmp_path / "other.yard"
    save(path, ONE)
    save(target, OTHER)
    shown = OpenYard()
    try:
        shown.open(path)
        shown.save(target)
        assert read_yard(target).plantings == ONE.plantings
    finally:
        shown.close()
