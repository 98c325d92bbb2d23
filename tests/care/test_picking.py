"""Picking against frost: late fruit in cold places, kinds that hang on, and what is not known."""

import datetime as dt
from typing import Any

import pytest
from support import cares
from support.builders import plant, yard_of

from yardplan.care.harvest import HarvestCrop, harvest_plan
from yardplan.care.season import Season, bloom_for
from yardplan.care.tasks import CareTask
from yardplan.care.things import care_things
from yardplan.care.watering import water_needs
from yardplan.checks import ripening
from yardplan.checks.survey import survey_of
from yardplan.yard.site import Site
from yardplan.yard.yard import Yard

#: First frost by which Granny Smith, ripe from 3 October on at this place, hardly ever ripens.
COLD = {"last_frost": "05-15", "first_frost": "09-10"}


def grown(kind: str, **site: Any) -> Yard:
    return yard_of(plant("A1", kind, (3, 4), planted=2015), site=cares.site(**site))


def task(yard: Yard, row: str = "apple-harvest") -> CareTask:
    (found,) = [one for one in cares.tasks(cares.plan(yard), row) if one.season == 2027]
    return found


def crop(yard: Yard) -> HarvestCrop:
    (found,) = harvest_plan(survey_of(yard), 2027).crops
    return found


def test_a_late_apple_in_a_cold_town_is_in_by_hard_frost_and_said_to_ripen_seldom() -> None:
    yard = grown("apple:Granny Smith", **COLD)
    picked, told = task(yard), crop(yard)
    # First frost 10 September, a hard freeze about two weeks later (rule ripen-past-frost).
    assert (picked.start, picked.end) == (dt.date(2027, 9, 10), dt.date(2027, 9, 24))
    assert (told.first, told.last) == (picked.start, picked.end)
    assert told.first <= told.begins[0] <= told.begins[1] <= told.last
    assert (told.ripens, told.doubt) == ("seldom", "seldom ripens here")
    assert picked.notes == told.notes
    assert picked.notes[0].startswith("Ripe only from about 3 October")
    assert "24 September" in picked.notes[1]
    assert task(yard, "apple-store").start == picked.start


def test_a_variety_late_in_some_years_begins_on_its_day_and_ends_with_hard_frost() -> None:
    yard = grown("apple:Granny Smith", first_frost="10-05")
    picked = task(yard)
    assert (picked.start, picked.end) == (dt.date(2027, 10, 3), dt.date(2027, 10, 19))
    assert crop(yard).ripens == "late_years"
    assert "in late years after the mean first frost of 5 October" in picked.notes[0]


def test_a_yards_own_days_to_hard_frost_hold() -> None:
    yard = yard_of(plant("A1", "apple:Granny Smith", (3, 4), planted=2015),
                   site=cares.site(first_frost="10-05"), rules={"ripen-past-frost": 7.0})
    assert task(yard).end == dt.date(2027, 10, 12)


def test_early_fruit_is_left_as_it_is() -> None:
    cold, mild = grown("apple:Gravenstein", **COLD), grown("apple:Gravenstein")
    assert task(cold).start == task(mild).start
    assert task(mild).notes == ()
    assert crop(cold).ripens == ""
    assert task(cold).end <= dt.date(2027, 9, 24)


@pytest.mark.parametrize("kind", ["apple:Granny Smith", "apple:Gravenstein", "persimmon:Hachiya",
                                  "european pear:Doyenne du Comice", "grape:Concord", "quince:Vranja"])
@pytest.mark.parametrize("frost", ["09-10", "10-05", "10-25", "11-20", None])
def test_calendar_and_check_agree(kind: str, frost: str | None) -> None:
    yard = grown(kind, first_frost=frost)
    found = [one.kind for one in ripening.run(survey_of(yard))]
    assert found == ([crop(yard).ripens] if crop(yard).ripens else [])


def test_kinds_picked_after_frost_are_not_cut_short() -> None:
    late = task(grown("persimmon:Hachiya", **COLD), "persimmon-harvest")
    assert late.start > dt.date(2027, 9, 24)
    assert not any("Hard frost" in note for note in late.notes)
    medlar = grown("medlar:Nottingham", **COLD)
    assert task(medlar, "medlar-harvest").start == dt.date(2027, 9, 10)
    assert (crop(medlar).first, crop(medlar).last) == (dt.date(2027, 9, 10), dt.date(2027, 10, 1))


def test_nothing_new_is_said_without_a_first_frost() -> None:
    known, unknown = grown("apple:Granny Smith"), grown("apple:Granny Smith", first_frost=None)
    assert task(unknown).notes == ()
    assert crop(unknown).ripens == ""
    assert task(unknown).end > task(known).end


def test_only_a_usual_month_proves_nothing_about_ripening() -> None:
    yard = yard_of(plant("A1", "apple:Fuji", (3, 4), planted=2015), site=Site(first_frost="09-10"))
    assert task(yard).by_month
    assert task(yard).notes == ()
    assert task(yard).end.month == 11


def test_the_south_half_a_year_later() -> None:
    north = task(grown("apple:Granny Smith", **COLD))
    (south,) = [
        one for year in (2027, 2028) for one in cares.tasks(cares.plan(yard_of(
            plant("A1", "apple:Granny Smith", (3, 4), planted=2015),
            site=cares.site(latitude=-50.6, monthly_means=cares.MEANS[6:] + cares.MEANS[:6],
                            last_frost="11-15", first_frost="03-10"),
        ), year), "apple-harvest") if one.season == 2027
    ]
    assert (south.start, south.end) == (dt.date(2028, 3, 10), dt.date(2028, 3, 24))
    assert (south.end - south.start) == (north.end - north.start)
    assert south.notes[0].startswith("Ripe only from about")


def test_usual_months_are_the_whole_time_of_picking() -> None:
    # Day-neutral strawberries bear to frost, rhubarb is pulled to early summer: not a season longer.
    berries = task(grown("strawberry:Fort Laramie"), "straw-harvest-dn")
    assert (berries.start, berries.end) == (dt.date(2027, 6, 1), dt.date(2027, 10, 31))
    stalks = task(grown("rhubarb:Canada Red"), "rhubarb-harvest")
    assert (stalks.start, stalks.end) == (dt.date(2027, 4, 1), dt.date(2027, 6, 30))


def test_autumn_raspberries_are_picked_in_autumn_by_both() -> None:
    yard = grown("red raspberry:Heritage")
    autumn = task(yard, "rasp-p-harvest")
    assert (crop(yard).first, crop(yard).last) == (autumn.start, autumn.end)
    assert autumn.end == dt.date(2027, 10, 15)


@pytest.mark.parametrize(("kind", "row"), [
    ("apple:Gala", "apple-prune-leader"), ("sour cherry:Montmorency", "tart-prune"),
    ("grape:Concord", "grape-prune"),
])
def test_winter_cuts_end_before_buds_move(kind: str, row: str) -> None:
    mild = cares.site(monthly_means=tuple(mean + 6 for mean in cares.MEANS), last_frost="03-20")
    yard = yard_of(plant("A1", kind, (3, 4), planted=2015), site=mild)
    cut, usual = task(yard, row), task(grown(kind), row)
    season = Season(mild, 2027, bloom_for(yard))
    buds = season.find("bud swell", care_things(survey_of(yard))[0].cultivar)
    assert buds is not None
    assert dt.date(2027, 1, 1) <= cut.start < cut.end == buds.first < usual.end


def test_no_weekly_water_once_leaves_are_down() -> None:
    # First frost 20 August, leaves down three weeks later.
    short = {"last_frost": "05-25", "first_frost": "08-20"}
    weather = {"monthly_lows": tuple(mean - 5 for mean in cares.MEANS),
               "monthly_highs": tuple(mean + 5 for mean in cares.MEANS)}
    survey = survey_of(grown("apple:Gala", **short, **weather))
    season = Season(survey.yard.site, 2027, bloom_for(survey.yard))
    (need,) = water_needs(care_things(survey), survey.catalogue, season)
    assert need.weeks[-1][0] == dt.date(2027, 9, 1)
    assert task(grown("grape:Concord", **short), "vine-water").end == dt.date(2027, 9, 10)
    assert task(grown("apple:Gala", **short), "water-autumn").end == dt.date(2027, 10, 1)


def test_guards_against_gnawing_under_snow_only_where_there_is_snow() -> None:
    assert cares.tasks(cares.plan(grown("apple:Gala", zone="6a")), "guard-on")
    assert not cares.tasks(cares.plan(grown("apple:Gala", zone="9a")), "guard-on")
