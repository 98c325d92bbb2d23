"""The guided start: points at real controls, goes on when a step is really done, can be left at any time."""

import pytest
from attrs import evolve
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication
from support.builders import plant, yard_of
from support.widgets import too_small, unnamed
from support.window_hands import press_key

from yardplan.window.guide.steps import STEPS


@pytest.fixture
def window(make_window):
    return make_window()


@pytest.fixture
def guide(window):
    window.help.first_run()
    return window.help.guide


def ringed(window, guide):
    """The control under the middle of the ring."""
    guide.look()
    assert guide.ring.isVisible()
    return window.childAt(guide.ring.geometry().center())


def test_it_comes_on_the_first_run_only(window, guide):
    assert guide.on
    assert window.start_panel.form.place.line.hasFocus()
    assert guide.bar.isVisible()
    guide.leave()
    window.help.first_run()
    assert not guide.on
    assert not guide.bar.isVisible()
    window.actions_["guided start"].trigger()
    assert guide.on
    assert guide.bar.isVisible()


def test_it_does_not_come_over_a_yard_that_is_open(make_window):
    window = make_window(yard_of(plant("A1", "apple:Liberty", (5, 5))))
    window.help.first_run()
    assert window.help.guide is None


def test_each_step_goes_on_when_it_was_really_done(window, guide, qtbot, tmp_path):
    panel, yard = window.start_panel, window.open_yard
    assert panel.form.place.isAncestorOf(ringed(window, guide))
    panel.form.place.line.setText("Geneva, NY")
    guide.look()
    assert guide.number == 0
    press_key(panel.form.place.line, Qt.Key.Key_Return)
    guide.look()
    assert guide.number == 1

    assert panel.form.isAncestorOf(ringed(window, guide))
    panel.begin.click()
    guide.look()
    assert guide.number == 2

    assert ringed(window, guide) is window.side.choose.search
    width, depth = yard.yard.lot[2]
    places = {"A1": ("apple:Akane", 0.2), "A2": ("apple:Gala", 0.3)}
    two = yard_of(*(plant(key, name, (width * x, depth / 2)) for key, (name, x) in places.items()))
    yard.commit("Plant", evolve(yard.yard, plantings=two.plantings))
    qtbot.waitUntil(lambda: not yard.checks.busy and yard.light is not None, timeout=20_000)
    guide.look()
    assert guide.number == 3

    assert window.side.findings.isAncestorOf(ringed(window, guide))
    one, other = yard.yard.plantings
    other = evolve(other, place=(width * 0.75, depth / 2))
    yard.commit("Move", evolve(yard.yard, plantings=(one, other)))
    qtbot.waitUntil(lambda: not yard.checks.busy and yard.light is not None, timeout=20_000)
    guide.look()
    assert guide.number == 4

    assert ringed(window, guide) is window.menuBar()
    window.actions_["sheets"].trigger()
    box = window.take_home.boxes["sheets"]
    for name, choice in box.choices.items():
        choice.setChecked(name == "key")
    box.save_to(tmp_path / "key.pdf")
    box.close()
    guide.look()
    assert guide.over
    assert not guide.ring.isVisible()
    assert "round" in guide.strip.title.text()
    guide.strip.leave.click()
    assert not guide.bar.isVisible()


def test_the_keyboard_goes_where_the_ring_points(window, guide):
    for step in range(len(STEPS) - 1):
        if step == 3:
            near = (plant("A1", "apple:Akane", (5, 5)), plant("A2", "apple:Gala", (6, 5)))
            window.open_yard.new(yard_of(*near))
            QApplication.processEvents()
        guide.strip.show_me.setFocus()
        press_key(guide.strip.show_me, Qt.Key.Key_Space)
        focus = QApplication.focusWidget()
        middle = focus.mapTo(window, focus.rect().center())
        assert guide._aim().area(window).contains(middle), (step, focus)
        guide.next_step()


@pytest.mark.parametrize("where", ["strip", "sheet"])
def test_esc_leaves_it(window, guide, where):
    if where == "strip":
        guide.strip.next.setFocus()
        press_key(guide.strip.next, Qt.Key.Key_Escape)
    else:
        window.start_panel.put_away()
        press_key(window.canvas, Qt.Key.Key_Escape)
    assert not guide.on


def test_esc_on_the_sheet_first_backs_out_of_the_tool(window, guide):
    window.start_panel.put_away()
    window.actions_["tool building"].trigger()
    press_key(window.canvas, Qt.Key.Key_Escape)
    assert guide.on
    assert window.canvas.tool.icon == "select"


def test_the_ring_takes_no_click(window, guide):
    panel = window.start_panel
    guide.look()
    middle = panel.form.place.line.mapTo(window, panel.form.place.line.rect().center())
    assert guide.ring.geometry().contains(middle)
    QTest.mouseClick(window.windowHandle(), Qt.MouseButton.LeftButton, pos=middle)
    assert panel.form.place.line.hasFocus()


def test_its_strip_can_be_read_spoken_and_hit(window, guide):
    assert unnamed(guide.strip) == []
    assert too_small(guide.strip) == []
    assert guide.strip.accessibleDescription().startswith("step 1 of 5")
    for step in range(len(STEPS)):
        QApplication.processEvents()
        words = guide.strip.words
        assert words.height() >= words.heightForWidth(words.width()), step
        guide.next_step()


def test_without_the_panel_the_lot_is_told_by_its_tool(window, guide):
    """There is no Begin any more: the words name what is on the screen."""
    panel = window.start_panel
    panel.form.place.line.setText("Geneva, NY")
    press_key(panel.form.place.line, Qt.Key.Key_Return)
    guide.look()
    assert "press Begin" in guide.strip.words.text()
    panel.draw_button.click()
    guide.look()
    assert guide.number == 1
    assert "Begin" not in guide.strip.words.text()
    assert "click the corners on the sheet" in guide.strip.words.text()
