from __future__ import annotations

from collections.abc import Callable

import numpy as np
import pytest
from pytestqt.qtbot import QtBot
from support.builders import plant, yard_of

from yardplan.checks.light import CHECK
from yardplan.checks.survey import survey_of
from yardplan.plants.standing import stand_of
from yardplan.sun.ground_kinds import KINDS, PLANTINGS, Kind, Planting, Wanted, ground_of
from yardplan.sun.light import LightReport, light_report
from yardplan.sun.scene import scene_of
from yardplan.window.light.ground_light import GroundLight
from yardplan.window.open_yard import OpenYard
from yardplan.yard import edits
from yardplan.yard.ground import Barrier, Building, Note, StandingTree
from yardplan.yard.planting import PlantKey, Row
from yardplan.yard.yard import Yard

#: The bar: light while dragging equals light from scratch within so many hours.
BAR = 0.001
HOUSE = Building(
    id="H1", footprint=((10.0, 12.0), (18.0, 12.0), (18.0, 18.0), (10.0, 18.0)), eaves=3.0, ridge=6.0,
)
FENCE = Barrier(id="F1", line=((0.5, 0.5), (0.5, 15.0), (8.0, 15.0)), height=1.8)
OAK = StandingTree(id="T1", kind="oak, northern red", place=(25.0, 6.0), height=9.0, spread=7.0)
CANES = Row(
    id="R1", plant=PlantKey("raspberry", "Latham"), line=((3.0, 2.0), (9.0, 2.0)), count=8, spacing=0.8,
)
YARD = yard_of(
    plant("A1", "apple:Liberty", (5, 6)), plant("A2", "apple:Enterprise", (9, 7)),
    plant("P1", "peach:Redhaven", (14, 9)), buildings=(HOUSE,), barriers=(FENCE,), standing_trees=(OAK,),
    rows=(CANES,),
)

Gesture = Callable[[Yard], Yard]
GESTURES: dict[str, Gesture] = {
    "one plant": lambda y: edits.move(y, {"A1"}, (2.3, 1.1)),
    "several plants": lambda y: edits.move(y, {"A1", "A2", "R1"}, (1.7, 1.4)),
    "a building": lambda y: edits.move(y, {"H1"}, (-2.5, -3.0)),
    "a building turned": lambda y: edits.rotate(y, {"H1"}, (14.0, 15.0), 35.0),
    "a corner": lambda y: edits.move_corner(y, "H1", 1, (21.0, 10.5)),
    "a fence's corner": lambda y: edits.move_corner(y, "F1", 1, (3.0, 9.0)),
    "a ridge raised": lambda y: edits.change(y, {"H1"}, ridge=9.0),
    "a tree resized": lambda y: edits.change(y, {"T1"}, spread=11.0, height=13.0),
    "a row's end": lambda y: edits.move_corner(y, "R1", 1, (9.0, 8.0)),
    "everything": lambda y: edits.move(y, {"A1", "A2", "P1", "R1", "H1", "F1", "T1"}, (0.6, 0.4)),
    "one more plant": lambda y: edits.add(y, plant("A9", "apple:Liberty", (12, 4))),
    "a plant gone": lambda y: edits.remove(y, {"A2"}),
    "the lot's corner": lambda y: edits.move_corner(y, "lot", 2, (33.0, 22.0)),
    "the lot's corner and a plant": lambda y: edits.move_corner(
        edits.move(y, {"A1"}, (1.0, 0.0)), "lot", 2, (33.0, 22.0)
    ),
}


def _rested(opened: Callable[[Yard], OpenYard], qtbot: QtBot, yard: Yard = YARD) -> OpenYard:
    made = opened(yard)
    qtbot.waitUntil(lambda: not made.checks.busy, timeout=60_000)
    return made


def _scratch(own: OpenYard) -> LightReport:
    yard = own.shown_yard
    return light_report(scene_of(yard, stand_of(yard, own.catalogue, own.year)), "live")


def _followed(own: OpenYard) -> bool:
    return own.on_trial and own.checks.light_fresh


@pytest.mark.parametrize("gesture", GESTURES)
def test_light_follows_every_gesture_and_equals_scratch(
    opened: Callable[[Yard], OpenYard], qtbot: QtBot, gesture: str
) -> None:
    own = _rested(opened, qtbot)
    own.show_trial(GESTURES[gesture](own.yard))
    qtbot.waitUntil(lambda: _followed(own), timeout=60_000)
    light, scratch = own.light, _scratch(own)
    assert light is not None
    assert light.detail == "live"
    assert np.abs(light.field.hours - scratch.field.hours).max() < BAR
    for kind in ("plants", "rows"):
        here, there = getattr(light, kind), getattr(scratch, kind)
        assert here.keys() == there.keys()
        for key, one in here.items():
            for name in ("hours", "hours_midsummer", "hours_worst_month", "hours_morning", "open_light"):
                assert getattr(one, name) == pytest.approx(getattr(there[key], name), abs=BAR)
            taken = dict(there[key].shaded_by)
            assert {k: v for k, v in one.shaded_by if v > BAR} == pytest.approx(
                {k: v for k, v in taken.items() if v > BAR}, abs=BAR
            )


def test_light_findings_follow_a_building(opened: Callable[[Yard], OpenYard], qtbot: QtBot) -> None:
    own = _rested(opened, qtbot)

    def lit() -> set[tuple[str, tuple[str, ...]]]:
        return {(f.kind, f.things) for f in own.findings if f.check == CHECK.name}

    before = lit()
    # North of the house the peach stands in its shade.
    own.show_trial(edits.move(own.yard, {"H1"}, (0.0, -9.0)))
    qtbot.waitUntil(lambda: _followed(own), timeout=60_000)
    survey = survey_of(own.shown_yard, own.catalogue, own.year, light=_scratch(own))
    assert lit() == {(f.kind, f.things) for f in CHECK.run(survey)}
    assert lit() != before
    assert all(f.fresh for f in own.findings if f.check == CHECK.name)


def test_light_of_another_place_is_known_to_be_old(opened: Callable[[Yard], OpenYard], qtbot: QtBot) -> None:
    own = _rested(opened, qtbot)
    assert own.checks.light_fresh
    held = own.light
    own.show_trial(edits.move(own.yard, {"A1"}, (3.0, 0.0)))
    assert not own.checks.light_fresh
    assert own.light is held
    own.drop_trial()
    qtbot.waitUntil(lambda: own.checks.light_fresh, timeout=60_000)


def test_a_dropped_gesture_costs_nothing(opened: Callable[[Yard], OpenYard], qtbot: QtBot) -> None:
    own = _rested(opened, qtbot)
    ground = GroundLight(own)
    ground.choose("morning")
    qtbot.waitUntil(lambda: ground.fresh and not ground.busy, timeout=60_000)
    light, field, findings = own.light, ground.field, own.findings
    own.show_trial(edits.move(own.yard, {"A1", "H1"}, (3.0, 0.0)))
    qtbot.waitUntil(lambda: _followed(own) and ground.fresh, timeout=60_000)
    assert own.light is not light
    own.drop_trial()
    assert not own.checks.busy
    assert not ground.busy
    assert own.light is light
    assert ground.field is field
    assert own.findings == findings
    assert own.checks.light_fresh
    assert ground.fresh
    ground.stop()


def test_a_note_leaves_the_light_fresh(opened: Callable[[Yard], OpenYard], qtbot: QtBot) -> None:
    own = _rested(opened, qtbot)
    own.commit("Note", edits.add(own.yard, Note(id="N1", place=(3.0, 3.0), text="here")))
    assert own.checks.light_fresh


def test_a_year_comes_coarse_and_is_refined(opened: Callable[[Yard], OpenYard], qtbot: QtBot) -> None:
    own = _rested(opened, qtbot)
    seen: list[tuple[int | None, str, bool]] = []

    def look() -> None:
        if own.light is not None:
            seen.append((own.light.year, own.light.detail, own.checks.light_fresh))

    own.light_changed.connect(look)
    own.set_year(4)
    assert own.light is not None, "what was known stays until its successor comes"
    assert not own.checks.light_fresh
    qtbot.waitUntil(lambda: not own.checks.busy, timeout=60_000)
    assert (4, "live", True) in seen
    assert seen[-1] == (4, "full", True)


def test_a_slid_year_is_followed_before_it_rests(opened: Callable[[Yard], OpenYard], qtbot: QtBot) -> None:
    own = _rested(opened, qtbot)
    years: list[int | None] = []
    own.light_changed.connect(lambda: years.append(own.light.year if own.light else None))
    for year in range(1, 9):
        own.set_year(year)
        qtbot.wait(30)
    qtbot.waitUntil(lambda: not own.checks.busy, timeout=60_000)
    assert years[-1] == 8
    assert own.light is not None
    assert own.light.detail == "full"
    assert any(year is not None and year < 8 for year in years), "coarse work that began is shown"


@pytest.mark.parametrize("planting", PLANTINGS)
@pytest.mark.parametrize("kind", KINDS)
def test_the_overlay_follows_by_every_measure(
    opened: Callable[[Yard], OpenYard], qtbot: QtBot, kind: Kind, planting: Planting
) -> None:
    own = _rested(opened, qtbot)
    ground = GroundLight(own)
    ground.choose(kind)
    ground.choose_planting(planting)
    qtbot.waitUntil(lambda: ground.fresh and not ground.busy, timeout=60_000)
    own.show_trial(edits.move(own.yard, {"A1", "H1"}, (1.5, -1.0)))
    assert not ground.fresh
    qtbot.waitUntil(lambda: _followed(own) and ground.fresh, timeout=60_000)
    stand = stand_of(own.shown_yard, own.catalogue, own.year)
    scratch = ground_of(scene_of(own.shown_yard, stand), ground.wanted, "live")
    assert ground.field is not None
    assert ground.field.measure == scratch.measure
    assert np.abs(ground.field.hours - scratch.hours).max() < BAR
    own.commit("Move", own.shown_yard)
    qtbot.waitUntil(lambda: not own.checks.busy and not ground.busy and ground.fresh, timeout=60_000)
    refined = ground_of(scene_of(own.shown_yard, stand), ground.wanted, "full")
    assert np.abs(ground.field.hours - refined.hours).max() < BAR
    ground.stop()


def test_an_overlay_that_was_stopped_stays_pale(opened: Callable[[Yard], OpenYard], qtbot: QtBot) -> None:
    own = _rested(opened, qtbot)
    ground = GroundLight(own)
    ground.choose("morning")
    qtbot.waitUntil(lambda: ground.fresh and not ground.busy, timeout=60_000)
    held = ground.field
    own.commit("Move", edits.move(own.yard, {"A1"}, (4.0, 0.0)))
    assert ground.busy
    ground.cancel()
    assert not ground.busy
    assert ground.field is held
    assert not ground.fresh
    assert ground.share == 1.0
    ground.stop()


def test_the_date_s_overlay_follows_the_day(opened: Callable[[Yard], OpenYard], qtbot: QtBot) -> None:
    from attrs import evolve

    own = _rested(opened, qtbot)
    ground = GroundLight(own)
    ground.choose("date")
    qtbot.waitUntil(lambda: ground.fresh and not ground.busy, timeout=60_000)
    assert ground.field is not None
    summer = float(ground.field.open_hours)
    own.set_moment(evolve(own.moment, day="12-21"))
    assert not ground.fresh
    qtbot.waitUntil(lambda: ground.fresh and not ground.busy, timeout=60_000)
    assert ground.field.open_hours < summer - 5
    assert ground.wanted == Wanted("date", "planted", ground.wanted.day)
    ground.stop()
