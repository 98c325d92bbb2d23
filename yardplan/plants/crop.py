"""One kind of fruit: its habit, needs and the forms in which it is grown."""

from __future__ import annotations

from typing import Literal

from attrs import frozen

from yardplan.plants.cultivar import Cited

#: How a plant is drawn and what solid stands for its crown in shade work.
Habit = Literal[
    "central leader", "open centre", "bush", "cane", "vine", "flat-trained", "mat", "conifer", "shade tree",
    "column", "clump",
]
Vigour = Literal["very dwarf", "dwarf", "semi-dwarf", "semi-standard", "standard"]


@frozen(kw_only=True)
class CropForm:
    """A form in which a crop is grown, with its mature size. Lengths in metres, (low, high).

    `in_row`, `between_rows` usual distances; `yield_kg` of one plant in full crop.
    `touching` True: a declared form whose plants may touch (hedgerow, cordon, espalier, spindle, matted row).
    """

    crop: str
    form: str
    habit: Habit
    height: tuple[float, float]
    spread: tuple[float, float]
    in_row: tuple[float, float] | None = None
    between_rows: tuple[float, float] | None = None
    years_to_first_crop: tuple[float, float] | None = None
    years_to_full_crop: tuple[float, float] | None = None
    yield_kg: tuple[float, float] | None = None
    life: tuple[float, float] | None = None
    touching: bool = False
    cited: tuple[Cited, ...] = ()


@frozen(kw_only=True)
class Rootstock:
    """A rootstock and the size it gives. Lengths in metres, `percent` of a seedling tree, (low, high)."""

    crop: str
    name: str
    size_class: str
    vigour: Vigour
    percent: tuple[float, float] | None = None
    height: tuple[float, float] | None = None
    spread: tuple[float, float] | None = None
    in_row: tuple[float, float] | None = None
    between_rows: tuple[float, float] | None = None
    support: str = ""
    years_to_first_crop: tuple[float, float] | None = None
    years_to_full_crop: tuple[float, float] | None = None
    zone_min: str | None = None
    note: str = ""
    cited: tuple[Cited, ...] = ()


@frozen(kw_only=True)
class Crop:
    """A kind of fruit.

    `id` as in plant keys ("european pear"); `family` of crops that can cross; `letter` starts plan keys.
    `sun_needed`, `sun_good` hours of direct sun a day; `ph` (low, high) suited.
    """

    id: str
    name: str
    genus: str
    family: str
    letter: str
    habit: Habit
    usual_form: str
    sun_needed: float
    sun_good: float
    ph: tuple[float, float] | None = None
    evergreen: bool = False
    forms: tuple[CropForm, ...] = ()
    rootstocks: tuple[Rootstock, ...] = ()
    cited: tuple[Cited, ...] = ()


@frozen(kw_only=True)
class Size:
    """Size of one plant, metres. `estimate` True where a growth curve, not a table, gave it."""

    spread: float
    height: float
    crown_base: float
    habit: Habit
    depth: float | None = None
    estimate: bool = False
    sources: tuple[str, ...] = ()
