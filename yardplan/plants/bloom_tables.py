"""What is known of bloom per crop, and the stations whose bloom dates are published."""

from __future__ import annotations

import csv
import math
from collections.abc import Mapping
from functools import cache

from attrs import frozen

from yardplan.plants.cultivar import Cultivar
from yardplan.plants.heat import day_of, parameter, reference_sums
from yardplan.plants.pollen_tables import rows
from yardplan.shipped import resource
from yardplan.yard.planting import PlantKey

#: Bloom classes in order, a step apart; `mid` is 2. Words that say no class stand in the middle.
CLASSES: Mapping[str, int] = {
    "very early": -1, "early": 0, "early-mid": 1, "mid": 2, "mid-late": 3, "late": 4, "very late": 5,
}
_MID = CLASSES["mid"]
_MONTHS = ("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec")


@frozen(kw_only=True)
class CropBloom:
    """Bloom of one crop. Days, unless said otherwise.

    `heat_share` of the apple's heat sum, at `share_at` days on the crop's own scale (None: winter bloom, no
    dates); `family_days` where that scale starts on the scale of crops that cross with it; `before`, `after`
    full bloom to first flower and petal fall; `usable` days on which pollen and open flowers are plenty;
    `class_mid` and `class_step` place classes on the crop's scale where a cultivar has no order of its own;
    kinds that need no more than `low_chill` hours open ahead of all others.
    """

    heat_share: float | None
    share_at: float
    family_days: float
    before: float
    after: float
    usable: float
    class_mid: float
    class_step: float
    low_chill: float | None
    source: str


@frozen(kw_only=True)
class Position:
    """Where a cultivar stands in the order of bloom: days on its crop's scale; `by` order or class."""

    days: float
    by: str


@frozen(kw_only=True)
class Station:
    """A published mean date of full bloom: day of the year, degrees, metres, source ids as written."""

    crop: str
    name: str
    latitude: float
    longitude: float
    elevation: float
    first: int | None
    full: int | None
    fall: int | None
    one_season: bool
    sources: str


@cache
def _bloom_rows() -> Mapping[str, CropBloom]:
    found = {}
    for _, row in rows("bloom.csv"):
        found[row["crop"]] = CropBloom(
            heat_share=float(row["heat_share"]) if row["heat_share"] else None,
            share_at=float(row["share_at"]), family_days=float(row["family_days"]),
            before=float(row["before"]), after=float(row["after"]), usable=float(row["usable"]),
            class_mid=float(row["class_mid"]), class_step=float(row["class_step"]),
            low_chill=float(row["low_chill"]) if row["low_chill"] else None, source=row["source"],
        )
    return found


def crop_bloom(crop: str) -> CropBloom | None:
    """Bloom of a crop, or None when nothing is known."""
    return _bloom_rows().get(crop)


def bloom_crops() -> tuple[str, ...]:
    """The crops of which bloom is known."""
    return tuple(_bloom_rows())


def class_number(season: str) -> int | None:
    """Number of a bloom class; None when the word names no class."""
    return CLASSES.get(season.strip().lower())


@cache
def _exceptions() -> Mapping[PlantKey, float]:
    """Cultivars far outside their class: days on their crop's scale."""
    return {
        PlantKey(row["crop"], row["cultivar"]): float(row["days"]) for _, row in rows("bloom_exceptions.csv")
    }


@cache
def _position(crop: str, order: float | None, season: str) -> Position | None:
    bloom = crop_bloom(crop)
    if bloom is None:
        return None
    if order is not None:
        return Position(days=order, by="order")
    number = class_number(season)
    if number is None:
        return None
    return Position(days=bloom.class_mid + (number - _MID) * bloom.class_step, by="class")


def position(cultivar: Cultivar) -> Position | None:
    """Where a cultivar stands in its crop's order of bloom; None when neither order nor class is known."""
    order = cultivar.bloom_order
    if order is None and not cultivar.own:
        order = _exceptions().get(PlantKey(cultivar.crop, cultivar.sport_of or cultivar.name))
    return _position(cultivar.crop, order, cultivar.bloom_season)


@cache
def share_of_heat(crop: str, days: float) -> float | None:
    """Share of the apple's heat sum at full bloom for a place on a crop's scale; None for winter bloom.

    Differences in days are turned into heat by the spring of the reference place, so that they shrink in
    warm springs and stretch in cool ones.
    """
    bloom = crop_bloom(crop)
    if bloom is None or bloom.heat_share is None:
        return None
    total = parameter("heat_sum")
    middle = reference_sums().day_when(total * bloom.heat_share)
    if middle is None:
        return None
    return reference_sums().sum_on(max(middle + days - bloom.share_at, reference_sums().start)) / total


def is_low_chill(cultivar: Cultivar) -> bool:
    """True for a kind bred for mild winters: it opens ahead of its class where winters are cold.

    A cultivar whose own order of bloom was recorded beside others is placed by that instead.
    """
    bloom = crop_bloom(cultivar.crop)
    if bloom is None or bloom.low_chill is None or cultivar.chill_hours is None:
        return False
    return cultivar.bloom_order is None and cultivar.chill_hours[1] <= bloom.low_chill


def middle_position(crop: str) -> float:
    """The place of a mid-season cultivar on a crop's scale."""
    bloom = crop_bloom(crop)
    return bloom.class_mid if bloom else 0.0


def share_for(cultivar: Cultivar) -> float | None:
    """Share of the apple's heat sum at which a cultivar is in full bloom (mid-season if not known)."""
    place = position(cultivar)
    return share_of_heat(cultivar.crop, place.days if place else middle_position(cultivar.crop))


def reference_day(share: float) -> float:
    """Day of full bloom at the reference place for a share of the apple's heat sum."""
    day = reference_sums().day_when(parameter("heat_sum") * share)
    return math.inf if day is None else day


#: Names of crops in the published tables that group several crops of ours.
STATION_CROPS: Mapping[str, str] = {
    "pear": "european pear", "tart cherry": "sour cherry", "european plum": "european plum",
}


def _day(text: str) -> int | None:
    """Day of the year of `Apr 27`; None when blank."""
    if not text:
        return None
    month, day = text.split()
    return day_of(f"{_MONTHS.index(month) + 1:02d}-{int(day):02d}")


@cache
def stations() -> tuple[Station, ...]:
    """All published bloom dates."""
    found = []
    with resource("plants", "bloom-dates.csv").open(encoding="utf-8", newline="") as file:
        for row in csv.DictReader(file):
            crop = row["crop"].lower()
            found.append(Station(
                crop=STATION_CROPS.get(crop, crop), name=row["reference_place"],
                latitude=float(row["latitude"]), longitude=float(row["longitude"]),
                elevation=float(row["elevation_m"]), first=_day(row["first_bloom"]),
                full=_day(row["full_bloom"]), fall=_day(row["petal_fall"]),
                one_season="ONE SEASON" in row.get("source_note", "").upper() or _single_year(row),
                sources=row["sources"],
            ))
    return tuple(found)


def _single_year(row: Mapping[str, str]) -> bool:
    """True for a row whose name ends in one year: a season, not a mean."""
    tail = row["reference_place"].rpartition(",")[2].strip()
    return tail.isdigit() and len(tail) == 4


def moved_days(station: Station, latitude: float, longitude: float, elevation: float | None) -> float:
    """Days by which spring comes later at a place than at a station."""
    america = station.longitude < -50 and longitude < -50
    north = parameter("days_per_degree_america" if america else "days_per_degree_europe")
    east = parameter("days_per_longitude_america") if america else 0.0
    height = 0.0 if elevation is None else elevation - station.elevation
    return (
        north * (latitude - station.latitude) + east * (longitude - station.longitude)
        + parameter("days_per_100m") * height / 100
    )


def nearest_station(latitude: float, longitude: float, crop: str | None = None) -> Station | None:
    """The nearest station in the same hemisphere with a mean date, of one crop if asked."""
    fit = [
        station for station in stations()
        if station.full is not None and not station.one_season and crop in (None, station.crop)
        and (station.latitude < 0) == (latitude < 0)
    ]
    if not fit:
        return None
    # Where periods of one place differ, the later one stands nearer to today: it comes last in the table.
    narrow = math.cos(math.radians(latitude))

    def far(station: Station) -> float:
        return math.hypot(station.latitude - latitude, (station.longitude - longitude) * narrow)

    return min(reversed(fit), key=far)


def station_share(station: Station) -> float | None:
    """Share of the apple's heat sum of the crop (mid-season) that a station reports."""
    return share_of_heat(station.crop, middle_position(station.crop))




def key_of(text: str) -> PlantKey | str:
    """A plant key from `crop:cultivar`, or the crop alone, as observed dates name them."""
    crop, colon, cultivar = text.partition(":")
    return PlantKey(crop.strip(), cultivar.strip()) if colon and cultivar.strip() else crop.strip()
