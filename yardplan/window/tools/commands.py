"""Commands on the selection that need no gesture: nudge, delete, copy, lock."""

from __future__ import annotations

from yardplan.language import tr
from yardplan.units import FOOT, INCH, System
from yardplan.window.open_yard import OpenYard
from yardplan.window.tools.moving import movable, moved_words, troubles_of
from yardplan.window.tools.naming import names_of
from yardplan.yard import edits
from yardplan.yard.ground import Point

#: One press of an arrow key and one with Shift, metres.
NUDGE: dict[System, tuple[float, float]] = {"metric": (0.1, 1.0), "imperial": (3 * INCH, FOOT)}
#: Copies are put down so far to the right and below, metres.
BESIDE: Point = (1.0, -1.0)


def nudge(open_yard: OpenYard, way: tuple[int, int], *, far: bool) -> str:
    """Shift the selection by one step; returns what to say, empty when nothing is selected."""
    ids = movable(open_yard.yard, open_yard.selection)
    if not ids:
        return tr("Locked things are not moved") if open_yard.selection - {"lot"} else ""
    step = NUDGE[open_yard.units][1 if far else 0]
    offset = (way[0] * step, way[1] * step)
    before = troubles_of(open_yard, ids)
    yard = edits.move(open_yard.yard, ids, offset)
    text = tr("Move {things}", things=names_of(open_yard.yard, ids))
    open_yard.commit(text, yard, merge="nudge " + " ".join(sorted(ids)))
    return moved_words(open_yard, offset, before)


def delete(open_yard: OpenYard) -> str:
    """Take out the selection; locked things stay. Returns what to say."""
    yard, selection = open_yard.yard, open_yard.selection
    ids = movable(yard, selection)
    if not ids:
        return tr("Locked things are not deleted") if selection - {"lot"} else ""
    name = names_of(yard, ids)
    open_yard.commit(tr("Delete {name}", name=name), edits.remove(yard, ids), selection=())
    return tr("{name} deleted", name=name)


def duplicate(open_yard: OpenYard) -> str:
    """Put copies beside the selection and select them. Returns what to say."""
    yard = open_yard.yard
    ids = open_yard.selection & yard.ids()
    if not ids:
        return ""
    new, keys = edits.duplicate(yard, ids, BESIDE)
    open_yard.commit(tr("Copy {things}", things=names_of(yard, ids)), new, selection=keys)
    return tr("{things} added", things=names_of(new, keys))


def select_all(open_yard: OpenYard) -> None:
    """Select everything but the lot line."""
    open_yard.select(open_yard.shown_yard.ids())


def set_locked(open_yard: OpenYard, locked: bool) -> None:
    """Lock or unlock the selection."""
    yard = open_yard.yard
    ids = open_yard.selection & yard.ids()
    things = names_of(yard, ids)
    text = tr("Lock {things}", things=things) if locked else tr("Unlock {things}", things=things)
    open_yard.commit(text, edits.change(yard, ids, locked=locked))
