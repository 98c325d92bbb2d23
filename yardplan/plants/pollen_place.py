"""What of a site bears on pollen, joined once: bloom, zone, chill and local figures."""

from __future__ import annotations

import re
from collections.abc import Mapping
from functools import lru_cache

from yardplan.plants.bloom import BloomAt, bloom_at
from yardplan.plants.chill import site_chill
from yardplan.plants.cultivar import Cultivar
from yardplan.plants.limits import Limits
from yardplan.plants.pollen_reason import PollenPlace
from yardplan.yard.planting import PlantKey
from yardplan.yard.site import Site


def whole_zone(zone: str | None) -> int | None:
    """The number of a USDA zone such as `6b`; None when it is not known."""
    found = re.match(r"\s*(\d+)", zone or "")
    return int(found[1]) if found else None


def place_of(
    site: Site, rules: Mapping[str, float] | None = None,
    cultivars: Mapping[PlantKey, Cultivar] | None = None,
    bloom: BloomAt | None = None,
) -> PollenPlace:
    """The place of a site. `rules` the yard's local figures; `cultivars` those an observed date may name."""
    limits = Limits(dict(rules or {}))
    chill = site_chill(site)
    return PollenPlace(
        bloom=bloom or bloom_at(site, cultivars, limits), zone=whole_zone(site.zone),
        chill=None if chill is None else chill.hours, limits=limits, units=site.units,
    )


@lru_cache(maxsize=8)
def _kept(site: Site, rules: tuple[tuple[str, float], ...]) -> PollenPlace:
    from yardplan.plants.catalogue import catalogue

    return place_of(site, dict(rules), catalogue().cultivars)


def kept_place(site: Site, rules: Mapping[str, float]) -> PollenPlace:
    """The place of a site, kept for the sites last asked for. Observed dates may name shipped cultivars."""
    return _kept(site, tuple(sorted(rules.items())))
