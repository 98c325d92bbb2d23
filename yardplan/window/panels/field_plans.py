"""Which facts of each kind of thing can be typed in, with the range a field accepts.

The ranges only keep slips of the finger out of the file (a fence of 180 m for 1.8 m); what suits a plant is
said by the checks.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any, Literal, get_args

from attrs import evolve, frozen

from yardplan.language import later
from yardplan.units import System, format_length
from yardplan.yard.ground import (
    Barrier,
    BarrierKind,
    Building,
    DonorKind,
    Gate,
    Note,
    Paving,
    PavingKind,
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
    "form", "container", "day", "zone", "time zone", "skyline", "tree", "earlier", "way",
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
        return f"the ridge is not lower than the eaves ({format_length(building.eaves, units)})"
    return ""


def _not_above_ridge(building: Building, eaves: float, units: System) -> str:
    if building.roof != "flat" and eaves > building.ridge:
        return f"the eaves are not higher than the ridge ({format_length(building.ridge, units)})"
    return ""


def _below_top(tree: StandingTree, base: float, units: System) -> str:
    if base >= tree.height:
        return f"the crown starts below the top ({format_length(tree.height, units)})"
    return ""


def _choice(name: str, path: str, choices: Choices, tip: str = "") -> FieldPlan:
    return FieldPlan(name=name, path=path, sort="choice", choices=choices, tip=tip)


def _check(name: str, path: str, tip: str = "") -> FieldPlan:
    return FieldPlan(name=name, path=path, sort="check", tip=tip)


_NAME = FieldPlan(name="Name", path="name")
_NOTE = FieldPlan(name="Note", path="note", sort="paragraph")
_LOCKED = _check("Locked in place", "locked", "A locked thing is not moved by dragging or by arranging")
_BEYOND = _check("Next door, outside the lot", "beyond_lot")
_PLANTED = FieldPlan(
    name="Planted in", path="planted", sort="whole", low=1800, high=2200, digits=0, optional=True,
    empty="not said", tip="The year of planting; left empty, the plant counts as planted now",
)
_PH = FieldPlan(
    name="Soil pH", path="soil.ph", sort="number", low=3.0, high=10.0, digits=1, optional=True,
    empty="not known", tip="Measured in water; a soil test tells it",
)
SOIL: tuple[FieldPlan, ...] = (
    _PH,
    _choice("Texture", "soil.texture", _words(Texture, unknown="not known")),
    _choice(
        "Free lime", "soil.lime", ((None, "not known"), (True, "yes, fizzes"), (False, "no")),
        "A pinch of dry soil fizzes under vinegar where there is free lime",
    ),
    _choice("Drainage", "soil.drainage", _words(Drainage, unknown="not known")),
)
_EARLIER = FieldPlan(
    name=later("Grew here before"), path="earlier", sort="earlier", optional=True, empty=later("not told"),
    tip=later("What stood on this spot, with its last year: tomato 2024; apple. It tells of wilt left in the "
              "ground and of the same fruit in the same hole"),
)
_ROOTSTOCK = FieldPlan(name="Rootstock", path="rootstock", sort="rootstock")
_FORM = FieldPlan(name="Form", path="form", sort="form")


def _height(path: str = "height", *, optional: bool = False, high: float = 60.0, **more: Any) -> FieldPlan:
    return FieldPlan(name="Height", path=path, sort="length", low=0.05, high=high, optional=optional, **more)


PLANS: Mapping[type, tuple[FieldPlan, ...]] = {
    Planting: (
        FieldPlan(name="Variety", path="plant", sort="plant"),
        _ROOTSTOCK, _FORM, _PLANTED, _EARLIER,
        FieldPlan(name="Spread", path="spread", sort="length", low=0.1, high=40, optional=True,
                  tip="Your own figure for full size; left empty, the catalogue's is used"),
        _height(optional=True, tip="Your own figure for full size; left empty, the catalogue's is used"),
        FieldPlan(name="Faces", path="facing", sort="number", low=-360, high=360, unit="°", digits=0,
                  tip="The line along which a flat-trained plant spreads, counter-clockwise from the right"),
        FieldPlan(name="Stands in", path="container", sort="container"),
        _NOTE, _LOCKED,
    ),
    Row: (
        FieldPlan(name="Variety", path="plant", sort="plant"),
        FieldPlan(name="Plants", path="count", sort="whole", low=1, high=2000, digits=0),
        FieldPlan(name="Spacing", path="spacing", sort="length", low=0.05, high=20),
        _ROOTSTOCK, _FORM, _PLANTED, _EARLIER,
        FieldPlan(name="Width", path="width", sort="length", low=0.1, high=10, optional=True),
        _height(optional=True, high=10), _check("On wires or posts", "supported"), _NOTE, _LOCKED,
    ),
    Bed: (
        _NAME,
        FieldPlan(name="Variety", path="plant", sort="plant", optional=True),
        _choice("Pattern", "pattern", _words(Pattern)),
        FieldPlan(name="Spacing", path="spacing", sort="length", low=0.05, high=10, optional=True),
        _PLANTED, _EARLIER,
        FieldPlan(name="Worked depth", path="depth", sort="length", low=0.05, high=2),
        FieldPlan(name="Raised by", path="raised", sort="length", low=0, high=2),
        *SOIL, _NOTE, _LOCKED,
    ),
    Container: (
        _NAME,
        FieldPlan(name="Volume", path="volume", sort="volume", low=0.5, high=2000),
        FieldPlan(name="Across", path="diameter", sort="length", low=0.1, high=3),
        *SOIL, _NOTE, _LOCKED,
    ),
    Building: (
        _NAME,
        _choice("Roof", "roof", _words(Roof)),
        FieldPlan(name="Eaves", path="eaves", sort="length", low=0.5, high=60, needs=_not_above_ridge),
        FieldPlan(name="Ridge", path="ridge", sort="length", low=0.5, high=80, needs=_not_below_eaves,
                  shown_for=lambda b: b.roof != "flat"),
        FieldPlan(name="Ridge runs", path="ridge_angle", sort="number", low=-360, high=360, unit="°",
                  digits=0, optional=True, empty="the longer side", shown_for=lambda b: b.roof != "flat",
                  tip="Counter-clockwise from the right; left empty, along the longer side"),
        FieldPlan(name="Overhang", path="overhang", sort="length", low=0, high=5),
        _BEYOND, _LOCKED,
    ),
    Barrier: (
        _choice("Kind", "kind", _words(BarrierKind)), _NAME, _height(high=40),
        FieldPlan(name="Thickness", path="thickness", sort="length", low=0.01, high=10),
        FieldPlan(name="Lets through", path="light_share", sort="number", low=0, high=1, unit="%", factor=100,
                  digits=0, tip="The share of light that passes: 0 % a wall, about half a slatted fence"),
        FieldPlan(name="Evergreen", path="evergreen", sort="check", shown_for=lambda b: b.kind == "hedge"),
        _BEYOND, _LOCKED,
    ),
    Paving: (_choice("Kind", "kind", _words(PavingKind)), _NAME, _BEYOND, _LOCKED),
    Service: (
        _choice("Kind", "kind", _words(ServiceKind)), _NAME,
        FieldPlan(name="Depth", path="depth", sort="length", low=0, high=20, optional=True),
        _BEYOND, _LOCKED,
    ),
    StandingTree: (
        FieldPlan(name="Kind", path="kind", sort="tree"),
        FieldPlan(name="Variety", path="cultivar", optional=True, empty="not known"),
        _NAME, _height(), FieldPlan(name="Spread", path="spread", sort="length", low=0.1, high=40),
        FieldPlan(name="Crown starts", path="crown_base", sort="length", low=0, high=30, needs=_below_top),
        FieldPlan(name="Lets through", path="light_share", sort="number", low=0, high=1, unit="%", factor=100,
                  digits=0, optional=True, empty="by its kind",
                  tip="The share of light that passes its crown"),
        _check("Evergreen", "evergreen"),
        _choice("Its pollen", "donor", tuple(zip(
            get_args(DonorKind), ("a named variety", "a seedling", "a wild thicket", "does not count"),
            strict=True,
        ))),
        _BEYOND, _LOCKED,
    ),
    Gate: (_NAME, FieldPlan(name="Width", path="width", sort="length", low=0.3, high=12), _LOCKED),
    Note: (FieldPlan(name="Words", path="text", sort="paragraph"), _LOCKED),
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
