"""The key to the plan: every symbol and line that the yard uses, drawn as on the plan, with its meaning."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from typing import Any

from attrs import evolve, frozen
from PySide6.QtCore import QPointF
from PySide6.QtGui import QPainter

from yardplan.drawing.breaking import broken
from yardplan.drawing.lettering import Type, text_size
from yardplan.drawing.rows import draw_row
from yardplan.drawing.services import SERVICE_LINES, draw_service
from yardplan.drawing.structures import draw_barrier, draw_building, draw_gate, draw_lot
from yardplan.drawing.style import UNIT_MM
from yardplan.drawing.surfaces import draw_bed, draw_paving
from yardplan.drawing.symbols import Look, draw_symbol
from yardplan.drawing.view import PlanView, bare_view
from yardplan.language import later, tr
from yardplan.plants.crop import Habit, Size
from yardplan.plants.stand import Stand, StandingRow
from yardplan.sheets.cautions import cautions
from yardplan.sheets.document import Page
from yardplan.sheets.paper import Paper
from yardplan.sheets.surface import Surface
from yardplan.sheets.tables import MARGIN, draw_page_title, put
from yardplan.yard.ground import Barrier, Building, Gate, Outline, Paving, Service
from yardplan.yard.planting import Bed, PlantKey, Row
from yardplan.yard.yard import Yard

HABIT_WORDS: dict[Habit, str] = {
    "central leader": later("tree with a central leader"), "open centre": later("open-centre tree"),
    "bush": later("bush"), "cane": later("canes"), "vine": later("vine on its wire"),
    "flat-trained": later("trained flat along its wall"), "mat": later("strawberries and other mats"),
    "conifer": later("conifer"), "shade tree": later("large tree"), "column": later("column"),
    "clump": later("clump of large leaves"),
}
_TEXT, _HEAD = Type(12.0), Type(12.0, "bold")
#: A line of the cautions, millimetres.
_CAUTION_LINE = 4.4
#: Cell of one entry and its picture, millimetres.
_CELL_WIDE, _CELL_HIGH, _PICTURE = 62.0, 17.0, 13.0
_TOP = MARGIN + 14.0

Draw = Callable[[Surface, QPointF, float], None]


@frozen(eq=False)
class Entry:
    """A picture, drawn round a place with a radius in device pixels, and its meaning."""

    words: str
    draw: Draw


def _symbol(look: Look) -> Draw:
    """A plant's symbol; the look's radii are shares of the picture's."""

    def draw(surface: Surface, middle: QPointF, radius: float) -> None:
        surface.painter.save()
        surface.painter.translate(middle)
        draw_symbol(surface.painter, evolve(
            look, radius=look.radius * radius, mature=look.mature * radius, pot=look.pot * radius,
            unit=surface.unit,
        ))
        surface.painter.restore()

    return draw


def _small_plan(draw: Callable[[QPainter, PlanView], None]) -> Draw:
    """A thing about two metres wide round (0, 0), drawn by the plan's own code."""

    def drawn(surface: Surface, middle: QPointF, radius: float) -> None:
        view = bare_view(surface.unit, vector=True)
        draw(surface.painter, evolve(view, scale=radius, origin=(middle.x(), middle.y())))

    return drawn


_LINE: Outline = ((-1.3, 0.0), (1.3, 0.0))
_BOX: Outline = ((-1.0, -0.7), (1.0, -0.7), (1.0, 0.7), (-1.0, 0.7))


def entries(yard: Yard, stand: Stand) -> tuple[Entry, ...]:
    """What the plan of this yard shows, plants first."""
    return (*_plants(stand), *_rows(stand), *_ground(yard), *_services(yard))


def _plants(stand: Stand) -> Iterator[Entry]:
    habits = dict.fromkeys(plant.size.habit for plant in stand.plants if plant.planted)
    for habit in habits:
        yield Entry(tr(HABIT_WORDS[habit]), _symbol(Look(habit, 0.85)))
    if any(plant.mature.spread > plant.size.spread for plant in stand.plants):
        yield Entry(tr("size now, and at maturity"), _symbol(Look("central leader", 0.55, mature=0.9)))
    if any(plant.container for plant in stand.plants):
        yield Entry(tr("in a pot"), _symbol(Look("bush", 0.8, pot=0.6)))
    standing = dict.fromkeys(plant.size.habit for plant in stand.plants if not plant.planted)
    for habit in standing:
        yield Entry(tr("tree that stands there already"), _symbol(Look(habit, 0.85, standing=True)))


def _rows(stand: Stand) -> Iterator[Entry]:
    for habit in dict.fromkeys(row.size.habit for row in stand.rows):
        yield Entry(tr(_ROW_WORDS.get(habit, later("row of plants"))), _small_plan(_draw_row_of(habit)))


_ROW_WORDS: dict[Habit, str] = {
    "cane": later("row of canes"), "vine": later("row of vines"),
    "flat-trained": later("row of flat-trained plants"),
}


def _draw_row_of(habit: Habit) -> Callable[[QPainter, PlanView], None]:
    row = Row(id="", plant=PlantKey("", ""), line=((-1.05, 0.0), (1.05, 0.0)), count=4, spacing=0.7)
    size = Size(spread=0.7, height=1.5, crown_base=0.3, habit=habit)
    return lambda painter, view: draw_row(painter, view, StandingRow(id="", row=row, size=size, mature=size))


def _ground(yard: Yard) -> Iterator[Entry]:
    if yard.lot:
        yield Entry(tr("lot line"), _small_plan(lambda p, v: draw_lot(p, evolve(v, yard=Yard(lot=_LINE)))))
    if yard.buildings:
        house = Building(id="", footprint=_BOX, roof="gable")
        yield Entry(tr("building; lines run the way water does"), _small_plan(_of(draw_building, house)))
    for kind in dict.fromkeys(barrier.kind for barrier in yard.barriers):
        line = Barrier(id="", kind=kind, line=_LINE, thickness=0.1 if kind != "hedge" else 0.5)
        yield Entry(tr(kind), _small_plan(_of(draw_barrier, line)))
    if yard.gates:
        gate = Gate(id="", place=(0.0, -0.6), width=1.1)
        yield Entry(tr("gate"), _small_plan(_of(draw_gate, gate)))
    for surface in dict.fromkeys(paving.kind for paving in yard.pavings):
        yield Entry(tr(surface), _small_plan(_of(draw_paving, Paving(id="", kind=surface, outline=_BOX))))
    for raised in sorted({bed.raised > 0 for bed in yard.beds}):
        bed = Bed(id="", outline=_BOX, raised=float(raised))
        yield Entry(tr("raised bed") if raised else tr("bed"), _small_plan(_of(draw_bed, bed)))


def _of(draw: Callable[[QPainter, PlanView, Any], None], thing: Any) -> Callable[[QPainter, PlanView], None]:
    return lambda painter, view: draw(painter, view, thing)


def _services(yard: Yard) -> Iterator[Entry]:
    for kind in dict.fromkeys(service.kind for service in yard.services):
        points = ((0.0, 0.0),) if kind == "well" else _LINE
        area = kind in ("septic field", "septic tank")
        thing = Service(id="", kind=kind, points=_BOX if area else points, area=area)
        yield Entry(tr(SERVICE_LINES[kind].meaning), _small_plan(_of(draw_service, thing)))


def legend_page(yard: Yard, stand: Stand, paper: Paper) -> Page:
    """One page with every symbol of the plan and all its cautions. Many entries are set in smaller cells."""
    found = entries(yard, stand)
    columns = max(1, int((paper.wide - 2 * MARGIN) / _CELL_WIDE))
    lines = max(1, -(-len(found) // columns))
    said = _cautions(yard, paper)
    foot = paper.high - MARGIN - _CAUTION_LINE * (len(said) + 1)
    high = min(_CELL_HIGH, (foot - _TOP) / lines)

    def draw(surface: Surface) -> None:
        draw_page_title(surface, tr("Key to the plan"), yard.site.name)
        for number, entry in enumerate(found):
            x = MARGIN + (number // lines) * _CELL_WIDE
            y = _TOP + (number % lines) * high
            _draw_entry(surface, entry, x, y, high)
        put(surface, MARGIN, foot, tr("Before you dig and plant"), _HEAD)
        for number, line in enumerate(said, 1):
            put(surface, MARGIN, foot + number * _CAUTION_LINE, line, _TEXT)

    return Page(paper, tr("Key to the plan"), draw)


def _cautions(yard: Yard, paper: Paper) -> list[str]:
    """Every caution of the plan, in lines of the page's width: a plan's own strip may hold fewer."""
    dots = 1 / UNIT_MM
    wide = (paper.wide - 2 * MARGIN) * dots * 0.98
    return [line for sentence in cautions(yard) for line in broken(sentence, wide, _TEXT, 1.0)]


def _draw_entry(surface: Surface, entry: Entry, x: float, y: float, high: float) -> None:
    wide, tall = _PICTURE * 1.5, high - 3.0
    box = surface.rect(x, y, wide, tall)
    surface.within(box, lambda painter: entry.draw(surface, box.center(), tall / 2 * surface.dots))
    lines = broken(entry.words, (_CELL_WIDE - wide - 5.0) * surface.dots, _TEXT, surface.unit)
    line = text_size("N", _TEXT, surface.unit)[1] / surface.dots
    for i, words in enumerate(lines):
        put(surface, x + wide + 3.0, y + (tall - line * len(lines)) / 2 + i * line, words, _TEXT)
