"""Classes of direct sun, of open light and of what planting takes, for the overlay and its legend.

The limits are data (sun.csv).
"""

from __future__ import annotations

from functools import cache
from typing import Literal

from attrs import frozen

from yardplan.sun.parameters import figure, parameters

#: What a ground's numbers are: hours a day, percent of open light, or how much of these planting takes.
Measure = Literal["hours", "share", "taken", "share taken"]

#: From the least up: the parameter that holds the class's lower limit, and what it is called.
_CLASSES: dict[Measure, tuple[tuple[str, str], ...]] = {
    "hours": (
        ("", "shade"),
        ("class_shade_tolerant", "shade-tolerant plants only"),
        ("class_part", "part sun"),
        ("class_full", "full sun"),
        ("class_full_fruit", "full sun for fruit"),
    ),
    "share": (("", "dark"), ("share_dim", "dim"), ("share_bright", "bright"), ("share_open", "nearly open")),
    "taken": (
        ("", "hardly any"), ("taken_some", "some"), ("taken_class", "about a class"), ("taken_much", "much"),
    ),
    "share taken": (
        ("", "hardly any"), ("share_taken_some", "some"), ("share_taken_half", "much"),
    ),
}


@frozen
class LightClass:
    """Ground with at least `low` hours of direct sun a day, up to the next class; `source` of the limit."""

    low: float
    name: str
    source: str


@cache
def classes(measure: Measure = "hours") -> tuple[LightClass, ...]:
    """The classes from the least up; the first starts at 0."""
    table = parameters()
    return tuple(
        LightClass(figure(key) if key else 0.0, name, table[key].source if key else "")
        for key, name in _CLASSES[measure]
    )


def limits(measure: Measure = "hours") -> tuple[float, ...]:
    """Where a class ends and the next begins, rising."""
    return tuple(one.low for one in classes(measure)[1:])


def class_of(hours: float) -> LightClass:
    """The class of so many hours."""
    return max((one for one in classes() if hours >= one.low), key=lambda one: one.low, default=classes()[0])
