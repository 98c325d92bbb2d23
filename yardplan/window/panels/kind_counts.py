"""How many things of one kind there are, in words."""

from __future__ import annotations

from collections.abc import Callable

from yardplan.language import tr, tr_n

#: By the kind's key (`names.kind_key`). Kinds without a line of their own are counted as things.
_COUNTS: dict[str, Callable[[int], str]] = {
    "plant": lambda n: tr_n("{n} plant", "{n} plants", n),
    "row": lambda n: tr_n("{n} row", "{n} rows", n),
    "bed": lambda n: tr_n("{n} bed", "{n} beds", n),
    "pot": lambda n: tr_n("{n} pot", "{n} pots", n),
    "building": lambda n: tr_n("{n} building", "{n} buildings", n),
    "wall": lambda n: tr_n("{n} wall", "{n} walls", n),
    "fence": lambda n: tr_n("{n} fence", "{n} fences", n),
    "hedge": lambda n: tr_n("{n} hedge", "{n} hedges", n),
    "path": lambda n: tr_n("{n} path", "{n} paths", n),
    "drive": lambda n: tr_n("{n} drive", "{n} drives", n),
    "terrace": lambda n: tr_n("{n} terrace", "{n} terraces", n),
    "pool": lambda n: tr_n("{n} pool", "{n} pools", n),
    "pond": lambda n: tr_n("{n} pond", "{n} ponds", n),
    "street": lambda n: tr_n("{n} street", "{n} streets", n),
    "overhead line": lambda n: tr_n("{n} overhead line", "{n} overhead lines", n),
    "septic tank": lambda n: tr_n("{n} septic tank", "{n} septic tanks", n),
    "septic field": lambda n: tr_n("{n} septic field", "{n} septic fields", n),
    "well": lambda n: tr_n("{n} well", "{n} wells", n),
    "standing tree": lambda n: tr_n("{n} standing tree", "{n} standing trees", n),
    "tree next door": lambda n: tr_n("{n} tree next door", "{n} trees next door", n),
    "gate": lambda n: tr_n("{n} gate", "{n} gates", n),
    "note": lambda n: tr_n("{n} note", "{n} notes", n),
    "dimension": lambda n: tr_n("{n} dimension", "{n} dimensions", n),
    "picture": lambda n: tr_n("{n} picture", "{n} pictures", n),
}
#: Services that are lines, told by what runs in them.
_LINES = frozenset({
    "power", "gas", "water", "sewer", "drain", "communications", "irrigation",
})


def count_of(kind: str, n: int) -> str:
    """`3 plants`, `2 water lines`; `4 things` where the kind is none, mixed or not known."""
    if kind in _LINES:
        return tr_n("{n} {kind} line", "{n} {kind} lines", n, kind=tr(kind))
    counted = _COUNTS.get(kind)
    return counted(n) if counted else tr_n("{n} thing", "{n} things", n)
