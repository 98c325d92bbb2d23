"""Joins the yard's plants with what is known of them and with their size at a chosen year."""

from __future__ import annotations

from functools import lru_cache

from attrs import evolve

from yardplan.plants.catalogue import Catalogue
from yardplan.plants.crop import Crop, Size, TreeKind
from yardplan.plants.growth import Grown, grown, size_after, tree_size
from yardplan.plants.growth_tables import limits
from yardplan.plants.stand import Stand, Standing, StandingBed, StandingRow
from yardplan.yard.change import Change
from yardplan.yard.ground import Point, StandingTree
from yardplan.yard.planting import Bed, Container, Planting, PlantKey, Row
from yardplan.yard.positions import chosen, places_of, replaced
from yardplan.yard.yard import Yard

_ORIGIN: Point = (0.0, 0.0)


def stand_of(yard: Yard, catalogue: Catalogue, year: int | None = None) -> Stand:
    """All plants of the yard with facts and size `year` years after planting; None: at full size."""
    if yard.own_cultivars:
        catalogue = catalogue.with_own(yard.own_cultivars)
    containers = {container.id: container for container in yard.containers}
    plants = [_plant(catalogue, planting, containers.get(planting.container or ""), year)
              for planting in yard.plantings]
    plants += [_tree(catalogue, tree) for tree in yard.standing_trees]
    return Stand(
        year=year, plants=tuple(plants),
        rows=tuple(_row(catalogue, row, year) for row in yard.rows),
        beds=tuple(_bed(catalogue, bed, year) for bed in yard.beds),
    )


def moved_stand(stand: Stand, yard: Yard, change: Change, catalogue: Catalogue | None = None) -> Stand:
    """The stand after a change that only moved things: what did not move is reused as it is.

    `yard` is the yard after the change. Any other change needs `stand_of`, which is called when a
    catalogue is given; without one ValueError is raised.
    """
    if not change.only_moves:
        if change.nothing:
            return stand
        if catalogue is None:
            raise ValueError("only moves can be followed without the catalogue")
        return stand_of(yard, catalogue, stand.year)
    ids = change.moved
    return Stand(
        year=stand.year,
        plants=_moved_plants(stand, yard, ids),
        rows=_moved_rows(stand, yard, ids),
        beds=_moved_beds(stand, yard, ids),
    )


def _moved_plants(stand: Stand, yard: Yard, ids: frozenset[str]) -> tuple[Standing, ...]:
    now: dict[str, Planting | StandingTree] = {p.id: p for p in chosen(yard.plantings, ids)}
    now |= {t.id: t for t in chosen(yard.standing_trees, ids)}
    pots = {c.id: c for c in chosen(yard.containers, ids)}
    if not now and not pots:
        return stand.plants
    plants = stand.plants
    places = set(places_of(plants, now))
    if pots:
        places |= {n for n, p in enumerate(plants) if p.container is not None and p.container.id in pots}
    return replaced(plants, {number: _at_new_place(plants[number], now, pots) for number in places})


def _at_new_place(
    standing: Standing, now: dict[str, Planting | StandingTree], pots: dict[str, Container]
) -> Standing:
    thing = now.get(standing.id, standing.thing)
    pot = standing.container
    return evolve(standing, thing=thing, place=thing.place, container=pot and pots.get(pot.id, pot))


def _moved_rows(stand: Stand, yard: Yard, ids: frozenset[str]) -> tuple[StandingRow, ...]:
    now = {row.id: row for row in chosen(yard.rows, ids)}
    if not now:
        return stand.rows
    rows = stand.rows
    return replaced(rows, {n: evolve(rows[n], row=now[rows[n].id]) for n in places_of(rows, now)})


def _moved_beds(stand: Stand, yard: Yard, ids: frozenset[str]) -> tuple[StandingBed, ...]:
    now = {bed.id: bed for bed in chosen(yard.beds, ids)}
    if not now:
        return stand.beds
    beds = stand.beds
    return replaced(beds, {n: evolve(beds[n], bed=now[beds[n].id]) for n in places_of(beds, now)})


@lru_cache(maxsize=4096)
def _known(catalogue: Catalogue, placed: Planting | Row | Bed) -> Grown:
    """What the tables say; `placed` comes without place and id, so that like plants share the answer."""
    return grown(catalogue, placed)


def _sizes(known: Grown, year: int | None) -> Size:
    return known.mature if year is None else size_after(known, year)


def _light_of(kind: Crop | TreeKind | None) -> tuple[float, float]:
    """Shares of light let through in leaf and bare; for a plant nobody knows those of a pruned fruit tree."""
    if kind is None:
        return limits()["unknown_light_leaf"], limits()["unknown_light_bare"]
    return kind.light_leaf, kind.light_bare


def _light(known: Grown) -> tuple[float, float]:
    return _light_of(known.crop)


def _plant(catalogue: Catalogue, planting: Planting, pot: Container | None, year: int | None) -> Standing:
    known = _known(catalogue, evolve(planting, id="", place=_ORIGIN, note="", container=None, locked=False))
    leaf, bare = _light(known)
    return Standing(
        id=planting.id, thing=planting, key=planting.plant, place=planting.place,
        size=_sizes(known, year), mature=known.mature, cultivar=known.cultivar, crop=known.crop,
        container=pot, touching=known.touching or planting.group is not None,
        light_leaf=leaf, light_bare=bare,
        evergreen=known.crop is not None and known.crop.evergreen,
    )


def _tree(catalogue: Catalogue, tree: StandingTree) -> Standing:
    """A tree that stands there: the size it was given; its kind gives shape and light."""
    kind = catalogue.tree_kind(tree.kind)
    crop = catalogue.crop((kind.crop if kind else "") or tree.kind)
    key = PlantKey(crop.id, tree.cultivar) if crop is not None and tree.cultivar else None
    usual = tree_size(kind) if kind is not None else None
    size = Size(
        spread=tree.spread, height=tree.height, crown_base=min(tree.crown_base, tree.height),
        habit=usual.habit if usual else crop.habit if crop else "shade tree", sources=("the user",),
    )
    leaf, bare = _light_of(kind or crop)
    evergreen = tree.evergreen or (kind is not None and kind.evergreen)
    leaf = leaf if tree.light_share is None else tree.light_share
    return Standing(
        id=tree.id, thing=tree, key=key, place=tree.place, size=size, mature=size,
        cultivar=catalogue.cultivar(key) if key else None, crop=crop, beyond_lot=tree.beyond_lot,
        light_leaf=leaf, light_bare=leaf if evergreen else max(bare, leaf), evergreen=evergreen,
    )


def _row(catalogue: Catalogue, row: Row, year: int | None) -> StandingRow:
    known = _known(catalogue, evolve(row, id="", line=(), count=1, spacing=1.0, note="", locked=False))
    mature, now = _across(known.mature, row), _across(_sizes(known, year), row)
    leaf, bare = _light(known)
    return StandingRow(
        id=row.id, row=row, size=now, mature=mature, plant=known.mature, cultivar=known.cultivar,
        crop=known.crop, touching=known.touching or row.supported, light_leaf=leaf, light_bare=bare,
        evergreen=known.crop is not None and known.crop.evergreen,
    )


def _across(size: Size, row: Row) -> Size:
    """The size with its spread across the row: the thickness of what hangs on wires, or what the user set."""
    across = size.depth if size.depth is not None else size.spread
    if row.width is not None:
        across = min(across, row.width) if size.estimate else row.width
    return evolve(size, spread=across)


def _bed(catalogue: Catalogue, bed: Bed, year: int | None) -> StandingBed:
    if bed.plant is None:
        return StandingBed(id=bed.id, bed=bed)
    known = _known(catalogue, Bed(id="", outline=(), plant=bed.plant))
    return StandingBed(
        id=bed.id, bed=bed, size=_sizes(known, year), cultivar=known.cultivar, crop=known.crop
    )
