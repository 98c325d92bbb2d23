"""Where one can walk: the free ground at full size, for a way of a chosen width, from the gates inward.

The middle of a way keeps half its width from crowns that hang low, buildings, walls, fences, water, beds and
rows, and stays inside the lot. Gates wide enough open the walls and fences they stand in.
"""

from __future__ import annotations

from collections.abc import Iterator

import numpy as np
import shapely
from attrs import frozen
from numpy.typing import NDArray
from shapely.geometry.base import BaseGeometry

from yardplan.checks.rules import Rules
from yardplan.checks.shapes import area_of, has_area, line_of, ring_of
from yardplan.checks.survey import Survey
from yardplan.language import later

Shapes = NDArray[np.object_]

#: Corners of a quarter circle in outlines of crowns.
_QUARTER = 8
#: Play that lets a gate as wide as the way pass it, metres.
_PLAY = 0.02
_WET = ("pool", "pond")
#: Ways that can be chosen, by what goes on them, and the rule that gives each its width. The one in force is
#: the rule `access-way`.
CHOICES = (
    (later("on foot"), "access-walk"), (later("a barrow or push mower"), "access-barrow"),
    (later("a garden cart"), "access-cart"), (later("an orchard ladder"), "access-ladder"),
    (later("a ride-on mower"), "access-mower"),
)


@frozen(eq=False)
class Ways:
    """Ground for the middle of a way of `width` metres: `free` everywhere, `reached` from the entries.

    `entered_by` says what the ways start from: gates, paving, or (where neither is drawn) the largest part.
    """

    width: float
    free: BaseGeometry
    reached: BaseGeometry
    entered_by: str


def choices(rules: Rules) -> tuple[tuple[str, float], ...]:
    """What can go on a way and the width it needs, metres."""
    return tuple((words, rules.value(rule)) for words, rule in CHOICES)


def crown_shapes(survey: Survey) -> Shapes:
    """The outline of each crown at full size; flat-trained ones are oblongs along their facing."""
    layout = survey.layout
    shapes = shapely.buffer(shapely.points(layout.xy), np.maximum(layout.reach, _PLAY), quad_segs=_QUARTER)
    for i in np.nonzero(layout.flat)[0]:
        along = np.array([np.cos(layout.facing[i]), np.sin(layout.facing[i])]) * layout.reach[i]
        line = shapely.LineString([layout.xy[i] - along, layout.xy[i] + along])
        shapes[i] = line.buffer(max(float(layout.half_depth[i]), _PLAY), cap_style="flat")
    return np.asarray(shapes, dtype=object)


def _low_crowns(survey: Survey) -> Shapes:
    """Crowns that cannot be walked under; of the others only the stem stands in the way."""
    shapes = crown_shapes(survey)
    headroom = survey.rules.value("walk-under")
    high = np.array([plant.mature.crown_base >= headroom for plant in survey.layout.plants], dtype=bool)
    if high.any():
        stems = shapely.points(survey.layout.xy[high])
        shapes[high] = shapely.buffer(stems, survey.rules.value("trained-wall-near"))
    return shapes


def _openings(survey: Survey, width: float) -> BaseGeometry:
    """Discs that open the barriers at gates wide enough."""
    gates = [gate for gate in survey.yard.gates if gate.width >= width - _PLAY]
    if not gates:
        return shapely.Point()
    places = shapely.points([gate.place for gate in gates])
    radii = np.array([gate.width / 2 + _PLAY for gate in gates])
    return shapely.union_all(shapely.buffer(places, radii))


def _ground(survey: Survey, width: float) -> Iterator[BaseGeometry]:
    """Outlines of what stands on the ground."""
    yard = survey.yard
    yield from (area_of(building.footprint) for building in yard.buildings)
    yield from (area_of(p.outline) for p in yard.pavings if p.kind in _WET)
    yield from (area_of(bed.outline) for bed in yard.beds if has_area(bed.outline))
    opening = _openings(survey, width)
    for barrier in yard.barriers:
        line = line_of(barrier.line).difference(opening)
        if not line.is_empty:
            yield line.buffer(max(barrier.thickness / 2, _PLAY), cap_style="flat")
    for row, line in zip(survey.layout.rows, survey.layout.row_lines, strict=True):
        yield shapely.buffer(line, max(row.mature.spread / 2, _PLAY), cap_style="flat")


def _entries(survey: Survey, width: float) -> tuple[BaseGeometry | None, str]:
    """Where the ways start: gates at the lot line (or any gate), else paving."""
    yard = survey.yard
    ring = ring_of(yard.lot)
    near = survey.rules.value("access-gate-near")
    outer = [g for g in yard.gates if shapely.distance(ring, shapely.Point(g.place)) <= near]
    gates = outer or list(yard.gates)
    if gates:
        discs = [shapely.Point(g.place).buffer(width / 2 + g.width / 2 + near) for g in gates]
        return shapely.union_all(discs), "gate"
    paved = [area_of(p.outline) for p in yard.pavings if p.kind not in _WET]
    if paved:
        return shapely.union_all(paved).buffer(width / 2 + _PLAY), "paving"
    return None, "largest part"


def ways_of(survey: Survey, width: float | None = None) -> Ways | None:
    """The ways of a yard for a width in metres (None: the yard's rule); None without a lot."""
    if not has_area(survey.yard.lot):
        return None
    width = survey.rules.value("access-way") if width is None else width
    blocked = [*_low_crowns(survey), *_ground(survey, width)]
    lot = area_of(survey.yard.lot).buffer(-width / 2)
    inflated = shapely.buffer(np.array(blocked, dtype=object), width / 2, quad_segs=_QUARTER)
    free = lot.difference(shapely.union_all(inflated)) if blocked else lot
    parts = shapely.get_parts(free)
    start, entered_by = _entries(survey, width)
    if start is None:
        reached = max(parts, key=lambda part: float(part.area), default=shapely.Polygon())
    else:
        reached = shapely.union_all(parts[shapely.intersects(parts, start)])
    return Ways(width, free, reached, entered_by)
