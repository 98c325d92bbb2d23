"""The yard's plants joined with what is known of them and their size at a chosen year."""

from __future__ import annotations

from attrs import frozen

from yardplan.plants.crop import Crop, Size
from yardplan.plants.cultivar import Cultivar
from yardplan.yard.ground import Point, StandingTree
from yardplan.yard.planting import Bed, Container, Planting, PlantKey, Row


@frozen(kw_only=True)
class Standing:
    """One plant or standing tree with its facts. `cultivar` and `crop` are None when not known.

    `size` at the chosen year, `mature` at maturity; `touching` True where its form may touch others.
    `light_leaf`, `light_bare` shares of light the crown lets through in leaf and bare.
    """

    id: str
    thing: Planting | StandingTree
    key: PlantKey | None
    place: Point
    size: Size
    mature: Size
    cultivar: Cultivar | None = None
    crop: Crop | None = None
    container: Container | None = None
    touching: bool = False
    beyond_lot: bool = False
    light_leaf: float = 0.2
    light_bare: float = 0.65
    evergreen: bool = False

    @property
    def planted(self) -> bool:
        """True for a plant of the plan, False for a tree that stands there already."""
        return isinstance(self.thing, Planting)


@frozen(kw_only=True)
class StandingRow:
    """A row with its facts; `size.spread` is the width across the row.

    `plant` is the mature size of one of its plants by itself, as `Standing.mature`.
    """

    id: str
    row: Row
    size: Size
    mature: Size
    plant: Size | None = None
    cultivar: Cultivar | None = None
    crop: Crop | None = None
    touching: bool = True
    light_leaf: float = 0.2
    light_bare: float = 0.65
    evergreen: bool = False


@frozen(kw_only=True)
class StandingBed:
    """A bed with the facts of what grows in it."""

    id: str
    bed: Bed
    size: Size | None = None
    cultivar: Cultivar | None = None
    crop: Crop | None = None


@frozen(kw_only=True)
class Stand:
    """All plants of a yard at a year (`year` years after planting; None: mature)."""

    year: int | None
    plants: tuple[Standing, ...] = ()
    rows: tuple[StandingRow, ...] = ()
    beds: tuple[StandingBed, ...] = ()
