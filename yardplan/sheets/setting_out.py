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
from yardplan.language import later, tr
from yardplan.sheets.tables import Column, Table
from yardplan.units import System, format_coarse, format_length
from yardplan.yard.ground import Point
from yardplan.yard.yard import Yard

#: On which side of the line between the two points the peg stands.
_LEFT, _RIGHT = later("left of {first} to {second}"), later("right of {first} to {second}")


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
        title=tr("Setting out"),
        lead=tuple(_setting_notes(found, named, base, line, units)),
        columns=(
            Column(tr("Peg"), 11, strong=True), Column(tr("From"), 9), Column(tr("Tape"), 11, right=True),
            Column(tr("and from"), 9), Column(tr("Tape"), 11, right=True), Column(tr("Peg stands"), 16),
            Column(tr("Sure to"), 9, right=True), Column(tr("Along the baseline"), 12, right=True),
            Column(tr("Square off it"), 13, right=True), Column(tr("Check"), 18, right=True),
        ),
        rows=tuple(_peg_row(peg, short, units) for peg in found),
    )


def _peg_row(peg: Peg, short: dict[Point, str], units: System) -> tuple[str, ...]:
    tapes, offset = peg.tapes, peg.offset
    cells = [peg.key, "", "", "", "", tr("no two points in reach"), ""]
    if tapes is not None:
        first, second = (short.get(point.place, point.name) for point in (tapes.first, tapes.second))
        stands = tr(_LEFT if tapes.left else _RIGHT, first=first, second=second)
        if tapes.weak:
            stands = tr("{stands}, flat crossing", stands=stands)
        cells = [
            peg.key, first, format_length(tapes.from_first, units), second,
            format_length(tapes.from_second, units), stands, format_length(tapes.error, units),
        ]
    if offset is None:
        cells += ["", ""]
    else:
        side = later("{length} left") if offset.left else later("{length} right")
        off = tr(side, length=format_length(offset.off, units))
        cells += [format_length(offset.along, units), off]
    check = ""
    if peg.check_with is not None and peg.check_distance is not None:
        length = format_length(peg.check_distance, units)
        check = tr("{length} to {peg}", length=length, peg=peg.check_with)
    return (*cells, check)


def _setting_notes(
    found: Sequence[Peg], named: list[tuple[str, FixedPoint]], base: list[str],
    line: tuple[FixedPoint, FixedPoint] | None, units: System,
) -> Iterable[str]:
    yield tr("Fixed points: {points}.", points="; ".join(f"{name} {point.name}" for name, point in named))
    yield tr("Pegs stand in the order of work. Pull both tapes tight and level; the peg stands where they "
             "cross.")
    if any(point.error for peg in found if peg.tapes for point in (peg.tapes.first, peg.tapes.second)):
        yield tr("Where the start of a tape is no F point, it is a peg set before; the errors add up.")
    if line is not None:
        a, b, c = (format_length(side, units) for side in square_corner(_apart(line)))
        yield tr(
            "Baseline from {start} to {end}; left and right looking that way. A square corner: {along} along "
            "it, {off} off it, {across} across.", start=base[0], end=base[1], along=a, off=b, across=c,
        )
        if any(peg.offset and peg.offset.along < 0 for peg in found):
            yield tr("A minus along the baseline: measure from {point} the other way.", point=base[0])
        if any(peg.offset and peg.offset.long for peg in found):
            far = format_coarse(figures()["longest offset"], units)
            yield tr("Offsets over {length} are not kept square by eye: lay out the corner.", length=far)
    yield tr("Have services located before the first peg is driven; pegs and stakes pierce shallow lines.")


def _apart(line: tuple[FixedPoint, FixedPoint]) -> float:
    (x0, y0), (x1, y1) = line[0].place, line[1].place
    return float(((x1 - x0) ** 2 + (y1 - y0) ** 2) ** 0.5)
