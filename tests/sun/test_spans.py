from __future__ import annotations

import numpy as np
import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st
from shapely.geometry import Point
from support import suns

from yardplan.sun.casters import Caster, Crown, building_casters, crown, panel_casters
from yardplan.sun.field import field_of
from yardplan.sun.grid import Grid
from yardplan.sun.parameters import Shape
from yardplan.sun.position import vectors_of
from yardplan.sun.rays import (
    Rays,
    crown_columns,
    crown_hits,
    drums_of,
    face_columns,
    may_hit,
    prism_hits,
)
from yardplan.sun.scene import levelled
from yardplan.sun.shadows import outline_of
from yardplan.sun.spans import Beams, beams_of
from yardplan.yard.ground import Building

DARK = (0.0,) * 12
GRID = Grid(-12.0, -12.0, 0.5, 48, 48)
SHAPES: list[Shape] = ["ellipsoid", "cone", "vase", "cylinder", "dome"]

gradients = st.tuples(st.floats(-0.2, 0.2), st.floats(-0.2, 0.2))
altitudes, azimuths = st.floats(12, 89.9), st.floats(0, 360)


def _beams(altitude: float, azimuth: float, gradient: tuple[float, float]) -> Beams:
    return beams_of(vectors_of([altitude], [azimuth]), np.array([5]), gradient)


def _hit(caster: Caster, altitude: float, azimuth: float, gradient: tuple[float, float]) -> np.ndarray:
    """Cells whose ray to the sun meets the caster."""
    x, y = np.meshgrid(GRID.xs, GRID.ys)
    points = np.stack([x.ravel(), y.ravel(), np.zeros(x.size)], axis=1)[None]
    level = levelled(vectors_of([altitude], [azimuth]), gradient)
    rays, one = Rays(points, level[:, None, :], gradient), np.array([0])
    if isinstance(caster, Crown):
        met = crown_hits(caster.shape, crown_columns([caster]).taken(one), rays)
    else:
        met = prism_hits(face_columns([caster]).taken(one), rays)
    return met.reshape(GRID.rows, GRID.cols)


def _agree(caster: Caster, altitude: float, azimuth: float, gradient: tuple[float, float]) -> None:
    """Spans, rays and outline tell the same cells, but for cell centres on the very edge."""
    # Behind the slope or grazing it no sun is counted (lowest_on_slope).
    assume(levelled(vectors_of([altitude], [azimuth]), gradient)[0, 2] > 0.02)
    beams = _beams(altitude, azimuth, gradient)
    dark = field_of([caster], beams, np.ones((1, 1)), GRID)[0] < 0.5
    met = _hit(caster, altitude, azimuth, gradient)
    edge = outline_of(caster, beams, gradient).exterior
    for row, col in np.argwhere(dark != met):
        assert edge.distance(Point(GRID.xs[col], GRID.ys[row])) < 0.02


@settings(max_examples=60, deadline=None)
@given(
    st.sampled_from(SHAPES),
    st.floats(0.5, 8),
    st.floats(0, 2),
    st.floats(0.3, 7),
    altitudes,
    azimuths,
    gradients,
)
def test_spans_of_crowns_and_rays_tell_the_same(
    shape: Shape,
    spread: float,
    base: float,
    deep: float,
    altitude: float,
    azimuth: float,
    gradient: tuple[float, float],
) -> None:
    one = crown("T", shape, (0.3, -0.2), spread, base, base + deep, DARK, gradient)
    assert one is not None
    # A crown so flat on a slope that it cannot clear the ground is not of this test.
    steep = np.hypot(*gradient) * one.radius
    if one.base >= (steep if shape in ("cone", "cylinder", "dome") else steep**2 / one.top) - 1e-9:
        _agree(one, altitude, azimuth, gradient)


@settings(max_examples=40, deadline=None)
@given(
    st.sampled_from(["flat", "gable", "hip", "lean-to"]),
    st.floats(1, 9),
    st.floats(1, 9),
    st.floats(0, 180),
    st.floats(1, 5),
    st.floats(0, 4),
    altitudes,
    azimuths,
    gradients,
)
def test_spans_of_buildings_and_rays_tell_the_same(
    roof: str,
    wide: float,
    deep: float,
    angle: float,
    eaves: float,
    rise: float,
    altitude: float,
    azimuth: float,
    gradient: tuple[float, float],
) -> None:
    corners = ((-wide / 2, -deep / 2), (wide / 2, -deep / 2), (wide / 2, deep / 2), (-wide / 2, deep / 2))
    house = Building(id="B", footprint=corners, eaves=eaves, ridge=eaves + rise, roof=roof, ridge_angle=angle)  # type: ignore[arg-type]
    for prism in building_casters(house, gradient):
        _agree(prism, altitude, azimuth, gradient)


@settings(max_examples=20, deadline=None)
@given(st.floats(0, 180), st.floats(0.5, 8), st.floats(0.01, 2), altitudes, azimuths, gradients)
def test_spans_of_panels_and_rays_tell_the_same(
    facing: float, spread: float, depth: float, altitude: float, azimuth: float, gradient: tuple[float, float]
) -> None:
    for prism in panel_casters("P", (0.1, 0.1), facing, spread, depth, 0.4, 2.2, DARK):
        _agree(prism, altitude, azimuth, gradient)


def test_an_overhead_sun_gives_the_plan_of_the_crown() -> None:
    for shape in SHAPES:
        one = Crown("T", shape, (0.0, 0.0), 2.0, 1.0, 5.0, DARK)
        outline = outline_of(one, _beams(90.0, 0.0, (0.0, 0.0)), (0.0, 0.0))
        assert outline.area == pytest.approx(np.pi * 4.0, rel=0.01)


def test_the_first_look_never_misses_a_hit() -> None:
    rng = np.random.default_rng(5)
    crowns = suns.random_trees(rng, 20, 20.0, "cylinder")
    directions = vectors_of(rng.uniform(5, 90, 40), rng.uniform(0, 360, 40))
    drums = drums_of(crowns, (0.0, 0.0))
    caster, target, beam = may_hit(drums, drums, directions)
    possible = set(zip(caster.tolist(), target.tolist(), beam.tolist(), strict=True))
    columns = crown_columns(crowns)
    for number, one in enumerate(crowns):
        edge = np.array([[one.place[0] + one.radius, one.place[1], one.base], [*one.place, one.top]])
        for n, direction in enumerate(directions):
            rays = Rays(edge[None], direction[None, None, :], (0.0, 0.0))
            for other in range(len(crowns)):
                if other != number and crown_hits("cylinder", columns.taken(np.array([other])), rays).any():
                    assert (other, number, n) in possible


def test_the_order_of_casters_does_not_matter_to_a_bit() -> None:
    _, casters = suns.proving_yard()
    beams = beams_of(
        vectors_of(np.linspace(10, 60, 20), np.linspace(90, 270, 20)), np.full(20, 5), (0.0, 0.0)
    )
    grid = Grid(0.0, 0.0, 0.5, 60, 60)
    weights = np.full((1, 20), 0.5)
    assert np.array_equal(
        field_of(casters, beams, weights, grid), field_of(casters[::-1], beams, weights, grid)
    )
