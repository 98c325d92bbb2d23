from __future__ import annotations

import math

import numpy as np
import pytest
from shapely.geometry import MultiPolygon, Polygon

from yardplan.sun.casters import (
    Prism,
    band_casters,
    barrier_casters,
    building_casters,
    crown,
    panel_casters,
    sane_height,
)
from yardplan.sun.convex import convex_pieces, polygons_of
from yardplan.yard.ground import Barrier, Building

DARK = (0.0,) * 12
L_SHAPE = ((0.0, 0.0), (10.0, 0.0), (10.0, 4.0), (4.0, 4.0), (4.0, 9.0), (0.0, 9.0))


def _is_convex(ring: np.ndarray) -> bool:
    shape = Polygon(ring)
    return bool(shape.area == pytest.approx(shape.convex_hull.area))


@pytest.mark.parametrize(
    "outline",
    [
        L_SHAPE,
        ((0, 0), (8, 0), (8, 6), (5, 6), (5, 3), (3, 3), (3, 6), (0, 6)),
        ((0, 0), (4, 1), (7, 0), (6, 4), (7, 7), (3, 5), (0, 7), (1, 3)),
    ],
    ids=["L", "U", "star"],
)
def test_pieces_are_convex_and_fill_the_outline(outline: tuple[tuple[float, float], ...]) -> None:
    shape = MultiPolygon(polygons_of(outline))
    pieces = convex_pieces(shape)
    assert all(_is_convex(piece) for piece in pieces)
    assert sum(Polygon(p).area for p in pieces) == pytest.approx(shape.area)
    assert MultiPolygon([Polygon(p) for p in pieces]).buffer(1e-9).area == pytest.approx(shape.area, rel=1e-6)


def test_a_rectangle_is_one_piece_and_an_l_is_two() -> None:
    assert len(convex_pieces(Polygon([(0, 0), (4, 0), (4, 3), (0, 3)]))) == 1
    assert len(convex_pieces(Polygon(L_SHAPE))) == 2


def test_a_footprint_that_crosses_itself_is_cut_where_it_crosses() -> None:
    bow = Building(id="B", footprint=((0, 0), (4, 4), (4, 0), (0, 4)), eaves=3, ridge=3)
    parts = building_casters(bow)
    assert len(parts) == 2
    area = sum(Polygon(p.solid.corners[p.solid.corners[:, 2] == 0.0][:, :2]).convex_hull.area for p in parts)
    assert area == pytest.approx(8.0)


@pytest.mark.parametrize("footprint", [(), ((0, 0),), ((0, 0), (4, 0)), ((0, 0), (4, 0), (8, 0))])
def test_a_footprint_without_area_casts_nothing(footprint: tuple[tuple[float, float], ...]) -> None:
    assert building_casters(Building(id="B", footprint=footprint, eaves=3, ridge=3)) == []


def _top(prisms: list[Prism]) -> float:
    return max(float(p.solid.corners[:, 2].max()) for p in prisms)


@pytest.mark.parametrize("height", [0.0, -2.0, math.nan])
def test_zero_and_impossible_heights_cast_nothing(height: float) -> None:
    square = ((0.0, 0.0), (4.0, 0.0), (4.0, 4.0), (0.0, 4.0))
    assert building_casters(Building(id="B", footprint=square, eaves=height, ridge=height)) == []
    assert barrier_casters(Barrier(id="F", line=((0, 0), (3, 0)), height=height), DARK) == []
    assert crown("T", "ellipsoid", (0, 0), 3.0, 0.5, height, DARK) is None
    assert panel_casters("P", (0, 0), 0.0, 3.0, 0.4, 0.5, height, DARK) == []


def test_heights_are_cut_to_the_tallest_counted() -> None:
    square = ((0.0, 0.0), (4.0, 0.0), (4.0, 4.0), (0.0, 4.0))
    assert _top(building_casters(Building(id="B", footprint=square, eaves=500, ridge=500))) == 500.0
    assert _top(building_casters(Building(id="B", footprint=square, eaves=9e9, ridge=9e9))) == 500.0
    assert sane_height(math.inf) == 0.0


@pytest.mark.parametrize("spread", [0.0, -1.0, math.nan, math.inf])
def test_a_crown_without_width_casts_nothing(spread: float) -> None:
    assert crown("T", "cone", (0, 0), spread, 0.5, 4.0, DARK) is None


def test_a_fence_is_one_caster_a_stretch() -> None:
    line = ((0.0, 0.0), (5.0, 0.0), (5.0, 0.0), (5.0, 5.0))
    assert len(barrier_casters(Barrier(id="F", line=line), DARK)) == 2
    assert barrier_casters(Barrier(id="F", line=((1.0, 1.0),)), DARK) == []
    assert band_casters("R", ((0, 0), (3, 0)), math.nan, 0.0, 1.0, DARK) == []


def _height_over(prisms: list[Prism], x: float, y: float) -> float:
    """The top of the solids over a point."""
    highest = 0.0
    for prism in prisms:
        low, high = -math.inf, math.inf
        for (nx, ny, nz), offset in zip(prism.solid.normals, prism.solid.offsets, strict=True):
            rest = offset - nx * x - ny * y
            if abs(nz) < 1e-12:
                high = -math.inf if rest < -1e-9 else high
            elif nz > 0:
                high = min(high, rest / nz)
            else:
                low = max(low, rest / nz)
        highest = max(highest, high if high > low else 0.0)
    return highest


def _house(**fields: object) -> list[Prism]:
    square = ((0.0, 0.0), (10.0, 0.0), (10.0, 6.0), (0.0, 6.0))
    return building_casters(Building(id="B", footprint=square, eaves=3.0, ridge=6.0, **fields))  # type: ignore[arg-type]


def test_heights_of_roofs() -> None:
    assert _height_over(_house(roof="flat"), 5, 3) == pytest.approx(6.0)
    gable = _house(roof="gable")
    assert _height_over(gable, 0.01, 3) == pytest.approx(6.0)
    assert _height_over(gable, 5, 1.5) == pytest.approx(4.5)
    hip = _house(roof="hip")
    assert _height_over(hip, 5, 3) == pytest.approx(6.0)
    assert _height_over(hip, 1.5, 3) == pytest.approx(4.5)
    lean_to = _house(roof="lean-to", ridge_angle=0.0)
    assert _height_over(lean_to, 5, 5.99) == pytest.approx(6.0, abs=0.01)
    assert _height_over(lean_to, 5, 0.01) == pytest.approx(3.0, abs=0.01)
    turned = _house(roof="gable", ridge_angle=90.0)
    assert _height_over(turned, 2.5, 0.5) == pytest.approx(4.5)


def test_eaves_hang_over_and_leave_the_ground_below_free() -> None:
    plain, over = _house(roof="gable"), _house(roof="gable", overhang=0.5)
    assert _height_over(plain, -0.3, 3) == 0.0
    assert _height_over(over, -0.3, 3) == pytest.approx(6.0, abs=0.02)
    beyond = [p for p in over if p.solid.corners[:, 0].min() < -0.1]
    assert beyond[0].solid.corners[:, 2].min() > 2.9


def test_a_crown_on_a_slope_clears_the_ground() -> None:
    gradient = (0.0, 0.2)
    for shape in ("cone", "cylinder", "dome", "ellipsoid"):
        one = crown("T", shape, (0.0, 0.0), 4.0, 0.1, 4.0, DARK, gradient)  # type: ignore[arg-type]
        assert one is not None
        middle, half = (one.top + one.base) / 2, (one.top - one.base) / 2
        lowest = middle - math.hypot(half, 0.4) if shape == "ellipsoid" else one.base - 0.4
        assert lowest >= -1e-9
        assert one.base > 0.1 or shape == "ellipsoid"
