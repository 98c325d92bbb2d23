"""Classes of direct sun in hours a day, for the overlay and its legend; the limits are data (sun.csv)."""

from __future__ import annotations

from functools import cache

from attrs import frozen

from yardplan.sun.parameters import figure, parameters

#: From the darkest up: the parameter that holds the class's lower limit, and what it is called.
_CLASSES = (
    ("", "shade"),
    ("class_shade_tolerant", "shade-tolerant plants only"),
    ("class_part", "part sun"),
    ("class_full", "full sun"),
    ("class_full_fruit", "full sun for fruit"),
)


@frozen
class LightClass:
    """Ground with at least `low` hours of direct sun a day, up to the next class; `source` of the limit."""

    low: float
    name: str
    source: str


@cache
def classes() -> tuple[LightClass, ...]:
    """The classes from the darkest up; the first starts at 0 hours."""
    table = parameters()
    return tuple(
        LightClass(figure(key) if key else 0.0, name, table[key].source if key else "")
        for key, name in _CLASSES
    )


def limits() -> tuple[float, ...]:
    """Hours at which a class ends and the next begins, rising."""
    return tuple(one.low for one in classes()[1:])


def class_of(hours: float) -> LightClass:
    """The class of so many hours."""
    return max((one for one in classes() if hours >= one.low), key=lambda one: one.low, default=classes()[0])
