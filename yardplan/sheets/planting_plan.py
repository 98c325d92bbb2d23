"""The planting plan to a true scale, on one sheet or on several that are glued together."""

from __future__ import annotations

import math

from attrs import evolve, field, frozen
from PySide6.QtCore import QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QPainter

from yardplan.checks.finding import Finding
from yardplan.drawing.crowd import Crowd
from yardplan.drawing.dimensions import draw_dimension, draw_edge_lengths
from yardplan.drawing.furniture import draw_north, site_facts
from yardplan.drawing.labels import arrange, draw_arranged
from yardplan.drawing.lettering import GROUND, Type, draw_text, draw_turned, text_size
from yardplan.drawing.painter import draw_findings, draw_ground, draw_plants
from yardplan.drawing.shapes import polyline
from yardplan.drawing.style import HAIR, STANDING_DASH, colour, pen
from yardplan.drawing.view import FindingKey, Layers, PlanView, extent
from yardplan.files.exchange.georeference import area
from yardplan.language import tr
from yardplan.plants.stand import Stand
from yardplan.sheets.band import Band, draw_band, draw_frame
from yardplan.sheets.document import Page
from yardplan.sheets.light_plan import PaperLight, draw_legend_on, lit_view
from yardplan.sheets.paper import Paper, Scale, best_fit, usual_paper
from yardplan.sheets.surface import Surface
from yardplan.sheets.tiling import OVERLAP, Tile, Tiling, tile
from yardplan.units import System
from yardplan.yard.ground import Outline, Point
from yardplan.yard.yard import Yard

#: Paper left free on every side, millimetres: printers cannot reach the edge.
MARGIN = 10.0
#: Ground shown round the lot, metres.
BEYOND = 1.5
#: Below this width of frame the band's parts stand over each other.
NARROW = 232.0
BAND, NARROW_BAND = 32.0, 48.0
#: Lengths of walls stand so far inside them, style units; walls are alike within so many metres.
_INSIDE, _SAME = -9.0, 0.01
#: Device pixels from the field's corner to the north arrow, millimetres.
_NORTH_IN = 11.0


_ON_PAPER = Layers(shadows=False, partners=False)


@frozen(kw_only=True, eq=False)
class PlanRequest:
    """What to draw and how. `scale` None: the largest usual one that fits a sheet. `paper` None: by units.

    `said` words by finding key; marks are drawn only where findings are given. `pins` fixed points by name.
    `light` lies over the ground with its legend.
    """

    yard: Yard
    stand: Stand
    units: System
    date: str = ""
    scale: Scale | None = None
    paper: Paper | None = None
    findings: tuple[Finding, ...] = ()
    said: dict[FindingKey, str] | None = None
    layers: Layers = _ON_PAPER
    pins: tuple[tuple[str, Point], ...] = ()
    title: str = field(factory=lambda: tr("Planting plan"))
    light: PaperLight | None = None


def band_height(paper: Paper) -> float:
    """Height of the strip with scale bar and title under the plan, millimetres."""
    return BAND if paper.wide - 2 * MARGIN >= NARROW else NARROW_BAND


def field_size(paper: Paper) -> tuple[float, float]:
    """Width and height of the plan's field on a sheet, millimetres."""
    return paper.wide - 2 * MARGIN, paper.high - 2 * MARGIN - band_height(paper)


def plan_size(yard: Yard) -> tuple[float, float]:
    """Width and height of the ground shown, metres."""
    left, bottom, right, top = extent(yard)
    return right - left + 2 * BEYOND, top - bottom + 2 * BEYOND


def _sides(paper: Paper) -> tuple[Paper, Paper]:
    """The paper both ways, landscape first."""
    return (paper, paper.turned()) if paper.landscape else (paper.turned(), paper)


def chosen_scale(request: PlanRequest) -> Scale:
    """The scale asked for, or the best fit. Raises SheetError where nothing fits."""
    if request.scale is not None:
        return request.scale
    paper = request.paper or usual_paper(request.units)
    wide, high = plan_size(request.yard)
    return best_fit(wide, high, [field_size(side) for side in _sides(paper)], request.units)


def layout(request: PlanRequest) -> tuple[Paper, Scale, Tiling]:
    """The way round that needs fewest sheets, the scale, and the sheets."""
    scale = chosen_scale(request)
    wide, high = (scale.mm(metres) for metres in plan_size(request.yard))
    sides = _sides(request.paper or usual_paper(request.units))
    ways = [(side, tile(wide, high, *field_size(side))) for side in sides]
    paper, tiling = min(ways, key=lambda way: len(way[1].tiles))
    return paper, scale, tiling


def plan_pages(request: PlanRequest) -> tuple[Page, ...]:
    """The sheets of the plan."""
    paper, scale, tiling = layout(request)
    return tuple(
        Page(paper, _page_title(request, tiling, part), _Drawing(request, paper, scale, tiling, part))
        for part in tiling.tiles
    )


def _page_title(request: PlanRequest, tiling: Tiling, part: Tile) -> str:
    return request.title if len(tiling.tiles) == 1 else tr(
        "{title}, sheet {name}", title=request.title, name=part.name
    )


@frozen(eq=False)
class _Drawing:
    """Draws one sheet of a plan."""

    request: PlanRequest
    paper: Paper
    scale: Scale
    tiling: Tiling
    part: Tile

    def __call__(self, surface: Surface) -> None:
        wide, high = field_size(self.paper)
        field = surface.rect(MARGIN, MARGIN, wide, high)
        view = self.view(surface, field)
        surface.within(field, lambda painter: self._draw_plan(painter, view, surface, field))
        draw_frame(surface, self.paper, MARGIN, high)
        draw_band(surface, view, Band(
            paper=self.paper, margin=MARGIN, top=MARGIN + high, height=band_height(self.paper),
            narrow=wide < NARROW, facts=self._facts(), tiling=self.tiling, part=self.part,
            imperial=self.request.units == "imperial",
        ))

    def view(self, surface: Surface, field: QRectF) -> PlanView:
        """The yard at true scale, this sheet's part in the field."""
        request, dots = self.request, surface.dots
        left, _, _, top = extent(request.yard)
        pixels = self.scale.mm(1.0) * dots
        origin = (
            field.left() - self.part.left * dots - (left - BEYOND) * pixels,
            field.top() - self.part.top * dots + (top + BEYOND) * pixels,
        )
        view = PlanView(
            yard=request.yard, stand=request.stand, scale=pixels, origin=origin, unit=surface.unit,
            window=field, units=request.units, layers=request.layers, vector=True,
            findings=request.findings, said=request.said or {}, keep_clear=(self._north_box(surface, field),),
        )
        return lit_view(view, field, request.light)

    def _north_box(self, surface: Surface, field: QRectF) -> QRectF:
        side = 2 * _NORTH_IN * surface.dots
        return QRectF(field.right() - side, field.top(), side, side)

    def _draw_plan(self, painter: QPainter, view: PlanView, surface: Surface, field: QRectF) -> None:
        draw_ground(painter, view)
        draw_plants(painter, view)
        # Arranged for the whole plan, so that neighbouring sheets carry the same words in the same places.
        whole = view if len(self.tiling.tiles) == 1 else evolve(view, window=None, keep_clear=())
        draw_arranged(painter, view, arrange(whole))
        draw_findings(painter, view)
        if len(view.yard.lot) > 2:
            draw_edge_lengths(painter, view, view.yard.lot, closed=True)
        for building in view.yard.buildings:
            if not building.beyond_lot:
                # Inside, so that the ground round the house stays free for what grows there.
                for edge in told_edges(building.footprint):
                    draw_dimension(painter, view, *edge, _INSIDE)
        _draw_pins(painter, view, self.request.pins)
        draw_north(painter, view, self._north_box(surface, field).center())
        if self.request.light is not None:
            draw_legend_on(painter, view, field, self.request.light)
        self._draw_joins(painter, view, surface, field)

    def _draw_joins(self, painter: QPainter, view: PlanView, surface: Surface, field: QRectF) -> None:
        """A broken line where the next sheet is laid over, and its name."""
        lap = OVERLAP * surface.dots
        c, r = self.part.column, self.part.row
        inner = field.adjusted(lap, lap, -lap, -lap)
        edges = {
            (c - 1, r): (QLineF(inner.left(), field.top(), inner.left(), field.bottom()), 90.0),
            (c + 1, r): (QLineF(inner.right(), field.top(), inner.right(), field.bottom()), 90.0),
            (c, r - 1): (QLineF(field.left(), inner.top(), field.right(), inner.top()), 0.0),
            (c, r + 1): (QLineF(field.left(), inner.bottom(), field.right(), inner.bottom()), 0.0),
        }
        for (column, row), (line, turned) in edges.items():
            neighbour = self.tiling.at(column, row)
            if neighbour is not None:
                painter.setPen(pen("muted", HAIR, view.unit, STANDING_DASH))
                painter.drawLine(line)
                words = tr("joins sheet {name}", name=neighbour.name)
                draw_turned(painter, view, line.pointAt(0.5), turned, words, GROUND)

    def _facts(self) -> list[str]:
        """Lines of the title block under the yard's name."""
        request = self.request
        year = request.stand.year
        grown = tr("full size") if year is None else tr("year {n}", n=year)
        drawn = tr("{scale} on {paper}", scale=self.scale.words, paper=self.paper.name)
        last = [drawn, grown, request.date]
        facts = site_facts(evolve(_bare, yard=request.yard))
        return [request.title, *facts, "   ".join(word for word in last if word)]


def told_edges(footprint: Outline) -> list[tuple[Point, Point]]:
    """Edges whose length has to be told, the building to their left: of opposite walls that match, one."""
    ring = footprint if area(footprint) >= 0 else footprint[::-1]
    told: list[tuple[Point, Point]] = []
    for a, b in zip(ring, (*ring[1:], ring[0]), strict=True):
        if not any(_matches((a, b), other) for other in told):
            told.append((a, b))
    return told


def _matches(one: tuple[Point, Point], other: tuple[Point, Point]) -> bool:
    """True for walls of one length that run side by side."""
    (ax, ay), (bx, by) = one[0], one[1]
    (cx, cy), (dx, dy) = other[0], other[1]
    # Round a building opposite walls run opposite ways: together they come to nothing.
    return math.hypot(bx - ax + dx - cx, by - ay + dy - cy) < _SAME


def _draw_pins(painter: QPainter, view: PlanView, pins: tuple[tuple[str, Point], ...]) -> None:
    """Fixed points: a filled triangle on its tip, and the name on a side where no other pin stands."""
    u = view.unit
    crowd = Crowd(64.0 * u)
    for _, place in pins:
        at = view.at(place)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(colour("conflict"))
        corners = [at, at + QPointF(-4.5 * u, -8 * u), at + QPointF(4.5 * u, -8 * u)]
        painter.drawPath(polyline(corners, closed=True))
        crowd.take(QRectF(corners[1], QPointF(corners[2].x(), at.y())))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    for name, place in pins:
        wide, high = text_size(name, _PIN, u)
        at = view.at(place)
        corners = [
            at + QPointF(-wide / 2, -8.5 * u - high), at + QPointF(5.5 * u, -4 * u - high / 2),
            at + QPointF(-5.5 * u - wide, -4 * u - high / 2), at + QPointF(-wide / 2, 0.5 * u),
        ]
        boxes = [QRectF(corner.x(), corner.y(), wide, high) for corner in corners]
        box = next((box for box in boxes if crowd.free_of_words(box)), boxes[0])
        crowd.take(box)
        draw_text(painter, view, box, name, _PIN)


_PIN = Type(12.0, "bold", ink="conflict", halo="paper")
_bare = PlanView(yard=Yard(), stand=Stand(year=None), scale=1.0, origin=(0.0, 0.0))
