"""Room between two plants: their crowns at full size (rules spacing-*, group-stems)."""

from __future__ import annotations

from collections.abc import Iterator
from functools import partial

import numpy as np
from attrs import frozen
from numpy.typing import NDArray

from yardplan.checks.check import Wording
from yardplan.checks.finding import Figure, Finding, Mark
from yardplan.checks.groups import is_member
from yardplan.checks.layout import Layout
from yardplan.checks.lines import Array
from yardplan.checks.ordering import pair_of
from yardplan.checks.overlaps import NO_ROOM, TOUCH, form_of, weight_of
from yardplan.checks.survey import Survey
from yardplan.plants.stand import Standing
from yardplan.yard.ground import Point
from yardplan.yard.planting import Planting

NAME = "spacing"

Indices = NDArray[np.intp]


@frozen
class _Pair:
    """Two plants, the distance between them and the distance wanted, metres."""

    a: Standing
    b: Standing
    distance: float
    wanted: float
    kind: str = "overlap"

    @property
    def overlap(self) -> float:
        """Share of the wanted distance that is missing."""
        return 1.0 - self.distance / max(self.wanted, NO_ROOM)


def ray(layout: Layout, plants: Indices, angle: Array) -> Array:
    """How far each crown reaches in a direction; flat-trained ones are oblongs along their facing."""
    reach = layout.reach[plants]
    turn = angle - layout.facing[plants]
    along = np.maximum(np.abs(np.cos(turn)), NO_ROOM)
    across = np.maximum(np.abs(np.sin(turn)), NO_ROOM)
    oblong = np.minimum(reach / along, layout.half_depth[plants] / across)
    return np.where(layout.flat[plants], oblong, reach)


def _off_panel(layout: Layout, panel: Indices, other: Indices) -> Array:
    """Distance from other stems to the middle line of flat-trained plants."""
    to = layout.xy[other] - layout.xy[panel]
    along = np.stack([np.cos(layout.facing[panel]), np.sin(layout.facing[panel])], axis=1)
    share = (to * along).sum(axis=1)
    half = np.maximum(layout.reach[panel] - layout.half_depth[panel], 0.0)
    rest: Array = np.hypot(*(to - np.clip(share, -half, half)[:, None] * along).T)
    return rest


def _distances(layout: Layout) -> tuple[Array, Array]:
    """Distance and wanted distance of every pair: between stems, or from a stem to a flat panel."""
    i, j = layout.pairs.T
    to = layout.xy[j] - layout.xy[i]
    angle = np.arctan2(to[:, 1], to[:, 0])
    distance = np.hypot(to[:, 0], to[:, 1])
    wanted = ray(layout, i, angle) + ray(layout, j, angle)
    for panel, other in ((i, j), (j, i)):
        only = layout.flat[panel] & ~layout.flat[other]
        if only.any():
            distance = np.where(only, _off_panel(layout, panel, other), distance)
            wanted = np.where(only, layout.half_depth[panel] + layout.reach[other], wanted)
    return distance, wanted


def _grown_under(a: Standing, b: Standing) -> Standing | None:
    """The one of two plants that is meant to grow under the open crown of the other, if any."""
    low, high = sorted((a, b), key=lambda plant: plant.mature.height)
    under = is_member("grows under trees", low) and high.mature.height > 2 * low.mature.height
    return low if under else None


def _group(plant: Standing) -> str | None:
    return plant.thing.group if isinstance(plant.thing, Planting) else None


@frozen
class StemRule:
    """Two plants measured from stem to stem: metres wanted; `most` True where their crowns may ask less."""

    kind: str
    wanted: float
    most: bool = False


def stem_rule(survey: Survey, a: Standing, b: Standing) -> StemRule | None:
    """The rule of the declared form of two plants; None where their crowns are measured as they are."""
    if _group(a) is not None and _group(a) == _group(b):
        return StemRule("group", survey.rules.value("group-stems"))
    low = _grown_under(a, b)
    if low is not None:
        return StemRule("stem", low.mature.spread / 2)
    if a.touching and b.touching and a.mature.habit == b.mature.habit:
        rows = [form.in_row[0] for plant in (a, b) if (form := form_of(plant)) and form.in_row]
        return StemRule("form", sum(rows) / len(rows), most=True) if rows else None
    return None


def _own_rule(pair: _Pair, survey: Survey) -> _Pair | None:
    """The pair measured by the rule of its declared form, or as it is; None where they may stand so."""
    a, b = pair.a, pair.b
    rule = stem_rule(survey, a, b)
    if rule is None:
        return pair
    centres = float(np.hypot(a.place[0] - b.place[0], a.place[1] - b.place[1]))
    wanted = min(pair.wanted, rule.wanted) if rule.most else rule.wanted
    return _Pair(a, b, centres, wanted, rule.kind) if centres < wanted - TOUCH else None


def _close_pairs(survey: Survey) -> Iterator[_Pair]:
    """Pairs of plants, at least one of the plan, that stand nearer than wanted."""
    layout = survey.layout
    if not len(layout.pairs):
        return
    distance, wanted = _distances(layout)
    close = (distance < wanted - TOUCH) & layout.planted[layout.pairs].any(axis=1)
    for k in np.nonzero(close)[0]:
        i, j = layout.pairs[k]
        a, b = pair_of(layout.plants[i], layout.plants[j])
        yield _Pair(a, b, float(distance[k]), float(wanted[k]))


def _pair_finding(survey: Survey, pair: _Pair) -> Finding | None:
    weight, rule = weight_of(survey, pair.overlap)
    if pair.overlap <= survey.rules.value("spacing-advice"):
        return None
    if pair.kind == "group":
        rule = "group-stems"
    mover, stays = (pair.b, pair.a) if pair.b.planted else (pair.a, pair.b)
    figures = {
        "distance": Figure(pair.distance, "length"), "wanted": Figure(pair.wanted, "length"),
        "short": Figure(pair.wanted - pair.distance, "length"), "overlap": Figure(pair.overlap, "share"),
        "direction": Figure(survey.direction(stays.place, mover.place), "text"),
        "mover": Figure(mover.id, "thing"), "stays": Figure(stays.id, "thing"),
    }
    marks = (Mark((pair.a.place, pair.b.place), "line"), Mark(_lens(pair), "area"))
    return survey.finding(NAME, pair.kind, weight, (pair.a.id, pair.b.id), rule, figures, marks)


def _lens(pair: _Pair) -> tuple[Point, ...]:
    """A narrow outline across the place where two crowns meet, for the hatch."""
    ax, ay = pair.a.place
    bx, by = pair.b.place
    reach_a, reach_b = pair.a.mature.spread / 2, pair.b.mature.spread / 2
    gap = float(np.hypot(bx - ax, by - ay))
    if gap < NO_ROOM:
        return pair.a.place, pair.b.place
    ux, uy = (bx - ax) / gap, (by - ay) / gap
    near, far = max(gap - reach_b, -reach_a), min(reach_a, gap + reach_b)
    x = float(np.clip((gap**2 + reach_a**2 - reach_b**2) / (2 * gap), near, far))
    half = float(np.sqrt(max(reach_a**2 - x**2, 0.0)))
    ends = ((near, 0.0), (x, -half), (far, 0.0), (x, half))
    return tuple((ax + ux * s - uy * t, ay + uy * s + ux * t) for s, t in ends)


def _judged(survey: Survey, pair: _Pair) -> Finding | None:
    """The finding of a pair by the rule of its form, if there is one."""
    own = _own_rule(pair, survey)
    return _pair_finding(survey, own) if own is not None else None


def run(survey: Survey) -> list[Finding]:
    """Findings on pairs of plants."""
    found = []
    for pair in _close_pairs(survey):
        key = ("pair", pair.a.id, pair.b.id)
        made = survey.layout.remembered(key, (pair.a, pair.b), partial(_judged, survey, pair))
        if made is not None:
            found.append(made)
    return found


WORDING = {
    "overlap": Wording(
        "{a} and {b} stand {distance} apart and need {wanted} at full size: {overlap} of it is missing.",
        "Move {mover} {short} to the {direction}, or choose a smaller rootstock or form.",
        "{short} too close",
    ),
    "group": Wording(
        "The stems of {a} and {b} stand {distance} apart; in a group kept small they need {wanted}.",
        "Move {mover} {short} to the {direction}.",
        "group {short} too tight",
    ),
    "stem": Wording(
        "{a} and {b} stand {distance} apart: even under an open tree {wanted} is needed.",
        "Move {mover} {short} to the {direction}.",
        "{short} too close to the stem",
    ),
    "form": Wording(
        "{a} and {b} may touch in this form, but stand {distance} apart where {wanted} is usual.",
        "Move {mover} {short} to the {direction}.",
        "{short} too close in the row",
    ),
}
