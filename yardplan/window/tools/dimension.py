"""Draw a dimension line: a length that stays on the plan."""

from __future__ import annotations

from yardplan.language import later, tr
from yardplan.units import UnitError
from yardplan.window.canvas.geometry import along, distance, halfway, polar
from yardplan.window.tools.event import Pointer
from yardplan.window.tools.tool import Key, Overlay, Stroke, Tool, Words
from yardplan.window.tools.typed import Typed, parse_typed
from yardplan.yard import edits
from yardplan.yard.ground import Dimension, Outline, Point
from yardplan.yard.handles import line_of, offset_of

#: Pointer travel in pixels that makes a press a drag from end to end.
_DRAG_PIXELS = 8.0


class DimensionTool(Tool):
    """From one place to another, then aside to where the line shall stand; each by click or typed."""

    name, key, icon = later("Dimension"), "I", "dimension"
    about = later("Draw a length that stays on the plan")
    takes_lengths = True

    _ends: Outline = ()
    _here: Point | None = None
    _pressed: Point | None = None

    def hint(self) -> str:
        if not self._ends:
            return tr("Click where the length begins, or type a place like 4; 2.5")
        if len(self._ends) == 1:
            return tr("Click where it ends, or type a length (3.8 m, 3.8 m < 90)")
        return tr("Click how far aside the line shall stand, or type it; Enter: where it is measured")

    def press(self, event: Pointer) -> None:
        self._pressed = event.place
        if len(self._ends) == 2:
            self._finish(offset_of(self._ends, self._aside(event)))
        else:
            self._add(self.desk.snap(event, line=self._ends))

    def move(self, event: Pointer) -> None:
        self._here = self._aside(event) if len(self._ends) == 2 else self.desk.snap(event, line=self._ends)

    def release(self, event: Pointer) -> None:
        pressed, self._pressed = self._pressed, None
        if pressed and len(self._ends) == 1 and distance(pressed, event.place) >= _DRAG_PIXELS * event.pixel:
            self._add(self.desk.snap(event, line=self._ends))

    def _aside(self, event: Pointer) -> Point:
        """Where the line shall stand: only how far aside counts, so nothing is snapped to."""
        self.desk.forget_snap()
        return event.place

    def _add(self, end: Point) -> None:
        if self._ends and distance(self._ends[0], end) < 1e-6:
            return
        self._ends, self._here = (*self._ends, end), end

    def on_key(self, key: Key) -> bool:
        if key == "backspace" and self._ends:
            self._ends = self._ends[:-1]
            return True
        if key == "enter" and len(self._ends) == 2:
            self._finish(0.0)
            return True
        return False

    def typed(self, text: str) -> None:
        entry = parse_typed(text, self.open_yard.units, north=self.open_yard.yard.site.north)
        if entry.form == "size":
            raise UnitError(tr("A dimension line needs one length: type for example 3.8 m"))
        if len(self._ends) < 2:
            self._add(self._typed_end(entry))
            return
        side = offset_of(self._ends, self._here or self._ends[1])
        place = (entry.first, entry.second)
        off = offset_of(self._ends, place) if entry.form == "place" else entry.first * (-1 if side < 0 else 1)
        self._finish(off)

    def _typed_end(self, entry: Typed) -> Point:
        if entry.form == "place":
            return (entry.first, entry.second)
        if not self._ends:
            raise UnitError(tr("Click where the length begins, or type its place like 0; 0"))
        start = self._ends[0]
        if entry.form == "angle":
            return polar(start, entry.first, entry.second)
        return along(start, self._here or start, entry.first)

    def _finish(self, off: float) -> None:
        yard = self.open_yard.yard
        made = Dimension(id=edits.next_key(yard, "DM"), ends=self._ends, off=round(off, 4))
        self._ends, self._here, self._pressed = (), None, None
        self.open_yard.commit(tr("Draw dimension line"), edits.add(yard, made), selection={made.id})
        self.desk.say(tr("Dimension line of {length}", length=self.desk.length(distance(*made.ends))))

    def cancel(self) -> bool:
        was = bool(self._ends)
        self._ends, self._here, self._pressed = (), None, None
        self.desk.forget_snap()
        return was

    @property
    def busy(self) -> bool:
        return bool(self._ends)

    def overlay(self) -> Overlay:
        if not self._ends or self._here is None:
            return Overlay()
        if len(self._ends) == 1:
            a, b = self._ends[0], self._here
            words = (Words(place=halfway(a, b), text=self.desk.length(distance(a, b))),) if a != b else ()
            return Overlay(strokes=(Stroke(points=(a, b)),), words=words)
        a, b = self._ends
        trial = Dimension(id="?", ends=self._ends, off=offset_of(self._ends, self._here))
        c, d = line_of(trial)
        text = self.desk.length(distance(a, b))
        return Overlay(
            strokes=(
                Stroke(points=(a, c), look="ghost"), Stroke(points=(b, d), look="ghost"),
                Stroke(points=(c, d)),
            ),
            words=(Words(place=halfway(c, d), text=text),),
        )
