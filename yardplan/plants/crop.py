"""One kind of fruit: its habit, needs and the forms in which it is grown."""

from __future__ import annotations

from typing import Literal

from attrs import frozen

from yardplan.plants.cultivar import Cited, sources_of

#: How a plant is drawn and what solid stands for its crown in shade work.
Habit = Literal[
    "central leader", "open centre", "bush", "cane", "vine", "flat-trained", "mat", "conifer", "shade tree",
    "column", "clump",
]
Vigour = Literal["very dwarf", "dwarf", "semi-dwarf", "semi-standard", "standard"]


@frozen(kw_only=True)
class CropForm:
    """A form in which a crop is grown, with its mature size. Lengths in metres, (low, high).

    `crop` the name in the size table (a crop may have forms of several); `in_row`, `between_rows` usual
    distances; `yield_kg` in full crop of what `yield_per` says (a plant, a vine, 10 ft of row).
    `training` names the row of training.csv that gave habit, `touching`, `crown_base` (low, high) and
    `depth`, the thickness of flat or wire-trained plants. `vigour` a class of growth-classes.csv, or "".
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
    training: str = ""
    vigour: str = ""
    crown_base: tuple[float, float] = (0.0, 0.0)
    depth: float | None = None
    yield_per: str = ""
    cited: tuple[Cited, ...] = ()

    def sources_of(self, column: str) -> tuple[str, ...]:
        """Source ids that vouch for a column of the size table."""
        return sources_of(self.cited, column)


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

    def sources_of(self, column: str) -> tuple[str, ...]:
        """Source ids that vouch for a column of the rootstock table."""
        return sources_of(self.cited, column)


@frozen(kw_only=True)
class TreeKind:
    """A yard tree that shades or competes: size ranges in metres, shares of light let through (0 to 1).

    `growth_curve` the species in growth-curves.csv, or ""; `crop` the crop id where it bears fruit, or "".
    """

    name: str
    botanical: str
    height: tuple[float, float]
    spread: tuple[float, float]
    crown_base: float
    habit: Habit
    conifer: bool = False
    evergreen: bool = False
    light_leaf: float
    light_bare: float
    growth_curve: str = ""
    crop: str = ""
    aliases: tuple[str, ...] = ()
    cited: tuple[Cited, ...] = ()


@frozen(kw_only=True)
class Crop:
    """A kind of fruit.

    `id` as in plant keys ("european pear"); `family` of crops that can cross; `letter` starts plan keys.
    `sun_needed`, `sun_good` hours of direct sun a day; `ph` (low, high) suited.
    `usual_form` the form taken when none is named, `usual_form_for` pairs (word, form) that go before it
    where the word is in the cultivar's species or type. `light_leaf`, `light_bare` shares of light let
    through. `growth_curve` the species in growth-curves.csv for trees left unpruned, or "".
    `years_to_full` years to 95 percent of full size where the crop, not a stock, sets them.
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
    botanical: str = ""
    usual_form_for: tuple[tuple[str, str], ...] = ()
    light_leaf: float = 0.2
    light_bare: float = 0.65
    years_to_full: float | None = None
    growth_curve: str = ""
    aliases: tuple[str, ...] = ()
    forms: tuple[CropForm, ...] = ()
    rootstocks: tuple[Rootstock, ...] = ()
    cited: tuple[Cited, ...] = ()

    def rootstock(self, name: str) -> Rootstock | None:
        """The rootstock of that name, whatever its case; None when the table does not hold it."""
        wanted = name.strip().casefold()
        return next((stock for stock in self.rootstocks if stock.name.casefold() == wanted), None)

    def sources_of(self, column: str) -> tuple[str, ...]:
        """Source ids that vouch for a column of the crop table."""
        return sources_of(self.cited, column)


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
