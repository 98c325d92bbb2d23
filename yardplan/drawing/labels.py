"""Keys and names where nothing crosses them: each takes the first free place of a short list.

The order is fixed (ground first, then keys, then names, each by id), so the same yard gives the same
labels. A name that finds no room is left out; a key is always kept down to a crown of a few pixels.
Places are kept relative to the drawing's origin, so a pan needs no new arrangement.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator, Sequence

from attrs import evolve
from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QPainter

from yardplan.drawing.crowd import Crowd
from yardplan.drawing.dimension_lines import word_boxes
from yardplan.drawing.dimensions import draw_dimensions
from yardplan.drawing.ground_labels import Label, box_round, ground_labels, in_window
from yardplan.drawing.habits import FORMS, flat_half
from yardplan.drawing.hard_lines import HardLines
from yardplan.drawing.label_words import plant_name
from yardplan.drawing.lettering import (
    KEY,
    NAME,
    STANDING_NAME,
    draw_pill,
    draw_text,
    draw_turned,
    pill_size,
    text_size,
)
from yardplan.drawing.view import PlanView
from yardplan.plants.stand import Stand, Standing
from yardplan.yard.planting import Planting
from yardplan.yard.positions import chosen
from yardplan.yard.yard import Yard

_BARE_KEY = evolve(KEY, halo="crown")
#: Names that stand on their own crown.
_ON_CROWN = {face: evolve(face, halo="crown") for face in (NAME, STANDING_NAME)}
#: Nothing to keep clear of.
_NO_LINES = HardLines(Yard(), 1.0)
#: A crown smaller than this radius, style units, carries no key.
KEY_FLOOR = 4.0
#: A crown smaller than this radius carries no name.
NAME_FLOOR = 8.0
#: Among more plants than CROWD, names are left out where less than the share FEW of them finds room.
CROWD, FEW = 24, 0.4
#: A crown at least this wide holds its key inside.
KEY_INSIDE = 30.0


def arrange(view: PlanView) -> tuple[Label, ...]:
    """Places for every label of the view, relative to its origin.

    Where only some things are drawn, they are being dragged: each takes its first place, looking at nothing
    else, so that labels neither jump nor cost time.
    """
    if view.only is not None:
        return tuple(_dragged(view, view.only))
    crowd = _crowd(view)
    lines = HardLines(view.yard, view.scale)
    placed = list(ground_labels(view, crowd, lines))
    plants = sorted((p for p in view.stand.plants if _near(view, p)), key=lambda p: p.id)
    framed = not _crowded(view, plants, crowd)
    for plant in plants:
        key = _place_key(view, plant, crowd, framed=framed or plant.id in view.selection)
        if key is not None:
            crowd.take(key.box)
            placed.append(key)
    return tuple(placed + _names(view, plants, crowd, lines))


def _crowded(view: PlanView, plants: Sequence[Standing], crowd: Crowd) -> bool:
    """True where a framed key over its plant would often lie on the next one: then no key is framed."""
    small = [
        plant for plant in plants
        if plant.planted and plant.size.spread / 2 * view.scale < KEY_INSIDE * view.unit
    ]
    if len(small) <= CROWD:
        return False
    room = 0
    for plant in small:
        x, y = _spot(view, plant)
        size = pill_size(plant.id, view.unit)
        over = y - plant.size.spread / 2 * view.scale - 2.5 * view.unit - size[1] / 2
        room += crowd.free_of_crowns(box_round(x, over, size), plant.id)
    return room < 0.7 * len(small)


def _names(view: PlanView, plants: Sequence[Standing], crowd: Crowd, lines: HardLines) -> list[Label]:
    """Names that find room. In a crowd where few would, all but the selected stay out: keys tell enough."""
    placed: list[Label] = []
    for plant in plants:
        name = _place_name(view, plant, crowd, lines)
        if name is not None:
            crowd.take(name.box)
            placed.append(name)
    if len(plants) > CROWD and len(placed) < len(plants) * FEW:
        return [name for name in placed if name.thing in view.selection]
    return placed


def _dragged(view: PlanView, ids: frozenset[str]) -> Iterable[Label]:
    crowd, plants = Crowd(64.0 * view.unit), chosen(view.stand.plants, ids)
    if len(plants) < len(ids):
        few = Stand(year=view.stand.year, rows=tuple(chosen(view.stand.rows, ids)))
        ground = _some(view.yard, ids)
        if few.rows or next(iter(ground.things()), None) is not None:
            yield from ground_labels(evolve(view, yard=ground, stand=few), crowd, _NO_LINES)
    for plant in plants:
        key = _place_key(view, plant, crowd)
        if key is not None:
            crowd.take(key.box)
            yield key
        name = _place_name(view, plant, crowd, _NO_LINES)
        if name is not None:
            yield name


def _some(yard: Yard, ids: frozenset[str]) -> Yard:
    """The labelled ground of a yard, only the things named."""
    return Yard(
        buildings=tuple(chosen(yard.buildings, ids)), barriers=tuple(chosen(yard.barriers, ids)),
        pavings=tuple(chosen(yard.pavings, ids)), beds=tuple(chosen(yard.beds, ids)),
        notes=tuple(chosen(yard.notes, ids)),
    )


def _near(view: PlanView, plant: Standing) -> bool:
    """True for plants within a screen's width of the window."""
    if view.window is None:
        return True
    return view.sees(view.at(plant.place), max(view.window.width(), view.window.height()))


def _crowd(view: PlanView) -> Crowd:
    crowd = Crowd(64.0 * view.unit)
    for box in view.keep_clear:
        crowd.take(box.translated(-view.origin[0], -view.origin[1]))
    for box in word_boxes(view):
        crowd.take(box.translated(-view.origin[0], -view.origin[1]))
    for plant in view.stand.plants:
        x, y = _spot(view, plant)
        crowd.stand(x, y, plant.size.spread / 2 * view.scale, plant.id)
    return crowd


def _spot(view: PlanView, plant: Standing) -> tuple[float, float]:
    return plant.place[0] * view.scale, -plant.place[1] * view.scale


def _fits(box: QRectF, x: float, y: float, radius: float) -> bool:
    """True when all four corners of a box lie within a disc."""
    wide = max(x - box.left(), box.right() - x)
    high = max(y - box.top(), box.bottom() - y)
    return math.hypot(wide, high) <= radius


def _place_key(view: PlanView, plant: Standing, crowd: Crowd, framed: bool = True) -> Label | None:
    """A key in its frame where there is room for it; else without, at last on its own stem."""
    radius = plant.size.spread / 2 * view.scale
    chosen = plant.id in view.selection
    if not plant.planted or (radius < KEY_FLOOR * view.unit and not chosen):
        return None
    if framed or radius >= KEY_INSIDE * view.unit:
        for box in _key_boxes(view, plant, radius, pill_size(plant.id, view.unit)):
            if crowd.free_of_words(box) and crowd.free_of_crowns(box, plant.id) and in_window(view, box):
                return Label(plant.id, "key", box, plant.id)
    bare = text_size(plant.id, KEY, view.unit)
    around = tuple(_key_boxes(view, plant, radius, bare))
    middle = box_round(*_spot(view, plant), bare)
    clear = (box for box in around if crowd.free_of_crowns(box, plant.id) and in_window(view, box))
    # A key wider than its crown would hide it: such a crown carries its key beside it.
    order = (middle, *around) if radius >= 0.5 * bare[0] else (*around, middle)
    for box in (*clear, middle, *around) if framed else order:
        if crowd.free_of_words(box):
            return Label(plant.id, "bare key", box, plant.id, _BARE_KEY)
    # Kept even where words touch, unless crowns are so small that keys would hide the plan.
    kept = chosen or radius >= 2 * KEY_FLOOR * view.unit
    return Label(plant.id, "bare key", middle, plant.id, _BARE_KEY) if kept else None


def _key_boxes(
    view: PlanView, plant: Standing, radius: float, size: tuple[float, float]
) -> Iterator[QRectF]:
    """Places for a key, best first."""
    x, y = _spot(view, plant)
    if radius >= KEY_INSIDE * view.unit and FORMS[plant.size.habit].roomy:
        inside = (box_round(x, y + part * radius, size) for part in (-0.5, -0.4, 0.5))
        yield from (box for box in inside if _fits(box, x, y, radius))
    yield from _around(view, plant, radius, size, (0, 2, 3, 1, 6, 7, 4, 5))


def _around(
    view: PlanView, plant: Standing, radius: float, size: tuple[float, float], order: tuple[int, ...]
) -> Iterator[QRectF]:
    """Boxes round a crown: above, below, right, left, then the corners, in the order asked for."""
    x, y = _spot(view, plant)
    thing = plant.thing
    out_x = out_y = radius
    if FORMS[plant.size.habit].turns and isinstance(thing, Planting):
        # A strip is long one way and thin the other.
        t, half = math.radians(thing.facing), flat_half(radius, view.unit)
        out_x = abs(radius * math.cos(t)) + abs(half * math.sin(t))
        out_y = abs(radius * math.sin(t)) + abs(half * math.cos(t))
    tall = out_y + 2.5 * view.unit + size[1] / 2
    wide = out_x + 3.5 * view.unit + size[0] / 2
    near_x, near_y = 0.74 * out_x + size[0] / 2, 0.74 * out_y + size[1] / 2
    steps = (
        (0.0, -tall), (0.0, tall), (wide, 0.0), (-wide, 0.0),
        (near_x, near_y), (-near_x, near_y), (near_x, -near_y), (-near_x, -near_y),
    )
    for i in order:
        yield box_round(x + steps[i][0], y + steps[i][1], size)


def _place_name(view: PlanView, plant: Standing, crowd: Crowd, lines: HardLines) -> Label | None:
    radius = plant.size.spread / 2 * view.scale
    if radius < NAME_FLOOR * view.unit and plant.id not in view.selection:
        return None
    text = plant_name(plant)
    face = NAME if plant.planted else STANDING_NAME
    size = text_size(text, face, view.unit)
    for box in _inner_names(view, plant, radius, size):
        if crowd.free_of_words(box) and crowd.free_of_crowns(box, plant.id) and in_window(view, box):
            return Label(plant.id, "name", box, text, _ON_CROWN[face])
    for box in _around(view, plant, radius, size, (1, 2, 3, 0, 4, 5, 6, 7)):
        free = crowd.free_of_words(box) and crowd.free_of_crowns(box, plant.id)
        if free and lines.clear(box) and in_window(view, box):
            return Label(plant.id, "name", box, text, face)
    return None


def _inner_names(
    view: PlanView, plant: Standing, radius: float, size: tuple[float, float]
) -> Iterable[QRectF]:
    """Places for a name within a wide crown, off its stem; a standing tree's may stand aside."""
    if not FORMS[plant.size.habit].roomy:
        return
    x, y = _spot(view, plant)
    aside = (0.0,) if plant.planted else (0.0, 0.45 * radius, -0.45 * radius)
    for shift in aside:
        for part in (0.36, 0.48, 0.26, -0.36):
            box = box_round(x + shift, y + part * radius, size)
            if abs(part) * radius > size[1] / 2 + 2 * view.unit and _fits(box, x, y, radius * 0.97):
                yield box


_Setting = tuple[object, ...]
_kept: list[tuple[_Setting, object, object, tuple[Label, ...]]] = []


def _setting(view: PlanView) -> _Setting:
    return (view.scale, view.unit, view.units, view.layers, view.selection, len(view.keep_clear), _seen(view))


def arranged(view: PlanView) -> tuple[Label, ...]:
    """As `arrange`, kept while neither yard, stand, zoom nor what is seen changes."""
    setting = _setting(view)
    for known, yard, stand, labels in _kept if view.only is None else ():
        if yard is view.yard and stand is view.stand and known == setting:
            return labels
    labels = arrange(view)
    if view.only is None:
        _kept.insert(0, (setting, view.yard, view.stand, labels))
        del _kept[3:]
    return labels


def lately_arranged(view: PlanView) -> tuple[Label, ...]:
    """The labels last arranged at this zoom, though things may have moved since: good enough to avoid."""
    setting = _setting(view)
    for known, _, _, labels in _kept:
        if known == setting:
            return labels
    return arranged(view)


def _seen(view: PlanView) -> tuple[float, ...]:
    """Which part of the plan is in the window, to a tenth of its size: labels change only with that."""
    window = view.window
    if window is None:
        return ()
    x, y = view.origin[0] - window.left(), view.origin[1] - window.top()
    wide, high = max(window.width(), 1.0), max(window.height(), 1.0)
    return (round(x / wide, 1), round(y / high, 1), wide, high)


def draw_labels(painter: QPainter, view: PlanView) -> None:
    """Draw all labels of the view, then the edge lengths of what is selected."""
    if view.layers.labels:
        draw_arranged(painter, view, arranged(view))
    draw_dimensions(painter, view)


def draw_arranged(painter: QPainter, view: PlanView, labels: Iterable[Label]) -> None:
    """Draw labels that were arranged before."""
    away = QPointF(*view.origin)
    for label in labels:
        if not view.draws(label.thing):
            continue
        box = label.box.translated(away)
        if view.window is not None and not view.window.intersects(box):
            continue
        if label.kind == "key":
            draw_pill(painter, view, box, label.text)
        elif label.turned:
            draw_turned(painter, view, box.center(), label.turned, label.text, label.face)
        else:
            draw_text(painter, view, box, label.text, label.face)


