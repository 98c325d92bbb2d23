"""Light while things are dragged: worked out beside the drag, the newest place first, none waited for."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from attrs import evolve, frozen
from PySide6.QtCore import QObject, Signal

from yardplan.checks.finding import Finding
from yardplan.window.workers import Bench, Ticket
from yardplan.yard.yard import Yard

if TYPE_CHECKING:
    from yardplan.checks.survey import Survey
    from yardplan.sun.light import LightReport


@frozen
class DragAnswer:
    """Light and light findings of one frame; `yard` says of which."""

    yard: Yard
    light: LightReport
    findings: tuple[Finding, ...]


class DragLight(QObject):
    """One gesture at a time: `begin` at its first frame, `follow` for each, `end` when it is over."""

    answered = Signal(object)
    broke = Signal(object)

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._bench = Bench(self)
        self._bench.done.connect(self.answered)
        self._bench.broke.connect(self.broke)
        self._gesture: _Gesture | None = None

    def follow(self, start: Survey, survey: Survey, ids: frozenset[str]) -> None:
        """Work out this frame, unless a newer one comes first; `start` is the survey at the press."""
        gesture = self._gesture
        if gesture is None or gesture.start is not start or gesture.ids != ids:
            gesture = self._gesture = _Gesture(start, ids)
        self._bench.ask_next(lambda ticket: gesture.frame(ticket, survey))

    def end(self) -> None:
        """The gesture is over; nothing more is wanted of it."""
        self._gesture = None
        self._bench.cancel()

    def stop(self) -> None:
        """Wait for the worker; before the window goes."""
        self._gesture = None
        self._bench.stop()


class _Gesture:
    """What stays the same during one gesture; used on the worker only."""

    def __init__(self, start: Survey, ids: frozenset[str]) -> None:
        self.start, self.ids = start, ids
        self._scene: Any = None
        self._drag: Any = None

    def frame(self, ticket: Ticket, survey: Survey) -> DragAnswer:
        """Light with the things where they are in `survey`."""
        from yardplan.checks.run import CHECKS
        from yardplan.sun.moving import Drag
        from yardplan.sun.scene import moved_scene, scene_of

        if self._drag is None:
            self._scene = scene_of(self.start.yard, self.start.stand)
            self._drag = Drag(self._scene, self.ids)
            ticket.progress(0.5)
        light = self._drag.frame(moved_scene(self._scene, survey.yard, survey.stand, self.ids))
        lit = evolve(survey, light=light)
        found = [finding for check in CHECKS if check.light for finding in check.run(lit)]
        return DragAnswer(survey.yard, light, tuple(found))
