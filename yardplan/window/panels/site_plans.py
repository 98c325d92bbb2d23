"""The fields of the site: a short set for the side panel and the groups of the whole site card."""

from __future__ import annotations

import re
from typing import get_args
from zoneinfo import ZoneInfo, ZoneInfoNotFoundError

from attrs import evolve

from yardplan.language import decimals, later, tr
from yardplan.window.panels.entry import EntryError
from yardplan.window.panels.field_plans import SOIL, FieldPlan
from yardplan.yard.site import Units

#: USDA half zones from 1a to 13b (2023 map's definition, USDA ARS).
_ZONE = re.compile(r"(?:1[0-3]|[1-9])[ab]?")


def read_zone(typed: str) -> str:
    """A USDA zone as typed: `6b`, `Zone 6B`. Raises EntryError."""
    zone = typed.strip().lower().removeprefix("zone").strip()
    if not _ZONE.fullmatch(zone):
        raise EntryError(tr("'{typed}' is not a zone: write 1a to 13b, for example 6b", typed=typed))
    return zone


def read_time_zone(typed: str) -> str | None:
    """A time zone by its name, None for an empty text. Raises EntryError."""
    name = typed.strip()
    if not name:
        return None
    try:
        ZoneInfo(name)
    except (ZoneInfoNotFoundError, ValueError, OSError):
        raise EntryError(
            tr("'{typed}' is no time zone: write for example America/New_York", typed=typed)
        ) from None
    return name


def read_skyline(typed: str) -> tuple[tuple[float, float], ...]:
    """Pairs of compass direction and height in degrees: `90 12; 135 20`. Raises EntryError."""
    pairs = []
    for part in filter(None, (part.strip() for part in typed.split(";"))):
        words = part.replace("°", " ").replace(",", ".").split()
        try:
            bearing, height = (float(word) for word in words)
        except ValueError:
            raise EntryError(
                tr("'{part}' is not a direction and a height: write for example 90 12", part=part)
            ) from None
        if not (0 <= bearing <= 360 and 0 <= height <= _HIGHEST_SKYLINE):
            raise EntryError(tr(
                "'{part}': directions run 0 to 360, heights 0 to {highest}",
                part=part, highest=f"{_HIGHEST_SKYLINE:g}",
            ))
        pairs.append((bearing, height))
    return tuple(pairs)


def say_skyline(pairs: tuple[tuple[float, float], ...]) -> str:
    """Pairs as they are typed."""
    return "; ".join(decimals(f"{bearing:g}° {height:g}°") for bearing, height in pairs)


#: Degrees above level that a skyline stays under.
_HIGHEST_SKYLINE = 75.0
_UNIT_WORDS = {"metric": later("metres"), "imperial": later("feet and inches")}

NAME = FieldPlan(name=later("Name"), path="name", sort="text")
PLACE = FieldPlan(name=later("Place"), path="place", sort="text")
UNITS = FieldPlan(
    name=later("Measure in"), path="units", sort="choice",
    choices=tuple((units, _UNIT_WORDS[units]) for units in get_args(Units)),
)
NORTH = FieldPlan(
    name=later("North"), path="north", sort="number", low=-360, high=360, unit="°", digits=1,
    tip=later("How far true north is turned clockwise from straight up the drawing"),
)
ZONE = FieldPlan(
    name=later("Hardiness zone"), path="zone", sort="zone", optional=True, empty=later("not known"),
    tip=later("USDA zone: tells the mean of each winter's lowest temperature, and so which plants live"),
)
LAST_FROST = FieldPlan(
    name=later("Last frost"), path="last_frost", sort="day", optional=True, empty=later("not known"),
    tip=later("The spring day after which half the years have no frost"),
)
FIRST_FROST = FieldPlan(
    name=later("First frost"), path="first_frost", sort="day", optional=True, empty=later("not known"),
    tip=later("The autumn day by which half the years have had a frost"),
)

#: What the side panel offers when nothing is selected.
YARD_PLANS: tuple[FieldPlan, ...] = (NAME, PLACE, UNITS, NORTH, ZONE, LAST_FROST, FIRST_FROST, *SOIL[:2])

#: The site card, group by group.
GROUPS: tuple[tuple[str, tuple[FieldPlan, ...]], ...] = (
    (
        later("Place"),
        (
            NAME,
            PLACE,
            FieldPlan(
                name=later("Latitude"),
                path="latitude",
                sort="number",
                low=-66.5,
                high=66.5,
                unit="°",
                digits=3,
                tip=later(
                    "South is negative. Between the polar circles: beyond them the sun rule does not hold"
                ),
            ),
            FieldPlan(
                name=later("Longitude"),
                path="longitude",
                sort="number",
                low=-180,
                high=180,
                unit="°",
                digits=3,
                tip=later("West is negative"),
            ),
            FieldPlan(
                name=later("Height above the sea"),
                path="elevation",
                sort="elevation",
                low=-450,
                high=5000,
                optional=True,
                empty=later("not known"),
            ),
            FieldPlan(
                name=later("Country and state"),
                path="region",
                optional=True,
                empty=later("not known"),
                tip=later(
                    "Such as US-NY, DE or FR: tells which lot-line law and which dig-safe call are named"
                ),
            ),
            FieldPlan(
                name=later("Time zone"),
                path="time_zone",
                sort="time zone",
                optional=True,
                empty=later("by longitude"),
                tip=later("Such as America/New_York: the clock by which shadows can be shown"),
            ),
            UNITS,
            NORTH,
        ),
    ),
    (
        later("Winter and frost"),
        (
            ZONE,
            FieldPlan(
                name=later("Winter chill"),
                path="chill_hours",
                sort="number",
                low=0,
                high=5000,
                unit="h",
                digits=0,
                optional=True,
                empty=later("estimated from the months"),
                tip=later("Hours at or under 7 °C (45 °F) in the average winter, if you know them"),
            ),
            evolve(LAST_FROST, name=later("Last frost, 5 years of 10")),
            FieldPlan(
                name=later("Last frost, 1 year of 10"),
                path="last_frost_10",
                sort="day",
                optional=True,
                empty=later("not known"),
                tip=later("The spring day after which only one year in ten has a frost"),
            ),
            evolve(FIRST_FROST, name=later("First frost, 5 years of 10")),
            FieldPlan(
                name=later("First frost, 1 year of 10"),
                path="first_frost_10",
                sort="day",
                optional=True,
                empty=later("not known"),
                tip=later("The autumn day before which only one year in ten has a frost"),
            ),
        ),
    ),
    (
        later("Soil and lie of the land"),
        (
            *SOIL,
            FieldPlan(
                name=later("Watered"),
                path="irrigated",
                sort="choice",
                choices=((None, later("not known")), (True, later("yes")), (False, later("no"))),
            ),
            FieldPlan(
                name=later("Slope"),
                path="slope",
                sort="number",
                low=0,
                high=1,
                unit="%",
                factor=100,
                digits=0,
                tip=later("Rise over distance"),
            ),
            FieldPlan(
                name=later("Falls towards"),
                path="slope_aspect",
                sort="number",
                low=0,
                high=360,
                unit="°",
                digits=0,
                tip=later("Compass direction: 90 east, 180 south, 270 west"),
            ),
            FieldPlan(
                name=later("Skyline"),
                path="horizon",
                sort="skyline",
                empty=later("open all round"),
                tip=later(
                    "Hills or a forest edge: compass direction and height above level, "
                    "such as 90 12; 135 20; 180 8"
                ),
            ),
            FieldPlan(
                name=later("Sun counted from"),
                path="season:0",
                sort="day",
                tip=later("The first day of the months over which sun hours are averaged"),
            ),
            FieldPlan(
                name=later("Sun counted to"),
                path="season:1",
                sort="day",
                tip=later("The last day of the months over which sun hours are averaged"),
            ),
        ),
    ),
)
