"""Plain shapes that symbols and lines are made of, as painter paths round (0, 0), y downwards."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from itertools import pairwise

from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QPainterPath

TURN = 2.0 * math.pi


def polar(radius: float, angle: float) -> QPointF:
    """The place at a distance and an angle, in radians counter-clockwise as seen on the drawing."""
    return QPointF(radius * math.cos(angle), -radius * math.sin(angle))


def polyline(points: Sequence[QPointF], closed: bool = False) -> QPainterPath:
    """A path through points."""
    path = QPainterPath()
    if points:
        path.moveTo(points[0])
        for point in points[1:]:
            path.lineTo(point)
        if closed:
            path.closeSubpath()
    return path


def strokes(pairs: Iterable[tuple[QPointF, QPointF]]) -> QPainterPath:
    """Separate strokes as one path."""
    path = QPainterPath()
    for start, end in pairs:
        path.moveTo(start)
        path.lineTo(end)
    return path


def circle(radius: float, centre: QPointF | None = None) -> QPainterPath:
    """A full circle."""
    path = QPainterPath()
    path.addEllipse(centre or QPointF(0, 0), radius, radius)
    return path


def square(side: float) -> QPainterPath:
    """A square round (0, 0)."""
    path = QPainterPath()
    path.addRect(QRectF(-side / 2, -side / 2, side, side))
    return path


def scallops(radius: float, count: int, bump: float, sway: float = 0.0) -> QPainterPath:
    """A ring of `count` outward arcs that just reach `radius`; `bump` their height.

    `sway` 0..1 makes the arcs unequally wide, as in a freehand outline; the same every time.
    """
    step = TURN / count
    starts = [i * step + sway * step * 0.32 * math.sin(i * 2.4 + 0.7) for i in range(count)]
    starts.append(starts[0] + TURN)
    foot = radius - bump
    path = QPainterPath(polar(foot, starts[0]))
    for a, b in pairwise(starts):
        half = (b - a) / 2
        # The middle of a quadratic arc lies half way between its chord and its control point.
        control = 2 * radius - foot * math.cos(half)
        path.quadTo(polar(control, a + half), polar(foot, b))
    path.closeSubpath()
    return path


def spikes(radius: float, count: int, depth: float) -> QPainterPath:
    """A closed star of `count` points that reach `radius`, `depth` deep between them."""
    corners = []
    for i in range(count):
        angle = TURN * i / count
        corners += [polar(radius, angle), polar(radius - depth, angle + math.pi / count)]
    return polyline(corners, closed=True)


def leaf(base: QPointF, tip: QPointF, width: float) -> QPainterPath:
    """A leaf blade from base to tip, `width` of its length across."""
    path = QPainterPath(base)
    along = tip - base
    across = QPointF(-along.y(), along.x()) * width
    path.cubicTo(base + along * 0.3 + across, base + along * 0.75 + across * 0.8, tip)
    path.cubicTo(base + along * 0.75 - across * 0.8, base + along * 0.3 - across, base)
    path.closeSubpath()
    return path


def wave(start: QPointF, length: float, step: float, height: float) -> QPainterPath:
    """A level wavy line to the right of `start`."""
    path = QPainterPath(start)
    count = max(1, round(length / step))
    for i in range(count):
        x = start.x() + i * step
        swing = height if i % 2 else -height
        path.quadTo(QPointF(x + step / 2, start.y() + 2 * swing), QPointF(x + step, start.y()))
    return path


def scalloped_band(points: Sequence[QPointF], half: float, bump: float) -> QPainterPath:
    """A closed band along a line with arcs on both sides: a hedge from above."""
    left: list[QPointF] = []
    right: list[QPointF] = []
    for a, b in pairwise(points):
        length = math.hypot(b.x() - a.x(), b.y() - a.y())
        if length <= 1e-9:
            continue
        along = (b - a) / length
        across = QPointF(-along.y(), along.x()) * half
        count = max(1, round(length / bump))
        for i in range(count + 1):
            place = a + along * (length * i / count)
            left.append(place + across)
            right.append(place - across)
    outline = left + right[::-1]
    if not outline:
        return QPainterPath()
    path = QPainterPath(outline[0])
    for a, b in zip(outline, [*outline[1:], outline[0]], strict=True):
        chord = b - a
        outward = QPointF(chord.y(), -chord.x()) * -0.42
        path.quadTo((a + b) / 2 + outward, b)
    path.closeSubpath()
    return path
