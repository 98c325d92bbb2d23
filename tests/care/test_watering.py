"""Water by plant and week: by weather, by rule, by age, in the ground and in pots, north and south."""

from __future__ import annotations

import datetime as dt

import pytest
from attrs import evolve
from support import cares
from support.builders import plant, yard_of

from yardplan.care.calendar_file import description
from yardplan.care.season import Season, bloom_for
from yardplan.care.things import care_things
from yardplan.care.water import coefficients, stages
from yardplan.care.watering import WaterNeed, both, water_needs, week_lines
from yardplan.checks.survey import survey_of
from yardplan.yard.planting import Container, PlantKey, Row
from yardplan.yard.site import Site
from yardplan.yard.yard import Yard

WEATHER = {
    "monthly_lows": tuple(mean - 5 for mean in cares.MEANS),
    "monthly_highs": tuple(mean + 5 for mean in cares.MEANS),
}


def needs(yard: Yard, year: int = 2027) -> dict[str, WaterNeed]:
    season = Season(yard.site, year, bloom_for(yard))
    survey = survey_of(yard)
    found = water_needs(care_things(survey), survey.catalogue, season)
    return {thing: need for need in found for thing in need.things}


def test_the_year_rises_to_midsummer_and_ends_with_the_leaves() -> None:
    apple = needs(cares.orchard(cares.site(**WEATHER)))["A1"]
    months = [month.month for month, _ in apple.weeks]
    assert months == sorted(months)
    assert set(range(5, 9)) <= set(months) <= set(range(3, 11))
    weeks = {month.month: litres for month, litres in apple.weeks}
    assert weeks[4] < weeks[5] < weeks[7]
    assert apple.most == weeks[7]
    assert not apple.rule


def test_without_a_climate_an_inch_a_week_and_no_word_of_pots() -> None:
    yard = yard_of(
        plant("A1", "apple:Idared", (3, 4), planted=2015),
        plant("F1", "fig:Chicago Hardy", (9, 4), container="K1"), site=Site(units="metric"),
        containers=(Container(id="K1", place=(9.0, 4.0), diameter=0.6, volume=60.0),),
    )
    found = needs(yard)
    assert found["A1"].rule
    assert len({litres for _, litres in found["A1"].weeks}) == 1
    # 25.4 mm on the ground under the crown.
    area = 3.14159265 * (found["A1"].across / 2) ** 2
    assert found["A1"].most == pytest.approx(25.4 * area, rel=1e-3)
    assert found["F1"].weeks == ()
    assert found["F1"].each == "pot"


def test_small_trees_are_given_less_and_grow_into_more() -> None:
    site = cares.site(**WEATHER)
    litres = [needs(yard_of(plant("A1", "apple:Idared", (3, 4), planted=planted), site=site))["A1"].most
              for planted in (2027, 2023, 2005)]
    assert 0 < litres[0] < litres[1] < litres[2]


def test_the_south_drinks_half_a_year_later() -> None:
    south = cares.mirrored()
    turned = evolve(south, **{name: means[6:] + means[:6] for name, means in WEATHER.items()})
    apple = needs(cares.orchard(turned))["A1"]
    most = max(apple.weeks, key=lambda week: week[1])[0]
    assert most in (dt.date(2027, 12, 1), dt.date(2028, 1, 1))
    assert all(month.month not in (6, 7, 8) for month, _ in apple.weeks)


def test_plants_alike_share_a_line_in_both_units() -> None:
    yard = yard_of(
        plant("A1", "apple:Idared", (3, 4), planted=2015), plant("A2", "apple:Idared", (9, 4), planted=2015),
        site=cares.site(**WEATHER),
    )
    (need,) = set(needs(yard).values())
    (line,) = week_lines([need], dt.date(2027, 6, 10), dt.date(2027, 7, 5), "metric")
    assert line.startswith("A1, A2 Idared: June ")
    assert line.endswith("gal) a week")
    assert "July" in line
    assert "Aug" not in line
    assert both(37.85, "metric") == "38 L (10 gal)"
    assert both(37.85, "imperial") == "10 gal (38 L)"


def test_the_calendar_tells_the_amounts_of_each_plant() -> None:
    plan = cares.plan(cares.orchard(cares.site(**WEATHER)))
    task = next(task for task in plan.tasks if task.row == "water-bearing" and task.crop == "apple")
    assert "gal)" in task.amount
    assert task.weeks
    assert task.weeks[0] in description(task)


def test_stages_by_latitude() -> None:
    # FAO-56, Table 11: deciduous orchard 210 days at high, 270 at low latitudes.
    assert sum(stages("apple", 50.0).days) == 210
    assert sum(stages("apple", -30.0).days) == 270
    course, crop = stages("apple", 50.0), coefficients("apple")
    assert [round(course.coefficient(crop, day), 3) for day in (-1, 0, 20, 55, 90, 180, 210, 211)] == [
        0.0, 0.45, 0.45, 0.7, 0.95, 0.95, 0.7, 0.0
    ]
    assert stages("citrus", 30.0).coefficient(coefficients("citrus"), 400) > 0
    assert stages("not a crop", 50.0).days == stages("peach", 50.0).days


def test_a_wall_of_leaves_drinks_by_its_height_and_a_row_by_its_plants() -> None:
    site = cares.site(**WEATHER)
    cordon = plant("A1", "apple:Idared", (3, 4), planted=2000, form="cordon", rootstock="M9 T337")
    tree = plant("A2", "apple:Idared", (9, 4), planted=2000, rootstock="M9 T337")
    vines = Row(id="G1", plant=PlantKey("grape", "Concord"), line=((0, 9), (9, 9)), count=4, spacing=2.0)
    found = needs(yard_of(cordon, tree, rows=(vines,), site=site))
    area = {key: 3.14159265 * (need.across / 2) ** 2 for key, need in found.items()}
    # A cordon is narrow but high: it takes less than a tree, and more than its crown seen from above.
    stand = {one.id: one for one in survey_of(yard_of(cordon, tree, site=site)).stand.plants}
    assert area["A1"] == pytest.approx(stand["A1"].mature.spread * stand["A1"].mature.height / 2, rel=0.01)
    assert area["A1"] < area["A2"]
    # Four vines, 2 m each, as deep as their wires carry them: not as deep as a vine is long.
    assert 4 * 2.0 * 0.5 < area["G1"] < 4 * 2.0 * 1.2
