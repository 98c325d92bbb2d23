"""Speed of the light, as ratios to ray casting with embreex in the same run, on one core.

Times are processor time, so that other work on the machine does not count.
"""

from __future__ import annotations

import subprocess
import sys
import time
from collections.abc import Callable
from pathlib import Path
from typing import Any

import numpy as np
import pytest
from attrs import evolve
from support import suns, tracing

from yardplan.sun.casters import Caster, Crown
from yardplan.sun.field import field_of
from yardplan.sun.grid import Grid
from yardplan.sun.light import LightReport, light_report
from yardplan.sun.moving import Drag, MovingField
from yardplan.sun.scene import moved_scene, on_drawing, scene_of
from yardplan.sun.spans import beams_of
from yardplan.yard import edits

DARK = (0.0,) * 12
GRID = Grid(0.0, 0.0, 0.25, 120, 120)


def quickest(work: Callable[[], Any], runs: int = 9) -> float:
    """Least processor time of some runs, seconds, after one to warm up."""
    work()
    times = []
    for _ in range(runs):
        start = time.process_time()
        work()
        times.append(time.process_time() - start)
    return min(times)


class Proving:
    """The proving yard: 30 trees, house and fence, 30 x 30 m, 232 positions; and its time by ray casting."""

    def __init__(self) -> None:
        site, self.casters = suns.proving_yard()
        positions = suns.mid_months(site)
        directions = on_drawing(positions.vectors, site.north)
        self.weights = positions.weight("season")
        self.beams = beams_of(directions, positions.months, (0.0, 0.0))
        bodies = [tracing.crown_body(c) for c in self.casters if isinstance(c, Crown)]
        corners = [[x, y, z] for x in (9, 21) for y in (18, 26) for z in (0.0, 5.5)]
        bodies.append(tracing.hull_body(corners, DARK))
        bodies.append(tracing.wall_body((0.5, 0.5), (29.5, 0.5), 0.1, 0.0, 1.8, DARK))
        start = time.process_time()
        self.traced = tracing.hours_by_tracing(bodies, GRID, directions, positions.months, self.weights)
        self.tracing = time.process_time() - start

    def field(self, casters: list[Caster]) -> np.ndarray[Any, Any]:
        return field_of(casters, self.beams, self.weights[None], GRID)[0]


@pytest.fixture(scope="module")
def proving() -> Proving:
    return Proving()


def test_the_full_field_is_sixty_times_faster_than_ray_casting(proving: Proving, benchmark: Any) -> None:
    benchmark(proving.field, proving.casters)
    taken = quickest(lambda: proving.field(proving.casters))
    assert proving.tracing / taken >= 60.0
    assert np.abs(proving.field(proving.casters) - proving.traced).mean() < 0.01


@pytest.mark.parametrize("size", ["largest", "middling"])
def test_a_drag_frame_is_a_thousand_times_faster(proving: Proving, benchmark: Any, size: str) -> None:
    """The ground with one tree moving, in a ratio of one run, and the same as from scratch."""
    trees = sorted((c for c in proving.casters if isinstance(c, Crown)), key=lambda c: c.radius)
    mover = trees[-1] if size == "largest" else trees[len(trees) // 2]
    rest = [c for c in proving.casters if c is not mover]
    moving = MovingField(rest, proving.beams, proving.weights, GRID)
    there = evolve(mover, place=(mover.place[0] + 1.37, mover.place[1] - 0.61))
    benchmark.extra_info["bar_ms"] = 4
    benchmark(moving.with_casters, [there])
    taken = quickest(lambda: moving.with_casters([there]), 25)
    assert np.abs(moving.with_casters([there]) - proving.field([*rest, there])).max() < 0.001
    assert proving.tracing / taken >= 1000.0


def _large(number: int = 150, lot: float = 60.0) -> tuple[Any, Any]:
    rng = np.random.default_rng(2)
    habits = ["shade tree", "open centre", "central leader", "bush", "clump", "cane"]
    trees = [
        suns.tree(
            f"A{n}",
            (float(rng.uniform(1, lot - 1)), float(rng.uniform(1, lot - 1))),
            suns.size(float(rng.uniform(1.4, 5.0)), float(rng.uniform(2, 6)), 0.5, habits[n % 6]),  # type: ignore[arg-type]
        )
        for n in range(number)
    ]
    house = suns.box("H", 20, 25, 12, 8, 5.0, roof="gable", overhang=0.4)
    return suns.yard_and_stand(*trees, lot=lot, buildings=(house,))


def test_a_large_lot_in_half_a_second(benchmark: Any) -> None:
    """60 x 60 m with 150 trees at 0.5 m: the ground and every crown from scratch."""
    scene = scene_of(*_large())
    benchmark.extra_info["bar_ms"] = 500
    report = benchmark.pedantic(light_report, (scene, "live"), {"cell": 0.5}, rounds=3)
    assert len(report.plants) == 150


def test_a_whole_drag_frame_keeps_up_with_the_screen(benchmark: Any) -> None:
    """Ground, all 30 crowns and who shades whom, within the time of one picture at 60 a second."""
    yard, stand = _large(30, 30.0)
    scene = scene_of(yard, stand)
    drag = Drag(scene, ("A3",))
    moved = edits.move(yard, ("A3",), (0.3, 0.2))
    plants = tuple(evolve(p, thing=t, place=t.place) for p in stand.plants if (t := moved.find(p.id)))

    def frame() -> LightReport:
        return drag.frame(moved_scene(scene, moved, evolve(stand, plants=plants), ("A3",)))

    benchmark.extra_info["bar_ms"] = 16
    assert len(benchmark(frame).plants) == 30


_CHILD = """
import resource, sys
sys.path[:0] = {paths!r}
import numpy, shapely, yardplan.sun.light, yardplan.sun.moving
from test_sun_speed import _large
empty = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss
scene = yardplan.sun.scene.scene_of(*_large())
yardplan.sun.light.light_report(scene, "full")
yardplan.sun.moving.Drag(scene, ("A3",)).frame(scene)
print(resource.getrusage(resource.RUSAGE_SELF).ru_maxrss - empty)
"""


def test_memory_stays_below_300_mb_above_the_empty_program() -> None:
    """The refined report of the large lot and a drag in it, in a process of its own (kilobytes on Linux)."""
    here = Path(__file__).parent
    paths = [str(here), str(here.parent), str(here.parent.parent)]
    run = subprocess.run(
        [sys.executable, "-c", _CHILD.format(paths=paths)], capture_output=True, text=True, check=False
    )
    assert run.returncode == 0, run.stderr
    assert int(run.stdout) <= 300 * 1024
