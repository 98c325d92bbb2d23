"""The light on the ground: tones by hours of sun, parted by lines that say the hours.

Darker means less sun; the lines carry the figures, so that the tones only repeat them.
"""

from __future__ import annotations

from collections import OrderedDict
from threading import Lock

import numpy as np
from attrs import frozen
from numpy.typing import NDArray
from PySide6.QtCore import QLineF, QRectF
from PySide6.QtGui import QImage, QPainter

from yardplan.drawing.style import THIN, colour, pen
from yardplan.drawing.view import PlanView
from yardplan.sun.classes import Measure, classes, limits
from yardplan.sun.light import GroundField

#: Darkness of the deepest tone; words keep their contrast on it (tested).
DEEPEST = 0.20
#: How strongly light is drawn that has not been worked out again since something changed.
PALE = 0.4
#: Cells are split this many times each way, so that tones end where their lines run.
_FINER = 4
_KEPT = 4

Lines = NDArray[np.float64]


def tones(measure: Measure = "hours") -> tuple[float, ...]:
    """Darkness of each class from the least up: dark where there is little light, or where much is taken."""
    steps = np.linspace(DEEPEST, 0.0, len(classes(measure)))
    each = steps[::-1] if measure.endswith("taken") else steps
    return tuple(float(tone) for tone in each)


#: Hours of direct sun a day at which the tone changes, and the darkness of each class.
LEVELS, TONES = limits(), tones()


@frozen(eq=False)
class Drawn:
    """What is drawn of a field: tones, the lines of each limit, and all lines in metres for the painter."""

    field: GroundField
    tones: QImage
    lines: tuple[Lines, ...]
    strokes: list[QLineF]


class _Kept:
    """Pictures and lines of the last fields, by identity; asked by the window and by its worker."""

    def __init__(self) -> None:
        self._by_field: OrderedDict[int, Drawn] = OrderedDict()
        self._lock = Lock()

    def of(self, field: GroundField) -> Drawn:
        with self._lock:
            kept = self._by_field.get(id(field))
        if kept is None or kept.field is not field:
            lines = tuple(contour(field, level) for level in limits(field.measure))
            strokes = [QLineF(*ends) for line in lines for ends in line.reshape(-1, 4).tolist()]
            kept = Drawn(field, tone_picture(field), lines, strokes)
            with self._lock:
                self._by_field[id(field)] = kept
                while len(self._by_field) > _KEPT:
                    self._by_field.popitem(last=False)
        return kept


_kept = _Kept()


def prepare(field: GroundField) -> None:
    """Find tones and lines ahead of the painting; may run on a worker."""
    _kept.of(field)


def lines_of(field: GroundField) -> tuple[Lines, ...]:
    """The lines of all class limits, least first."""
    return _kept.of(field).lines


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
    found = np.digitize(finer(field.hours), limits(field.measure))
    ink = colour("ink")
    shades = np.array(tones(field.measure))
    pixels = np.empty((len(shades), 4), dtype=np.uint8)
    pixels[:, :3] = ink.red(), ink.green(), ink.blue()
    pixels[:, 3] = (shades * 255).round().astype(np.uint8)
    flipped = np.ascontiguousarray(pixels[found[::-1]])
    high, wide = found.shape
    return QImage(flipped.tobytes(), wide, high, 4 * wide, QImage.Format.Format_RGBA8888).convertToFormat(
        QImage.Format.Format_ARGB32_Premultiplied
    )


def contour(field: GroundField, level: float) -> Lines:
    """Segments (n, 2, 2) in metres along which the field has that figure.

    Each square of four cell centres is parted into two triangles: no saddle has to be guessed.
    """
    high = field.hours >= level
    number = high[:-1, :-1].astype(np.int8) + high[:-1, 1:] + high[1:, 1:] + high[1:, :-1]
    row, col = np.nonzero((number > 0) & (number < 4))
    if not len(row):
        return np.empty((0, 2, 2))
    xs, ys = field.grid.xs, field.grid.ys
    a, b, c, d = (
        np.column_stack([xs[col + right], ys[row + up], field.hours[row + up, col + right]])
        for up, right in ((0, 0), (0, 1), (1, 1), (1, 0))
    )
    triangles = np.concatenate([np.stack([a, b, c], axis=1), np.stack([a, c, d], axis=1)])
    above = triangles[:, :, 2] >= level
    mixed = triangles[above.any(axis=1) & ~above.all(axis=1)]
    return _cut(mixed, level) if len(mixed) else np.empty((0, 2, 2))


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
    """Tones and lines of the light; the figures are drawn apart (`light_labels`)."""
    if view.light is None or view.light.hours.size == 0:
        return
    drawn = _kept.of(view.light)
    x0, y0, x1, y1 = view.light.grid.bounds
    painter.save()
    painter.setOpacity(PALE if view.light_pale else 1.0)
    painter.drawImage(QRectF(view.at((x0, y1)), view.at((x1, y0))), drawn.tones)
    painter.setPen(pen("leaf", THIN / view.scale, view.unit))
    painter.translate(*view.origin)
    painter.scale(view.scale, -view.scale)
    painter.drawLines(drawn.strokes)
    painter.restore()
