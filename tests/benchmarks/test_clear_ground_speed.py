"""Clear ground in a yard of 150 plants: at the pick-up by room, then with light, then nearest place.

The wall time of the first answer is what a person waits for; light follows beside the gesture.
"""

from __future__ import annotations

from pathlib import Path
from typing import Any

import pytest

from yardplan.arrange.clear_ground import clear_ground
from yardplan.checks.survey import Survey, survey_of
from yardplan.files.reading import read_yard
from yardplan.yard.planting import Planting, PlantKey

ORCHARD = Path(__file__).parents[2] / "sample_yards" / "large_orchard.yard"
IN_HAND = Planting(id="in hand", plant=PlantKey("apple", "Liberty"), place=(0.0, 0.0))


@pytest.fixture(scope="module")
def orchard() -> Survey:
    survey = survey_of(read_yard(ORCHARD))
    clear_ground(survey, IN_HAND, light=None)
    return survey


def test_picking_up_a_plant_of_the_plan(benchmark: Any, orchard: Survey) -> None:
    plant = orchard.yard.plantings[3]
    benchmark(clear_ground, orchard, plant, light=None)
    benchmark.extra_info["plants"] = len(orchard.stand.plants)


def test_taking_a_plant_in_hand(benchmark: Any, orchard: Survey) -> None:
    benchmark(clear_ground, orchard, IN_HAND, light=None)


def test_light_while_working_live(benchmark: Any, orchard: Survey) -> None:
    benchmark.pedantic(clear_ground, (orchard, orchard.yard.plantings[3]), {"light": "live"}, rounds=2)


def test_light_at_full_detail(benchmark: Any, orchard: Survey) -> None:
    benchmark.pedantic(clear_ground, (orchard, orchard.yard.plantings[3]), {"light": "full"}, rounds=1)


def test_the_nearest_clear_place(benchmark: Any, orchard: Survey) -> None:
    plant = orchard.yard.plantings[3]
    ground = clear_ground(orchard, plant, light=None)
    other = orchard.yard.plantings[10].place
    assert benchmark(ground.nearest, other) is not None
