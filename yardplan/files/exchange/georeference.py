"""From the drawing's metres to longitude and latitude and back.

The drawing's (0, 0) lies at the site's latitude and longitude. Over the few hundred metres of a yard the
ellipsoid is flat to well under a millimetre, so the radii of curvature at the site suffice:
    M = a (1 - e2) / (1 - e2 sin2 phi)^1.5,   N = a / (1 - e2 sin2 phi)^0.5
with a and e2 of WGS 84 (National Geospatial-Intelligence Agency standard NGA.STND.0036, defining values).
"""

from __future__ import annotations

import math

from attrs import frozen

from yardplan.yard.ground import Outline, Point
from yardplan.yard.site import Site

#: WGS 84: half the major axis, metres, and flattening.
SEMI_MAJOR, FLATTENING = 6_378_137.0, 1 / 298.257223563
_E2 = FLATTENING * (2 - FLATTENING)


@frozen
class Georeference:
    """Where the drawing lies: its (0, 0), and true north in degrees clockwise of +y."""

    latitude: float
    longitude: float
    north: float = 0.0

    @classmethod
    def of(cls, site: Site) -> Georeference:
        """The georeference of a yard's site."""
        return cls(site.latitude, site.longitude, site.north)

    def metres_per_degree(self) -> tuple[float, float]:
        """Metres to a degree of longitude and of latitude here."""
        phi = math.radians(self.latitude)
        w = 1 - _E2 * math.sin(phi) ** 2
        east = SEMI_MAJOR / math.sqrt(w) * math.cos(phi)
        north = SEMI_MAJOR * (1 - _E2) / w**1.5
        return math.radians(east), math.radians(north)

    def lon_lat(self, point: Point) -> tuple[float, float]:
        """Longitude and latitude, degrees, of a point of the drawing."""
        c, s = math.cos(math.radians(self.north)), math.sin(math.radians(self.north))
        x, y = point
        per_lon, per_lat = self.metres_per_degree()
        longitude = self.longitude + (x * c - y * s) / per_lon
        return (longitude + 180) % 360 - 180, self.latitude + (x * s + y * c) / per_lat

    def drawn(self, lon_lat: tuple[float, float]) -> Point:
        """The point of the drawing at a longitude and latitude, metres."""
        c, s = math.cos(math.radians(self.north)), math.sin(math.radians(self.north))
        per_lon, per_lat = self.metres_per_degree()
        east = ((lon_lat[0] - self.longitude + 180) % 360 - 180) * per_lon
        north = (lon_lat[1] - self.latitude) * per_lat
        return (east * c + north * s, -east * s + north * c)


def area(outline: Outline) -> float:
    """Signed area of an outline, square metres (shoelace formula); positive counter-clockwise."""
    pairs = zip(outline, (*outline[1:], *outline[:1]), strict=True)
    return sum(x0 * y1 - x1 * y0 for (x0, y0), (x1, y1) in pairs) / 2


def centre(outline: Outline) -> Point:
    """The mean of the corners."""
    count = len(outline)
    return sum(x for x, _ in outline) / count, sum(y for _, y in outline) / count
