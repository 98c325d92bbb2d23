"""Crowns at full size against walls, fences, the lot line and paving."""

from __future__ import annotations

from collections.abc import Iterator
from functools import lru_cache

import numpy as np
import shapely
from attrs import evolve
from numpy.typing import NDArray
from shapely.geometry.base import BaseGeometry

from yardplan.checks.check import Wording
from yardplan.checks.finding import Figure, Finding, Mark, Weight
from yardplan.checks.layout import Feature
from yardplan.checks.lines import Array
from yardplan.checks.overlaps import TOUCH, closed_share, weight_of
from yardplan.checks.shapes import area_of, has_area, line_of, ring_of
from yardplan.checks.shortfall import Limit, Short, figures, in_ground, limit, marks, nearer, outside
from yardplan.checks.survey import Survey
from yardplan.plants.stand import StandingRow
from yardplan.yard.ground import Barrier, Building, Outline

NAME = "spacing"

_PAVED = ("path", "drive", "terrace", "street")
#: A fence this near to the lot line all along is the lot line's own; the lot rule speaks for it.
_ON_THE_LINE = 0.5
#: Cosines that differ by no more are the same.
_ROUNDING = 1e-9


def _made(survey: Survey, short: Short, kind: str, weight: Weight, rule: str) -> Finding:
    return survey.finding(
        NAME, kind, weight, short.things, rule, figures(survey, short), marks(survey, short)
    )


def faces(way: Array, facing: Array | float) -> NDArray[np.bool_]:
    """True for a plant trained flat along `facing` whose face is turned the way the wall lies, radians.

    Just 60 degrees aside is aside, wherever it stands along a wall: rounding does not decide.
    """
    turned: NDArray[np.bool_] = np.abs(np.cos(way - facing)) < np.cos(np.radians(60)) - _ROUNDING
    return turned


def _along_wall(survey: Survey, short: Short) -> bool:
    """True for a flat-trained plant that stands with its face to the wall."""
    x, y = survey.layout.nearest(short.index, short.column)
    way = np.arctan2(y - short.plant.place[1], x - short.plant.place[0])
    return bool(faces(way, survey.layout.facing[short.index]))


def _wall_room(survey: Survey, feature: Feature) -> Array:
    """Distance wanted of every plant from a building: its reach, a gap to work in, the roof's overhang."""
    layout, value = survey.layout, survey.rules.value
    bush = layout.height < value("bush-height")
    gap = np.where(bush, value("bush-wall-gap"), value("wall-gap"))
    if isinstance(feature.thing, Building):
        gap = gap + np.where(layout.height > feature.thing.eaves, feature.thing.overhang, 0.0)
    room: Array = layout.reach + gap
    return room


def wall_conflicts(survey: Survey, feature: Feature) -> Limit:
    """Where a crown grows too far into a building; plants trained flat along it are free of this."""
    under = closed_share(survey) * survey.layout.reach
    return limit(survey, "crown_wall", under, _wall_room(survey, feature), in_ground(survey))


def _walls(survey: Survey, column: int, feature: Feature) -> Iterator[Finding]:
    layout, value = survey.layout, survey.rules.value
    bush = layout.height < value("bush-height")
    free = in_ground(survey) & outside(survey, column)
    for short in nearer(survey, column, _wall_room(survey, feature), free):
        if layout.flat[short.index] and _along_wall(survey, short):
            near = evolve(short, wanted=value("trained-wall-near"))
            if 0 <= near.gap < near.wanted - TOUCH:
                yield _made(survey, near, "trained_wall", Weight.ADVICE, "trained-wall-near")
            elif value("trained-wall-far") + TOUCH < near.gap < value("wall-gap"):
                far = evolve(short, wanted=value("trained-wall-far"))
                yield _made(survey, far, "trained_far", Weight.ADVICE, "trained-wall-far")
            continue
        reach = float(layout.reach[short.index])
        rule = "bush-wall-gap" if bush[short.index] else "wall-gap"
        weight = weight_of(survey, 1 - short.gap / reach)[0] if short.gap < reach else Weight.ADVICE
        yield _made(survey, short, "crown_wall", weight, rule)


def _fences(survey: Survey, column: int, feature: Feature) -> Iterator[Finding]:
    layout = survey.layout
    if not isinstance(feature.thing, Barrier) or _runs_on(survey.yard.lot, feature.points):
        return
    thick = feature.thing.thickness / 2
    for short in nearer(survey, column, layout.reach + thick, in_ground(survey)):
        if layout.flat[short.index] and _along_wall(survey, short):
            continue
        over = 1 - short.gap / short.wanted
        weight = Weight.CAUTION if over > survey.rules.value("spacing-too-close") else Weight.ADVICE
        yield _made(survey, short, "crown_fence", weight, "fence-gap")


@lru_cache(maxsize=256)
def _runs_on(lot: Outline, line: Outline) -> bool:
    """True when a line keeps to the lot line all along."""
    if not has_area(lot) or len(line) < 2:
        return False
    return bool(ring_of(lot).buffer(_ON_THE_LINE).covers(line_of(line)))


def _lot(survey: Survey, column: int, feature: Feature) -> Iterator[Finding]:
    """Crowns that will hang over the lot line; stems outside it are the lot-line rule's."""
    layout = survey.layout
    share = survey.rules.value("lot-stem-share")
    inside = -layout.gaps[:, column]
    hanging = in_ground(survey) & ~layout.flat & (inside >= 0) & (inside < share * layout.reach - TOUCH)
    for i in np.nonzero(hanging)[0]:
        wanted = share * float(layout.reach[i])
        over = 1 - float(inside[i]) / wanted
        if over <= survey.rules.value("spacing-advice"):
            continue
        near = layout.nearest(int(i), column)
        place = layout.plants[i].place
        shown = {
            "distance": Figure(float(inside[i]), "length"), "wanted": Figure(wanted, "length"),
            "short": Figure(wanted - float(inside[i]), "length"),
            "direction": Figure(survey.direction(near, place), "text"),
        }
        weight = Weight.CAUTION if over > survey.rules.value("spacing-crowded") else Weight.ADVICE
        yield survey.finding(
            NAME, "crown_lot", weight, (layout.plants[i].id, "lot"), "lot-stem-share", shown,
            (Mark((place, near), "line"),),
        )


def _paving(survey: Survey, column: int, feature: Feature) -> Iterator[Finding]:
    layout = survey.layout
    edge = survey.rules.value("paving-crown")
    for short in nearer(survey, column, layout.reach + edge, in_ground(survey) & ~layout.flat):
        reach = float(layout.reach[short.index])
        weight = Weight.CAUTION if short.gap < reach * (1 - survey.rules.value("spacing-too-close")) else (
            Weight.ADVICE
        )
        shown = figures(survey, short)
        rule = "headroom-drive" if feature.sort in {"drive", "street"} else "headroom-path"
        shown["headroom"] = survey.rules.figure(rule)
        shown["over"] = Figure(max(reach - short.gap, 0.0), "length")
        kind = "over_paving" if short.gap < reach - TOUCH else "crown_paving"
        yield survey.finding(
            NAME, kind, weight if kind == "over_paving" else Weight.ADVICE, short.things, "paving-crown",
            shown, marks(survey, short),
        )


def _row_walls(survey: Survey, row: StandingRow) -> Iterator[Finding]:
    """A row's crowns against buildings and out of the lot."""
    line = line_of(row.row.line)
    half = row.mature.spread / 2
    for building in survey.yard.buildings:
        gap = shapely.distance(line, area_of(building.footprint))
        if gap < half - TOUCH:
            shown = {
                "distance": Figure(float(gap), "length"), "wanted": Figure(half, "length"),
                "short": Figure(half - float(gap), "length"),
            }
            yield survey.finding(
                NAME, "row_wall", Weight.CONFLICT if gap <= 0 else Weight.CAUTION, (row.id, building.id),
                "bush-wall-gap", shown, (Mark(row.row.line, "line"),),
            )
    yield from _row_lot(survey, row, line, half)


def _row_lot(survey: Survey, row: StandingRow, line: BaseGeometry, half: float) -> Iterator[Finding]:
    if not has_area(survey.yard.lot):
        return
    lot = area_of(survey.yard.lot)
    inside = float(shapely.distance(line, lot.boundary)) if lot.contains(line) else 0.0
    wanted = max(half, survey.rules.value("reach-own-side"))
    if inside < wanted - TOUCH:
        shown = {
            "distance": Figure(inside, "length"), "wanted": Figure(wanted, "length"),
            "short": Figure(wanted - inside, "length"),
        }
        weight = Weight.CAUTION if inside < half - TOUCH else Weight.ADVICE
        yield survey.finding(
            NAME, "row_lot", weight, (row.id, "lot"), "reach-own-side", shown, (Mark(row.row.line, "line"),)
        )


def run(survey: Survey) -> list[Finding]:
    """Findings on crowns against edges."""
    found: list[Finding] = []
    for column, feature in enumerate(survey.layout.features):
        if feature.sort == "building":
            found.extend(_walls(survey, column, feature))
        elif feature.sort == "barrier":
            found.extend(_fences(survey, column, feature))
        elif feature.sort == "lot":
            found.extend(_lot(survey, column, feature))
        elif feature.sort in _PAVED:
            found.extend(_paving(survey, column, feature))
    for row in survey.layout.rows:
        found.extend(_row_walls(survey, row))
    return found


WORDING = {
    "crown_wall": Wording(
        "{a} stands {distance} from {b}; its crown and a gap to work in need {wanted}.",
        "Move {a} {short} to the {direction}, or train it flat on the wall.",
        "{short} too close to the wall",
    ),
    "trained_wall": Wording(
        "{a} is trained on {b} with its stem {distance} off it; {wanted} lets the stem thicken.",
        "Set the stem {short} farther out and lead it back to the wall.",
        "stem too near the wall",
    ),
    "trained_far": Wording(
        "{a} is trained along {b} with its stem {distance} off it; {wanted} is as far as the wall can carry "
        "it.",
        "Set it within {wanted} of the wall, or give it posts and wires of its own.",
        "far from its wall",
    ),
    "crown_fence": Wording(
        "{a} stands {distance} from {b}; at full size its crown reaches {wanted}.",
        "Move {a} {short} to the {direction}, or train it along the fence.",
        "{short} into the fence",
    ),
    "crown_lot": Wording(
        "{a} stands {distance} inside the lot line; at full size its crown reaches {wanted}.",
        "Move {a} {short} to the {direction}. A neighbour may cut what hangs over: check locally.",
        "{short} over the lot line",
    ),
    "over_paving": Wording(
        "At full size {a} hangs {over} over {b}: fruit drops there and branches need {headroom} of headroom.",
        "Move {a} {short} to the {direction}, or trim it up to {headroom}.",
        "{over} over the paving",
    ),
    "crown_paving": Wording(
        "The crown of {a} ends nearer to {b} than a hand's room: {distance} from its stem, {wanted} wanted.",
        "Move {a} {short} to the {direction}.",
        "close to the paving",
    ),
    "row_wall": Wording(
        "The row {a} stands {distance} from {b}; its plants reach {wanted} to each side.",
        "Shift the row {short} away from {b}.",
        "row {short} into the wall",
    ),
    "row_lot": Wording(
        "The row {a} runs {distance} inside the lot line; {wanted} lets you reach both sides from your own.",
        "Shift the row {short} inward.",
        "row near the lot line",
    ),
}
