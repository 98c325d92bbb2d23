"""DXF out of a yard and lot outlines out of DXF, by the library ezdxf, imported only when asked for."""

from __future__ import annotations

import io
import math
from collections.abc import Iterator, Mapping
from pathlib import Path
from typing import Any

from yardplan.files.exchange.outline import ExchangeError, LotOutline, largest_first, tidied
from yardplan.language import tr
from yardplan.yard.edits import points_of
from yardplan.yard.ground import (
    Barrier,
    Building,
    Dimension,
    Gate,
    Note,
    Outline,
    Paving,
    Point,
    Service,
    StandingTree,
)
from yardplan.yard.planting import Bed, Container, Planting, Row
from yardplan.yard.yard import Thing, Yard

#: Layer and DXF colour number by kind of thing: 7 is black on white, 8 grey, 3 green, 1 red.
_LAYERS: Mapping[type, tuple[str, int]] = {
    Building: ("BUILDINGS", 7), Barrier: ("WALLS_FENCES_HEDGES", 7), Paving: ("PAVING", 8),
    Service: ("SERVICES", 1), StandingTree: ("STANDING_TREES", 8), Gate: ("GATES", 7),
    Planting: ("PLANTS", 3), Row: ("ROWS", 3), Bed: ("BEDS", 3), Container: ("CONTAINERS", 8),
    Note: ("NOTES", 7), Dimension: ("DIMENSIONS", 7),
}
_LOT_LAYER = "LOT"
#: Height of words, metres on the ground.
_WORDS = 0.25
#: Radius drawn where no crown is known, metres.
_SMALL = 0.25
#: Metres to a drawing unit by the header's $INSUNITS (DXF reference, HEADER section).
_UNITS = {1: 0.0254, 2: 0.3048, 4: 0.001, 5: 0.01, 6: 1.0, 7: 1000.0, 10: 0.9144, 14: 0.1, 21: 1200 / 3937}
#: Parts into which a bulged side is cut.
_CHORD = 0.02


def _library() -> Any:
    try:
        import ezdxf
    except ImportError:
        raise ExchangeError(tr("DXF needs the package ezdxf: install it with 'pip install ezdxf'")) from None
    return ezdxf


def yard_to_dxf(yard: Yard, spreads: Mapping[str, float] | None = None) -> str:
    """The yard as the text of a DXF file (R2010), a layer for each kind, units metres.

    `spreads` crown diameters in metres by id. Raises ExchangeError when the library is missing.
    """
    drawing = _library().new("R2010", setup=False)
    drawing.header["$INSUNITS"] = 6
    space = drawing.modelspace()
    drawing.layers.add(_LOT_LAYER, color=7)
    for layer, colour in _LAYERS.values():
        drawing.layers.add(layer, color=colour)
    if yard.lot:
        space.add_lwpolyline(yard.lot, close=True, dxfattribs={"layer": _LOT_LAYER})
    for thing in (thing for thing in yard.things() if type(thing) in _LAYERS):
        _draw(space, thing, _LAYERS[type(thing)][0], (spreads or {}).get(thing.id))
    out = io.StringIO()
    drawing.write(out)
    return out.getvalue()


def _draw(space: Any, thing: Thing, layer: str, spread: float | None) -> None:
    points, on = points_of(thing), {"layer": layer}
    if len(points) > 1:
        space.add_lwpolyline(points, close=_is_area(thing), dxfattribs=on)
    elif not isinstance(thing, Note):
        space.add_circle(points[0], _radius(thing, spread), dxfattribs=on)
    if words := _words(thing):
        space.add_text(words, height=_WORDS, dxfattribs=on).set_placement(points[0])


def _is_area(thing: Thing) -> bool:
    return isinstance(thing, Building | Paving | Bed) or (isinstance(thing, Service) and thing.area)


def _radius(thing: Thing, spread: float | None) -> float:
    if isinstance(thing, StandingTree):
        return max(thing.spread / 2, 0.01)
    if isinstance(thing, Container):
        return max(thing.diameter / 2, 0.01)
    return spread / 2 if spread else _SMALL


def _words(thing: Thing) -> str:
    """One line for the drawing; control characters would break the file."""
    if isinstance(thing, Planting | Row):
        words = f"{thing.id} {thing.plant.cultivar}"
    elif isinstance(thing, Note):
        words = thing.text
    elif isinstance(thing, Dimension):
        words = f"{math.dist(*thing.ends):.2f} m"
    else:
        words = f"{thing.id} {getattr(thing, 'name', '')}"
    return " ".join("".join(c if c.isprintable() else " " for c in words).split())


def lots_from_dxf(path: Path | str, metres: float | None = None) -> tuple[LotOutline, ...]:
    """Closed outlines of a DXF file, largest first, in metres with the lower left corner at (0, 0).

    `metres` to a drawing unit; None: by the file's header, metres where it says nothing.
    Raises ExchangeError when the file is damaged or holds no closed outline.
    """
    library = _library()
    try:
        drawing = library.readfile(str(path))
    except OSError:
        raise ExchangeError(tr(
            "{name} is not a DXF file or cannot be opened",
            name=Path(path).name,
        )) from None
    except (library.DXFError, ValueError, IndexError, KeyError, TypeError) as error:
        raise ExchangeError(tr(
            "{name} is damaged: {fault}",
            name=Path(path).name, fault=str(error).splitlines()[0][:100],
        )) from None
    said = _UNITS.get(drawing.header.get("$INSUNITS", 0))
    scale = metres or said or 1.0
    found = largest_first(
        LotOutline(
            name=layer, unit=said, corners=_to_corner(tidied((x * scale, y * scale) for x, y in ring))
        )
        for layer, ring in _closed(drawing.modelspace())
    )
    if not found:
        raise ExchangeError(tr(
            "{name} holds no closed line: draw the lot as a closed polyline",
            name=Path(path).name,
        ))
    return found


def _closed(space: Any) -> Iterator[tuple[str, list[Point]]]:
    for line in space.query("LWPOLYLINE POLYLINE"):
        if line.dxftype() == "LWPOLYLINE":
            corners = [(x, y, bulge) for x, y, bulge in line.get_points("xyb")]
            closed = bool(line.closed)
        else:
            corners = [(v.dxf.location.x, v.dxf.location.y, v.dxf.bulge) for v in line.vertices]
            closed = bool(line.is_closed)
        if len(corners) >= 3 and (closed or math.dist(corners[0][:2], corners[-1][:2]) < 1e-9):
            yield line.dxf.layer, _rounded(corners)


def _rounded(corners: list[tuple[float, float, float]]) -> list[Point]:
    """Corners with bulged sides cut into chords; bulge is the tangent of a quarter of the arc's angle."""
    points: list[Point] = []
    for (x0, y0, bulge), (x1, y1, _) in zip(corners, corners[1:] + corners[:1], strict=True):
        points.append((x0, y0))
        if bulge:
            points.extend(_arc((x0, y0), (x1, y1), bulge))
    return points


def _arc(start: Point, end: Point, bulge: float) -> list[Point]:
    """Points between the ends of an arc, close enough that a chord leaves it by a fiftieth of the radius."""
    angle = 4 * math.atan(bulge)
    chord = math.dist(start, end)
    if chord == 0:
        return []
    # The centre lies on the bisector, (1 - bulge^2) / (4 bulge) of the chord to its left.
    off = (1 - bulge**2) / (4 * bulge)
    cx = (start[0] + end[0]) / 2 - off * (end[1] - start[1])
    cy = (start[1] + end[1]) / 2 + off * (end[0] - start[0])
    parts = max(2, math.ceil(abs(angle) / (2 * math.acos(1 - _CHORD))))
    first = math.atan2(start[1] - cy, start[0] - cx)
    radius = math.dist(start, (cx, cy))
    return [
        (cx + radius * math.cos(first + angle * i / parts), cy + radius * math.sin(first + angle * i / parts))
        for i in range(1, parts)
    ]


def _to_corner(corners: Outline) -> Outline:
    """The outline moved so that its lower left corner is (0, 0): drawings often lie far out."""
    left, below = min((x for x, _ in corners), default=0.0), min((y for _, y in corners), default=0.0)
    return tuple((x - left, y - below) for x, y in corners)
