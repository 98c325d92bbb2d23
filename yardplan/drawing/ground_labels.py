"""Labels of what stands or lies there: buildings, walls, paving, beds, rows and notes."""

from __future__ import annotations

import math
from collections.abc import Iterator
from typing import Literal

from attrs import frozen
from PySide6.QtCore import QPointF, QRectF

from yardplan.drawing.crowd import Crowd
from yardplan.drawing.label_words import barrier_words, bed_words, building_facts, row_words
from yardplan.drawing.lettering import FACT, GROUND, NAME, NOTE, TITLE, Type, pill_size, text_size
from yardplan.drawing.patterns import area
from yardplan.drawing.rows import run_of
from yardplan.drawing.view import PlanView
from yardplan.plants.stand import StandingRow
from yardplan.yard.ground import Barrier, Building, Note, Outline, Paving
from yardplan.yard.planting import Bed


@frozen
class Label:
    """One label: the thing it names, its box relative to the origin, and how it is set.

    `turned` degrees counter-clockwise; the box of turned words is the one they would fill unturned.
    """

    thing: str
    kind: Literal["key", "name", "ground"]
    box: QRectF
    text: str
    face: Type = NAME
    turned: float = 0.0


def ground_labels(view: PlanView, crowd: Crowd) -> list[Label]:
    """Labels of ground and rows, each noted in the crowd."""
    placed: list[Label] = []
    for label, must in _wanted(view):
        taken = _turned_box(label)
        if not must and not (crowd.free_of_words(taken) and _off_crowns(crowd, label, taken)):
            continue
        crowd.take(taken)
        placed.append(label)
    return placed


def _off_crowns(crowd: Crowd, label: Label, taken: QRectF) -> bool:
    """Words along a slanting line are tested only against other words: their box is mostly empty."""
    return bool(label.turned % 90.0) or crowd.free_of_crowns(taken)


def _turned_box(label: Label) -> QRectF:
    """The upright box round turned words."""
    if not label.turned:
        return label.box
    t = math.radians(label.turned)
    w, h = label.box.width(), label.box.height()
    wide = abs(w * math.cos(t)) + abs(h * math.sin(t))
    high = abs(w * math.sin(t)) + abs(h * math.cos(t))
    middle = label.box.center()
    return QRectF(middle.x() - wide / 2, middle.y() - high / 2, wide, high)


def _wanted(view: PlanView) -> Iterator[tuple[Label, bool]]:
    """Labels in order of need, and whether each is kept at any price."""
    yard, layers = view.yard, view.layers
    if layers.structures:
        for building in yard.buildings:
            yield from ((label, True) for label in _building(view, building))
    if layers.plants:
        for row in view.stand.rows:
            yield from _row(view, row)
    if layers.notes:
        yield from ((_note(view, note), True) for note in yard.notes)
    for bed in yard.beds:
        yield from _tries(_bed(view, bed))
    if layers.structures:
        for paving in yard.pavings:
            yield from _tries(_paving(view, paving))
        for barrier in yard.barriers:
            yield from _tries(_barrier(view, barrier))


def _tries(labels: list[Label]) -> Iterator[tuple[Label, bool]]:
    """At most one label of a list of places: the first that is given is tried."""
    yield from ((label, False) for label in labels[:1])


def _centred(view: PlanView, thing: str, middle: QPointF, text: str, face: Type) -> Label:
    wide, high = text_size(text, face, view.unit)
    return Label(thing, "ground", QRectF(middle.x() - wide / 2, middle.y() - high / 2, wide, high), text, face)


def _middle(view: PlanView, outline: Outline) -> QPointF:
    """A place well inside an outline, relative to the origin."""
    shape = area(outline)
    inside = shape.centroid if shape.contains(shape.centroid) else shape.representative_point()
    return QPointF(inside.x * view.scale, -inside.y * view.scale)


def _building(view: PlanView, building: Building) -> list[Label]:
    """Name and heights in the middle; below the building where it is too small."""
    if len(building.footprint) < 3 or area(building.footprint).is_empty:
        return []
    left, bottom, right, top = (v * view.scale for v in area(building.footprint).bounds)
    title = Type(TITLE.size, TITLE.weight, ink="muted" if building.beyond_lot else "ink", halo="roof")
    facts = Type(FACT.size, ink="muted", halo="roof")
    words = building_facts(building, view.units)
    wide, high = text_size(building.name, title, view.unit)
    facts_wide = text_size(words, facts, view.unit)[0]
    if max(right - left, top - bottom) < 26 * view.unit:
        return []
    if right - left < wide + 8 * view.unit or top - bottom < high + 4 * view.unit:
        below = QPointF((left + right) / 2, -bottom + high / 2 + 3 * view.unit)
        return [_centred(view, building.id, below, building.name, Type(FACT.size, halo="paper"))]
    middle = _middle(view, building.footprint)
    # Above and below the middle, so that the ridge runs free between them.
    gap = 0.62 * high + 2 * view.unit
    if right - left < facts_wide + 8 * view.unit or top - bottom < 3.2 * high:
        return [_centred(view, building.id, middle, building.name, title)]
    return [
        _centred(view, building.id, middle - QPointF(0, gap), building.name, title),
        _centred(view, building.id, middle + QPointF(0, gap), words, facts),
    ]


def _upright(degrees: float) -> float:
    """The direction turned so that words along it read from below or from the right."""
    turned = (degrees + 90.0) % 180.0 - 90.0
    return 90.0 if turned <= -89.9 else turned


def _beside(view: PlanView, line: Outline, off: float) -> tuple[QPointF, float]:
    """The middle of a line's longest edge, `off` pixels to its upper side, and the way words run there."""
    a, b = max(zip(line, line[1:], strict=False), key=lambda e: math.dist(e[0], e[1]))
    turned = _upright(math.degrees(math.atan2(b[1] - a[1], b[0] - a[0])))
    t = math.radians(turned)
    x, y = (a[0] + b[0]) / 2 * view.scale, -(a[1] + b[1]) / 2 * view.scale
    return QPointF(x - math.sin(t) * off, y - math.cos(t) * off), turned


def _row(view: PlanView, standing: StandingRow) -> Iterator[tuple[Label, bool]]:
    """Key at the row's start, words along it."""
    row, u = standing.row, view.unit
    run = run_of(row)
    size = pill_size(row.id, u)
    if len(run) < 2:
        return
    length = math.dist(run[0], run[1]) or 1.0
    back = (size[0] / 2 + 5 * u) / view.scale / length
    x = (run[0][0] - (run[1][0] - run[0][0]) * back) * view.scale
    y = -(run[0][1] - (run[1][1] - run[0][1]) * back) * view.scale
    yield Label(row.id, "key", QRectF(x - size[0] / 2, y - size[1] / 2, *size), row.id), True
    words = row_words(row, view.units)
    wide, high = text_size(words, NAME, u)
    if wide > max(math.dist(a, b) for a, b in zip(run, run[1:], strict=False)) * view.scale * 1.1:
        words = row.plant.cultivar
        wide, high = text_size(words, NAME, u)
    middle, turned = _beside(view, run, standing.size.spread / 2 * view.scale + high / 2 + 4 * u)
    box = QRectF(middle.x() - wide / 2, middle.y() - high / 2, wide, high)
    yield Label(row.id, "name", box, words, NAME, turned), False


def _note(view: PlanView, note: Note) -> Label:
    wide, high = text_size(note.text, NOTE, view.unit)
    x, y = note.place[0] * view.scale, -note.place[1] * view.scale
    return Label(note.id, "ground", QRectF(x, y - high, wide, high), note.text, NOTE)


def _bed(view: PlanView, bed: Bed) -> list[Label]:
    """Words over the bed's upper edge, or under it."""
    shape = area(bed.outline)
    if shape.is_empty:
        return []
    left, _, right, top = (v * view.scale for v in shape.bounds)
    words = bed_words(bed, view.units)
    if right - left < 30 * view.unit:
        return []
    if text_size(words, GROUND, view.unit)[0] > max(right - left, 120 * view.unit):
        words = bed.name
    high = text_size(words, GROUND, view.unit)[1]
    return [_centred(view, bed.id, QPointF((left + right) / 2, -top - high / 2 - 2 * view.unit), words, GROUND)]


def _paving(view: PlanView, paving: Paving) -> list[Label]:
    """The name in the middle where it fits, along the longer side of a narrow piece."""
    shape = area(paving.outline)
    if shape.is_empty:
        return []
    left, bottom, right, top = (v * view.scale for v in shape.bounds)
    words = paving.name or paving.kind
    face = Type(GROUND.size, ink="muted", halo="water" if paving.kind in ("pool", "pond") else "stone")
    wide, high = text_size(words, face, view.unit)
    label = _centred(view, paving.id, _middle(view, paving.outline), words, face)
    if right - left >= wide + 6 * view.unit and top - bottom >= high:
        return [label]
    if top - bottom >= wide + 6 * view.unit and right - left >= high:
        return [Label(label.thing, "ground", label.box, words, face, 90.0)]
    return []


def _barrier(view: PlanView, barrier: Barrier) -> list[Label]:
    """Words along the longest edge, on its upper side."""
    words = barrier_words(barrier, view.units)
    wide, high = text_size(words, GROUND, view.unit)
    if len(barrier.line) < 2:
        return []
    longest = max(math.dist(a, b) for a, b in zip(barrier.line, barrier.line[1:], strict=False)) * view.scale
    if longest < wide + 20 * view.unit:
        return []
    half = barrier.thickness / 2 * view.scale if barrier.kind != "fence" else 3 * view.unit
    middle, turned = _beside(view, barrier.line, half + high / 2 + 3 * view.unit)
    box = QRectF(middle.x() - wide / 2, middle.y() - high / 2, wide, high)
    return [Label(barrier.id, "ground", box, words, GROUND, turned)]
