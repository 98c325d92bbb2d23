"""Move or copy without dragging: the selection follows the pointer until a click or a typed place."""

from __future__ import annotations

from yardplan.language import later, tr
from yardplan.units import UnitError
from yardplan.window.canvas.geometry import along, distance, halfway, polar
from yardplan.window.tools.desk import Desk
from yardplan.window.tools.event import Pointer
from yardplan.window.tools.moving import anchor_of, movable, moved_words, troubles_of
from yardplan.window.tools.naming import names_of
from yardplan.window.tools.tool import Overlay, Stroke, Tool, Words
from yardplan.window.tools.typed import parse_typed
from yardplan.yard import edits
from yardplan.yard.ground import Point


class CarryTool(Tool):
    """Begun with something selected; ends with a click. The canvas goes back to the pointer after it."""

    name, icon = later("Carry"), "carry"
    about = later("Click where it shall go")
    takes_lengths = True

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk)
        self.before = self.open_yard.yard
        self.ids = movable(self.before, self.open_yard.selection)
        self.troubles = troubles_of(self.open_yard, self.ids)
        first = next((thing.id for thing in self.before.things() if thing.id in self.ids), "")
        self.anchor = anchor_of(self.before, first, (0.0, 0.0))
        self.here = self.anchor
        self.done = not self.ids

    def hint(self) -> str:
        return tr(
            "Click where it shall go, or type a length (12' 6\", 3.8 m < 90) "
            "or a place (4; 2.5); Esc leaves it"
        )

    def _offset(self, to: Point) -> Point:
        return (to[0] - self.anchor[0], to[1] - self.anchor[1])

    def move(self, event: Pointer) -> None:
        if self.done:
            return
        self.here = self.desk.snap(event, leave_out=edits.together(self.before, self.ids))
        self.open_yard.show_trial(edits.move(self.before, self.ids, self._offset(self.here)))

    def press(self, event: Pointer) -> None:
        if not self.done:
            self.move(event)
            self._put(self.here)

    def typed(self, text: str) -> None:
        if self.done:
            raise UnitError(tr("Nothing is being moved"))
        entry = parse_typed(text, self.open_yard.units, north=self.before.site.north)
        if entry.form == "place":
            self._put((entry.first, entry.second))
        elif entry.form == "angle":
            self._put(polar(self.anchor, entry.first, entry.second))
        elif entry.form == "length":
            self._put(along(self.anchor, self.here, entry.first))
        else:
            raise UnitError(tr("Type one length, a length with an angle, or a place"))

    def _put(self, to: Point) -> None:
        self.done = True
        self.desk.forget_snap()
        yard = edits.move(self.before, self.ids, self._offset(to))
        self.open_yard.commit(tr("Move {things}", things=names_of(self.before, self.ids)), yard)
        self.desk.say(moved_words(self.open_yard, self._offset(to), self.troubles))

    def cancel(self) -> bool:
        was = not self.done
        self.done = True
        self.open_yard.drop_trial()
        self.desk.forget_snap()
        return was

    @property
    def live(self) -> frozenset[str]:
        return frozenset() if self.done else edits.together(self.before, self.ids)

    @property
    def busy(self) -> bool:
        return not self.done

    def overlay(self) -> Overlay:
        far = distance(self.anchor, self.here)
        if self.done or far < 1e-9:
            return Overlay()
        words = Words(
            place=halfway(self.anchor, self.here), text=self.desk.length(far)
        )
        return Overlay(strokes=(Stroke(points=(self.anchor, self.here), look="guide"),), words=(words,))
