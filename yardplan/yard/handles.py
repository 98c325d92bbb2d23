"""The places by which a thing is changed, and the ground it covers. Metres."""

from __future__ import annotations

import math

from attrs import evolve

from yardplan.yard import curves, edits, pictures
from yardplan.yard.edges import LOT, outline_of
from yardplan.yard.ground import Curve, Dimension, Outline, Picture, Point
from yardplan.yard.yard import Thing, Yard

#: No circle is smaller, metres.
_LEAST_RADIUS = 0.05


def handles_of(yard: Yard, key: str) -> Outline:
    """The places that can be taken hold of: corners, points of a curve, ends and line of a dimension."""
    curve = edits.curve_of(yard, key)
    if curve is not None:
        return curves.grips(curve)
    thing = yard.find(key)
    if isinstance(thing, Dimension):
        a, b = line_of(thing)
        return (*thing.ends, ((a[0] + b[0]) / 2, (a[1] + b[1]) / 2))
    return outline_of(yard, key)


def with_handle(yard: Yard, key: str, number: int, to: Point) -> Yard:
    """The yard with one of these places somewhere else; the line of a dimension moves across itself."""
    thing = yard.find(key)
    if isinstance(thing, Dimension) and number >= len(thing.ends):
        return edits.replace(yard, evolve(thing, off=offset_of(thing.ends, to)))
    return edits.move_corner(yard, key, number, to)


def with_handles(yard: Yard, key: str, points: Outline) -> Yard:
    """The yard with other corners or curve points of a thing or the lot, as many as it may have."""
    curve = edits.curve_of(yard, key)
    if curve is not None and curve.kind != "circle":
        return edits.set_curve(yard, key, evolve(curve, points=points))
    if key == LOT:
        return edits.set_lot(yard, points)
    thing = yard.find(key)
    return edits.replace(yard, edits.with_points(thing, points)) if thing is not None else yard


def can_bend(yard: Yard, key: str) -> bool:
    """True for what can be drawn along a curve: the lot line, paving and beds."""
    return (key == LOT and len(yard.lot) > 2) or hasattr(yard.find(key), "curve")


def bent(yard: Yard, key: str, kind: str, radius: float = 0.0) -> Yard:
    """The yard with an outline drawn straight (`corners`), `smooth`, or `rounded` by a radius in metres.

    The points it was drawn by stay; a circle gives the ends of its axes. A `circle` is as large as what was
    there and lies round its middle.
    """
    points = handles_of(yard, key)
    if kind == "circle":
        return edits.set_curve(yard, key, _as_circle(outline_of(yard, key)))
    if kind == "smooth":
        return edits.set_curve(yard, key, Curve(kind="smooth", points=points))
    if kind == "rounded":
        return edits.set_curve(yard, key, Curve(kind="rounded", points=points, radius=radius))
    if key == LOT:
        return edits.set_lot(yard, points)
    thing = yard.find(key)
    return edits.replace(yard, edits.with_points(thing, points)) if thing is not None else yard


def _as_circle(outline: Outline) -> Curve:
    """A circle of the same area round the mean of the corners."""
    x, y = (sum(p[i] for p in outline) / len(outline) for i in (0, 1))
    ring = zip(outline, (*outline[1:], outline[0]), strict=True)
    area = abs(sum(a[0] * b[1] - b[0] * a[1] for a, b in ring)) / 2
    return Curve(kind="circle", points=((x, y),), radius=max(math.sqrt(area / math.pi), _LEAST_RADIUS))


def covered(thing: Thing) -> Outline:
    """Points round the ground that a thing is drawn on: corners of a picture, a dimension with its line."""
    if isinstance(thing, Picture):
        return pictures.corners(thing)
    if isinstance(thing, Dimension):
        return (*thing.ends, *line_of(thing))
    return edits.points_of(thing)


def line_of(dimension: Dimension) -> Outline:
    """The two ends of the line that carries the length: `off` metres to the left of its ends."""
    (ax, ay), (bx, by) = dimension.ends
    long = math.hypot(bx - ax, by - ay)
    if long < 1e-9:
        return dimension.ends
    x, y = -(by - ay) / long * dimension.off, (bx - ax) / long * dimension.off
    return ((ax + x, ay + y), (bx + x, by + y))


def offset_of(ends: Outline, place: Point) -> float:
    """How far a place lies to the left of the line through two others, metres."""
    (ax, ay), (bx, by) = ends
    long = math.hypot(bx - ax, by - ay)
    return ((bx - ax) * (place[1] - ay) - (by - ay) * (place[0] - ax)) / long if long > 1e-9 else 0.0
