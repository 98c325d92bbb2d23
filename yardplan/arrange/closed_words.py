"""Why ground is closed, in words for one place: what closes it, and how far off it would be clear of that."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

import shapely

from yardplan.arrange.clear_ground import ClearGround
from yardplan.arrange.closed import Closed
from yardplan.checks.wording import figure_text
from yardplan.units import System, format_coarse
from yardplan.yard.ground import Point

#: Sentences by kind; `{thing}` what closes the place, other holes its figures.
_WORDS: dict[str, str] = {
    "overlap": "too close to {thing}",
    "group": "too close to {thing}, even in a group",
    "stem": "too close to the stem of {thing}",
    "form": "too close to {thing} in the row",
    "in_bed": "the bed {thing} is planted with {crop}",
    "row_plant": "too close to the row {thing}",
    "crown_wall": "its crown would grow into {thing}",
    "building": "its roots come too near {thing}",
    "clay": "too near {thing} on clay that shrinks",
    "inside": "{thing} is there",
    "outside": "outside the lot line",
    "law": "nearer to the lot line than the usual law asks: check locally",
    "law_own": "nearer to the lot line than your local figure",
    "septic_field": "too near the septic field {thing}",
    "septic_tank": "too near the septic tank {thing}",
    "buried": "on the buried line {thing}: have it marked before you dig",
    "overhead": "grows too tall beside the overhead line {thing}",
    "sight": "would block the view of the street at {thing}",
    "needs_bed": "the ground cannot be made acid for {crop}",
    "wet": "the ground drains too poorly for {crop}",
    "juglone": "roots of {thing} would poison it, or it would poison them",
    "unset": "too far from every plant that sets it",
    "only_giver": "{thing} would lose its only partner",
    "too_dark": "too dark: it needs {needed} of sun a day",
    "shades": "would leave {thing} under {needed} of sun a day",
}
#: Kinds whose edge is a place, so that a distance to it means something.
_NEARNESS = frozenset(_WORDS) - {"needs_bed", "wet", "law", "sight"}
#: So many reasons are told at once.
_TOLD = 3


def say(closed: Closed, place: Point, names: Mapping[str, str], units: System) -> str:
    """One reason in words, with how far the nearest place is that is free of it."""
    holes = {name: figure_text(figure, names, units) for name, figure in closed.figures.items()}
    holes["thing"] = names.get(closed.things[0], closed.things[0]) if closed.things else ""
    words = _WORDS[closed.kind].format(**holes)
    if closed.kind not in _NEARNESS:
        return words
    deep = float(closed.geometry.boundary.distance(shapely.Point(place)))
    return f"{words} ({format_coarse(deep, units)} more would do)"


def why(ground: ClearGround, place: Point, names: Mapping[str, str], units: System) -> str:
    """Why a place is closed, in one line; empty on open ground."""
    reasons: Sequence[Closed] = ground.why(place)
    if not reasons:
        return ""
    told = [say(one, place, names, units) for one in reasons[:_TOLD]]
    more = len(reasons) - len(told)
    line = "; ".join(told) + (f"; and {more} more" if more else "")
    return f"Closed here: {line}"
