"""How many plants fit a bed or a row, the posts of a trellis, and the direction of rows."""

from __future__ import annotations

import math
from collections.abc import Iterator
from functools import lru_cache

import numpy as np
import shapely

from yardplan.checks.check import Check, Wording
from yardplan.checks.finding import Figure, Finding, Mark, Weight
from yardplan.checks.grouping import grouped
from yardplan.checks.lines import Array
from yardplan.checks.overlaps import form_of
from yardplan.checks.shapes import area_of, has_area, line_of
from yardplan.checks.survey import Survey
from yardplan.language import later
from yardplan.plants.stand import StandingBed
from yardplan.yard.ground import Outline, Point
from yardplan.yard.planting import Bed, Pattern, Row

NAME = "beds"

#: Play of a tenth of a millimetre for places just on a limit.
_PLAY = 1e-4

#: Height of a triangle of equal sides as a share of its side: rows of a staggered planting.
STAGGER = math.sqrt(3) / 2


def per_area(spacing: float, between: float | None = None, pattern: Pattern = "square") -> float:
    """Plants a square metre: 1 / (in row x between rows); staggered rows stand 0.866 as far apart."""
    rows = between if between is not None else spacing * (STAGGER if pattern == "triangular" else 1.0)
    return 1.0 / (spacing * rows)


def places_in(
    outline: Outline, spacing: float, pattern: Pattern = "square", between: float | None = None
) -> tuple[Point, ...]:
    """Places of plants inside a bed, half a spacing from its edge, in rows along its longest side.

    Raises ValueError for a spacing that is not positive.
    """
    if spacing <= 0:
        raise ValueError("the spacing must be greater than 0")
    shape = area_of(outline)
    if shape.is_empty:
        return ()
    sides = np.diff(np.array([*outline, outline[0]]), axis=0)
    longest = sides[int(np.hypot(*sides.T).argmax())]
    turn = math.degrees(math.atan2(longest[1], longest[0]))
    level = shapely.affinity.rotate(shape, -turn, origin=(0, 0))
    rows = between if between is not None else spacing * (STAGGER if pattern == "triangular" else 1.0)
    grid = _grid(level.bounds, spacing, rows, staggered=pattern == "triangular")
    inner = level.buffer(_PLAY)
    kept = grid[shapely.contains_xy(inner, grid[:, 0], grid[:, 1])] if len(grid) else grid
    back = shapely.affinity.rotate(shapely.MultiPoint(kept), turn, origin=(0, 0)) if len(kept) else None
    return tuple((point.x, point.y) for point in back.geoms) if back is not None else ()


def _grid(bounds: tuple[float, float, float, float], step: float, rows: float, *, staggered: bool) -> Array:
    """Grid points, half a step inside the bounds; every other row shifted by half a step if staggered."""
    left, low, right, high = bounds
    inset = min(step / 2, (high - low) / 2)
    ys = np.arange(low + inset, high - inset + _PLAY, rows)
    points = []
    for number, y in enumerate(ys):
        shift = step / 2 if staggered and number % 2 else 0.0
        xs = np.arange(left + step / 2 + shift, right - step / 2 + _PLAY, step)
        points.append(np.column_stack([xs, np.full(len(xs), y)]))
    return np.vstack(points) if points else np.empty((0, 2))


def bed_spacing(bed: StandingBed) -> float | None:
    """Distance between plants of a bed: its own, or the closest usual one of the crop."""
    if bed.bed.spacing:
        return bed.bed.spacing
    form = form_of(bed)
    return form.in_row[0] if form is not None and form.in_row else None


def plants_in(bed: Bed, spacing: float) -> int:
    """How many plants fit a bed; known at once for a bed that stands as before."""
    return _fit(bed.outline, spacing, bed.pattern)


@lru_cache(maxsize=256)
def _fit(outline: Outline, spacing: float, pattern: Pattern) -> int:
    return len(places_in(outline, spacing, pattern))


def most_in_row(row: Row) -> int:
    """How many plants fit on a row's line at its spacing, both ends planted."""
    return int(line_of(row.line).length / row.spacing + 1e-6) + 1 if row.spacing > 0 else row.count


def posts(length: float, apart: float) -> int:
    """Posts of a trellis: both ends and one every `apart` metres between."""
    return math.ceil(max(length, 0.0) / apart - 1e-9) + 1


def off_north(row: Row, north: float) -> float:
    """Degrees, 0 to 90, by which a row leaves north-south; `north` as the site has it."""
    (x1, y1), (x2, y2) = row.line[0], row.line[-1]
    angle = math.degrees(math.atan2(x2 - x1, y2 - y1)) - north
    return abs((angle + 90.0) % 180.0 - 90.0)


def _rows(survey: Survey) -> Iterator[Finding]:
    for row in survey.stand.rows:
        fit = most_in_row(row.row)
        if row.row.count > fit:
            long = float(line_of(row.row.line).length)
            shown = {
                "count": Figure(row.row.count, "count"), "fit": Figure(fit, "count"),
                "length": Figure(long, "length"), "spacing": Figure(row.row.spacing, "length"),
                "wanted": Figure((row.row.count - 1) * row.row.spacing, "length"),
            }
            yield survey.finding(
                NAME, "row_full", Weight.CONFLICT, (row.id,), "stem-in-row", shown,
                (Mark(row.row.line, "line"),),
            )


def _direction(survey: Survey, thing: str, row: Row) -> Iterator[Finding]:
    """Rows far from north-south light their two sides unequally."""
    if len(row.line) < 2 or math.dist(row.line[0], row.line[-1]) < 1e-6:
        return
    off = off_north(row, survey.yard.site.north)
    if off > survey.rules.value("row-off-north"):
        shown = {"off": Figure(off, "count")}
        yield survey.finding(
            NAME, "row_direction", Weight.ADVICE, (thing,), "row-off-north", shown, (Mark(row.line, "line"),)
        )


def _beds(survey: Survey) -> Iterator[Finding]:
    """A caution for each planted bed that takes no plant."""
    for bed in survey.stand.beds:
        spacing = bed_spacing(bed)
        if bed.bed.plant is None or spacing is None or not has_area(bed.bed.outline):
            continue
        fit = plants_in(bed.bed, spacing)
        if fit == 0:
            shown = {"spacing": Figure(spacing, "length")}
            yield survey.finding(
                NAME, "bed_too_small", Weight.CAUTION, (bed.id,), "stem-in-row", shown,
                (Mark(bed.bed.outline, "area"),),
            )


def run(survey: Survey) -> list[Finding]:
    """Findings on what fits beds and rows."""
    turned = [f for row in survey.stand.rows for f in _direction(survey, row.id, row.row)]
    return [*_rows(survey), *_beds(survey), *grouped(turned)]


CHECK = Check(
    name=NAME,
    title=later("Beds and rows"),
    run=run,
    wording={
        "row_full": Wording(
            "{a} is {length} long and takes {fit} plants {spacing} apart, not {count}.",
            "Lengthen the row to {wanted}, or plant {fit}.",
            "{fit} plants fit, not {count}",
        ),
        "row_direction": Wording(
            "One side of the row gets less sun than the other, for it runs far[ ({off} degrees)] off north "
            "and south: {things}.",
            "Turn it nearer to north and south where there is room.",
            "row across the sun",
        ),
        "bed_too_small": Wording(
            "{a} takes no plant at a spacing of {spacing}.", "Enlarge the bed, or plant something smaller.",
            "bed too small",
        ),
    },
)
