"""Drawing by corners, rectangles and typed lengths, by plain events in metres."""

import pytest
from support.builders import yard_of
from support.hands import click, drag, move, press

from yardplan.units import UnitError
from yardplan.window.open_yard import InHand
from yardplan.window.tools.barrier import BarrierTool
from yardplan.window.tools.bed import BedTool
from yardplan.window.tools.building import BuildingTool
from yardplan.window.tools.desk import Desk
from yardplan.window.tools.lot import LotTool
from yardplan.window.tools.paving import PavingTool
from yardplan.window.tools.row import RowTool
from yardplan.window.tools.service import ServiceTool
from yardplan.yard.ground import Building
from yardplan.yard.planting import PlantKey
from yardplan.yard.site import Site
from yardplan.yard.yard import Yard


@pytest.fixture
def desk(opened):
    return Desk(opened(Yard()))


def test_a_lot_by_clicked_corners_closes_on_its_first(desk):
    tool = LotTool(desk)
    for corner in ((0, 0), (30, 0), (30, 20), (0, 20), (0, 0)):
        click(tool, corner)
    assert desk.open_yard.yard.lot == ((0, 0), (30, 0), (30, 20), (0, 20))
    assert not tool.busy
    assert desk.open_yard.selection == {"lot"}


def test_a_lot_by_typed_lengths_and_angles(desk):
    tool = LotTool(desk)
    click(tool, (0, 0))
    move(tool, (5, 0), down=False)
    tool.typed("30 m")
    tool.typed("20 m < 90")
    tool.typed("30 < 180")
    assert tool.on_key("enter")
    assert [(round(x, 9), round(y, 9)) for x, y in desk.open_yard.yard.lot] == [
        (0, 0), (30, 0), (30, 20), (0, 20),
    ]


def test_enter_with_too_few_corners_keeps_them_and_says_what_is_missing(desk):
    said = []
    desk.say = said.append
    tool = LotTool(desk)
    click(tool, (0, 0))
    click(tool, (5, 0))
    assert tool.on_key("enter"), "the key is used: it does not go on to the fields"
    assert tool.corners == ((0, 0), (5, 0))
    assert "too few corners" in said[-1]


def test_bearings_count_from_true_north(opened):
    # North of this sheet points to the right of the drawing (90 degrees clockwise from its top).
    desk = Desk(opened(Yard(site=Site(north=90.0))))
    tool = LotTool(desk)
    click(tool, (0, 0))
    tool.typed("10 m < N 0 E")
    assert tool.corners[-1] == pytest.approx((10, 0))
    tool.typed("10 m < N 90 E")
    assert tool.corners[-1] == pytest.approx((10, -10))


def test_quadrant_bearing_with_minutes(desk):
    tool = LotTool(desk)
    click(tool, (0, 0))
    # A surveyor's S 30 degrees 30' W: 210.5 degrees clockwise from north.
    tool.typed("10 m < S 30° 30' W")
    assert tool.corners[-1] == pytest.approx((-5.075384, -8.616292), abs=1e-6)


def test_a_typed_rectangle_goes_towards_the_pointer(desk):
    tool = BuildingTool(desk)
    click(tool, (10, 10))
    move(tool, (8, 12), down=False)
    tool.typed("12' x 8'")
    (house,) = desk.open_yard.yard.buildings
    assert house.name == "House"
    assert house.footprint[2] == pytest.approx((10 - 12 * 0.3048, 10 + 8 * 0.3048))


def test_typed_numbers_win_over_snapping(desk):
    tool = BarrierTool(desk)
    click(tool, (0, 0))
    move(tool, (4.02, 0.01), down=False)
    tool.typed("3.877")
    tool.on_key("enter")
    (fence,) = desk.open_yard.yard.barriers
    assert fence.line[1] == pytest.approx((3.877, 0))


def test_a_dragged_rectangle_makes_a_building(desk):
    drag(BuildingTool(desk), (2, 2), (5, 4), (12, 8))
    (house,) = desk.open_yard.yard.buildings
    assert house.footprint == ((2, 2), (12, 2), (12, 8), (2, 8))


def test_the_second_building_is_no_house(desk):
    tool = BuildingTool(desk)
    drag(tool, (2, 2), (5, 4), (12, 8))
    drag(tool, (15, 2), (16, 4), (18, 5))
    assert [building.name for building in desk.open_yard.yard.buildings] == ["House", "Shed"]


def test_the_overlay_shows_lengths_and_area(desk):
    tool = PavingTool(desk)
    press(tool, (0, 0))
    move(tool, (4, 3))
    texts = [words.text for words in tool.overlay().words]
    assert "4.00 m" in texts
    assert "12.0 m²" in texts


def test_backspace_takes_the_last_corner_back(desk):
    tool = BedTool(desk)
    click(tool, (0, 0))
    click(tool, (3, 0))
    assert tool.on_key("backspace")
    assert tool.corners == ((0, 0),)


def test_escape_drops_the_corners(desk):
    tool = BedTool(desk)
    click(tool, (0, 0))
    assert tool.cancel()
    assert not tool.busy
    assert not tool.cancel()
    assert desk.open_yard.undo_stack.count() == 0


def test_a_line_ends_by_enter(desk):
    tool = ServiceTool(desk)
    click(tool, (0, 0))
    click(tool, (5, 0))
    click(tool, (5, 5))
    assert tool.on_key("enter")
    (pipe,) = desk.open_yard.yard.services
    assert pipe.points == ((0, 0), (5, 0), (5, 5))


@pytest.mark.parametrize(
    ("text", "words"),
    [
        ("nonsense", "not a length"),
        ("0", "more than nothing"),
        ("3 < up", "not an angle"),
        ("4; x", "not a length"),
    ],
)
def test_unreadable_entries_say_what_is_wrong(desk, text, words):
    tool = LotTool(desk)
    click(tool, (0, 0))
    with pytest.raises(UnitError, match=words):
        tool.typed(text)
    assert tool.corners == ((0, 0),)


def test_a_length_before_the_first_corner_is_refused(desk):
    with pytest.raises(UnitError, match="first corner"):
        LotTool(desk).typed("3 m")


def test_the_first_corner_can_be_typed(desk):
    tool = LotTool(desk)
    tool.typed("2; 3.5")
    assert tool.corners == ((2, 3.5),)


def test_a_row_takes_the_plant_in_hand_at_its_usual_distance(opened):
    desk = Desk(opened(yard_of()))
    tool = RowTool(desk)
    assert "Pick a plant" in tool.hint()
    click(tool, (2, 2))
    assert not tool.busy
    desk.open_yard.take_in_hand(InHand(plant=PlantKey("red raspberry", "Nova")))
    click(tool, (2, 2))
    click(tool, (2, 12))
    (row,) = desk.open_yard.yard.rows
    assert row.line == ((2, 2), (2, 12))
    step = tool.step(desk.open_yard.in_hand)
    assert row.spacing == step
    assert (row.count - 1) * step <= 10 < row.count * step + 1e-6


def test_the_hint_says_what_the_next_click_does(desk):
    tool = LotTool(desk)
    assert "first corner" in tool.hint()
    click(tool, (0, 0))
    assert "next corner" in tool.hint()
    click(tool, (5, 0))
    click(tool, (5, 5))
    assert "Enter" in tool.hint()


def test_a_click_sets_the_corner_where_the_pointer_showed_it(opened):
    """The second corner stands square to the first though a house's middle is level with the pointer."""
    house = Building(id="BL1", name="House", footprint=((20, 0), (24, 0), (24, 4.2), (20, 4.2)))
    desk = Desk(opened(yard_of(buildings=(house,))))
    tool = PavingTool(desk)
    tool.typed("2; 2")
    move(tool, (8, 2), down=False)
    shown = tool.here
    assert shown == (8, 2)
    click(tool, (8, 2.1))
    assert tool.corners == ((2, 2), shown)
