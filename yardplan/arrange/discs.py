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
#: So many times the discs that reach farthest are taken off, told by so many corners of what is left.
_ROUNDS, _MARKS = 6, 48
#: Corners that lie so near to each other, metres, are the same.
_SAME = 0.01


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
    """Ground that none of the discs reaches, but for the hair by which round edges are drawn.

    Most of many large discs lie within others: those are taken off first that reach farthest about a corner
    of what is left, and again, until only discs count that reach in between.
    """
    places, reach = np.array(middles, dtype=float).reshape(-1, 2), np.array(radii, dtype=float)
    left = ground
    for _ in range(_ROUNDS):
        if left.is_empty or not len(places):
            return left
        over = _over(_marks(left), places, reach)
        most = np.unique(over.argmax(axis=1)[over.max(axis=1) > _ROUNDNESS])
        if not len(most):
            break
        left = left.difference(shapely.union_all(discs(places[most], reach[most])))
        kept = np.setdiff1d(np.arange(len(places)), most)
        kept = kept[shapely.distance(left, shapely.points(places[kept])) < reach[kept] - _ROUNDNESS]
        places, reach = places[kept], reach[kept]
    return left.difference(shapely.union_all(discs(places, reach)))


def _marks(ground: BaseGeometry) -> Array:
    """A point within ground and some of its corners, (n, 2)."""
    corners_ = shapely.get_coordinates(ground)
    few = corners_[:: max(len(corners_) // _MARKS, 1)]
    return np.concatenate([shapely.get_coordinates(ground.representative_point()), few])


def _over(points: Array, places: Array, reach: Array) -> Array:
    """How far each disc (columns) reaches beyond each point (rows), metres; below 0 short of it."""
    off = points[:, None, :] - places
    over: Array = reach - np.hypot(off[..., 0], off[..., 1])
    return over


def distinct(shapes: Shapes) -> Shapes:
    """Shapes without those that lie on another of them, to a centimetre: in an even orchard most."""
    _, first, group = np.unique(
        np.round(shapely.bounds(shapes), 2), axis=0, return_index=True, return_inverse=True
    )
    model = first[group.ravel()]
    alone = (model == np.arange(len(shapes))) | ~shapely.equals_exact(shapes, shapes[model], _SAME)
    kept: Shapes = shapes[alone]
    return kept


def taken_off(ground: BaseGeometry, shapes: Shapes, *, at_once: int) -> BaseGeometry:
    """Ground without shapes: so many at a time, of those that follow only what meets what is left."""
    left = ground
    for start in range(0, len(shapes), at_once):
        shapely.prepare(left)
        few = shapes[start : start + at_once]
        near = few[shapely.intersects(left, few)]
        left = left.difference(shapely.union_all(near)) if len(near) else left
    return left
