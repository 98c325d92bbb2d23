"""Marks of findings. Form, hatch and words carry the meaning; colour only repeats it.

Conflict: heavy line and hatch over the wrong place, with words. Caution: a dashed ring, with words where
there is room. Advice: a small tick. What has not been computed again yet is drawn pale.
"""

from __future__ import annotations

from collections.abc import Iterable
from itertools import pairwise

import numpy as np
from attrs import evolve
from PySide6.QtCore import QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QPainter

from yardplan.checks.finding import Finding, Mark, Weight
from yardplan.drawing.crowd import Boxed, Boxes, Crowd, Room
from yardplan.drawing.ground_labels import Label, upright_box
from yardplan.drawing.labels import lately_arranged
from yardplan.drawing.lettering import SAID, boxed_size, draw_boxed
from yardplan.drawing.outlines import Outlines
from yardplan.drawing.partners import draw_clear_ground, draw_partners
from yardplan.drawing.patterns import hatch, steady
from yardplan.drawing.plants import look_of, stamp
from yardplan.drawing.reach import draw_reaches
from yardplan.drawing.selection import draw_selection
from yardplan.drawing.shapes import polyline
from yardplan.drawing.style import BOLD, CAUTION_DASH, FINE, HEAVY, MEDIUM, THIN, colour, pen
from yardplan.drawing.symbols import Dress
from yardplan.drawing.view import PlanView

#: How strongly a finding that is still being computed is drawn.
_PALE = 0.4
_INKS = {Weight.CONFLICT: "conflict", Weight.CAUTION: "caution", Weight.ADVICE: "ink"}
_ORDER = {Weight.CONFLICT: 0, Weight.CAUTION: 1, Weight.ADVICE: 2}
#: At most this many boxes of words, so that the plan stays readable; the list beside it holds them all.
MOST_BOXES = 14
#: Words wider than this share of the window are not laid over others: the list beside it says them.
_MOST_SHARE = 0.5
#: Where there are more cautions than this, only those on what is selected speak.
MOST_CAUTIONS = 4


def draw_marks(painter: QPainter, view: PlanView) -> None:
    """Clear ground, marks, partner lines, what is selected, and the words of marks on top."""
    outlines = Outlines(view)
    draw_clear_ground(painter, view)
    if view.layers.marks:
        for finding in _once_each(view.findings):
            _draw_mark(painter, view, outlines, finding)
    draw_reaches(painter, view)
    draw_selection(painter, view, outlines)
    speaks = view.layers.marks and view.said and view.findings
    if not speaks and not view.partners:
        return
    taken = _room(view)
    if view.layers.partners:
        draw_partners(painter, view, taken)
    if speaks:
        for finding, box, around in place_words(view, outlines, taken):
            _draw_words(painter, view, finding, box, around)


def draw_said(painter: QPainter, view: PlanView) -> list[QRectF]:
    """Only the words of marks, for a canvas that keeps the marks in a picture; returns where ink was left."""
    inked: list[QRectF] = []
    if view.layers.marks and view.said and view.findings:
        outlines = Outlines(view)
        for finding, box, around in place_words(view, outlines, _room(view)):
            _draw_words(painter, view, finding, box, around)
            reach = QRectF(around.center(), box.center()).normalized()
            inked.append(box.united(reach).adjusted(-4, -4, 4, 4))
    return inked


def _once_each(findings: Iterable[Finding]) -> list[Finding]:
    """Findings to draw, the gravest last; of those that would draw the same outline only one."""
    drawn: dict[object, Finding] = {}
    for finding in findings:
        drawn.setdefault((finding.weight, finding.things, finding.marks, finding.fresh), finding)
    return sorted(drawn.values(), key=lambda f: -_ORDER[f.weight])


def _strength(finding: Finding) -> float:
    return 1.0 if finding.fresh else _PALE


def _draw_mark(painter: QPainter, view: PlanView, outlines: Outlines, finding: Finding) -> None:
    painter.save()
    painter.setOpacity(_strength(finding))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    draw = {Weight.CONFLICT: _conflict, Weight.CAUTION: _caution, Weight.ADVICE: _advice}
    draw[finding.weight](painter, view, outlines, finding)
    painter.restore()


def _conflict(painter: QPainter, view: PlanView, outlines: Outlines, finding: Finding) -> None:
    for mark in finding.marks:
        _draw_place(painter, view, mark)
    # Only plants get the heavy outline; a house or fence that is in the way is not at fault.
    for thing in finding.things:
        if outlines.is_planted(thing):
            _outline(painter, view, outlines, thing, "conflict")


def _outline(painter: QPainter, view: PlanView, outlines: Outlines, thing: str, dress: Dress) -> None:
    """A plant's outline is stamped, any other thing's painted."""
    plant = outlines.plant(thing)
    if plant is not None:
        stamp(painter, view, plant.place, evolve(look_of(view, plant), dress=dress, mature=0.0, pot=0.0))
        return
    path = outlines.of(thing, 4.0 * view.unit if dress == "caution" else 0.0)
    if path is not None:
        heavy = dress == "conflict"
        painter.setPen(pen(dress, HEAVY if heavy else MEDIUM, view.unit, () if heavy else CAUTION_DASH))
        painter.drawPath(path)


def _draw_place(painter: QPainter, view: PlanView, mark: Mark) -> None:
    """The wrong place: an area hatched, a line heavy, a point ringed."""
    u = view.unit
    corners = view.corners(mark.points)
    if mark.shape == "area" and len(corners) > 2:
        painter.setPen(pen("conflict", 1.0, u))
        for degrees in (45.0, 135.0):
            lines = hatch(mark.points, degrees, steady(view.length(4.0)))
            painter.drawLines([QLineF(view.at(a), view.at(b)) for a, b in lines])
        painter.setPen(pen("conflict", MEDIUM, u))
        painter.drawPolygon(view.polygon(mark.points))
    elif mark.shape == "line" and len(corners) > 1:
        painter.setPen(pen("conflict", BOLD, u))
        painter.drawPath(polyline(corners))
    else:
        painter.setPen(pen("conflict", HEAVY, u))
        for corner in corners:
            painter.drawEllipse(corner, 6 * u, 6 * u)


def _caution(painter: QPainter, view: PlanView, outlines: Outlines, finding: Finding) -> None:
    for thing in finding.things[:1]:
        _outline(painter, view, outlines, thing, "caution")
    painter.setPen(pen("caution", MEDIUM, view.unit, CAUTION_DASH))
    for mark in finding.marks:
        if mark.shape != "point" and len(mark.points) > 1:
            _draw_run(painter, view, mark)


def _draw_run(painter: QPainter, view: PlanView, mark: Mark) -> None:
    """The outline of an area, or a line broken where words stand."""
    corners = view.corners(mark.points)
    if mark.shape == "area":
        painter.drawPath(polyline(corners, closed=True))
        return
    room = _room(view)
    for a, b in pairwise(corners):
        for start, end in room.gaps(a, b):
            painter.drawLine(start, end)


def _advice(painter: QPainter, view: PlanView, outlines: Outlines, finding: Finding) -> None:
    """A small tick at the upper right of the thing."""
    box = outlines.box(finding.things[0]) if finding.things else None
    if box is None:
        return
    u = view.unit
    inward = 0.147 * min(box.width(), box.height())
    corner = QPointF(box.right() - inward + 2 * u, box.top() + inward - 2 * u)
    painter.setPen(pen("ink", MEDIUM, u))
    painter.drawLine(corner, corner + QPointF(6 * u, -6 * u))
    painter.drawLine(corner + QPointF(6 * u, -6 * u), corner + QPointF(6 * u, -1.5 * u))


_rooms: list[tuple[tuple[object, ...], tuple[Label, ...], Crowd]] = []
_clears: list[tuple[tuple[QRectF, ...], Boxed]] = []


def _room(view: PlanView) -> Room:
    """Room beside the words that stand already, so that boxes do not cover keys and names."""
    labels = lately_arranged(view) if view.layers.labels else ()
    # As many plants at one zoom: a crowd kept from before is off by what is being dragged at most.
    setting = (view.scale, view.unit, view.stand.year, len(view.stand.plants))
    under = next((crowd for key, known, crowd in _rooms if known is labels and key == setting), None)
    if under is None:
        under = Crowd(64.0 * view.unit)
        for label in labels:
            under.take(upright_box(label))
        for plant in view.stand.plants:
            x, y = plant.place[0] * view.scale, -plant.place[1] * view.scale
            under.stand(x, y, plant.size.spread / 2 * view.scale, plant.id)
        _rooms.insert(0, (setting, labels, under))
        del _rooms[3:]
    room = Room(under, view.origin, _clear(view))
    for box in view.taken:
        room.take(box)
    return room


def _clear(view: PlanView) -> Boxed:
    """What the view keeps clear, gathered once for all marks of one picture."""
    for known, boxes in _clears:
        if known is view.keep_clear:
            return boxes
    made = Boxed(view.keep_clear)
    _clears.insert(0, (view.keep_clear, made))
    del _clears[2:]
    return made


Placed = tuple[Finding, QRectF, QRectF]


def place_words(view: PlanView, outlines: Outlines, taken: Room) -> list[Placed]:
    """A box for each finding that has words, what is selected first, then conflicts.

    One box a thing; cautions speak only of what is selected or where they are few. The list holds the rest.
    """
    placed: list[Placed] = []
    spoken: set[str] = set()
    for finding in _speaking(view):
        first = finding.things[0] if finding.things else ""
        if len(placed) >= MOST_BOXES or (first in spoken and not _chosen(view, finding)):
            continue
        spot = _spot(view, outlines, finding, boxed_size(view.said[finding.key], SAID, view.unit), taken)
        if spot is not None:
            spoken.add(first)
            taken.take(spot[0])
            placed.append((finding, *spot))
    return placed


def _speaking(view: PlanView) -> list[Finding]:
    """Findings that may have their words on the plan, the gravest first."""
    said = [f for f in view.findings if view.said.get(f.key) and f.weight is not Weight.ADVICE]
    cautions = sum(f.weight is Weight.CAUTION for f in said)
    said = [
        f for f in said
        if f.weight is Weight.CONFLICT or cautions <= MOST_CAUTIONS or _chosen(view, f)
    ]
    return sorted(said, key=lambda f: (_ORDER[f.weight], not _chosen(view, f)))


def _chosen(view: PlanView, finding: Finding) -> bool:
    return bool(view.selection & set(finding.things))


def _spot(
    view: PlanView, outlines: Outlines, finding: Finding, size: tuple[float, float], taken: Room
) -> tuple[QRectF, QRectF] | None:
    """The first free box round the finding's place, and the box round that."""
    round_it = _anchor(view, outlines, finding)
    if round_it is None or (view.window is not None and not view.window.intersects(round_it)):
        return None
    # A caution keeps close to its place or to the list; a conflict may stand off with a leader.
    reach = 4 if finding.weight is Weight.CONFLICT or _chosen(view, finding) else 2
    boxes = _inside(view, _candidates(round_it, size, view.unit, reach))
    box = _first_free(view, finding, boxes, taken)
    return None if box is None else (box, round_it)


def _first_free(view: PlanView, finding: Finding, boxes: Boxes, taken: Room) -> QRectF | None:
    """The box of the frame before while it is free, else the first of all; free of crowns where there is one.

    A conflict takes the first box even where none is free, unless it would hide a small sheet.
    """
    spots, key = view.spots, finding.key
    before = spots.of(key) if spots is not None else None
    if before is not None and before < len(boxes):
        box = QRectF(*boxes[before].tolist())
        if taken.free(box):
            return box
    first: tuple[int, QRectF] | None = None
    for number, box in taken.numbered_free(np.arange(len(boxes)), boxes):
        if taken.free_of_crowns(box):
            first = (number, box)
            break
        first = first or (number, box)
    if first is None:
        worst = QRectF(*boxes[0].tolist())
        small = view.window is not None and worst.width() > _MOST_SHARE * view.window.width()
        return worst if finding.weight is Weight.CONFLICT and not small else None
    if spots is not None:
        spots.keep(key, first[0])
    return first[1]


def _anchor(view: PlanView, outlines: Outlines, finding: Finding) -> QRectF | None:
    """The box round the first thing, or round the finding's marks where it has none."""
    box = outlines.box(finding.things[0]) if finding.things else None
    if box is not None:
        return box
    points = [point for mark in finding.marks for point in mark.points]
    return view.polygon(points).boundingRect() if points else None


#: Ways from a place to its words: below, above, right, left, below right and left; shares aside and down.
_WAYS = np.array(((0.0, 1.0), (0.0, -1.0), (1.0, 0.0), (-1.0, 0.0), (0.7, 1.0), (-0.7, 1.0)))
#: How far off words stand, style units: close by first.
_OFF = np.array((6.0, 30.0, 54.0, 84.0))


def _candidates(around: QRectF, size: tuple[float, float], u: float, far: int = 4) -> Boxes:
    """Places below, above, right, left of a box, then up to `far` times farther out."""
    middle, half = np.array(around.center().toTuple()), np.array(size) / 2
    reach = np.array((around.width(), around.height())) / 2 + half + (_OFF[:far] * u)[:, None]
    centres = (middle + reach[:, None, :] * _WAYS).reshape(-1, 2)
    return np.column_stack((centres - half, np.broadcast_to(size, centres.shape)))


def _inside(view: PlanView, boxes: Boxes) -> Boxes:
    """The boxes pushed back into the window."""
    window, margin = view.window, 4 * view.unit
    if window is None:
        return boxes
    least = np.array(window.topLeft().toTuple()) + margin
    most = np.array((window.right(), window.bottom())) - boxes[0, 2:] - margin
    boxes[:, :2] = np.minimum(np.maximum(boxes[:, :2], least), most)
    return boxes


def _draw_words(painter: QPainter, view: PlanView, finding: Finding, box: QRectF, around: QRectF) -> None:
    """The words in a box, and a thin leader where the box stands away from its place."""
    ink, reach = _INKS[finding.weight], 14 * view.unit
    painter.save()
    painter.setOpacity(max(_strength(finding), 0.6))
    if not box.adjusted(-reach, -reach, reach, reach).intersects(around):
        anchor = around.center()
        painter.setPen(pen(ink, THIN, view.unit))
        painter.drawLine(_edge_point(box, anchor), anchor)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(colour(ink))
        painter.drawEllipse(anchor, 2.2 * view.unit, 2.2 * view.unit)
    face = evolve(SAID, ink=ink) if finding.weight is not Weight.ADVICE else SAID
    draw_boxed(painter, view, box, view.said[finding.key], face, ink, FINE)
    painter.restore()


def _edge_point(box: QRectF, towards: QPointF) -> QPointF:
    """The point of a box nearest to a place."""
    if box.top() <= towards.y() <= box.bottom():
        return QPointF(box.left() if towards.x() < box.left() else box.right(), towards.y())
    x = min(max(towards.x(), box.left()), box.right())
    return QPointF(x, box.top() if towards.y() < box.top() else box.bottom())
