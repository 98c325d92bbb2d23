"""Closed ground: soil that cannot be made acid, and wet ground; a bed may open what the ground closes."""

from __future__ import annotations

from collections.abc import Callable, Iterator

import shapely
from shapely.geometry.base import BaseGeometry

from yardplan.arrange.closed import Asked, Closed, shape_of
from yardplan.checks import drainage, soil
from yardplan.checks.finding import Figure, Weight
from yardplan.checks.soil_plan import Rooting, plan_for, plant_rooting
from yardplan.plants.crop import Crop
from yardplan.yard.planting import Bed

#: What a place is like: the ground there, where one roots, and how far it is raised, metres.
_Home = tuple[BaseGeometry, Rooting, float]


def closed_soil(asked: Asked) -> Iterator[Closed]:
    """Ground and beds whose soil raises a conflict; nothing for a plant in a container."""
    crop = asked.plant.crop
    if crop is None or asked.plant.container is not None:
        return
    homes = list(_homes(asked, crop))
    rules = asked.survey.rules
    yield from _where(
        asked, homes, soil.NAME, "needs_bed", lambda one, _: soil.is_conflict(plan_for(one, rules))
    )
    yield from _where(
        asked, homes, drainage.NAME, "wet",
        lambda one, raised: drainage.weight_of(rules, one, raised) is Weight.CONFLICT,
    )


def _homes(asked: Asked, crop: Crop) -> Iterator[_Home]:
    """The open ground and every bed; where beds overlap the later one counts."""
    beds = [
        (feature.thing, shape_of(feature))
        for feature in asked.alone.layout.features if isinstance(feature.thing, Bed)
    ]
    left = asked.known
    for bed, shape in reversed(beds):
        here = shape.intersection(left)
        left = left.difference(shape)
        yield here, plant_rooting(asked.survey, asked.plant, crop, bed), bed.raised
    yield left, plant_rooting(asked.survey, asked.plant, crop, None), 0.0


def _where(
    asked: Asked, homes: list[_Home], check: str, kind: str, closes: Callable[[Rooting, float], bool]
) -> Iterator[Closed]:
    shut = [(shape, one) for shape, one, raised in homes if closes(one, raised)]
    if not shut:
        return
    shown = {"crop": Figure(shut[0][1].crop.name, "text")}
    if shut[-1][1].soil.ph is not None:
        shown["ph"] = Figure(shut[-1][1].soil.ph, "ph")
    yield asked.closed(shapely.union_all([shape for shape, _ in shut]), check, kind, (), **shown)
