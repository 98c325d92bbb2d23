"""What every tool is: hears pointer, keys and entries; shows an overlay; says what the next click does."""

from __future__ import annotations

from typing import Literal

from attrs import frozen

from yardplan.language import tr
from yardplan.window.tools.desk import Desk
from yardplan.window.tools.event import Pointer
from yardplan.yard.ground import Outline, Point

Look = Literal["line", "curve", "guide", "band", "ghost"]
Key = Literal["enter", "backspace", "tab"]


@frozen(kw_only=True)
class Stroke:
    """A line of the overlay; `closed` an outline.

    `look`: a drawn line with its corners, a curve, a dashed guide, a rubber band, a ghost.
    """

    points: Outline
    look: Look = "line"
    closed: bool = False


@frozen(kw_only=True)
class Handle:
    """A small square (corner) or round (turn) grip."""

    place: Point
    round: bool = False


@frozen(kw_only=True)
class Words:
    """Words at a place of the overlay."""

    place: Point
    text: str


@frozen(kw_only=True)
class Disc:
    """A circle of the overlay, in metres."""

    centre: Point
    radius: float
    look: Look = "ghost"


@frozen(kw_only=True)
class Overlay:
    """What a tool shows on top of the drawing. Plain values; the canvas paints them."""

    strokes: tuple[Stroke, ...] = ()
    handles: tuple[Handle, ...] = ()
    words: tuple[Words, ...] = ()
    discs: tuple[Disc, ...] = ()


class Tool:
    """Base of all tools. `name` is what the toolbar says; `key` its shortcut; `about` one line on it."""

    name = ""
    key = ""
    about = ""
    #: The picture in the toolbar (drawn by the window).
    icon = ""
    #: True while plain digits typed on the canvas begin an entry.
    takes_lengths = False
    #: True while the pointer rests on a length that a click lets type over.
    over_length = False
    #: True when the tool has done its work: the canvas goes back to the pointer.
    done = False

    def __init__(self, desk: Desk) -> None:
        self.desk = desk
        self.open_yard = desk.open_yard

    def hint(self) -> str:
        """What the next click does, for the status line."""
        return tr(self.about)

    def press(self, event: Pointer) -> None:
        """Button down."""

    def move(self, event: Pointer) -> None:
        """Pointer moved, button up or down."""

    def release(self, event: Pointer) -> None:
        """Button up."""

    def double(self, event: Pointer) -> None:
        """Second click of a double click."""

    def leave(self) -> None:
        """The pointer left the sheet."""

    def on_key(self, key: Key) -> bool:
        """A key that means something in a gesture; True when it was used."""
        return False

    def typed(self, text: str) -> None:
        """An entry typed while the tool works. Raises UnitError."""

    def cancel(self) -> bool:
        """Back out of the gesture; True when there was one."""
        return False

    @property
    def half_drawn(self) -> bool:
        """True while corners are set that another tool would drop."""
        return False

    def hears(self, letter: str) -> bool:
        """True when a letter means something in the midst of drawing."""
        return False

    def overlay(self) -> Overlay:
        """What to show on top of the drawing."""
        return Overlay()

    @property
    def live(self) -> frozenset[str]:
        """Ids of things being dragged: drawn apart from the still picture."""
        return frozenset()

    @property
    def busy(self) -> bool:
        """True in the middle of a gesture."""
        return False
