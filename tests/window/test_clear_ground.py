"""Clear ground in the window: shown for what is in hand or dragged, said where it is closed, moved to."""

from __future__ import annotations

from collections.abc import Callable

import pytest
import shapely
from attrs import evolve
from PySide6.QtCore import QPointF
from support.builders import plant, yard_of

from yardplan.checks.finding import Weight
from yardplan.window.main_window import MainWindow
from yardplan.window.open_yard import InHand, OpenYard
from yardplan.window.panels.findings_list import CLEAR_STEP, mover_of, step_words
from yardplan.yard import edits
from yardplan.yard.ground import Building
from yardplan.yard.planting import Container, PlantKey, Row
from yardplan.yard.yard import Yard

OpenIt = Callable[[Yard], OpenYard]
LIBERTY = InHand(plant=PlantKey("apple", "Liberty"))


def crowded() -> Yard:
    """Two apples too close, and a third far off."""
    return yard_of(
        plant("A1", "apple:Liberty", (8, 10)), plant("A2", "apple:Gala", (9, 10)),
        plant("A3", "apple:Empire", (20, 10)),
    )


def wait_for(qtbot, yard: OpenYard) -> None:
    qtbot.waitUntil(lambda: yard.clear.ground is not None and not yard.clear.busy, timeout=30_000)


def conflicts(yard: OpenYard) -> list[str]:
    return [f.kind for f in yard.findings if f.weight is Weight.CONFLICT and f.check != "light"]


def test_a_plant_in_hand_has_clear_ground_first_by_room_then_with_light(opened: OpenIt, qtbot) -> None:
    yard = opened(crowded())
    seen: list[str | None] = []
    yard.clear.changed.connect(
        lambda: seen.append("none" if yard.clear.ground is None else yard.clear.ground.light)
    )
    yard.take_in_hand(LIBERTY)
    wait_for(qtbot, yard)
    assert seen == [None, "live", "full"]
    assert not yard.clear.ground.holds((8, 10.5))
    assert yard.clear.ground.holds((14, 3))
    yard.take_in_hand(None)
    assert yard.clear.ground is None


def test_it_stays_while_only_the_plant_moves_and_is_asked_anew_when_the_yard_changes(
    opened: OpenIt, qtbot
) -> None:
    yard = opened(crowded())
    yard.show_trial(edits.move(yard.yard, {"A1"}, (1, 1)))
    wait_for(qtbot, yard)
    first = yard.clear.ground
    yard.show_trial(edits.move(yard.yard, {"A1"}, (2, 1)))
    assert yard.clear.ground is first
    yard.drop_trial()
    assert yard.clear.ground is None
    yard.commit("Move A3", edits.move(yard.yard, {"A3"}, (-8, -6)))
    yard.show_trial(edits.move(yard.yard, {"A1"}, (1, 1)))
    wait_for(qtbot, yard)
    assert first is not None
    assert first.holds((12, 4))
    assert not yard.clear.ground.holds((12, 4))


def test_the_trial_of_a_plant_in_hand_keeps_the_ground_it_has(opened: OpenIt, qtbot) -> None:
    yard = opened(crowded())
    yard.take_in_hand(LIBERTY)
    wait_for(qtbot, yard)
    ground = yard.clear.ground
    yard.show_trial(edits.add(yard.yard, plant("A9", "apple:Liberty", (14, 3))))
    assert yard.clear.ground is ground


@pytest.mark.parametrize("ids", [{"A1", "B1"}, {"B1"}])
def test_where_a_house_moves_no_clear_ground_is_told(opened: OpenIt, ids: set[str]) -> None:
    house = Building(id="B1", footprint=((20, 2), (26, 2), (26, 6), (20, 6)))
    yard = opened(evolve(crowded(), buildings=(house,)))
    yard.show_trial(edits.move(yard.yard, ids, (1, 1)))
    assert yard.clear.ground is None
    assert not yard.clear.busy


def rowed() -> Yard:
    """A row of raspberries, an apple beside it and one far off."""
    kind = PlantKey("red raspberry", "Latham")
    row = Row(id="R1", plant=kind, line=((4, 4), (10, 4)), count=9, spacing=0.6)
    apples = (plant("A1", "apple:Liberty", (7, 5)), plant("A2", "apple:Gala", (22, 14)))
    return evolve(yard_of(*apples), rows=(row,))


def test_a_row_dragged_has_clear_ground_for_its_middle_that_stays(opened: OpenIt, qtbot) -> None:
    yard = opened(rowed())
    yard.show_trial(edits.move(yard.yard, {"R1"}, (1, 1)))
    wait_for(qtbot, yard)
    ground = yard.clear.ground
    assert ground.anchor == (7, 4)
    assert yard.clear.anchor == (8, 5)
    assert not ground.holds((7, 4))
    yard.show_trial(edits.move(yard.yard, {"R1"}, (2, 6)))
    assert yard.clear.ground is ground
    assert yard.clear.anchor == (9, 10)
    yard.show_trial(edits.rotate(yard.yard, {"R1"}, (7, 4), 30))
    assert yard.clear.ground is None


def test_things_dragged_together_say_why_they_may_not_stand_here(make_window, qtbot) -> None:
    window: MainWindow = make_window(rowed())
    yard = window.open_yard
    yard.show_trial(edits.move(yard.yard, {"R1", "A1"}, (14, 9)))
    wait_for(qtbot, yard)
    window.canvas.pointed.emit((1.0, 1.0))
    # Where they are now counts, not where the pointer is.
    assert window.status.currentMessage().startswith("Closed here: ")
    assert "Gala (A2)" in window.status.currentMessage()
    yard.drop_trial()
    assert window.status.currentMessage() == ""  # said of a place where nothing stands any more


def test_a_row_is_moved_to_the_nearest_clear_place_as_one_step(make_window, qtbot) -> None:
    window: MainWindow = make_window(rowed())
    yard = window.open_yard
    assert "row_plant" in conflicts(yard)
    yard.select({"R1"})
    before = yard.yard
    window.actions_["nearest clear place"].trigger()
    settled(window, qtbot)
    assert "row_plant" not in conflicts(yard)
    assert yard.yard.find("A1") == before.find("A1")
    yard.undo_stack.undo()
    assert yard.yard == before


def test_a_pot_that_goes_along_does_not_matter(opened: OpenIt, qtbot) -> None:
    pot = Container(id="C1", place=(4, 4), volume=80)
    yard = opened(yard_of(plant("F1", "fig:Chicago Hardy", (4, 4), container="C1"), containers=(pot,)))
    yard.show_trial(edits.move(yard.yard, {"F1"}, (1, 1)))
    wait_for(qtbot, yard)
    assert yard.clear.ground.plant == "F1"


def test_the_hatch_is_painted_where_the_ground_is_open(make_window, qtbot) -> None:
    window: MainWindow = make_window(crowded())
    qtbot.waitUntil(lambda: not window.open_yard.checks.busy, timeout=30_000)
    window.open_yard.take_in_hand(LIBERTY)
    bare = window.canvas.grab().toImage()
    wait_for(qtbot, window.open_yard)
    hatched = window.canvas.grab().toImage()
    ground = window.open_yard.clear.ground

    def changed(x: float, y: float) -> bool:
        at = window.canvas.view.to_pixels((x, y)).toPoint()
        return any(
            bare.pixel(at.x() + i, at.y() + j) != hatched.pixel(at.x() + i, at.y() + j)
            for i in range(-9, 10) for j in range(-9, 10)
        )

    inside = ground.open.buffer(-1.0).representative_point()
    assert changed(inside.x, inside.y)
    closed = shapely.union_all([one.geometry for one in ground.closed]).buffer(-1.2)
    spot = closed.intersection(shapely.Point(8.5, 10).buffer(3)).representative_point()
    assert not changed(spot.x, spot.y)


def test_pointing_at_closed_ground_says_why(make_window, qtbot) -> None:
    window: MainWindow = make_window(crowded())
    window.open_yard.take_in_hand(LIBERTY)
    wait_for(qtbot, window.open_yard)
    window.canvas.pointed.emit((20.0, 11.0))
    words = window.status.currentMessage()
    assert words.startswith("Closed here: too close to Empire (A3)")
    assert "more would do" in words
    window.canvas.pointed.emit((14.0, 3.0))
    assert window.status.currentMessage() == ""


def test_why_is_told_as_soon_as_it_is_known(make_window, qtbot) -> None:
    window: MainWindow = make_window(crowded())
    window.open_yard.take_in_hand(LIBERTY)
    window.canvas.pointed.emit((20.0, 11.0))
    assert window.status.currentMessage() == ""
    wait_for(qtbot, window.open_yard)
    assert window.status.currentMessage().startswith("Closed here: too close to Empire (A3)")


def test_why_a_plant_dragged_may_not_stand_is_told_of_its_own_place(make_window, qtbot) -> None:
    """It was taken by its rim: the pointer is on clear ground, the plant is not."""
    window: MainWindow = make_window(crowded())
    yard = window.open_yard
    yard.show_trial(edits.move(yard.yard, {"A1"}, (11.9, 1.0)))
    wait_for(qtbot, yard)
    window.canvas.pointed.emit((14.0, 3.0))
    assert window.status.currentMessage().startswith("Closed here: too close to Empire (A3)")
    yard.show_trial(edits.move(yard.yard, {"A1"}, (6.0, -7.0)))
    assert window.status.currentMessage() == ""  # it has followed the pointer to clear ground


def settled(window: MainWindow, qtbot) -> None:
    qtbot.waitUntil(lambda: not window.place_commands.busy, timeout=60_000)


def test_the_nearest_clear_place_is_one_undo_step(make_window, qtbot) -> None:
    window: MainWindow = make_window(crowded())
    yard = window.open_yard
    assert "overlap" in conflicts(yard)
    yard.select({"A2"})
    before = yard.yard
    window.actions_["nearest clear place"].trigger()
    settled(window, qtbot)
    assert "overlap" not in conflicts(yard)
    assert yard.yard.find("A1").place == (8, 10)
    assert yard.undo_stack.undoText() == "Move A2 Gala to the nearest clear place"
    yard.undo_stack.undo()
    assert yard.yard == before


def test_settle_clears_what_moving_can_as_one_step(make_window, qtbot) -> None:
    window: MainWindow = make_window(crowded())
    yard = window.open_yard
    before, steps = yard.yard, yard.undo_stack.count()
    window.actions_["settle"].trigger()
    settled(window, qtbot)
    assert yard.undo_stack.count() == steps + 1
    assert "overlap" not in conflicts(yard)
    yard.undo_stack.undo()
    assert yard.yard == before


def test_a_locked_plant_is_not_offered_a_place(make_window) -> None:
    window: MainWindow = make_window(edits.change(crowded(), {"A2"}, locked=True))
    window.open_yard.select({"A2"})
    assert not window.actions_["nearest clear place"].isEnabled()
    window.open_yard.select({"A1"})
    assert window.actions_["nearest clear place"].isEnabled()


def test_a_change_meanwhile_drops_the_answer(make_window, qtbot) -> None:
    window: MainWindow = make_window(crowded())
    yard = window.open_yard
    yard.select({"A2"})
    window.actions_["nearest clear place"].trigger()
    yard.commit("Move A3", edits.move(yard.yard, {"A3"}, (1, 0)))
    settled(window, qtbot)
    assert yard.yard.find("A2").place == (9, 10)


def test_a_conflict_of_places_offers_the_nearest_clear_place(make_window, qtbot) -> None:
    window: MainWindow = make_window(crowded())
    found = next(f for f in window.open_yard.findings if f.kind == "overlap")
    assert step_words(found, window.open_yard.yard) == CLEAR_STEP
    window.side.findings.clear_wanted.emit(mover_of(found, window.open_yard.yard))
    settled(window, qtbot)
    assert "overlap" not in conflicts(window.open_yard)


def test_there_is_no_such_step_where_all_are_locked() -> None:
    from yardplan.checks.run import findings
    from yardplan.checks.survey import survey_of

    yard = edits.change(crowded(), {"A1", "A2"}, locked=True)
    found = next(f for f in findings(survey_of(yard)) if f.kind == "overlap")
    assert mover_of(found, yard) is None


def test_the_pointer_need_not_be_on_the_sheet(make_window) -> None:
    window: MainWindow = make_window(crowded())
    window.canvas.pointed.emit(None)
    assert window.place_commands.why_at((8.0, 10.0)) == ""
    assert window.canvas.view.to_pixels((0.0, 0.0)) != QPointF()


def test_what_is_selected_is_worked_out_ahead_and_shown_at_once_when_it_is_dragged(
    opened: OpenIt, qtbot
) -> None:
    yard = opened(rowed())
    seen: list[str | None] = []
    yard.clear.changed.connect(
        lambda: seen.append("none" if yard.clear.ground is None else yard.clear.ground.light)
    )
    for ids in ({"A1"}, {"R1", "A1"}):
        yard.select(ids)
        qtbot.waitUntil(lambda: yard.clear.worked_out and not yard.clear.busy, timeout=30_000)
        assert (yard.clear.ground, seen) == (None, [])
        yard.show_trial(edits.move(yard.yard, ids, (1, 1)))
        assert seen == [None]
        wait_for(qtbot, yard)
        assert seen == [None, "live", "full"]
        yard.drop_trial()
        assert seen.pop() == "none"
        seen.clear()


def test_a_drag_let_go_before_its_light_is_told_in_full_the_next_time(opened: OpenIt, qtbot) -> None:
    yard = opened(crowded())
    yard.select({"A1"})
    for _ in range(2):
        yard.show_trial(edits.move(yard.yard, {"A1"}, (1, 1)))
        qtbot.waitUntil(lambda: yard.clear.ground is not None, timeout=30_000)
        yard.drop_trial()
    yard.show_trial(edits.move(yard.yard, {"A1"}, (1, 1)))
    wait_for(qtbot, yard)
    assert yard.clear.ground.light == "full"


def test_what_was_worked_out_ahead_is_not_shown_of_a_yard_that_has_changed(opened: OpenIt, qtbot) -> None:
    yard = opened(crowded())
    yard.select({"A1"})
    qtbot.waitUntil(lambda: yard.clear.worked_out, timeout=30_000)
    yard.commit("Move A3", edits.move(yard.yard, {"A3"}, (-8, -6)))
    yard.show_trial(edits.move(yard.yard, {"A1"}, (1, 1)))
    wait_for(qtbot, yard)
    assert not yard.clear.ground.holds((12, 4))
