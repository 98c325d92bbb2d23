"""What differs between two yards: the one message that canvas, panels and live checks hear."""

from __future__ import annotations

from attrs import evolve, fields, frozen

from yardplan.yard.edits import OUTLINE_FIELD
from yardplan.yard.yard import COLLECTIONS, Thing, Yard

#: The fields of a yard that are not lists of things.
_WHOLE = tuple(f.name for f in fields(Yard) if f.name not in COLLECTIONS)
#: What is kept of work and prices, and the yard's lasting name: no check, light or date hangs on it.
_RECORDS = frozenset({"done", "prices", "currency", "uid"})


@frozen(kw_only=True)
class Change:
    """Ids added, removed, moved (points only) and altered (anything else); names of whole fields changed."""

    added: frozenset[str] = frozenset()
    removed: frozenset[str] = frozenset()
    moved: frozenset[str] = frozenset()
    altered: frozenset[str] = frozenset()
    whole: frozenset[str] = frozenset()

    @property
    def nothing(self) -> bool:
        """True when the yards are alike."""
        return not (self.added or self.removed or self.moved or self.altered or self.whole)

    @property
    def only_moves(self) -> bool:
        """True when things only moved: checks that do not look at places can be skipped."""
        return bool(self.moved) and not (self.added or self.removed or self.altered or self.whole)

    @property
    def only_records(self) -> bool:
        """True when only marks of work done or prices changed: checks, light and dates stay as they are."""
        return bool(self.whole) and self.whole <= _RECORDS and not (self.touched or self.removed)

    @property
    def touched(self) -> frozenset[str]:
        """Ids that are new, moved or altered."""
        return self.added | self.moved | self.altered


def _only_moved(old: Thing, new: Thing) -> bool:
    """True when two versions of a thing differ in nothing but their points."""
    name = OUTLINE_FIELD.get(type(old), "place")
    return bool(evolve(old, **{name: getattr(new, name)}) == new)


def difference(old: Yard, new: Yard) -> Change:
    """What to do to go from `old` to `new`. Lists that are the same object are not looked into."""
    added: set[str] = set()
    removed: set[str] = set()
    moved: set[str] = set()
    altered: set[str] = set()
    for name in COLLECTIONS:
        before, after = getattr(old, name), getattr(new, name)
        if before is after:
            continue
        then = {thing.id: thing for thing in before}
        now = {thing.id: thing for thing in after}
        added |= now.keys() - then.keys()
        removed |= then.keys() - now.keys()
        for key in now.keys() & then.keys():
            if now[key] is not then[key] and now[key] != then[key]:
                (moved if _only_moved(then[key], now[key]) else altered).add(key)
    whole = {name for name in _WHOLE if getattr(old, name) != getattr(new, name)}
    return Change(
        added=frozenset(added), removed=frozenset(removed), moved=frozenset(moved),
        altered=frozenset(altered), whole=frozenset(whole),
    )
