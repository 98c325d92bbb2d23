"""Many discs at once: as shapes, and the ground that none of them reaches."""

from __future__ import annotations

import math
from collections.abc import Sequence

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely.geometry.base import BaseGeometry

from yardplan.yard.ground import Point

Array = NDArray[np.float64]
Shapes = NDArray[np.object_]

#: Round edges are drawn with so many corners that they miss the circle by no more than this, metres.
_ROUNDNESS = 0.003
#: Large discs are taken off one by one so many times, each where it reaches most, before the rest at once.
_ONE_BY_ONE = 12


def corners(radius: float) -> int:
    """Corners of a quarter circle that miss it by no more than a hair."""
    return max(8, math.ceil(math.pi / 4.0 * math.sqrt(max(radius, 0.0) / (2.0 * _ROUNDNESS))))


def discs(middles: Array, radii: Array) -> Shapes:
    """Discs about points (n, 2); an empty shape where the radius is not above 0 or not finite."""
    made = np.full(len(radii), shapely.Polygon(), dtype=object)
    sound = np.isfinite(radii) & (radii > 0.0)
    quarters = np.array([corners(float(r)) if ok else 0 for r, ok in zip(radii, sound, strict=True)])
    for quarter in np.unique(quarters[sound]):
        some = quarters == quarter
        angles = -np.arange(4 * quarter) * (np.pi / (2 * quarter))
        rim = np.column_stack([np.cos(angles), np.sin(angles)])
        made[some] = shapely.polygons(middles[some, None, :] + radii[some, None, None] * rim)
    return made


def touches(ground: BaseGeometry, middles: Sequence[Point], radii: Sequence[float]) -> bool:
    """True where any of the discs reaches ground."""
    off = shapely.distance(ground, shapely.points(np.array(middles, dtype=float).reshape(-1, 2)))
    return bool((off <= np.array(radii)).any())


def beyond(ground: BaseGeometry, middles: Sequence[Point], radii: Sequence[float]) -> BaseGeometry:
    """Ground that none of the discs reaches.

    Most of many large discs lie within others: one by one the disc is taken off that reaches farthest about a
    place that is left, until a place is found that none reaches; then only discs at the edge count.
    """
    places, reach = np.array(middles, dtype=float).reshape(-1, 2), np.array(radii, dtype=float)
    left = ground
    for _ in range(_ONE_BY_ONE):
        if left.is_empty or not len(places):
            return left
        x, y = shapely.get_coordinates(left.representative_point())[0]
        over = reach - np.hypot(places[:, 0] - x, places[:, 1] - y)
        most = int(over.argmax())
        if over[most] <= 0.0:
            break
        left = left.difference(discs(places[most : most + 1], reach[most : most + 1])[0])
        places, reach = np.delete(places, most, axis=0), np.delete(reach, most)
    near = shapely.distance(left, shapely.points(places)) < reach
    return left.difference(shapely.union_all(discs(places[near], reach[near]))) if near.any() else left
