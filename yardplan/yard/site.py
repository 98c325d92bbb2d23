"""The site: where the yard lies, its climate and its soil. Unknown facts are None, never guessed."""

from __future__ import annotations

from typing import Literal

from attrs import field, frozen

from yardplan.language import later

Units = Literal["imperial", "metric"]
Texture = Literal["sand", "loamy sand", "sandy loam", "loam", "silt loam", "clay loam", "clay", "organic"]
Drainage = Literal["good", "fair", "poor"]


#: The origin of a fact that was typed in.
TYPED = later("typed in")


@frozen(kw_only=True)
class Soil:
    """Soil of the lot, a bed or a container. `ph` in water; `lime` True where it fizzes with vinegar."""

    ph: float | None = None
    texture: Texture | None = None
    lime: bool | None = None
    drainage: Drainage | None = None


@frozen(kw_only=True)
class Origin:
    """Where a fact of the site came from, e.g. a station and its distance, or `typed in`."""

    fact: str
    text: str


#: Facts that say where a yard lies.
_WHERE = frozenset({"place", "latitude", "longitude"})


@frozen(kw_only=True)
class Site:
    """Place, climate and soil of a yard.

    `latitude`, `longitude` in degrees (south and west negative); `elevation` in metres;
    `north` in degrees: the direction of true north on the drawing, clockwise from the drawing's +y.
    `zone` a USDA half zone like `6b`. Frost dates are `MM-DD`: `last_frost` and `first_frost` are
    the dates with even odds, the `_10` ones are passed in one year of ten.
    `monthly_means` twelve mean temperatures, Jan to Dec, in degrees C.
    `chill_hours` at or under 7 C in the average winter, where it is known on the spot (None: estimated).
    `season` first and last day (`MM-DD`) over which sun is averaged; None: by hemisphere.
    `slope` rise per metre, `slope_aspect` compass direction the ground falls towards, degrees.
    `horizon` (azimuth, altitude) pairs in degrees of hills or a forest edge.
    """

    name: str = "Untitled yard"
    place: str = ""
    latitude: float = 45.0
    longitude: float = 0.0
    elevation: float | None = None
    north: float = 0.0
    time_zone: str | None = None
    region: str | None = None
    zone: str | None = None
    last_frost: str | None = None
    last_frost_10: str | None = None
    first_frost: str | None = None
    first_frost_10: str | None = None
    monthly_means: tuple[float, ...] | None = None
    monthly_lows: tuple[float, ...] | None = None
    monthly_highs: tuple[float, ...] | None = None
    chill_hours: float | None = None
    soil: Soil = field(factory=Soil)
    units: Units = "metric"
    season: tuple[str, str] | None = None
    slope: float = 0.0
    slope_aspect: float = 180.0
    horizon: tuple[tuple[float, float], ...] = ()
    irrigated: bool | None = None
    observed_bloom: tuple[tuple[str, str], ...] = ()
    origins: tuple[Origin, ...] = ()

    @property
    def entered(self) -> bool:
        """True once somebody has said where the yard lies; before, it stands at a latitude in the middle."""
        usual = Site()
        told = any(origin.fact in _WHERE for origin in self.origins)
        return told or (self.place, self.latitude, self.longitude) != ("", usual.latitude, usual.longitude)

    @property
    def southern(self) -> bool:
        """True south of the equator: the seasons are turned by half a year."""
        return self.latitude < 0

    @property
    def zone_estimated(self) -> bool:
        """True where a look-up could only estimate the zone: it gives a whole one then, not a half.

        A zone that was typed in counts as known.
        """
        looked_up = any(origin.fact == "zone" and origin.text != TYPED for origin in self.origins)
        return looked_up and self.zone is not None and self.zone.isdecimal()

    @property
    def growing_season(self) -> tuple[str, str]:
        """First and last day (`MM-DD`) of the season over which sun hours are averaged."""
        if self.season is not None:
            return self.season
        return ("10-01", "03-31") if self.southern else ("04-01", "09-30")
