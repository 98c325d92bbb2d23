"""Which varieties of the catalogue to list: words, kind, and what the grower needs of them."""

from __future__ import annotations

from difflib import get_close_matches

from attrs import evolve, frozen

from yardplan.language import later, tr
from yardplan.plants.catalogue import Catalogue
from yardplan.plants.chill import site_chill
from yardplan.plants.cultivar import Cultivar, SelfFruit
from yardplan.plants.finder import Filters, search
from yardplan.plants.growth import mature_size
from yardplan.yard.planting import Planting
from yardplan.yard.site import Site

#: A slip is looked for in words of at least so many letters, among so many names that are so much alike.
_LEAST_TYPED, _NEAREST, _ALIKE = 4, 5, 0.75


@frozen(kw_only=True)
class Asked:
    """What is asked for; a fact that is not known does not pass a filter that asks for it.

    `hours` of sun that there are; `widest` spread at full size in the usual form, metres.
    """

    words: str = ""
    crop: str = ""
    hardy: bool = False
    alone: bool = False
    chilled: bool = False
    container: bool = False
    thornless: bool = False
    ripening: str = ""
    hours: float | None = None
    widest: float | None = None


def _fits(catalogue: Catalogue, cultivar: Cultivar, asked: Asked) -> bool:
    """True when sun and room asked for suffice for a variety in its usual form."""
    crop = catalogue.crops.get(cultivar.crop)
    if asked.hours is not None and (crop is None or crop.sun_needed > asked.hours):
        return False
    if asked.widest is None:
        return True
    placed = Planting(id="asked", plant=cultivar.key, place=(0.0, 0.0))
    return crop is not None and mature_size(catalogue, placed).spread <= asked.widest


def listed(catalogue: Catalogue, asked: Asked, site: Site) -> list[Cultivar]:
    """The varieties that pass: best match first, or by kind and name where no words are given."""
    chill = site_chill(site) if asked.chilled else None
    filters = Filters(
        crop=asked.crop,
        zone=(site.zone or "") if asked.hardy else "",
        self_fruitful=True if asked.alone else None,
        container=True if asked.container else None,
        thornless=True if asked.thornless else None,
        ripening=asked.ripening,
        chill_up_to=chill.hours if chill is not None else None,
    )
    found = search(catalogue, asked.words, filters)
    found += _named_here(search(catalogue, "", filters), asked.words, found)
    found = [cultivar for cultivar in found if _fits(catalogue, cultivar, asked)]
    if not asked.words.strip():
        found.sort(key=lambda cultivar: (cultivar.crop, cultivar.name.casefold()))
    return found


def nearest(catalogue: Catalogue, asked: Asked, site: Site) -> list[Cultivar]:
    """What may be meant where nothing holds the words typed: a slip in a variety's name or in a kind's."""
    typed = asked.words.strip().casefold()
    if len(typed) < _LEAST_TYPED:
        return []
    names: dict[str, list[Cultivar]] = {}
    for cultivar in listed(catalogue, evolve(asked, words=""), site):
        for name in {cultivar.name.casefold(), cultivar.crop, tr(cultivar.crop).casefold()}:
            names.setdefault(name, []).append(cultivar)
    found = {
        cultivar.key: cultivar
        for name in get_close_matches(typed, names, n=_NEAREST, cutoff=_ALIKE) for cultivar in names[name]
    }
    return list(found.values())


def _named_here(all_of_them: list[Cultivar], words: str, found: list[Cultivar]) -> list[Cultivar]:
    """Those besides `found` whose kind, as the language shown calls it, holds a word: `Apfel`."""
    wanted = words.casefold().split()
    held = {cultivar.key for cultivar in found}
    named = {crop: tr(crop).casefold() for crop in {cultivar.crop for cultivar in all_of_them}}
    return [
        cultivar for cultivar in all_of_them
        if wanted and cultivar.key not in held and named[cultivar.crop] != cultivar.crop
        and all(word in f"{named[cultivar.crop]} {cultivar.name.casefold()}" for word in wanted)
    ]


_SELF_WORDS = {
    SelfFruit.YES: later("sets fruit by itself"),
    SelfFruit.PARTLY: later("better with a partner"),
    SelfFruit.NO: later("needs a partner"),
    SelfFruit.NOT_APPLICABLE: "",
    SelfFruit.UNKNOWN: later("partner need not known"),
}


def self_words(cultivar: Cultivar) -> str:
    """Whether it needs a partner, in the shared words; the sexed kinds say their sex."""
    if cultivar.sex:
        return tr(cultivar.sex)
    return tr(_SELF_WORDS[cultivar.self_fruitful])


def zone_words(cultivar: Cultivar) -> str:
    """`zones 4–7`, `from zone 4`, or nothing."""
    low, high = cultivar.zone_min, cultivar.zone_max
    if low and high and low != high:
        return tr("zones {low}–{high}", low=low, high=high)
    if low:
        return tr("zone {zone}", zone=low) if high else tr("from zone {zone}", zone=low)
    return tr("to zone {zone}", zone=high) if high else ""


def bloom_words(cultivar: Cultivar) -> str:
    """`early bloom`, or nothing."""
    return tr("{season} bloom", season=tr(cultivar.bloom_season)) if cultivar.bloom_season else ""


#: The columns whose facts a row of the list shows.
_SHOWN = ("zone_min", "self_fruitful", "bloom_season", "harvest_season")


def fact_words(cultivar: Cultivar) -> str:
    """One line of what decides: partner, bloom, ripening."""
    parts = [self_words(cultivar)]
    parts.append(bloom_words(cultivar))
    if cultivar.harvest_season:
        parts.append(tr("ripens {season}", season=tr(cultivar.harvest_season)))
    return " · ".join(part for part in parts if part)


def memory_columns(cultivar: Cultivar) -> list[str]:
    """Which of the facts shown were written down from memory."""
    return [name for name in _SHOWN if getattr(cultivar, name) and cultivar.from_memory(name)]
