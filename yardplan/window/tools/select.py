"""The pointer: select, move, copy by Ctrl, band, turn by the round grip, move corners by the square ones."""

from __future__ import annotations

from collections.abc import Collection
from typing import TYPE_CHECKING

from yardplan.language import later, tr
from yardplan.units import format_area
from yardplan.window.canvas.geometry import area_of, bearing, distance, halfway, middle
from yardplan.window.canvas.hits import things_within
from yardplan.window.tools import grips
from yardplan.window.tools.desk import HIT_PIXELS, Desk
from yardplan.window.tools.edge_figures import box_of, figure_at
from yardplan.window.tools.event import Pointer
from yardplan.window.tools.moving import anchor_of, movable, moved_words, outcome_words, troubles_of
from yardplan.window.tools.naming import names_of
from yardplan.window.tools.picking import picked
from yardplan.window.tools.tool import Overlay, Stroke, Tool, Words
from yardplan.yard import edges, edits, handles
from yardplan.yard.ground import Point
from yardplan.yard.groups import only_whole
from yardplan.yard.yard import Yard

if TYPE_CHECKING:
    from yardplan.drawing.dimensions import EdgeFigure

#: Pointer travel in pixels that makes a press a drag.
DRAG_PIXELS = 6.0
#: Turning snaps to steps of so many degrees.
TURN_STEP = 5.0


class SelectTool(Tool):
    """Press on a thing and drag it; press beside things and draw a band round several."""

    name, key, icon = later("Select"), "S", "select"
    about = later("Click a thing to select it, drag to move it; drag over empty ground to select several")

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk)
        self._gesture: _Gesture | None = None
        self._over: EdgeFigure | None = None
        self._pixel = 0.05

    def hint(self) -> str:
        if self._gesture is not None:
            return self._gesture.hint()
        chosen = self.open_yard.selection
        if self._over is not None:
            return tr("Click to type this length over: the far end of the edge moves")
        if not chosen:
            return tr(self.about)
        name = names_of(self.open_yard.yard, chosen)
        return tr(
            "{name} selected: drag or arrow keys move it, Ctrl+drag copies, F2 goes to its fields", name=name
        )

    def press(self, event: Pointer) -> None:
        self._gesture = (
            self._grip(event) or self._figure(event) or self._thing(event) or _Band(self, event)
        )

    def _grip(self, event: Pointer) -> _Gesture | None:
        grip = grips.grip_at(self.open_yard, event.place, HIT_PIXELS * event.pixel)
        if grip is None:
            return None
        return _Turn(self, event) if grip == grips.TURN else _Corner(self, event, grip)

    def _figure(self, event: Pointer) -> _Gesture | None:
        figure = self._figure_under(event)
        return _Length(self, event, figure) if figure is not None else None

    def _figure_under(self, event: Pointer) -> EdgeFigure | None:
        if event.shift or not self.desk.shows_lengths():
            return None
        return figure_at(self.open_yard, event)

    def _thing(self, event: Pointer) -> _Gesture | None:
        key = self.desk.under(event)
        if key is None:
            return None
        chosen = self.open_yard.selection
        if event.shift:
            ids = picked(self.open_yard, key, one=event.alt)
            self.open_yard.select(chosen - ids if ids <= chosen else chosen | ids)
            return _Nothing(self, event)
        if key not in chosen:
            self.open_yard.select(picked(self.open_yard, key))
        return _Move(self, event, key)

    def move(self, event: Pointer) -> None:
        if self._gesture is not None and event.dragging:
            self._gesture.move(event)
        elif self._gesture is None:
            self._pixel = event.pixel
            at_grip = grips.grip_at(self.open_yard, event.place, HIT_PIXELS * event.pixel) is not None
            self._over = None if at_grip else self._figure_under(event)

    def leave(self) -> None:
        self._over = None

    def release(self, event: Pointer) -> None:
        gesture, self._gesture = self._gesture, None
        if gesture is not None:
            gesture.release(event)
        self.desk.forget_snap()

    def double(self, event: Pointer) -> None:
        self._gesture = None
        key = self.desk.under(event)
        if key is not None and len(picked(self.open_yard, key)) > 1:
            # Into the group: the member itself.
            self.open_yard.select({key})
            return
        grips.add_corner(self.open_yard, event.place, HIT_PIXELS * event.pixel)

    def cancel(self) -> bool:
        was = self._gesture is not None
        self._gesture = None
        self.open_yard.drop_trial()
        self.desk.forget_snap()
        if not was and self.open_yard.selection:
            self.open_yard.select(())
            return True
        return was

    def overlay(self) -> Overlay:
        if self._gesture is not None:
            return self._gesture.overlay()
        box = box_of(self._over, self._pixel) if self._over is not None else ()
        strokes = (Stroke(points=box, look="guide", closed=True),) if box else ()
        return Overlay(handles=grips.turn_handle(self.open_yard), strokes=strokes)

    @property
    def over_length(self) -> bool:  # type: ignore[override]
        return self._over is not None

    @property
    def live(self) -> frozenset[str]:
        return self._gesture.live if self._gesture is not None else frozenset()

    @property
    def busy(self) -> bool:
        return self._gesture is not None


class _Gesture:
    """One press to its release; works on the yard as it was at the press."""

    def __init__(self, tool: SelectTool, event: Pointer) -> None:
        self.tool, self.desk, self.open_yard = tool, tool.desk, tool.open_yard
        self.start = event.place
        self.before: Yard = self.open_yard.yard
        self.begun = False
        self.live: frozenset[str] = frozenset()

    def hint(self) -> str:
        return tr("Let go to put it down; Esc puts it back")

    def far_enough(self, event: Pointer) -> bool:
        """True once the pointer has gone far enough to mean a drag."""
        self.begun = self.begun or distance(self.start, event.place) > DRAG_PIXELS * event.pixel
        return self.begun

    def move(self, event: Pointer) -> None:
        if self.far_enough(event):
            self.drag(event)

    def drag(self, event: Pointer) -> None:
        """The pointer moved with the button down."""

    def release(self, event: Pointer) -> None:
        if self.begun:
            self.drag(event)
            self.end(event)

    def end(self, event: Pointer) -> None:
        """The button went up after a drag."""

    def overlay(self) -> Overlay:
        return Overlay()


class _Nothing(_Gesture):
    """A press that was all of it."""


class _Move(_Gesture):
    """Move the selection, or copies of it with Ctrl."""

    def __init__(self, tool: SelectTool, event: Pointer, grabbed: str) -> None:
        super().__init__(tool, event)
        self.grabbed = grabbed
        self.anchor = anchor_of(self.before, grabbed, event.place)
        self.ids = movable(self.before, self.open_yard.selection)
        self.troubles = troubles_of(self.open_yard, self.ids)
        self.offset: Point = (0.0, 0.0)

    def hint(self) -> str:
        if not self.ids:
            return tr("This is locked: unlock it in its fields to move it")
        return tr("Let go to put it down; Ctrl copies, Alt suspends snapping, Esc puts it back")

    def _trial(self, event: Pointer) -> tuple[Yard, Collection[str]]:
        if event.ctrl:
            base, keys = edits.duplicate(self.before, self.ids, (0.0, 0.0))
            return edits.move(base, keys, self.offset), keys
        return edits.move(self.before, self.ids, self.offset), self.ids

    def drag(self, event: Pointer) -> None:
        if not self.ids:
            return
        at = (
            self.anchor[0] + event.place[0] - self.start[0],
            self.anchor[1] + event.place[1] - self.start[1],
        )
        leave_out = () if event.ctrl else edits.together(self.before, self.ids)
        met = self.desk.snap(event, at, leave_out=leave_out)
        self.offset = (met[0] - self.anchor[0], met[1] - self.anchor[1])
        yard, keys = self._trial(event)
        self.live = edits.together(yard, keys)
        self.open_yard.show_trial(yard)

    def end(self, event: Pointer) -> None:
        if not self.ids:
            return
        yard, keys = self._trial(event)
        things = names_of(self.before, self.ids)
        text = tr("Copy {things}", things=things) if event.ctrl else tr("Move {things}", things=things)
        self.open_yard.commit(text, yard, selection=keys)
        before = () if event.ctrl else self.troubles
        self.desk.say(moved_words(self.open_yard, self.offset, before))

    def release(self, event: Pointer) -> None:
        if not self.begun and not event.shift:
            self.open_yard.select(picked(self.open_yard, self.grabbed, one=event.alt))
        super().release(event)

    def overlay(self) -> Overlay:
        if not self.begun:
            return Overlay(handles=grips.turn_handle(self.open_yard))
        met = (self.anchor[0] + self.offset[0], self.anchor[1] + self.offset[1])
        far = distance(self.anchor, met)
        if far < 1e-9:
            return Overlay()
        return Overlay(
            strokes=(Stroke(points=(self.anchor, met), look="guide"),),
            words=(Words(place=halfway(self.anchor, met), text=self.desk.length(far)),),
        )


class _Length(_Gesture):
    """A click on the length of an edge: it is typed over."""

    def __init__(self, tool: SelectTool, event: Pointer, figure: EdgeFigure) -> None:
        super().__init__(tool, event)
        self.figure = figure

    def release(self, event: Pointer) -> None:
        if not self.far_enough(event):
            self.desk.edit_edge(self.figure.key, self.figure.edge)


class _Band(_Gesture):
    """A rubber band over empty ground; with Shift it adds to the selection."""

    here: Point

    def __init__(self, tool: SelectTool, event: Pointer) -> None:
        super().__init__(tool, event)
        self.here = event.place
        self.kept = self.open_yard.selection if event.shift else frozenset()

    def hint(self) -> str:
        return tr("Let go to select what lies wholly inside")

    def drag(self, event: Pointer) -> None:
        self.here = event.place
        (ax, ay), (bx, by) = self.start, self.here
        within = things_within(self.before, min(ax, bx), min(ay, by), max(ax, bx), max(ay, by))
        self.open_yard.select(self.kept | only_whole(self.before, within))

    def release(self, event: Pointer) -> None:
        if not self.begun:
            self.open_yard.select(self.kept)
        super().release(event)

    def overlay(self) -> Overlay:
        (ax, ay), (bx, by) = self.start, self.here
        return Overlay(
            strokes=(Stroke(points=((ax, ay), (bx, ay), (bx, by), (ax, by)), look="band", closed=True),)
        )


class _Turn(_Gesture):
    """Turn the selection about its middle."""

    def __init__(self, tool: SelectTool, event: Pointer) -> None:
        super().__init__(tool, event)
        self.ids = movable(self.before, self.open_yard.selection)
        self.troubles = troubles_of(self.open_yard, self.ids)
        self.about = grips.middle_of(self.before, self.ids)
        self.degrees = 0.0

    def hint(self) -> str:
        return tr("Let go to leave it so; Alt turns freely, Esc turns it back")

    def drag(self, event: Pointer) -> None:
        turn = bearing(self.about, event.place) - bearing(self.about, self.start)
        self.degrees = turn if event.alt else round(turn / TURN_STEP) * TURN_STEP
        self.live = edits.together(self.before, self.ids)
        self.open_yard.show_trial(edits.rotate(self.before, self.ids, self.about, self.degrees))

    def end(self, event: Pointer) -> None:
        yard = edits.rotate(self.before, self.ids, self.about, self.degrees)
        self.open_yard.commit(tr("Turn {things}", things=names_of(self.before, self.ids)), yard)
        turned, outcome = f"{abs(self.degrees):.0f}", outcome_words(self.open_yard, self.troubles)
        self.desk.say(tr("Turned by {degrees} degrees; {outcome}", degrees=turned, outcome=outcome))

    def overlay(self) -> Overlay:
        turn = (self.degrees + 180) % 360 - 180
        return Overlay(words=(Words(place=self.about, text=f"{turn:.0f}°"),))


class _Corner(_Gesture):
    """Move one corner of the selected thing."""

    def __init__(self, tool: SelectTool, event: Pointer, grip: int) -> None:
        super().__init__(tool, event)
        self.grip = grip
        self.key = next(iter(self.open_yard.selection))

    def hint(self) -> str:
        return tr("Let go to leave the corner here; Alt suspends snapping, Esc puts it back")

    def drag(self, event: Pointer) -> None:
        origin = grips.measured_from(self.before, self.key, self.grip)
        met = self.desk.snap(event, leave_out=(self.key,), line=origin)
        self.live = frozenset({self.key})
        self.open_yard.show_trial(handles.with_handle(self.before, self.key, self.grip, met))

    def end(self, event: Pointer) -> None:
        name = names_of(self.before, {self.key})
        self.open_yard.commit(tr("Move corner of {name}", name=name), self.open_yard.shown_yard)

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
