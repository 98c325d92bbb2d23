"""Light of every kind of caster against ray casting with embreex through trimesh.

Bars: at least 98 % of cells within 0.05 h, none beyond 0.25 h, mean below 0.01 h at the same positions.
"""

from __future__ import annotations

import math
from typing import Any

import numpy as np
import pytest
from attrs import evolve
from shapely.geometry import Polygon
from support import suns, tracing

from yardplan.sun.casters import (
    Caster,
    Crown,
    band_casters,
    barrier_casters,
    building_casters,
    panel_casters,
)
from yardplan.sun.field import field_of
from yardplan.sun.grid import Grid
from yardplan.sun.parameters import Shape
from yardplan.sun.scene import gradient_of, levelled, on_drawing
from yardplan.sun.spans import beams_of
from yardplan.yard.ground import Barrier, Building
from yardplan.yard.site import Site

DARK = (0.0,) * 12
LIGHT = (0.25,) * 12
SHAPES: list[Shape] = ["ellipsoid", "cone", "vase", "cylinder", "dome"]
FLAT = Site(latitude=42.0, longitude=-76.0, north=20.0)
SLOPED = Site(latitude=51.0, longitude=5.0, north=-35.0, slope=0.18, slope_aspect=140.0)
SOUTHERN = Site(latitude=-34.0, longitude=150.0, north=-10.0, slope=0.1, slope_aspect=20.0)


def _compare(site: Site, casters: list[Caster], bodies: list[tracing.Body], grid: Grid, step: float) -> None:
    positions = suns.mid_months(site, step)
    directions = on_drawing(positions.vectors, site.north)
    gradient = gradient_of(site)
    up = levelled(directions, gradient)[:, 2] > 0.01
    directions, months = directions[up], positions.months[up]
    weights = positions.weight("season")[up]
    fast = field_of(casters, beams_of(directions, months, gradient), weights[None], grid)[0]
    traced = tracing.hours_by_tracing(bodies, grid, directions, months, weights, gradient)
    apart = np.abs(fast - traced)
    assert (apart <= 0.05).mean() >= 0.98
    assert apart.max() <= 0.25
    assert apart.mean() < 0.01
    assert np.ptp(traced) > 1.0


def _yard_bodies(casters: list[Caster]) -> list[tracing.Body]:
    """The proving yard's house and fence by their sizes, its trees by theirs."""
    trees = [tracing.crown_body(c) for c in casters if isinstance(c, Crown)]
    corners = [[x, y, z] for x in (9, 21) for y in (18, 26) for z in (0.0, 5.5)]
    fence = tracing.wall_body((0.5, 0.5), (29.5, 0.5), 0.1, 0.0, 1.8, DARK)
    return [*trees, tracing.hull_body(corners, DARK), fence]


def test_proving_yard() -> None:
    site, casters = suns.proving_yard()
    _compare(site, casters, _yard_bodies(casters), Grid(0.0, 0.0, 0.25, 120, 120), 20.0)


@pytest.mark.parametrize("shape", SHAPES)
@pytest.mark.parametrize("site", [FLAT, SLOPED], ids=["level", "slope"])
def test_random_crowns(shape: Shape, site: Site) -> None:
    rng = np.random.default_rng(SHAPES.index(shape))
    crowns = suns.random_trees(rng, 12, 20.0, shape, gradient=gradient_of(site))
    bodies = [tracing.crown_body(crown, gradient_of(site)) for crown in crowns]
    _compare(site, list(crowns), bodies, Grid(0.0, 0.0, 0.4, 50, 50), 20.0)


def _roof_corners(house: Building, angle: float, long: float, wide: float) -> list[list[float]]:
    """Corners of the roof of a house `long` x `wide` about (10, 10), its ridge turned by `angle` degrees."""
    c, s = math.cos(math.radians(angle)), math.sin(math.radians(angle))
    ends = {"gable": long / 2, "hip": long / 2 - wide / 2}
    local: list[tuple[float, float, float]] = [
        (x, y, house.eaves) for x in (-long / 2, long / 2) for y in (-wide / 2, wide / 2)
    ]
    if house.roof in ends:
        local += [(x, 0.0, house.ridge) for x in (-ends[house.roof], ends[house.roof])]
    elif house.roof == "lean-to":
        local += [(x, wide / 2, house.ridge) for x in (-long / 2, long / 2)]
    return [[10 + c * x - s * y, 10 + s * x + c * y, z] for x, y, z in local]


def _house_bodies(house: Building, angle: float, gradient: tuple[float, float]) -> list[tracing.Body]:
    """A house of 8 x 5 m: level roof, walls down into the ground; heights count from the middle's ground."""
    lift = gradient[0] * 10 + gradient[1] * 10
    walls = _roof_corners(house, angle, 8.0, 5.0)[:4]
    foot = [[x, y, lift - 6.0] for x, y, _ in walls]
    roof = _roof_corners(house, angle, 8.0 + 2 * house.overhang, 5.0 + 2 * house.overhang)
    if house.roof == "flat":
        # A flat roof without thickness is no solid: the slab is a centimetre deep, as the program has it.
        roof += [[x, y, z - 0.01] for x, y, z in roof]
    raised = [[x, y, z + lift] for x, y, z in walls]
    return [
        tracing.hull_body([*foot, *raised], DARK),
        tracing.hull_body([[x, y, z + lift] for x, y, z in roof], DARK),
    ]


@pytest.mark.parametrize("roof", ["flat", "gable", "hip", "lean-to"])
@pytest.mark.parametrize("overhang", [0.0, 0.6])
@pytest.mark.parametrize("site", [FLAT, SOUTHERN], ids=["level", "slope"])
def test_roofs(roof: Any, overhang: float, site: Site) -> None:
    angle = 25.0
    ridge = 3.0 if roof == "flat" else 5.2
    bare = Building(id="H", footprint=(), eaves=3.0, ridge=ridge, roof=roof, ridge_angle=angle)
    corners = _roof_corners(bare, angle, 8.0, 5.0)[:4]
    footprint = tuple((corners[n][0], corners[n][1]) for n in (0, 2, 3, 1))
    house = evolve(bare, footprint=footprint, overhang=overhang)
    gradient = gradient_of(site)
    bodies = _house_bodies(house, angle, gradient)
    _compare(site, list(building_casters(house, gradient)), bodies, Grid(0.0, 0.0, 0.4, 50, 50), 20.0)


@pytest.mark.parametrize("site", [FLAT, SLOPED], ids=["level", "slope"])
def test_l_shaped_house_walls_fences_rows_and_panels(site: Site) -> None:
    """Mixed: an L of two boxes, a slatted fence, a wall, a row of canes and two espaliers."""
    gradient = gradient_of(site)
    outline = ((3.1, 10.1), (11.1, 10.1), (11.1, 13.1), (6.1, 13.1), (6.1, 17.1), (3.1, 17.1))
    house = Building(id="H", footprint=outline, eaves=3.2, ridge=3.2)
    fence = Barrier(id="F", line=((1.1, 1.05), (18.1, 2.05)), height=1.8, thickness=0.1)
    wall = Barrier(id="W", kind="wall", line=((17.0, 4.0), (18.5, 15.0)), height=2.2, thickness=0.3)
    casters: list[Caster] = [
        *building_casters(house, gradient),
        *barrier_casters(fence, (0.5,) * 12),
        *barrier_casters(wall, DARK),
        *band_casters("R", ((3.0, 5.0), (12.0, 6.0)), 0.8, 0.3, 1.7, LIGHT),
        *panel_casters("P", (9.0, 8.0), 20.0, 4.0, 0.4, 0.4, 2.0, LIGHT),
        *panel_casters("Q", (14.0, 12.0), -70.0, 5.0, 0.5, 0.5, 2.4, LIGHT),
    ]
    about = np.array(Polygon(outline).centroid.coords[0])
    lift = float(about @ np.array(gradient))
    boxes = [((3.1, 11.1), (10.1, 13.1)), ((3.1, 6.1), (10.1, 17.1))]
    bodies = [
        tracing.hull_body([[x, y, z] for x in xs for y in ys for z in (lift - 6.0, lift + 3.2)], DARK)
        for xs, ys in boxes
    ]
    bodies.append(tracing.wall_body((1.1, 1.05), (18.1, 2.05), 0.1, 0.0, 1.8, (0.5,) * 12, gradient))
    bodies.append(tracing.wall_body((17, 4), (18.5, 15), 0.3, 0.0, 2.2, DARK, gradient))
    bodies.append(tracing.wall_body((3, 5), (12, 6), 0.8, 0.3, 1.7, LIGHT, gradient))
    panels = (((9, 8), 20, 4, 0.4, 0.4, 2), ((14, 12), -70, 5, 0.5, 0.5, 2.4))
    for place, angle, spread, depth, base, top in panels:
        half = np.array([math.cos(math.radians(angle)), math.sin(math.radians(angle))]) * spread / 2
        a, b = np.subtract(place, half), np.add(place, half)
        bodies.append(tracing.wall_body((a[0], a[1]), (b[0], b[1]), depth, base, top, LIGHT, gradient))
    _compare(site, casters, bodies, Grid(0.0, 0.0, 0.4, 50, 50), 20.0)


@pytest.mark.parametrize("seed", [11, 12])
def test_random_mixed_scenes(seed: int) -> None:
    """Random latitudes, norths, slopes and crowns of every shape with light that follows the months."""
    rng = np.random.default_rng(seed)
    site = Site(
        latitude=float(rng.uniform(-60, 60)),
        longitude=0.0,
        north=float(rng.uniform(-180, 180)),
        slope=float(rng.uniform(0, 0.25)),
        slope_aspect=float(rng.uniform(0, 360)),
    )
    light = tuple(float(v) for v in rng.uniform(0.05, 0.6, 12))
    casters: list[Caster] = []
    for shape in SHAPES:
        for crown in suns.random_trees(rng, 4, 20.0, shape, gradient=gradient_of(site)):
            casters.append(Crown(crown.owner, shape, crown.place, crown.radius, crown.base, crown.top, light))
    bodies = [tracing.crown_body(c, gradient_of(site)) for c in casters if isinstance(c, Crown)]
    _compare(site, casters, bodies, Grid(0.0, 0.0, 0.4, 50, 50), 20.0)
