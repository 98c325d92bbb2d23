"""Why ground is closed, in words."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from support import grounds
from support.builders import plant, yard_of

from yardplan.arrange.clear_ground import clear_ground
from yardplan.arrange.closed_words import why
from yardplan.checks.survey import survey_of
from yardplan.checks.wording import names_of
from yardplan.units import System
from yardplan.yard.ground import Point


def words(place: Point) -> str:
    yard = yard_of(plant("A1", "apple:Liberty", (5, 10)), plant("A2", "apple:Gala", (15, 10)))
    ground = clear_ground(survey_of(yard), yard.plantings[0], light=None)
    return why(ground, place, names_of(yard), "metric")


def test_what_closes_a_place_and_how_far_off_is_clear() -> None:
    assert words((14, 10)).startswith("Closed here: too close to Gala (A2) (")
    assert words((14, 10)).endswith("m more would do)")


def test_open_ground_needs_no_words() -> None:
    assert words((5, 10)) == ""


def test_outside_the_lot_is_said() -> None:
    assert words((-1, 10)) == "Closed here: outside the lot line (1.0 m more would do)"


@pytest.mark.parametrize(("units", "least"), [("metric", "0.1 m"), ("imperial", "1 in")])
def test_how_far_off_is_never_told_as_nothing_nor_as_less_than_does(units: System, least: str) -> None:
    yard = yard_of(plant("A1", "apple:Liberty", (5, 10)), plant("A2", "apple:Gala", (15, 10)))
    ground = clear_ground(survey_of(yard), yard.plantings[0], light=None)
    (disc,) = [one.geometry for one in ground.closed if one.things == ("A2",)]
    edge = disc.bounds[0]
    names = names_of(yard)
    assert f"({least} more would do)" in why(ground, (edge + 0.002, 10), names, units)
    assert "(0.4 m more would do)" in why(ground, (edge + 0.32, 10), names, "metric")


@settings(max_examples=25, deadline=None)
@given(st.integers(0, 10**6))
def test_every_reason_has_words_without_holes(seed: int) -> None:
    rng = np.random.default_rng(seed)
    yard = grounds.random_yard(rng)
    ground = clear_ground(survey_of(yard), yard.plantings[0], light="live")
    names = names_of(yard)
    for closed in ground.closed:
        at = closed.geometry.representative_point()
        said = why(ground, (at.x, at.y), names, "imperial")
        assert said.startswith("Closed here: ")
        assert not set("{}") & set(said)
        assert "nan" not in said


def test_many_reasons_are_cut_short() -> None:
    crowd = [plant(f"A{n}", "apple:Liberty", (10, 10)) for n in range(1, 7)]
    yard = yard_of(*crowd)
    ground = clear_ground(survey_of(yard), crowd[0], light=None)
    said = why(ground, (10, 10), names_of(yard), "metric")
    assert said.count("too close") == 3
    assert said.endswith("and 2 more")


@pytest.mark.parametrize("system", ["metric", "imperial"])
def test_distances_come_in_the_readers_units(system: str) -> None:
    yard = yard_of(plant("A1", "apple:Liberty", (5, 10)), plant("A2", "apple:Gala", (15, 10)))
    ground = clear_ground(survey_of(yard), yard.plantings[0], light=None)
    said = why(ground, (15, 10.5), names_of(yard), system)
    assert (" ft " in said or " in " in said) == (system == "imperial")
