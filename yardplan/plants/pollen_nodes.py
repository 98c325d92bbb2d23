"""The plants of a stand as givers and takers of pollen: each with its facts, places and size class."""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping
from functools import cache
from itertools import pairwise
from typing import Any

from attrs import evolve, frozen

from yardplan.language import later, tr
from yardplan.plants.crop import Crop
from yardplan.plants.cultivar import Cultivar
from yardplan.plants.limits import Limits
from yardplan.plants.pollen_range import SizeClass, size_class
from yardplan.plants.pollen_reason import SEEDLING, kind_of
from yardplan.plants.pollen_tables import ANY, SeedlingKind, seedling_kinds
from yardplan.plants.stand import Stand, Standing, StandingBed, StandingRow
from yardplan.yard.ground import Outline, Point, StandingTree
from yardplan.yard.planting import PlantKey

Cultivars = Mapping[PlantKey, Cultivar]


@frozen(kw_only=True, eq=False)
class Node:
    """One plant, row, bed or standing tree. `points` are the stems (or samples of them), metres.

    `takes` False for trees that only give; `possible` True where too little is known of a tree or variety:
    it may help, but nothing proves it. `count` plants.
    """

    id: str
    cultivar: Cultivar
    points: tuple[Point, ...]
    size: SizeClass
    takes: bool = True
    possible: bool = False
    beyond_lot: bool = False
    words: str = ""
    count: int = 1


def nodes_of(stand: Stand, cultivars: Cultivars, limits: Limits) -> list[Node]:
    """All that gives or takes pollen; plants of no known kind are left out."""
    return [*_plant_nodes(stand.plants, cultivars, limits), *_row_nodes(stand, limits), *_bed_nodes(stand)]


def _plant_nodes(plants: tuple[Standing, ...], cultivars: Cultivars, limits: Limits) -> Iterator[Node]:
    for standing in plants:
        node = node_of(standing, cultivars, limits)
        if node is not None:
            yield node


def node_of(standing: Standing, cultivars: Cultivars, limits: Limits) -> Node | None:
    """The node of one plant or standing tree, or None when it neither gives nor takes pollen."""
    size = size_class(standing.mature.height, limits)
    if isinstance(standing.thing, StandingTree):
        return _tree_node(standing, standing.thing, cultivars, size)
    if standing.cultivar is None:
        return _unknown_node(standing, size)
    if kind_of(standing.cultivar) is None:
        return None
    return Node(id=standing.id, cultivar=standing.cultivar, points=(standing.place,), size=size,
                beyond_lot=standing.beyond_lot)


def _unknown_node(standing: Standing, size: SizeClass) -> Node | None:
    """A plant of a variety the catalogue does not hold: it may give pollen; what it takes is not known."""
    known = _known_of(None, standing.crop, getattr(standing.thing, "plant", None))
    if known is None:
        return None
    return Node(
        id=standing.id, cultivar=known, points=(standing.place,), size=size, beyond_lot=standing.beyond_lot,
        **_if_unknown(None, known),
    )


def _known_of(cultivar: Cultivar | None, crop: Crop | None, plant: PlantKey | None) -> Cultivar | None:
    """The variety, or a bare name of its kind; None where pollen does not matter to the kind."""
    if cultivar is None and crop is not None and plant is not None:
        cultivar = _nothing_known_of(crop.id, plant.cultivar)
    return None if cultivar is None or kind_of(cultivar) is None else cultivar


def _if_unknown(cultivar: Cultivar | None, known: Cultivar) -> dict[str, Any]:
    """How a node is of a variety that nothing is known of; nothing for others."""
    if cultivar is not None:
        return {}
    return {"takes": False, "possible": True, "words": tr("nothing is known of {name}", name=known.name)}


@cache
def _nothing_known_of(crop: str, name: str) -> Cultivar:
    """One value for each name: nets are compared by identity from frame to frame."""
    return Cultivar(crop=crop, name=name)


def _tree_node(standing: Standing, tree: StandingTree, cultivars: Cultivars, size: SizeClass) -> Node | None:
    if tree.donor == "none":
        return None
    bare = Node(id=standing.id, cultivar=Cultivar(crop="", name=""), points=(tree.place,), size=size,
                takes=False, beyond_lot=standing.beyond_lot)
    if tree.donor == "named":
        return _named_tree(bare, standing, tree)
    kind = seedling_kinds().get(tree.kind.lower())
    crop = kind.crop if kind else (standing.crop.id if standing.crop else "")
    if not crop:
        return None
    donor = _seedling(crop, kind, cultivars)
    return None if kind_of(donor) is None else evolve(
        bare, cultivar=donor, possible=True, words=tr(kind.words if kind else later("an unknown seedling")),
    )


def _named_tree(bare: Node, standing: Standing, tree: StandingTree) -> Node | None:
    if standing.cultivar is not None:
        known = kind_of(standing.cultivar)
        return None if known is None else evolve(bare, cultivar=standing.cultivar)
    crop = standing.crop.id if standing.crop else ""
    unknown = Cultivar(crop=crop, name=tree.cultivar or SEEDLING)
    if kind_of(unknown) is None:
        return None
    words = tr("nothing is known of {name}", name=unknown.name)
    return evolve(bare, cultivar=unknown, possible=True, words=words)


def _seedling(crop: str, kind: SeedlingKind | None, cultivars: Cultivars) -> Cultivar:
    """The facts of an unknown seedling: most likely a diploid with good pollen; its bloom is not known."""
    if kind is not None and kind.donor != ANY:
        known = cultivars.get(PlantKey(crop, kind.donor))
        if known is not None:
            return known
    return Cultivar(crop=crop, name=SEEDLING, ploidy=2, pollen_good=True)


def _row_nodes(stand: Stand, limits: Limits) -> Iterator[Node]:
    for row in stand.rows:
        known = _known_of(row.cultivar, row.crop, row.row.plant)
        if known is not None:
            height = (row.plant or row.mature).height
            yield Node(
                id=row.id, cultivar=known, points=row_points(row), size=size_class(height, limits),
                count=max(1, row.row.count), **_if_unknown(row.cultivar, known),
            )


def row_points(row: StandingRow) -> tuple[Point, ...]:
    """Where the plants of a row stand, along its line; a line of one point or none has one place."""
    line, spacing = row.row.line, row.row.spacing
    if len(line) < 2:
        return tuple(line) or ((0.0, 0.0),)
    return tuple(_along(line, number * spacing) for number in range(max(1, row.row.count)))


def _along(line: Outline, distance: float) -> Point:
    """The point at a distance along a line; beyond its end, its end."""
    for (ax, ay), (bx, by) in pairwise(line):
        length = math.hypot(bx - ax, by - ay)
        if distance <= length and length > 0:
            part = distance / length
            return (ax + part * (bx - ax), ay + part * (by - ay))
        distance -= length
    return line[-1]


def _bed_nodes(stand: Stand) -> Iterator[Node]:
    for bed in stand.beds:
        known = _known_of(bed.cultivar, bed.crop, bed.bed.plant)
        if known is not None and bed.bed.outline:
            yield Node(
                id=bed.id, cultivar=known, points=bed_points(bed), size="dwarf",
                **_if_unknown(bed.cultivar, known),
            )


def bed_points(bed: StandingBed) -> tuple[Point, ...]:
    """Samples of a bed: corners, middles of the sides and the middle of them all."""
    corners = bed.bed.outline
    sides = zip(corners, (*corners[1:], corners[0]), strict=True)
    middles = tuple(((ax + bx) / 2, (ay + by) / 2) for (ax, ay), (bx, by) in sides)
    centre = (sum(x for x, _ in corners) / len(corners), sum(y for _, y in corners) / len(corners))
    return (*corners, *middles, centre)
