"""Plants, pots, trees, gates, notes and the tape, by plain events in metres."""

import pytest
from support.builders import plant, yard_of
from support.hands import click, drag, move, said

from yardplan.checks.pollination import outlooks_for
from yardplan.checks.survey import survey_of
from yardplan.units import UnitError
from yardplan.window.open_yard import InHand
from yardplan.window.tools import commands
from yardplan.window.tools.carry import CarryTool
from yardplan.window.tools.desk import Desk
from yardplan.window.tools.gate import GateTool
from yardplan.window.tools.note import NoteTool
from yardplan.window.tools.picking import cycle
from yardplan.window.tools.plant import PlantTool
from yardplan.window.tools.pot import PotTool
from yardplan.window.tools.standing_tree import StandingTreeTool
from yardplan.window.tools.tape import TapeTool
from yardplan.yard.planting import PlantKey
from yardplan.yard.yard import Yard

LIBERTY = InHand(plant=PlantKey("apple", "Liberty"), rootstock="M.26")


@pytest.fixture
def desk(opened):
    return Desk(opened(yard_of()))


def test_nothing_in_hand_plants_nothing(desk):
    tool = PlantTool(desk)
    click(tool, (5, 5))
    assert desk.open_yard.undo_stack.count() == 0
    assert "Pick a plant" in tool.hint()


def test_the_plant_shows_under_the_pointer_before_it_is_planted(desk):
    desk.open_yard.take_in_hand(LIBERTY)
    tool = PlantTool(desk)
    move(tool, (5, 5), down=False)
    assert [p.place for p in desk.open_yard.shown_yard.plantings] == [(5, 5)]
    assert desk.open_yard.yard.plantings == ()
    assert tool.live == {"A1"}
    tool.leave()
    assert desk.open_yard.shown_yard.plantings == ()


def test_clicks_plant_one_after_the_other(desk):
    desk.open_yard.take_in_hand(LIBERTY)
    tool = PlantTool(desk)
    click(tool, (5, 5))
    click(tool, (12, 5))
    planted = desk.open_yard.yard.plantings
    assert [(p.id, p.place, p.rootstock) for p in planted] == [
        ("A1", (5, 5), "M.26"), ("A2", (12, 5), "M.26"),
    ]
    assert desk.open_yard.undo_stack.undoText() == "Plant Liberty"


def test_two_too_close_conflict_while_hovering(desk):
    desk.open_yard.take_in_hand(LIBERTY)
    tool = PlantTool(desk)
    click(tool, (5, 5))
    move(tool, (6, 5), down=False)
    assert ("A1", "A2") in {f.things for f in desk.open_yard.findings}
    move(tool, (20, 15), down=False)
    assert ("A1", "A2") not in {f.things for f in desk.open_yard.findings if f.check == "spacing"}


def test_a_typed_place_plants_exactly_there(desk):
    desk.open_yard.take_in_hand(LIBERTY)
    PlantTool(desk).typed("4.123; 2.5")
    assert desk.open_yard.yard.plantings[0].place == (4.123, 2.5)


def test_a_plant_dropped_on_a_pot_stands_in_it(desk):
    click(PotTool(desk), (8, 8))
    desk.open_yard.take_in_hand(LIBERTY)
    click(PlantTool(desk), (8.1, 8.0), alt=True)
    (planting,) = desk.open_yard.yard.plantings
    assert (planting.container, planting.place) == ("PT1", (8, 8))
    click(PlantTool(desk), (8.1, 8.0), alt=True)
    assert desk.open_yard.yard.plantings[1].container is None


def test_a_tree_outside_the_lot_is_next_door(desk):
    tool = StandingTreeTool(desk)
    click(tool, (33, 10))
    click(tool, (10, 10))
    assert [tree.beyond_lot for tree in desk.open_yard.yard.standing_trees] == [True, False]


def test_a_tree_just_marked_gives_no_pollen_until_its_kind_is_told(opened):
    desk = Desk(opened(yard_of(plant("A1", "apple:Liberty", (5, 5)))))
    click(StandingTreeTool(desk), (10, 8))
    outlook = outlooks_for(survey_of(desk.open_yard.yard))["A1"]
    assert outlook is not None
    assert outlook.donor is None
    assert outlook.expected == "none"


def test_gate_and_note(desk):
    click(GateTool(desk), (15, 0))
    assert desk.open_yard.yard.gates[0].place == (15, 0)
    desk.ask_text = lambda question, text: "  water here  "
    click(NoteTool(desk), (3, 3))
    assert desk.open_yard.yard.notes[0].text == "water here"
    desk.ask_text = lambda question, text: None
    click(NoteTool(desk), (4, 4))
    assert len(desk.open_yard.yard.notes) == 1


def test_the_tape_reads_lengths_and_area_and_changes_nothing(desk):
    tool, heard = TapeTool(desk), said(desk)
    click(tool, (0, 0), alt=True)
    click(tool, (3, 0), alt=True)
    click(tool, (3, 4), alt=True)
    assert [words.text for words in tool.overlay().words] == ["3.00 m", "4.00 m"]
    assert tool.on_key("enter")
    assert heard == ["7.00 m in all, 6.0 m² enclosed"]
    assert desk.open_yard.undo_stack.count() == 0


def test_the_tape_by_a_drag(desk):
    tool = TapeTool(desk)
    drag(tool, (0, 0), (3, 4), alt=True)
    assert [words.text for words in tool.overlay().words] == ["5.00 m"]
    assert not tool.busy


@pytest.fixture
def two(opened):
    yard = yard_of(plant("A1", "apple:Liberty", (5, 5)), plant("A2", "apple:Enterprise", (15, 5)))
    desk = Desk(opened(yard))
    desk.open_yard.select({"A1"})
    return desk


def test_carrying_follows_the_pointer_until_a_click(two):
    tool = CarryTool(two)
    move(tool, (7, 9), down=False)
    assert two.open_yard.shown_yard.find("A1").place == (7, 9)
    click(tool, (8, 9))
    assert tool.done
    assert two.open_yard.yard.find("A1").place == (8, 9)


@pytest.mark.parametrize(
    ("typed", "place"), [("7; 9", (7, 9)), ("2 m < 90", (5, 7)), ("1.5", (5, 6.5))]
)
def test_carrying_by_typed_places_and_lengths(two, typed, place):
    tool = CarryTool(two)
    move(tool, (5, 9), down=False)
    tool.typed(typed)
    assert two.open_yard.yard.find("A1").place == pytest.approx(place)


def test_carrying_refuses_a_size(two):
    tool = CarryTool(two)
    with pytest.raises(UnitError):
        tool.typed("2 x 3")
    assert tool.cancel()
    assert two.open_yard.yard.find("A1").place == (5, 5)


def test_nudges_within_a_second_are_one_step(two):
    for _ in range(3):
        assert commands.nudge(two.open_yard, (1, 0), far=False).startswith("Moved 0.10 m east")
    assert two.open_yard.yard.find("A1").place == pytest.approx((5.3, 5))
    assert two.open_yard.undo_stack.count() == 1
    commands.nudge(two.open_yard, (0, 1), far=True)
    assert two.open_yard.yard.find("A1").place == pytest.approx((5.3, 6))
    two.open_yard.undo_stack.undo()
    assert two.open_yard.yard.find("A1").place == (5, 5)


def test_delete_duplicate_and_cycle(two):
    yard = two.open_yard
    assert commands.duplicate(yard) == "A3 Liberty added"
    assert yard.selection == {"A3"}
    commands.delete(yard)
    assert yard.yard.find("A3") is None
    yard.undo_stack.undo()
    assert yard.selection == {"A3"}
    order = [cycle(yard, 1) for _ in range(4)]
    assert set(order) == {"A1", "A2", "A3"}


def test_locked_things_are_not_deleted(two):
    commands.set_locked(two.open_yard, True)
    assert "Locked" in commands.delete(two.open_yard)
    assert two.open_yard.yard.find("A1") is not None


def test_a_gate_that_stands_in_nothing_is_told(desk):
    """In the midst of a lawn a gate leads nowhere; in a line, or with no line drawn, it is fine."""
    told = []
    desk.tell = told.append
    click(GateTool(desk), (15, 6))
    assert len(told) == 1
    click(GateTool(desk), (15, 0))
    desk.open_yard.new(Yard())
    click(GateTool(desk), (3, 3))
    assert len(told) == 1
