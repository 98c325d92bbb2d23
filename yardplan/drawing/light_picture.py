"""The season's light on the ground: tones by hours of sun, parted by lines that say the hours.

Darker means less sun; the lines carry the figures, so that the tones only repeat them.
"""

from __future__ import annotations

import math
from collections import OrderedDict
from collections.abc import Sequence
from typing import TYPE_CHECKING

import numpy as np
import shapely
from numpy.typing import NDArray
from PySide6.QtCore import QLineF, QPointF, QRectF
from PySide6.QtGui import QImage, QPainter

from yardplan.drawing.crowd import Crowd
from yardplan.drawing.lettering import Type, draw_text, text_size
from yardplan.drawing.patterns import area
from yardplan.drawing.style import THIN, colour, pen
from yardplan.drawing.view import PlanView
from yardplan.sun.classes import limits

if TYPE_CHECKING:
    from yardplan.sun.light import GroundField

#: Hours of direct sun a day at which the tone changes, and the darkness below each.
LEVELS = limits()
TONES = (0.20, 0.145, 0.09, 0.04, 0.0)
#: Cells are split this many times each way, so that tones end where their lines run.
_FINER = 4
_FACE = Type(11.0, "medium", ink="leaf", halo="paper")
#: Style units between two labels of one line, at least.
_LABELS_APART = 150.0
#: Style units that labels of different lines keep from each other, and from buildings and fences.
_CLEARANCE, _OFF_WALLS = 14.0, 16.0
#: Places tried along one line.
_TRIES = 200

Lines = NDArray[np.float64]


class _Kept:
    """Pictures and lines of the last fields, by identity."""

    def __init__(self) -> None:
        self._by_field: OrderedDict[int, tuple[GroundField, QImage, tuple[Lines, ...]]] = OrderedDict()

    def of(self, field: GroundField) -> tuple[QImage, tuple[Lines, ...]]:
        kept = self._by_field.get(id(field))
        if kept is None or kept[0] is not field:
            lines = tuple(contour(field, level) for level in LEVELS)
            kept = self._by_field[id(field)] = (field, tone_picture(field), lines)
            while len(self._by_field) > 3:
                self._by_field.popitem(last=False)
        return kept[1], kept[2]


_kept = _Kept()


def finer(hours: NDArray[np.float32], times: int = _FINER) -> NDArray[np.float64]:
    """The field with `times` as many cells each way, values between cell centres by straight lines."""
    rows, cols = hours.shape
    y = np.clip((np.arange(rows * times) + 0.5) / times - 0.5, 0, rows - 1)
    x = np.clip((np.arange(cols * times) + 0.5) / times - 0.5, 0, cols - 1)
    low_y, low_x = np.floor(y).astype(int), np.floor(x).astype(int)
    high_y, high_x = np.minimum(low_y + 1, rows - 1), np.minimum(low_x + 1, cols - 1)
    part_y, part_x = (y - low_y)[:, None], (x - low_x)[None, :]
    values = hours.astype(float)
    bottom = values[low_y][:, low_x] * (1 - part_x) + values[low_y][:, high_x] * part_x
    top = values[high_y][:, low_x] * (1 - part_x) + values[high_y][:, high_x] * part_x
    made: NDArray[np.float64] = bottom * (1 - part_y) + top * part_y
    return made


def tone_picture(field: GroundField) -> QImage:
    """Ink of the right darkness for each cell, the first row at the top of the drawing."""
    classes = np.digitize(finer(field.hours), LEVELS)
    ink = colour("ink")
    tones = (np.array(TONES) * 255).round().astype(np.uint8)
    pixels = np.empty((*classes.shape, 4), dtype=np.uint8)
    pixels[..., 0], pixels[..., 1], pixels[..., 2] = ink.red(), ink.green(), ink.blue()
    pixels[..., 3] = tones[classes]
    flipped = np.ascontiguousarray(pixels[::-1])
    high, wide = classes.shape
    return QImage(flipped.tobytes(), wide, high, 4 * wide, QImage.Format.Format_RGBA8888).copy()


def contour(field: GroundField, level: float) -> Lines:
    """Segments (n, 2, 2) in metres along which the field has that many hours.

    Each square of four cell centres is parted into two triangles: no saddle has to be guessed.
    """
    xs, ys = field.grid.xs, field.grid.ys
    hours = field.hours.astype(float)
    x, y = np.meshgrid(xs, ys)
    corner = np.stack([x, y, hours], axis=-1)
    a, b = corner[:-1, :-1], corner[:-1, 1:]
    c, d = corner[1:, 1:], corner[1:, :-1]
    triangles = np.concatenate([
        np.stack([a, b, c], axis=2).reshape(-1, 3, 3), np.stack([a, c, d], axis=2).reshape(-1, 3, 3)
    ])
    above = triangles[:, :, 2] >= level
    mixed = triangles[above.any(axis=1) & ~above.all(axis=1)]
    if not len(mixed):
        return np.empty((0, 2, 2))
    return _cut(mixed, level)


def _cut(triangles: NDArray[np.float64], level: float) -> Lines:
    """Where the level crosses two sides of each triangle."""
    above = triangles[:, :, 2] >= level
    lonely = np.where(above.sum(axis=1) == 1, above.argmax(axis=1), (~above).argmax(axis=1))
    index = np.arange(len(triangles))
    tip = triangles[index, lonely]
    ends = []
    for step in (1, 2):
        other = triangles[index, (lonely + step) % 3]
        part = ((level - tip[:, 2]) / (other[:, 2] - tip[:, 2]))[:, None]
        ends.append(tip[:, :2] + (other[:, :2] - tip[:, :2]) * part)
    return np.stack(ends, axis=1)


def draw_light(painter: QPainter, view: PlanView) -> None:
    """Tones, lines and the hours on the lines."""
    if view.light is None or view.light.hours.size == 0:
        return
    picture, lines = _kept.of(view.light)
    x0, y0, x1, y1 = view.light.grid.bounds
    painter.drawImage(QRectF(view.at((x0, y1)), view.at((x1, y0))), picture)
    painter.setPen(pen("leaf", THIN, view.unit))
    for line in lines:
        painter.drawLines(_device(view, line))
    _label(painter, view, lines)


def _device(view: PlanView, segments: Lines) -> list[QLineF]:
    placed = segments * np.array([view.scale, -view.scale]) + np.array(view.origin)
    return [QLineF(ax, ay, bx, by) for (ax, ay), (bx, by) in placed.tolist()]


def _label(painter: QPainter, view: PlanView, lines: Sequence[Lines]) -> None:
    """Hours here and there along each line: apart from each other, off crowns and structures."""
    u = view.unit
    crowd = Crowd(64.0 * u)
    for plant in view.stand.plants:
        at = view.at(plant.place)
        crowd.stand(at.x(), at.y(), plant.size.spread / 2 * view.scale, plant.id)
    ground = _Built(view)
    for level, segments in zip(LEVELS, lines, strict=True):
        text = f"{level:.0f} h"
        wide, high = text_size(text, _FACE, u)
        placed: list[QPointF] = []
        for (ax, ay), (bx, by) in segments[:: max(1, len(segments) // _TRIES)].tolist():
            point = ((ax + bx) / 2, (ay + by) / 2)
            at = view.at(point)
            box = QRectF(at.x() - wide / 2, at.y() - high / 2, wide, high)
            roomy = box.adjusted(-_CLEARANCE * u, -_CLEARANCE * u, _CLEARANCE * u, _CLEARANCE * u)
            if not _apart(at, placed, _LABELS_APART * u) or not crowd.free_of_words(roomy):
                continue
            if crowd.free_of_crowns(box) and ground.far_from(point, view.length(_OFF_WALLS)):
                crowd.take(box)
                placed.append(at)
                if view.window is None or view.window.contains(box):
                    draw_text(painter, view, box, text, _FACE)


class _Built:
    """Buildings, walls and fences, to keep labels off them."""

    def __init__(self, view: PlanView) -> None:
        shapes = [area(building.footprint) for building in view.yard.buildings]
        shapes += [shapely.LineString(b.line) for b in view.yard.barriers if len(b.line) > 1]
        self._tree = shapely.STRtree(shapes)

    def far_from(self, point: tuple[float, float], distance: float) -> bool:
        """True when nothing built is within a distance, metres."""
        return not len(self._tree.query(shapely.Point(point), predicate="dwithin", distance=distance))


def _apart(place: QPointF, others: list[QPointF], distance: float) -> bool:
    return all(math.hypot(place.x() - o.x(), place.y() - o.y()) >= distance for o in others)
