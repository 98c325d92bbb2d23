"""Reads the data tables: refuses bad data and says in which file, row and column, all faults at once."""

from __future__ import annotations

import csv
import math
import re
from collections.abc import Collection, Iterator
from functools import cache
from pathlib import Path

from attrs import frozen

from yardplan.plants.cultivar import Cited

_RANGE = re.compile(r"(-?\d+(?:\.\d+)?)(?:-(\d+(?:\.\d+)?))?")
_CITE = re.compile(r"([\w.+'-]+)(?:\(([\w ]+)\))?")
#: Faults named in one message; the rest is counted.
_NAMED = 8


@frozen
class Fault:
    """One fault of a table: file, row (the header is 1, the whole file 0), column ("": all) and what."""

    file: str
    row: int
    column: str
    text: str

    def __str__(self) -> str:
        place = f", row {self.row}" if self.row else ""
        column = f", column {self.column}" if self.column else ""
        return f"{self.file}{place}{column}: {self.text}"


class TableError(ValueError):
    """A table that cannot be used; `faults` lists everything wrong with it."""

    def __init__(self, faults: Collection[Fault]) -> None:
        self.faults = tuple(faults)
        lines = [str(fault) for fault in self.faults[:_NAMED]]
        if len(self.faults) > _NAMED:
            lines.append(f"and {len(self.faults) - _NAMED} more")
        super().__init__("\n".join(lines))


@cache
def parse_cites(text: str) -> tuple[Cited, ...]:
    """Read `nc-hil-302; memory(zone_min zone_max)`. Raises ValueError on anything else."""
    cites = []
    for part in text.split("; "):
        match = _CITE.fullmatch(part)
        if match is None:
            raise ValueError(f"'{part}' is not a source id with columns in brackets")
        cites.append(Cited(match[1], tuple((match[2] or "").split())))
    return tuple(cites)


@cache
def parse_range(text: str) -> tuple[float, float]:
    """Read `4-6`, `5` or `0.7-1`. Raises ValueError on anything else and on a range turned round."""
    match = _RANGE.fullmatch(text)
    if match is None:
        raise ValueError(f"'{text}' is not a number or a range like 4-6")
    low = float(match[1])
    high = float(match[2]) if match[2] else low
    if high < low:
        raise ValueError(f"'{text}' runs from high to low")
    return low, high


class Row:
    """One row of a table; each reader notes a fault and goes on with an empty value."""

    __slots__ = ("_cells", "_table", "number")

    def __init__(self, table: Table, number: int, cells: list[str]) -> None:
        self._table, self.number, self._cells = table, number, cells

    def fault(self, column: str, text: str) -> None:
        """Note a fault of this row."""
        self._table.faults.append(Fault(self._table.name, self.number, column, text))

    def text(self, column: str) -> str:
        """The cell as it stands; empty where the table has no such column."""
        index = self._table.columns.get(column)
        return "" if index is None else self._cells[index]

    def needed(self, column: str) -> str:
        """The cell, which must not be empty."""
        value = self.text(column)
        if not value:
            self.fault(column, "is empty")
        return value

    def words(self, column: str) -> tuple[str, ...]:
        """The cell's parts between semicolons."""
        return tuple(part.strip() for part in self.text(column).split(";") if part.strip())

    def number_or_none(self, column: str, scale: float = 1.0) -> float | None:
        """A finite number times `scale`; None where the cell is empty."""
        value = self.text(column)
        if not value:
            return None
        try:
            number = float(value)
        except ValueError:
            number = math.nan
        if not math.isfinite(number):
            self.fault(column, f"'{value}' is not a number")
            return None
        return number * scale

    def real(self, column: str, scale: float = 1.0) -> float:
        """A number that must be there."""
        value = self.number_or_none(column, scale)
        if value is None:
            if not self.text(column):
                self.fault(column, "is empty")
            return 0.0
        return value

    def span(self, column: str, scale: float = 1.0) -> tuple[float, float] | None:
        """A range such as `4-6` or one number, times `scale`; None where the cell is empty."""
        value = self.text(column)
        if not value:
            return None
        try:
            low, high = parse_range(value)
        except ValueError as error:
            self.fault(column, str(error))
            return None
        return low * scale, high * scale

    def pair(self, stem: str, scale: float = 1.0) -> tuple[float, float] | None:
        """The range held in two columns, `stem_low` and `stem_high`; None where both are empty."""
        low, high = self.number_or_none(f"{stem}_low", scale), self.number_or_none(f"{stem}_high", scale)
        if low is None or high is None:
            if (low is None) != (high is None):
                self.fault(f"{stem}_low", "only one end of the range is given")
            return None
        if high < low:
            self.fault(f"{stem}_high", "is below the low end")
            return None
        return low, high

    def one_of(self, column: str, allowed: Collection[str]) -> str:
        """A cell that must be one of the words allowed."""
        value = self.text(column)
        if value not in allowed:
            self.fault(column, f"'{value}' is not one of: {', '.join(sorted(allowed))}")
        return value

    def yes(self, column: str) -> bool:
        """True for `yes`, False for `no`."""
        return self.one_of(column, ("yes", "no")) == "yes"

    def cites(self) -> tuple[Cited, ...]:
        """The sources of the row."""
        value = self.needed("sources")
        try:
            return parse_cites(value) if value else ()
        except ValueError as error:
            self.fault("sources", str(error))
            return ()


def _lines(path: Path) -> list[list[str]]:
    """All lines of a CSV file as cells. Raises TableError when it cannot be read or is not UTF-8."""
    try:
        # Spreadsheets put a mark in front of UTF-8 text: utf-8-sig takes it off.
        with path.open(encoding="utf-8-sig", newline="") as stream:
            return list(csv.reader(stream, strict=True))
    except OSError as error:
        raise TableError([Fault(path.name, 0, "", f"cannot be read: {error.strerror}")]) from error
    except UnicodeDecodeError as error:
        row = error.object.count(b"\n", 0, error.start) + 1
        raise TableError([Fault(path.name, row, "", "is not UTF-8 text: save it as UTF-8")]) from error
    except csv.Error as error:
        raise TableError([Fault(path.name, 0, "", f"is not a CSV table: {error}")]) from error


class Table:
    """A CSV table being read. Use as a context: at its end all faults are raised together."""

    def __init__(self, path: Path, columns: Collection[str] = ()) -> None:
        """Open a table that must have the columns named. Raises TableError when it lacks one."""
        self.path, self.name = path, path.name
        self.faults: list[Fault] = []
        head, *self._lines = _lines(path) or [[]]
        self.columns = {name: index for index, name in enumerate(head)}
        bad = [Fault(self.name, 1, name, "the column is there twice")
               for name in self.columns if head.count(name) > 1]
        bad += [Fault(self.name, 1, name, "the column is missing")
                for name in columns if name not in self.columns]
        if bad:
            raise TableError(bad)

    def __iter__(self) -> Iterator[Row]:
        wide = len(self.columns)
        for number, cells in enumerate(self._lines, start=2):
            if len(cells) == wide:
                yield Row(self, number, cells)
            elif cells:
                text = f"{len(cells)} cells, the header has {wide}"
                self.faults.append(Fault(self.name, number, "", text))

    def __len__(self) -> int:
        return len(self._lines)

    def __enter__(self) -> Table:
        return self

    def __exit__(self, kind: object, *_: object) -> None:
        if kind is None and self.faults:
            raise TableError(self.faults)
