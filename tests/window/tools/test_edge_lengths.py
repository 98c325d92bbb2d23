"""The length of an edge clicked with the pointer tool, by plain events."""

import pytest
from support.builders import plant, yard_of
from support.hands import click, drag, move

from yardplan.window.tools.desk import Desk
from yardplan.window.tools.event import Pointer
from yardplan.window.tools.select import SelectTool
from yardplan.yard.ground import Building

HOUSE = Building(id="BL1", name="House", footprint=((20, 12), (28, 12), (28, 18), (20, 18)), eaves=3, ridge=3)
#: The figure of the lower edge stands 13 pixels outside it; a pixel of the hands is 0.05 m.
LOWER = (24, 12 - 13 * 0.05)


@pytest.fixture
def desk(opened):
    made = Desk(opened(yard_of(plant("A1", "apple:Liberty", (5, 5)), buildings=(HOUSE,))))
    made.asked = []
    made.edit_edge = lambda key, edge: made.asked.append((key, edge))
    return made


def test_a_click_on_a_length_opens_it_and_the_hint_told_so(desk):
    tool = SelectTool(desk)
    click(tool, (24, 15))
    move(tool, LOWER, down=False)
    assert tool.over_length
    assert "type this length over" in tool.hint()
    assert tool.overlay().strokes[0].closed
    click(tool, LOWER)
    assert desk.asked == [("BL1", 0)]
    assert desk.open_yard.selection == {"BL1"}


def test_lengths_of_the_lot_and_of_turned_edges_answer(desk):
    tool = SelectTool(desk)
    desk.open_yard.select({"lot"})
    click(tool, (-13 * 0.05, 10))
    assert desk.asked == [("lot", 3)]


def test_a_drag_from_a_length_a_hidden_one_and_one_of_a_locked_thing_open_nothing(desk):
    tool = SelectTool(desk)
    desk.open_yard.select({"BL1"})
    drag(tool, LOWER, (24, 9))
    desk.shows_lengths = lambda: False
    click(tool, LOWER)
    desk.shows_lengths = lambda: True
    desk.open_yard.select({"BL1", "A1"})
    click(tool, LOWER)
    assert desk.asked == []


def test_a_corner_comes_before_a_length_and_far_off_there_is_none(desk):
    tool = SelectTool(desk)
    desk.open_yard.select({"BL1"})
    tool.move(Pointer(kind="move", place=(28, 12)))
    assert not tool.over_length
    # Seen from so far away the edge is shorter than its figure, which is left out.
    tool.move(Pointer(kind="move", place=(24, 12 - 13 * 0.4), pixel=0.4))
    assert not tool.over_length


@pytest.mark.parametrize("pixel", [0.02, 0.05, 0.08, 0.2])
def test_the_turning_grip_covers_no_length(desk, pixel):
    """At every scale both are read and both can be pressed."""
    tool = SelectTool(desk)
    desk.open_yard.select({"BL1"})
    move(tool, (5, 15), down=False, pixel=pixel)
    grip = next(handle.place for handle in tool.overlay().handles if handle.round)
    # Half the grip and half the words, each with a pixel of air.
    low, high = 18 + (13 + 10 + 11) * pixel - 1e-9, 18 + max(0.15 * 6, 40 * pixel)
    assert low <= grip[1] <= high
    move(tool, grip, down=False, pixel=pixel)
    assert not tool.over_length
    drag(tool, grip, (32, 15), pixel=pixel)
    assert desk.open_yard.yard.buildings != (HOUSE,)
    assert not desk.asked
