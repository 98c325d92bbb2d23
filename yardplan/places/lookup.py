"""Where is it? A town, a US ZIP code or a typed position, looked up in the shipped tables."""

from __future__ import annotations

import csv
import math
import re
import unicodedata
from bisect import bisect_right
from collections.abc import Iterator
from functools import cache

from attrs import evolve

from yardplan.language import decimals, tr
from yardplan.places.tables import TOWNS, ZIPS, Place, cells_of, figure, table, text_of, town, zip_place
from yardplan.shipped import resource

#: Mean radius of the earth, km (IUGG).
EARTH = 6371.0088
#: Degrees of latitude to a kilometre, rounded down so that the first sieve never loses a place.
_KM_PER_DEGREE = 110.0


class PlaceError(ValueError):
    """A place that could not be understood or found, said in words for a person."""


#: Letters that do not come apart into a letter and an accent.
_LETTERS = {
    "ı": "i", "ł": "l", "ø": "o", "ß": "ss", "đ": "d", "ð": "d", "æ": "ae", "œ": "oe", "ə": "e", "ħ": "h",
    "þ": "th", "’": "", "‘": "", "ʻ": "", "ʼ": "", "'": "", "–": " ", "-": " ",
}


def fold(text: str) -> str:
    """Small letters without accents: Zürich and zurich fold alike."""
    text = text.lower()
    for letter, plain in _LETTERS.items():
        text = text.replace(letter, plain)
    return unicodedata.normalize("NFKD", text).encode("ascii", "ignore").decode("ascii")


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


def find_places(words: str, limit: int = 12) -> list[Place]:
    """Places for typed words, best guess first: `Ithaca, NY`, `14850`, `42.44, -76.5`, `Zurich`.

    Raises PlaceError when a position is out of range or nothing was found.
    """
    words = words.strip()
    if match := _POSITION.fullmatch(words):
        return [_at_position(match)]
    if match := _ZIP.fullmatch(words):
        return _by_zip(match[1])
    found = _by_name(words, limit)
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


@cache
def _folded() -> tuple[list[str], str, list[int]]:
    """The lines of the towns table, the same folded in one text for searching, and where its lines start."""
    text = text_of(TOWNS)
    folded = fold(text)
    starts = [0, *(match.end() for match in re.finditer("\n", folded))]
    return text.split("\n"), folded, starts


@cache
def _states() -> dict[str, str]:
    """Two letters of a US state by its folded name."""
    with resource("places", "us_states.csv").open(encoding="utf-8", newline="") as file:
        return {fold(row["name"]): row["letters"].lower() for row in csv.DictReader(file)}


def _by_name(words: str, limit: int) -> list[Place]:
    name, _, where = (fold(part).strip() for part in words.partition(","))
    if not name:
        return []
    lines, text, starts = _folded()
    # A whole name first, then a beginning of one, then another spelling; each by population.
    kinds = (rf'^"?{re.escape(name)}"?,', rf'^"?{re.escape(name)}', rf"[,|]{re.escape(name)}(?=[|\n])")
    found: dict[int, Place] = {}
    for pattern in kinds:
        for match in re.finditer(pattern, text, re.MULTILINE):
            number = bisect_right(starts, match.start()) - 1
            if number and number not in found:
                found[number] = town(cells_of(lines[number]))
            if len(found) >= 40 * limit:
                break
    there = [place for place in found.values() if _is_in(place, where)]
    return (there or list(found.values()))[:limit]


def _is_in(place: Place, where: str) -> bool:
    """True when the words after the comma name the place's region or country (or there are none)."""
    region, country = fold(place.region), place.country.lower()
    in_state = country == "us" and region == _states().get(where)
    return region.startswith(where) or country == where or in_state
