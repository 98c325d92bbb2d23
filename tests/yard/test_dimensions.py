"""Dimension lines follow what they measure: corners, edges, centres, the lot line."""

import pytest
from attrs import evolve
from support.builders import plant, yard_of

from yardplan.yard import edits
from yardplan.yard.dimensions import followed, hung_on
from yardplan.yard.edges import set_length
from yardplan.yard.ground import Barrier, Building, Dimension

HOUSE = Building(id="BL1", name="House", footprint=((10.0, 10.0), (18.0, 10.0), (18.0, 16.0), (10.0, 16.0)))
FENCE = Barrier(id="WF1", name="Fence", line=((0.0, 4.0), (20.0, 4.0)))
#: From the middle of the house's south wall square down to the fence, and between two trees.
ACROSS = Dimension(id="DM1", ends=((14.0, 10.0), (14.0, 4.0)))
TREES = Dimension(id="DM2", ends=((5.0, 20.0), (9.0, 20.0)), off=1.0)
CORNER = Dimension(id="DM3", ends=((0.0, 0.0), (10.0, 10.0)))


def yard():
    return yard_of(
        plant("A1", "apple:Liberty", (5.0, 20.0)), plant("A2", "apple:Liberty", (9.0, 20.0)),
        buildings=(HOUSE,), barriers=(FENCE,), dimensions=(ACROSS, TREES, CORNER),
    )


def lines(before, after):
    return {line.id: line.ends for line in followed(before, after).dimensions}


def test_an_end_on_an_edge_goes_with_the_wall_and_the_other_stays():
    before = yard()
    found = lines(before, edits.move(before, {"BL1"}, (1.0, 2.0)))
    # The wall went up: its end goes along with that place of the wall; the fence's end stays on the fence.
    assert found["DM1"] == ((15.0, 12.0), (14.0, 4.0))
    assert found["DM3"] == ((0.0, 0.0), (11.0, 12.0))
    assert found["DM2"] == TREES.ends


def test_a_wall_that_slides_or_grows_along_itself_keeps_the_end_where_it_is():
    before = yard()
    assert lines(before, edits.move(before, {"BL1"}, (1.5, 0.0)))["DM1"] == ACROSS.ends
    assert lines(before, set_length(before, "BL1", 0, 9.0))["DM1"] == ACROSS.ends


def test_the_distance_between_trees_is_told_after_one_was_moved_or_turned():
    before = yard()
    assert lines(before, edits.move(before, {"A2"}, (3.0, 0.0)))["DM2"] == ((5.0, 20.0), (12.0, 20.0))
    turned = lines(before, edits.rotate(before, {"A2"}, (5.0, 20.0), 90.0))["DM2"]
    assert turned[1] == pytest.approx((5.0, 24.0))


def test_a_corner_of_the_lot_takes_its_end_along_and_a_corner_shared_holds_it():
    before = yard()
    after = edits.move_corner(before, "lot", before.lot.index((0.0, 0.0)), (-1.0, -2.0))
    assert lines(before, after)["DM3"][0] == (-1.0, -2.0)
    shared = edits.add(before, Barrier(id="WF2", name="Wall", line=((0.0, 0.0), (0.0, 8.0))))
    assert lines(shared, edits.move(shared, {"WF2"}, (2.0, 0.0)))["DM3"][0] == (0.0, 0.0)


def test_what_the_edit_did_to_a_line_itself_stands_and_a_locked_line_stays():
    before = yard()
    both = edits.move(before, {"BL1", "DM1"}, (0.0, 2.0))
    assert lines(before, both)["DM1"] == ((14.0, 12.0), (14.0, 6.0))
    locked = edits.replace(before, evolve(ACROSS, locked=True))
    assert lines(locked, edits.move(locked, {"BL1"}, (0.0, 2.0)))["DM1"] == ACROSS.ends
    gone = edits.remove(before, {"BL1"})
    assert followed(before, gone) is gone


def test_which_lines_hang_on_what():
    before = yard()
    assert hung_on(before, {"BL1"}) == {"DM1", "DM3"}
    assert hung_on(before, {"A1"}) == {"DM2"}
    assert hung_on(before, {"lot"}) == {"DM3"}
    assert hung_on(yard_of(), {"BL1"}) == frozenset()
