"""Python's collector kept on the window's thread: on a worker it could destroy parts of the window."""

from __future__ import annotations

import gc
from collections.abc import Callable

from PySide6.QtCore import QObject, QTimer

#: How often it is looked whether anything is to be collected, milliseconds.
_EVERY_MS = 1000


class Tidy(QObject):
    """Switches the automatic collector off and collects by the same counts when the hand rests."""

    def __init__(self, busy: Callable[[], bool], parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._busy = busy
        self._timer = QTimer(self, interval=_EVERY_MS)
        self._timer.timeout.connect(self.collect_if_due)

    def start(self) -> None:
        """Clear up after starting, set aside what stays for good, and watch from now on."""
        gc.disable()
        gc.collect()
        # What is loaded by now stays; the collector need not walk it in the middle of a drag.
        gc.freeze()
        self._timer.start()

    def stop(self) -> None:
        """Hand back to Python: the program ends."""
        self._timer.stop()
        gc.unfreeze()
        gc.enable()

    def collect_if_due(self) -> None:
        """Collect the oldest generation whose count is over its threshold, unless a gesture is under way."""
        if self._busy():
            return
        counts = zip(gc.get_count(), gc.get_threshold(), strict=True)
        due = [generation for generation, (count, most) in enumerate(counts) if count > most]
        if due:
            gc.collect(max(due))
