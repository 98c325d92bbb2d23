"""The lengths on the edges of what is selected: which one lies under the pointer, and its box."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QPointF

from yardplan.drawing.view import PlanView
from yardplan.window.open_yard import OpenYard
from yardplan.window.tools.event import Pointer
from yardplan.yard.edges import LOT, straight_edges
from yardplan.yard.ground import Outline

if TYPE_CHECKING:
    from yardplan.drawing.dimensions import EdgeFigure

#: A length answers within so many pixels across its words (WCAG 2.2, 2.5.8).
LEAST_PIXELS = 24.0


def _view(open_yard: OpenYard, pixel: float) -> PlanView:
    """The drawing's view with the pixels of the pointer, its origin at the yard's."""
    return PlanView(
        yard=open_yard.shown_yard, stand=open_yard.stand, scale=1 / pixel, origin=(0.0, 0.0),
        units=open_yard.units, selection=frozenset(sole_edged(open_yard)),
    )


def sole_edged(open_yard: OpenYard) -> tuple[str, ...]:
    """The one thing selected whose edges can be typed over, or none."""
    chosen = open_yard.selection
    if len(chosen) != 1:
        return ()
    key = next(iter(chosen))
    thing = open_yard.shown_yard.find(key)
    if (thing is None and key != LOT) or (thing is not None and thing.locked):
        return ()
    return (key,) if straight_edges(open_yard.shown_yard, key) else ()


def figure_at(open_yard: OpenYard, event: Pointer) -> EdgeFigure | None:
    """The length under the pointer, or None."""
    if not sole_edged(open_yard):
        return None
    from yardplan.drawing.dimensions import edge_figures

    view = _view(open_yard, event.pixel)
    place = view.at(event.place)
    return next((f for f in edge_figures(view) if f.holds(place, LEAST_PIXELS)), None)


def figure_of(open_yard: OpenYard, key: str, edge: int, pixel: float) -> EdgeFigure | None:
    """The length of one edge as it stands, its pixels counted from the yard's origin; None where left out."""
    from yardplan.drawing.dimensions import edge_figures

    found = edge_figures(_view(open_yard, pixel))
    return next((figure for figure in found if (figure.key, figure.edge) == (key, edge)), None)


def box_of(figure: EdgeFigure, pixel: float) -> Outline:
    """The corners of a box round the words of a length, metres."""

    def metres(place: QPointF) -> tuple[float, float]:
        return (place.x() * pixel, -place.y() * pixel)

    return tuple(metres(place) for place in figure.corners(18.0))
