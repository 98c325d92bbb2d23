"""Facts of the site that are not known where they decide something, and what they would decide."""

from __future__ import annotations

from collections.abc import Callable, Container

from attrs import frozen

from yardplan.language import later, tr
from yardplan.yard.site import Site

#: pH from which free lime may be in the ground; below it acid has long dissolved it (common practice).
_LIME_POSSIBLE = 6.5


@frozen
class _Asked:
    """A fact to ask for: its path, what it would decide, and whether it decides anything here."""

    path: str
    words: str
    wanted: Callable[[Site], bool]


def _unset(path: str) -> Callable[[Site], bool]:
    """True while the fact at the path is None."""
    first, _, rest = path.partition(".")
    return lambda site: getattr(getattr(site, first), rest) is None if rest else getattr(site, first) is None


def _never_told(path: str) -> Callable[[Site], bool]:
    """True while nobody has said it: for facts that stand at a usual value until then."""
    return lambda site: not any(origin.fact == path for origin in site.origins)


def _lime_counts(site: Site) -> bool:
    soil = site.soil
    return soil.lime is None and (soil.ph is None or soil.ph >= _LIME_POSSIBLE)


_TOLD_SLOPE, _TOLD_ASPECT = _never_told("slope"), _never_told("slope_aspect")

ASKED: tuple[_Asked, ...] = (
    _Asked("latitude", later("Where the yard lies would tell how high the sun stands and when things bloom: "
                             "until then both are reckoned for 45° north."), lambda site: not site.entered),
    _Asked("region", later("The country (in the US with its state) would tell which lot-line law, dig-safe "
                           "call and rules on currants hold."), _unset("region")),
    _Asked("elevation", later("The height above the sea would tell how far bloom lies behind or before the "
                              "station it is counted from."), _unset("elevation")),
    _Asked("zone", later("The hardiness zone would tell which plants live through the winter."),
           _unset("zone")),
    _Asked("last_frost", later("The last frost day would tell whether bloom is in danger."),
           _unset("last_frost")),
    _Asked("first_frost", later("The first frost day would tell whether late fruit ripens."),
           _unset("first_frost")),
    _Asked("monthly_means", later("Monthly means would tell when things bloom, and whether the winter is "
                                  "cold enough for fruit to set."), _unset("monthly_means")),
    _Asked("soil.ph", later("The soil's pH would tell which fruits grow well, and what to add for the rest."),
           _unset("soil.ph")),
    _Asked("soil.texture", later("The soil's texture would tell how much sulfur or lime it takes."),
           _unset("soil.texture")),
    _Asked("soil.lime", later("Free lime would tell whether sulfur can make the ground acid at all: see "
                              "whether dry soil fizzes under vinegar."), _lime_counts),
    _Asked("soil.drainage", later("Drainage would tell where roots would drown."), _unset("soil.drainage")),
    _Asked("irrigated", later("Whether it is watered would tell if berries with shallow roots last through "
                              "dry weeks."), _unset("irrigated")),
    _Asked("slope", later("The slope (0 where it is level) would tell where cold air gathers and how much "
                          "sun the ground gets."), lambda site: site.slope == 0 and _TOLD_SLOPE(site)),
    _Asked("slope_aspect", later("Where the slope falls to would tell how much sun it gets, and on which "
                                 "side of a fence cold air stands."),
           lambda site: site.slope > 0 and _TOLD_ASPECT(site)),
)


def missing(site: Site) -> list[str]:
    """Paths of the facts to ask for."""
    return [asked.path for asked in ASKED if asked.wanted(site)]


def missing_words(site: Site, among: Container[str] | None = None) -> list[str]:
    """What is not known, and what it would decide; only facts whose path is `among` those, if given."""
    return [
        tr(asked.words) for asked in ASKED
        if asked.wanted(site) and (among is None or asked.path in among)
    ]
