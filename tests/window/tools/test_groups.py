"""Groups under the pointer, the keys and the clipboard, by plain events."""

import pytest
from support.builders import plant, yard_of
from support.hands import click, drag, press, release, said

from yardplan.window import clipboard
from yardplan.window.tools import arranging, commands, picking
from yardplan.window.tools.carry import CarryTool
from yardplan.window.tools.desk import Desk
from yardplan.window.tools.event import Pointer
from yardplan.window.tools.select import SelectTool
from yardplan.yard.planting import Container
from yardplan.yard.yard import Group

PAIR = frozenset({"A1", "A2"})


@pytest.fixture
def desk(opened):
    made = Desk(opened(yard_of(
        plant("A1", "apple:Liberty", (5, 5)), plant("A2", "apple:Enterprise", (10, 5)),
        plant("A3", "apple:Liberty", (15, 5)), plant("A4", "apple:Liberty", (22, 15)),
    )))
    made.open_yard.select(PAIR)
    assert picking.group(made.open_yard) == "Group 1 made of 2 things"
    made.open_yard.select(())
    return made


@pytest.fixture
def tool(desk):
    return SelectTool(desk)


def places(desk):
    return {p.id: p.place for p in desk.open_yard.yard.plantings}


def test_a_click_picks_the_group_a_double_click_or_alt_click_one_member(desk, tool):
    click(tool, (5, 5))
    assert desk.open_yard.selection == PAIR
    tool.double(Pointer(kind="double", place=(5, 5)))
    assert desk.open_yard.selection == {"A1"}
    # Inside the group a click goes from member to member; a click elsewhere leaves it.
    click(tool, (10, 5))
    assert desk.open_yard.selection == {"A2"}
    click(tool, (15, 5))
    click(tool, (10, 5), alt=True)
    assert desk.open_yard.selection == {"A2"}
    tool.cancel()
    click(tool, (10, 5))
    assert desk.open_yard.selection == PAIR


def test_shift_takes_the_whole_group_in_and_out(desk, tool):
    click(tool, (15, 5))
    click(tool, (5, 5), shift=True)
    assert desk.open_yard.selection == PAIR | {"A3"}
    click(tool, (10, 4), shift=True)
    assert desk.open_yard.selection == {"A3"}


def test_a_band_takes_a_group_only_whole(desk, tool):
    drag(tool, (8, 1), (17, 9))
    assert desk.open_yard.selection == {"A3"}
    drag(tool, (1, 1), (17, 9))
    assert desk.open_yard.selection == PAIR | {"A3"}


def test_a_group_moves_turns_copies_and_is_deleted_as_one(desk, tool):
    drag(tool, (5, 5), (5, 8), alt=True)
    assert places(desk) == {"A1": (5, 8), "A2": (10, 8), "A3": (15, 5), "A4": (22, 15)}
    assert desk.open_yard.undo_stack.undoText() == "Move Group 1 of 2 things"
    grip = next(handle for handle in tool.overlay().handles if handle.round)
    drag(tool, grip.place, (0, 8))
    assert places(desk)["A1"] == pytest.approx((7.5, 5.5))
    drag(tool, places(desk)["A1"], (18, 9), ctrl=True)
    copies = desk.open_yard.selection
    assert desk.open_yard.yard.groups[1] == Group(name="Group 2", members=tuple(sorted(copies)))
    commands.delete(desk.open_yard)
    assert len(desk.open_yard.yard.groups) == 1
    desk.open_yard.undo_stack.undo()
    assert len(desk.open_yard.yard.groups) == 2


def test_a_member_alone_moves_alone(desk, tool):
    click(tool, (5, 5), alt=True)
    drag(tool, (5, 5), (5, 9), alt=True)
    assert (places(desk)["A1"], places(desk)["A2"]) == ((5, 9), (10, 5))


def test_cut_and_paste_keep_the_group(desk, tool):
    click(tool, (5, 5))
    clipboard.copy(desk.open_yard)
    clipboard.paste(desk.open_yard)
    assert desk.open_yard.yard.groups[1].members == tuple(sorted(desk.open_yard.selection))


def test_a_group_with_a_locked_member_stays_whole_where_it_is(desk, tool):
    desk.open_yard.select({"A2"})
    commands.set_locked(desk.open_yard, True)
    desk.open_yard.select(())
    press(tool, (5, 5))
    assert desk.open_yard.selection == PAIR
    tool.move(Pointer(kind="move", place=(5, 9), dragging=True))
    assert "locked" in tool.hint()
    release(tool, (5, 9))
    assert commands.nudge(desk.open_yard, (1, 0), far=True) == "Locked things are not moved"
    assert commands.delete(desk.open_yard) == "Locked things are not deleted"
    assert CarryTool(desk).done
    assert places(desk)["A1"] == (5, 5)
    # Lock and unlock of the group reach every member.
    commands.set_locked(desk.open_yard, False)
    assert not any(p.locked for p in desk.open_yard.yard.plantings)
    commands.set_locked(desk.open_yard, True)
    assert [p.locked for p in desk.open_yard.yard.plantings] == [True, True, False, False]


def test_tab_stops_once_at_a_group_and_goes_on_among_its_members_from_one(desk, tool):
    stops = []
    for _ in range(4):
        picking.cycle(desk.open_yard, 1)
        stops.append(desk.open_yard.selection)
    assert stops == [{"A4"}, PAIR, {"A3"}, {"A4"}]
    desk.open_yard.select({"A1"})
    picking.cycle(desk.open_yard, 1)
    assert desk.open_yard.selection == {"A2"}
    picking.cycle(desk.open_yard, 1)
    assert desk.open_yard.selection == {"A1"}


def test_groups_are_put_in_line_and_spaced_as_one(desk):
    yard = desk.open_yard.yard
    aligned = arranging.align(yard, frozenset({"A1", "A2", "A4"}), "left")
    assert [p.place[0] for p in aligned.plantings] == [5, 10, 15, 5]
    # Middles at 7.5 (the group), 15 and 22: the one between goes to 14.75.
    spaced = arranging.space_evenly(yard, frozenset({"A1", "A2", "A3", "A4"}), "across")
    assert [p.place[0] for p in spaced.plantings] == [5, 10, 14.75, 22]
    assert [p.place[0] for p in arranging.align(yard, PAIR, "left").plantings] == [5, 5, 15, 22]


def test_a_pot_is_grouped_with_what_stands_in_it(opened):
    pot = Container(id="PT1", place=(5, 5), volume=45)
    desk = Desk(opened(yard_of(
        plant("A1", "apple:Liberty", (5, 5), container="PT1"), plant("A2", "apple:Liberty", (9, 5)),
        containers=(pot,),
    )))
    desk.open_yard.select(PAIR)
    picking.group(desk.open_yard)
    assert set(desk.open_yard.yard.groups[0].members) == {"A1", "A2", "PT1"}
    spaced = arranging.align(desk.open_yard.yard, desk.open_yard.selection, "left")
    assert [p.place for p in spaced.plantings] == [(5, 5), (5, 5)]


def test_making_naming_and_ending_say_what_they_did(desk):
    yard = desk.open_yard
    yard.select({"A3"})
    assert picking.group(yard) == "Select two or more things to group them"
    assert picking.ungroup(yard) == "Nothing that is selected is in a group"
    yard.select({"A1"})
    assert picking.rename(yard, "Hedge") == "Group 1 is called Hedge now"
    assert picking.ungroup(yard) == "Ungroup Hedge of 2 things"
    assert yard.selection == PAIR
    assert yard.yard.groups == ()
    yard.undo_stack.undo()
    assert yard.yard.groups[0].name == "Hedge"


def test_grouping_leaves_findings_and_light_as_they_are(desk):
    heard, before = said(desk), desk.open_yard.checks.findings
    desk.open_yard.select({"A3", "A4"})
    picking.group(desk.open_yard)
    assert desk.open_yard.checks.findings is before
    assert desk.open_yard.survey.yard is desk.open_yard.yard
    assert heard == []


def test_a_whole_group_is_framed_and_a_member_alone_is_not(desk, tool):
    click(tool, (5, 5))
    (frame,) = tool.overlay().strokes
    (left, bottom), _, (right, top), _ = frame.points
    crown = next(plant.size.spread / 2 for plant in desk.open_yard.stand.plants if plant.id == "A1")
    assert left < 5 - crown
    assert right > 10
    assert bottom < 5 - crown
    assert top > 5 + crown
    click(tool, (5, 5), alt=True)
    assert tool.overlay().strokes == ()
