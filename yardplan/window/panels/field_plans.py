"""Which facts of each kind of thing can be typed in, with the range a field accepts.

The ranges only keep slips of the finger out of the file (a fence of 180 m for 1.8 m); what suits a plant is
said by the checks.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any, Literal, get_args

from attrs import evolve, frozen

from yardplan.language import later, tr
from yardplan.units import System, format_length
from yardplan.yard.ground import (
    Barrier,
    BarrierKind,
    Building,
    Dimension,
    DonorKind,
    Gate,
    Note,
    Paving,
    PavingKind,
    Picture,
    Roof,
    Service,
    ServiceKind,
    StandingTree,
)
from yardplan.yard.planting import Bed, Container, Pattern, Planting, Row
from yardplan.yard.site import Drainage, Soil, Texture
from yardplan.yard.yard import Thing, Yard

Sort = Literal[
    "text", "paragraph", "length", "number", "whole", "volume", "choice", "check", "plant", "rootstock",
    "form", "container", "day", "zone", "time zone", "skyline", "tree", "earlier", "way", "elevation",
]
Choices = tuple[tuple[Any, str], ...]


@frozen(kw_only=True)
class FieldPlan:
    """One field: its `name` on screen, the `path` of the fact (`soil.ph`), how it is entered and its range.

    `factor` shown numbers make one of ours; `empty` what an empty field stands for;
    `needs` returns a fault of a value for a thing, or nothing;
    `shown_for` False leaves the field out for a thing.
    """

    name: str
    path: str
    sort: Sort = "text"
    low: float = 0.0
    high: float = 100.0
    unit: str = ""
    factor: float = 1.0
    digits: int = 1
    optional: bool = False
    empty: str = ""
    choices: Choices = ()
    tip: str = ""
    needs: Callable[[Any, Any, System], str] | None = None
    shown_for: Callable[[Any], bool] | None = None


def _words(kind: Any, *, unknown: str = "") -> Choices:
    """Choices of a Literal, told by their own words; `unknown` offers None as well."""
    plain: Choices = tuple((value, str(value)) for value in get_args(kind))
    return (((None, unknown),) if unknown else ()) + plain


def _not_below_eaves(building: Building, ridge: float, units: System) -> str:
    if ridge < building.eaves:
        return tr(
            "the ridge is not lower than the eaves ({height})", height=format_length(building.eaves, units)
        )
    return ""


def _not_above_ridge(building: Building, eaves: float, units: System) -> str:
    if building.roof != "flat" and eaves > building.ridge:
        return tr(
            "the eaves are not higher than the ridge ({height})", height=format_length(building.ridge, units)
        )
    return ""


def _below_top(tree: StandingTree, base: float, units: System) -> str:
    if base >= tree.height:
        return tr("the crown starts below the top ({height})", height=format_length(tree.height, units))
    return ""


def _has_a_front(plant: Planting) -> bool:
    """True for a plant that spreads along a line: only that can face somewhere."""
    from yardplan.drawing.habits import FORMS
    from yardplan.plants.catalogue import catalogue
    from yardplan.plants.growth import mature_size

    return plant.facing != 0.0 or FORMS[mature_size(catalogue(), plant).habit].turns


def _choice(name: str, path: str, choices: Choices, tip: str = "") -> FieldPlan:
    return FieldPlan(name=name, path=path, sort="choice", choices=choices, tip=tip)


def _check(name: str, path: str, tip: str = "") -> FieldPlan:
    return FieldPlan(name=name, path=path, sort="check", tip=tip)


_NAME = FieldPlan(name=later("Name"), path="name")
_NOTE = FieldPlan(name=later("Note"), path="note", sort="paragraph")
_LOCKED = _check(
    later("Locked in place"), "locked", later("A locked thing is not moved by dragging or by arranging")
)
_BEYOND = _check(later("Next door, outside the lot"), "beyond_lot")
_PLANTED = FieldPlan(
    name=later("Planted in"), path="planted", sort="whole", low=1800, high=2200, digits=0, optional=True,
    empty=later("not said"), tip=later("The year of planting; left empty, the plant counts as planted now"),
)
_PH = FieldPlan(
    name=later("Soil pH"), path="soil.ph", sort="number", low=3.0, high=10.0, digits=1, optional=True,
    empty=later("not known"), tip=later("Measured in water; a soil test tells it"),
)
SOIL: tuple[FieldPlan, ...] = (
    _PH,
    _choice(later("Texture"), "soil.texture", _words(Texture, unknown=later("not known"))),
    _choice(
        later("Free lime"),
        "soil.lime",
        ((None, later("not known")), (True, later("yes, fizzes")), (False, later("no"))),
        later("A pinch of dry soil fizzes under vinegar where there is free lime"),
    ),
    _choice(later("Drainage"), "soil.drainage", _words(Drainage, unknown=later("not known"))),
)
_EARLIER = FieldPlan(
    name=later("Grew here before"), path="earlier", sort="earlier", optional=True, empty=later("not told"),
    tip=later("What stood on this spot, with its last year: tomato 2024; apple. It tells of wilt left in the "
              "ground and of the same fruit in the same hole"),
)
_ROOTSTOCK = FieldPlan(name=later("Rootstock"), path="rootstock", sort="rootstock")
_FORM = FieldPlan(name=later("Form"), path="form", sort="form")


def _height(path: str = "height", *, optional: bool = False, high: float = 60.0, **more: Any) -> FieldPlan:
    return FieldPlan(
        name=later("Height"), path=path, sort="length", low=0.05, high=high, optional=optional, **more
    )


PLANS: Mapping[type, tuple[FieldPlan, ...]] = {
    Planting: (
        FieldPlan(name=later("Variety"), path="plant", sort="plant"),
        _ROOTSTOCK,
        _FORM,
        _PLANTED,
        _EARLIER,
        FieldPlan(
            name=later("Spread"),
            path="spread",
            sort="length",
            low=0.1,
            high=40,
            optional=True,
            tip=later("Your own figure for full size; left empty, the catalogue's is used"),
        ),
        _height(
            optional=True, tip=later("Your own figure for full size; left empty, the catalogue's is used")
        ),
        FieldPlan(
            name=later("Faces"),
            path="facing",
            sort="number",
            low=-360,
            high=360,
            unit="°",
            digits=0,
            tip=later("The line along which a flat-trained plant spreads, counter-clockwise from the right"),
            shown_for=_has_a_front,
        ),
        FieldPlan(name=later("Stands in"), path="container", sort="container"),
        _NOTE,
        _LOCKED,
    ),
    Row: (
        FieldPlan(name=later("Variety"), path="plant", sort="plant"),
        FieldPlan(name=later("Plants"), path="count", sort="whole", low=1, high=2000, digits=0),
        FieldPlan(name=later("Spacing"), path="spacing", sort="length", low=0.05, high=20),
        _ROOTSTOCK,
        _FORM,
        _PLANTED,
        _EARLIER,
        FieldPlan(name=later("Width"), path="width", sort="length", low=0.1, high=10, optional=True),
        _height(optional=True, high=10),
        _check(later("On wires or posts"), "supported"),
        _NOTE,
        _LOCKED,
    ),
    Bed: (
        _NAME,
        FieldPlan(name=later("Variety"), path="plant", sort="plant", optional=True),
        _choice(later("Pattern"), "pattern", _words(Pattern)),
        FieldPlan(name=later("Spacing"), path="spacing", sort="length", low=0.05, high=10, optional=True),
        _PLANTED,
        _EARLIER,
        FieldPlan(name=later("Worked depth"), path="depth", sort="length", low=0.05, high=2),
        FieldPlan(name=later("Raised by"), path="raised", sort="length", low=0, high=2),
        *SOIL,
        _NOTE,
        _LOCKED,
    ),
    Container: (
        _NAME,
        FieldPlan(name=later("Volume"), path="volume", sort="volume", low=0.5, high=2000),
        FieldPlan(name=later("Across"), path="diameter", sort="length", low=0.1, high=3),
        *SOIL,
        _NOTE,
        _LOCKED,
    ),
    Building: (
        _NAME,
        _choice(later("Roof"), "roof", _words(Roof)),
        FieldPlan(name=later("Eaves"), path="eaves", sort="length", low=0.5, high=60, needs=_not_above_ridge),
        FieldPlan(
            name=later("Ridge"),
            path="ridge",
            sort="length",
            low=0.5,
            high=80,
            needs=_not_below_eaves,
            shown_for=lambda b: b.roof != "flat",
        ),
        FieldPlan(
            name=later("Ridge runs"),
            path="ridge_angle",
            sort="number",
            low=-360,
            high=360,
            unit="°",
            digits=0,
            optional=True,
            empty=later("the longer side"),
            shown_for=lambda b: b.roof != "flat",
            tip=later("Counter-clockwise from the right; left empty, along the longer side"),
        ),
        FieldPlan(name=later("Overhang"), path="overhang", sort="length", low=0, high=5),
        _BEYOND,
        _LOCKED,
    ),
    Barrier: (
        _choice(later("Kind"), "kind", _words(BarrierKind)),
        _NAME,
        _height(high=40),
        FieldPlan(name=later("Thickness"), path="thickness", sort="length", low=0.01, high=10),
        FieldPlan(
            name=later("Lets through"),
            path="light_share",
            sort="number",
            low=0,
            high=1,
            unit="%",
            factor=100,
            digits=0,
            tip=later("The share of light that passes: 0 % a wall, about half a slatted fence"),
        ),
        FieldPlan(
            name=later("Evergreen"), path="evergreen", sort="check", shown_for=lambda b: b.kind == "hedge"
        ),
        _BEYOND,
        _LOCKED,
    ),
    Paving: (_choice(later("Kind"), "kind", _words(PavingKind)), _NAME, _BEYOND, _LOCKED),
    Service: (
        _choice(later("Kind"), "kind", _words(ServiceKind)),
        _NAME,
        FieldPlan(name=later("Depth"), path="depth", sort="length", low=0, high=20, optional=True),
        _BEYOND,
        _LOCKED,
    ),
    StandingTree: (
        FieldPlan(name=later("Kind"), path="kind", sort="tree"),
        FieldPlan(name=later("Variety"), path="cultivar", optional=True, empty=later("not known")),
        _NAME,
        _height(),
        FieldPlan(name=later("Spread"), path="spread", sort="length", low=0.1, high=40),
        FieldPlan(
            name=later("Crown starts"), path="crown_base", sort="length", low=0, high=30, needs=_below_top
        ),
        FieldPlan(
            name=later("Lets through"),
            path="light_share",
            sort="number",
            low=0,
            high=1,
            unit="%",
            factor=100,
            digits=0,
            optional=True,
            empty=later("by its kind"),
            tip=later("The share of light that passes its crown"),
        ),
        _check(later("Evergreen"), "evergreen"),
        _choice(
            later("Its pollen"),
            "donor",
            tuple(
                zip(
                    get_args(DonorKind),
                    (
                        later("a named variety"),
                        later("a seedling"),
                        later("a wild thicket"),
                        later("does not count"),
                    ),
                    strict=True,
                )
            ),
        ),
        _BEYOND,
        _LOCKED,
    ),
    Gate: (_NAME, FieldPlan(name=later("Width"), path="width", sort="length", low=0.3, high=12), _LOCKED),
    Note: (FieldPlan(name=later("Words"), path="text", sort="paragraph"), _LOCKED),
    Dimension: (
        FieldPlan(
            name=later("Line aside by"),
            path="off",
            sort="length",
            low=-200,
            high=200,
            tip=later("How far the line stands to the left of what it measures"),
        ),
        _LOCKED,
    ),
    Picture: (
        _NAME,
        FieldPlan(
            name=later("Strength"),
            path="opacity",
            sort="number",
            low=0.05,
            high=1,
            unit="%",
            factor=100,
            digits=0,
            tip=later("Less lets the plan stand out over the picture"),
        ),
        _check(later("On paper too"), "printed"),
        _LOCKED,
    ),
}


def value_at(thing: Thing, path: str) -> Any:
    """The fact at a path; facts of a missing soil are None."""
    value: Any = thing
    for part in path.split("."):
        value = None if value is None else getattr(value, part)
    return value


def with_value(thing: Any, path: str, value: Any) -> Any:
    """The thing with another fact at the path; a missing soil is begun."""
    first, _, rest = path.partition(".")
    if not rest:
        return evolve(thing, **{first: value})
    inner = getattr(thing, first)
    return evolve(thing, **{first: evolve(inner if inner is not None else Soil(), **{rest: value})})


def shared_plans(yard: Yard, ids: frozenset[str]) -> tuple[FieldPlan, ...]:
    """The fields that all the things named have in common."""
    things = [thing for thing in yard.things() if thing.id in ids]
    if not things:
        return ()
    plans = [plan for plan in PLANS[type(things[0])] if plan.sort != "container" or yard.containers]
    for thing in things:
        held = {(plan.path, plan.sort) for plan in PLANS[type(thing)]}
        plans = [p for p in plans if (p.path, p.sort) in held and (p.shown_for is None or p.shown_for(thing))]
    single = len(things) == 1
    return tuple(p for p in plans if single or p.path not in ("name", "text", "cultivar"))
