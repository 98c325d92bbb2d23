"""Every fact of a variety in words, with where it comes from."""

from __future__ import annotations

import re

from attrs import frozen

from yardplan.checks.wording import cited
from yardplan.plants.crop import Crop
from yardplan.plants.cultivar import MEMORY, Cultivar, SelfFruit
from yardplan.units import System, format_coarse
from yardplan.window.panels.catalogue_filter import self_words, zone_words
from yardplan.window.panels.garden_facts import ornament, resistance

#: A part of a note that speaks of the table, not of the plant.
_ABOUT_TABLE = re.compile(r"\b[a-z]+_[a-z_]+\b|changed here|was \d")


@frozen
class CardFact:
    """One line of the card. `memory` True where no look-up has confirmed the value."""

    name: str
    value: str
    source: str = ""
    memory: bool = False


def readable_note(note: str) -> str:
    """The parts of a note that speak of the plant."""
    parts = [part.strip() for part in note.split(";")]
    return "; ".join(part for part in parts if part and not _ABOUT_TABLE.search(part))


def span_words(span: tuple[float, float] | None, unit: str) -> str:
    """`800 to 1000 h`."""
    if span is None:
        return ""
    low, high = (f"{value:g}" for value in span)
    return f"{low} {unit}" if low == high else f"{low} to {high} {unit}"


def _length_span(span: tuple[float, float] | None, units: System) -> str:
    if span is None:
        return ""
    low, high = (format_coarse(value, units) for value in span)
    return low if low == high else f"{low} to {high}"


def _bloom(cultivar: Cultivar) -> str:
    if cultivar.bloom_order is None:
        return cultivar.bloom_season
    days = cultivar.bloom_order
    when = (
        "on the day of"
        if days == 0
        else f"{abs(days):g} day{'' if abs(days) == 1 else 's'} {'before' if days < 0 else 'after'}"
    )
    return f"{cultivar.bloom_season}; {when} its kind's reference variety".lstrip("; ")


_PLOIDY = {
    2: "two sets of chromosomes (diploid)",
    3: "three sets (triploid): its pollen is poor",
    4: "four sets (tetraploid)",
    6: "six sets (hexaploid)",
}


def _pollen(cultivar: Cultivar) -> str:
    return {True: "good", False: "of no use to others", None: ""}[cultivar.pollen_good]


def _partner(cultivar: Cultivar) -> str:
    if cultivar.self_fruitful is SelfFruit.UNKNOWN and not cultivar.sex:
        return "not known"
    return self_words(cultivar)


#: Name on the card, the column its source is looked up by, and the value in words.
def _lines(cultivar: Cultivar, units: System) -> list[tuple[str, str, str]]:
    ploidy = cultivar.ploidy
    return [
        ("Partner", "self_fruitful", _partner(cultivar)),
        ("Gain from crossing", "cross_benefit", cultivar.cross_benefit),
        ("Winter", "zone_min", zone_words(cultivar)),
        ("Bloom", "bloom_season", _bloom(cultivar)),
        ("Ripens", "harvest_season", cultivar.harvest_season),
        ("Winter chill", "chill_hours", span_words(cultivar.chill_hours, "h at or under 7 °C")),
        ("Height", "height", _length_span(cultivar.height, units)),
        ("Spread", "spread", _length_span(cultivar.spread, units)),
        ("In a pot", "container", cultivar.container),
        ("Thornless", "thornless", "" if cultivar.thornless == "n/a" else cultivar.thornless),
        ("Pollen", "pollen_good", _pollen(cultivar)),
        ("Chromosomes", "ploidy", "" if ploidy is None else _PLOIDY.get(ploidy, f"{ploidy} sets")),
        ("Pollen alleles", "s_alleles", " ".join(cultivar.s_alleles)),
        ("Incompatible group", "incompatibility_group", cultivar.incompatibility_group),
        ("Pollination group", "pollination_group", cultivar.pollination_group),
        ("Sport of", "species", cultivar.sport_of or ""),
        ("Species", "species", cultivar.species),
        ("Type", "type", cultivar.type),
        ("Note", "note", readable_note(cultivar.note)),
    ]


def card_facts(cultivar: Cultivar, crop: Crop | None, units: System) -> list[CardFact]:
    """The card's lines; facts that are not known are left out, except whether it needs a partner."""
    facts = [
        CardFact(name, value, _source(cultivar, column), cultivar.from_memory(column))
        for name, column, value in _lines(cultivar, units)
        if value
    ]
    if cultivar.own:
        facts.insert(0, CardFact("From", "your own records in this yard's file"))
    facts += _crop_facts(crop) if crop else []
    return facts + [CardFact(*told) for told in (*resistance(cultivar), *ornament(cultivar))]


def _source(cultivar: Cultivar, column: str) -> str:
    if cultivar.own:
        return "typed in by you"
    return "; ".join(cited(source) for source in cultivar.sources_of(column) if source != MEMORY) or (
        cited(MEMORY) if cultivar.from_memory(column) else ""
    )


def _crop_facts(crop: Crop) -> list[CardFact]:
    """What holds for the whole kind."""
    source = "; ".join(cited(cite.source) for cite in crop.cited)
    facts = [CardFact("Sun", f"needs {crop.sun_needed:g} h a day, likes {crop.sun_good:g}", source)]
    if crop.ph is not None:
        facts.append(CardFact("Soil pH", f"{crop.ph[0]:.1f} to {crop.ph[1]:.1f}", source))
    facts.append(CardFact("Usual form", crop.usual_form, source))
    return facts
