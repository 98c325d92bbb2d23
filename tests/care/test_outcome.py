"""What comes of a plan, counted: the sums are those of the parts it is made of."""

from __future__ import annotations

import pytest
from attrs import evolve
from support.builders import plant, yard_of

from yardplan.care.outcome import outcome_of
from yardplan.checks.finding import Weight
from yardplan.plants.catalogue import catalogue
from yardplan.yard.ground import Building
from yardplan.yard.planting import PlantKey, Row
from yardplan.yard.yard import Yard


def two_apples(gap: float) -> Yard:
    """Two apples of different kinds on dwarfing stock, so far apart, in the open."""
    return yard_of(
        plant("A1", "apple:Liberty", (10, 10), rootstock="M9"),
        plant("A2", "apple:Egremont Russet", (10 + gap, 10), rootstock="M9"),
    )


def test_plants_are_counted_by_kind_with_those_of_rows() -> None:
    canes = PlantKey("red raspberry", "Latham")
    row = Row(id="R1", plant=canes, line=((2, 2), (8, 2)), count=12, spacing=0.5)
    made = outcome_of(evolve(two_apples(6.0), rows=(row,)), catalogue(), None)
    assert made.plants == {"red raspberry": 12, "apple": 2}
    assert list(made.plants) == ["red raspberry", "apple"]
    assert made.lines > 0
    assert made.total is None


def test_crowding_is_counted_as_a_conflict_of_its_check() -> None:
    near, far = (outcome_of(two_apples(gap), catalogue(), None) for gap in (1.0, 6.0))
    assert near.findings[Weight.CONFLICT, "spacing"] == 1
    assert (Weight.CONFLICT, "spacing") not in far.findings
    assert sum(near.findings.values()) == len(near.found)


def test_sun_and_fruit_count_every_plant_once() -> None:
    shut_in = tuple(
        Building(id=f"BL{n}", footprint=((x, y), (x + w, y), (x + w, y + d), (x, y + d)), eaves=9, ridge=9)
        for n, (x, y, w, d) in enumerate(((7, 7, 0.5, 6), (12, 7, 0.5, 6), (7, 7, 5, 0.5), (7, 12.5, 5, 0.5)))
    )
    plain, dark = two_apples(6.0), evolve(two_apples(6.0), buildings=shut_in)
    open_, walled = outcome_of(plain, catalogue(), None), outcome_of(dark, catalogue(), None)
    assert open_.sun == {"best": 2, "enough": 0, "under": 0, "far under": 0}
    assert walled.sun["far under"] == 1
    assert sum(walled.sun.values()) == 2
    assert sum(open_.fruit.values()) == 2
    alone = outcome_of(evolve(plain, plantings=plain.plantings[:1]), catalogue(), None)
    assert alone.fruit == {"none": 1}


def test_work_can_be_stopped_and_tells_how_far_it_is() -> None:
    heard: list[float] = []

    class Enough(Exception):
        pass

    def listen(share: float) -> None:
        heard.append(share)
        if share > 0.3:
            raise Enough

    with pytest.raises(Enough):
        outcome_of(two_apples(6.0), catalogue(), None, listen)
    assert heard == sorted(heard)
    assert all(0 <= share <= 1 for share in heard)
