"""Containers: room for the roots of what stands in them, winter quarters, water and re-potting."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from yardplan.checks.check import Check, Wording
from yardplan.checks.finding import Figure, Finding, Mark, Weight
from yardplan.checks.groups import is_member
from yardplan.checks.survey import Survey
from yardplan.checks.zones import site_zone
from yardplan.language import later
from yardplan.plants.stand import Standing
from yardplan.yard.planting import Container, Planting

NAME = "containers"

#: Volume rule by group of plants, first that fits; a tree's otherwise.
_VOLUMES = (
    ("strawberry", "container-strawberry"), ("small in pots", "container-small"),
    ("acid-loving", "container-blueberry"), ("bramble", "container-bramble"),
    ("ribes red", "container-bramble"), ("ribes black", "container-bramble"),
)


def volume_rule(plant: Standing) -> str:
    """The rule that sets the least volume for one plant."""
    return next((rule for group, rule in _VOLUMES if is_member(group, plant)), "container-tree")


def held_in(survey: Survey) -> dict[str, list[Standing]]:
    """The plants of every container by its id."""
    held: dict[str, list[Standing]] = {}
    for plant in survey.stand.plants:
        if plant.container is not None:
            held.setdefault(plant.container.id, []).append(plant)
    return held


def wanted_volume(survey: Survey, plants: Sequence[Standing]) -> float:
    """Least litres for these plants in one container."""
    return sum(survey.rules.value(volume_rule(plant)) for plant in plants)


def _volume(survey: Survey, pot: Container, plants: list[Standing]) -> Iterator[Finding]:
    """The pot's volume against the sum of what its plants need."""
    wanted = wanted_volume(survey, plants)
    if pot.volume >= wanted * (1 - survey.rules.value("spacing-tolerance")):
        return
    shown = {
        "volume": Figure(pot.volume, "volume"), "wanted": Figure(wanted, "volume"),
        "count": Figure(len(plants), "count"),
    }
    weight = Weight.CONFLICT if pot.volume < wanted / 2 else Weight.CAUTION
    kind = "too_small" if len(plants) == 1 else "crowded"
    things = (pot.id, *(plant.id for plant in plants))
    yield survey.finding(NAME, kind, weight, things, volume_rule(plants[0]), shown, (Mark((pot.place,)),))


def _unsuited(survey: Survey, pot: Container, plants: list[Standing]) -> Iterator[Finding]:
    for plant in plants:
        if plant.cultivar is not None and plant.cultivar.container == "no":
            shown = {"height": Figure(plant.mature.height, "length")}
            yield survey.finding(
                NAME, "unsuited", Weight.CAUTION, (plant.id, pot.id), "container-tree", shown,
                (Mark((pot.place,)),),
            )


def _winter(survey: Survey, pots: list[Container]) -> Iterator[Finding]:
    """One advice for all pots: shelter, water, re-potting. Frost-free places need no shelter."""
    zone = site_zone(survey.yard.site.zone)
    cold = zone is None or zone.coldest < survey.rules.value("container-root-kill")
    shown = {
        "limit": survey.rules.figure("container-root-kill"), "years": survey.rules.figure("container-repot"),
        "count": Figure(len(pots), "count"),
    }
    kind = "care_cold" if cold else "care"
    things = tuple(pot.id for pot in pots)
    yield survey.finding(NAME, kind, Weight.ADVICE, things, "container-root-kill", shown)


def _lost(survey: Survey) -> Iterator[Finding]:
    """Plants that name a container which is not there."""
    for plant in survey.stand.plants:
        thing = plant.thing
        if isinstance(thing, Planting) and thing.container is not None and plant.container is None:
            shown = {"pot": Figure(thing.container, "text")}
            yield survey.finding(
                NAME, "lost", Weight.CAUTION, (plant.id,), "container-tree", shown, (Mark((plant.place,)),)
            )


def run(survey: Survey) -> list[Finding]:
    """Findings on containers."""
    held = held_in(survey)
    pots = [pot for pot in survey.yard.containers if pot.id in held]
    found = list(_lost(survey))
    for pot in pots:
        found.extend(_volume(survey, pot, held[pot.id]))
        found.extend(_unsuited(survey, pot, held[pot.id]))
    if pots:
        found.extend(_winter(survey, sorted(pots, key=lambda pot: pot.id)))
    return found


CHECK = Check(
    name=NAME,
    title=later("Containers"),
    run=run,
    places=False,
    wording={
        "too_small": Wording(
            "{b} stands in {a} of {volume}; it needs at least {wanted} at full size.",
            "Take a container of {wanted} or more, or plant it in the ground.",
            "pot too small",
        ),
        "crowded": Wording(
            "{count} plants share {a} of {volume}; together they need at least {wanted}.",
            "Take a container of {wanted} or more, or fewer plants.",
            "pot too small for {count}",
        ),
        "unsuited": Wording(
            "{a} is not a variety for pots: it grows to about {height} in the ground.",
            "Choose a smaller variety or rootstock, or plant it in the ground.",
            "not for a pot",
        ),
        "care_cold": Wording(
            "Roots in containers die from about {limit} of soil temperature: {things}.",
            "Before hard frost move them to a dark, unheated shed or garage, or sink and mulch them; keep "
            "the soil just moist (about monthly while it is not frozen). In summer water up to once a day. "
            "Re-pot every {years} years or so.",
            "pots in winter",
        ),
        "care": Wording(
            "Containers dry out fast: {things}.",
            "Water up to once a day in hot weather, feed twice a month, and re-pot every {years} years or "
            "so.",
            "pots want water",
        ),
        "lost": Wording(
            "{a} names the container {pot}, which is not there; it is taken to stand in the ground.",
            "Draw the container, or set the plant in the ground.",
            "container not found",
        ),
    },
)
