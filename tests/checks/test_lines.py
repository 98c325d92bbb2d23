"""Distances of many points to many outlines at once, against a general geometry library."""

import numpy as np
import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st

from yardplan.checks.lines import edges_of, nearest_on, signed_distances

COORDINATE = st.floats(-50, 50).map(lambda x: round(x, 3))
POINT = st.tuples(COORDINATE, COORDINATE)


@st.composite
def polygons(draw):
    """A simple polygon: corners at growing angles round a middle."""
    corners = draw(st.integers(3, 9))
    reach = draw(st.lists(st.floats(0.5, 20), min_size=corners, max_size=corners))
    x, y = draw(POINT)
    turns = np.arange(corners) * 2 * np.pi / corners
    return tuple((x + r * np.cos(t), y + r * np.sin(t)) for r, t in zip(reach, turns, strict=True))


@given(st.lists(POINT, min_size=1, max_size=8), st.lists(polygons(), min_size=1, max_size=4))
def test_signed_distance_to_areas(points, outlines):
    found = signed_distances(np.array(points), edges_of(outlines, [True] * len(outlines)))
    for i, point in enumerate(points):
        for j, outline in enumerate(outlines):
            polygon, place = shapely.Polygon(outline), shapely.Point(point)
            assert abs(found[i, j]) == pytest.approx(polygon.exterior.distance(place), abs=1e-6)
            if polygon.exterior.distance(place) > 1e-6:
                assert (found[i, j] < 0) == polygon.contains(place)


@given(st.lists(POINT, min_size=1, max_size=8), st.lists(POINT, min_size=1, max_size=6))
def test_distance_to_lines(points, line):
    found = signed_distances(np.array(points), edges_of([tuple(line)], [False]))
    shape = shapely.LineString(line if len(line) > 1 else line * 2)
    for i, point in enumerate(points):
        assert found[i, 0] == pytest.approx(shape.distance(shapely.Point(point)), abs=1e-6)


@given(POINT, polygons())
def test_nearest_points_lie_on_their_edges(point, outline):
    edges = edges_of([outline], [True])
    near = nearest_on(np.array([point]), edges.ends)[0]
    ring = shapely.LinearRing(outline)
    assert all(ring.distance(shapely.Point(x, y)) < 1e-6 for x, y in near)


def test_nothing_to_measure():
    assert signed_distances(np.empty((0, 2)), edges_of([((0, 0), (1, 0))], [False])).shape == (0, 1)
    assert signed_distances(np.zeros((3, 2)), edges_of([], [])).shape == (3, 0)
