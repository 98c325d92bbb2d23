"""Speed of pollination: a drag in a yard of 500 plants, and the partner finder over the catalogue."""

import random
import time
from statistics import median

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

#: Budgets: verdicts of a drag frame of 500 plants, and partners for 30 plants, seconds at the median.
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
    benchmark.pedantic(run, setup=lambda: ((drag.next_survey(),), {}), rounds=60, iterations=1)
    taken = []
    for _ in range(60):
        survey = drag.next_survey()
        start = time.perf_counter()
        run(survey)
        taken.append(time.perf_counter() - start)
    assert median(taken) <= FRAME


def test_partners_for_30_plants_over_the_whole_catalogue(benchmark: BenchmarkFixture) -> None:
    yard = _yard(30, 40.0)
    taken = []
    for number in range(5):
        # A new site each time, so that nothing judged before is taken over.
        fresh = survey_of(yard_of(*yard.plantings, site=site(longitude=7.0 + number / 10)))
        start = time.perf_counter()
        plan_for(fresh)
        taken.append(time.perf_counter() - start)
    assert median(taken) <= FINDER
    survey = survey_of(yard)
    benchmark.pedantic(plan_for, args=(survey,), rounds=5, iterations=1)
