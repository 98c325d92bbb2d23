"""The width of ways: chosen where the yard's fields are, one undo step, and the findings follow."""

from __future__ import annotations

from collections.abc import Callable

from pytestqt.qtbot import QtBot
from support import builders

from yardplan.checks.rules import Rules
from yardplan.window.main_window import MainWindow
from yardplan.window.panels.entry import ChoiceEntry
from yardplan.window.panels.findings_list import WAY_STEP
from yardplan.window.panels.way_plan import RULE, WAY, way_choices, with_way
from yardplan.yard.ground import Gate
from yardplan.yard.yard import Yard


def gated() -> Yard:
    """A yard whose gate lets a barrow through, but no ride-on mower."""
    tree = builders.plant("A1", "apple:Liberty", (15, 10))
    return builders.yard_of(tree, gates=(Gate(id="G1", place=(0.0, 10.0), width=1.0),))


def kinds(window: MainWindow) -> set[str]:
    return {f.kind for f in window.open_yard.findings if f.check == "access"}


def test_a_wider_way_is_chosen_shown_and_taken_back(
    qtbot: QtBot, make_window: Callable[..., MainWindow]
) -> None:
    window = make_window(gated())
    open_yard = window.open_yard
    qtbot.waitUntil(lambda: bool(open_yard.findings), timeout=10_000)
    assert "narrow_gate" not in kinds(window)
    window.side.show_yard_field(WAY.path)
    entry = window.side.fields.grid.entries[WAY.path]
    assert isinstance(entry, ChoiceEntry)
    assert entry.combo.currentText() == "on foot, 0.61 m"
    mower = entry.combo.findText("a ride-on mower, 1.68 m")
    assert mower >= 0
    entry.combo.setCurrentIndex(mower)
    entry.combo.activated.emit(mower)
    assert open_yard.yard.rules == {RULE: 66.0}
    assert open_yard.undo_stack.undoText() == "Change way width of the yard"
    qtbot.waitUntil(lambda: "narrow_gate" in kinds(window), timeout=10_000)

    found = window.side.findings
    number = next(n for n, row in enumerate(found.rows.rows()) if row.finding.kind == "narrow_gate")
    found.cards.setCurrentIndex(found.rows.index(number))
    assert found.step_button.text() == WAY_STEP
    open_yard.select({"A1"})
    found.step_button.click()
    assert window.side.tabs.currentWidget() is window.side.fields
    assert WAY.path in window.side.fields.grid.entries

    open_yard.undo_stack.undo()
    assert open_yard.yard.rules == {}
    qtbot.waitUntil(lambda: "narrow_gate" not in kinds(window), timeout=10_000)


def test_every_kind_of_way_is_offered_from_narrow_to_wide() -> None:
    widths = way_choices(Rules(), "imperial")
    assert [text for _, text in widths] == [
        "on foot, 2'", "a barrow or push mower, 3'", "a garden cart, 4'", "an orchard ladder, 5'",
        "a ride-on mower, 5' 6\"",
    ]


def test_a_figure_of_ones_own_is_named_as_such() -> None:
    own = way_choices(Rules({RULE: 30.0}), "metric")
    assert own[1] == (0.762, "your own figure, 0.76 m")
    assert with_way({RULE: 30.0, "wall-gap": 4.0}, 0.6096) == {"wall-gap": 4.0}
    assert with_way({}, 0.9144) == {RULE: 36.0}
