"""Menus by the keyboard alone: the letter marked in a menu wins over the tool that has the same key."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from support.builders import yard_of

from yardplan.window.dialogs.deed_box import DeedBox


@pytest.fixture
def open_draw(make_window, qtbot):
    """The window with the keyboard on the sheet, and its menu Draw, open."""
    window = make_window(yard_of())
    window.canvas.setFocus()
    menu = window.menus["Draw"]
    menu.popup(window.mapToGlobal(window.rect().topLeft()))
    qtbot.waitUntil(menu.isVisible)
    return window, menu


def test_a_marked_letter_chooses_the_command_and_no_tool(open_draw):
    window, menu = open_draw
    QTest.keyClick(menu, Qt.Key.Key_D)
    # D alone takes up the bed on the sheet.
    assert window.canvas.tool.icon == "select"
    (box,) = window.findChildren(DeedBox)
    assert box.isVisible()
    box.reject()


def test_letters_that_no_command_of_the_menu_has_stay_keys_of_tools(open_draw):
    window, menu = open_draw
    QTest.keyClick(menu, Qt.Key.Key_L)
    menu.close()
    QTest.keyClick(window.canvas, Qt.Key.Key_L)
    assert window.canvas.tool.icon == "lot"
