"""Closed ground: room for crowns beside other plants and rows, both ways; beds with a crop of their own."""

from __future__ import annotations

from collections.abc import Iterator

import numpy as np
import shapely
from attrs import evolve
from numpy.typing import NDArray
from shapely.geometry.base import BaseGeometry

from yardplan.arrange.closed import Asked, Closed, cut_all, disc, grown, length, line_of, shape_of
from yardplan.arrange.discs import discs
from yardplan.checks.finding import Figure
from yardplan.checks.layout import Layout, layout_of
from yardplan.checks.overlaps import TOUCH, closed_share
from yardplan.checks.room.beds import crop_words, holds_own
from yardplan.checks.room.pairs import NAME, StemRule, ray, stem_rule
from yardplan.plants.stand import Standing

#: Directions in which two flat-trained plants are measured against each other.
_DIRECTIONS = 720

Array = NDArray[np.float64]


def closed_room(asked: Asked) -> Iterator[Closed]:
    """Ground too near to other plants and rows, and beds planted with something else."""
    yield from _in_beds(asked)
    yield from _beside_plants(asked)
    share = closed_share(asked.survey)
    for row in asked.survey.stand.rows:
        wanted = row.mature.spread / 2 + asked.plant.mature.spread / 2
        under = min(share * wanted, wanted - TOUCH)
        if row.row.line and under > 0:
            yield asked.closed(
                grown(line_of(row.row.line), under), NAME, "row_plant", (row.id,), wanted=length(wanted)
            )


def _in_beds(asked: Asked) -> Iterator[Closed]:
    """Beds planted with another kind: nothing else is set there, but a pot may stand on them."""
    if asked.plant.container is not None:
        return
    layout = asked.alone.layout
    for column in layout.columns("bed"):
        feature = layout.features[column]
        bed = asked.survey.beds.get(feature.id)
        if bed is not None and holds_own(bed, asked.plant):
            crop = Figure(crop_words(bed), "text")
            yield asked.closed(shape_of(feature), NAME, "in_bed", (feature.id,), crop=crop)


def _beside_plants(asked: Asked) -> Iterator[Closed]:
    """Ground too near to each other plant, around where it stands."""
    others = asked.survey.stand.plants
    rules = [stem_rule(asked.survey, asked.plant, other) for other in others]
    share, flat = closed_share(asked.survey), _flat(asked.plant)
    wanted, under = np.zeros(len(others)), np.zeros(len(others))
    for n, (other, rule) in enumerate(zip(others, rules, strict=True)):
        if not flat and not _flat(other):
            crowns = asked.plant.mature.spread / 2 + other.mature.spread / 2
            wanted[n] = _asked_for(crowns, rule)
            under[n] = _under(crowns, float(wanted[n]), share)
    places = np.array([other.place for other in others], dtype=float).reshape(-1, 2)
    shapes = cut_all(discs(places, under), asked.known)
    for other, rule, far, shape in zip(others, rules, wanted.tolist(), shapes, strict=True):
        kind = rule.kind if rule else "overlap"
        if not shape.is_empty:
            yield Closed(
                geometry=shape, check=NAME, kind=kind, things=(other.id,), figures={"wanted": length(far)}
            )
        elif flat or _flat(other):
            near, far = _flat_pair(asked, other, rule, share)
            yield asked.closed(near, NAME, kind, (other.id,), wanted=length(far))


def _flat_pair(
    asked: Asked, other: Standing, rule: StemRule | None, share: float
) -> tuple[BaseGeometry, float]:
    """The same where one or both are trained flat."""
    if _flat(asked.plant) and _flat(other):
        return _by_direction(asked, other, rule, share)
    panel, crown = (asked.plant, other) if _flat(asked.plant) else (other, asked.plant)
    return _by_panel(panel, crown, other, rule, share)


def _flat(plant: Standing) -> bool:
    return plant.mature.habit == "flat-trained"


def _asked_for(crowns: float, rule: StemRule | None) -> float:
    """The distance asked for where the crowns themselves ask for `crowns`."""
    if rule is None:
        return crowns
    return min(crowns, rule.wanted) if rule.most else rule.wanted


def _under(crowns: float, wanted: float, share: float) -> float:
    """Nearer than this two stems are a conflict; plants whose crowns keep clear are never looked at."""
    return max(min(share * wanted, wanted - TOUCH, crowns - TOUCH), 0.0)


def _by_panel(
    panel: Standing, crown: Standing, other: Standing, rule: StemRule | None, share: float
) -> tuple[BaseGeometry, float]:
    """A crown beside a flat-trained plant: measured from its stem to the panel's middle line."""
    depth = (panel.mature.depth or 0.0) / 2
    crowns = depth + crown.mature.spread / 2
    half = max(panel.mature.spread / 2 - depth, 0.0)
    facing = np.radians(getattr(panel.thing, "facing", 0.0))
    x, y = other.place
    dx, dy = half * float(np.cos(facing)), half * float(np.sin(facing))
    line = shapely.LineString([(x - dx, y - dy), (x + dx, y + dy)])
    if rule is None:
        return grown(line, _under(crowns, crowns, share)), crowns
    wanted = _asked_for(crowns, rule)
    near = grown(line, crowns - TOUCH)
    return near.intersection(disc(other.place, max(min(share * wanted, wanted - TOUCH), 0.0))), wanted


def _by_direction(
    asked: Asked, other: Standing, rule: StemRule | None, share: float
) -> tuple[BaseGeometry, float]:
    """Two flat-trained plants: how near they may come depends on the direction from one to the other."""
    crowns, angles = _crowns_by_direction(asked, other)
    wanted = crowns if rule is None else np.minimum(crowns, rule.wanted) if rule.most else (
        np.full_like(crowns, rule.wanted)
    )
    under = np.maximum(np.minimum(np.minimum(share * wanted, wanted - TOUCH), crowns - TOUCH), 0.0)
    if not under.any():
        return shapely.Polygon(), 0.0
    x, y = other.place
    ring = np.column_stack([x + under * np.cos(angles), y + under * np.sin(angles)])
    return shapely.Polygon(ring).buffer(0), float(wanted.min())


def _crowns_by_direction(asked: Asked, other: Standing) -> tuple[Array, Array]:
    """What two crowns ask for between their stems in every direction, corners included."""
    two = _layout_of_two(asked, other)
    corner = [
        two.facing[k] + side * np.arctan2(two.half_depth[k], max(two.reach[k], 1e-9)) + turn
        for k in (0, 1) for side in (1.0, -1.0) for turn in (0.0, np.pi)
    ]
    even = np.arange(_DIRECTIONS) * 2.0 * np.pi / _DIRECTIONS
    angles = np.unique(np.concatenate([even, np.mod(corner, 2.0 * np.pi)]))
    one, other_ = np.zeros(len(angles), np.intp), np.ones(len(angles), np.intp)
    return ray(two, one, angles) + ray(two, other_, angles), angles


def _layout_of_two(asked: Asked, other: Standing) -> Layout:
    yard = evolve(asked.survey.yard, lot=(), buildings=(), barriers=(), pavings=(), services=(), beds=())
    return layout_of(yard, evolve(asked.survey.stand, plants=(asked.plant, other), rows=(), beds=()))


