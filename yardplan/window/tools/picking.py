"""What a click or the Tab key picks: a thing, its whole group, or one member of it. Groups: make and end."""

from __future__ import annotations

import math

from yardplan.language import tr, tr_n
from yardplan.window.open_yard import OpenYard
from yardplan.window.tools.naming import names_of
from yardplan.yard import edits, groups
from yardplan.yard.ground import Outline, Point
from yardplan.yard.handles import covered
from yardplan.yard.positions import chosen
from yardplan.yard.yard import Yard

#: The frame of a group lies so far outside its things, metres.
_ROUND = 0.3


def picked(open_yard: OpenYard, key: str, *, one: bool = False) -> frozenset[str]:
    """The ids that a click on a thing picks: its group, or itself with `one`.

    While some members of the group are picked, but not all, one is inside it: single members are picked then.
    """
    group = groups.group_of(open_yard.shown_yard, key)
    if group is None or one or inside(open_yard, key):
        return frozenset({key})
    return frozenset(group.members)


def inside(open_yard: OpenYard, key: str) -> bool:
    """True while single members of the thing's group are picked."""
    group = groups.group_of(open_yard.shown_yard, key)
    ids = open_yard.selection
    return group is not None and bool(ids) and ids < frozenset(group.members)


def cycle(open_yard: OpenYard, step: int, *, round_: bool = True) -> str | None:
    """Select the next or previous thing in reading order, from the top left; returns its id.

    A group is one stop; from a single member one goes on among the members. After the last comes the first
    again, or with `round_` False nothing: None, and what was selected stays.
    """
    parts = _stops(open_yard)
    if not parts:
        return None
    now = [number for number, part in enumerate(parts) if not part.isdisjoint(open_yard.selection)]
    if now:
        number = now[0 if step < 0 else -1] + step
        if not (round_ or 0 <= number < len(parts)):
            return None
        number %= len(parts)
    else:
        number = 0 if step > 0 else len(parts) - 1
    open_yard.select(parts[number])
    return min(parts[number])


def _stops(open_yard: OpenYard) -> list[frozenset[str]]:
    """What Tab stops at, in reading order."""
    yard = open_yard.shown_yard
    entered = next((g for g in yard.groups if open_yard.selection < frozenset(g.members)), None)
    if entered is not None and open_yard.selection:
        return [frozenset({key}) for key in _in_order(yard, frozenset(entered.members))]
    stops: dict[frozenset[str], None] = {}
    for key in _in_order(yard, frozenset(yard.ids())):
        group = groups.group_of(yard, key) if yard.groups else None
        stops[frozenset(group.members) if group else frozenset({key})] = None
    return list(stops)


def _in_order(yard: Yard, ids: frozenset[str]) -> list[str]:
    things = sorted(yard.named(ids), key=lambda thing: _reading_order(edits.points_of(thing)))
    return [thing.id for thing in things]


def _reading_order(points: tuple[Point, ...]) -> tuple[float, float]:
    """Rows of 5 m from the top, left to right within each."""
    x = min(p[0] for p in points)
    top = max(p[1] for p in points)
    return (-math.floor(top / 5.0), x)


def frames(open_yard: OpenYard) -> list[Outline]:
    """An upright box round each whole group that is selected, crowns and all, metres."""
    yard = open_yard.shown_yard
    boxes: list[Outline] = []
    for group in groups.whole_groups(yard, open_yard.selection) if open_yard.selection else ():
        crowns = {p.id: p.size.spread / 2 for p in chosen(open_yard.stand.plants, group.members)}
        reach = [
            (x, y, crowns.get(thing.id, 0.0) + _ROUND)
            for thing in yard.named(group.members) for x, y in covered(thing)
        ]
        left, right = min(x - r for x, _, r in reach), max(x + r for x, _, r in reach)
        bottom, top = min(y - r for _, y, r in reach), max(y + r for _, y, r in reach)
        boxes.append(((left, bottom), (right, bottom), (right, top), (left, top)))
    return boxes


def group(open_yard: OpenYard) -> str:
    """Make one group of the selection, pots with what stands in them. Returns what to say."""
    yard = open_yard.yard
    ids = edits.together(yard, open_yard.selection & yard.ids())
    new = groups.group(yard, ids)
    if new == yard:
        return tr("Select two or more things to group them")
    made = new.groups[-1]
    many = len(made.members)
    text = tr_n("Group {n} thing", "Group {n} things", many)
    open_yard.commit(text, new, selection=made.members)
    return tr_n("{group} made of {n} thing", "{group} made of {n} things", many, group=made.name)


def ungroup(open_yard: OpenYard) -> str:
    """End the groups of the selection; their members stay selected. Returns what to say."""
    yard, ids = open_yard.yard, open_yard.selection
    members = groups.with_members(yard, ids) & yard.ids()
    new = groups.ungroup(yard, ids)
    if new is yard:
        return tr("Nothing that is selected is in a group")
    text = tr("Ungroup {things}", things=names_of(yard, members))
    open_yard.commit(text, new, selection=members)
    return text


def rename(open_yard: OpenYard, name: str) -> str:
    """Give the selected group another name. Returns what to say."""
    yard = open_yard.yard
    old = sole_group(open_yard)
    if old is None or name.strip() in ("", old):
        return ""
    new = groups.rename(yard, old, name)
    if new == yard:
        return tr("There is a group called {name} already", name=name.strip())
    open_yard.commit(tr("Rename {group}", group=old), new)
    return tr("{old} is called {name} now", old=old, name=name.strip())


def any_grouped(open_yard: OpenYard) -> bool:
    """True when anything selected is in a group."""
    return any(not open_yard.selection.isdisjoint(group.members) for group in open_yard.yard.groups)


def sole_group(open_yard: OpenYard) -> str | None:
    """The name of the one group selected, or None."""
    found = {g.name for key in open_yard.selection if (g := groups.group_of(open_yard.yard, key)) is not None}
    return found.pop() if len(found) == 1 else None
