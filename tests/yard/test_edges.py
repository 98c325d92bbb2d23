"""An edge takes a typed length: to the last digit, squared shapes stay square, crossing ones are refused."""

from __future__ import annotations

import math

import pytest
import shapely
from hypothesis import assume, given
from hypothesis import strategies as st
from support.builders import plant, yard_of

from yardplan.yard import edges, edits
from yardplan.yard.edits import EditError
from yardplan.yard.ground import Barrier, Building, Curve, Paving
from yardplan.yard.yard import Yard

BOX = ((0.0, 0.0), (8.0, 0.0), (8.0, 6.0), (0.0, 6.0))
ELL = ((0.0, 0.0), (10.0, 0.0), (10.0, 4.0), (6.0, 4.0), (6.0, 9.0), (0.0, 9.0))


def lengths(points: edges.Outline, *, closed: bool) -> list[float]:
    return [math.dist(a, b) for a, b in edges.edges_of(points, closed=closed)]


def test_a_rectangle_stays_one_and_its_near_corners_stay() -> None:
    assert edges.with_length(BOX, 0, 9.5, closed=True) == ((0, 0), (9.5, 0), (9.5, 6), (0, 6))
    # The last edge runs down to the first corner: its far end is the first corner, with the second.
    assert edges.with_length(BOX, 3, 5.0, closed=True) == ((0, 1), (8, 1), (8, 6), (0, 6))


@given(
    st.integers(0, 3), st.floats(0.5, 40), st.floats(0, 360),
    st.floats(0.5, 30), st.floats(0.5, 30), st.floats(-500, 500),
)
def test_any_turned_rectangle_stays_one(
    edge: int, length: float, turn: float, wide: float, deep: float, off: float
) -> None:
    upright = ((off, 0.0), (off + wide, 0.0), (off + wide, deep), (off, deep))
    box = tuple(edits.turned(corner, (off, 0), turn) for corner in upright)
    new = edges.with_length(box, edge, length, closed=True)
    found = lengths(new, closed=True)
    assert found[edge] == pytest.approx(length, abs=1e-9)
    assert found[edge] == pytest.approx(found[(edge + 2) % 4], abs=1e-6)
    assert found[(edge + 1) % 4] == pytest.approx((deep if edge % 2 == 0 else wide), abs=1e-6)
    assert math.dist(new[0], new[2]) == pytest.approx(math.dist(new[1], new[3]), abs=1e-6)


def test_a_squared_shape_of_six_corners_stays_square() -> None:
    new = edges.with_length(ELL, 2, 3.0, closed=True)
    assert new == ((0, 0), (10, 0), (10, 4), (7, 4), (7, 9), (0, 9))


def test_other_shapes_move_one_corner_along_its_edge() -> None:
    kite = ((0.0, 0.0), (6.0, 0.0), (9.0, 8.0), (1.0, 5.0))
    assert edges.with_length(kite, 0, 3.0, closed=True) == ((0, 0), (3, 0), (9, 8), (1, 5))


def test_what_follows_on_a_line_moves_along_so_that_its_other_lengths_stay() -> None:
    line = ((0.0, 0.0), (4.0, 0.0), (4.0, 3.0), (9.0, 3.0))
    new = edges.with_length(line, 0, 6.0, closed=False)
    assert new == ((0, 0), (6, 0), (6, 3), (11, 3))


SHAPES = st.lists(
    st.tuples(st.integers(0, 12), st.integers(0, 12)), min_size=2, max_size=7, unique=True
).map(lambda places: tuple((float(x), float(y)) for x, y in places))


@given(SHAPES, st.booleans())
def test_crossing_itself_is_what_a_geometry_library_calls_not_simple(
    points: edges.Outline, closed: bool
) -> None:
    closed = closed and len(points) > 2
    # A line that ends where it began is a ring: not what corners drawn one by one are.
    shape = shapely.LinearRing(points) if closed else shapely.LineString(points)
    assert edges.crosses_itself(points, closed=closed) is not shapely.is_simple(shape)


def star(points: edges.Outline) -> edges.Outline:
    """The points in order round their middle: nearly always a sound outline."""
    x, y = (sum(values) / len(points) for values in zip(*points, strict=True))
    return tuple(sorted(points, key=lambda p: math.atan2(p[1] - y, p[0] - x)))


@given(SHAPES.filter(lambda points: len(points) > 2).map(star), st.integers(0, 2), st.floats(0.1, 30))
def test_an_outline_that_was_sound_is_sound_afterwards_or_refused(
    points: edges.Outline, edge: int, length: float
) -> None:
    assume(not edges.crosses_itself(points, closed=True))
    yard = Yard(lot=points)
    if edges.crosses_itself(edges.with_length(points, edge, length, closed=True), closed=True):
        with pytest.raises(EditError, match="cross itself"):
            edges.set_length(yard, "lot", edge, length)
        return
    new = edges.set_length(yard, "lot", edge, length)
    assert lengths(new.lot, closed=True)[edge] == pytest.approx(length, abs=1e-9)
    assert not edges.crosses_itself(new.lot, closed=True)


def test_refusals_say_why_in_a_line() -> None:
    house = Building(id="BL1", footprint=BOX, locked=True)
    pond = Paving(
        id="PV1", outline=BOX, curve=Curve(kind="circle", points=((0.0, 0.0),), radius=2.0)
    )
    fence = Barrier(id="WF1", line=((0.0, 0.0), (4.0, 0.0)))
    apple = plant("A1", "apple:Liberty", (3, 3))
    yard = yard_of(apple, buildings=(house,), pavings=(pond,), barriers=(fence,))
    for key, edge, length, said in (
        ("BL1", 0, 5.0, "locked"), ("PV1", 0, 5.0, "no edge 1"), ("A1", 0, 5.0, "no edge"),
        ("WF1", 1, 5.0, "no edge 2"), ("WF1", 0, 0.0, "longer than nothing"),
    ):
        with pytest.raises(EditError, match=said):
            edges.set_length(yard, key, edge, length)
    assert edges.set_length(yard, "WF1", 0, 5.0).barriers[0].line == ((0, 0), (5, 0))
