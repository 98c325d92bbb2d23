"""Where a box may lie on the plan: the place that hides least of the yard."""

from __future__ import annotations

from collections.abc import Mapping

from PySide6.QtCore import QRectF

from yardplan.drawing.view import PlanView
from yardplan.yard.edits import points_of
from yardplan.yard.ground import Picture

#: How much hiding the lot's ground counts beside hiding a thing.
_LOT_COUNTS = 0.5
#: Style units that a thing reaches beyond its points.
_REACH = 9.0


def freest(view: PlanView, boxes: Mapping[str, QRectF]) -> str:
    """The name of the device box that hides least; of equal ones the first."""
    return min(boxes, key=lambda name: hidden(view, boxes[name]))


def hidden(view: PlanView, box: QRectF) -> float:
    """How much of the yard a box would hide: the area it shares with the boxes of things and of the lot."""
    reach = _REACH * view.unit
    things = [
        view.polygon(points_of(thing)).boundingRect()
        for thing in view.yard.things() if not isinstance(thing, Picture)
    ]
    areas = [_area(rect.adjusted(-reach, -reach, reach, reach).intersected(box)) for rect in things]
    lot = view.polygon(view.yard.lot).boundingRect()
    return sum(areas) + _LOT_COUNTS * _area(lot.intersected(box))


def _area(rect: QRectF) -> float:
    return max(rect.width(), 0.0) * max(rect.height(), 0.0)
