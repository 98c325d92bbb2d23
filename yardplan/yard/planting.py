"""What is planted: single plants, rows, beds, containers. A planting keeps its plant's key, not its facts."""

from __future__ import annotations

from typing import Literal

from attrs import frozen

from yardplan.language import tr
from yardplan.yard.ground import Curve, Outline, Point
from yardplan.yard.site import Soil

Pattern = Literal["square", "triangular", "rows"]


@frozen(order=True)
class PlantKey:
    """Names a plant of the catalogue: crop and cultivar, e.g. `apple` and `Egremont Russet`."""

    crop: str
    cultivar: str

    def __str__(self) -> str:
        return f"{self.crop}:{self.cultivar}"

    @classmethod
    def parse(cls, text: str) -> PlantKey:
        """Read `crop:cultivar`. Raises ValueError with a message for a person."""
        crop, colon, cultivar = text.partition(":")
        if not colon or not crop.strip() or not cultivar.strip():
            raise ValueError(tr(
                "'{text}' is not a plant: write CROP:CULTIVAR, for example apple:Liberty",
                text=text,
            ))
        return cls(crop.strip(), cultivar.strip())


@frozen(kw_only=True)
class Earlier:
    """What grew on the spot before: a kind of plant, and the last year it stood there (None: not known)."""

    crop: str
    until: int | None = None


@frozen(kw_only=True)
class Planting:
    """One placed plant.

    `rootstock` or `form` set its size (None: the crop's usual one); `planted` is the year of planting.
    `facing` degrees counter-clockwise from +x: the line along which a flat-trained plant spreads.
    `container` id of the vessel it stands in. `spread` and `height` (metres) overrule the catalogue.
    `group` plants of one group are held small together and may touch. `earlier` what grew in the hole before.
    """

    id: str
    plant: PlantKey
    place: Point
    rootstock: str | None = None
    form: str | None = None
    planted: int | None = None
    facing: float = 0.0
    container: str | None = None
    spread: float | None = None
    height: float | None = None
    group: str | None = None
    earlier: tuple[Earlier, ...] = ()
    note: str = ""
    locked: bool = False


@frozen(kw_only=True)
class Row:
    """Several plants on a line: canes, vines on a wire, cordons, a hedgerow.

    `count` plants at `spacing` metres from the line's first point; `width`, `height` overrule the catalogue.
    """

    id: str
    plant: PlantKey
    line: Outline
    count: int
    spacing: float
    rootstock: str | None = None
    form: str | None = None
    planted: int | None = None
    width: float | None = None
    height: float | None = None
    supported: bool = True
    earlier: tuple[Earlier, ...] = ()
    note: str = ""
    locked: bool = False


@frozen(kw_only=True)
class Bed:
    """An area with soil of its own; `depth` metres of worked soil, `raised` metres above the ground."""

    id: str
    name: str = "Bed"
    outline: Outline
    curve: Curve | None = None
    soil: Soil | None = None
    depth: float = 0.2
    raised: float = 0.0
    plant: PlantKey | None = None
    pattern: Pattern = "square"
    spacing: float | None = None
    planted: int | None = None
    earlier: tuple[Earlier, ...] = ()
    note: str = ""
    locked: bool = False


@frozen(kw_only=True)
class Container:
    """A pot or tub: `volume` litres, `diameter` metres. A planting that names it stands in it."""

    id: str
    name: str = "Pot"
    place: Point
    volume: float
    diameter: float = 0.4
    soil: Soil | None = None
    note: str = ""
    locked: bool = False
