"""The pointer: select, move, copy by Ctrl, band, turn by the round grip, move corners by the square ones."""

from __future__ import annotations

from collections.abc import Collection
from typing import TYPE_CHECKING

from yardplan.language import later, tr
from yardplan.units import UnitError
from yardplan.window.canvas.geometry import distance, halfway
from yardplan.window.tools import grips
from yardplan.window.tools.band import band_between, caught
from yardplan.window.tools.desk import HIT_PIXELS, Desk
from yardplan.window.tools.edge_figures import box_of, figure_at
from yardplan.window.tools.event import Pointer
from yardplan.window.tools.gestures import Corner, Gesture, Length, Turn
from yardplan.window.tools.moving import anchor_of, movable, moved_words, troubles_of
from yardplan.window.tools.naming import names_of
from yardplan.window.tools.picking import frames, picked
from yardplan.window.tools.tool import Overlay, Stroke, Tool, Words
from yardplan.yard import edits
from yardplan.yard.ground import Point
from yardplan.yard.yard import Yard

if TYPE_CHECKING:
    from yardplan.drawing.dimensions import EdgeFigure


class SelectTool(Tool):
    """Press on a thing and drag it; press beside things and draw a band round several."""

    name, key, icon = later("Select"), "S", "select"
    about = later("Click a thing to select it, drag to move it; drag over empty ground to select several")

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk)
        self._gesture: Gesture | None = None
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
        if self._gesture is not None and self._gesture.held:
            self._put_held(event)
            return
        self._gesture = (
            self._grip(event) or self._figure(event) or self._thing(event) or _Band(self, event)
        )

    def _grip(self, event: Pointer) -> Gesture | None:
        grip = self._grip_under(event)
        if grip is None:
            return None
        return Turn(self, event) if grip == grips.TURN else Corner(self, event, grip)

    def _grip_under(self, event: Pointer) -> int | None:
        return grips.grip_at(self.open_yard, event.place, HIT_PIXELS * event.pixel, event.pixel)

    def _figure(self, event: Pointer) -> Gesture | None:
        figure = self._figure_under(event)
        return Length(self, event, figure) if figure is not None else None

    def _figure_under(self, event: Pointer) -> EdgeFigure | None:
        if event.shift or not self.desk.shows_lengths():
            return None
        return figure_at(self.open_yard, event)

    def _thing(self, event: Pointer) -> Gesture | None:
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
        if self._gesture is not None and self._gesture.stale:
            self.cancel()
        if self._gesture is not None and (event.dragging or self._gesture.held):
            self._gesture.move(event)
        elif self._gesture is None:
            self._pixel = event.pixel
            over = self._figure_under(event)
            self._over = None if over is not None and self._grip_under(event) is not None else over

    def leave(self) -> None:
        self._over = None

    def release(self, event: Pointer) -> None:
        gesture = self._gesture
        if gesture is not None and gesture.sticky and not gesture.begun:
            gesture.held = True
            return
        self._gesture = None
        if gesture is not None and not gesture.stale:
            gesture.release(event)
        self.desk.forget_snap()

    def _put_held(self, event: Pointer) -> None:
        """A click ends what went on without the button."""
        gesture, self._gesture = self._gesture, None
        if gesture is not None and not gesture.stale:
            gesture.drag(event)
            gesture.end(event)
        self.desk.forget_snap()

    @property
    def takes_lengths(self) -> bool:  # type: ignore[override]
        return self._gesture is not None and self._gesture.held

    def typed(self, text: str) -> None:
        gesture = self._gesture
        if gesture is None or gesture.stale:
            raise UnitError(tr("Nothing is being moved"))
        gesture.typed(text)
        self._gesture = None
        self.desk.forget_snap()

    def double(self, event: Pointer) -> None:
        if self._gesture is not None:
            self.open_yard.drop_trial()
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
        boxes = (*frames(self.open_yard), *((box,) if box else ()))
        strokes = tuple(Stroke(points=points, look="guide", closed=True) for points in boxes)
        return Overlay(handles=grips.turn_handle(self.open_yard, self._pixel), strokes=strokes)

    @property
    def over_length(self) -> bool:  # type: ignore[override]
        return self._over is not None

    @property
    def live(self) -> frozenset[str]:
        return self._gesture.live if self._gesture is not None else frozenset()

    @property
    def busy(self) -> bool:
        return self._gesture is not None


class _Nothing(Gesture):
    """A press that was all of it."""


class _Move(Gesture):
    """Move the selection, or copies of it with Ctrl."""

    def __init__(self, tool: SelectTool, event: Pointer, grabbed: str) -> None:
        super().__init__(tool, event)
        self.grabbed, self.pixel = grabbed, event.pixel
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
            return Overlay(handles=grips.turn_handle(self.open_yard, self.pixel))
        met = (self.anchor[0] + self.offset[0], self.anchor[1] + self.offset[1])
        far = distance(self.anchor, met)
        if far < 1e-9:
            return Overlay()
        return Overlay(
            strokes=(Stroke(points=(self.anchor, met), look="guide"),),
            words=(Words(place=halfway(self.anchor, met), text=self.desk.length(far)),),
        )


class _Band(Gesture):
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
        self.open_yard.select(self.kept | caught(self.before, self.start, self.here))

    def release(self, event: Pointer) -> None:
        if not self.begun:
            self.open_yard.select(self.kept)
        super().release(event)

    def overlay(self) -> Overlay:
        return Overlay(strokes=(band_between(self.start, self.here),))
