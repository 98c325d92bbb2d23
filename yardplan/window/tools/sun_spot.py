"""Points at a spot of the ground to read its light; nothing is kept in the yard."""

from __future__ import annotations

from yardplan.language import later, tr
from yardplan.units import UnitError
from yardplan.window.tools.event import Pointer
from yardplan.window.tools.tool import Key, Overlay, Stroke, Tool, Words
from yardplan.window.tools.typed import parse_typed
from yardplan.yard.ground import Point

#: Half the length of the cross, and how far above it the words stand, pixels.
_ARM, _ABOVE = 9.0, 22.0


class SunSpotTool(Tool):
    """Pointing shows the hours at once; a click keeps the spot, a typed place does the same."""

    name, key, icon = later("Sun at a spot"), "H", "light"
    about = later("Point anywhere to read its sun; click to keep the spot, or type a place as x; y")
    takes_lengths = True
    _here: Point | None = None
    _kept: Point | None = None
    _pixel = 0.01

    def press(self, event: Pointer) -> None:
        self._pixel = event.pixel
        self._look(event.place, keep=True)

    def move(self, event: Pointer) -> None:
        self._pixel = event.pixel
        self._look(event.place, keep=event.dragging)

    def leave(self) -> None:
        self._here = None
        self.desk.leave_spot()

    def _look(self, place: Point, *, keep: bool) -> None:
        self._here = place
        if keep:
            self._kept = place
        self.desk.look_at(place, keep)

    def typed(self, text: str) -> None:
        made = parse_typed(text, self.open_yard.units)
        if made.form != "place":
            raise UnitError(tr("Type the spot as x; y, for example 4; 2.5"))
        self._look((made.first, made.second), keep=True)
        self.desk.say(self.desk.spot_words())

    def on_key(self, key: Key) -> bool:
        if key == "enter" and self._here is not None:
            self._look(self._here, keep=True)
            self.desk.say(self.desk.spot_words())
            return True
        return False

    def overlay(self) -> Overlay:
        place = self._here or self._kept
        if place is None:
            return Overlay()
        x, y = place
        arm = _ARM * self._pixel
        cross = (
            Stroke(points=((x - arm, y), (x + arm, y)), look="guide"),
            Stroke(points=((x, y - arm), (x, y + arm)), look="guide"),
        )
        text = self.desk.spot_words()
        words = (Words(place=(x, y + _ABOVE * self._pixel), text=text),) if text else ()
        return Overlay(strokes=cross, words=words)
