"""From plain values (dicts, lists, numbers, texts) to the frozen yard, noting every fault with its place."""

from __future__ import annotations

import math
import types
from collections.abc import Callable, Collection, Mapping
from functools import cache
from typing import Any, Literal, Union, get_args, get_origin

from attrs import NOTHING, define, evolve, field, fields, has

from yardplan.files.errors import Fault
from yardplan.files.shape import LEAST, MOST, PATTERNS, RANGES, RESERVED_IDS, hints_of, suits
from yardplan.language import decimals, later, tr, tr_n
from yardplan.yard.curves import fits
from yardplan.yard.yard import COLLECTIONS, PLAN_FIELDS, Yard

#: Stands for a value that could not be built; its fault is noted.
BAD = object()

_WORDS = {0: later("none"), 1: later("one"), 2: later("two"), 3: later("three"), 12: later("twelve")}
_KINDS = {
    bool: later("true or false"), int: later("a whole number"), float: later("a number"),
    str: later("a text"), list: later("a list"), dict: later("an object"),
    type(None): later("nothing (null)"),
}

#: So many letters of a wrong text are shown.
_LONG = 60


@define
class Notes:
    """What the reader noted on its way: faults, and fields it does not know by their owner."""

    faults: list[Fault] = field(factory=list)
    unknown: dict[str, dict[str, Any]] = field(factory=dict)

    def fault(self, place: str, what: str) -> Any:
        """Note a fault and return BAD."""
        self.faults.append(Fault(place, what))
        return BAD


#: Builds one value: plain value, place for faults, owner of unknown fields, notes.
Builder = Callable[[Any, str, str, Notes], Any]


def _is(value: Any) -> str:
    return tr(_KINDS.get(type(value), later("something else")))


def _short(text: str) -> str:
    return text if len(text) <= _LONG else f"{text[:_LONG]}…"


def _in(place: str, name: str) -> str:
    return f"{place}: {name}" if place else name


def _number(name: str, whole: bool) -> Builder:
    limits = RANGES.get(name)
    needed = later("a whole number") if whole else later("a number")

    def build(value: Any, place: str, owner: str, notes: Notes) -> Any:
        if isinstance(value, bool) or not isinstance(value, int | float):
            return notes.fault(place, tr("is {found}, needs {needed}", found=_is(value), needed=tr(needed)))
        if whole and not isinstance(value, int):
            return notes.fault(place, tr("is {value}, needs a whole number", value=value))
        try:
            number = value if whole else float(value)
        except OverflowError:
            return notes.fault(place, tr("is too large a number"))
        if not math.isfinite(number):
            return notes.fault(place, tr("is not a finite number"))
        if limits and not limits.low <= number <= limits.high:
            return notes.fault(place, tr(
                "is {number}, must lie between {low} and {high}",
                number=decimals(f"{number:g}"), low=decimals(f"{limits.low:g}"),
                high=decimals(f"{limits.high:g}"),
            ))
        return number

    return build


def _text(name: str) -> Builder:
    pattern = PATTERNS.get(name)

    def build(value: Any, place: str, owner: str, notes: Notes) -> Any:
        if not isinstance(value, str):
            return notes.fault(place, tr("is {found}, needs a text", found=_is(value)))
        if pattern and not suits(pattern[0], value):
            return notes.fault(
                place, tr("is '{text}', needs {needed}", text=_short(value), needed=tr(pattern[1]))
            )
        return value

    return build


def _flag(value: Any, place: str, owner: str, notes: Notes) -> Any:
    if not isinstance(value, bool):
        return notes.fault(place, tr("is {found}, needs true or false", found=_is(value)))
    return value


def _choice(words: tuple[str, ...]) -> Builder:
    def build(value: Any, place: str, owner: str, notes: Notes) -> Any:
        if value in words and isinstance(value, str):
            return value
        shown = f"'{value}'" if isinstance(value, str) else _is(value)
        return notes.fault(
            place, tr("is {shown}, must be one of: {words}", shown=shown, words=", ".join(words))
        )

    return build


def _anything(value: Any, place: str, owner: str, notes: Notes) -> Any:
    return value


def _or_none(inner: Builder) -> Builder:
    def build(value: Any, place: str, owner: str, notes: Notes) -> Any:
        return None if value is None else inner(value, place, owner, notes)

    return build


def _list(name: str, inner: Builder) -> Builder:
    """A list of any length. Items are numbered from 1, as a person counts."""

    def build(value: Any, place: str, owner: str, notes: Notes) -> Any:
        if not isinstance(value, list):
            return notes.fault(place, tr("is {found}, needs a list", found=_is(value)))
        if (short := len(value) < LEAST.get(name, 0)) or len(value) > MOST.get(name, len(value)):
            needs = (LEAST if short else MOST)[name]
            return notes.fault(place, tr(
                "has {had}, needs {needed}", had=_count(len(value)), needed=_count(needs),
            ))
        items = [inner(item, f"{place} {i}", f"{owner}/{i}", notes) for i, item in enumerate(value, 1)]
        return BAD if any(item is BAD for item in items) else tuple(items)

    return build


def _count(number: int) -> str:
    if number in _WORDS:
        return tr_n("{number} entry", "{number} entries", number, number=tr(_WORDS[number]))
    return tr_n("{n} entry", "{n} entries", number)


def _entries(number: int, noun: Literal["number", "text"]) -> str:
    """So many entries of one sort: `two numbers`."""
    words = tr(_WORDS[number]) if number in _WORDS else number
    if noun == "number":
        return tr_n("{number} number", "{number} numbers", number, number=words)
    return tr_n("{number} text", "{number} texts", number, number=words)


def _fixed(inner: tuple[Builder, ...], noun: Literal["number", "text"]) -> Builder:
    """A list of exactly so many entries, e.g. the two numbers of a place."""

    def build(value: Any, place: str, owner: str, notes: Notes) -> Any:
        if not isinstance(value, list):
            return notes.fault(place, tr(
                "is {found}, needs {needed}", found=_is(value), needed=_entries(len(inner), noun),
            ))
        if len(value) != len(inner):
            had, needed = _entries(len(value), noun), tr(_WORDS[len(inner)])
            return notes.fault(place, tr("has {had}, needs {needed}", had=had, needed=needed))
        pairs = zip(inner, value, strict=True)
        items = [one(item, f"{place} {i}", owner, notes) for i, (one, item) in enumerate(pairs, 1)]
        return BAD if any(item is BAD for item in items) else tuple(items)

    return build


def _mapping(inner: Builder) -> Builder:
    def build(value: Any, place: str, owner: str, notes: Notes) -> Any:
        if not isinstance(value, dict):
            return notes.fault(place, tr("is {found}, needs an object", found=_is(value)))
        items = {key: inner(item, _in(place, key), owner, notes) for key, item in value.items()}
        return BAD if any(item is BAD for item in items.values()) else items

    return build


@cache
def object_builder(kind: type) -> Builder:
    """Builds one class of the document from an object; unknown fields go to the notes."""
    hints = hints_of(kind)
    known = {f.name: f for f in fields(kind) if f.name in hints}
    builders = {name: builder_of(hints[name], name) for name in known}
    needed = [name for name, f in known.items() if f.default is NOTHING]

    def build(value: Any, place: str, owner: str, notes: Notes) -> Any:
        if not isinstance(value, dict):
            return notes.fault(place, tr("is {found}, needs an object", found=_is(value)))
        for name in needed:
            if name not in value:
                notes.fault(place, tr("'{name}' is missing", name=name))
        unknown = {name: item for name, item in value.items() if name not in builders}
        if unknown:
            notes.unknown[owner] = unknown
        built = {
            name: builders[name](item, _in(place, f"'{name}'"), f"{owner}/{name}", notes)
            for name, item in value.items() if name in builders
        }
        if any(item is BAD for item in built.values()) or any(name not in built for name in needed):
            return BAD
        return kind(**built)

    return build


_PLAIN: dict[Any, Callable[[str], Builder]] = {
    float: lambda name: _number(name, whole=False),
    int: lambda name: _number(name, whole=True),
    str: _text,
    bool: lambda name: _flag,
    Any: lambda name: _anything,
}


def builder_of(hint: Any, name: str) -> Builder:
    """The builder for a field type of the document. Raises TypeError for a type it does not know."""
    if hint in _PLAIN:
        return _PLAIN[hint](name)
    if hint is Yard:
        return _plan
    if isinstance(hint, type) and has(hint):
        return object_builder(hint)
    origin, args = get_origin(hint), get_args(hint)
    if origin is Literal:
        return _choice(args)
    if origin in (Union, types.UnionType):
        return _or_none(builder_of(next(a for a in args if a is not type(None)), name))
    if origin is tuple and args[-1] is Ellipsis:
        return _list(name, builder_of(args[0], name))
    if origin is tuple:
        noun: Literal["number", "text"] = "number" if args[0] is float else "text"
        return _fixed(tuple(builder_of(a, name) for a in args), noun)
    if origin is not None and issubclass(origin, Mapping):
        return _mapping(builder_of(args[1], name))
    raise TypeError(f"no reader for {hint}")


def _things(name: str, kind: type, value: Any, notes: Notes) -> Any:
    """One list of things; each is called by its number and key: `plantings 3 (A3)`."""
    if not isinstance(value, list):
        return notes.fault(name, tr("is {found}, needs a list", found=_is(value)))
    build = object_builder(kind)
    built = []
    for number, item in enumerate(value, 1):
        key = item.get("id") if isinstance(item, dict) else None
        place = f"{name.replace('_', ' ')} {number}" + (f" ({key})" if isinstance(key, str) else "")
        built.append(build(item, place, f"#{key}", notes))
    return tuple(item for item in built if item is not BAD)


def build_yard(document: Mapping[str, Any], notes: Notes) -> Yard | None:
    """The yard of a document of the current version, or None when faults were noted."""
    known = hints_of(Yard).keys() - {"extra"}
    stated = {name: value for name, value in document.items() if name not in ("format", "version")}
    if "site" not in document:
        notes.fault("site", tr("is missing"))
    _check_variants(document.get("variants"), notes)
    return _built(stated, known, notes)


def _built(document: Mapping[str, Any], known: Collection[str], notes: Notes) -> Yard | None:
    """A yard of those of its fields that a document may state, or None when faults were noted."""
    hints = hints_of(Yard)
    built: dict[str, Any] = {}
    unknown: dict[str, Any] = {}
    for name, value in document.items():
        if name not in known:
            unknown[name] = value
        elif name in COLLECTIONS:
            built[name] = _things(name, COLLECTIONS[name], value, notes)
        else:
            built[name] = builder_of(hints[name], name)(value, name.replace("_", " "), f"/{name}", notes)
    if unknown:
        notes.unknown["/"] = unknown
    _check_lot(document, notes)
    _check_keys(document, notes)
    _check_groups(document, notes)
    return None if notes.faults else _settled(Yard(**built, extra=dict(notes.unknown)))


def _settled(yard: Yard) -> Yard:
    """The yard without curves that are not those of their outlines: the outline counts."""
    lists: dict[str, Any] = {
        name: tuple(
            evolve(thing, curve=None) if thing.curve and not fits(thing.curve, thing.outline) else thing
            for thing in getattr(yard, name)
        )
        for name in ("pavings", "beds")
    }
    if yard.lot_curve is not None and not fits(yard.lot_curve, yard.lot):
        lists["lot_curve"] = None
    return evolve(yard, **lists)


def _plan(value: Any, place: str, owner: str, notes: Notes) -> Any:
    """The plan of a variant: a yard without its site; its faults are told with the variant's place."""
    if not isinstance(value, dict):
        return notes.fault(place, tr("is {found}, needs an object", found=_is(value)))
    own = Notes()
    plan = _built(value, PLAN_FIELDS, own)
    notes.faults += [Fault(_in(place, fault.place), fault.what) for fault in own.faults]
    return BAD if plan is None else plan


def _check_lot(document: Mapping[str, Any], notes: Notes) -> None:
    lot = document.get("lot", [])
    if isinstance(lot, list) and 0 < len(lot) < 3:
        notes.fault("lot", tr("has {count}, needs none or at least three", count=_count(len(lot))))


def _check_keys(document: Mapping[str, Any], notes: Notes) -> None:
    """Keys must be different in the whole file, and plants stand in containers that are there."""
    seen: dict[str, str] = {}
    for name in COLLECTIONS:
        for number, key in _keys(document.get(name)):
            place = f"{name.replace('_', ' ')} {number} ({key})"
            if key in RESERVED_IDS:
                notes.fault(place, tr("the key '{key}' is kept for the lot line", key=key))
            elif key in seen:
                notes.fault(place, tr("the key is taken already by {thing}", thing=seen[key]))
            seen.setdefault(key, f"{name.replace('_', ' ')} {number}")
    vessels = {key for _, key in _keys(document.get("containers"))}
    plantings = document.get("plantings")
    for number, item in enumerate(plantings if isinstance(plantings, list) else (), 1):
        vessel = item.get("container") if isinstance(item, dict) else None
        if isinstance(vessel, str) and vessel not in vessels:
            notes.fault(
                f"plantings {number} ({item.get('id')}): 'container'",
                tr("there is no container '{container}'", container=vessel),
            )


def _check_groups(document: Mapping[str, Any], notes: Notes) -> None:
    """Groups have names of their own, hold things that are there, and no thing is in two."""
    keys = {key for name in COLLECTIONS for _, key in _keys(document.get(name))}
    names: set[str] = set()
    taken: set[str] = set()
    for number, group in _objects(document.get("groups")):
        place, name, members = f"groups {number}", group.get("name"), group.get("members")
        if isinstance(name, str) and name in names:
            notes.fault(place, tr("the name '{name}' is taken already", name=name))
        names.add(str(name))
        for key in [key for key in members if isinstance(key, str)] if isinstance(members, list) else ():
            if key not in keys:
                notes.fault(f"{place}: 'members'", tr("there is nothing with the key '{key}'", key=key))
            elif key in taken:
                notes.fault(f"{place}: 'members'", tr("'{key}' is in a group already", key=key))
            taken.add(key)


def _check_variants(variants: Any, notes: Notes) -> None:
    """Variants are told apart by their names."""
    names: set[str] = set()
    for number, variant in _objects(variants):
        name = variant.get("name")
        if isinstance(name, str) and name in names:
            notes.fault(f"variants {number}", tr("the name '{name}' is taken already", name=name))
        names.add(str(name))


def _objects(value: Any) -> list[tuple[int, dict[str, Any]]]:
    if not isinstance(value, list):
        return []
    return [(number, item) for number, item in enumerate(value, 1) if isinstance(item, dict)]


def _keys(things: Any) -> list[tuple[int, str]]:
    if not isinstance(things, list):
        return []
    return [
        (number, item["id"]) for number, item in enumerate(things, 1)
        if isinstance(item, dict) and isinstance(item.get("id"), str)
    ]
