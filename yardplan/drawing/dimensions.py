"""Edge lengths of what is selected, and dimension lines."""

from __future__ import annotations

import math
from collections.abc import Iterator

from attrs import frozen
from PySide6.QtCore import QPointF
from PySide6.QtGui import QPainter

from yardplan.drawing.lettering import Type, draw_turned, text_size
from yardplan.drawing.style import THIN, pen
from yardplan.drawing.view import PlanView
from yardplan.units import format_length
from yardplan.yard.edges import LOT, edges_of, straight_edges
from yardplan.yard.edits import OUTLINE_FIELD
from yardplan.yard.ground import Outline, Point

_FACE = Type(11.0, "medium", halo="paper")
#: An outline with more corners than this is a curve: lengths of its edges say nothing.
_MOST_EDGES = 12
#: How far outside an edge its dimension line runs, style units.
_OFF = 13.0


@frozen
class EdgeFigure:
    """The length of an edge as it stands on the plan: of thing `key` (or `lot`), edges counted from 0.

    `start`, `end` the dimension line, `middle` of the words, device pixels; `degrees` counter-clockwise;
    `wide`, `high` of the words.
    """

    key: str
    edge: int
    text: str
    start: QPointF
    end: QPointF
    degrees: float
    wide: float
    high: float

    @property
    def middle(self) -> QPointF:
        """The middle of the words."""
        return (self.start + self.end) / 2

    def corners(self, least: float = 0.0) -> tuple[QPointF, ...]:
        """The corners of a box round the words, at least so high, device pixels."""
        turn = math.radians(self.degrees)
        along, across = QPointF(math.cos(turn), -math.sin(turn)), QPointF(math.sin(turn), math.cos(turn))
        x, y = along * (self.wide / 2 + 4), across * (max(self.high, least) / 2)
        return (self.middle - x - y, self.middle + x - y, self.middle + x + y, self.middle - x + y)

    def holds(self, place: QPointF, least: float) -> bool:
        """True when a device place lies on the words, their box at least so high."""
        turn, off = math.radians(self.degrees), place - self.middle
        along = off.x() * math.cos(turn) - off.y() * math.sin(turn)
        across = off.x() * math.sin(turn) + off.y() * math.cos(turn)
        return abs(along) <= self.wide / 2 + 4 and abs(across) <= max(self.high, least) / 2


def edge_figures(view: PlanView) -> Iterator[EdgeFigure]:
    """Where the lengths of the selected things stand; of edges too short for their figure, none."""
    drawn = (thing.id for thing in view.yard.named(view.selection) if type(thing) in OUTLINE_FIELD)
    for key in (*(view.selection & {LOT}), *drawn):
        if not view.draws(key):
            continue
        edges = straight_edges(view.yard, key)
        if 0 < len(edges) <= _MOST_EDGES:
            outline = tuple(a for a, _ in edges)
            side = _OFF if _turns_left((*outline, edges[-1][1])) else -_OFF
            for number, (a, b) in enumerate(edges):
                figure = _figure(view, a, b, side, key, number)
                if figure is not None:
                    yield figure


def draw_dimensions(painter: QPainter, view: PlanView) -> None:
    """Lengths of every edge of the selected things that have edges."""
    for figure in edge_figures(view):
        _draw_figure(painter, view, figure)


def draw_edge_lengths(
    painter: QPainter, view: PlanView, outline: Outline, *, closed: bool, off: float = _OFF
) -> None:
    """A dimension line `off` style units outside each edge (inside, when negative)."""
    if len(outline) > _MOST_EDGES:
        return
    side = 1.0 if _turns_left(outline) else -1.0
    for a, b in edges_of(outline, closed=closed):
        draw_dimension(painter, view, a, b, side * off)


def _turns_left(outline: Outline) -> bool:
    pairs = zip(outline, (*outline[1:], outline[0]), strict=True)
    return sum(a[0] * b[1] - b[0] * a[1] for a, b in pairs) > 0


def draw_dimension(painter: QPainter, view: PlanView, a: Point, b: Point, off: float) -> None:
    """A line `off` style units to the right of a-b with short end ticks and its length."""
    figure = _figure(view, a, b, off)
    if figure is not None:
        _draw_figure(painter, view, figure)


def _figure(
    view: PlanView, a: Point, b: Point, off: float, key: str = "", edge: int = 0
) -> EdgeFigure | None:
    """The length of a-b as it stands `off` style units to its right, or None where there is no room."""
    length = math.dist(a, b)
    text = format_length(length, view.units)
    u = view.unit
    wide, high = text_size(text, _FACE, u)
    if length * view.scale < wide + 8 * u:
        return None
    angle = math.atan2(b[1] - a[1], b[0] - a[0])
    # To the right of the direction in metres, which on the device has y downwards.
    aside = QPointF(math.sin(angle), math.cos(angle)) * (off * u)
    turned = (math.degrees(angle) + 90.0) % 180.0 - 90.0
    return EdgeFigure(
        key, edge, text, view.at(a) + aside, view.at(b) + aside, 90.0 if turned <= -89.9 else turned,
        wide, high,
    )


def _draw_figure(painter: QPainter, view: PlanView, figure: EdgeFigure) -> None:
    u, run = view.unit, figure.end - figure.start
    tick = QPointF(-run.y(), run.x()) / math.hypot(run.x(), run.y()) * (3.5 * u)
    painter.setPen(pen("muted", THIN, u))
    painter.drawLine(figure.start, figure.end)
    for place in (figure.start, figure.end):
        painter.drawLine(place - tick, place + tick)
    draw_turned(painter, view, figure.middle, figure.degrees, figure.text, _FACE)
