"""Upright boxes round all things of a yard, as an array, so that what lies in a place is found at once."""

from __future__ import annotations

from collections.abc import Collection, Sequence
from typing import TYPE_CHECKING

import numpy as np
from numpy.typing import NDArray

from yardplan.drawing.view import PlanView
from yardplan.window.canvas.view import Bounds, bounds_of
from yardplan.yard.ground import Gate
from yardplan.yard.handles import covered
from yardplan.yard.positions import changed_places, chosen
from yardplan.yard.yard import COLLECTIONS, Thing, Yard

if TYPE_CHECKING:
    from yardplan.plants.stand import Stand, Standing, StandingRow


class Boxes:
    """Boxes by id, metres, plants with their crowns; kept in step with the yard shown."""

    def __init__(self) -> None:
        self._yard: Yard | None = None
        self._row: dict[str, int] = {}
        self._ids: list[str] = []
        self._array: NDArray[np.float64] = np.empty((0, 4))

    def follow(self, shown: PlanView) -> None:
        """Read what changed since the last time."""
        if shown.yard is self._yard:
            return
        changed = None if self._yard is None else _changed(self._yard, shown.yard)
        if changed is None:
            self._read_all(shown)
        else:
            halves = _half_widths(shown.stand, {thing.id for thing in changed})
            for thing in changed:
                self._array[self._row[thing.id]] = _box(thing, halves.get(thing.id, 0.0))
        self._yard = shown.yard

    def _read_all(self, shown: PlanView) -> None:
        things = {thing.id: thing for thing in shown.yard.things()}
        halves = _half_widths(shown.stand, things.keys())
        boxes = {key: _box(thing, halves.get(key, 0.0)) for key, thing in things.items()}
        if shown.yard.lot:
            boxes["lot"] = bounds_of(shown.yard.lot) or (0.0, 0.0, 0.0, 0.0)
        self._ids = list(boxes)
        self._row = {key: number for number, key in enumerate(self._ids)}
        self._array = np.array(list(boxes.values()), dtype=float).reshape(-1, 4)

    def of(self, ids: Collection[str]) -> list[Bounds]:
        """The boxes of some things; those that are not there are left out."""
        rows = (self._row.get(key) for key in ids)
        return [_bounds(self._array[row]) for row in rows if row is not None]

    def meeting(self, places: Sequence[Bounds], reach: float) -> list[str]:
        """Ids of the things whose boxes come within `reach` metres of any of the places."""
        found = np.zeros(len(self._ids), dtype=bool)
        left, bottom, right, top = self._array.T
        for a, b, c, d in places:
            found |= (
                (left <= c + reach) & (right >= a - reach) & (bottom <= d + reach) & (top >= b - reach)
            )
        return [self._ids[number] for number in np.flatnonzero(found)]


def _bounds(row: NDArray[np.float64]) -> Bounds:
    left, bottom, right, top = row.tolist()
    return (left, bottom, right, top)


def _changed(before: Yard, after: Yard) -> list[Thing] | None:
    """The things that are other objects than before; None where some came or went, or the lot changed."""
    if before.lot is not after.lot:
        return None
    changed: list[Thing] = []
    for name in COLLECTIONS:
        old, new = getattr(before, name), getattr(after, name)
        places = changed_places(old, new)
        if places is None:
            return None
        changed += [new[place] for place in places]
    return changed


def _box(thing: Thing, half: float) -> Bounds:
    if isinstance(thing, Gate):
        # Its leaf swings as far as it is wide, to whichever side.
        half = thing.width
    left, bottom, right, top = bounds_of(covered(thing)) or (0.0, 0.0, 0.0, 0.0)
    return (left - half, bottom - half, right + half, top + half)


def _half_widths(stand: Stand, ids: Collection[str]) -> dict[str, float]:
    """How far the crowns of some plants and rows reach from their places."""
    grown: list[Standing | StandingRow] = [*chosen(stand.plants, ids), *chosen(stand.rows, ids)]
    return {one.id: max(one.size.spread, one.mature.spread) / 2 for one in grown}
