"""Compass words for directions on the drawing, honouring where north lies."""

from __future__ import annotations

import math

from yardplan.yard.ground import Point

WORDS = (
    "north", "north-east", "east", "south-east", "south", "south-west", "west", "north-west",
)


def bearing(start: Point, end: Point, north: float) -> float:
    """Degrees clockwise from true north; `north`: north's direction clockwise from the drawing's +y."""
    return (math.degrees(math.atan2(end[0] - start[0], end[1] - start[1])) - north) % 360.0


def compass(start: Point, end: Point, north: float) -> str:
    """The nearest of the eight winds from one place to another; "any side" where they are one place."""
    if math.hypot(end[0] - start[0], end[1] - start[1]) < 1e-6:
        return "any side"
    return WORDS[round(bearing(start, end, north) / 45.0) % 8]
