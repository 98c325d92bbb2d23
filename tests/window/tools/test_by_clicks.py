"""What a drag does, done by clicks and by typing: turning, moving corners, moving and copying."""

import pytest
from support.builders import plant, yard_of
from support.hands import click, move, said

from yardplan.units import UnitError
from yardplan.window.tools.band import BandTool
from yardplan.window.tools.carry import CarryTool
from yardplan.window.tools.desk import Desk
from yardplan.window.tools.event import Pointer
from yardplan.window.tools.select import SelectTool
from yardplan.yard.ground import Building

HOUSE = Building(id="BL1", name="House", footprint=((20, 12), (28, 12), (28, 18), (20, 18)), eaves=3, ridge=3)


@pytest.fixture
def desk(opened):
    made = Desk(opened(yard_of(plant("A1", "apple:Liberty", (5, 5)), buildings=(HOUSE,))))
    made.snapper.on = False
    made.open_yard.select({"BL1"})
    return made


@pytest.fixture
def tool(desk):
    return SelectTool(desk)


def corners(desk):
    return desk.open_yard.shown_yard.buildings[0].footprint


def turn_grip(tool):
    return next(handle for handle in tool.overlay().handles if handle.round).place


def test_a_corner_clicked_follows_the_pointer_until_the_next_click(desk, tool):
    click(tool, (28, 18))
    assert tool.busy
    assert tool.takes_lengths
    assert "Click where the corner" in tool.hint()
    move(tool, (29, 19), down=False)
    assert corners(desk)[2] == (29, 19)
    assert desk.open_yard.undo_stack.count() == 0
    click(tool, (29.5, 19))
    assert corners(desk)[2] == (29.5, 19)
    assert not tool.busy
    assert desk.open_yard.undo_stack.undoText() == "Move corner of House"


@pytest.mark.parametrize(("typed", "place"), [
    ("29; 19.5", (29, 19.5)), ("2 < 90", (28, 20)), ("1.5", (29.5, 18)), ("5' 3\"", (28 + 1.6002, 18)),
])
def test_a_corner_goes_where_it_is_typed(desk, tool, typed, place):
    click(tool, (28, 18))
    move(tool, (29, 18), down=False)
    tool.typed(typed)
    assert corners(desk)[2] == pytest.approx(place)
    assert not tool.busy
    assert desk.open_yard.undo_stack.count() == 1


def test_turning_by_clicks_and_by_typed_degrees(desk, tool):
    heard = said(desk)
    click(tool, turn_grip(tool))
    click(tool, (18, 15))
    turned = [(round(x, 6), round(y, 6)) for x, y in corners(desk)]
    assert sorted(turned) == [(21, 11), (21, 19), (27, 11), (27, 19)]
    click(tool, turn_grip(tool))
    with pytest.raises(UnitError, match="no number of degrees"):
        tool.typed("a bit")
    assert tool.busy
    tool.typed("-90°")
    assert [(round(x, 6), round(y, 6)) for x, y in corners(desk)] == list(HOUSE.footprint)
    assert [words.split(";")[0] for words in heard] == ["Turned by 90 degrees", "Turned by 90 degrees"]


def test_escape_a_double_click_and_undo_drop_what_is_held(desk, tool):
    click(tool, (28, 18))
    move(tool, (29, 19), down=False)
    assert tool.cancel()
    assert corners(desk) == HOUSE.footprint
    click(tool, (28, 18))
    move(tool, (29, 19), down=False)
    tool.double(Pointer(kind="double", place=(28, 18)))
    assert not desk.open_yard.on_trial
    click(tool, (28, 18))
    click(tool, (29, 19))
    click(tool, (29, 19))
    move(tool, (30, 20), down=False)
    desk.open_yard.undo_stack.undo()
    move(tool, (31, 20), down=False)
    assert not tool.busy
    assert not desk.open_yard.on_trial
    assert corners(desk) == HOUSE.footprint
    with pytest.raises(UnitError, match="Nothing is being moved"):
        tool.typed("3; 3")


def test_moving_and_copying_by_two_clicks(desk):
    desk.open_yard.select({"A1"})
    carry = CarryTool(desk)
    click(carry, (8, 9), ctrl=True)
    assert [p.place for p in desk.open_yard.yard.plantings] == [(5, 5), (8, 9)]
    assert desk.open_yard.selection == {"A2"}
    carry = CarryTool(desk)
    move(carry, (9, 9), down=False)
    desk.open_yard.undo_stack.undo()
    click(carry, (12, 9))
    assert carry.done
    assert [p.place for p in desk.open_yard.yard.plantings] == [(5, 5)]


def test_typed_numbers_win_over_snapping(desk, tool):
    desk.snapper.on = True
    click(tool, (28, 18))
    # On the way to a corner of the lot, which would draw a pointer to itself.
    move(tool, (29.9, 19.9), down=False)
    assert desk.snapped.kind == "corner"
    tool.typed("29.93; 19.97")
    assert corners(desk)[2] == (29.93, 19.97)


def test_alt_suspends_snapping_and_what_was_met_is_told_by_form_and_word(desk, tool):
    desk.snapper.on = True
    event = Pointer(kind="move", place=(29.9, 19.9))
    assert desk.snap(event) == (30, 20)
    assert desk.snapped.kind == "corner"
    assert desk.snap(Pointer(kind="move", place=(29.9, 19.9), alt=True)) == (29.9, 19.9)
    assert desk.snapped.kind == "none"


def test_an_area_by_two_clicks_selects_what_lies_wholly_inside(desk):
    heard = said(desk)
    band = BandTool(desk)
    assert "Click one corner" in band.hint()
    click(band, (1, 1))
    assert band.busy
    assert "opposite corner" in band.hint()
    move(band, (24, 15), down=False)
    assert desk.open_yard.selection == {"A1"}
    (stroke,) = band.overlay().strokes
    assert stroke.look == "band"
    assert [words.text for words in band.overlay().words] == ["23.00 m", "14.00 m"]
    click(band, (29, 19))
    assert band.done
    assert desk.open_yard.selection == {"A1", "BL1"}
    assert heard == ["2 things selected"]
    band = BandTool(desk)
    click(band, (10, 1))
    click(band, (12, 2))
    assert desk.open_yard.selection == frozenset()
    assert heard[-1] == "Nothing lies wholly inside"


@pytest.mark.parametrize("second", ["8; 7", "4 m x 3 m"])
def test_an_area_by_typed_corners(desk, second):
    band = BandTool(desk)
    with pytest.raises(UnitError, match="place of a corner"):
        band.typed("4 m x 3 m")
    band.typed("4; 4")
    with pytest.raises(UnitError, match="place of a corner"):
        band.typed("3 m")
    assert band.busy
    band.typed(second)
    assert band.done
    assert desk.open_yard.selection == {"A1"}


def test_an_area_typed_by_its_size_lies_towards_the_pointer(desk):
    band = BandTool(desk)
    click(band, (6, 6))
    move(band, (5.5, 5.5), down=False)
    band.typed("2 m x 2 m")
    assert desk.open_yard.selection == {"A1"}


def test_shift_adds_an_area_and_escape_gives_back_what_was_selected(desk):
    band = BandTool(desk)
    click(band, (1, 1), shift=True)
    click(band, (9, 9))
    assert desk.open_yard.selection == {"A1", "BL1"}
    band = BandTool(desk)
    click(band, (10, 10))
    assert desk.open_yard.selection == frozenset()
    assert band.cancel()
    assert desk.open_yard.selection == {"A1", "BL1"}
    assert not band.cancel()
