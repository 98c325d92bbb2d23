"""Room between rows: against plants, against other rows, and the plants within a row."""

from __future__ import annotations

from collections.abc import Iterator

import numpy as np
import shapely

from yardplan.checks.check import Wording
from yardplan.checks.finding import Figure, Finding, Mark, Weight
from yardplan.checks.ordering import pair_of
from yardplan.checks.overlaps import NO_ROOM, TOUCH, form_of, weight_of
from yardplan.checks.shapes import line_of
from yardplan.checks.survey import Survey
from yardplan.plants.stand import Standing, StandingRow
from yardplan.yard.ground import Point

NAME = "spacing"


def _row_pair(survey: Survey, row: StandingRow, plant: Standing, gap: float) -> Finding | None:
    """A plant against a row: from its stem to the row's line."""
    wanted = row.mature.spread / 2 + plant.mature.spread / 2
    overlap = 1 - gap / wanted
    if overlap <= max(survey.rules.value("spacing-advice"), TOUCH):
        return None
    weight, rule = weight_of(survey, overlap)
    line, foot = line_of(row.row.line), shapely.Point(plant.place)
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
    close = gaps < layout.reach[:, None] + widths[None, :] - TOUCH
    for plant, row in zip(*np.nonzero(close), strict=True):
        found = _row_pair(survey, layout.rows[row], layout.plants[plant], float(gaps[plant, row]))
        if found is not None:
            yield found


def _side_by_side(a: StandingRow, b: StandingRow) -> bool:
    """True for rows beside each other, False where the nearest way leads out of a row's end."""
    near_a, near_b = shapely.shortest_line(
        line_of(a.row.line), line_of(b.row.line)
    ).coords[:]
    way = np.subtract(near_b, near_a)
    if np.hypot(*way) < NO_ROOM:
        return True
    heading = np.subtract(a.row.line[-1], a.row.line[0])
    along = abs(float(np.dot(way, heading))) / max(float(np.hypot(*way) * np.hypot(*heading)), NO_ROOM)
    return bool(along < np.cos(np.radians(45)))


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
            if gap < wanted - TOUCH:
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
    place = line_of(row.row.line).interpolate(0.5, normalized=True)
    return place.x, place.y


def _dense_rows(survey: Survey) -> Iterator[Finding]:
    for row in survey.stand.rows:
        form = form_of(row)
        if form is None or form.in_row is None or row.row.count < 2:
            continue
        wanted = form.in_row[0] * survey.rules.value("stem-in-row")
        if row.row.spacing < wanted * (1 - survey.rules.value("spacing-tolerance")):
            weight, _ = weight_of(survey, 1 - row.row.spacing / wanted)
            figures = {
                "distance": Figure(row.row.spacing, "length"), "wanted": Figure(wanted, "length"),
                "count": Figure(row.row.count, "count"),
            }
            yield survey.finding(
                NAME, "row_dense", weight, (row.id,), "stem-in-row", figures, (Mark(row.row.line, "line"),)
            )


def run(survey: Survey) -> list[Finding]:
    """Findings on room beside and within rows."""
    return [*_rows_and_plants(survey), *_rows_and_rows(survey), *_dense_rows(survey)]


WORDING = {
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
}
