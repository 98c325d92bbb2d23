"""What values a yard file may hold: ranges, least numbers of points, patterns.

The reader and the JSON Schema both take them from here, so that they cannot disagree. The ranges only
keep out what cannot be meant (a wall of 5 km height); what is wise is the business of the checks.
"""

from __future__ import annotations

import datetime
import re
from typing import Any, get_type_hints

from attrs import frozen

from yardplan.language import later
from yardplan.yard import ground, planting, site, yard

FORMAT = "yardplan yard"
#: Files larger than this are not read, bytes: about a hundred thousand plants.
LARGEST = 100 * 1024 * 1024
#: Lists and objects inside one another; a yard needs six.
DEEPEST = 50


@frozen
class Range:
    """Least and greatest value of a number, both allowed."""

    low: float
    high: float


_COORDINATE = Range(-100_000.0, 100_000.0)
_ANGLE = Range(-360.0, 720.0)
_DEGREES_C = Range(-100.0, 70.0)

#: Range by field name; a field name means the same thing in every class.
RANGES: dict[str, Range] = {
    "latitude": Range(-90, 90),
    "longitude": Range(-180, 180),
    "elevation": Range(-500, 9000),
    "north": _ANGLE,
    "slope": Range(0, 10),
    "slope_aspect": _ANGLE,
    "horizon": _ANGLE,
    "monthly_means": _DEGREES_C,
    "monthly_lows": _DEGREES_C,
    "monthly_highs": _DEGREES_C,
    "chill_hours": Range(0, 9000),
    "ph": Range(0, 14),
    "lot": _COORDINATE,
    "footprint": _COORDINATE,
    "outline": _COORDINATE,
    "line": _COORDINATE,
    "points": _COORDINATE,
    "place": _COORDINATE,
    "ends": _COORDINATE,
    "base": _COORDINATE,
    "radius": Range(0, 1000),
    "off": Range(-1000, 1000),
    "opacity": Range(0, 1),
    "pixels": Range(1, 30_000),
    "facing": _ANGLE,
    "ridge_angle": _ANGLE,
    "eaves": Range(0, 200),
    "ridge": Range(0, 200),
    "overhang": Range(0, 20),
    "height": Range(0, 200),
    "thickness": Range(0, 20),
    "light_share": Range(0, 1),
    "crown_base": Range(0, 200),
    "spread": Range(0, 200),
    "width": Range(0, 1000),
    "spacing": Range(0, 1000),
    "count": Range(0, 100_000),
    "depth": Range(0, 100),
    "raised": Range(0, 20),
    "volume": Range(0, 1_000_000),
    "diameter": Range(0, 100),
    "planted": Range(1500, 3000),
    "until": Range(1500, 3000),
}

#: Least number of entries of a list, by field name.
LEAST: dict[str, int] = {
    "members": 2, "footprint": 3, "outline": 3, "line": 2, "points": 1, "ends": 2, "base": 2,
    "monthly_means": 12, "monthly_lows": 12, "monthly_highs": 12,
}
#: Greatest number of entries, by field name.
MOST: dict[str, int] = {
    "monthly_means": 12, "monthly_lows": 12, "monthly_highs": 12, "ends": 2, "base": 2,
}
#: Letters of a picture in a file at most: base64 of 6 MB.
LONGEST_PICTURE = 8_000_000

_DATE = r"^(0[1-9]|1[0-2])-(0[1-9]|[12][0-9]|3[01])$"
#: Pattern of a text and what it stands for, by field name.
PATTERNS: dict[str, tuple[str, str]] = {
    "zone": (r"^(1[0-3]|[1-9])[ab]?$", later("a zone like 6b")),
    "last_frost": (_DATE, later("a date like 04-24")),
    "last_frost_10": (_DATE, later("a date like 04-24")),
    "first_frost": (_DATE, later("a date like 10-12")),
    "first_frost_10": (_DATE, later("a date like 10-12")),
    "season": (_DATE, later("a date like 04-01")),
    "data": (
        rf"^[A-Za-z0-9+/]{{4,{LONGEST_PICTURE}}}={{0,2}}$", later("a picture of at most 6 MB as base64"),
    ),
    "id": (r"\S", later("a key like A1")),
    "crop": (r"\S", later("the name of a crop")),
    "cultivar": (r"\S", later("the name of a cultivar")),
}

#: Names that things may not have: `lot` is the lot line itself.
RESERVED_IDS = frozenset({"lot"})

#: Classes that a file holds as objects.
CLASSES: tuple[type, ...] = (
    yard.Yard, yard.Group, yard.Variant, site.Site, site.Soil, site.Origin, ground.Curve,
    planting.PlantKey, planting.Earlier, *yard.COLLECTIONS.values(),
)
_NAMES = {**vars(ground), **vars(planting), **vars(site), **vars(yard)}


def hints_of(kind: type) -> dict[str, Any]:
    """The field types of a class of the document, annotations resolved."""
    return get_type_hints(kind, _NAMES)


def suits(pattern: str, text: str) -> bool:
    """True when the text has the pattern and, if it is a date, that day is in the calendar."""
    if re.search(pattern, text) is None:
        return False
    if pattern != _DATE:
        return True
    try:
        # A leap year, so that 02-29 is a day.
        datetime.date(2000, int(text[:2]), int(text[3:]))
    except ValueError:
        return False
    return True
