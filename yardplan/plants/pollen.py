"""Who can set fruit on whom: the six-step test with the reason of each step.

`yes`: sets fruit. `partly`: light or unsure. `no`: does not. `not proved`: probably, but a fact is missing.
"""

from __future__ import annotations

from attrs import evolve, frozen

from yardplan.plants.bloom import Overlap
from yardplan.plants.cultivar import Cultivar, SelfFruit
from yardplan.plants.pollen_genetics import genetics_step
from yardplan.plants.pollen_range import SizeClass, distance_step
from yardplan.plants.pollen_reason import PollenPlace, Reason, kind_of, sex_of
from yardplan.plants.pollen_steps import bloom_step, clone_step, family_step, pollen_step
from yardplan.plants.pollen_tables import Answer, Gain, crossing_gain

#: Where nothing is known of the place.
ANYWHERE = PollenPlace()


@frozen(kw_only=True)
class Verdict:
    """Whether a donor's pollen sets fruit on a receiver.

    `share` of the pollen that the receiver accepts, None when not known; `alone` how the receiver fares with
    its own pollen; `needed` False when it needs no partner; `reasons` step by step, up to the failing one.
    """

    verdict: Answer
    share: float | None
    overlap: Overlap | None
    alone: SelfFruit
    needed: bool
    reasons: tuple[Reason, ...]

    @property
    def failed(self) -> Reason | None:
        """The step that failed."""
        return next((reason for reason in self.reasons if reason.result == "failed"), None)

    @property
    def flagged(self) -> tuple[Reason, ...]:
        """Steps that passed weakly or could not be told, distance not asked for left out."""
        return tuple(
            reason for reason in self.reasons
            if reason.result == "weak" or (reason.result == "unknown" and reason.step != "distance")
        )

    @property
    def half(self) -> bool:
        """True when only part of the pollen is accepted (semi-compatible): worth a remark."""
        return self.share is not None and 0 < self.share < 1


def needs_partner(receiver: Cultivar) -> bool:
    """False for plants that crop without any other plant's pollen, and for those that bear no fruit."""
    kind = kind_of(receiver)
    if kind is None or not kind.needs_pollen or sex_of(receiver) in {"male", "pair"}:
        return False
    return receiver.self_fruitful not in {SelfFruit.YES, SelfFruit.NOT_APPLICABLE}


def better_crossed(receiver: Cultivar) -> Gain | None:
    """What a partner would add for a kind that sets fruit alone; None when nothing is published."""
    kind = kind_of(receiver)
    if kind is None or not kind.needs_pollen or receiver.self_fruitful is SelfFruit.NO:
        return None
    if receiver.cross_benefit == "none" or sex_of(receiver) in {"male", "pair"}:
        return None
    return crossing_gain(receiver.key)


def _answer(reasons: tuple[Reason, ...]) -> Answer:
    told = [reason.result for reason in reasons if reason.step != "distance" or reason.result != "unknown"]
    if "failed" in told:
        return "no"
    if "weak" in told:
        return "partly"
    return "not proved" if "unknown" in told else "yes"


def sets_fruit(
    donor: Cultivar, receiver: Cultivar, *, place: PollenPlace = ANYWHERE, distance: float | None = None,
    size: SizeClass = "semi-dwarf",
) -> Verdict:
    """Whether pollen of `donor` sets fruit on `receiver`.

    `distance` metres trunk to trunk (None: not asked); `size` the smaller tree's size class.
    Source: the step order of the tree-fruit pollination reference; each reason names its own source.
    """
    bare = genetic_verdict(donor, receiver, place)
    if bare.verdict == "no":
        return bare
    reasons = (*bare.reasons, distance_step(receiver.crop, size, distance, place))
    return evolve(bare, verdict=_answer(reasons), reasons=reasons)


def genetic_verdict(donor: Cultivar, receiver: Cultivar, place: PollenPlace = ANYWHERE) -> Verdict:
    """The first five steps, which do not depend on where the two stand."""
    reasons: list[Reason] = []
    share: float | None = None
    overlap: Overlap | None = None
    for step in (family_step, clone_step, pollen_step):
        reasons.append(step(donor, receiver))
        if reasons[-1].result == "failed":
            break
    else:
        reason, share = genetics_step(donor, receiver)
        reasons.append(reason)
        if reason.result != "failed":
            reason, overlap = bloom_step(donor, receiver, place)
            reasons.append(reason)
    return Verdict(
        verdict=_answer(tuple(reasons)), share=share, overlap=overlap, alone=receiver.self_fruitful,
        needed=needs_partner(receiver), reasons=tuple(reasons),
    )
