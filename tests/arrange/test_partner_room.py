"""Partners that find clear ground, near the plant they are for or anywhere."""

from attrs import evolve
from support.builders import plant, yard_of
from support.orchards import site

from yardplan.arrange.partner_plan import plan_for
from yardplan.arrange.partner_room import fitting
from yardplan.arrange.partners import partners_for
from yardplan.checks.survey import survey_of
from yardplan.yard.ground import Building
from yardplan.yard.planting import PlantKey
from yardplan.yard.yard import Yard

GALA = PlantKey("apple", "Gala")


def walled(gap: float) -> Yard:
    """A lone apple on a lot with a house that leaves a strip `gap` metres wide along one side."""
    house = Building(id="H1", footprint=((0.0, 12.0), (30.0, 12.0), (30.0, 20.0), (0.0, 20.0)))
    lot = ((0.0, 12.0 - gap), (30.0, 12.0 - gap), (30.0, 20.0), (0.0, 20.0))
    alone = plant("A1", "apple:Empire", (15.0, 12.0 - gap / 2), rootstock="M9")
    return evolve(yard_of(alone, buildings=(house,), site=site()), lot=lot)


def test_an_open_yard_has_room_and_a_narrow_strip_has_none() -> None:
    assert fitting(survey_of(walled(12.0)))(GALA)
    assert fitting(survey_of(walled(12.0)), ("A1",))(GALA)
    assert not fitting(survey_of(walled(0.6)), ("A1",))(GALA)


def test_room_far_from_the_plant_does_not_count_for_it() -> None:
    yard = evolve(walled(0.6), lot=((0.0, 11.4), (30.0, 11.4), (30.0, 20.0), (200.0, 20.0), (200.0, 60.0),
                                    (30.0, 60.0), (30.0, 20.0), (0.0, 20.0)))
    survey = survey_of(yard)
    assert fitting(survey)(GALA)
    local = {f"pollen-best-apple-{size}": 5.0 for size in ("dwarf", "semi-dwarf", "standard")}
    near = survey_of(evolve(yard, rules=local))
    assert not fitting(near, ("A1",))(GALA)


def test_the_finder_leaves_out_what_has_no_room() -> None:
    survey = survey_of(walled(0.6))
    assert partners_for(survey, "A1")
    assert partners_for(survey, "A1", fits=fitting(survey, ("A1",))) == []
    plan = plan_for(survey, fits=fitting(survey))
    assert plan.additions == ()
    assert plan.left == ("A1",)
    roomy = survey_of(walled(12.0))
    assert partners_for(roomy, "A1", fits=fitting(roomy, ("A1",)))
    assert len(plan_for(roomy, fits=fitting(roomy)).additions) == 1
