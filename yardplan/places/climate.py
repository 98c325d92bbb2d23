"""The climate at a place from the stations around it, by a rule tested by leaving stations out.

Cost of a station = distance in km + difference of height in m / 5 (+ 15 if modelled). The three cheapest
within 100 km and 600 m, each moved to the height of the place, are weighted by 1 / (cost + 3)^2; the error
of a monthly mean is then about 0.85 degrees C. All figures stand in resources/places/figures.csv.
"""

from __future__ import annotations

import datetime
from collections.abc import Iterable
from typing import Literal

from attrs import evolve, frozen

from yardplan.places.lookup import near
from yardplan.places.tables import MODELLED, OBSERVED, Months, Place, Station, figure, figures, station

Grade = Literal["good", "fair", "poor", "none"]
_GRADES: tuple[Grade, ...] = ("good", "fair", "poor", "none")


@frozen(kw_only=True)
class StationUse:
    """A station seen from a place: `distance` km; `height` metres that the place lies above it, if known."""

    station: Station
    distance: float
    height: float | None
    cost: float


@frozen(kw_only=True)
class Frost:
    """Frost dates moved to a place's height. `kind` `dates`, `rare`, `allyear` or `unknown`.

    `ten_percent_estimated` True where the one-in-ten dates come from the usual spread.
    """

    kind: Literal["dates", "rare", "allyear", "unknown"] = "unknown"
    last: str | None = None
    last_10: str | None = None
    first: str | None = None
    first_10: str | None = None
    ten_percent_estimated: bool = False
    use: StationUse | None = None


@frozen(kw_only=True)
class Climate:
    """Monthly means at a place with the stations they came from, cheapest first; `grade` how good it is."""

    grade: Grade
    means: Months | None = None
    lows: Months | None = None
    highs: Months | None = None
    uses: tuple[StationUse, ...] = ()
    frost: Frost = Frost()
    extreme_low: float | None = None


def climate_at(place: Place) -> Climate:
    """The climate at a place; grade `none` and nothing else where no station is near enough."""
    around = _around(place)
    uses = around[: int(figure("stations_used"))]
    frost = frost_at(around, southern=place.latitude < 0)
    if not uses:
        return Climate(grade="none", frost=frost)
    south = place.latitude < 0
    return Climate(
        grade=_grade(uses, place.elevation), means=_weighted([(u, u.station.means) for u in uses], south),
        lows=_weighted([(u, u.station.lows) for u in uses], south),
        highs=_weighted([(u, u.station.highs) for u in uses], south),
        uses=tuple(uses), frost=frost, extreme_low=_extreme_low(around, south),
    )


def _around(place: Place) -> list[StationUse]:
    """Stations within the limits, cheapest first; doubtful positions only where there is nothing else."""
    at = (place.latitude, place.longitude)
    seen = [
        _use(station(cells), km, place.elevation)
        for name in (OBSERVED, MODELLED) for km, cells in near(name, at, figure("station_distance"))
    ]
    within = [u for u in seen if u.height is None or abs(u.height) <= figure("station_height")]
    sure = [u for u in within if not u.station.doubtful]
    return sorted(sure or within, key=lambda use: (use.cost, use.station.id))


def _use(found: Station, km: float, elevation: float | None) -> StationUse:
    height = None if elevation is None or found.elevation is None else elevation - found.elevation
    cost = km + abs(height or 0.0) / figure("height_cost")
    cost += figure("modelled_cost") if found.modelled else 0.0
    return StationUse(station=found, distance=km, height=height, cost=cost)


def _grade(uses: list[StationUse], elevation: float | None) -> Grade:
    """Good, fair or poor by distance and height difference of the cheapest station."""
    distance, height = uses[0].distance, abs(uses[0].height or 0.0)
    level = 2
    for i, name in enumerate(("good", "fair")):
        if distance <= figure(f"{name}_distance") and height <= figure(f"{name}_height"):
            level = i
            break
    heights = [use.station.elevation for use in uses if use.station.elevation is not None]
    spread = max(heights) - min(heights) if heights else 0.0
    if elevation is None and spread > figure("height_unknown_spread"):
        level = min(level + 1, 2)
    return _GRADES[level]


def lapse(southern: bool) -> Months:
    """Degrees C colder per 100 m of height, Jan to Dec; in the south the seasons are turned."""
    north = figures()["lapse"]
    return north[6:] + north[:6] if southern else north


def moved(values: Months, use: StationUse, southern: bool) -> Months:
    """Monthly temperatures of a station brought to 1991-2020 and to the height of the place, degrees C."""
    warmer = figures()["warming"] if use.station.source == "NOAA8110" else (0.0,) * 12
    hundreds = (use.height or 0.0) / 100
    return tuple(
        value + warm - hundreds * rate
        for value, warm, rate in zip(values, warmer, lapse(southern), strict=True)
    )


def _weighted(pairs: Iterable[tuple[StationUse, Months | None]], southern: bool) -> Months | None:
    """Weighted mean over the stations that have these values, to a tenth of a degree; None without any."""
    known = [(use, values) for use, values in pairs if values is not None]
    if not known:
        return None
    weights = [1 / (use.cost + figure("weight_offset")) ** 2 for use, _ in known]
    at_place = [moved(values, use, southern) for use, values in known]
    return tuple(
        round(sum(w * values[month] for w, values in zip(weights, at_place, strict=True)) / sum(weights), 1)
        for month in range(12)
    )


def frost_at(around: list[StationUse], *, southern: bool) -> Frost:
    """Frost dates of the cheapest station near enough that states any, moved to the place's height."""
    for use in around:
        too_high = use.height is not None and abs(use.height) > figure("frost_height")
        if not use.station.frost or use.distance > figure("frost_distance") or too_high:
            continue
        if use.station.frost in ("rare", "allyear"):
            return Frost(kind="rare" if use.station.frost == "rare" else "allyear", use=use)
        return _moved_frost(use)
    return Frost()


def _moved_frost(use: StationUse) -> Frost:
    hundreds = (use.height or 0.0) / 100
    later, earlier = figure("frost_later") * hundreds, -figure("frost_earlier") * hundreds
    s = use.station
    last, first = _shifted(s.last_frost, later), _shifted(s.first_frost, earlier)
    pairs = ((last, s.last_frost_10), (first, s.first_frost_10))
    estimated = any(date is not None and published is None for date, published in pairs)
    return Frost(
        kind="dates", last=last, first=first, use=use, ten_percent_estimated=estimated,
        last_10=_shifted(s.last_frost_10, later) or _shifted(last, figure("ten_percent_spring")),
        first_10=_shifted(s.first_frost_10, earlier) or _shifted(first, -figure("ten_percent_autumn")),
    )


def _shifted(date: str | None, days: float) -> str | None:
    """A `MM-DD` date so many days later, in a year without a leap day."""
    if date is None:
        return None
    month, day = int(date[:2]), int(date[3:])
    start = datetime.date(2001, month, min(day, 28) if month == 2 else day)
    return (start + datetime.timedelta(days=round(days))).strftime("%m-%d")


def _extreme_low(around: list[StationUse], southern: bool) -> float | None:
    """Rough mean yearly minimum, degrees C: the cheapest station's, at the height of the place."""
    for use in around:
        if use.station.extreme_low is not None:
            coldest = min(range(12), key=lambda month: use.station.means[month])
            return round(use.station.extreme_low - (use.height or 0.0) / 100 * lapse(southern)[coldest], 1)
    return None


def zone_for(extreme_low: float) -> str:
    """The USDA half-zone of a mean yearly minimum in degrees C, by the definition of the zones."""
    steps = (extreme_low * 1.8 + 32 - figure("coldest_zone_limit")) // figure("half_zone")
    index = max(0, min(int(steps), int(figure("half_zones")) - 1))
    return f"{index // 2 + 1}{'ab'[index % 2]}"


def with_height(place: Place, elevation: float | None) -> Place:
    """The place with a height typed by its user, metres."""
    return place if elevation is None else evolve(place, elevation=elevation)
