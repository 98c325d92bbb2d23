import datetime as dt

import pytest
from support import cares
from support.builders import plant, yard_of

from yardplan.care.harvest import Amount, HarvestPlan, harvest_plan, household_need, plenty_words, spans
from yardplan.care.things import bed_count, care_things
from yardplan.care.yields import full_crop, kilograms, ramp_for
from yardplan.checks.survey import survey_of
from yardplan.units import FOOT, POUND
from yardplan.yard.planting import Bed, PlantKey, Row
from yardplan.yard.yard import Yard


def thing(yard: Yard):  # type: ignore[no-untyped-def]
    return care_things(survey_of(yard))[0]


def test_a_row_bears_by_its_length() -> None:
    row = Row(id="R1", plant=PlantKey("red raspberry", "Latham"), line=((0, 0), (10 * FOOT, 0)), count=11,
              spacing=FOOT)
    found = thing(Yard(site=cares.site(), rows=(row,)))
    low, high = full_crop(found)
    assert low == pytest.approx(8 * POUND, rel=1e-3)
    assert high == pytest.approx(20 * POUND, rel=1e-3)


def test_trees_bear_by_stock_and_age() -> None:
    dwarf = thing(yard_of(plant("A1", "apple:Idared", (3, 4), rootstock="B.9")))
    assert full_crop(dwarf) == pytest.approx((40 * POUND, 100 * POUND), rel=1e-3)
    ramp = ramp_for(dwarf)
    assert [ramp.share(year) for year in (0, 1, 3, 7, 20)] == [0.0, 0.0, 0.15, 1.0, 1.0]
    assert kilograms(dwarf, 3)[1] == pytest.approx(15 * POUND, rel=1e-3)
    assert kilograms(dwarf, None) == full_crop(dwarf)


def test_kinds_without_a_ramp_run_from_first_to_full_crop() -> None:
    honey = thing(yard_of(plant("H1", "honeyberry/haskap:Tundra", (3, 4))))
    ramp = ramp_for(honey)
    assert ramp.share(1) == 0
    assert 0 < ramp.share(4) < 1
    assert ramp.share(9) == 1


def test_male_plants_bear_nothing() -> None:
    male = thing(yard_of(plant("K1", "hardy kiwi:Meader Male", (3, 4))))
    assert full_crop(male) == (0.0, 0.0)
    assert harvest_plan(survey_of(yard_of(plant("K1", "hardy kiwi:Meader Male", (3, 4)))), 2027).crops == ()


def test_weeks_sum_to_the_crops_and_years_grow() -> None:
    plan = harvest_plan(survey_of(cares.orchard(cares.site())), 2027)
    whole = [sum(crop.kilograms[i] for crop in plan.crops) for i in (0, 1)]
    assert sum(week.low for week in plan.weeks) == pytest.approx(whole[0])
    assert sum(week.high for week in plan.weeks) == pytest.approx(whole[1])
    assert all(week.start.weekday() == 0 for week in plan.weeks)
    assert len(plan.years) == 10
    assert plan.years[0].high == pytest.approx(whole[1])
    assert plan.years[6].high > plan.years[0].high


def test_gluts_and_gaps_against_a_need() -> None:
    survey = survey_of(cares.orchard(cares.site()))
    plan = harvest_plan(survey, 2027, persons=2)
    assert plan.need == household_need(2) == pytest.approx(2.8)
    assert {week.start for week in plan.gluts}.isdisjoint(week.start for week in plan.gaps)
    assert all(week.middle > 3 * 2.8 for week in plan.gluts)
    assert all(week.middle < 2.8 for week in plan.gaps)
    assert plan.gluts
    without = harvest_plan(survey, 2027)
    assert without.need is None
    assert all(week.high == 0 for week in without.gaps)


def test_unknown_planting_year_tells_the_full_crop() -> None:
    plan = harvest_plan(survey_of(yard_of(plant("A1", "apple:Idared", (3, 4)), site=cares.site())), 2027)
    assert plan.crops[0].full
    assert plan.years[0].high == 0
    assert plan.years[-1].high == pytest.approx(plan.crops[0].kilograms[1])


def test_south_picks_half_a_year_later() -> None:
    north = harvest_plan(survey_of(cares.orchard(cares.site())), 2027).crops
    south = harvest_plan(survey_of(cares.orchard(cares.mirrored())), 2027).crops
    for one, other in zip(north, south, strict=True):
        assert (other.first - one.first).days == pytest.approx(182, abs=4)


def test_kinds_by_usual_month_are_marked() -> None:
    plan = harvest_plan(survey_of(yard_of(plant("N1", "hazelnut:Yamhill", (3, 4)), site=cares.site())), 2027)
    (nuts,) = plan.crops
    assert nuts.by_month
    assert (nuts.first, nuts.last) == (dt.date(2027, 9, 1), dt.date(2027, 10, 31))


def test_bed_counts_by_pattern() -> None:
    square = Bed(id="E1", outline=((0, 0), (3, 0), (3, 2), (0, 2)), spacing=0.5)
    assert bed_count(square) == 24
    assert bed_count(Bed(id="E1", outline=square.outline, spacing=0.5, pattern="triangular")) == 27
    assert bed_count(Bed(id="E1", outline=square.outline)) == 0


def test_gluts_and_gaps_in_words() -> None:
    weeks = [Amount(dt.date(2027, 6, 28) + dt.timedelta(days=7 * n), 1.0, 2.0) for n in (0, 1, 3)]
    assert spans(weeks) == [
        (dt.date(2027, 6, 28), dt.date(2027, 7, 11)), (dt.date(2027, 7, 19), dt.date(2027, 7, 25))
    ]
    plan = HarvestPlan(year=2027, crops=(), weeks=(), years=(), need=2.8, gluts=tuple(weeks), gaps=())
    assert plenty_words(plan, "metric") == (
        "The household needs about 2.8 kg a week.",
        "Far more than that: 28 June to 11 July, 19 July to 25 July.",
    )
    bare = HarvestPlan(year=2027, crops=(), weeks=(), years=(), need=None, gluts=(), gaps=tuple(weeks[2:]))
    assert plenty_words(bare, "metric") == ("A gap, nothing to pick: 19 July to 25 July.",)
