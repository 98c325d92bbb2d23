"""A yard in which every check finds something is cleared in the window, trouble by trouble."""

from __future__ import annotations

from collections.abc import Callable

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QPushButton
from pytestqt.qtbot import QtBot
from support.troubled import troubled_yard
from support.window_hands import click, drag, press_key, trigger

from yardplan.checks.run import CHECKS
from yardplan.window.dialogs.site_card import SiteCard
from yardplan.window.main_window import MainWindow
from yardplan.window.open_yard import InHand
from yardplan.window.panels.entry import CheckEntry, ChoiceEntry, Entry, TextEntry
from yardplan.window.panels.way_plan import WAY
from yardplan.yard.ground import Point
from yardplan.yard.planting import PlantKey

#: One kind of finding of every check, as the yard has it at first.
KINDS = {
    "spacing": "overlap", "clearance": "buried", "light": "could_be_better", "pollination": "light_alone",
    "hardiness": "too_cold", "chill": "wakes_early", "frost": "often", "bloom": "observed",
    "ripening": "seldom", "soil": "needs_bed", "neighbours": "juglone", "ribes law": "barred",
    "access": "narrow_gate", "beds": "row_full", "containers": "too_small", "drainage": "wet",
    "rotation": "wilt", "air": "steep", "known": "unknown_variety",
}

#: Further kinds of a check, each with a trouble of its own and what a grower does about it.
FURTHER: tuple[tuple[str, str, Callable[[Grower], None]], ...] = (
    ("clearance", "bed_on_building", lambda g: g.drag((41.5, 49), (39.5, 49))),
    ("clearance", "bed_on_water", lambda g: g.drag((48, 51.5), (45, 54.5))),
    ("clearance", "bed_on_paving", lambda g: g.type("BD4", "raised", "0.4 m")),
    ("clearance", "bed_on_bed", lambda g: g.drag((67, 50.5), (67, 55))),
    ("clearance", "row_in_bed", lambda g: g.drag((12.5, 54), (12.5, 48))),
    ("clearance", "row_outside", lambda g: g.drag((73, 55), (70, 58))),
    ("clearance", "drawn_beyond", lambda g: g.tick("FE1", "beyond_lot")),
)


class Grower:
    """Works on the window with mouse and keys, and waits for what the checks then say."""

    def __init__(self, window: MainWindow, qtbot: QtBot) -> None:
        self.window, self.yard, self.qtbot = window, window.open_yard, qtbot

    def kinds(self) -> set[tuple[str, str]]:
        return {(f.check, f.kind) for f in self.yard.findings}

    def settled(self) -> bool:
        """True once light and all slow checks speak of the yard as it stands."""
        checks = self.yard.checks
        return checks.light_fresh and not checks.busy and all(f.fresh for f in self.yard.findings)

    def wait(self) -> None:
        self.qtbot.waitUntil(self.settled, timeout=20_000)

    def wait_without(self, check: str, kind: str) -> None:
        def gone() -> None:
            assert (check, kind) not in self.kinds()

        self.qtbot.waitUntil(gone, timeout=10_000)

    def drag(self, start: Point, end: Point) -> None:
        drag(self.window.canvas, start, ((start[0] + end[0]) / 2, (start[1] + end[1]) / 2), end)

    def remove(self, key: str) -> None:
        self.yard.select({key})
        trigger(self.window, "delete")

    def type(self, key: str, path: str, text: str) -> None:
        self.yard.select({key})
        self.window.side.show_fields()
        typed(self.window.side.fields.grid.entries[path], text)

    def choose(self, key: str, path: str, value: object) -> None:
        self.yard.select({key})
        self.window.side.show_fields()
        chosen(self.window.side.fields.grid.entries[path], value)

    def tick(self, key: str, path: str) -> None:
        self.yard.select({key})
        self.window.side.show_fields()
        entry = self.window.side.fields.grid.entries[path]
        assert isinstance(entry, CheckEntry)
        entry.check.click()

    def plant(self, what: str, place: Point) -> None:
        self.yard.take_in_hand(InHand(plant=PlantKey.parse(what)))
        click(self.window.canvas, place)
        press_key(self.window.canvas, Qt.Key.Key_Escape)

    def site(self, group: int, path: str, text: str) -> None:
        typed(self.card().grids[group].entries[path], text)

    def card(self) -> SiteCard:
        self.window.panel_commands.show_site()
        return next(box for box in QApplication.topLevelWidgets() if isinstance(box, SiteCard))


def typed(entry: Entry, text: str) -> None:
    """Text typed into a field and finished with Enter."""
    assert isinstance(entry, TextEntry)
    entry.line.setText(text)
    entry.line.setModified(True)
    entry.finish()
    assert not entry.fault


def chosen(entry: Entry, value: object) -> None:
    """One of a field's values picked."""
    assert isinstance(entry, ChoiceEntry)
    number = entry._values.index(value)
    entry.combo.setCurrentIndex(number)
    entry.combo.activated.emit(number)


def _drop_wrong_bloom_day(grower: Grower) -> None:
    buttons = grower.card().seen.findChildren(QPushButton)
    next(each for each in buttons if each.accessibleName().startswith("Remove the")).click()


#: What a grower does about each, in this order.
STEPS: tuple[tuple[str, Callable[[Grower], None]], ...] = (
    ("spacing", lambda g: g.drag((10, 8), (17, 8))),
    ("clearance", lambda g: g.drag((41, 8), (34, 8))),
    ("light", lambda g: g.drag((62, 43.8), (66, 18))),
    ("known", lambda g: g.type("A5", "plant", "Spartan, apple")),
    ("ripening", lambda g: (g.type("A6", "plant", "Empire"), g.type("A2", "plant", "Gala"))[0]),
    ("chill", lambda g: g.type("AP1", "plant", "Harglow")),
    ("hardiness", lambda g: g.remove("F1")),
    ("ribes law", lambda g: g.remove("C1")),
    ("soil", lambda g: g.choose("B1", "container", "PT2")),
    ("containers", lambda g: g.type("PT1", "volume", "80 L")),
    ("neighbours", lambda g: (g.drag((8, 24), (16, 16)), g.drag((30, 40), (34, 34)))[0]),
    ("pollination", lambda g: g.plant("european pear:Bosc", (24, 14))),
    ("beds", lambda g: g.type("R1", "count", "11")),
    ("rotation", lambda g: g.type("R1", "earlier", "")),
    ("access", lambda g: g.type("G1", "width", "1.2 m")),
    ("bloom", _drop_wrong_bloom_day),
    ("frost", lambda g: g.site(1, "last_frost", "20 April")),
    ("air", lambda g: g.site(2, "slope", "3")),
    ("drainage", lambda g: chosen(g.card().grids[2].entries["soil.drainage"], "good")),
)


@pytest.fixture
def grower(make_window: Callable[..., MainWindow], qtbot: QtBot) -> Grower:
    window = make_window(troubled_yard())
    made = Grower(window, qtbot)
    made.wait()
    return made


def test_a_yard_with_a_finding_of_every_check_is_cleared_by_hand(grower: Grower) -> None:
    assert {check.name for check in CHECKS} == set(KINDS) == {check for check, _ in STEPS}
    assert set(KINDS.items()) <= grower.kinds()
    further = {(check, kind) for check, kind, _ in FURTHER}
    assert further <= grower.kinds()
    for check, kind, do in (*FURTHER, *((check, KINDS[check], do) for check, do in STEPS)):
        before = grower.yard.undo_stack.index()
        do(grower)
        assert grower.yard.undo_stack.index() > before, (check, kind)
        grower.wait_without(check, kind)
    grower.wait()
    assert grower.kinds().isdisjoint(further | set(KINDS.items()))
    assert WAY.path not in grower.yard.yard.rules
    # Every step was one of the undo list's: back to the start, all the troubles are there again.
    while grower.yard.undo_stack.canUndo():
        grower.yard.undo_stack.undo()
    grower.wait()
    assert set(KINDS.items()) <= grower.kinds()
    assert grower.yard.yard == troubled_yard()
