"""New, open, save, recent files, and the question before unsaved work goes."""

from __future__ import annotations

import os
from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import QObject, QSettings, Signal

from yardplan.files.errors import YardFileError
from yardplan.language import tr
from yardplan.window.open_yard import OpenYard
from yardplan.window.questions import Questions
from yardplan.yard.yard import Yard

#: Files kept in the list of recent ones.
RECENT = 10
_RECENT_KEY = "files/recent"


class Documents(QObject):
    """The file side of one window."""

    recent_changed = Signal()

    def __init__(
        self, open_yard: OpenYard, questions: Questions, settings: QSettings, parent: QObject | None = None
    ) -> None:
        super().__init__(parent)
        self.open_yard, self.questions, self.settings = open_yard, questions, settings
        #: Makes a new yard, or None when the person thought better of it.
        self.make_new: Callable[[], Yard | None] = Yard

    def may_leave(self) -> bool:
        """True when nothing unsaved is lost by leaving the yard: saved now, or given up."""
        if not self.open_yard.unsaved:
            return True
        answer = self.questions.save_changes(self.open_yard.yard.site.name)
        if answer == "save":
            return self.save()
        return answer == "discard"

    def new(self) -> None:
        """Begin another yard."""
        if self.may_leave():
            yard = self.make_new()
            if yard is not None:
                self.open_yard.new(yard)

    def open(self) -> None:
        """Ask for a file and open it."""
        if self.may_leave():
            path = self.questions.open_path(self.folder())
            if path is not None:
                self.load(path)

    def open_path(self, path: Path) -> None:
        """Open that file, with the question about unsaved work first."""
        if self.may_leave():
            self.load(path)

    def load(self, path: Path, *, as_copy: bool = False) -> bool:
        """Open a file; tells what is wrong and leaves everything as it was when it cannot be read.

        `as_copy`: a sample; saving asks for a name of its own.
        """
        try:
            if as_copy:
                from yardplan.files.reading import read_yard

                self.open_yard.new(read_yard(path))
            else:
                self.open_yard.open(path)
                self._remember(path)
        except YardFileError as error:
            self.tell(self._not_opened(path), error)
            return False
        return True

    def _not_opened(self, path: Path) -> str:
        """What is said of a file that cannot be read, and of the good copy beside it, if there is one."""
        from yardplan.files.writing import backup_of

        title, good = tr("{name} was not opened", name=path.name), backup_of(path)
        if not good.is_file():
            return title
        copy = tr(
            "As it was before the last save, it lies beside it as {copy}: copy that under a name that ends "
            "in .yard, and open the copy.", copy=good.name,
        )
        return f"{title}. {copy}"

    def save(self) -> bool:
        """Save to the yard's file, asking for one when it has none. True when it is saved."""
        return self._write(self.open_yard.path) if self.open_yard.path else self.save_as()

    def save_as(self) -> bool:
        """Ask where and save there."""
        path = self.questions.save_path(self._suggested())
        return path is not None and self._write(path)

    def _write(self, path: Path) -> bool:
        try:
            self.open_yard.save(path)
        except YardFileError as error:
            self.tell(tr("The yard is not saved; Save as puts it in another place"), error)
            return False
        self._remember(path)
        return True

    def tell(self, title: str, error: YardFileError) -> None:
        """Say what is wrong with a file, every fault in the details."""
        details = "\n".join(str(fault) for fault in error.faults) if len(error.faults) > 1 else ""
        self.questions.tell_fault(title, str(error), details)

    # Recent files

    def recent(self) -> list[Path]:
        """Files opened or saved lately, the last one first."""
        stored = self.settings.value(_RECENT_KEY)
        names = [stored] if isinstance(stored, str) else stored if isinstance(stored, list) else []
        return [Path(str(name)) for name in names]

    def _remember(self, path: Path) -> None:
        path = Path(os.path.abspath(path))
        others = [other for other in self.recent() if other != path]
        self._store([path, *others][:RECENT])

    def forget(self, path: Path) -> None:
        """Take a file off the recent list."""
        self._store([other for other in self.recent() if other != path])

    def _store(self, paths: list[Path]) -> None:
        self.settings.setValue(_RECENT_KEY, [str(path) for path in paths])
        self.recent_changed.emit()

    def folder(self) -> Path:
        """Where files are looked for and put first: beside the yard, else among the documents."""
        from yardplan.window.beside_yard import folder_of

        return folder_of(self.open_yard)

    def _suggested(self) -> Path:
        return self.open_yard.path or self.suggested(".yard")

    def suggested(self, ending: str) -> Path:
        """A file with that ending, named after the yard's file or the yard."""
        if self.open_yard.path:
            return self.open_yard.path.with_suffix(ending)
        kept = (c if c.isalnum() or c in " -_" else "_" for c in self.open_yard.yard.site.name)
        return self.folder() / ("".join(kept).strip().replace(" ", "_").lower() + ending)
