"""The moment of the shadows by the sun's clock or the site's, and when the sun is up."""

from __future__ import annotations

from datetime import datetime

from attrs import evolve

from yardplan.language import tr
from yardplan.sun import clock
from yardplan.sun.clock import Clock, ZoneError
from yardplan.sun.position import LatitudeError, check_place
from yardplan.window.light.words import date_of
from yardplan.window.open_yard import Moment
from yardplan.yard.site import Site

#: In the order of the choice.
CLOCKS: tuple[Clock, ...] = ("solar", "zone")


def usable(moment: Moment, site: Site) -> Clock:
    """The clock chosen, or the sun's where the site's zone is not known."""
    if moment.clock == "zone" and zone_fault(site):
        return "solar"
    return moment.clock


def zone_fault(site: Site) -> str:
    """Why the site's clock cannot be shown, or nothing."""
    try:
        clock.zone_of(site)
    except ZoneError as error:
        return str(error)
    return ""


def instant(moment: Moment, site: Site) -> datetime:
    """The moment as UTC."""
    return clock.moment(date_of(moment.day), moment.hour, site, usable(moment, site))


def on_clock(moment: Moment, site: Site, wanted: Clock) -> Moment:
    """The same instant by another clock."""
    if wanted == "zone" and zone_fault(site):
        return moment
    _, hour = clock.shown(instant(moment, site), site, wanted)
    return evolve(moment, hour=hour, clock=wanted)


def clock_words(moment: Moment, site: Site, wanted: Clock) -> str:
    """`sun time`, or the zone's own letters on that day, `EDT`."""
    if wanted == "solar":
        return tr("sun time")
    if zone_fault(site):
        return tr("local time")
    at = clock.moment(date_of(moment.day), 12.0, site)
    name = at.astimezone(clock.zone_of(site)).strftime("%Z")
    return tr("local, {name}", name=name) if name else tr("local time")


def day_span(moment: Moment, site: Site) -> tuple[float, float] | None:
    """Hours of sunrise and sunset by the chosen clock; the whole day in polar day; None in polar night."""
    try:
        check_place(site.latitude, site.longitude)
    except LatitudeError:
        return None
    times = clock.sun_times(date_of(moment.day), site)
    if times.day == "never rises":
        return None
    if times.rise is None or times.set is None:
        return (0.0, 24.0)
    kind = usable(moment, site)
    rise, set_ = (clock.shown(at, site, kind)[1] for at in (times.rise, times.set))
    return (rise, set_ if set_ > rise else 24.0)


def sun_words(moment: Moment, site: Site) -> str:
    """`sun 5:28 to 20:49`, or that it never rises or sets."""
    try:
        check_place(site.latitude, site.longitude)
    except LatitudeError:
        return tr("latitude not on Earth")
    times = clock.sun_times(date_of(moment.day), site)
    if times.rise is None or times.set is None:
        return tr("sun never rises") if times.day == "never rises" else tr("sun never sets")
    kind = usable(moment, site)
    rise, set_ = (_short(clock.clock_text(at, site, kind)) for at in (times.rise, times.set))
    return tr("sun {rise} to {set}", rise=rise, set=set_)


def _short(text: str) -> str:
    return text.removeprefix("0")
