"""What is spoken after a move: how far, which way, what it is clear of, what it conflicts with now."""

import pytest
from attrs import evolve
from support.builders import plant, yard_of
from support.hands import drag, said

from yardplan.window.tools import commands
from yardplan.window.tools.carry import CarryTool
from yardplan.window.tools.desk import Desk
from yardplan.window.tools.select import SelectTool
from yardplan.yard import edits
from yardplan.yard.ground import Barrier

FENCE = Barrier(id="WF1", name="fence", line=((0.0, 10.0), (30.0, 10.0)), height=1.0, light_share=0.9)


@pytest.fixture
def desk(opened):
    return Desk(opened(yard_of(
        plant("A1", "apple:Liberty", (5, 9.5)), plant("A2", "apple:Enterprise", (15, 5)), barriers=(FENCE,),
    )))


def test_a_drag_clear_of_the_fence_says_so(desk):
    heard = said(desk)
    drag(SelectTool(desk), (5, 9.5), (5, 5), alt=True)
    assert heard == ["Moved 4.50 m south; clear of fence"]


def test_a_drag_into_another_plant_names_what_is_wrong_and_counts(desk):
    heard = said(desk)
    drag(SelectTool(desk), (5, 9.5), (14, 5), alt=True)
    assert heard == ["Moved 10.06 m south-east; clear of fence; 3.3 m too close: A2 Enterprise; 1 conflict"]


def test_nudges_and_typed_places_say_it_too(desk):
    desk.open_yard.commit("feet", edits.set_site(desk.open_yard.yard, units="imperial"))
    desk.open_yard.select({"A2"})
    assert commands.nudge(desk.open_yard, (1, 0), far=True) == "Moved 1' east; no conflict"
    heard = said(desk)
    desk.open_yard.select({"A1"})
    CarryTool(desk).typed("5 m; 4.5 m")
    assert heard == ["Moved 16' 5\" south; clear of fence"]


@pytest.mark.parametrize(
    ("half", "outcome"), [(6.0, "no conflict"), (15.0, "drawn beyond the lot line")],
)
def test_a_turn_says_its_outcome(opened, half, outcome):
    """A fence along the middle of a lot of 30 by 20 metres, turned to run across it."""
    fence = evolve(FENCE, line=((15.0 - half, 10.0), (15.0 + half, 10.0)))
    desk = Desk(opened(yard_of(barriers=(fence,))))
    tool = SelectTool(desk)
    desk.open_yard.select({"WF1"})
    heard = said(desk)
    grip = next(handle for handle in tool.overlay().handles if handle.round)
    drag(tool, grip.place, (0, 10))
    assert heard == [f"Turned by 90 degrees; {outcome}"]
