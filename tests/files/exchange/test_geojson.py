"""A yard as GeoJSON, and lots out of GeoJSON."""

from __future__ import annotations

import json

import pytest
import shapely
from support import builders

from yardplan.files.exchange.geojson import lots_from_geojson, yard_to_geojson
from yardplan.files.exchange.outline import ExchangeError
from yardplan.yard.ground import Building, Service
from yardplan.yard.planting import Row
from yardplan.yard.site import Site

SITE = Site(name="Test yard", latitude=47.5, longitude=8.5, north=30.0)
YARD = builders.yard_of(
    builders.plant("A1", "apple:Liberty", (3.0, 4.0), rootstock="M26", planted=2024), site=SITE,
    # Clockwise on purpose: the standard wants the outer ring counter-clockwise.
    buildings=(Building(id="H1", footprint=((5.0, 5.0), (5.0, 9.0), (9.0, 9.0), (9.0, 5.0))),),
    rows=(Row(id="R1", plant=builders.plant("x", "red raspberry:Latham", (0, 0)).plant,
              line=((1.0, 1.0), (6.0, 1.0)), count=9, spacing=0.6),),
    services=(Service(id="S1", kind="septic field", area=True, points=((0, 0), (1, 0), (1, 1))),
              Service(id="S2", kind="well", points=((2.0, 2.0),))),
)


def features() -> dict[str, dict]:  # type: ignore[type-arg]
    return {feature["id"]: feature for feature in json.loads(yard_to_geojson(YARD, {"A1": 3.6}))["features"]}


def test_each_thing_has_the_geometry_of_its_kind() -> None:
    kinds = {key: feature["geometry"]["type"] for key, feature in features().items()}
    assert kinds == {
        "lot": "Polygon", "A1": "Point", "H1": "Polygon", "R1": "LineString", "S1": "Polygon", "S2": "Point",
    }


def test_properties_say_what_it_is_and_how_wide_it_grows() -> None:
    assert features()["A1"]["properties"] == {
        "list": "plantings", "plant": {"crop": "apple", "cultivar": "Liberty"}, "rootstock": "M26",
        "planted": 2024, "facing": 0.0, "crown_m": 3.6,
    }


def test_outer_rings_run_counter_clockwise() -> None:
    ring = features()["H1"]["geometry"]["coordinates"][0]
    assert shapely.LinearRing(ring).is_ccw


def test_the_lot_comes_back_where_it_was() -> None:
    lots = lots_from_geojson(yard_to_geojson(YARD), SITE)
    lot = lots[0]
    assert (lot.name, lot.latitude) == ("lot", None)
    for corner, was in zip(lot.corners, YARD.lot, strict=True):
        assert corner == pytest.approx(was, abs=0.002)
    assert lot.size == pytest.approx(600.0, rel=1e-3)
    assert [o.size for o in lots] == sorted((o.size for o in lots), reverse=True)


def test_a_lot_far_away_brings_its_place() -> None:
    ring = [[5.0, 52.0], [5.001, 52.0], [5.001, 52.001], [5.0, 52.001], [5.0, 52.0]]
    (lot,) = lots_from_geojson(json.dumps({"type": "Polygon", "coordinates": [ring]}), SITE)
    assert (lot.longitude, lot.latitude) == (5.0, 52.0)
    assert len(lot.corners) == 4
    # A thousandth of a degree at 52 N: 68.7 m by 111.3 m.
    assert lot.size == pytest.approx(68.68 * 111.27, rel=1e-3)


@pytest.mark.parametrize(
    "wrapped",
    [
        {"type": "Feature", "properties": {"name": "plot 7"}, "geometry": "HERE"},
        {"type": "FeatureCollection", "features": [{"type": "Feature", "geometry": "HERE"}]},
        {"type": "GeometryCollection", "geometries": ["HERE"]},
    ],
)
def test_outlines_are_found_wherever_geojson_may_hold_them(wrapped: dict[str, object]) -> None:
    ring = [[8.5, 47.5], [8.501, 47.5], [8.501, 47.501], [8.5, 47.5]]
    for geometry in (
        {"type": "Polygon", "coordinates": [ring]}, {"type": "MultiPolygon", "coordinates": [[ring]]},
        {"type": "LineString", "coordinates": ring},
    ):
        text = json.dumps(wrapped).replace('"HERE"', json.dumps(geometry))
        (lot,) = lots_from_geojson("\ufeff" + text, SITE)
        assert len(lot.corners) == 3


@pytest.mark.parametrize(
    ("text", "says"),
    [
        ("not json", "cannot be understood"), ("[" * 99_999, "cannot be understood"),
        ("[]", "no closed outline"),
        ('{"type": "Point", "coordinates": [1, 2]}', "no closed outline"),
        ('{"type": "LineString", "coordinates": [[1, 2], [2, 3], [3, 3]]}', "no closed outline"),
        ('{"type": "Polygon", "coordinates": [[[500000, 4600000], [1, 1], [2, 2], [1, 1]]]}', "WGS 84"),
        ('{"type": "Polygon", "coordinates": [[[1], [1, 1], [2, 2]]]}', "needs a longitude"),
        ('{"type": "Polygon", "coordinates": [[["a", 1], [1, 1], [2, 2]]]}', "no number"),
        ('{"type": "Polygon", "coordinates": [[[NaN, 1], [1, 1], [2, 2]]]}', "no number"),
        ('{"type": "Polygon", "coordinates": [[]]}', "without positions"),
        ('{"type": "Polygon", "coordinates": [[[1, 1], [1, 1], [1, 1], [1, 1]]]}', "no closed outline"),
    ],
)
def test_what_cannot_be_a_lot_is_said(text: str, says: str) -> None:
    with pytest.raises(ExchangeError, match=says):
        lots_from_geojson(text, SITE)
