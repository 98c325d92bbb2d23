"""What crop to expect of each plant, in plain words: verdict, best giver, distance, days, share of pollen."""

from __future__ import annotations

import re
from collections.abc import Mapping

from attrs import evolve, frozen

from yardplan.language import later, tr, tr_n
from yardplan.plants.bloom import OFTEN_WORDS, Overlap
from yardplan.plants.cultivar import SelfFruit
from yardplan.plants.pollen import better_crossed
from yardplan.plants.pollen_net import PollenNet
from yardplan.plants.pollen_outlook import Expected, Outlook, Outlooks, named, others_in_words
from yardplan.plants.pollen_reason import sex_of

#: The verdicts in plain words.
EXPECTED_WORDS: Mapping[Expected, str] = {
    "well": later("will set well"), "light": later("light set"),
    "not proved": later("should set, not proved"),
    "alone": later("sets by itself"), "light alone": later("light set by itself"),
    "none": later("will not set"),
}
_HALF = 0.5


@frozen(kw_only=True)
class FruitSet:
    """The crop to expect of one plant, row or bed.

    `expected` None for plants that only give pollen; `distance` metres to the best giver; `share` of its
    pollen that is taken, None where not known; `gain` what crossing adds to a kind that also sets alone.
    """

    thing: str
    name: str
    expected: Expected | None
    alone: SelfFruit
    donor: str | None = None
    distance: float | None = None
    overlap: Overlap | None = None
    share: float | None = None
    gain: str = ""
    why: str = ""

    @property
    def words(self) -> str:
        """The verdict in plain words."""
        if self.expected is None:
            return tr("bears no fruit, gives pollen")
        return tr(EXPECTED_WORDS[self.expected])

    @property
    def days(self) -> str:
        """Days in bloom together and how often; empty where nothing is known of them or no partner serves."""
        if self.overlap is None:
            return ""
        count = round(self.overlap.shared)
        return tr_n("{n} day, {often}", "{n} days, {often}", count, often=tr(OFTEN_WORDS[self.overlap.often]))

    @property
    def taken(self) -> str:
        """How much of the giver's pollen is taken; empty where no partner serves."""
        if self.donor is None:
            return ""
        return share_words(self.share)


def share_words(share: float | None) -> str:
    """A share of pollen in words: `all`, `half`, `25 %`, `not known`."""
    if share is None:
        return tr("not known")
    if share >= 1:
        return tr("all")
    return tr("half") if share == _HALF else f"{share:.0%}".replace("%", " %")


def fruit_sets(found: Outlooks) -> list[FruitSet]:
    """The crop to expect of everything planted that flowers for fruit, in the order of ids: A2 before A10."""
    net = found.net
    sets = [
        _fruit_set(net, number, outlook) for number, outlook in enumerate(found.of)
        if net.nodes[number].takes
    ]
    return sorted(sets, key=lambda one: _ordered(one.thing))


def _ordered(thing: str) -> tuple[tuple[int, int, str], ...]:
    """Letters by letter and numbers by size."""
    parts = re.findall(r"\d+|\D+", thing)
    return tuple((0, int(part), "") if part.isdecimal() else (1, 0, part) for part in parts)


def fruit_set(found: Outlooks, thing: str) -> FruitSet | None:
    """The crop to expect of one plant, row or bed; None when it takes no part in pollination."""
    number = found.net.number.get(thing)
    if number is None or not found.net.nodes[number].takes:
        return None
    return _fruit_set(found.net, number, found.of[number])


def _fruit_set(net: PollenNet, number: int, outlook: Outlook | None) -> FruitSet:
    node = net.nodes[number]
    cultivar = node.cultivar
    gain = better_crossed(cultivar)
    bare = FruitSet(
        thing=node.id, name=cultivar.name, alone=cultivar.self_fruitful,
        expected=None if sex_of(cultivar) == "male" else "alone",
        gain="" if gain is None else tr(gain.words),
    )
    return bare if outlook is None else _with_outlook(net, bare, outlook)


def _with_outlook(net: PollenNet, bare: FruitSet, outlook: Outlook) -> FruitSet:
    others = others_in_words(net, outlook)
    donor = outlook.donor
    if donor is None:
        return evolve(bare, expected=outlook.expected, why=others)
    verdict = net.verdict(donor, outlook.receiver)
    flagged = "; ".join(reason.words for reason in verdict.flagged)
    return evolve(
        bare, expected=outlook.expected, donor=named(net, donor),
        distance=net.distance(donor, outlook.receiver), overlap=verdict.overlap, share=verdict.share,
        why=". ".join(words for words in (flagged, others) if words),
    )
