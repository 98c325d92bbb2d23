"""What the fields are about: the things selected, the lot line or the site; its facts read and edited."""

from __future__ import annotations

import math
from itertools import pairwise
from typing import Any

from attrs import evolve

from yardplan.checks.rules import Rules
from yardplan.checks.wording import names_of
from yardplan.language import later, mid_sentence, tr
from yardplan.plants.catalogue import Catalogue
from yardplan.units import System
from yardplan.window.panels.edge_plans import EDGE, edge_plans, edge_value, with_edge
from yardplan.window.panels.entry import MIXED, EntryError
from yardplan.window.panels.field_plans import FieldPlan, shared_plans, value_at, with_value
from yardplan.window.panels.kind_counts import count_of
from yardplan.window.panels.lot_limits import place_fault
from yardplan.window.panels.names import kind_key
from yardplan.window.panels.shape_plans import SHAPE, places_itself, shape_plans, shape_value, with_shape
from yardplan.window.panels.site_plans import YARD_PLANS
from yardplan.window.panels.way_plan import WAY, way_of, with_way
from yardplan.yard import edits
from yardplan.yard.edges import outline_of
from yardplan.yard.ground import Barrier, Building, Dimension, Outline, Paving
from yardplan.yard.handles import handles_of
from yardplan.yard.planting import Bed, Planting, Row
from yardplan.yard.site import Origin
from yardplan.yard.yard import Thing, Yard

#: How far a place may lie from the drawing's origin, metres.
_FAR = 2000.0
#: Paths of the first and last day of the season: `season:0`, `season:1`.
_SEASON = "season:"
#: How many fields of the yard come before the width of its ways: name, place, units, north.
_AFTER = 4
#: The id under which the lot line is selected.
LOT = "lot"


def title_of(yard: Yard, ids: frozenset[str]) -> str:
    """What the fields are about, in words."""
    if not ids:
        return tr("The yard")
    if ids == {LOT}:
        return tr("Lot line")
    if len(ids) == 1:
        return names_of(yard).get(next(iter(ids)), "")
    things = [thing for thing in yard.things() if thing.id in ids]
    kinds = {kind_key(thing) for thing in things}
    return count_of(kinds.pop() if len(kinds) == 1 else "", len(ids))


def plans_for(yard: Yard, ids: frozenset[str]) -> tuple[FieldPlan, ...]:
    """The fields to offer, places first."""
    if not ids:
        return (*YARD_PLANS[:_AFTER], WAY, *YARD_PLANS[_AFTER:])
    plans = shared_plans(yard, ids)
    if len(ids) != 1:
        return plans
    key = next(iter(ids))
    places = () if places_itself(yard, key) else _place_plans(yard, ids)
    return (*plans, *shape_plans(yard, key), *places)


def _place_plans(yard: Yard, ids: frozenset[str]) -> tuple[FieldPlan, ...]:
    thing = yard.find(next(iter(ids)))
    if thing is None:
        return ()
    many = len(edits.points_of(thing)) > 1
    line = (later("Starts at, x"), later("Starts at, y"))
    outline = (later("First corner, x"), later("First corner, y"))
    single = (later("From the left, x"), later("From below, y"))
    names = single if not many else line if isinstance(thing, (Row, Barrier)) else outline
    plans = [
        FieldPlan(
            name=name, path=path, sort="length", low=-_FAR, high=_FAR, tip=later("Measured on the drawing")
        )
        for name, path in zip(names, ("@x", "@y"), strict=True)
    ]
    if len(edits.points_of(thing)) == 2:
        plans.append(FieldPlan(name=later("Length"), path="@length", sort="length", low=0.05, high=_FAR))
    return tuple(plans)


def corner_plans(yard: Yard, ids: frozenset[str]) -> tuple[FieldPlan, ...]:
    """Fields for the lengths of all edges and the places of all corners of one thing or of the lot."""
    points = corners(yard, ids)
    if len(points) < 2 or places_itself(yard, next(iter(ids))):
        return ()
    edges = edge_plans(yard, next(iter(ids)))
    return edges + tuple(
        FieldPlan(
            name=tr("Corner {number}, {axis}", number=n + 1, axis=axis), path=f"@{axis}.{n}",
            sort="length", low=-_FAR, high=_FAR,
        )
        for n in range(len(points))
        for axis in "xy"
    )


def corners(yard: Yard, ids: frozenset[str]) -> Outline:
    """The corners of the one thing selected, or of the lot."""
    if len(ids) != 1:
        return ()
    key = next(iter(ids))
    thing = yard.find(key)
    if isinstance(thing, Dimension):
        return thing.ends  # its third grip, for how far aside the line stands, is no corner
    return handles_of(yard, key) or (edits.points_of(thing) if thing is not None else ())


def drawn(yard: Yard, ids: frozenset[str]) -> Outline:
    """The outline of the one thing selected or the lot as it is drawn, curves and all."""
    return outline_of(yard, next(iter(ids))) if len(ids) == 1 else ()


def closed(yard: Yard, ids: frozenset[str]) -> bool:
    """True when the points of the one thing selected go round an area."""
    thing = yard.find(next(iter(ids))) if len(ids) == 1 else None
    return ids == {LOT} or isinstance(thing, (Building, Paving, Bed)) or bool(getattr(thing, "area", False))


def area_of(points: Outline) -> float:
    """Area within corners, square metres (shoelace formula)."""
    pairs = zip(points, (*points[1:], points[0]), strict=True)
    return abs(sum(x0 * y1 - x1 * y0 for (x0, y0), (x1, y1) in pairs)) / 2


def length_of(points: Outline) -> float:
    """Length along a line, metres."""
    return sum(math.dist(one, other) for one, other in pairwise(points))


def value_of(yard: Yard, ids: frozenset[str], plan: FieldPlan) -> Any:
    """The fact a field shows; MIXED where the selected things differ."""
    if plan.path.startswith(SHAPE):
        return shape_value(yard, next(iter(ids)), plan.path)
    if plan.path.startswith(EDGE):
        return edge_value(yard, next(iter(ids)), plan.path)
    if plan.path.startswith("@"):
        return _place_value(corners(yard, ids), plan.path)
    if plan.path.startswith(_SEASON):
        return yard.site.growing_season[int(plan.path.removeprefix(_SEASON))]
    if plan.path == WAY.path:
        return way_of(Rules(yard.rules))
    if not ids:
        return value_at(yard.site, plan.path)  # type: ignore[arg-type]
    values = [value_at(thing, plan.path) for thing in yard.things() if thing.id in ids]
    return values[0] if all(value == values[0] for value in values) else MIXED


def _place_value(points: Outline, path: str) -> float | None:
    if path == "@length":
        return math.dist(points[0], points[1]) if len(points) > 1 else None
    axis, _, number = path[1:].partition(".")
    index = int(number or 0)
    return points[index]["xy".index(axis)] if index < len(points) else None


def edited(
    yard: Yard, ids: frozenset[str], plan: FieldPlan, value: Any, catalogue: Catalogue, units: System
) -> Yard:
    """The yard with another fact. Raises EntryError when the value does not fit the thing."""
    if plan.path.startswith(SHAPE):
        return with_shape(yard, next(iter(ids)), plan.path, value)
    if plan.path.startswith(EDGE):
        return with_edge(yard, next(iter(ids)), plan.path, value)
    if plan.path.startswith("@"):
        outside = place_fault(yard, next(iter(ids)), plan.path, value, units)
        if outside:
            raise EntryError(outside)
        return _placed(yard, ids, plan.path, value)
    if plan.path == WAY.path:
        return evolve(yard, rules=with_way(yard.rules, value))
    if not ids:
        return evolve(yard, site=_of_site(yard.site, plan, value))
    for thing in [thing for thing in yard.things() if thing.id in ids]:
        fault = plan.needs(thing, value, units) if plan.needs else ""
        if fault:
            raise EntryError(fault)
        yard = edits.replace(yard, _changed(thing, plan, value, catalogue))
    return yard


def _of_site(site: Any, plan: FieldPlan, value: Any) -> Any:
    """The site with a fact that the user typed; its origin says so in place of what was looked up."""
    if plan.path.startswith(_SEASON):
        days = list(site.growing_season)
        days[int(plan.path.removeprefix(_SEASON))] = value
        return evolve(site, season=tuple(days))
    changed = with_value(site, plan.path, value)
    kept = tuple(origin for origin in site.origins if origin.fact != plan.path)
    typed = (Origin(fact=plan.path, text=later("typed in")),) if value is not None else ()
    return evolve(changed, origins=kept + typed)


def _renamed(before: Any, after: Any) -> Any:
    """A thing called by its kind alone, as it was drawn, is called by the new kind; a given name stays."""
    if before.name.casefold() != tr(before.kind).casefold():
        return after
    kind = tr(after.kind)
    return evolve(after, name=kind[:1].upper() + kind[1:])


def _changed(thing: Thing, plan: FieldPlan, value: Any, catalogue: Catalogue) -> Thing:
    """One thing with another fact; a rootstock or form that the new kind does not have is dropped."""
    changed: Any = with_value(thing, plan.path, value)
    if plan.path == "kind" and isinstance(changed, Barrier | Paving):
        changed = _renamed(thing, changed)
    if plan.path == "plant" and isinstance(changed, (Planting, Row)):
        crop = catalogue.crop(changed.plant.crop)
        stocks = {stock.name for stock in crop.rootstocks} if crop else set()
        forms = {form.form for form in crop.forms} if crop else set()
        changed = evolve(
            changed,
            rootstock=changed.rootstock if changed.rootstock in stocks else None,
            form=changed.form if changed.form in forms else None,
        )
    if plan.path == "roof" and changed.roof != "flat":
        changed = evolve(changed, ridge=max(changed.ridge, changed.eaves))
    return changed  # type: ignore[no-any-return]


def _placed(yard: Yard, ids: frozenset[str], path: str, value: float) -> Yard:
    """The yard with a thing moved (`@x`), one of its corners moved (`@x.2`), or its line made longer."""
    points, thing_id = corners(yard, ids), next(iter(ids))
    if path == "@length":
        (x0, y0), end = points[0], points[1]
        grow = value / max(math.dist(points[0], end), 1e-9)
        return edits.move_corner(yard, thing_id, 1, (x0 + (end[0] - x0) * grow, y0 + (end[1] - y0) * grow))
    axis, _, number = path[1:].partition(".")
    x, y = points[int(number or 0)]
    to = (value, y) if axis == "x" else (x, value)
    if number:
        return edits.move_corner(yard, thing_id, int(number), to)
    return edits.move(yard, ids, (to[0] - x, to[1] - y))


def step_text(yard: Yard, ids: frozenset[str], plan: FieldPlan) -> str:
    """What undo calls the step: `Change height of fence (F1)`."""
    what = title_of(yard, ids)
    if not ids or ids == {LOT}:
        what = mid_sentence(what)
    return tr("Change {fact} of {thing}", fact=mid_sentence(tr(plan.name)), thing=what)
