"""Keeps a recovery copy of unsaved work, never over the user's file, and offers it after a crash."""

from __future__ import annotations

import os
from datetime import datetime
from pathlib import Path

from PySide6.QtCore import QObject, QStandardPaths, QTimer, Signal

from yardplan.files.errors import YardFileError
from yardplan.language import tr
from yardplan.window.open_yard import OpenYard
from yardplan.window.questions import Questions
from yardplan.window.workers import Bench, Ticket

#: A copy is written so long after the last change, milliseconds.
AFTER_MS = 5000


def recovery_folder() -> Path:
    """Where copies lie: the program's own state, not beside the user's file."""
    place = QStandardPaths.writableLocation(QStandardPaths.StandardLocation.AppLocalDataLocation)
    return Path(place) / "recovery"


class Autosave(QObject):
    """Counts edits of the document and keeps a copy a few seconds after the last."""

    #: A copy could not be written: what is wrong, for the status line.
    failed = Signal(str)

    def __init__(
        self, open_yard: OpenYard, folder: Path | None = None, parent: QObject | None = None
    ) -> None:
        super().__init__(parent)
        self._yard = open_yard
        self.folder = folder or recovery_folder()
        self._document = os.urandom(16).hex()
        self._edits = 0
        self._bench = Bench(self)
        self._bench.broke.connect(self._broke)
        self._timer = QTimer(self, singleShot=True, interval=AFTER_MS)
        self._timer.timeout.connect(self.keep_now)
        open_yard.undo_stack.indexChanged.connect(self._edited)
        open_yard.loaded.connect(self._other_document)
        open_yard.saved.connect(self._saved)

    def _edited(self, _index: int) -> None:
        self._edits += 1
        if self._yard.unsaved:
            self._timer.start()

    def _other_document(self) -> None:
        from yardplan.files import recovery

        self._timer.stop()
        recovery.forget(self.folder, self._document)
        self._document, self._edits = os.urandom(16).hex(), 0

    def _saved(self) -> None:
        from yardplan.files import recovery

        self._timer.stop()
        self._bench.stop()
        try:
            recovery.saved(self.folder, self._document, self._edits)
        except YardFileError as error:
            self._broke(error)

    def keep_now(self) -> None:
        """Write the copy, from a snapshot, on a worker."""
        from yardplan.files import recovery

        folder, document, edits = self.folder, self._document, self._edits
        path, yard = self._yard.path, self._yard.yard

        def job(_ticket: Ticket) -> Path:
            return recovery.keep(folder, document, path, edits, yard)

        self._bench.ask(job)

    def _broke(self, fault: BaseException) -> None:
        self.failed.emit(tr("No recovery copy: {fault}", fault=fault))

    def offer(self, questions: Questions) -> bool:
        """Offer work that no file holds; True when it was taken up."""
        from yardplan.files import recovery
        from yardplan.window.panels.days import say_day

        for copy in recovery.find(self.folder).copies:
            if copy.writer_runs or copy.document == self._document:
                continue
            name = copy.path.name if copy.path else copy.yard.site.name
            written = datetime.fromtimestamp(copy.written)
            when = f"{say_day(f'{written:%m-%d}')} {written:%H:%M}"
            if questions.restore(name, when):
                self._yard.restore(copy.yard, copy.path)
                self.keep_now()
                self._bench.wait()
                recovery.forget(self.folder, copy.document)
                return True
        return False

    def close(self) -> None:
        """The window closes: saved or given up, so nothing is kept."""
        from yardplan.files import recovery

        self._timer.stop()
        self._bench.stop()
        recovery.forget(self.folder, self._document)
