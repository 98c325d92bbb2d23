"""Lines from a plant to those whose pollen serves it and to those it serves."""

from __future__ import annotations

from typing import TYPE_CHECKING

from yardplan.drawing.view import Partner
from yardplan.yard.ground import Point

if TYPE_CHECKING:
    from yardplan.checks.survey import Survey
    from yardplan.plants.pollen_net import PollenNet

#: Lines shown each way, best first; more would hide the plan.
_MOST = 3
_STRENGTH = {"yes": 1.0, "not proved": 0.6, "partly": 0.5, "no": 0.0}


def partners_of(survey: Survey, plant: str) -> tuple[Partner, ...]:
    """The best givers and takers of one plant, row or bed where they stand now."""
    from yardplan.checks.pollination import net_for

    net = net_for(survey)
    here = net.number.get(plant)
    if here is None:
        return ()
    givers = net.donors_of(here)[:_MOST]
    takers = _takers_of(net, here)
    pairs = [(giver, here) for giver in givers] + [(here, taker) for taker in takers if taker not in givers]
    return tuple(_line(net, donor, receiver) for donor, receiver in pairs)


def _takers_of(net: PollenNet, giver: int) -> list[int]:
    """The plants it serves best, where no other giver serves them better."""
    best, _ = net.best_donors()
    served = [taker for taker in range(len(net)) if best[taker] == giver and net.scores[giver, taker] > 0]
    return sorted(served, key=lambda taker: -net.scores[giver, taker])[:_MOST]


def _line(net: PollenNet, donor: int, receiver: int) -> Partner:
    link = net.link(donor, receiver)
    start, end = _nearest(net.nodes[donor].points, net.nodes[receiver].points)
    return Partner(
        donor=link.donor, receiver=link.receiver, start=start, end=end, strength=_STRENGTH[link.verdict],
        both=not link.one_way, distance=link.distance,
        days=None if link.overlap is None else round(link.overlap.shared),
    )


def _nearest(ones: tuple[Point, ...], others: tuple[Point, ...]) -> tuple[Point, Point]:
    pairs = ((one, other) for one in ones for other in others)
    return min(pairs, key=lambda pair: (pair[0][0] - pair[1][0]) ** 2 + (pair[0][1] - pair[1][1]) ** 2)
