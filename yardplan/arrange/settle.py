"""Settle: move plants by little to clear places until no conflict is left that moving can cure.

One conflict after the other, in the order in which they are listed: of the plants it concerns the one with
the shortest way to clear ground goes there. A move stands only if it leaves fewer conflicts and makes no new
one, so the work comes to an end; the same yard always settles the same way.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Collection, Iterator

from attrs import evolve, frozen

from yardplan.arrange.clear_ground import by_steps
from yardplan.checks.finding import Finding, Weight
from yardplan.checks.ordering import natural
from yardplan.checks.run import findings
from yardplan.checks.survey import Survey, survey_of
from yardplan.sun.light import LightReport, light_report
from yardplan.sun.scene import scene_of
from yardplan.yard import edits
from yardplan.yard.edits import vessel_of
from yardplan.yard.ground import Point
from yardplan.yard.planting import Planting
from yardplan.yard.yard import Yard

#: Called with the number of conflicts left; may raise to stop.
Progress = Callable[[int], None]
_Key = tuple[str, tuple[str, ...]]
#: Places are set out to the centimetre.
_DIGITS = 2
#: Shorter ways than this are no move, metres.
_NO_WAY = 5e-3


@frozen
class Move:
    """A plant that was moved, from where to where."""

    id: str
    start: Point
    end: Point

    @property
    def far(self) -> float:
        """How far, metres."""
        return math.dist(self.start, self.end)


@frozen(kw_only=True)
class Settled:
    """The yard after settling, what moved in the yard's order, and the conflicts that are left."""

    yard: Yard
    moves: tuple[Move, ...]
    left: tuple[Finding, ...]
    cleared: int


@frozen(eq=False)
class _State:
    """A yard as it stands while it settles."""

    survey: Survey
    conflicts: tuple[Finding, ...]

    @property
    def keys(self) -> frozenset[_Key]:
        """The conflicts by check and things: their kind and figures may change on the way."""
        return frozenset((finding.check, finding.things) for finding in self.conflicts)


def settle(survey: Survey, ids: Collection[str] | None = None, progress: Progress | None = None) -> Settled:
    """Clear the conflicts of a survey by moving its unlocked plants, or those of them named in `ids`.

    Light counts where the survey has it, at its detail.
    """
    start = _State(survey, _conflicts(survey))
    state, tried = start, set[tuple[_Key, str]]()
    while True:
        if progress is not None:
            progress(len(state.conflicts))
        better = _next(state, ids, tried)
        if better is None:
            break
        state = better
        tried.clear()
    return Settled(
        yard=state.survey.yard, moves=tuple(_moves(start.survey.yard, state.survey.yard)),
        left=state.conflicts, cleared=len(start.conflicts) - len(state.conflicts),
    )


def _conflicts(survey: Survey) -> tuple[Finding, ...]:
    return tuple(finding for finding in findings(survey) if finding.weight is Weight.CONFLICT)


def _next(state: _State, ids: Collection[str] | None, tried: set[tuple[_Key, str]]) -> _State | None:
    """The yard after the first move that helps; None when none does."""
    for finding in state.conflicts:
        key = (finding.check, finding.things)
        plants = [
            plant for plant in _movable(state.survey.yard, finding, ids) if (key, plant.id) not in tried
        ]
        ways = [(math.dist(plant.place, end), n, plant, end)
                for n, plant in enumerate(plants) for end in _ways(state, plant)]
        for _, _, plant, end in sorted(ways, key=lambda way: way[:2]):
            after = _moved(state.survey, plant, end)
            if after.keys < state.keys:
                return after
        tried |= {(key, plant.id) for plant in plants}
    return None


def _movable(yard: Yard, finding: Finding, ids: Collection[str] | None) -> list[Planting]:
    """Plants that a finding speaks of and that may be moved."""
    named = set(finding.things)
    named |= {str(figure.value) for figure in finding.figures.values() if figure.measure == "thing"}
    found = [plant for plant in yard.plantings if plant.id in named and may_move(yard, plant)]
    return sorted(
        (plant for plant in found if ids is None or plant.id in ids), key=lambda plant: natural(plant.id)
    )


def may_move(yard: Yard, plant: Planting) -> bool:
    """True for a plant that is not locked, nor its container."""
    pot = vessel_of(yard, plant)
    return not plant.locked and not (pot is not None and pot.locked)


def _ways(state: _State, plant: Planting) -> Iterator[Point]:
    """Clear places to try: without a look at the light, which is quick and often enough, then with it."""
    light = state.survey.light
    details = (light.detail,) if isinstance(light, LightReport) else ()
    before: Point | None = None
    for ground in by_steps(state.survey, plant, details):
        place = ground.nearest(plant.place)
        if place is None:
            return
        end = (round(place[0], _DIGITS), round(place[1], _DIGITS))
        if end != before and math.dist(end, plant.place) > _NO_WAY:
            yield end
        before = end


def _moved(survey: Survey, plant: Planting, end: Point) -> _State:
    """The yard with a plant moved, surveyed as before."""
    x, y = plant.place
    yard = edits.move(survey.yard, {plant.id}, (end[0] - x, end[1] - y))
    after = survey_of(yard, survey.base, survey.stand.year)
    if isinstance(survey.light, LightReport):
        after = evolve(after, light=light_report(scene_of(yard, after.stand), survey.light.detail))
    return _State(after, _conflicts(after))


def _moves(before: Yard, after: Yard) -> Iterator[Move]:
    places = {plant.id: plant.place for plant in after.plantings}
    for plant in before.plantings:
        if places[plant.id] != plant.place:
            yield Move(plant.id, plant.place, places[plant.id])
