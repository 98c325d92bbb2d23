from __future__ import annotations

from datetime import date

import numpy as np
import pytest
from shapely.geometry import Point
from support import suns

from yardplan.sun import clock
from yardplan.sun.field import field_of
from yardplan.sun.grid import Grid
from yardplan.sun.scene import Scene, on_drawing
from yardplan.sun.season import moment_position
from yardplan.sun.shadows import shadows_at
from yardplan.sun.spans import beams_of
from yardplan.yard.ground import Barrier
from yardplan.yard.site import Site

HABITS = ["shade tree", "open centre", "conifer", "cane", "clump", "vine"]


def _scene(**site: float) -> Scene:
    trees = [
        suns.tree(f"A{n}", (5.0 + 4 * n, 8.0 + (n % 2) * 9), suns.size(3, 4, 0.5, habit))  # type: ignore[arg-type]
        for n, habit in enumerate(HABITS)
    ]
    return suns.scene(
        *trees,
        buildings=(suns.box("H", 3, 20, 8, 6, 5.0, roof="hip", overhang=0.4),),
        barriers=(Barrier(id="F", line=((1, 1), (20, 2), (25, 9))),),
        site=Site(latitude=42.0, longitude=-76.0, **site),
    )


@pytest.mark.parametrize("hour", [7.0, 9.5, 12.0, 16.25])
@pytest.mark.parametrize(
    "site", [{}, {"slope": 0.15, "slope_aspect": 220.0, "north": 40.0}], ids=["level", "slope"]
)
def test_outlines_cover_the_cells_that_the_field_darkens(hour: float, site: dict[str, float]) -> None:
    scene = _scene(**site)
    at = clock.moment(date(2026, 5, 20), hour, scene.site, "solar")
    moment = shadows_at(scene, at)
    grid = Grid(-10.0, -10.0, 0.1, 500, 500)
    position = moment_position(at, scene.site)
    beams = beams_of(on_drawing(position.vectors, scene.site.north), position.months, scene.gradient)
    assert {shadow.owner for shadow in moment.shadows} == set(scene.casters)
    for shadow in moment.shadows:
        dark = field_of(scene.casters[shadow.owner], beams, np.ones((1, 1)), grid)[0] < 0.999
        area = float(dark.sum()) * grid.cell**2
        inside = shadow.outline.intersection(
            Point(15, 15).buffer(1e-9).envelope.buffer(25, join_style="mitre")
        )
        assert inside.area == pytest.approx(area, rel=0.02, abs=0.25)


def test_shadows_at_noon_point_away_from_the_sun() -> None:
    scene = _scene()
    moment = shadows_at(scene, clock.moment(date(2026, 3, 20), 12.0, scene.site, "solar"))
    assert moment.azimuth == pytest.approx(180.0, abs=0.1)
    assert moment.altitude == pytest.approx(48.0, abs=0.5)
    for shadow in moment.shadows:
        if shadow.owner.startswith("A"):
            index = int(shadow.owner[1:])
            assert shadow.outline.centroid.x == pytest.approx(5.0 + 4 * index, abs=0.02)
            assert shadow.outline.centroid.y > 8.0 + (index % 2) * 9


def test_light_through_a_crown_goes_with_the_month() -> None:
    scene = _scene()
    by_month = {}
    for month in (2, 7):
        moment = shadows_at(scene, clock.moment(date(2026, month, 10), 12.0, scene.site, "solar"))
        by_month[month] = next(shadow.light for shadow in moment.shadows if shadow.owner == "A0")
    assert by_month[2] > by_month[7]


def test_after_sunset_it_is_dark() -> None:
    scene = _scene()
    moment = shadows_at(scene, clock.moment(date(2026, 5, 20), 23.0, scene.site))
    assert moment.dark
    assert moment.altitude < 0.0
    assert moment.shadows == ()


def test_behind_the_hills_it_is_dark() -> None:
    hills = suns.scene(
        suns.tree("A", (5, 5), suns.size(3, 4)), site=Site(latitude=42.0, horizon=((0.0, 30.0),))
    )
    assert shadows_at(hills, clock.moment(date(2026, 5, 20), 7.0, hills.site, "solar")).dark
    assert not shadows_at(hills, clock.moment(date(2026, 5, 20), 12.0, hills.site, "solar")).dark
