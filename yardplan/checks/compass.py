"""Compass words for directions on the drawing, honouring where north lies."""

from __future__ import annotations

import math

from yardplan.language import later
from yardplan.yard.ground import Point

WORDS = (
    later("north"), later("north-east"), later("east"), later("south-east"), later("south"),
    later("south-west"), later("west"), later("north-west"),
)
#: The same as sides on which something stands.
SIDES = {
    "north": later("the north"), "north-east": later("the north-east"), "east": later("the east"),
    "south-east": later("the south-east"), "south": later("the south"),
    "south-west": later("the south-west"), "west": later("the west"),
    "north-west": later("the north-west"),
}
ANY_SIDE = later("any side")


def bearing(start: Point, end: Point, north: float) -> float:
    """Degrees clockwise from true north; `north`: north's direction clockwise from the drawing's +y."""
    return (math.degrees(math.atan2(end[0] - start[0], end[1] - start[1])) - north) % 360.0


def compass(start: Point, end: Point, north: float) -> str:
    """The nearest of the eight winds from one place to another; "any side" where they are one place."""
    if math.hypot(end[0] - start[0], end[1] - start[1]) < 1e-6:
        return ANY_SIDE
    return WORDS[round(bearing(start, end, north) / 45.0) % 8]
