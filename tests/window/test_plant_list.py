from __future__ import annotations

from collections.abc import Callable

import pytest
from PySide6.QtCore import QItemSelectionModel, Qt
from pytestqt.qtbot import QtBot
from support import builders
from support.widgets import too_small, unnamed

from yardplan.window.open_yard import OpenYard
from yardplan.window.panels.plant_list import PlantList
from yardplan.window.panels.plant_rows import FINDINGS, KEY, NAME
from yardplan.yard import edits, groups
from yardplan.yard.ground import Building
from yardplan.yard.yard import Yard

Opened = Callable[[Yard], OpenYard]


def yard() -> Yard:
    return builders.yard_of(
        builders.plant("A10", "apple:Liberty", (4, 5)), builders.plant("A2", "apple:Egremont Russet", (6, 5)),
        builders.plant("P1", "european pear:Bartlett", (20, 5)),
        buildings=(Building(id="B1", name="House", footprint=((24, 12), (29, 12), (29, 18), (24, 18))),),
    )


@pytest.fixture
def listed(qtbot: QtBot, opened: Opened, theme) -> PlantList:
    made = PlantList(opened(yard()))
    qtbot.addWidget(made)
    made.resize(300, 400)
    made.show()
    return made


def column(listed: PlantList, number: int) -> list[str]:
    model = listed.sorted
    return [model.index(row, number).data() for row in range(model.rowCount())]


def test_models_keep_qts_rules(listed: PlantList, qtmodeltester) -> None:
    qtmodeltester.check(listed.rows)


def test_everything_is_listed_in_natural_order_of_keys(listed: PlantList) -> None:
    assert column(listed, KEY) == ["A2", "A10", "B1", "P1", "lot"]
    assert column(listed, NAME) == [
        "Egremont Russet, apple", "Liberty, apple", "House, building", "Bartlett, european pear", "Lot line",
    ]


def test_sorts_by_name_and_by_findings(listed: PlantList, qtbot: QtBot) -> None:
    listed.table.sortByColumn(NAME, Qt.SortOrder.AscendingOrder)
    assert column(listed, NAME) == [
        "Bartlett, european pear", "Egremont Russet, apple", "House, building", "Liberty, apple", "Lot line",
    ]
    qtbot.waitUntil(lambda: any(column(listed, FINDINGS)), timeout=15_000)
    listed.table.sortByColumn(FINDINGS, Qt.SortOrder.AscendingOrder)
    assert set(column(listed, KEY)[:2]) == {"A2", "A10"}


def test_selecting_on_the_plan_selects_here(listed: PlantList) -> None:
    listed._open_yard.select({"A2", "P1"})
    rows = {index.data() for index in listed.table.selectionModel().selectedRows(KEY)}
    assert rows == {"A2", "P1"}
    listed._open_yard.select(())
    assert not listed.table.selectionModel().hasSelection()


def test_selecting_here_selects_on_the_plan_in_one_go(listed: PlantList, qtbot: QtBot) -> None:
    listed.table.selectRow(0)
    assert listed._open_yard.selection == {"A2"}
    seen = []
    listed._open_yard.selection_changed.connect(lambda: seen.append(listed._open_yard.selection))
    listed.table.selectAll()
    assert seen == [{"A2", "A10", "B1", "lot", "P1"}]


def test_enter_f2_and_del_work_as_on_the_plan(listed: PlantList, qtbot: QtBot) -> None:
    open_yard = listed._open_yard
    open_yard.select({"A2"})
    with qtbot.waitSignal(open_yard.place_wanted) as seen:
        qtbot.keyClick(listed.table, Qt.Key.Key_Return)
    assert seen.args[0] == ((6, 5),)
    with qtbot.waitSignal(listed.edit_wanted):
        qtbot.keyClick(listed.table, Qt.Key.Key_F2)
    qtbot.keyClick(listed.table, Qt.Key.Key_Delete)
    assert open_yard.yard.find("A2") is None
    assert "A2" not in column(listed, KEY)
    open_yard.undo_stack.undo()
    assert "A2" in column(listed, KEY)


def test_a_locked_thing_is_not_deleted(listed: PlantList, qtbot: QtBot) -> None:
    open_yard = listed._open_yard
    open_yard.commit("Lock", edits.change(open_yard.yard, {"A2"}, locked=True))
    open_yard.select({"A2"})
    qtbot.keyClick(listed.table, Qt.Key.Key_Delete)
    assert open_yard.yard.find("A2") is not None


def test_a_drag_leaves_the_list_and_its_selection_alone(listed: PlantList) -> None:
    open_yard = listed._open_yard
    open_yard.select({"A2"})
    resets = []
    listed.rows.modelReset.connect(lambda: resets.append(1))
    for step in range(5):
        open_yard.show_trial(edits.move(open_yard.yard, {"A2"}, (0.2 * step, 0)))
    open_yard.drop_trial()
    assert resets == []
    assert {i.data() for i in listed.table.selectionModel().selectedRows(KEY)} == {"A2"}


def test_a_row_speaks_for_itself(listed: PlantList, qtbot: QtBot) -> None:
    qtbot.waitUntil(lambda: any(column(listed, FINDINGS)), timeout=15_000)
    spoken = listed.sorted.index(0, KEY).data(Qt.ItemDataRole.AccessibleTextRole)
    assert spoken.startswith("A2, Egremont Russet, apple: 1 conflict")


def test_keys_walk_the_rows_and_the_plan_follows(listed: PlantList, qtbot: QtBot) -> None:
    listed.table.setFocus()
    first = listed.sorted.index(0, KEY)
    listed.table.selectionModel().setCurrentIndex(
        first, QItemSelectionModel.SelectionFlag.ClearAndSelect | QItemSelectionModel.SelectionFlag.Rows
    )
    qtbot.keyClick(listed.table, Qt.Key.Key_Down)
    assert listed._open_yard.selection == {"A10"}


def test_everything_has_a_name_and_is_large_enough(listed: PlantList) -> None:
    assert unnamed(listed) == []
    assert too_small(listed) == []


def test_groups_are_listed_pick_their_members_and_follow_the_plan(listed: PlantList) -> None:
    open_yard = listed._open_yard
    open_yard.commit("Group", groups.group(open_yard.yard, {"A2", "P1"}))
    assert column(listed, KEY)[0] == ""
    assert column(listed, NAME)[0] == "Group 1: A2, P1"
    assert "Bartlett, european pear \N{MIDDLE DOT} Group 1" in column(listed, NAME)
    listed.table.selectRow(0)
    assert open_yard.selection == {"A2", "P1"}
    open_yard.select({"P1"})
    rows = listed.table.selectionModel().selectedRows()
    assert [index.data() for index in rows] == ["P1"]
    open_yard.select({"A2", "P1"})
    assert len(listed.table.selectionModel().selectedRows()) == 3
    assert listed.sorted.index(0, KEY).data(Qt.ItemDataRole.AccessibleTextRole) == (
        "Group 1, a group of 2 things: A2, P1"
    )
    listed.remove_selected()
    assert column(listed, KEY) == ["A10", "B1", "lot"]
