"""What the canvas paints, layer by layer: still pictures, what is dragged, marks, the tool's overlay."""

from __future__ import annotations

import math
import time
from collections.abc import Callable, Collection, Mapping
from functools import partial
from types import SimpleNamespace
from typing import TYPE_CHECKING, cast

from attrs import evolve
from PySide6.QtCore import QRectF
from PySide6.QtGui import QPainter, QRegion

from yardplan.checks.finding import Finding, Weight
from yardplan.drawing.spots import Spots
from yardplan.drawing.view import FindingKey, Layers, Partner, PlanView
from yardplan.window.canvas import furnishing
from yardplan.window.canvas.calm_marks import CalmMarks, paint_words, speakers
from yardplan.window.canvas.clear_hatch import ClearHatch
from yardplan.window.canvas.ground import GroundPicture
from yardplan.window.canvas.live_area import (
    LABEL_ASIDE,
    LABEL_UP,
    MARK,
    around,
    overlay_boxes,
    region_of,
    worth_it,
)
from yardplan.window.canvas.overlay_paint import paint_overlay, words_boxes
from yardplan.window.canvas.pictures import FixedPicture, StillPicture
from yardplan.window.canvas.pollen_shown import PollenShown
from yardplan.window.canvas.shade import Shade
from yardplan.window.canvas.shadow_picture import ShadowPicture
from yardplan.window.canvas.snapping import Snapped
from yardplan.window.canvas.view import Bounds, View, bounds_of
from yardplan.window.open_yard import OpenYard
from yardplan.window.theme import text_scale
from yardplan.window.tools.desk import Desk
from yardplan.window.tools.tool import Overlay, Tool
from yardplan.yard.change import Change
from yardplan.yard.edits import points_of
from yardplan.yard.ground import Outline, Point
from yardplan.yard.handles import covered

if TYPE_CHECKING:
    from yardplan.plants.stand import Stand
    from yardplan.window.light.layer import LightLayer

#: Ground shown round everything when the yard is fitted, metres.
_ROUND = 1.5
#: Words about a dragged thing stand within so many pixels of it.
_WORDS_REACH = 150.0
#: Words to keep clear of are gathered for blocks of so many pixels.
_BLOCK = 128
#: Words of marks that are not dragged are laid out again so often at most during a drag, seconds.
_WORDS_EVERY = 0.4
#: Titles of so many findings are kept.
_TITLES = 400
#: The stand of a yard without a thing: what plants are need not be loaded to show bare paper.
_BARE = SimpleNamespace(year=None, plants=(), rows=(), beds=())
_Nobody: frozenset[str] = frozenset()


class Scene:
    """Keeps pictures of what does not change and paints the rest each frame."""

    fit_margin = 44.0

    def __init__(self, open_yard: OpenYard, desk: Desk) -> None:
        self.open_yard, self.desk = open_yard, desk
        self.layers = Layers()
        self.shade = Shade(open_yard)
        self.ground = GroundPicture(self.shade)
        self.shadows = ShadowPicture(self.shade)
        self.calm = CalmMarks(self.ground.words_near)
        self.pollen = PollenShown(open_yard)
        self.clear = ClearHatch(open_yard.clear)
        self.words = StillPicture()
        self.furniture = FixedPicture()
        #: The light over the ground, when the window has one.
        self.light: LightLayer | None = None
        #: Marks of who takes a plant's light.
        self.shade_marks: Callable[[], Overlay] = Overlay
        #: True while the shadows move with the hour: they are painted each frame then.
        self.shade_moves = False
        self._live: frozenset[str] = _Nobody
        #: Findings parted by what is dragged: of which, by what, those that stay and those that follow.
        self._parted: tuple[
            tuple[Finding, ...], frozenset[str], tuple[Finding, ...], tuple[Finding, ...]
        ] = ((), _Nobody, (), ())
        #: Where what is dragged left ink in the last frame, pixels, and what that was.
        self._reached: QRegion | None = None
        self._reached_live = _Nobody
        self._reach_of: tuple[object, object, object, QRegion] = (None, None, None, QRegion())
        #: Titles of findings said before, by key, with the finding they are of.
        self._titles: dict[FindingKey, tuple[Finding, str]] = {}
        self._words_key: object = None
        self._words_at = 0.0
        self._names: dict[str, str] = {}
        #: The drawing's view made last, and for what.
        self._plan: PlanView | None = None
        self._plan_of: tuple[View, float, float, Layers] | None = None
        #: Where other words stand round what is dragged, and what that was found for.
        self._taken: tuple[object, tuple[object, object], tuple[QRectF, ...]] = (None, (None, None), ())
        #: Where words about what is dragged stood in the last frame; anew with each gesture.
        self._spots = Spots()

    # What has to be painted afresh

    def forget(self) -> None:
        """Everything changed."""
        self.ground.forget()
        self.shadows.forget()
        self.calm.forget()
        self.pollen.forget()
        self.words.forget()
        self.furniture.forget()
        self._names = {}

    def follow(self, change: Change, live: frozenset[str]) -> None:
        """The shown yard changed; what only concerns dragged things leaves the still pictures alone."""
        self.shade.follow(change)
        before = self._live
        self.set_live(live)
        self._spots.step()
        if change.added or change.altered or change.whole:
            self._names = {}
        if change.whole:
            self.forget()
        else:
            touched = change.touched | change.removed
            self.ground.touch(touched)
            # What was dragged already has left no mark in the picture.
            self.calm.touch(touched - before)

    def set_live(self, live: frozenset[str]) -> None:
        """Things being dragged are painted apart from the still picture."""
        if live and self.open_yard.yard.dimensions:
            from yardplan.yard.dimensions import hung_on

            live |= hung_on(self.open_yard.yard, live)
        if live != self._live:
            self._spots = Spots()
        self._live = live
        self.ground.set_live(live)

    def settle(self) -> bool:
        """Arrange the labels anew now that the hand rests; True when there was anything to do."""
        if not self.ground.unsettled or self._live:
            return False
        self.ground.rearrange()
        self.words.forget()
        return True

    # Places

    def extent(self) -> Bounds:
        """The lot and all that is not next door, with ground round it; 30 m by 20 m for an empty yard."""
        yard = self.open_yard.shown_yard
        points: list[Point] = list(yard.lot)
        for thing in yard.things():
            if not yard.lot or not getattr(thing, "beyond_lot", False):
                points += covered(thing)
        box = bounds_of(tuple(points))
        if box is None:
            return (0.0, 0.0, 30.0, 20.0)
        return (box[0] - _ROUND, box[1] - _ROUND, box[2] + _ROUND, box[3] + _ROUND)

    def selected_points(self) -> Outline:
        """Every point of what is selected."""
        yard, chosen = self.open_yard.shown_yard, self.open_yard.selection
        points: list[Point] = list(yard.lot) if "lot" in chosen else []
        for thing in yard.named(chosen):
            points += points_of(thing)
        return tuple(points)

    # Painting

    def plan_view(self, view: View, ratio: float) -> PlanView:
        """The drawing's view of the yard for this view of the sheet, without findings and selection."""
        yard, unit = self.open_yard, text_scale()
        bare = next(iter(yard.shown_yard.things()), None) is None
        stand = cast("Stand", _BARE) if bare else yard.stand
        known, key = self._plan, (view, ratio, unit, self.layers)
        here = known is not None and known.yard is yard.shown_yard and known.stand is stand
        if known is not None and here and key == self._plan_of:
            return known
        origin = view.to_pixels((0.0, 0.0))
        self._plan_of, self._plan = key, PlanView(
            yard=yard.shown_yard, stand=stand, scale=view.scale, origin=(origin.x(), origin.y()), unit=unit,
            ratio=ratio, window=QRectF(0, 0, view.width, view.height), units=yard.units, layers=self.layers,
        )
        return self._plan

    def paint(
        self, painter: QPainter, view: View, *, ratio: float, resting: bool, tool: Tool, focused: bool
    ) -> None:
        """One frame. `resting`: no pan or zoom is under way, so the pictures are brought up to date."""
        shown = self.plan_view(view, ratio)
        field = furnishing.field_of(view.width, view.height)
        furnishing.paint_paper(painter, shown)
        painter.setClipRect(field)
        self._refresh(view, ratio, resting)
        self.ground.picture.show(painter, view)
        if self.ground.parted:
            self._paint_shade(painter, view, shown, resting)
            self.ground.top.show(painter, view)
            self._paint_light_words(painter, shown, field, resting)
        self.clear.paint(painter, view, ratio, resting, lambda v: self._beside_labels(v, ratio))
        if self._live:
            self._paint_live(painter, shown)
        self.calm.picture.show(painter, view)
        if self.layers.all_partners:
            self.pollen.picture.show(painter, view)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        self._paint_lengths(painter, shown)
        overlay = tool.overlay()
        self._paint_about_chosen(painter, view, shown, field, overlay)
        self.words.show(painter, view)
        paint_overlay(painter, view, self.shade_marks(), Snapped((0.0, 0.0)))
        paint_overlay(painter, view, overlay, self.desk.snapped)
        self._reached = self._reach(view, ratio, tool) if self._live and resting else None
        self._reached_live = self._live
        painter.setClipping(False)
        self.furniture.show(
            painter, (view.width, view.height, view.scale, focused), view, ratio,
            furnishing.parts(shown), lambda p: furnishing.paint_furniture(p, shown, focused=focused),
        )
        if self.light is not None and self.light.on:
            self.light.paint_legend(painter, shown, field)

    def changed(self, view: View, ratio: float, tool: Tool) -> QRegion | None:
        """Where the next frame of a drag differs from the one on the screen; None: anywhere.

        The kept pictures are brought up to date on the way.
        """
        before = self._reached if self._reached_live == self._live else None
        if not self._live or before is None or self._lit or self.shade_moves or self.layers.all_partners:
            return None
        self._refresh(view, ratio, resting=True)
        region = before.united(self._reach(view, ratio, tool))
        for picture in (self.ground.picture, self.calm.picture, self.words):
            news = picture.news(view)
            if news is None:
                return None
            region = region.united(news)
        # One box: a painter held to several paints far slower.
        region = QRegion(region.boundingRect())
        return region if worth_it(region, view) else None

    def _reach(self, view: View, ratio: float, tool: Tool) -> QRegion:
        """Where what is dragged leaves ink, with its marks, words and lines, and what the tool shows."""
        overlay, live, loud = tool.overlay(), self._live, self._findings(calm=False)
        yard, key = self.open_yard.shown_yard, (live, view, overlay, self.desk.snapped)
        known = self._reach_of
        if known[0] is yard and known[1] is loud and known[2] == key:
            return known[3]
        shown = self.plan_view(view, ratio)
        partners = self.pollen.lines_of(live) if self.layers.partners else ()
        boxes = [self._words_area(shown, partners)]
        boxes += around(view, self.calm.boxes_of(live, shown), LABEL_ASIDE, LABEL_UP)
        boxes += around(view, self.calm.places_of(loud, shown), MARK, MARK)
        if self.layers.shadows:
            self.shade.moving(live)
            boxes += around(view, self.shade.boxes(live), MARK, MARK)
        region = region_of([*boxes, *overlay_boxes(view, overlay, self.desk.snapped)])
        self._reach_of = (yard, loud, key, region)
        return region

    @property
    def _lit(self) -> bool:
        """True while the light lies over the ground."""
        return self.light is not None and self.light.on

    @property
    def shows_light(self) -> bool:
        """True while the sheet shows more of the light than its findings."""
        return self._lit or self.shade_marks() != Overlay()

    def _paint_shade(self, painter: QPainter, view: View, shown: PlanView, resting: bool) -> None:
        """Light and shadows, between the ground and what stands on it."""
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        if self.light is not None and self.light.on:
            self.light.paint(painter, shown)
        if self.layers.shadows and self.shade_moves:
            self.shadows.paint_moving(painter, shown)
        elif self.layers.shadows:
            make = partial(self.plan_view, ratio=shown.ratio)
            self.shadows.paint(painter, view, shown, self._live, resting, make)

    def _paint_light_words(self, painter: QPainter, shown: PlanView, field: QRectF, resting: bool) -> None:
        if self.light is not None and self.light.on:
            placed = evolve(self._with_room(shown, field, field), window=field)
            self.light.paint_figures(painter, placed, resting=resting and not self._live)

    def _refresh(self, view: View, ratio: float, resting: bool) -> None:
        self.ground.part(self.shade_moves or self._lit)
        if resting or self.ground.picture.empty:
            self.ground.bring_up(view, ratio, lambda v: self.plan_view(v, ratio))
        if not (resting or self.calm.picture.empty):
            return
        found, chosen = self._findings(calm=True), self._selection(calm=True)
        self.calm.bring_up(view, ratio, found, chosen, lambda v: self.plan_view(v, ratio))
        self._refresh_words(view, ratio, found, chosen)
        if self.layers.all_partners:
            stamp = None if self._live else self.words.painted
            self.pollen.bring_up(view, ratio, self._live, stamp, lambda v: self._beside_words(view, v, ratio))

    def _refresh_words(
        self, view: View, ratio: float, found: tuple[Finding, ...], chosen: frozenset[str]
    ) -> None:
        """Words of marks follow at once at rest, and some times a second while something is dragged."""
        now = time.monotonic()
        if self._live and not self.words.empty and now - self._words_at < _WORDS_EVERY:
            return
        self._words_at = now
        speaking = speakers(found, chosen)
        if not speaking:
            self.words.forget()
            return
        key = (speaking, chosen, view.scale, view.centre, view.width, view.height, self._lit)
        if key == self._words_key and not self.words.empty:
            return
        self._words_key = key
        self.words.renew(view, ratio, lambda p, v: self._paint_words(p, view, v, ratio))

    def _paint_words(self, painter: QPainter, window: View, wide: View, ratio: float) -> None:
        """Words are laid out within the window, so that none hides beneath its edge."""
        inside = self._wide_view(window, wide, ratio)
        found, chosen = self._findings(calm=True), self._selection(calm=True)
        self.words.inked = paint_words(painter, inside, found, chosen, self._said)

    def _wide_view(self, window: View, wide: View, ratio: float) -> PlanView:
        """The drawing's view for a picture wider than the window, with words kept within the window."""
        left, top = (wide.width - window.width) / 2, (wide.height - window.height) / 2
        field = furnishing.field_of(window.width, window.height).translated(left, top)
        return evolve(self._with_room(self.plan_view(wide, ratio), field, field), window=field)

    def _beside_labels(self, view: View, ratio: float) -> PlanView:
        """A view told where names stand: what is laid over the ground leaves them free."""
        shown = self.plan_view(view, ratio)
        labels = self.ground.words_near(shown, QRectF(0, 0, view.width, view.height))
        return evolve(shown, keep_clear=tuple(labels))

    def _beside_words(self, window: View, wide: View, ratio: float) -> PlanView:
        """A wide view told where the words of marks stand."""
        shown = self._wide_view(window, wide, ratio)
        return evolve(shown, keep_clear=(*shown.keep_clear, *self.words.inked_in(wide)))

    def _paint_live(self, painter: QPainter, shown: PlanView) -> None:
        dragged = evolve(shown, only=self._live)
        if self.layers.shadows and not self.ground.parted:
            from yardplan.drawing.shade import draw_shadows

            draw_shadows(painter, evolve(dragged, shadows=self.shade.moving(self._live)))
        from yardplan.drawing import painter as plan

        plan.draw_ground(painter, dragged)
        plan.draw_plants(painter, dragged)
        plan.draw_words(painter, dragged)

    def _with_room(self, shown: PlanView, field: QRectF, area: QRectF) -> PlanView:
        """The view told where words stand already: the furniture and the labels within an area."""
        boxed = furnishing.with_boxes(shown, field)
        legend = self.light.legend_box(shown, field) if self.light is not None and self.light.on else None
        if legend is not None:
            boxed = evolve(boxed, keep_clear=(*boxed.keep_clear, legend))
        labels = self.ground.words_near(shown, area)
        return evolve(
            boxed, keep_clear=(*boxed.keep_clear, *labels), layers=evolve(shown.layers, labels=False)
        )

    def _paint_lengths(self, painter: QPainter, shown: PlanView) -> None:
        """Lengths of the edges of what is selected."""
        if self.open_yard.selection and self.layers.labels:
            from yardplan.drawing.dimensions import draw_dimensions

            draw_dimensions(painter, evolve(shown, selection=self.open_yard.selection))

    def _paint_about_chosen(
        self, painter: QPainter, view: View, shown: PlanView, field: QRectF, overlay: Overlay
    ) -> None:
        """Partner lines of the plant that is dragged or selected, and the marks of what is dragged.

        Their words keep clear of those of the tool in use, which lie on top.
        """
        chosen = self._live or self.open_yard.selection
        partners = self.pollen.lines_of(chosen) if self.layers.partners else ()
        reaches = self.pollen.reaches()
        if not (self._live or partners or reaches):
            return
        area = self._words_area(shown, partners)
        # Words of what is dragged keep within the part of the sheet that a frame paints.
        told = evolve(
            shown, window=field & area if self._live else field,
            keep_clear=self._taken_round(view, shown, field, area), layers=evolve(shown.layers, labels=False),
            partners=partners, reaches=reaches, reach_all=self.pollen.reach_all,
            spots=self._spots if self._live else None, taken=words_boxes(view, overlay, self.desk.snapped),
        )
        self._paint_live_marks(painter, told)

    def _taken_round(self, view: View, shown: PlanView, field: QRectF, area: QRectF) -> tuple[QRectF, ...]:
        """Where words stand already round an area; looked for anew when the area leaves its blocks."""
        left, top = (math.floor(edge / _BLOCK) * _BLOCK for edge in (area.left(), area.top()))
        right, bottom = (math.ceil(edge / _BLOCK) * _BLOCK for edge in (area.right(), area.bottom()))
        key = (left, top, right, bottom, view, shown.unit, self.words.painted, self._lit)
        kept = (self.ground.labels, shown.yard.site)
        if key != self._taken[0] or any(a is not b for a, b in zip(kept, self._taken[1], strict=True)):
            roomy = self._with_room(shown, field, QRectF(left, top, right - left, bottom - top))
            self._taken = (key, kept, (*roomy.keep_clear, *self.words.inked_in(view)))
        return self._taken[2]

    def _words_area(self, shown: PlanView, partners: tuple[Partner, ...]) -> QRectF:
        """Where partner lines and words about what is dragged or chosen may stand, pixels."""
        places = [point for line in partners for point in (line.start, line.end)]
        places += [point for thing in shown.yard.named(self._live) for point in points_of(thing)]
        speaking = (f for f in self._findings(calm=False) if f.things and f.weight is not Weight.ADVICE)
        firsts = {finding.things[0] for finding in speaking}
        for left, bottom, right, top in self.calm.boxes_of(firsts, shown):
            places += ((left, bottom), (right, top))
        box = bounds_of(tuple(places))
        area = QRectF() if box is None else QRectF(shown.at((box[0], box[3])), shown.at((box[2], box[1])))
        return area.adjusted(-_WORDS_REACH, -_WORDS_REACH, _WORDS_REACH, _WORDS_REACH)

    def _paint_live_marks(self, painter: QPainter, shown: PlanView) -> None:
        found, chosen = self._findings(calm=False), self._selection(calm=False)
        few = speakers(found, chosen)
        from yardplan.drawing.painter import draw_findings

        draw_findings(painter, evolve(shown, findings=found, said=self._said(few), selection=chosen))

    # What is marked

    def _findings(self, *, calm: bool) -> tuple[Finding, ...]:
        """The findings that concern dragged things or are marked at them, or (calm) the others."""
        live, found = self._live, self.open_yard.findings
        if not live:
            return found if calm else ()
        if found is not self._parted[0] or live != self._parted[1]:
            places = {point for thing in self.open_yard.shown_yard.named(live) for point in points_of(thing)}
            # What stood apart in the frame before and is the same finding still does.
            apart = set(map(id, self._parted[2])) if live == self._parted[1] else set[int]()
            still: list[Finding] = []
            loud: list[Finding] = []
            for finding in found:
                calm_one = id(finding) in apart or _apart(finding, live, places)
                (still if calm_one else loud).append(finding)
            self._parted = (found, live, tuple(still), tuple(loud))
        return self._parted[2] if calm else self._parted[3]

    def _selection(self, *, calm: bool) -> frozenset[str]:
        chosen = self.open_yard.selection
        return chosen - self._live if calm else chosen & self._live

    def _said(self, found: Collection[Finding]) -> Mapping[FindingKey, str]:
        if not found:
            return {}
        from yardplan.checks.wording import names_of, title_of

        yard = self.open_yard
        if not self._names:
            self._names, self._titles = names_of(yard.shown_yard), {}
        if len(self._titles) > _TITLES:
            self._titles = {}
        said: dict[FindingKey, str] = {}
        for finding in found:
            key = finding.key
            known = self._titles.get(key)
            if known is None or known[0] is not finding:
                known = self._titles[key] = (finding, title_of(finding, self._names, yard.units))
            said[key] = known[1]
        return said


def _apart(finding: Finding, live: frozenset[str], places: set[Point]) -> bool:
    """True for a finding on other things, no mark of which starts or ends at one of some places."""
    if not live.isdisjoint(finding.things):
        return False
    return not any(
        mark.points and (mark.points[0] in places or mark.points[-1] in places) for mark in finding.marks
    )
