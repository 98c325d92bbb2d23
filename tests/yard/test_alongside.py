"""Strips alongside fences, buildings and the lot line: their distance, width and side."""

import pytest
import shapely
from support.builders import yard_of

from yardplan.yard import edits
from yardplan.yard.alongside import Along, strip, with_strip
from yardplan.yard.edits import EditError
from yardplan.yard.ground import Barrier, Building

FENCE = Barrier(id="WF1", line=((2.0, 2.0), (12.0, 2.0), (12.0, 8.0)))
HOUSE = Building(id="BL1", footprint=((15.0, 5.0), (15.0, 11.0), (23.0, 11.0), (23.0, 5.0)))
YARD = yard_of(barriers=(FENCE,), buildings=(HOUSE,))


def _one(along: Along) -> shapely.Polygon:
    (outline,) = strip(YARD, along)
    shape = shapely.Polygon(outline)
    assert shape.is_valid
    return shape


def test_a_strip_beside_a_fence_keeps_its_distance_and_width():
    shape = _one(Along(key="WF1", left=True, away=0.3, width=1.2))
    line = shapely.LineString(FENCE.line)
    assert shape.distance(line) == pytest.approx(0.3)
    # Inner side of an angle: 9.7 and 5.7 m long at the fence's side, 8.5 and 4.5 m at the other.
    assert shape.area == pytest.approx((9.7 + 5.7 + 8.5 + 4.5) / 2 * 1.2)
    assert shape.contains(shapely.Point(7, 3))


def test_the_other_side_goes_round_the_corner():
    shape = _one(Along(key="WF1", left=False, away=0.0, width=1.0))
    assert shape.area == pytest.approx(10 + 6 + 1)
    assert shape.contains(shapely.Point(12.9, 1.1))


@pytest.mark.parametrize(
    ("edge", "outside"), [(0, (14.5, 8)), (1, (19, 11.5)), (2, (23.5, 8)), (3, (19, 4.5))]
)
def test_one_side_of_a_house_has_its_strip_outside(edge, outside):
    shape = _one(Along(key="BL1", edge=edge, left=False, away=0.0, width=1.0))
    assert shape.contains(shapely.Point(outside))
    assert shape.area == pytest.approx(6.0 if edge % 2 == 0 else 8.0)


def test_all_round_a_house_is_one_outline_but_for_a_cut():
    shape = _one(Along(key="BL1", left=False, away=0.5, width=1.0))
    assert shape.area == pytest.approx((11 * 9) - (9 * 7), abs=0.01)
    assert shape.distance(shapely.Polygon(HOUSE.footprint)) == pytest.approx(0.5)


def test_within_the_lot_line():
    shape = _one(Along(key="lot", left=True, away=1.0, width=2.0))
    assert shapely.Polygon(YARD.lot).contains(shape)
    assert shape.area == pytest.approx(28 * 18 - 24 * 14, abs=0.01)


def test_no_room_and_wrong_figures_are_told():
    with pytest.raises(EditError, match="no room"):
        strip(YARD, Along(key="BL1", left=True, away=5.0, width=1.0))
    with pytest.raises(EditError, match="width"):
        strip(YARD, Along(key="WF1", width=0.0))
    with pytest.raises(EditError, match="distance"):
        strip(YARD, Along(key="WF1", away=-1.0))


def test_a_path_and_a_bed_get_keys_of_their_own():
    yard, (path,) = with_strip(YARD, Along(key="WF1"), "path")
    yard, (bed,) = with_strip(yard, Along(key="WF1", left=False), "bed")
    assert (path, bed) == ("PV1", "BD1")
    assert yard.find(path).kind == "path"
    assert edits.points_of(yard.find(bed))
