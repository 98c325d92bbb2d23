"""Typing over the length of an edge in the window: by click, by keys, tried, refused, one step."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from support.builders import plant, yard_of
from support.window_hands import click, press_key, trigger

from yardplan.window.tools.edge_figures import sole_edged
from yardplan.yard.ground import Building

BOX = ((20.0, 12.0), (28.0, 12.0), (28.0, 18.0), (20.0, 18.0))
ELL = ((2.0, 2.0), (12.0, 2.0), (12.0, 6.0), (8.0, 6.0), (8.0, 11.0), (2.0, 11.0))


@pytest.fixture
def window(make_window):
    return make_window(yard_of(
        plant("A1", "apple:Liberty", (16, 15)),
        buildings=(Building(id="BL1", name="House", footprint=BOX), Building(id="BL2", footprint=ELL)),
    ))


def corners(window, number=0):
    return window.open_yard.shown_yard.buildings[number].footprint


def test_click_type_and_enter_is_one_step_in_any_unit(window):
    canvas, yard = window.canvas, window.open_yard
    click(canvas, (24, 15))
    below = (24, 12 - 13 / canvas.view.scale)
    click(canvas, below)
    field = canvas.edges.field
    assert field.isVisible()
    assert field.line.text() == field.line.selectedText() == "8.00 m"
    assert field.line.accessibleName() == "Length of edge 1 of House"
    QTest.keyClicks(field.line, "30'")
    assert yard.on_trial
    assert corners(window)[1] == pytest.approx((20 + 9.144, 12))
    press_key(field.line, Qt.Key.Key_Return)
    assert not field.isVisible()
    assert canvas.hasFocus()
    assert yard.undo_stack.count() == 1
    assert yard.undo_stack.undoText() == "Change edge of House"
    assert canvas.property("said") == "Edge 1 of House is 9.14 m"
    yard.undo_stack.undo()
    assert corners(window) == BOX


def test_by_keys_from_edge_to_edge_and_escape_leaves_what_was_set(window):
    canvas, yard = window.canvas, window.open_yard
    yard.select({"BL1"})
    trigger(window, "edge lengths")
    line = canvas.edges.field.line
    QTest.keyClicks(line, "9")
    press_key(line, Qt.Key.Key_Tab)
    assert line.text() == "6.00 m"
    QTest.keyClicks(line, "5")
    assert corners(window)[2] == (29, 17)
    press_key(line, Qt.Key.Key_Escape)
    assert corners(window) == ((20, 12), (29, 12), (29, 18), (20, 18))
    assert yard.undo_stack.count() == 1
    trigger(window, "edge lengths")
    press_key(line, Qt.Key.Key_Backtab)
    assert line.accessibleName() == "Length of edge 4 of House"
    press_key(line, Qt.Key.Key_Return)
    assert yard.undo_stack.count() == 1


def test_what_would_cross_itself_or_cannot_be_read_is_refused_in_a_line(window):
    canvas, yard = window.canvas, window.open_yard
    yard.select({"BL2"})
    canvas.edges.begin("BL2", 2)
    field = canvas.edges.field
    for typed, said in (("11", "cross itself"), ("long", "'long'"), ("-3", "")):
        field.line.setText("")
        QTest.keyClicks(field.line, typed)
        press_key(field.line, Qt.Key.Key_Return)
        assert field.isVisible()
        assert said in field.fault.text()
        assert field.fault.text()
        assert corners(window, 1) == ELL
    assert yard.undo_stack.count() == 0
    yard.select(())
    assert not field.isVisible()


def test_offered_only_for_one_thing_with_edges_that_is_not_locked(window):
    yard, action = window.open_yard, window.actions_["edge lengths"]
    for chosen, offered in (((), False), (("A1",), False), (("BL1",), True), (("BL1", "BL2"), False),
                            (("lot",), True)):
        yard.select(chosen)
        assert action.isEnabled() is offered
        assert bool(sole_edged(yard)) is offered
    yard.select({"BL1"})
    trigger(window, "lock")
    assert not action.isEnabled()
