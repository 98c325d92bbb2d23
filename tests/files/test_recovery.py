"""Recovery copies: offered by the count of edits, never in the way."""

from __future__ import annotations

import os
from pathlib import Path

import pytest
from support import builders

from yardplan.files import recovery
from yardplan.files.errors import YardFileError

ONE = builders.yard_of(builders.plant("A1", "apple:Liberty", (1.0, 2.0)))
TWO = builders.yard_of(builders.plant("A1", "apple:Liberty", (2.0, 2.0)))


def test_unsaved_work_comes_back(tmp_path: Path) -> None:
    folder = tmp_path / "state" / "recovery"
    recovery.keep(folder, "doc-1", tmp_path / "my.yard", 3, ONE)
    recovery.keep(folder, "doc-1", tmp_path / "my.yard", 4, TWO)
    (copy,) = recovery.find(folder).copies
    assert (copy.document, copy.edits, copy.yard, copy.path) == ("doc-1", 4, TWO, tmp_path / "my.yard")
    assert not copy.writer_runs


def test_a_yard_never_saved_has_no_path(tmp_path: Path) -> None:
    recovery.keep(tmp_path, "doc-1", None, 1, ONE)
    assert recovery.find(tmp_path).copies[0].path is None


def test_the_count_of_edits_tells_not_the_clock(tmp_path: Path) -> None:
    path = recovery.keep(tmp_path, "doc-1", None, 5, ONE)
    recovery.saved(tmp_path, "doc-1", 4)
    os.utime(path, (1, 1))
    assert [copy.edits for copy in recovery.find(tmp_path).copies] == [5]
    recovery.saved(tmp_path, "doc-1", 5)
    assert recovery.find(tmp_path) == recovery.Found()


def test_a_copy_left_by_a_crash_between_saving_and_tidying_is_not_offered(tmp_path: Path) -> None:
    recovery.saved(tmp_path, "doc-1", 9)
    recovery.keep(tmp_path, "doc-1", None, 9, ONE)
    assert recovery.find(tmp_path).copies == ()


def test_a_closed_document_leaves_nothing(tmp_path: Path) -> None:
    recovery.keep(tmp_path, "doc-1", None, 2, ONE)
    recovery.saved(tmp_path, "doc-1", 1)
    recovery.forget(tmp_path, "doc-1")
    recovery.forget(tmp_path, "doc-1")
    assert list(tmp_path.iterdir()) == []


@pytest.mark.parametrize(
    "text",
    [
        "", "{", "[]", '{"format": "yardplan recovery"}', "[" * 90_000,
        '{"format": "yardplan recovery", "edits": "x", "written": 1, "process": 1, "yard": {}}',
        '{"format": "yardplan recovery", "edits": 1, "written": 1, "process": 1, "yard": '
        '{"format": "yardplan yard", "version": 99}}',
    ],
)
def test_a_damaged_copy_blocks_nothing_and_is_listed(tmp_path: Path, text: str) -> None:
    bad = tmp_path / "doc-0.recovery"
    bad.write_text(text, encoding="utf-8")
    recovery.keep(tmp_path, "doc-1", None, 1, ONE)
    found = recovery.find(tmp_path)
    assert [copy.document for copy in found.copies] == ["doc-1"]
    assert found.damaged == (bad,)
    assert bad.read_text(encoding="utf-8") == text


def test_no_folder_means_nothing_found(tmp_path: Path) -> None:
    assert recovery.find(tmp_path / "none") == recovery.Found()


def test_a_folder_that_cannot_be_written_is_said(tmp_path: Path) -> None:
    (tmp_path / "file").write_text("x", encoding="utf-8")
    with pytest.raises(YardFileError, match="was not saved"):
        recovery.keep(tmp_path / "file", "doc-1", None, 1, ONE)


def test_document_ids_cannot_leave_the_folder(tmp_path: Path) -> None:
    with pytest.raises(ValueError, match="letters, digits and hyphens"):
        recovery.keep(tmp_path, "../doc", None, 1, ONE)


def test_a_copy_of_a_running_program_says_so(tmp_path: Path) -> None:
    path = recovery.keep(tmp_path, "doc-1", None, 1, ONE)
    text = path.read_text(encoding="utf-8")
    path.write_text(text.replace(f'"process": {os.getpid()}', '"process": 1'), encoding="utf-8")
    assert recovery.find(tmp_path).copies[0].writer_runs
    path.write_text(text.replace(f'"process": {os.getpid()}', '"process": 99999999'), encoding="utf-8")
    assert not recovery.find(tmp_path).copies[0].writer_runs
