"""Any row of gestures through the window: undo to the start gives the same yard, redo the same end."""

from itertools import pairwise

import pytest
from hypothesis import HealthCheck, Phase, given, settings
from hypothesis import strategies as st
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QUndoView
from support.builders import plant, yard_of
from support.window_hands import click, drag, pixel, press_key, trigger, type_length

from yardplan.window import variants_kept
from yardplan.window.live_checks import LiveChecks
from yardplan.window.open_yard import InHand
from yardplan.window.tools.edge_figures import sole_edged
from yardplan.yard.edits import EditError
from yardplan.yard.ground import Building
from yardplan.yard.planting import PlantKey

YARD = yard_of(
    plant("A1", "apple:Liberty", (5, 5)), plant("C1", "tart cherry:Meteor", (15, 8)),
    buildings=(Building(id="BL1", name="House", footprint=((20, 12), (27, 12), (27, 18), (20, 18))),),
)
#: Where things stand at first, so that many presses meet one, and anywhere.
places = st.sampled_from([(5.0, 5.0), (15.0, 8.0), (23.0, 15.0), (27.0, 18.0), (1.0, 1.0)]) | st.tuples(
    st.integers(1, 29), st.integers(1, 19)
).map(lambda place: (float(place[0]), float(place[1])))
commands = st.sampled_from(["undo", "redo", "paste", "select all", "deselect", "feet", "metres"])
#: What is done with what is selected.
on_things = st.sampled_from([
    "group", "ungroup", "duplicate", "delete", "copy", "cut", "lock", "unlock", "turn 90", "mirror across",
    "align left", "space across", "carry",
])
chosen = st.sampled_from([("all",), ("A1", "C1"), ("A1",), ("BL1",), ("lot",)])


def _command(window, ids, name):
    """Something done with what is selected for it, as far as it is there and not locked."""
    window.open_yard.select(window.open_yard.yard.ids() if ids == ("all",) else ids)
    trigger(window, name)


def _plant(window, place):
    window.open_yard.take_in_hand(InHand(plant=PlantKey("apple", "Topaz")))
    click(window.canvas, place)
    press_key(window.canvas, Qt.Key.Key_Escape)


def _shed(window, place):
    trigger(window, "tool building")
    click(window.canvas, place)
    type_length(window.canvas, "2 m x 1 m")
    press_key(window.canvas, Qt.Key.Key_Escape)


def _edge(window, key, length):
    window.open_yard.select({key})
    if sole_edged(window.open_yard):
        trigger(window, "edge lengths")
        field = window.canvas.edges.field
        QTest.keyClicks(field.line, length)
        press_key(field.line, Qt.Key.Key_Return)
        press_key(field.line, Qt.Key.Key_Escape)


def _band(window, start, end):
    drag(window.canvas, start, end)


def _keys(window, keys):
    for key in keys:
        press_key(window.canvas, key)


def _variant(window, name):
    """Kept under a new name, opened under a known one."""
    known = any(variant.name == name for variant in window.open_yard.yard.variants)
    try:
        if known:
            variants_kept.open_variant(window.open_yard, name)
        else:
            trigger(window, "keep variant")
    except EditError as error:
        raise AssertionError(name) from error


def _give_up(window, start, end):
    """A drag that Esc ends."""
    canvas, left = window.canvas, Qt.MouseButton.LeftButton
    canvas.setFocus()
    QTest.mousePress(canvas, left, pos=pixel(canvas, start))
    QTest.mouseMove(canvas, pixel(canvas, end))
    press_key(canvas, Qt.Key.Key_Escape)
    QTest.mouseRelease(canvas, left, pos=pixel(canvas, end))


_KEYS = [Qt.Key.Key_Left, Qt.Key.Key_Up, Qt.Key.Key_Tab, Qt.Key.Key_Delete, Qt.Key.Key_Escape]
gestures = st.one_of(
    st.tuples(st.just(_band), places, places),
    st.tuples(st.just(_give_up), places, places),
    st.tuples(st.just(_plant), places),
    st.tuples(st.just(_shed), places),
    st.tuples(st.just(lambda window, place: click(window.canvas, place)), places),
    st.tuples(st.just(trigger), commands),
    st.tuples(st.just(_command), chosen, on_things),
    st.tuples(st.just(_command), chosen, on_things),
    st.tuples(st.just(_command), chosen, on_things),
    st.tuples(st.just(_keys), st.lists(st.sampled_from(_KEYS), min_size=1, max_size=3)),
    st.tuples(st.just(_edge), st.sampled_from(["BL1", "lot"]), st.sampled_from(["3", "20'", "0.2 m", "no"])),
    st.tuples(st.just(_variant), st.just("Mine")),
)


@pytest.fixture
def window(make_window, monkeypatch):
    """One window for all rows, with the checks by worker and all pauses left out."""
    monkeypatch.setattr(LiveChecks, "_ask_full", lambda checks: None)
    made = make_window(YARD, size=(900, 620))
    made.questions.tell_fault = lambda title, text, details="": None
    made.questions.line = lambda question, text: "Mine"
    made.side_dock.hide()
    made.season_dock.hide()
    return made


@given(row=st.lists(gestures, min_size=1, max_size=6))
@settings(
    max_examples=200, phases=[Phase.explicit, Phase.generate],
    suppress_health_check=[HealthCheck.function_scoped_fixture],
)
def test_undo_to_the_start_and_redo_to_the_end(window, row):
    yard = window.open_yard
    yard.new(YARD)
    start, stack = yard.yard, yard.undo_stack
    window.canvas.fit()
    for gesture, *arguments in row:
        gesture(window, *arguments)
    press_key(window.canvas, Qt.Key.Key_Escape)
    assert not yard.on_trial
    end, steps = yard.yard, stack.index()
    texts = [stack.text(number) for number in range(steps)]
    assert all(texts)
    while stack.canUndo():
        stack.undo()
    assert yard.yard == start
    assert not yard.unsaved
    for _ in range(steps):
        stack.redo()
    assert yard.yard == end
    assert yard.selection <= end.ids() | {"lot"}


def test_what_was_undone_and_redone_is_told(make_window):
    """Without it the line below still says that the copy was added."""
    window = make_window(YARD)
    window.open_yard.select({"A1"})
    trigger(window, "duplicate")
    trigger(window, "undo")
    assert window.status.currentMessage() == "Undone: Copy A1 Liberty"
    trigger(window, "redo")
    assert window.status.currentMessage() == "Redone: Copy A1 Liberty"


def test_no_step_of_the_list_covers_another(make_window):
    window = make_window(YARD)
    window.build_side()
    window.open_yard.select({"A1"})
    for _ in range(3):
        trigger(window, "duplicate")
    trigger(window, "history")
    steps = window.findChild(QUndoView)
    lines = [steps.visualRect(steps.model().index(row, 0)) for row in range(4)]
    assert all(line.height() >= 24 for line in lines)
    assert not any(a.intersects(b) for a, b in pairwise(lines))
