"""Where files made of a yard are put first: beside its own file, else among the documents."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QStandardPaths

from yardplan.window.open_yard import OpenYard

#: What some system allows in no file's name.
_NOT_IN_NAMES = '<>:"/\\|?*'


def folder_of(open_yard: OpenYard) -> Path:
    """The folder of the yard's file; for one not saved yet that of the documents."""
    if open_yard.path:
        return open_yard.path.parent
    place = QStandardPaths.StandardLocation.DocumentsLocation
    documents = Path(QStandardPaths.writableLocation(place) or Path.home())
    return documents if documents.is_dir() else Path.home()


def beside(open_yard: OpenYard, name: str) -> str:
    """A file to suggest, by its name; never in the folder that the program happened to be started from."""
    kept = "".join("-" if letter in _NOT_IN_NAMES else letter for letter in name)
    return str(folder_of(open_yard) / kept)
