"""The cells of the ground over which light is counted."""

from __future__ import annotations

import math

import numpy as np
from attrs import frozen

from yardplan.sun.parameters import figure
from yardplan.sun.position import Floats
from yardplan.sun.season import Detail
from yardplan.yard.ground import Point


@frozen
class Grid:
    """`rows` x `cols` square cells of `cell` metres; (x0, y0) lower left corner, rows go up the drawing."""

    x0: float
    y0: float
    cell: float
    rows: int
    cols: int

    @property
    def cells(self) -> int:
        """How many cells."""
        return self.rows * self.cols

    @property
    def xs(self) -> Floats:
        """x of the columns' centres."""
        return self.x0 + (np.arange(self.cols) + 0.5) * self.cell

    @property
    def ys(self) -> Floats:
        """y of the rows' centres."""
        return self.y0 + (np.arange(self.rows) + 0.5) * self.cell

    @property
    def bounds(self) -> tuple[float, float, float, float]:
        """x0, y0, x1, y1."""
        return (self.x0, self.y0, self.x0 + self.cols * self.cell, self.y0 + self.rows * self.cell)

    def cell_at(self, point: Point) -> tuple[int, int] | None:
        """Row and column of the cell that holds a point, or None outside."""
        row = math.floor((point[1] - self.y0) / self.cell)
        col = math.floor((point[0] - self.x0) / self.cell)
        return (row, col) if 0 <= row < self.rows and 0 <= col < self.cols else None


def grid_over(bounds: tuple[float, float, float, float], detail: Detail = "live",
              cell: float | None = None) -> Grid:
    """The grid that covers x0, y0, x1, y1; coarser than the usual cell where the area is large.

    Cells stay whole multiples of the usual one, so that grids of one yard fit into each other.
    """
    x0, y0, x1, y1 = bounds
    width, depth = max(x1 - x0, 0.0), max(y1 - y0, 0.0)
    usual, most = figure(f"{detail}_cell"), figure(f"{detail}_cells")
    if cell is None:
        cell = usual * max(1, math.ceil(math.sqrt(width * depth / most) / usual - 1e-9))
        while math.ceil(width / cell) * math.ceil(depth / cell) > most:
            cell += usual
    # A hair less than a whole number of cells is that number: 30.0 m may come as 30.000000001.
    cols, rows = (max(1, math.ceil(side / cell - 1e-6)) for side in (width, depth))
    return Grid(x0, y0, cell, rows, cols)
