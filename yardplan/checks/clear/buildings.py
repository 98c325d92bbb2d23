"""Trees and foundations: by mature height, on clay that shrinks by the tree's thirst, and under eaves."""

from __future__ import annotations

from collections.abc import Iterator

import numpy as np
from attrs import evolve

from yardplan.checks.check import Wording
from yardplan.checks.finding import Figure, Finding, Weight
from yardplan.checks.groups import is_member
from yardplan.checks.lines import Array
from yardplan.checks.shortfall import Limit, Short, figures, in_ground, limit, marks, nearer, outside, trees
from yardplan.checks.survey import Survey
from yardplan.language import later
from yardplan.plants.stand import Standing
from yardplan.yard.ground import Building

NAME = "clearance"

#: Soil textures whose clay swells and shrinks.
SHRINKABLE = frozenset({"clay"})
_DEMANDS = (later("high"), later("moderate"), later("low"))


def wanted_by_height(survey: Survey) -> tuple[Array, list[str]]:
    """Distance from a building by mature height, and the rule that gives it, for every plant."""
    value = survey.rules.value
    height = survey.layout.height
    classes = np.where(
        height <= value("structure-low-height"), 0, np.where(height <= value("structure-mid-height"), 1, 2)
    )
    names = ("structure-low", "structure-mid", "structure-tall")
    distances = np.array([value(name) for name in names])
    return distances[classes], [names[i] for i in classes]


def water_demand(plant: Standing) -> str:
    """The class of water demand of a tree; moderate where the table does not name it."""
    return next((level for level in _DEMANDS if is_member(f"water demand {level}", plant)), "moderate")


def _wanted_on_clay(survey: Survey) -> Array:
    """Distance from a foundation on clay that shrinks, for every plant."""
    layout, value = survey.layout, survey.rules.value
    shares = np.full(layout.height.shape, value("clay-moderate-demand"))
    for demand in ("low", "high"):
        shares[layout.members(f"water demand {demand}")] = value(f"clay-{demand}-demand")
    wanted: Array = shares * layout.height
    return wanted


def on_clay(survey: Survey) -> bool:
    """True where the ground is clay that shrinks in drought."""
    return survey.yard.site.soil.texture in SHRINKABLE


def conflicts(survey: Survey) -> Limit:
    """Nearer than half the distance wanted a tree is a conflict with a building."""
    wanted = _wanted_on_clay(survey) if on_clay(survey) else wanted_by_height(survey)[0]
    return limit(survey, "clay" if on_clay(survey) else "building", wanted / 2, wanted, trees(survey))


def _weight(short: Short, closed: Limit) -> Weight:
    return Weight.CONFLICT if short.gap < closed.under[short.index] else Weight.CAUTION


def _by_height(survey: Survey, column: int) -> Iterator[Finding]:
    wanted, rules = wanted_by_height(survey)
    closed = conflicts(survey)
    for short in nearer(survey, column, wanted, trees(survey) & outside(survey, column)):
        weight = _weight(short, closed)
        shown = figures(survey, short)
        shown["height"] = Figure(short.plant.mature.height, "length")
        yield survey.finding(
            NAME, "building", weight, short.things, rules[short.index], shown, marks(survey, short)
        )


def _on_clay(survey: Survey, column: int) -> Iterator[Finding]:
    layout, value = survey.layout, survey.rules.value
    closed = conflicts(survey)
    for short in nearer(survey, column, closed.wanted, trees(survey) & outside(survey, column)):
        weight = _weight(short, closed)
        shown = figures(survey, short)
        shown["height"] = Figure(short.plant.mature.height, "length")
        demand = water_demand(short.plant)
        shown["demand"] = Figure(demand, "text")
        rule = f"clay-{demand}-demand"
        yield survey.finding(NAME, "clay", weight, short.things, rule, shown, marks(survey, short))
    wall_grown = in_ground(survey) & (layout.members("climber") | layout.flat)
    for short in nearer(survey, column, value("clay-climber"), wall_grown):
        yield survey.finding(
            NAME, "clay_climber", Weight.CAUTION, short.things, "clay-climber", figures(survey, short),
            marks(survey, short),
        )


def _under_eaves(survey: Survey, column: int, building: Building) -> Iterator[Finding]:
    """Stems under the roof's edge, where water and snow come down, or in the dry strip behind it."""
    if building.overhang <= 0:
        return
    dry = max(survey.rules.value("eaves-dry"), building.overhang)
    for short in nearer(survey, column, dry, in_ground(survey)):
        if short.gap < 0:
            continue
        under = abs(short.gap - building.overhang) <= survey.rules.value("clearance-tolerance") * 2
        at_edge: Short = evolve(short, wanted=building.overhang + survey.rules.value("eaves-drip"))
        shown = figures(survey, at_edge if under else short)
        shown["overhang"] = Figure(building.overhang, "length")
        kind, weight = ("eaves_drip", Weight.CAUTION) if under else ("eaves_dry", Weight.ADVICE)
        yield survey.finding(NAME, kind, weight, short.things, "eaves-dry", shown, marks(survey, short))


def run(survey: Survey) -> list[Finding]:
    """Findings on plants beside buildings."""
    found: list[Finding] = []
    clay = on_clay(survey)
    for column in survey.layout.columns("building"):
        thing = survey.layout.features[column].thing
        found.extend(_on_clay(survey, column) if clay else _by_height(survey, column))
        if isinstance(thing, Building):
            found.extend(_under_eaves(survey, column, thing))
    return found


WORDING = {
    "building": Wording(
        "{a} grows to about {height} and stands {distance} from {b}; {wanted} keeps roots off the "
        "foundation.",
        "Move {a} {short} to the {direction}, or choose a form that stays smaller.",
        "{short} too near the building",
    ),
    "clay": Wording(
        "On clay that shrinks in drought, {a} (about {height} tall, {demand} thirst) should stand {wanted} "
        "from {b}; it stands {distance} away.",
        "Move {a} {short} to the {direction}, or ask a surveyor about the foundation.",
        "{short} too near on clay",
    ),
    "clay_climber": Wording(
        "On clay that shrinks in drought, {a} on the wall of {b} can dry the ground under it: {wanted} is "
        "asked for, it stands {distance} away.",
        "Grow {a} {short} farther out, or ask a surveyor about the foundation.",
        "wall plant on clay",
    ),
    "eaves_drip": Wording(
        "{a} stands {distance} from {b}, right under the roof's edge ({overhang} out), where water and snow "
        "come down.",
        "Move {a} to the {direction}, clear of the drip line.",
        "under the roof's edge",
    ),
    "eaves_dry": Wording(
        "{a} stands {distance} from {b}, where the roof keeps the rain off for about {wanted}.",
        "Water it by hand or drip line, or move it {short} to the {direction}.",
        "dry under the eaves",
    ),
}
