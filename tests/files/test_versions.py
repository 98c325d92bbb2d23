"""Old documents are lifted one step at a time; newer ones are refused by name."""

from __future__ import annotations

from typing import Any

import pytest

from yardplan.files.errors import YardFileError
from yardplan.files.versions import CURRENT, LIFTS, lift

STEPS = {
    1: lambda d: {**d, "plants": d.get("trees", [])},
    2: lambda d: {**d, "plantings": [*d["plants"], "third step"]},
}


def test_each_step_gets_what_the_one_before_made() -> None:
    old: dict[str, Any] = {"format": "yardplan yard", "version": 1, "trees": ["first"]}
    lifted = lift(old, "old.yard", lifts=STEPS, current=3)
    assert lifted["plantings"] == ["first", "third step"]
    assert lifted["version"] == 3
    assert old["version"] == 1


def test_a_document_between_starts_at_its_own_step() -> None:
    lifted = lift({"format": "yardplan yard", "version": 2, "plants": []}, "x", lifts=STEPS, current=3)
    assert lifted["plantings"] == ["third step"]


def test_a_missing_step_is_said() -> None:
    with pytest.raises(YardFileError, match="file version 1, which this program cannot read"):
        lift({"format": "yardplan yard", "version": 1}, "x", lifts={}, current=2)


def test_there_is_a_step_from_every_version_to_the_next() -> None:
    assert set(LIFTS) == set(range(1, CURRENT))
