"""Many discs at once, against the same made one by one."""

from __future__ import annotations

import numpy as np
import pytest
import shapely
from hypothesis import given, settings
from hypothesis import strategies as st

from yardplan.arrange.closed import grown
from yardplan.arrange.discs import beyond, discs, distinct, taken_off, touches

GROUND = shapely.box(0.0, 0.0, 60.0, 40.0)
#: Round edges miss the circle by no more than this, metres.
HAIR = 0.003
#: To the millimetre: distances of a hundredth of an atom are no places.
coordinate = st.integers(-20_000, 80_000).map(lambda millimetres: millimetres / 1000.0)
some_discs = st.lists(st.tuples(coordinate, coordinate, st.floats(0.2, 45.0)), max_size=40)


def off_by(one: shapely.geometry.base.BaseGeometry, other: shapely.geometry.base.BaseGeometry) -> float:
    """Square metres that two shapes differ by."""
    return float(one.symmetric_difference(other).area)


def test_a_disc_is_that_which_growing_a_point_gives() -> None:
    radii = np.array([0.0, 0.4, 3.0, np.inf, np.nan, 30.0])
    made = discs(np.tile([2.0, 1.0], (6, 1)), radii)
    for radius, shape in zip(radii, made, strict=True):
        assert shape.equals_exact(grown(shapely.Point(2, 1), radius).normalize(), 1e-9) or (
            off_by(shape, grown(shapely.Point(2, 1), radius)) < 1e-9
        )


@settings(max_examples=40, deadline=None)
@given(some_discs)
def test_ground_beyond_discs_is_what_each_taken_off_by_itself_leaves(many: list[tuple[float, ...]]) -> None:
    middles, radii = [(x, y) for x, y, _ in many], [radius for *_, radius in many]
    left = GROUND
    for middle, radius in zip(middles, radii, strict=True):
        left = left.difference(grown(shapely.Point(middle), radius))
    ours = beyond(GROUND, middles, radii)
    assert off_by(ours, left) <= HAIR * (left.length + ours.length) + 1e-6
    away = [GROUND.distance(shapely.Point(middle)) for middle in middles]
    assert touches(GROUND, middles, radii) == any(off <= far for off, far in zip(away, radii, strict=True))


def test_ground_among_very_many_discs_is_found_in_their_midst() -> None:
    """A ring of discs leaves its middle: a place that no other disc tells of."""
    around = np.linspace(0.0, 2.0 * np.pi, 200, endpoint=False)
    middles = [(30.0 + 20.0 * np.cos(a), 20.0 + 20.0 * np.sin(a)) for a in around]
    left = beyond(shapely.box(10.0, 0.0, 50.0, 40.0), middles, [15.0] * 200)
    assert left.contains(shapely.Point(30.0, 20.0))
    assert left.area == pytest.approx(np.pi * 25.0, rel=0.02)


@settings(max_examples=30, deadline=None)
@given(some_discs, st.integers(1, 9))
def test_shapes_taken_off_a_few_at_a_time_leave_the_same(many: list[tuple[float, ...]], at_once: int) -> None:
    table = np.array(many, dtype=float).reshape(-1, 3)
    shapes = discs(table[:, :2], table[:, 2])
    ours = taken_off(GROUND, shapes, at_once=at_once)
    assert off_by(ours, GROUND.difference(shapely.union_all(shapes))) < 1e-6


def test_only_shapes_that_lie_on_each_other_are_left_out() -> None:
    """Two stripes that cross have one box and one size, and yet both count."""
    stripes = [shapely.LineString(ends).buffer(1.0) for ends in (((0, 0), (9, 9)), ((0, 9), (9, 0)))]
    near = shapely.LineString([(0.001, 0), (9.001, 9)]).buffer(1.0)
    kept = distinct(np.array([*stripes, near, stripes[0]], dtype=object))
    assert list(kept) == stripes
