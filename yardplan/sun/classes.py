"""Classes of direct sun, of open light and of what planting takes, for the overlay and its legend.

The limits are data (sun.csv).
"""

from __future__ import annotations

from functools import cache
from typing import Literal

from attrs import frozen

from yardplan.language import later
from yardplan.sun.parameters import figure, parameters

#: What a ground's numbers are: hours a day, percent of open light, or how much of these planting takes.
Measure = Literal["hours", "share", "taken", "share taken"]

#: From the least up: the parameter that holds the class's lower limit, and what it is called.
_CLASSES: dict[Measure, tuple[tuple[str, str], ...]] = {
    "hours": (
        ("", later("shade")),
        ("class_shade_tolerant", later("shade-tolerant plants only")),
        ("class_part", later("part sun")),
        ("class_full", later("full sun")),
        ("class_full_fruit", later("full sun for fruit")),
    ),
    "share": (
        ("", later("dark")), ("share_dim", later("dim")), ("share_bright", later("bright")),
        ("share_open", later("nearly open")),
    ),
    "taken": (
        ("", later("hardly any")), ("taken_some", later("some")), ("taken_class", later("about a class")),
        ("taken_much", later("much")),
    ),
    "share taken": (
        ("", later("hardly any")), ("share_taken_some", later("some")), ("share_taken_half", later("much")),
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
