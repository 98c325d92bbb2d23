"""How near a plant not yet planted should stand to each plant it would give pollen to or take it from."""

from __future__ import annotations

from collections.abc import Collection

from attrs import frozen

from yardplan.plants.cultivar import Cultivar
from yardplan.plants.pollen import better_crossed, needs_partner
from yardplan.plants.pollen_net import PollenNet, related
from yardplan.plants.pollen_nodes import Node
from yardplan.plants.pollen_range import SizeClass, pollen_range, smaller


@frozen(kw_only=True)
class PartnerReach:
    """A thing of the yard that would be a partner: full set within `best`, none beyond `outer`, metres."""

    node: Node
    best: float
    outer: float


def partner_reaches(
    net: PollenNet, cultivar: Cultivar, size: SizeClass, ids: Collection[str] = ()
) -> tuple[PartnerReach, ...]:
    """The things of a net that a cultivar of that size would set or be set by, or only those in `ids`.

    The receiver's crop and the smaller of the two sizes decide how far pollen is counted.
    """
    found = []
    for node in net.nodes:
        if (ids and node.id not in ids) or not related(node.cultivar, cultivar):
            continue
        receivers = [
            receiver for donor, receiver in ((cultivar, node.cultivar), (node.cultivar, cultivar))
            if _matters(net, donor, receiver, takes=receiver is cultivar or node.takes)
        ]
        if receivers:
            ranges = [
                pollen_range(one.crop, smaller(size, node.size), net.place.limits) for one in receivers
            ]
            found.append(PartnerReach(
                node=node, best=min(r.best for r in ranges), outer=min(r.outer for r in ranges),
            ))
    return tuple(found)


def _matters(net: PollenNet, donor: Cultivar, receiver: Cultivar, *, takes: bool) -> bool:
    if not takes or not (needs_partner(receiver) or better_crossed(receiver) is not None):
        return False
    return net.judgements.verdict(donor, receiver).verdict != "no"
