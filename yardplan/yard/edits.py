"""Every edit of a yard: yard in, yard out. Nothing here changes a value in place."""

from __future__ import annotations

import math
from collections.abc import Callable, Collection, Iterable, Mapping
from typing import Any

from attrs import evolve

from yardplan.language import tr
from yardplan.yard import curves
from yardplan.yard import groups as groupings
from yardplan.yard.ground import Barrier, Building, Curve, Dimension, Outline, Paving, Picture, Point, Service
from yardplan.yard.planting import Bed, Container, Planting, Row
from yardplan.yard.positions import places_of, replaced
from yardplan.yard.yard import COLLECTIONS, Group, Thing, Yard, list_name

Mapped = Callable[[Point], Point]

#: The field that holds a thing's points, by class; things not named here stand at `place`.
OUTLINE_FIELD: dict[type, str] = {
    Building: "footprint",
    Barrier: "line",
    Paving: "outline",
    Service: "points",
    Row: "line",
    Bed: "outline",
    Dimension: "ends",
    Picture: "base",
}


class EditError(ValueError):
    """An edit that cannot be done, said in words for a person."""


def points_of(thing: Thing) -> Outline:
    """The points that place a thing: its corners, its line, or its one place."""
    name = OUTLINE_FIELD.get(type(thing))
    return getattr(thing, name) if name else (thing.place,)  # type: ignore[union-attr]


def with_points(thing: Thing, points: Iterable[Point]) -> Thing:
    """The thing with other points, as many as it may have; a curved outline becomes one of corners."""
    placed = tuple((float(x), float(y)) for x, y in points)
    name = OUTLINE_FIELD.get(type(thing))
    fields: dict[str, Any] = {name: placed} if name else {"place": placed[0]}
    if getattr(thing, "curve", None) is not None:
        fields["curve"] = None
    return evolve(thing, **fields)


def with_curve(thing: Bed | Paving, curve: Curve) -> Bed | Paving:
    """The thing drawn along a curve."""
    return evolve(thing, curve=curve, outline=curves.outline_of(curve))


def placed_by(thing: Thing, mapped: Mapped) -> Thing:
    """The thing with every point put through `mapped`, a move, a turn or a mirroring; curves stay curves."""
    curve: Curve | None = getattr(thing, "curve", None)
    if curve is not None and isinstance(thing, Bed | Paving):
        return with_curve(thing, curves.mapped(curve, mapped))
    return with_points(thing, (mapped(p) for p in points_of(thing)))


def _each(yard: Yard, ids: Collection[str], change: Callable[[Any], Any]) -> Yard:
    """Apply `change` to the things named, keeping every list's order."""
    lists: dict[str, Any] = {}
    for name in COLLECTIONS:
        things = getattr(yard, name)
        places = places_of(things, ids)
        if places:
            lists[name] = replaced(things, {number: change(things[number]) for number in places})
    return evolve(yard, **lists) if lists else yard


def together(yard: Yard, ids: Collection[str]) -> frozenset[str]:
    """The ids and what must move with them: a container and the plants that stand in it, both ways."""
    if not yard.containers:
        return frozenset(ids)
    wanted = set(ids)
    wanted |= {p.container for p in yard.plantings if p.container and p.id in wanted}
    wanted |= {p.id for p in yard.plantings if p.container in wanted}
    return frozenset(wanted)


def add(yard: Yard, *things: Thing) -> Yard:
    """Add things at the end of their lists. Raises EditError when an id is taken."""
    taken = yard.ids()
    for thing in things:
        if thing.id in taken:
            raise EditError(tr("the key {key} is taken already", key=thing.id))
        taken.add(thing.id)
        name = list_name(thing)
        longer: dict[str, Any] = {name: (*getattr(yard, name), thing)}
        yard = evolve(yard, **longer)
    return yard


def remove(yard: Yard, ids: Collection[str]) -> Yard:
    """Take things out, of their groups too; plants that stood in a removed container stay, in the ground."""
    lists: dict[str, Any] = {
        name: kept
        for name in COLLECTIONS
        if len(kept := tuple(t for t in getattr(yard, name) if t.id not in ids)) != len(getattr(yard, name))
    }
    left = groupings.pruned(yard.groups, ids)
    yard = evolve(yard, **lists, groups=left, extra=_without(yard.extra, ids))
    orphans = {p.id for p in yard.plantings if p.container in ids}
    return _each(yard, orphans, lambda plant: evolve(plant, container=None))


def _without(extra: Mapping[str, Any], ids: Collection[str]) -> Mapping[str, Any]:
    """The unknown fields of a file without those of removed things (owners like `#A1` or `#A1/soil`)."""
    if not extra:
        return extra
    gone = {f"#{thing_id}" for thing_id in ids}
    return {owner: kept for owner, kept in extra.items() if owner.partition("/")[0] not in gone}


def replace(yard: Yard, thing: Thing) -> Yard:
    """Put a changed thing in the place of the one with its id."""
    return _each(yard, {thing.id}, lambda _: thing)


def change(yard: Yard, ids: Collection[str], **fields: Any) -> Yard:
    """Set fields of the things named."""
    return _each(yard, ids, lambda thing: evolve(thing, **fields))


def place_by(yard: Yard, ids: Collection[str], mapped: Mapped) -> Yard:
    """Put every point of the things named (and what moves with them) through `mapped`."""
    moving = together(yard, ids)
    return _each(yard, moving, lambda thing: placed_by(thing, mapped))


def move(yard: Yard, ids: Collection[str], offset: Point) -> Yard:
    """Shift things by `offset` metres."""
    dx, dy = offset
    return place_by(yard, ids, lambda p: (p[0] + dx, p[1] + dy))


def turned(point: Point, about: Point, degrees: float) -> Point:
    """The point turned counter-clockwise about another."""
    c, s = math.cos(math.radians(degrees)), math.sin(math.radians(degrees))
    x, y = point[0] - about[0], point[1] - about[1]
    return (about[0] + c * x - s * y, about[1] + s * x + c * y)


def _turn_fields(thing: Any, degrees: float) -> Any:
    """Turn the directions that a thing keeps besides its points."""
    if isinstance(thing, Planting):
        return evolve(thing, facing=(thing.facing + degrees) % 360)
    if isinstance(thing, Building) and thing.ridge_angle is not None:
        return evolve(thing, ridge_angle=(thing.ridge_angle + degrees) % 360)
    return thing


def rotate(yard: Yard, ids: Collection[str], about: Point, degrees: float) -> Yard:
    """Turn things counter-clockwise about a point."""
    moved = place_by(yard, ids, lambda p: turned(p, about, degrees))
    return _each(moved, together(yard, ids), lambda thing: _turn_fields(thing, degrees))


def move_corner(yard: Yard, thing_id: str, index: int, to: Point) -> Yard:
    """Put one corner of a thing (or of the lot, id `lot`) somewhere else; of a curve one of its grips."""
    curve = curve_of(yard, thing_id)
    if curve is not None:
        return set_curve(yard, thing_id, curves.with_grip(curve, index, to))

    def moved(points: Outline) -> Outline:
        if not 0 <= index < len(points):
            raise EditError(tr("there is no corner {number} of {many}", number=index + 1, many=len(points)))
        return (*points[:index], to, *points[index + 1 :])

    if thing_id == "lot":
        return set_lot(yard, moved(yard.lot))
    return _each(yard, {thing_id}, lambda thing: with_points(thing, moved(points_of(thing))))


def set_lot(yard: Yard, lot: Iterable[Point]) -> Yard:
    """Draw the lot line, from corner to corner."""
    return evolve(yard, lot=tuple((float(x), float(y)) for x, y in lot), lot_curve=None)


def curve_of(yard: Yard, thing_id: str) -> Curve | None:
    """The curve that a thing or the lot (id `lot`) was drawn along, or None."""
    return yard.lot_curve if thing_id == "lot" else getattr(yard.find(thing_id), "curve", None)


def set_curve(yard: Yard, thing_id: str, curve: Curve) -> Yard:
    """Draw a bed, paving or the lot (id `lot`) along a curve."""
    if thing_id == "lot":
        return evolve(yard, lot=curves.outline_of(curve), lot_curve=curve)
    thing = yard.find(thing_id)
    return replace(yard, with_curve(thing, curve)) if isinstance(thing, Bed | Paving) else yard


def set_site(yard: Yard, **fields: Any) -> Yard:
    """Set facts of the site."""
    return evolve(yard, site=evolve(yard.site, **fields))


def next_key(yard: Yard, letter: str) -> str:
    """The first free plan key with this letter: A1, A2, ..."""
    taken = yard.ids()
    number = 1
    while f"{letter}{number}" in taken:
        number += 1
    return f"{letter}{number}"


def key_letter(thing_id: str) -> str:
    """The letters a plan key starts with."""
    return thing_id.rstrip("0123456789") or thing_id


def paste(
    yard: Yard, things: Iterable[Thing], offset: Point, groups: Iterable[Group] = ()
) -> tuple[Yard, tuple[str, ...]]:
    """Add copies of things under new keys, shifted; containers and their plants stay together.

    `groups` those of the things that were copied: the copies are grouped likewise.
    """
    renamed: dict[str, str] = {}
    for thing in things:
        key = next_key(yard, key_letter(thing.id))
        renamed[thing.id] = key
        yard = add(yard, evolve(thing, id=key))
    keys = tuple(renamed.values())
    yard = _each(yard, keys, lambda thing: _rehouse_one(thing, renamed))
    dx, dy = offset
    yard = _each(yard, keys, lambda thing: placed_by(thing, lambda p: (p[0] + dx, p[1] + dy)))
    return groupings.copied(yard, groups, renamed), keys


def _rehouse_one(thing: Any, renamed: dict[str, str]) -> Any:
    """A copied plant stands in the copied container; without one it stands in the ground."""
    if isinstance(thing, Planting) and thing.container is not None:
        return evolve(thing, container=renamed.get(thing.container))
    return thing


def duplicate(yard: Yard, ids: Collection[str], offset: Point) -> tuple[Yard, tuple[str, ...]]:
    """Copy things of the yard within it; returns the yard and the new keys."""
    chosen = together(yard, ids)
    return paste(yard, [thing for thing in yard.things() if thing.id in chosen], offset, yard.groups)


def vessel_of(yard: Yard, plant: Planting) -> Container | None:
    """The container a plant stands in, or None."""
    return next((c for c in yard.containers if c.id == plant.container), None)
