"""How a yard is laid out as text: UTF-8 JSON, fields in a fixed order, one thing to a line where it fits."""

from __future__ import annotations

import json
import math
from collections.abc import Iterator, Mapping
from functools import cache
from typing import Any, get_args

from attrs import fields, has

from yardplan.files.errors import Fault, YardFileError
from yardplan.files.shape import FORMAT, hints_of
from yardplan.files.versions import CURRENT
from yardplan.language import tr
from yardplan.yard.yard import COLLECTIONS, Yard

#: A thing longer than this is written with one field to a line.
_WIDTH = 120


def yard_to_json(yard: Yard) -> str:
    """The text of a yard file. Raises YardFileError when a value cannot be written (not a number)."""
    head = [f'"format": {_json(FORMAT)}', f'"version": {CURRENT}']
    return _lines([*head, *_parts(document_of(yard))]) + "\n"


def _parts(document: Mapping[str, Any]) -> list[str]:
    return [f"{_json(name)}: {_whole(name, value)}" for name, value in document.items()]


def _lines(parts: list[str]) -> str:
    return "{\n" + ",\n".join(parts) + "\n}"


def document_of(yard: Yard) -> dict[str, Any]:
    """The yard as plain values without format and version, fields in the order they are written."""
    document = _stated(yard, "site")
    faults = list(_unwritable(document, ""))
    if faults:
        raise YardFileError(tr("The yard cannot be written"), faults)
    return document


def _stated(yard: Yard, *always: str) -> dict[str, Any]:
    """The fields of a yard that say anything, and those that are always written."""
    document: dict[str, Any] = {}
    for f in fields(Yard):
        value = getattr(yard, f.name)
        if f.name == "extra" or (f.name not in always and (not value or f.name == "site")):
            continue
        if f.name in COLLECTIONS:
            document[f.name] = [_object(thing, f"#{thing.id}", yard.extra) for thing in value]
        else:
            document[f.name] = _plain(value, f"/{f.name}", yard.extra, f.name not in _whole_numbers(Yard))
    document.update(yard.extra.get("/", {}))
    return document


def plain_thing(thing: Any) -> dict[str, Any]:
    """A thing of the yard as plain values, for other formats."""
    return _object(thing, "", {})


def _object(value: Any, owner: str, extra: Mapping[str, Any]) -> dict[str, Any]:
    """A value class as an object; fields at an empty default (null, no text, false) are left out."""
    made: dict[str, Any] = {}
    kind: type = type(value)
    raw = _whole_numbers(kind)
    for f in fields(kind):
        item = getattr(value, f.name)
        if not (_empty(item) and item == f.default):
            made[f.name] = _plain(item, f"{owner}/{f.name}", extra, f.name not in raw)
    made.update(extra.get(owner, {}))
    return made


def _empty(value: Any) -> bool:
    """Nothing said: null, no text, no list, false. Zero is a statement."""
    return value is None or value is False or (isinstance(value, str | tuple) and not value)


@cache
def _whole_numbers(kind: type) -> frozenset[str]:
    """The fields of a class that hold whole numbers or free records; all other numbers are floats."""
    return frozenset(
        name for name, hint in hints_of(kind).items() if int in (hint, *get_args(hint)) or "Any" in str(hint)
    )


def _plain(value: Any, owner: str, extra: Mapping[str, Any], floats: bool) -> Any:
    """Lists and dicts of plain values; whole-valued floats look the same however they were entered."""
    if isinstance(value, Yard):
        # The plan of a variant.
        return _stated(value)
    if has(type(value)):
        return _object(value, owner, extra)
    if isinstance(value, Mapping):
        return {str(key): _plain(item, owner, {}, floats) for key, item in value.items()}
    if isinstance(value, tuple | list):
        return [_plain(item, f"{owner}/{i}", extra, floats) for i, item in enumerate(value, 1)]
    return float(value) if floats and isinstance(value, int) and not isinstance(value, bool) else value


def _unwritable(value: Any, place: str) -> Iterator[Fault]:
    if isinstance(value, dict):
        for key, item in value.items():
            yield from _unwritable(item, f"{place}: {key}" if place else key)
    elif isinstance(value, list):
        for number, item in enumerate(value, 1):
            yield from _unwritable(item, f"{place} {number}")
    elif isinstance(value, float):
        if not math.isfinite(value):
            yield Fault(place, tr("is not a finite number"))
    elif not isinstance(value, str | int | bool | None):
        yield Fault(place, tr("a {name} cannot be written", name=type(value).__name__))


def _json(value: Any) -> str:
    return json.dumps(value, ensure_ascii=False, allow_nan=False)


def _whole(name: str, value: Any) -> str:
    """One field of the yard: objects with a field to a line, lists of objects with an object to a line."""
    if isinstance(value, dict):
        return _fields(value, "  ") if value else "{}"
    if name == "variants":
        return "[\n" + ",\n".join(_variant(item) for item in value) + "\n]"
    if isinstance(value, list) and value and all(isinstance(item, dict) for item in value):
        return "[\n" + ",\n".join(f"  {_one(item)}" for item in value) + "\n]"
    return _json(value)


def _variant(item: Mapping[str, Any]) -> str:
    """A variant with its plan laid out like a yard, further in: one thing to a line."""
    parts = [
        f"{_json(name)}: {_lines(_parts(value)) if name == 'plan' else _json(value)}"
        for name, value in item.items()
    ]
    # Texts hold no line feeds of their own, but may hold other signs that end lines.
    return "  " + _lines(parts).replace("\n", "\n  ")


def _one(item: dict[str, Any]) -> str:
    line = _json(item)
    return line if len(line) <= _WIDTH else _fields(item, "    ")


def _fields(value: dict[str, Any], indent: str) -> str:
    lines = []
    for key, item in value.items():
        lines.append(f"{indent}{_json(key)}: {_field(item, indent)}")
    return "{\n" + ",\n".join(lines) + "\n" + indent[2:] + "}"


def _field(item: Any, indent: str) -> str:
    """Lists of objects (the origins of the site) get a line each; everything else stays on one line."""
    if isinstance(item, list) and item and all(isinstance(one, dict) for one in item):
        return "[\n" + ",\n".join(f"{indent}  {_json(one)}" for one in item) + f"\n{indent}]"
    return _json(item)
