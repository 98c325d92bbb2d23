"""Circles and smooth curves drawn for beds, paving and the lot; dimension lines; a picture set to scale."""

import pytest
from support.hands import click, drag, move, said

from yardplan.units import UnitError
from yardplan.window.tools.bed import BedTool
from yardplan.window.tools.desk import Desk
from yardplan.window.tools.dimension import DimensionTool
from yardplan.window.tools.lot import LotTool
from yardplan.window.tools.paving import PavingTool
from yardplan.window.tools.picture_scale import PictureScaleTool
from yardplan.yard import pictures
from yardplan.yard.curves import fits
from yardplan.yard.ground import Barrier, Curve, Picture
from yardplan.yard.yard import Yard

SCAN = Picture(id="PC1", base=((0.0, 0.0), (30.0, 0.0)), pixels=(300, 200), data="AAAA")


@pytest.fixture
def desk(opened):
    return Desk(opened(Yard()))


def _circle(desk: Desk) -> PavingTool:
    tool = PavingTool(desk)
    tool.take_form("circle")
    return tool


def test_a_circle_by_two_clicks_a_drag_and_a_typed_radius(desk):
    tool = _circle(desk)
    click(tool, (4, 4))
    move(tool, (6, 4), down=False)
    assert any("radius 2.00 m" in words.text for words in tool.overlay().words)
    assert any("12.6 m²" in words.text for words in tool.overlay().words)
    click(tool, (6, 4))
    drag(tool, (10, 4), (11, 4), (13, 4))
    tool.typed("20; 4")
    tool.typed("1.37 m")
    found = [paving.curve for paving in desk.open_yard.yard.pavings]
    assert [(c.points[0], round(c.radius, 9)) for c in found] == [((4, 4), 2), ((10, 4), 3), ((20, 4), 1.37)]
    assert desk.open_yard.undo_stack.count() == 3


def test_a_circle_backs_out_and_refuses_what_cannot_be_meant(desk):
    tool = _circle(desk)
    with pytest.raises(UnitError, match="middle"):
        tool.typed("2 m")
    click(tool, (4, 4))
    with pytest.raises(UnitError, match="one radius"):
        tool.typed("2 x 3")
    assert tool.cancel()
    assert not tool.busy
    assert desk.open_yard.yard == Yard()


def test_a_smooth_bed_goes_through_its_points_and_tells_its_area(desk):
    tool = BedTool(desk)
    tool.take_form("smooth")
    for place in ((0, 0), (6, 0), (6, 4), (0, 4)):
        click(tool, place)
    overlay = tool.overlay()
    assert overlay.strokes[0].look == "curve"
    assert "m²" in overlay.words[0].text
    click(tool, (0, 0))
    (bed,) = desk.open_yard.yard.beds
    assert bed.curve == Curve(kind="smooth", points=((0, 0), (6, 0), (6, 4), (0, 4)))
    assert fits(bed.curve, bed.outline)
    assert len(bed.outline) > 20


def test_the_form_changes_in_the_middle_of_drawing(desk):
    tool = LotTool(desk)
    click(tool, (0, 0))
    tool.take_form()
    click(tool, (10, 0))
    click(tool, (10, 10))
    assert tool.on_key("enter")
    assert desk.open_yard.yard.lot_curve.kind == "smooth"
    tool.take_form("corners")
    drag(tool, (0, 0), (5, 5), (20, 10))
    assert desk.open_yard.yard.lot_curve is None
    assert len(desk.open_yard.yard.lot) == 4


def test_a_dimension_line_by_three_clicks_snaps_to_corners(opened):
    fence = Barrier(id="WF1", line=((1.03, 2.0), (9.47, 2.0)))
    desk = Desk(opened(Yard(barriers=(fence,))))
    heard = said(desk)
    tool = DimensionTool(desk)
    click(tool, (1.1, 2.1))
    click(tool, (9.4, 2.05))
    click(tool, (5, 3.5))
    (dimension,) = desk.open_yard.yard.dimensions
    assert dimension.ends == ((1.03, 2.0), (9.47, 2.0))
    assert dimension.off == pytest.approx(1.5)
    assert heard == ["Dimension line of 8.44 m"]


def test_a_dimension_line_is_typed(desk):
    tool = DimensionTool(desk)
    with pytest.raises(UnitError, match="begins"):
        tool.typed("3 m")
    tool.typed("1; 1")
    tool.typed("5 m < 90")
    tool.typed("0.4 m")
    tool.typed("0; 0")
    tool.typed("3; 0")
    assert tool.on_key("enter")
    first, second = desk.open_yard.yard.dimensions
    assert (first.ends, first.off) == (((1, 1), (1, 6)), 0.4)
    assert (second.ends, second.off) == (((0, 0), (3, 0)), 0.0)
    tool.typed("0; 0")
    assert tool.cancel()
    assert not tool.cancel()


def test_a_picture_is_set_to_scale_by_two_clicks_and_a_typed_distance(opened):
    desk = Desk(opened(Yard(pictures=(SCAN,))))
    asked = []
    desk.open_entry = lambda: asked.append(True)
    tool = PictureScaleTool(desk)
    with pytest.raises(UnitError, match="First click"):
        tool.typed("20 m")
    click(tool, (3, 4))
    click(tool, (9, 12))
    assert asked == [True]
    with pytest.raises(UnitError, match="not one distance"):
        tool.typed("2 x 3")
    with pytest.raises(UnitError, match="unit"):
        tool.typed("9 km")
    tool.typed("82' 0.252\"")
    assert tool.done
    (picture,) = desk.open_yard.yard.pictures
    assert pictures.size(picture)[0] == pytest.approx(75.0, abs=0.01)
    assert desk.open_yard.undo_stack.count() == 1


def test_a_locked_picture_or_none_is_told(opened):
    locked = Picture(id="PC1", base=SCAN.base, pixels=SCAN.pixels, data="AAAA", locked=True)
    for yard, word in ((Yard(pictures=(locked,)), "locked"), (Yard(), "no picture")):
        tool = PictureScaleTool(Desk(opened(yard)))
        click(tool, (3, 4))
        assert not tool.busy
        assert word in tool.hint()
