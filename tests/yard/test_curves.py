"""Curved outlines: true to a few millimetres, editable afterwards, moved as a whole."""

import math

import pytest
import shapely
from attrs import evolve
from hypothesis import given
from hypothesis import strategies as st
from support.strategies import lengths, points

from yardplan.yard import curves, edits
from yardplan.yard.ground import Curve, Paving
from yardplan.yard.planting import Bed
from yardplan.yard.yard import Yard

SQUARE = ((0.0, 0.0), (6.0, 0.0), (6.0, 4.0), (0.0, 4.0))


def _bed(curve: Curve) -> Bed:
    return Bed(id="BD1", curve=curve, outline=curves.outline_of(curve))


@given(points(), lengths(0.1, 40))
def test_a_circle_is_true_to_two_millimetres(centre, radius):
    outline = curves.outline_of(Curve(kind="circle", points=(centre,), radius=radius))
    ring = shapely.LinearRing(outline)
    middle = shapely.Point(centre)
    assert shapely.Polygon(outline).is_valid
    assert ring.distance(middle) >= radius - curves.TOLERANCE - 2e-4
    assert ring.hausdorff_distance(middle) <= radius + 2e-4
    xs = [x for x, _ in outline]
    assert max(xs) - min(xs) == pytest.approx(2 * radius, abs=3e-4)


def test_the_area_of_a_circle_is_pi_r_squared_within_a_percent():
    outline = curves.outline_of(Curve(kind="circle", points=((3.0, 4.0),), radius=1.5))
    assert shapely.Polygon(outline).area == pytest.approx(math.pi * 1.5**2, rel=0.01)


def test_a_smooth_curve_goes_through_its_points_without_a_kink():
    drawn = ((0.0, 0.0), (5.0, -1.0), (8.0, 3.0), (4.0, 6.0), (-1.0, 4.0))
    outline = curves.outline_of(Curve(kind="smooth", points=drawn))
    assert set(drawn) <= set(outline)
    turns = []
    for k, at in enumerate(outline):
        before, after = outline[k - 1], outline[(k + 1) % len(outline)]
        a, b = (math.atan2(q[1] - p[1], q[0] - p[0]) for p, q in ((before, at), (at, after)))
        turns.append(abs(math.remainder(b - a, math.tau)))
    assert max(turns) < math.radians(15)


def test_a_smooth_curve_keeps_to_its_cubics():
    # The chords of the outline lie within the tolerance of the curve sampled a hundred times as finely.
    drawn = [(0.0, 0.0), (5.0, -1.0), (8.0, 3.0), (4.0, 6.0), (-1.0, 4.0)]
    outline = shapely.LinearRing(curves.outline_of(Curve(kind="smooth", points=tuple(drawn))))
    before = curves.TOLERANCE
    try:
        curves.TOLERANCE = before / 1e4
        fine = curves.outline_of(Curve(kind="smooth", points=tuple(drawn)))
    finally:
        curves.TOLERANCE = before
    assert max(outline.distance(shapely.Point(p)) for p in fine) <= before + 2e-4


@given(st.permutations(range(4)), lengths(0.0, 5.0))
def test_any_order_of_points_makes_an_outline(order, radius):
    shuffled = tuple(SQUARE[k] for k in order)
    for kind in ("smooth", "rounded"):
        outline = curves.outline_of(Curve(kind=kind, points=shuffled, radius=radius))
        assert len(outline) >= 3
        assert all(math.isfinite(v) for p in outline for v in p)


def test_rounded_corners_take_off_what_a_circle_leaves():
    outline = curves.outline_of(Curve(kind="rounded", points=SQUARE, radius=1.0))
    # A square corner rounded by r loses r^2 (1 - pi/4).
    assert shapely.Polygon(outline).area == pytest.approx(24 - 4 * (1 - math.pi / 4), abs=0.02)
    assert curves.outline_of(Curve(kind="rounded", points=SQUARE, radius=0.0)) == SQUARE


def test_a_radius_too_large_for_an_edge_is_cut_to_half_of_it():
    outline = curves.outline_of(Curve(kind="rounded", points=SQUARE, radius=50.0))
    assert shapely.Polygon(outline).area == pytest.approx(24 - 4 * 4 * (1 - math.pi / 4), abs=0.05)
    assert curves.largest_radius(SQUARE) == pytest.approx(2.0)


@given(lengths(-50, 50), lengths(-50, 50), lengths(0, 360))
def test_a_curve_moves_and_turns_with_its_outline(dx, dy, turn):
    curve = Curve(kind="smooth", points=((0.0, 0.0), (5.0, -1.0), (8.0, 3.0), (4.0, 6.0)))
    yard = Yard(beds=(_bed(curve),))
    moved = edits.rotate(edits.move(yard, {"BD1"}, (dx, dy)), {"BD1"}, (1.0, 1.0), turn)
    (bed,) = moved.beds
    assert curves.fits(bed.curve, bed.outline)
    expected = [edits.turned((x + dx, y + dy), (1.0, 1.0), turn) for x, y in yard.beds[0].outline]
    assert max(math.dist(a, b) for a, b in zip(bed.outline, expected, strict=True)) < 3e-3


def test_a_grip_of_a_circle_sets_its_radius_and_leaves_its_centre():
    yard = Yard(pavings=(Paving(id="PV1", outline=SQUARE),))
    round_ = edits.set_curve(yard, "PV1", Curve(kind="circle", points=((2.0, 2.0),), radius=1.0))
    (pool,) = edits.move_corner(round_, "PV1", 2, (2.0, 5.0)).pavings
    assert (pool.curve.points, pool.curve.radius) == (((2.0, 2.0),), 3.0)
    assert curves.fits(pool.curve, pool.outline)


def test_the_lot_line_can_be_curved_and_becomes_straight_when_drawn_anew():
    yard = edits.set_curve(Yard(lot=SQUARE), "lot", Curve(kind="rounded", points=SQUARE, radius=1.0))
    assert len(yard.lot) > 20
    moved = edits.move_corner(yard, "lot", 0, (-2.0, -2.0))
    assert moved.lot_curve.points[0] == (-2.0, -2.0)
    assert edits.set_lot(moved, SQUARE).lot_curve is None


def test_points_given_anew_make_a_curve_a_plain_outline():
    bed = _bed(Curve(kind="circle", points=((2.0, 2.0),), radius=1.0))
    assert edits.with_points(bed, SQUARE) == evolve(bed, outline=SQUARE, curve=None)
