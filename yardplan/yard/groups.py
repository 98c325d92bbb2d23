"""Groups: things that are picked, moved, turned, copied and removed together. Yard in, yard out.

Groups do not nest and a thing is in one group at most: things that are grouped anew leave their old group.
"""

from __future__ import annotations

from collections.abc import Collection, Iterable, Mapping

from attrs import evolve

from yardplan.language import tr
from yardplan.yard.ground import Picture
from yardplan.yard.yard import Group, Yard

#: A group of fewer things is none.
FEWEST = 2


def group_of(yard: Yard, thing_id: str) -> Group | None:
    """The group a thing is in, or None."""
    return next((group for group in yard.groups if thing_id in group.members), None)


def with_members(yard: Yard, ids: Collection[str]) -> frozenset[str]:
    """The ids and all members of the groups that any of them is in."""
    touched = (group.members for group in yard.groups if not frozenset(group.members).isdisjoint(ids))
    return frozenset(ids).union(*touched)


def whole_groups(yard: Yard, ids: Collection[str]) -> tuple[Group, ...]:
    """The groups of which every member is among the ids."""
    return tuple(group for group in yard.groups if frozenset(group.members) <= frozenset(ids))


def only_whole(yard: Yard, ids: Collection[str]) -> frozenset[str]:
    """The ids without members of groups that are not all among them."""
    torn = (g.members for g in yard.groups if not frozenset(g.members) <= frozenset(ids))
    return frozenset(ids).difference(*torn)


def units_of(yard: Yard, ids: Collection[str]) -> list[frozenset[str]]:
    """The ids in parts that are kept together: each whole group one part, every other thing its own.

    Where the ids are one group and nothing else, each of its members is a part.
    """
    groups = [frozenset(group.members) for group in whole_groups(yard, ids)]
    if len(groups) == 1 and groups[0] == frozenset(ids):
        groups = []
    single = frozenset(ids).difference(*groups)
    order = [thing.id for thing in yard.named(ids)]
    parts: list[frozenset[str]] = []
    for key in order:
        part = frozenset({key}) if key in single else next(group for group in groups if key in group)
        if part not in parts:
            parts.append(part)
    return parts


def free_name(yard: Yard) -> str:
    """The first name not taken yet: Group 1, Group 2, ..."""
    taken = {group.name for group in yard.groups}
    number = 1
    while tr("Group {n}", n=number) in taken:
        number += 1
    return tr("Group {n}", n=number)


def group(yard: Yard, ids: Collection[str], name: str | None = None) -> Yard:
    """Make one group of things; fewer than two make none. Pictures lie under the plan and are left out."""
    members = tuple(thing.id for thing in yard.named(ids) if not isinstance(thing, Picture))
    if len(members) < FEWEST:
        return yard
    left = pruned(yard.groups, members)
    yard = evolve(yard, groups=left)
    return evolve(yard, groups=(*left, Group(name=name or free_name(yard), members=members)))


def ungroup(yard: Yard, ids: Collection[str]) -> Yard:
    """Dissolve every group that any of the things is in."""
    kept = tuple(group for group in yard.groups if frozenset(group.members).isdisjoint(ids))
    return evolve(yard, groups=kept) if len(kept) != len(yard.groups) else yard


def rename(yard: Yard, old: str, new: str) -> Yard:
    """Give a group another name; one that is taken or empty changes nothing."""
    if not new.strip() or new.strip() in {group.name for group in yard.groups}:
        return yard
    named = (evolve(g, name=new.strip()) if g.name == old else g for g in yard.groups)
    return evolve(yard, groups=tuple(named))


def pruned(groups: Iterable[Group], gone: Collection[str]) -> tuple[Group, ...]:
    """The groups without things that left; those with fewer than two members end."""
    rest = (
        group if frozenset(group.members).isdisjoint(gone)
        else evolve(group, members=tuple(key for key in group.members if key not in gone))
        for group in groups
    )
    return tuple(group for group in rest if len(group.members) >= FEWEST)


def copied(yard: Yard, groups: Iterable[Group], renamed: Mapping[str, str]) -> Yard:
    """Add copies of the groups whose members were all copied, under the copies' keys."""
    for each in groups:
        if all(key in renamed for key in each.members):
            yard = group(yard, [renamed[key] for key in each.members])
    return yard
