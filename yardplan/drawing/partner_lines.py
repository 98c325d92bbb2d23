"""Partner lines for the plan from the pollen net: who sets fruit on whom, one line a pair."""

from __future__ import annotations

from collections.abc import Collection, Iterable, Mapping

import numpy as np

from yardplan.drawing.view import Partner
from yardplan.language import later
from yardplan.plants.pollen_net import Ints, Link, PollenNet
from yardplan.plants.pollen_outlook import outlooks
from yardplan.plants.pollen_tables import Answer
from yardplan.yard.ground import Point

#: How strong a line is drawn for each verdict: whole, dashed, dotted.
STRENGTH: Mapping[Answer, float] = {"yes": 1.0, "not proved": 0.6, "partly": 0.3, "no": 0.0}
#: Lines shown each way of one plant, best first; more would hide the plan.
_MOST = 3
_REMARK: Mapping[Answer, str] = {
    "yes": "", "not proved": later("not proved"), "partly": later("weak"), "no": "",
}


def partners_of(net: PollenNet, thing: str, best: Ints | None = None) -> tuple[Partner, ...]:
    """The best givers of one plant, row or bed where they stand now, and those that it serves best.

    `best`: the best giver of every node, where that is known already.
    """
    here = net.number.get(thing)
    if here is None:
        return ()
    givers = net.donors_of(here)[:_MOST]
    served = _served_best_by(net, here, net.best_donors()[0] if best is None else best)
    takers = [taker for taker in served if taker not in givers][:_MOST]
    pairs = [*((giver, here) for giver in givers), *((here, taker) for taker in takers)]
    return tuple(_line(net, net.link(donor, receiver)) for donor, receiver in pairs)


def _served_best_by(net: PollenNet, giver: int, best: Ints) -> list[int]:
    """The takers for which no other giver is better, best served first."""
    takers = np.flatnonzero((best == giver) & (net.scores[giver] > 0))
    served: list[int] = takers[np.argsort(-net.scores[giver, takers], kind="stable")].tolist()
    return served


def best_pairs(net: PollenNet, without: Collection[str] = ()) -> tuple[Partner, ...]:
    """A thin line from every plant that pollen matters to, to its best giver; none to things left out."""
    found = {
        frozenset((outlook.donor, outlook.receiver)): net.link(outlook.donor, outlook.receiver)
        for outlook in outlooks(net).of if outlook is not None and outlook.donor is not None
    }
    links = (link for link in found.values() if not {link.donor, link.receiver} & set(without))
    return tuple(_line(net, link, quiet=True) for link in _strongest_first(links))


def _strongest_first(links: Iterable[Link]) -> list[Link]:
    return sorted(links, key=lambda link: (-STRENGTH[link.verdict], link.distance, link.receiver))


def _line(net: PollenNet, link: Link, *, quiet: bool = False) -> Partner:
    start, end = _nearest(
        net.nodes[net.number[link.donor]].points, net.nodes[net.number[link.receiver]].points
    )
    return Partner(
        donor=link.donor, receiver=link.receiver, start=start, end=end, strength=STRENGTH[link.verdict],
        both=not link.one_way, distance=link.distance,
        days=None if link.overlap is None else round(link.overlap.shared),
        dated=link.overlap is None or link.overlap.by == "dates", remark=_REMARK[link.verdict],
        quiet=quiet,
    )


def _nearest(ones: tuple[Point, ...], others: tuple[Point, ...]) -> tuple[Point, Point]:
    """The two stems nearest to each other: rows and beds have many."""
    pairs = ((one, other) for one in ones for other in others)
    return min(pairs, key=lambda pair: (pair[0][0] - pair[1][0]) ** 2 + (pair[0][1] - pair[1][1]) ** 2)
