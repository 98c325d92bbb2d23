"""A plan too large for one sheet: which part of it each sheet shows. Millimetres of paper throughout."""

from __future__ import annotations

import math
from string import ascii_uppercase

from attrs import frozen

#: What neighbouring sheets both show, so that they can be glued.
OVERLAP = 10.0


@frozen
class Tile:
    """One sheet of several: `column` and `row` from the upper left, and the part of the plan it shows.

    `left` and `top` of that part from the plan's upper left corner.
    """

    column: int
    row: int
    left: float
    top: float

    @property
    def name(self) -> str:
        """Letter of the row and number of the column: A1, A2, B1, ..."""
        letters, row = "", self.row
        while row >= 0:
            letters = ascii_uppercase[row % 26] + letters
            row = row // 26 - 1
        return f"{letters}{self.column + 1}"


@frozen
class Tiling:
    """All tiles of a plan of `wide` x `high` in fields of `field_wide` x `field_high`."""

    columns: int
    rows: int
    tiles: tuple[Tile, ...]

    def at(self, column: int, row: int) -> Tile | None:
        """The tile in that place, None beyond the edge."""
        if 0 <= column < self.columns and 0 <= row < self.rows:
            return self.tiles[row * self.columns + column]
        return None


def _count(length: float, field: float) -> int:
    """How many fields cover a length when neighbours share the overlap."""
    if length <= field + 1e-6:
        return 1
    return math.ceil((length - OVERLAP) / (field - OVERLAP) - 1e-9)


def tile(wide: float, high: float, field_wide: float, field_high: float) -> Tiling:
    """Cover a plan with fields, the plan in the middle of what they cover together.

    Raises ValueError when a field is no wider than the overlap.
    """
    if min(field_wide, field_high) <= OVERLAP:
        raise ValueError("the field is smaller than the overlap of two sheets")
    columns, rows = _count(wide, field_wide), _count(high, field_high)
    covered_wide = columns * (field_wide - OVERLAP) + OVERLAP
    covered_high = rows * (field_high - OVERLAP) + OVERLAP
    left, top = (wide - covered_wide) / 2, (high - covered_high) / 2
    tiles = tuple(
        Tile(column, row, left + column * (field_wide - OVERLAP), top + row * (field_high - OVERLAP))
        for row in range(rows) for column in range(columns)
    )
    return Tiling(columns, rows, tiles)
