"""Near checks within a frame's time: quick ones at once, slow ones beside the drag, the newest place first.

In a home yard every near check is quick. Among thousands of plants some take longer than a frame: they are
worked out on a worker, and what they found before is shown pale until they answer.
"""

from __future__ import annotations

import time
from collections.abc import Mapping
from typing import TYPE_CHECKING

from attrs import field, frozen
from PySide6.QtCore import QObject, Signal

from yardplan.checks.finding import Finding
from yardplan.window.workers import Bench, Ticket
from yardplan.yard.change import Change
from yardplan.yard.yard import Yard

if TYPE_CHECKING:
    from yardplan.checks.check import Check
    from yardplan.checks.survey import Survey

#: Processor time that the checks of one frame may take together, and below which one is always run, seconds.
FRAME, TRIFLE = 0.006, 0.0008
#: Among more plants than this a first run tells how slow a check is.
_MANY = 1500


@frozen
class Found:
    """Findings of some checks; `checks` names every check that was run, also those that found nothing."""

    yard: Yard
    checks: frozenset[str]
    findings: tuple[Finding, ...]
    #: Processor time of each check, seconds.
    took: Mapping[str, float] = field(factory=dict)


class FrameChecks(QObject):
    """Knows how long each check took last and runs what fits into a frame."""

    answered = Signal(object)
    broke = Signal(object)

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        #: Times of the last two runs: only what was slow twice is slow, since a first run reads tables.
        self._took: dict[str, tuple[float, float]] = {}
        self._bench = Bench(self, urgent=True)
        self._bench.done.connect(self._take)
        self._bench.broke.connect(self.broke)

    def run(self, survey: Survey, change: Change | None, *, all_of_them: bool) -> Found:
        """Run the near checks at once, all or those that fit; `change`: what is new since the last run."""
        found = _run(survey, self._due(change) if all_of_them else self._fitting(self._due(change)))
        # A run of all starts from nothing and may read tables: it does not tell what a frame will take.
        # Among thousands of plants tables are the least of it: there the first frame must not wait for them.
        if not all_of_them:
            self._note(found)
        elif len(survey.stand.plants) > _MANY:
            self._took = {name: (took, took) for name, took in found.took.items()} | self._took
        return found

    def follow_slow(self, survey: Survey, change: Change, done: frozenset[str]) -> None:
        """Work out the rest of a frame on the worker, unless a newer frame comes first."""
        rest = [check for check in self._due(change) if check.name not in done]
        if rest:
            self._bench.ask_next(lambda ticket: _run(survey, rest, ticket))

    def end(self) -> None:
        """Nothing more is wanted of this gesture."""
        self._bench.cancel()

    def stop(self) -> None:
        """Wait for the worker; before the window goes."""
        self._bench.stop()

    def _note(self, found: Found) -> None:
        for name, took in found.took.items():
            self._took[name] = (took, self._took.get(name, (0.0, 0.0))[0])

    def _usual(self, check: Check) -> float:
        return min(self._took.get(check.name, (0.0, 0.0)))

    def _take(self, found: Found) -> None:
        self._note(found)
        self.answered.emit(found)

    def _due(self, change: Change | None) -> list[Check]:
        """Near checks that the change can matter to."""
        from yardplan.checks.run import CHECKS

        moves = change is not None and change.only_moves
        return [check for check in CHECKS if check.near and not check.light and (check.places or not moves)]

    def _fitting(self, checks: list[Check]) -> list[Check]:
        """The quickest, as many as a frame holds, in their usual order."""
        fitting: set[str] = set()
        together = 0.0
        for check in sorted(checks, key=self._usual):
            took = self._usual(check)
            together += took
            if took <= TRIFLE or together <= FRAME:
                fitting.add(check.name)
        return [check for check in checks if check.name in fitting]


def _run(survey: Survey, checks: list[Check], ticket: Ticket | None = None) -> Found:
    found: list[Finding] = []
    took: dict[str, float] = {}
    for check in checks:
        if ticket is not None:
            ticket.progress(0.0)
        began = time.thread_time()
        found += check.run(survey)
        took[check.name] = time.thread_time() - began
    return Found(survey.yard, frozenset(took), tuple(found), took)
