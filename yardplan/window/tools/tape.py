"""The tape measure: distances and angles, nothing kept in the yard."""

from __future__ import annotations

from yardplan.language import later, tr
from yardplan.units import UnitError, format_area
from yardplan.window.canvas.geometry import area_of, bearing, distance, halfway, length_of, stretches
from yardplan.window.tools.event import Pointer
from yardplan.window.tools.tool import Key, Overlay, Stroke, Tool, Words
from yardplan.yard.ground import Outline, Point


class TapeTool(Tool):
    """Click from place to place: each length shows, and the whole; a third place shows the area too."""

    name, key, icon = later("Tape"), "M", "tape"
    about = later("Measure: click from place to place")
    _points: tuple[Point, ...] = ()
    _here: Point | None = None
    _done = False

    def hint(self) -> str:
        if not self._points or self._done:
            return tr("Click where to begin measuring")
        return tr("{summary}. Click the next place; Enter ends", summary=self._summary())

    def _summary(self) -> str:
        points = self._shown()
        if len(points) == 2:
            degrees = f"{bearing(*points):.0f}"
            return tr("{length} at {degrees}°", length=self.desk.length(distance(*points)), degrees=degrees)
        whole = self.desk.length(length_of(points))
        if len(points) > 2:
            area = format_area(area_of(points), self.open_yard.units)
            return tr("{length} in all, {area} enclosed", length=whole, area=area)
        return tr("{length} in all", length=whole)

    def _shown(self) -> Outline:
        if self._here is None or self._done or (self._points and self._here == self._points[-1]):
            return self._points
        return (*self._points, self._here)

    def press(self, event: Pointer) -> None:
        if self._done:
            self._points, self._done = (), False
        self._points = (*self._points, self.desk.snap(event, line=self._points))

    def move(self, event: Pointer) -> None:
        if self._points and not self._done:
            self._here = self.desk.snap(event, line=self._points)

    def release(self, event: Pointer) -> None:
        if self._points and distance(self._points[-1], event.place) > 8 * event.pixel:
            self._points = (*self._points, self.desk.snap(event, line=self._points))
            self._end()

    def double(self, event: Pointer) -> None:
        self._end()

    def on_key(self, key: Key) -> bool:
        if key == "enter" and self._points:
            self._end()
            return True
        return False

    def _end(self) -> None:
        if len(self._points) > 1:
            self._here, self._done = None, True
            self.desk.say(self._summary())

    def typed(self, text: str) -> None:
        raise UnitError(tr("The tape reads lengths; to draw by typed lengths take a drawing tool"))

    def cancel(self) -> bool:
        was = bool(self._points)
        self._points, self._here, self._done = (), None, False
        self.desk.forget_snap()
        return was

    @property
    def busy(self) -> bool:
        return bool(self._points) and not self._done

    def overlay(self) -> Overlay:
        points = self._shown()
        words = tuple(
            Words(place=halfway(a, b), text=self.desk.length(distance(a, b)))
            for a, b in stretches(points, closed=False)
        )
        return Overlay(strokes=(Stroke(points=points),) if len(points) > 1 else (), words=words)
