"""Closed ground: out of reach of every plant that sets this one, or of those that only this one sets."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

import numpy as np
from shapely.geometry.base import BaseGeometry

from yardplan.arrange.closed import Asked, Closed, length
from yardplan.arrange.discs import beyond, touches
from yardplan.checks.pollination import NAME, must_be_set, net_for
from yardplan.plants.pollen_net import NO, PollenNet
from yardplan.yard.ground import Point

#: Ground out of reach is told so far beyond the box round the lot, metres.
_MORE = 1.0


def closed_pollen(asked: Asked) -> Iterator[Closed]:
    """Ground from which pollen does not reach far enough.

    Where no place on the lot is in reach of a giver nothing is closed: moving cannot help (see `unset`).
    Beyond the box round the lot, where nothing may stand, it is not told.
    """
    net = net_for(asked.present)
    number = net.number.get(asked.plant.id)
    if number is None:
        return
    if must_be_set(net.nodes[number].cultivar):
        reach = givers_reach(net, number, givers_of(net, number))
        if touches(asked.room, *reach):
            givers = tuple(net.nodes[giver].id for giver in givers_of(net, number))
            yield asked.closed(beyond(told_on(asked.room), *reach), NAME, "unset", givers)
    if asked.moved:
        for taker in only_served_by(net, [number]):
            far = far_reach(net, number, taker)
            node = net.nodes[taker]
            away = beyond(told_on(asked.room), node.points, [far] * len(node.points))
            yield asked.closed(away, NAME, "only_giver", (node.id,), outer=length(far))


def unset(asked: Asked) -> bool:
    """True for a plant that nothing on the lot could set, wherever it stands."""
    net = net_for(asked.present)
    number = net.number.get(asked.plant.id)
    if number is None or not must_be_set(net.nodes[number].cultivar):
        return False
    return not touches(asked.room, *givers_reach(net, number, givers_of(net, number)))


def givers_of(net: PollenNet, taker: int) -> list[int]:
    """Plants whose pollen does something for a taker if it is near enough."""
    roles = net.roles
    level = roles.level[roles.index, roles.index[taker]]
    return [int(giver) for giver in np.flatnonzero(level > NO) if giver != taker]


def told_on(room: BaseGeometry) -> BaseGeometry:
    """Where ground out of reach is told: the box round the lot and more, as checks let a hand pass."""
    return room.buffer(_MORE).envelope


def far_reach(net: PollenNet, giver: int, taker: int) -> float:
    """Farthest that pollen counts from a giver to a taker, metres."""
    one, other = net.roles.index[giver], net.roles.index[taker]
    return float(max(net.roles.outer[one, other], net.roles.far[one, other]))


def givers_reach(net: PollenNet, taker: int, givers: Sequence[int]) -> tuple[list[Point], list[float]]:
    """Where pollen for a taker comes from and how far it counts, metres: point by point."""
    far = [(point, far_reach(net, giver, taker)) for giver in givers for point in net.nodes[giver].points]
    return [point for point, _ in far], [reach for _, reach in far]


def only_served_by(net: PollenNet, givers: list[int]) -> Iterator[int]:
    """Takers that must be set, are none of these givers, and are set by them alone where they stand now."""
    serves = net.scores > 0
    own = serves[givers]
    alone = own.any(axis=0) & (own.sum(axis=0) == serves.sum(axis=0))
    alone[givers] = False
    for taker in np.flatnonzero(alone):
        node = net.nodes[taker]
        if node.takes and must_be_set(node.cultivar):
            yield int(taker)
