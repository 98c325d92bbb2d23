"""What differs between two yards."""

from __future__ import annotations

from attrs import evolve
from hypothesis import HealthCheck, given, settings
from support import builders, strategies

from yardplan.yard import edits
from yardplan.yard.change import difference
from yardplan.yard.ground import Note, Service
from yardplan.yard.yard import Yard

YARD = builders.yard_of(
    builders.plant("A1", "apple:Liberty", (1.0, 2.0)), builders.plant("A2", "apple:Liberty", (4.0, 2.0)),
    services=(Service(id="S1", kind="gas", points=((0.0, 0.0), (1.0, 0.0))),),
)


def test_alike_yards_differ_in_nothing() -> None:
    assert difference(YARD, YARD).nothing
    assert difference(YARD, evolve(YARD, plantings=tuple(evolve(p) for p in YARD.plantings))).nothing
    assert not difference(YARD, YARD).only_moves


def test_moves_are_told_from_other_changes() -> None:
    change = difference(YARD, edits.move(YARD, {"A1", "S1"}, (1.0, 0.0)))
    assert change.moved == {"A1", "S1"}
    assert change.only_moves
    assert change.touched == {"A1", "S1"}


def test_a_plant_moved_and_altered_counts_as_altered() -> None:
    yard = edits.change(edits.move(YARD, {"A1"}, (1.0, 0.0)), {"A1"}, planted=2025)
    change = difference(YARD, yard)
    assert change.altered == {"A1"}
    assert not change.moved
    assert not change.only_moves


def test_a_corner_added_to_a_line_is_a_move() -> None:
    longer = evolve(YARD.services[0], points=((0.0, 0.0), (1.0, 0.0), (2.0, 1.0)))
    assert difference(YARD, edits.replace(YARD, longer)).moved == {"S1"}


def test_added_and_removed() -> None:
    change = difference(YARD, edits.remove(YARD, {"A2"}))
    assert change.removed == {"A2"}
    assert not change.only_moves
    back = difference(edits.remove(YARD, {"A2"}), YARD)
    assert back.added == back.touched == {"A2"}


def test_a_key_that_passes_to_another_kind_of_thing_is_removed_and_added() -> None:
    yard = edits.add(edits.remove(YARD, {"A2"}), Note(id="A2", place=(0.0, 0.0), text="here stood a tree"))
    change = difference(YARD, yard)
    assert change.added == {"A2"}
    assert change.removed == {"A2"}


def test_whole_fields_are_named() -> None:
    change = difference(YARD, edits.set_site(edits.set_lot(YARD, ()), zone="4a"))
    assert change.whole == {"site", "lot"}
    assert not change.only_moves


def test_the_order_of_things_alone_is_no_change() -> None:
    assert difference(YARD, evolve(YARD, plantings=YARD.plantings[::-1])).nothing


@given(strategies.yards(most=2), strategies.yards(most=2))
@settings(max_examples=30, deadline=None, suppress_health_check=list(HealthCheck))
def test_going_back_swaps_added_and_removed(one: Yard, two: Yard) -> None:
    there, back = difference(one, two), difference(two, one)
    assert there.added - there.removed == back.removed - back.added
    assert there.altered == back.altered
    assert there.moved == back.moved
    assert there.whole == back.whole
    assert there.nothing == back.nothing


def test_marks_and_prices_are_records_and_nothing_else_is() -> None:
    marked = evolve(YARD, done={"x@apple@2027": "2027-05-01"}, prices={"stake": 4.5}, currency="EUR")
    assert difference(YARD, marked).only_records
    assert not difference(YARD, YARD).only_records
    assert not difference(YARD, evolve(marked, rules={"x": 1.0})).only_records
    assert not difference(YARD, edits.remove(marked, {"A2"})).only_records
