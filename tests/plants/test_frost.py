"""Frost at bloom: the published frost-date example, kill points, and what is not known."""

import pytest
from attrs import evolve
from hypothesis import given
from hypothesis import strategies as st

from yardplan.plants.bloom import BloomBand
from yardplan.plants.frost import frost_risk, kill_point, last_night
from yardplan.plants.heat import day_of
from yardplan.plants.limits import Limits
from yardplan.yard.site import Site

SITE = Site(latitude=39.0, last_frost="04-25", last_frost_10="05-10")


def band(day: str) -> BloomBand:
    full = float(day_of(day))
    return BloomBand(first=full - 4, full=full, fall=full + 8, error=5, scatter=8, basis="monthly means")


def test_scatter_follows_from_the_two_published_dates() -> None:
    # Delaware 1970: 32 F with even odds on 25 April, in one year of ten after 10 May: scatter 11.7 days.
    night = last_night(SITE, 0.0, Limits())
    assert night is not None
    assert night == (day_of("04-25"), pytest.approx(11.7, abs=0.05))


def test_colder_nights_end_about_two_weeks_earlier_at_28_f() -> None:
    night = last_night(SITE, -2.2, Limits())
    assert night is not None
    assert day_of("04-25") - night[0] == pytest.approx(14, abs=0.5)


def test_bloom_on_the_mean_last_killing_night_is_an_even_risk() -> None:
    risk = frost_risk("apple", band("04-11"), SITE, Limits())
    assert risk is not None
    assert risk.share == pytest.approx(0.5, abs=0.05)
    assert risk.kill.celsius == -2.2


@given(st.integers(60, 180), st.integers(1, 40))
def test_later_bloom_is_never_riskier(day: int, later: int) -> None:
    early = BloomBand(first=day, full=day, fall=day, error=5, scatter=8, basis="station")
    late = evolve(early, full=float(day + later))
    risks = [frost_risk("peach", one, SITE, Limits()) for one in (early, late)]
    assert risks[0] is not None
    assert risks[1] is not None
    assert risks[1].share <= risks[0].share


def test_southern_dates_are_counted_on_one_turn_of_the_year() -> None:
    south = Site(latitude=-42.0, last_frost="10-05")
    risk = frost_risk("apple", band("10-25"), south, Limits())
    assert risk is not None
    assert risk.share < 0.05


def test_without_frost_dates_or_figures_nothing_is_said() -> None:
    assert frost_risk("apple", band("04-20"), Site(), Limits()) is None
    assert frost_risk("quince", band("04-20"), SITE, Limits()) is None
    assert last_night(evolve(SITE, last_frost="soon"), 0.0, Limits()) is None


@pytest.mark.parametrize(
    ("crop", "celsius"),
    [("apple", -2.2), ("european pear", -2.2), ("peach", -2.8), ("nectarine", -2.8), ("apricot", -2.8),
     ("sour cherry", -2.2), ("northern highbush blueberry", -2.2), ("strawberry", -1.1)],
)
def test_kill_points_of_open_flowers(crop: str, celsius: float) -> None:
    # Penn State and Michigan State tables after Washington State (28 F = -2.2 C, 27 F = -2.8 C);
    # strawberry 30 F: table of 1985 as given by Purdue.
    found = kill_point(crop)
    assert found is not None
    assert found.celsius == celsius
