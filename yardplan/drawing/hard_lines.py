"""Heavy lines that words keep clear of."""

from __future__ import annotations

import shapely
from PySide6.QtCore import QRectF

from yardplan.drawing.rows import run_of
from yardplan.yard.yard import Yard


class HardLines:
    """Heavy lines that names keep clear of: lot, buildings, walls and fences."""

    def __init__(self, yard: Yard, scale: float) -> None:
        """`scale`: device pixels per metre; places are told relative to the drawing's origin."""
        runs = [building.footprint + building.footprint[:1] for building in yard.buildings]
        runs += [barrier.line for barrier in yard.barriers]
        runs += [bed.outline + bed.outline[:1] for bed in yard.beds]
        runs += [run_of(row) for row in yard.rows if row.line]
        runs.append(yard.lot + yard.lot[:1])
        scaled = [[(x * scale, -y * scale) for x, y in run] for run in runs if len(run) > 1]
        shapes = [shapely.LineString(run) for run in scaled]
        self._tree = shapely.STRtree(shapes) if shapes else None

    def clear(self, box: QRectF) -> bool:
        """True when no line crosses the box."""
        if self._tree is None:
            return True
        shape = shapely.box(box.left(), box.top(), box.right(), box.bottom())
        return not len(self._tree.query(shape, predicate="intersects"))
