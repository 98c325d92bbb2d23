"""Builders of yards for the sun: plants of given sizes without the catalogue, and a yard of tests."""

from __future__ import annotations

from typing import Any

import numpy as np

from yardplan.plants.crop import Habit, Size
from yardplan.plants.stand import Stand, Standing, StandingBed, StandingRow
from yardplan.sun.casters import Caster, Crown, barrier_casters, building_casters, crown
from yardplan.sun.parameters import Shape
from yardplan.sun.scene import Scene, scene_of
from yardplan.sun.season import Positions, over_dates
from yardplan.yard.ground import Barrier, Building, Point
from yardplan.yard.planting import Bed, Planting, PlantKey, Row
from yardplan.yard.site import Site
from yardplan.yard.yard import Yard


def size(spread: float, height: float, base: float = 0.5, habit: Habit = "shade tree") -> Size:
    """A size; the habit `shade tree` stands for an ellipsoid."""
    return Size(spread=spread, height=height, crown_base=base, habit=habit)


def tree(key: str, place: Point, of: Size, **fields: Any) -> Standing:
    """A planted tree of a size."""
    thing = Planting(id=key, plant=PlantKey("apple", "Test"), place=place, **fields)
    return Standing(id=key, thing=thing, key=thing.plant, place=place, size=of, mature=of)


def yard_and_stand(
    *trees: Standing, site: Site | None = None, lot: float = 30.0, rows: tuple[StandingRow, ...] = (),
    beds: tuple[StandingBed, ...] = (), **fields: Any,
) -> tuple[Yard, Stand]:
    """A square yard with trees, and its stand."""
    corners = ((0.0, 0.0), (lot, 0.0), (lot, lot), (0.0, lot))
    yard = Yard(
        site=site or Site(latitude=42.0, longitude=-76.0), lot=corners,
        plantings=tuple(t.thing for t in trees if isinstance(t.thing, Planting)),
        rows=tuple(r.row for r in rows), beds=tuple(b.bed for b in beds), **fields,
    )
    return yard, Stand(year=None, plants=trees, rows=rows, beds=beds)


def scene(*trees: Standing, **fields: Any) -> Scene:
    """The scene of a square yard with trees."""
    return scene_of(*yard_and_stand(*trees, **fields))


def bed(key: str, x: float, y: float, width: float, depth: float) -> StandingBed:
    """A rectangular bed."""
    outline = ((x, y), (x + width, y), (x + width, y + depth), (x, y + depth))
    return StandingBed(id=key, bed=Bed(id=key, outline=outline))


def row(key: str, line: tuple[Point, ...], count: int, spacing: float, of: Size) -> StandingRow:
    """A row of canes or the like."""
    thing = Row(id=key, plant=PlantKey("raspberry", "Test"), line=line, count=count, spacing=spacing)
    return StandingRow(id=key, row=thing, size=of, mature=of)


def box(key: str, x: float, y: float, width: float, depth: float, height: float, **fields: Any) -> Building:
    """A building with a flat roof over a rectangle."""
    corners = ((x, y), (x + width, y), (x + width, y + depth), (x, y + depth))
    return Building(id=key, footprint=corners, eaves=height, ridge=height, **fields)


def mid_months(site: Site, step: float = 20.0) -> Positions:
    """The 15th of April to September at mid-steps."""
    from datetime import date

    return over_dates([date(2026, month, 15) for month in range(4, 10)], site, step, staggered=False)


def random_trees(
    rng: np.random.Generator, number: int, width: float, shape: Shape = "ellipsoid", *,
    gradient: Point = (0.0, 0.0),
) -> list[Crown]:
    """Random trees: height 1.9 to 6.3 m, spread 1.4 to 5.7 m, base 0.2 to 1.0 m."""
    found = []
    for n in range(number):
        spread, light = rng.uniform(1.4, 5.7), float(rng.choice([0.1, 0.2, 0.3]))
        height = rng.uniform(max(1.9, 0.8 * spread), 6.3)
        x, y = rng.uniform(1.0, width - 1.0, 2)
        one = crown(
            f"T{n}", shape, (float(x), float(y)), spread, rng.uniform(0.2, 1.0), height, (light,) * 12,
            gradient,
        )
        assert one is not None
        found.append(one)
    return found


def proving_yard(trees: int = 30, width: float = 30.0, seed: int = 7) -> tuple[Site, list[Caster]]:
    """House, fence and ellipsoid trees at 42 N, the drawing turned by 20 degrees."""
    site = Site(latitude=42.0, longitude=-76.0, north=20.0)
    house = box("house", 9.0, 18.0, 12.0, 8.0, 5.5)
    fence = Barrier(id="fence", line=((0.5, 0.5), (29.5, 0.5)), height=1.8, thickness=0.1)
    casters: list[Caster] = [*building_casters(house), *barrier_casters(fence, (0.0,) * 12)]
    return site, casters + list(random_trees(np.random.default_rng(seed), trees, width))

