"""Closed ground: out of reach of every plant that sets this one, or of those that only this one sets."""

from __future__ import annotations

from collections.abc import Iterator

import numpy as np
import shapely
from shapely.geometry.base import BaseGeometry

from yardplan.arrange.closed import Asked, Closed, disc, length
from yardplan.checks.pollination import NAME, must_be_set, net_for
from yardplan.plants.pollen_net import NO, PollenNet


def closed_pollen(asked: Asked) -> Iterator[Closed]:
    """Ground from which pollen does not reach far enough.

    Where no place on the lot is in reach of a giver nothing is closed: moving cannot help (see `unset`).
    """
    net = net_for(asked.present)
    number = net.number.get(asked.plant.id)
    if number is None:
        return
    reach = _own_reach(net, number)
    if reach is not None and reach.intersects(asked.room):
        givers = tuple(net.nodes[giver].id for giver in givers_of(net, number))
        yield asked.closed(asked.known.difference(reach), NAME, "unset", givers)
    if asked.moved:
        for taker in _only_served_by(net, number):
            far = far_reach(net, number, taker)
            yield asked.closed(
                asked.known.difference(_around(net, taker, far)), NAME, "only_giver", (net.nodes[taker].id,),
                outer=length(far),
            )


def unset(asked: Asked) -> bool:
    """True for a plant that nothing on the lot could set, wherever it stands."""
    net = net_for(asked.present)
    number = net.number.get(asked.plant.id)
    if number is None or not must_be_set(net.nodes[number].cultivar):
        return False
    reach = _own_reach(net, number)
    return reach is None or not reach.intersects(asked.room)


def givers_of(net: PollenNet, taker: int) -> list[int]:
    """Plants whose pollen does something for a taker if it is near enough."""
    roles = net.roles
    level = roles.level[roles.index, roles.index[taker]]
    return [int(giver) for giver in np.flatnonzero(level > NO) if giver != taker]


def far_reach(net: PollenNet, giver: int, taker: int) -> float:
    """Farthest that pollen counts from a giver to a taker, metres."""
    one, other = net.roles.index[giver], net.roles.index[taker]
    return float(max(net.roles.outer[one, other], net.roles.far[one, other]))


def _around(net: PollenNet, node: int, far: float) -> BaseGeometry:
    return shapely.union_all([disc(point, far) for point in net.nodes[node].points])


def _own_reach(net: PollenNet, number: int) -> BaseGeometry | None:
    """Ground within reach of any giver; None where no pollen is needed or no plant gives any."""
    if not must_be_set(net.nodes[number].cultivar):
        return None
    shapes = [_around(net, giver, far_reach(net, giver, number)) for giver in givers_of(net, number)]
    return shapely.union_all(shapes) if shapes else None


def _only_served_by(net: PollenNet, giver: int) -> Iterator[int]:
    """Takers that must be set and that this plant alone sets where it stands now."""
    for taker, node in enumerate(net.nodes):
        if taker == giver or not node.takes or not must_be_set(node.cultivar):
            continue
        others = np.delete(net.scores[:, taker], giver)
        if net.scores[giver, taker] > 0 and not (others > 0).any():
            yield taker
