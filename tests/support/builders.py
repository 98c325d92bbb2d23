"""Short builders that make yards in words."""

from __future__ import annotations

from typing import Any

from yardplan.yard.ground import Point
from yardplan.yard.planting import Planting, PlantKey
from yardplan.yard.site import Site
from yardplan.yard.yard import Yard


def plant(key: str, what: str, place: Point, **fields: Any) -> Planting:
    """A planting: plant("A1", "apple:Liberty", (3, 4), rootstock="M26")."""
    return Planting(id=key, plant=PlantKey.parse(what), place=place, **fields)


def yard_of(*plantings: Planting, width: float = 30, depth: float = 20, **fields: Any) -> Yard:
    """A rectangular yard at 42 N holding the plantings."""
    site = fields.pop("site", Site(name="Test yard", latitude=42.0, longitude=-76.0, zone="5b"))
    lot = ((0.0, 0.0), (float(width), 0.0), (float(width), float(depth)), (0.0, float(depth)))
    return Yard(site=site, lot=lot, plantings=plantings, **fields)
