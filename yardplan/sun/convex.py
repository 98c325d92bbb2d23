"""Footprints as convex pieces, and convex solids with flat faces over them."""

from __future__ import annotations

import itertools
from collections.abc import Sequence

import numpy as np
import shapely
from attrs import field, frozen
from shapely.geometry import MultiPolygon, Polygon
from shapely.geometry.base import BaseGeometry

from yardplan.sun.position import Floats
from yardplan.yard.ground import Point

#: Pieces smaller than this, square metres, cast no shadow worth counting.
SMALLEST = 1e-6
#: Union of two pieces that fills its convex hull to this share is convex.
_CONVEX = 1.0 - 1e-9


def polygons_of(outline: Sequence[Point]) -> list[Polygon]:
    """Valid polygons of a closed line; one that crosses itself is cut where it crosses. May be empty."""
    points = [p for p in outline if np.isfinite(p).all()]
    if len(points) < 3:
        return []
    return _parts(shapely.make_valid(Polygon(points)))


def _parts(shape: BaseGeometry) -> list[Polygon]:
    if isinstance(shape, Polygon):
        return [shape] if shape.area > SMALLEST else []
    return [part for one in getattr(shape, "geoms", ()) for part in _parts(one)]


def convex_pieces(shape: Polygon | MultiPolygon) -> list[Floats]:
    """Corners, counter-clockwise, of convex pieces that fill the shape without overlap."""
    pieces: list[Polygon] = []
    for part in _parts(shape):
        pieces += [part] if _is_convex(part) else _merged(_slabs(part))
    return [_corners(piece) for piece in pieces]


def _is_convex(shape: BaseGeometry) -> bool:
    return isinstance(shape, Polygon) and bool(shape.area >= _CONVEX * shape.convex_hull.area)


def _corners(piece: Polygon) -> Floats:
    ring = shapely.get_coordinates(piece.convex_hull.simplify(0.0).normalize())[:-1]
    return np.asarray(ring[::-1] if _area(ring) < 0 else ring)


def _area(ring: Floats) -> float:
    x, y = ring[:, 0], ring[:, 1]
    return float(np.sum(x * np.roll(y, -1) - y * np.roll(x, -1)) / 2.0)


def _slabs(shape: Polygon) -> list[Polygon]:
    """Cut by lines through every corner, along the first wall: the parts are trapezoids."""
    ring = shapely.get_coordinates(shape)
    along = ring[1] - ring[0]
    along = along / np.hypot(*along)
    across = np.array([-along[1], along[0]])
    levels = np.unique(np.round(ring @ across, 9))
    far = float(np.abs(ring @ along).max()) + 1.0
    parts: list[Polygon] = []
    for low, high in itertools.pairwise(levels):
        ends = (far * -along, far * along)
        band = Polygon([ends[0] + low * across, ends[1] + low * across,
                        ends[1] + high * across, ends[0] + high * across])
        parts += _parts(shape.intersection(band))
    return parts


def _merged(pieces: list[Polygon]) -> list[Polygon]:
    """Join neighbours while the union stays convex."""
    pieces = list(pieces)
    first = 0
    while first < len(pieces):
        for other in range(first + 1, len(pieces)):
            union = pieces[first].union(pieces[other])
            if isinstance(union, Polygon) and _is_convex(union):
                pieces[first] = union
                del pieces[other]
                break
        else:
            first += 1
    return pieces


@frozen(eq=False)
class Solid:
    """A convex solid with flat faces: inside where `normals` @ p <= `offsets`.

    `corners` (v, 3), `normals` (f, 3) pointing out, `offsets` (f,). Heights are above the ground under each
    point, so that a slope is level here (see sun.casters).
    """

    corners: Floats
    normals: Floats = field()
    offsets: Floats = field()


#: A roof plane: height a + b x + c y.
Plane = tuple[float, float, float]


def clipped(ring: Floats, normal: Floats, offset: float) -> Floats:
    """The part of a convex ring where normal . p <= offset (Sutherland and Hodgman, 1974)."""
    if len(ring) == 0:
        return ring
    beyond = ring @ normal - offset
    kept: list[Floats] = []
    for here, value in enumerate(beyond):
        there = (here + 1) % len(ring)
        if value <= 0:
            kept.append(ring[here])
        if (value < 0 < beyond[there]) or (beyond[there] < 0 < value):
            share = value / (value - beyond[there])
            kept.append(ring[here] + share * (ring[there] - ring[here]))
    return np.array(kept).reshape(-1, 2)


def _heights(ring: Floats, plane: Plane) -> Floats:
    return np.asarray(plane[0] + ring @ np.array(plane[1:]))


def _roof_corners(ring: Floats, planes: Sequence[Plane]) -> Floats:
    """Corners of the lowest of several planes over a convex ring."""
    corners = []
    for plane in planes:
        part = ring
        for other in planes:
            if other is not plane:
                normal = np.array([plane[1] - other[1], plane[2] - other[2]])
                part = clipped(part, normal, other[0] - plane[0])
        if len(part):
            corners.append(np.column_stack([part, _heights(part, plane)]))
    return np.concatenate(corners)


def roofed(ring: Floats, low: float | Plane, planes: Sequence[Plane]) -> Solid:
    """The solid over a convex ring (counter-clockwise) between `low` and the lowest of `planes`."""
    floor: Plane = low if isinstance(low, tuple) else (low, 0.0, 0.0)
    below = np.column_stack([ring, _heights(ring, floor)])
    above = _roof_corners(ring, planes)
    edges = np.roll(ring, -1, axis=0) - ring
    sides = np.column_stack([edges[:, 1], -edges[:, 0], np.zeros(len(ring))])
    sides /= np.linalg.norm(sides, axis=1, keepdims=True)
    tops = np.array([[-b, -c, 1.0] for _, b, c in planes])
    normals = np.concatenate([sides, [[floor[1], floor[2], -1.0]], tops])
    side_offsets = np.sum(sides[:, :2] * ring, axis=1)
    offsets = np.concatenate([side_offsets, [-floor[0]], [plane[0] for plane in planes]])
    return Solid(np.concatenate([below, above]), normals, offsets)
