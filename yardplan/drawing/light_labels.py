"""The figures on the lines of the light: where they stand, and which stay true while the light changes."""

from __future__ import annotations

import math
from collections.abc import Sequence

import numpy as np
import shapely
from attrs import frozen
from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QPainter

from yardplan.drawing.crowd import Crowd
from yardplan.drawing.lettering import Type, draw_text, text_size
from yardplan.drawing.light_picture import Lines, lines_of
from yardplan.drawing.patterns import area
from yardplan.drawing.view import PlanView
from yardplan.language import decimals, tr
from yardplan.sun.classes import limits
from yardplan.sun.light import GroundField
from yardplan.yard.ground import Point

_FACE = Type(11.0, "medium", ink="leaf", halo="paper")
#: Style units between two labels of one line, at least.
_LABELS_APART = 150.0
#: Style units that labels of different lines keep from each other, and from buildings and fences.
_CLEARANCE, _OFF_WALLS = 14.0, 16.0
#: From other words where there is no better place, so that two figures do not read as one.
_BETWEEN = 4.0
#: From walls at least, where there is no better place: lines that only run along a wall stay without.
_CROWDED_OFF_WALLS = 5.0
#: Places tried along one line.
_TRIES = 200
#: A label stays while the light at its place is within this part of the step between classes.
_STAYS = 0.12


@frozen
class LightLabel:
    """A figure at a place of its line, metres."""

    text: str
    level: float
    place: Point


def level_text(level: float, field: GroundField) -> str:
    """`6 h` or `50 %`."""
    if field.measure.startswith("share"):
        return decimals(f"{level:g} %")
    return tr("{hours} h", hours=decimals(f"{level:g}"))


def light_labels(view: PlanView) -> tuple[LightLabel, ...]:
    """Figures here and there along each line: apart from each other, off crowns, words and structures."""
    if view.light is None or view.light.hours.size == 0:
        return ()
    room = _Room(view)
    labels: list[LightLabel] = []
    levels = limits(view.light.measure)
    for level, segments in zip(levels, lines_of(view.light), strict=True):
        text = level_text(level, view.light)
        # A line that finds no good place gets one that is only free of other words.
        labels += room.along(segments, level, text) or room.along(segments, level, text, crowded=True)
    return tuple(labels)


def draw_light_labels(painter: QPainter, view: PlanView, labels: Sequence[LightLabel]) -> None:
    """Write the figures that lie in the window."""
    for label in labels:
        wide, high = text_size(label.text, _FACE, view.unit)
        at = view.at(label.place)
        box = QRectF(at.x() - wide / 2, at.y() - high / 2, wide, high)
        if view.window is None or view.window.contains(box):
            draw_text(painter, view, box, label.text, _FACE)


def still_true(field: GroundField, labels: Sequence[LightLabel]) -> tuple[LightLabel, ...]:
    """The labels by whose places the light still has their figure, for a field that has changed."""
    levels = (0.0, *limits(field.measure))
    slack = _STAYS * max(np.diff(levels).max(), 0.0)
    return tuple(label for label in labels if _is_near(field, label, float(slack)))


def _is_near(field: GroundField, label: LightLabel, slack: float) -> bool:
    value = field.at(label.place)
    return value is not None and abs(value - label.level) <= slack


class _Room:
    """What stands on the sheet already."""

    def __init__(self, view: PlanView) -> None:
        self._view = view
        u = view.unit
        self._crowd = Crowd(64.0 * u)
        for plant in view.stand.plants:
            at = view.at(plant.place)
            self._crowd.stand(at.x(), at.y(), plant.size.spread / 2 * view.scale, plant.id)
        for box in view.keep_clear:
            self._crowd.take(box)
        shapes = [area(building.footprint) for building in view.yard.buildings]
        shapes += [shapely.LineString(b.line) for b in view.yard.barriers if len(b.line) > 1]
        self._built = shapely.STRtree(shapes)

    def along(self, segments: Lines, level: float, text: str, *, crowded: bool = False) -> list[LightLabel]:
        """Labels of one line."""
        view, u = self._view, self._view.unit
        wide, high = text_size(text, _FACE, u)
        middles = segments[:: max(1, len(segments) // _TRIES)].mean(axis=1)
        free = self._off_buildings(middles, _CROWDED_OFF_WALLS if crowded else _OFF_WALLS)
        taken: list[QPointF] = []
        labels: list[LightLabel] = []
        for x, y in middles[free].tolist():
            at = view.at((x, y))
            box = QRectF(at.x() - wide / 2, at.y() - high / 2, wide, high)
            free_here = self._is_apart(box, _BETWEEN) if crowded else self._is_free(box)
            if _apart(at, taken, _LABELS_APART * u) and free_here and self._in_window(box):
                self._crowd.take(box)
                taken.append(at)
                labels.append(LightLabel(text, level, (x, y)))
        return labels

    def _in_window(self, box: QRectF) -> bool:
        return self._view.window is None or self._view.window.contains(box)

    def _off_buildings(self, points: Lines, off: float) -> np.ndarray[tuple[int], np.dtype[np.bool_]]:
        free = np.ones(len(points), dtype=bool)
        distance = self._view.length(off)
        near = self._built.query(shapely.points(points), predicate="dwithin", distance=distance)
        free[near[0]] = False
        return free

    def _is_free(self, box: QRectF) -> bool:
        return self._is_apart(box, _CLEARANCE) and self._crowd.free_of_crowns(box)

    def _is_apart(self, box: QRectF, clearance: float) -> bool:
        """Free of other words, so many style units round it."""
        off = clearance * self._view.unit
        return self._crowd.free_of_words(box.adjusted(-off, -off, off, off))


def _apart(place: QPointF, others: list[QPointF], distance: float) -> bool:
    return all(math.hypot(place.x() - o.x(), place.y() - o.y()) >= distance for o in others)
