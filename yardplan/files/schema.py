"""The JSON Schema (2020-12) of the yard file, made of the document's classes.

The shipped resources/yard.schema.json is this schema's text (`python -m yardplan.files.schema` prints it);
ranges and patterns are those of the reader.
"""

from __future__ import annotations

import json
import sys
import types
from collections.abc import Mapping
from typing import Any, Literal, Union, get_args, get_origin

from attrs import NOTHING, fields, has

from yardplan.files.shape import FORMAT, LEAST, MOST, PATTERNS, RANGES, hints_of
from yardplan.files.versions import CURRENT
from yardplan.yard.yard import COLLECTIONS, PLAN_FIELDS, Yard

Schema = dict[str, Any]


def yard_schema() -> Schema:
    """The schema of a yard file. Fields it does not name are allowed: they are kept and written back."""
    hints = hints_of(Yard)
    definitions: dict[str, Schema] = {}
    properties: Schema = {"format": {"const": FORMAT}, "version": {"const": CURRENT}}
    for f in fields(Yard):
        if f.name != "extra":
            properties[f.name] = _field(hints[f.name], f.name, definitions)
    return {
        "$schema": "https://json-schema.org/draft/2020-12/schema",
        "title": "A yard file",
        "description": "Lengths in metres, +x right, +y up the drawing; degrees; degrees C.",
        "type": "object",
        "required": ["format", "version", "site"],
        "properties": properties,
        "$defs": dict(sorted(definitions.items())),
    }


def _field(hint: Any, name: str, definitions: dict[str, Schema]) -> Schema:
    """A field of the yard; a lot line has no corners or at least three."""
    made = _of(hint, name, definitions)
    return {"anyOf": [{"type": "array", "maxItems": 0}, {**made, "minItems": 3}]} if name == "lot" else made


def _plan(definitions: dict[str, Schema]) -> Schema:
    """The plan of a variant: what is drawn and planted in a yard."""
    hints = hints_of(Yard)
    return {
        "description": "What is drawn and planted in a variant, as in the yard itself.",
        "type": "object",
        "properties": {name: _field(hints[name], name, definitions) for name in PLAN_FIELDS},
    }


def schema_text() -> str:
    """The schema as the text of resources/yard.schema.json."""
    return json.dumps(yard_schema(), indent=1, ensure_ascii=False) + "\n"


def _class(kind: type, definitions: dict[str, Schema]) -> Schema:
    name = kind.__name__
    if name not in definitions:
        hints = hints_of(kind)
        definitions[name] = {}
        definitions[name] = {
            "description": " ".join((kind.__doc__ or name).split()),
            "type": "object",
            "required": [f.name for f in fields(kind) if f.default is NOTHING],
            "properties": {f.name: _of(hints[f.name], f.name, definitions) for f in fields(kind)},
        }
    return {"$ref": f"#/$defs/{name}"}


def _plain(hint: Any, name: str) -> Schema | None:
    if hint is bool:
        return {"type": "boolean"}
    if hint in (int, float):
        limits = RANGES.get(name)
        kind = "integer" if hint is int else "number"
        return {"type": kind, **({"minimum": limits.low, "maximum": limits.high} if limits else {})}
    if hint is str:
        return {"type": "string", **({"pattern": PATTERNS[name][0]} if name in PATTERNS else {})}
    return {} if hint is Any else None


def _of(hint: Any, name: str, definitions: dict[str, Schema]) -> Schema:
    """The schema of one field type. Raises TypeError for a type it does not know."""
    plain = _plain(hint, name)
    if plain is not None:
        return plain
    if hint is Yard:
        return _plan(definitions)
    if isinstance(hint, type) and has(hint):
        return _class(hint, definitions)
    origin, args = get_origin(hint), get_args(hint)
    if origin is Literal:
        return {"enum": list(args)}
    if origin in (Union, types.UnionType):
        inner = next(a for a in args if a is not type(None))
        return {"anyOf": [_of(inner, name, definitions), {"type": "null"}]}
    if origin is tuple:
        return _list(args, name, definitions)
    if origin is not None and issubclass(origin, Mapping):
        return {"type": "object", "additionalProperties": _of(args[1], name, definitions)}
    raise TypeError(f"no schema for {hint}")


def _list(args: tuple[Any, ...], name: str, definitions: dict[str, Schema]) -> Schema:
    if args[-1] is not Ellipsis:
        return {
            "type": "array", "prefixItems": [_of(a, name, definitions) for a in args],
            "minItems": len(args), "maxItems": len(args),
        }
    least = {"minItems": LEAST[name]} if name in LEAST else {}
    most = {"maxItems": MOST[name]} if name in MOST else {}
    kind = COLLECTIONS.get(name)
    items = _class(kind, definitions) if kind else _of(args[0], name, definitions)
    return {"type": "array", "items": items, **least, **most}


if __name__ == "__main__":
    sys.stdout.write(schema_text())
