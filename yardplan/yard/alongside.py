"""A strip alongside something: a path by a fence, a bed along a house. Distance and width in metres."""

from __future__ import annotations

from typing import Literal

import shapely
from attrs import frozen
from shapely.geometry.base import BaseGeometry

from yardplan.language import tr
from yardplan.yard import edits
from yardplan.yard.edges import edges_of, is_closed, outline_of
from yardplan.yard.edits import EditError, next_key
from yardplan.yard.ground import Outline, Paving
from yardplan.yard.planting import Bed
from yardplan.yard.yard import Yard

Make = Literal["path", "bed"]
#: Corners sharper than this are cut off, as a multiple of the distance.
_MITRE = 3.0
#: Ground narrower than this is no strip, and the cut that opens a ring, metres.
_NARROW, _CUT = 0.02, 0.002
#: Distances and widths that can be meant, metres.
MOST_AWAY, MOST_WIDE = 100.0, 100.0


@frozen(kw_only=True)
class Along:
    """What a strip follows: thing or lot `key`, one `edge` of it (from 0) or all of it (None).

    `away` metres between the two, `width` metres of the strip. `left` True: left of a line in the order of
    its corners; of an outline, inside it.
    """

    key: str
    edge: int | None = None
    left: bool = True
    away: float = 0.0
    width: float = 1.0


def strip(yard: Yard, along: Along) -> tuple[Outline, ...]:
    """The outlines of the strip, mostly one. Raises EditError where there is no room or a figure is wrong."""
    _check(along)
    points, closed = outline_of(yard, along.key), is_closed(yard, along.key)
    edges = edges_of(points, closed=closed)
    if not edges:
        raise EditError(
            tr("Nothing can lie alongside this: choose a fence, a building, a bed or the lot line")
        )
    if along.edge is None:
        shape = _round(points, along) if closed and len(points) > 2 else _beside(points, along)
    else:
        shape = _beside(_inside_left(points, edges[along.edge], closed=closed), along)
    found = [_outline(part) for part in _parts(shape)]
    if not found:
        raise EditError(tr("There is no room for it on this side: try less width, or the other side"))
    return tuple(found)


def with_strip(yard: Yard, along: Along, make: Make) -> tuple[Yard, tuple[str, ...]]:
    """The yard with a path or a bed alongside, and the new keys. Raises EditError."""
    keys = []
    for outline in strip(yard, along):
        key = next_key(yard, "PV" if make == "path" else "BD")
        path = Paving(id=key, kind="path", outline=outline)
        thing = path if make == "path" else Bed(id=key, outline=outline)
        yard = edits.add(yard, thing)
        keys.append(key)
    return yard, tuple(keys)


def _check(along: Along) -> None:
    if not 0 <= along.away <= MOST_AWAY:
        raise EditError(tr("The distance must lie between 0 and {most} m", most=f"{MOST_AWAY:g}"))
    if not _NARROW <= along.width <= MOST_WIDE:
        raise EditError(tr("The width must lie between 0.02 and {most} m", most=f"{MOST_WIDE:g}"))


def _inside_left(points: Outline, edge: tuple[tuple[float, float], ...], *, closed: bool) -> Outline:
    """The edge so directed that the inside of a closed outline lies on its left."""
    if closed and len(points) > 2 and not shapely.LinearRing(points).is_ccw:
        return edge[::-1]
    return edge


def _beside(line: Outline, along: Along) -> BaseGeometry:
    """The ground between two parallels of a line."""
    side = 1.0 if along.left else -1.0
    near, far = (_parallel(line, side * off) for off in (along.away, along.away + along.width))
    if near.is_empty or far.is_empty:
        return shapely.Polygon()
    ring = [*near.coords, *reversed(far.coords)]
    return shapely.make_valid(shapely.Polygon(ring)) if len(ring) > 3 else shapely.Polygon()


def _parallel(line: Outline, off: float) -> shapely.LineString:
    """A line `off` metres to the left; the longest piece where it falls apart."""
    moved: BaseGeometry = shapely.LineString(line)
    if off:
        moved = shapely.offset_curve(moved, off, join_style="mitre", mitre_limit=_MITRE)
    parts = shapely.get_parts(moved)
    return max(parts, key=lambda part: part.length) if len(parts) else shapely.LineString()


def _round(points: Outline, along: Along) -> BaseGeometry:
    """The ground between two outlines round or within a closed one, cut open so that it is one outline."""
    area = shapely.make_valid(shapely.Polygon(points))
    side = -1.0 if along.left else 1.0
    edges = [
        shapely.buffer(area, side * off, join_style="mitre", mitre_limit=_MITRE)
        for off in (along.away, along.away + along.width)
    ]
    larger, smaller = edges if along.left else edges[::-1]
    return _cut_open(shapely.difference(larger, smaller), points[0], along)


def _cut_open(shape: BaseGeometry, corner: tuple[float, float], along: Along) -> BaseGeometry:
    """A ring cut through by a hair's breadth at a corner: an outline cannot have a hole."""
    if not any(part.interiors for part in _parts(shape)):
        return shape
    middle = shapely.centroid(shape)
    far = 4 * (along.away + along.width) + shapely.distance(middle, shapely.Point(corner))
    dx, dy = corner[0] - middle.x, corner[1] - middle.y
    long = max((dx * dx + dy * dy) ** 0.5, 1e-9)
    ray = shapely.LineString([(middle.x, middle.y), (middle.x + dx / long * far, middle.y + dy / long * far)])
    return shapely.difference(shape, shapely.buffer(ray, _CUT / 2, cap_style="flat"))


def _parts(shape: BaseGeometry) -> list[shapely.Polygon]:
    """The pieces wide enough to be something."""
    return [
        part for part in shapely.get_parts(shape, return_index=False)
        if isinstance(part, shapely.Polygon) and not shapely.buffer(part, -_NARROW / 4).is_empty
    ]


def _outline(part: shapely.Polygon) -> Outline:
    ring = shapely.normalize(part).exterior
    points = shapely.LinearRing(ring).coords[:-1]
    return tuple((round(x, 4), round(y, 4)) for x, y in points[::-1])
