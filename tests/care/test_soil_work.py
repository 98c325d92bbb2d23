import datetime as dt

from support import cares
from support.builders import plant, yard_of

from yardplan.care.soil_work import soil_work
from yardplan.checks.soil_plan import soil_plans
from yardplan.checks.survey import Survey, survey_of
from yardplan.yard.planting import Container
from yardplan.yard.site import Soil


def surveyed(soil: Soil, planted: int | None = 2028) -> Survey:
    return survey_of(yard_of(
        plant("B1", "northern highbush blueberry:Bluecrop", (3, 4), planted=planted),
        plant("B2", "northern highbush blueberry:Bluecrop", (6, 4), planted=planted),
        site=cares.site(soil=soil),
    ))


def test_sulfur_amounts_are_those_of_the_check_and_split_with_a_test_between() -> None:
    survey = surveyed(Soil(ph=6.9, texture="clay loam", drainage="good"))
    steps = soil_work(survey)
    plans = soil_plans(survey)
    assert [step.step for step in steps] == ["sulfur", "retest", "sulfur"]
    assert steps[0].months > steps[2].months == steps[1].months
    assert all(step.things == ("B1", "B2") for step in steps)
    given = sum(step.kilograms[1] for step in steps if step.kilograms)
    assert abs(given - sum(plan.amount.high for plan in plans)) < 1e-9
    assert steps[0].day is not None
    assert steps[0].day < dt.date(2027, 5, 10)


def test_unknown_soil_asks_for_tests_first() -> None:
    steps = soil_work(surveyed(Soil()))
    assert {step.step for step in steps} == {"test", "drain"}
    assert "45 cm" in next(step for step in steps if step.step == "drain").how("metric")


def test_soil_that_fits_needs_no_work() -> None:
    assert soil_work(surveyed(Soil(ph=5.0, texture="loam", drainage="good"))) == ()


def test_limy_ground_gets_a_bed_and_not_sulfur() -> None:
    (bed,) = soil_work(surveyed(Soil(ph=8.3, lime=True, texture="loam", drainage="good"), None))
    assert bed.step == "bed"
    assert bed.litres is not None
    assert bed.day is None
    assert "of fill" in bed.amount("metric")
    assert "cu ft of fill" in bed.amount("imperial")


def test_containers_are_filled_anew() -> None:
    pot = Container(id="K1", place=(3, 4), volume=60, soil=Soil(ph=7.5))
    survey = survey_of(yard_of(
        plant("B1", "northern highbush blueberry:Bluecrop", (3, 4), container="K1"), containers=(pot,),
        site=cares.site(),
    ))
    assert [step.step for step in soil_work(survey)] == ["repot"]
