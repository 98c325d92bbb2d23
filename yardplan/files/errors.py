"""Errors of files, said in words for a person: one clear line, and every fault with its place."""

from __future__ import annotations

import errno
import os
from collections.abc import Sequence
from pathlib import Path

from attrs import frozen

from yardplan.language import later, tr

#: Faults named in the one-line message; the rest are counted.
_NAMED = 1


@frozen
class Fault:
    """One fault: where in the file (`plantings 3 (A3): place`) and what is wrong there."""

    place: str
    what: str

    def __str__(self) -> str:
        return f"{self.place}: {self.what}" if self.place else self.what


class YardFileError(Exception):
    """A file that could not be read or written. `str()` is one line; `faults` names every fault."""

    def __init__(self, message: str, faults: Sequence[Fault] = (), *, path: Path | None = None) -> None:
        self.message = message
        self.faults = tuple(faults)
        self.path = path
        super().__init__(message)

    def __str__(self) -> str:
        if not self.faults:
            return self.message
        shown = "; ".join(str(fault) for fault in self.faults[:_NAMED])
        more = len(self.faults) - _NAMED
        if more > 0:
            return tr("{message}: {fault} (and {more} more)", message=self.message, fault=shown, more=more)
        return f"{self.message}: {shown}"


_REASONS = {
    errno.ENOSPC: later("the disk is full"),
    errno.EDQUOT: later("your share of the disk is used up"),
    errno.EFBIG: later("the file would be larger than this system allows"),
    errno.EACCES: later("you have no permission there"),
    errno.EPERM: later("you have no permission there"),
    errno.EROFS: later("the disk can only be read"),
    errno.ENOENT: later("the file or its folder is not there"),
    errno.ENOTDIR: later("part of the folder name is a file"),
    errno.EISDIR: later("that is a folder, not a file"),
    errno.ENAMETOOLONG: later("the name is too long"),
    errno.EIO: later("the disk reported a fault"),
    errno.ELOOP: later("the link leads back to itself"),
}


def reason(error: OSError) -> str:
    """What the system's error means, in plain words."""
    number = error.errno or 0
    if number and number not in _REASONS:
        return os.strerror(number)
    return tr(_REASONS.get(number, later("the system gave no reason")))


def cannot_read(path: Path, error: OSError) -> YardFileError:
    """The error for a file that the system would not read."""
    return YardFileError(tr(
        "{name} cannot be opened: {reason} ({path})",
        name=path.name, reason=reason(error), path=path,
    ), path=path)


def cannot_save(path: Path, error: OSError) -> YardFileError:
    """The error for a file that the system would not write; the old file is untouched."""
    return YardFileError(
        tr(
            "{name} was not saved: {reason} ({parent}). Nothing was overwritten",
            name=path.name, reason=reason(error), parent=path.parent,
        ), path=path
    )
