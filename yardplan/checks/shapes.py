"""Outlines and lines of the yard as shapes that geometry can work with, whatever was drawn.

Coordinates are rounded to a thousandth of a millimetre; an outline that crosses itself is mended, one without
area is empty. Shapes are kept by their outline, so that what did not move costs nothing.
"""

from __future__ import annotations

from functools import lru_cache

import numpy as np
import shapely
from shapely.geometry.base import BaseGeometry

from yardplan.yard.ground import Outline

_DIGITS = 6
#: Areas smaller than this are none, m2.
_LEAST = 1e-6


def _rounded(outline: Outline) -> list[tuple[float, float]]:
    return [(round(x, _DIGITS), round(y, _DIGITS)) for x, y in outline]


@lru_cache(maxsize=4096)
def area_of(outline: Outline) -> BaseGeometry:
    """The area of an outline; empty where it has none."""
    if len(outline) < 3:
        return shapely.Polygon()
    shape: BaseGeometry = shapely.Polygon(_rounded(outline))
    if not shape.is_valid:
        # Keeps what lies inside a line that crosses itself, and drops the loose ends.
        parts = [part for part in shapely.get_parts(shapely.make_valid(shape)) if part.area > _LEAST]
        shape = shapely.union_all(np.array(parts, dtype=object)) if parts else shapely.Polygon()
    return shape if shape.area > _LEAST else shapely.Polygon()


@lru_cache(maxsize=4096)
def line_of(outline: Outline) -> BaseGeometry:
    """The line through the points; one point gives a line of no length."""
    points = _rounded(outline)
    return shapely.LineString(points if len(points) > 1 else points * 2)


@lru_cache(maxsize=256)
def ring_of(outline: Outline) -> BaseGeometry:
    """The closed line round an outline of three points or more."""
    return shapely.LinearRing(_rounded(outline))


def has_area(outline: Outline) -> bool:
    """True for an outline that encloses something."""
    return not area_of(outline).is_empty


def coordinates(shape: BaseGeometry) -> Outline:
    """The points of a shape."""
    return tuple((float(x), float(y)) for x, y in shapely.get_coordinates(shape))
