"""What tools work with: the open yard, snapping, what lies under the pointer, and a voice."""

from __future__ import annotations

from collections.abc import Callable, Collection

from yardplan.units import format_length
from yardplan.window.canvas.hits import thing_at
from yardplan.window.canvas.snapping import REACH_PIXELS, Snapped, Snapper
from yardplan.window.open_yard import OpenYard
from yardplan.window.tools.event import Pointer
from yardplan.yard.ground import Outline, Point

#: How far in pixels the pointer may miss a line or a handle: half of 24, the smallest target of WCAG 2.5.8.
HIT_PIXELS = 12.0


class Desk:
    """One per canvas; every tool has it. `say` speaks the outcome of a gesture; `ask_text` asks for words."""

    def __init__(self, open_yard: OpenYard) -> None:
        self.open_yard = open_yard
        self.snapper = Snapper()
        self.snapped = Snapped((0.0, 0.0))
        self.say: Callable[[str], None] = lambda _text: None
        #: Say something that whoever looks must read too.
        self.tell: Callable[[str], None] = self._say_it
        self.ask_text: Callable[[str, str], str | None] = lambda _question, _text: None
        #: Open the field for typed lengths.
        self.open_entry: Callable[[], None] = lambda: None
        #: Open the field for the length of an edge (of a thing or `lot`, from 0); whether lengths are shown.
        self.edit_edge: Callable[[str, int], None] = lambda _key, _edge: None
        self.shows_lengths: Callable[[], bool] = lambda: True
        #: The light at a spot: look there (and keep it), leave the sheet, what is known in a few words.
        self.look_at: Callable[[Point, bool], None] = lambda _place, _keep: None
        self.leave_spot: Callable[[], None] = lambda: None
        self.spot_words: Callable[[], str] = lambda: ""

    def _say_it(self, text: str) -> None:
        """Spoken at least, where nobody shows it."""
        self.say(text)

    def snap(
        self,
        event: Pointer,
        place: Point | None = None,
        *,
        leave_out: Collection[str] = (),
        line: Outline = (),
    ) -> Point:
        """The event's place, or another, drawn to what is near it; remembered so that it can be shown."""
        at = event.place if place is None else place
        if event.alt:
            self.snapped = Snapped(at)
        else:
            self.snapped = self.snapper.snap(
                self.open_yard.yard, at, REACH_PIXELS * event.pixel,
                system=self.open_yard.units, leave_out=leave_out, line=line,
            )
        return self.snapped.point

    def forget_snap(self) -> None:
        """Show no snapping mark any more."""
        self.snapped = Snapped((0.0, 0.0))

    def under(self, event: Pointer) -> str | None:
        """The id of what lies under the pointer."""
        yard = self.open_yard
        return thing_at(yard.shown_yard, yard.stand, event.place, HIT_PIXELS / 2 * event.pixel)

    def length(self, metres: float) -> str:
        """A length in the yard's units."""
        return format_length(metres, self.open_yard.units)
