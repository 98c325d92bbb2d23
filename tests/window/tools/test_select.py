"""The pointer tool, by plain events in metres."""

import pytest
from support.builders import plant, yard_of
from support.hands import click, drag, move, press, release, said

from yardplan.window.tools.desk import Desk
from yardplan.window.tools.select import SelectTool
from yardplan.yard.ground import Building
from yardplan.yard.planting import Container

HOUSE = Building(id="BL1", name="House", footprint=((20, 12), (28, 12), (28, 18), (20, 18)), eaves=3, ridge=3)


@pytest.fixture
def desk(opened):
    yard = yard_of(
        plant("A1", "apple:Liberty", (5, 5)), plant("A2", "apple:Enterprise", (15, 5)), buildings=(HOUSE,)
    )
    return Desk(opened(yard))


@pytest.fixture
def tool(desk):
    return SelectTool(desk)


def place(desk, key="A1"):
    return desk.open_yard.shown_yard.find(key).place


def test_a_click_selects_and_a_click_on_bare_ground_selects_nothing(desk, tool):
    click(tool, (5.2, 5.1))
    assert desk.open_yard.selection == {"A1"}
    click(tool, (10, 15))
    assert desk.open_yard.selection == frozenset()


def test_shift_adds_and_takes_away(desk, tool):
    click(tool, (5, 5))
    click(tool, (15, 5), shift=True)
    assert desk.open_yard.selection == {"A1", "A2"}
    click(tool, (5, 5), shift=True)
    assert desk.open_yard.selection == {"A2"}


def test_a_drag_shows_a_trial_and_is_one_step(desk, tool):
    press(tool, (5, 5))
    move(tool, (6, 6))
    assert desk.open_yard.on_trial
    assert place(desk) == (6, 6)
    assert desk.open_yard.yard.find("A1").place == (5, 5)
    assert tool.live == {"A1"}
    move(tool, (8, 7))
    release(tool, (8, 7))
    assert not desk.open_yard.on_trial
    assert desk.open_yard.yard.find("A1").place == (8, 7)
    assert desk.open_yard.undo_stack.count() == 1
    assert desk.open_yard.undo_stack.undoText() == "Move A1 Liberty"


def test_a_small_tremble_moves_nothing(desk, tool):
    drag(tool, (5, 5), (5.1, 5.1))
    assert desk.open_yard.undo_stack.count() == 0
    assert desk.open_yard.selection == {"A1"}


def test_a_drag_that_ends_where_it_began_is_no_step(desk, tool):
    drag(tool, (5, 5), (9, 9), (5, 5))
    assert desk.open_yard.undo_stack.count() == 0


def test_escape_puts_it_back(desk, tool):
    press(tool, (5, 5))
    move(tool, (8, 8))
    assert tool.cancel()
    assert place(desk) == (5, 5)
    release(tool, (8, 8))
    assert place(desk) == (5, 5)
    assert desk.open_yard.undo_stack.count() == 0


def test_ctrl_drags_a_copy(desk, tool):
    drag(tool, (5, 5), (7, 9), ctrl=True)
    yard = desk.open_yard.yard
    assert place(desk) == (5, 5)
    assert yard.find("A3").place == (7, 9)
    assert desk.open_yard.selection == {"A3"}


def test_many_selected_move_together(desk, tool):
    desk.open_yard.select({"A1", "A2"})
    drag(tool, (5, 5), (6, 8))
    assert (place(desk), place(desk, "A2")) == ((6, 8), (16, 8))


def test_a_plant_in_a_pot_takes_its_pot_along(opened):
    pot = Container(id="PT1", place=(5, 5), volume=45)
    desk = Desk(opened(yard_of(plant("A1", "apple:Liberty", (5, 5), container="PT1"), containers=(pot,))))
    drag(SelectTool(desk), (5, 5), (9, 9))
    assert place(desk) == (9, 9)
    assert place(desk, "PT1") == (9, 9)


def test_locked_things_stay_and_the_hint_says_why(opened):
    desk = Desk(opened(yard_of(plant("A1", "apple:Liberty", (5, 5), locked=True))))
    tool = SelectTool(desk)
    press(tool, (5, 5))
    move(tool, (9, 9))
    assert "locked" in tool.hint()
    release(tool, (9, 9))
    assert place(desk) == (5, 5)


def test_a_band_selects_what_lies_inside(desk, tool):
    drag(tool, (1, 1), (16, 9))
    assert desk.open_yard.selection == {"A1", "A2"}


def test_a_band_shows_while_it_is_drawn(desk, tool):
    press(tool, (1, 1))
    move(tool, (6, 6))
    (stroke,) = tool.overlay().strokes
    assert stroke.look == "band"
    assert set(stroke.points) == {(1, 1), (6, 1), (6, 6), (1, 6)}


def test_a_corner_is_dragged(desk, tool):
    click(tool, (24, 15))
    assert desk.open_yard.selection == {"BL1"}
    drag(tool, (28, 18), (29, 19), alt=True)
    assert desk.open_yard.yard.find("BL1").footprint[2] == (29, 19)
    assert desk.open_yard.undo_stack.undoText() == "Move corner of House"


def test_a_corner_of_the_lot_is_dragged(desk, tool):
    desk.open_yard.select({"lot"})
    drag(tool, (30, 20), (32, 21), alt=True)
    assert desk.open_yard.yard.lot[2] == (32, 21)


def test_the_round_grip_turns_by_steps(desk, tool):
    click(tool, (24, 15))
    grip = next(handle for handle in tool.overlay().handles if handle.round)
    drag(tool, grip.place, (18, 15))
    corners = desk.open_yard.yard.find("BL1").footprint
    # A quarter turn about the middle (24, 15): the box is now 6 wide and 8 deep.
    assert sorted((round(x, 6), round(y, 6)) for x, y in corners) == [(21, 11), (21, 19), (27, 11), (27, 19)]


def test_a_round_crown_has_nothing_to_turn(desk, tool):
    click(tool, (5, 5))
    assert not any(handle.round for handle in tool.overlay().handles)


def test_double_click_on_an_edge_adds_a_corner(desk, tool):
    from yardplan.window.tools.event import Pointer

    click(tool, (24, 15))
    tool.double(Pointer(kind="double", place=(24, 12.1)))
    assert desk.open_yard.yard.find("BL1").footprint[1] == (24, 12)


def test_the_outcome_of_a_move_is_spoken(desk, tool):
    heard = said(desk)
    drag(tool, (5, 5), (8, 5))
    assert heard == ["Moved 3.00 m east; no conflict"]


def test_conflicts_follow_the_drag(desk, tool):
    def conflicts():
        return {f.things for f in desk.open_yard.findings if f.check == "spacing"}

    assert not conflicts()
    press(tool, (5, 5))
    move(tool, (14, 5))
    assert conflicts() == {("A1", "A2")}
    move(tool, (5.2, 5))
    assert not conflicts()
    tool.cancel()
