import json

import pytest

from yardplan.cli import main
from yardplan.plants.catalogue import catalogue


def test_a_table_for_people(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["plants", "apple", "liberty"]) == 0
    head, line = capsys.readouterr().out.splitlines()
    assert head.split()[:2] == ["kind", "variety"]
    assert "Liberty" in line
    assert "needs a partner" in line


def test_values_from_memory_are_marked(capsys: pytest.CaptureFixture[str]) -> None:
    main(["plants", "duke"])
    assert "bloom, spread" in capsys.readouterr().out


def test_json_has_every_fact_with_its_sources(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["plants", "northern", "duke", "--json"]) == 0
    (duke,) = json.loads(capsys.readouterr().out)
    assert duke["plant"] == "northern highbush blueberry:Duke"
    assert duke["facts"]["zone_max"] == {"value": "7", "sources": ["psu-edible-woody"], "from_memory": False}
    assert duke["facts"]["height"]["value"] == [1.2192, 1.8288]
    assert duke["facts"]["height"]["from_memory"] is True
    assert duke["any_from_memory"] is True
    assert duke["sources"]["memory"] == "from memory"
    assert "Penn State" in duke["sources"]["psu-edible-woody"]


def test_without_words_all_are_listed(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["plants", "--json"]) == 0
    assert len(json.loads(capsys.readouterr().out)) == len(catalogue().cultivars)


def test_nothing_found_is_said(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["plants", "moonfruit"]) == 0
    assert "No variety found for: moonfruit" in capsys.readouterr().out
    assert main(["plants", "moonfruit", "--json"]) == 0
    assert json.loads(capsys.readouterr().out) == []
