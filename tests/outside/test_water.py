"""Water amounts against printed worked examples."""

import pytest

from yardplan.care import water
from yardplan.units import FOOT, INCH, US_GALLON


def test_radiation_of_the_printed_example():
    # FAO Irrigation and Drainage Paper 56 (1998), example 8: 3 September, 20 S: 32.2 MJ/m2/day, 13.1 mm.
    radiation = water.extraterrestrial_radiation(-20, 246)
    assert radiation == pytest.approx(32.2, abs=0.05)
    assert radiation * water.MM_PER_MJ == pytest.approx(13.1, abs=0.05)


def test_evapotranspiration_of_the_printed_example():
    # FAO-56, example 20, Lyon, 15 July: Ra 40.55 MJ/m2/day (printed 40.6), ET0 5.0 mm/day.
    radiation = water.extraterrestrial_radiation(45 + 43 / 60, 196)
    assert radiation == pytest.approx(40.55, abs=0.06)
    assert water.reference_evapotranspiration(14.8, 26.6, radiation) == pytest.approx(5.0, abs=0.05)


def test_radiation_of_a_second_printed_example():
    # FAO-56, example 18, Uccle, 6 July (day 187), 50 deg 48' N: Ra 41.09 MJ/m2/day.
    assert water.extraterrestrial_radiation(50.8, 187) == pytest.approx(41.09, abs=0.06)


def test_small_tree_of_the_extension_sheet():
    # University of California Cooperative Extension, Sonoma County: 10 sq ft at 0.20 in a day is
    # 0.623 x 10 x 0.20 = 1.25 gal a day; small trees under drip get 2.5 times, about 3 gal a day.
    spread = (10 * FOOT**2 / water.crown_area(1.0)) ** 0.5
    plain = water.weekly_litres(spread, 1.0, 0.20 * INCH * 1000, efficiency=1.0) / 7 / US_GALLON
    young = water.weekly_litres(spread, 1.0, 0.20 * INCH * 1000, efficiency=1.0, cover=0.12) / 7 / US_GALLON
    assert plain == pytest.approx(1.25, abs=0.01)
    assert young == pytest.approx(3.1, abs=0.1)


def test_an_inch_on_a_square_foot():
    # 1 in on 1 sq ft is 0.623 US gal (University of California, as above).
    spread = (FOOT**2 / water.crown_area(1.0)) ** 0.5
    assert water.inch_a_week_litres(spread) / US_GALLON == pytest.approx(0.623, abs=0.001)


@pytest.mark.parametrize(("rain", "counts"), [(50, 20), (100, 55)])
def test_effective_rain(rain, counts):
    # FAO Irrigation Water Management Training Manual 3 (1986): 50 and 100 mm give 20 and 55.
    assert water.effective_rain(rain) == pytest.approx(counts)


@pytest.mark.parametrize(
    ("crop", "grass", "frost", "expected"),
    [
        ("apple", False, True, (0.45, 0.95, 0.70)),
        ("apple", True, False, (0.80, 1.20, 0.85)),
        ("peach", True, True, (0.50, 1.15, 0.90)),
        ("hardy kiwi", False, True, (0.40, 1.05, 1.05)),
        ("northern highbush blueberry", False, True, (0.30, 1.05, 0.50)),
        ("strawberry", False, True, (0.40, 0.85, 0.75)),
    ],
)
def test_crop_coefficients_as_printed(crop, grass, frost, expected):
    # FAO-56, Table 12.
    found = water.coefficients(crop, grass_floor=grass, frost=frost)
    assert (found.start, found.mid, found.end) == expected
    assert not found.estimate


def test_a_crop_without_a_row_is_an_estimate():
    assert water.coefficients("quince").estimate
    assert water.coefficients("not a crop").estimate


@pytest.mark.parametrize(
    ("spread", "litres"), [(0.6, 2.0), (0.8, 3.6), (1.0, 5.7), (1.3, 9.6)]
)
def test_pots(spread, litres):
    # Computed table of container use at 6 mm a day and Kc 1.0 (side factor from memory).
    assert water.container_litres_a_day(spread, 1.0, 6.0) == pytest.approx(litres, abs=0.05)


def test_more_rain_never_asks_for_more_water():
    dry, wet = (water.weekly_litres(3, 0.95, 5, rain=rain) for rain in (0, 20))
    assert wet < dry
    assert water.weekly_litres(3, 0.95, 5, rain=100) == 0
