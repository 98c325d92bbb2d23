"""Fillings stay inside; roofs and rows by geometry."""

import math

import pytest
import shapely
from hypothesis import assume, given
from hypothesis import strategies as st

from yardplan.drawing.patterns import (
    along,
    area,
    hatch,
    hatch_between,
    inset,
    line_length,
    longest_direction,
    steady,
    stipple,
)
from yardplan.drawing.roofs import roof_plan
from yardplan.drawing.rows import band_outline, bed_places, row_places, run_of
from yardplan.yard.ground import Building
from yardplan.yard.planting import Bed, PlantKey, Row

ELL = ((0.0, 0.0), (8.0, 0.0), (8.0, 3.0), (3.0, 3.0), (3.0, 6.0), (0.0, 6.0))
HOUSE = ((0.0, 0.0), (10.0, 0.0), (10.0, 6.0), (0.0, 6.0))


@given(st.floats(0, 180), st.floats(0.2, 2.0))
def test_hatch_stays_inside_and_fills_evenly(degrees, gap):
    lines = hatch(ELL, degrees, gap)
    grown = area(ELL).buffer(1e-6)
    assert all(grown.covers(shapely.LineString(line)) for line in lines)
    # Lines `gap` apart have about area / gap of length.
    total = sum(math.dist(a, b) for a, b in lines)
    assert total == pytest.approx(area(ELL).area / gap, rel=0.35, abs=4.0)


@given(
    st.lists(st.tuples(st.floats(-5, 5), st.floats(-5, 5)), min_size=3, max_size=9),
    st.floats(0, 180), st.floats(0.2, 2.0),
)
def test_lines_cut_at_a_bulging_outline_are_those_that_shapely_cuts(points, degrees, gap):
    hull = shapely.MultiPoint(points).convex_hull
    assume(hull.geom_type == "Polygon" and hull.area > 0.1)
    ours = shapely.MultiLineString(list(hatch(tuple(hull.exterior.coords[:-1]), degrees, gap)))
    angle = math.radians(degrees)
    along, across = (math.cos(angle), math.sin(angle)), (-math.sin(angle), math.cos(angle))
    # A line that lies along an edge is neither inside nor outside.
    steps = [(x * across[0] + y * across[1]) / gap for x, y in hull.exterior.coords]
    assume(all(abs(step - round(step)) > 1e-9 for step in steps))
    parallels = shapely.MultiLineString([
        [tuple(step * gap * q + end * p for p, q in zip(along, across, strict=True)) for end in (-20, 20)]
        for step in range(-math.ceil(15 / gap), math.ceil(15 / gap) + 1)
    ])
    assert ours.length == pytest.approx(parallels.intersection(hull).length, abs=1e-6)
    assert ours.difference(hull.buffer(1e-6)).is_empty


# Never along the rim: whether a line on the rim itself is drawn is a matter of taste.
@given(st.floats(1, 89), st.floats(0.2, 2.0), st.floats(0.3, 2.5))
def test_lines_of_a_piece_with_holes_leave_the_holes_free(degrees, gap, radius):
    rim = ((0.0, 0.0), (12.0, 0.0), (12.0, 6.0), (0.0, 6.0))
    holes = [tuple(shapely.Point(x, 3.0).buffer(radius).exterior.coords[:-1]) for x in (3.0, 9.0)]
    lines = shapely.MultiLineString(hatch_between((rim, *holes), degrees, gap).tolist())
    whole = shapely.MultiLineString(list(hatch(rim, degrees, gap)))
    piece = shapely.Polygon(rim, holes)
    assert lines.length == pytest.approx(whole.intersection(piece).length, abs=0.01)
    assert lines.difference(piece.buffer(1e-6)).is_empty


def test_fillings_too_fine_to_see_are_left_out():
    assert hatch(HOUSE, 45, 1e-6) == ()
    assert not len(hatch_between((HOUSE,), 45, 1e-6))
    assert stipple(HOUSE, 1e-4) == ()


def test_stipple_stays_off_the_edge_and_holds_still():
    dots = stipple(ELL, 0.3, 0.2)
    assert dots
    assert all(area(ELL).exterior.distance(shapely.Point(dot)) >= 0.2 - 1e-6 for dot in dots)
    assert dots == stipple(tuple(ELL), 0.3, 0.2)


@given(st.floats(1e-3, 100))
def test_steady_gap_is_never_finer_and_at_most_half_coarser(gap):
    assert gap <= steady(gap) * (1 + 1e-9)
    assert steady(gap) <= gap * math.sqrt(2) * (1 + 1e-9)


def test_inset_and_direction():
    (inner,) = inset(HOUSE, 1.0)
    assert area(inner).area == pytest.approx(8 * 4)
    assert longest_direction(HOUSE) == pytest.approx(0.0)
    assert longest_direction(tuple((y, x) for x, y in HOUSE)) == pytest.approx(90.0)


@pytest.mark.parametrize("roof", ["flat", "gable", "hip", "lean-to"])
def test_roof_planes_cover_the_footprint(roof):
    plan = roof_plan(Building(id="B1", footprint=HOUSE, eaves=3, ridge=5, roof=roof))
    union = shapely.union_all([area(plane.outline) for plane in plan.planes])
    assert union.area == pytest.approx(60.0)
    assert sum(area(plane.outline).area for plane in plan.planes) == pytest.approx(60.0)


def test_gable_ridge_runs_along_the_longer_side_and_water_away_from_it():
    plan = roof_plan(Building(id="B1", footprint=HOUSE, roof="gable"))
    ((start, end),) = plan.ridges
    assert {round(start[1], 6), round(end[1], 6)} == {3.0}
    for plane in plan.planes:
        middle = area(plane.outline).centroid
        assert plane.falls == pytest.approx(90.0 if middle.y > 3 else -90.0)


def test_hip_ridge_is_shorter_by_the_width():
    plan = roof_plan(Building(id="B1", footprint=HOUSE, roof="hip"))
    ((start, end),) = plan.ridges
    assert math.dist(start, end) == pytest.approx(10.0 - 6.0)
    assert len(plan.hips) == 4
    # Equal pitch: each hip runs at 45 degrees in plan.
    for corner, top in plan.hips:
        assert abs(corner[0] - top[0]) == pytest.approx(abs(corner[1] - top[1]))


def test_lean_to_high_edge_lies_left_of_its_direction():
    plan = roof_plan(Building(id="B1", footprint=HOUSE, roof="lean-to", ridge_angle=0.0))
    ((start, end),) = plan.ridges
    assert start[1] == end[1] == 6.0
    assert plan.planes[0].falls == pytest.approx(-90.0)


def test_an_ell_with_a_gable_keeps_its_ridge_inside():
    plan = roof_plan(Building(id="B1", footprint=ELL, roof="gable"))
    assert all(area(ELL).buffer(1e-6).covers(shapely.LineString(r)) for r in plan.ridges)


def test_row_plants_stand_at_their_spacing_round_a_corner():
    line = ((0.0, 0.0), (2.0, 0.0), (2.0, 5.0))
    places = [place for place, _ in row_places(line, 5, 1.0)]
    assert places == [(0, 0), (1, 0), (2, 0), pytest.approx((2, 1)), pytest.approx((2, 2))]
    row = Row(id="R1", plant=PlantKey("grape", "Marquette"), line=line, count=5, spacing=1.0)
    assert line_length(run_of(row)) == pytest.approx(4.0)
    assert along(line, 2.5) == ((2.0, 0.5), pytest.approx(math.pi / 2))


def test_band_covers_the_width():
    assert area(band_outline(((0.0, 0.0), (4.0, 0.0)), 1.0)).area == pytest.approx(5.0)
    assert band_outline(((0.0, 0.0),), 1.0) == ()


@pytest.mark.parametrize("pattern", ["square", "triangular", "rows"])
def test_bed_plants_stand_inside_at_their_spacing(pattern):
    bed = Bed(id="K1", outline=HOUSE, plant=PlantKey("strawberry", "Honeoye"), spacing=0.5, pattern=pattern)
    places = bed_places(bed)
    assert len(places) > 150
    inner = area(HOUSE).buffer(-0.249)
    assert all(inner.covers(shapely.Point(place)) for place in places)
    tree = shapely.STRtree(shapely.points(places))
    pairs = tree.query(shapely.points(places), predicate="dwithin", distance=0.499)
    assert (pairs[0] == pairs[1]).all()


def test_a_bed_without_spacing_is_not_guessed():
    assert bed_places(Bed(id="K1", outline=HOUSE, plant=PlantKey("strawberry", "Honeoye"))) == ()
