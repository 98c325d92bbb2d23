"""Select what lies within an area without dragging: two opposite corners, clicked or typed."""

from __future__ import annotations

from yardplan.language import later, tr
from yardplan.units import UnitError
from yardplan.window.canvas.geometry import distance
from yardplan.window.canvas.hits import things_within
from yardplan.window.tools.desk import Desk
from yardplan.window.tools.event import Pointer
from yardplan.window.tools.gestures import DRAG_PIXELS
from yardplan.window.tools.naming import names_of
from yardplan.window.tools.tool import Overlay, Stroke, Tool, Words
from yardplan.window.tools.typed import Typed, parse_typed
from yardplan.yard.ground import Point
from yardplan.yard.groups import only_whole
from yardplan.yard.yard import Yard


def band_between(one: Point, other: Point) -> Stroke:
    """The band as it is shown, between two opposite corners."""
    (ax, ay), (bx, by) = one, other
    return Stroke(points=((ax, ay), (bx, ay), (bx, by), (ax, by)), look="band", closed=True)


def caught(yard: Yard, one: Point, other: Point) -> frozenset[str]:
    """What lies wholly between two opposite corners; of a group, all or nothing."""
    (ax, ay), (bx, by) = one, other
    return only_whole(yard, things_within(yard, min(ax, bx), min(ay, by), max(ax, bx), max(ay, by)))


class BandTool(Tool):
    """Ends with the second corner. The canvas goes back to the pointer after it."""

    name, icon = later("Select within"), "band"
    about = later("Click one corner of the area, then the opposite one")
    takes_lengths = True

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk)
        self._before = self.open_yard.selection
        self._first: Point | None = None
        self._here: Point = (0.0, 0.0)
        self._adds = False

    def hint(self) -> str:
        if self._first is None:
            return tr(
                "Click one corner of the area, or type its place (4; 2.5); Shift adds to what is selected"
            )
        return tr(
            "Click the opposite corner, or type its place (12; 8) or width and depth (8 m x 5 m); "
            "what lies wholly inside is selected"
        )

    def press(self, event: Pointer) -> None:
        if self._first is None:
            self._begin(event.place, adds=event.shift)
        else:
            self._end(event.place)

    def move(self, event: Pointer) -> None:
        if self._first is not None:
            self._here = event.place
            self.open_yard.select(self._chosen(event.place))

    def release(self, event: Pointer) -> None:
        first = self._first
        if first is not None and not self.done and distance(first, event.place) > DRAG_PIXELS * event.pixel:
            self._end(event.place)

    def typed(self, text: str) -> None:
        entry = parse_typed(text, self.open_yard.units, north=self.open_yard.yard.site.north)
        if entry.form == "place":
            place = (entry.first, entry.second)
            self._begin(place, adds=False) if self._first is None else self._end(place)
        elif entry.form == "size" and self._first is not None:
            self._end(self._by_size(self._first, entry))
        else:
            raise UnitError(
                tr("Type the place of a corner, such as 4; 2.5, or width and depth from the first")
            )

    def _by_size(self, first: Point, entry: Typed) -> Point:
        """The opposite corner, towards the pointer; to the right and up where that was not moved."""
        across = -1.0 if self._here[0] < first[0] else 1.0
        up = -1.0 if self._here[1] < first[1] else 1.0
        return (first[0] + across * entry.first, first[1] + up * entry.second)

    def _begin(self, place: Point, *, adds: bool) -> None:
        self._first = self._here = place
        self._adds = adds
        self.open_yard.select(self._chosen(place))

    def _chosen(self, here: Point) -> frozenset[str]:
        assert self._first is not None
        kept = self._before if self._adds else frozenset[str]()
        return kept | caught(self.open_yard.yard, self._first, here)

    def _end(self, place: Point) -> None:
        self.done = True
        chosen = self._chosen(place)
        self.open_yard.select(chosen)
        if chosen:
            self.desk.say(tr("{things} selected", things=names_of(self.open_yard.yard, chosen)))
        else:
            self.desk.say(tr("Nothing lies wholly inside"))

    def cancel(self) -> bool:
        if self.done:
            return False
        self.done = True
        if self._first is not None:
            self.open_yard.select(self._before)
        return True

    @property
    def busy(self) -> bool:
        return not self.done

    def overlay(self) -> Overlay:
        if self._first is None or self.done:
            return Overlay()
        (ax, ay), (bx, by) = self._first, self._here
        words = (
            Words(place=((ax + bx) / 2, by), text=self.desk.length(abs(bx - ax))),
            Words(place=(bx, (ay + by) / 2), text=self.desk.length(abs(by - ay))),
        )
        return Overlay(
            strokes=(band_between(self._first, self._here),), words=words if ax != bx and ay != by else ()
        )
