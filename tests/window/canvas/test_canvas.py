"""The canvas by real pointer and key events."""

import pytest
from PySide6.QtCore import QEvent, QPoint, QPointF, QRectF, Qt
from PySide6.QtGui import QContextMenuEvent, QWheelEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication
from support.builders import plant, yard_of
from support.window_hands import click, drag, hover, pixel, press_key, type_length

from yardplan.window.canvas.canvas import Canvas
from yardplan.window.tools.building import BuildingTool
from yardplan.window.tools.lot import LotTool
from yardplan.window.tools.select import SelectTool


@pytest.fixture
def canvas(opened, theme, qtbot):
    yard = opened(yard_of(plant("A1", "apple:Liberty", (5, 5)), plant("A2", "apple:Enterprise", (15, 5))))
    made = Canvas(yard)
    made.resize(900, 620)
    qtbot.addWidget(made)
    with qtbot.waitExposed(made):
        made.show()
    made.fit()
    return made


def wheel(canvas, at, notches, keys=Qt.KeyboardModifier.NoModifier, fingers=None):
    event = QWheelEvent(
        QPointF(at), QPointF(canvas.mapToGlobal(at)), fingers or QPoint(), QPoint(0, round(notches * 120)),
        Qt.MouseButton.NoButton, keys, Qt.ScrollPhase.NoScrollPhase, False,
    )
    QApplication.sendEvent(canvas, event)


def test_wheel_zooms_about_the_pointer(canvas):
    at = QPoint(300, 200)
    under = canvas.view.to_metres(300, 200)
    scale = canvas.view.scale
    wheel(canvas, at, 1)
    assert canvas.view.scale == pytest.approx(scale * 1.2)
    assert canvas.view.to_metres(300, 200) == pytest.approx(under)


def test_a_fling_is_capped(canvas):
    scale = canvas.view.scale
    wheel(canvas, QPoint(300, 200), 50)
    assert canvas.view.scale == pytest.approx(scale * 1.2**4)


def test_wheel_can_pan_and_ctrl_always_zooms(canvas):
    canvas.wheel.zooms = False
    scale, centre = canvas.view.scale, canvas.view.centre
    wheel(canvas, QPoint(300, 200), 1)
    assert canvas.view.scale == scale
    assert canvas.view.centre[1] > centre[1]
    wheel(canvas, QPoint(300, 200), 1, Qt.KeyboardModifier.ControlModifier)
    assert canvas.view.scale > scale


def test_two_fingers_pan(canvas):
    scale, centre = canvas.view.scale, canvas.view.centre
    wheel(canvas, QPoint(300, 200), 1, fingers=QPoint(40, 0))
    assert canvas.view.scale == scale
    assert canvas.view.centre[0] == pytest.approx(centre[0] - 40 / scale)


@pytest.mark.parametrize("space", [False, True])
def test_middle_drag_and_space_drag_pan(canvas, space):
    centre = canvas.view.centre
    button = Qt.MouseButton.LeftButton if space else Qt.MouseButton.MiddleButton
    if space:
        QTest.keyPress(canvas, Qt.Key.Key_Space)
    QTest.mousePress(canvas, button, Qt.KeyboardModifier.NoModifier, QPoint(200, 200))
    QTest.mouseMove(canvas, QPoint(260, 240))
    QTest.mouseRelease(canvas, button, Qt.KeyboardModifier.NoModifier, QPoint(260, 240))
    assert canvas.view.centre == pytest.approx(
        (centre[0] - 60 / canvas.view.scale, centre[1] + 40 / canvas.view.scale)
    )
    assert canvas.open_yard.undo_stack.count() == 0


def test_a_drag_with_the_mouse_moves_a_plant(canvas):
    drag(canvas, (5, 5), (6, 6), (9, 8))
    assert canvas.open_yard.yard.find("A1").place == pytest.approx((9, 8), abs=0.11)


def test_ctrl_drag_copies(canvas):
    drag(canvas, (5, 5), (6, 6), (9, 12), keys=Qt.KeyboardModifier.ControlModifier)
    assert canvas.open_yard.yard.find("A3") is not None


def test_escape_in_the_middle_of_a_drag(canvas):
    QTest.mousePress(canvas, Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier, pixel(canvas, (5, 5)))
    QTest.mouseMove(canvas, pixel(canvas, (9, 9)))
    press_key(canvas, Qt.Key.Key_Escape)
    assert not canvas.open_yard.on_trial
    assert canvas.open_yard.yard.find("A1").place == (5, 5)


def test_tab_goes_from_thing_to_thing_and_then_on(canvas):
    press_key(canvas, Qt.Key.Key_Tab)
    first = canvas.open_yard.selection
    press_key(canvas, Qt.Key.Key_Tab)
    assert {*first, *canvas.open_yard.selection} == {"A1", "A2"}
    press_key(canvas, Qt.Key.Key_Backtab, Qt.KeyboardModifier.ShiftModifier)
    assert canvas.open_yard.selection == first


def test_arrows_nudge_and_say_so(canvas):
    canvas.open_yard.select({"A1"})
    press_key(canvas, Qt.Key.Key_Right)
    assert canvas.open_yard.yard.find("A1").place == pytest.approx((5.1, 5))
    press_key(canvas, Qt.Key.Key_Up, Qt.KeyboardModifier.ShiftModifier)
    assert canvas.open_yard.yard.find("A1").place == pytest.approx((5.1, 6))
    assert canvas.property("said").startswith("Moved 1.00 m north")


def test_arrows_pan_when_nothing_is_selected(canvas):
    centre = canvas.view.centre
    press_key(canvas, Qt.Key.Key_Right)
    assert canvas.view.centre[0] > centre[0]


def test_typing_a_digit_opens_the_entry(canvas):
    canvas.use(LotTool)
    click(canvas, (1, 1))
    hover(canvas, (5, 1))
    type_length(canvas, "12' 6\"")
    assert canvas.tool.corners[-1] == pytest.approx((1 + 12.5 * 0.3048, 1))
    assert not canvas.entry.isVisible()


def test_a_wrong_entry_stays_open_and_says_why(canvas):
    canvas.use(LotTool)
    click(canvas, (1, 1))
    type_length(canvas, "3 parsecs")
    assert canvas.entry.isVisible()
    assert "not a length" in canvas.entry.fault.text()
    press_key(canvas.entry.line, Qt.Key.Key_Escape)
    assert not canvas.entry.isVisible()
    assert canvas.tool.busy


def test_enter_in_the_entry_does_not_end_the_outline(canvas):
    canvas.use(BuildingTool)
    for corner in ((1, 10), (4, 10), (4, 13)):
        click(canvas, corner)
    type_length(canvas, "3 < 180")
    assert len(canvas.tool.corners) == 4
    assert canvas.open_yard.yard.buildings == ()


def test_escape_backs_out_step_by_step(canvas):
    canvas.use(LotTool)
    click(canvas, (1, 1))
    press_key(canvas, Qt.Key.Key_Escape)
    assert isinstance(canvas.tool, LotTool)
    press_key(canvas, Qt.Key.Key_Escape)
    assert isinstance(canvas.tool, SelectTool)
    canvas.open_yard.select({"A1"})
    press_key(canvas, Qt.Key.Key_Escape)
    assert canvas.open_yard.selection == frozenset()


def test_the_context_menu_selects_what_is_under_it(canvas, qtbot):
    at = pixel(canvas, (15, 5))
    with qtbot.waitSignal(canvas.menu_wanted):
        event = QContextMenuEvent(QContextMenuEvent.Reason.Mouse, at, canvas.mapToGlobal(at))
        QApplication.sendEvent(canvas, event)
    assert canvas.open_yard.selection == {"A2"}


def test_f2_and_enter_ask_for_the_fields(canvas, qtbot):
    for key in (Qt.Key.Key_F2, Qt.Key.Key_Return):
        with qtbot.waitSignal(canvas.fields_wanted):
            press_key(canvas, key)


def test_leaving_the_sheet_forgets_the_hover(canvas):
    hover(canvas, (5, 5))
    assert canvas.hovered == "A1"
    QApplication.sendEvent(canvas, QEvent(QEvent.Type.Leave))
    assert canvas.hovered is None


def test_a_finding_s_place_comes_into_view(canvas):
    canvas.set_view(canvas.view.at_scale(200))
    canvas.open_yard.show_place(((28.0, 18.0),), {"A2"})
    at = canvas.view.to_pixels((28, 18))
    assert 0 < at.x() < canvas.width()
    assert 0 < at.y() < canvas.height()
    assert canvas.open_yard.selection == {"A2"}


def test_only_the_dragged_plant_is_painted_anew_each_frame(canvas):
    QTest.mousePress(canvas, Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier, pixel(canvas, (5, 5)))
    for step in range(3):
        QTest.mouseMove(canvas, pixel(canvas, (6 + step, 6)))
        canvas.repaint()
    painted = canvas.scene.ground.picture.painted
    for step in range(10):
        QTest.mouseMove(canvas, pixel(canvas, (9 + step / 2, 8)))
        canvas.repaint()
    assert canvas.scene.ground.picture.painted == painted
    QTest.mouseRelease(
        canvas, Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier, pixel(canvas, (13, 8))
    )


def test_a_new_yard_leaves_no_names_of_the_last_one_behind(make_window, qtbot):
    window = make_window(yard_of(plant("A1", "apple:Liberty", (5, 5))))
    qtbot.waitUntil(lambda: bool(window.canvas.scene.ground.words_near(*everywhere(window))))
    window.open_yard.new()
    window.canvas.grab()
    assert window.canvas.scene.ground.words_near(*everywhere(window)) == []


def everywhere(window):
    """The canvas's view and all of its area."""
    canvas = window.canvas
    return canvas.scene.plan_view(canvas.view, 1.0), QRectF(-1e4, -1e4, 2e4, 2e4)
