"""How each habit looks from above: an outline and the strokes within, as paths of a given radius.

Radii are in device pixels, `u` is the device size of one style unit. The forms are told apart by shape
alone, so that they hold in black and white and for every eye.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping

from attrs import frozen
from PySide6.QtCore import QPointF
from PySide6.QtGui import QPainterPath, QTransform

from yardplan.drawing.shapes import TURN, circle, leaf, polar, polyline, scallops, spikes, strokes
from yardplan.plants.crop import Habit

Builder = Callable[[float, float], QPainterPath]


def _between(low: float, value: float, high: float) -> int:
    return round(max(low, min(value, high)))


def _scalloped(r: float, u: float) -> QPainterPath:
    count = _between(9, TURN * r / (11 * u), 30)
    return scallops(r, count, min(0.16 * r, 0.27 * TURN * r / count))


def _five_limbs(r: float, u: float) -> QPainterPath:
    """Five limbs round a leader, each with a twig to either side."""
    path = QPainterPath()
    for i, reach in enumerate((0.70, 0.60, 0.72, 0.62, 0.66)):
        angle = math.pi / 2 + i * TURN / 5
        tip, knee = polar(reach * r, angle), polar(reach * r * 0.52, angle)
        path.addPath(polyline([polar(0.09 * r, angle), tip]))
        if r > 22 * u:
            for side in (-1, 1):
                far = polar(reach * r * (0.86 if side > 0 else 0.78), angle + side * 0.33)
                path.addPath(polyline([knee, far]))
    return path


def _ringed(r: float, u: float) -> QPainterPath:
    return circle(r)


def _forked_limbs(r: float, u: float) -> QPainterPath:
    """An open middle and limbs that fork towards the rim."""
    path = circle(0.24 * r)
    for i in range(4):
        angle = math.pi / 4 + 0.12 + i * TURN / 4
        fork = polar(0.54 * r, angle)
        path.addPath(polyline([polar(0.24 * r, angle), fork]))
        for side in (-1, 1):
            path.addPath(polyline([fork, polar(0.88 * r, angle + side * 0.33)]))
    return path


def _seven_lobes(r: float, u: float) -> QPainterPath:
    turned = QTransform().rotate(-12.0)
    return turned.map(scallops(r, 7, 0.24 * r))


def _bush_heart(r: float, u: float) -> QPainterPath:
    path = circle(max(0.2 * r, 1.6 * u))
    if r > 12 * u:
        for i in range(7):
            angle = TURN * (i + 0.5) / 7 + math.radians(12.0)
            path.addPath(polyline([polar(0.42 * r, angle), polar(0.68 * r, angle)]))
    if r > 55 * u:
        # A wide bush would look empty: a second, smaller row of shoots stands between the first.
        for i in range(7):
            angle = TURN * i / 7 + math.radians(12.0)
            path.addPath(polyline([polar(0.30 * r, angle), polar(0.46 * r, angle)]))
            for side in (-0.16, 0.16):
                lobe = TURN * (i + 0.5) / 7 + math.radians(12.0) + side
                path.addPath(polyline([polar(0.62 * r, lobe), polar(0.76 * r, lobe)]))
    return path


def _rays(r: float, u: float) -> QPainterPath:
    """Canes that lean out of one stool."""
    path = QPainterPath()
    for i in range(10):
        angle = TURN * i / 10 + 0.15
        reach = r * (1.0 if i % 2 else 0.78)
        path.addPath(polyline([polar(0.14 * r, angle), polar(reach, angle)]))
        if r > 9 * u and i % 2:
            knee = polar(0.62 * r, angle)
            path.addPath(polyline([polar(0.86 * r, angle + 0.26), knee, polar(0.86 * r, angle - 0.26)]))
    return path


def _wire_leaves(r: float, u: float) -> QPainterPath:
    """Leaf pairs along a wire that runs along +x."""
    path = polyline([QPointF(-r, 0), QPointF(r, 0)])
    pairs = _between(1, r / (9 * u), 8)
    span = 2 * r / pairs
    for i in range(pairs):
        x = -r + (i + 0.5) * span
        blade = min(span * 0.62, 0.9 * r, 11 * u)
        for side in (-1, 1):
            tip = QPointF(x + blade * 0.4, side * blade * 0.8)
            path.addPath(leaf(QPointF(x - blade * 0.35, 0), tip, 0.3))
    return path


def _strip(r: float, u: float) -> QPainterPath:
    half = flat_half(r, u)
    path = QPainterPath()
    path.addRoundedRect(-r, -half, 2 * r, 2 * half, half * 0.8, half * 0.8)
    return path


def flat_half(r: float, u: float) -> float:
    """Half the depth at which a flat-trained plant of half-length `r` is drawn."""
    return max(0.12 * r, 3.5 * u)


def _comb(r: float, u: float) -> QPainterPath:
    """A spine along its wall and teeth to the open side."""
    half = flat_half(r, u)
    spine = half * 0.35
    pairs = [(QPointF(-0.94 * r, spine), QPointF(0.94 * r, spine))]
    teeth = _between(5, 2 * r / (6 * u), 31)
    for i in range(teeth):
        x = -0.94 * r + 1.88 * r * i / (teeth - 1)
        reach = -half * (0.72 if i % 2 else 1.05)
        pairs.append((QPointF(x, spine), QPointF(x, reach)))
    return strokes(pairs)


def _trefoil(r: float, u: float) -> QPainterPath:
    path = QPainterPath()
    for i in range(3):
        angle = math.pi / 2 + i * TURN / 3
        path.addPath(leaf(QPointF(0, 0), polar(r, angle), 0.5))
    return path


def _midribs(r: float, u: float) -> QPainterPath:
    if r < 6 * u:
        return QPainterPath()
    angles = (math.pi / 2 + i * TURN / 3 for i in range(3))
    return strokes((polar(0.1 * r, a), polar(0.62 * r, a)) for a in angles)


def _column_ticks(r: float, u: float) -> QPainterPath:
    """A tight upright head: short ticks from the rim inwards round a small ring."""
    path = circle(0.34 * r)
    count = _between(8, TURN * r / (5 * u), 24)
    for i in range(count):
        angle = TURN * i / count
        path.addPath(polyline([polar(r, angle), polar(0.72 * r, angle)]))
    return path


def _broad_leaves(r: float, u: float) -> QPainterPath:
    path = QPainterPath()
    for i in range(6):
        path.addPath(leaf(polar(0.1 * r, i * TURN / 6 + 0.3), polar(r, i * TURN / 6 + 0.3), 0.31))
    return path


def _ribs(r: float, u: float) -> QPainterPath:
    angles = (i * TURN / 6 + 0.3 for i in range(6))
    return strokes((polar(0.14 * r, a), polar(0.74 * r, a)) for a in angles)


def _needled(r: float, u: float) -> QPainterPath:
    count = _between(14, TURN * r / (7 * u), 44)
    return spikes(r, count, min(0.2 * r, 7 * u))


def _needles(r: float, u: float) -> QPainterPath:
    count = _between(7, TURN * r / (22 * u), 15)
    path = QPainterPath()
    for i in range(count):
        angle = TURN * i / count
        path.addPath(polyline([polar(0.1 * r, angle), polar(0.34 * r, angle)]))
        between = angle + math.pi / count
        path.addPath(polyline([polar(0.46 * r, between), polar(0.70 * r, between)]))
    return path


def _cloud(r: float, u: float) -> QPainterPath:
    count = _between(9, TURN * r / (24 * u), 22)
    return scallops(r, count, min(0.13 * r, 0.26 * TURN * r / count), sway=1.0)


def _inner_cloud_and_boughs(r: float, u: float) -> QPainterPath:
    """The second outline of a big tree and boughs that part three times."""
    count = _between(9, TURN * r / (24 * u), 22)
    inner = r - max(3.2 * u, 0.05 * r)
    path = scallops(inner, count, min(0.13 * r, 0.26 * TURN * r / count), sway=1.0)
    for i, reach in enumerate((0.62, 0.54, 0.66, 0.56, 0.6, 0.5)):
        angle = 0.4 + i * TURN / 6
        _bough(path, polar(0.07 * r, angle), angle, reach * r * 0.5, 3 if r > 40 * u else 2)
    return path


def _bough(path: QPainterPath, start: QPointF, angle: float, length: float, forks: int) -> None:
    end = start + polar(length, angle)
    path.moveTo(start)
    path.lineTo(end)
    if forks > 1:
        for side in (-0.42, 0.5):
            _bough(path, end, angle + side, length * 0.62, forks - 1)


def _nothing(r: float, u: float) -> QPainterPath:
    return QPainterPath()


@frozen(kw_only=True)
class Form:
    """Paths of one habit: `outline` filled and stroked, `inner` stroked thin, `edge` what marks follow.

    `turns` True where the plant has a direction. `open` True: the outline has no crown tint.
    `roomy` True where a wide crown can hold its key and name.
    """

    outline: Builder
    inner: Builder
    edge: Builder
    turns: bool = False
    open: bool = False
    roomy: bool = True


FORMS: Mapping[Habit, Form] = {
    "central leader": Form(outline=_scalloped, inner=_five_limbs, edge=_scalloped),
    "open centre": Form(outline=_ringed, inner=_forked_limbs, edge=_ringed),
    "bush": Form(outline=_seven_lobes, inner=_bush_heart, edge=_seven_lobes),
    "cane": Form(outline=_nothing, inner=_rays, edge=_ringed, open=True, roomy=False),
    "vine": Form(outline=_nothing, inner=_wire_leaves, edge=_strip, turns=True, open=True, roomy=False),
    "flat-trained": Form(outline=_strip, inner=_comb, edge=_strip, turns=True, roomy=False),
    "mat": Form(outline=_trefoil, inner=_midribs, edge=_ringed, roomy=False),
    "column": Form(outline=_ringed, inner=_column_ticks, edge=_ringed),
    "clump": Form(outline=_broad_leaves, inner=_ribs, edge=_ringed, roomy=False),
    "conifer": Form(outline=_needled, inner=_needles, edge=_needled),
    "shade tree": Form(outline=_cloud, inner=_inner_cloud_and_boughs, edge=_cloud),
}
