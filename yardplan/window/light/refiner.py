"""Work that is first done coarsely, so that something true shows soon, and then refined."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QObject, Signal

from yardplan.window.workers import Bench, Ticket

if TYPE_CHECKING:
    from yardplan.sun.season import Detail

    Work = Callable[[Ticket, Detail], Any]
#: The coarse part's share of the progress told.
_COARSE = 0.2


class Refiner(QObject):
    """One sort of work at a time. Coarse work that has begun is finished, so that a slider is followed; the
    newest request comes next. Refining is dropped as soon as anything newer is asked for."""

    #: An answer, coarse or refined.
    done = Signal(object)
    broke = Signal(object)
    progress = Signal(float)

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._bench = Bench(self)
        self._bench.done.connect(self._arrived)
        self._bench.broke.connect(self.broke)
        self._bench.progress.connect(self._told)
        self._work: Work | None = None
        self._coarse = False

    @property
    def busy(self) -> bool:
        """True while an answer is awaited."""
        return self._bench.busy

    def ask(self, work: Work, *, coarse: bool = True) -> None:
        """Do this instead of what was asked before; `coarse` False goes straight to the refined answer."""
        self._work = work
        if not coarse:
            self._refine()
            return
        if not self._coarse:
            self._bench.cancel()
        self._coarse = True
        self._bench.ask_next(lambda ticket: work(ticket, "live"))

    def _refine(self) -> None:
        work = self._work
        if work is not None:
            self._coarse = False
            self._bench.ask(lambda ticket: work(ticket, "full"))

    def _arrived(self, answer: Any) -> None:
        refine = self._coarse and not self._bench.busy
        if refine:
            self._refine()
        elif not self._bench.busy:
            self._work, self._coarse = None, False
        self.done.emit(answer)

    def _told(self, share: float) -> None:
        self.progress.emit(_COARSE * share if self._coarse else _COARSE + (1.0 - _COARSE) * share)

    def cancel(self) -> None:
        """Drop what is running."""
        self._work, self._coarse = None, False
        self._bench.cancel()

    def stop(self) -> None:
        """Cancel and wait; before the window goes."""
        self.cancel()
        self._bench.stop()
