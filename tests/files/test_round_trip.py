"""Save then open gives the same yard; the text is stable, has one thing to a line, and fits the schema."""

from __future__ import annotations

import json

import jsonschema
import pytest
from attrs import fields
from hypothesis import HealthCheck, given, settings
from support import builders, strategies

from yardplan.files.build import builder_of
from yardplan.files.errors import YardFileError
from yardplan.files.reading import read_yard, yard_from_json
from yardplan.files.schema import schema_text, yard_schema
from yardplan.files.shape import CLASSES, LEAST, MOST, PATTERNS, RANGES, hints_of
from yardplan.files.writing import save, yard_to_json
from yardplan.shipped import resource
from yardplan.yard.site import Site, Soil
from yardplan.yard.yard import Yard

SCHEMA = jsonschema.Draft202012Validator(yard_schema())


@given(strategies.yards())
@settings(max_examples=40, deadline=None, suppress_health_check=list(HealthCheck))
def test_text_and_back_is_the_same_yard(yard: Yard) -> None:
    text = yard_to_json(yard)
    assert yard_from_json(text) == yard
    assert yard_to_json(yard_from_json(text)) == text
    SCHEMA.validate(json.loads(text))


@given(strategies.yards(most=1))
@settings(max_examples=15, deadline=None, suppress_health_check=list(HealthCheck))
def test_save_then_open_is_the_same_yard(tmp_path_factory: pytest.TempPathFactory, yard: Yard) -> None:
    path = tmp_path_factory.mktemp("saved") / "some.yard"
    save(path, yard)
    assert read_yard(path) == yard


def test_floats_come_back_to_the_last_bit() -> None:
    place = (0.1 + 0.2, 1 / 3)
    again = yard_from_json(yard_to_json(builders.yard_of(builders.plant("A1", "apple:Liberty", place))))
    assert again.plantings[0].place == place


def test_one_thing_to_a_line_so_that_a_moved_plant_is_one_changed_line() -> None:
    plants = [builders.plant(f"A{i}", "apple:Liberty", (float(i), 2.0)) for i in range(1, 6)]
    before = yard_to_json(builders.yard_of(*plants)).splitlines()
    plants[2] = builders.plant("A3", "apple:Liberty", (3.5, 2.0))
    after = yard_to_json(builders.yard_of(*plants)).splitlines()
    (line,) = [a for a, b in zip(after, before, strict=True) if a != b]
    assert json.loads(line.rstrip(",")) == {
        "id": "A3", "plant": {"crop": "apple", "cultivar": "Liberty"}, "place": [3.5, 2.0], "facing": 0.0,
    }


def test_keys_stand_in_a_fixed_order_and_the_format_comes_first() -> None:
    lines = yard_to_json(builders.yard_of(builders.plant("A1", "apple:Liberty", (1.0, 2.0)))).splitlines()
    assert lines[:3] == ["{", '"format": "yardplan yard",', '"version": 1,']
    assert [line.split('"')[1] for line in lines if line.startswith('"')] == [
        "format", "version", "site", "lot", "plantings",
    ]


def test_letters_are_written_as_letters() -> None:
    assert "Hof Süd – ½" in yard_to_json(Yard(site=Site(name="Hof Süd – ½")))


def test_unknown_fields_are_kept_everywhere_and_written_back() -> None:
    document = json.loads(yard_to_json(builders.yard_of(builders.plant("A1", "apple:Liberty", (1.0, 2.0)))))
    document["ponds"] = [{"id": "P1", "depth": 1}]
    document["site"]["moon"] = "waxing"
    document["site"]["soil"]["worms"] = 12
    document["plantings"][0]["colour"] = [1, 2.5, None]
    document["plantings"][0]["plant"]["nickname"] = "Old Bent"
    document["extra"] = {"own": True}
    yard = yard_from_json(json.dumps(document))
    assert json.loads(yard_to_json(yard)) == document
    assert yard_from_json(yard_to_json(yard)) == yard


def test_unknown_fields_of_a_thing_go_with_the_thing() -> None:
    document = json.loads(yard_to_json(builders.yard_of(builders.plant("A1", "apple:Liberty", (1.0, 2.0)))))
    document["plantings"][0]["colour"] = "red"
    from yardplan.yard import edits

    yard = edits.remove(yard_from_json(json.dumps(document)), {"A1"})
    yard = edits.add(yard, builders.plant("A1", "apple:Liberty", (1.0, 2.0)))
    assert "colour" not in yard_to_json(yard)


def test_a_number_that_is_none_cannot_be_written() -> None:
    with pytest.raises(YardFileError, match="monthly_means 1: is not a finite number"):
        yard_to_json(Yard(site=Site(monthly_means=(float("nan"),) * 12)))


def test_nothing_empty_is_written_but_zero_is() -> None:
    text = yard_to_json(Yard(site=Site(name="", soil=Soil(lime=False))))
    assert '"zone"' not in text
    assert '"lime": false' in text
    assert '"north": 0.0' in text


def test_the_shipped_schema_is_the_one_the_program_makes() -> None:
    jsonschema.Draft202012Validator.check_schema(yard_schema())
    shipped = resource("yard.schema.json").read_text(encoding="utf-8")
    assert shipped == schema_text(), "run: python -m yardplan.files.schema > resources/yard.schema.json"


@pytest.mark.parametrize(
    ("change", "path"),
    [
        ({"lot": [[0, 0], [1, 1]]}, "lot"),
        ({"plantings": [{"id": "A1", "plant": {"crop": "apple"}, "place": [0, 0]}]}, "plantings"),
        ({"plantings": [{"id": "A1", "plant": {"crop": "a", "cultivar": "b"}, "place": [0]}]}, "plantings"),
        ({"site": {"latitude": 91}}, "site"),
        ({"version": 2}, "version"),
    ],
)
def test_the_schema_refuses_what_the_reader_refuses(change: dict[str, object], path: str) -> None:
    document = {**json.loads(yard_to_json(builders.yard_of())), **change}
    with pytest.raises(jsonschema.ValidationError) as caught:
        SCHEMA.validate(document)
    assert caught.value.absolute_path[0] == path
    with pytest.raises(YardFileError):
        yard_from_json(json.dumps(document))


def test_every_field_of_the_document_has_a_reader_and_every_limit_a_field() -> None:
    """A field added to the document without a way into the file would be lost in silence."""
    known = {f.name for kind in CLASSES for f in fields(kind)}
    for kind in CLASSES:
        hints = hints_of(kind)
        for f in fields(kind):
            assert builder_of(hints[f.name], f.name)
    assert {*RANGES, *LEAST, *MOST, *PATTERNS} <= known
