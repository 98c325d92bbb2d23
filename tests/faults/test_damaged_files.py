"""Damaged files give one clear error, never a traceback, a hang or half a yard."""

from __future__ import annotations

import json
import random
from collections.abc import Callable
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from support import builders, strategies

from yardplan.files.errors import YardFileError
from yardplan.files.reading import read_yard, yard_from_document, yard_from_json
from yardplan.files.writing import yard_to_json
from yardplan.yard.planting import Container
from yardplan.yard.yard import Yard

SMALL = builders.yard_of(
    builders.plant("A1", "apple:Liberty", (1.0, 2.0), container="C1", note="été"),
    builders.plant("A2", "european pear:Conference", (4.0, 2.0), planted=2024),
    containers=(Container(id="C1", place=(1.0, 2.0), volume=50.0),),
)
DATA = yard_to_json(SMALL).encode("utf-8")


def _read_or_error(read: Callable[[], Yard]) -> Yard | YardFileError:
    try:
        return read()
    except YardFileError as error:
        return error


def test_cut_off_at_every_byte(tmp_path: Any) -> None:
    path = tmp_path / "cut.yard"
    for length in range(len(DATA.rstrip())):
        path.write_bytes(DATA[:length])
        with pytest.raises(YardFileError) as caught:
            read_yard(path)
        assert "\n" not in str(caught.value)


def test_flipped_bits_give_an_error_or_a_valid_yard(tmp_path: Any) -> None:
    path = tmp_path / "flipped.yard"
    rng = random.Random(11)
    refused = 0
    for _ in range(1500):
        damaged = bytearray(DATA)
        for _ in range(rng.choice((1, 1, 2, 8))):
            damaged[rng.randrange(len(damaged))] ^= 1 << rng.randrange(8)
        path.write_bytes(damaged)
        yard = _read_or_error(lambda: read_yard(path))
        if isinstance(yard, YardFileError):
            refused += 1
            assert "\n" not in str(yard)
        else:
            # A flipped digit is still a number: then the yard is whole and can be written.
            assert yard_from_json(yard_to_json(yard)) == yard
    assert refused > 500


@given(st.data())
@settings(max_examples=150, deadline=None)
def test_any_value_put_anywhere_is_an_error_or_a_valid_yard(data: st.DataObject) -> None:
    document: Any = json.loads(DATA)
    place = document
    while True:
        step = data.draw(st.sampled_from(sorted(place) if isinstance(place, dict) else range(len(place))))
        if isinstance(place[step], dict | list) and place[step] and data.draw(st.booleans()):
            place = place[step]
        else:
            break
    place[step] = data.draw(strategies.PLAIN)
    yard = _read_or_error(lambda: yard_from_document(document))
    if isinstance(yard, YardFileError):
        assert yard.faults or "version" in str(yard) or "is not a yard file" in str(yard)
    else:
        assert yard_from_json(yard_to_json(yard)) == yard


def test_a_large_list_of_faults_is_quick_and_one_line() -> None:
    document = json.loads(DATA)
    document["plantings"] = [{"id": f"A{i}", "place": [1]} for i in range(20_000)]
    with pytest.raises(YardFileError) as caught:
        yard_from_document(document)
    assert len(caught.value.faults) == 40_000
    assert "(and 39999 more)" in str(caught.value)
