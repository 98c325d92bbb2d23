"""Labels of what stands or lies there: buildings, walls, paving, beds, rows and notes."""

from __future__ import annotations

import math
from collections.abc import Iterator
from itertools import pairwise
from typing import Literal

from attrs import frozen
from PySide6.QtCore import QPointF, QRectF

from yardplan.drawing.breaking import broken
from yardplan.drawing.crowd import Crowd
from yardplan.drawing.hard_lines import HardLines
from yardplan.drawing.label_words import barrier_words, bed_count_words, bed_words, building_facts, row_words
from yardplan.drawing.lettering import FACT, GROUND, NAME, NOTE, TITLE, Type, pill_size, text_size
from yardplan.drawing.patterns import LEAST_EDGE, area
from yardplan.drawing.roofs import roof_plan
from yardplan.drawing.rows import run_of
from yardplan.drawing.view import PlanView
from yardplan.language import tr
from yardplan.plants.stand import StandingRow
from yardplan.yard.ground import Barrier, Building, Note, Outline, Paving
from yardplan.yard.planting import Bed

#: Notes are broken into lines of this many style units.
_NOTE_WIDE = 150.0


@frozen
class Label:
    """One label: the thing it names, its box relative to the origin, and how it is set.

    `turned` degrees counter-clockwise; the box of turned words is the one they would fill unturned.
    `aside` True for words that stand beside their line and should cross no other.
    """

    thing: str
    kind: Literal["key", "bare key", "name", "ground"]
    box: QRectF
    text: str
    face: Type = NAME
    turned: float = 0.0
    aside: bool = False


def box_round(x: float, y: float, size: tuple[float, float]) -> QRectF:
    """A box of that width and height round its middle."""
    return QRectF(x - size[0] / 2, y - size[1] / 2, size[0], size[1])


def ground_labels(view: PlanView, crowd: Crowd, lines: HardLines) -> list[Label]:
    """Labels of ground and rows, each noted in the crowd: the first free place of those wanted."""
    placed: list[Label] = []
    for places, must in _wanted(view):
        label = next((place for place in places if _free(view, crowd, lines, place)), None)
        if label is None and must and places:
            off_words = (place for place in places if crowd.free_of_words(upright_box(place)))
            label = next(off_words, places[0])
        if label is not None:
            crowd.take(upright_box(label))
            placed.append(label)
    return placed


def _free(view: PlanView, crowd: Crowd, lines: HardLines, label: Label) -> bool:
    taken = upright_box(label)
    if not (crowd.free_of_words(taken) and in_window(view, taken) and _off_crowns(crowd, label, taken)):
        return False
    # Names in the middle of a building or paving may be crossed by its own lines; those beside may not.
    return not label.aside or label.turned % 90.0 != 0.0 or lines.clear(taken)


def in_window(view: PlanView, box: QRectF) -> bool:
    """True when a box, relative to the origin, is wholly in the window or its middle is outside it."""
    if view.window is None:
        return True
    shifted = box.translated(*view.origin)
    return view.window.contains(shifted) or not view.window.intersects(shifted)


def _off_crowns(crowd: Crowd, label: Label, taken: QRectF) -> bool:
    """Words along a slanting line are tested only against other words: their box is mostly empty."""
    return bool(label.turned % 90.0) or crowd.free_of_crowns(taken)


def upright_box(label: Label) -> QRectF:
    """The upright box round turned words."""
    if not label.turned:
        return label.box
    t = math.radians(label.turned)
    w, h = label.box.width(), label.box.height()
    wide = abs(w * math.cos(t)) + abs(h * math.sin(t))
    high = abs(w * math.sin(t)) + abs(h * math.cos(t))
    middle = label.box.center()
    return QRectF(middle.x() - wide / 2, middle.y() - high / 2, wide, high)


Places = tuple[list[Label], bool]


def _wanted(view: PlanView) -> Iterator[Places]:
    """For each label, in order of need, its places, best first, and whether it is kept at any price."""
    yard, layers = view.yard, view.layers
    if layers.structures:
        for building in yard.buildings:
            yield from (([label], True) for label in _building(view, building))
    if layers.plants:
        for row in view.stand.rows:
            yield from _row(view, row)
    if layers.notes:
        yield from ((_note(view, note), True) for note in yard.notes)
    for bed in yard.beds:
        yield _bed(view, bed), False
    if layers.structures:
        for paving in yard.pavings:
            yield _paving(view, paving), False
        for barrier in yard.barriers:
            yield _barrier(view, barrier), False


def _centred(view: PlanView, thing: str, middle: QPointF, text: str, face: Type) -> Label:
    box = box_round(middle.x(), middle.y(), text_size(text, face, view.unit))
    return Label(thing, "ground", box, text, face)


def _middle(view: PlanView, outline: Outline) -> QPointF:
    """A place well inside an outline, relative to the origin."""
    shape = area(outline)
    inside = shape.centroid if shape.contains(shape.centroid) else shape.representative_point()
    return QPointF(inside.x * view.scale, -inside.y * view.scale)


def _roof_middle(view: PlanView, building: Building) -> QPointF:
    """The middle of the longest ridge, so that words stand on both sides of it; else of the footprint."""
    ridges = roof_plan(building).ridges if building.roof != "lean-to" else ()
    if not ridges:
        return _middle(view, building.footprint)
    (x0, y0), (x1, y1) = max(ridges, key=lambda ridge: math.dist(*ridge))
    return QPointF((x0 + x1) / 2 * view.scale, -(y0 + y1) / 2 * view.scale)


#: Room for the lengths of walls beside the heights of a building, style units.
_WALL_LENGTHS = 34.0


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
    middle = _roof_middle(view, building)
    # Above and below the middle, so that the ridge runs free between them.
    gap = 0.62 * high + 2 * view.unit
    # On paper the lengths of the walls stand inside them.
    beside = _WALL_LENGTHS if view.vector and not building.beyond_lot else 8.0
    if right - left < facts_wide + beside * view.unit or top - bottom < 3.2 * high:
        return [_centred(view, building.id, middle, building.name, title)]
    return [
        _centred(view, building.id, middle - QPointF(0, gap), building.name, title),
        _centred(view, building.id, middle + QPointF(0, gap), words, facts),
    ]


def _upright(degrees: float) -> float:
    """The direction turned so that words along it read from below or from the right."""
    turned = (degrees + 90.0) % 180.0 - 90.0
    return 90.0 if turned <= -89.9 else turned


def _beside(line: Outline, view: PlanView, off: float, part: float = 0.5) -> tuple[QPointF, float]:
    """A place along a line's longest edge, `off` pixels to its upper side, and the way words run there."""
    a, b = max(pairwise(line), key=lambda e: math.dist(e[0], e[1]))
    turned = _upright(math.degrees(math.atan2(b[1] - a[1], b[0] - a[0])))
    t = math.radians(turned)
    x = (a[0] + (b[0] - a[0]) * part) * view.scale
    y = -(a[1] + (b[1] - a[1]) * part) * view.scale
    return QPointF(x - math.sin(t) * off, y - math.cos(t) * off), turned


def _alongside(
    view: PlanView, thing: str, line: Outline, words: str, face: Type, half: float
) -> list[Label]:
    """Places for words along a line: either side, in the middle or nearer an end."""
    size = text_size(words, face, view.unit)
    off = half + size[1] / 2 + 3 * view.unit
    places = []
    for part in (0.5, 0.3, 0.7):
        for side in (off, -off):
            middle, turned = _beside(line, view, side, part)
            box = box_round(middle.x(), middle.y(), size)
            places.append(Label(thing, "ground", box, words, face, turned, aside=True))
    return places


def _longest(line: Outline) -> float:
    return max(math.dist(a, b) for a, b in pairwise(line))


def _row(view: PlanView, standing: StandingRow) -> Iterator[Places]:
    """Key at the row's start, words along it."""
    row, u = standing.row, view.unit
    run = run_of(row)
    if len(run) < 2:
        return
    size = pill_size(row.id, u)
    yield [_row_key(view, row.id, ends, size) for ends in (run[:2], run[:-3:-1])], True
    words = row_words(row, view.units)
    if text_size(words, NAME, u)[0] > _longest(run) * view.scale * 1.1:
        words = row.plant.cultivar
    half = standing.size.spread / 2 * view.scale + u
    yield _alongside(view, row.id, run, words, NAME, half), False


def _row_key(view: PlanView, row_id: str, ends: Outline, size: tuple[float, float]) -> Label:
    """A key just beyond the first of two places, in line with them."""
    (x0, y0), (x1, y1) = ends[0], ends[1]
    length = max(math.dist(ends[0], ends[1]), LEAST_EDGE)
    back = (size[0] / 2 + 5 * view.unit) / view.scale / length
    x, y = (x0 - (x1 - x0) * back) * view.scale, -(y0 - (y1 - y0) * back) * view.scale
    return Label(row_id, "key", box_round(x, y, size), row_id)


def _note(view: PlanView, note: Note) -> list[Label]:
    """Words broken into short lines at their place: above it to the right, or on another side of it."""
    text = "\n".join(broken(note.text, _NOTE_WIDE * view.unit, NOTE, view.unit))
    wide, high = text_size(text, NOTE, view.unit)
    x, y = note.place[0] * view.scale, -note.place[1] * view.scale
    places = [
        QRectF(x, y - high, wide, high), QRectF(x, y, wide, high),
        QRectF(x - wide, y - high, wide, high), QRectF(x - wide, y, wide, high),
    ]
    return [Label(note.id, "ground", _pushed_in(view, box), text, NOTE) for box in places]


def _pushed_in(view: PlanView, box: QRectF) -> QRectF:
    """The box moved back into the window where it would run out of it to the right or below."""
    if view.window is None:
        return box
    gap = 3 * view.unit
    right, bottom = view.window.right() - view.origin[0] - gap, view.window.bottom() - view.origin[1] - gap
    x = right - box.width() if box.left() < right < box.right() else box.left()
    y = bottom - box.height() if box.top() < bottom < box.bottom() else box.top()
    return QRectF(x, y, box.width(), box.height())


def _bed(view: PlanView, bed: Bed) -> list[Label]:
    """Words over the bed's upper edge, or under it; fewer where there is little room, at last the name."""
    shape = area(bed.outline)
    if shape.is_empty:
        return []
    left, bottom, right, top = (v * view.scale for v in shape.bounds)
    if right - left < 30 * view.unit:
        return []
    places = []
    for words in filter(None, (bed_words(bed, view.units), bed_count_words(bed), bed.name)):
        wide, high = text_size(words, GROUND, view.unit)
        if wide > max(right - left, 130 * view.unit):
            continue
        off = high / 2 + 2 * view.unit
        for y in (-top - off, -bottom + off):
            places.append(_centred(view, bed.id, QPointF((left + right) / 2, y), words, GROUND))
    return places


def _paving(view: PlanView, paving: Paving) -> list[Label]:
    """The name in the middle where it fits, along the longer side of a narrow piece."""
    shape = area(paving.outline)
    if shape.is_empty:
        return []
    left, bottom, right, top = (v * view.scale for v in shape.bounds)
    words = paving.name or tr(paving.kind)
    face = Type(GROUND.size, ink="muted", halo="water" if paving.kind in ("pool", "pond") else "stone")
    wide, high = text_size(words, face, view.unit)
    label = _centred(view, paving.id, _middle(view, paving.outline), words, face)
    if right - left >= wide + 6 * view.unit and top - bottom >= high:
        return [label]
    if top - bottom >= wide + 6 * view.unit and right - left >= high:
        return [Label(label.thing, "ground", label.box, words, face, 90.0)]
    return []


def _barrier(view: PlanView, barrier: Barrier) -> list[Label]:
    """Words along the longest edge."""
    words = barrier_words(barrier, view.units)
    if len(barrier.line) < 2:
        return []
    if _longest(barrier.line) * view.scale < text_size(words, GROUND, view.unit)[0] + 20 * view.unit:
        return []
    half = barrier.thickness / 2 * view.scale if barrier.kind != "fence" else 3 * view.unit
    return _alongside(view, barrier.id, barrier.line, words, GROUND, half)
