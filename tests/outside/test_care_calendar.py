"""Dates of care against published calendars and harvest dates of real places."""

import datetime as dt

import pytest
from support.builders import plant, yard_of

from yardplan.care.harvest import harvest_plan
from yardplan.care.tasks import CareTask, care_plan
from yardplan.checks.survey import survey_of
from yardplan.places.facts import facts_for, to_site_fields
from yardplan.yard.planting import PlantKey, Row
from yardplan.yard.site import Site
from yardplan.yard.yard import Yard


def place(words: str) -> Site:
    return Site(**to_site_fields(facts_for(words)))


def tasks(yard: Yard, row: str, year: int = 2027) -> list[CareTask]:
    found = [task for task in care_plan(survey_of(yard), year).tasks if task.row == row]
    assert found, row
    return [task for task in found if task.season == year]


def grown(kind: str, where: str) -> Yard:
    return yard_of(plant("A1", kind, (3, 4), planted=2015), site=place(where))


def days_apart(task: CareTask, first: dt.date, last: dt.date) -> int:
    """Days between a task and a published span; 0 where they meet."""
    return max((first - task.end).days, (task.start - last).days, 0)


#: Penn State Extension, Home Fruit Gardens, Table 1.2, Monthly Maintenance (updated 9 March 2023): "your
#: schedule may vary by as much as 2 weeks depending on the region of Pennsylvania". Month and row of ours.
PENNSYLVANIA = [
    ("apple:McIntosh", "sanitation", 1),  # January: dead or diseased wood is cut out and burned
    ("peach:Redhaven", "sanitation", 1),  # January: mummied peaches taken off
    ("apple:McIntosh", "apple-prune-leader", 2),  # February: pruning of all fruits but peaches begins
    ("apple:McIntosh", "apple-prune-leader", 3),  # March: pruning is finished
    ("european plum:Stanley", "plum-knot", 2),  # February: black knot pruned out and burned
    ("apple:McIntosh", "apple-feed", 3),  # March: fertilizer when the ground thaws
    ("apple:McIntosh", "apple-oil", 4),  # April: delayed dormant oil
    ("apple:McIntosh", "apple-scab", 4),  # April: scab sprays when green tissue appears
    ("peach:Redhaven", "peach-prune", 4),  # April: peaches are pruned when buds swell
]


@pytest.mark.parametrize(("kind", "row", "month"), PENNSYLVANIA)
def test_months_of_a_home_fruit_calendar_in_pennsylvania(kind: str, row: str, month: int) -> None:
    first = dt.date(2027, month, 1)
    last = dt.date(2027, month + 1, 1) - dt.timedelta(days=1)
    assert min(days_apart(task, first, last) for task in tasks(grown(kind, "State College, PA"), row)) <= 14


def test_pruning_is_over_before_april_in_pennsylvania() -> None:
    # The same table: "finish pruning" in March, two weeks either way.
    (prune,) = tasks(grown("apple:McIntosh", "State College, PA"), "apple-prune-leader")
    assert prune.end <= dt.date(2027, 4, 14)


def test_black_knot_is_cut_out_before_april() -> None:
    # Georgia garden answer and Ontario town notice 2021: before 1 April.
    for where in ("Athens, GA", "Toronto, Ontario"):
        (knot,) = tasks(grown("european plum:Stanley", where), "plum-knot")
        assert knot.end < dt.date(2027, 4, 1)


def test_strawberry_beds_are_renewed_by_mid_july_in_ohio() -> None:
    # Ohio State University Extension 2022: finished by 15 July.
    row = Row(id="S1", plant=PlantKey("strawberry", "Allstar"), line=((0, 0), (4, 0)), count=9, spacing=0.5,
              planted=2025)
    (renew,) = tasks(Yard(site=place("Columbus, OH"), rows=(row,)), "straw-renovate")
    assert renew.start <= dt.date(2027, 7, 15)


def test_straw_goes_on_in_early_to_mid_november_in_iowa() -> None:
    # Iowa State University Extension 2002: early to mid November.
    row = Row(id="S1", plant=PlantKey("strawberry", "Allstar"), line=((0, 0), (4, 0)), count=9, spacing=0.5,
              planted=2025)
    (straw,) = tasks(Yard(site=place("Ames, IA"), rows=(row,)), "straw-mulch")
    assert days_apart(straw, dt.date(2027, 11, 1), dt.date(2027, 11, 15)) == 0


def test_blackberries_are_tipped_in_late_june_and_july_in_ohio() -> None:
    # Ohio State University Extension fact sheets: tip at 48 in, late June and July.
    (tip,) = tasks(grown("blackberry (erect):Navaho", "Columbus, OH"), "bk-tip")
    assert (tip.start, tip.end) == (dt.date(2027, 6, 16), dt.date(2027, 7, 31))


def test_kiwi_is_pruned_from_late_december_to_mid_february_in_oregon() -> None:
    # Oregon State University PNW 507: late December to mid-February, later cuts bleed.
    (prune,) = tasks(grown("hardy kiwi:Ananasnaya", "Corvallis, OR"), "kiwi-winter")
    assert dt.date(2026, 12, 20) <= prune.start
    assert prune.end <= dt.date(2027, 2, 16)


def test_apricots_are_not_cut_late_in_california() -> None:
    # University of California Master Gardeners: six weeks before autumn rain, 15 September at the latest.
    (prune,) = tasks(grown("apricot:Goldcot", "Davis, CA"), "apricot-prune")
    assert prune.end <= dt.date(2027, 9, 15)


#: Michigan State University Extension, predicted peak harvest around Grand Rapids in 2020, nearly normal
#: to a few days later than normal (press report of 27 August 2020).
MICHIGAN = [
    ("Gala", "09-14"), ("McIntosh", "09-19"), ("Empire", "09-28"), ("Jonathan", "09-30"),
    ("Golden Delicious", "10-02"), ("Red Delicious", "10-06"), ("Idared", "10-11"), ("Rome Beauty", "10-16"),
    ("Fuji", "10-26"),
]


@pytest.mark.parametrize(("name", "day"), MICHIGAN)
def test_apples_ripen_on_published_days_around_grand_rapids(name: str, day: str) -> None:
    (apple,) = harvest_plan(survey_of(grown(f"apple:{name}", "Grand Rapids, MI")), 2020).crops
    published = dt.date.fromisoformat(f"2020-{day}")
    slack = dt.timedelta(days=round(apple.about))
    assert apple.begins[0] - slack <= published <= apple.last + slack
