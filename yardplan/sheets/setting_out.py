"""The setting-out sheet: two tapes for each peg, baseline and offset, checks, and the order of work."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from yardplan.arrange.setting_out import (
    FixedPoint,
    Peg,
    baseline,
    figures,
    fixed_points,
    pegs,
    square_corner,
)
from yardplan.language import tr
from yardplan.sheets.tables import Column, Table
from yardplan.units import System, format_coarse, format_length
from yardplan.yard.ground import Point
from yardplan.yard.yard import Yard


def pins(yard: Yard) -> tuple[tuple[str, Point], ...]:
    """Fixed points that the setting-out uses, with the short names they have on its plan: F1, F2, ..."""
    return tuple((name, point.place) for name, point in _named(yard, pegs(yard)))


def _named(yard: Yard, found: Iterable[Peg]) -> list[tuple[str, FixedPoint]]:
    """Short names of the points used, in the order of the yard's list of fixed points."""
    used = {point.place for peg in found if peg.tapes for point in (peg.tapes.first, peg.tapes.second)}
    used |= {point.place for point in baseline(yard) or ()}
    kept: dict[Point, FixedPoint] = {}
    for point in fixed_points(yard):
        if point.place in used:
            kept.setdefault(point.place, point)
    return [(f"F{number}", point) for number, point in enumerate(kept.values(), 1)]


def setting_out_table(yard: Yard, units: System) -> Table:
    """Two tapes for each peg, or a baseline with offsets, and a check against another peg."""
    found = pegs(yard)
    named = _named(yard, found)
    short = {point.place: name for name, point in named}
    line = baseline(yard)
    base = [short.get(point.place, point.name) for point in line] if line else []
    return Table(
        title="Setting out",
        lead=tuple(_setting_notes(found, named, base, line, units)),
        columns=(
            Column("Peg", 11, strong=True), Column("From", 9), Column("Tape", 11, right=True),
            Column("and from", 9), Column("Tape", 11, right=True), Column("Peg stands", 16),
            Column("Sure to", 9, right=True), Column("Along the baseline", 12, right=True),
            Column("Square off it", 13, right=True), Column("Check", 18, right=True),
        ),
        rows=tuple(_peg_row(peg, short, units) for peg in found),
    )


def _peg_row(peg: Peg, short: dict[Point, str], units: System) -> tuple[str, ...]:
    tapes, offset = peg.tapes, peg.offset
    cells = [peg.key, "", "", "", "", "no two points in reach", ""]
    if tapes is not None:
        first, second = (short.get(point.place, point.name) for point in (tapes.first, tapes.second))
        side = "left" if tapes.left else "right"
        flat = ", flat crossing" if tapes.weak else ""
        cells = [
            peg.key, first, format_length(tapes.from_first, units), second,
            format_length(tapes.from_second, units), f"{side} of {first} to {second}{flat}",
            format_length(tapes.error, units),
        ]
    if offset is None:
        cells += ["", ""]
    else:
        side = "left" if offset.left else "right"
        cells += [format_length(offset.along, units), f"{format_length(offset.off, units)} {side}"]
    check = ""
    if peg.check_with is not None and peg.check_distance is not None:
        check = f"{format_length(peg.check_distance, units)} to {peg.check_with}"
    return (*cells, check)


def _setting_notes(
    found: Sequence[Peg], named: list[tuple[str, FixedPoint]], base: list[str],
    line: tuple[FixedPoint, FixedPoint] | None, units: System,
) -> Iterable[str]:
    yield "Fixed points: " + "; ".join(f"{name} {point.name}" for name, point in named) + "."
    yield "Pegs stand in the order of work. Pull both tapes tight and level; the peg stands where they cross."
    if any(point.error for peg in found if peg.tapes for point in (peg.tapes.first, peg.tapes.second)):
        yield tr("Where the start of a tape is no F point, it is a peg set before; the errors add up.")
    if line is not None:
        a, b, c = (format_length(side, units) for side in square_corner(_apart(line)))
        yield (
            f"Baseline from {base[0]} to {base[1]}; left and right looking that way. "
            f"A square corner: {a} along it, {b} off it, {c} across."
        )
        if any(peg.offset and peg.offset.along < 0 for peg in found):
            yield tr("A minus along the baseline: measure from {point} the other way.", point=base[0])
        if any(peg.offset and peg.offset.long for peg in found):
            far = format_coarse(figures()["longest offset"], units)
            yield tr("Offsets over {length} are not kept square by eye: lay out the corner.", length=far)
    yield "Have services located before the first peg is driven; pegs and stakes pierce shallow lines."


def _apart(line: tuple[FixedPoint, FixedPoint]) -> float:
    (x0, y0), (x1, y1) = line[0].place, line[1].place
    return float(((x1 - x0) ** 2 + (y1 - y0) ** 2) ** 0.5)
