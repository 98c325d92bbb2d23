"""Light taken from a neighbour by reversed shadows, against rays cast one by one."""

from __future__ import annotations

from typing import Any, get_args

import numpy as np
import pytest
from attrs import evolve
from hypothesis import given, settings
from hypothesis import strategies as st
from support.builders import plant, yard_of

from yardplan.checks.survey import survey_of
from yardplan.plants.crop import Habit
from yardplan.sun.grid import Grid
from yardplan.sun.light import light_report
from yardplan.sun.places import PlaceLight, counted, neighbours, open_hours, plant_about
from yardplan.sun.reversed import taken_at, taken_by
from yardplan.sun.scene import plant_casters, scene_of
from yardplan.yard import edits
from yardplan.yard.planting import PlantKey, Row
from yardplan.yard.site import Site
from yardplan.yard.yard import Yard


def yard_with(slope: float = 0.0) -> Yard:
    """A peach, a row and another tree beside a mover."""
    site = Site(name="Yard", latitude=45.0, longitude=0.0, north=20.0, slope=slope, slope_aspect=150.0)
    row = Row(
        id="R1", plant=PlantKey("red raspberry", "Latham"), line=((4, 14), (12, 14)), count=12, spacing=0.6
    )
    return yard_of(
        plant("M1", "apple:Bramley's Seedling", (1, 1)), plant("P1", "peach:Redhaven", (10, 8)),
        plant("A2", "apple:Liberty", (15, 12)), rows=(row,), site=site,
    )


def taken_and_seen(
    yard: Yard, place: tuple[float, float], habit: Habit, *, cast: bool = False
) -> tuple[Any, Any]:
    """Hours left to P1 and R1 with M1 at a place: by reversed shadows (or cast rays), and by a report."""
    here = edits.move(yard, {"M1"}, (place[0] - 1, place[1] - 1))
    stand = survey_of(here).stand
    shaped = tuple(
        evolve(p, size=evolve(p.size, habit=habit, depth=0.6), mature=evolve(p.mature, habit=habit))
        if p.id == "M1" else p
        for p in stand.plants
    )
    mover = shaped[0]
    report = light_report(scene_of(here, evolve(stand, plants=shaped)), "live", cell=20.0)
    scene = scene_of(here, evolve(stand, plants=shaped[1:]))
    own = plant_casters(evolve(mover, place=(0.0, 0.0)), here.site, scene.gradient)
    grid = Grid(place[0] - 0.5, place[1] - 0.5, 1.0, 1, 1)
    found = neighbours(scene, ["P1", "R1"], counted(scene, "live"), "live")
    left = [
        one.hours - float(
            taken_at(own, one.rays, np.array([place]), scene.gradient)[0] if cast
            else taken_by(own, one.rays, grid, scene.gradient)[0, 0]
        ) for one in found
    ]
    return np.array(left), np.array([report.plants["P1"].hours, report.rows["R1"].hours])


@settings(max_examples=60, deadline=None)
@given(
    st.floats(4, 16), st.floats(2, 16),
    st.sampled_from([habit for habit in get_args(Habit)]),
)
def test_what_is_left_to_a_neighbour_is_what_a_light_report_tells(x: float, y: float, habit: Habit) -> None:
    left, seen = taken_and_seen(yard_with(), (x, y), habit)
    assert left == pytest.approx(seen, abs=1e-9)


@pytest.mark.parametrize("habit", get_args(Habit))
def test_a_caster_that_stands_aside_of_what_moves_takes_what_it_takes_there(habit: Habit) -> None:
    """Of things that move together each crown stands where it is seen from their anchor."""
    yard = yard_with(0.1)
    mover = survey_of(yard).stand.plants[0]
    shaped = evolve(mover, size=evolve(mover.size, habit=habit, depth=0.6))
    scene = scene_of(yard, evolve(survey_of(yard).stand, plants=survey_of(yard).stand.plants[1:]))
    (one,) = neighbours(scene, ["P1"], counted(scene, "live"), "live")
    taken = [
        taken_by(
            plant_casters(evolve(shaped, place=place), yard.site, scene.gradient), one.rays,
            Grid(x, y, 0.5, 6, 6), scene.gradient,
        )
        for place, x, y in (((0.0, 0.0), 8.0, 5.0), ((3.0, -2.0), 5.0, 7.0))
    ]
    assert taken[0].max() > 0.5
    assert taken[1] == pytest.approx(taken[0], abs=1e-9)


@settings(max_examples=30, deadline=None)
@given(st.floats(4, 16), st.floats(2, 16), st.floats(0.01, 0.3))
def test_round_crowns_are_exact_on_a_slope_too(x: float, y: float, slope: float) -> None:
    left, seen = taken_and_seen(yard_with(slope), (x, y), "bush")
    assert left == pytest.approx(seen, abs=1e-9)


@settings(max_examples=40, deadline=None)
@given(
    st.floats(4, 16), st.floats(2, 16), st.floats(0.01, 0.3),
    st.sampled_from(["central leader", "open centre", "cane", "clump", "bush"]),
)
def test_rays_cast_one_by_one_are_exact_on_any_slope(x: float, y: float, slope: float, habit: Habit) -> None:
    left, seen = taken_and_seen(yard_with(slope), (x, y), habit, cast=True)
    assert left == pytest.approx(seen, abs=1e-9)


@settings(max_examples=20, deadline=None)
@given(st.floats(0, 20), st.floats(0, 18))
def test_a_plants_own_light_anywhere_is_what_a_light_report_tells(x: float, y: float) -> None:
    yard = yard_with()
    here = edits.move(yard, {"M1"}, (x - 1, y - 1))
    survey = survey_of(here)
    report = light_report(scene_of(here, survey.stand), "live", cell=20.0)
    scene = scene_of(yard, evolve(survey.stand, plants=survey.stand.plants[1:]))
    light = PlaceLight(scene, plant_about(scene, survey.plants["M1"], "live"), counted(scene, "live"), "live")
    assert light.hours(np.array([[x, y]]))[0] == pytest.approx(report.plants["M1"].hours, abs=1e-9)


def test_alone_in_the_open_a_plant_gets_all_hours() -> None:
    yard = yard_of(plant("M1", "apple:Liberty", (1, 1)))
    survey = survey_of(yard)
    scene = scene_of(evolve(yard, plantings=()), evolve(survey.stand, plants=()))
    setting = counted(scene, "live")
    light = PlaceLight(scene, plant_about(scene, survey.plants["M1"], "live"), setting, "live")
    assert light.hours(np.array([[5.0, 5.0]]))[0] == pytest.approx(open_hours(setting))
