"""The overlay on the sheet: tones and lines under the plants, their figures, and the legend in the corner."""

from __future__ import annotations

from attrs import evolve
from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QPainter

from yardplan.drawing.corners import freest
from yardplan.drawing.light_labels import LightLabel, draw_light_labels, light_labels, still_true
from yardplan.drawing.light_legend import draw_light_legend, legend_size
from yardplan.drawing.light_picture import draw_light
from yardplan.drawing.view import PlanView
from yardplan.language import decimals, later, percent, tr
from yardplan.sheets.light_plan import PaperLight
from yardplan.sun.classes import Measure
from yardplan.sun.light import GroundField
from yardplan.window.light.ground_light import GroundLight
from yardplan.window.light.words import grown_words, title_of, when_of
from yardplan.yard.site import Site

_CLEAR = later("clear sky assumed")
#: From the frame's corner to the legend, pixels.
_INSET = 10.0
#: Room that the scale bar, the north arrow and the title block take at the frame, pixels.
_OVER_BAR, _UNDER_NORTH, _OVER_TITLE = 60.0, 92.0, 76.0


class LightLayer:
    """Paints a GroundLight; the figures stand still while things are dragged."""

    def __init__(self, ground: GroundLight) -> None:
        self.ground = ground
        #: False where the legend would hide too much of the yard.
        self.legend = True
        #: The figures as last placed.
        self.labels: tuple[LightLabel, ...] = ()
        self._labelled: GroundField | None = None
        self._key: object = None
        self._sized: object = None
        self._corner = "top left"

    @property
    def on(self) -> bool:
        """True when there is anything to paint."""
        return self.ground.on

    def paint(self, painter: QPainter, shown: PlanView) -> None:
        """Tones and lines."""
        if self.ground.field is not None:
            draw_light(painter, self._lit(shown))

    def _lit(self, shown: PlanView) -> PlanView:
        return evolve(shown, light=self.ground.field, light_pale=not self.ground.fresh)

    def paint_figures(self, painter: QPainter, shown: PlanView, *, resting: bool) -> None:
        """The figures on the lines; new places are found only when nothing moves."""
        field = self.ground.field
        if field is None:
            return
        key = (shown.scale, shown.window and shown.window.size(), shown.layers)
        if resting and (field is not self._labelled or key != self._key):
            self.labels = light_labels(self._lit(shown))
            self._labelled, self._key = field, key
        labels = self.labels if field is self._labelled else still_true(field, self.labels)
        draw_light_labels(painter, shown, labels)

    def legend_box(self, shown: PlanView, field: QRectF) -> QRectF | None:
        """Where the legend stands within the sheet's frame; None where there is no room for it.

        In the corner that hides least when the window's size is new; it stays there while the view moves.
        """
        wide, high = legend_size(shown, self.note(shown), measure=self._measure(), title=self._title())
        if not self.legend or wide > field.width() / 2 or high > field.height() - 2 * _INSET:
            return None
        boxes = self._corners(field, wide, high)
        size = (field.width(), field.height())
        if size != self._sized or self._corner not in boxes:
            self._sized, self._corner = size, freest(shown, boxes)
        return boxes[self._corner]

    def _corners(self, field: QRectF, wide: float, high: float) -> dict[str, QRectF]:
        left, right = field.left() + _INSET, field.right() - _INSET - wide
        boxes = {
            "top left": QRectF(left, field.top() + _INSET, wide, high),
            "bottom left": QRectF(left, field.bottom() - _OVER_BAR - high, wide, high),
            "top right": QRectF(right, field.top() + _UNDER_NORTH, wide, high),
            "bottom right": QRectF(right, field.bottom() - _OVER_TITLE - high, wide, high),
        }
        within = {name: box for name, box in boxes.items() if field.contains(box)}
        return within or {"top left": boxes["top left"]}

    def paint_legend(self, painter: QPainter, shown: PlanView, field: QRectF) -> None:
        """The legend, which also says how fresh the light is."""
        box = self.legend_box(shown, field)
        if box is not None:
            corner = QPointF(round(box.left()), round(box.top()))
            note = self.note(shown)
            draw_light_legend(painter, shown, corner, note, measure=self._measure(), title=self._title())

    def _measure(self) -> Measure:
        return self.ground.wanted.measure

    def _title(self) -> str:
        return title_of(self.ground.wanted)

    def note(self, shown: PlanView) -> str:
        """Of which days and which size, and what open ground has; whether it is being worked out."""
        return "\n".join([*_facts(self.ground, shown.stand.year, shown.yard.site), self._state()])

    def on_paper(self, year: int | None, site: Site) -> PaperLight | None:
        """The overlay for a sheet; None where there is none, or an old one that must not be printed."""
        field = self.ground.field
        if not self.on or field is None or not self.ground.fresh:
            return None
        note = "\n".join([*_facts(self.ground, year, site), tr(_CLEAR)])
        return PaperLight(field=field, title=self._title(), note=note)

    def _state(self) -> str:
        """One line always, so that the legend keeps its size."""
        ground = self.ground
        busy = ground.share < 1.0
        if ground.field is None:
            return tr("being worked out, {share}", share=percent(ground.share)) if busy else tr("not known")
        if not ground.fresh:
            return tr("pale: of before, being worked out") if busy else tr("pale: of before")
        return tr("being refined, {share}", share=percent(ground.share)) if busy else tr(_CLEAR)


def _facts(ground: GroundLight, year: int | None, site: Site) -> list[str]:
    """Two lines: of which days the figures are; how grown the plants, and what open ground has."""
    wanted, field = ground.wanted, ground.field
    grown = grown_words(year, wanted.planting)
    when = when_of(wanted, site.growing_season)
    if field is None or wanted.measure.startswith("share"):
        return [when, grown]
    if field.open_hours <= 0.0:
        return [when, tr("the sun does not rise high enough")]
    hours = decimals(f"{field.open_hours:.1f}")
    return [when, tr("{grown}; open ground {hours} h", grown=grown, hours=hours)]
