"""The few facts that decide about a plant, each with its verdict: sun, partner, room, winter, soil."""

from __future__ import annotations

import math
import re
from collections.abc import Iterable

from attrs import frozen

from yardplan.checks.finding import Finding, Weight
from yardplan.checks.pollination import outlooks_for
from yardplan.checks.wording import names_of, say
from yardplan.language import decimals, later, mid_sentence, tr, tr_n
from yardplan.plants.bloom import OFTEN_WORDS
from yardplan.plants.crop import Crop
from yardplan.plants.cultivar import Cultivar
from yardplan.plants.finder import hardy_in
from yardplan.plants.fruit_set import fruit_set
from yardplan.plants.pollen import better_crossed, needs_partner
from yardplan.plants.pollen_net import YES, PollenNet
from yardplan.plants.pollen_outlook import Expected, Outlook, named
from yardplan.plants.stand import Standing, StandingRow
from yardplan.units import format_coarse
from yardplan.window.open_yard import OpenYard
from yardplan.window.panels.catalogue_filter import bloom_words, self_words, zone_words
from yardplan.window.panels.parts import SIGN_OF, Sign
from yardplan.yard.ground import StandingTree
from yardplan.yard.planting import Planting, PlantKey, Row

#: The checks whose findings speak about each fact, weightiest finding first.
CHECKS_OF: dict[str, tuple[str, ...]] = {
    later("Sun"): ("light",),
    later("Partner"): ("pollination", "bloom"),
    later("Fruit"): (),
    later("Room"): ("spacing", "clearance", "access", "beds"),
    later("Winter"): ("hardiness", "chill", "frost", "air"),
    later("Soil"): ("soil", "drainage", "rotation"),
}
#: What findings of all other checks come under; the line shows only where there is one.
OTHER = later("Also")
_SPOKEN = frozenset(name for names in CHECKS_OF.values() for name in names)
#: The variety behind a title: the card is about it anyway.
_TAIL = re.compile(r": [^:]*$")
_ORDER = {Weight.CONFLICT: 0, Weight.CAUTION: 1, Weight.ADVICE: 2}


@frozen
class Fact:
    """One fact: its name, the verdict as a sign, the value in a few words and what stands behind it."""

    name: str
    sign: Sign
    value: str
    detail: str = ""

    @property
    def spoken(self) -> str:
        """The fact in a sentence for screen readers."""
        return ", ".join(part for part in (f"{tr(self.name)}: {self.value}", self.detail) if part)


@frozen(kw_only=True)
class Subject:
    """The plant a card is about: on the plan (`id`) or only in hand (`id` None)."""

    id: str | None
    key: PlantKey
    cultivar: Cultivar | None
    crop: Crop | None


def selected_plant(open_yard: OpenYard) -> Subject | None:
    """The one plant or row selected, else None."""
    if len(open_yard.selection) == 1:
        thing = open_yard.shown_yard.find(next(iter(open_yard.selection)))
        if isinstance(thing, (Planting, Row)):
            return _subject(open_yard, thing.plant, thing.id)
    return None


def plant_in_hand(open_yard: OpenYard) -> Subject | None:
    """The plant picked from the list, else None; while it is tried on the plan, the one tried there."""
    in_hand = open_yard.in_hand
    if in_hand is None:
        return None
    tried = None
    if open_yard.on_trial:
        placed = {plant.id for plant in open_yard.yard.plantings}
        new = (plant for plant in open_yard.shown_yard.plantings if plant.id not in placed)
        tried = next((plant.id for plant in new if plant.plant == in_hand.plant), None)
    return _subject(open_yard, in_hand.plant, tried)


def _subject(open_yard: OpenYard, key: PlantKey, thing_id: str | None) -> Subject:
    known = open_yard.catalogue
    return Subject(id=thing_id, key=key, cultivar=known.cultivar(key), crop=known.crop(key.crop))


def standing_of(open_yard: OpenYard, thing_id: str) -> Standing | StandingRow | None:
    """A plant or row of the stand by id."""
    stand = open_yard.stand
    plant = next((each for each in stand.plants if each.id == thing_id), None)
    return plant or next((each for each in stand.rows if each.id == thing_id), None)


def facts_of(open_yard: OpenYard, subject: Subject) -> list[Fact]:
    """The facts in the order shown."""
    about = [f for f in open_yard.findings if subject.id is not None and subject.id in f.things]
    makers = {
        "Sun": _sun, "Partner": _partner, "Fruit": _fruit, "Room": _room, "Winter": _winter, "Soil": _soil,
    }
    facts = [_fact(open_yard, name, about, maker(open_yard, subject)) for name, maker in makers.items()]
    rest = [finding for finding in about if finding.check not in _SPOKEN]
    return [*facts, _fact(open_yard, OTHER, rest, Fact(OTHER, "good", ""))] if rest else facts


def _fact(open_yard: OpenYard, name: str, about: Iterable[Finding], good: Fact) -> Fact:
    """What the weightiest finding says of a fact, or the good news where no finding does."""
    mine = about if name == OTHER else (f for f in about if f.check in CHECKS_OF[name])
    found = sorted(mine, key=lambda f: _ORDER[f.weight])
    if not found:
        return good
    said = say(found[0], names_of(open_yard.shown_yard), open_yard.units)
    title = _TAIL.sub("", said.title)
    sign = SIGN_OF[found[0].weight]
    if name == "Partner" and "donor" in found[0].figures:
        return Fact(name, sign, good.value, f"{mid_sentence(title)}; {good.detail}")
    if len(found) > 1:
        title = tr_n("{title} (and {n} more)", "{title} (and {n} more)", len(found) - 1, title=title)
    return Fact(name, sign, title, good.detail)


def _sun(open_yard: OpenYard, subject: Subject) -> Fact:
    crop = subject.crop
    needed, liked = (crop.sun_needed, crop.sun_good) if crop else (0.0, 0.0)
    need = tr("needs {needed}, likes {liked}", needed=_figure(needed), liked=_figure(liked)) if crop else ""
    light = open_yard.light
    held = (
        None
        if light is None or subject.id is None
        else (light.plants.get(subject.id) or light.rows.get(subject.id))
    )
    if held is None:
        waiting = tr("being computed") if subject.id is not None else tr("known once it has a place")
        return Fact("Sun", "unknown", waiting, need and tr("{need} h a day", need=need))
    hours = decimals(f"{held.hours:.1f}")
    if not open_yard.checks.light_fresh and not open_yard.on_trial:
        return Fact("Sun", "unknown", tr("{hours} h a day before", hours=hours), tr("being computed"))
    sign: Sign = "good" if crop is None or held.hours >= crop.sun_needed else "caution"
    return Fact("Sun", sign, tr("{hours} h a day", hours=hours), need)


def _partner(open_yard: OpenYard, subject: Subject) -> Fact:
    cultivar = subject.cultivar
    if cultivar is None:
        return Fact("Partner", "unknown", tr("variety not known"))
    words = self_words(cultivar) or tr("no pollen needed")
    if subject.id is not None:
        outlooks = outlooks_for(open_yard.survey)
        outlook = outlooks[subject.id]
        if outlook is not None and outlook.donor is not None:
            return _with_donor(open_yard, outlooks.net, outlook, words)
    if not needs_partner(cultivar):
        return Fact("Partner", "good", words)
    blooms = bloom_words(cultivar)
    return Fact("Partner", "unknown", words, blooms)


#: The sign of each crop to expect.
_FRUIT_SIGNS: dict[Expected, Sign] = {
    "well": "good", "alone": "good", "not proved": "unknown", "light": "caution", "light alone": "caution",
    "none": "conflict",
}


def _fruit(open_yard: OpenYard, subject: Subject) -> Fact:
    """The crop to expect where it stands, and the share of pollen taken or what crossing adds."""
    if subject.id is None:
        gain = None if subject.cultivar is None else better_crossed(subject.cultivar)
        return Fact("Fruit", "unknown", tr("known once it has a place"), "" if gain is None else gain.words)
    found = fruit_set(outlooks_for(open_yard.survey), subject.id)
    if found is None:
        return Fact("Fruit", "unknown", tr("pollination not known"))
    detail = found.gain if found.expected in {"alone", "light alone"} else ""
    if found.donor is not None and not detail:
        taken = found.taken
        detail = tr("takes {share} of its pollen", share=taken) if found.share is not None else (
            tr("share taken {share}", share=taken)
        )
    return Fact("Fruit", "good" if found.expected is None else _FRUIT_SIGNS[found.expected], found.words,
                detail)


def _with_donor(open_yard: OpenYard, net: PollenNet, outlook: Outlook, words: str) -> Fact:
    """The best partner with its distance and the days both bloom."""
    donor = outlook.donor
    assert donor is not None
    distance = format_coarse(net.distance(donor, outlook.receiver), open_yard.units)
    verdict = net.verdict(donor, outlook.receiver)
    good = outlook.level == YES or not outlook.needed
    together = ""
    if verdict.overlap is not None:
        together = tr_n(
            "{n} day together, {often}", "{n} days together, {often}", round(verdict.overlap.shared),
            often=tr(OFTEN_WORDS[verdict.overlap.often]),
        )
    return Fact(
        "Partner", "good" if good else "caution", f"{named(net, donor)}, {distance}", together or words
    )


def _room(open_yard: OpenYard, subject: Subject) -> Fact:
    if subject.id is None:
        return Fact("Room", "unknown", tr("known once it has a place"))
    nearest = nearest_plant(open_yard, subject.id)
    return Fact("Room", "good", tr("enough"), nearest)


def nearest_plant(open_yard: OpenYard, thing_id: str) -> str:
    """`nearest: Enterprise (A1), 5.5 m`, trunk to trunk; empty where nothing else stands."""
    me = standing_of(open_yard, thing_id)
    if not isinstance(me, Standing):
        return ""
    others = [each for each in open_yard.stand.plants if each.id != thing_id]
    if not others:
        return ""
    other = min(others, key=lambda each: math.dist(each.place, me.place))
    name = _short_name(other)
    distance = format_coarse(math.dist(other.place, me.place), open_yard.units)
    return tr("nearest {name}, {distance}", name=name, distance=distance)


def _short_name(plant: Standing) -> str:
    thing = plant.thing
    if isinstance(thing, StandingTree):
        return thing.name or thing.cultivar or tr(thing.kind)
    return thing.plant.cultivar


def _winter(open_yard: OpenYard, subject: Subject) -> Fact:
    zone, cultivar = open_yard.shown_yard.site.zone, subject.cultivar
    suits = zone_words(cultivar) if cultivar else ""
    hardy = None if cultivar is None or not zone else hardy_in(cultivar, zone)
    if hardy is None:
        why = tr("yard's zone not known") if not zone else tr("its zone not known")
        return Fact("Winter", "unknown", why, suits)
    return Fact(
        "Winter",
        "good" if hardy else "caution",
        tr("hardy") if hardy else tr("outside its zones"),
        tr("{suits}, yard {zone}", suits=suits, zone=zone),
    )


def _soil(open_yard: OpenYard, subject: Subject) -> Fact:
    suited = subject.crop.ph if subject.crop else None
    suits = tr("suits {low} to {high}", low=_tenths(suited[0]), high=_tenths(suited[1])) if suited else ""
    ph = open_yard.shown_yard.site.soil.ph
    if ph is None or suited is None:
        why = tr("pH not known") if ph is None else tr("no figure for its pH")
        return Fact("Soil", "unknown", why, suits)
    inside = suited[0] <= ph <= suited[1]
    return Fact("Soil", "good" if inside else "advice", f"pH {_tenths(ph)}", suits)


def _figure(value: float) -> str:
    return decimals(f"{value:g}")


def _tenths(value: float) -> str:
    return decimals(f"{value:.1f}")
