"""Where a plant in hand is within reach of its partners: rings at the best and the outer distance."""

from __future__ import annotations

from functools import lru_cache

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QPainter
from shapely import Polygon, intersection_all, union_all
from shapely.geometry import MultiPoint
from shapely.geometry.base import BaseGeometry

from yardplan.drawing.lettering import Type, boxed_size, draw_boxed
from yardplan.drawing.patterns import ring
from yardplan.drawing.style import FINE, MEDIUM, colour, pen
from yardplan.drawing.view import PlanView, Reach
from yardplan.language import any_of, later, tr
from yardplan.units import format_coarse

_FACE = Type(11.0, "medium", ink="caution")
#: How strongly the ground within the best distance is tinted.
_TINT = 0.05
#: Corners of a quarter of a ring.
_QUARTER = 24
#: Places of a ring that are tried for its words: a frame of a drag has no time for more.
_TRIED = 40
#: Things named in words; more are counted.
_NAMED = 2
#: Words keep so many pixels from the window's sides.
_MARGIN = 6.0


def draw_reaches(painter: QPainter, view: PlanView) -> None:
    """A ring at the best distance from the partners, tinted within, and a dotted one at the outer.

    Round all that any of them reaches, or round what all of them reach where the plant is meant for all.
    """
    if not view.reaches:
        return
    best, outer = _shapes(view.reaches, view.reach_all)
    painter.setPen(pen("caution", MEDIUM, view.unit, (7.0, 4.0)))
    painter.setBrush(colour("caution", _TINT))
    _draw_rings(painter, view, best)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.setPen(pen("caution", FINE, view.unit, (1.5, 4.0)))
    _draw_rings(painter, view, outer)
    _say(painter, view, best, outer)


@lru_cache(maxsize=4)
def _shapes(reaches: tuple[Reach, ...], of_all: bool) -> tuple[BaseGeometry, BaseGeometry]:
    """Ground within the best and within the outer distance; kept, since a drag asks for it on every frame."""
    found = []
    for far in ([one.best for one in reaches], [one.outer for one in reaches]):
        discs = [
            MultiPoint(one.points).buffer(reach, _QUARTER) for one, reach in zip(reaches, far, strict=True)
        ]
        shared = intersection_all(discs) if of_all else union_all(discs)
        # Where no place is near enough to all, each one's own ground is still shown.
        found.append(union_all(discs) if shared.is_empty else shared)
    return found[0], found[1]


def _draw_rings(painter: QPainter, view: PlanView, shape: BaseGeometry) -> None:
    for piece in getattr(shape, "geoms", (shape,)):
        if isinstance(piece, Polygon) and not piece.is_empty:
            painter.drawPolygon(view.polygon(ring(piece)))


def _say(painter: QPainter, view: PlanView, best: BaseGeometry, outer: BaseGeometry) -> None:
    """Words on each ring where it can be seen; where the window lies within the ring, at its foot."""
    words = reach_words(view)
    for shape, text in ((best, words[0]), (outer, words[1])):
        place = _highest_seen(view, shape, text)
        if place is not None:
            _tag(painter, view, place, text)
    if _highest_seen(view, best, words[0]) is None and view.window is not None:
        foot = QPointF(view.window.center().x(), view.window.bottom() - 24 * view.unit)
        if best.contains(MultiPoint([view.metres(foot)])):
            _tag(painter, view, foot, words[0])


def reach_words(view: PlanView) -> tuple[str, str]:
    """What the ring at the best and the one at the outer distance mean."""
    shown = [reach.name for reach in view.reaches[:_NAMED]]
    names = tr(" and ").join(shown) if view.reach_all else any_of(shown)
    if len(view.reaches) > _NAMED:
        words = later("all of {n} plants") if view.reach_all else later("one of {n} plants")
        names = tr(words, n=len(view.reaches))
    best = _span(view, [reach.best for reach in view.reaches])
    outer = _span(view, [reach.outer for reach in view.reaches])
    return (
        tr("within {distance} of {plants}: near enough", distance=best, plants=names),
        tr("beyond {distance}: too far", distance=outer),
    )


def _span(view: PlanView, lengths: list[float]) -> str:
    least, most = (format_coarse(length, view.units) for length in (min(lengths), max(lengths)))
    return least if least == most else tr("{low} to {high}", low=least, high=most)


def _highest_seen(view: PlanView, shape: BaseGeometry, text: str) -> QPointF | None:
    """The highest place of a ring that the window shows with room for words, if there is one where they
    cover no others; None where the window shows none."""
    room = None if view.window is None else view.window.adjusted(130, 18, -130, -18)
    seen: list[QPointF] = []
    for piece in getattr(shape, "geoms", (shape,)):
        if isinstance(piece, Polygon) and not piece.is_empty:
            seen += [at for at in view.corners(ring(piece)) if room is None or room.contains(at)]
    seen.sort(key=lambda at: at.y())
    free = (at for at in seen[:_TRIED] if not _covers(view, _box(view, at, text)))
    return next(free, seen[0]) if seen else None


def _covers(view: PlanView, words: QRectF) -> bool:
    return any(box.intersects(words) for box in view.keep_clear)


def _tag(painter: QPainter, view: PlanView, middle: QPointF, text: str) -> None:
    box = _box(view, middle, text)
    # On a sheet too narrow for them the rings alone tell.
    if view.window is None or box.width() <= view.window.width():
        draw_boxed(painter, view, box, text, _FACE, "caution", FINE)


def _box(view: PlanView, middle: QPointF, text: str) -> QRectF:
    """The box of words at a place; moved aside where the window would cut them."""
    wide, high = boxed_size(text, _FACE, view.unit)
    left = middle.x() - wide / 2
    if view.window is not None:
        left = max(min(left, view.window.right() - wide - _MARGIN), view.window.left() + _MARGIN)
    return QRectF(left, middle.y() - high / 2, wide, high)


