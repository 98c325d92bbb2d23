"""Move or copy without dragging: the selection follows the pointer until a click or a typed place."""

from __future__ import annotations

from collections.abc import Collection

from yardplan.language import later, tr
from yardplan.units import UnitError
from yardplan.window.canvas.geometry import distance, halfway
from yardplan.window.tools.desk import Desk
from yardplan.window.tools.event import Pointer
from yardplan.window.tools.moving import anchor_of, movable, moved_words, troubles_of
from yardplan.window.tools.naming import names_of
from yardplan.window.tools.tool import Overlay, Stroke, Tool, Words
from yardplan.window.tools.typed import place_typed
from yardplan.yard import edits
from yardplan.yard.ground import Point
from yardplan.yard.yard import Yard


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
            "Click where it shall go (with Ctrl a copy), or type a length (12' 6\", 3.8 m < 90) "
            "or a place (4; 2.5); Esc leaves it"
        )

    def _offset(self, to: Point) -> Point:
        return (to[0] - self.anchor[0], to[1] - self.anchor[1])

    def _ended(self) -> bool:
        """True when it is done, or something else, such as undo, changed the yard meanwhile."""
        if not self.done and self.open_yard.yard is not self.before:
            self.cancel()
        return self.done

    def move(self, event: Pointer) -> None:
        if self._ended():
            return
        leave_out = () if event.ctrl else edits.together(self.before, self.ids)
        self.here = self.desk.snap(event, leave_out=leave_out)
        self.open_yard.show_trial(self._made(self.here, copy=event.ctrl)[0])

    def press(self, event: Pointer) -> None:
        self.move(event)
        if not self.done:
            self._put(self.here, copy=event.ctrl)

    def typed(self, text: str) -> None:
        if self._ended():
            raise UnitError(tr("Nothing is being moved"))
        self._put(place_typed(text, self.open_yard, self.anchor, self.here))

    def _made(self, to: Point, *, copy: bool) -> tuple[Yard, Collection[str]]:
        """The yard with the things there, or copies of them, and the ids of what was put."""
        offset = self._offset(to)
        if copy:
            return edits.duplicate(self.before, self.ids, offset)
        return edits.move(self.before, self.ids, offset), self.open_yard.selection

    def _put(self, to: Point, *, copy: bool = False) -> None:
        self.done = True
        self.desk.forget_snap()
        yard, keys = self._made(to, copy=copy)
        things = names_of(self.before, self.ids)
        text = tr("Copy {things}", things=things) if copy else tr("Move {things}", things=things)
        self.open_yard.commit(text, yard, selection=keys)
        self.desk.say(moved_words(self.open_yard, self._offset(to), () if copy else self.troubles))

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
