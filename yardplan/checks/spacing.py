"""Room between plants: crowns at full size against each other, rows and beds (rules spacing-*)."""

from __future__ import annotations

from collections.abc import Iterator

import numpy as np
import shapely
from attrs import frozen
from numpy.typing import NDArray

from yardplan.checks.check import Check, Wording
from yardplan.checks.finding import Figure, Finding, Mark, Weight
from yardplan.checks.groups import is_member
from yardplan.checks.layout import Layout
from yardplan.checks.lines import Array
from yardplan.checks.ordering import pair_of
from yardplan.checks.survey import Survey
from yardplan.plants.crop import CropForm
from yardplan.plants.stand import Standing, StandingRow
from yardplan.yard.ground import Point
from yardplan.yard.planting import Planting

NAME = "spacing"

#: A millimetre: nearer than that to a limit counts as met.
_TOUCH = 1e-3
_NO_ROOM = 1e-6

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
        return 1.0 - self.distance / max(self.wanted, _NO_ROOM)


def _ray(layout: Layout, plants: Indices, angle: Array) -> Array:
    """How far each crown reaches in a direction; flat-trained ones are oblongs along their facing."""
    reach = layout.reach[plants]
    turn = angle - layout.facing[plants]
    along = np.maximum(np.abs(np.cos(turn)), _NO_ROOM)
    across = np.maximum(np.abs(np.sin(turn)), _NO_ROOM)
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
    wanted = _ray(layout, i, angle) + _ray(layout, j, angle)
    for panel, other in ((i, j), (j, i)):
        only = layout.flat[panel] & ~layout.flat[other]
        if only.any():
            distance = np.where(only, _off_panel(layout, panel, other), distance)
            wanted = np.where(only, layout.half_depth[panel] + layout.reach[other], wanted)
    return distance, wanted


def form_of(plant: Standing | StandingRow) -> CropForm | None:
    """The published figures of a plant's form, where the catalogue has them."""
    if plant.crop is None:
        return None
    thing = plant.row if isinstance(plant, StandingRow) else plant.thing
    name = getattr(thing, "form", None) or plant.crop.usual_form
    return next((form for form in plant.crop.forms if form.form == name), None)


def _grown_under(a: Standing, b: Standing) -> Standing | None:
    """The one of two plants that is meant to grow under the open crown of the other, if any."""
    low, high = sorted((a, b), key=lambda plant: plant.mature.height)
    under = is_member("grows under trees", low) and high.mature.height > 2 * low.mature.height
    return low if under else None


def _group(plant: Standing) -> str | None:
    return plant.thing.group if isinstance(plant.thing, Planting) else None


def _own_rule(pair: _Pair, survey: Survey) -> _Pair | None:
    """The pair measured by the rule of its declared form, or as it is; None where they may stand so."""
    a, b = pair.a, pair.b
    centres = float(np.hypot(a.place[0] - b.place[0], a.place[1] - b.place[1]))
    if _group(a) is not None and _group(a) == _group(b):
        wanted = survey.rules.value("group-stems")
        return _Pair(a, b, centres, wanted, "group") if centres < wanted - _TOUCH else None
    low = _grown_under(a, b)
    if low is not None:
        wanted = low.mature.spread / 2
        return _Pair(a, b, centres, wanted, "stem") if centres < wanted - _TOUCH else None
    if a.touching and b.touching and a.mature.habit == b.mature.habit:
        return _touching(pair, centres)
    return pair


def _touching(pair: _Pair, centres: float) -> _Pair | None:
    """Two plants of a form whose crowns may meet: wanted is the published distance in the row."""
    rows = [form.in_row[0] for plant in (pair.a, pair.b) if (form := form_of(plant)) and form.in_row]
    if not rows:
        return pair
    wanted = min(pair.wanted, sum(rows) / len(rows))
    return _Pair(pair.a, pair.b, centres, wanted, "form") if centres < wanted - _TOUCH else None


def _close_pairs(survey: Survey) -> Iterator[_Pair]:
    """Pairs of plants, at least one of the plan, that stand nearer than wanted."""
    layout = survey.layout
    if not len(layout.pairs):
        return
    distance, wanted = _distances(layout)
    close = (distance < wanted - _TOUCH) & layout.planted[layout.pairs].any(axis=1)
    for k in np.nonzero(close)[0]:
        i, j = layout.pairs[k]
        a, b = pair_of(layout.plants[i], layout.plants[j])
        pair = _own_rule(_Pair(a, b, float(distance[k]), float(wanted[k])), survey)
        if pair is not None:
            yield pair


def weight_of(survey: Survey, overlap: float) -> tuple[Weight, str]:
    """The class of an overlap and the rule that sets it."""
    if overlap > survey.rules.value("spacing-too-close"):
        return Weight.CONFLICT, "spacing-too-close"
    if overlap > survey.rules.value("spacing-crowded"):
        return Weight.CAUTION, "spacing-crowded"
    return Weight.ADVICE, "spacing-advice"


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
    if gap < _NO_ROOM:
        return pair.a.place, pair.b.place
    ux, uy = (bx - ax) / gap, (by - ay) / gap
    near, far = max(gap - reach_b, -reach_a), min(reach_a, gap + reach_b)
    x = float(np.clip((gap**2 + reach_a**2 - reach_b**2) / (2 * gap), near, far))
    half = float(np.sqrt(max(reach_a**2 - x**2, 0.0)))
    ends = ((near, 0.0), (x, -half), (far, 0.0), (x, half))
    return tuple((ax + ux * s - uy * t, ay + uy * s + ux * t) for s, t in ends)


def _row_pair(survey: Survey, row: StandingRow, plant: Standing, gap: float) -> Finding | None:
    """A plant against a row: from its stem to the row's line."""
    wanted = row.mature.spread / 2 + plant.mature.spread / 2
    overlap = 1 - gap / wanted
    if overlap <= max(survey.rules.value("spacing-advice"), _TOUCH):
        return None
    weight, rule = weight_of(survey, overlap)
    line, foot = shapely.LineString(row.row.line), shapely.Point(plant.place)
    near = line.interpolate(line.project(foot))
    figures = {
        "distance": Figure(gap, "length"), "wanted": Figure(wanted, "length"),
        "short": Figure(wanted - gap, "length"), "overlap": Figure(overlap, "share"),
        "direction": Figure(survey.direction((near.x, near.y), plant.place), "text"),
    }
    marks = (Mark(((near.x, near.y), plant.place), "line"),)
    return survey.finding(NAME, "row_plant", weight, (row.id, plant.id), rule, figures, marks)


def _rows_and_plants(survey: Survey) -> Iterator[Finding]:
    layout = survey.layout
    if not len(layout.rows) or not len(layout.plants):
        return
    gaps = layout.row_gaps
    widths = np.array([row.mature.spread / 2 for row in layout.rows])
    close = gaps < layout.reach[:, None] + widths[None, :] - _TOUCH
    for plant, row in zip(*np.nonzero(close), strict=True):
        found = _row_pair(survey, layout.rows[row], layout.plants[plant], float(gaps[plant, row]))
        if found is not None:
            yield found


def _side_by_side(a: StandingRow, b: StandingRow) -> bool:
    """True for rows beside each other, False where the nearest way leads out of a row's end."""
    near_a, near_b = shapely.shortest_line(
        shapely.LineString(a.row.line), shapely.LineString(b.row.line)
    ).coords[:]
    way = np.subtract(near_b, near_a)
    if np.hypot(*way) < _NO_ROOM:
        return True
    heading = np.subtract(a.row.line[-1], a.row.line[0])
    along = abs(float(np.dot(way, heading))) / max(float(np.hypot(*way) * np.hypot(*heading)), _NO_ROOM)
    return along < np.cos(np.radians(45))


def _wanted_between(survey: Survey, a: StandingRow, b: StandingRow) -> float:
    """Distance wanted between two rows: the published one, or both half widths and a free alley."""
    halves = (a.mature.spread + b.mature.spread) / 2
    if not _side_by_side(a, b):
        return halves
    published = [form.between_rows[0] for row in (a, b) if (form := form_of(row)) and form.between_rows]
    return max(published) if published else halves + survey.rules.value("alley-hand")


def _rows_and_rows(survey: Survey) -> Iterator[Finding]:
    layout = survey.layout
    for i, first in enumerate(layout.rows):
        for j in range(i + 1, len(layout.rows)):
            gap = float(shapely.distance(layout.row_lines[i], layout.row_lines[j]))
            a, b = pair_of(first, layout.rows[j])
            wanted = _wanted_between(survey, a, b)
            if gap < wanted - _TOUCH:
                yield _row_finding(survey, a, b, gap, wanted)


def _row_finding(survey: Survey, a: StandingRow, b: StandingRow, gap: float, wanted: float) -> Finding:
    crowns = (a.mature.spread + b.mature.spread) / 2
    weight, rule = weight_of(survey, 1 - gap / crowns) if gap < crowns else (Weight.CAUTION, "alley-hand")
    figures = {
        "distance": Figure(gap, "length"), "wanted": Figure(wanted, "length"),
        "short": Figure(wanted - gap, "length"),
        "direction": Figure(survey.direction(_middle(a), _middle(b)), "text"),
    }
    return survey.finding(
        NAME, "row_row", weight, (a.id, b.id), rule, figures, (Mark((_middle(a), _middle(b)), "line"),)
    )


def _middle(row: StandingRow) -> Point:
    place = shapely.LineString(row.row.line).interpolate(0.5, normalized=True)
    return place.x, place.y


def _dense_rows(survey: Survey) -> Iterator[Finding]:
    for row in survey.stand.rows:
        form = form_of(row)
        if form is None or form.in_row is None or row.row.count < 2:
            continue
        wanted = form.in_row[0] * survey.rules.value("stem-in-row")
        if row.row.spacing < wanted - _TOUCH:
            weight, _ = weight_of(survey, 1 - row.row.spacing / wanted)
            figures = {
                "distance": Figure(row.row.spacing, "length"), "wanted": Figure(wanted, "length"),
                "count": Figure(row.row.count, "count"),
            }
            yield survey.finding(
                NAME, "row_dense", weight, (row.id,), "stem-in-row", figures, (Mark(row.row.line, "line"),)
            )


def _over_beds(survey: Survey) -> Iterator[Finding]:
    """Crowns at full size over beds with a crop of their own."""
    layout = survey.layout
    for column in layout.columns("bed"):
        bed = survey.beds.get(layout.features[column].id)
        if bed is None or bed.bed.plant is None or is_member("grows under trees", bed):
            continue
        outline = shapely.Polygon(bed.bed.outline)
        for plant in np.nonzero(layout.planted & (layout.gaps[:, column] < layout.reach - _TOUCH))[0]:
            crown = shapely.Point(layout.xy[plant]).buffer(layout.reach[plant])
            share = outline.intersection(crown).area / max(outline.area, _NO_ROOM)
            if share > survey.rules.value("bed-cover"):
                figures = {"share": Figure(share, "share")}
                yield survey.finding(
                    NAME, "over_bed", Weight.CAUTION, (layout.plants[plant].id, bed.id), "bed-cover",
                    figures, (Mark(layout.plants[plant].place),),
                )


def run(survey: Survey) -> list[Finding]:
    """Findings on room between plants, rows and beds."""
    found = [f for pair in _close_pairs(survey) if (f := _pair_finding(survey, pair)) is not None]
    found.extend(_rows_and_plants(survey))
    found.extend(_rows_and_rows(survey))
    found.extend(_dense_rows(survey))
    found.extend(_over_beds(survey))
    return found


CHECK = Check(
    name=NAME,
    title="Room between plants",
    run=run,
    wording={
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
        "row_plant": Wording(
            "{b} stands {distance} from the row {a}; at full size they need {wanted}.",
            "Move {b} {short} to the {direction}, or shift the row.",
            "{short} too close to the row",
        ),
        "row_row": Wording(
            "The rows {a} and {b} are {distance} apart; {wanted} is needed between them.",
            "Move {b} {short} to the {direction}.",
            "rows {short} too close",
        ),
        "row_dense": Wording(
            "{a} has {count} plants {distance} apart; {wanted} is the closest that is usual.",
            "Set the plants {wanted} apart, with fewer plants or a longer row.",
            "row too dense",
        ),
        "over_bed": Wording(
            "At full size {a} covers {share} of the bed {b}.",
            "Move the bed or the tree apart, or plant something there that bears shade.",
            "{share} of the bed under the crown",
        ),
    },
)
