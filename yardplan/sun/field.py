"""The light of every cell of the ground: whole-number differences, one running sum, one exponential.

Depths are added where a span starts and taken off where it ends; the running sum along the row is the
depth of each cell. Whole numbers make the result the same whatever the order of the casters.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence

import numpy as np
from numpy.typing import NDArray

from yardplan.sun.casters import Caster
from yardplan.sun.grid import Grid
from yardplan.sun.leaves import DEPTH_UNIT
from yardplan.sun.position import Floats
from yardplan.sun.spans import Beams, Spans, spans_of

#: Numbers held at once: a few MB, so that the running sum and the exponential stay in the cache.
CHUNK = 1_000_000
Floats32 = NDArray[np.float32]
#: Called with the share done; raises to stop.
Progress = Callable[[float], None]


def chunk_of(grid: Grid) -> int:
    """How many beams are worked on at once."""
    return max(1, CHUNK // (grid.rows * (grid.cols + 1)))


class Ledger:
    """The differences of a number of beams; kept and used again from chunk to chunk."""

    def __init__(self, grid: Grid, beams: int) -> None:
        self.grid = grid
        self.differences = np.zeros((beams, grid.rows, grid.cols + 1), dtype=np.int32)
        self._light = np.empty((beams, grid.rows, grid.cols), dtype=np.float32)

    def clear(self) -> None:
        """Forget all casters."""
        self.differences.fill(0)

    def add(self, spans: Spans) -> None:
        """Add the depth of spans."""
        flat = self.differences.reshape(-1)
        line = (spans.beam * self.grid.rows + spans.row) * (self.grid.cols + 1)
        np.add.at(flat, line + spans.start, spans.depth)
        np.subtract.at(flat, line + spans.end, spans.depth)

    def light(self, beams: int) -> Floats32:
        """Share of the beam in each cell, (beams, rows, cols); uses up the differences."""
        held = self.differences[:beams]
        np.add.accumulate(held, axis=2, out=held)
        light = self._light[:beams]
        np.multiply(held[:, :, :-1], np.float32(-1.0 / DEPTH_UNIT), out=light, casting="unsafe")
        return np.exp(light, out=light)


def field_of(
    casters: Sequence[Caster], beams: Beams, weights: Floats, grid: Grid, progress: Progress | None = None
) -> Floats32:
    """Sums of light times weight in each cell, (tallies, rows, cols); `weights` (tallies, beams)."""
    total = np.zeros((len(weights), grid.cells), dtype=np.float32)
    step = min(chunk_of(grid), max(len(beams), 1))
    ledger = Ledger(grid, step)
    small = weights.astype(np.float32)
    for start in range(0, len(beams), step):
        part = beams.part(start, start + step)
        ledger.clear()
        for spans in spans_of(casters, part, grid):
            ledger.add(spans)
        light = ledger.light(len(part)).reshape(len(part), -1)
        total += small[:, start : start + step] @ light
        if progress is not None:
            progress(min(start + step, len(beams)) / len(beams))
    return total.reshape(len(weights), grid.rows, grid.cols)
