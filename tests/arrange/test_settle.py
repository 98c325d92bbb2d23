"""Settle: fewer conflicts, none new, only what may move, always the same."""

from __future__ import annotations

import math

import numpy as np
import pytest
from attrs import evolve
from hypothesis import given, settings
from hypothesis import strategies as st
from support import grounds
from support.builders import plant, yard_of

from yardplan.arrange.clear_ground import clear_ground
from yardplan.arrange.settle import settle
from yardplan.checks.finding import Finding, Weight
from yardplan.checks.run import findings
from yardplan.checks.survey import Survey, survey_of
from yardplan.yard import edits
from yardplan.yard.ground import Building
from yardplan.yard.planting import Bed, Container, Planting, PlantKey
from yardplan.yard.site import Site, Soil
from yardplan.yard.yard import Yard


def conflicts(survey: Survey) -> list[Finding]:
    return [f for f in findings(survey) if f.weight is Weight.CONFLICT]


def keys(survey: Survey) -> set[tuple[str, tuple[str, ...]]]:
    return {(f.check, f.things) for f in conflicts(survey)}


def alley() -> tuple[Building, ...]:
    """Two houses with a dark alley between them, along y = 11."""
    walls = (("H1", 4.0, 10.0), ("H2", 12.0, 16.0))
    return tuple(
        Building(id=key, footprint=((8, low), (24, low), (24, high), (8, high)), eaves=8, ridge=8)
        for key, low, high in walls
    )


def row_of_apples(*xs: float) -> Yard:
    names = ("Liberty", "Gala", "Empire", "Jonathan")
    return yard_of(*(plant(f"A{n}", f"apple:{names[n - 1]}", (x, 10.0)) for n, x in enumerate(xs, start=1)))


@settings(max_examples=20, deadline=None)
@given(st.integers(0, 10**6))
def test_no_new_conflict_fewer_than_before_and_nothing_else_moved(seed: int) -> None:
    yard = grounds.random_yard(np.random.default_rng(seed))
    done = settle(survey_of(yard))
    before, after = keys(survey_of(yard)), keys(survey_of(done.yard))
    assert after <= before
    assert len(conflicts(survey_of(yard))) - len(done.left) == done.cleared
    assert {(f.check, f.things) for f in done.left} == after
    moved = {move.id for move in done.moves} | {p.container for p in yard.plantings if p.container}
    assert edits.remove(done.yard, moved) == edits.remove(yard, moved)
    assert settle(survey_of(yard)) == done


@settings(max_examples=4, deadline=None)
@given(st.integers(0, 10**6))
def test_with_light_no_conflict_is_new_either(seed: int) -> None:
    yard = grounds.random_yard(np.random.default_rng(seed))
    done = settle(grounds.lit(yard))
    assert keys(grounds.lit(done.yard)) <= keys(grounds.lit(yard))


def test_two_crowns_part_by_no_more_than_is_missing_and_a_hand() -> None:
    yard = row_of_apples(8, 9)
    wanted = 0.75 * survey_of(yard).plants["A1"].mature.spread
    done = settle(survey_of(yard))
    (move,) = done.moves
    assert done.left == ()
    assert move.far == pytest.approx(wanted - 1.0 + 0.1, abs=0.06)


def test_locked_plants_stay_and_with_all_locked_nothing_moves() -> None:
    yard = edits.change(row_of_apples(8, 9), {"A1"}, locked=True)
    done = settle(survey_of(yard))
    assert [move.id for move in done.moves] == ["A2"]
    shut = settle(survey_of(edits.change(yard, {"A2"}, locked=True)))
    assert shut.moves == ()
    assert [f.kind for f in shut.left] == ["overlap"]


def test_a_plant_in_a_locked_pot_stays() -> None:
    pot = Container(id="C1", place=(8, 10), volume=300, locked=True)
    yard = evolve(row_of_apples(8, 9), containers=(pot,))
    yard = edits.change(yard, {"A1"}, container="C1")
    done = settle(survey_of(yard))
    assert {move.id for move in done.moves} == {"A2"}


def test_only_the_plants_named_move() -> None:
    done = settle(survey_of(row_of_apples(8, 9, 20, 21)), {"A3"})
    assert [move.id for move in done.moves] == ["A3"]
    assert [f.things for f in done.left] == [("A1", "A2")]


def test_three_in_a_heap_are_parted() -> None:
    done = settle(survey_of(row_of_apples(8, 8.5, 9)))
    assert done.left == ()
    assert 1 < len(done.moves) <= 3


def test_what_no_place_can_cure_is_left_and_moves_nothing() -> None:
    yard = yard_of(plant("P1", "peach:Redhaven", (10, 10)), site=Site(latitude=52.0, zone="2b"))
    done = settle(survey_of(yard))
    assert done.moves == ()
    assert {f.check for f in done.left} == {"hardiness"}


def test_a_plant_in_the_dark_goes_to_where_the_sun_is() -> None:
    low = plant("P1", "peach:Redhaven", (16, 11), height=1.2, spread=1.0)
    yard = yard_of(low, buildings=alley())
    survey = grounds.lit(yard)
    assert ("light", ("P1",)) in keys(survey)
    done = settle(survey)
    assert done.left == ()
    assert keys(grounds.lit(done.yard)) == set()


def test_places_are_whole_centimetres() -> None:
    done = settle(survey_of(row_of_apples(8, 9)))
    for move in done.moves:
        found = done.yard.find(move.id)
        assert isinstance(found, Planting)
        assert all(math.isclose(v * 100, round(v * 100), abs_tol=1e-6) for v in found.place)


def test_progress_hears_how_many_are_left() -> None:
    told: list[int] = []
    settle(survey_of(row_of_apples(8, 9)), progress=told.append)
    assert told == [1, 0]


def test_a_planted_bed_is_no_place_for_another_plant() -> None:
    """The only ground that could be made acid is the strawberries': the blueberry is not dropped into it."""
    bed = Bed(
        id="D1", outline=((18.0, 6.0), (22.0, 6.0), (22.0, 14.0), (18.0, 14.0)),
        soil=Soil(ph=5.0, drainage="good"), raised=0.3, plant=PlantKey("strawberry", "Honeoye"),
    )
    site = Site(latitude=42.0, longitude=-76.0, zone="5b", soil=Soil(ph=7.6, texture="loam", drainage="good"))
    bush = plant("B1", "northern highbush blueberry:Patriot", (12.0, 10.0))
    yard = yard_of(bush, site=site, beds=(bed,))
    assert settle(survey_of(yard)).moves == ()
    ground = clear_ground(survey_of(yard), bush, light=None)
    assert not ground.holds((20.0, 10.0))
    # Bare, the same bed takes it.
    bare = evolve(yard, beds=(evolve(bed, plant=None),))
    (move,) = settle(survey_of(bare)).moves
    assert 18.0 < move.end[0] < 22.0


def test_a_plant_in_a_bed_of_another_kind_is_moved_out_of_it() -> None:
    bed = Bed(
        id="D1", outline=((8.0, 8.0), (12.0, 8.0), (12.0, 12.0), (8.0, 12.0)),
        plant=PlantKey("strawberry", "Honeoye"),
    )
    yard = yard_of(plant("C1", "red currant:Red Lake", (10.0, 8.5)), beds=(bed,))
    assert keys(survey_of(yard)) == {("spacing", ("C1", "D1"))}
    done = settle(survey_of(yard))
    assert done.left == ()
    assert done.moves[0].end[1] < 8.0
