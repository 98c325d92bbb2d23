"""What is drawn and how: the yard, its stand, and the way from metres to device pixels."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from typing import TYPE_CHECKING

from attrs import evolve, field, frozen
from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QPolygonF

from yardplan.checks.finding import Finding
from yardplan.drawing.spots import Spots
from yardplan.drawing.style import UNIT_MM
from yardplan.units import System
from yardplan.yard.ground import Outline, Point
from yardplan.yard.handles import covered
from yardplan.yard.yard import Yard

if TYPE_CHECKING:
    from yardplan.plants.stand import Stand
    from yardplan.sun.light import GroundField

FindingKey = tuple[str, str, tuple[str, ...]]


@frozen(kw_only=True)
class Layers:
    """Which layers of the plan are shown."""

    grid: bool = True
    pictures: bool = True
    structures: bool = True
    services: bool = True
    plants: bool = True
    notes: bool = True
    dimensions: bool = True
    labels: bool = True
    shadows: bool = True
    light: bool = False
    marks: bool = True
    partners: bool = True
    all_partners: bool = False
    mature: bool = True


@frozen(kw_only=True, eq=False)
class Partner:
    """A partner line: pollen goes from `donor` to `receiver` (ids).

    `strength` 0..1 sets the line's form; `both` True when each sets fruit on the other;
    `days` both are in bloom, None when not known, `dated` False where only bloom classes tell them;
    `distance` in metres; `remark` what is wrong with it, in a word or two; `quiet` lines are thin and give
    way to all else.
    """

    donor: str
    receiver: str
    start: Point
    end: Point
    strength: float
    both: bool
    distance: float
    days: int | None = None
    dated: bool = True
    remark: str = ""
    quiet: bool = False


@frozen(kw_only=True, eq=False)
class Reach:
    """How far pollen reaches round one thing (`points` its stems): full within `best`, none past `outer`."""

    name: str
    points: tuple[Point, ...]
    best: float
    outer: float


@frozen(kw_only=True, eq=False)
class PlanView:
    """One picture of a yard.

    `scale` device pixels per metre; `origin` the device place of the yard's (0, 0), y upwards in metres;
    `unit` device pixels per style unit; `window` the part of the device that is looked at (None: all).
    `only` draws nothing but these ids, `without` leaves ids out: so a canvas can keep still things in one
    picture and draw what is dragged on top. `said` words for each finding by its key.
    `keep_clear` device boxes (north arrow, title block) where no words are put, `taken` those of this frame.
    `reach_all` True where what is planted must be within reach of all `reaches`, not of any one.
    `shadows` outlines in metres (each a ring) at the chosen moment; `light` the light on the
    ground, `light_pale` where it is not worked out anew yet. `vector` True for paper: no sprites.
    `spots` where words stood in the frame before, so that they hold still in a drag; None: best place anew.
    """

    yard: Yard
    stand: Stand
    scale: float
    origin: tuple[float, float]
    unit: float = 1.0
    ratio: float = 1.0
    window: QRectF | None = None
    findings: tuple[Finding, ...] = ()
    said: Mapping[FindingKey, str] = field(factory=dict)
    partners: tuple[Partner, ...] = ()
    reaches: tuple[Reach, ...] = ()
    reach_all: bool = False
    clear_ground: tuple[tuple[Outline, ...], ...] = ()
    shadows: tuple[tuple[Point, ...], ...] = ()
    light: GroundField | None = None
    light_pale: bool = False
    selection: frozenset[str] = frozenset()
    units: System = "metric"
    layers: Layers = Layers()
    only: frozenset[str] | None = None
    without: frozenset[str] = frozenset()
    keep_clear: tuple[QRectF, ...] = ()
    taken: tuple[QRectF, ...] = ()
    vector: bool = False
    spots: Spots | None = None

    def at(self, point: Point) -> QPointF:
        """Device place of a point in metres."""
        return QPointF(self.origin[0] + point[0] * self.scale, self.origin[1] - point[1] * self.scale)

    def metres(self, place: QPointF) -> Point:
        """The point in metres under a device place."""
        return ((place.x() - self.origin[0]) / self.scale, (self.origin[1] - place.y()) / self.scale)

    def corners(self, points: Iterable[Point]) -> list[QPointF]:
        """Device places of points in metres."""
        (x0, y0), scale = self.origin, self.scale
        return [QPointF(x0 + x * scale, y0 - y * scale) for x, y in points]

    def polygon(self, points: Iterable[Point]) -> QPolygonF:
        """Device corners of an outline or line."""
        return QPolygonF(self.corners(points))

    def length(self, units: float) -> float:
        """Metres on the ground that `units` style units cover."""
        return units * self.unit / self.scale

    def draws(self, thing_id: str) -> bool:
        """True when the thing belongs to this picture."""
        if self.only is not None and thing_id not in self.only:
            return False
        return thing_id not in self.without

    def sees(self, place: QPointF, reach: float) -> bool:
        """True when something within `reach` device pixels of a place can be seen."""
        if self.window is None:
            return True
        return self.window.adjusted(-reach, -reach, reach, reach).contains(place)

    def sees_points(self, points: Iterable[Point], reach: float = 24.0) -> bool:
        """True when the box round the points, `reach` style units wider, is in the window."""
        places = list(points)
        # Most of what is asked about begins in the window: then no box need be made.
        if self.window is None or (places and self.window.contains(self.at(places[0]))):
            return True
        box = self.polygon(places).boundingRect()
        grow = reach * self.unit
        return self.window.intersects(box.adjusted(-grow, -grow, grow, grow))


def bare_view(unit: float = 1.0, ratio: float = 1.0, *, vector: bool = False) -> PlanView:
    """A view of nothing, for lettering beside the plan: charts, tables, keys."""
    from yardplan.plants.stand import Stand

    return PlanView(
        yard=Yard(), stand=Stand(year=None), scale=1.0, origin=(0.0, 0.0),
        unit=unit, ratio=ratio, vector=vector,
    )


def extent(yard: Yard) -> tuple[float, float, float, float]:
    """Left, bottom, right, top in metres of the lot, or of everything where no lot is drawn."""
    points = list(yard.lot) or [p for thing in yard.things() for p in covered(thing)]
    if not points:
        return (0.0, 0.0, 20.0, 15.0)
    xs, ys = [p[0] for p in points], [p[1] for p in points]
    return (min(xs), min(ys), max(xs), max(ys))


def fitted(view: PlanView, into: QRectF, *, beyond: float = 2.0) -> PlanView:
    """The view zoomed so that the yard and `beyond` metres round it fill the rectangle, centred."""
    left, bottom, right, top = extent(view.yard)
    wide, high = max(right - left, 1.0) + 2 * beyond, max(top - bottom, 1.0) + 2 * beyond
    scale = min(into.width() / wide, into.height() / high)
    return placed(view, into, scale)


def placed(view: PlanView, into: QRectF, scale: float) -> PlanView:
    """The view at `scale` with the middle of the yard in the middle of the rectangle."""
    left, bottom, right, top = extent(view.yard)
    middle = into.center()
    origin = (middle.x() - (left + right) / 2 * scale, middle.y() + (bottom + top) / 2 * scale)
    return evolve(view, scale=scale, origin=origin)


def paper_unit(dots_per_inch: float) -> float:
    """Device pixels per style unit on paper printed at that resolution."""
    return UNIT_MM * dots_per_inch / 25.4
