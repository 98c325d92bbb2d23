"""Chill models against worked values and published limits.

Worked values: constant temperatures through the published code of the dynamic model (Acta Hort. 276, 1990;
formulas in Agric. Ecosyst. Environ. 133:23-31, 2009; code of the chillR package 0.77).
Utah units: HortScience 9:331-332 (1974). Chilling hours: Calif. Agric. 3(11), 1949.
"""

import numpy as np
import pytest

from yardplan.plants.chill import chill_portions, chilling_hours, utah_units


@pytest.mark.parametrize(
    ("celsius", "hours", "portions"), [(6, 240, 7.82), (6, 1000, 34.2), (2, 1000, 26.4), (10, 1000, 32.4)]
)
def test_portions_of_constant_temperatures(celsius: float, hours: int, portions: float) -> None:
    places = 2 if portions < 10 else 1
    assert round(float(chill_portions([celsius] * hours)[-1]), places) == portions


def test_the_first_portion_at_6_degrees_comes_at_hour_29() -> None:
    portions = chill_portions([6.0] * 40)
    assert portions[27] == 0.0
    assert portions[28] > 0.0


@pytest.mark.parametrize(("celsius", "units"), [(6, 1000), (2, 500)])
def test_a_thousand_hours_are_a_thousand_chilling_hours_and_so_many_utah_units(
    celsius: float, units: float
) -> None:
    assert chilling_hours([celsius] * 1000) == 1000
    assert utah_units([celsius] * 1000) == units


@pytest.mark.parametrize(
    ("celsius", "units"),
    [(1.4, 0.0), (1.5, 0.5), (2.4, 0.5), (2.5, 1.0), (9.1, 1.0), (9.2, 0.5), (12.4, 0.5), (12.5, 0.0),
     (15.9, 0.0), (16.0, -0.5), (18.0, -0.5), (18.1, -1.0)],
)
def test_utah_limits_are_inclusive_above(celsius: float, units: float) -> None:
    assert utah_units([celsius]) == units


@pytest.mark.parametrize(("celsius", "counts"), [(-0.1, 0), (0.0, 1), (7.2, 1), (7.3, 0)])
def test_limits_of_a_chilling_hour(celsius: float, counts: int) -> None:
    assert chilling_hours([celsius]) == counts


def test_the_older_use_counts_frost_too() -> None:
    assert chilling_hours([-5.0, 3.0, 8.0], frost_counts=True) == 2


def test_warm_hours_undo_portions_not_yet_made() -> None:
    # The precursor decays in warmth: a warm spell between two cold ones delays the next portion.
    cold, warm = [6.0] * 20, [25.0] * 12
    broken = chill_portions(np.array(cold + warm + cold))
    steady = chill_portions(np.array(cold + cold))
    assert broken[-1] < steady[-1]
