"""Speed of pollination: a drag in a yard of 500 plants, and the partner finder over the catalogue."""

import random

from pytest_benchmark.fixture import BenchmarkFixture
from support.builders import plant, yard_of
from support.orchards import site

from yardplan.arrange.partner_plan import plan_for
from yardplan.checks.pollination import run
from yardplan.checks.survey import Survey, moved_survey, survey_of
from yardplan.plants.catalogue import catalogue
from yardplan.yard import edits
from yardplan.yard.change import difference
from yardplan.yard.yard import Yard

#: Bars told beside the measurements, never asserted: verdicts of a drag frame of 500 plants, and partners
#: for 30 plants over the whole catalogue, seconds at the median.
FRAME, FINDER = 0.004, 0.200


def _yard(count: int, side: float) -> Yard:
    chance = random.Random(7)
    keys = [str(key) for key in catalogue().cultivars]
    return yard_of(
        *[plant(f"P{i}", chance.choice(keys), (chance.uniform(0, side), chance.uniform(0, side)))
          for i in range(count)],
        width=side, depth=side, site=site(),
    )


class Drag:
    """A plant dragged through the yard, a frame at a time; only the pollination check is timed."""

    def __init__(self, yard: Yard) -> None:
        self.yard, self.survey = yard, survey_of(yard)
        self.frame = 0
        run(self.survey)

    def next_survey(self) -> Survey:
        self.frame += 1
        moved = edits.move(self.yard, {"P250"}, (0.4, 0.3 if self.frame % 40 < 20 else -0.3))
        self.survey = moved_survey(self.survey, moved, difference(self.yard, moved))
        self.yard = moved
        return self.survey


def test_a_drag_frame_of_500_plants(benchmark: BenchmarkFixture) -> None:
    drag = Drag(_yard(500, 120.0))
    benchmark.extra_info["bar_seconds"] = FRAME
    found = benchmark.pedantic(run, setup=lambda: ((drag.next_survey(),), {}), rounds=60, iterations=1)
    assert drag.frame >= 1
    assert {finding.check for finding in found} == {"pollination"}


def test_partners_for_30_plants_over_the_whole_catalogue(benchmark: BenchmarkFixture) -> None:
    yard = _yard(30, 40.0)
    asked = []

    def fresh() -> tuple[tuple[Survey], dict[str, object]]:
        # A new site each time, so that nothing judged before is taken over.
        asked.append(survey_of(yard_of(*yard.plantings, site=site(longitude=7.0 + len(asked) / 10))))
        return (asked[-1],), {}

    benchmark.extra_info["bar_seconds"] = FINDER
    plan = benchmark.pedantic(plan_for, setup=fresh, rounds=5, iterations=1)
    assert asked
    assert plan.wanted
