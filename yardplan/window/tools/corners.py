"""Drawing by corners: click them, drag a rectangle, or type lengths; shared by all things with an outline."""

from __future__ import annotations

from abc import ABC, abstractmethod

from yardplan.language import later, tr
from yardplan.units import UnitError, format_area
from yardplan.window.canvas.geometry import along, area_of, distance, halfway, polar, stretches
from yardplan.window.tools.event import Pointer
from yardplan.window.tools.tool import Key, Overlay, Stroke, Tool, Words
from yardplan.window.tools.typed import Typed, parse_typed
from yardplan.yard.ground import Outline, Point

#: A drag shorter than this many pixels is a click.
DRAG_PIXELS = 8.0


class CornersTool(Tool, ABC):
    """Gathers corners and hands them to `finish`. `closed`: an outline, else a line.

    `least`: fewest corners of the thing; `most`: it is finished by itself at so many (0: never).
    """

    closed = True
    least = 3
    most = 0
    takes_lengths = True
    what = later("outline")

    corners: tuple[Point, ...] = ()
    here: Point | None = None
    _pressed: Point | None = None

    @abstractmethod
    def finish(self, points: Outline) -> None:
        """Make the thing from its corners and commit it."""

    def ready(self) -> str | None:
        """Why nothing can be drawn now, or None."""
        return None

    def hint(self) -> str:
        problem = self.ready()
        if problem:
            return problem
        if not self.corners:
            if self.closed:
                return tr("Click the first corner of the {what}, or drag a rectangle", what=tr(self.what))
            return tr("Click where the {what} begins", what=tr(self.what))
        typed = "12' 6\", 3.8 m, 3.8 m < 90"
        if len(self.corners) == 1 and self.closed:
            return tr("Click the next corner, or type a length ({typed}), or width x depth", typed=typed)
        if len(self.corners) < self.least:
            return tr("Click the next corner, or type a length ({typed})", typed=typed)
        if self.closed:
            return tr(
                "Click the next corner, or type a length ({typed}); "
                "click the first corner or press Enter to close", typed=typed,
            )
        return tr("Click the next corner, or type a length ({typed}); press Enter to end", typed=typed)

    @property
    def takes_rectangle(self) -> bool:
        """True while a drag from the first corner draws a rectangle."""
        return self.closed

    # Pointer

    def press(self, event: Pointer) -> None:
        if self.ready():
            return
        self._pressed = event.place
        # As the pointer showed it before: a press is no drag of a rectangle yet.
        at = self.desk.snap(event, line=self.corners)
        if self.closed and len(self.corners) >= self.least and at == self.corners[0]:
            self._end()
        elif not self.corners or distance(at, self.corners[-1]) > 1e-6:
            self._add(at)

    def move(self, event: Pointer) -> None:
        if self.ready() is None:
            self.here = self._snapped(event)

    def release(self, event: Pointer) -> None:
        pressed, self._pressed = self._pressed, None
        if pressed is None or not self.corners:
            return
        if distance(pressed, event.place) < DRAG_PIXELS * event.pixel:
            return
        at = self.desk.snap(event)
        if len(self.corners) == 1 and self.takes_rectangle and not event.ctrl:
            self._rectangle(at[0] - self.corners[0][0], at[1] - self.corners[0][1])
        else:
            self._add(self._snapped(event))

    def double(self, event: Pointer) -> None:
        if len(self.corners) >= self.least:
            self._end()

    def _snapped(self, event: Pointer) -> Point:
        if event.dragging and len(self.corners) == 1 and self.takes_rectangle:
            return self.desk.snap(event)
        return self.desk.snap(event, line=self.corners)

    # Keys and typing

    def on_key(self, key: Key) -> bool:
        if not self.corners:
            return False
        if key == "backspace":
            self.corners = self.corners[:-1]
            return True
        if key == "enter":
            if len(self.corners) >= self.least:
                self._end()
            else:
                self.desk.tell(tr("Still too few corners. {next}", next=self.hint()))
            return True
        return False

    def typed(self, text: str) -> None:
        problem = self.ready()
        if problem:
            raise UnitError(problem)
        entry = parse_typed(text, self.open_yard.units, north=self.open_yard.yard.site.north)
        if entry.form == "size":
            self._typed_size(entry)
        else:
            self._add(self._typed_corner(entry))

    def _typed_corner(self, entry: Typed) -> Point:
        if entry.form == "place":
            return (entry.first, entry.second)
        if not self.corners:
            raise UnitError(tr("Click the first corner, or type its place like 0; 0"))
        last = self.corners[-1]
        if entry.form == "angle":
            return polar(last, entry.first, entry.second)
        return along(last, self.here or last, entry.first)

    def _typed_size(self, entry: Typed) -> None:
        if not self.closed:
            raise UnitError(tr("A line needs one length: type for example 3.8 m"))
        if not self.corners:
            self.corners = (self.here or (0.0, 0.0),)
        first, here = self.corners[0], self.here or self.corners[0]
        self.corners = (first,)
        # Towards the pointer, so that a rectangle can be typed into any of the four quarters.
        wide = -entry.first if here[0] < first[0] - 1e-6 else entry.first
        deep = -entry.second if here[1] < first[1] - 1e-6 else entry.second
        self._rectangle(wide, deep)

    # Corners

    def _rectangle(self, wide: float, deep: float) -> None:
        if abs(wide) < 1e-6 or abs(deep) < 1e-6:
            return
        x, y = self.corners[0]
        self.corners = ((x, y), (x + wide, y), (x + wide, y + deep), (x, y + deep))
        self._end()

    def _add(self, corner: Point) -> None:
        self.corners = (*self.corners, corner)
        self.here = corner
        if self.most and len(self.corners) >= self.most:
            self._end()

    def _end(self) -> None:
        points, self.corners, self._pressed = self.corners, (), None
        self.finish(points)

    def cancel(self) -> bool:
        was = bool(self.corners)
        self.corners, self.here, self._pressed = (), None, None
        self.desk.forget_snap()
        return was

    @property
    def busy(self) -> bool:
        return bool(self.corners)

    @property
    def half_drawn(self) -> bool:
        return bool(self.corners)

    # What shows

    def _outline(self) -> Outline:
        if not self.corners or self.here is None or self.here == self.corners[-1]:
            return self.corners
        first, here = self.corners[0], self.here
        if self._pressed and len(self.corners) == 1 and self.takes_rectangle and _wide(first, here):
            return (first, (here[0], first[1]), here, (first[0], here[1]))
        return (*self.corners, here)

    def overlay(self) -> Overlay:
        points = self._outline()
        if not points:
            return Overlay()
        words = [
            Words(place=halfway(a, b), text=self.desk.length(distance(a, b)))
            for a, b in stretches(points, closed=False)
        ]
        if self.closed and len(points) > 2:
            x = sum(p[0] for p in points) / len(points)
            y = sum(p[1] for p in points) / len(points)
            words.append(Words(place=(x, y), text=format_area(area_of(points), self.open_yard.units)))
        return Overlay(strokes=self._strokes(points), words=tuple(words))

    def _strokes(self, points: Outline) -> tuple[Stroke, ...]:
        line = Stroke(points=points)
        if not self.closed or len(points) < 3:
            return (line,)
        return (line, Stroke(points=(points[-1], points[0]), look="guide"))


def _wide(first: Point, here: Point) -> bool:
    """True when two corners make more than a line."""
    return here[0] != first[0] and here[1] != first[1]
