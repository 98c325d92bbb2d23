"""Partner lines for the plan from the pollen net: one line a pair, the better way round first."""

from __future__ import annotations

from collections.abc import Collection, Mapping

from yardplan.drawing.view import Partner
from yardplan.plants.pollen_net import Link, PollenNet
from yardplan.plants.pollen_tables import Answer
from yardplan.yard.ground import Point

#: How strong a line is drawn for each verdict; a pair beyond the usual range is drawn at most as weak.
STRENGTH: Mapping[Answer, float] = {"yes": 1.0, "partly": 0.6, "not proved": 0.3, "no": 0.0}
_FAR = 0.3


def partner_lines(net: PollenNet, ids: Collection[str], most: int = 6) -> tuple[Partner, ...]:
    """Lines to and from the things named: at most `most` for each, the strongest and nearest first."""
    pairs: dict[frozenset[str], list[Link]] = {}
    for link in net.links(ids):
        pairs.setdefault(frozenset((link.donor, link.receiver)), []).append(link)
    lines = [_line(net, links) for pair, links in pairs.items() if len(pair) == 2]
    lines.sort(key=lambda line: (-line.strength, line.distance, line.donor, line.receiver))
    kept: list[Partner] = []
    count: dict[str, int] = {}
    for line in lines:
        ends = [end for end in (line.donor, line.receiver) if end in ids]
        if all(count.get(end, 0) < most for end in ends):
            kept.append(line)
            for end in ends:
                count[end] = count.get(end, 0) + 1
    return tuple(kept)


def _line(net: PollenNet, links: list[Link]) -> Partner:
    best = max(links, key=lambda link: (_strength(link), link.donor))
    overlap = best.overlap
    return Partner(
        donor=best.donor, receiver=best.receiver,
        start=_place(net, best.donor), end=_place(net, best.receiver),
        strength=_strength(best), both=len(links) > 1, distance=best.distance,
        days=None if overlap is None or overlap.by != "dates" else round(overlap.shared),
    )


def _strength(link: Link) -> float:
    strength = STRENGTH[link.verdict]
    return min(strength, _FAR) if link.far else strength


def _place(net: PollenNet, thing: str) -> Point:
    points = net.nodes[net.number[thing]].points
    return points[len(points) // 2]
