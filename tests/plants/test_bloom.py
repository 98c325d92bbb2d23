"""Bloom at a place: bands, observed dates, stations moved, the southern half, and what is not known."""

import math
from itertools import pairwise

import pytest
from attrs import evolve
from hypothesis import given
from hypothesis import strategies as st

from yardplan.plants.bloom import bloom_at, often
from yardplan.plants.bloom_tables import nearest_station, stations
from yardplan.plants.catalogue import catalogue
from yardplan.plants.cultivar import Cultivar
from yardplan.plants.heat import HeatSums, daily_means, date_of, day_of
from yardplan.plants.limits import Limits
from yardplan.yard.planting import PlantKey
from yardplan.yard.site import Site

MEANS = (2.57, 3.24, 6.33, 9.78, 13.57, 16.50, 18.68, 18.14, 14.64, 10.54, 6.32, 3.34)
BONN = Site(name="Bonn", latitude=50.6, longitude=7.0, elevation=160, zone="7b", monthly_means=MEANS)


def mid(crop: str) -> Cultivar:
    return Cultivar(crop=crop, name="any", bloom_season="mid")


@pytest.mark.parametrize("text", ["13-01", "04-31", "00-10", "April", "", "02-30"])
def test_what_is_no_day_is_refused(text: str) -> None:
    with pytest.raises(ValueError, match=r"."):
        day_of(text)


@given(st.integers(1, 365))
def test_days_and_dates_are_one_another_s_inverse(day: int) -> None:
    assert day_of(date_of(day)) == day
    assert date_of(day + 365) == date_of(day)


@given(st.lists(st.floats(-30, 35), min_size=12, max_size=12))
def test_the_daily_line_meets_every_monthly_mean(monthly: list[float]) -> None:
    days, start = daily_means(monthly, rounds=200), 0
    for number, length in enumerate((31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31)):
        assert days[start:start + length].mean() == pytest.approx(monthly[number], abs=0.3)
        start += length


@given(st.integers(45, 400), st.integers(1, 30))
def test_heat_never_falls_within_the_year(day: int, more: int) -> None:
    sums = HeatSums(MEANS)
    if day + more < sums.start + 364:
        assert sums.sum_on(day + more) >= sums.sum_on(day)


def test_a_band_is_first_flower_full_bloom_petal_fall() -> None:
    band = bloom_at(BONN).band(mid("apple"))
    assert band is not None
    assert band.dates == ("04-22", "04-27", "05-07")
    assert (band.error, band.scatter, band.basis) == (5.0, 8.0, "monthly means")
    assert band.in_bloom(day_of("04-30"))
    assert not band.in_bloom(day_of("05-20"))


def test_lows_and_highs_serve_for_means() -> None:
    lows, highs = tuple(m - 4 for m in MEANS), tuple(m + 4 for m in MEANS)
    halves = bloom_at(evolve(BONN, monthly_means=None, monthly_lows=lows, monthly_highs=highs))
    assert halves.basis == "monthly means"
    assert halves.band(mid("apple")) == bloom_at(BONN).band(mid("apple"))


def test_stone_fruit_bands_are_shorter() -> None:
    band = bloom_at(BONN).band(mid("european pear"))
    assert band is not None
    assert band.full - band.first == 4.0
    assert band.fall - band.full == 8.5


def test_crops_bloom_in_their_order() -> None:
    order = ["apricot", "japanese plum", "peach", "sweet cherry", "european pear", "european plum",
             "sour cherry", "apple", "quince", "strawberry", "red raspberry", "grape"]
    bloom = bloom_at(BONN)
    days = [band.full for crop in order if (band := bloom.band(mid(crop))) is not None]
    assert len(days) == len(order)
    assert all(one <= other for one, other in pairwise(days))


def test_an_observed_date_sets_everything_right() -> None:
    late = bloom_at(evolve(BONN, observed_bloom=(("apple", "05-05"),)))
    band = late.band(mid("apple"))
    assert band is not None
    assert band.dates[1] == "05-05"
    assert band.basis == "observed date"
    assert band.error < 5
    pear, before = late.band(mid("european pear")), bloom_at(BONN).band(mid("european pear"))
    assert pear is not None
    assert before is not None
    assert pear.full > before.full + 4


def test_a_date_seen_on_one_cultivar_counts_for_that_cultivar() -> None:
    site = evolve(BONN, observed_bloom=(("apple:Lodi", "04-20"),))
    bloom = bloom_at(site, catalogue().cultivars)
    lodi = catalogue().cultivar(PlantKey("apple", "Lodi"))
    assert lodi is not None
    band = bloom.band(lodi)
    assert band is not None
    assert band.dates[1] == "04-20"


def test_an_observed_date_alone_is_enough() -> None:
    bloom = bloom_at(Site(latitude=50.6, observed_bloom=(("apple", "05-01"),)))
    apple, cherry = bloom.band(mid("apple")), bloom.band(mid("sweet cherry"))
    assert apple is not None
    assert cherry is not None
    assert apple.dates[1] == "05-01"
    assert cherry.full < apple.full


def test_the_southern_spring_comes_in_autumn_months() -> None:
    turned = (*MEANS[6:], *MEANS[:6])
    south = bloom_at(evolve(BONN, latitude=-42.0, monthly_means=turned)).band(mid("apple"))
    north = bloom_at(BONN).band(mid("apple"))
    assert south is not None
    assert north is not None
    assert south.dates[1].startswith("10-")
    assert south.full - north.full == pytest.approx(182, abs=3)


def test_without_means_a_station_is_moved_here() -> None:
    # Wenatchee 27 April moved to Sparta's place comes to 7-8 May (bioclimatic law); records 5-12 May.
    sparta = Site(name="x", place="Sparta", latitude=43.13, longitude=-85.68, elevation=245)
    wenatchee = next(s for s in stations() if s.name.startswith("Wenatchee"))
    from yardplan.plants.bloom_tables import moved_days

    moved = moved_days(wenatchee, sparta.latitude, sparta.longitude, sparta.elevation)
    assert wenatchee.full is not None
    assert day_of("05-05") <= wenatchee.full + moved <= day_of("05-12")
    bloom = bloom_at(sparta)
    assert bloom.basis == "station"
    assert bloom.error >= 8


def test_single_seasons_are_no_means() -> None:
    kent = nearest_station(51.3, 0.88)
    assert kent is not None
    assert not kent.one_season
    assert any(station.one_season for station in stations())


def test_higher_is_later() -> None:
    low = Site(name="x", place="p", latitude=47.0, longitude=8.5, elevation=400)
    high = evolve(low, elevation=900.0)
    bands = [bloom_at(site).band(mid("sweet cherry")) for site in (low, high)]
    assert bands[0] is not None
    assert bands[1] is not None
    assert bands[1].full - bands[0].full == pytest.approx(16.5, abs=0.5)


def test_mild_winters_give_no_date_unless_one_was_seen() -> None:
    mild = evolve(BONN, monthly_means=(12, 12, 13, 15, 17, 19, 21, 22, 21, 18, 15, 12))
    assert bloom_at(mild).band(mid("apple")) is None
    assert bloom_at(mild).basis == "nothing"
    seen = bloom_at(evolve(mild, observed_bloom=(("apple", "03-20"),)))
    assert seen.band(mid("apple")) is not None


def test_low_chill_kinds_are_not_dated_by_heat() -> None:
    anna = catalogue().cultivar(PlantKey("apple", "Anna"))
    fuji = catalogue().cultivar(PlantKey("apple", "Fuji"))
    assert anna is not None
    assert fuji is not None
    assert bloom_at(BONN).band(anna) is None
    assert bloom_at(BONN).band(fuji) is not None


@pytest.mark.parametrize(
    ("seen", "words"),
    [
        ((("apple", "99-99"),), "is no date"),
        ((("plasticine", "04-24"),), "is not known"),
        ((("apple", "04-20"), ("european pear", "05-04")), "check both dates"),
    ],
)
def test_observed_dates_that_cannot_be_are_named(seen: tuple[tuple[str, str], ...], words: str) -> None:
    assert any(words in fault for fault in bloom_at(evolve(BONN, observed_bloom=seen)).faults)


def test_eleven_means_are_named_as_missing() -> None:
    assert any("twelve" in fault for fault in bloom_at(evolve(BONN, monthly_means=MEANS[:11])).faults)


@pytest.mark.parametrize(("years", "word"), [(0.95, "usual"), (0.5, "some years"), (0.1, "rarely")])
def test_words_for_how_often(years: float, word: str) -> None:
    assert often(years, Limits()) == word


def test_gaps_follow_the_spring_of_the_place() -> None:
    # A continental spring warms faster than a maritime one, so early and late draw together.
    fast = (-14, -12, -5, 5, 13, 18, 21, 20, 13, 6, -3, -11)
    slow = (5, 5, 6, 8, 11, 13, 15, 15, 13, 10, 7, 5)
    early, late = (Cultivar(crop="apple", name=c, bloom_season=c) for c in ("early", "late"))
    gaps = []
    for means in (fast, slow):
        bloom = bloom_at(evolve(BONN, monthly_means=means))
        bands = (bloom.band(early), bloom.band(late))
        assert bands[0] is not None
        assert bands[1] is not None
        gaps.append(bands[1].full - bands[0].full)
    assert gaps[0] < gaps[1] * 0.75


def test_a_cultivar_without_class_is_dated_with_a_wider_error() -> None:
    known, unknown = (Cultivar(crop="apple", name=name, bloom_season=season, own=True)
                      for name, season in (("Early", "mid"), ("Old Garden", "")))
    at = bloom_at(BONN)
    sure, unsure = at.band(known), at.band(unknown)
    assert sure is not None
    assert unsure is not None
    assert (sure.classed, unsure.classed) == (True, False)
    assert sure.full == pytest.approx(unsure.full)
    # Early and late apples bloom 4 to 5 days from mid-season ones: two steps of 2.3 days (bloom.csv).
    assert unsure.error == pytest.approx(math.hypot(sure.error, 4.6))


def test_days_in_the_wrong_order_are_told_by_the_names_people_use() -> None:
    seen = (("apricot:Katy", "05-14"), ("apple:Liberty", "05-04"))
    (fault,) = bloom_at(evolve(BONN, observed_bloom=seen)).faults
    assert fault.startswith("observed bloom: Liberty on 4 May before Katy on 14 May")
