"""Keys and names where nothing crosses them: each takes the first free place of a short list.

The order is fixed (ground first, then keys, then names, each by id), so the same yard gives the same
labels. A name that finds no room is left out; a key is always kept down to a crown of a few pixels.
Places are kept relative to the drawing's origin, so a pan needs no new arrangement.
"""

from __future__ import annotations

import math
from collections.abc import Iterable

import shapely
from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QPainter

from yardplan.drawing.crowd import Crowd
from yardplan.drawing.dimensions import draw_dimensions
from yardplan.drawing.ground_labels import Label, ground_labels
from yardplan.drawing.label_words import plant_name
from yardplan.drawing.lettering import (
    NAME,
    STANDING_NAME,
    Type,
    draw_pill,
    draw_text,
    draw_turned,
    pill_size,
    text_size,
)
from yardplan.drawing.view import PlanView
from yardplan.plants.stand import Standing

#: A crown smaller than this radius, style units, carries no key.
KEY_FLOOR = 4.0
#: A crown smaller than this radius carries no name.
NAME_FLOOR = 8.0
#: A crown at least this wide holds its key inside.
KEY_INSIDE = 21.0


def arrange(view: PlanView) -> tuple[Label, ...]:
    """Places for every label of the view, relative to its origin."""
    crowd = _crowd(view)
    lines = _Lines(view)
    placed = list(ground_labels(view, crowd))
    plants = sorted((p for p in view.stand.plants if _near(view, p)), key=lambda p: p.id)
    for plant in plants:
        key = _place_key(view, plant, crowd)
        if key is not None:
            crowd.take(key.box)
            placed.append(key)
    for plant in plants:
        name = _place_name(view, plant, crowd, lines)
        if name is not None:
            crowd.take(name.box)
            placed.append(name)
    return tuple(placed)


def _near(view: PlanView, plant: Standing) -> bool:
    """True for plants within a screen's width of the window."""
    if view.window is None:
        return True
    return view.sees(view.at(plant.place), max(view.window.width(), view.window.height()))


def _crowd(view: PlanView) -> Crowd:
    crowd = Crowd(64.0 * view.unit)
    for plant in view.stand.plants:
        x, y = _spot(view, plant)
        crowd.stand(x, y, plant.size.spread / 2 * view.scale, plant.id)
    return crowd


def _spot(view: PlanView, plant: Standing) -> tuple[float, float]:
    return plant.place[0] * view.scale, -plant.place[1] * view.scale


def _box(x: float, y: float, size: tuple[float, float]) -> QRectF:
    """A box round its middle."""
    return QRectF(x - size[0] / 2, y - size[1] / 2, size[0], size[1])


class _Lines:
    """Heavy lines that names keep clear of: lot, buildings, walls and fences."""

    def __init__(self, view: PlanView) -> None:
        yard, scale = view.yard, view.scale
        runs = [building.footprint + building.footprint[:1] for building in yard.buildings]
        runs += [barrier.line for barrier in yard.barriers]
        runs.append(yard.lot + yard.lot[:1])
        shapes = [shapely.LineString([(x * scale, -y * scale) for x, y in run]) for run in runs if len(run) > 1]
        self._tree = shapely.STRtree(shapes)

    def clear(self, box: QRectF) -> bool:
        """True when no line crosses the box."""
        shape = shapely.box(box.left(), box.top(), box.right(), box.bottom())
        return not len(self._tree.query(shape, predicate="intersects"))


def _fits(box: QRectF, x: float, y: float, radius: float) -> bool:
    """True when all four corners of a box lie within a disc."""
    return all(
        math.hypot(corner.x() - x, corner.y() - y) <= radius
        for corner in (box.topLeft(), box.topRight(), box.bottomLeft(), box.bottomRight())
    )


def _place_key(view: PlanView, plant: Standing, crowd: Crowd) -> Label | None:
    radius = plant.size.spread / 2 * view.scale
    chosen = plant.id in view.selection
    if not plant.planted or (radius < KEY_FLOOR * view.unit and not chosen):
        return None
    size = pill_size(plant.id, view.unit)
    boxes = list(_key_boxes(view, plant, radius, size))
    for box in boxes:
        if crowd.free_of_words(box) and crowd.free_of_crowns(box, plant.id):
            return Label(plant.id, "key", box, plant.id)
    for box in boxes:
        if crowd.free_of_words(box):
            return Label(plant.id, "key", box, plant.id)
    # Kept even where words touch, unless crowns are so small that keys would hide the plan.
    return Label(plant.id, "key", boxes[0], plant.id) if radius >= 2 * KEY_FLOOR * view.unit or chosen else None


def _key_boxes(
    view: PlanView, plant: Standing, radius: float, size: tuple[float, float]
) -> Iterable[QRectF]:
    x, y = _spot(view, plant)
    flat = plant.size.habit in ("flat-trained", "vine")
    if radius >= KEY_INSIDE * view.unit and not flat:
        for part in (-0.5, -0.38, 0.5):
            box = _box(x, y + part * radius, size)
            if _fits(box, x, y, radius):
                yield box
    out = (7.0 * view.unit if flat else radius) + 2.5 * view.unit
    tall, wide = out + size[1] / 2, out + size[0] / 2
    yield _box(x, y - tall, size)
    yield _box(x + wide, y, size)
    yield _box(x - wide, y, size)
    yield _box(x, y + tall, size)
    for dx, dy in ((1, -1), (-1, -1), (1, 1), (-1, 1)):
        yield _box(x + dx * (0.72 * out + size[0] / 2), y + dy * (0.72 * out + size[1] / 2), size)


def _place_name(view: PlanView, plant: Standing, crowd: Crowd, lines: _Lines) -> Label | None:
    radius = plant.size.spread / 2 * view.scale
    if radius < NAME_FLOOR * view.unit and plant.id not in view.selection:
        return None
    text = plant_name(plant)
    face = NAME if plant.planted else STANDING_NAME
    size = text_size(text, face, view.unit)
    for box, inside in _name_boxes(view, plant, radius, size):
        if crowd.free_of_words(box) and crowd.free_of_crowns(box, plant.id) and (inside or lines.clear(box)):
            return Label(plant.id, "name", box, text, face=_on_crown(face) if inside else face)
    return None


def _on_crown(face: Type) -> Type:
    return Type(face.size, face.weight, face.italic, face.ink, "crown")


def _name_boxes(
    view: PlanView, plant: Standing, radius: float, size: tuple[float, float]
) -> Iterable[tuple[QRectF, bool]]:
    """Places for a name, best first, and whether each lies within the crown."""
    x, y = _spot(view, plant)
    u = view.unit
    flat = plant.size.habit in ("flat-trained", "vine")
    if not flat:
        for part in (0.36, 0.48, 0.26, -0.36):
            box = _box(x, y + part * radius, size)
            if abs(part) * radius > size[1] / 2 + 2 * u and _fits(box, x, y, radius * 0.97):
                yield box, True
    out = (6.0 * u if flat else radius) + 2.0 * u
    tall, wide = out + size[1] / 2, out + size[0] / 2 + 1.5 * u
    yield _box(x, y + tall, size), False
    yield _box(x + wide, y, size), False
    yield _box(x - wide, y, size), False
    yield _box(x, y - tall, size), False
    for dx, dy in ((1, 1), (-1, 1), (1, -1), (-1, -1)):
        yield _box(x + dx * (0.75 * out + size[0] / 2), y + dy * (0.75 * out + size[1] / 2), size), False


_Setting = tuple[object, ...]
_kept: list[tuple[_Setting, object, object, tuple[Label, ...]]] = []


def arranged(view: PlanView) -> tuple[Label, ...]:
    """As `arrange`, kept while neither yard, stand, zoom nor what is seen changes."""
    window = view.window
    seen = None if window is None else (
        round((view.origin[0] - window.left()) / max(window.width(), 1.0), 1),
        round((view.origin[1] - window.top()) / max(window.height(), 1.0), 1), window.width(), window.height(),
    )
    setting: _Setting = (view.scale, view.unit, view.units, view.layers, view.selection, seen)
    for known, yard, stand, labels in _kept:
        if yard is view.yard and stand is view.stand and known == setting:
            return labels
    labels = arrange(view)
    _kept.insert(0, (setting, view.yard, view.stand, labels))
    del _kept[3:]
    return labels


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


