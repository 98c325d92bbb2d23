"""What of a site bears on pollen, joined once: bloom, zone, chill and local figures."""

from __future__ import annotations

import re
import threading
from collections.abc import Mapping

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


_last = threading.local()


def place_for(
    site: Site, rules: Mapping[str, float], cultivars: Mapping[PlantKey, Cultivar]
) -> PollenPlace:
    """The place of a site; the last one asked for is kept, since a drag asks for it on every frame."""
    last = getattr(_last, "place", None)
    # Only an observed date looks into the catalogue.
    known = cultivars if site.observed_bloom else None
    if last is not None and last[0] is site and last[1] == rules and last[2] is known:
        return last[3]  # type: ignore[no-any-return]
    place = place_of(site, rules, cultivars)
    _last.place = (site, dict(rules), known, place)
    return place
