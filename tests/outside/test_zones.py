"""Hardiness zones in both units.

USDA Agricultural Research Service and PRISM, Plant Hardiness Zone Map 2023: zones of 10 F from -60 F,
halves of 5 F, the lower bound belongs to the zone; C printed to 0.1. Royal Horticultural Society, Hardiness
Ratings (2013).
"""

from itertools import pairwise

import pytest

from yardplan.checks.zones import HalfZone, rating_limits, rating_needed, site_zone, zone_span

#: Lower limits as printed with the map: zone, F, C; a zone ends where the next begins, 13b at 70 F, 21.1 C.
PRINTED = [
    ("1a", -60, -51.1), ("1b", -55, -48.3), ("2a", -50, -45.6), ("2b", -45, -42.8), ("3a", -40, -40.0),
    ("3b", -35, -37.2), ("4a", -30, -34.4), ("4b", -25, -31.7), ("5a", -20, -28.9), ("5b", -15, -26.1),
    ("6a", -10, -23.3), ("6b", -5, -20.6), ("7a", 0, -17.8), ("7b", 5, -15.0), ("8a", 10, -12.2),
    ("8b", 15, -9.4), ("9a", 20, -6.7), ("9b", 25, -3.9), ("10a", 30, -1.1), ("10b", 35, 1.7),
    ("11a", 40, 4.4), ("11b", 45, 7.2), ("12a", 50, 10.0), ("12b", 55, 12.8), ("13a", 60, 15.6),
    ("13b", 65, 18.3),
]
ENDS = [*((f, c) for _, f, c in PRINTED[1:]), (70, 21.1)]


@pytest.mark.parametrize(
    ("name", "low", "high"), [(name, (f, c), end) for (name, f, c), end in zip(PRINTED, ENDS, strict=True)]
)
def test_limits_in_both_units(name: str, low: tuple[float, float], high: tuple[float, float]):
    zone = site_zone(name)
    assert zone is not None
    for shown, (fahrenheit, celsius) in ((zone.coldest, low), (zone.warmest, high)):
        assert shown == pytest.approx(celsius, abs=0.051)
        assert shown * 1.8 + 32 == pytest.approx(fahrenheit)


@pytest.mark.parametrize(
    ("zone", "low", "high"), [("6", -10, 0), ("6b", -5, 0), ("13", 60, 70), ("1", -60, -50)]
)
def test_a_whole_zone_spans_both_halves(zone: str, low: float, high: float):
    span = zone_span(zone)
    assert span is not None
    assert [limit * 1.8 + 32 for limit in span] == pytest.approx([low, high])


#: Ratings with their limits in C as printed; H1a has no upper, H7 no lower one.
RATINGS = {
    "H1a": (15, None), "H1b": (10, 15), "H1c": (5, 10), "H2": (1, 5), "H3": (-5, 1), "H4": (-10, -5),
    "H5": (-15, -10), "H6": (-20, -15), "H7": (None, -20),
}


@pytest.mark.parametrize("rating", RATINGS)
def test_limits_of_rhs_ratings(rating: str):
    assert rating_limits(rating) == RATINGS[rating]


def test_26_half_zones_without_gaps():
    zones = [HalfZone(step) for step in range(26)]
    assert [zones[0].name, zones[-1].name] == ["1a", "13b"]
    for lower, upper in pairwise(zones):
        assert lower.warmest == pytest.approx(upper.coldest)
        assert (upper.coldest - lower.coldest) * 1.8 == pytest.approx(5.0)


@pytest.mark.parametrize(
    ("celsius", "rating"),
    [
        (16, "H1a"), (12, "H1b"), (7, "H1c"), (2, "H2"), (0, "H3"), (-7, "H4"), (-12, "H5"), (-17, "H6"),
        (-25, "H7"),
    ],
)
def test_rhs_ratings(celsius: float, rating: str):
    """H7: colder than -20 C; H6: -20 to -15; H5: -15 to -10; H4: -10 to -5; H3: -5 to 1; H2: 1 to 5."""
    assert rating_needed(celsius) == rating
