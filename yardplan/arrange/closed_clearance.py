"""Closed ground: buildings, paving, water, lot line and law, services, overhead lines, view triangles."""

from __future__ import annotations

from collections.abc import Iterator

import numpy as np
import shapely
from shapely.geometry.base import BaseGeometry

from yardplan.arrange.closed import Asked, Closed, grown, length, shape_of
from yardplan.arrange.contours import below_zero, lattice_over, nodes_of
from yardplan.checks.clear import lot_line, sight
from yardplan.checks.clearance import conflict_limits
from yardplan.checks.layout import Feature
from yardplan.checks.lines import edges_of, nearest_on
from yardplan.checks.overlaps import TOUCH
from yardplan.checks.room import crowns
from yardplan.checks.shortfall import Limit

#: Step of the grid on which a wall is told from a gable end for flat-trained plants, metres.
_STEP = 0.1
_RIM = 0.5


def closed_clearance(asked: Asked) -> Iterator[Closed]:
    """Ground that buildings, edges, services and views close."""
    for feature in asked.alone.layout.features:
        if feature.sort == "lot":
            yield from _lot(asked, feature)
        for limit in conflict_limits(asked.alone, feature.sort):
            yield from _within(asked, feature, limit, lot_line.NAME)
        if feature.sort == "building":
            yield from _wall(asked, feature)
    yield from _views(asked)


def _within(asked: Asked, feature: Feature, limit: Limit, check: str) -> Iterator[Closed]:
    """All places nearer to a feature than a limit."""
    under = float(limit.under[0])
    shape = grown(shape_of(feature), under)
    if np.isfinite(under) and not shape.is_empty and (under > 0 or shape.area > 0):
        yield asked.closed(shape, check, limit.kind, (feature.id,), wanted=length(float(limit.wanted[0])))


def _lot(asked: Asked, feature: Feature) -> Iterator[Closed]:
    """What lies outside the lot, and inside it nearer to the line than the law asks."""
    lot = shape_of(feature)
    yield asked.closed(asked.known.difference(grown(lot, TOUCH)), lot_line.NAME, "outside", ("lot",))
    law = lot_line.conflicts(asked.alone)
    under = float(law.under[0])
    if under > 0:
        band = grown(lot.boundary, under).intersection(grown(lot, TOUCH))
        yield asked.closed(
            band, lot_line.NAME, law.kind, ("lot",), wanted=length(float(law.wanted[0])),
            height=length(asked.plant.mature.height),
        )


def _wall(asked: Asked, feature: Feature) -> Iterator[Closed]:
    """Where the crown grows into a building; a flat-trained plant may stand along its walls."""
    limit = crowns.wall_conflicts(asked.alone, feature)
    under = float(limit.under[0])
    if under <= 0:
        return
    if not asked.alone.layout.flat[0]:
        yield from _within(asked, feature, limit, crowns.NAME)
        return
    shape = _not_along(asked, feature, under)
    if not shape.is_empty:
        yield asked.closed(shape, crowns.NAME, limit.kind, (feature.id,), wanted=length(limit.wanted[0]))


def _not_along(asked: Asked, feature: Feature, under: float) -> BaseGeometry:
    """Places near a building from which a flat-trained plant would not face the wall."""
    near = grown(shape_of(feature), under)
    nodes = lattice_over(near.buffer(_STEP).bounds, _STEP)
    # Deep inside the building another rule closes the ground.
    rim = nodes_of(nodes.touching(near.difference(shape_of(feature).buffer(-_RIM)))).ravel()
    points = nodes.points[rim]
    feet = nearest_on(points, edges_of([feature.points], [feature.closed]).ends)
    away = feet - points[:, None, :]
    nearest = np.hypot(away[..., 0], away[..., 1]).argmin(axis=1)
    way = away[np.arange(len(points)), nearest]
    value = np.ones(nodes.rows * nodes.cols)
    facing = float(asked.alone.layout.facing[0])
    value[rim] = np.where(crowns.faces(np.arctan2(way[:, 1], way[:, 0]), facing), -1.0, 1.0)
    return near.difference(below_zero(value.reshape(nodes.rows, nodes.cols), nodes))


def _views(asked: Asked) -> Iterator[Closed]:
    around = sight.closed_around(asked.survey, asked.plant)
    if around is None:
        return
    for view in sight.views_of(asked.survey):
        shape = grown(shapely.Polygon(view.corners), around)
        yield asked.closed(
            shape, sight.NAME, "sight", (view.paving,), low=asked.survey.rules.figure("sight-low")
        )


