import pytest
from attrs import evolve

from yardplan.plants.site_heat import heat_zone, heat_zones, site_heat
from yardplan.yard.site import Site

MILD = (2.0, 3.0, 6.0, 9.0, 13.0, 16.0, 18.5, 18.0, 14.5, 10.5, 6.0, 3.0)


def test_degree_days_are_the_sum_over_the_base():
    """A place of 15 degrees all year has 5 a day over 10, on the 214 days from April to October."""
    heat = site_heat(Site(monthly_means=(15.0,) * 12))
    assert heat is not None
    # Days scatter by 3.5 degrees about their mean; the few below 10 take nothing off.
    assert 214 * 5 <= heat.degree_days <= 214 * 5 * 1.05
    assert (heat.base, heat.hot_days, heat.zone) == (10.0, None, None)


def test_the_south_counts_october_to_april():
    north = site_heat(Site(latitude=47.0, monthly_means=MILD))
    south = site_heat(Site(latitude=-47.0, monthly_means=MILD[6:] + MILD[:6]))
    assert north is not None
    assert south is not None
    assert south.degree_days == pytest.approx(north.degree_days, rel=0.03)


def test_hot_days_need_monthly_highs_and_grow_with_them():
    site = Site(monthly_means=MILD, monthly_highs=tuple(mean + 6 for mean in MILD))
    cool = site_heat(site)
    warm = site_heat(evolve(site, monthly_highs=tuple(mean + 12 for mean in MILD)))
    assert cool is not None
    assert warm is not None
    assert cool.hot_days is not None
    assert warm.hot_days is not None
    assert 0 < cool.hot_days < 10 < warm.hot_days < 80
    assert site_heat(Site()) is None


def test_days_of_a_month_at_the_limit_are_hot_every_second_time():
    heat = site_heat(Site(monthly_means=(20.0,) * 12, monthly_highs=(30.0,) * 12))
    assert heat is not None
    assert heat.hot_days == pytest.approx(365 / 2)
    assert heat.zone is not None
    assert heat.zone.name == "11"


#: Limits as printed: American Horticultural Society, Plant Heat Zone Map (1997): days above 86 F (30 C).
PRINTED = [
    (0.5, "1"), (1, "1"), (2, "2"), (7, "2"), (8, "3"), (14, "3"), (15, "4"), (30, "4"), (31, "5"), (45, "5"),
    (60, "6"), (61, "7"), (90, "7"), (120, "8"), (150, "9"), (180, "10"), (210, "11"), (211, "12"),
    (365, "12"),
]


@pytest.mark.parametrize(("days", "zone"), PRINTED)
def test_heat_zones_by_their_days(days: float, zone: str):
    assert heat_zone(days).name == zone
    assert len(heat_zones()) == 12
