"""Reads crops with their forms and rootstocks, and the kinds of yard trees."""

from __future__ import annotations

from collections.abc import Mapping
from typing import cast, get_args

from attrs import frozen

from yardplan.plants.crop import Crop, CropForm, Habit, Rootstock, TreeKind, Vigour
from yardplan.plants.tables import Row, Table
from yardplan.shipped import resource
from yardplan.units import FOOT, INCH, POUND

HABITS: tuple[str, ...] = get_args(Habit)
_UNKNOWN = (0.0, 0.0)


@frozen(kw_only=True)
class Training:
    """How a plant is trained: its habit and where its crown starts. Metres, (low, high)."""

    name: str
    habit: Habit
    touching: bool
    crown_base: tuple[float, float]
    depth: float | None
    aliases: tuple[str, ...]


def _middle(span: tuple[float, float] | None) -> float | None:
    return None if span is None else (span[0] + span[1]) / 2


def _habit(row: Row) -> Habit:
    return cast(Habit, row.one_of("habit", HABITS))


def _yield(row: Row) -> tuple[float, float] | None:
    return row.pair("yield_lb", POUND)


def read_training() -> dict[str, Training]:
    """The ways of training by name. Raises TableError listing what is wrong."""
    with Table(resource("plants", "training.csv"), ("training", "habit", "touching", "sources")) as table:
        found = [
            Training(
                name=row.needed("training"), habit=_habit(row), touching=row.yes("touching"),
                crown_base=row.pair("crown_base_in", INCH) or _UNKNOWN,
                depth=_middle(row.pair("depth_ft", FOOT)), aliases=row.words("aliases"),
            )
            for row in table
        ]
    return {training.name: training for training in found}


def read_forms(training: Mapping[str, Training]) -> dict[str, tuple[CropForm, ...]]:
    """The forms of the size table by its crop names. Raises TableError listing what is wrong."""
    forms: dict[str, list[CropForm]] = {}
    with Table(resource("plants", "crop-size.csv"), ("crop", "form", "training", "sources")) as table:
        for row in table:
            trained = training.get(row.one_of("training", training.keys()))
            if trained is not None:
                forms.setdefault(row.needed("crop"), []).append(_form(row, trained))
    return {crop: tuple(found) for crop, found in forms.items()}


def _form(row: Row, trained: Training) -> CropForm:
    height, spread = row.pair("height_ft", FOOT), row.pair("spread_ft", FOOT)
    if height is None or spread is None:
        row.fault("height_ft_low", "a form needs its height and spread")
    return CropForm(
        crop=row.text("crop"), form=row.needed("form"), habit=trained.habit, touching=trained.touching,
        training=trained.name, crown_base=trained.crown_base, depth=trained.depth,
        height=height or _UNKNOWN, spread=spread or _UNKNOWN,
        in_row=row.span("in_row_ft", FOOT), between_rows=_first_span(row, "between_rows_ft"),
        years_to_first_crop=row.span("years_to_first_crop"),
        years_to_full_crop=row.span("years_to_full_crop"), life=row.span("productive_life_years"),
        yield_kg=_yield(row), yield_per=row.text("yield_per"), vigour=row.text("vigour"), cited=row.cites(),
    )


def _first_span(row: Row, column: str) -> tuple[float, float] | None:
    """A row distance that may carry words after it, as `1 within bed; 2 ft path`; words alone: None."""
    first = row.text(column).partition(" ")[0]
    return row.span(column, FOOT) if first == row.text(column) else None


def read_rootstocks() -> dict[str, tuple[Rootstock, ...]]:
    """The rootstocks by the crop names of their table. Raises TableError listing what is wrong."""
    stocks: dict[str, list[Rootstock]] = {}
    with Table(resource("plants", "rootstocks.csv"), ("crop", "rootstock", "vigour", "sources")) as table:
        for row in table:
            stocks.setdefault(row.needed("crop"), []).append(_rootstock(row))
    return {crop: tuple(found) for crop, found in stocks.items()}


def _rootstock(row: Row) -> Rootstock:
    return Rootstock(
        crop=row.text("crop"), name=row.needed("rootstock"), size_class=row.needed("size_class"),
        vigour=cast(Vigour, row.one_of("vigour", get_args(Vigour))), percent=row.span("percent_of_standard"),
        height=row.pair("height_ft", FOOT), spread=row.pair("spread_ft", FOOT),
        in_row=row.span("in_row_ft", FOOT), between_rows=row.span("between_rows_ft", FOOT),
        support=row.text("needs_support"), years_to_first_crop=row.span("years_to_first_crop"),
        years_to_full_crop=row.span("years_to_full_crop"), zone_min=row.text("zone_min") or None,
        note=row.text("note"), cited=row.cites(),
    )


def read_crops(forms: Mapping[str, tuple[CropForm, ...]]) -> dict[str, Crop]:
    """The crops by id, with forms and rootstocks. Raises TableError listing what is wrong."""
    stocks = read_rootstocks()
    crops: dict[str, Crop] = {}
    letters: set[str] = set()
    with Table(resource("plants", "crops.csv"), ("crop", "letter", "usual_form", "sources")) as table:
        for row in table:
            crop = _crop(row, forms, stocks)
            if crop.id in crops or crop.letter in letters:
                row.fault("letter", f"{crop.id} or its letter {crop.letter} is taken")
            crops[crop.id] = crop
            letters.add(crop.letter)
    return crops


def _usual_for(row: Row) -> tuple[tuple[str, str], ...]:
    pairs = tuple(tuple(word.split("=", 1)) for word in row.words("usual_form_for"))
    if any(len(pair) != 2 for pair in pairs):
        row.fault("usual_form_for", "write WORD=FORM, several between semicolons")
    return tuple((pair[0], pair[1]) for pair in pairs if len(pair) == 2)


def _crop(
    row: Row, forms: Mapping[str, tuple[CropForm, ...]], stocks: Mapping[str, tuple[Rootstock, ...]]
) -> Crop:
    size_crops = row.words("size_crops")
    for name in size_crops:
        if name not in forms:
            row.fault("size_crops", f"the size table has no {name}")
    low, high = row.number_or_none("ph_low"), row.number_or_none("ph_high")
    return Crop(
        id=row.needed("crop"), name=row.needed("name"), genus=row.text("genus"),
        botanical=row.text("botanical"), family=row.needed("family"), letter=row.needed("letter"),
        habit=_habit(row), usual_form=row.needed("usual_form"), usual_form_for=_usual_for(row),
        sun_needed=row.real("sun_needed_h"), sun_good=row.real("sun_good_h"),
        ph=None if low is None or high is None else (low, high), evergreen=row.yes("evergreen"),
        light_leaf=row.real("light_leaf"), light_bare=row.real("light_bare"),
        years_to_full=row.number_or_none("years_to_95"), growth_curve=row.text("growth_curve"),
        aliases=row.words("aliases"),
        forms=tuple(form for name in size_crops for form in forms.get(name, ())),
        rootstocks=tuple(s for name in row.words("rootstock_crop") for s in stocks.get(name, ())),
        cited=row.cites(),
    )


def read_trees(forms: Mapping[str, tuple[CropForm, ...]]) -> dict[str, TreeKind]:
    """The yard trees by name. Raises TableError listing what is wrong."""
    trees: dict[str, TreeKind] = {}
    with Table(resource("plants", "trees.csv"), ("tree", "size_crop", "light_leaf", "sources")) as table:
        for row in table:
            of_size = forms.get(row.one_of("size_crop", forms.keys()), ())
            if of_size:
                # The last form of a crop is its largest or wildest for fruit trees kept unpruned.
                largest = max(of_size, key=lambda form: form.height[1])
                trees[row.needed("tree")] = _tree(row, largest)
    return trees


def _tree(row: Row, form: CropForm) -> TreeKind:
    return TreeKind(
        name=row.text("tree"), botanical=row.text("botanical"), height=form.height, spread=form.spread,
        crown_base=sum(form.crown_base) / 2, habit=form.habit, conifer=row.yes("conifer"),
        evergreen=row.yes("evergreen"), light_leaf=row.real("light_leaf"), light_bare=row.real("light_bare"),
        growth_curve=row.text("growth_curve"), crop=row.text("crop"), aliases=row.words("aliases"),
        cited=(*row.cites(), *form.cited),
    )
