"""What stands beside the sheet follows a gesture some times a second: no frame waits for a panel."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QTimer

if TYPE_CHECKING:
    from yardplan.window.open_yard import OpenYard

#: Milliseconds between two renewals of what stands beside the sheet while a gesture lasts.
BESIDE = 120


class Paced(QObject):
    """Renews something when the yard changes: at once at rest, and at most every `BESIDE` in a gesture."""

    def __init__(self, open_yard: OpenYard, renew: Callable[[], object], parent: QObject) -> None:
        super().__init__(parent)
        self._open_yard, self._renew = open_yard, renew
        self._timer = QTimer(self)
        self._timer.setSingleShot(True)
        self._timer.setInterval(BESIDE)
        self._timer.timeout.connect(self._due)

    def soon(self, *_: object) -> None:
        """Something changed; what a signal says of it is not looked at."""
        if not self._open_yard.on_trial:
            self._timer.stop()
            self._renew()
        elif not self._timer.isActive():
            self._timer.start()

    def _due(self) -> None:
        self._renew()
