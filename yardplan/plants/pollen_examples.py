"""A few cultivars that would surely set fruit on another here: names to put into a piece of advice."""

from __future__ import annotations

from yardplan.plants.cultivar import Cultivar, SelfFruit
from yardplan.plants.pollen_net import Judgements
from yardplan.plants.pollen_nodes import Cultivars
from yardplan.plants.pollen_place import whole_zone
from yardplan.plants.pollen_reason import PollenPlace

#: How many names are given.
COUNT = 3


def examples_for(receiver: Cultivar, cultivars: Cultivars, judgements: Judgements) -> tuple[str, ...]:
    """Names of cultivars of the same crop that surely set it here, those it sets in turn first.

    Cultivars that do not stand this zone are left out. Kept with the judgements, since drags ask again.
    """
    if receiver.key not in judgements.examples:
        judgements.examples[receiver.key] = _found(receiver, cultivars, judgements)
    return judgements.examples[receiver.key]


def _found(receiver: Cultivar, cultivars: Cultivars, judgements: Judgements) -> tuple[str, ...]:
    ranked = []
    for other in cultivars.values():
        if other.crop != receiver.crop or other.sport_of is not None or not stands(other, judgements.place):
            continue
        verdict = judgements.verdict(other, receiver)
        if verdict.verdict == "yes":
            alone = other.self_fruitful is SelfFruit.YES
            back = alone or judgements.verdict(receiver, other).verdict in {"yes", "not proved"}
            days = verdict.overlap.shared if verdict.overlap is not None else 0.0
            ranked.append((not back, verdict.half, -days, other.name))
    return tuple(name for *_, name in sorted(ranked)[:COUNT])


def stands(cultivar: Cultivar, place: PollenPlace) -> bool:
    """True when nothing known of its zones speaks against a cultivar at this place."""
    if place.zone is None:
        return True
    cold, warm = whole_zone(cultivar.zone_min), whole_zone(cultivar.zone_max)
    return (cold is None or cold <= place.zone) and (warm is None or place.zone <= warm)
