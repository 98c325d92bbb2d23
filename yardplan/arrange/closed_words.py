"""Why ground is closed, in words for one place: what closes it, and how far off it would be clear of that."""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence

import shapely

from yardplan.arrange.clear_ground import ClearGround
from yardplan.arrange.closed import Closed
from yardplan.checks.wording import figure_text
from yardplan.language import later, tr
from yardplan.units import INCH, System, format_coarse
from yardplan.yard.ground import Point

#: Sentences by kind; `{thing}` what closes the place, other holes its figures.
_WORDS: dict[str, str] = {
    "overlap": later("too close to {thing}"),
    "group": later("too close to {thing}, even in a group"),
    "stem": later("too close to the stem of {thing}"),
    "form": later("too close to {thing} in the row"),
    "in_bed": later("the bed {thing} is planted with {crop}"),
    "row_plant": later("too close to the row {thing}"),
    "crown_wall": later("its crown would grow into {thing}"),
    "building": later("its roots come too near {thing}"),
    "clay": later("too near {thing} on clay that shrinks"),
    "inside": later("{thing} is there"),
    "outside": later("outside the lot line"),
    "law": later("nearer to the lot line than the usual law asks: check locally"),
    "law_own": later("nearer to the lot line than your local figure"),
    "septic_field": later("too near the septic field {thing}"),
    "septic_tank": later("too near the septic tank {thing}"),
    "buried": later("on the buried line {thing}: have it marked before you dig"),
    "overhead": later("grows too tall beside the overhead line {thing}"),
    "sight": later("would block the view of the street at {thing}"),
    "needs_bed": later("the ground cannot be made acid for {crop}"),
    "wet": later("the ground drains too poorly for {crop}"),
    "juglone": later("roots of {thing} would poison it, or it would poison them"),
    "row_outside": later("{thing} would reach outside the lot line"),
    "row_beside": later("the row would run too close to {thing}"),
    "row_row": later("too close to the row {thing}"),
    "row_wall": later("it would run through {thing}"),
    "row_across": later("it would run across {thing}"),
    "row_in_bed": later("it would run through the bed {thing}, which is planted with {crop}"),
    "bed_over": later("it would lie over {thing}"),
    "bed_under_row": later("the row {thing} would run through it"),
    "on_septic_field": later("it would lie on the septic field {thing}"),
    "bed_needs_bed": later("{thing} would stand in ground that cannot be made acid for {crop}"),
    "bed_wet": later("{thing} would stand in ground that drains too poorly for {crop}"),
    "unset": later("too far from every plant that sets it"),
    "only_giver": later("{thing} would lose its only partner"),
    "too_dark": later("too dark: it needs {needed} of sun a day"),
    "shades": later("would leave {thing} under {needed} of sun a day"),
}
#: Kinds whose edge is a place, so that a distance to it means something.
_NEARNESS = frozenset(_WORDS) - {"needs_bed", "wet", "law", "sight", "bed_needs_bed", "bed_wet"}
#: So many reasons are told at once.
_TOLD = 3
#: Distances are told to so much, metres.
_TOLD_STEP = 0.1


def say(closed: Closed, place: Point, names: Mapping[str, str], units: System) -> str:
    """One reason in words, with how far the nearest place is that is free of it."""
    holes = {name: figure_text(figure, names, units) for name, figure in closed.figures.items()}
    holes["thing"] = names.get(closed.things[0], closed.things[0]) if closed.things else ""
    words = tr(_WORDS[closed.kind], **holes)
    if closed.kind not in _NEARNESS:
        return words
    deep = float(closed.geometry.boundary.distance(shapely.Point(place)))
    told = format_coarse(_enough(deep, units), units)
    return tr("{reason} ({length} more would do)", reason=words, length=told)


def _enough(deep: float, units: System) -> float:
    """A distance rounded up to what is told, so that it does suffice and is never nothing; metres."""
    step = INCH if units == "imperial" else _TOLD_STEP
    return max(math.ceil(deep / step - 1e-6), 1) * step


def why(ground: ClearGround, place: Point, names: Mapping[str, str], units: System) -> str:
    """Why a place is closed, in one line; empty on open ground."""
    reasons: Sequence[Closed] = ground.why(place)
    if not reasons:
        return ""
    told = [say(one, place, names, units) for one in reasons[:_TOLD]]
    more = len(reasons) - len(told)
    line = "; ".join(told)
    if more:
        return tr("Closed here: {reasons}; and {more} more", reasons=line, more=more)
    return tr("Closed here: {reasons}", reasons=line)
