"""Plans worked out beside the window for a comparison: on a worker, with cancel, never during a drag."""

from __future__ import annotations

from collections.abc import Sequence
from functools import partial
from typing import TYPE_CHECKING

from attrs import frozen
from PySide6.QtCore import QObject, QTimer, Signal

from yardplan.window.workers import Bench, Ticket
from yardplan.yard.variants import with_plan
from yardplan.yard.yard import PLAN_FIELDS, Yard

if TYPE_CHECKING:
    from yardplan.care.outcome import Outcome
    from yardplan.plants.catalogue import Catalogue
    from yardplan.window.open_yard import OpenYard

#: After a change the plan on the sheet is worked out again so long after the last step, milliseconds.
REST_MS = 400
#: Outcomes kept: as many as anyone looks at.
_KEPT = 24


@frozen(eq=False)
class Facts:
    """All that an outcome hangs on; alike when every part is the very same object."""

    plan: Yard
    parts: tuple[object, ...]

    def alike(self, other: Facts) -> bool:
        """True when nothing changed between the two."""
        return all(one is two for one, two in zip(self.parts, other.parts, strict=True))


def facts_of(yard: Yard, plan: Yard | None, year: int | None) -> Facts:
    """A variant's plan (None: the yard's own) with the yard's site, rules, own varieties and prices."""
    drawn = yard if plan is None else plan
    shared = (yard.site, yard.rules, yard.own_cultivars, yard.prices, yard.currency, year)
    parts = (*(getattr(drawn, name) for name in PLAN_FIELDS), *shared)
    return Facts(yard if plan is None else with_plan(yard, plan), parts)


def work_out(
    ticket: Ticket, plans: Sequence[Yard], catalogue: Catalogue, year: int | None
) -> tuple[Outcome, ...]:
    """The outcomes of some plans; runs on a worker with frozen yards."""
    from yardplan.care.outcome import outcome_of

    def told(number: int, share: float) -> None:
        ticket.progress((number + share) / len(plans))

    return tuple(
        outcome_of(plan, catalogue, year, partial(told, number)) for number, plan in enumerate(plans)
    )


class Comparing(QObject):
    """Keeps the outcomes of the plans asked for; variants are worked out once, the plan now when it rests."""

    #: All outcomes asked for are there.
    ready = Signal()
    #: How far the work is, 0 to 1.
    progress = Signal(float)
    #: Work began or ended.
    busy_changed = Signal()

    def __init__(self, open_yard: OpenYard, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._open_yard = open_yard
        self._bench = Bench(self)
        self._bench.done.connect(self._take)
        self._bench.broke.connect(self._broke)
        self._bench.progress.connect(self.progress)
        self._wanted: tuple[Facts, ...] = ()
        self._asked: tuple[Facts, ...] = ()
        self._kept: list[tuple[Facts, Outcome]] = []
        self._rest = QTimer(self, singleShot=True, interval=REST_MS)
        self._rest.timeout.connect(self._ask)
        open_yard.closing.connect(self.stop)

    @property
    def busy(self) -> bool:
        """True while plans are being worked out."""
        return self._bench.busy

    def want(self, wanted: Sequence[Facts], *, rested: bool = False) -> None:
        """Ask for the outcomes of these plans; `rested`: not before the hand has rested for a moment."""
        self._wanted = tuple(wanted)
        if not self._missing():
            self.cancel()
            self.ready.emit()
        elif rested:
            self._bench.cancel()
            self._rest.start()
        else:
            self._ask()

    def outcome(self, facts: Facts) -> Outcome | None:
        """What was worked out, or None."""
        return next((made for known, made in self._kept if known.alike(facts)), None)

    def _missing(self) -> tuple[Facts, ...]:
        missing: list[Facts] = []
        for facts in self._wanted:
            if self.outcome(facts) is None and not any(facts.alike(other) for other in missing):
                missing.append(facts)
        return tuple(missing)

    def hold(self) -> None:
        """Something is being dragged: the machine is the drag's."""
        if self.busy:
            self._bench.cancel()
            self.busy_changed.emit()
        self._rest.stop()

    def cancel(self) -> None:
        """Stop working; what is there stays."""
        self.hold()

    def _ask(self) -> None:
        self._asked = self._missing()
        if self._open_yard.on_trial or not self._asked:
            return
        plans, known = [facts.plan for facts in self._asked], self._open_yard.catalogue
        year = self._open_yard.year
        self._bench.ask(lambda ticket: work_out(ticket, plans, known, year))
        self.busy_changed.emit()

    def _take(self, made: tuple[Outcome, ...]) -> None:
        self._kept = [*zip(self._asked, made, strict=True), *self._kept][:_KEPT]
        self.busy_changed.emit()
        if not self._missing():
            self.ready.emit()

    def _broke(self, fault: BaseException) -> None:
        """A fault of ours must be seen, not swallowed by the worker."""
        raise fault

    def stop(self) -> None:
        """Cancel and wait for the worker; before the window goes."""
        self._rest.stop()
        self._bench.stop()
