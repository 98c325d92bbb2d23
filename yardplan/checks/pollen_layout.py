"""Layout for pollination: enough givers for the takers, and rows that run out of reach of theirs."""

from __future__ import annotations

from collections.abc import Iterator
from functools import lru_cache

import numpy as np
from numpy.typing import NDArray

from yardplan.checks.finding import Figure, Finding, Mark, Weight
from yardplan.plants.crop_names import crop_name
from yardplan.plants.pollen_net import Kinds, PollenNet
from yardplan.plants.pollen_nodes import Node
from yardplan.plants.pollen_outlook import Outlook, Outlooks, named
from yardplan.plants.pollen_range import pollen_range, smaller
from yardplan.plants.pollen_reason import clone_root, sex_of
from yardplan.plants.pollen_tables import Ratio, donor_ratio

NAME = "pollination"


def ratios(found: Outlooks) -> Iterator[Finding]:
    """Groups with too many takers for each giver: the females of a crop, or the plants of one clone."""
    net, kinds = found.net, found.net.kinds
    set_here = kinds.wants & (found.top > 0)
    for (crop, clone, ratio, alike), count in _short_of_best(kinds, set_here.tobytes(), found.best.tobytes()):
        among = np.zeros(len(kinds.cultivars), dtype=bool)
        among[alike] = True
        receivers = np.flatnonzero(set_here & among[kinds.of])
        donors = np.flatnonzero((net.scores[:, receivers] > 0).any(axis=1))
        if count > ratio.receivers * kinds.counts[donors].sum():
            yield _few(net, clone or crop_name(crop), count, donors.tolist(), ratio)


Group = tuple[str, str, Ratio, list[int]]


@lru_cache(maxsize=8)
def _short_of_best(kinds: Kinds, set_here: bytes, best: bytes) -> tuple[tuple[Group, int], ...]:
    """Groups, with their plants, too many for the best givers alone; for all others no more is looked for.

    `set_here` which nodes are set (bool), `best` the best giver of each (int32): seldom others in the next
    frame of a drag.
    """
    here, givers = np.frombuffer(set_here, dtype=np.bool_), np.frombuffer(best, dtype=np.int32)
    many = len(kinds.cultivars)
    present = np.bincount(kinds.of[here], minlength=many) > 0
    counts = np.bincount(kinds.of[here], kinds.counts[here], many)
    short: list[tuple[Group, int]] = []
    for group in _clones(kinds, present.tobytes()):
        ratio, alike = group[2:]
        count = int(counts[alike].sum())
        if count <= ratio.receivers:
            continue
        among = np.zeros(many, dtype=bool)
        among[alike] = True
        receivers = np.flatnonzero(here & among[kinds.of])
        if count > ratio.receivers * kinds.counts[np.unique(givers[receivers])].sum():
            short.append((group, count))
    return tuple(short)


@lru_cache(maxsize=8)
def _clones(kinds: Kinds, present: bytes) -> tuple[Group, ...]:
    """Crop, clone, ratio and the cultivars' numbers of the groups that have a ratio, of those present.

    Where plants are of two sexes the whole crop counts as one.
    """
    groups: dict[tuple[str, str], list[int]] = {}
    for number, here in enumerate(present):
        if here:
            cultivar = kinds.cultivars[number]
            clone = "" if sex_of(cultivar) else clone_root(cultivar).cultivar
            groups.setdefault((cultivar.crop, clone), []).append(number)
    ratios_of = ((*key, donor_ratio(key[0]), alike) for key, alike in sorted(groups.items()))
    return tuple((crop, clone, ratio, alike) for crop, clone, ratio, alike in ratios_of if ratio is not None)


def _few(net: PollenNet, group: str, takers: int, donors: list[int], ratio: Ratio) -> Finding:
    givers = sum(net.nodes[number].count for number in donors)
    return Finding(
        check=NAME, kind="few_donors", weight=Weight.ADVICE,
        things=tuple(net.nodes[number].id for number in donors),
        figures={
            "group": Figure(group, "text"), "takers": Figure(float(takers), "count"),
            "givers": Figure(float(givers), "count"), "ratio": Figure(ratio.receivers, "count"),
            "rule": Figure(ratio.words, "text"), "layout": Figure(ratio.layout, "text"),
        },
        marks=tuple(Mark(net.nodes[number].points[:1]) for number in donors), source=ratio.source,
    )


def rows_beyond(found: Outlooks) -> Iterator[Finding]:
    """Rows of which one end is within the best range of a giver and the other is not."""
    net = found.net
    # A bed has sample points but no count: its plants are not told apart.
    for number in np.flatnonzero(net.kinds.wants & (net.kinds.counts > 1)).tolist():
        outlook = found.of[number]
        if outlook is None or outlook.donor is None:
            continue
        near = _near(net, outlook)
        if 0 < near.sum() < len(near):
            yield _row_beyond(net, outlook, outlook.donor, near)


def _near(net: PollenNet, outlook: Outlook) -> NDArray[np.bool_]:
    """Which plants of a row stand within the best range of any giver as good as its best one."""
    plants = np.array(net.nodes[outlook.receiver].points)
    near = np.zeros(len(plants), dtype=bool)
    for donor in net.donors_of(outlook.receiver):
        if net.level(donor, outlook.receiver) < outlook.level:
            continue
        stems = np.array(net.nodes[donor].points)
        apart = np.hypot(plants[:, None, 0] - stems[None, :, 0], plants[:, None, 1] - stems[None, :, 1])
        near |= apart.min(axis=1) <= net.reach(donor, outlook.receiver)[0]
    return near


def _row_beyond(net: PollenNet, outlook: Outlook, donor: int, near: NDArray[np.bool_]) -> Finding:
    node: Node = net.nodes[outlook.receiver]
    best = net.reach(donor, outlook.receiver)[0]
    size = smaller(node.size, net.nodes[donor].size)
    far = tuple(point for point, reached in zip(node.points, near, strict=True) if not reached)
    return Finding(
        check=NAME, kind="row_beyond", weight=Weight.ADVICE, things=(node.id,),
        figures={
            "variety": Figure(node.cultivar.name, "text"), "donor": Figure(named(net, donor), "text"),
            "near": Figure(float(near.sum()), "count"), "count": Figure(float(len(near)), "count"),
            "best": Figure(best, "length"),
        },
        marks=(Mark(far, "line" if len(far) > 1 else "point"),),
        source=pollen_range(node.cultivar.crop, size, net.place.limits).source,
    )
