"""Shared by all ways of moving: which things move, by what point they are held, what is said afterwards."""

from __future__ import annotations

import math
from collections.abc import Collection

from yardplan.checks.finding import Weight
from yardplan.language import tr, tr_n
from yardplan.units import format_length
from yardplan.window.canvas.geometry import distance
from yardplan.window.open_yard import OpenYard
from yardplan.window.tools.naming import compass_word
from yardplan.yard.edits import points_of
from yardplan.yard.ground import Point
from yardplan.yard.yard import Yard


def movable(yard: Yard, ids: Collection[str]) -> frozenset[str]:
    """The things that may be moved: those not locked; the lot line moves by its corners only."""
    return frozenset(thing.id for thing in yard.named(ids) if not thing.locked)


def anchor_of(yard: Yard, key: str, near: Point) -> Point:
    """The point by which a thing is held for snapping: its place, or its corner nearest the pointer."""
    thing = yard.find(key)
    if thing is None:
        return near
    return min(points_of(thing), key=lambda p: distance(p, near))


def moved_words(open_yard: OpenYard, offset: Point) -> str:
    """The outcome of a move, spoken: how far, which way, and what conflicts the moved things still have."""
    far = math.hypot(*offset)
    if far < 1e-9:
        return tr("Not moved")
    yard = open_yard.yard
    way = compass_word(math.degrees(math.atan2(offset[1], offset[0])), yard.site.north)
    conflicts = sum(
        1 for finding in open_yard.findings
        if finding.weight is Weight.CONFLICT and open_yard.selection.intersection(finding.things)
    )
    outcome = tr_n("{n} conflict", "{n} conflicts", conflicts) if conflicts else tr("no conflict")
    length = format_length(far, open_yard.units)
    return tr("Moved {length} {way}; {outcome}", length=length, way=way, outcome=outcome)
