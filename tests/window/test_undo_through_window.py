"""Any row of gestures through the window: undo to the start gives the same yard, redo the same end."""

from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from PySide6.QtCore import Qt
from support.builders import plant, yard_of
from support.window_hands import click, drag, press_key, trigger, type_length

from yardplan.window.open_yard import InHand
from yardplan.yard.ground import Building
from yardplan.yard.planting import PlantKey

YARD = yard_of(
    plant("A1", "apple:Liberty", (5, 5)), plant("C1", "tart cherry:Meteor", (15, 8)),
    buildings=(Building(id="BL1", name="House", footprint=((20, 12), (27, 12), (27, 18), (20, 18))),),
)
places = st.tuples(st.integers(1, 29), st.integers(1, 19)).map(lambda p: (float(p[0]), float(p[1])))
commands = st.sampled_from(
    ["duplicate", "delete", "cut", "paste", "lock", "unlock", "select all", "feet", "metres", "undo", "redo"]
)


def _drag(window, start, end):
    drag(window.canvas, start, ((start[0] + end[0]) / 2, (start[1] + end[1]) / 2), end)


def _plant(window, place):
    window.open_yard.take_in_hand(InHand(plant=PlantKey("apple", "Topaz")))
    click(window.canvas, place)
    press_key(window.canvas, Qt.Key.Key_Escape)


def _shed(window, place):
    trigger(window, "tool building")
    click(window.canvas, place)
    type_length(window.canvas, "2 m x 1 m")
    press_key(window.canvas, Qt.Key.Key_Escape)


gestures = st.one_of(
    st.tuples(st.just(_drag), places, places),
    st.tuples(st.just(_plant), places),
    st.tuples(st.just(_shed), places),
    st.tuples(st.just(lambda window, place: click(window.canvas, place)), places),
    st.tuples(st.just(trigger), commands),
    st.tuples(
        st.just(lambda window, key: press_key(window.canvas, key)),
        st.sampled_from([Qt.Key.Key_Left, Qt.Key.Key_Up, Qt.Key.Key_Tab, Qt.Key.Key_Delete]),
    ),
)


@given(row=st.lists(gestures, min_size=1, max_size=8))
@settings(max_examples=25, deadline=None, suppress_health_check=[HealthCheck.function_scoped_fixture])
def test_undo_to_the_start_and_redo_to_the_end(make_window, windows, row):
    if not windows:
        windows.append(make_window(YARD))
        windows[0].questions.tell_fault = lambda title, text, details="": None
    window = windows[0]
    window.open_yard.new(YARD)
    window.canvas.fit()
    for gesture, *arguments in row:
        gesture(window, *arguments)
    assert not window.open_yard.on_trial
    end, stack = window.open_yard.yard, window.open_yard.undo_stack
    steps = stack.index()
    while stack.canUndo():
        stack.undo()
    assert window.open_yard.yard == YARD
    assert not window.open_yard.unsaved
    for _ in range(steps):
        stack.redo()
    assert window.open_yard.yard == end
    assert window.open_yard.selection <= end.ids() | {"lot"}
