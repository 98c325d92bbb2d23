"""Long work off the window's thread: numbered tickets, progress, cancel; an old answer is dropped."""

from __future__ import annotations

import contextlib
import os
import sys
from collections.abc import Callable
from queue import Empty, SimpleQueue
from threading import Event, Lock, Thread, get_native_id
from typing import Any

from PySide6.QtCore import QObject, Signal


class Ticket:
    """Handed to long work: the number of the request, whether it is still wanted, where to tell progress."""

    def __init__(self, number: int, tell: Callable[[int, float], None]) -> None:
        self.number = number
        self._tell = tell
        self._cancelled = Event()

    def cancel(self) -> None:
        self._cancelled.set()

    @property
    def cancelled(self) -> bool:
        """True when nobody waits for the answer any more; long work looks now and then and stops."""
        return self._cancelled.is_set()

    def progress(self, share: float) -> None:
        """Say how far the work is, 0 to 1. Raises Cancelled when the answer is no longer wanted."""
        if self.cancelled:
            raise Cancelled
        self._tell(self.number, share)


class Cancelled(Exception):
    """Ends work whose answer is no longer wanted."""


Job = Callable[[Ticket], Any]

#: How far behind frames long work ranks (a step of "nice"): a third of the core while both want it, not
#: less, since frames wait for what long work holds.
_BEHIND = 5


class Bench(QObject):
    """One place for one sort of long work: a new request cancels the one before it."""

    _back = Signal(object, object, object)
    _told = Signal(int, float)
    #: An answer that is still wanted.
    done = Signal(object)
    #: The work broke: the exception.
    broke = Signal(object)
    #: How far the work is, 0 to 1.
    progress = Signal(float)

    def __init__(self, parent: QObject | None = None, *, urgent: bool = False) -> None:
        """`urgent`: the hand waits for it; other work gives way to frames where they share a core."""
        super().__init__(parent)
        self._urgent = urgent
        self._number = 0
        self._ticket: Ticket | None = None
        self._next: Job | None = None
        # A thread of Python's own: its life does not hang on that of a Qt object.
        self._jobs: SimpleQueue[tuple[Ticket, Job] | None] = SimpleQueue()
        self._thread: Thread | None = None
        self._lock = Lock()
        self._waiting = 0
        self._idle = Event()
        self._idle.set()
        self._back.connect(self._arrived)
        self._told.connect(self._on_told)

    @property
    def busy(self) -> bool:
        """True while an answer is awaited."""
        return self._ticket is not None

    def ask(self, job: Job) -> None:
        """Start a job; whatever ran before is cancelled and its answer dropped."""
        self.cancel()
        self._number += 1
        self._ticket = Ticket(self._number, self._told.emit)
        self._hand_over(self._ticket, job)

    def ask_next(self, job: Job) -> None:
        """Start a job when the one that runs has ended; of those that wait only the newest is done."""
        if self._ticket is None:
            self.ask(job)
        else:
            self._next = job

    def cancel(self) -> None:
        """Drop what is running."""
        self._next = None
        if self._ticket is not None:
            self._ticket.cancel()
            self._ticket = None
        self._drop_waiting()

    def _drop_waiting(self) -> None:
        """Jobs that have not begun are forgotten, with all they hold."""
        with contextlib.suppress(Empty):
            while True:
                self._jobs.get_nowait()
                self._ended()

    def _ended(self) -> None:
        with self._lock:
            self._waiting -= 1
            if self._waiting == 0:
                self._idle.set()

    def _hand_over(self, ticket: Ticket, job: Job) -> None:
        with self._lock:
            self._waiting += 1
            self._idle.clear()
        self._jobs.put((ticket, job))
        if self._thread is None:
            self._thread = Thread(target=self._work, name="yardplan long work", daemon=True)
            self._thread.start()

    def _work(self) -> None:
        """The worker's thread: one job after the other until it is told to end."""
        if not self._urgent:
            _give_way()
        while (item := self._jobs.get()) is not None:
            self.hand_back(item[0], *_answer(*item))
            del item
            self._ended()

    def wait(self) -> None:
        """Wait for what is running to end."""
        self._idle.wait()

    def stop(self) -> None:
        """Cancel and wait for the thread to end; before the window goes."""
        self.cancel()
        if self._thread is not None:
            self._jobs.put(None)
            self._thread.join()
            self._thread = None

    def hand_back(self, ticket: Ticket, answer: Any, fault: BaseException | None) -> None:
        """Called on the worker's thread; the answer crosses over by a queued signal."""
        with contextlib.suppress(RuntimeError):  # the window went while the work was running
            self._back.emit(ticket, answer, fault)

    def _on_told(self, number: int, share: float) -> None:
        if self._ticket is not None and self._ticket.number == number:
            self.progress.emit(share)

    def _arrived(self, ticket: Ticket, answer: Any, fault: BaseException | None) -> None:
        if ticket is not self._ticket:
            return
        self._ticket = None
        following, self._next = self._next, None
        if following is not None:
            self.ask(following)
        if fault is not None:
            self.broke.emit(fault)
        elif not ticket.cancelled:
            self.done.emit(answer)


def _give_way() -> None:
    """Let frames go before this thread where both share a core, as far as the system ranks single threads."""
    if sys.platform == "linux":
        with contextlib.suppress(OSError):
            rank = os.getpriority(os.PRIO_PROCESS, 0)
            os.setpriority(os.PRIO_PROCESS, get_native_id(), rank + _BEHIND)


def _answer(ticket: Ticket, job: Job) -> tuple[Any, BaseException | None]:
    """What a job found, or what broke it; nothing where it is no longer wanted."""
    try:
        return (None if ticket.cancelled else job(ticket)), None
    except Cancelled:
        return None, None
    except Exception as error:
        return None, error
