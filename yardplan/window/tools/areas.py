"""Drawing areas by corners, by a smooth curve through points, or as a circle: beds, paving, the lot line."""

from __future__ import annotations

import math
from abc import abstractmethod
from typing import Literal

from yardplan.language import later, tr
from yardplan.units import UnitError, format_area
from yardplan.window.canvas.geometry import area_of, distance, halfway
from yardplan.window.tools.corners import DRAG_PIXELS, CornersTool
from yardplan.window.tools.event import Pointer
from yardplan.window.tools.tool import Disc, Handle, Overlay, Stroke, Words
from yardplan.window.tools.typed import parse_typed
from yardplan.yard.curves import outline_of
from yardplan.yard.ground import Curve, Outline, Point

Form = Literal["corners", "smooth", "circle"]
FORMS: tuple[Form, ...] = ("corners", "smooth", "circle")
#: What C draws next, for the status line.
_NEXT: dict[Form, str] = {
    "corners": later("C draws a curve"), "smooth": later("C draws a circle"),
    "circle": later("C draws corners"),
}
#: A smaller circle is a slip of the hand, metres.
_LEAST_RADIUS = 0.05


class AreaTool(CornersTool):
    """An area in the form chosen; `C` on the sheet goes from corners to curve to circle."""

    form: Form = "corners"

    @abstractmethod
    def made(self, points: Outline, curve: Curve | None) -> None:
        """Make the thing from its outline, and what it was drawn along where it is curved; commit it."""

    def finish(self, points: Outline) -> None:
        if self.form == "smooth":
            self._along(Curve(kind="smooth", points=points))
        else:
            self.made(points, None)

    def _along(self, curve: Curve) -> None:
        self.made(outline_of(curve), curve)

    def take_form(self, form: Form | None = None) -> None:
        """Draw in another form, the next one where none is named; what fits of the drawing so far is kept."""
        self.form = form or FORMS[(FORMS.index(self.form) + 1) % len(FORMS)]
        if self.form == "circle":
            self.corners = self.corners[:1]

    def hears(self, letter: str) -> bool:
        return letter.upper() == "C"

    @property
    def takes_rectangle(self) -> bool:
        return self.form == "corners"

    def hint(self) -> str:
        problem = self.ready()
        if problem:
            return problem
        if self.form == "corners":
            hint = super().hint()
            return hint if self.corners else f"{hint}; {tr(_NEXT[self.form])}"
        if self.form == "circle":
            if self.corners:
                return tr("Click where the circle shall run, or type its radius")
            return f"{tr('Click the middle of the circle, or drag from it')}; {tr(_NEXT[self.form])}"
        if not self.corners:
            return f"{tr('Click the first point of the curve')}; {tr(_NEXT[self.form])}"
        if len(self.corners) < self.least:
            return tr("Click the next point of the curve; it runs smoothly through all of them")
        return tr("Click the next point of the curve; click the first or press Enter to close")

    # A circle

    def press(self, event: Pointer) -> None:
        if self.form != "circle" or self.ready():
            super().press(event)
            return
        self._pressed = event.place
        if self.corners:
            self._circle(distance(self.corners[0], self._snapped(event)))
        else:
            self._add(self._snapped(event))

    def release(self, event: Pointer) -> None:
        if self.form != "circle":
            super().release(event)
            return
        pressed, self._pressed = self._pressed, None
        if pressed and self.corners and distance(pressed, event.place) >= DRAG_PIXELS * event.pixel:
            self._circle(distance(self.corners[0], self._snapped(event)))

    def double(self, event: Pointer) -> None:
        if self.form != "circle":
            super().double(event)

    def _circle(self, radius: float) -> None:
        if radius < _LEAST_RADIUS:
            return
        middle, self.corners, self._pressed = self.corners[0], (), None
        self._along(Curve(kind="circle", points=(middle,), radius=radius))

    def typed(self, text: str) -> None:
        if self.form == "corners" or self.ready():
            super().typed(text)
            return
        entry = parse_typed(text, self.open_yard.units, north=self.open_yard.yard.site.north)
        if self.form == "smooth" or (entry.form == "place" and not self.corners):
            if entry.form == "size":
                raise UnitError(tr("A curve goes from point to point: type a length, or a place like 4; 2.5"))
            self._add(self._typed_corner(entry))
            return
        if not self.corners:
            raise UnitError(tr("Click the middle of the circle, or type its place like 4; 2.5"))
        if entry.form == "size":
            raise UnitError(tr("A circle has one radius: type for example 1.5 m"))
        place: Point = (entry.first, entry.second)
        radius = distance(self.corners[0], place) if entry.form == "place" else entry.first
        if radius < _LEAST_RADIUS:
            least = self.desk.length(_LEAST_RADIUS)
            raise UnitError(tr("A circle needs a radius of at least {least}", least=least))
        self._circle(radius)

    # What shows

    def overlay(self) -> Overlay:
        if not self.corners or self.form == "corners":
            return super().overlay()
        return self._circle_shown() if self.form == "circle" else self._curve_shown()

    def _circle_shown(self) -> Overlay:
        middle, here = self.corners[0], self.here or self.corners[0]
        radius = distance(middle, here)
        if radius < _LEAST_RADIUS:
            return Overlay(handles=(Handle(place=middle),))
        area = format_area(math.pi * radius * radius, self.open_yard.units)
        words = tr("radius {radius}", radius=self.desk.length(radius))
        return Overlay(
            strokes=(Stroke(points=(middle, here), look="guide"),),
            discs=(Disc(centre=middle, radius=radius, look="curve"),),
            words=(
                Words(place=halfway(middle, here), text=words),
                Words(place=(middle[0], middle[1] - radius / 2), text=area),
            ),
        )

    def _curve_shown(self) -> Overlay:
        points = self._outline()
        if len(points) < 3:
            return super().overlay()
        outline = outline_of(Curve(kind="smooth", points=points))
        x, y = (sum(p[i] for p in points) / len(points) for i in (0, 1))
        return Overlay(
            strokes=(Stroke(points=outline, look="curve", closed=True),),
            handles=tuple(Handle(place=point) for point in self.corners),
            words=(Words(place=(x, y), text=format_area(area_of(outline), self.open_yard.units)),),
        )
