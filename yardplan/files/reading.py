"""Reading a yard file: all faults found together, each with its place; nothing is half loaded."""

from __future__ import annotations

import json
import math
import stat
from pathlib import Path
from typing import Any

from yardplan.files.build import Notes, build_yard
from yardplan.files.errors import YardFileError, cannot_read
from yardplan.files.shape import DEEPEST, LARGEST
from yardplan.files.versions import lift
from yardplan.language import later, tr
from yardplan.yard.yard import Yard


class _NotANumber(ValueError):
    """NaN or Infinity in the text: JSON has no such numbers."""


def read_yard(path: Path | str) -> Yard:
    """The yard in a file. Raises YardFileError with every fault; the file is never changed."""
    path = Path(path)
    return yard_from_json(_decoded(_bytes_of(path), path.name), path.name)


def yard_from_json(text: str, name: str = "The text") -> Yard:
    """The yard in a text. `name` is what messages call it. Raises YardFileError with every fault."""
    return yard_from_document(_parsed(text, name), name)


def yard_from_document(document: Any, name: str = "The document") -> Yard:
    """The yard in plain values as JSON gives them. Raises YardFileError with every fault."""
    lifted = lift(document, name)
    notes = Notes()
    _check_plain(lifted, notes)
    yard = None if notes.faults else build_yard(lifted, notes)
    if yard is None:
        raise YardFileError(tr("{name} was not opened", name=name), notes.faults)
    return yard


def _bytes_of(path: Path) -> bytes:
    try:
        state = path.stat()
        if not stat.S_ISREG(state.st_mode):
            what = tr("a folder") if stat.S_ISDIR(state.st_mode) else tr("a device")
            raise YardFileError(tr("{name} is {what}, not a yard file", name=path.name, what=what), path=path)
        if state.st_size > LARGEST:
            raise YardFileError(
                tr(
                    "{name} is too large for a yard file: {size} MiB, at most {most}",
                    name=path.name, size=f"{state.st_size / 2 ** 20:.0f}", most=LARGEST // 2 ** 20,
                ), path=path,
            )
        with path.open("rb") as file:
            data = file.read(LARGEST + 1)
    except OSError as error:
        raise cannot_read(path, error) from error
    if not data.strip():
        raise YardFileError(tr("{name} is empty", name=path.name), path=path)
    return data


def _decoded(data: bytes, name: str) -> str:
    try:
        # Editors on some systems put a byte order mark in front.
        return data.decode("utf-8-sig")
    except UnicodeDecodeError as error:
        line = data.count(b"\n", 0, error.start) + 1
        raise YardFileError(tr(
            "{name} is not UTF-8 text: line {line} holds broken letters",
            name=name, line=line,
        )) from None


def _parsed(text: str, name: str) -> Any:
    doubled: list[str] = []
    try:
        document = json.loads(
            text, parse_constant=_no_constant, object_pairs_hook=lambda pairs: _object(pairs, doubled)
        )
    except json.JSONDecodeError as error:
        raise YardFileError(
            tr(
                "{name} is damaged or not a yard file: line {line}, column {column}: {fault}",
                name=name, line=error.lineno, column=error.colno, fault=_syntax(error.msg),
            )
        ) from None
    except RecursionError:
        raise YardFileError(tr("{name} is not a yard file: lists are nested too deep", name=name)) from None
    except _NotANumber as error:
        raise YardFileError(tr(
            "{name} is damaged: it holds {error}, which is not a number",
            name=name, error=error,
        )) from None
    except ValueError:
        raise YardFileError(tr(
            "{name} is damaged: it holds a number with too many digits",
            name=name,
        )) from None
    if doubled:
        raise YardFileError(tr(
            "{name} is damaged: the field '{field}' stands twice in one object",
            name=name, field=doubled[0],
        ))
    return document


def _no_constant(word: str) -> Any:
    raise _NotANumber(word)


def _object(pairs: list[tuple[str, Any]], doubled: list[str]) -> dict[str, Any]:
    made = dict(pairs)
    if len(made) != len(pairs):
        names = [name for name, _ in pairs]
        doubled.append(next(name for name in names if names.count(name) > 1))
    return made


_SYNTAX = {
    "Expecting ',' delimiter": later("a comma or a closing bracket is missing"),
    "Expecting ':' delimiter": later("a colon is missing"),
    "Expecting value": later("a value is missing"),
    "Expecting property name enclosed in double quotes":
        later("a field name is missing or a comma is left over"),
    "Unterminated string starting at": later("a text is not closed"),
    "Extra data": later("there is something after the end"),
    "Invalid control character at": later("a text holds a line break or another control character"),
}


def _syntax(message: str) -> str:
    return tr(_SYNTAX.get(message, later("the text cannot be understood")))


def _check_plain(document: Any, notes: Notes) -> None:
    """Note numbers beyond all bounds, broken characters and nesting that no yard needs."""
    waiting: list[tuple[Any, str, int]] = [(document, "", 0)]
    while waiting:
        value, place, depth = waiting.pop()
        if depth > DEEPEST:
            notes.fault(place, tr("lists or objects are nested too deep"))
        elif isinstance(value, dict):
            for key, item in value.items():
                _check_text(key, place, notes)
                waiting.append((item, f"{place}: {key}" if place else key, depth + 1))
        elif isinstance(value, list):
            waiting.extend((item, f"{place} {i}", depth + 1) for i, item in enumerate(value, 1))
        elif isinstance(value, str):
            _check_text(value, place, notes)
        elif isinstance(value, float) and not math.isfinite(value):
            notes.fault(place, tr("is too large a number"))


def _check_text(text: str, place: str, notes: Notes) -> None:
    """Half of a character pair cannot be written back as UTF-8."""
    if not text.isascii() and any("\ud800" <= letter <= "\udfff" for letter in text):
        notes.fault(place, tr("holds a broken character"))
