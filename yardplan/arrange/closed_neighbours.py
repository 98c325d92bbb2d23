"""Closed ground: roots of walnuts that harm this plant, and what it would harm as a walnut itself."""

from __future__ import annotations

from collections.abc import Iterator

import shapely
from attrs import evolve

from yardplan.arrange.closed import Asked, Closed, grown, length
from yardplan.checks.finding import Mark
from yardplan.checks.groups import is_member, kind_of
from yardplan.checks.neighbours import NAME, injured, toxic_reach
from yardplan.checks.spots import Spot, spots
from yardplan.checks.survey import Survey


def closed_neighbours(asked: Asked) -> Iterator[Closed]:
    """Ground too near to walnuts, or as a walnut too near to what they harm."""
    plant = asked.plant
    own = Spot(
        plant.id, kind_of(plant), plant, shapely.Point(plant.place), Mark((plant.place,)), planned=True
    )
    if not (own.in_group("walnut") or own.in_group("juglone injured")):
        return
    others = _in_group(asked.survey, "juglone injured" if own.in_group("walnut") else "walnut")
    for other in spots(others):
        walnut, hurt = (own, other) if own.in_group("walnut") else (other, own)
        if injured(walnut, hurt):
            near, far = toxic_reach(asked.survey, walnut)
            yield asked.closed(grown(other.shape, near), NAME, "juglone", (other.id,), wanted=length(far))


def _in_group(survey: Survey, group: str) -> Survey:
    """The survey with the plants, rows and beds of one group alone."""
    stand = survey.stand
    few = evolve(
        stand, plants=tuple(one for one in stand.plants if is_member(group, one)),
        rows=tuple(one for one in stand.rows if is_member(group, one)),
        beds=tuple(one for one in stand.beds if is_member(group, one)),
    )
    return evolve(survey, stand=few)
