"""Clear ground of the plant in hand or dragged, worked out beside the gesture: by room, then by light.

While only that plant moves its clear ground stays as it is; any other change asks for it anew.
"""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from attrs import evolve, frozen
from PySide6.QtCore import QObject, Signal

from yardplan.window.workers import Bench, Ticket
from yardplan.yard.change import difference
from yardplan.yard.planting import Planting
from yardplan.yard.yard import Yard

if TYPE_CHECKING:
    from yardplan.arrange.clear_ground import ClearGround
    from yardplan.checks.survey import Survey
    from yardplan.window.open_yard import OpenYard

#: The id of a plant in hand that is not on the plan yet.
IN_HAND = "in hand"


@frozen(eq=False)
class _Subject:
    """Whose clear ground is wanted, in which yard and year."""

    planting: Planting
    yard: Yard
    year: int | None

    def same(self, other: _Subject | None) -> bool:
        """True where the answer would be the same."""
        return (
            other is not None and self.yard is other.yard and self.year == other.year
            and self.planting == other.planting
        )


class _Work:
    """The steps towards one answer; used on the worker only."""

    def __init__(self, subject: _Subject, survey: Survey) -> None:
        self._subject, self._survey = subject, survey
        self._steps: Iterator[ClearGround] | None = None
        self._ticket: Ticket | None = None

    def step(self, ticket: Ticket) -> ClearGround | None:
        """The next answer, None when there is none better."""
        from yardplan.arrange.clear_ground import by_steps

        self._ticket = ticket
        if self._steps is None:
            self._steps = by_steps(self._survey, self._subject.planting, ("live", "full"), self._tell)
        return next(self._steps, None)

    def _tell(self, share: float) -> None:
        if self._ticket is not None:
            self._ticket.progress(share)


class ClearGroundShown(QObject):
    """Follows an OpenYard and keeps the clear ground of what is in hand or dragged."""

    #: Other clear ground than before is shown, or none.
    changed = Signal()
    broke = Signal(object)

    def __init__(self, open_yard: OpenYard, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._open_yard = open_yard
        self._subject: _Subject | None = None
        self._work: _Work | None = None
        self.ground: ClearGround | None = None
        # The first answer does not wait for light that is not wanted any more.
        self._quick, self._slow = Bench(self), Bench(self)
        for bench in (self._quick, self._slow):
            bench.done.connect(self._take)
            bench.broke.connect(self._broke)
        for signal in (
            open_yard.shown, open_yard.in_hand_changed, open_yard.year_changed, open_yard.loaded,
        ):
            signal.connect(self._look)
        open_yard.closing.connect(self.stop)

    @property
    def busy(self) -> bool:
        """True while an answer is awaited."""
        return self._quick.busy or self._slow.busy

    def _look(self, *_: object) -> None:
        """Something changed: ask anew where the answer would be another."""
        subject = _subject_of(self._open_yard)
        if subject is None and self._subject is None:
            return
        if subject is not None and subject.same(self._subject):
            return
        self._subject = subject
        self._quick.cancel()
        self._slow.cancel()
        self._work = None if subject is None else _Work(subject, self._open_yard.checks.committed_survey)
        if self.ground is not None:
            self.ground = None
            self.changed.emit()
        if self._work is not None:
            self._quick.ask(self._work.step)

    def _take(self, ground: ClearGround | None) -> None:
        if ground is None:
            return
        self.ground = ground
        self.changed.emit()
        if self._work is not None:
            self._slow.ask(self._work.step)

    def _broke(self, fault: BaseException) -> None:
        """A fault of ours must be seen, not swallowed by the worker."""
        raise fault

    def stop(self) -> None:
        """Cancel and wait for the worker."""
        self._work = None
        self._quick.stop()
        self._slow.stop()


def _subject_of(open_yard: OpenYard) -> _Subject | None:
    """The one plant that is dragged over the committed yard, or the one in hand."""
    yard = open_yard.yard
    if open_yard.on_trial:
        planting = _on_trial(yard, open_yard.shown_yard)
        return None if planting is None else _Subject(planting, yard, open_yard.year)
    in_hand = open_yard.in_hand
    if in_hand is None:
        return None
    planting = Planting(
        id=IN_HAND, plant=in_hand.plant, place=(0.0, 0.0), form=in_hand.form, rootstock=in_hand.rootstock
    )
    return _Subject(planting, yard, open_yard.year)


def _on_trial(before: Yard, shown: Yard) -> Planting | None:
    """The planting that a gesture moves or adds, where it concerns no more than that and its container."""
    change = difference(before, shown)
    if change.removed or change.altered or change.whole:
        return None
    pots = {pot.id for pot in before.containers}
    moved, added = change.moved - pots, change.added
    if len(moved) + len(added) != 1:
        return None
    if moved:
        found = before.find(next(iter(moved)))
        return found if isinstance(found, Planting) else None
    new = shown.find(next(iter(added)))
    # Wherever it is held, its clear ground is the same: asked for as when it is only in hand.
    return evolve(new, id=IN_HAND, place=(0.0, 0.0)) if isinstance(new, Planting) else None
