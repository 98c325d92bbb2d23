"""Saving: written beside the old file, flushed, read back and compared, then swapped by rename.

The old file stays until the new one is known to be whole, and is kept as `name.yard~`. A short write
(a nearly full disk takes part of the data and reports no error) is found by counting the bytes written.
"""

from __future__ import annotations

import contextlib
import errno
import hashlib
import os
import secrets
import shutil
import stat
import time
from pathlib import Path

from attrs import frozen

from yardplan.files.errors import YardFileError, cannot_save
from yardplan.files.layout import yard_to_json
from yardplan.files.reading import read_yard, yard_from_json
from yardplan.language import tr
from yardplan.yard.yard import Yard

__all__ = [
    "ChangedOnDisk", "Stamp", "backup_of", "save", "stamp_of", "sweep", "write_whole", "yard_to_json",
]

#: Ending of the file being written, like no other program's; strays with it are swept.
PART = ".yardpart"
#: A stray younger than this may belong to a save that is still running, seconds.
_STRAY_AGE = 3600.0


def backup_of(path: Path | str) -> Path:
    """Where the last good copy of a file is kept."""
    path = Path(path)
    return path.with_name(path.name + "~")


@frozen
class Stamp:
    """What a file was when it was last read or written: its size and the hash of its bytes."""

    size: int
    digest: str


class ChangedOnDisk(YardFileError):
    """The file is not what it was when it was opened: another program or person wrote it."""


def stamp_of(path: Path | str) -> Stamp | None:
    """What a file is now, to be given to `save` later; None where there is none or it cannot be read."""
    try:
        data = Path(path).read_bytes()
    except OSError:
        return None
    return Stamp(len(data), hashlib.sha256(data).hexdigest())


def save(path: Path | str, yard: Yard, expected: Stamp | None = None) -> None:
    """Write the yard to a file. Raises YardFileError; then the old file is as it was.

    A link stays a link and what it points to is rewritten; permission bits are kept. With `expected`
    a file that is no longer what it was raises ChangedOnDisk; one that is gone is written anew.
    """
    path = Path(path)
    now = stamp_of(path) if expected is not None else None
    if now is not None and now != expected:
        raise ChangedOnDisk(
            tr(
                "{name} was not saved: another program has changed it since it was opened. Save under "
                "another name, or save again to replace it",
                name=path.name,
            ), path=path,
        )
    text = yard_to_json(yard)
    _check_readable(text, path.name)
    try:
        target = path.resolve()
        if target.is_dir():
            raise IsADirectoryError(errno.EISDIR, "is a folder")
        write_whole(target, text.encode("utf-8"), keep=True)
    except (OSError, RuntimeError) as error:
        # A link that leads back to itself is a RuntimeError before Python 3.13.
        known = error if isinstance(error, OSError) else OSError(errno.ELOOP, "loop")
        raise cannot_save(path, known) from error


def _check_readable(text: str, name: str) -> None:
    """Refuse to write what could not be opened again."""
    try:
        again = yard_to_json(yard_from_json(text, name))
    except YardFileError as error:
        raise YardFileError(tr(
            "{name} was not saved, it could not be opened again",
            name=name,
        ), error.faults) from error
    if again != text:
        raise YardFileError(tr("{name} was not saved: read back, the yard was not the same", name=name))


def write_whole(target: Path, data: bytes, *, keep: bool = False) -> None:
    """Replace a file by `data` or leave it as it was. `keep`: the old one becomes `name~`. Raises OSError."""
    part = target.with_name(f".{target.name[:100]}.{secrets.token_hex(6)}{PART}")
    try:
        _write_part(part, data)
        if target.exists():
            part.chmod(stat.S_IMODE(target.stat().st_mode))
            if keep:
                _keep_old(target)
        os.replace(part, target)
    finally:
        with contextlib.suppress(OSError):
            part.unlink(missing_ok=True)
    _flush_folder(target.parent)


def _write_part(part: Path, data: bytes) -> None:
    """Write, flush to the disk and read back. Raises OSError when a byte is missing or different."""
    descriptor = os.open(part, os.O_WRONLY | os.O_CREAT | os.O_EXCL | getattr(os, "O_BINARY", 0), 0o666)
    try:
        rest = memoryview(data)
        while rest:
            written = os.write(descriptor, rest)
            if written <= 0:
                raise OSError(errno.ENOSPC, "nothing more could be written")
            rest = rest[written:]
        os.fsync(descriptor)
    finally:
        os.close(descriptor)
    if part.read_bytes() != data:
        raise OSError(errno.EIO, "what was written could not be read back")


def _keep_old(target: Path) -> None:
    """Keep the old file as the last good copy, unless it is damaged and a good copy is there already."""
    backup = backup_of(target)
    if backup.exists():
        try:
            read_yard(target)
        except YardFileError:
            return
    aside = backup.with_name(f".{backup.name[:100]}.{secrets.token_hex(6)}{PART}")
    try:
        try:
            os.link(target, aside)
        except OSError:
            # Some file systems have no hard links.
            shutil.copy2(target, aside)
        os.replace(aside, backup)
    finally:
        # Renaming one hard link onto another of the same file leaves both names in place.
        with contextlib.suppress(OSError):
            aside.unlink(missing_ok=True)


def _flush_folder(folder: Path) -> None:
    """Ask the system to remember the rename; not every file system lets a folder be flushed."""
    with contextlib.suppress(OSError):
        descriptor = os.open(folder, os.O_RDONLY)
        try:
            os.fsync(descriptor)
        finally:
            os.close(descriptor)


def sweep(folder: Path | str, older_than: float = _STRAY_AGE) -> list[Path]:
    """Remove half-written files that a killed save left in a folder; `older_than` in seconds."""
    swept = []
    now = time.time()
    for stray in sorted(Path(folder).glob(f".*{PART}")):
        with contextlib.suppress(OSError):
            if stray.is_file() and now - stray.stat().st_mtime >= older_than:
                stray.unlink()
                swept.append(stray)
    return swept
