"""What the canvas shows of pollen: lines of the chosen plant, of all plants, rings of the plant in hand."""

from collections.abc import Callable

import pytest
from attrs import evolve
from support import builders

from yardplan.window.canvas.pollen_shown import PollenShown
from yardplan.window.canvas.view import View
from yardplan.window.open_yard import InHand, OpenYard
from yardplan.yard import edits
from yardplan.yard.planting import PlantKey
from yardplan.yard.yard import Yard

Opened = Callable[[Yard], OpenYard]


@pytest.fixture
def open_yard(opened: Opened) -> OpenYard:
    return opened(builders.yard_of(
        builders.plant("A1", "apple:Empire", (4, 5)), builders.plant("A2", "apple:Gala", (9, 5)),
        builders.plant("P1", "european pear:Bartlett", (14, 5)),
    ))


def test_lines_of_the_one_chosen_and_of_no_crowd(open_yard: OpenYard) -> None:
    shown = PollenShown(open_yard)
    assert [(line.donor, line.receiver) for line in shown.lines_of(frozenset({"A1"}))] == [("A2", "A1")]
    assert shown.lines_of(frozenset({"A1", "A2"})) == ()
    assert shown.lines_of(frozenset()) == ()
    open_yard.show_trial(edits.move(open_yard.yard, {"A2"}, (3.0, 0.0)))
    assert shown.lines_of(frozenset({"A2"}))[0].distance == pytest.approx(8.0)


def test_rings_stand_round_those_the_plant_was_chosen_for(open_yard: OpenYard) -> None:
    shown = PollenShown(open_yard)
    assert shown.reaches() == ()
    open_yard.take_in_hand(InHand(plant=PlantKey("european pear", "Anjou"), near=("P1",)))
    reach = shown.reaches()[0]
    assert (reach.name, reach.points) == ("Bartlett (P1)", ((14.0, 5.0),))
    assert 0 < reach.best < reach.outer
    open_yard.take_in_hand(InHand(plant=PlantKey("apple", "Akane")))
    assert [reach.name for reach in shown.reaches()] == ["Empire (A1)", "Gala (A2)"]
    open_yard.take_in_hand(InHand(plant=PlantKey("peach", "Redhaven")))
    assert shown.reaches() == ()


def test_rings_follow_what_is_planted_not_what_is_tried(open_yard: OpenYard) -> None:
    shown = PollenShown(open_yard)
    open_yard.take_in_hand(InHand(plant=PlantKey("apple", "Akane")))
    open_yard.show_trial(edits.add(open_yard.yard, builders.plant("A3", "apple:Akane", (20, 5))))
    assert [reach.name for reach in shown.reaches()] == ["Empire (A1)", "Gala (A2)"]
    open_yard.commit("Remove", edits.remove(open_yard.yard, {"A2"}))
    assert [reach.name for reach in shown.reaches()] == ["Empire (A1)"]


def test_lines_of_all_are_painted_again_only_when_something_changed(open_yard: OpenYard) -> None:
    shown, view = PollenShown(open_yard), View(width=600, height=400)

    def bring_up(stamp: int | None = 0) -> int:
        made = []
        shown.bring_up(view, 1.0, frozenset(), stamp, lambda wide: made.append(wide) or _plan(open_yard))
        return len(made)

    assert bring_up() == 1
    assert bring_up() == 0
    assert bring_up(stamp=1) == 1
    open_yard.commit("Move", edits.move(open_yard.yard, {"A2"}, (3.0, 0.0)))
    assert bring_up(stamp=1) == 1


def _plan(open_yard: OpenYard):
    from yardplan.drawing.view import PlanView

    made = PlanView(yard=open_yard.shown_yard, stand=open_yard.stand, scale=20.0, origin=(0.0, 400.0))
    return evolve(made, units="metric")
