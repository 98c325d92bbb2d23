"""The whole plan, layer by layer; each layer also on its own, so that a canvas can keep still ones."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtGui import QPainter

from yardplan.drawing.dimension_lines import draw_dimension_lines
from yardplan.drawing.furniture import draw_grid
from yardplan.drawing.labels import draw_labels
from yardplan.drawing.marks import draw_marks
from yardplan.drawing.plants import draw_single_plants
from yardplan.drawing.rows import draw_bed_plants, draw_row
from yardplan.drawing.services import draw_service
from yardplan.drawing.shade import draw_shadows
from yardplan.drawing.shapes import square
from yardplan.drawing.structures import draw_barrier, draw_building, draw_gate, draw_lot
from yardplan.drawing.style import FINE, HAIR, colour, pen
from yardplan.drawing.surfaces import draw_bed, draw_paving
from yardplan.drawing.view import PlanView


def draw_yard(painter: QPainter, view: PlanView) -> None:
    """Ground, plants, labels and marks, in that order. Paper and frame are the caller's."""
    draw_ground(painter, view)
    draw_plants(painter, view)
    draw_words(painter, view)
    draw_findings(painter, view)


def draw_ground(painter: QPainter, view: PlanView) -> None:
    """All that is there before a plant is set: grid, paving, beds, light, services, structures, lot line."""
    draw_flat(painter, view)
    if view.only is None:
        draw_shade(painter, view)
    draw_built(painter, view)


def draw_flat(painter: QPainter, view: PlanView) -> None:
    """What lies flat, under all light and shade: pictures, grid, paving, beds."""
    _ready(painter)
    if view.yard.pictures:
        # Here, not above: a window without a picture does not need what reads pictures.
        from yardplan.drawing.under_pictures import draw_pictures

        draw_pictures(painter, view)
    if view.layers.grid and view.only is None:
        draw_grid(painter, view)
    _draw_surfaces(painter, view)


def draw_shade(painter: QPainter, view: PlanView) -> None:
    """The light of a season or day, and the shadows of a moment."""
    _ready(painter)
    if view.layers.light:
        # Here, not above: light brings the sun's modules, which a window does not need to open.
        from yardplan.drawing.light_labels import draw_light_labels, light_labels
        from yardplan.drawing.light_picture import draw_light

        draw_light(painter, view)
        draw_light_labels(painter, view, light_labels(view))
    if view.layers.shadows:
        draw_shadows(painter, view)


def draw_built(painter: QPainter, view: PlanView) -> None:
    """What stands on the ground besides plants: services, lot line, structures."""
    _ready(painter)
    if view.layers.services:
        for service in view.yard.services:
            if view.draws(service.id):
                draw_service(painter, view, service)
    draw_lot(painter, view)
    if view.layers.structures:
        _draw_structures(painter, view)


def _draw_surfaces(painter: QPainter, view: PlanView) -> None:
    if view.layers.structures:
        for paving in view.yard.pavings:
            if view.draws(paving.id):
                draw_paving(painter, view, paving)
    for bed in view.yard.beds:
        if view.draws(bed.id):
            draw_bed(painter, view, bed)


def _draw_structures(painter: QPainter, view: PlanView) -> None:
    for barrier in view.yard.barriers:
        if view.draws(barrier.id):
            draw_barrier(painter, view, barrier)
    for building in view.yard.buildings:
        if view.draws(building.id):
            draw_building(painter, view, building)
    for gate in view.yard.gates:
        if view.draws(gate.id):
            draw_gate(painter, view, gate)


def draw_plants(painter: QPainter, view: PlanView) -> None:
    """Planted beds, rows, empty pots, single plants and standing trees; dimension lines over all."""
    _ready(painter)
    if view.layers.plants:
        _draw_planted(painter, view)
    draw_dimension_lines(painter, view)


def _draw_planted(painter: QPainter, view: PlanView) -> None:
    for bed in view.stand.beds:
        if view.draws(bed.id):
            draw_bed_plants(painter, view, bed)
    for row in view.stand.rows:
        if view.draws(row.id):
            draw_row(painter, view, row)
    _draw_empty_pots(painter, view)
    draw_single_plants(painter, view)


def _draw_empty_pots(painter: QPainter, view: PlanView) -> None:
    """Containers that no plant stands in; the others come with their plants."""
    if not view.yard.containers:
        return
    used = {plant.container.id for plant in view.stand.plants if plant.container}
    for pot in view.yard.containers:
        if pot.id in used or not view.draws(pot.id):
            continue
        side = max(pot.diameter * view.scale, 7 * view.unit)
        painter.save()
        painter.translate(view.at(pot.place))
        painter.setBrush(colour("paper"))
        painter.setPen(pen("ink", FINE, view.unit))
        painter.drawPath(square(side))
        painter.setPen(pen("ink", HAIR, view.unit))
        painter.drawPath(square(max(side - 5 * view.unit, 2 * view.unit)))
        painter.restore()


def draw_words(painter: QPainter, view: PlanView) -> None:
    """Keys, names, notes and sizes."""
    _ready(painter)
    draw_labels(painter, view)


def draw_findings(painter: QPainter, view: PlanView) -> None:
    """Marks of findings, partner lines, clear ground and what is selected."""
    _ready(painter)
    draw_marks(painter, view)


def _ready(painter: QPainter) -> None:
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setRenderHint(QPainter.RenderHint.TextAntialiasing)
    painter.setBrush(Qt.BrushStyle.NoBrush)
