from __future__ import annotations

import math

import numpy as np
import pytest
from attrs import evolve
from support import suns

from yardplan.sun.casters import Crown, Prism
from yardplan.sun.classes import class_of, classes, limits
from yardplan.sun.grid import grid_over
from yardplan.sun.parameters import crown_shapes, figure, parameters
from yardplan.sun.position import LatitudeError
from yardplan.sun.scene import (
    barrier_light,
    gradient_of,
    moved_scene,
    on_drawing,
    row_line,
    scene_of,
    shape_of,
)
from yardplan.yard import edits
from yardplan.yard.ground import Barrier
from yardplan.yard.planting import PlantKey, Row
from yardplan.yard.site import Site


def test_latitude_out_of_range_is_named() -> None:
    with pytest.raises(LatitudeError, match="latitude 95"):
        suns.scene(site=Site(latitude=95.0))


def test_north_turns_directions_clockwise() -> None:
    north = np.array([[0.0, 1.0, 0.0]])
    assert on_drawing(north, 0.0) == pytest.approx(north)
    assert on_drawing(north, 90.0) == pytest.approx(np.array([[1.0, 0.0, 0.0]]))
    assert on_drawing(np.array([[1.0, 0.0, 0.0]]), 90.0) == pytest.approx(np.array([[0.0, -1.0, 0.0]]))


def test_ground_falls_towards_the_aspect() -> None:
    assert gradient_of(Site(slope=0.2, slope_aspect=180.0)) == pytest.approx((0.0, 0.2))
    assert gradient_of(Site(slope=0.2, slope_aspect=90.0)) == pytest.approx((-0.2, 0.0))
    assert gradient_of(Site(slope=0.2, slope_aspect=90.0, north=90.0)) == pytest.approx((0.0, 0.2))
    assert gradient_of(Site(slope=math.nan)) == (0.0, 0.0)


def test_every_habit_has_a_solid_that_goes_with_age() -> None:
    from typing import get_args

    from yardplan.plants.crop import Habit

    assert set(crown_shapes()) == set(get_args(Habit))
    young, old = suns.size(1, 1.5, habit="open centre"), suns.size(4, 4.5, habit="open centre")
    assert shape_of(young, old) == "ellipsoid"
    assert shape_of(old, old) == "vase"


def test_flat_trained_plants_are_panels_and_trees_are_crowns() -> None:
    scene = suns.scene(
        suns.tree("E", (5, 5), suns.size(4, 2, 0.4, "flat-trained"), facing=90.0),
        suns.tree("T", (15, 15), suns.size(4, 5)),
    )
    panel, crown = scene.casters["E"][0], scene.casters["T"][0]
    assert isinstance(panel, Prism)
    assert isinstance(crown, Crown)
    wide, deep, _ = np.ptp(panel.solid.corners, axis=0)
    assert (wide, deep) == pytest.approx((figure("panel_depth"), 4.0))


def test_hedges_lose_their_leaves_unless_evergreen() -> None:
    hedge = Barrier(id="H", kind="hedge", line=((0, 0), (5, 0)), light_share=0.1, evergreen=False)
    site = Site(latitude=45.0)
    assert barrier_light(hedge, site)[0] > barrier_light(hedge, site)[6] == 0.1
    assert set(barrier_light(evolve(hedge, evergreen=True), site)) == {0.1}
    assert set(barrier_light(evolve(hedge, kind="fence"), site)) == {0.1}


def test_a_row_ends_half_a_spacing_past_its_last_plant() -> None:
    row = Row(id="R", plant=PlantKey("raspberry", "X"), line=((0, 0), (4, 0), (4, 10)), count=7, spacing=1.0)
    assert row_line(row) == ((0, 0), (4.0, 0.0), (4.0, 2.5))
    assert len(row_line(evolve(row, count=0))) == 1
    assert row_line(evolve(row, line=())) == ()


def test_a_moved_scene_keeps_what_did_not_move() -> None:
    yard, stand = suns.yard_and_stand(
        suns.tree("A", (5, 5), suns.size(3, 4)),
        suns.tree("B", (9, 9), suns.size(3, 4)),
        buildings=(suns.box("H", 10, 10, 5, 5, 4.0),),
    )
    scene = scene_of(yard, stand)
    moved = edits.move(yard, ("A",), (2.0, 0.0))
    after = evolve(
        stand,
        plants=tuple(
            evolve(p, thing=t, place=t.place)
            for p in stand.plants
            if (t := moved.find(p.id))  # type: ignore[union-attr]
        ),
    )
    there = moved_scene(scene, moved, after, ("A",))
    assert there.casters["B"] is scene.casters["B"]
    assert there.casters["H"] is scene.casters["H"]
    assert there.casters["A"][0].place == (7.0, 5.0)  # type: ignore[union-attr]
    gone = moved_scene(scene, edits.remove(yard, ("A",)), evolve(stand, plants=stand.plants[1:]), ("A",))
    assert "A" not in gone.casters
    assert "A" not in gone.subjects


def test_grids_grow_coarser_with_the_lot_and_never_too_large() -> None:
    assert grid_over((0, 0, 30, 30)).cell == 0.25
    large = grid_over((0, 0, 60, 60))
    assert large.cell == 0.5
    for side in (0.0, 5.0, 300.0, 8000.0):
        grid = grid_over((0, 0, side, side / 2))
        assert 1 <= grid.cells <= figure("live_cells") * 1.1
        assert grid.cols * grid.cell >= side - 1e-3


def test_every_figure_has_a_source_in_the_bibliography() -> None:
    from yardplan.plants.sources import bibliography

    known = bibliography()
    assert {p.source for p in parameters().values()} <= set(known)
    assert {one.source for one in classes()[1:]} <= set(known)


def test_classes_of_hours() -> None:
    assert limits() == (2.0, 4.0, 6.0, 8.0)
    assert class_of(0.0).name == "shade"
    assert class_of(6.0).name == "full sun"
    assert class_of(13.0).name == "full sun for fruit"
