"""Finds plants by words and by what is asked of them."""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import TYPE_CHECKING

from attrs import frozen

from yardplan.language import tr
from yardplan.plants.cultivar import Cultivar, SelfFruit

if TYPE_CHECKING:
    from yardplan.plants.catalogue import Catalogue

_ZONE = re.compile(r"(\d+)([ab]?)")


@frozen(kw_only=True)
class Filters:
    """What a plant must meet; None or empty: not asked. Unknown facts do not meet a filter.

    `zone` a USDA zone it must live in; `spread_up_to`, `height_up_to` metres; `chill_up_to` hours that
    the place gives; `self_fruitful` True: sets fruit by itself; `ripening` a word of the harvest season.
    """

    crop: str = ""
    zone: str = ""
    self_fruitful: bool | None = None
    spread_up_to: float | None = None
    height_up_to: float | None = None
    container: bool | None = None
    chill_up_to: float | None = None
    ripening: str = ""
    thornless: bool | None = None


def zone_number(zone: str, *, upper: bool = False) -> float:
    """A zone as a number: 5a is 5.0, 5b is 5.5; a whole zone is its cold half, or with `upper` its warm one.

    Raises ValueError when the text is no zone.
    """
    match = _ZONE.fullmatch(zone.strip().lower())
    if match is None:
        raise ValueError(tr("'{zone}' is not a hardiness zone such as 5 or 5b", zone=zone))
    half = match[2] or ("b" if upper else "a")
    return int(match[1]) + (0.5 if half == "b" else 0.0)


def hardy_in(cultivar: Cultivar, zone: str) -> bool | None:
    """Whether the zone is within those printed for the cultivar; None where they are not known."""
    if cultivar.zone_min is None:
        return None
    place = zone_number(zone)
    if place < zone_number(cultivar.zone_min):
        return False
    return cultivar.zone_max is None or place <= zone_number(cultivar.zone_max, upper=True)


def _text_of(cultivar: Cultivar, crop_name: str) -> tuple[str, str]:
    """Names, and everything else, in small letters."""
    names = f"{cultivar.name} {cultivar.crop} {crop_name}".casefold()
    return names, f"{cultivar.species} {cultivar.type} {cultivar.harvest_season} {cultivar.note}".casefold()


def _rank(cultivar: Cultivar, words: Sequence[str], crop_name: str) -> int | None:
    """Lower is better; None where a word is not found."""
    name = cultivar.name.casefold()
    names, rest = _text_of(cultivar, crop_name)
    total = 0 if name == " ".join(words) else 1
    for word in words:
        if name.startswith(word):
            continue
        if word in names.split():
            total += 1
        elif word in names:
            total += 2
        elif word in rest:
            total += 6
        else:
            return None
    return total


def search(catalogue: Catalogue, words: str, filters: Filters | None = None) -> list[Cultivar]:
    """The cultivars in which all words are found and that meet the filters, best first."""
    wanted = words.casefold().split()
    ranked = []
    for place, cultivar in enumerate(catalogue.cultivars.values()):
        crop = catalogue.crops.get(cultivar.crop)
        rank = _rank(cultivar, wanted, " ".join((crop.name, *crop.aliases)) if crop else "")
        if rank is not None and (filters is None or meets(cultivar, filters)):
            ranked.append((rank, place, cultivar))
    return [cultivar for _, _, cultivar in sorted(ranked, key=lambda found: found[:2])]


def _within(span: tuple[float, float] | None, limit: float | None) -> bool:
    return limit is None or (span is not None and span[0] <= limit)


def meets(cultivar: Cultivar, filters: Filters) -> bool:
    """True when the cultivar meets every filter that is set."""
    alone = cultivar.self_fruitful is SelfFruit.YES
    return (
        (not filters.crop or cultivar.crop == filters.crop)
        and (not filters.zone or hardy_in(cultivar, filters.zone) is True)
        and (filters.self_fruitful is None or alone is filters.self_fruitful)
        and _within(cultivar.spread, filters.spread_up_to)
        and _within(cultivar.height, filters.height_up_to)
        and _within(cultivar.chill_hours, filters.chill_up_to)
        and (filters.container is None or cultivar.container.startswith("yes") is filters.container)
        and (filters.thornless is None or (cultivar.thornless == "yes") is filters.thornless)
        and (not filters.ripening or filters.ripening.casefold() in cultivar.harvest_season.casefold())
    )
