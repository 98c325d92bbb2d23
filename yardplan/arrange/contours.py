"""Shapes of ground from numbers sampled on a grid of nodes."""

from __future__ import annotations

import math

import numpy as np
import shapely
from attrs import frozen
from numpy.typing import NDArray
from shapely.geometry.base import BaseGeometry

Array = NDArray[np.float64]
Mask = NDArray[np.bool_]


@frozen
class Lattice:
    """`rows` x `cols` nodes `step` metres apart; the first at (x0, y0), rows go up the drawing."""

    x0: float
    y0: float
    step: float
    rows: int
    cols: int

    @property
    def xs(self) -> Array:
        """x of the columns."""
        return np.asarray(self.x0 + np.arange(self.cols) * self.step, dtype=np.float64)

    @property
    def ys(self) -> Array:
        """y of the rows."""
        return np.asarray(self.y0 + np.arange(self.rows) * self.step, dtype=np.float64)

    @property
    def points(self) -> Array:
        """All nodes row by row, (rows * cols, 2)."""
        x, y = np.meshgrid(self.xs, self.ys)
        return np.column_stack([x.ravel(), y.ravel()])

    def at(self, chosen: Mask) -> Array:
        """The nodes chosen, (m, 2)."""
        row, col = np.nonzero(chosen)
        return np.column_stack([self.x0 + col * self.step, self.y0 + row * self.step])

    def touching(self, shape: BaseGeometry) -> Mask:
        """The cells between nodes that a shape touches, (rows - 1, cols - 1)."""
        shapely.prepare(shape)
        points = self.points
        inside = shapely.contains_xy(shape, points[:, 0], points[:, 1]).reshape(self.rows, self.cols)
        cells: Mask = inside[:-1, :-1] | inside[:-1, 1:] | inside[1:, :-1] | inside[1:, 1:]
        # Ground narrower than a cell may pass between the nodes: its edge tells.
        edge = shapely.get_coordinates(shapely.segmentize(shape.boundary, self.step / 2.0))
        col = np.floor((edge[:, 0] - self.x0) / self.step).astype(int)
        row = np.floor((edge[:, 1] - self.y0) / self.step).astype(int)
        cells[np.clip(row, 0, self.rows - 2), np.clip(col, 0, self.cols - 2)] = True
        return cells


def nodes_of(cells: Mask, coarser: int = 1) -> Mask:
    """The corners of cells, on a grid coarser by a whole number of which the grid is a multiple."""
    rows, cols = (side // coarser for side in cells.shape)
    large = cells.reshape(rows, coarser, cols, coarser).any(axis=(1, 3))
    nodes = np.zeros((rows + 1, cols + 1), dtype=bool)
    for row in range(2):
        for col in range(2):
            nodes[row : row + rows, col : col + cols] |= large
    return nodes


def lattice_over(bounds: tuple[float, float, float, float], step: float, whole: int = 1) -> Lattice:
    """Nodes that cover x0, y0, x1, y1; the number of steps each way is a multiple of `whole`."""
    x0, y0, x1, y1 = bounds
    across, up = (whole * max(1, math.ceil(side / (step * whole) + 1e-9)) for side in (x1 - x0, y1 - y0))
    return Lattice(x0, y0, step, up + 1, across + 1)


def _corners(found: Array) -> Array:
    """The four corners of every cell."""
    return np.stack([found[:-1, :-1], found[1:, :-1], found[:-1, 1:], found[1:, 1:]])


def crossed(found: Array) -> Mask:
    """Nodes of the cells that the limit crosses."""
    corners = _corners(found)
    cell = (corners.min(axis=0) < 0.0) & (corners.max(axis=0) >= 0.0)
    nodes = np.zeros(found.shape, dtype=bool)
    for row in range(2):
        for col in range(2):
            nodes[row : row + cell.shape[0], col : col + cell.shape[1]] |= cell
    return nodes


def near_nodes(found: Array, room: float) -> Mask:
    """Nodes, twice as fine, of the cells in which the limit may be crossed; `room` hours."""
    low, high = spread(found)
    slack = room + 0.5 * (high - low)
    return finer_nodes((low - slack < 0.0) & (high + slack > 0.0))


def spread(found: Array) -> tuple[Array, Array]:
    """The least and the most of the corners of every cell."""
    corners = _corners(found)
    return corners.min(axis=0), corners.max(axis=0)


def finer_nodes(cells: Mask) -> Mask:
    """The nodes of cells on a grid of half the step."""
    rows, cols = cells.shape
    nodes = np.zeros((rows * 2 + 1, cols * 2 + 1), dtype=bool)
    for row in range(3):
        for col in range(3):
            nodes[row : row + rows * 2 - 1 : 2, col : col + cols * 2 - 1 : 2] |= cells
    return nodes


def twice_as_fine(found: Array) -> Array:
    """Straight lines between nodes, with half the step."""
    rows, cols = found.shape
    fine = np.empty((rows * 2 - 1, cols * 2 - 1))
    fine[::2, ::2] = found
    fine[1::2, ::2] = (found[:-1] + found[1:]) / 2.0
    fine[:, 1::2] = (fine[:, :-1:2] + fine[:, 2::2]) / 2.0
    return fine


def below_zero(values: Array, lattice: Lattice) -> BaseGeometry:
    """Where numbers at the nodes, taken as straight in between, are below 0."""
    low = values < 0.0
    whole = low[:-1, :-1] & low[:-1, 1:] & low[1:, 1:] & low[1:, :-1]
    some = low[:-1, :-1] | low[:-1, 1:] | low[1:, 1:] | low[1:, :-1]
    parts = [*whole_cells(whole, lattice), *_cut_cells(values, some & ~whole, lattice)]
    return shapely.union_all(parts) if parts else shapely.Polygon()


def whole_cells(whole: Mask, lattice: Lattice) -> list[BaseGeometry]:
    """Cells that lie below 0 altogether, those side by side as one rectangle."""
    padded = np.pad(whole.astype(np.int8), ((0, 0), (1, 1)))
    change = np.diff(padded, axis=1)
    row, start = np.nonzero(change == 1)
    _, end = np.nonzero(change == -1)
    x0, y0, step = lattice.x0, lattice.y0, lattice.step
    return list(shapely.box(x0 + start * step, y0 + row * step, x0 + end * step, y0 + (row + 1) * step))


_CORNERS = ((0, 0), (0, 1), (1, 1), (1, 0))


def _cut_cells(values: Array, cut: Mask, lattice: Lattice) -> list[BaseGeometry]:
    """The part below 0 of every cell that the edge crosses."""
    found: list[BaseGeometry] = []
    for row, col in np.argwhere(cut):
        ring = _ring([float(values[row + r, col + c]) for r, c in _CORNERS])
        if len(ring) >= 3:
            x, y = lattice.x0 + col * lattice.step, lattice.y0 + row * lattice.step
            found.append(shapely.Polygon([(x + u * lattice.step, y + v * lattice.step) for u, v in ring]))
    return [part for part in found if part.area > 0.0]


def _ring(corners: list[float]) -> list[tuple[float, float]]:
    """Corners below 0 of a unit cell, and the places where its edges cross 0, in order."""
    ring: list[tuple[float, float]] = []
    for k, value in enumerate(corners):
        following = corners[(k + 1) % 4]
        (r0, c0), (r1, c1) = _CORNERS[k], _CORNERS[(k + 1) % 4]
        if value < 0.0:
            ring.append((float(c0), float(r0)))
        if (value < 0.0) != (following < 0.0):
            share = value / (value - following)
            ring.append((c0 + share * (c1 - c0), r0 + share * (r1 - r0)))
    return ring
