"""Who sets fruit on whom in a whole stand, kept so that moving one plant costs a row and a column.

Genetics and bloom are judged once per pair of cultivars; where plants stand enters through the distances of
their stems. Levels rank verdicts: 0 no, 1 partly, 2 not proved, 3 yes.
"""

from __future__ import annotations

import threading
from collections.abc import Iterable, Mapping, Sequence

import numpy as np
from attrs import field, frozen
from numpy.typing import NDArray

from yardplan.plants.bloom import Overlap
from yardplan.plants.cultivar import Cultivar
from yardplan.plants.pollen import Verdict, genetic_verdict, needs_partner
from yardplan.plants.pollen_nodes import Cultivars, Node, node_of, nodes_of
from yardplan.plants.pollen_range import SIZES, PollenRange, pollen_range
from yardplan.plants.pollen_reason import PollenPlace, kind_of
from yardplan.plants.pollen_tables import Answer, published_cross
from yardplan.plants.stand import Stand
from yardplan.yard.ground import Point
from yardplan.yard.planting import PlantKey
from yardplan.yard.positions import changed_places

Floats = NDArray[np.float32]
Ints = NDArray[np.int32]
Bools = NDArray[np.bool_]

NO, PARTLY, NOT_PROVED, YES = range(4)
LEVEL: Mapping[Answer, int] = {"no": NO, "partly": PARTLY, "not proved": NOT_PROVED, "yes": YES}
ANSWER: tuple[Answer, ...] = ("no", "partly", "not proved", "yes")

#: Crops whose unknown trees are taken as probable help beyond the usual range (town crabapples).
_FAR_CROPS = frozenset({"crabapple", "apple"})
#: Weight of a level against the finer points of a score: share of years, share of pollen, nearness.
_LEVEL_WEIGHT = 4.0


@frozen(kw_only=True)
class Link:
    """Pollen that may go from one thing to another. `distance` metres, `far` True beyond the usual range."""

    donor: str
    receiver: str
    verdict: Answer
    distance: float
    overlap: Overlap | None
    share: float | None
    far: bool
    one_way: bool


class Judgements:
    """Verdicts on pairs of cultivars at one place, each judged once."""

    def __init__(self, place: PollenPlace) -> None:
        """Start with nothing judged."""
        self.place = place
        self._kept: dict[tuple[int, int], Verdict] = {}
        self._known: dict[int, Cultivar] = {}
        #: Names of sure partners by the plant they would serve, see pollen_examples.
        self.examples: dict[PlantKey, tuple[str, ...]] = {}

    def verdict(self, donor: Cultivar, receiver: Cultivar) -> Verdict:
        """The five steps that do not depend on where the two stand."""
        key = (id(donor), id(receiver))
        if key not in self._kept:
            self._known[key[0]], self._known[key[1]] = donor, receiver
            self._kept[key] = genetic_verdict(donor, receiver, self.place)
        return self._kept[key]


def related(donor: Cultivar, receiver: Cultivar) -> bool:
    """True when the two kinds can cross at all: same family, or a published cross."""
    if donor.crop == receiver.crop and donor.species == receiver.species:
        return True
    one, other = kind_of(donor), kind_of(receiver)
    if one is None or other is None:
        return False
    return one.family == other.family or published_cross(donor.crop, receiver.crop) is not None


@frozen(kw_only=True, eq=False)
class _Roles:
    """Distinct (cultivar, size, standing) among the nodes, and what each pair of them can do."""

    index: Ints
    score: Floats
    level: Ints
    best: Floats
    outer: Floats
    far: Floats
    kin: Bools


@frozen(eq=False)
class Stems:
    """Places (n, 2) of all stems in node order, metres; `starts` the first of each node, None: one each."""

    places: Floats
    starts: NDArray[np.intp] | None = None

    def apart(self, number: int) -> Floats:
        """Least distance from the stems of a node to those of every node."""
        x, y = self.places.T
        if self.starts is None:
            return np.asarray(np.hypot(x - x[number], y - y[number]), dtype=np.float32)
        end = self.starts[number + 1] if number + 1 < len(self.starts) else len(x)
        own = slice(self.starts[number], end)
        gaps = np.hypot(x[own, None] - x, y[own, None] - y).min(axis=0)
        return np.asarray(np.minimum.reduceat(gaps, self.starts), dtype=np.float32)

    def moved(self, places: Mapping[int, Point]) -> Stems:
        """The stems with other places for nodes of one stem each."""
        table = self.places.copy()
        for number, place in places.items():
            table[number if self.starts is None else self.starts[number]] = place
        return Stems(table, self.starts)


@frozen(kw_only=True, eq=False)
class Kinds:
    """What stays as it is while plants only move: by node its cultivar's number, its count of plants, and
    whether it must be set by another's pollen; the cultivars by their numbers.
    """

    of: Ints
    counts: Ints
    wants: Bools
    cultivars: tuple[Cultivar, ...]


@frozen(kw_only=True, eq=False)
class PollenNet:
    """All givers and takers of a stand. Columns of the matrices are takers, rows givers, in node order.

    `changed` the nodes that moved since the net whose `stamp` is in `after`.
    """

    stand: Stand
    place: PollenPlace
    cultivars: Cultivars
    nodes: tuple[Node, ...]
    judgements: Judgements
    roles: _Roles
    kinds: Kinds
    scores: Floats
    number: Mapping[str, int] = field(factory=dict)
    changed: frozenset[int] = frozenset()
    stamp: object = field(factory=object)
    after: object = None
    stems: Stems

    def __len__(self) -> int:
        return len(self.nodes)

    def apart(self, number: int) -> Floats:
        """Least distance from the stems of a node to those of every node, metres."""
        return self.stems.apart(number)

    def distance(self, one: int, other: int) -> float:
        """Least distance between the stems of two nodes, metres."""
        return float(self.apart(one)[other])

    def verdict(self, donor: int, receiver: int) -> Verdict:
        """The verdict on two nodes without the distance step."""
        return self.judgements.verdict(self.nodes[donor].cultivar, self.nodes[receiver].cultivar)

    def reach(self, donor: int, receiver: int) -> tuple[float, float]:
        """Best and outer distance of two nodes, metres."""
        one, other = self.roles.index[donor], self.roles.index[receiver]
        return float(self.roles.best[one, other]), float(self.roles.outer[one, other])

    def kin(self, donors: Ints | slice, receivers: Ints | slice) -> Bools:
        """Which givers are of a kind that could cross with which takers: a block of the whole matrix."""
        return self.roles.kin[np.ix_(self.roles.index[donors], self.roles.index[receivers])]

    def kin_of(self, receiver: int) -> Bools:
        """Which nodes could cross with a taker: a column of the whole matrix, the caller's own."""
        return np.asarray(self.roles.kin[:, self.roles.index[receiver]][self.roles.index])

    def level(self, donor: int, receiver: int) -> int:
        """Level of what a giver does for a taker where they stand."""
        return int(self.scores[donor, receiver] // _LEVEL_WEIGHT)

    def sure(self, donors: Ints) -> Bools:
        """Which of the givers surely serve which takers where they stand: rows of the whole matrix."""
        return np.asarray(self.scores[donors] // _LEVEL_WEIGHT == YES)

    def best_donors(self) -> tuple[Ints, Ints]:
        """For each node its best giver's number and the level; the number means nothing at level 0."""
        if not len(self.nodes):
            return np.zeros(0, np.int32), np.zeros(0, np.int32)
        donors = self.scores.argmax(axis=0).astype(np.int32)
        top = self.scores[donors, np.arange(len(self.nodes))]
        return donors, (top // _LEVEL_WEIGHT).astype(np.int32)

    def donors_of(self, receiver: int) -> list[int]:
        """Numbers of the givers that do anything for a taker, best first."""
        column = self.scores[:, receiver]
        givers = np.flatnonzero(column > 0)
        best_first: list[int] = givers[np.argsort(-column[givers], kind="stable")].tolist()
        return best_first

    def link(self, donor: int, receiver: int) -> Link:
        """The link between two nodes."""
        verdict, distance = self.verdict(donor, receiver), self.distance(donor, receiver)
        return Link(
            donor=self.nodes[donor].id, receiver=self.nodes[receiver].id,
            verdict=ANSWER[self.level(donor, receiver)], distance=distance, overlap=verdict.overlap,
            share=verdict.share, far=distance > self.reach(donor, receiver)[1],
            one_way=not self.nodes[donor].takes or self.scores[receiver, donor] <= 0,
        )

    def links(self, ids: Iterable[str] | None = None) -> list[Link]:
        """Links that do something, of all things or of those named (as givers and takers)."""
        works = self.scores > 0
        if ids is not None:
            wanted = np.zeros(len(self.nodes), dtype=bool)
            wanted[[self.number[i] for i in ids if i in self.number]] = True
            works &= wanted[:, None] | wanted[None, :]
        return [self.link(int(donor), int(receiver)) for donor, receiver in np.argwhere(works)]


def build_net(
    stand: Stand, place: PollenPlace, cultivars: Cultivars, judgements: Judgements | None = None
) -> PollenNet:
    """The net of a stand from nothing; `judgements` of the same place are taken over."""
    # In the order of their ids, so that the order of planting decides nothing where two givers are alike.
    nodes = tuple(sorted(nodes_of(stand, cultivars, place.limits), key=lambda node: node.id))
    judged = judgements if judgements is not None and judgements.place == place else Judgements(place)
    roles = _roles_of(nodes, judged)
    stems = _stems(nodes)
    return PollenNet(
        stand=stand, place=place, cultivars=cultivars, nodes=nodes, judgements=judged, roles=roles,
        kinds=_kinds_of(nodes), scores=_all_scores(roles, stems),
        number={node.id: number for number, node in enumerate(nodes)}, stems=stems,
    )


def _stems(nodes: Sequence[Node]) -> Stems:
    points = [point for node in nodes for point in node.points]
    places = np.array(points, dtype=np.float32).reshape(-1, 2)
    if len(points) == len(nodes):
        return Stems(places)
    return Stems(places, np.cumsum([0, *(len(node.points) for node in nodes[:-1])]))


def _roles_of(nodes: Sequence[Node], judged: Judgements) -> _Roles:
    numbers: dict[tuple[int, str, bool, bool], int] = {}
    kinds: list[Node] = []
    index = np.zeros(len(nodes), np.int32)
    for at, node in enumerate(nodes):
        key = (id(node.cultivar), node.size, node.possible, node.takes)
        if key not in numbers:
            numbers[key] = len(kinds)
            kinds.append(node)
        index[at] = numbers[key]
    size = (len(kinds), len(kinds))
    roles = _Roles(
        index=index, score=np.zeros(size, np.float32), level=np.zeros(size, np.int32),
        best=np.zeros(size, np.float32), outer=np.zeros(size, np.float32), far=np.zeros(size, np.float32),
        kin=np.zeros(size, np.bool_),
    )
    for receiver, taker in enumerate(kinds):
        if taker.takes:
            _fill_column(roles, kinds, receiver, judged)
    return roles


def _kinds_of(nodes: Sequence[Node]) -> Kinds:
    numbers: dict[int, int] = {}
    cultivars: list[Cultivar] = []
    for node in nodes:
        if numbers.setdefault(id(node.cultivar), len(cultivars)) == len(cultivars):
            cultivars.append(node.cultivar)
    return Kinds(
        of=np.array([numbers[id(node.cultivar)] for node in nodes], np.int32),
        counts=np.array([node.count for node in nodes], np.int32),
        wants=np.array([node.takes and needs_partner(node.cultivar) for node in nodes], np.bool_),
        cultivars=tuple(cultivars),
    )


def _fill_column(roles: _Roles, kinds: Sequence[Node], receiver: int, judged: Judgements) -> None:
    """What every kind of giver does for one kind of taker."""
    taker = kinds[receiver]
    ranges = [pollen_range(taker.cultivar.crop, size, judged.place.limits) for size in SIZES]
    for donor, giver in enumerate(kinds):
        if not related(giver.cultivar, taker.cultivar):
            continue
        roles.kin[donor, receiver] = True
        verdict = judged.verdict(giver.cultivar, taker.cultivar)
        level = LEVEL[verdict.verdict]
        roles.level[donor, receiver] = min(level, NOT_PROVED) if giver.possible else level
        roles.score[donor, receiver] = _fine_points(verdict)
        reach = ranges[min(SIZES.index(giver.size), SIZES.index(taker.size))]
        _set_reach(roles, donor, receiver, reach, _far_reach(giver, reach, judged.place))


def _set_reach(roles: _Roles, donor: int, receiver: int, reach: PollenRange, far: float) -> None:
    roles.best[donor, receiver], roles.outer[donor, receiver] = reach.best, reach.outer
    roles.far[donor, receiver] = far


def _far_reach(giver: Node, reach: PollenRange, place: PollenPlace) -> float:
    if giver.takes or giver.cultivar.crop not in _FAR_CROPS:
        return reach.outer
    return max(reach.outer, place.limits.value("pollen-neighbour-reach"))


def _fine_points(verdict: Verdict) -> float:
    """Between 0 and 2: share of years in bloom together, and share of pollen taken."""
    years = verdict.overlap.years if verdict.overlap is not None else 0.3
    return years + (verdict.share if verdict.share is not None else 0.6)


def _all_scores(roles: _Roles, stems: Stems) -> Floats:
    """The whole matrix, a taker's column at a time."""
    count = len(roles.index)
    scores = np.zeros((count, count), np.float32)
    for number in range(count):
        scores[number] = _scores_of(roles, number, stems.apart(number), gives=True)
    return scores


def _scores_of(roles: _Roles, number: int, apart: Floats, *, gives: bool) -> Floats:
    """What a node gives to all others, or takes from them: 4 x level + finer points, 0 where nothing."""
    own = roles.index[number]
    pairs = (own, roles.index) if gives else (roles.index, own)
    level = roles.level[pairs]
    near, outer, far = apart <= roles.best[pairs], apart <= roles.outer[pairs], apart <= roles.far[pairs]
    reached = np.where(near, level, np.where(outer | far, np.minimum(level, PARTLY), NO))
    finer = roles.score[pairs] + 1.0 / (1.0 + apart)
    return np.where(reached > NO, _LEVEL_WEIGHT * reached + finer, 0.0).astype(np.float32)


def moved_net(net: PollenNet, stand: Stand) -> PollenNet | None:
    """The net after plants moved; None when more changed than places (then build it anew)."""
    if stand.rows is not net.stand.rows or stand.beds is not net.stand.beds:
        return None
    if len(stand.plants) != len(net.stand.plants):
        return None
    places = changed_places(net.stand.plants, stand.plants)
    if places is None:
        return None
    moved = [(net.stand.plants[place], stand.plants[place]) for place in places]
    nodes, changed = list(net.nodes), []
    for old, new in moved:
        number = net.number.get(old.id)
        node = node_of(new, net.cultivars, net.place.limits)
        if (number is None) != (node is None):
            return None
        if number is None or node is None:
            continue
        if not _alike(nodes[number], node):
            return None
        # Stands worked out anew, as after an undo, hold other objects that stand where they stood.
        if nodes[number].points != node.points:
            changed.append(number)
        nodes[number] = node
    return _with_places(net, stand, nodes, changed)


def _alike(old: Node, new: Node) -> bool:
    """True when two versions of a node differ in nothing but where they stand."""
    return (
        old.id == new.id and old.cultivar is new.cultivar and old.size == new.size
        and old.takes == new.takes and old.possible == new.possible
    )


def _with_places(net: PollenNet, stand: Stand, nodes: list[Node], changed: list[int]) -> PollenNet:
    scores = net.scores.copy()
    stems = net.stems.moved({number: nodes[number].points[0] for number in changed})
    for number in changed:
        apart = stems.apart(number)
        scores[number] = _scores_of(net.roles, number, apart, gives=True)
        scores[:, number] = _scores_of(net.roles, number, apart, gives=False)
    return PollenNet(
        stand=stand, place=net.place, cultivars=net.cultivars, nodes=tuple(nodes), judgements=net.judgements,
        roles=net.roles, kinds=net.kinds, scores=scores, number=net.number,
        changed=frozenset(changed), after=net.stamp, stems=stems,
    )


_last = threading.local()


def net_of(stand: Stand, place: PollenPlace, cultivars: Cultivars) -> PollenNet:
    """The net of a stand, taken over from the last one asked for where only places changed.

    Keeping the last net changes no answer: it only saves work while a plant is dragged.
    """
    last: PollenNet | None = getattr(_last, "net", None)
    net = None
    if last is not None and last.cultivars is cultivars and last.place == place:
        if last.stand is stand:
            return last
        net = moved_net(last, stand)
    if net is None:
        net = build_net(stand, place, cultivars, None if last is None else last.judgements)
    _last.net = net
    return net


def takers(net: PollenNet) -> list[int]:
    """Numbers of the nodes that must be set by another plant's pollen to crop."""
    return np.flatnonzero(net.kinds.wants).tolist()
