"""Who draws at once, with the panel for a new yard still open, loses nothing of what was typed there."""

from __future__ import annotations

from attrs import evolve
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from support import builders


def test_a_tool_taken_up_frees_the_sheet_and_keeps_the_place_typed(make_window):
    window = make_window()
    panel, yard = window.start_panel, window.open_yard
    assert panel.isVisible()
    panel.form.place.line.setText("42.44, -76.50")
    window.actions_["tool lot"].trigger()
    assert not panel.isVisible()
    assert round(yard.yard.site.latitude, 2) == 42.44
    assert yard.yard.site.monthly_means, "climate of the place is taken over"
    assert not yard.yard.lot, "the lot is still to be drawn"
    yard.undo_stack.undo()
    assert not panel.isVisible(), "undoing the place brings no panel over the sheet"


def test_a_panel_nothing_was_typed_in_leaves_the_yard_as_it_was(make_window):
    window = make_window()
    window.actions_["tool building"].trigger()
    assert not window.start_panel.isVisible()
    assert window.open_yard.undo_stack.count() == 0


def test_what_comes_in_from_elsewhere_keeps_the_place_typed_too(make_window, qtbot):
    window = make_window()
    yard = window.open_yard
    window.start_panel.form.place.line.setText("42.44, -76.50")
    yard.commit("Lot from a file", evolve(yard.yard, lot=((0, 0), (9, 0), (9, 9))))
    assert not window.start_panel.isVisible()
    qtbot.waitUntil(lambda: round(yard.yard.site.latitude, 2) == 42.44)
    assert len(yard.yard.lot) == 3


def test_typed_corners_beyond_the_sheet_in_sight_come_into_view(make_window):
    window = make_window()
    canvas = window.canvas
    window.actions_["tool lot"].trigger()
    for typed in ("0; 0", "100 m < N 10 30' E", "80 m < S 80 E"):
        canvas.open_entry(typed)
        QTest.keyClick(canvas.entry.line, Qt.Key.Key_Return)
    corners = canvas.tool.corners
    assert len(corners) == 3
    assert all(canvas.rect().contains(canvas.view.to_pixels(c).toPoint()) for c in corners)
    QTest.keyClick(canvas, Qt.Key.Key_Return)
    assert all(canvas.rect().contains(canvas.view.to_pixels(c).toPoint()) for c in window.open_yard.yard.lot)


def test_a_variety_taken_by_enter_is_placed_by_typing_on(make_window, qtbot):
    window = make_window(builders.yard_of())
    window.activateWindow()
    window.show_choice()
    QTest.keyClicks(window.focusWidget(), "liberty")
    QTest.keyClick(window.focusWidget(), Qt.Key.Key_Return)
    assert window.focusWidget() is window.canvas
    QTest.keyClicks(window.canvas, "4")
    QTest.keyClicks(window.canvas.entry.line, "; 2.5")
    QTest.keyClick(window.canvas.entry.line, Qt.Key.Key_Return)
    (plant,) = window.open_yard.yard.plantings
    assert (plant.plant.cultivar, plant.place) == ("Liberty", (4.0, 2.5))
