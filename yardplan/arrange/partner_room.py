"""Whether a partner finds clear ground at all: within reach of the plant it is for, or anywhere in the yard.

Light is left out, which takes longest; the ground shown for the plant in hand counts it.
"""

from __future__ import annotations

from collections.abc import Collection

import shapely
from shapely.geometry.base import BaseGeometry

from yardplan.arrange.clear_ground import clear_ground
from yardplan.arrange.closed import asked_of
from yardplan.arrange.partners import Fits
from yardplan.checks.pollination import NAME as POLLINATION
from yardplan.checks.pollination import net_for
from yardplan.checks.survey import Survey
from yardplan.plants.crop import Size
from yardplan.plants.growth import mature_size
from yardplan.plants.pollen_range import pollen_range
from yardplan.yard.planting import Planting, PlantKey

_Kind = tuple[str, Size]


def fitting(survey: Survey, ids: Collection[str] = ()) -> Fits:
    """Tells of a cultivar in its usual form if there is clear ground for it, near the things in `ids`.

    Cultivars of one crop and size share the answer; pollen is left to the finder.
    """
    near = _around(survey, ids)
    known: dict[_Kind, bool] = {}

    def fits(key: PlantKey) -> bool:
        planting = Planting(id="", plant=key, place=(0.0, 0.0))
        kind = (key.crop, mature_size(survey.catalogue, planting))
        if kind not in known:
            ground = _clear(survey, planting)
            known[kind] = bool(ground.intersects(near) if near is not None else not ground.is_empty)
        return known[kind]

    return fits


def _around(survey: Survey, ids: Collection[str]) -> BaseGeometry | None:
    """Ground within the best range of pollen of some things; None without any."""
    net = net_for(survey)
    nodes = [net.nodes[net.number[one]] for one in ids if one in net.number]
    if not nodes:
        return None
    return shapely.union_all([
        shapely.MultiPoint(node.points).buffer(
            pollen_range(node.cultivar.crop, node.size, net.place.limits).best
        ) for node in nodes
    ])


def _clear(survey: Survey, planting: Planting) -> BaseGeometry:
    """Clear ground of a plant that is not planted yet, whatever sets it."""
    closed = [
        one.geometry for one in clear_ground(survey, planting, light=None).closed if one.check != POLLINATION
    ]
    room = asked_of(survey, planting).room
    return room.difference(shapely.union_all(closed)) if closed else room
