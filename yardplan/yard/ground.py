"""What stands or lies on the ground already. Places are (x, y) in metres, +x right, +y up the drawing."""

from __future__ import annotations

from typing import Literal

from attrs import frozen

Point = tuple[float, float]
Outline = tuple[Point, ...]

Roof = Literal["flat", "gable", "hip", "lean-to"]
BarrierKind = Literal["wall", "fence", "hedge"]
PavingKind = Literal["path", "drive", "terrace", "pool", "pond", "street"]
ServiceKind = Literal[
    "power", "gas", "water", "sewer", "drain", "communications", "irrigation",
    "overhead line", "septic tank", "septic field", "well", "other",
]
DonorKind = Literal["named", "seedling", "wild thicket", "none"]
CurveKind = Literal["smooth", "circle", "rounded"]


@frozen(kw_only=True)
class Curve:
    """What a curved outline was drawn from, kept so that it can be changed (see yard.curves).

    `smooth` runs through `points`; `circle` lies round the first of them at `radius` metres; `rounded` has
    them for corners, each rounded off by `radius`. The outline of the thing follows it; the outline counts.
    """

    kind: CurveKind
    points: Outline
    radius: float = 0.0


@frozen(kw_only=True)
class Building:
    """A building: `footprint` corners in order, `eaves` and `ridge` heights in metres.

    `ridge_angle` direction of the ridge in degrees counter-clockwise from +x; None: along the longer side.
    For a lean-to it is the direction of the high edge, which lies on the left of that direction.
    """

    id: str
    name: str = "Building"
    footprint: Outline
    eaves: float = 2.5
    ridge: float = 2.5
    roof: Roof = "flat"
    ridge_angle: float | None = None
    overhang: float = 0.0
    beyond_lot: bool = False
    locked: bool = False


@frozen(kw_only=True)
class Barrier:
    """A wall, fence or hedge along `line`; `light_share` is the share of light let through, 0 to 1."""

    id: str
    name: str = ""
    kind: BarrierKind = "fence"
    line: Outline
    height: float = 1.8
    thickness: float = 0.1
    light_share: float = 0.0
    evergreen: bool = True
    beyond_lot: bool = False
    locked: bool = False


@frozen(kw_only=True)
class Paving:
    """Ground that carries no plants: path, drive, terrace, pool, street."""

    id: str
    name: str = ""
    kind: PavingKind = "path"
    outline: Outline
    curve: Curve | None = None
    beyond_lot: bool = False
    locked: bool = False


@frozen(kw_only=True)
class Service:
    """A pipe, cable, tank or field. `area` True: `points` is an outline, else a line (or one point)."""

    id: str
    name: str = ""
    kind: ServiceKind
    points: Outline
    area: bool = False
    depth: float | None = None
    beyond_lot: bool = False
    locked: bool = False


@frozen(kw_only=True)
class StandingTree:
    """A tree or bush that is there already, inside or beyond the lot line.

    `kind` a crop of the catalogue (`crabapple`) or a tree by name (`black walnut`, `oak, northern red`).
    `donor` how far its pollen can be counted: a named cultivar, a seedling, a wild thicket, or none.
    """

    id: str
    name: str = ""
    kind: str
    cultivar: str | None = None
    place: Point
    height: float
    spread: float
    crown_base: float = 0.5
    light_share: float | None = None
    evergreen: bool = False
    donor: DonorKind = "none"
    beyond_lot: bool = True
    locked: bool = False


@frozen(kw_only=True)
class Gate:
    """A way into the yard: from here plants must be reachable."""

    id: str
    name: str = "Gate"
    place: Point
    width: float = 1.0
    locked: bool = False


@frozen(kw_only=True)
class Note:
    """Words on the plan."""

    id: str
    place: Point
    text: str
    locked: bool = False


@frozen(kw_only=True)
class Dimension:
    """A length that stays on the plan: between the two `ends`, its line `off` metres to their left."""

    id: str
    ends: Outline
    off: float = 0.0
    locked: bool = False


@frozen(kw_only=True)
class Picture:
    """A picture under the plan: a scan, a survey, an aerial photograph.

    `base` places of its lower left and lower right corners, which set scale and turn; `pixels` its width and
    height. `data` the picture itself, JPEG or PNG as base64. `opacity` from 0 to 1; `printed`: on paper too.
    """

    id: str
    name: str = "Picture"
    base: Outline
    pixels: tuple[int, int]
    data: str
    opacity: float = 0.6
    printed: bool = False
    locked: bool = False
