"""Ground closed to things that move together where pollen would not reach them, or those they alone set."""

from __future__ import annotations

from collections.abc import Iterator

from yardplan.arrange.closed import Closed
from yardplan.arrange.closed_pollen import far_reach, givers_of, only_served_by, told_on
from yardplan.arrange.discs import beyond, touches
from yardplan.arrange.moving import Moving
from yardplan.checks.pollination import NAME, must_be_set, net_for
from yardplan.plants.pollen_net import PollenNet
from yardplan.yard.ground import Point

#: Discs for the anchor: their middles and radii, metres.
_Reach = tuple[list[Point], list[float]]


def closed_to_pollen(moving: Moving) -> Iterator[Closed]:
    """Ground from which pollen does not reach far enough, either way.

    It is told within the box round the lot: there the anchor lies where all that moves is on the lot.
    """
    net = net_for(moving.present)
    own = [net.number[key] for key in sorted(moving.ids) if key in net.number]
    for taker in own:
        reach = _own_reach(moving, net, own, taker)
        if reach is not None and touches(moving.room, *reach):
            givers = tuple(net.nodes[one].id for one in givers_of(net, taker) if one not in own)
            yield moving.closed(beyond(told_on(moving.room), *reach), NAME, "unset", givers)
    for taker in only_served_by(net, own):
        serving = [giver for giver in own if net.scores[giver, taker] > 0]
        reach = _joined([
            _seen_from_anchor(moving, net, giver, taker, far_reach(net, giver, taker)) for giver in serving
        ])
        yield moving.closed(beyond(told_on(moving.room), *reach), NAME, "only_giver", (net.nodes[taker].id,))


def unset(moving: Moving) -> bool:
    """True where one of the things is set by nothing on the lot, wherever they stand."""
    net = net_for(moving.present)
    own = [net.number[key] for key in sorted(moving.ids) if key in net.number]
    reaches = (_own_reach(moving, net, own, taker) for taker in own)
    return any(reach is not None and not touches(moving.room, *reach) for reach in reaches)


def _own_reach(moving: Moving, net: PollenNet, own: list[int], taker: int) -> _Reach | None:
    """Where the anchor may lie for any giver that stays to reach a taker; None where that does not matter."""
    if not must_be_set(net.nodes[taker].cultivar) or (net.scores[own, taker] > 0).any():
        return None
    return _joined([
        _seen_from_anchor(moving, net, taker, giver, far_reach(net, giver, taker))
        for giver in givers_of(net, taker) if giver not in own
    ])


def _seen_from_anchor(moving: Moving, net: PollenNet, mover: int, stays: int, far: float) -> _Reach:
    """Where the anchor may lie for any stem of a thing that moves to be near any of one that stays."""
    shifts = [moving.shift_of(stem) for stem in net.nodes[mover].points]
    middles = [(x + dx, y + dy) for dx, dy in shifts for x, y in net.nodes[stays].points]
    return middles, [far] * len(middles)


def _joined(reaches: list[_Reach]) -> _Reach:
    middles = [middle for some, _ in reaches for middle in some]
    return middles, [far for _, some in reaches for far in some]
