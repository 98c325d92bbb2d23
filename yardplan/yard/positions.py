"""Where in a list each thing stands, kept for the lists seen last: one among thousands is found at once.

A list of things is a tuple and never changes, so what is kept of it stays true as long as the tuple lives;
an edit that leaves every id where it was hands the table on to the new list.
"""

from __future__ import annotations

import threading
from collections.abc import Collection, Mapping
from itertools import compress
from operator import is_not
from typing import Protocol, TypeVar


class Named(Protocol):
    """Anything with an id."""

    @property
    def id(self) -> str:
        """The key of the plan."""


N = TypeVar("N", bound=Named)

#: Tables of so many lists are kept.
_MOST = 48
#: A list so short is looked through faster than a table is found.
_SHORT = 12

_kept: dict[int, tuple[tuple[Named, ...], Mapping[str, int]]] = {}
_lock = threading.Lock()


def positions(things: tuple[Named, ...]) -> Mapping[str, int]:
    """The place of each id in the list; of an id that is there twice its first."""
    with _lock:
        found = _kept.get(id(things))
    if found is not None:
        return found[1]
    backwards = zip(range(len(things) - 1, -1, -1), reversed(things), strict=True)
    table = {thing.id: number for number, thing in backwards}
    _keep(things, table)
    return table


def hand_on(before: tuple[Named, ...], after: tuple[Named, ...]) -> None:
    """Tell that `after` holds the same ids at the same places as `before`."""
    with _lock:
        found = _kept.get(id(before))
    if found is not None:
        _keep(after, found[1])


def _keep(things: tuple[Named, ...], table: Mapping[str, int]) -> None:
    if len(things) <= _SHORT:
        return
    with _lock:
        # The list is kept with its table: as long as it is, no other can have its identity.
        _kept[id(things)] = (things, table)
        while len(_kept) > _MOST:
            del _kept[next(iter(_kept))]


def places_of(things: tuple[Named, ...], ids: Collection[str]) -> list[int]:
    """The places in the list of the things named, in order."""
    if not things or not ids:
        return []
    if len(things) <= _SHORT:
        return [number for number, thing in enumerate(things) if thing.id in ids]
    table = positions(things)
    if len(ids) > len(things):
        return [number for key, number in table.items() if key in ids]
    return sorted(table[key] for key in ids if key in table)


def chosen(things: tuple[N, ...], ids: Collection[str]) -> list[N]:
    """The things named, in the order of the list."""
    return [things[number] for number in places_of(things, ids)]


def replaced(things: tuple[N, ...], new: Mapping[int, N]) -> tuple[N, ...]:
    """The list with other things at some places; they keep the ids of those before."""
    changed = list(things)
    for number, thing in new.items():
        changed[number] = thing
    made = tuple(changed)
    if all(things[number].id == thing.id for number, thing in new.items()):
        hand_on(things, made)
    return made


def changed_places(before: tuple[N, ...], after: tuple[N, ...]) -> list[int] | None:
    """Where two lists hold different objects; None where they do not hold the same ids in the same order."""
    if before is after:
        return []
    if len(before) != len(after):
        return None
    places = list(compress(range(len(before)), map(is_not, before, after)))
    same = all(before[number].id == after[number].id for number in places)
    return places if same else None
