"""Ground closed to things that move together where pollen would not reach them, or those they alone set."""

from __future__ import annotations

from collections.abc import Iterator

import numpy as np
import shapely
from shapely.affinity import translate
from shapely.geometry.base import BaseGeometry

from yardplan.arrange.closed import Closed, disc
from yardplan.arrange.closed_pollen import far_reach, givers_of
from yardplan.arrange.moving import Moving
from yardplan.checks.pollination import NAME, must_be_set, net_for
from yardplan.plants.pollen_net import PollenNet


def closed_to_pollen(moving: Moving) -> Iterator[Closed]:
    """Ground from which pollen does not reach far enough, either way."""
    net = net_for(moving.present)
    own = [net.number[key] for key in sorted(moving.ids) if key in net.number]
    for taker in own:
        reach = _own_reach(moving, net, own, taker)
        if reach is not None and reach.intersects(moving.room):
            givers = tuple(net.nodes[one].id for one in givers_of(net, taker) if one not in own)
            yield moving.closed(moving.known.difference(reach), NAME, "unset", givers)
    for taker in _only_served_by(net, own):
        shapes = [
            _seen_from_anchor(moving, net, giver, net.nodes[taker].points, far_reach(net, giver, taker))
            for giver in own if net.scores[giver, taker] > 0
        ]
        reach = shapely.union_all(shapes)
        yield moving.closed(moving.known.difference(reach), NAME, "only_giver", (net.nodes[taker].id,))


def unset(moving: Moving) -> bool:
    """True where one of the things is set by nothing on the lot, wherever they stand."""
    net = net_for(moving.present)
    own = [net.number[key] for key in sorted(moving.ids) if key in net.number]
    for taker in own:
        if must_be_set(net.nodes[taker].cultivar) and not (net.scores[own, taker] > 0).any():
            reach = _own_reach(moving, net, own, taker)
            if reach is None or not reach.intersects(moving.room):
                return True
    return False


def _own_reach(moving: Moving, net: PollenNet, own: list[int], taker: int) -> BaseGeometry | None:
    """Where the anchor may lie for any giver that stays to reach a taker; None where that does not matter."""
    if not must_be_set(net.nodes[taker].cultivar):
        return None
    if any(net.scores[giver, taker] > 0 for giver in own):
        return None
    shapes = [
        _seen_from_anchor(moving, net, taker, net.nodes[giver].points, far_reach(net, giver, taker))
        for giver in givers_of(net, taker) if giver not in own
    ]
    return shapely.union_all(shapes) if shapes else None


def _seen_from_anchor(
    moving: Moving, net: PollenNet, mover: int, stays: tuple[tuple[float, float], ...], far: float
) -> BaseGeometry:
    """Where the anchor may lie for any stem of a thing that moves to be near any of those that stay."""
    around = shapely.union_all([disc(point, far) for point in stays])
    shifts = [moving.shift_of(stem) for stem in net.nodes[mover].points]
    return shapely.union_all([translate(around, *shift) for shift in shifts])


def _only_served_by(net: PollenNet, own: list[int]) -> Iterator[int]:
    """Takers that must be set, that stay, and that only things that move set where these stand now."""
    for taker, node in enumerate(net.nodes):
        if taker in own or not node.takes or not must_be_set(node.cultivar):
            continue
        others = np.delete(net.scores[:, taker], own)
        if (net.scores[own, taker] > 0).any() and not (others > 0).any():
            yield taker
