"""Clocks and dates: zone time, solar time, and when the sun rises and sets on a day."""

from __future__ import annotations

from datetime import UTC, date, datetime, time, timedelta, timezone, tzinfo
from typing import Literal
from zoneinfo import ZoneInfo, ZoneInfoNotFoundError

from attrs import frozen

from yardplan.language import tr
from yardplan.sun import position
from yardplan.yard.site import Site

Clock = Literal["zone", "solar"]
Day = Literal["rises and sets", "never sets", "never rises"]


class ZoneError(ValueError):
    """A time zone that this computer does not know, said in words."""


@frozen
class SunTimes:
    """Rise, highest point and set of one solar day, as UTC moments; None where it does not rise or set."""

    day: Day
    noon: datetime
    rise: datetime | None
    set: datetime | None


def zone_of(site: Site) -> tzinfo:
    """The site's clock: its IANA zone, or else whole hours by its longitude. Raises ZoneError."""
    if site.time_zone is None:
        return timezone(timedelta(hours=round(site.longitude / 15.0)))
    try:
        return ZoneInfo(site.time_zone)
    except (ZoneInfoNotFoundError, ValueError, OSError):
        raise ZoneError(
            tr(
                "the time zone '{time_zone}' is not known: write it like America/New_York, or leave it "
                "out",
                time_zone=site.time_zone,
            )
        ) from None


def mean_noon(day: date, longitude: float) -> float:
    """UTC seconds at which the mean sun stands highest on a day of the place's own mean solar time."""
    start = datetime.combine(day, time(), UTC).timestamp()
    return start + 43200.0 - longitude * 240.0


def true_noon(day: date, longitude: float) -> float:
    """UTC seconds at which the sun crosses the meridian."""
    noon = mean_noon(day, longitude)
    return noon - float(position.equation_of_time(noon)) * 60.0


def moment(day: date, hours: float, site: Site, clock: Clock = "zone") -> datetime:
    """The UTC moment at which the chosen clock shows `hours` (0 to 24) on `day`.

    An hour that a change of clocks leaves out is taken as by the clock before the change.
    """
    if clock == "solar":
        seconds = true_noon(day, site.longitude) + (hours - 12.0) * 3600.0
        # The equation of time moves by up to half a minute a day, so one more look is enough.
        error = (hours - float(position.solar_hour(seconds, site.longitude)) + 12.0) % 24.0 - 12.0
        return _utc(seconds + error * 3600.0)
    local = datetime.combine(day, time()) + timedelta(hours=hours)
    return local.replace(tzinfo=zone_of(site)).astimezone(UTC)


def shown(at: datetime, site: Site, clock: Clock = "zone") -> tuple[date, float]:
    """Date and hours that the chosen clock shows at a moment."""
    if clock == "solar":
        hours = float(position.solar_hour(at.timestamp(), site.longitude))
        mean = at.astimezone(UTC) + timedelta(hours=site.longitude / 15.0)
        return (mean - timedelta(hours=hours - 12.0)).date(), hours
    local = at.astimezone(zone_of(site))
    return local.date(), local.hour + local.minute / 60.0 + local.second / 3600.0


def clock_text(at: datetime, site: Site, clock: Clock = "zone") -> str:
    """`06:12` by the chosen clock, to the nearest minute."""
    minutes = round(shown(at, site, clock)[1] * 60.0) % 1440
    return f"{minutes // 60:02d}:{minutes % 60:02d}"


def _utc(seconds: float) -> datetime:
    return datetime.fromtimestamp(seconds, UTC)


def _crossing(noon: float, site: Site, side: int, altitude: float) -> float:
    """UTC seconds of the sun's passing an altitude before (-1) or after (+1) noon, by repeated correction."""
    at = noon
    for _ in range(4):
        hours = float(position.half_day(position.declination(at), site.latitude, altitude))
        transit = noon if at == noon else at + _to_transit(at, site.longitude)
        at = transit + side * hours * 3600.0
    return at


def _to_transit(at: float, longitude: float) -> float:
    """Seconds from a moment to the transit nearest to it."""
    return -((float(position.solar_hour(at, longitude)) - 12.0) * 3600.0)


def sun_times(day: date, site: Site, altitude: float = position.HORIZON_ALTITUDE) -> SunTimes:
    """When the sun passes an altitude on a day; polar day and night are named and raise nothing."""
    noon = true_noon(day, site.longitude)
    half = float(position.half_day(position.declination(noon), site.latitude, altitude))
    if half <= 0.0:
        return SunTimes("never rises", _utc(noon), None, None)
    if half >= 12.0:
        return SunTimes("never sets", _utc(noon), None, None)
    rise, set_ = _crossing(noon, site, -1, altitude), _crossing(noon, site, 1, altitude)
    return SunTimes("rises and sets", _utc(noon), _utc(rise), _utc(set_))
