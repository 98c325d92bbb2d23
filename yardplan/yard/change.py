"""What differs between two yards: the one message that canvas, panels and live checks hear."""

from __future__ import annotations

from attrs import evolve, fields, frozen

from yardplan.yard.edits import OUTLINE_FIELD
from yardplan.yard.positions import changed_places
from yardplan.yard.yard import COLLECTIONS, Thing, Yard

#: Fields that matter to no check and to nothing drawn.
_ASIDE = ("groups", "variants")
#: The fields of a yard that are not lists of things.
_WHOLE = tuple(f.name for f in fields(Yard) if f.name not in (*COLLECTIONS, *_ASIDE))
#: What is kept of work and prices, and the yard's lasting name: no check, light or date hangs on it.
_RECORDS = frozenset({"done", "prices", "currency", "uid"})


@frozen(kw_only=True)
class Change:
    """Ids added, removed, moved (points only) and altered (anything else); names of whole fields changed.

    `aside`: names of changed fields that matter to no check and to nothing drawn: groups, variants.
    """

    added: frozenset[str] = frozenset()
    removed: frozenset[str] = frozenset()
    moved: frozenset[str] = frozenset()
    altered: frozenset[str] = frozenset()
    whole: frozenset[str] = frozenset()
    aside: frozenset[str] = frozenset()

    @property
    def nothing(self) -> bool:
        """True when the yards are alike."""
        return not (self.added or self.removed or self.moved or self.altered or self.whole or self.aside)

    @property
    def only_moves(self) -> bool:
        """True when things only moved: checks that do not look at places can be skipped."""
        others = self.added or self.removed or self.altered or self.whole or self.aside
        return bool(self.moved) and not others

    @property
    def only_records(self) -> bool:
        """True when only marks of work, prices, groups or variants changed: checks, light and dates stay."""
        said = self.whole | self.aside
        return bool(said) and self.whole <= _RECORDS and not (self.touched or self.removed)

    @property
    def touched(self) -> frozenset[str]:
        """Ids that are new, moved or altered."""
        return self.added | self.moved | self.altered


def _only_moved(old: Thing, new: Thing) -> bool:
    """True when two versions of a thing differ in nothing but their points."""
    name = OUTLINE_FIELD.get(type(old), "place")
    placed = {name: getattr(new, name)}
    if hasattr(old, "curve"):
        # A curve goes with its outline; which it is, if any, makes no difference to anybody but its grips.
        placed["curve"] = getattr(new, "curve", None)
    return bool(evolve(old, **placed) == new)


def _differs(old: object, new: object) -> bool:
    return old is not new and old != new


def difference(old: Yard, new: Yard) -> Change:
    """What to do to go from `old` to `new`. Lists that are the same object are not looked into."""
    added: set[str] = set()
    removed: set[str] = set()
    moved: set[str] = set()
    altered: set[str] = set()
    for name in COLLECTIONS:
        before, after = getattr(old, name), getattr(new, name)
        places = changed_places(before, after)
        if places is not None:
            for one, other in ((before[number], after[number]) for number in places):
                if one != other:
                    (moved if _only_moved(one, other) else altered).add(one.id)
            continue
        then = {thing.id: thing for thing in before}
        now = {thing.id: thing for thing in after}
        added |= now.keys() - then.keys()
        removed |= then.keys() - now.keys()
        for key in now.keys() & then.keys():
            if now[key] is not then[key] and now[key] != then[key]:
                (moved if _only_moved(then[key], now[key]) else altered).add(key)
    whole = {name for name in _WHOLE if _differs(getattr(old, name), getattr(new, name))}
    aside = {name for name in _ASIDE if _differs(getattr(old, name), getattr(new, name))}
    return Change(
        added=frozenset(added), removed=frozenset(removed), moved=frozenset(moved),
        altered=frozenset(altered), whole=frozenset(whole), aside=frozenset(aside),
    )
