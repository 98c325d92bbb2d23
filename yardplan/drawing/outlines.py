"""The outline of any thing on the device: what marks follow, what selection shows, what a pointer hits."""

from __future__ import annotations

from functools import lru_cache

from PySide6.QtCore import QRectF
from PySide6.QtGui import QPainterPath, QPainterPathStroker

from yardplan.drawing.plants import look_of
from yardplan.drawing.rows import band_outline, run_of
from yardplan.drawing.shapes import circle, polyline, square
from yardplan.drawing.symbols import Look, edge
from yardplan.drawing.view import PlanView
from yardplan.plants.stand import Standing, StandingRow
from yardplan.yard.ground import Barrier, Dimension, Gate, Note, Service
from yardplan.yard.handles import covered, line_of
from yardplan.yard.planting import Container
from yardplan.yard.positions import chosen
from yardplan.yard.yard import Thing


class Outlines:
    """Outlines by id for one view; finds each thing once."""

    def __init__(self, view: PlanView) -> None:
        self.view = view

    def plant(self, thing_id: str) -> Standing | None:
        """The plant or standing tree with that id."""
        return next(iter(chosen(self.view.stand.plants, (thing_id,))), None)

    def _row(self, thing_id: str) -> StandingRow | None:
        return next(iter(chosen(self.view.stand.rows, (thing_id,))), None)

    def is_planted(self, thing_id: str) -> bool:
        """True for plants of the plan and rows: what the user can move out of a conflict."""
        plant = self.plant(thing_id)
        return plant.planted if plant is not None else self._row(thing_id) is not None

    def of(self, thing_id: str, grow: float = 0.0) -> QPainterPath | None:
        """The thing's outline, `grow` device pixels wider where it is a plant; None when it is not there."""
        plant = self.plant(thing_id)
        if plant is not None:
            path = _edge(look_of(self.view, plant), grow)
            at = self.view.at(plant.place)
            return path.translated(at.x(), at.y())
        row = self._row(thing_id)
        if row is not None:
            band = band_outline(run_of(row.row), row.size.spread + 2 * grow / self.view.scale)
            return polyline(self.view.corners(band), closed=True)
        if thing_id == "lot":
            return polyline(self.view.corners(self.view.yard.lot), closed=True)
        thing = self.view.yard.find(thing_id)
        return None if thing is None else self._ground(thing)

    def _ground(self, thing: Thing) -> QPainterPath:
        view, u = self.view, self.view.unit
        if isinstance(thing, Dimension):
            return _widened(polyline(view.corners(line_of(thing))), 6 * u)
        corners = view.corners(covered(thing))
        if isinstance(thing, Container):
            return square(max(thing.diameter * view.scale, 7 * u)).translated(corners[0].x(), corners[0].y())
        if isinstance(thing, Gate | Note):
            return circle(9 * u, corners[0])
        if len(corners) == 1:
            return circle(7 * u, corners[0])
        if isinstance(thing, Barrier):
            return _widened(polyline(corners), max(thing.thickness * view.scale, 6 * u))
        if isinstance(thing, Service) and not thing.area:
            return _widened(polyline(corners), 6 * u)
        return polyline(corners, closed=True)

    def box(self, thing_id: str) -> QRectF | None:
        """The upright box round a thing."""
        path = self.of(thing_id)
        return None if path is None else path.boundingRect()


@lru_cache(maxsize=256)
def _edge(look: Look, grow: float) -> QPainterPath:
    """The outline of a plant, kept: only ever copied to its place."""
    return edge(look, grow)


def _widened(path: QPainterPath, width: float) -> QPainterPath:
    stroker = QPainterPathStroker()
    stroker.setWidth(width)
    return stroker.createStroke(path).simplified()
