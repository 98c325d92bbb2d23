"""GeoJSON (RFC 7946) out of a yard, and lot outlines out of GeoJSON.

Longitude before latitude, WGS 84, polygons closed with the outer ring counter-clockwise, no `crs` member.
"""

from __future__ import annotations

import json
import math
from collections.abc import Iterator, Mapping
from typing import Any

from yardplan.files.exchange.georeference import Georeference, area
from yardplan.files.exchange.outline import ExchangeError, LotOutline, largest_first, tidied
from yardplan.files.layout import plain_thing
from yardplan.language import tr
from yardplan.yard.edits import OUTLINE_FIELD, points_of
from yardplan.yard.ground import Building, Outline, Paving, Picture, Service
from yardplan.yard.planting import Bed, Planting
from yardplan.yard.site import Site
from yardplan.yard.yard import Thing, Yard, list_name

#: Eight decimals of a degree are about a millimetre.
_DECIMALS = 8
#: Outlines further than this from the yard bring a place of their own, metres.
_FAR = 5_000.0

Feature = dict[str, Any]


def yard_to_geojson(yard: Yard, spreads: Mapping[str, float] | None = None) -> str:
    """The yard as a FeatureCollection. `spreads` crown diameters in metres by id, put beside each plant."""
    at = Georeference.of(yard.site)
    features = [_lot(yard.lot, at)] if yard.lot else []
    drawn = (thing for thing in yard.things() if not isinstance(thing, Picture))
    features += [_feature(thing, at, spreads or {}) for thing in drawn]
    collection = {"type": "FeatureCollection", "name": yard.site.name, "features": features}
    return json.dumps(collection, ensure_ascii=False, indent=1, allow_nan=False) + "\n"


def _position(at: Georeference, point: tuple[float, float]) -> list[float]:
    longitude, latitude = at.lon_lat(point)
    return [round(longitude, _DECIMALS), round(latitude, _DECIMALS)]


def _polygon(points: Outline, at: Georeference) -> Feature:
    ring = points if area(points) >= 0 else points[::-1]
    return {"type": "Polygon", "coordinates": [[_position(at, p) for p in (*ring, ring[0])]]}


def _geometry(thing: Thing, at: Georeference) -> Feature:
    points = points_of(thing)
    if isinstance(thing, Building | Paving | Bed) or (isinstance(thing, Service) and thing.area):
        return _polygon(points, at)
    if len(points) == 1:
        return {"type": "Point", "coordinates": _position(at, points[0])}
    return {"type": "LineString", "coordinates": [_position(at, p) for p in points]}


def _lot(lot: Outline, at: Georeference) -> Feature:
    return {"type": "Feature", "id": "lot", "geometry": _polygon(lot, at), "properties": {"list": "lot"}}


def _feature(thing: Thing, at: Georeference, spreads: Mapping[str, float]) -> Feature:
    properties = {name: value for name, value in plain_thing(thing).items() if name not in _placed(thing)}
    properties = {"list": list_name(thing), **properties}
    if isinstance(thing, Planting) and thing.id in spreads:
        properties["crown_m"] = round(spreads[thing.id], 2)
    return {"type": "Feature", "id": thing.id, "geometry": _geometry(thing, at), "properties": properties}


def _placed(thing: Thing) -> tuple[str, str]:
    """Fields that the geometry says already."""
    return OUTLINE_FIELD.get(type(thing), "place"), "id"


def lots_from_geojson(text: str, site: Site) -> tuple[LotOutline, ...]:
    """Closed outlines of a GeoJSON text, largest first. Raises ExchangeError when there is none.

    Outlines near the site are put where they lie; others come with a place of their own.
    """
    try:
        document = json.loads(text.removeprefix("\ufeff"))
    except (ValueError, RecursionError):
        raise ExchangeError(tr("the file is not GeoJSON: its text cannot be understood")) from None
    lots = largest_first(_outline(name, ring, site) for name, ring in _rings(document, ""))
    if not lots:
        raise ExchangeError(tr("the file holds no closed outline: a Polygon is needed for the lot line"))
    return lots


def _rings(value: Any, name: str, depth: int = 0) -> Iterator[tuple[str, Any]]:
    """Outer rings with the name of their feature, of anything GeoJSON may hold."""
    if not isinstance(value, dict) or depth > 20:
        return
    kind, coordinates = value.get("type"), value.get("coordinates")
    properties = value.get("properties")
    if isinstance(properties, dict):
        name = str(properties.get("name") or properties.get("list") or value.get("id") or name)
    if kind == "Polygon" and isinstance(coordinates, list) and coordinates:
        yield name, coordinates[0]
    elif kind == "MultiPolygon" and isinstance(coordinates, list):
        yield from ((name, polygon[0]) for polygon in coordinates if isinstance(polygon, list) and polygon)
    elif kind == "LineString" and isinstance(coordinates, list) and _closed(coordinates):
        yield name, coordinates
    for part in ("features", "geometries"):
        inner = value.get(part)
        for item in inner if isinstance(inner, list) else ():
            yield from _rings(item, name, depth + 1)
    yield from _rings(value.get("geometry"), name, depth + 1)


def _closed(line: list[Any]) -> bool:
    return len(line) >= 4 and line[0] == line[-1]


def _lon_lat(position: Any) -> tuple[float, float]:
    """One position. Raises ExchangeError when it is no longitude and latitude."""
    if not isinstance(position, list) or len(position) < 2:
        raise ExchangeError(tr("the file is damaged: a position needs a longitude and a latitude"))
    numbers = position[:2]
    if any(isinstance(n, bool) or not isinstance(n, int | float) or not math.isfinite(n) for n in numbers):
        raise ExchangeError(tr("the file is damaged: a position holds something that is no number"))
    if abs(numbers[0]) > 180 or abs(numbers[1]) > 90:
        raise ExchangeError(
            tr("the positions are not longitude and latitude: save the file again in WGS 84 degrees")
        )
    return float(numbers[0]), float(numbers[1])


def _outline(name: str, ring: Any, site: Site) -> LotOutline:
    if not isinstance(ring, list) or not ring:
        raise ExchangeError(tr("the file is damaged: an outline without positions"))
    positions = [_lon_lat(position) for position in ring]
    here = Georeference.of(site)
    corners = tidied(here.drawn(p) for p in positions)
    if all(math.hypot(*corner) <= _FAR for corner in corners):
        return LotOutline(name=name, corners=corners)
    longitude, latitude = positions[0]
    there = Georeference(latitude, longitude, site.north)
    return LotOutline(
        name=name, corners=tidied(there.drawn(p) for p in positions), latitude=latitude, longitude=longitude
    )
