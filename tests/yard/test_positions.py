"""Where things stand in lists: the same answers as looking through all, also after edits handed tables on."""

from __future__ import annotations

from hypothesis import given
from hypothesis import strategies as st
from support.builders import plant

from yardplan.yard.change import Change, difference
from yardplan.yard.edits import add, change, move, remove
from yardplan.yard.positions import changed_places, chosen, places_of, positions, replaced
from yardplan.yard.yard import Yard

MANY = tuple(plant(f"A{n}", "apple:Liberty", (n * 3.0, 0.0)) for n in range(40))
ids_of = st.sets(st.sampled_from([f"A{n}" for n in range(44)]), max_size=50)


@given(st.integers(0, 40), ids_of)
def test_things_are_found_as_by_looking_through_all(count, ids):
    things = MANY[:count]
    assert chosen(things, ids) == [thing for thing in things if thing.id in ids]
    assert places_of(things, ids) == [n for n, thing in enumerate(things) if thing.id in ids]


def test_the_first_of_two_with_one_id_is_found():
    twice = (*MANY[:20], MANY[3])
    assert positions(twice)["A3"] == 3


@given(st.lists(st.sampled_from(["move", "add", "remove", "alter"]), max_size=6), ids_of)
def test_a_yard_finds_its_things_after_any_edits(steps, ids):
    yard = Yard(plantings=MANY)
    for number, step in enumerate(steps):
        if step == "move":
            yard = move(yard, ids, (1.0, 2.0))
        elif step == "add":
            yard = add(yard, plant(f"B{number}", "apple:Akane", (0.0, 9.0)))
        elif step == "remove":
            yard = remove(yard, {f"A{number}", f"B{number - 1}"})
        else:
            yard = change(yard, ids, note=f"note {number}")
    assert yard.ids() == {thing.id for thing in yard.things()}
    for thing in yard.things():
        assert yard.find(thing.id) is thing
    assert yard.find("A99") is None
    assert yard.named(ids) == [thing for thing in yard.things() if thing.id in ids]


def test_an_id_that_changes_is_not_handed_on():
    positions(MANY)
    renamed = replaced(MANY, {5: plant("C1", "apple:Liberty", (0.0, 0.0))})
    assert places_of(renamed, {"C1"}) == [5]
    assert places_of(renamed, {"A5"}) == []
    assert changed_places(MANY, renamed) is None


@given(ids_of)
def test_differences_of_moves_are_told_by_place(ids):
    before = Yard(plantings=MANY)
    after = move(before, ids, (1.0, 0.0))
    there = frozenset(ids) & before.ids()
    assert difference(before, after) == Change(moved=there)
    assert difference(before, move(after, ids, (-1.0, 0.0))) == Change()
