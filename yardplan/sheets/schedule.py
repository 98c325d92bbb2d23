"""The plant schedule: every kind of plant once, with its keys, quantity, spacing, sizes and partner."""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping, Sequence

from attrs import evolve, frozen

from yardplan.care.shopping import without_stock
from yardplan.language import later, tr, tr_n
from yardplan.plants.crop import Crop, Size
from yardplan.plants.cultivar import Cultivar
from yardplan.plants.stand import Stand, Standing, StandingBed, StandingRow
from yardplan.sheets.tables import Column, Table
from yardplan.units import System, format_coarse, format_length
from yardplan.yard.edits import key_letter
from yardplan.yard.planting import Planting, PlantKey

COLUMNS = (
    Column(later("Key"), 9.0, strong=True), Column(later(
        "Botanical name",
    ), 19.0), Column(later("Kind and variety"), 22.0),
    Column(later("Rootstock or form"), 16.0), Column(later("Qty"), 6.0, right=True), Column(later(
        "Spacing",
    ), 11.0, right=True),
    Column(later(
        "At planting, about",
    ), 13.0, right=True), Column(later("Full size, about"), 13.0, right=True),
    Column(later("Partner"), 18.0), Column(later("Note"), 16.0),
)
_UNKNOWN = later("not known")
#: A partner in words: variety and key.
_PARTNER = re.compile(r"(.+) \(([^()]+)\)")


@frozen(kw_only=True)
class ScheduleRow:
    """One line of the schedule. `spacing` metres between plants of a row or bed; None for single plants.

    `young` size at planting, `mature` at maturity; None where not known.
    """

    keys: tuple[str, ...]
    plant: PlantKey
    botanical: str
    kind: str
    form: str
    quantity: int
    spacing: float | None = None
    young: Size | None = None
    mature: Size | None = None
    partner: str = ""
    note: str = ""


def schedule(
    mature: Stand, young: Stand, partners: Mapping[str, str] | None = None,
    bed_counts: Mapping[str, int] | None = None,
) -> tuple[ScheduleRow, ...]:
    """Lines of the schedule: like plants together, then rows, then planted beds, each by key.

    `partners` words by id; `bed_counts` plants in each bed. `young` is the stand at planting.
    """
    said, counts = partners or {}, bed_counts or {}
    small = {plant.id: plant.size for plant in young.plants}
    small |= {row.id: row.size for row in young.rows}
    lines = list(_single(mature.plants, small, said))
    lines += [_row(row, small.get(row.id), said) for row in mature.rows]
    lines += [_bed(bed, counts, said) for bed in mature.beds if bed.bed.plant is not None]
    return tuple(lines)


def _number(key: str) -> tuple[str, int, str]:
    """Sorts A2 before A10."""
    letter = key_letter(key)
    rest = key[len(letter):]
    return letter, int(rest) if rest.isdecimal() else 0, key


def _single(
    plants: Iterable[Standing], small: Mapping[str, Size], said: Mapping[str, str]
) -> Iterable[ScheduleRow]:
    """Plants of one variety, rootstock, form and partner's variety share a line."""
    groups: dict[tuple[object, ...], list[Standing]] = {}
    for plant in sorted((p for p in plants if p.planted), key=lambda p: _number(p.id)):
        thing = plant.thing
        assert isinstance(thing, Planting)
        alike = (thing.plant, thing.rootstock, thing.form, thing.note, _partner_name(said.get(plant.id, "")),
                 plant.mature, plant.container is None)
        groups.setdefault(alike, []).append(plant)
    for group in groups.values():
        first = group[0]
        thing = first.thing
        assert isinstance(thing, Planting)
        yield ScheduleRow(
            keys=tuple(plant.id for plant in group), plant=thing.plant,
            botanical=botanical(first.cultivar, first.crop), kind=_kind(first.crop, thing.plant),
            form=_form(thing.rootstock, thing.form, first.crop, potted=first.container is not None),
            quantity=len(group), young=small.get(first.id), mature=first.mature,
            partner=_partners([said.get(plant.id, "") for plant in group]), note=thing.note,
        )


def _partner_name(words: str) -> str:
    """The variety of a partner told as `Idared (A2)`."""
    found = _PARTNER.fullmatch(words)
    return found[1] if found else words


def _partners(words: Sequence[str]) -> str:
    """The partners of plants that share a line: the variety once, with all keys."""
    found = [_PARTNER.fullmatch(one) for one in words]
    keys = sorted({match[2] for match in found if match}, key=_number)
    return f"{_partner_name(words[0])} ({', '.join(keys)})" if keys else words[0]


def _row(standing: StandingRow, young: Size | None, said: Mapping[str, str]) -> ScheduleRow:
    row = standing.row
    return ScheduleRow(
        keys=(row.id,), plant=row.plant, botanical=botanical(standing.cultivar, standing.crop),
        kind=_kind(standing.crop, row.plant), form=_form(row.rootstock, row.form, standing.crop),
        quantity=row.count, spacing=row.spacing, young=young, mature=standing.mature,
        partner=said.get(row.id, ""), note=row.note,
    )


def _bed(standing: StandingBed, counts: Mapping[str, int], said: Mapping[str, str]) -> ScheduleRow:
    bed = standing.bed
    assert bed.plant is not None
    return ScheduleRow(
        keys=(bed.id,), plant=bed.plant, botanical=botanical(standing.cultivar, standing.crop),
        kind=_kind(standing.crop, bed.plant), form=tr("bed, {pattern} pattern", pattern=tr(bed.pattern)),
        quantity=counts.get(bed.id, 0), spacing=bed.spacing, mature=standing.size,
        partner=said.get(bed.id, ""), note=bed.note,
    )


def botanical(cultivar: Cultivar | None, crop: Crop | None) -> str:
    """The species of a cultivar, or that of its kind."""
    if cultivar is not None and cultivar.species:
        return cultivar.species
    return crop.botanical if crop is not None else tr(_UNKNOWN)


def _kind(crop: Crop | None, key: PlantKey) -> str:
    name = tr(crop.name if crop is not None else key.crop)
    return f"{name[:1].upper()}{name[1:]} ‘{key.cultivar}’"


def _form(rootstock: str | None, form: str | None, crop: Crop | None, potted: bool = False) -> str:
    """Rootstock and form as chosen; the usual form of the kind where none was."""
    words = [word for word in (rootstock, tr(without_stock(form or "", rootstock or ""))) if word]
    if not words and crop is not None:
        words = [tr(crop.usual_form)]
    if potted:
        words.append(tr("in a pot"))
    return ", ".join(words)


def size_words(size: Size | None, units: System) -> str:
    """Spread and height: "3.5 × 4.0 m"; feet alike."""
    if size is None:
        return ""
    spread, high = format_coarse(size.spread, units), format_coarse(size.height, units)
    number, _, unit = spread.rpartition(" ")
    return f"{number} × {high}" if high.endswith(f" {unit}") else f"{spread} × {high}"


def schedule_table(rows: Iterable[ScheduleRow], units: System) -> Table:
    """The schedule as a table of words."""
    lines = tuple(
        (
            " ".join(row.keys), row.botanical, row.kind, row.form, str(row.quantity or ""),
            format_length(row.spacing, units) if row.spacing else "", size_words(row.young, units),
            size_words(row.mature, units), row.partner, row.note,
        )
        for row in rows
    )
    total = sum(row.quantity for row in rows) if isinstance(rows, tuple) else 0
    columns = tuple(evolve(column, head=tr(column.head)) for column in COLUMNS)
    return Table(
        title=tr("Plant schedule"), columns=columns, rows=lines,
        notes=(
            tr_n("{n} plant.", "{n} plants.", total) if total else "",
            tr("Sizes are spread × height of crown and are estimates; measure what the nursery delivers."),
            tr("Partner: the plant here whose pollen sets most fruit on it."),
        ),
    )
