"""Keys and gestures of the sheet that no drag covers: Tab in and out, menu key, pinch, snapping shown."""

import pytest
from PySide6.QtCore import QPoint, QPointF, QRect, QSize, Qt
from PySide6.QtGui import QContextMenuEvent, QImage, QNativeGestureEvent, QPainter, QPointingDevice
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication
from support.builders import plant, yard_of
from support.window_hands import click, hover, press_key, trigger

from yardplan.window.canvas.overlay_paint import paint_snap
from yardplan.window.canvas.snapping import Snapped
from yardplan.window.canvas.view import View
from yardplan.yard.ground import Building

HOUSE = Building(id="BL1", name="House", footprint=((20, 12), (28, 12), (28, 18), (20, 18)))


@pytest.fixture
def window(make_window):
    return make_window(yard_of(
        plant("A1", "apple:Liberty", (5, 5)), plant("A2", "apple:Liberty", (12, 5)), buildings=(HOUSE,)
    ))


def test_tab_stops_at_everything_and_then_goes_on_and_comes_back_in(window):
    canvas, yard = window.canvas, window.open_yard
    canvas.setFocus()
    stops = []
    while canvas.hasFocus():
        press_key(canvas, Qt.Key.Key_Tab)
        stops.append(yard.selection)
    assert stops[:3] == [{"BL1"}, {"A1"}, {"A2"}]
    assert len(stops) == 4
    canvas.setFocus(Qt.FocusReason.TabFocusReason)
    press_key(canvas, Qt.Key.Key_Tab)
    assert canvas.hasFocus()
    assert yard.selection == {"BL1"}
    press_key(canvas, Qt.Key.Key_Backtab, Qt.KeyboardModifier.ShiftModifier)
    assert not canvas.hasFocus()


def test_the_menu_key_opens_the_menu_at_what_is_selected(window, qtbot):
    canvas = window.canvas
    canvas.menu_wanted.disconnect()
    window.open_yard.select({"A2"})
    with qtbot.waitSignal(canvas.menu_wanted) as asked:
        event = QContextMenuEvent(QContextMenuEvent.Reason.Keyboard, QPoint(1, 1), QPoint(1, 1))
        QApplication.sendEvent(canvas, event)
    assert canvas.mapFromGlobal(asked.args[0]) == canvas.view.to_pixels((12, 5)).toPoint()
    assert window.open_yard.selection == {"A2"}


def test_a_pinch_zooms_about_the_fingers(window):
    canvas = window.canvas
    place = QPointF(200, 150)
    under, scale = canvas.view.to_metres(200, 150), canvas.view.scale
    event = QNativeGestureEvent(
        Qt.NativeGestureType.ZoomNativeGesture, QPointingDevice.primaryPointingDevice(), 2, place, place,
        canvas.mapToGlobal(place), 0.25, QPointF(), 1,
    )
    QApplication.sendEvent(canvas, event)
    assert canvas.view.scale == pytest.approx(1.25 * scale)
    assert canvas.view.to_metres(200, 150) == pytest.approx(under)


def test_a_corner_by_click_and_typing_on_the_sheet(window):
    canvas, yard = window.canvas, window.open_yard
    yard.select({"BL1"})
    click(canvas, (28, 18))
    hover(canvas, (28.6, 18.6))
    press_key(canvas, Qt.Key.Key_2)
    assert canvas.entry.isVisible()
    canvas.entry.line.setText("29; 19")
    press_key(canvas.entry.line, Qt.Key.Key_Return)
    assert yard.yard.buildings[0].footprint[2] == (29, 19)
    assert not canvas.entry.isVisible()
    assert canvas.hasFocus()


def test_undo_names_what_it_undoes_and_the_list_of_steps_goes_back(window):
    yard = window.open_yard
    yard.select({"A1"})
    trigger(window, "duplicate")
    trigger(window, "delete")
    assert window.actions_["undo"].text() == "&Undo Delete A3 Liberty"
    trigger(window, "history")
    stack = yard.undo_stack
    assert [stack.text(n) for n in range(stack.count())] == ["Copy A1 Liberty", "Delete A3 Liberty"]
    stack.setIndex(0)
    assert yard.yard.find("A3") is None
    assert not yard.unsaved
    stack.setIndex(1)
    assert yard.yard.find("A3") is not None


@pytest.mark.parametrize(
    "kind", ["corner", "centre", "middle", "edge", "square", "in line", "equal steps", "grid"]
)
def test_what_is_snapped_to_is_drawn_and_named(kind, qapp):
    picture = QImage(200, 200, QImage.Format.Format_RGB32)
    picture.fill(Qt.GlobalColor.white)
    painter = QPainter(picture)
    view = View(scale=20, centre=(0, 0), width=200, height=200)
    paint_snap(painter, view, Snapped((0.0, 0.0), kind, (((-2.0, 0.0), (0.0, 0.0)),)))
    painter.end()
    marked = [
        (x, y) for x in range(90, 200) for y in range(90, 130)
        if picture.pixelColor(x, y) != Qt.GlobalColor.white
    ]
    assert any(x < 108 for x, _ in marked), "the mark"
    assert any(x > 112 and y > 108 for x, y in marked), "its name"


def test_the_grid_point_that_caught_is_marked_while_a_plant_is_dragged(window):
    canvas = window.canvas
    start, end = canvas.view.to_pixels((5, 5)), canvas.view.to_pixels((7.52, 8.08))
    QTest.mousePress(canvas, Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier, start.toPoint())
    for part in (0.5, 1.0):
        QTest.mouseMove(canvas, (start + (end - start) * part).toPoint())
    caught = canvas.desk.snapped
    assert caught.kind == "grid"
    assert caught.point == pytest.approx((7.5, 8.1), abs=0.11)
    assert (round(caught.point[0] * 10) / 10, round(caught.point[1] * 10) / 10) == pytest.approx(caught.point)
    canvas.repaint()
    place = canvas.view.to_pixels(caught.point)
    with_mark = canvas.grab(QRect(place.toPoint() - QPoint(12, 12), QSize(25, 25))).toImage()
    canvas.desk.forget_snap()
    canvas.repaint()
    without = canvas.grab(QRect(place.toPoint() - QPoint(12, 12), QSize(25, 25))).toImage()
    assert with_mark != without
    press_key(canvas, Qt.Key.Key_Escape)
