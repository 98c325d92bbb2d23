"""Distances from many points to many outlines at once (numpy). Metres."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
from attrs import frozen
from numpy.typing import NDArray

from yardplan.yard.ground import Outline

Array = NDArray[np.float64]


@frozen(eq=False)
class Edges:
    """The edges of several outlines, end to end: `ends` (m, 4) as x1 y1 x2 y2; `starts` first edge of each.

    `closed` says which outlines enclose an area.
    """

    ends: Array
    starts: NDArray[np.intp]
    closed: NDArray[np.bool_]

    @property
    def count(self) -> int:
        """How many outlines."""
        return len(self.starts)


def edges_of(outlines: Sequence[Outline], closed: Sequence[bool]) -> Edges:
    """The edges of outlines; one point becomes one edge of no length."""
    rows: list[tuple[float, float, float, float]] = []
    starts: list[int] = []
    for outline, ring in zip(outlines, closed, strict=True):
        starts.append(len(rows))
        following = (*outline[1:], outline[0]) if ring else outline[1:]
        pairs = list(zip(outline, following, strict=False)) or [(outline[0], outline[0])]
        rows.extend((a[0], a[1], b[0], b[1]) for a, b in pairs)
    ends = np.array(rows, dtype=float).reshape(-1, 4)
    return Edges(ends, np.array(starts, dtype=np.intp), np.array(closed, dtype=bool))


def nearest_on(points: Array, ends: Array) -> Array:
    """The nearest point of each edge to each point: (n, m, 2)."""
    a, along = ends[:, :2], ends[:, 2:] - ends[:, :2]
    length2 = np.maximum((along**2).sum(axis=1), 1e-18)
    to = points[:, None, :] - a[None, :, :]
    share = np.clip((to * along).sum(axis=2) / length2, 0.0, 1.0)
    nearest: Array = a[None, :, :] + share[:, :, None] * along[None, :, :]
    return nearest


def _edge_distances(points: Array, ends: Array) -> Array:
    """Distance from each point to each edge: (n, m)."""
    ax, ay = ends[:, 0], ends[:, 1]
    ux, uy = ends[:, 2] - ax, ends[:, 3] - ay
    length2 = np.maximum(ux * ux + uy * uy, 1e-18)
    dx, dy = points[:, :1] - ax, points[:, 1:] - ay
    share = np.clip((dx * ux + dy * uy) / length2, 0.0, 1.0)
    gap: Array = np.hypot(dx - share * ux, dy - share * uy)
    return gap


def _crossings(points: Array, edges: Edges) -> NDArray[np.bool_]:
    """Which points lie inside which closed outlines (even-odd rule): (n, outlines)."""
    x1, y1, x2, y2 = edges.ends.T
    px, py = points[:, :1], points[:, 1:]
    straddles = (y1 > py) != (y2 > py)
    # An edge flatter than any tape can tell would overflow the division.
    rise = np.where(np.abs(y2 - y1) < 1e-12, 1.0, y2 - y1)
    left = px < (x2 - x1) * (py - y1) / rise + x1
    odd = np.add.reduceat(straddles & left, edges.starts, axis=1) % 2 == 1
    inside: NDArray[np.bool_] = odd & edges.closed
    return inside


def signed_distances(points: Array, edges: Edges) -> Array:
    """Distance from each point to each outline, negative inside closed ones: (n, outlines)."""
    if not len(points) or not edges.count:
        return np.empty((len(points), edges.count))
    gap = np.minimum.reduceat(_edge_distances(points, edges.ends), edges.starts, axis=1)
    return np.where(_crossings(points, edges), -gap, gap)
