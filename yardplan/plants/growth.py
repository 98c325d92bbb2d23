"""Size of plants: at maturity from the tables, at n years from a growth curve.

Curve (standard sigmoid of tree growth, Chapman-Richards; its figures are in growth-classes.csv):
    share(t) = (1 - exp(-k t)) ^ p,   k = k_t95 / T95,   T95 = years to 95 percent of full size
For tree kinds that were measured (growth-curves.csv, fitted to city trees):
    size(t) = s0 + (a - s0) (1 - exp(-k t)) ^ p
"""

from __future__ import annotations

import math

from attrs import evolve, frozen

from yardplan.plants.catalogue import Catalogue
from yardplan.plants.crop import Crop, CropForm, Habit, Rootstock, Size, TreeKind
from yardplan.plants.cultivar import MEMORY, Cultivar
from yardplan.plants.forms import form_for, training_for
from yardplan.plants.growth_tables import (
    GrowthClass,
    growth_classes,
    limits,
    measured_kinds,
    planting_sizes,
    vigour_adjustments,
)
from yardplan.yard.planting import Bed, Planting
from yardplan.yard.planting import Row as PlantRow

Placed = Planting | PlantRow | Bed

#: Habits whose form, not the cultivar, sets how high and deep they stand: wires and walls do.
_HELD_BY_WIRES = ("vine", "flat-trained")
#: Habits whose width is the form's own, whatever the rootstock.
_OWN_WIDTH = (*_HELD_BY_WIRES, "column")


def spread_factor(cultivar: Cultivar | None) -> float:
    """How much wider or narrower than its stock's usual tree a cultivar grows: triploid, spur type."""
    if cultivar is None:
        return 1.0
    table = vigour_adjustments()
    traits = []
    if cultivar.ploidy == 3:
        traits.append(table["triploid"])
    if "spur" in f"{cultivar.type} {cultivar.name}".casefold().split():
        traits.append(table["spur type"])
    factor = math.prod(trait.factor for trait in traits)
    for trait in traits:
        factor = min(max(factor, trait.lowest), trait.highest)
    return factor


def _middle(span: tuple[float, float]) -> float:
    return (span[0] + span[1]) / 2


def _unknown() -> Size:
    return Size(
        spread=limits()["unknown_spread"], height=limits()["unknown_height"], crown_base=0.0, habit="bush",
        estimate=True, sources=(MEMORY,),
    )


def _from_form(form: CropForm) -> Size:
    cited = (*form.sources_of("spread_ft_low"), *form.sources_of("height_ft_low"))
    return Size(
        spread=_middle(form.spread), height=_middle(form.height), crown_base=_middle(form.crown_base),
        habit=form.habit, depth=form.depth, sources=tuple(dict.fromkeys(cited)),
    )


def _on_stock(size: Size, stock: Rootstock) -> Size:
    """The size on a rootstock; one that the table gives no spread for keeps the form's proportions."""
    if stock.height is None:
        return size
    height = _middle(stock.height)
    spread = size.spread * height / size.height if stock.spread is None else _middle(stock.spread)
    cited = (*stock.sources_of("spread_ft_low"), *stock.sources_of("height_ft_low"))
    return evolve(
        size, height=height, spread=spread, estimate=stock.spread is None,
        sources=tuple(dict.fromkeys(cited)),
    )


def _of_cultivar(size: Size, cultivar: Cultivar) -> Size:
    """Cultivar's own published size in place of the form's; wires and walls keep theirs."""
    height, spread = cultivar.height, cultivar.spread
    if size.habit in _HELD_BY_WIRES:
        height = None
        spread = spread if size.habit == "vine" else None
    cited = [
        source for name, own in (("height", height), ("spread", spread)) if own
        for source in cultivar.sources_of(name)
    ]
    return evolve(
        size, height=_middle(height) if height else size.height,
        spread=_middle(spread) if spread else size.spread,
        sources=tuple(dict.fromkeys(cited)) or size.sources,
    )


def _settled(size: Size) -> Size:
    """The size with its crown base no higher than leaves some crown."""
    on_wires = size.habit in _HELD_BY_WIRES
    share = limits()["highest_crown_base_on_wires" if on_wires else "highest_crown_base"]
    return evolve(size, crown_base=min(size.crown_base, size.height * share))


def _overruled(size: Size, spread: float | None, height: float | None) -> Size:
    """The size with what the user set in place of the catalogue's."""
    if spread is None and height is None:
        return size
    return evolve(
        size, spread=size.spread if spread is None else spread,
        height=size.height if height is None else height, sources=("the user",), estimate=False,
    )


@frozen
class Grown:
    """What a placed plant is by the tables: its crop, cultivar, form, stock and size when mature."""

    crop: Crop | None
    cultivar: Cultivar | None
    form: CropForm | None
    stock: Rootstock | None
    mature: Size

    @property
    def touching(self) -> bool:
        """True where the form may touch its neighbours."""
        return self.form is not None and self.form.touching


def grown(catalogue: Catalogue, placed: Placed) -> Grown:
    """What the tables say of a placed plant; an unknown plant gets a default size marked as estimate."""
    key = placed.plant
    crop = catalogue.crop(key.crop) if key is not None else None
    cultivar = catalogue.cultivar(key) if key is not None else None
    named_form = getattr(placed, "form", None)
    named_stock = getattr(placed, "rootstock", None)
    spread = placed.spread if isinstance(placed, Planting) else None
    height = getattr(placed, "height", None)
    if crop is None:
        return Grown(None, cultivar, None, None, _settled(_overruled(_unknown(), spread, height)))
    stock = crop.rootstock(named_stock) if named_stock else None
    form = form_for(crop, cultivar, named_form, stock)
    size = _sized(crop, cultivar, form, stock)
    trained = training_for(catalogue.training, form, named_form)
    if trained is not None:
        size = evolve(size, habit=trained.habit, crown_base=_middle(trained.crown_base), depth=trained.depth)
        form = form and evolve(form, touching=trained.touching)
    return Grown(crop, cultivar, form, stock, _settled(_overruled(size, spread, height)))


def _sized(
    crop: Crop, cultivar: Cultivar | None, form: CropForm | None, stock: Rootstock | None
) -> Size:
    size = _from_form(form) if form is not None else evolve(_unknown(), habit=crop.habit)
    # Plants in a row that may touch are held to the form's size by pruning, whatever the stock.
    if stock is not None and size.habit not in _OWN_WIDTH and not (form and form.touching):
        size = _on_stock(size, stock)
    if cultivar is not None and (cultivar.height or cultivar.spread):
        return _of_cultivar(size, cultivar)
    factor = 1.0 if size.habit == "flat-trained" else spread_factor(cultivar)
    return evolve(size, spread=size.spread * factor)


def mature_size(catalogue: Catalogue, placed: Placed) -> Size:
    """Full size of one plant, metres: the user's figures, else rootstock, form and cultivar of the tables."""
    return grown(catalogue, placed).mature


def growth_of(known: Grown) -> GrowthClass:
    """The growth class of a plant: its crop's years for small fruit, else its stock's or form's vigour."""
    classes = growth_classes()
    if known.crop is not None and known.crop.years_to_full is not None:
        return classes["standard"].at_years(known.crop.years_to_full)
    if known.form is not None and known.form.habit == "flat-trained" and known.form.vigour:
        return classes[known.form.vigour]
    if known.stock is not None:
        return classes[known.stock.vigour]
    if known.form is not None and known.form.vigour in classes:
        return classes[known.form.vigour]
    return classes["semi-standard"]


def at_planting(habit: Habit) -> tuple[float, float]:
    """Height and spread at planting, metres."""
    return planting_sizes()[habit]


def size_after(known: Grown, years: float) -> Size:
    """Size `years` after planting, by the growth curve; marked as estimate. Never above the full size.

    Trees left to grow unpruned follow the measured curve of their kind where there is one.
    """
    measured = measured_kinds().get(known.crop.growth_curve) if known.crop is not None else None
    if measured is not None and known.mature.habit == "shade tree":
        return _grown_to(known.mature, measured.height.size(years), measured.spread.size(years),
                         measured.sources)
    return _by_class(known.mature, growth_of(known), years)


def _by_class(full: Size, curves: GrowthClass, years: float) -> Size:
    return _grown_to(full, curves.height.share(years) * full.height, curves.spread.share(years) * full.spread,
                     curves.sources)


def _grown_to(full: Size, height: float, spread: float, sources: tuple[str, ...]) -> Size:
    """A size on the way to full: not below the size at planting, not above the full one."""
    height0, spread0 = at_planting(full.habit)
    height, spread = min(max(height0, height), full.height), min(max(spread0, spread), full.spread)
    depth = None if full.depth is None else min(full.depth, spread)
    cited = tuple(dict.fromkeys((*sources, *full.sources)))
    return _settled(evolve(full, height=height, spread=spread, depth=depth, estimate=True, sources=cited))


def size_at(catalogue: Catalogue, placed: Placed, years: int | None) -> Size:
    """Size `years` after planting; None: the full size."""
    known = grown(catalogue, placed)
    return known.mature if years is None else size_after(known, years)


def tree_size(kind: TreeKind, years: float | None = None) -> Size:
    """Usual size of a yard tree: full (None), or by the measured curve of its kind at `years`."""
    full = Size(
        spread=_middle(kind.spread), height=_middle(kind.height), crown_base=kind.crown_base,
        habit=kind.habit, sources=tuple(dict.fromkeys(cite.source for cite in kind.cited)),
    )
    if years is None:
        return _settled(full)
    measured = measured_kinds().get(kind.growth_curve)
    if measured is None:
        return _by_class(full, growth_classes()["shade tree"], years)
    return _grown_to(full, measured.height.size(years), measured.spread.size(years), measured.sources)
