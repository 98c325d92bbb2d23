"""What to call things in undo texts, announcements and the status line."""

from __future__ import annotations

from collections.abc import Collection

from yardplan.language import later, tr, tr_n
from yardplan.window.panels.names import kind_word
from yardplan.yard.ground import Note, Service, StandingTree
from yardplan.yard.planting import Planting, Row
from yardplan.yard.yard import Thing, Yard

#: Points of the compass, counter-clockwise from east, for the result of a move.
_COMPASS = (
    later("east"),
    later("north-east"),
    later("north"),
    later("north-west"),
    later("west"),
    later("south-west"),
    later("south"),
    later("south-east"),
)


def thing_name(thing: Thing) -> str:
    """A thing's name as a grower says it: `A1 Liberty`, `House`, `fence`."""
    if isinstance(thing, Planting | Row):
        return f"{thing.id} {thing.plant.cultivar}"
    if isinstance(thing, StandingTree):
        return thing.name or thing.cultivar or tr(thing.kind)
    if isinstance(thing, Note):
        return tr("note")
    if isinstance(thing, Service):
        return thing.name or tr("{kind} line", kind=tr(thing.kind))
    name: str = getattr(thing, "name", "")
    return name or kind_word(thing)


def names_of(yard: Yard, ids: Collection[str]) -> str:
    """The one thing's name, the group's where it is one, or how many there are."""
    if set(ids) == {"lot"}:
        return tr("lot line")
    group = next((g for g in yard.groups if set(g.members) == set(ids)), None)
    if group is not None:
        return tr_n("{group} of {n} thing", "{group} of {n} things", len(group.members), group=group.name)
    chosen = yard.named(ids)
    return thing_name(chosen[0]) if len(chosen) == 1 else tr_n("{n} thing", "{n} things", len(chosen))


def compass_word(degrees_from_right: float, north: float) -> str:
    """The compass direction of an angle on the drawing; `north` as in Site."""
    turn = (degrees_from_right + north) % 360
    return tr(_COMPASS[round(turn / 45) % 8])
