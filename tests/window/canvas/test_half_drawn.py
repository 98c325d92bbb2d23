"""A slip of the hand while an outline is half drawn loses no corner and undoes nothing finished."""

import pytest
from PySide6.QtCore import QPoint, Qt
from support.builders import plant, yard_of
from support.window_hands import click, press_key, trigger, type_length

from yardplan.window.tools.building import BuildingTool
from yardplan.window.tools.lot import LotTool
from yardplan.window.tools.paving import PavingTool

_CTRL = Qt.KeyboardModifier.ControlModifier


@pytest.fixture
def window(make_window):
    return make_window(yard_of(plant("A1", "apple:Liberty", (15, 5))))


def _three(window):
    for place in ((2, 2), (8, 2), (8, 7)):
        click(window.canvas, place)
    return window.canvas.tool


def test_a_letter_takes_up_no_other_tool_and_says_what_to_do(window):
    window.canvas.use(BuildingTool)
    tool = _three(window)
    for letter in (Qt.Key.Key_B, Qt.Key.Key_L, Qt.Key.Key_A, Qt.Key.Key_H, Qt.Key.Key_C):
        press_key(window.canvas, letter)
    assert window.canvas.tool is tool
    assert len(tool.corners) == 3
    assert "Enter ends it" in window.status.currentMessage()
    press_key(window.canvas, Qt.Key.Key_Return)
    assert len(window.open_yard.yard.buildings) == 1
    press_key(window.canvas, Qt.Key.Key_L)
    assert isinstance(window.canvas.tool, LotTool)
    assert not window.status.currentMessage()


def test_c_still_turns_corners_into_a_curve(window):
    window.canvas.use(PavingTool)
    tool = _three(window)
    press_key(window.canvas, Qt.Key.Key_C)
    assert (tool.form, len(tool.corners)) == ("smooth", 3)


def test_undo_and_delete_take_back_the_last_corner_only(window):
    yard = window.open_yard
    trigger(window, "select all")
    trigger(window, "duplicate")
    window.canvas.use(BuildingTool)
    tool = _three(window)
    before = yard.yard
    press_key(window.canvas, Qt.Key.Key_Z, _CTRL)
    press_key(window.canvas, Qt.Key.Key_Delete)
    assert len(tool.corners) == 1
    assert yard.yard == before
    press_key(window.canvas, Qt.Key.Key_Z, _CTRL)
    assert not tool.half_drawn
    press_key(window.canvas, Qt.Key.Key_Z, _CTRL)
    assert len(yard.yard.plantings) == 1


def test_too_few_corners_and_a_drawing_given_up_are_told_on_the_screen(window):
    window.canvas.use(BuildingTool)
    for place in ((2, 2), (8, 2)):
        click(window.canvas, place)
    press_key(window.canvas, Qt.Key.Key_Return)
    assert window.status.currentMessage().startswith("Still too few corners")
    trigger(window, "tool tape")
    assert "given up" in window.status.currentMessage()


def test_del_on_the_lot_line_says_why_it_stays(window):
    window.open_yard.select({"lot"})
    before = window.open_yard.yard
    assert before.lot
    press_key(window.canvas, Qt.Key.Key_Delete)
    assert window.open_yard.yard == before
    assert "draw it anew" in window.status.currentMessage()


def test_the_lot_tool_says_how_a_drawn_lot_is_changed(window):
    trigger(window, "tool lot")
    assert "begins it anew" in window.status.hint.accessibleName()
    click(window.canvas, (1, 1))
    assert "next corner" in window.status.hint.accessibleName()


def test_what_is_wrong_with_a_length_is_read_on_ground_of_its_own(window):
    canvas = window.canvas
    canvas.use(BuildingTool)
    click(canvas, (2, 2))
    type_length(canvas, "3 bananas")
    fault = canvas.entry.fault
    assert fault.isVisible()
    drawn = window.grab().toImage()
    at = fault.mapTo(window, fault.rect().bottomRight()) - QPoint(2, 2)
    assert drawn.pixelColor(at) == fault.palette().base().color()
    assert drawn.pixelColor(at) != drawn.pixelColor(canvas.mapTo(window, QPoint(200, 200)))
