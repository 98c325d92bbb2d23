"""Edges of shade told more finely than the grid of light, above all dark strips along walls and fences.

A low plant half a metre behind a fence may lack hours that it has a hand's breadth farther off, or on the
other side. So near whatever stands upright the grid is made finer, and its figures take the place of the
coarser ones there.
"""

from __future__ import annotations

from collections.abc import Callable
from functools import cached_property

import numpy as np
import shapely
from attrs import evolve
from numpy.typing import NDArray
from shapely import affinity
from shapely.geometry.base import BaseGeometry

from yardplan.arrange.contours import (
    Lattice,
    below_zero,
    crossed,
    finer_nodes,
    spread,
    twice_as_fine,
    whole_cells,
)
from yardplan.sun.casters import Crown
from yardplan.sun.scene import Scene
from yardplan.yard.ground import Point

Array = NDArray[np.float64]
Mask = NDArray[np.bool_]
Hours = Callable[[Array], Array]
#: So far from what stands upright the grid is finer, metres.
_BESIDE = 0.6
#: A sharp edge may hide between two nodes where the limit is no farther than this from one of them, hours.
_NEAR = 1.0
#: Between nodes that differ by less the figures run straight enough, hours.
_SHARP = 1.0


def upright_ground(scene: Scene) -> BaseGeometry:
    """The ground within a step of walls, fences, panels and hedges."""
    solids = [caster.solid.corners[:, :2] for caster in scene.all_casters() if not isinstance(caster, Crown)]
    outlines = [shapely.MultiPoint(corners).convex_hull for corners in solids]
    return shapely.union_all([outline.boundary.buffer(_BESIDE) for outline in outlines])


class Strips:
    """The finer grid for one plant: where it lies and what it tells."""

    def __init__(self, upright: BaseGeometry, middle: Point, nodes: Lattice, cells: Mask) -> None:
        """`upright` ground; `middle` of the plant as seen from what the nodes are places of.

        `cells` (rows - 1, cols - 1) of the coarser grid `nodes` that are of any use.
        """
        here = affinity.translate(upright, -middle[0], -middle[1])
        self.cells: Mask = nodes.touching(here) & cells if not here.is_empty else np.zeros_like(cells)
        self.nodes = nodes
        self._rough: Array | None = None

    @cached_property
    def lattice(self) -> Lattice:
        """The finer grid, of half the step."""
        nodes = self.nodes
        return evolve(nodes, step=nodes.step / 2, rows=nodes.rows * 2 - 1, cols=nodes.cols * 2 - 1)

    def sharpened(self, dark: BaseGeometry, found: Array, hours: Hours, near: float) -> BaseGeometry:
        """Ground below the limit with these strips told more finely.

        `dark` the ground below 0 by `found`, hours above the limit at the coarser nodes; `hours` gives them
        at places (m, 2). What was sampled before is looked at again only within `near` hours of the limit.
        """
        if not self.cells.any():
            return dark
        fine = self._sampled(found, hours) if self._rough is None else self._again(self._rough, hours, near)
        self._rough = fine if self._rough is None else self._rough
        area = shapely.union_all(whole_cells(self.cells, self.nodes))
        told = below_zero(np.where(np.isnan(fine), 1.0, fine), self.lattice)
        return dark.difference(area).union(told.intersection(area))

    def _sampled(self, found: Array, hours: Hours) -> Array:
        """Figures where the limit is near, straight in between elsewhere."""
        inside = finer_nodes(self.cells)
        wanted, known = inside & _sharp_nodes(found), ~np.isnan(found)
        wanted[::2, ::2] &= ~known
        fine = twice_as_fine(found)
        fine[wanted] = hours(self.lattice.at(wanted))
        return np.where(inside, fine, np.nan)

    def _again(self, rough: Array, hours: Hours, near: float) -> Array:
        wanted = (np.abs(rough) < near) | crossed(rough)
        fine = rough.copy()
        fine[wanted] = hours(self.lattice.at(wanted))
        return fine


def edge_told_finely(
    values: Array, lattice: Lattice, cells: Mask, again: Callable[[Lattice, Mask], Array]
) -> BaseGeometry:
    """Ground below 0 with its edge told on a grid of half the step.

    `values` at the nodes; `cells` (rows - 1, cols - 1) that count; `again` gives values at the nodes of
    another lattice with the cells that count of it. Shade ends sharply: straight lines between nodes a
    quarter of a metre apart may be wrong by half of that.
    """
    dark = below_zero(values, lattice)
    low, high = spread(values)
    row, col = np.nonzero((low < 0.0) & (high >= 0.0) & cells)
    if not len(row):
        return dark
    first, last = (row.min(), col.min()), (row.max() + 1, col.max() + 1)
    part = Lattice(
        lattice.x0 + first[1] * lattice.step, lattice.y0 + first[0] * lattice.step, lattice.step / 2,
        2 * (last[0] - first[0]) + 1, 2 * (last[1] - first[1]) + 1,
    )
    edge = np.zeros((part.rows - 1, part.cols - 1), dtype=bool)
    for up in range(2):
        for right in range(2):
            edge[2 * (row - first[0]) + up, 2 * (col - first[1]) + right] = True
    area = shapely.box(part.xs[0], part.ys[0], part.xs[-1], part.ys[-1])
    told: BaseGeometry = dark.difference(area).union(below_zero(again(part, edge), part))
    return told


def _sharp_nodes(found: Array) -> Mask:
    """Nodes, twice as fine, of cells that change sharply and come near the limit."""
    low, high = spread(found)
    return finer_nodes((low < _NEAR) & (high >= -_NEAR) & (high - low >= _SHARP))
