"""Menus of recent files and shipped samples."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtWidgets import QMenu

from yardplan.language import tr
from yardplan.shipped import folder
from yardplan.window.documents import Documents


def fill_recent(menu: QMenu, documents: Documents) -> None:
    """Recent files; those gone are grey with a way to take them off the list."""
    menu.clear()
    paths = documents.recent()
    for path in paths:
        if path.exists():
            action = menu.addAction(path.name)
            action.triggered.connect(lambda _=False, path=path: documents.open_path(path))
        else:
            action = menu.addAction(tr("{name} is gone: take it off the list", name=path.name))
            action.triggered.connect(lambda _=False, path=path: documents.forget(path))
        action.setToolTip(str(path))
    menu.setEnabled(bool(paths))


def samples() -> list[Path]:
    """The shipped sample yards."""
    try:
        return sorted(folder("sample_yards").glob("*.yard"))
    except FileNotFoundError:
        return []


def fill_samples(menu: QMenu, documents: Documents) -> None:
    """The shipped yards; opened as copies, so that saving asks for a name."""
    menu.clear()
    for path in samples():
        action = menu.addAction(path.stem.replace("_", " ").capitalize())
        action.triggered.connect(lambda _=False, path=path: open_sample(documents, path))


def open_sample(documents: Documents, path: Path) -> None:
    """Open a sample as a copy, with the question about unsaved work first."""
    if documents.may_leave():
        documents.load(path, as_copy=True)
