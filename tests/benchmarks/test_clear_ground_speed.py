"""Clear ground at the pick-up by room, every round told, then with light, then nearest place.

The wall time of the first answer is what a person waits for; light follows beside the gesture. Each plant of
a yard of 150 is picked up once, and so are rows, beds and several plants together; then 100 plants of 500.
"""

from __future__ import annotations

import statistics
import time
from collections.abc import Callable, Iterable
from pathlib import Path
from typing import Any

import pytest
from support.builders import plant, yard_of

from yardplan.arrange.clear_ground import ClearGround, clear_ground
from yardplan.arrange.clear_together import clear_ground_together
from yardplan.checks.survey import Survey, survey_of
from yardplan.files.reading import read_yard
from yardplan.yard.planting import Planting, PlantKey

ORCHARD = Path(__file__).parents[2] / "sample_yards" / "large_orchard.yard"
IN_HAND = Planting(id="in hand", plant=PlantKey("apple", "Liberty"), place=(0.0, 0.0))
VARIETIES = ("apple:Liberty", "apple:Topaz", "european pear:Harrow Delight", "tart cherry:Meteor")
#: Milliseconds from the pick-up to clear ground that can be drawn, at the 95th percentile of 150 plants.
BAR = 100.0


@pytest.fixture(scope="module")
def orchard() -> Survey:
    survey = survey_of(read_yard(ORCHARD))
    clear_ground(survey, IN_HAND, light=None)
    return survey


@pytest.fixture(scope="module")
def large() -> Survey:
    plants = [
        plant(f"A{n}", VARIETIES[n % len(VARIETIES)], (3 + n % 22 * 6.0, 3 + n // 22 * 6.0))
        for n in range(500)
    ]
    survey = survey_of(yard_of(*plants, width=140, depth=142))
    clear_ground(survey, IN_HAND, light=None)
    return survey


def rounds(benchmark: Any, answer: Callable[[Any], ClearGround | None], asked: Iterable[Any]) -> None:
    """Every question once, wall time until there are pieces to draw; median, 95th percentile and most."""
    taken = []
    for one in asked:
        began = time.perf_counter()
        ground = answer(one)
        assert ground is not None
        ground.pieces()
        taken.append((time.perf_counter() - began) * 1e3)
    taken.sort()
    benchmark.extra_info.update(
        rounds=len(taken), median_ms=round(statistics.median(taken), 1),
        p95_ms=round(taken[int(len(taken) * 0.95)], 1), most_ms=round(taken[-1], 1), bar_p95_ms=BAR,
    )
    benchmark.pedantic(answer, (next(iter(asked)),), rounds=1)


def test_picking_up_each_plant_of_150(benchmark: Any, orchard: Survey) -> None:
    rounds(benchmark, lambda one: clear_ground(orchard, one, light=None), orchard.yard.plantings)


def test_picking_up_plants_of_500(benchmark: Any, large: Survey) -> None:
    rounds(benchmark, lambda one: clear_ground(large, one, light=None), large.yard.plantings[::5])


def test_picking_up_rows_and_beds_among_150(benchmark: Any, orchard: Survey) -> None:
    lines = [thing.id for thing in (*orchard.yard.rows, *orchard.yard.beds)]
    rounds(benchmark, lambda one: clear_ground_together(orchard, {one}, light=None), lines)


@pytest.mark.parametrize("count", [2, 5, 10, 20])
def test_picking_up_several_of_150(benchmark: Any, orchard: Survey, count: int) -> None:
    ids = [one.id for one in orchard.yard.plantings]
    groups = [ids[start : start + count] for start in range(0, 100, 20)]
    rounds(benchmark, lambda one: clear_ground_together(orchard, one, light=None), groups)


def test_taking_a_plant_in_hand(benchmark: Any, orchard: Survey) -> None:
    benchmark(clear_ground, orchard, IN_HAND, light=None)


def test_light_while_working_live(benchmark: Any, orchard: Survey) -> None:
    benchmark.pedantic(clear_ground, (orchard, orchard.yard.plantings[3]), {"light": "live"}, rounds=2)


def test_light_at_full_detail(benchmark: Any, orchard: Survey) -> None:
    benchmark.pedantic(clear_ground, (orchard, orchard.yard.plantings[3]), {"light": "full"}, rounds=1)


def test_the_nearest_clear_place(benchmark: Any, orchard: Survey) -> None:
    one = orchard.yard.plantings[3]
    ground = clear_ground(orchard, one, light=None)
    other = orchard.yard.plantings[10].place
    assert benchmark(ground.nearest, other) is not None
