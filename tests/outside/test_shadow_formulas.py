"""Lengths, areas and places of shadows by closed formulas."""

from __future__ import annotations

import math

import numpy as np
import pytest

from yardplan.sun.casters import Crown, barrier_casters, building_casters
from yardplan.sun.field import field_of
from yardplan.sun.grid import Grid
from yardplan.sun.parameters import Shape
from yardplan.sun.position import Floats, vectors_of
from yardplan.sun.shadows import outline_of
from yardplan.sun.spans import beams_of
from yardplan.yard.ground import Barrier, Building

DARK = (0.0,) * 12
LEVEL = (0.0, 0.0)


def _area(crown: Crown, altitude: float, azimuth: float = 200.0) -> float:
    """Area by counting fine cells of the field."""
    beams = beams_of(vectors_of([altitude], [azimuth]), np.array([5]), LEVEL)
    grid = Grid(-30.0, -30.0, 0.03125, 1920, 1920)
    lit = field_of([crown], beams, np.ones((1, 1)), grid)[0]
    return float((1.0 - lit).sum()) * grid.cell**2


def _outline_area(crown: Crown, altitude: float) -> float:
    beams = beams_of(vectors_of([altitude], [200.0]), np.array([5]), LEVEL)
    return float(outline_of(crown, beams, LEVEL).area)


def _closed_area(shape: Shape, r: float, base: float, top: float, altitude: float) -> float:
    """Plane geometry of the projections: an ellipse, a stadium, a disc with its two tangents to a point."""
    k = 1.0 / math.tan(math.radians(altitude))
    if shape == "ellipsoid":
        return math.pi * r * math.hypot(r, (top - base) / 2.0 * k)
    if shape == "cylinder":
        return math.pi * r**2 + 2.0 * r * (top - base) * k
    if shape == "dome":
        return (math.pi * r**2 + math.pi * r * math.hypot(r, (top - base) * k)) / 2.0
    reach = (top - base) * k
    if reach <= r:
        return math.pi * r**2
    return r**2 * (math.pi - math.acos(r / reach)) + r * math.sqrt(reach**2 - r**2)


SHAPES: list[Shape] = ["ellipsoid", "cylinder", "cone", "vase", "dome"]


@pytest.mark.parametrize("shape", SHAPES)
@pytest.mark.parametrize("altitude", [20.0, 45.0, 75.0])
def test_areas_of_shadows(shape: Shape, altitude: float) -> None:
    crown = Crown("T", shape, (0.0, 0.0), 2.0, 1.0, 5.0, DARK)
    expected = _closed_area(shape, 2.0, 1.0, 5.0, altitude)
    assert _area(crown, altitude) == pytest.approx(expected, rel=2e-3)
    assert _outline_area(crown, altitude) == pytest.approx(expected, rel=5e-3)


#: Areas in m2 by altitude worked out beforehand from the same plane geometry and checked by ray casting:
#: ellipsoid of spread 5, height 6, base 1.2; cone and cylinder of spread 4, height 5, base 1.
WORKED = [
    ("ellipsoid", 2.5, 1.2, 6.0, {20: 55.386, 30: 38.098, 45: 27.218, 60: 22.449}),
    ("cone", 2.0, 1.0, 5.0, {30: 20.721, 45: 15.306, 60: 12.781}),
    ("cylinder", 2.0, 1.0, 5.0, {30: 40.279, 45: 28.566, 60: 21.804}),
]


@pytest.mark.parametrize(("shape", "radius", "base", "top", "areas"), WORKED)
def test_worked_areas(shape: Shape, radius: float, base: float, top: float, areas: dict[int, float]) -> None:
    crown = Crown("T", shape, (0.0, 0.0), radius, base, top, DARK)
    for altitude, area in areas.items():
        assert _area(crown, altitude) == pytest.approx(area, rel=2e-3)


@pytest.mark.parametrize(
    ("altitude", "distance", "half"),
    [
        (20.0, 9.891, 7.052),
        (30.0, 6.235, 4.851),
        (45.0, 3.600, 3.466),
        (60.0, 2.078, 2.858),
    ],
)
def test_place_and_length_of_an_ellipsoids_shadow(altitude: float, distance: float, half: float) -> None:
    """Spread 5, height 6, base 1.2: distance from the trunk to the middle, half-axis along the sun."""
    crown = Crown("T", "ellipsoid", (0.0, 0.0), 2.5, 1.2, 6.0, DARK)
    beams = beams_of(vectors_of([altitude], [180.0]), np.array([5]), LEVEL)
    x0, y0, x1, y1 = outline_of(crown, beams, LEVEL).bounds
    assert (y0 + y1) / 2.0 == pytest.approx(distance, abs=2e-3)
    assert (y1 - y0) / 2.0 == pytest.approx(half, abs=2e-3)
    assert (x1 - x0) / 2.0 == pytest.approx(2.5, abs=5e-3)


def _hour_vector(declination: float, latitude: float, hour_angle: float) -> Floats:
    """Spherical astronomy by hand: the sun at a declination and hour angle, degrees."""
    d, p, h = (math.radians(v) for v in (declination, latitude, hour_angle))
    return np.array(
        [
            [
                -math.cos(d) * math.sin(h),
                math.sin(d) * math.cos(p) - math.cos(d) * math.cos(h) * math.sin(p),
                math.sin(d) * math.sin(p) + math.cos(d) * math.cos(h) * math.cos(p),
            ]
        ]
    )


#: Length of the shadow of a pole of height 1 by latitude: noon at winter solstice, equinox and summer
#: solstice, 9 h solar in winter and in summer (None: sun down). From noon altitude = 90 - |lat - dec| and the
#: sine rule; a ratio table of this kind is common in handbooks of passive solar building.
LENGTHS = [
    (25, 1.13, 0.47, 0.03, 2.16, 0.87),
    (30, 1.35, 0.58, 0.11, 2.57, 0.85),
    (35, 1.63, 0.70, 0.20, 3.14, 0.86),
    (40, 2.00, 0.84, 0.30, 4.02, 0.87),
    (45, 2.53, 1.00, 0.40, 5.55, 0.91),
    (50, 3.36, 1.19, 0.50, 8.85, 0.96),
    (55, 4.89, 1.43, 0.61, 21.6, 1.03),
    (60, 8.70, 1.73, 0.74, None, 1.11),
]


@pytest.mark.parametrize(("latitude", "winter", "equinox", "summer", "nine_winter", "nine_summer"), LENGTHS)
def test_lengths_of_shadows(
    latitude: float,
    winter: float,
    equinox: float,
    summer: float,
    nine_winter: float | None,
    nine_summer: float,
) -> None:
    cases = [
        (-23.44, 0.0, winter),
        (0.0, 0.0, equinox),
        (23.44, 0.0, summer),
        (-23.44, -45.0, nine_winter),
        (23.44, -45.0, nine_summer),
    ]
    for declination, hour_angle, length in cases:
        vector = _hour_vector(declination, latitude, hour_angle)
        if length is None:
            assert vector[0, 2] < 0.0
            continue
        beams = beams_of(vector, np.array([5]), LEVEL)
        assert np.hypot(*beams.t[0]) == pytest.approx(length, rel=5e-3, abs=6e-3)


@pytest.mark.parametrize("latitude", [20.0, 42.0, 55.0, -34.0])
def test_equinox_strip_behind_a_wall(latitude: float) -> None:
    """At declination 0 an east-west wall shades a strip h tan(lat) deep on its poleward side all day long."""
    height = 2.0
    line = ((-400.0, 0.0), (400.0, 0.0))
    wall = barrier_casters(Barrier(id="W", line=line, height=height, thickness=0.01), DARK)
    vectors = np.concatenate([_hour_vector(0.0, latitude, h) for h in range(-75, 76, 5)])
    beams = beams_of(vectors, np.full(len(vectors), 2), LEVEL)
    deep = height * math.tan(math.radians(abs(latitude)))
    grid = Grid(-0.5, -6.0, 0.05, 240, 20)
    lit = field_of(wall, beams, np.full((1, len(vectors)), 1.0 / len(vectors)), grid)[0]
    poleward = np.sign(latitude)
    y = grid.ys * poleward
    inside, outside = (y > 0.06) & (y < deep - 0.06), (y > deep + 0.06) | (y < -0.06)
    assert np.all(lit[inside] == 0.0)
    assert np.allclose(lit[outside], 1.0)


@pytest.mark.parametrize("grade", [-0.2, -0.05, 0.1, 0.3])
def test_shadow_length_up_and_down_a_slope(grade: float) -> None:
    """L = h / (tan(altitude) + m), m the rise of the ground away from the sun."""
    wall = Barrier(id="W", line=((-50.0, 0.0), (50.0, 0.0)), height=2.0, thickness=0.01)
    gradient = (0.0, grade)
    beams = beams_of(vectors_of([35.0], [180.0]), np.array([5]), gradient)
    outline = outline_of(barrier_casters(wall, DARK)[0], beams, gradient)
    assert outline.bounds[3] == pytest.approx(2.0 / (math.tan(math.radians(35.0)) + grade), abs=0.01)


def test_shadow_of_a_box() -> None:
    """A box's shadow is the hull of its footprint and the footprint shifted by h cot(altitude)."""
    box = Building(id="B", footprint=((0, 0), (4, 0), (4, 3), (0, 3)), eaves=2.5, ridge=2.5)
    beams = beams_of(vectors_of([45.0], [180.0]), np.array([5]), LEVEL)
    outline = outline_of(building_casters(box)[0], beams, LEVEL)
    assert outline.area == pytest.approx(4.0 * (3.0 + 2.5))
    assert outline.bounds == pytest.approx((0.0, 0.0, 4.0, 5.5))
