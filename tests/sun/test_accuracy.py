"""How far the steps, dates and points in use are from fine ones; the figures stand in DEVELOPERS.md."""

from __future__ import annotations

from datetime import date

import numpy as np
import pytest
from support import suns

from yardplan.sun import light
from yardplan.sun.field import field_of
from yardplan.sun.grid import Grid
from yardplan.sun.scene import on_drawing
from yardplan.sun.season import Detail, Positions, over_dates, season_dates, season_positions
from yardplan.sun.spans import beams_of

GRID = Grid(0.0, 0.0, 0.5, 60, 60)


def _field(positions: Positions) -> np.ndarray:
    site, casters = suns.proving_yard()
    counted = positions.weight("season") > 0.0
    directions = on_drawing(positions.vectors[counted], site.north)
    beams = beams_of(directions, positions.months[counted], (0.0, 0.0))
    return field_of(casters, beams, positions.weight("season")[None, counted], GRID)[0]


@pytest.fixture(scope="module")
def fine() -> np.ndarray:
    """Every second day at 5 minutes."""
    site, _ = suns.proving_yard()
    return _field(over_dates(season_dates(site.growing_season, 2), site, 5.0))


@pytest.mark.parametrize(("detail", "mean", "most"), [("live", 0.08, 0.5), ("full", 0.025, 0.15)])
def test_steps_in_use_are_near_to_fine_ones(
    fine: np.ndarray, detail: Detail, mean: float, most: float
) -> None:
    site, _ = suns.proving_yard()
    apart = np.abs(_field(season_positions(site, detail)) - fine)
    assert apart.mean() <= mean
    assert apart.max() <= most


def test_staggered_dates_are_no_worse_than_the_middles_of_months(fine: np.ndarray) -> None:
    site, _ = suns.proving_yard()
    middles = over_dates([date(2026, month, 15) for month in range(4, 10)], site, 20.0, staggered=False)
    staggered = season_positions(site, "live")
    assert (staggered.weight("season") > 0.0).sum() <= len(middles) * 1.05
    assert np.abs(_field(staggered) - fine).mean() <= np.abs(_field(middles) - fine).mean() * 1.1


@pytest.mark.parametrize(("detail", "mean", "most"), [("live", 0.1, 0.4), ("full", 0.05, 0.2)])
def test_points_in_use_stand_for_the_whole_crown(
    detail: Detail, mean: float, most: float, monkeypatch: pytest.MonkeyPatch
) -> None:
    rng = np.random.default_rng(4)
    habits = ["shade tree", "open centre", "conifer", "cane", "clump", "vine"]
    trees = [
        suns.tree(
            f"A{n}",
            (float(rng.uniform(2, 18)), float(rng.uniform(2, 18))),
            suns.size(float(rng.uniform(2, 4)), float(rng.uniform(2, 5)), 0.5, habits[n % 6]),  # type: ignore[arg-type]
        )
        for n in range(12)
    ]
    house = suns.box("H", 12, 2, 6, 5, 4.5)
    scene = suns.scene(*trees, lot=20.0, buildings=(house,))
    positions = season_positions(scene.site, detail)
    used = light.light_report(scene, detail, cell=2.0, positions=positions)
    monkeypatch.setattr(light, "samples", lambda _: 160)
    many = light.light_report(scene, detail, cell=2.0, positions=positions)
    apart = np.abs([one.hours - many.plants[key].hours for key, one in used.plants.items()])
    assert apart.mean() <= mean
    assert apart.max() <= most
    for key, one in used.plants.items():
        assert one.open_light == pytest.approx(many.plants[key].open_light, abs=0.03)
