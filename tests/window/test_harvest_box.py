from __future__ import annotations

import datetime as dt
from collections.abc import Callable

import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot
from support import cares
from support.builders import plant
from support.widgets import too_small, unnamed

from yardplan.window.dialogs.harvest_box import HarvestBox
from yardplan.window.open_yard import OpenYard
from yardplan.yard import edits
from yardplan.yard.yard import Yard

Opened = Callable[[Yard], OpenYard]


@pytest.fixture
def yard(opened: Opened) -> OpenYard:
    return opened(cares.orchard(cares.site()))


@pytest.fixture
def box(qtbot: QtBot, yard: OpenYard, theme) -> HarvestBox:
    made = HarvestBox(yard, today=dt.date(2027, 5, 1))
    qtbot.addWidget(made)
    made.show()
    return made


def test_charts_are_those_of_the_sheet_and_inked(box: HarvestBox) -> None:
    assert [view.accessibleName() for view in box.pages] == [
        "Picking through the season", "Harvest by week and year"
    ]
    for view in box.pages:
        picture = view.grab().toImage()
        places = [(x, y) for x in range(0, picture.width(), 7) for y in range(0, picture.height(), 7)]
        assert len({picture.pixel(x, y) for x, y in places}) > 4


def test_a_household_tells_gluts_and_gaps(box: HarvestBox, qtbot: QtBot) -> None:
    assert "household" not in box.said.text()
    box.persons.line.setFocus()
    qtbot.keyClicks(box.persons.line, "2")
    qtbot.keyClick(box.persons.line, Qt.Key.Key_Return)
    assert box.said.text().startswith("The household needs about 2.8 kg a week.")
    assert "Far more than that: " in box.said.text()
    assert box.isVisible()


def test_years_grow(box: HarvestBox) -> None:
    first = box.plan
    box.later.click()
    assert box.year.text() == "2028"
    assert sum(week.high for week in box.plan.weeks) > sum(week.high for week in first.weeks)
    box.earlier.click()
    assert box.plan == first


def test_follows_the_plan_while_it_is_seen(box: HarvestBox, yard: OpenYard) -> None:
    before = box.plan
    yard.commit("Move", edits.move(yard.yard, {"A1"}, (1.0, 0.0)))
    assert box.plan is before
    yard.commit("Plant", edits.add(yard.yard, plant("G1", "grape:Concord", (20, 4))))
    assert len(box.plan.crops) == len(before.crops) + 1
    box.hide()
    yard.commit("Take out", edits.remove(yard.yard, {"G1"}))
    box.show()
    assert box.plan == before


def test_a_bare_yard_says_so(qtbot: QtBot, opened: Opened, theme) -> None:
    made = HarvestBox(opened(Yard()))
    qtbot.addWidget(made)
    made.show()
    assert made.pages == []
    assert made.said.text().startswith("Nothing that is planted")


def test_everything_is_named_and_large_enough(box: HarvestBox) -> None:
    assert not unnamed(box)
    assert not too_small(box)


def test_the_window_opens_it(make_window) -> None:
    window = make_window(cares.orchard(cares.site()))
    window.actions_["harvest"].trigger()
    assert window.take_home.boxes["harvest"].isVisible()
