"""Where is it? A town, a US ZIP code or a typed position, looked up in the shipped tables."""

from __future__ import annotations

import math
import re
from collections.abc import Iterator

from attrs import evolve

from yardplan.language import decimals, tr
from yardplan.places.by_name import towns_called
from yardplan.places.tables import TOWNS, ZIPS, Place, cells_of, figure, table, text_of, town, zip_place

#: Mean radius of the earth, km (IUGG).
EARTH = 6371.0088
#: Degrees of latitude to a kilometre, rounded down so that the first sieve never loses a place.
_KM_PER_DEGREE = 110.0


class PlaceError(ValueError):
    """A place that could not be understood or found, said in words for a person."""


def distance_km(a: tuple[float, float], b: tuple[float, float]) -> float:
    """Great-circle distance of two (latitude, longitude) points in km, by the haversine formula."""
    lat1, lat2 = math.radians(a[0]), math.radians(b[0])
    half = math.sin((lat2 - lat1) / 2) ** 2
    half += math.cos(lat1) * math.cos(lat2) * math.sin(math.radians(b[1] - a[1]) / 2) ** 2
    return 2 * EARTH * math.asin(min(1.0, math.sqrt(half)))


def near(name: str, at: tuple[float, float], within: float) -> Iterator[tuple[float, list[str]]]:
    """The lines of a table within so many km of (latitude, longitude), as distance and cells, in no order."""
    south, north = at[0] - within / _KM_PER_DEGREE, at[0] + within / _KM_PER_DEGREE
    latitudes, longitudes, lines = table(name)
    for i, latitude in enumerate(latitudes):
        if south <= latitude <= north:
            km = distance_km(at, (latitude, longitudes[i]))
            if km <= within:
                yield km, cells_of(lines[i])


_ZIP = re.compile(r"(\d{5})(?:-\d{4})?")
_NUMBER = r"([+-−]?\d+(?:[.,]\d+)?)\s*°?\s*"
_POSITION = re.compile(rf"{_NUMBER}([ns]?)\s*[,; ]\s*{_NUMBER}([ewo]?)", re.IGNORECASE)


def find_places(words: str, limit: int = 12, home: str = "") -> list[Place]:
    """Places for typed words, best guess first: `Ithaca, NY`, `14850`, `42.44, -76.5`, `Zurich`.

    `home` is the country in which a town is expected, two letters; its towns come before like ones abroad.
    Raises PlaceError when a position is out of range or nothing was found.
    """
    words = words.strip()
    if match := _POSITION.fullmatch(words):
        return [_at_position(match)]
    if match := _ZIP.fullmatch(words):
        return _by_zip(match[1])
    found = towns_called(words, limit, home)
    if not found:
        raise PlaceError(tr(
            "no place called '{words}': try a larger town, a US ZIP code or 42.44, -76.50",
            words=words,
        ))
    return found


def place_at(latitude: float, longitude: float, elevation: float | None = None) -> Place:
    """A place by its position; country and time zone are those of the nearest town.

    Raises PlaceError when a degree is out of range.
    """
    if not -90 <= latitude <= 90 or not -180 <= longitude <= 180:
        raise PlaceError(tr(
            "{latitude}, {longitude}: latitude goes to 90, longitude to 180 degrees",
            latitude=decimals(f"{latitude:g}"), longitude=decimals(f"{longitude:g}"),
        ))
    neighbour = nearest_town(latitude, longitude)
    return Place(
        name="", region=neighbour.region if neighbour else "", country=neighbour.country if neighbour else "",
        latitude=latitude, longitude=longitude, elevation=elevation,
        time_zone=neighbour.time_zone if neighbour else None, found_by="position",
    )


def nearest_town(latitude: float, longitude: float) -> Place | None:
    """The nearest town, or None where there is none within 300 km."""
    for within in (30.0, 100.0, 300.0):
        found = min(near(TOWNS, (latitude, longitude), within), default=None)
        if found:
            return town(found[1])
    return None


def nearest_zone(latitude: float, longitude: float) -> tuple[Place, float] | None:
    """The nearest ZIP code area with a zone and its distance in km, or None beyond the limit."""
    around = near(ZIPS, (latitude, longitude), figure("zone_distance"))
    found = min(((km, cells) for km, cells in around if cells[9].strip() == "C" and cells[6]), default=None)
    return (zip_place(found[1]), found[0]) if found else None


def _degrees(number: str, letter: str, negative: str) -> float:
    value = float(number.replace(",", ".").replace("−", "-"))
    return -abs(value) if letter.lower() in negative and letter else value


def _at_position(match: re.Match[str]) -> Place:
    return place_at(_degrees(match[1], match[2], "s"), _degrees(match[3], match[4], "wo"))


def _by_zip(code: str) -> list[Place]:
    for line in text_of(ZIPS).split("\n"):
        if line.startswith(code + ","):
            cells = cells_of(line)
            if not cells[3]:
                raise PlaceError(tr(
                    "the position of ZIP code {code} is not known: name the town instead",
                    code=code,
                ))
            place = zip_place(cells)
            neighbour = nearest_town(place.latitude, place.longitude)
            return [evolve(place, time_zone=neighbour.time_zone if neighbour else None)]
    raise PlaceError(tr("no ZIP code {code}: name the town instead", code=code))
