"""Everything the tables say of a place, each fact with the words that tell where it came from.

These words go into the yard file in English; `origin_words.origin_said` says them in the language shown.
"""

from __future__ import annotations

from typing import Any

from attrs import frozen

from yardplan.language import later
from yardplan.places.climate import Climate, Frost, StationUse, climate_at, with_height, zone_for
from yardplan.places.lookup import distance_km, find_places, nearest_town, nearest_zone
from yardplan.places.tables import Place
from yardplan.shipped import resource
from yardplan.yard import origin_words as words
from yardplan.yard.origin_words import ZONE_SENTENCE
from yardplan.yard.site import Origin


@frozen(kw_only=True)
class PlaceFacts:
    """A place, its climate and hardiness zone, and where each came from.

    `zone` is None where nothing is known; `zone_estimated` True where it is only "about", give or take one.
    """

    place: Place
    climate: Climate
    zone: str | None = None
    zone_estimated: bool = False
    origins: tuple[Origin, ...] = ()

    def origin(self, fact: str) -> str:
        """Where a fact came from, or an empty text."""
        return next((origin.text for origin in self.origins if origin.fact == fact), "")


def facts_at(place: Place, elevation: float | None = None) -> PlaceFacts:
    """The facts of a place; `elevation` in metres replaces the height of the table."""
    known = with_height(place, elevation)
    climate = climate_at(known)
    zone, estimated, zone_text = _zone(known, climate)
    origins = [
        Origin(fact="place", text=_place_text(known)),
        *_height_origin(known, typed=elevation is not None),
        *_by_town(known),
        *([Origin(fact="zone", text=zone_text)] if zone else []),
        *_climate_origins(climate),
    ]
    return PlaceFacts(
        place=known, climate=climate, zone=zone, zone_estimated=estimated, origins=tuple(origins)
    )


def facts_for(typed: str, elevation: float | None = None) -> PlaceFacts:
    """The facts of the best guess for typed words. Raises PlaceError as `find_places` does."""
    return facts_at(find_places(typed, 1)[0], elevation)


def to_site_fields(facts: PlaceFacts) -> dict[str, Any]:
    """The facts as fields of a Site; what is not known is None, so that nothing old stays behind."""
    frost, climate, place = facts.climate.frost, facts.climate, facts.place
    return {
        "place": place.label, "latitude": place.latitude, "longitude": place.longitude,
        "region": _region(place), "elevation": place.elevation, "time_zone": place.time_zone,
        "zone": facts.zone, "last_frost": frost.last, "last_frost_10": frost.last_10,
        "first_frost": frost.first, "first_frost_10": frost.first_10, "monthly_means": climate.means,
        "monthly_lows": climate.lows, "monthly_highs": climate.highs,
        "chill_hours": None, "origins": facts.origins,
    }


def _region(place: Place) -> str | None:
    """The country, with the state in the United States: `US-NY`. Law and digging rules hang on it."""
    if place.country == "US" and place.region:
        return f"US-{place.region}"
    return place.country or None


def credits() -> tuple[str, ...]:
    """The credits that the program must show, from SOURCES.md."""
    lines = resource("places", "SOURCES.md").read_text(encoding="utf-8").splitlines()
    return tuple(line.removeprefix("> ") for line in lines if line.startswith("> "))


def _place_text(place: Place) -> str:
    if place.found_by == "zip":
        return words.ZIP_PLACE.format(zip=place.zip_code)
    return later("typed in") if place.found_by == "position" else "GeoNames"


def _by_town(place: Place) -> list[Origin]:
    """Country and time zone: the town's own, for a position or ZIP code those of the nearest town."""
    text = "GeoNames"
    if place.found_by != "town":
        at = (place.latitude, place.longitude)
        town = nearest_town(*at)
        if town is not None:
            km = distance_km(at, (town.latitude, town.longitude))
            text = words.OF_TOWN.format(town=town.name, km=f"{km:.0f}")
    region = words.OF_ZIP if place.found_by == "zip" else text
    return [
        *([Origin(fact="region", text=region)] if _region(place) else []),
        *([Origin(fact="time_zone", text=text)] if place.time_zone else []),
    ]


def _height_origin(place: Place, *, typed: bool) -> list[Origin]:
    if place.elevation is None:
        return []
    text = later("typed in") if typed else (
        words.NEAREST_PLACE if place.found_by == "zip" else "GeoNames"
    )
    return [Origin(fact="elevation", text=text)]


def _zone(place: Place, climate: Climate) -> tuple[str | None, bool, str]:
    """Zone, whether it is only an estimate, and where it came from."""
    if place.country == "US":
        if place.zone and place.found_by == "zip":
            text = words.ZIP_ZONE.format(zip=place.zip_code)
            return place.zone, False, f"{text} {ZONE_SENTENCE}"
        found = nearest_zone(place.latitude, place.longitude)
        if found and found[0].zone:
            text = words.ZIP_ZONE_OFF.format(zip=found[0].zip_code, km=f"{found[1]:.0f}")
            return found[0].zone, False, f"{text} {ZONE_SENTENCE}"
    if climate.extreme_low is None:
        return None, False, ""
    whole = zone_for(climate.extreme_low).rstrip("ab")
    text = words.ABOUT_ZONE.format(zone=whole, low=f"{climate.extreme_low:.0f}")
    return whole, True, text


def station_text(use: StationUse) -> str:
    """A station with its distance, height difference, period and source, in one line."""
    height = words.NO_HEIGHT
    if use.height is not None:
        height = (words.ABOVE if use.height >= 0 else words.BELOW).format(metres=f"{abs(use.height):.0f}")
    source = f"{words.KINDS.get(use.station.source, use.station.source)} {use.station.period}"
    return words.STATION.format(
        station=use.station.name, km=f"{use.distance:.0f}", height=height, source=source
    )


def _climate_origins(climate: Climate) -> list[Origin]:
    origins = []
    if climate.means:
        text = f"{words.GRADES[climate.grade]}: " + "; ".join(station_text(use) for use in climate.uses)
        if climate.grade != "poor":
            text = words.WORSE_NEAR_WATER.format(text=text)
        origins.append(Origin(fact="monthly_means", text=text))
    if climate.frost.use:
        origins.append(Origin(fact="frost", text=_frost_text(climate.frost, climate.frost.use)))
    return origins


def _frost_text(frost: Frost, use: StationUse) -> str:
    if frost.kind == "rare":
        return words.RARE.format(station=station_text(use))
    if frost.kind == "allyear":
        return words.ALL_YEAR.format(station=station_text(use))
    how = words.FREEZE_DATES if use.station.frost == "N" else words.FROST_DAYS
    spread = [words.USUAL_SPREAD] if frost.ten_percent_estimated else []
    return "; ".join((station_text(use), how, *spread, words.FROST_GUIDE))
