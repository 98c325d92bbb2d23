"""Groups: kept in step with their things whatever is done to them."""

from __future__ import annotations

from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from support import strategies
from support.builders import plant, yard_of

from yardplan.yard import edits, groups
from yardplan.yard.planting import Container
from yardplan.yard.yard import Group, Yard

YARD = yard_of(
    plant("A1", "apple:Liberty", (5, 5)), plant("A2", "apple:Enterprise", (10, 5)),
    plant("A3", "apple:Liberty", (15, 5), container="PT1"), plant("A4", "apple:Liberty", (20, 5)),
    containers=(Container(id="PT1", place=(15, 5), volume=45),),
)
TWO = groups.group(YARD, {"A2", "A1"})


def test_a_group_is_made_named_and_ended() -> None:
    assert TWO.groups == (Group(name="Group 1", members=("A1", "A2")),)
    assert groups.group_of(TWO, "A2") == TWO.groups[0]
    assert groups.with_members(TWO, {"A2", "A4"}) == {"A1", "A2", "A4"}
    assert groups.ungroup(TWO, {"A1"}) == YARD
    assert groups.group(YARD, {"A1", "nothing"}) == YARD


def test_grouped_anew_things_leave_their_old_group() -> None:
    again = groups.group(TWO, {"A2", "A4"})
    assert again.groups == (Group(name="Group 1", members=("A2", "A4")),)


def test_names_stay_different() -> None:
    named = groups.rename(groups.group(TWO, {"A3", "A4"}), "Group 2", "Pots")
    assert [group.name for group in named.groups] == ["Group 1", "Pots"]
    assert groups.rename(named, "Pots", "Group 1") == named


def test_a_deleted_member_leaves_and_a_group_of_one_ends() -> None:
    three = groups.group(YARD, {"A1", "A2", "A4"})
    assert edits.remove(three, {"A1"}).groups == (Group(name="Group 1", members=("A2", "A4")),)
    assert edits.remove(three, {"A1", "A4"}).groups == ()


def test_copies_of_a_whole_group_are_a_group_and_of_a_part_are_none() -> None:
    copied, keys = edits.duplicate(TWO, {"A1", "A2"}, (0, 3))
    assert copied.groups[1] == Group(name="Group 2", members=keys)
    assert edits.duplicate(TWO, {"A1"}, (0, 3))[0].groups == TWO.groups


def test_what_is_arranged_as_one() -> None:
    every = frozenset({"A1", "A2", "A4"})
    assert groups.units_of(TWO, every) == [frozenset({"A1", "A2"}), frozenset({"A4"})]
    assert groups.units_of(TWO, frozenset({"A1", "A2"})) == [frozenset({"A1"}), frozenset({"A2"})]
    assert groups.only_whole(TWO, {"A1", "A4"}) == {"A4"}


@given(strategies.yards(most=2, extras="none"), st.data())
@settings(max_examples=40, deadline=None, suppress_health_check=list(HealthCheck))
def test_groups_hold_only_things_that_are_there_each_in_one(yard: Yard, data: st.DataObject) -> None:
    for _ in range(4):
        ids = data.draw(st.sets(st.sampled_from(sorted(yard.ids()) or ["none"])))
        step = data.draw(st.sampled_from(["group", "ungroup", "remove", "copy"]))
        if step == "group":
            yard = groups.group(yard, edits.together(yard, ids))
        elif step == "ungroup":
            yard = groups.ungroup(yard, ids)
        elif step == "remove":
            yard = edits.remove(yard, ids)
        else:
            yard = edits.duplicate(yard, ids & yard.ids(), (1.0, 1.0))[0]
        members = [key for group in yard.groups for key in group.members]
        assert set(members) <= yard.ids()
        assert len(members) == len(set(members))
        assert all(len(group.members) > 1 for group in yard.groups)
        assert len({group.name for group in yard.groups}) == len(yard.groups)
