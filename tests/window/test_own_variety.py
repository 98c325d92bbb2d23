from __future__ import annotations

from collections.abc import Callable

import pytest
from pytestqt.qtbot import QtBot
from support import builders
from support.widgets import too_small, unnamed

from yardplan.window.dialogs.own_variety import OwnVariety, _plain, read_span, span_reading
from yardplan.window.open_yard import InHand, OpenYard
from yardplan.window.panels.entry import EntryError, TextEntry
from yardplan.yard.planting import PlantKey
from yardplan.yard.yard import Yard

Opened = Callable[[Yard], OpenYard]


@pytest.fixture
def own(qtbot: QtBot, opened: Opened, theme) -> OwnVariety:
    made = OwnVariety(opened(builders.yard_of()))
    qtbot.addWidget(made)
    made.show()
    return made


def put(own: OwnVariety, **texts: str) -> None:
    for name, text in texts.items():
        entry = own.entries[name]
        if isinstance(entry, TextEntry):
            entry.line.setText(text)
            entry.line.setModified(True)
        else:
            entry.show_value(text)


def test_a_variety_is_kept_in_the_file_and_is_in_hand(own: OwnVariety) -> None:
    open_yard = own._open_yard
    put(own, name="Aunt Meta", self_fruitful="no", bloom_season="mid", zone_min="4", height="3 to 4 m",
        chill_hours="800 - 1000", source="label of the nursery")
    own.keep.click()
    assert own.fault.text() == ""
    record = open_yard.yard.own_cultivars[0]
    assert record == {
        "crop": "apple", "name": "Aunt Meta", "self_fruitful": "no", "bloom_season": "mid", "zone_min": "4",
        "height": [3.0, 4.0], "chill_hours": [800.0, 1000.0], "source": "label of the nursery",
    }
    key = PlantKey("apple", "Aunt Meta")
    assert open_yard.in_hand == InHand(plant=key)
    cultivar = open_yard.catalogue.cultivar(key)
    assert cultivar is not None
    assert cultivar.own
    open_yard.undo_stack.undo()
    assert open_yard.yard.own_cultivars == ()


def test_a_kept_variety_can_be_changed_and_removed(own: OwnVariety) -> None:
    open_yard = own._open_yard
    put(own, name="Aunt Meta", zone_min="4")
    own.keep.click()
    own.show_record(0)
    assert own.remove.isEnabled()
    put(own, zone_min="3b")
    own.keep.click()
    assert [record["zone_min"] for record in open_yard.yard.own_cultivars] == ["3b"]
    own.show_record(0)
    own.remove.click()
    assert open_yard.yard.own_cultivars == ()


@pytest.mark.parametrize(
    ("field", "text"),
    [("zone_min", "20"), ("height", "four"), ("ploidy", "0"), ("chill_hours", "900 to 800")],
)
def test_facts_that_cannot_be_are_refused_and_nothing_is_kept(own: OwnVariety, field: str, text: str) -> None:
    put(own, name="Aunt Meta", **{field: text})
    own.keep.click()
    assert own.entries[field].fault
    assert own.entries[field].name in own.fault.text()
    assert own._open_yard.yard.own_cultivars == ()


def test_a_name_is_needed(own: OwnVariety) -> None:
    own.keep.click()
    assert "crop and name are needed" in own.fault.text()
    assert own._open_yard.yard.own_cultivars == ()


@pytest.mark.parametrize(
    ("typed", "span"),
    [("800 to 1000", [800, 1000]), ("800–1000", [800, 1000]), ("800-1000", [800, 1000]), ("7", [7, 7])],
)
def test_spans_as_people_write_them(typed: str, span: list[float]) -> None:
    assert read_span(typed, _plain) == span


@pytest.mark.parametrize("typed", ["1 to 2 to 3", "a to b", "9 to 3", "nan"])
def test_what_is_no_span_is_refused(typed: str) -> None:
    with pytest.raises(EntryError):
        read_span(typed, _plain)


def test_spans_of_lengths_come_back_in_the_yards_units() -> None:
    reading = span_reading("imperial")
    assert reading.read("10' to 12' 6\"") == pytest.approx([3.048, 3.81])
    assert reading.show([3.048, 3.81]) == "10' to 12' 6\""
    assert reading.show(None) == ""


def test_everything_has_a_name_and_is_large_enough(own: OwnVariety) -> None:
    assert unnamed(own) == []
    assert too_small(own) == []
