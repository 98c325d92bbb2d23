"""Menus, tools, keys and names of the window."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QAction
from PySide6.QtWidgets import QAbstractButton, QAbstractSlider, QComboBox, QLineEdit
from support.builders import plant, yard_of
from support.window_hands import click, press_key, trigger

from yardplan.window.dialogs.command_finder import CommandFinder
from yardplan.window.tools.toolbox import TOOLS
from yardplan.window.used_commands import COMMON

YARD = yard_of(plant("A1", "apple:Liberty", (5, 5)), plant("A2", "apple:Topaz", (15, 5)))


@pytest.fixture
def window(make_window):
    return make_window(YARD)


def test_every_command_has_words_and_no_two_share_keys(window):
    seen: dict[str, str] = {}
    for action in window.actions_.all():
        assert action.text()
        for keys in action.shortcuts():
            assert keys.toString() not in seen, (action.objectName(), seen.get(keys.toString()))
            seen[keys.toString()] = action.objectName()


def everything_in(menu):
    """The actions of a menu and of the menus within it."""
    for action in menu.actions():
        yield action
        if action.menu() is not None:
            yield from everything_in(action.menu())


def test_every_command_stands_in_a_menu(window):
    in_menus = {action.objectName() for menu in window.menus.values() for action in everything_in(menu)}
    assert {a.objectName() for a in window.actions_.all()} - in_menus == set()


@pytest.mark.parametrize("kind", TOOLS, ids=lambda kind: kind.icon)
def test_each_tool_by_its_letter_and_by_its_button(window, kind):
    window.canvas.setFocus()
    press_key(window.canvas, getattr(Qt.Key, f"Key_{kind.key}"))
    assert window.canvas.tool.icon == kind.icon
    assert window.canvas.tool.name == kind.name
    assert window.actions_[f"tool {kind.icon}"].isChecked()
    window.actions_["tool select"].trigger()
    button = window.tools.buttons[TOOLS.index(kind)]
    button.click()
    assert window.canvas.tool.icon == kind.icon


def test_a_tool_says_of_itself_what_the_toolbar_says_of_it(window):
    for kind in TOOLS:
        tool = kind(window.canvas.desk)
        assert (tool.icon, tool.name, tool.key) == (kind.icon, kind.name, kind.key)


def test_the_status_line_says_what_the_next_click_does(window):
    trigger(window, "tool building")
    assert "first corner of the building" in window.status.hint.accessibleName()


def test_commands_without_a_selection_are_grey(window):
    assert not window.actions_["delete"].isEnabled()
    click(window.canvas, (5, 5))
    assert window.actions_["delete"].isEnabled()
    window.open_yard.select({"lot"})
    assert not window.actions_["delete"].isEnabled()


def test_delete_only_while_the_sheet_has_the_keyboard(window):
    click(window.canvas, (5, 5))
    press_key(window.canvas, Qt.Key.Key_Delete)
    assert window.open_yard.yard.find("A1") is None


def test_undo_says_what_it_undoes(window):
    window.open_yard.select({"A1"})
    trigger(window, "duplicate")
    assert window.actions_["undo"].text().endswith("Copy A1 Liberty")


def test_the_list_and_the_sheet_select_together(window):
    window.open_yard.select({"A2"})
    table = window.side.plants.table
    rows = {index.row() for index in table.selectionModel().selectedRows()}
    assert len(rows) == 1
    assert "A2" in str(table.model().index(next(iter(rows)), 0).data())


def test_escape_puts_the_plant_in_hand_away(window):
    from yardplan.window.open_yard import InHand
    from yardplan.yard.planting import PlantKey

    window.open_yard.take_in_hand(InHand(plant=PlantKey("apple", "Topaz")))
    assert window.canvas.tool.icon == "plant"
    press_key(window.canvas, Qt.Key.Key_Escape)
    assert window.open_yard.in_hand is None
    assert window.canvas.tool.icon == "select"


def test_units_are_an_undoable_step(window):
    trigger(window, "feet")
    assert window.open_yard.units == "imperial"
    trigger(window, "undo")
    assert window.open_yard.units == "metric"
    # The menu tells what is shown, also after a step back.
    window.menus["View"].aboutToShow.emit()
    assert window.actions_["metres"].isChecked()
    assert not window.actions_["feet"].isChecked()


def test_years(window):
    trigger(window, "year less")
    assert window.open_yard.year is not None
    trigger(window, "mature size")
    assert window.open_yard.year is None
    trigger(window, "year more")
    assert window.open_yard.year is None


@pytest.mark.parametrize("layer", ["grid", "marks", "mature", "shadows"])
def test_layers_go_and_come(window, layer):
    trigger(window, layer)
    assert getattr(window.canvas.scene.layers, layer) is False
    trigger(window, layer)
    assert getattr(window.canvas.scene.layers, layer) is True


def test_snapping_has_a_switch_that_shows(window):
    trigger(window, "snap")
    assert not window.canvas.desk.snapper.on
    assert not window.status.snap.isChecked()


def test_the_sheet_keeps_its_share_of_a_small_window(window):
    window.resize(1280, 764)
    assert window.canvas.width() >= 0.6 * 1280


def test_every_control_has_a_name(window):
    kinds = (QAbstractButton, QComboBox, QLineEdit, QAbstractSlider)
    nameless = [
        (type(control).__name__, control.objectName(), type(control.parent()).__name__)
        for kind in kinds
        for control in window.findChildren(kind)
        if control.isVisible() and control.focusPolicy() & Qt.FocusPolicy.TabFocus
        and not (control.accessibleName() or (isinstance(control, QAbstractButton) and control.text()))
    ]
    assert nameless == []


def test_the_finder_begins_with_what_was_used_and_the_main_job(window, monkeypatch):
    listed = []

    def look(finder):
        model = finder.commands
        listed.append([model.action(row).objectName() for row in range(model.rowCount())])

    monkeypatch.setattr(CommandFinder, "exec", look)
    trigger(window, "find command")
    assert set(COMMON) <= {action.objectName() for action in window.actions_.all()}
    assert tuple(listed[0][:len(COMMON)]) == COMMON
    trigger(window, "tool bed")
    trigger(window, "find command")
    assert listed[1][:2] == ["tool bed", COMMON[0]]
    assert set(listed[1]) == {action.objectName() for action in window.actions_.all()}


def test_the_context_menu_holds_only_known_commands(window):
    for selection in ({"A1"}, set()):
        window.open_yard.select(selection)
        for name in window.commands.context_names():
            assert name == "" or isinstance(window.actions_[name], QAction)
