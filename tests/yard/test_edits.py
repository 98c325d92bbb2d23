"""Edits: yard in, yard out; ids unique; what belongs together moves together; undo gives the start."""

from __future__ import annotations

import contextlib

import pytest
from attrs import evolve
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from hypothesis.stateful import RuleBasedStateMachine, initialize, invariant, precondition, rule
from support import builders, strategies

from yardplan.files.reading import yard_from_json
from yardplan.files.writing import yard_to_json
from yardplan.yard import edges, edits, groups, variants
from yardplan.yard.change import difference
from yardplan.yard.ground import Building, Note
from yardplan.yard.planting import Bed, Container, Row
from yardplan.yard.yard import COLLECTIONS, LIST_OF, Yard, field_names, list_name

POT = Container(id="C1", place=(5.0, 5.0), volume=60.0)
BED = Bed(id="B1", outline=((0.0, 0.0), (2.0, 0.0), (2.0, 1.0), (0.0, 1.0)))
HOUSE = Building(id="H1", footprint=((10.0, 0.0), (20.0, 0.0), (20.0, 8.0), (10.0, 8.0)), ridge_angle=0.0)
YARD = builders.yard_of(
    builders.plant("A1", "apple:Liberty", (1.0, 2.0), facing=350.0),
    builders.plant("A2", "fig:Chicago Hardy", (5.0, 5.0), container="C1"),
    builders.plant("A3", "apple:Liberty", (8.0, 2.0)),
    containers=(POT,), beds=(BED,), buildings=(HOUSE,),
)


def test_moving_a_pot_moves_the_plant_in_it_and_the_other_way_round() -> None:
    for ids in ({"C1"}, {"A2"}, {"C1", "A2"}):
        moved = edits.move(YARD, ids, (1.0, -1.0))
        assert moved.containers[0].place == moved.plantings[1].place == (6.0, 4.0)
        assert moved.plantings[0] is YARD.plantings[0]


def test_two_plants_in_one_pot_stay_together() -> None:
    yard = edits.add(YARD, builders.plant("A4", "fig:Celeste", (5.1, 5.0), container="C1"))
    moved = edits.move(yard, {"A4"}, (1.0, 0.0))
    assert moved.containers[0].place == (6.0, 5.0)
    assert moved.plantings[1].place == (6.0, 5.0)


def test_moving_nothing_is_the_same_yard() -> None:
    assert edits.move(YARD, set(), (1.0, 1.0)) is YARD
    assert edits.move(YARD, {"nobody"}, (1.0, 1.0)) is YARD


def test_a_key_cannot_be_given_twice_not_even_in_one_go() -> None:
    with pytest.raises(edits.EditError, match="A1 is taken"):
        edits.add(YARD, builders.plant("A1", "apple:Liberty", (0.0, 0.0)))
    with pytest.raises(edits.EditError, match="Z1 is taken"):
        edits.add(YARD, Note(id="Z1", place=(0.0, 0.0), text="a"), Note(id="Z1", place=(0.0, 0.0), text="b"))


def test_removing_a_pot_leaves_its_plant_in_the_ground() -> None:
    yard = edits.remove(YARD, {"C1"})
    assert yard.containers == ()
    assert yard.plantings[1].container is None
    assert yard.plantings[0] is YARD.plantings[0]


def test_removing_keeps_the_order_of_the_rest() -> None:
    assert [p.id for p in edits.remove(YARD, {"A2"}).plantings] == ["A1", "A3"]


def test_turning_a_quarter_four_times_is_home_again() -> None:
    yard = YARD
    for _ in range(4):
        yard = edits.rotate(yard, {"A1", "B1", "H1"}, (3.0, 3.0), 90.0)
    assert yard.plantings[0].place == pytest.approx((1.0, 2.0))
    assert yard.plantings[0].facing == pytest.approx(350.0)
    assert yard.buildings[0].ridge_angle == pytest.approx(0.0)
    for corner, start in zip(yard.beds[0].outline, BED.outline, strict=True):
        assert corner == pytest.approx(start)


def test_turning_is_counter_clockwise_and_turns_facing_and_ridge() -> None:
    yard = edits.rotate(YARD, {"A1", "H1"}, (0.0, 0.0), 90.0)
    assert yard.plantings[0].place == pytest.approx((-2.0, 1.0))
    assert yard.plantings[0].facing == pytest.approx(80.0)
    assert yard.buildings[0].ridge_angle == pytest.approx(90.0)


def test_one_corner_moves_alone() -> None:
    yard = edits.move_corner(YARD, "B1", 2, (3.0, 2.0))
    assert yard.beds[0].outline == ((0.0, 0.0), (2.0, 0.0), (3.0, 2.0), (0.0, 1.0))
    lot = edits.move_corner(YARD, "lot", 0, (-1.0, -1.0)).lot
    assert lot[0] == (-1.0, -1.0)
    assert lot[1:] == YARD.lot[1:]


@pytest.mark.parametrize(("thing", "index"), [("B1", 4), ("B1", -1), ("lot", 4), ("A1", 1)])
def test_a_corner_that_is_not_there_is_said(thing: str, index: int) -> None:
    with pytest.raises(edits.EditError, match="there is no corner"):
        edits.move_corner(YARD, thing, index, (0.0, 0.0))


def test_copies_get_free_keys_and_stay_in_their_own_pot() -> None:
    yard, keys = edits.duplicate(YARD, {"A2"}, (1.0, 0.0))
    assert set(keys) == {"A4", "C2"}
    plant, pot = yard.find("A4"), yard.find("C2")
    assert plant.container == "C2"  # type: ignore[union-attr]
    assert plant.place == pot.place == (6.0, 5.0)  # type: ignore[union-attr]
    assert yard.plantings[:3] == YARD.plantings


def test_a_plant_pasted_without_its_pot_stands_in_the_ground() -> None:
    yard, (key,) = edits.paste(YARD, [YARD.plantings[1]], (0.0, 0.0))
    assert yard.find(key).container is None  # type: ignore[union-attr]


def test_pasting_into_an_empty_yard_keeps_letters() -> None:
    yard, keys = edits.paste(Yard(), [*YARD.plantings, POT], (0.0, 0.0))
    assert keys == ("A1", "A2", "A3", "C1")
    assert yard.plantings[1].container == "C1"


def test_keys_count_up_and_fill_gaps() -> None:
    assert edits.next_key(YARD, "A") == "A4"
    assert edits.next_key(edits.remove(YARD, {"A2"}), "A") == "A2"
    assert edits.key_letter("AB12") == "AB"
    assert edits.key_letter("12") == "12"


def test_change_and_replace_touch_only_the_things_named() -> None:
    yard = edits.change(YARD, {"A1", "A3"}, planted=2025)
    assert [p.planted for p in yard.plantings] == [2025, None, 2025]
    assert edits.replace(YARD, evolve(BED, depth=0.5)).beds[0].depth == 0.5
    assert edits.replace(YARD, evolve(BED, id="B9")) is YARD


def test_site_and_lot() -> None:
    assert edits.set_site(YARD, zone="6b").site.zone == "6b"
    assert edits.set_lot(YARD, [(0, 0), (1, 0), (1, 1)]).lot == ((0.0, 0.0), (1.0, 0.0), (1.0, 1.0))


def test_the_pot_of_a_plant() -> None:
    assert edits.vessel_of(YARD, YARD.plantings[1]) == POT
    assert edits.vessel_of(YARD, YARD.plantings[0]) is None


def test_every_kind_has_a_list_and_points() -> None:
    assert {LIST_OF[kind] for kind in COLLECTIONS.values()} == set(COLLECTIONS)
    assert list_name(POT) == "containers"
    assert field_names(Row)[:3] == ("id", "plant", "line")


@given(strategies.yards(most=2), st.data())
@settings(max_examples=40, deadline=None, suppress_health_check=list(HealthCheck))
def test_moving_there_and_back_touches_only_what_moves(yard: Yard, data: st.DataObject) -> None:
    ids = data.draw(st.sets(st.sampled_from(sorted(yard.ids())))) if yard.ids() else set()
    moved = edits.move(yard, ids, (3.0, -4.0))
    seen = difference(yard, moved)
    assert seen.touched == seen.moved == edits.together(yard, ids)
    home = edits.move(moved, ids, (-3.0, 4.0))
    for thing in home.things():
        start = edits.points_of(yard.find(thing.id))  # type: ignore[arg-type]
        for point, was in zip(edits.points_of(thing), start, strict=True):
            assert point == pytest.approx(was, abs=1e-9)


class EditingAYard(RuleBasedStateMachine):
    """Random edits with undo and redo by keeping the yards, as the window does; a save in between."""

    @initialize(yard=strategies.yards(most=1))
    def start(self, yard: Yard) -> None:
        self.past: list[Yard] = []
        self.future: list[Yard] = []
        self.first = self.yard = yard

    def do(self, yard: Yard) -> None:
        if not difference(self.yard, yard).nothing:
            self.past.append(self.yard)
            self.future = []
            self.yard = yard

    def some(self, data: st.DataObject) -> set[str]:
        ids = sorted(self.yard.ids())
        return data.draw(st.sets(st.sampled_from(ids), max_size=3)) if ids else set()

    @rule(data=st.data(), name=st.sampled_from(sorted(strategies.THINGS)))
    def add(self, data: st.DataObject, name: str) -> None:
        thing = data.draw(strategies.THINGS[name])
        self.do(edits.add(self.yard, evolve(thing, id=edits.next_key(self.yard, "N"))))

    @rule(data=st.data(), offset=strategies.points(-5, 5))
    def move(self, data: st.DataObject, offset: tuple[float, float]) -> None:
        self.do(edits.move(self.yard, self.some(data), offset))

    @rule(data=st.data(), about=strategies.points(-5, 5), degrees=st.floats(-180, 180))
    def rotate(self, data: st.DataObject, about: tuple[float, float], degrees: float) -> None:
        self.do(edits.rotate(self.yard, self.some(data), about, degrees))

    @rule(data=st.data())
    def remove(self, data: st.DataObject) -> None:
        self.do(edits.remove(self.yard, self.some(data)))

    @rule(data=st.data())
    def duplicate(self, data: st.DataObject) -> None:
        self.do(edits.duplicate(self.yard, self.some(data), (1.0, 1.0))[0])

    @rule(data=st.data(), locked=st.booleans())
    def lock(self, data: st.DataObject, locked: bool) -> None:
        self.do(edits.change(self.yard, self.some(data), locked=locked))

    @rule(data=st.data(), apart=st.booleans())
    def group(self, data: st.DataObject, apart: bool) -> None:
        ids = edits.together(self.yard, self.some(data))
        self.do(groups.ungroup(self.yard, ids) if apart else groups.group(self.yard, ids))

    @rule(data=st.data(), edge=st.integers(0, 3), length=st.floats(-1, 30))
    def type_over_an_edge(self, data: st.DataObject, edge: int, length: float) -> None:
        for key in sorted(self.some(data)) or ["lot"]:
            with contextlib.suppress(edits.EditError):
                self.do(edges.set_length(self.yard, key, edge, length))

    @rule(name=st.sampled_from(["one", "two"]))
    def keep_or_open_a_variant(self, name: str) -> None:
        known = variants.find(self.yard, name) is not None
        self.do(variants.opened(self.yard, name) if known else variants.keep(self.yard, name, "2026-11-25"))

    @rule(lot=strategies.rectangles())
    def draw_lot(self, lot: tuple[tuple[float, float], ...]) -> None:
        self.do(edits.set_lot(self.yard, lot))

    @precondition(lambda self: self.past)
    @rule()
    def undo(self) -> None:
        self.future.append(self.yard)
        self.yard = self.past.pop()

    @precondition(lambda self: self.future)
    @rule()
    def redo(self) -> None:
        self.past.append(self.yard)
        self.yard = self.future.pop()

    @rule()
    def save_and_open(self) -> None:
        assert yard_from_json(yard_to_json(self.yard)) == self.yard

    @invariant()
    def keys_are_unique_and_pots_are_there(self) -> None:
        ids = [thing.id for thing in self.yard.things()]
        assert len(ids) == len(set(ids))
        vessels = {c.id for c in self.yard.containers}
        assert all(p.container is None or p.container in vessels for p in self.yard.plantings)
        members = [key for group in self.yard.groups for key in group.members]
        assert len(members) == len(set(members))
        assert set(members) <= set(ids)

    def teardown(self) -> None:
        if hasattr(self, "past"):
            assert ([*self.past, self.yard])[0] == self.first


EditingAYard.TestCase.settings = settings(
    max_examples=200, stateful_step_count=8, deadline=None, suppress_health_check=list(HealthCheck)
)
TestEditingAYard = EditingAYard.TestCase
