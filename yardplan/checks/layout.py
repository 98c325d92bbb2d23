"""Where everything stands, as arrays that a drag frame can bring up to date at the cost of what moved."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from operator import is_not
from typing import Any, TypeVar

import numpy as np
from attrs import evolve, field, frozen
from numpy.typing import NDArray

from yardplan.checks.groups import is_member
from yardplan.checks.lines import Array, Edges, edges_of, nearest_on, signed_distances
from yardplan.checks.shapes import has_area, line_of
from yardplan.plants.stand import Stand, Standing, StandingRow
from yardplan.yard.ground import Barrier, Building, Outline, Paving, Point, Service
from yardplan.yard.planting import Bed
from yardplan.yard.positions import changed_places
from yardplan.yard.yard import Yard

T = TypeVar("T")

#: Places in the list of plants.
Moved = NDArray[np.intp]

Ground = Building | Barrier | Paving | Service | Bed


@frozen(eq=False)
class Feature:
    """One thing on the ground with an outline or a line; the lot line itself has the id `lot`."""

    id: str
    sort: str
    points: Outline
    closed: bool
    thing: Ground | None = None


def _features(yard: Yard) -> Iterator[Feature]:
    if has_area(yard.lot):
        yield Feature("lot", "lot", yard.lot, True)
    for building in yard.buildings:
        yield Feature(building.id, "building", building.footprint, True, building)
    for barrier in yard.barriers:
        yield Feature(barrier.id, "barrier", barrier.line, False, barrier)
    for paving in yard.pavings:
        yield Feature(paving.id, paving.kind, paving.outline, True, paving)
    for service in yard.services:
        yield Feature(service.id, service.kind, service.points, service.area, service)
    for bed in yard.beds:
        yield Feature(bed.id, "bed", bed.outline, True, bed)


def _ground_of(yard: Yard) -> tuple[object, ...]:
    """What the features of a yard are made of: the very same things give the same features."""
    return yard.lot, yard.buildings, yard.barriers, yard.pavings, yard.services, yard.beds


@frozen(eq=False)
class Layout:
    """The plants, rows and ground of a stand as arrays.

    `xy` (n, 2); `reach` half the mature spread; `height` mature height; `flat` marks flat-trained plants
    that stand along `facing` (radians); `planted` those of the plan, `potted` those in containers.
    `gaps` (n, features): distance from each stem to each outline, negative inside; `row_gaps` (n, rows):
    to the rows' lines. `pairs` (k, 2): plants whose mature crowns could meet. `table` (n, 9) holds the
    columns from `xy` to `potted` in the order of `_measures`. `ground` is what `features` were made of.
    `masks`, `kept`: see `members` and `remembered`.
    """

    plants: tuple[Standing, ...]
    rows: tuple[StandingRow, ...]
    features: tuple[Feature, ...]
    xy: Array
    reach: Array
    height: Array
    facing: Array
    flat: NDArray[np.bool_]
    half_depth: Array
    planted: NDArray[np.bool_]
    potted: NDArray[np.bool_]
    gaps: Array
    pairs: NDArray[np.intp]
    row_lines: NDArray[np.object_]
    row_gaps: Array
    table: Array
    edges: Edges
    ground: tuple[object, ...]
    masks: dict[str, NDArray[np.bool_]] = field(factory=dict)
    kept: dict[tuple[str, ...], tuple[tuple[object, ...], Any]] = field(factory=dict)

    def columns(self, *sorts: str) -> list[int]:
        """Numbers of the features of these sorts."""
        return [i for i, feature in enumerate(self.features) if feature.sort in sorts]

    def members(self, group: str) -> NDArray[np.bool_]:
        """Which plants belong to a group of plant-groups.csv; kept while things only move."""
        if group not in self.masks:
            self.masks[group] = np.array([is_member(group, plant) for plant in self.plants], dtype=bool)
        return self.masks[group]

    def remembered(self, key: tuple[str, ...], of: tuple[object, ...], make: Callable[[], T]) -> T:
        """What `make` gives, made anew only when one of the things it is made of is another object.

        Kept from frame to frame of a drag: what did not move is the same object.
        """
        before = self.kept.get(key)
        if before is None or any(old is not new for old, new in zip(before[0], of, strict=True)):
            before = (of, make())
            self.kept[key] = before
        made: T = before[1]
        return made

    def nearest(self, plant: int, feature: int) -> Point:
        """The point of a feature's outline nearest to a plant's stem."""
        stem, outline = self.plants[plant], self.features[feature]

        def measured() -> Point:
            edges = edges_of([outline.points], [outline.closed])
            places = nearest_on(self.xy[plant : plant + 1], edges.ends)[0]
            x, y = places[int(np.hypot(*(places - self.xy[plant]).T).argmin())]
            return float(x), float(y)

        return self.remembered(("near", stem.id, outline.id), (stem, outline.points), measured)


def _measures(plants: tuple[Standing, ...]) -> Array:
    """One row a plant: x, y, reach, height, facing, flat, half depth, planted, potted."""
    rows = [
        (
            p.place[0], p.place[1], p.mature.spread / 2, p.mature.height,
            np.radians(getattr(p.thing, "facing", 0.0)),
            p.mature.habit == "flat-trained", (p.mature.depth or 0.0) / 2, p.planted,
            p.container is not None,
        )
        for p in plants
    ]
    return np.array(rows, dtype=float).reshape(-1, 9)


def _all_pairs(xy: Array, reach: Array) -> NDArray[np.intp]:
    """Pairs (i < j) of plants nearer than the sum of their reaches."""
    if len(xy) < 2:
        return np.empty((0, 2), dtype=np.intp)
    gap2 = (xy[:, :1] - xy[:, 0]) ** 2 + (xy[:, 1:] - xy[:, 1]) ** 2
    near = gap2 < (reach[:, None] + reach) ** 2
    i, j = np.nonzero(np.triu(near, 1))
    return np.stack([i, j], axis=1)


def _pairs_of(moved: NDArray[np.intp], xy: Array, reach: Array) -> NDArray[np.intp]:
    """Pairs with at least one of the plants named."""
    if len(moved) == 1:
        return _pairs_of_one(int(moved[0]), xy, reach)
    gap2 = (xy[moved, :1] - xy[:, 0]) ** 2 + (xy[moved, 1:] - xy[:, 1]) ** 2
    k, j = np.nonzero(gap2 < (reach[moved, None] + reach) ** 2)
    pairs = np.stack([moved[k], j], axis=1)
    pairs = np.sort(pairs[pairs[:, 0] != pairs[:, 1]], axis=1)
    return np.unique(pairs, axis=0) if len(pairs) else pairs


def _pairs_of_one(moved: int, xy: Array, reach: Array) -> NDArray[np.intp]:
    """The same for one plant, as nearly every drag moves: nothing can be there twice."""
    off = xy - xy[moved]
    others = np.flatnonzero((off * off).sum(axis=1) < (reach + reach[moved]) ** 2)
    others = others[others != moved]
    return np.stack([np.minimum(others, moved), np.maximum(others, moved)], axis=1)


def _edges(features: tuple[Feature, ...]) -> Edges:
    return edges_of([f.points for f in features], [f.closed for f in features])


def _gaps(xy: Array, features: tuple[Feature, ...]) -> Array:
    return signed_distances(xy, _edges(features))


def _row_gaps(xy: Array, rows: tuple[StandingRow, ...]) -> Array:
    return signed_distances(xy, edges_of([r.row.line for r in rows], [False] * len(rows)))


def _row_lines(rows: tuple[StandingRow, ...]) -> NDArray[np.object_]:
    lines = [line_of(r.row.line) for r in rows]
    return np.array(lines, dtype=object)


def layout_of(yard: Yard, stand: Stand) -> Layout:
    """The layout of a yard and its stand, from scratch."""
    features = tuple(f for f in _features(yard) if f.points)
    table, edges = _measures(stand.plants), _edges(features)
    xy, reach = table[:, :2], table[:, 2]
    return Layout(
        plants=stand.plants, rows=stand.rows, features=features, xy=xy, reach=reach, height=table[:, 3],
        facing=table[:, 4], flat=table[:, 5] > 0, half_depth=table[:, 6], planted=table[:, 7] > 0,
        potted=table[:, 8] > 0, gaps=signed_distances(xy, edges), pairs=_all_pairs(xy, reach),
        row_lines=_row_lines(stand.rows), row_gaps=_row_gaps(xy, stand.rows), table=table,
        edges=edges, ground=_ground_of(yard),
    )


def _same_things(before: Layout, features: tuple[Feature, ...]) -> bool:
    """True when the features are the same ones, moved or not."""
    return features is before.features or [f.id for f in features] == [f.id for f in before.features]


def _updated_gaps(
    before: Layout, features: tuple[Feature, ...], edges: Edges, xy: Array, moved: Moved
) -> Array:
    """The distances with the rows of moved plants and the columns of moved features computed anew."""
    gaps = before.gaps.copy()
    if len(moved):
        gaps[moved] = signed_distances(xy[moved], edges)
    if features is before.features:
        return gaps
    pairs = zip(before.features, features, strict=True)
    columns = [
        i for i, (old, new) in enumerate(pairs)
        if old.points is not new.points or old.closed != new.closed
    ]
    if columns:
        gaps[:, columns] = _gaps(xy, tuple(features[i] for i in columns))
    return gaps


def _updated_row_gaps(before: Layout, rows: tuple[StandingRow, ...], xy: Array, moved: Moved) -> Array:
    """The distances to rows' lines, anew for moved plants, or all where a row moved."""
    if rows is not before.rows:
        return _row_gaps(xy, rows)
    if not rows or not len(moved):
        return before.row_gaps
    gaps = before.row_gaps.copy()
    gaps[moved] = _row_gaps(xy[moved], rows)
    return gaps


def _updated_pairs(before: Layout, xy: Array, reach: Array, moved: Moved) -> NDArray[np.intp]:
    """The pairs, anew for moved plants."""
    if not len(moved):
        return before.pairs
    held = np.ones(len(xy), dtype=bool)
    held[moved] = False
    kept = before.pairs[held[before.pairs].all(axis=1)]
    return np.concatenate([kept, _pairs_of(moved, xy, reach)])


def moved_layout(before: Layout, yard: Yard, stand: Stand) -> Layout:
    """The layout after some things moved; what did not move is taken over."""
    places, ground = changed_places(before.plants, stand.plants), _ground_of(yard)
    unmoved = len(ground) == len(before.ground) and not any(map(is_not, ground, before.ground))
    features = before.features if unmoved else tuple(f for f in _features(yard) if f.points)
    if places is None or not _same_things(before, features):
        return layout_of(yard, stand)
    moved = np.array(places, dtype=np.intp)
    table = before.table.copy()
    if len(moved):
        table[moved] = _measures(tuple(stand.plants[i] for i in places))
    xy, reach = table[:, :2], table[:, 2]
    edges = before.edges if unmoved else _edges(features)
    return evolve(
        before, plants=stand.plants, rows=stand.rows, features=features, xy=xy, reach=reach,
        height=table[:, 3], facing=table[:, 4], flat=table[:, 5] > 0, half_depth=table[:, 6],
        planted=table[:, 7] > 0, potted=table[:, 8] > 0, pairs=_updated_pairs(before, xy, reach, moved),
        gaps=_updated_gaps(before, features, edges, xy, moved),
        row_lines=before.row_lines if stand.rows is before.rows else _row_lines(stand.rows),
        row_gaps=_updated_row_gaps(before, stand.rows, xy, moved), table=table, ground=ground, edges=edges,
    )
