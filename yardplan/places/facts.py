"""Everything the tables say of a place, each fact with the words that tell where it came from."""

from __future__ import annotations

from typing import Any

from attrs import frozen

from yardplan.language import later, tr
from yardplan.places.climate import Climate, Frost, StationUse, climate_at, with_height, zone_for
from yardplan.places.lookup import distance_km, find_places, nearest_town, nearest_zone
from yardplan.places.tables import Place
from yardplan.shipped import resource
from yardplan.yard.site import Origin

#: Shown with every US zone, as the publisher asks.
ZONE_SENTENCE = later(
    "Looked up by ZIP code; this program is not the official USDA Plant Hardiness Zone Map."
)
_GRADES = {
    "good": later("good match"), "fair": later("fair match"), "poor": later("poor match"),
    "none": later("no match"),
}
_FROST_GUIDE = later("a guide: cold hollows run two weeks later")


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


def facts_for(words: str, elevation: float | None = None) -> PlaceFacts:
    """The facts of the best guess for typed words. Raises PlaceError as `find_places` does."""
    return facts_at(find_places(words, 1)[0], elevation)


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
        return tr("ZIP code {zip}; US Census Bureau and GeoNames", zip=place.zip_code)
    return later("typed in") if place.found_by == "position" else "GeoNames"


def _by_town(place: Place) -> list[Origin]:
    """Country and time zone: the town's own, for a position or ZIP code those of the nearest town."""
    text = "GeoNames"
    if place.found_by != "town":
        at = (place.latitude, place.longitude)
        town = nearest_town(*at)
        if town is not None:
            km = distance_km(at, (town.latitude, town.longitude))
            text = tr("that of {town}, {km} km away; GeoNames", town=town.name, km=f"{km:.0f}")
    region = tr("the ZIP code's; US Census Bureau") if place.found_by == "zip" else text
    return [
        *([Origin(fact="region", text=region)] if _region(place) else []),
        *([Origin(fact="time_zone", text=text)] if place.time_zone else []),
    ]


def _height_origin(place: Place, *, typed: bool) -> list[Origin]:
    if place.elevation is None:
        return []
    text = later("typed in") if typed else (
        tr("the nearest place of 1,000 people; slopes differ") if place.found_by == "zip" else "GeoNames"
    )
    return [Origin(fact="elevation", text=text)]


def _zone(place: Place, climate: Climate) -> tuple[str | None, bool, str]:
    """Zone, whether it is only an estimate, and where it came from."""
    if place.country == "US":
        if place.zone and place.found_by == "zip":
            text = tr("ZIP code {zip}, USDA 2023.", zip=place.zip_code)
            return place.zone, False, f"{text} {tr(ZONE_SENTENCE)}"
        found = nearest_zone(place.latitude, place.longitude)
        if found and found[0].zone:
            text = tr("ZIP code {zip}, {km} km away, USDA 2023.", zip=found[0].zip_code, km=f"{found[1]:.0f}")
            return found[0].zone, False, f"{text} {tr(ZONE_SENTENCE)}"
    if climate.extreme_low is None:
        return None, False, ""
    whole = zone_for(climate.extreme_low).rstrip("ab")
    text = tr(
        "about zone {zone}, give or take one: estimated from monthly temperatures (yearly minimum about "
        "{low} °C)", zone=whole, low=f"{climate.extreme_low:.0f}",
    )
    return whole, True, text


def station_text(use: StationUse) -> str:
    """A station with its distance, height difference, period and source, in one line."""
    kind = {"NOAA8110": later("NOAA normals"), "WMO9120": later("WMO normals"),
            "CHELSA": later("climate model CHELSA")}
    height = tr("height difference not known")
    if use.height is not None:
        words = later("place {metres} m above it") if use.height >= 0 else later("place {metres} m below it")
        height = tr(words, metres=f"{abs(use.height):.0f}")
    source = f"{tr(kind.get(use.station.source, use.station.source))} {use.station.period}"
    return tr("{station}, {km} km away, {height}, {source}", station=use.station.name,
              km=f"{use.distance:.0f}", height=height, source=source)


def _climate_origins(climate: Climate) -> list[Origin]:
    origins = []
    if climate.means:
        text = f"{tr(_GRADES[climate.grade])}: " + "; ".join(station_text(use) for use in climate.uses)
        if climate.grade != "poor":
            text = tr("{text}. Near a coast, a large lake or in a narrow valley count it one grade worse",
                      text=text)
        origins.append(Origin(fact="monthly_means", text=text))
    if climate.frost.use:
        origins.append(Origin(fact="frost", text=_frost_text(climate.frost, climate.frost.use)))
    return origins


def _frost_text(frost: Frost, use: StationUse) -> str:
    if frost.kind == "rare":
        return tr("frost is rare: under two days a year at {station}", station=station_text(use))
    if frost.kind == "allyear":
        return tr("frost is possible in every month at {station}", station=station_text(use))
    how = tr("freeze dates") if use.station.frost == "N" else tr("estimated from frost days by month")
    spread = [tr("one-in-ten dates by the usual spread")] if frost.ten_percent_estimated else []
    return "; ".join((station_text(use), how, *spread, tr(_FROST_GUIDE)))
