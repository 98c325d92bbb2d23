"""Variants in the window: kept, opened, named, deleted, compared on a worker that a drag never waits for."""

import pytest
from PySide6.QtCore import Qt
from support.builders import plant, yard_of
from support.widgets import too_small, unnamed
from support.window_hands import trigger

from yardplan.window.dialogs.variants_box import VariantsBox
from yardplan.yard import edits

YARD = yard_of(plant("A1", "apple:Liberty", (10, 10)), plant("A2", "apple:Egremont Russet", (11, 10)))
PATIENCE = 20_000


@pytest.fixture
def open_yard(opened):
    return opened(YARD)


@pytest.fixture
def box(qtbot, open_yard, theme):
    made = VariantsBox(open_yard, lambda question, text: made.answer or text)
    made.answer = ""
    qtbot.addWidget(made)
    made.show()
    return made


def compared(qtbot, box):
    """Wait for the comparison and give its rows by their words."""
    qtbot.waitUntil(lambda: not box.comparing.busy and box.rows.rowCount() > 0, timeout=PATIENCE)
    return {line.words: line.values for line in box.rows.lines}


def tick(box, row, *, on=True):
    box.list.item(row).setCheckState(Qt.CheckState.Checked if on else Qt.CheckState.Unchecked)


def spread_out(open_yard):
    open_yard.commit("Move A2 Egremont Russet", edits.move(open_yard.yard, {"A2"}, (6.0, 0.0)))


def test_keep_open_rename_and_delete_are_one_named_step_each(box, open_yard):
    box.keep.click()
    spread_out(open_yard)
    assert [item.data(Qt.ItemDataRole.UserRole) for item in box._items()] == [None, "Variant 1"]
    box.list.setCurrentRow(1)
    box.answer = "Close together"
    box.rename.click()
    box.take_up.click()
    assert open_yard.yard.plantings == YARD.plantings
    box.forget.click()
    assert open_yard.yard.variants == ()
    stack = open_yard.undo_stack
    assert [stack.text(n) for n in range(stack.count())] == [
        "Keep variant Variant 1", "Move A2 Egremont Russet", "Rename variant Variant 1",
        "Open variant Close together", "Delete variant Close together",
    ]
    while stack.canUndo():
        stack.undo()
    assert open_yard.yard == YARD


def test_a_name_that_is_taken_is_refused_in_the_box(box, open_yard):
    box.keep.click()
    box.answer = "Variant 1"
    box.keep.click()
    assert "Variant 1 already" in box.fault.text()
    assert open_yard.undo_stack.count() == 1
    box.answer = "Another"
    box.keep.click()
    assert box.fault.isHidden()


def test_side_by_side_shows_what_differs(box, open_yard, qtbot):
    box.keep.click()
    spread_out(open_yard)
    qtbot.waitUntil(lambda: box.rows.names == ("The plan now", "Variant 1"), timeout=PATIENCE)
    qtbot.waitUntil(lambda: compared(qtbot, box)["Conflicts"] == ("0", "1"), timeout=PATIENCE)
    rows = compared(qtbot, box)
    assert rows["Plants"] == ("2", "2")
    assert rows["Room between plants"] == ("0", "1")
    differing = {line.words for line in box.rows.lines if line.differs}
    assert "Conflicts" in differing
    assert "Plants" not in differing
    assert not box.rows.data(box.rows.index(0, 1), Qt.ItemDataRole.DecorationRole).isNull()
    row = [line.words for line in box.rows.lines].index("Conflicts") + 1
    spoken = box.rows.data(box.rows.index(row, 2), Qt.ItemDataRole.AccessibleTextRole)
    assert spoken == "Variant 1, Conflicts: 1"
    box.only.setChecked(True)
    shown = {line.words: line.differs for line in box.rows.lines}
    assert set(shown) >= differing
    assert "apple" not in shown


def test_a_variant_is_worked_out_once_and_the_plan_now_again(box, open_yard, qtbot):
    compared(qtbot, box)
    box.keep.click()
    # The plan as it was just kept is the plan now.
    (known,) = (made for _, made in box.comparing._kept)
    spread_out(open_yard)
    qtbot.waitUntil(lambda: len(box.comparing._kept) == 2, timeout=PATIENCE)
    assert any(made is known for _, made in box.comparing._kept)
    tick(box, 1, on=False)
    assert box.rows.names == ("The plan now",)
    assert "two or more" in box.note.text()


def test_a_drag_stops_the_work_and_rest_takes_it_up_again(box, open_yard, qtbot):
    box.keep.click()
    spread_out(open_yard)
    tick(box, 0, on=False)
    tick(box, 0)
    assert box.comparing.busy
    open_yard.show_trial(edits.move(open_yard.yard, {"A1"}, (1.0, 0.0)))
    assert not box.comparing.busy
    assert box.stop.isHidden()
    open_yard.drop_trial()
    assert compared(qtbot, box)["Plants"] == ("2", "2")


def test_stop_stops_and_a_hidden_box_does_nothing(box, open_yard, qtbot):
    box.keep.click()
    spread_out(open_yard)
    tick(box, 0, on=False)
    tick(box, 0)
    assert box.comparing.busy
    box.stop.click()
    assert not box.comparing.busy
    assert box.note.text().startswith("Stopped")
    box.hide()
    spread_out(open_yard)
    qtbot.wait(20)
    assert not box.comparing.busy
    box.show()
    assert len(compared(qtbot, box)["Plants"]) == 2


def test_every_control_has_a_name_and_room_for_a_finger(box):
    assert unnamed(box) == []
    assert too_small(box) == []


def test_by_the_menus_of_the_window(make_window):
    window = make_window(YARD)
    window.questions.line = lambda question, text: "Mine"
    trigger(window, "keep variant")
    assert window.open_yard.yard.variants[0].name == "Mine"
    told = []
    window.questions.tell_fault = lambda *words: told.append(words)
    trigger(window, "keep variant")
    assert told[0][0] == "Nothing was kept"
    trigger(window, "variants")
    assert window.variant_commands.box.isVisible()
    window.variant_commands.box.close()


def test_opening_a_variant_keeps_site_and_own_plants(box, open_yard):
    box.keep.click()
    open_yard.commit("feet", edits.set_site(open_yard.yard, units="imperial"))
    open_yard.commit("add", edits.add(open_yard.yard, plant("P1", "european pear:Bartlett", (20, 5))))
    box.list.setCurrentRow(1)
    box.list.itemDoubleClicked.emit(box.list.item(1))
    assert open_yard.units == "imperial"
    assert open_yard.yard.find("P1") is None
