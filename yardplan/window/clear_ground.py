"""Clear ground of the plant in hand or dragged, worked out beside the gesture: by room, then by light.

While only that plant moves its clear ground stays as it is; any other change asks for it anew.
"""

from __future__ import annotations

from collections.abc import Collection, Iterator, Sequence
from typing import TYPE_CHECKING

from attrs import evolve, frozen
from PySide6.QtCore import QObject, QTimer, Signal

from yardplan.window.workers import Bench, Ticket
from yardplan.yard import edits
from yardplan.yard.change import difference
from yardplan.yard.edits import points_of
from yardplan.yard.ground import Point
from yardplan.yard.planting import Bed, Container, Planting, Row
from yardplan.yard.yard import Yard

if TYPE_CHECKING:
    from yardplan.arrange.clear_ground import ClearGround
    from yardplan.checks.survey import Survey
    from yardplan.window.open_yard import OpenYard

#: Shifts are the same to so many digits, metres.
_DIGITS = 6
#: So many selected things at most, in a yard of so many plants, are worked out ahead of a drag.
_AHEAD_THINGS, _AHEAD_PLANTS = 20, 1000
#: Several selected things, or a yard just changed, are worked out after so long a rest, milliseconds.
_RESTS = 150
#: The id of a plant in hand that is not on the plan yet.
IN_HAND = "in hand"


@frozen(eq=False)
class _Subject:
    """Whose clear ground is wanted, in which yard and year."""

    what: Planting | frozenset[str]
    yard: Yard
    year: int | None

    def same(self, other: _Subject | None) -> bool:
        """True where the answer would be the same."""
        return (
            other is not None and self.yard is other.yard and self.year == other.year
            and self.what == other.what
        )


class _Work:
    """The steps towards one answer; used on the worker only."""

    def __init__(self, subject: _Subject, survey: Survey) -> None:
        self._subject, self._survey = subject, survey
        self._steps: Iterator[ClearGround] | None = None
        self._ticket: Ticket | None = None

    def step(self, ticket: Ticket) -> ClearGround | None:
        """The next answer, None when there is none better."""
        self._ticket = ticket
        if self._steps is None:
            self._steps = self._begun()
        ground = next(self._steps, None)
        if ground is not None:
            # Made here and kept, so that the window need not wait for it.
            ground.pieces()
        return ground

    def _begun(self) -> Iterator[ClearGround]:
        from yardplan.arrange.clear_ground import by_steps
        from yardplan.arrange.clear_together import steps_together

        what = self._subject.what
        if isinstance(what, Planting):
            return by_steps(self._survey, what, ("live", "full"), self._tell)
        return steps_together(self._survey, what, ("live", "full"), self._tell)

    def _tell(self, share: float) -> None:
        if self._ticket is not None:
            self._ticket.progress(share)


class ClearGroundShown(QObject):
    """Follows an OpenYard and keeps the clear ground of what is in hand or dragged.

    The first answer for what is selected is worked out ahead, unseen, so that it is there when it is dragged.
    """

    #: Other clear ground than before is shown, or none.
    changed = Signal()
    broke = Signal(object)

    def __init__(self, open_yard: OpenYard, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._open_yard = open_yard
        self._subject: _Subject | None = None
        self._work: _Work | None = None
        self._answer: ClearGround | None = None
        self._seen = False
        self._later = QTimer(self)
        self._later.setSingleShot(True)
        self._later.timeout.connect(self._begin_later)
        # The first answer does not wait for light that is not wanted any more.
        self._quick, self._slow = Bench(self, urgent=True), Bench(self)
        for bench in (self._quick, self._slow):
            bench.done.connect(self._take)
            bench.broke.connect(self._broke)
        for signal in (
            open_yard.shown, open_yard.in_hand_changed, open_yard.year_changed, open_yard.loaded,
        ):
            signal.connect(self._look)
        open_yard.selection_changed.connect(self._look_at_press)
        open_yard.closing.connect(self.stop)

    @property
    def ground(self) -> ClearGround | None:
        """The clear ground shown; None where nothing is in hand or dragged, or while it is worked out."""
        return self._answer if self._seen else None

    @property
    def worked_out(self) -> bool:
        """True when there is an answer, shown or ahead of a drag."""
        return self._answer is not None

    @property
    def busy(self) -> bool:
        """True while an answer is awaited."""
        return self._quick.busy or self._slow.busy

    @property
    def anchor(self) -> Point | None:
        """Where the anchor of things dragged together is now; None where one plant is told of, or none."""
        subject, ground = self._subject, self.ground
        if subject is None or isinstance(subject.what, Planting) or ground is None or ground.anchor is None:
            return None
        key = min(subject.what)
        before, now = subject.yard.find(key), self._open_yard.shown_yard.find(key)
        if before is None or now is None:
            return None
        (ax, ay), (bx, by) = points_of(before)[0], points_of(now)[0]
        return (ground.anchor[0] + bx - ax, ground.anchor[1] + by - ay)

    def _look(self, *_: object) -> None:
        """Something changed: ask anew where the answer would be another."""
        before = self.ground
        wanted = _subject_of(self._open_yard)
        self._later.stop()
        self._seen = wanted is not None
        if wanted is None:
            self._look_ahead()
        elif not wanted.same(self._subject):
            self._begin(wanted)
        elif before is None:
            self._go_on()
        if self.ground is not before:
            self.changed.emit()

    def _look_ahead(self) -> None:
        """Nothing is in hand or dragged: what is selected may be the next, as soon as the hand rests."""
        subject = _ahead(self._open_yard)
        if subject is None or not subject.same(self._subject) or self._slow.busy:
            self._begin(None)
            if subject is not None:
                self._later.start(_RESTS)

    def _look_at_press(self) -> None:
        """A plant just selected is most likely dragged at once."""
        self._look()
        if self._later.isActive() and len(self._open_yard.selection) == 1:
            self._later.stop()
            self._begin_later()

    def _begin_later(self) -> None:
        self._begin(_ahead(self._open_yard))

    def _begin(self, subject: _Subject | None) -> None:
        """Drop what was worked out for something else."""
        self._subject, self._answer, self._work = subject, None, None
        self._quick.cancel()
        self._slow.cancel()
        if subject is not None:
            self._work = _Work(subject, self._open_yard.checks.committed_survey)
            self._quick.ask(self._work.step)

    def _go_on(self) -> None:
        """Ask for the next answer after the first, which is there for all to see."""
        if self._work is not None and self._answer is not None and not self.busy:
            self._slow.ask(self._work.step)

    def _take(self, ground: ClearGround | None) -> None:
        if ground is None:
            return
        self._answer = ground
        if self._seen:
            self.changed.emit()
            self._go_on()

    def _broke(self, fault: BaseException) -> None:
        """A fault of ours must be seen, not swallowed by the worker."""
        raise fault

    def stop(self) -> None:
        """Cancel and wait for the worker."""
        self._work = None
        self._later.stop()
        self._quick.stop()
        self._slow.stop()


def _subject_of(open_yard: OpenYard) -> _Subject | None:
    """What is dragged over the committed yard, or the plant in hand."""
    yard = open_yard.yard
    if open_yard.on_trial:
        what = _on_trial(yard, open_yard.shown_yard)
        return None if what is None else _Subject(what, yard, open_yard.year)
    in_hand = open_yard.in_hand
    if in_hand is None:
        return None
    planting = Planting(
        id=IN_HAND, plant=in_hand.plant, place=(0.0, 0.0), form=in_hand.form, rootstock=in_hand.rootstock
    )
    return _Subject(planting, yard, open_yard.year)


def _ahead(open_yard: OpenYard) -> _Subject | None:
    """What would be dragged next: the things selected, where that is soon told."""
    yard, chosen = open_yard.yard, open_yard.selection
    if not 0 < len(chosen) <= _AHEAD_THINGS or len(yard.plantings) > _AHEAD_PLANTS or open_yard.on_trial:
        return None
    ids = edits.together(yard, chosen)
    things = yard.named(ids)
    what = _movable(things, ids) if len(things) == len(ids) else None
    return None if what is None else _Subject(what, yard, open_yard.year)


def _on_trial(before: Yard, shown: Yard) -> Planting | frozenset[str] | None:
    """The planting that a gesture moves or adds, or the plants, rows, beds, pots that it moves as they are.

    None where it concerns more than that.
    """
    change = difference(before, shown)
    if change.removed or change.altered or change.whole or (change.moved and change.added):
        return None
    if change.moved:
        return _moved(before, shown, change.moved)
    if len(change.added) != 1:
        return None
    new = shown.find(next(iter(change.added)))
    # Wherever it is held, its clear ground is the same: asked for as when it is only in hand.
    return evolve(new, id=IN_HAND, place=(0.0, 0.0)) if isinstance(new, Planting) else None


def _moved(before: Yard, shown: Yard, ids: frozenset[str]) -> Planting | frozenset[str] | None:
    """What was moved and nothing else: turned about or drawn otherwise, nothing is told of it."""
    things = before.named(ids)
    what = _movable(things, ids)
    if what is None or isinstance(what, Planting):
        return what
    pairs = [(points_of(old), points_of(new)) for old, new in zip(things, shown.named(ids), strict=True)]
    if any(len(old) != len(new) for old, new in pairs):
        return None
    shifts = {
        (round(bx - ax, _DIGITS), round(by - ay, _DIGITS))
        for old, new in pairs for (ax, ay), (bx, by) in zip(old, new, strict=True)
    }
    return what if len(shifts) == 1 else None


def _movable(things: Sequence[object], ids: Collection[str]) -> Planting | frozenset[str] | None:
    """Whose clear ground is asked for when these move: one plant, or plants, rows, beds and pots together."""
    plants = [thing for thing in things if isinstance(thing, Planting)]
    others = [thing for thing in things if not isinstance(thing, Planting | Container)]
    if len(plants) == 1 and not others:
        return plants[0]
    if (not plants and not others) or not all(isinstance(thing, Row | Bed) for thing in others):
        return None
    return frozenset(ids)
