"""Faults are found all together, each with its place, in words."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

import pytest
from support import builders

from yardplan.files.errors import YardFileError
from yardplan.files.reading import read_yard, yard_from_json
from yardplan.files.shape import LARGEST
from yardplan.files.writing import yard_to_json


def document(**more: Any) -> dict[str, Any]:
    yard = builders.yard_of(*(builders.plant(f"A{i}", "apple:Liberty", (float(i), 2.0)) for i in (1, 2, 3)))
    return {**json.loads(yard_to_json(yard)), **more}


def faults_of(changed: dict[str, Any]) -> list[str]:
    with pytest.raises(YardFileError) as caught:
        yard_from_json(json.dumps(changed), "my.yard")
    return [str(fault) for fault in caught.value.faults]


def test_the_fault_of_a_place_with_one_number_is_named() -> None:
    changed = document()
    changed["plantings"][2]["place"] = [4]
    assert faults_of(changed) == ["plantings 3 (A3): 'place': has one number, needs two"]


def test_all_faults_are_told_together() -> None:
    changed = document(lot=[[0, 0], [1, 0]], buildings=7)
    changed["plantings"][0]["planted"] = "last year"
    changed["plantings"][1]["plant"] = {"crop": "apple"}
    changed["plantings"][2]["locked"] = 1
    changed["site"]["latitude"] = 123
    changed["site"]["zone"] = "tropical"
    changed["site"]["last_frost"] = "02-30"
    changed["site"]["monthly_means"] = [1, 2, 3]
    assert faults_of(changed) == [
        "site: 'latitude': is 123, must lie between -90 and 90",
        "site: 'zone': is 'tropical', needs a zone like 6b",
        "site: 'last_frost': is '02-30', needs a date like 04-24",
        "site: 'monthly_means': has three entries, needs twelve entries",
        "plantings 1 (A1): 'planted': is a text, needs a whole number",
        "plantings 2 (A2): 'plant': 'cultivar' is missing",
        "plantings 3 (A3): 'locked': is a whole number, needs true or false",
        "buildings: is a whole number, needs a list",
        "lot: has two entries, needs none or at least three",
    ]


def test_the_one_line_names_the_first_fault_and_counts_the_rest() -> None:
    changed = document()
    changed["plantings"][0]["place"] = "here"
    changed["plantings"][1]["place"] = None
    with pytest.raises(YardFileError) as caught:
        yard_from_json(json.dumps(changed), "my.yard")
    assert str(caught.value) == (
        "my.yard was not opened: plantings 1 (A1): 'place': is a text, needs two numbers (and 1 more)"
    )


def test_keys_that_stand_twice_are_named_with_both_places() -> None:
    changed = document(notes=[{"id": "A2", "place": [0, 0], "text": "x"}])
    changed["plantings"][2]["id"] = "A1"
    assert faults_of(changed) == [
        "plantings 3 (A1): the key is taken already by plantings 1",
        "notes 1 (A2): the key is taken already by plantings 2",
    ]


def test_a_key_may_not_be_empty_or_the_lot() -> None:
    changed = document()
    changed["plantings"][0]["id"] = ""
    changed["plantings"][1]["id"] = "lot"
    assert faults_of(changed) == [
        "plantings 1 (): 'id': is '', needs a key like A1",
        "plantings 2 (lot): the key 'lot' is kept for the lot line",
    ]


def test_a_plant_in_a_container_that_is_not_there() -> None:
    changed = document()
    changed["plantings"][1]["container"] = "C9"
    assert faults_of(changed) == ["plantings 2 (A2): 'container': there is no container 'C9'"]


def test_a_word_that_is_not_among_the_choices() -> None:
    changed = document(barriers=[{"id": "F1", "kind": "moat", "line": [[0, 0], [1, 0]]}])
    assert faults_of(changed) == ["barriers 1 (F1): 'kind': is 'moat', must be one of: wall, fence, hedge"]


@pytest.mark.parametrize(
    ("text", "says"),
    [
        ("[]", "is not a yard file"),
        ("7", "is not a yard file"),
        ('{"type": "FeatureCollection"}', "is not a yard file"),
        ('{"format": "yardplan yard"}', "version is missing"),
        ('{"format": "yardplan yard", "version": true}', "version is missing"),
        ('{"format": "yardplan yard", "version": 0}', "version is missing"),
        ('{"format": "yardplan yard", "version": 1}', "site: is missing"),
        ('{"format": "yardplan yard", "version": 7}', "file version 7; this one reads up to 1"),
        ('{"format": 1,\n "x" 2}', "line 2, column 6: a colon is missing"),
        ('{"a": 1, "a": 2}', "'a' stands twice"),
        ('{"a": NaN}', "holds NaN"),
        ('{"a": -Infinity}', "holds -Infinity"),
        ('{"a": ' + "9" * 5000 + "}", "too many digits"),
        ("[" * 100_000, "nested too deep"),
        ('{"a": 1} {"b": 2}', "something after the end"),
    ],
)
def test_foreign_newer_and_damaged_texts(text: str, says: str) -> None:
    with pytest.raises(YardFileError, match=says):
        yard_from_json(text, "my.yard")


@pytest.mark.parametrize(
    ("number", "says"),
    [
        ("1e999", "lot 1 1: is too large a number"),
        ("9" * 400, "lot 1 1: is too large a number"),
        ("1e9", "lot 1 1: is 1e+09, must lie between -100000 and 100000"),
        ("true", "lot 1 1: is true or false, needs a number"),
        ("null", "lot 1 1: is nothing (null), needs a number"),
        ("{}", "lot 1 1: is an object, needs a number"),
    ],
)
def test_numbers_beyond_all_bounds(number: str, says: str) -> None:
    text = json.dumps(document(lot=[["HERE", 0], [1, 0], [1, 1]])).replace('"HERE"', number)
    with pytest.raises(YardFileError) as caught:
        yard_from_json(text)
    assert [str(fault) for fault in caught.value.faults] == [says]


def test_nesting_in_a_field_we_do_not_know_is_bounded() -> None:
    deep: Any = 1
    for _ in range(60):
        deep = [deep]
    assert "nested too deep" in faults_of(document(strange=deep))[0]


def test_half_a_character_pair_is_a_fault_not_a_crash_on_saving() -> None:
    changed = document()
    changed["plantings"][0]["note"] = "\ud83c"
    assert faults_of(changed) == ["plantings 1: note: holds a broken character"]


@pytest.mark.parametrize(
    "change", [lambda t: "\ufeff" + t, lambda t: t.replace("\n", "\r\n"), lambda t: t + "\n\n"]
)
def test_marks_and_line_ends_of_other_systems_are_read(tmp_path: Path, change: Any) -> None:
    yard = builders.yard_of(builders.plant("A1", "apple:Liberty", (1.0, 2.0), note="two\nlines"))
    path = tmp_path / "some.yard"
    path.write_bytes(change(yard_to_json(yard)).encode("utf-8"))
    assert read_yard(path) == yard


@pytest.mark.parametrize(
    ("data", "says"),
    [
        (b"", "some.yard is empty"),
        (b" \n\n", "some.yard is empty"),
        (b'{"a":\n"\xff"}', "is not UTF-8 text: line 2"),
        ("{}".encode("utf-16"), "is not UTF-8 text"),
        (b"PK\x03\x04 not ours", "damaged or not a yard file"),
    ],
)
def test_bytes_that_are_no_text(tmp_path: Path, data: bytes, says: str) -> None:
    path = tmp_path / "some.yard"
    path.write_bytes(data)
    with pytest.raises(YardFileError, match=says):
        read_yard(path)
    assert path.read_bytes() == data


def test_a_file_beyond_the_limit_is_not_read(tmp_path: Path) -> None:
    path = tmp_path / "huge.yard"
    with path.open("wb") as file:
        file.truncate(LARGEST + 1)
    with pytest.raises(YardFileError, match="too large for a yard file"):
        read_yard(path)


def test_missing_files_folders_and_devices(tmp_path: Path) -> None:
    with pytest.raises(YardFileError, match="the file or its folder is not there"):
        read_yard(tmp_path / "none.yard")
    with pytest.raises(YardFileError, match="is a folder"):
        read_yard(tmp_path)
    with pytest.raises(YardFileError, match="is a device"):
        read_yard("/dev/zero")
