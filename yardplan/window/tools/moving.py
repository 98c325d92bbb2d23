"""Shared by all ways of moving: which things move, by what point they are held, what is said afterwards."""

from __future__ import annotations

import math
from collections.abc import Collection

from yardplan.checks.finding import Finding, Weight
from yardplan.language import all_of, mid_sentence, tr, tr_n
from yardplan.units import format_length
from yardplan.window.canvas.geometry import distance
from yardplan.window.open_yard import OpenYard
from yardplan.window.tools.naming import compass_word, thing_name
from yardplan.yard import edits
from yardplan.yard.curves import grips
from yardplan.yard.ground import Point
from yardplan.yard.groups import whole_groups
from yardplan.yard.yard import Yard

#: So many things are named in what is said; more are counted.
MOST_NAMED = 2


def movable(yard: Yard, ids: Collection[str]) -> frozenset[str]:
    """The things that may be moved: those not locked; the lot line moves by its corners only.

    A whole group stays where one of its members is locked, so that it is not torn apart.
    """
    free = frozenset(thing.id for thing in yard.named(ids) if not thing.locked)
    held = [group.members for group in whole_groups(yard, ids) if not free.issuperset(group.members)]
    return free.difference(*held)


def anchor_of(yard: Yard, key: str, near: Point) -> Point:
    """The point by which a thing is held for snapping: its place, or its corner nearest the pointer."""
    thing = yard.find(key)
    if thing is None:
        return near
    curve = edits.curve_of(yard, key)
    points = (*curve.points, *grips(curve)) if curve is not None else edits.points_of(thing)
    return min(points, key=lambda p: distance(p, near))


def troubles_of(open_yard: OpenYard, ids: Collection[str]) -> tuple[Finding, ...]:
    """The conflicts and cautions that things have now; taken before a move and compared after it."""
    return tuple(
        finding for finding in open_yard.findings
        if finding.weight is not Weight.ADVICE and not set(finding.things).isdisjoint(ids)
    )


def moved_words(open_yard: OpenYard, offset: Point, before: Collection[Finding] = ()) -> str:
    """The outcome of a move, spoken: how far, which way, what it is clear of now, what it conflicts with.

    `before`: what was wrong with the moved things (`troubles_of`).
    """
    far = math.hypot(*offset)
    if far < 1e-9:
        return tr("Not moved")
    way = compass_word(math.degrees(math.atan2(offset[1], offset[0])), open_yard.yard.site.north)
    length = format_length(far, open_yard.units)
    outcome = outcome_words(open_yard, before)
    return tr("Moved {length} {way}; {outcome}", length=length, way=way, outcome=outcome)


def outcome_words(open_yard: OpenYard, before: Collection[Finding] = ()) -> str:
    """What the selected things are clear of now, what is newly wrong, and how many conflicts are left."""
    now = troubles_of(open_yard, open_yard.selection)
    known, left = {finding.key for finding in before}, {finding.key for finding in now}
    freed = _others(open_yard, [finding for finding in before if finding.key not in left])
    new = next((f for f in now if f.key not in known and _others(open_yard, [f])), None)
    parts = [tr("clear of {things}", things=freed)] if freed else []
    if new is not None:
        from yardplan.checks.wording import names_of, say

        title = mid_sentence(say(new, names_of(open_yard.yard), open_yard.units).title)
        # What is wrong with the lot line names it.
        only_lot = set(new.things) - open_yard.selection == {"lot"}
        things = _others(open_yard, [new])
        parts.append(title if only_lot else tr("{finding}: {things}", finding=title, things=things))
    conflicts = sum(finding.weight is Weight.CONFLICT for finding in now)
    if conflicts or not parts:
        parts.append(tr_n("{n} conflict", "{n} conflicts", conflicts) if conflicts else tr("no conflict"))
    return "; ".join(parts)


def _others(open_yard: OpenYard, findings: Collection[Finding]) -> str:
    """The things on the other side of findings: one or two by name, more by number."""
    chosen = open_yard.selection
    ids = list(dict.fromkeys(key for finding in findings for key in finding.things if key not in chosen))
    names = [_name(open_yard, key) for key in ids]
    return tr_n("{n} thing", "{n} things", len(names)) if len(names) > MOST_NAMED else all_of(names)


def _name(open_yard: OpenYard, key: str) -> str:
    thing = open_yard.yard.find(key)
    return thing_name(thing) if thing is not None else tr("the lot line") if key == "lot" else key
