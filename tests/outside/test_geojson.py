"""Georeference and GeoJSON against published figures and the standard; the source stands beside each."""

from __future__ import annotations

import json
from typing import Any

import pytest
import shapely
from hypothesis import HealthCheck, given, settings
from support import strategies

from yardplan.files.exchange.geojson import yard_to_geojson
from yardplan.files.exchange.georeference import Georeference
from yardplan.yard.yard import Yard


@pytest.mark.parametrize(
    ("latitude", "per_longitude", "per_latitude"),
    [
        # Length of a degree on WGS 84: NGA, American Practical Navigator, Table 7 (equator, 45 degrees),
        # rounded figures as widely printed; 60 degrees from memory.
        (0.0, 111_320, 110_574),
        (45.0, 78_847, 111_132),
        (60.0, 55_800, 111_412),
    ],
)
def test_length_of_a_degree(latitude: float, per_longitude: float, per_latitude: float) -> None:
    got = Georeference(latitude, 0.0).metres_per_degree()
    assert got == pytest.approx((per_longitude, per_latitude), rel=2e-5)


def _positions(coordinates: Any) -> list[list[float]]:
    if coordinates and isinstance(coordinates[0], int | float):
        return [coordinates]
    return [position for part in coordinates for position in _positions(part)]


@given(strategies.yards(most=2))
@settings(max_examples=25, deadline=None, suppress_health_check=list(HealthCheck))
def test_what_is_written_keeps_rfc_7946(yard: Yard) -> None:
    """RFC 7946, sections 3, 3.1.6, 3.2, 3.3 and 4; geometry read by shapely (GEOS), an independent reader."""
    document = json.loads(yard_to_geojson(yard))
    assert document["type"] == "FeatureCollection"
    assert "crs" not in document
    assert len({feature["id"] for feature in document["features"]}) == len(document["features"])
    for feature in document["features"]:
        assert feature["type"] == "Feature"
        assert isinstance(feature["properties"], dict)
        geometry = feature["geometry"]
        for longitude, latitude in _positions(geometry["coordinates"]):
            assert -180 <= longitude <= 180
            assert -90 <= latitude <= 90
        read = shapely.from_geojson(json.dumps(geometry))
        assert read.geom_type == geometry["type"]
        if geometry["type"] == "Polygon":
            ring = geometry["coordinates"][0]
            assert len(ring) >= 4
            assert ring[0] == ring[-1]
