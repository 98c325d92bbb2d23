"""Grips of curves, dimensions and pictures, by plain events in metres."""

import pytest
from attrs import evolve
from support.hands import click, drag, move, press

from yardplan.window.tools import grips
from yardplan.window.tools.arranging import mirror
from yardplan.window.tools.desk import Desk
from yardplan.window.tools.select import SelectTool
from yardplan.yard import edits, pictures
from yardplan.yard.curves import outline_of
from yardplan.yard.ground import Curve, Dimension, Picture
from yardplan.yard.handles import line_of
from yardplan.yard.planting import Bed
from yardplan.yard.yard import Yard

CIRCLE = Curve(kind="circle", points=((5.0, 5.0),), radius=2.0)
SMOOTH = Curve(kind="smooth", points=((0.0, 0.0), (6.0, 0.0), (6.0, 4.0), (0.0, 4.0)))
SCAN = Picture(id="PC1", base=((0.0, 0.0), (30.0, 0.0)), pixels=(300, 200), data="AAAA")


def _bed(curve: Curve) -> Bed:
    return Bed(id="BD1", curve=curve, outline=outline_of(curve))


@pytest.fixture
def desk(opened):
    desk = Desk(opened(Yard(beds=(_bed(CIRCLE),), pictures=(SCAN,))))
    desk.snapper.on = False
    return desk


def test_a_circle_is_moved_by_its_middle_and_sized_by_its_rim(desk):
    tool = SelectTool(desk)
    drag(tool, (5, 5), (6, 6), (7, 8))
    (bed,) = desk.open_yard.yard.beds
    assert bed.curve.points[0] == pytest.approx((7, 8))
    drag(tool, (9, 8), (9.5, 8), (10, 8))
    (bed,) = desk.open_yard.yard.beds
    assert (bed.curve.radius, bed.curve.points[0]) == (pytest.approx(3.0), pytest.approx((7, 8)))
    assert desk.open_yard.undo_stack.count() == 2


def test_a_point_is_added_to_a_smooth_curve_where_it_runs_and_taken_out_again(opened):
    open_yard = opened(Yard(beds=(_bed(SMOOTH),)))
    open_yard.select({"BD1"})
    at = max(open_yard.yard.beds[0].outline)
    assert at[0] > 6.2
    assert grips.add_corner(open_yard, (at[0] + 0.05, at[1]), 0.2)
    (bed,) = open_yard.yard.beds
    assert len(bed.curve.points) == 5
    assert bed.curve.points[2] == pytest.approx(at, abs=0.06)
    assert grips.remove_corner(open_yard, bed.curve.points[2], 0.2)
    assert open_yard.yard.beds[0].curve == SMOOTH


def test_a_circle_takes_no_more_corners(desk):
    desk.open_yard.select({"BD1"})
    assert not grips.add_corner(desk.open_yard, (7, 5), 0.2)
    assert not grips.remove_corner(desk.open_yard, (7, 5), 0.2)


def test_a_locked_picture_is_bare_ground(desk):
    tool = SelectTool(desk)
    click(tool, (20, 15))
    assert desk.open_yard.selection == {"PC1"}
    desk.open_yard.commit("Lock", edits.change(desk.open_yard.yard, {"PC1"}, locked=True))
    click(tool, (20, 15))
    assert desk.open_yard.selection == frozenset()


def test_a_dimension_is_moved_by_its_line_its_ends_and_its_middle(opened):
    desk = Desk(opened(Yard(dimensions=(Dimension(id="DM1", ends=((0.0, 0.0), (8.0, 0.0)), off=1.0),))))
    desk.snapper.on = False
    tool = SelectTool(desk)
    click(tool, (2, 1))
    assert desk.open_yard.selection == {"DM1"}
    drag(tool, (4, 1), (4, 2), (5, 3))
    (dimension,) = desk.open_yard.yard.dimensions
    assert (dimension.off, dimension.ends) == (pytest.approx(3.0), ((0.0, 0.0), (8.0, 0.0)))
    drag(tool, (8, 0), (8, 1), (8, 6))
    assert desk.open_yard.yard.dimensions[0].ends[1] == pytest.approx((8, 6))


def test_mirroring_keeps_a_picture_upright_and_a_dimension_on_its_side():
    yard = Yard(pictures=(SCAN,), dimensions=(Dimension(id="DM1", ends=((0.0, 0.0), (8.0, 0.0)), off=1.0),))
    for way in ("across", "up"):
        (picture,) = mirror(yard, frozenset({"PC1"}), way).pictures
        assert picture.base == SCAN.base
    turned = evolve(SCAN, base=pictures.turned_to(SCAN, 30.0).base)
    for way in ("across", "up"):
        (picture,) = mirror(Yard(pictures=(turned,)), frozenset({"PC1"}), way).pictures
        assert pictures.turn(picture) == pytest.approx(-30.0)
        assert pictures.middle(picture) == pytest.approx(pictures.middle(turned))
    (dimension,) = mirror(yard, frozenset({"DM1"}), "across").dimensions
    assert dimension.ends == ((8.0, 0.0), (0.0, 0.0))
    assert [y for _, y in line_of(dimension)] == pytest.approx([1.0, 1.0])


def test_the_area_is_told_while_a_corner_is_dragged(opened):
    desk = Desk(opened(Yard(lot=((0.0, 0.0), (10.0, 0.0), (10.0, 10.0), (0.0, 10.0)))))
    desk.open_yard.select({"lot"})
    tool = SelectTool(desk)
    press(tool, (10, 10), alt=True)
    move(tool, (14, 10), alt=True)
    assert "120.0 m²" in [words.text for words in tool.overlay().words]
    assert tool.cancel()
