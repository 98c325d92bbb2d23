"""Recovery copies of unsaved work, in a folder the caller gives; never over the user's file.

A copy knows the document, its path and its count of edits. Whether it is newer than what was saved is told
by that count, not by file times: clocks and copying change those. A damaged copy never blocks anything.
"""

from __future__ import annotations

import contextlib
import json
import os
import re
import time
from pathlib import Path
from typing import Any

from attrs import field, frozen

from yardplan.files.errors import YardFileError, cannot_save
from yardplan.files.layout import document_of
from yardplan.files.reading import yard_from_document
from yardplan.files.shape import FORMAT, LARGEST
from yardplan.files.versions import CURRENT
from yardplan.files.writing import write_whole
from yardplan.language import tr
from yardplan.yard.yard import Yard

_FORMAT = "yardplan recovery"
_COPY, _SAVED = ".recovery", ".saved"
_NAME = re.compile(r"[A-Za-z0-9-]{1,64}")


@frozen(kw_only=True)
class RecoveryCopy:
    """Unsaved work: `document` the id of the editing session, `edits` its count of edits so far.

    `path` is the user's file, None for a yard never saved; `written` seconds since 1970, to show only;
    `process` the number of the program that wrote it.
    """

    document: str
    path: Path | None
    edits: int
    written: float
    process: int
    yard: Yard

    @property
    def writer_runs(self) -> bool:
        """True when a program with that number runs: the yard may still be open in another window."""
        return self.process != os.getpid() and _runs(self.process)


@frozen
class Found:
    """What lies in the recovery folder: copies with unsaved work, newest first, and damaged ones."""

    copies: tuple[RecoveryCopy, ...] = ()
    damaged: tuple[Path, ...] = field(default=())


def _runs(process: int) -> bool:
    try:
        os.kill(process, 0)
    except PermissionError:
        return True
    except (OSError, OverflowError):
        return False
    return True


def _checked(document: str) -> str:
    if not _NAME.fullmatch(document):
        raise ValueError(f"a document id is letters, digits and hyphens, not '{document}'")
    return document


def keep(folder: Path | str, document: str, path: Path | str | None, edits: int, yard: Yard) -> Path:
    """Write the recovery copy of a document; the one before stays until this one is whole.

    Raises YardFileError when the folder cannot be written.
    """
    target = Path(folder) / (_checked(document) + _COPY)
    record = {
        "format": _FORMAT, "document": document, "path": None if path is None else str(Path(path).absolute()),
        "edits": edits, "written": time.time(), "process": os.getpid(),
        "yard": {"format": FORMAT, "version": CURRENT, **document_of(yard)},
    }
    try:
        target.parent.mkdir(parents=True, exist_ok=True)
        write_whole(target, json.dumps(record, ensure_ascii=False, allow_nan=False).encode("utf-8"))
    except OSError as error:
        raise cannot_save(target, error) from error
    return target


def saved(folder: Path | str, document: str, edits: int) -> None:
    """Note that everything up to this count of edits is in the user's file; drop a copy not newer."""
    folder = Path(folder)
    target = folder / (_checked(document) + _SAVED)
    try:
        folder.mkdir(parents=True, exist_ok=True)
        write_whole(target, f"{edits}\n".encode())
    except OSError as error:
        raise cannot_save(target, error) from error
    copy = folder / (document + _COPY)
    with contextlib.suppress(OSError, YardFileError):
        if _read(copy).edits <= edits:
            copy.unlink()


def forget(folder: Path | str, document: str) -> None:
    """Drop what is kept of a document that was closed: saved, or discarded by its user."""
    for ending in (_COPY, _SAVED):
        with contextlib.suppress(OSError):
            (Path(folder) / (_checked(document) + ending)).unlink(missing_ok=True)


def find(folder: Path | str) -> Found:
    """The copies that hold work no file holds. Never raises: damaged copies are listed apart."""
    copies: list[RecoveryCopy] = []
    damaged: list[Path] = []
    with contextlib.suppress(OSError):
        for path in sorted(Path(folder).glob(f"*{_COPY}")):
            try:
                copy = _read(path)
            except (YardFileError, OSError):
                damaged.append(path)
                continue
            if copy.edits > _saved_edits(path):
                copies.append(copy)
    copies.sort(key=lambda copy: (-copy.written, copy.document))
    return Found(tuple(copies), tuple(damaged))


def _saved_edits(copy: Path) -> int:
    """The count of edits known to be in the user's file; -1 when nothing is known."""
    try:
        return int(copy.with_suffix(_SAVED).read_text(encoding="utf-8").strip()[:20])
    except (OSError, ValueError):
        return -1


def _read(path: Path) -> RecoveryCopy:
    """One copy. Raises YardFileError when it is damaged, OSError when it cannot be read."""
    if path.stat().st_size > LARGEST:
        raise YardFileError(tr("{name} is too large", name=path.name))
    try:
        record: Any = json.loads(path.read_text(encoding="utf-8"))
    except (ValueError, RecursionError):
        raise YardFileError(tr("{name} is damaged", name=path.name)) from None
    if not isinstance(record, dict) or record.get("format") != _FORMAT:
        raise YardFileError(tr("{name} is not a recovery copy", name=path.name))
    numbers = [record.get(name) for name in ("edits", "written", "process")]
    if any(isinstance(n, bool) or not isinstance(n, int | float) for n in numbers):
        raise YardFileError(tr("{name} is damaged", name=path.name))
    where = record.get("path")
    edits, written, process = (n for n in numbers if n is not None)
    return RecoveryCopy(
        document=path.stem, path=Path(where) if isinstance(where, str) else None, edits=int(edits),
        written=float(written), process=int(process), yard=yard_from_document(record.get("yard"), path.name),
    )
