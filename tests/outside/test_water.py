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


def test_week_rule_of_gallons_by_square_feet():
    # University of California Master Gardeners, Santa Clara County, and a California school-orchard chart:
    # gallons a midsummer week are the canopy's square feet; 10 ft across, 78.5 sq ft, is listed as 80 gal.
    # That is 1.6 in a week, as 1 in on 1 sq ft is 0.623 gal.
    litres = water.weekly_litres(10 * FOOT, 1.0, 1.6 * INCH * 1000 / 7, efficiency=1.0)
    assert litres / US_GALLON == pytest.approx(78.5, abs=0.5)


def test_conversions_as_printed():
    # University of California: an acre-inch is 27,154 gal; 1 in on 1,000 sq ft is 623 gal. 1 acre is
    # 43,560 sq ft. FAO: 1 mm on 1 ha is 10 m3.
    def gallons(square_feet):
        across = (square_feet * FOOT**2 / water.crown_area(1.0)) ** 0.5
        return water.inch_a_week_litres(across) / US_GALLON

    assert gallons(43_560) == pytest.approx(27_154, abs=1)
    assert gallons(1000) == pytest.approx(623, abs=1)
    hectare = (10_000 / water.crown_area(1.0)) ** 0.5
    assert water.weekly_litres(hectare, 1.0, 1 / 7, efficiency=1.0) == pytest.approx(10_000)


def test_a_bush_at_30_mm_a_week():
    # Computed line of the same sheets: a bush 1.2 m across covers 1.13 m2; 30 mm a week is 34 L (9 gal).
    assert water.crown_area(1.2) == pytest.approx(1.13, abs=0.005)
    litres = water.weekly_litres(1.2, 1.0, 30 / 7, efficiency=1.0)
    assert litres == pytest.approx(34, abs=0.2)
    assert litres / US_GALLON == pytest.approx(9, abs=0.1)


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
    ("spread", "litres", "gallons"), [(0.6, 2.0, 0.5), (0.8, 3.6, 1.0), (1.0, 5.7, 1.5), (1.3, 9.6, 2.5)]
)
def test_pots(spread, litres, gallons):
    # Computed table of container use at 6 mm a day and Kc 1.0 (side factor from memory).
    day = water.container_litres_a_day(spread, 1.0, 6.0)
    assert day == pytest.approx(litres, abs=0.05)
    assert day / US_GALLON == pytest.approx(gallons, abs=0.05)


def test_more_rain_never_asks_for_more_water():
    dry, wet = (water.weekly_litres(3, 0.95, 5, rain=rain) for rain in (0, 20))
    assert wet < dry
    assert water.weekly_litres(3, 0.95, 5, rain=100) == 0
