"""Lines of a roof from above: ridge, hips and the planes between, in metres.

The planes of a rectangular footprint are exact; of any other footprint the ridge follows the long axis of
the box round it and is cut to the footprint.
"""

from __future__ import annotations

import math
from functools import lru_cache

import numpy as np
import shapely
from attrs import frozen
from shapely.geometry import LineString, Polygon
from shapely.ops import split

from yardplan.drawing.patterns import Segment, area, longest_direction, ring
from yardplan.yard.ground import Building, Outline, Point


@frozen
class RoofPlane:
    """A plane of a roof: its `outline` and the direction its water runs, degrees (None: it is level)."""

    outline: Outline
    falls: float | None


@frozen
class RoofPlan:
    """`ridges` heavy lines, `hips` lighter ones, and the planes."""

    ridges: tuple[Segment, ...]
    hips: tuple[Segment, ...]
    planes: tuple[RoofPlane, ...]


def roof_plan(building: Building) -> RoofPlan:
    """The roof's lines and planes for its form."""
    return _roof_plan(building.footprint, building.roof, building.ridge_angle)


@lru_cache(maxsize=512)
def _roof_plan(footprint: Outline, roof: str, angle: float | None) -> RoofPlan:
    if len(footprint) < 3 or roof == "flat":
        return RoofPlan((), (), (RoofPlane(footprint, None),))
    degrees = longest_direction(footprint) if angle is None else angle
    if roof == "lean-to":
        # The high edge lies on the left of its direction, so water runs to the right.
        return RoofPlan(_high_edge(footprint, degrees), (), (RoofPlane(footprint, degrees - 90.0),))
    box = _box(footprint, degrees)
    if roof == "hip" and len(footprint) == 4:
        return _hipped(footprint, box, degrees)
    return _gabled(footprint, box, degrees)


def _box(footprint: Outline, degrees: float) -> tuple[Point, float, float]:
    """Middle, half length and half width of the box along the ridge's direction."""
    t = math.radians(degrees)
    along, across = np.array([math.cos(t), math.sin(t)]), np.array([-math.sin(t), math.cos(t)])
    corners = np.array(footprint)
    u, v = corners @ along, corners @ across
    middle = along * (u.min() + u.max()) / 2 + across * (v.min() + v.max()) / 2
    return (float(middle[0]), float(middle[1])), float(np.ptp(u)) / 2, float(np.ptp(v)) / 2


def _ends(middle: Point, half: float, degrees: float) -> Segment:
    dx, dy = half * math.cos(math.radians(degrees)), half * math.sin(math.radians(degrees))
    return (middle[0] - dx, middle[1] - dy), (middle[0] + dx, middle[1] + dy)


def _gabled(footprint: Outline, box: tuple[Point, float, float], degrees: float) -> RoofPlan:
    middle, half_length, _ = box
    line = LineString(_ends(middle, half_length * 1.01 + 0.01, degrees))
    inside = shapely.intersection(line, area(footprint))
    ridges = tuple(
        (part.coords[0], part.coords[-1])
        for part in getattr(inside, "geoms", [inside])
        if part.geom_type == "LineString" and not part.is_empty
    )
    planes = []
    for part in split(area(footprint), line).geoms:
        if isinstance(part, Polygon):
            planes.append(RoofPlane(ring(part), _away(part, middle, degrees)))
    return RoofPlan(ridges, (), tuple(planes))


def _away(plane: Polygon, middle: Point, degrees: float) -> float:
    """The direction square to the ridge that leads from it to the plane."""
    t = math.radians(degrees)
    side = -math.sin(t) * (plane.centroid.x - middle[0]) + math.cos(t) * (plane.centroid.y - middle[1])
    return degrees + (90.0 if side > 0 else -90.0)


def _hipped(footprint: Outline, box: tuple[Point, float, float], degrees: float) -> RoofPlan:
    middle, half_length, half_width = box
    start, end = _ends(middle, max(half_length - half_width, 0.0), degrees)
    nearest = [start if math.dist(c, start) <= math.dist(c, end) else end for c in footprint]
    planes = []
    for i, corner in enumerate(footprint):
        after = footprint[(i + 1) % 4]
        a, b = nearest[i], nearest[(i + 1) % 4]
        outline = (corner, after, b) if a == b else (corner, after, b, a)
        edge = math.degrees(math.atan2(after[1] - corner[1], after[0] - corner[0]))
        planes.append(RoofPlane(outline, edge - 90.0 if _anticlockwise(footprint) else edge + 90.0))
    hips = tuple(zip(footprint, nearest, strict=True))
    return RoofPlan(((start, end),) if start != end else (), hips, tuple(planes))


def _anticlockwise(outline: Outline) -> bool:
    pairs = zip(outline, (*outline[1:], outline[0]), strict=True)
    return sum(a[0] * b[1] - b[0] * a[1] for a, b in pairs) > 0


def _high_edge(footprint: Outline, degrees: float) -> tuple[Segment, ...]:
    """The edge farthest to the left of the direction."""
    t = math.radians(degrees)
    across = (-math.sin(t), math.cos(t))
    pairs = zip(footprint, (*footprint[1:], footprint[0]), strict=True)
    return (max(pairs, key=lambda e: sum((e[0][i] + e[1][i]) * across[i] for i in (0, 1))),)
