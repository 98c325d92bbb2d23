import datetime as dt

import pytest
from attrs import evolve
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from support import cares, strategies
from support.builders import plant, yard_of

from yardplan.care.season import Season, bloom_for, whole_months
from yardplan.care.tasks import BY_MONTH, care_plan, day_words
from yardplan.checks.survey import survey_of
from yardplan.yard.planting import Container
from yardplan.yard.site import Soil
from yardplan.yard.yard import Yard


def rows(yard: Yard, year: int = 2027) -> set[str]:
    return {task.row for task in cares.plan(yard, year).tasks}


def test_every_task_touches_the_year_and_ends_after_it_begins() -> None:
    plan = cares.plan(cares.orchard(cares.site()))
    assert len(plan.tasks) > 60
    for task in plan.tasks:
        assert task.start <= task.end
        assert task.start.year <= 2027 <= task.end.year
        assert task.things
        assert task.sources


def test_tasks_over_new_year_are_one_task_in_both_calendars() -> None:
    yard = cares.orchard(cares.site())
    this, after = cares.plan(yard, 2027), cares.plan(yard, 2028)
    (late,) = [task for task in cares.tasks(this, "bb-mummy") if task.start.year == 2027]
    assert late.end == dt.date(2028, 1, 31)
    assert late in after.tasks


def test_ids_stay_and_differ() -> None:
    yard = cares.orchard(cares.site())
    plan, again = cares.plan(yard), cares.plan(yard)
    ids = [task.id for task in plan.tasks]
    assert ids == [task.id for task in again.tasks]
    assert len(set(ids)) == len(ids)
    warmer = cares.plan(cares.orchard(cares.site(last_frost="04-20")))
    assert set(ids) & {task.id for task in warmer.tasks} > set(ids[:20])


def test_prune_by_form() -> None:
    leader = yard_of(plant("A1", "apple:Idared", (3, 4), form="central leader", planted=2020))
    flat = yard_of(plant("A1", "apple:Idared", (3, 4), form="espalier", planted=2020))
    assert "apple-prune-leader" in rows(leader)
    assert "apple-prune-flat" not in rows(leader)
    assert "apple-prune-flat" in rows(flat)
    assert "apple-prune-leader" not in rows(flat)


def test_canes_by_the_wood_they_fruit_on() -> None:
    old = yard_of(plant("R1", "red raspberry:Latham", (3, 4), planted=2020))
    new = yard_of(plant("R1", "red raspberry:Heritage", (3, 4), planted=2020))
    assert "rasp-f-cut" in rows(old)
    assert "rasp-p-mow" not in rows(old)
    assert "rasp-p-mow" in rows(new)
    assert "rasp-f-cut" not in rows(new)


def test_age_decides() -> None:
    young = rows(yard_of(plant("A1", "apple:Idared", (3, 4), planted=2027)))
    old = rows(yard_of(plant("A1", "apple:Idared", (3, 4), planted=2015)))
    assert {"plant-bare", "first-fruit-off", "water-young"} <= young
    assert not {"apple-thin", "apple-store", "water-bearing"} & young
    assert {"apple-thin", "apple-store", "water-bearing"} <= old
    assert not {"plant-bare", "first-fruit-off", "water-young"} & old


def test_before_planting_there_is_no_work() -> None:
    yard = yard_of(plant("A1", "apple:Idared", (3, 4), planted=2030))
    assert not [task for task in cares.plan(yard, 2027).tasks if task.season <= 2028]


def test_unknown_planting_year_says_for_which_years_work_is() -> None:
    plan = cares.plan(yard_of(plant("A1", "apple:Idared", (3, 4)), site=cares.site()))
    said = {row: cares.tasks(plan, row)[0].ages for row in (
        "plant-bare", "water-young", "spread-limbs", "water-bearing", "apple-thin", "mulch-tree",
    )}
    assert said == {
        "plant-bare": "planting year", "water-young": "years 1 to 3", "spread-limbs": "years 1 to 4",
        "water-bearing": "from year 4", "apple-thin": "from year 3", "mulch-tree": "",
    }
    assert cares.tasks(plan, "water-young")[0].heading == "Water young trees (years 1 to 3)"
    assert plan.by_years


def test_known_planting_year_says_no_years() -> None:
    plan = cares.plan(cares.orchard(cares.site()))
    assert not plan.by_years
    assert all(task.heading == task.title for task in plan.tasks)


@pytest.mark.parametrize("order", [(0, 1), (1, 0)])
def test_beside_a_planted_tree_the_years_name_the_tree_they_are_said_of(order: tuple[int, int]) -> None:
    trees = (plant("A1", "apple:Idared", (3, 4), planted=2015), plant("A2", "apple:Idared", (9, 4)))
    yard = Yard(site=cares.site(), plantings=tuple(trees[number] for number in order))
    plan = cares.plan(yard)
    (old,) = cares.tasks(plan, "water-bearing")
    assert set(old.things) == {"A1", "A2"}
    assert old.ages == "A2: from year 4"
    (young,) = cares.tasks(plan, "water-young")
    assert (young.things, young.ages) == (("A2",), "years 1 to 3")
    many = tuple(plant(f"B{number}", "apple:Idared", (3 * number, 9)) for number in range(9))
    (old,) = cares.tasks(cares.plan(evolve(yard, plantings=yard.plantings + many)), "water-bearing")
    assert old.ages == "from year 4 where no planting year is given"


@pytest.mark.parametrize(("ph", "wanted"), [(6.2, True), (4.9, False), (None, False), (8.3, False)])
def test_sulfur_twice_a_year_only_where_the_soil_needs_it(ph: float | None, wanted: bool) -> None:
    yard = cares.orchard(cares.site(soil=Soil(ph=ph, texture="loam")))
    assert ({"bb-acid-1", "bb-acid-2"} <= rows(yard)) is wanted


def test_pots_get_winter_quarters_and_no_trunk_guards() -> None:
    pot = Container(id="K1", place=(3, 4), volume=60)
    yard = yard_of(
        plant("A1", "apple:Idared", (3, 4), container="K1", planted=2024), containers=(pot,),
        site=cares.site(),
    )
    assert {"pot-in", "pot-out", "pot-water", "pot-feed"} <= rows(yard)
    assert not {"guard-on", "mulch-tree", "plant-bare"} & rows(yard)
    assert "pot-repot" not in rows(yard, 2024)
    assert "pot-repot" in rows(yard, 2026)
    warm = evolve(yard, site=cares.site(zone="10a"))
    assert "pot-in" not in rows(warm)


def test_resistant_kinds_get_no_scab_cover() -> None:
    assert "apple-scab" not in rows(yard_of(plant("A1", "apple:Liberty", (3, 4), planted=2020)))
    assert "apple-scab" in rows(yard_of(plant("A1", "apple:McIntosh", (3, 4), planted=2020)))


def test_male_kiwis_bear_nothing() -> None:
    assert "kiwi-harvest" not in rows(yard_of(plant("K1", "hardy kiwi:Meader Male", (3, 4), planted=2015)))
    assert "kiwi-harvest" in rows(yard_of(plant("K1", "hardy kiwi:Ananasnaya", (3, 4), planted=2015)))


def test_without_climate_tasks_fill_whole_months_and_say_so() -> None:
    plan = cares.plan(cares.orchard(cares.bare()))
    assert plan.by_month
    (thin,) = [task for task in cares.tasks(plan, "apple-thin") if task.season == 2027]
    assert thin.basis == BY_MONTH
    assert thin.start.day == 1
    assert whole_months(thin.start, thin.end) == (thin.start, thin.end)
    assert not cares.plan(cares.orchard(cares.site())).by_month


def test_mild_winters_are_given_no_dates_of_a_cool_place() -> None:
    mild = cares.site(latitude=27.0, monthly_means=tuple(mean + 12 for mean in cares.MEANS), zone="9b")
    plan = cares.plan(cares.orchard(mild))
    assert "peach" in plan.undated
    assert not cares.tasks(plan, "peach-thin")
    assert not [task for task in plan.tasks if task.spray]


def test_leap_years() -> None:
    leap = cares.plan(cares.orchard(cares.site()), 2028)
    found = [task for task in cares.tasks(leap, "sanitation") if task.season == 2028]
    guard = next(task for task in found if task.crop == "apple")
    assert (guard.start, guard.end) == (dt.date(2028, 1, 1), dt.date(2028, 3, 1))
    frost = cares.site(last_frost="02-29")
    for year, day in ((2028, dt.date(2028, 3, 1)), (2027, dt.date(2027, 3, 1))):
        season = Season(frost, year, bloom_for(cares.orchard(frost)))
        assert season.last_frost.first == day


def test_south_is_north_half_a_year_later() -> None:
    north = {task.id: task for task in cares.plan(cares.orchard(cares.site()), 2027).tasks}
    south = [
        task for year in (2027, 2028) for task in cares.plan(cares.orchard(cares.mirrored()), year).tasks
    ]
    shared = {task.id: task for task in south if task.id in north and not task.spray}
    assert len(shared) > 60
    for name, task in shared.items():
        days = (task.start - north[name].start).days
        assert days == pytest.approx(183, abs=6), name


def test_frost_dates_of_the_south_fall_around_its_summer() -> None:
    season = Season(cares.mirrored(), 2027, bloom_for(cares.orchard(cares.mirrored())))
    assert season.last_frost.first == dt.date(2027, 11, 5)
    assert season.first_frost.first == dt.date(2028, 4, 15)
    assert season.dormant == dt.date(2027, 7, 1)
    assert [season.month(n) for n in (1, 6, 7, 12)] == [
        dt.date(2027, 7, 1), dt.date(2027, 12, 1), dt.date(2028, 1, 1), dt.date(2028, 6, 1)
    ]


def test_water_amounts_by_weather_or_by_rule() -> None:
    rule = cares.tasks(cares.plan(cares.orchard(cares.site())), "bb-water")[0]
    assert "inch-a-week" in rule.amount
    weather = cares.site(
        monthly_lows=tuple(mean - 5 for mean in cares.MEANS),
        monthly_highs=tuple(mean + 5 for mean in cares.MEANS),
    )
    measured = cares.tasks(cares.plan(cares.orchard(weather)), "bb-water")[0]
    assert "from evaporation here" in measured.amount


def test_units_of_the_reader() -> None:
    survey = survey_of(cares.orchard(cares.site()))
    metric, imperial = care_plan(survey, 2027, "metric"), care_plan(survey, 2027, "imperial")
    assert cares.tasks(metric, "bb-mulch")[0].title.startswith("Mulch 8-10 cm")
    assert cares.tasks(imperial, "bb-mulch")[0].title.startswith("Mulch 3-4 in")


def test_frost_nights_name_the_stages() -> None:
    frost = cares.tasks(cares.plan(cares.orchard(cares.site())), "frost-tree")
    apple = next(task for task in frost if task.crop == "apple")
    assert "silver tip -9 °C" in apple.amount
    assert "full bloom -2 °C" in apple.amount


def test_day_words() -> None:
    assert day_words(dt.date(2027, 4, 24)) == "24 April 2027"


@settings(max_examples=25, deadline=None, suppress_health_check=[HealthCheck.too_slow])
@given(strategies.yards(), st.integers(2000, 2100))
def test_any_yard_gets_a_plan(yard: Yard, year: int) -> None:
    plan = care_plan(survey_of(yard), year)
    ids = [task.id for task in plan.tasks]
    assert len(set(ids)) == len(ids)
    known = yard.ids()
    for task in plan.tasks:
        assert task.start <= task.end
        assert task.start.year <= year <= task.end.year
        assert set(task.things) <= known
        assert "[" not in task.title + task.when + task.why
