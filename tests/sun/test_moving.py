from __future__ import annotations

from typing import Any

import numpy as np
import pytest
from attrs import evolve
from hypothesis import given, settings
from hypothesis import strategies as st
from support import suns

from yardplan.plants.stand import Stand
from yardplan.sun.light import LightReport, light_report
from yardplan.sun.moving import Drag
from yardplan.sun.scene import moved_scene, scene_of
from yardplan.yard import edits
from yardplan.yard.ground import Barrier
from yardplan.yard.site import Site
from yardplan.yard.yard import Yard

#: The bar: light while dragging equals light from scratch within so many hours.
BAR = 0.001


def _yard(**site: Any) -> tuple[Yard, Stand]:
    rng = np.random.default_rng(3)
    habits = ["shade tree", "open centre", "conifer", "cane", "clump", "vine"]
    trees = [
        suns.tree(
            f"A{n}",
            (float(rng.uniform(1, 23)), float(rng.uniform(1, 23))),
            suns.size(float(rng.uniform(1.4, 5)), float(rng.uniform(2, 6)), 0.4, habits[n % 6]),  # type: ignore[arg-type]
        )
        for n in range(14)
    ]
    row = suns.row("R", ((18.0, 4.0), (18.0, 10.0)), 8, 0.8, suns.size(0.8, 1.6, 0.3, "cane"))
    return suns.yard_and_stand(
        *trees,
        lot=24.0,
        rows=(row,),
        beds=(suns.bed("D", 14, 3, 3, 1.2),),
        buildings=(suns.box("H", 5, 14, 9, 6, 5.0, roof="gable", overhang=0.3),),
        barriers=(Barrier(id="F", line=((1, 1), (23, 1), (23, 12)), height=2.0, light_share=0.4),),
        site=Site(latitude=42.0, longitude=-76.0, north=20.0, **site),
    )


def _joined(yard: Yard, stand: Stand) -> Stand:
    """The stand of a changed yard."""
    things = {thing.id: thing for thing in yard.things()}
    return Stand(
        year=None,
        plants=tuple(evolve(p, thing=things[p.id], place=things[p.id].place) for p in stand.plants),  # type: ignore[union-attr]
        rows=tuple(evolve(r, row=things[r.id]) for r in stand.rows),
        beds=tuple(evolve(b, bed=things[b.id]) for b in stand.beds),
    )


def _alike(one: LightReport, other: LightReport) -> None:
    assert np.abs(one.field.hours - other.field.hours).max() < BAR
    for kind in ("plants", "rows", "beds"):
        here, there = getattr(one, kind), getattr(other, kind)
        assert list(here) == list(there)
        for key, light in here.items():
            scratch = there[key]
            for name in ("hours", "hours_midsummer", "hours_worst_month", "hours_morning", "open_light"):
                assert getattr(light, name) == pytest.approx(getattr(scratch, name), abs=BAR)
            assert light.worst_month == scratch.worst_month
            taken = dict(scratch.shaded_by)
            assert dict(light.shaded_by) == pytest.approx(
                {by: taken.get(by, 0.0) for by in dict(light.shaded_by)}, abs=BAR
            )
            missing = light.open_hours - light.hours
            assert sum(hours for _, hours in light.shaded_by) == pytest.approx(missing, abs=1e-6)


def _drag(yard: Yard, stand: Stand, ids: tuple[str, ...], moved: Yard) -> None:
    scene = scene_of(yard, stand)
    drag = Drag(scene, ids, cell=0.5)
    after = _joined(moved, stand)
    _alike(drag.frame(scene), light_report(scene, "live", cell=0.5))
    _alike(
        drag.frame(moved_scene(scene, moved, after, ids)),
        light_report(scene_of(moved, after), "live", cell=0.5),
    )
    _alike(drag.frame(scene), light_report(scene, "live", cell=0.5))


@pytest.mark.parametrize(
    "ids",
    [
        ("A3",),
        ("A5",),
        ("A0", "A1"),
        tuple(f"A{n}" for n in range(10)),
        ("H",),
        ("F",),
        ("R",),
        ("D",),
        ("H", "F", "A2", "R", "D"),
    ],
    ids=str,
)
def test_dragging_equals_scratch(ids: tuple[str, ...]) -> None:
    yard, stand = _yard()
    _drag(yard, stand, ids, edits.move(yard, ids, (1.37, -0.61)))


def test_dragging_on_a_slope_under_hills() -> None:
    yard, stand = _yard(slope=0.12, slope_aspect=150.0, horizon=((90.0, 9.0), (200.0, 2.0)))
    _drag(yard, stand, ("A3", "H"), edits.move(yard, ("A3", "H"), (-0.77, 1.1)))


def test_dragging_a_corner_and_turning() -> None:
    yard, stand = _yard()
    _drag(yard, stand, ("H",), edits.move_corner(yard, "H", 2, (15.5, 21.0)))
    _drag(yard, stand, ("A5", "R"), edits.rotate(yard, ("A5", "R"), (12.0, 8.0), 33.0))


@pytest.mark.parametrize("ids", [(), ("A3",)], ids=str)
def test_dragging_a_corner_of_the_lot(ids: tuple[str, ...]) -> None:
    yard, stand = _yard()
    _drag(yard, stand, ids, edits.move(edits.move_corner(yard, "lot", 2, (27.5, 22.0)), ids, (1.0, 0.5)))


@settings(max_examples=10, deadline=None)
@given(st.floats(-10, 10), st.floats(-10, 10), st.integers(0, 13))
def test_any_move_of_a_plant_equals_scratch(dx: float, dy: float, number: int) -> None:
    yard, stand = _yard()
    key = (f"A{number}",)
    _drag(yard, stand, key, edits.move(yard, key, (dx, dy)))


def test_growing_one_plant_is_the_same_path() -> None:
    yard, stand = _yard()
    scene = scene_of(yard, stand)
    grown = evolve(
        stand, plants=tuple(evolve(p, size=suns.size(6.0, 7.0)) if p.id == "A4" else p for p in stand.plants)
    )
    drag = Drag(scene, ("A4",), cell=0.5)
    _alike(
        drag.frame(moved_scene(scene, yard, grown, ("A4",))),
        light_report(scene_of(yard, grown), "live", cell=0.5),
    )


def test_dropping_in_and_taking_away() -> None:
    yard, stand = _yard()
    less = edits.remove(yard, ("A6",))
    without = evolve(stand, plants=tuple(p for p in stand.plants if p.id != "A6"))
    scene, bare = scene_of(yard, stand), scene_of(less, without)
    added = Drag(bare, ("A6",), cell=0.5).frame(moved_scene(bare, yard, stand, ("A6",)))
    assert added.plants["A6"].hours == pytest.approx(light_report(scene, "live", cell=0.5).plants["A6"].hours)
    taken = Drag(scene, ("A6",), cell=0.5).frame(moved_scene(scene, less, without, ("A6",)))
    _alike(taken, light_report(bare, "live", cell=0.5))


def test_dragging_where_the_sun_never_rises() -> None:
    yard, stand = _yard()
    dark = edits.set_site(yard, latitude=85.0, season=("11-20", "01-20"))
    scene = scene_of(dark, stand)
    report = Drag(scene, ("A3",)).frame(scene)
    assert report.plants["A3"].hours == 0.0
    assert float(report.field.hours.max()) == 0.0
