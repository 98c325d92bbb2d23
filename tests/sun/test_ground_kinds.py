from __future__ import annotations

from datetime import date

import numpy as np
import pytest
from attrs import evolve
from support import suns

from yardplan.plants.stand import Stand
from yardplan.sun.ground_kinds import KINDS, PLANTINGS, Kind, MovingGround, Planting, Wanted, ground_of
from yardplan.sun.light import day_report, light_report
from yardplan.sun.scene import Scene, before_planting, moved_scene, scene_of
from yardplan.yard import edits
from yardplan.yard.site import Site
from yardplan.yard.yard import Yard

DAY = date(2026, 4, 20)
CELL = 0.5


def _yard(latitude: float = 42.0) -> tuple[Yard, Stand]:
    trees = [
        suns.tree("A1", (6.0, 5.0), suns.size(3.0, 4.0, 0.6, "open centre")),
        suns.tree("A2", (9.0, 10.0), suns.size(2.0, 3.0, 0.4, "conifer")),
    ]
    return suns.yard_and_stand(
        *trees, lot=16.0, buildings=(suns.box("H", 3, 11, 5, 4, 4.0, roof="gable"),),
        site=Site(latitude=latitude, longitude=-76.0, north=15.0),
    )


def _scene(latitude: float = 42.0) -> Scene:
    return scene_of(*_yard(latitude))


def test_season_is_the_report_s_ground() -> None:
    scene = _scene()
    ground = ground_of(scene, Wanted(), "live", cell=CELL)
    report = light_report(scene, "live", cell=CELL)
    assert np.abs(ground.hours - report.field.hours).max() < 1e-4
    assert ground.open_hours == pytest.approx(report.open_hours)


def test_date_is_the_day_report_s_ground() -> None:
    scene = _scene()
    ground = ground_of(scene, Wanted("date", day=DAY), "live", cell=CELL)
    report = day_report(scene, DAY, "live", cell=CELL)
    assert np.abs(ground.hours - report.field.hours).max() < 1e-4


def test_worst_month_is_never_above_the_season_s_mean() -> None:
    scene = _scene()
    season, worst = (ground_of(scene, Wanted(kind), "live", cell=CELL) for kind in ("season", "worst month"))
    assert (worst.hours <= season.hours + 1e-3).all()
    assert worst.open_hours < season.open_hours


@pytest.mark.parametrize("kind", KINDS)
def test_taken_is_the_difference_that_planting_makes(kind: Kind) -> None:
    scene = _scene()
    planted, bare, taken = (
        ground_of(scene, Wanted(kind, planting, DAY), "live", cell=CELL) for planting in PLANTINGS
    )
    assert np.abs(bare.hours - planted.hours - taken.hours).max() < 1e-3
    assert taken.hours.max() > 0.5
    assert (bare.hours >= planted.hours - 1e-3).all()
    alone = ground_of(before_planting(scene), Wanted(kind, "planted", DAY), "live", cell=CELL)
    assert np.array_equal(bare.hours, alone.hours)


def test_open_light_is_a_percentage_and_full_in_the_open() -> None:
    yard, stand = suns.yard_and_stand(lot=10.0)
    ground = ground_of(scene_of(yard, stand), Wanted("open light"), "live", cell=1.0)
    assert ground.measure == "share"
    assert ground.hours == pytest.approx(100.0, abs=0.01)


@pytest.mark.parametrize("planting", PLANTINGS)
@pytest.mark.parametrize("kind", KINDS)
@pytest.mark.parametrize("ids", [("A1",), ("H",), ("A1", "H")])
def test_moved_ground_equals_scratch(kind: Kind, planting: Planting, ids: tuple[str, ...]) -> None:
    yard, stand = _yard()
    scene, wanted = scene_of(yard, stand), Wanted(kind, planting, DAY)
    moving = MovingGround(scene, ids, wanted, cell=CELL)
    moved = edits.move(yard, ids, (1.3, -0.7))
    places = {plant.id: plant for plant in moved.plantings}
    there = evolve(stand, plants=tuple(
        evolve(p, thing=places[p.id], place=places[p.id].place) for p in stand.plants
    ))
    ground = moving.field(moved_scene(scene, moved, there, ids))
    scratch = ground_of(scene_of(moved, there), wanted, "live", cell=CELL)
    assert np.abs(ground.hours - scratch.hours).max() < 0.001


@pytest.mark.parametrize("kind", KINDS)
@pytest.mark.parametrize("latitude", [90.0, -90.0, 72.0])
def test_polar_places_have_figures(kind: Kind, latitude: float) -> None:
    scene = _scene(latitude)
    for day in (date(2026, 1, 5), date(2026, 7, 5)):
        ground = ground_of(scene, Wanted(kind, day=day), "live", cell=1.0)
        assert np.isfinite(ground.hours).all()
        assert np.isfinite(ground.open_hours)


def test_progress_rises_to_one() -> None:
    told: list[float] = []
    ground_of(_scene(), Wanted("open light", "taken"), "live", told.append, cell=CELL)
    assert told == sorted(told)
    assert told[-1] == pytest.approx(1.0)
