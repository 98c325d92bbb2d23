"""Partner lines (who sets fruit on whom) and ground that is clear for the plant in hand."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from functools import lru_cache
from itertools import islice
from typing import cast

import numpy as np
import shapely
from numpy.typing import NDArray
from PySide6.QtCore import QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QBrush, QPainter, QPainterPath, QPolygonF
from shapely import affinity
from shapely.geometry.base import BaseGeometry

from yardplan.drawing.crowd import Boxed, Boxes, Room
from yardplan.drawing.lettering import Type, boxed_size, draw_boxed, draw_text, text_size
from yardplan.drawing.patterns import LEAST_AREA, area, hatch_between, polygonal, steady
from yardplan.drawing.style import FINE, HEAVY, MEDIUM, THIN, bevelled, colour, pen
from yardplan.drawing.tiles import hatch_brush
from yardplan.drawing.view import Partner, PlanView
from yardplan.language import tr, tr_n
from yardplan.units import format_coarse
from yardplan.yard.ground import Outline

_FACE = Type(11.0, "medium", ink="caution")
_CLEAR = Type(12.0, "medium", italic=True, ink="leaf", halo="clear")
#: Clear ground of more rims and holes than this is hatched by tiles on the screen.
_MANY_RINGS = 60
#: Words look for room in so many of the largest pieces, and within so many metres of its best place.
_NAMED, _MIDDLE = 3, 0.1
#: Strength of the tint and of the lines of clear ground, and how far apart its lines are, style units.
_TINT, _LINES, _GAP = 0.35, 0.8, 6.0
#: At most so many lines carry words: the strongest and nearest come first.
_MOST_WORDS = 40
#: Strength from which a partner line is drawn whole, and from which it is dashed; below: dotted.
_WHOLE, _DASHED = 0.75, 0.4


def partner_words(partner: Partner, view: PlanView) -> str:
    """Distance, and days both are in bloom where known."""
    words = [format_coarse(partner.distance, view.units)]
    if partner.days is not None:
        words.append(
            tr_n("{n} day together", "{n} days together", partner.days) if partner.dated
            else tr_n("about {n} day together", "about {n} days together", partner.days)
        )
    if partner.remark:
        words.append(tr(partner.remark))
    return " · ".join(words)


def draw_partners(painter: QPainter, view: PlanView, taken: Room) -> None:
    """A line for each pair; an arrow where pollen helps one way only."""
    seen = [partner for partner in view.partners if view.sees_points((partner.start, partner.end))]
    for partner in seen:
        _draw_line(painter, view, partner, taken)
    for partner in seen[:_MOST_WORDS]:
        _draw_words(painter, view, partner, taken)


def _draw_line(painter: QPainter, view: PlanView, partner: Partner, taken: Room) -> None:
    """The line, broken where keys and names stand, with a dot or an arrow at each end."""
    u, start, end = view.unit, view.at(partner.start), view.at(partner.end)
    dash: tuple[float, ...] = ()
    if partner.strength < _WHOLE:
        dash = (8.0, 4.0) if partner.strength >= _DASHED else (1.5, 4.0)
    weight = HEAVY if not dash else MEDIUM
    painter.setPen(pen("caution", FINE if partner.quiet else weight, u, dash))
    for one, other in taken.gaps(start, end):
        painter.drawLine(one, other)
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(colour("caution"))
    dot = (2 if partner.quiet else 3) * u
    painter.drawEllipse(start, dot, dot)
    if partner.both:
        painter.drawEllipse(end, dot, dot)
    else:
        _arrow(painter, start, end, u)
    painter.setBrush(Qt.BrushStyle.NoBrush)


def _arrow(painter: QPainter, start: QPointF, end: QPointF, u: float) -> None:
    """A filled head at the receiver's end."""
    angle = math.atan2(end.y() - start.y(), end.x() - start.x())
    head = QPainterPath(end)
    for turn in (-0.38, 0.38):
        head.lineTo(end - QPointF(math.cos(angle + turn), math.sin(angle + turn)) * (11 * u))
    head.closeSubpath()
    painter.drawPath(head)


def _draw_words(painter: QPainter, view: PlanView, partner: Partner, taken: Room) -> None:
    """Words on the line, moved along it, then beside it; fewer words, or none, where all would cover others.

    What has no room stands on the plant's card and in the list of partners.
    """
    words = partner_words(partner, view)
    texts = (words, words.replace(" together", ""))
    spot = _held(view, partner, texts, taken) or _looked_for(view, partner, texts, taken)
    if spot is not None:
        text, box = spot
        taken.take(box)
        draw_boxed(painter, view, box, text, _FACE, "caution", FINE)


def _held(
    view: PlanView, partner: Partner, texts: tuple[str, str], taken: Room
) -> tuple[str, QRectF] | None:
    """The words where they stood in the frame before, while that is free."""
    number = view.spots.of((partner.donor, partner.receiver)) if view.spots is not None else None
    if number is None:
        return None
    fewer, place = divmod(number, len(_PLACES))
    text = texts[fewer]
    box = _word_box(view, partner, boxed_size(text, _FACE, view.unit), _ONE_BY_ONE[place])
    inside = view.window is None or view.window.contains(box)
    return (text, box) if inside and taken.free(box) else None


def _looked_for(
    view: PlanView, partner: Partner, texts: tuple[str, str], taken: Room
) -> tuple[str, QRectF] | None:
    """The first free place of all, with all the words or with fewer."""
    key = (partner.donor, partner.receiver)
    if view.spots is not None and view.spots.waits(key):
        return None
    # Among many lines, words that stand off theirs could belong to any.
    places = _PLACES[:_NEAR] if partner.quiet else _PLACES
    for fewer, text in enumerate(texts):
        found = next(_free(view, partner, text, taken, places), None)
        if found is not None:
            if view.spots is not None:
                view.spots.keep(key, fewer * len(_PLACES) + found[0])
            return text, found[1]
    if view.spots is not None:
        view.spots.refuse(key)
    return None


def _free(
    view: PlanView, partner: Partner, text: str, taken: Room, places: Boxes
) -> Iterator[tuple[int, QRectF]]:
    """Numbers and boxes of those of some places that are in the window and free of other words."""
    boxes = _word_boxes(view, partner, boxed_size(text, _FACE, view.unit), places)
    inside = _in_window(view, boxes)
    numbers = np.flatnonzero(inside)
    return taken.numbered_free(numbers, boxes[inside])


def _in_window(view: PlanView, boxes: Boxes) -> NDArray[np.bool_]:
    """Which of the boxes lie wholly in the window."""
    if view.window is None:
        return np.ones(len(boxes), dtype=bool)
    left, top, wide, high = boxes.T
    window = view.window
    inside: NDArray[np.bool_] = (
        (left >= window.left()) & (top >= window.top())
        & (left + wide <= window.right()) & (top + high <= window.bottom())
    )
    return inside


#: Where words stand, best first: share of the line's length, steps beside the line, steps to the right.
_PARTS = (0.5, 0.38, 0.62, 0.28, 0.72)
_PLACES = np.array(
    [(part, step, 0.0) for step in (0.0, 1.0, -1.0, 2.0, -2.0) for part in _PARTS]
    + [(part, 0.0, side) for side in (1.0, -1.0) for part in _PARTS]
)
_ONE_BY_ONE: list[tuple[float, float, float]] = [(part, step, side) for part, step, side in _PLACES.tolist()]
#: So many of them are near the line.
_NEAR = 15


def _word_boxes(view: PlanView, partner: Partner, size: tuple[float, float], places: Boxes) -> Boxes:
    """The boxes of words of a size at some places of a line."""
    wide, high = size
    start = view.at(partner.start)
    to = view.at(partner.end) - start
    length = max(math.hypot(to.x(), to.y()), 1.0)
    step = (high + 6 * view.unit) / length
    parts, beside, right = places.T
    boxes = np.empty((len(places), 4))
    boxes[:, 0] = start.x() + to.x() * parts - to.y() * step * beside + right * (wide / 2 + 10 * view.unit)
    boxes[:, 1] = start.y() + to.y() * parts + to.x() * step * beside
    boxes[:, :2] -= (wide / 2, high / 2)
    boxes[:, 2:] = size
    return boxes


def _word_box(
    view: PlanView, partner: Partner, size: tuple[float, float], place: tuple[float, float, float]
) -> QRectF:
    """One of them: for a single box plain figures are far quicker."""
    (wide, high), (part, beside, right) = size, place
    start, end = view.at(partner.start), view.at(partner.end)
    x, y = end.x() - start.x(), end.y() - start.y()
    step = (high + 6 * view.unit) / max(math.hypot(x, y), 1.0) * beside
    middle = start.x() + x * part - y * step + right * (wide / 2 + 10 * view.unit)
    return QRectF(middle - wide / 2, start.y() + y * part + x * step - high / 2, wide, high)


def draw_clear_ground(painter: QPainter, view: PlanView) -> None:
    """Every place where the plant in hand raises no conflict: quiet green hatch, and words that say so."""
    if view.clear_ground:
        hatch_clear_ground(painter, view)
        name_clear_ground(painter, view)


def hatch_clear_ground(painter: QPainter, view: PlanView) -> None:
    """The hatch alone."""
    seen = [piece for piece in view.clear_ground if piece and _in_sight(view, piece[0])]
    rings = [view.polygon((*ring, ring[0])) for piece in seen for ring in piece if len(ring) > 2]
    if len(rings) > _MANY_RINGS and not view.vector:
        _fill_many(painter, view, rings)
    else:
        _fill_few(painter, view, rings, [ring for piece in seen for ring in piece])
    painter.setPen(bevelled(pen("leaf", FINE, view.unit)))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    for corners in rings:
        painter.drawPolyline(corners)


def _in_sight(view: PlanView, rim: Outline) -> bool:
    return len(rim) > 2 and view.sees_points(rim)


def _filled(rings: Sequence[QPolygonF]) -> QPainterPath:
    """What lies within rims and not in their holes."""
    path = QPainterPath()
    for corners in rings:
        path.addPolygon(corners)
    return path


def _fill_few(painter: QPainter, view: PlanView, rings: Sequence[QPolygonF], outlines: list[Outline]) -> None:
    """A tint, and lines cut to the rings, as every printer and file shows them."""
    painter.fillPath(_filled(rings), colour("clear", _TINT))
    painter.setPen(pen("leaf", THIN, view.unit, alpha=_LINES))
    lines = hatch_between(outlines, 45.0, steady(view.length(_GAP)))
    painter.drawLines([QLineF(view.at(a), view.at(b)) for a, b in lines.tolist()])


def _fill_many(painter: QPainter, view: PlanView, rings: Sequence[QPolygonF]) -> None:
    """The same for hundreds of rings, where lines cut to each or softened edges take a tenth of a second.

    The edges are drawn over, so that their steps do not show.
    """
    gap = steady(view.length(_GAP)) * view.scale
    lines = hatch_brush(gap, "leaf", THIN * view.unit, alpha=_LINES, ratio=view.ratio)
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing, False)
    painter.setBrushOrigin(view.at((0.0, 0.0)))
    ground = _filled(rings)
    for brush in (QBrush(colour("clear", _TINT)), lines):
        painter.fillPath(ground, brush)
    painter.restore()


def name_clear_ground(painter: QPainter, view: PlanView) -> None:
    """Words in one of the largest pieces, where they fit into it and no name stands."""
    by_size = sorted((piece for piece in view.clear_ground if piece), key=lambda piece: -_extent(piece[0]))
    largest = list(islice((piece for piece in by_size if _in_sight(view, piece[0])), _NAMED))
    words = tr("clear ground")
    size = text_size(words, _CLEAR, view.unit)
    shape = size[0] / size[1]
    places = [_box_about(view, place, size) for piece in largest for place in _middles(piece, shape)]
    kept = Boxed(view.keep_clear)
    free = [one for one in places if kept.free_of_words(one[0])]
    if largest and not any(fits >= 1.0 for _, fits in free):
        free += [_box_about(view, place, size) for place in _between_names(view, largest[0], shape)]
    if places:
        # The largest piece comes first: of those in which the words fit the first, else the roomiest.
        box, _ = max(free or places, key=lambda one: min(one[1], 1.0))
        draw_text(painter, view, box, words, _CLEAR)


def _between_names(
    view: PlanView, piece: tuple[Outline, ...], shape: float
) -> tuple[tuple[float, float, float], ...]:
    """The roomiest place in a piece that no name takes."""
    names = [
        shapely.box(*view.metres(box.bottomLeft()), *view.metres(box.topRight())) for box in view.keep_clear
    ]
    ground = polygonal(_ground(piece).difference(shapely.union_all(names)))
    return (_roomiest(ground, shape),) if ground.area > LEAST_AREA else ()


def _box_about(
    view: PlanView, place: tuple[float, float, float], size: tuple[float, float]
) -> tuple[QRectF, float]:
    """The box of words about a place, and how much of it lies within the piece: 1 or more if all."""
    x, y, room = place
    at, (wide, high) = view.at((x, y)), size
    return QRectF(at.x() - wide / 2, at.y() - high / 2, wide, high), room * view.scale / (wide / 2)


def _ground(piece: tuple[Outline, ...]) -> BaseGeometry:
    """A piece without its holes."""
    holes = [area(hole) for hole in piece[1:]]
    return polygonal(area(piece[0]).difference(shapely.union_all(holes))) if holes else area(piece[0])


@lru_cache(maxsize=16)
def _middles(piece: tuple[Outline, ...], shape: float) -> tuple[tuple[float, float, float], ...]:
    """Places well inside a piece and its halves, and half the width of the widest box there.

    `shape`: of the box, wide by high.
    """
    ground = _ground(piece)
    if ground.is_empty:
        return ()
    x0, y0, x1, y1 = ground.bounds
    halves = (shapely.box(x0, y0, (x0 + x1) / 2, y1), shapely.box((x0 + x1) / 2, y0, x1, y1))
    shapes = [ground, *(polygonal(ground.intersection(half)) for half in halves)]
    return tuple(_roomiest(part, shape) for part in shapes if part.area > LEAST_AREA)


def _roomiest(ground: BaseGeometry, shape: float) -> tuple[float, float, float]:
    """The place in ground about which the widest box of a shape fits, and half its width."""
    # Seen squeezed to the shape of the words, the roundest room is the widest for them.
    squeezed = cast("shapely.Polygon", affinity.scale(ground, 1.0 / shape, 1.0, origin=(0.0, 0.0)))
    circle = shapely.maximum_inscribed_circle(squeezed, tolerance=_MIDDLE)
    (x, y), (x1, y1) = circle.coords[0], circle.coords[-1]
    return (x * shape, y, math.hypot(x1 - x, y1 - y) * shape * math.sqrt(0.5))


def _extent(rim: Outline) -> float:
    """The area of the box round a piece: near enough to tell which is the largest."""
    xs, ys = [x for x, _ in rim], [y for _, y in rim]
    return (max(xs) - min(xs)) * (max(ys) - min(ys))
