"""What crop to expect of each plant: its best giver of pollen, and why its other kin do not serve.

After a move only the takers that the moved plants can matter to are looked at again.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Literal

import numpy as np
from attrs import frozen

from yardplan.plants.cultivar import SelfFruit
from yardplan.plants.pollen import better_crossed, needs_partner
from yardplan.plants.pollen_net import NO, NOT_PROVED, YES, Bools, Floats, Ints, PollenNet

#: How many others are named with the reason why they do not serve.
OTHERS = 3

Expected = Literal["well", "light", "not proved", "alone", "light alone", "none"]


@frozen(kw_only=True, eq=False)
class Outlook:
    """What to expect of one taker. `receiver`, `donor` and `others` are numbers of the net's nodes.

    `level` of the best giver; `others` the nearest kin that do nothing for it; `needed` False where the
    plant crops alone.
    """

    receiver: int
    level: int
    donor: int | None
    others: tuple[int, ...]
    needed: bool
    alone: SelfFruit

    @property
    def expected(self) -> Expected:
        """The crop to expect, in a word."""
        if not self.needed:
            return "alone"
        if self.level == YES:
            return "well"
        if self.level == NOT_PROVED:
            return "not proved"
        if self.level > NO:
            return "light"
        return "light alone" if self.alone is SelfFruit.PARTLY else "none"


@frozen(kw_only=True, eq=False)
class Outlooks:
    """The outlook of every taker of a net, with what decides whether a move can change it."""

    net: PollenNet
    of: tuple[Outlook | None, ...]
    top: Floats
    best: Ints
    far_other: Floats
    #: Numbers of the takers looked at again for this net; all others are as they were before.
    renewed: tuple[int, ...]

    def __getitem__(self, node_id: str) -> Outlook | None:
        """The outlook of one plant, row or bed by its id; None when it is no taker."""
        number = self.net.number.get(node_id)
        return None if number is None else self.of[number]


def outlooks(net: PollenNet, before: Outlooks | None = None) -> Outlooks:
    """The outlook of all takers; those of `before` are kept where the moved plants cannot matter."""
    if before is not None and before.net is net:
        return before
    count = len(net.nodes)
    found: list[Outlook | None]
    if before is not None and net.after is not None and net.after is before.net.stamp:
        best = _moved_best(net, before)
        top = net.scores[best, np.arange(count)]
        renewed = np.flatnonzero(_stale(net, before, top)).tolist()
        found, far_other = list(before.of), before.far_other.copy()
    else:
        best, _ = net.best_donors()
        top = net.scores[best, np.arange(count)] if count else np.zeros(0, np.float32)
        renewed = list(range(count))
        found, far_other = [None] * count, np.full(count, np.inf, np.float32)
    for number in renewed:
        new, far_other[number] = _outlook(net, number, int(best[number]), float(top[number]))
        old = found[number]
        found[number] = old if new is not None and old is not None and _as_before(net, old, new) else new
    return Outlooks(
        net=net, of=tuple(found), top=top, best=best, far_other=far_other, renewed=tuple(renewed)
    )


def _moved_best(net: PollenNet, before: Outlooks) -> Ints:
    """The best giver of every taker after a move: only the moved givers are compared with those of before.

    Of equal givers the first is the best, as numpy's argmax has it.
    """
    moved = np.array(sorted(net.changed), dtype=np.int32)
    went = np.zeros(len(net.nodes), dtype=bool)
    went[moved] = True
    best = before.best.copy()
    top = before.top.copy()
    for number in moved.tolist():
        scores = net.scores[number]
        wins = (scores > top) | ((scores == top) & (number < best))
        best[wins], top[wins] = number, scores[wins]
    again = np.flatnonzero(went | went[before.best])
    if len(again):
        best[again] = net.scores[:, again].argmax(axis=0)
    return best


def _as_before(net: PollenNet, old: Outlook, new: Outlook) -> bool:
    """True when all that is told of a taker is what it was: the same plants, and none of them moved.

    Where pollen is sure its halves are counted over all givers, so that any of them matters.
    """
    if new.needed and new.level == YES:
        return False
    same = old.level == new.level and old.donor == new.donor and old.others == new.others
    named = {new.receiver, *new.others} | ({new.donor} if new.donor is not None else set())
    return same and net.changed.isdisjoint(named)


def _stale(net: PollenNet, before: Outlooks, top: Floats) -> Bools:
    """Takers whose outlook the moved plants can change."""
    moved = np.array(sorted(net.changed), dtype=np.int32)
    stale = np.zeros(len(net.nodes), dtype=bool)
    stale[moved] = True
    if not len(moved):
        return stale
    kin = net.kin(moved, slice(None))
    # What gives pollen before and after is never among the others that do nothing.
    idle = (net.scores[moved] <= 0) | (before.net.scores[moved] <= 0)
    nearer = (_apart(net, moved) <= before.far_other) | (_apart(before.net, moved) <= before.far_other)
    nearer &= idle
    better = (net.scores[moved] >= top) & (net.scores[moved] > 0)
    was_best = before.best[None, :] == moved[:, None]
    # Among the sure givers any counts: where all refuse half the pollen, one that comes or goes decides.
    sure = net.sure(moved) != before.net.sure(moved)
    stale |= (kin & (nearer | better | was_best | sure)).any(axis=0)
    return stale


def _apart(net: PollenNet, numbers: Ints) -> Floats:
    """Distances of some nodes from all: (k, n), metres."""
    return np.stack([net.apart(number) for number in numbers.tolist()])


def _outlook(net: PollenNet, number: int, best: int, top: float) -> tuple[Outlook | None, float]:
    """The outlook of one taker, and the distance within which another kin would change its `others`."""
    node = net.nodes[number]
    if not node.takes:
        return None, -1.0
    needed = needs_partner(node.cultivar)
    if not needed and better_crossed(node.cultivar) is None:
        return None, -1.0
    level = net.level(best, number) if top > 0 else NO
    others, far = ((), -1.0) if level == YES or not needed else _others(net, number)
    return Outlook(
        receiver=number, level=level, donor=best if level > NO else None, others=others, needed=needed,
        alone=node.cultivar.self_fruitful,
    ), far


def _others(net: PollenNet, number: int) -> tuple[tuple[int, ...], float]:
    """The nearest kin that do nothing for a taker, one of each cultivar, and how far the list reaches."""
    kin = net.kin_of(number)
    kin[number] = False
    idle = np.flatnonzero(kin & (net.scores[:, number] <= 0))
    apart, kinds = net.apart(number)[idle], net.kinds.of[idle]
    chosen: list[int] = []
    far = 0.0
    for _ in range(min(OTHERS, len(idle))):
        nearest = int(apart.argmin())
        if not np.isfinite(apart[nearest]):
            break
        far = float(apart[nearest])
        chosen.append(int(idle[nearest]))
        apart[kinds == kinds[nearest]] = np.inf
    # Where every kin cultivar is on the list, only a plant nearer than its last can change it.
    if len(chosen) < OTHERS:
        for other in chosen:
            kin &= net.kinds.of != net.kinds.of[other]
        far = float("inf") if kin.any() else far
    return tuple(chosen), far


def why_not(net: PollenNet, donor: int, receiver: int) -> str:
    """Why a giver does nothing for a taker, in words."""
    verdict = net.verdict(donor, receiver)
    if verdict.failed is not None:
        return verdict.failed.words
    from yardplan.plants.pollen_range import distance_step, smaller

    size = smaller(net.nodes[donor].size, net.nodes[receiver].size)
    apart = net.distance(donor, receiver)
    return distance_step(net.nodes[receiver].cultivar.crop, size, apart, net.place).words


def named(net: PollenNet, number: int) -> str:
    """What a node is called: `Liberty (A1)`."""
    return f"{net.nodes[number].cultivar.name} ({net.nodes[number].id})"


def others_in_words(net: PollenNet, outlook: Outlook) -> str:
    """The others with the reason of each; an empty text when there are none."""
    return "; ".join(f"{named(net, one)}: {why_not(net, one, outlook.receiver)}" for one in outlook.others)


def crops_alone_better(net: PollenNet, outlooks_: Sequence[Outlook | None]) -> list[Outlook]:
    """Takers that crop alone, would crop better crossed, and have no giver."""
    return [one for one in outlooks_ if one is not None and not one.needed and one.level == NO]
