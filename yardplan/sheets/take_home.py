"""What goes out into the yard and to the shop: setting-out, shopping, the year's care, the harvest."""

from __future__ import annotations

import datetime as dt
from collections.abc import Iterable

from yardplan.arrange.setting_out import FixedPoint, Peg, baseline, fixed_points, pegs, square_corner
from yardplan.care.harvest import HarvestCrop, harvest_plan
from yardplan.care.shopping import shopping
from yardplan.care.tasks import Refusal, care_plan
from yardplan.care.together import Work, together
from yardplan.checks.survey import Survey
from yardplan.drawing.rows import bed_places
from yardplan.language import tr
from yardplan.sheets.tables import Column, Table
from yardplan.units import System, format_length, format_weight
from yardplan.yard.ground import Point
from yardplan.yard.yard import Yard

_MONTHS = ("Jan", "Feb", "Mar", "Apr", "May", "June", "July", "Aug", "Sept", "Oct", "Nov", "Dec")


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
        columns=(
            Column("Peg", 11, strong=True), Column("From", 7), Column("Tape", 11, right=True),
            Column("and from", 8), Column("Tape", 11, right=True), Column("Peg stands", 16),
            Column("Sure to", 9, right=True), Column("Along the baseline", 12, right=True),
            Column("Square off it", 13, right=True), Column("Check", 18, right=True),
        ),
        rows=tuple(_peg_row(peg, short, units) for peg in found),
        notes=tuple(_setting_notes(named, base, line, units)),
    )


def _peg_row(peg: Peg, short: dict[Point, str], units: System) -> tuple[str, ...]:
    tapes, offset = peg.tapes, peg.offset
    cells = [peg.key, "", "", "", "", "no two points in reach", ""]
    if tapes is not None:
        first, second = short[tapes.first.place], short[tapes.second.place]
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
    named: list[tuple[str, FixedPoint]], base: list[str], line: tuple[FixedPoint, FixedPoint] | None,
    units: System,
) -> Iterable[str]:
    yield "Fixed points: " + "; ".join(f"{name} {point.name}" for name, point in named) + "."
    yield "Pegs stand in the order of work. Pull both tapes tight and level; the peg stands where they cross."
    if line is not None:
        a, b, c = (format_length(side, units) for side in square_corner(_apart(line)))
        yield (
            f"Baseline from {base[0]} to {base[1]}; left and right looking that way. "
            f"A square corner: {a} along it, {b} off it, {c} across."
        )
    yield "Have services located before the first peg is driven; pegs and stakes pierce shallow lines."


def _apart(line: tuple[FixedPoint, FixedPoint]) -> float:
    (x0, y0), (x1, y1) = line[0].place, line[1].place
    return float(((x1 - x0) ** 2 + (y1 - y0) ** 2) ** 0.5)


def shopping_table(survey: Survey, units: System) -> Table:
    """What to buy, with cost where the user gave prices."""
    counts = {bed.id: len(bed_places(bed)) for bed in survey.yard.beds}
    bill = shopping(survey, counts)
    rows = tuple(
        (
            "□", item.name, item.amount(units), "" if item.price is None else f"{item.price:,.2f}",
            "" if item.cost is None else f"{item.cost:,.2f}", item.note,
        )
        for item in bill.items
    )
    notes = []
    if bill.total is not None:
        left_out = f"; {bill.unpriced} lines have no price" if bill.unpriced else ""
        notes.append(f"Total {bill.currency} {bill.total:,.2f}{left_out}.".replace("  ", " "))
    notes.append("Prices are of one piece, metre, kilogram or litre as the line is counted.")
    return Table(
        title="Shopping list",
        columns=(
            Column("", 4), Column("Item", 40, strong=True), Column("Quantity", 14, right=True),
            Column("Price", 12, right=True), Column("Cost", 12, right=True), Column("Note", 50),
        ),
        rows=rows, notes=tuple(notes) if bill.total is not None else (),
    )


def day(when: dt.date, year: int) -> str:
    """A date as it stands in a narrow column: "24 Apr", with its year where it is not the table's."""
    words = f"{when.day} {_MONTHS[when.month - 1]}"
    return words if when.year == year else f"{words} {when.year}"


def care_table(survey: Survey, year: int, units: System) -> Table:
    """The year's work by date; kinds with the same work share a line, cautions stand once, under numbers."""
    plan = care_plan(survey, year, units)
    works = together(plan.tasks)
    cautions = list(dict.fromkeys(words for work in works for words in work.cautions))
    notes = ["Label, law and local extension service come before this list. Take care:"]
    notes += [f"{number}. {words}" for number, words in enumerate(cautions, 1)]
    if plan.by_month:
        notes.append("Dates marked 'by month' rest on usual months: temperatures or frosts are not known.")
    if plan.undated:
        notes.append(f"Not dated, for want of bloom or harvest dates here: {', '.join(plan.undated)}.")
    notes += _refused(plan.refusals, year)
    return Table(
        title=f"Care in {year}",
        columns=(
            Column("", 3), Column("From", 15, strong=True), Column("To", 10), Column("Work", 32),
            Column("Plants", 32), Column("How much, why", 40), Column("Take care", 9),
        ),
        rows=tuple(_care_row(work, cautions, year) for work in works), notes=tuple(notes),
    )


def _care_row(work: Work, cautions: list[str], year: int) -> tuple[str, ...]:
    task = work.first
    title = f"{task.title} ({task.repeats})" if task.repeats else task.title
    basis = "by month" if task.by_month else ""
    amounts = work.amounts if task.kind != "water" or len(work.amounts) == 1 else (tr("amounts: see Water"),)
    parts = (task.when, *amounts, *work.notes, task.why, basis)
    why = ". ".join(f"{words[:1].upper()}{words[1:]}".rstrip(".") for words in parts if words)
    plants = ", ".join(dict.fromkeys(one.what for one in work.tasks))
    numbers = ", ".join(map(str, sorted(cautions.index(words) + 1 for words in work.cautions)))
    about = "about " if work.about else ""
    return ("□", about + day(work.start, year), day(work.end, year), title, plants, why, numbers)


def _refused(refusals: Iterable[Refusal], year: int) -> Iterable[str]:
    """Sprays that were not placed, those of one kind and reason together."""
    groups: dict[tuple[object, ...], list[Refusal]] = {}
    for one in refusals:
        groups.setdefault((one.title, one.blockers, one.start.year), []).append(one)
    for group in groups.values():
        first, last = min(one.start for one in group), max(one.end for one in group)
        plants = ", ".join(dict.fromkeys(one.what for one in group))
        yield (
            f"Not placed from {day(first, year)} to {day(last, year)}: {group[0].title}, {plants}, "
            f"because of {', '.join(group[0].blockers)}."
        )


def harvest_table(survey: Survey, year: int, units: System) -> Table:
    """When each variety ripens and how much it may bear."""
    plan = harvest_plan(survey, year)
    notes = ["Amounts are estimates from published yields; weather and care move them far."]
    if plan.unknown:
        notes.append(f"Ripening here is not known of {', '.join(plan.unknown)}.")
    return Table(
        title=f"Harvest from spring {year}",
        columns=(
            Column("Plants", 30, strong=True), Column("First picking, about", 16), Column("Last, about", 14),
            Column("Amount, about", 22, right=True), Column("Note", 34),
        ),
        rows=tuple(_harvest_row(crop, year, units) for crop in plan.crops), notes=tuple(notes),
    )


def _harvest_row(crop: HarvestCrop, year: int, units: System) -> tuple[str, ...]:
    if crop.kilograms is None:
        amount = "not known"
    elif crop.kilograms[1] <= 0:
        amount = "nothing yet"
    else:
        amount = " to ".join(format_weight(kg, units) for kg in crop.kilograms)
    notes = ["full crop: no planting year" if crop.full else "", "by month" if crop.by_month else "",
             "partly from memory" if crop.memory else ""]
    said = "; ".join(note for note in notes if note)
    return (crop.what, day(crop.first, year), day(crop.last, year), amount, said)
