"""How long the plants' part of a start and of a drag frame takes (one core)."""

from __future__ import annotations

from typing import Any

from support.builders import plant, yard_of

from yardplan.plants.catalogue import Catalogue, catalogue
from yardplan.plants.standing import moved_stand, stand_of
from yardplan.yard import edits
from yardplan.yard.change import difference
from yardplan.yard.yard import Yard

PLANTS = 500


def orchard() -> Yard:
    kinds = ("apple:Liberty", "european pear:Seckel", "sour cherry:Evans", "northern highbush blueberry:Duke")
    return yard_of(*(plant(f"A{n}", kinds[n % 4], (n % 25, n // 25)) for n in range(PLANTS)))


def test_reading_the_catalogue(benchmark: Any) -> None:
    assert benchmark(Catalogue.load).crops


def test_a_stand_of_500_plants(benchmark: Any) -> None:
    stand = benchmark(stand_of, orchard(), catalogue(), 5)
    assert len(stand.plants) == PLANTS


def test_a_drag_frame_over_500_plants(benchmark: Any) -> None:
    yard = orchard()
    stand = stand_of(yard, catalogue(), 5)
    later = edits.move(yard, {"A7"}, (0.5, 0.5))
    moved = benchmark(moved_stand, stand, later, difference(yard, later))
    assert moved.plants[7].place == later.plantings[7].place


def test_search_while_typing(benchmark: Any) -> None:
    assert benchmark(catalogue().search, "late red apple")
