"""Shared bloom of sweet cherries against the European phenology data set.

Medians over site-years as computed from Scientific Data 3:160108 (2016), 1978-2015.
"""

import pytest

from yardplan.plants.bloom import Overlap, overlap_of
from yardplan.plants.catalogue import catalogue
from yardplan.plants.limits import Limits
from yardplan.yard.planting import PlantKey


def _overlap(one: str, other: str) -> Overlap:
    plants = [catalogue().cultivar(PlantKey("sweet cherry", name)) for name in (one, other)]
    assert plants[0] is not None
    assert plants[1] is not None
    found = overlap_of(plants[0], plants[1], bloom=None, limits=Limits())
    assert found is not None
    return found


#: Pair, median shared days recorded, site-years.
MEDIANS = [
    ("Burlat", "Regina", 7.5, 68), ("Kordia", "Regina", 11.0, 52), ("Lapins", "Regina", 6.0, 43),
    ("Van", "Burlat", 11.6, 76),
]


@pytest.mark.parametrize(("one", "other", "median", "site_years"), MEDIANS)
def test_shared_days_are_within_a_day_and_a_half_of_the_median(
    one: str, other: str, median: float, site_years: int
) -> None:
    assert site_years >= 40
    assert _overlap(one, other).days == pytest.approx(median, abs=1.5)


def test_lapins_and_regina_miss_each_other_in_about_three_years_of_ten() -> None:
    # Under 3 days together in 28 % of 43 site-years.
    pair = _overlap("Lapins", "Regina")
    assert 1 - pair.years == pytest.approx(0.28, abs=0.05)
    assert pair.often == "some years"


def test_kordia_and_regina_always_meet() -> None:
    # Never under 3.6 days in 52 site-years.
    pair = _overlap("Kordia", "Regina")
    assert pair.years >= 0.9
    assert pair.often == "usual"


def test_cristobalina_is_over_before_burlat_opens() -> None:
    # Under 3 days in 14 of 15 site-years; it blooms 19 days before Burlat.
    pair = _overlap("Cristobalina", "Burlat")
    assert 1 - pair.years >= 14 / 15
    assert pair.days < 0
    assert pair.often == "rarely"
