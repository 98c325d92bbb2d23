"""Where one added plant would reach the most of the plants that lack a partner: beside one, or between some.

Where the circles of reach of two plants cross lies a best spot for every set of plants that one spot serves.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence

import numpy as np
import shapely
from attrs import frozen
from numpy.typing import NDArray

from yardplan.plants.pollen_net import PollenNet
from yardplan.plants.pollen_range import pollen_range
from yardplan.yard.ground import Outline, Point

#: Circles are crossed a little inside the range, so that a spot lies within it whatever is rounded.
_INSIDE = 0.995
#: With more plants than this only spots beside them are looked at: the pairs would be too many.
_MOST_PAIRED = 60


@frozen
class Spot:
    """A place for an added plant: `mask` has a bit for each plant it reaches, `anchor` is the nearest one."""

    place: Point
    mask: int
    anchor: int


def spots_for(net: PollenNet, wanted: Sequence[int], lot: Outline = ()) -> list[Spot]:
    """The spots worth trying for the plants numbered in `wanted`; none reaches but part of another's plants.

    Spots off the lot are left out, where a lot is drawn.
    """
    reach = [_reach(net, number) for number in wanted]
    stems = [np.array(net.nodes[number].points) for number in wanted]
    best: dict[int, Spot] = {}
    for place in _places(stems, reach, lot):
        apart = [float(np.hypot(*(points - place).T).min()) for points in stems]
        mask = sum(1 << bit for bit, far in enumerate(apart) if far <= reach[bit])
        if mask and mask not in best:
            nearest = min((far, bit) for bit, far in enumerate(apart) if mask >> bit & 1)[1]
            best[mask] = Spot(place, mask, wanted[nearest])
    return [
        spot for mask, spot in best.items() if not any(mask != more and mask & more == mask for more in best)
    ]


def _reach(net: PollenNet, number: int) -> float:
    """Best range for pollen that comes to a plant, metres."""
    node = net.nodes[number]
    return pollen_range(node.cultivar.crop, node.size, net.place.limits).best


def _places(stems: Sequence[NDArray[np.float64]], reach: Sequence[float], lot: Outline) -> Iterator[Point]:
    """Beside every plant, then where two circles of reach cross."""
    for points in stems:
        x, y = points[len(points) // 2]
        yield float(x), float(y)
    if len(stems) > _MOST_PAIRED:
        return
    ground = shapely.Polygon(lot) if len(lot) > 2 else None
    for one in range(len(stems)):
        for other in range(one + 1, len(stems)):
            for place in _crossings(stems[one], stems[other], reach[one], reach[other]):
                if ground is None or ground.covers(shapely.Point(place)):
                    yield place


def _crossings(
    ones: NDArray[np.float64], others: NDArray[np.float64], near: float, far: float
) -> Iterator[Point]:
    """Where the circles round the two nearest stems cross, and the middle between them."""
    gaps = np.hypot(ones[:, None, 0] - others[None, :, 0], ones[:, None, 1] - others[None, :, 1])
    i, j = np.unravel_index(int(gaps.argmin()), gaps.shape)
    (ax, ay), (bx, by) = ones[i], others[j]
    apart, r, s = float(gaps[i, j]), near * _INSIDE, far * _INSIDE
    if apart == 0 or apart > r + s:
        return
    yield float(ax + bx) / 2, float(ay + by) / 2
    if apart < abs(r - s):
        return
    along = (apart * apart + r * r - s * s) / (2 * apart)
    aside = math.sqrt(max(r * r - along * along, 0.0))
    ux, uy = float(bx - ax) / apart, float(by - ay) / apart
    for side in (1.0, -1.0):
        yield float(ax) + along * ux - side * aside * uy, float(ay) + along * uy + side * aside * ux
