"""Fields of the shape of things: straight or curved outlines, radius, how a picture lies under the plan."""

from __future__ import annotations

from typing import Any, Final

from attrs import evolve

from yardplan.language import later
from yardplan.window.panels.entry import EntryError
from yardplan.window.panels.field_plans import FieldPlan
from yardplan.yard import curves, edits, handles, pictures
from yardplan.yard.edits import EditError
from yardplan.yard.ground import Picture
from yardplan.yard.yard import Yard

#: Paths of shapes begin so.
SHAPE: Final = "~"
_AXES = ("~x", "~y")
#: Radius at which corners are rounded first, metres.
_FIRST_RADIUS = 0.5
_FARTHEST = 500.0

_BEND = FieldPlan(
    name=later("Outline"), path="~bend", sort="choice",
    choices=(
        ("corners", later("straight, with corners")), ("rounded", later("rounded corners")),
        ("smooth", later("smooth curve")), ("circle", later("circle")),
    ),
    tip=later("Straight from corner to corner, with corners rounded off, or curved through its points"),
)
_RADIUS = FieldPlan(name=later("Radius"), path="~radius", sort="length", low=0.01, high=_FARTHEST)
_MIDDLE = tuple(
    FieldPlan(name=name, path=f"~{axis}", sort="length", low=-2000.0, high=2000.0)
    for axis, name in (("x", later("Middle, x")), ("y", later("Middle, y")))
)
_PICTURE = (
    FieldPlan(
        name=later("Width"), path="~width", sort="length", low=pictures.NARROWEST, high=pictures.WIDEST,
        tip=later("How wide the picture is on the ground; its height follows"),
    ),
    FieldPlan(
        name=later("Turned"), path="~turned", sort="number", low=-360, high=360, unit="°", digits=1,
        tip=later("About its middle, counter-clockwise"),
    ),
)


def shape_plans(yard: Yard, key: str) -> tuple[FieldPlan, ...]:
    """The fields of the shape of one thing or the lot; none for most."""
    if isinstance(yard.find(key), Picture):
        return (*_PICTURE, *_MIDDLE)
    if not handles.can_bend(yard, key):
        return ()
    curve = edits.curve_of(yard, key)
    if curve is None or curve.kind == "smooth":
        return (_BEND,)
    return (_BEND, _RADIUS, *(_MIDDLE if curve.kind == "circle" else ()))


def places_itself(yard: Yard, key: str) -> bool:
    """True where these fields say where the thing lies."""
    curve = edits.curve_of(yard, key)
    return isinstance(yard.find(key), Picture) or (curve is not None and curve.kind == "circle")


def shape_value(yard: Yard, key: str, path: str) -> Any:
    """What a field of the shape shows."""
    thing, curve = yard.find(key), edits.curve_of(yard, key)
    if isinstance(thing, Picture):
        return _picture_value(thing, path)
    if curve is not None and path in _AXES:
        return curve.points[0][_AXES.index(path)]
    if path == "~radius":
        return curve.radius if curve else None
    return curve.kind if curve else "corners"


def _picture_value(picture: Picture, path: str) -> float:
    if path in _AXES:
        return pictures.middle(picture)[_AXES.index(path)]
    return pictures.size(picture)[0] if path == "~width" else pictures.turn(picture)


def with_shape(yard: Yard, key: str, path: str, value: Any) -> Yard:
    """The yard with a field of the shape typed in. Raises EntryError."""
    thing, curve = yard.find(key), edits.curve_of(yard, key)
    if isinstance(thing, Picture):
        return edits.replace(yard, _picture(thing, path, value))
    if path == "~bend":
        if value == (curve.kind if curve else "corners"):
            return yard
        return handles.bent(yard, key, value, _radius(yard, key))
    if curve is None:
        return yard
    if path == "~radius":
        return edits.set_curve(yard, key, evolve(curve, radius=value))
    x, y = curve.points[0]
    return edits.set_curve(yard, key, evolve(curve, points=((value, y) if path == "~x" else (x, value),)))


def _radius(yard: Yard, key: str) -> float:
    """What corners are rounded by at first: half a metre, or less where they have less room."""
    return min(_FIRST_RADIUS, curves.largest_radius(handles.handles_of(yard, key)))


def _picture(picture: Picture, path: str, value: float) -> Picture:
    x, y = pictures.middle(picture)
    try:
        if path == "~width":
            return pictures.with_width(picture, value)
        if path == "~turned":
            return pictures.turned_to(picture, value)
        return pictures.moved_to(picture, (value, y) if path == "~x" else (x, value))
    except EditError as error:
        raise EntryError(str(error)) from None
