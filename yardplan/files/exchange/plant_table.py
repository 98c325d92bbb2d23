"""Plants of a yard as a table, and a table of plants into a yard with a report of what was not read."""

from __future__ import annotations

import csv
import math
from collections.abc import Callable, Iterator, Mapping
from typing import Any

from attrs import field, frozen

from yardplan.files.exchange.cells import from_csv, original, to_csv
from yardplan.files.exchange.outline import ExchangeError
from yardplan.files.shape import RANGES
from yardplan.language import decimals, tr
from yardplan.units import System, UnitError, parse_length
from yardplan.yard import edits
from yardplan.yard.ground import Point
from yardplan.yard.planting import Planting, PlantKey, Row
from yardplan.yard.yard import Yard

HEADS = (
    "key", "list", "crop", "cultivar", "count", "spacing_m", "rootstock", "form", "planted", "x_m", "y_m",
    "facing_deg", "container", "spread_m", "height_m", "group", "note",
)
#: Other names under which people keep these columns.
_ALIASES: Mapping[str, str] = {
    "id": "key", "kind": "crop", "fruit": "crop", "variety": "cultivar", "stock": "rootstock",
    "training": "form", "year": "planted", "x": "x_m", "y": "y_m", "quantity": "count", "number": "count",
    "spread": "spread_m", "height": "height_m", "notes": "note", "pot": "container", "facing": "facing_deg",
    "spacing": "spacing_m",
}
#: Unplaced plants wait in a line below the lot, this far apart and off it, metres.
_WAITING = 2.0
_MOST = 1000

#: Finds a plant of the catalogue for crop and cultivar as typed, or None.
Known = Callable[[str, str], PlantKey | None]


@frozen
class NotUnderstood:
    """A line of the table that was left out or changed: its number (the heading is 1) and why.

    `cells` as they stand in the table, so that nothing is lost; `taken` True where plants were made of it.
    """

    line: int
    why: str
    cells: tuple[str, ...] = field(default=(), eq=False)
    taken: bool = field(default=False, eq=False)


@frozen(kw_only=True)
class PlantList:
    """Plants read from a table. `waiting` keys without a place stand in a line below the lot.

    `heads` the columns as the table names them.
    """

    heads: tuple[str, ...] = ()
    plantings: tuple[Planting, ...] = ()
    rows: tuple[Row, ...] = ()
    waiting: tuple[str, ...] = ()
    report: tuple[NotUnderstood, ...] = ()

    @property
    def things(self) -> tuple[Planting | Row, ...]:
        """All that came of the table."""
        return (*self.plantings, *self.rows)


def plants_to_csv(yard: Yard) -> str:
    """Single plants, rows and planted beds, a line each; lengths in metres."""
    return to_csv(HEADS, [*_plants(yard), *_rows(yard), *_beds(yard)])


def _plants(yard: Yard) -> Iterator[tuple[object, ...]]:
    for p in yard.plantings:
        yield (
            p.id, "plant", p.plant.crop, p.plant.cultivar, 1, None, p.rootstock, p.form, p.planted, *p.place,
            p.facing, p.container, p.spread, p.height, p.group, p.note,
        )


def _rows(yard: Yard) -> Iterator[tuple[object, ...]]:
    for r in yard.rows:
        yield (
            r.id, "row", r.plant.crop, r.plant.cultivar, r.count, r.spacing, r.rootstock, r.form, r.planted,
            *r.line[0], _direction(r.line[0], r.line[-1]), None, r.width, r.height, None, r.note,
        )


def _beds(yard: Yard) -> Iterator[tuple[object, ...]]:
    for b in yard.beds:
        if b.plant is not None:
            yield (
                b.id, "bed", b.plant.crop, b.plant.cultivar, None, b.spacing, None, None, b.planted,
                *b.outline[0], None, None, None, None, None, b.note,
            )


def _direction(start: Point, end: Point) -> float:
    return round(math.degrees(math.atan2(end[1] - start[1], end[0] - start[0])) % 360, 3)


def plants_from_csv(
    text: str, yard: Yard, known: Known, letter: Callable[[PlantKey], str], system: System = "metric"
) -> PlantList:
    """Single plants and rows of a table. Raises ExchangeError when it has no columns for crop and cultivar.

    Bare lengths are in metres in columns ending in `_m`, else in the shown unit; `12' 6"` is read anywhere.
    """
    lines = _lines(text)
    columns = _columns(lines[0][1])
    reader = _Reader(yard, known, letter, system, columns)
    for number, cells in lines[1:]:
        reader.read(number, cells)
    return PlantList(
        heads=tuple(lines[0][1]), plantings=tuple(reader.made), rows=tuple(reader.rows),
        waiting=tuple(reader.waiting), report=tuple(reader.report),
    )


def left_out_csv(found: PlantList) -> str:
    """The lines that were left out, as a table with their numbers and why, to be mended and read again."""
    wide = len(found.heads)
    lines = [
        (*one.cells[:wide], *[""] * (wide - len(one.cells)), one.line, one.why)
        for one in found.report if not one.taken
    ]
    return to_csv((*found.heads, "line", "why"), lines)


def _lines(text: str) -> list[tuple[int, list[str]]]:
    try:
        lines = from_csv(text)
    except csv.Error as error:
        raise ExchangeError(tr("the table is damaged: {error}", error=error)) from None
    if not lines:
        raise ExchangeError(tr("the table is empty"))
    return lines


def _columns(heads: list[str]) -> dict[str, tuple[int, bool]]:
    """Column number by name, and whether its bare lengths are metres. Raises ExchangeError."""
    found: dict[str, tuple[int, bool]] = {}
    for number, head in enumerate(heads):
        plain = head.strip().lower().replace(" ", "_")
        name = _ALIASES.get(plain, plain)
        if name in HEADS:
            found.setdefault(name, (number, plain.endswith("_m")))
    for name in ("crop", "cultivar"):
        if name not in found:
            raise ExchangeError(tr(
                "the table has no column '{name}': the first line must name the columns",
                name=name,
            ))
    return found


class _CellError(ValueError):
    """A cell that could not be read, with the reason for the report."""


class _Reader:
    """Reads lines one after the other and keeps what came of them."""

    def __init__(
        self, yard: Yard, known: Known, letter: Callable[[PlantKey], str], system: System,
        columns: dict[str, tuple[int, bool]],
    ) -> None:
        self.yard, self.known, self.letter, self.system, self.columns = yard, known, letter, system, columns
        self.made: list[Planting] = []
        self.rows: list[Row] = []
        self.waiting: list[str] = []
        self.report: list[NotUnderstood] = []

    def read(self, number: int, cells: list[str]) -> None:
        """Make plants of one line, or note why not."""
        try:
            self._line(number, cells)
        except (_CellError, UnitError) as error:
            self.report.append(NotUnderstood(number, str(error), tuple(cells)))

    def cell(self, cells: list[str], name: str) -> str:
        """The text of a cell; empty where the column or cell is missing."""
        column = self.columns.get(name)
        return original(cells[column[0]]) if column and column[0] < len(cells) else ""

    def _line(self, number: int, cells: list[str]) -> None:
        """Everything is read before the first plant is made, so a line is taken whole or not at all."""
        if (kind := self.cell(cells, "list")) not in ("", "plant", "row"):
            raise _CellError(tr("a {kind} is not read from a table: draw it", kind=kind))
        plant = self._plant(cells)
        if kind == "row":
            self._row(number, cells, plant)
            return
        count = 1 if (typed := self._whole(cells, "count")) is None else typed
        if not 1 <= count <= _MOST:
            raise _CellError(tr("count {count}: from 1 to {most}", count=count, most=_MOST))
        place = self._place(cells)
        if place is not None and count > 1:
            raise _CellError(tr("a place goes with one plant only: give each plant a line"))
        fields = self._fields(cells)
        for i in range(count):
            self._add(number, cells, self.cell(cells, "key") if i == 0 else "", plant, place, fields)

    def _row(self, number: int, cells: list[str], plant: PlantKey) -> None:
        """A straight row from its first plant on, as it is written by `plants_to_csv`."""
        place, spacing = self._place(cells), self._ranged("spacing", self._length(cells, "spacing_m"))
        count = self._whole(cells, "count")
        if place is None or not spacing or not count or count > _MOST:
            raise _CellError(tr("a row needs x, y, spacing and count"))
        fields = self._fields(cells)
        way = math.radians(fields["facing"])
        long = spacing * max(count - 1, 1)
        end = (place[0] + long * math.cos(way), place[1] + long * math.sin(way))
        made = Row(
            id=self._key(number, cells, self.cell(cells, "key"), plant), plant=plant, line=(place, end),
            count=count, spacing=spacing, rootstock=fields["rootstock"], form=fields["form"],
            planted=fields["planted"], width=fields["spread"], height=fields["height"], note=fields["note"],
        )
        self.yard = edits.add(self.yard, made)
        self.rows.append(made)

    def _plant(self, cells: list[str]) -> PlantKey:
        crop, cultivar = self.cell(cells, "crop"), self.cell(cells, "cultivar")
        if not crop or not cultivar:
            raise _CellError(tr("crop or cultivar is missing"))
        found = self.known(crop, cultivar)
        if found is None:
            raise _CellError(tr("{cultivar} ({crop}) is not in the plant list", crop=crop, cultivar=cultivar))
        return found

    def _fields(self, cells: list[str]) -> dict[str, Any]:
        """Fields besides plant, key and place."""
        container = self.cell(cells, "container") or None
        if container and not any(vessel.id == container for vessel in self.yard.containers):
            raise _CellError(tr("there is no container '{container}'", container=container))
        return {
            "rootstock": self.cell(cells, "rootstock") or None, "form": self.cell(cells, "form") or None,
            "planted": self._ranged("planted", self._whole(cells, "planted")),
            "spread": self._ranged("spread", self._length(cells, "spread_m")),
            "height": self._ranged("height", self._length(cells, "height_m")), "container": container,
            "facing": self._degrees(cells), "group": self.cell(cells, "group") or None,
            "note": self.cell(cells, "note"),
        }

    def _ranged(self, name: str, value: Any) -> Any:
        limits = RANGES[name]
        if value is not None and not limits.low <= value <= limits.high:
            raise _CellError(tr(
                "{name} {value}: from {low} to {high}",
                name=name, value=decimals(f"{value:g}"), low=decimals(f"{limits.low:g}"),
                high=decimals(f"{limits.high:g}"),
            ))
        return value

    def _whole(self, cells: list[str], name: str) -> int | None:
        text = self.cell(cells, name)
        if text and not (text.isascii() and text.isdecimal() and len(text) < 10):
            raise _CellError(tr("{name} '{text}' is not a whole number", name=name, text=text))
        return int(text) if text else None

    def _length(self, cells: list[str], name: str) -> float | None:
        text = self.cell(cells, name)
        metres = self.columns[name][1] if name in self.columns else True
        return parse_length(text, "metric" if metres else self.system, from_file=True) if text else None

    def _degrees(self, cells: list[str]) -> float:
        text = self.cell(cells, "facing_deg")
        try:
            value = float(text.replace(",", ".") or 0)
        except ValueError:
            raise _CellError(tr("facing '{text}' is not a number of degrees", text=text)) from None
        if not math.isfinite(value):
            raise _CellError(tr("facing '{text}' is not a number of degrees", text=text))
        # A direction within the circle stays as it was written, to the last digit.
        return value if 0 <= value < 360 else value % 360

    def _place(self, cells: list[str]) -> Point | None:
        x, y = self._length(cells, "x_m"), self._length(cells, "y_m")
        if (x is None) != (y is None):
            raise _CellError(tr("a place needs both x and y"))
        return (x, y) if x is not None and y is not None else None

    def _add(
        self, number: int, cells: list[str], wanted: str, plant: PlantKey, place: Point | None,
        fields: dict[str, Any],
    ) -> None:
        """Add one plant under the key wanted or a free one, at its place or in the line that waits."""
        key = self._key(number, cells, wanted, plant)
        if place is None:
            place = self._waiting_place()
            self.waiting.append(key)
        made = Planting(id=key, plant=plant, place=place, **fields)
        self.yard = edits.add(self.yard, made)
        self.made.append(made)

    def _key(self, number: int, cells: list[str], wanted: str, plant: PlantKey) -> str:
        """The key wanted, or a free one with a word in the report where that is taken."""
        if wanted and wanted != "lot" and self.yard.find(wanted) is None:
            return wanted
        key = edits.next_key(self.yard, self.letter(plant))
        if wanted:
            why = tr("the key {wanted} is taken: called {key}", wanted=wanted, key=key)
            self.report.append(NotUnderstood(number, why, tuple(cells), taken=True))
        return key

    def _waiting_place(self) -> Point:
        left = min((x for x, _ in self.yard.lot), default=0.0)
        below = min((y for _, y in self.yard.lot), default=0.0)
        return (left + _WAITING * len(self.waiting), below - _WAITING)
