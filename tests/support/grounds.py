"""Random yards for clear ground, and what the real checks say of a plant set down in them."""

from __future__ import annotations

import math

import numpy as np
from attrs import evolve

from yardplan.arrange.clear_ground import ClearGround
from yardplan.checks.finding import Weight
from yardplan.checks.run import CHECKS, findings
from yardplan.checks.survey import Survey, survey_of
from yardplan.sun.light import light_report
from yardplan.sun.scene import scene_of
from yardplan.sun.season import Detail
from yardplan.yard import edits
from yardplan.yard.ground import Barrier, Building, Paving, Point, Service, StandingTree
from yardplan.yard.planting import Bed, Container, Planting, PlantKey, Row
from yardplan.yard.site import Site, Soil
from yardplan.yard.yard import Yard

#: How exactly the edge of clear ground is known, metres.
BAND = 0.1

#: Conflicts as (check, things).
Raised = set[tuple[str, tuple[str, ...]]]
_KINDS = (
    "apple:Liberty", "apple:Egremont Russet", "apple:Bramley's Seedling", "european pear:Conference",
    "sweet cherry:Lapins", "sweet cherry:Newfane", "peach:Redhaven", "northern highbush blueberry:Patriot",
    "european plum:Stanley", "gooseberry:Poorman",
)
_FORMS = (None, None, None, "espalier", "cordon")
_PLACELESS = frozenset(check.name for check in CHECKS if not check.places)


def planting(rng: np.random.Generator, key: str, place: Point) -> Planting:
    """A random plant at a place."""
    return Planting(
        id=key, plant=PlantKey.parse(str(rng.choice(_KINDS))), place=place,
        form=_FORMS[rng.integers(len(_FORMS))], facing=float(rng.choice([0.0, 30.0, 90.0])),
        group="G" if rng.random() < 0.1 else None,
    )


def _spot(rng: np.random.Generator, wide: float, deep: float) -> Point:
    return float(rng.uniform(0, wide)), float(rng.uniform(0, deep))


def _box(rng: np.random.Generator, wide: float, deep: float, least: float, most: float) -> tuple[Point, ...]:
    x, y = _spot(rng, wide, deep)
    w, d = rng.uniform(least, most, 2)
    return ((x, y), (x + w, y), (x + w, y + d), (x, y + d))


def _ell(rng: np.random.Generator, wide: float, deep: float) -> tuple[Point, ...]:
    """An L-shaped outline."""
    x, y = _spot(rng, wide, deep)
    w, d = rng.uniform(4, 7, 2)
    return ((x, y), (x + w, y), (x + w, y + d / 2), (x + w / 2, y + d / 2), (x + w / 2, y + d), (x, y + d))


def _site(rng: np.random.Generator) -> Site:
    soil = Soil(
        ph=float(rng.choice([5.0, 6.5, 7.4, 8.3])), texture="clay" if rng.random() < 0.3 else "loam",
        drainage="poor" if rng.random() < 0.2 else "good",
    )
    return Site(
        name="Random", latitude=float(rng.uniform(35, 55)), longitude=0.0, zone="7a", soil=soil,
        north=float(rng.uniform(-60, 60)), region=str(rng.choice(["FR", "US-NY", "DE"])),
    )


def random_yard(rng: np.random.Generator) -> Yard:
    """A small lot with some of everything that can close ground."""
    wide, deep = (float(side) for side in rng.uniform(14, 26, 2))
    lot: tuple[Point, ...] = ((0.0, 0.0), (wide, 0.0), (wide, deep), (0.0, deep))
    if rng.random() < 0.3:
        lot = ((0.0, 0.0), (wide, 0.0), (wide, deep / 2), (wide / 2, deep), (0.0, deep))

    def some(share: float) -> bool:
        return bool(rng.random() < share)

    buildings = [
        Building(id="H1", footprint=_ell(rng, wide, deep) if some(0.5) else _box(rng, wide, deep, 3, 8),
                 eaves=3.0, ridge=5.0, roof="gable", overhang=0.4)
    ] if some(0.6) else []
    services = [
        Service(id=f"S{n}", kind=kind, points=(_spot(rng, wide, deep), _spot(rng, wide, deep)))
        for n, kind in enumerate(("water", "overhead line", "septic tank")) if some(0.25)
    ]
    if some(0.2):
        services.append(Service(id="SF", kind="septic field", points=_box(rng, wide, deep, 3, 5), area=True))
    pavings = [
        Paving(id=f"P{n}", kind=kind, outline=_box(rng, wide, deep, 1, 5))
        for n, kind in enumerate(("path", "pond", "terrace")) if some(0.3)
    ]
    if some(0.4):
        pavings += [
            Paving(id="ST", kind="street", outline=((-9, -6), (wide + 9, -6), (wide + 9, 0), (-9, 0))),
            Paving(id="DR", kind="drive", outline=((6, 0), (9, 0), (9, 7), (6, 7))),
        ]
    trees = [
        StandingTree(id="T1", kind=str(rng.choice(["black walnut", "oak, northern red"])),
                     place=_spot(rng, wide, deep), height=14.0, spread=6.0)
    ] if some(0.3) else []
    beds = [
        Bed(id="B1", outline=_box(rng, wide, deep, 2, 5), raised=0.35, soil=Soil(ph=4.8, drainage="good")),
        Bed(id="B2", outline=_box(rng, wide, deep, 2, 5), soil=Soil(ph=8.4, lime=True)),
        Bed(id="B3", outline=_ell(rng, wide, deep), plant=PlantKey("strawberry", "Honeoye")),
    ] if some(0.5) else []
    rows = [
        Row(id="R1", plant=PlantKey("red raspberry", "Latham"),
            line=(_spot(rng, wide, deep), _spot(rng, wide, deep)), count=6, spacing=0.6)
    ] if some(0.4) else []
    barriers = [
        Barrier(id="F1", line=(_spot(rng, wide, deep), _spot(rng, wide, deep)), height=2.5)
    ] if some(0.4) else []
    plants = [planting(rng, f"A{n}", _spot(rng, wide, deep)) for n in range(int(rng.integers(1, 7)))]
    pots = [Container(id="C1", place=plants[0].place, volume=100.0)] if some(0.15) else []
    if pots:
        plants[0] = evolve(plants[0], container="C1")
    return Yard(
        site=_site(rng), lot=lot, buildings=tuple(buildings), services=tuple(services),
        pavings=tuple(pavings),
        standing_trees=tuple(trees), beds=tuple(beds), rows=tuple(rows), barriers=tuple(barriers),
        plantings=tuple(plants), containers=tuple(pots),
    )


def lit(yard: Yard, detail: Detail = "live") -> Survey:
    """A survey with light."""
    dark = survey_of(yard)
    return evolve(dark, light=light_report(scene_of(yard, dark.stand), detail, cell=20.0))


def conflicts(yard: Yard, detail: Detail = "live") -> Raised:
    """The conflicts of a yard that hang on where things stand."""
    return {
        (finding.check, finding.things) for finding in findings(lit(yard, detail))
        if finding.weight is Weight.CONFLICT and finding.check not in _PLACELESS
    }


def put(yard: Yard, plant: Planting, place: Point) -> Yard:
    """The yard with a plant at a place: moved there, or added."""
    if yard.find(plant.id) is None:
        return edits.add(yard, evolve(plant, place=place))
    x, y = plant.place
    return edits.move(yard, {plant.id}, (place[0] - x, place[1] - y))


def without(yard: Yard, plant: Planting) -> Yard:
    """The yard without a plant."""
    return evolve(yard, plantings=tuple(p for p in yard.plantings if p.id != plant.id))


def before(yard: Yard, plant: Planting, detail: Detail = "live") -> Raised:
    """Conflicts that a plant is not to blame for: there without it, and with it where it stands now."""
    found = conflicts(without(yard, plant), detail)
    return found & conflicts(yard, detail) if yard.find(plant.id) is not None else found


def places(rng: np.random.Generator, yard: Yard, ground: ClearGround, number: int) -> list[Point]:
    """Places all over the lot and about it, every other one just beyond `BAND` along the edge."""
    low, high = np.min(yard.lot, axis=0) - 1.0, np.max(yard.lot, axis=0) + 1.0
    found = []
    for n in range(number):
        x, y = (float(v) for v in rng.uniform(low, high))
        if n % 2 and not ground.open.is_empty:
            edge = ground.open.boundary.interpolate(float(rng.uniform()), normalized=True)
            turn = float(rng.uniform(0, 2 * math.pi))
            x, y = edge.x + 1.3 * BAND * math.cos(turn), edge.y + 1.3 * BAND * math.sin(turn)
        found.append((x, y))
    return found
