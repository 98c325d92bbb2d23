"""Ground closed to rows and beds that move: other plants and rows, walls, services, paving, the lot line."""

from __future__ import annotations

from collections.abc import Iterator

import numpy as np
import shapely
from shapely.geometry.base import BaseGeometry

from yardplan.arrange.closed import Closed, grown, length, line_of, shape_of
from yardplan.arrange.discs import discs
from yardplan.arrange.moving import Moving, shapes_outside
from yardplan.arrange.swept import holding, meeting_area, meeting_discs, meeting_line
from yardplan.checks import drainage, soil
from yardplan.checks.clear import beyond, laid_over
from yardplan.checks.clear.laid_over import NO_GROUND, core_of, taken
from yardplan.checks.clear.lines_below import BURIED
from yardplan.checks.clear.paving import PAVED, WATER
from yardplan.checks.finding import Figure, Mark, Weight
from yardplan.checks.groups import kind_of
from yardplan.checks.layout import Feature
from yardplan.checks.neighbours import injured, toxic_reach
from yardplan.checks.overlaps import TOUCH, closed_share
from yardplan.checks.room.beds import crop_words, holds_own
from yardplan.checks.shapes import area_of, coordinates
from yardplan.checks.soil_plan import beds_of, plan_for, plant_rooting
from yardplan.checks.spots import Spot, spots
from yardplan.plants.stand import Standing, StandingBed, StandingRow
from yardplan.yard.ground import Outline
from yardplan.yard.planting import Bed

_ROOM, _CLEAR = "spacing", "clearance"


def closed_lines(moving: Moving) -> Iterator[Closed]:
    """Ground closed to the rows and beds among the things that move."""
    for row in moving.rows:
        yield from _row(moving, row)
    for bed in moving.beds:
        yield from _bed(moving, bed)
    yield from _outside(moving)
    yield from _poisoned(moving)


def _outside(moving: Moving) -> Iterator[Closed]:
    """Shifts at which a row or bed would reach out of the lot; the check lets a hand's breadth pass."""
    lot = next((one for one in moving.survey.layout.features if one.sort == "lot"), None)
    if lot is None:
        return
    slack = moving.survey.rules.value(beyond.RULE) / 2.0
    outside = moving.known.buffer(moving.reach).envelope.difference(grown(shape_of(lot), slack))
    for key, points, is_area in shapes_outside(moving):
        shape = meeting_area(outside, points) if is_area else meeting_line(outside, points)
        yield moving.closed(shape, _CLEAR, "row_outside", (key,))


# Rows


def _row(moving: Moving, row: StandingRow) -> Iterator[Closed]:
    line, share = moving.about_anchor(row.row.line), closed_share(moving.survey)
    half = row.mature.spread / 2.0
    plants = moving.survey.stand.plants
    wanted = np.array([half + plant.mature.spread / 2.0 for plant in plants])
    under = np.minimum(share * wanted, wanted - TOUCH)
    middles = np.array([plant.place for plant in plants], dtype=float).reshape(-1, 2)
    for plant, far, shape in zip(plants, wanted, meeting_discs(discs(middles, under), line), strict=True):
        if not shape.is_empty:
            yield moving.closed(shape, _ROOM, "row_beside", (plant.id,), wanted=length(far))
    for other in moving.survey.stand.rows:
        apart = half + other.mature.spread / 2.0
        closer = min(share * apart, apart - TOUCH)
        if closer > 0 and other.row.line:
            shape = meeting_line(grown(line_of(other.row.line), closer), line)
            yield moving.closed(shape, _ROOM, "row_row", (other.id,), wanted=length(apart))
    for feature in moving.survey.layout.features:
        yield from _feature(moving, row, line, feature)
    for bed in moving.survey.stand.beds:
        if taken(bed, row):
            shape = meeting_line(_core(moving, bed.bed.outline), line)
            crop = Figure(crop_words(bed), "text")
            yield moving.closed(shape, _CLEAR, "row_in_bed", (bed.id,), crop=crop)


def _feature(moving: Moving, row: StandingRow, line: Outline, feature: Feature) -> Iterator[Closed]:
    value, sort = moving.survey.rules.value, feature.sort
    shape = _shape(feature)
    if sort == "building":
        yield moving.closed(meeting_line(shape, line), _ROOM, "row_wall", (feature.id,))
    elif sort in BURIED:
        under = min(value("service-dig"), value("service-small") - value("clearance-tolerance"))
        yield moving.closed(meeting_line(grown(shape, under), line), _CLEAR, "buried", (feature.id,))
    elif sort == "overhead line":
        under = _beside_wires(moving, row.mature.height)
        if under > 0:
            yield moving.closed(meeting_line(grown(shape, under), line), _CLEAR, "overhead", (feature.id,))
    elif sort in PAVED + WATER:
        yield moving.closed(meeting_line(shape, line), _CLEAR, "row_across", (feature.id,))
    elif sort == "septic field" and feature.closed:
        yield moving.closed(meeting_line(shape, line), _CLEAR, "on_septic_field", (feature.id,))


def _beside_wires(moving: Moving, height: float) -> float:
    """How far from an overhead line a row of that height must stay, metres."""
    value = moving.survey.rules.value
    if height <= value("overhead-low-height"):
        return 0.0
    low = height <= value("overhead-mid-height")
    return value("overhead-low-side" if low else "overhead-mid-side") - value("clearance-tolerance")


def _shape(feature: Feature) -> BaseGeometry:
    return area_of(feature.points) if feature.closed else line_of(feature.points)


# Beds


def _bed(moving: Moving, bed: StandingBed) -> Iterator[Closed]:
    outline = moving.about_anchor(bed.bed.outline)
    for feature in moving.survey.layout.features:
        if feature.sort == "septic field" and feature.closed:
            shape = meeting_area(_shape(feature), outline)
            yield moving.closed(shape, _CLEAR, "on_septic_field", (feature.id,))
        elif feature.sort in NO_GROUND:
            shape = meeting_area(_core(moving, feature.points), outline)
            yield moving.closed(shape, _CLEAR, "bed_over", (feature.id,))
    yield from _rows_in_bed(moving, bed)
    homes, now = beds_of(moving.survey), beds_of(moving.present)
    for plant in moving.survey.stand.plants:
        if plant.planted and plant.container is None:
            yield from _over_plant(moving, bed, outline, plant, homes.get(plant.id))
            if plant.id in now and now[plant.id].id == bed.id:
                yield from _left_behind(moving, bed, outline, plant, homes.get(plant.id))


def _rows_in_bed(moving: Moving, bed: StandingBed) -> Iterator[Closed]:
    """Where the bed would come to lie under a row of another kind than its own."""
    core = _core(moving, bed.bed.outline)
    pieces = [moving.about_anchor(coordinates(piece.exterior)) for piece in shapely.get_parts(core)]
    for row in moving.survey.stand.rows:
        if row.row.line and taken(bed, row):
            line = line_of(row.row.line)
            shape = shapely.union_all([meeting_area(line, piece) for piece in pieces])
            yield moving.closed(shape, _CLEAR, "bed_under_row", (row.id,))


def _core(moving: Moving, outline: Outline) -> BaseGeometry:
    """What a thing must reach into to lie over an outline, as the check has it."""
    return core_of(outline, moving.survey.rules.value(laid_over.RULE))


def _over_plant(
    moving: Moving, bed: StandingBed, outline: Outline, plant: Standing, home: Bed | None
) -> Iterator[Closed]:
    """Where the bed would take in a plant it is not for, or whose soil it would spoil."""
    here = holding(plant.place, outline)
    if holds_own(bed, plant):
        crop = Figure(crop_words(bed), "text")
        yield moving.closed(here, _ROOM, "in_bed", (plant.id,), crop=crop)
    if plant.crop is None or (home is not None and _later(moving, home, bed.bed)):
        return
    before, after = (_soil_conflicts(moving, plant, place) for place in (home, bed.bed))
    for check, kind in sorted(after - before):
        yield moving.closed(here, check, f"bed_{kind}", (plant.id,), crop=Figure(plant.crop.name, "text"))


def _left_behind(
    moving: Moving, bed: StandingBed, outline: Outline, plant: Standing, home: Bed | None
) -> Iterator[Closed]:
    """Where the bed would leave a plant that lives by its soil to what is there without it."""
    if plant.crop is None:
        return
    without, with_it = (_soil_conflicts(moving, plant, place) for place in (home, bed.bed))
    elsewhere = moving.known.difference(holding(plant.place, outline))
    crop = Figure(plant.crop.name, "text")
    for check, kind in sorted(without - with_it):
        yield moving.closed(elsewhere, check, f"bed_{kind}", (plant.id,), crop=crop)


def _later(moving: Moving, one: Bed, other: Bed) -> bool:
    """True where the first bed counts before the second, which both hold a plant: the later one does."""
    order = [bed.id for bed in moving.present.yard.beds]
    return order.index(one.id) > order.index(other.id)


def _soil_conflicts(moving: Moving, plant: Standing, bed: Bed | None) -> set[tuple[str, str]]:
    """What the soil of a bed, or of the open ground, does to a plant."""
    assert plant.crop is not None
    rules = moving.survey.rules
    rooting = plant_rooting(moving.survey, plant, plant.crop, bed)
    found: set[tuple[str, str]] = set()
    if soil.is_conflict(plan_for(rooting, rules)):
        found.add((soil.NAME, "needs_bed"))
    if drainage.weight_of(rules, rooting, bed.raised if bed else 0.0) is Weight.CONFLICT:
        found.add((drainage.NAME, "wet"))
    return found


# Walnuts


def _poisoned(moving: Moving) -> Iterator[Closed]:
    """Rows and planted beds too near to walnuts, or walnuts in rows too near to what they harm."""
    others = [spot for spot in spots(moving.survey)]
    for own, points, is_area in _own_spots(moving):
        if not (own.in_group("walnut") or own.in_group("juglone injured")):
            continue
        for other in others:
            walnut, hurt = (own, other) if own.in_group("walnut") else (other, own)
            if not injured(walnut, hurt):
                continue
            near, far = toxic_reach(moving.survey, walnut)
            around = grown(other.shape, near)
            shape = meeting_area(around, points) if is_area else meeting_line(around, points)
            yield moving.closed(shape, "neighbours", "juglone", (other.id,), wanted=length(far))


def _own_spots(moving: Moving) -> Iterator[tuple[Spot, Outline, bool]]:
    for row in moving.rows:
        mark = Mark(row.row.line, "line")
        spot = Spot(row.id, kind_of(row), row, line_of(row.row.line), mark, planned=True)
        yield spot, moving.about_anchor(row.row.line), False
    for bed in moving.beds:
        if bed.bed.plant is not None:
            mark = Mark(bed.bed.outline, "area")
            spot = Spot(bed.id, kind_of(bed), bed, area_of(bed.bed.outline), mark, planned=True)
            yield spot, moving.about_anchor(bed.bed.outline), True
