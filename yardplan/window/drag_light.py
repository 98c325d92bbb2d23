"""Light while things are dragged: worked out beside the drag, the newest place first, none waited for.

Python runs one thread at a time: light worked out in the middle of a frame would double what the frame takes.
So it begins when the frame is painted, and rests between two answers.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from attrs import evolve, frozen
from PySide6.QtCore import QObject, QTimer, Signal

from yardplan.checks.finding import Finding
from yardplan.window.workers import Bench, Ticket
from yardplan.yard.yard import Yard

if TYPE_CHECKING:
    from yardplan.checks.survey import Survey
    from yardplan.sun.ground_kinds import Wanted
    from yardplan.sun.light import GroundField, LightReport


#: Milliseconds from a move of the hand to its light: the frame is painted in that time.
_PAUSE = 12


@frozen
class DragAnswer:
    """Light and light findings of one frame; `yard` says of which. `ground` by what the overlay shows."""

    yard: Yard
    light: LightReport
    findings: tuple[Finding, ...]
    ground: GroundField | None = None


class DragLight(QObject):
    """One gesture at a time: `begin` at its first frame, `follow` for each, `end` when it is over."""

    answered = Signal(object)
    broke = Signal(object)

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._bench = Bench(self)
        self._bench.done.connect(self._take)
        self._bench.broke.connect(self.broke)
        self._gesture: _Gesture | None = None
        self._newest: Survey | None = None
        self._pause = QTimer(self)
        self._pause.setSingleShot(True)
        self._pause.setInterval(_PAUSE)
        self._pause.timeout.connect(self._ask)
        #: What the overlay shows of the ground; None: no overlay.
        self.wanted: Wanted | None = None

    def follow(self, start: Survey, survey: Survey, ids: frozenset[str]) -> None:
        """Work out this frame, unless a newer one comes first; `start` is the survey at the press."""
        if self._gesture is None or not self._gesture.serves(start, ids, self.wanted):
            self._gesture = _Gesture(start, ids, self.wanted)
            self._bench.cancel()
        self._newest = survey
        if not (self._bench.busy or self._pause.isActive()):
            self._pause.start()

    def _ask(self) -> None:
        gesture, survey = self._gesture, self._newest
        self._newest = None
        if gesture is not None and survey is not None:
            self._bench.ask(lambda ticket: gesture.frame(ticket, survey))

    def _take(self, answer: DragAnswer) -> None:
        self.answered.emit(answer)
        if self._newest is not None:
            self._pause.start()

    def end(self) -> None:
        """The gesture is over; nothing more is wanted of it."""
        self._gesture = self._newest = None
        self._pause.stop()
        self._bench.cancel()

    def stop(self) -> None:
        """Wait for the worker; before the window goes."""
        self._gesture = self._newest = None
        self._pause.stop()
        self._bench.stop()


class _Gesture:
    """What stays the same during one gesture; used on the worker only."""

    def __init__(self, start: Survey, ids: frozenset[str], wanted: Wanted | None) -> None:
        self.start, self.ids, self.wanted = start, ids, wanted
        self._scene: Any = None
        self._drag: Any = None
        self._ground: Any = None

    def serves(self, start: Survey, ids: frozenset[str], wanted: Wanted | None) -> bool:
        """True when these frames are of the same gesture."""
        return self.start is start and self.ids == ids and self.wanted == wanted

    def frame(self, ticket: Ticket, survey: Survey) -> DragAnswer:
        """Light with the things where they are in `survey`."""
        from yardplan.checks.run import CHECKS
        from yardplan.sun.scene import moved_scene

        if self._drag is None:
            self._take_up(ticket)
        scene = moved_scene(self._scene, survey.yard, survey.stand, self.ids)
        light = self._drag.frame(scene)
        ground = self._ground.field(scene) if self._ground is not None else light.field
        if self.wanted is not None:
            from yardplan.drawing.light_picture import prepare

            prepare(ground)
        lit = evolve(survey, light=light)
        found = [finding for check in CHECKS if check.light for finding in check.run(lit)]
        return DragAnswer(survey.yard, light, tuple(found), ground)

    def _take_up(self, ticket: Ticket) -> None:
        """Take the moving things out of the light as it stands."""
        from yardplan.sun.ground_kinds import MovingGround, Wanted
        from yardplan.sun.moving import Drag
        from yardplan.sun.scene import scene_of

        self._scene = scene_of(self.start.yard, self.start.stand)
        self._drag = Drag(self._scene, self.ids)
        ticket.progress(0.5)
        if self.wanted not in (None, Wanted()):
            self._ground = MovingGround(self._scene, self.ids, self.wanted)
