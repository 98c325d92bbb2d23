"""What goes to the shop and through the year: shopping, care, sprays not placed, the harvest."""

from __future__ import annotations

import datetime as dt
from collections.abc import Sequence

from yardplan.care.harvest import HarvestCrop, HarvestPlan, plenty_words
from yardplan.care.shopping import shopping
from yardplan.care.tables import figures as care_figures
from yardplan.care.tasks import CarePlan, Refusal
from yardplan.care.together import Work, together
from yardplan.care.watering import month_word
from yardplan.checks.survey import Survey
from yardplan.checks.wording import names_of
from yardplan.drawing.rows import bed_places
from yardplan.language import thousands, tr
from yardplan.sheets.tables import Column, Table
from yardplan.units import System, format_weight


def shopping_table(survey: Survey, units: System) -> Table:
    """What to buy, with cost where the user gave prices."""
    counts = {bed.id: len(bed_places(bed)) for bed in survey.yard.beds}
    bill = shopping(survey, counts, units)
    rows = tuple(
        (
            "□", item.name, item.amount, "" if item.price is None else thousands(item.price, 2),
            "" if item.cost is None else thousands(item.cost, 2), item.note,
        )
        for item in bill.items
    )
    notes = []
    if bill.total is not None:
        total = f"{bill.currency} {thousands(bill.total, 2)}".strip()
        if bill.unpriced:
            notes.append(tr("Total {total}; {n} lines have no price.", total=total, n=bill.unpriced))
        else:
            notes.append(tr("Total {total}.", total=total))
    notes.append(tr("A price is of one piece, or of one of the unit in which the quantity is counted."))
    return Table(
        title=tr("Shopping list"),
        columns=(
            Column("", 4), Column(tr("Item"), 40, strong=True), Column(tr("Quantity"), 14, right=True),
            Column(tr("Price"), 12, right=True), Column(tr("Cost"), 12, right=True), Column(tr("Note"), 50),
        ),
        rows=rows, notes=tuple(notes) if bill.total is not None else (),
    )


def day(when: dt.date, year: int) -> str:
    """A date as it stands in a narrow column: "24 Apr", with its year where it is not the table's."""
    words = tr("{day} {month}", day=when.day, month=month_word(when.month))
    return words if when.year == year else f"{words} {when.year}"


def care_table(plan: CarePlan) -> Table:
    """The year's work by date; kinds with the same work share a line, cautions stand once, under numbers."""
    year = plan.year
    works = together(plan.tasks)
    cautions = list(dict.fromkeys(words for work in works for words in work.cautions))
    notes = [tr("Label, law and local extension service come before this list. Take care:")]
    notes += [f"{number}. {words}" for number, words in enumerate(cautions, 1)]
    if plan.by_month:
        notes.append(
            tr("Dates marked 'by month' rest on usual months: temperatures or frosts are not known.")
        )
    if plan.by_years:
        notes.append(tr(
            "Years stand beside work where no planting year is given: year 1 is the planting year."
        ))
    if plan.undated:
        notes.append(tr("Not dated, for want of bloom or harvest dates here: {plants}.",
                        plants=", ".join(plan.undated)))
    if plan.refusals:
        notes.append(tr("Sprays that were not placed stand in a list of their own."))
    return Table(
        title=tr("Care in {year}", year=year),
        columns=(
            Column("", 3), Column(tr("From"), 15, strong=True), Column(tr("To"), 10), Column(tr("Work"), 32),
            Column(tr("Plants"), 32), Column(tr("How much, why"), 40), Column(tr("Take care"), 9),
        ),
        rows=tuple(_care_row(work, cautions, year) for work in works), notes=tuple(notes),
    )


def _care_row(work: Work, cautions: list[str], year: int) -> tuple[str, ...]:
    task = work.first
    asides = "; ".join(words for words in (task.ages, task.repeats) if words)
    title = f"{task.title} ({asides})" if asides else task.title
    basis = tr("by month") if task.by_month else ""
    amounts = work.amounts if task.kind != "water" or len(work.amounts) < 2 else (tr("amounts: see Water"),)
    parts = (task.when, *amounts, *work.notes, task.why, basis)
    why = ". ".join(f"{words[:1].upper()}{words[1:]}".rstrip(".") for words in parts if words)
    plants = ", ".join(dict.fromkeys(one.what for one in work.tasks))
    numbers = ", ".join(map(str, sorted(cautions.index(words) + 1 for words in work.cautions)))
    start = day(work.start, year)
    if work.about:
        start = tr("about {day}", day=start)
    return ("□", start, day(work.end, year), title, plants, why, numbers)


def refused_table(plan: CarePlan) -> Table | None:
    """Sprays that were not placed, with what forbids them; those of one kind and reason together."""
    year = plan.year
    groups: dict[tuple[object, ...], list[Refusal]] = {}
    for one in plan.refusals:
        groups.setdefault((one.title, one.blockers, one.start.year), []).append(one)
    if not groups:
        return None
    return Table(
        title=tr("Sprays not placed in {year}", year=year),
        lead=(tr(
            "Nothing that can harm bees is sprayed from {days} days before a flower in or beside the yard "
            "opens until its petals are down, nor on fruit that is being picked. The label, the law and the "
            "local extension service come first.", days=f"{care_figures()['spray lead before bloom']:.0f}",
        ),),
        columns=(
            Column(tr("From"), 9, strong=True), Column(tr("To"), 9), Column(tr("Spray"), 24),
            Column(tr("For"), 36), Column(tr("Because of"), 60),
        ),
        rows=tuple(_refused_row(group, year) for group in groups.values()),
    )


def _refused_row(group: Sequence[Refusal], year: int) -> tuple[str, ...]:
    first, last = min(one.start for one in group), max(one.end for one in group)
    plants = ", ".join(dict.fromkeys(one.what for one in group))
    return (day(first, year), day(last, year), group[0].title, plants, group[0].because)


def harvest_table(survey: Survey, plan: HarvestPlan, units: System) -> Table:
    """When each variety ripens and how much it may bear, and where there is far too much or too little."""
    year = plan.year
    notes = [tr("Amounts are estimates from published yields; weather and care move them far.")]
    notes += plenty_words(plan, units)
    if plan.unknown:
        names = names_of(survey)
        unknown = ", ".join(names.get(one, one) for one in plan.unknown)
        notes.append(tr("Ripening here is not known of {plants}.", plants=unknown))
    return Table(
        title=tr("Harvest from spring {year}", year=year),
        columns=(
            Column(tr("Plants"), 30, strong=True), Column(tr("First picking, about"), 16), Column(tr(
                "Last, about",
            ), 14),
            Column(tr("Amount, about"), 22, right=True), Column(tr("Note"), 34),
        ),
        rows=tuple(_harvest_row(crop, year, units) for crop in plan.crops), notes=tuple(notes),
    )


def _harvest_row(crop: HarvestCrop, year: int, units: System) -> tuple[str, ...]:
    if crop.kilograms is None:
        amount = tr("not known")
    elif crop.kilograms[1] <= 0:
        amount = tr("nothing yet")
    else:
        low, high = (format_weight(kg, units) for kg in crop.kilograms)
        amount = tr("{low} to {high}", low=low, high=high)
    notes = [crop.doubt, tr("full crop: no planting year") if crop.full else "",
             tr("by month") if crop.by_month else "", tr("partly from memory") if crop.memory else ""]
    said = "; ".join(note for note in notes if note)
    return (crop.what, day(crop.first, year), day(crop.last, year), amount, said)
