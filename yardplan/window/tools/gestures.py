"""What a press of the pointer tool begins: the base of all, turning, moving a corner, a click on a length."""

from __future__ import annotations

from typing import TYPE_CHECKING

from yardplan.language import tr
from yardplan.units import format_area
from yardplan.window.canvas.geometry import area_of, bearing, distance, halfway, middle
from yardplan.window.tools import grips
from yardplan.window.tools.event import Pointer
from yardplan.window.tools.moving import movable, outcome_words, troubles_of
from yardplan.window.tools.naming import names_of
from yardplan.window.tools.tool import Overlay, Tool, Words
from yardplan.window.tools.typed import parse_degrees, place_typed
from yardplan.yard import edges, edits, handles
from yardplan.yard.yard import Yard

if TYPE_CHECKING:
    from yardplan.drawing.dimensions import EdgeFigure

#: Pointer travel in pixels that makes a press a drag.
DRAG_PIXELS = 6.0
#: Turning snaps to steps of so many degrees.
TURN_STEP = 5.0


class Gesture:
    """One press to its release; works on the yard as it was at the press.

    A `sticky` one goes on after a press without a drag: the thing follows the pointer until a click ends it,
    or something typed, so that what a drag does can be done by clicks and keys too.
    """

    sticky = False

    def __init__(self, tool: Tool, event: Pointer) -> None:
        self.tool, self.desk, self.open_yard = tool, tool.desk, tool.open_yard
        self.start = event.place
        self.before: Yard = self.open_yard.yard
        self.begun = False
        #: True once it goes on without the button held.
        self.held = False
        self.live: frozenset[str] = frozenset()

    def hint(self) -> str:
        return tr("Let go to put it down; Esc puts it back")

    def far_enough(self, event: Pointer) -> bool:
        """True once the pointer has gone far enough to mean a drag."""
        self.begun = self.begun or distance(self.start, event.place) > DRAG_PIXELS * event.pixel
        return self.begun

    @property
    def stale(self) -> bool:
        """True when the yard was changed by something else meanwhile, such as undo."""
        return self.open_yard.yard is not self.before

    def move(self, event: Pointer) -> None:
        if self.held or self.far_enough(event):
            self.drag(event)

    def drag(self, event: Pointer) -> None:
        """The pointer moved with the button down."""

    def release(self, event: Pointer) -> None:
        if self.begun:
            self.drag(event)
            self.end(event)

    def end(self, event: Pointer) -> None:
        """The button went up after a drag."""

    def typed(self, text: str) -> None:
        """What was typed while it goes on without the button. Raises UnitError."""

    def overlay(self) -> Overlay:
        """What to show meanwhile."""
        return Overlay()


class Length(Gesture):
    """A click on the length of an edge: it is typed over."""

    def __init__(self, tool: Tool, event: Pointer, figure: EdgeFigure) -> None:
        super().__init__(tool, event)
        self.figure = figure

    def release(self, event: Pointer) -> None:
        if not self.far_enough(event):
            self.tool.leave()
            self.desk.edit_edge(self.figure.key, self.figure.edge)


class Turn(Gesture):
    """Turn the selection about its middle; typed, by degrees counter-clockwise."""

    sticky = True

    def __init__(self, tool: Tool, event: Pointer) -> None:
        super().__init__(tool, event)
        self.ids = movable(self.before, self.open_yard.selection)
        self.troubles = troubles_of(self.open_yard, self.ids)
        self.about = grips.middle_of(self.before, self.ids)
        self.degrees = 0.0

    def hint(self) -> str:
        if self.held:
            return tr("Click to leave it so, or type degrees to the left, such as 45; Esc turns it back")
        return tr("Let go to leave it so; Alt turns freely, Esc turns it back")

    def drag(self, event: Pointer) -> None:
        turn = bearing(self.about, event.place) - bearing(self.about, self.start)
        self.degrees = turn if event.alt else round(turn / TURN_STEP) * TURN_STEP
        self.live = edits.together(self.before, self.ids)
        self.open_yard.show_trial(edits.rotate(self.before, self.ids, self.about, self.degrees))

    def end(self, event: Pointer) -> None:
        self._put()

    def typed(self, text: str) -> None:
        self.degrees = parse_degrees(text)
        self._put()

    def _put(self) -> None:
        yard = edits.rotate(self.before, self.ids, self.about, self.degrees)
        self.open_yard.commit(tr("Turn {things}", things=names_of(self.before, self.ids)), yard)
        turned, outcome = f"{abs(self.degrees):.0f}", outcome_words(self.open_yard, self.troubles)
        self.desk.say(tr("Turned by {degrees} degrees; {outcome}", degrees=turned, outcome=outcome))

    def overlay(self) -> Overlay:
        turn = (self.degrees + 180) % 360 - 180
        return Overlay(words=(Words(place=self.about, text=f"{turn:.0f}°"),))


class Corner(Gesture):
    """Move one corner of the selected thing; typed, to a place or by a length from where it was."""

    sticky = True

    def __init__(self, tool: Tool, event: Pointer, grip: int) -> None:
        super().__init__(tool, event)
        self.grip = grip
        self.key = next(iter(self.open_yard.selection))
        self.origin = grips.outline_of(self.before, self.key)[grip]

    def hint(self) -> str:
        if self.held:
            return tr("Click where the corner shall be, or type a length (3.8 m < 90) or a place (4; 2.5); "
                      "Esc puts it back")
        return tr("Let go to leave the corner here; Alt suspends snapping, Esc puts it back")

    def drag(self, event: Pointer) -> None:
        origin = grips.measured_from(self.before, self.key, self.grip)
        met = self.desk.snap(event, leave_out=(self.key,), line=origin)
        self.live = frozenset({self.key})
        self.open_yard.show_trial(handles.with_handle(self.before, self.key, self.grip, met))

    def end(self, event: Pointer) -> None:
        self._put(self.open_yard.shown_yard)

    def typed(self, text: str) -> None:
        here = grips.outline_of(self.open_yard.shown_yard, self.key)[self.grip]
        to = place_typed(text, self.open_yard, self.origin, here)
        self._put(handles.with_handle(self.before, self.key, self.grip, to))

    def _put(self, yard: Yard) -> None:
        name = names_of(self.before, {self.key})
        self.open_yard.commit(tr("Move corner of {name}", name=name), yard)

    def overlay(self) -> Overlay:
        yard = self.open_yard.shown_yard
        here = grips.outline_of(yard, self.key)[self.grip]
        words = tuple(
            Words(place=halfway(here, p), text=self.desk.length(distance(here, p)))
            for p in grips.neighbours(yard, self.key, self.grip)
        )
        if handles.can_bend(yard, self.key):
            outline = edges.outline_of(yard, self.key)
            area = format_area(area_of(outline), self.open_yard.units)
            words = (*words, Words(place=middle(outline), text=area))
        return Overlay(words=words)
