"""Clearance rules against the publications that print them; each figure with its source.

Houston Area Urban Forestry Council, "Where to plant a tree"; NHBC Standards 2006 ch. 4.2 Table 3b and
Table 12; Code civil art. 671 (France); Codice civile art. 892 (Italy); NC Cooperative Extension Chatham
County, "Planting in a septic drain field"; Johnson County (Indiana) health FAQ; Arbor Day Foundation, "The
Right Tree for the Right Place"; University of Florida, hort.ufl.edu/woody/residential.shtml; Ohio State
University Extension, black walnut toxicity; City of East Grand Forks, "Call before you dig".
"""

import pytest

from yardplan.checks.clear.buildings import water_demand
from yardplan.checks.clear.country import line_laws
from yardplan.checks.rules import Rules, shipped_rules
from yardplan.units import FOOT, INCH

RULES = Rules()

FEET = [
    ("structure-low", 10), ("structure-mid", 15), ("structure-tall", 20),  # Houston: to 30, 50, more feet
    ("structure-low-height", 30), ("structure-mid-height", 50),
    ("septic-field-floor", 10), ("septic-thirsty", 100),  # Johnson County
    ("septic-tank", 5),  # El Dorado County, septic setbacks
    ("service-dig", 2),  # East Grand Forks: hand-dig within 2 ft of the marks
    # Arbor Day Foundation
    ("overhead-low-height", 25), ("overhead-low-side", 20), ("overhead-mid-height", 40),
    ("overhead-mid-side", 50),
    # University of Florida
    ("pool-any", 10), ("pool-medium", 20), ("pool-large", 30), ("paving-thirsty", 10),
    ("juglone-near", 60), ("juglone-far", 80),  # Ohio State: 50-60 ft on average, up to 80 ft
    ("bramble-warn", 100), ("bramble-advise", 700), ("bramble-wild", 600),
    # From memory: offsets of buried lines, tools off overhead lines, sprays off wells, room for a well rig,
    # stems and crowns off paving, headroom, the working gap at a wall.
    ("service-small", 5), ("service-large", 10), ("overhead-tools", 10), ("well-spray", 100),
    ("well-rig", 10), ("paving-stem", 4), ("paving-crown", 1), ("headroom-path", 7), ("headroom-drive", 14),
    ("wall-gap", 3), ("reach-own-side", 2),
]

#: What is at stake: a legal demand, safety, damage or upkeep, as the sources above set their rules.
SEVERITIES = {
    "law": [
        "lot-stem-share", "lot-line-drawn", "reach-own-side", "septic-tank", "service-dig", "sight-corner",
        "sight-drive",
    ],
    "safety": ["service-small", "service-large", "overhead-low-height", "overhead-tools", "well-spray"],
    "damage": [
        "structure-low", "structure-tall", "clay-high-demand", "eaves-drip", "septic-field-height",
        "septic-thirsty", "paving-stem", "paving-thirsty", "juglone-near",
    ],
    "care": ["wall-gap", "eaves-dry", "well-rig", "paving-crown", "pool-any", "headroom-drive", "access-way"],
}


@pytest.mark.parametrize(
    ("severity", "rule"), [(severity, rule) for severity, rules in SEVERITIES.items() for rule in rules]
)
def test_severity_of_each_rule(severity: str, rule: str):
    assert RULES.rule(rule).severity == severity


@pytest.mark.parametrize(("rule", "feet"), FEET)
def test_distances_in_feet(rule: str, feet: float):
    assert RULES.value(rule) == pytest.approx(feet * FOOT)


@pytest.mark.parametrize(("level", "share"), [("high", 1.25), ("moderate", 0.75), ("low", 0.5)])
def test_nhbc_shares_of_mature_height_on_shrinkable_clay(level: str, share: float):
    assert RULES.value(f"clay-{level}-demand") == share


#: NHBC Table 12: water demand of species.
DEMANDS = {
    "moderate": [
        "apple", "pear", "plum", "walnut", "ash", "beech", "lime", "sycamore", "pine", "spruce", "yew",
    ],
    "high": ["oak", "elm", "poplar", "willow", "hawthorn"],
    "low": ["birch", "elder", "fig", "hazel", "holly", "mulberry", "hornbeam"],
}


@pytest.mark.parametrize(
    ("level", "kind"), [(level, kind) for level, kinds in DEMANDS.items() for kind in kinds]
)
def test_nhbc_water_demand(level: str, kind: str):
    from support.stands import Nursery

    from yardplan.yard.ground import StandingTree
    from yardplan.yard.yard import Yard

    tree = StandingTree(id="T1", kind=kind, place=(0, 0), height=9, spread=6)
    assert water_demand(Nursery().standing(Yard(), tree)) == level


def test_french_distances():
    """Article 671: 2 m for plants over 2 m tall, half a metre for the others."""
    assert [(law.taller_than, law.distance) for law in line_laws("FR")] == [(0.0, 0.5), (2.0, 2.0)]


def test_no_country_is_taken_for_another():
    """Germany: each Land sets its own, usually half a metre and 2 m; Austria and the United Kingdom: none."""
    assert [(law.taller_than, law.distance) for law in line_laws("DE")] == [(0.0, 0.5), (2.0, 2.0)]
    assert [law.distance for country in ("AT", "GB") for law in line_laws(country)] == [0.0, 0.0]


def test_italian_distances():
    """Article 892: 3 m tall trees, 1.5 m lower ones, half a metre for fruit trees up to 2.5 m tall."""
    assert [law.distance for law in line_laws("IT")] == [0.5, 1.5, 3.0]
    assert line_laws("IT")[1].taller_than == 2.5


def test_septic_field_by_mature_height():
    """North Carolina: at least the mature height from the edge of the field."""
    assert RULES.value("septic-field-height") == 1.0


@pytest.mark.parametrize(
    ("rule", "inches"),
    [("access-walk", 24), ("access-barrow", 36), ("trained-wall-near", 6), ("trained-wall-far", 12)],
)
def test_widths_in_inches(rule: str, inches: float):
    """Garden-layout pages: 24 in comfortable, 36 in for a barrow; wall trees 6-12 in off (from memory)."""
    assert RULES.value(rule) == pytest.approx(inches * INCH)


def test_no_rule_without_severity_and_a_range_around_its_value():
    for rule in shipped_rules().values():
        assert rule.low <= rule.value <= rule.high
        assert rule.severity in {"law", "safety", "damage", "care", "growth"}
