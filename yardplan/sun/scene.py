"""A yard and its plants at a year, seen by the sun: what casts shade, and where light is wanted."""

from __future__ import annotations

import math
from collections.abc import Callable, Collection, Iterable, Mapping
from functools import partial
from itertools import pairwise
from typing import TypeVar

import numpy as np
from attrs import evolve, frozen
from numpy.typing import NDArray

from yardplan.language import later
from yardplan.plants.crop import Size
from yardplan.plants.stand import Stand, Standing, StandingBed, StandingRow
from yardplan.sun import targets
from yardplan.sun.casters import (
    Caster,
    Crown,
    Light,
    band_casters,
    barrier_casters,
    building_casters,
    crown,
    panel_casters,
    sane_height,
)
from yardplan.sun.leaves import monthly_light
from yardplan.sun.parameters import Shape, crown_shapes, figure
from yardplan.sun.position import Floats, altitude_azimuth, check_place
from yardplan.sun.season import Positions
from yardplan.sun.targets import Kind, Target
from yardplan.yard.ground import Barrier, Outline, Point
from yardplan.yard.planting import Planting, Row
from yardplan.yard.positions import Named, chosen
from yardplan.yard.site import Site
from yardplan.yard.yard import Yard

N = TypeVar("N", bound=Named)

#: Names under which the sky line and the slope take light.
HORIZON, SLOPE = "horizon", "slope"
#: What takes light without being a thing of the yard, in words.
FAR_WORDS = {HORIZON: later("the sky line"), SLOPE: later("the slope of the ground")}
#: What keeps the sun from the whole yard: nothing, the horizon, the slope itself.
OPEN, BEHIND_HORIZON, BEHIND_SLOPE = 0, 1, 2


@frozen(eq=False)
class Subject:
    """Something whose light is wanted; `target` gives so many points of its surface."""

    id: str
    kind: Kind
    target: Callable[[int], Target]


@frozen(eq=False)
class Scene:
    """What the sun meets. `casters` and `subjects` by the id of their thing, in the yard's order."""

    site: Site
    year: int | None
    gradient: Point
    bounds: tuple[float, float, float, float]
    casters: Mapping[str, tuple[Caster, ...]]
    subjects: Mapping[str, Subject]

    def all_casters(self, without: Collection[str] = ()) -> list[Caster]:
        """Every caster but those of some things."""
        return [c for owner, parts in self.casters.items() if owner not in without for c in parts]

    def casters_of(self, ids: Iterable[str]) -> list[Caster]:
        """The casters of some things."""
        return [c for owner in ids for c in self.casters.get(owner, ())]


def gradient_of(site: Site) -> Point:
    """Rise of the ground per metre along x and y of the drawing; (0, 0) where the slope is not a number."""
    if not math.isfinite(site.slope) or not math.isfinite(site.slope_aspect) or site.slope <= 0.0:
        return (0.0, 0.0)
    downhill = math.radians(site.slope_aspect + site.north)
    return (-site.slope * math.sin(downhill), -site.slope * math.cos(downhill))


def on_drawing(vectors: Floats, north: float) -> Floats:
    """Turn (east, north, up) vectors to the drawing's (x, y, up); a north that is no number counts as 0."""
    north = north if math.isfinite(north) else 0.0
    c, s = math.cos(math.radians(north)), math.sin(math.radians(north))
    turn = np.array([[c, -s, 0.0], [s, c, 0.0], [0.0, 0.0, 1.0]])
    return np.asarray(vectors @ turn)


def levelled(directions: Floats, gradient: Point) -> Floats:
    """Directions on the drawing as seen from ground made level."""
    out = directions.copy()
    out[:, 2] -= directions[:, :2] @ np.array(gradient)
    return out


def kept_from(scene: Scene, positions: Positions) -> NDArray[np.int64]:
    """For each position: whether the horizon or the slope hides the sun from the whole yard."""
    directions = on_drawing(positions.vectors, scene.site.north)
    gx, gy = scene.gradient
    up = levelled(directions, scene.gradient)[:, 2] / math.sqrt(1.0 + gx**2 + gy**2)
    hidden = np.where(up < math.sin(math.radians(figure("lowest_on_slope"))), BEHIND_SLOPE, OPEN)
    if scene.site.horizon:
        altitude, azimuth = altitude_azimuth(positions.vectors)
        sky_line = np.array(sorted((a % 360.0, h) for a, h in scene.site.horizon))
        height = np.interp(azimuth, sky_line[:, 0], sky_line[:, 1], period=360.0)
        hidden = np.where(altitude < height, BEHIND_HORIZON, hidden)
    return hidden


def shape_of(size: Size, mature: Size) -> Shape:
    """The solid that stands for a crown of this habit and age."""
    row = crown_shapes()[size.habit]
    grown = size.height >= row.grown_at * mature.height
    return row.mature if grown else row.young


def light_of(plant: Standing | StandingRow, site: Site) -> Light:
    """Light let through by the crown of a plant or row in each month."""
    bare = plant.light_leaf if plant.evergreen else plant.light_bare
    return monthly_light(plant.light_leaf, bare, site.latitude, site.elevation)


def barrier_light(barrier: Barrier, site: Site) -> Light:
    """A hedge that drops its leaves lets more light through in winter; other barriers never change."""
    bare = barrier.light_share
    if barrier.kind == "hedge" and not barrier.evergreen:
        bare = max(bare, figure("bare_hedge"))
    return monthly_light(barrier.light_share, bare, site.latitude, site.elevation)


def _panel_line(plant: Standing) -> tuple[Outline, float]:
    """Line and depth of a flat-trained plant."""
    facing = plant.thing.facing if isinstance(plant.thing, Planting) else 0.0
    angle, half = math.radians(facing), plant.size.spread / 2.0
    dx, dy = math.cos(angle) * half, math.sin(angle) * half
    x, y = plant.place
    return ((x - dx, y - dy), (x + dx, y + dy)), plant.size.depth or figure("panel_depth")


def plant_casters(plant: Standing, site: Site, gradient: Point) -> list[Caster]:
    """The crown of a plant; none where it has no size."""
    size, light = plant.size, light_of(plant, site)
    shape = shape_of(size, plant.mature)
    if shape == "panel":
        facing = plant.thing.facing if isinstance(plant.thing, Planting) else 0.0
        _, depth = _panel_line(plant)
        return list(panel_casters(
            plant.id, plant.place, facing, size.spread, depth, size.crown_base, size.height, light
        ))
    one = crown(plant.id, shape, plant.place, size.spread, size.crown_base, size.height, light, gradient)
    return [one] if one is not None else []


#: A plant without a size is taken as a spot of this radius and height, metres.
_SPOT = 0.05


def plant_target(plant: Standing, site: Site, gradient: Point, number: int) -> Target:
    """Points of a plant's crown; of the ground at its foot where it has no size."""
    size = plant.size
    if shape_of(size, plant.mature) == "panel":
        line, depth = _panel_line(plant)
        band = targets.band_target(plant.id, "plant", line, depth, size.crown_base, size.height, number)
        if band is not None:
            return band
    shape, dark = shape_of(size, plant.mature), (0.0,) * 12
    one = crown(plant.id, shape, plant.place, size.spread, size.crown_base, size.height, dark, gradient)
    if one is None or one.shape == "panel":
        one = Crown(plant.id, "cylinder", plant.place, _SPOT, 0.0, _SPOT, dark)
    return targets.crown_target(one, number, gradient, north=site.north, flat=size.habit == "mat")


def row_line(row: Row) -> Outline:
    """The planted part of a row's line: from its first point to half a spacing past the last plant."""
    left = max(row.count - 0.5, 0.0) * max(row.spacing, 0.0)
    line = [row.line[0]] if row.line else []
    for a, b in pairwise(row.line):
        length = math.dist(a, b)
        share = min(1.0, left / length) if length > 0.0 else 0.0
        if share > 0.0:
            line.append((a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1])))
        left -= length
    return tuple(line)


def row_casters(row: StandingRow, site: Site) -> list[Caster]:
    """A row as bands along its line."""
    size = row.size
    return list(band_casters(
        row.id, row_line(row.row), size.spread, size.crown_base, size.height, light_of(row, site)
    ))


def row_target(row: StandingRow, number: int) -> Target:
    """Points of a row's top and sides; of its first point where nothing stands."""
    size, line = row.size, row_line(row.row)
    band = targets.band_target(
        row.id, "row", line, size.spread, sane_height(size.crown_base), sane_height(size.height), number
    )
    return band if band is not None else targets.spot_target(
        row.id, "row", line[0] if line else (0.0, 0.0), 0.0, number
    )


def bed_target(bed: StandingBed, number: int) -> Target:
    """Points over a bed at the height of what grows there; of its first corner where it has no area."""
    height = bed.bed.raised + (bed.size.height if bed.size is not None else 0.0)
    area = targets.area_target(bed.id, bed.bed.outline, sane_height(height), number)
    first = bed.bed.outline[0] if bed.bed.outline else (0.0, 0.0)
    return area if area is not None else targets.spot_target(
        bed.id, "bed", first, sane_height(height), number
    )


def _bounds(yard: Yard) -> tuple[float, float, float, float]:
    """The lot's box, or that of all plants and beds with a margin where no lot is drawn."""
    points = list(yard.lot)
    margin = 0.0
    if not points:
        points = [p.place for p in yard.plantings] + [q for bed in yard.beds for q in bed.outline]
        points += [q for row in yard.rows for q in row.line]
        margin = 3.0
    x, y = [p[0] for p in points] or [0.0], [p[1] for p in points] or [0.0]
    return (min(x) - margin, min(y) - margin, max(x) + margin, max(y) + margin)


def _casters_by_id(yard: Yard, stand: Stand, only: Collection[str] | None) -> dict[str, tuple[Caster, ...]]:
    gradient, site = gradient_of(yard.site), yard.site
    found: dict[str, tuple[Caster, ...]] = {}
    for building in _picked(yard.buildings, only):
        found[building.id] = tuple(building_casters(building, gradient))
    for barrier in _picked(yard.barriers, only):
        found[barrier.id] = tuple(barrier_casters(barrier, barrier_light(barrier, site)))
    for plant in _picked(stand.plants, only):
        found[plant.id] = tuple(plant_casters(plant, site, gradient))
    for row in _picked(stand.rows, only):
        found[row.id] = tuple(row_casters(row, site))
    return found


def _picked(things: tuple[N, ...], only: Collection[str] | None) -> Iterable[N]:
    """The things named; all where no ids are given."""
    return things if only is None else chosen(things, only)


def _subjects_by_id(
    stand: Stand, site: Site, gradient: Point, only: Collection[str] | None
) -> dict[str, Subject]:
    found = {
        plant.id: Subject(plant.id, "plant", partial(plant_target, plant, site, gradient))
        for plant in _picked(stand.plants, only) if plant.planted
    }
    for row in _picked(stand.rows, only):
        found[row.id] = Subject(row.id, "row", partial(row_target, row))
    for bed in _picked(stand.beds, only):
        found[bed.id] = Subject(bed.id, "bed", partial(bed_target, bed))
    return found


def scene_of(yard: Yard, stand: Stand) -> Scene:
    """The scene of a yard with its plants at the stand's year.

    Raises position.LatitudeError where the site is not on Earth. Things without height or area cast nothing.
    """
    check_place(yard.site.latitude, yard.site.longitude)
    gradient = gradient_of(yard.site)
    casters, subjects = _casters_by_id(yard, stand, None), _subjects_by_id(stand, yard.site, gradient, None)
    return Scene(yard.site, stand.year, gradient, _bounds(yard), casters, subjects)


def before_planting(scene: Scene) -> Scene:
    """The same place with nothing planted: only what stands there already casts shade."""
    casters = {key: parts for key, parts in scene.casters.items() if key not in scene.subjects}
    return evolve(scene, casters=casters)


def moved_scene(scene: Scene, yard: Yard, stand: Stand, ids: Collection[str]) -> Scene:
    """The scene after the things named moved or changed; everything else is taken over.

    A changed site needs `scene_of`.
    """
    fresh = _casters_by_id(yard, stand, ids)
    wanted = _subjects_by_id(stand, yard.site, scene.gradient, ids)
    casters, subjects = dict(scene.casters), dict(scene.subjects)
    for key in ids:
        if key not in fresh:
            casters.pop(key, None)
        if key not in wanted:
            subjects.pop(key, None)
    return evolve(scene, bounds=_bounds(yard), casters=casters | fresh, subjects=subjects | wanted)
