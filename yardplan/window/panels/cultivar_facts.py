"""Every fact of a variety in words, with where it comes from."""

from __future__ import annotations

import re

from attrs import frozen

from yardplan.checks.wording import cited
from yardplan.language import decimals, later, tr
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


def said_note(cultivar: Cultivar) -> str:
    """What there is to note of a plant; of a sport, whose facts are shown."""
    if cultivar.sport_of and not cultivar.own:
        return tr("a sport of {parent}, whose facts are shown", parent=cultivar.sport_of)
    return readable_note(cultivar.note)


def readable_note(note: str) -> str:
    """The parts of a note that speak of the plant."""
    parts = [part.strip() for part in note.split(";")]
    return "; ".join(part for part in parts if part and not _ABOUT_TABLE.search(part))


def span_words(span: tuple[float, float] | None, unit: str) -> str:
    """`800 to 1000 h`."""
    if span is None:
        return ""
    low, high = (decimals(f"{value:g}") for value in span)
    return f"{low} {unit}" if low == high else tr("{low} to {high} {unit}", low=low, high=high, unit=unit)


def _length_span(span: tuple[float, float] | None, units: System) -> str:
    if span is None:
        return ""
    low, high = (format_coarse(value, units) for value in span)
    return low if low == high else tr("{low} to {high}", low=low, high=high)


def _bloom(cultivar: Cultivar) -> str:
    if cultivar.bloom_order is None:
        return tr(cultivar.bloom_season)
    days = cultivar.bloom_order
    number = decimals(f"{abs(days):g}")
    if days == 0:
        when = tr("on the day of its kind's reference variety")
    elif abs(days) == 1:
        when = tr("1 day before its kind's reference variety") if days < 0 else (
            tr("1 day after its kind's reference variety")
        )
    else:
        when = tr("{days} days before its kind's reference variety", days=number) if days < 0 else (
            tr("{days} days after its kind's reference variety", days=number)
        )
    return f"{tr(cultivar.bloom_season)}; {when}".lstrip("; ")


_PLOIDY = {
    2: later("two sets of chromosomes (diploid)"),
    3: later("three sets (triploid): its pollen is poor"),
    4: later("four sets (tetraploid)"),
    6: later("six sets (hexaploid)"),
}


def _pollen(cultivar: Cultivar) -> str:
    return {True: tr("good"), False: tr("of no use to others"), None: ""}[cultivar.pollen_good]


def _partner(cultivar: Cultivar) -> str:
    if cultivar.self_fruitful is SelfFruit.UNKNOWN and not cultivar.sex:
        return tr("not known")
    return self_words(cultivar)


#: Name on the card, the column its source is looked up by, and the value in words.
def _lines(cultivar: Cultivar, units: System) -> list[tuple[str, str, str]]:
    ploidy = cultivar.ploidy
    return [
        (tr("Partner"), "self_fruitful", _partner(cultivar)),
        (tr("Gain from crossing"), "cross_benefit", tr(cultivar.cross_benefit)),
        (tr("Winter"), "zone_min", zone_words(cultivar)),
        (tr("Bloom"), "bloom_season", _bloom(cultivar)),
        (tr("Ripens"), "harvest_season", tr(cultivar.harvest_season)),
        (tr("Winter chill"), "chill_hours",
         span_words(cultivar.chill_hours, tr("h at or under 7 °C (45 °F)"))),
        (tr("Height"), "height", _length_span(cultivar.height, units)),
        (tr("Spread"), "spread", _length_span(cultivar.spread, units)),
        (tr("In a pot"), "container", tr(cultivar.container)),
        (tr("Thornless"), "thornless", "" if cultivar.thornless == "n/a" else tr(cultivar.thornless)),
        (tr("Pollen"), "pollen_good", _pollen(cultivar)),
        (
            tr("Chromosomes"),
            "ploidy",
            "" if ploidy is None else tr(_PLOIDY[ploidy]) if ploidy in _PLOIDY else tr("{n} sets", n=ploidy),
        ),
        (tr("Pollen alleles"), "s_alleles", " ".join(cultivar.s_alleles)),
        (tr("Incompatible group"), "incompatibility_group", tr(cultivar.incompatibility_group)),
        (tr("Pollination group"), "pollination_group", tr(cultivar.pollination_group)),
        (tr("Sport of"), "species", cultivar.sport_of or ""),
        (tr("Species"), "species", cultivar.species),
        (tr("Type"), "type", tr(cultivar.type)),
        (tr("Note"), "note", said_note(cultivar)),
    ]


def card_facts(cultivar: Cultivar, crop: Crop | None, units: System) -> list[CardFact]:
    """The card's lines; facts that are not known are left out, except whether it needs a partner."""
    facts = [
        CardFact(name, value, _source(cultivar, column), cultivar.from_memory(column))
        for name, column, value in _lines(cultivar, units)
        if value
    ]
    if cultivar.own:
        facts.insert(0, CardFact(tr("From"), tr("your own records in this yard's file")))
    facts += _crop_facts(crop) if crop else []
    return facts + [CardFact(*told) for told in (*resistance(cultivar), *ornament(cultivar))]


def _source(cultivar: Cultivar, column: str) -> str:
    if cultivar.own:
        return tr("typed in by you")
    return "; ".join(cited(source) for source in cultivar.sources_of(column) if source != MEMORY) or (
        cited(MEMORY) if cultivar.from_memory(column) else ""
    )


def _crop_facts(crop: Crop) -> list[CardFact]:
    """What holds for the whole kind."""
    source = "; ".join(cited(cite.source) for cite in crop.cited)
    facts = [CardFact(tr("Sun"), tr(
            "needs {needed} h a day, likes {liked}",
            needed=decimals(f"{crop.sun_needed:g}"), liked=decimals(f"{crop.sun_good:g}"),
        ), source)]
    if crop.ph is not None:
        facts.append(
            CardFact(
                tr("Soil pH"),
                tr("{low} to {high}", low=decimals(f"{crop.ph[0]:.1f}"), high=decimals(f"{crop.ph[1]:.1f}")),
                source,
            )
        )
    facts.append(CardFact(tr("Usual form"), tr(crop.usual_form), source))
    return facts
