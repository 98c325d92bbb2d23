"""Which cultivars of the catalogue would set fruit on a plant, or on all that lack a partner.

Candidates stand this winter and get their chill here. They are ranked by how surely they set fruit, by
being set in turn, and by days in bloom together.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping

from attrs import frozen

from yardplan.checks.pollination import net_for
from yardplan.checks.survey import Survey
from yardplan.checks.zones import hardy_to, site_zone, warm_to
from yardplan.language import later, tr
from yardplan.plants.chill import SiteChill, site_chill
from yardplan.plants.cultivar import Cultivar
from yardplan.plants.limits import Limits
from yardplan.plants.pollen import Verdict, needs_partner
from yardplan.plants.pollen_net import LEVEL, NO, NOT_PROVED, YES, PollenNet, related
from yardplan.plants.pollen_range import pollen_range
from yardplan.plants.pollen_reason import sex_of
from yardplan.plants.pollen_tables import Answer
from yardplan.yard.ground import Point
from yardplan.yard.planting import PlantKey

#: Suggestions of another crop that are listed beside those of the plant's own.
_OTHER_CROPS = 3

#: Whether a plant finds room in the yard at all: given by the caller, who knows the clear ground.
Fits = Callable[[PlantKey], bool]


@frozen(kw_only=True)
class Suggestion:
    """A cultivar that would set fruit on a plant.

    `verdict` what its pollen does there; `back` what the yard's plants do for it (`yes` also where it crops
    alone); `set_by` the id of the plant that does; `overlap` days in bloom together; `near` metres within
    which to plant it; `reasons` in words.
    """

    key: PlantKey
    verdict: Answer
    back: Answer
    alone: bool
    set_by: str | None
    overlap: float | None
    share: float | None
    near: float
    reasons: tuple[str, ...]


@frozen(kw_only=True)
class Grounds:
    """What the site asks of a candidate: half zone and chill; None where not known."""

    zone: str | None
    chill: SiteChill | None
    limits: Limits

    def suits(self, cultivar: Cultivar) -> bool:
        """True when nothing known speaks against growing a cultivar here."""
        return self._hardy(cultivar) and self._chilled(cultivar)

    def _hardy(self, cultivar: Cultivar) -> bool:
        here = site_zone(self.zone)
        cold, warm = hardy_to(cultivar.zone_min), warm_to(cultivar.zone_max)
        if here is None:
            return True
        return (cold is None or cold <= here) and (warm is None or here <= warm)

    def _chilled(self, cultivar: Cultivar) -> bool:
        if self.chill is None or cultivar.chill_hours is None:
            return True
        if self.chill.coldest <= self.limits.value("chill-warm-winter"):
            return True
        given = self.chill.hours + self.limits.value("chill-estimate-error")
        return given >= cultivar.chill_hours[0] * self.limits.value("chill-short-share")


def grounds_of(survey: Survey) -> Grounds:
    """What a survey's site asks of a candidate."""
    site = survey.yard.site
    return Grounds(zone=site.zone, chill=site_chill(site), limits=Limits(dict(survey.rules.local)))


def candidates(survey: Survey, receivers: Iterable[Cultivar], fits: Fits | None = None) -> list[Cultivar]:
    """Cultivars of the receivers' families that stand and get their chill here; one of each clone."""
    grounds, wanted = grounds_of(survey), list(receivers)
    crops = {
        crop for crop in {key.crop for key in survey.catalogue.cultivars}
        if any(_crosses(survey, crop, receiver) for receiver in wanted)
    }
    return [
        cultivar for cultivar in survey.catalogue.cultivars.values()
        if cultivar.crop in crops and cultivar.sport_of is None and grounds.suits(cultivar)
        and (fits is None or fits(cultivar.key))
    ]


def _crosses(survey: Survey, crop: str, receiver: Cultivar) -> bool:
    return any(related(one, receiver) for one in survey.catalogue.of_crop(crop)[:1])


def partners_for(
    survey: Survey, plant_id: str, *, limit: int = 10, fits: Fits | None = None
) -> list[Suggestion]:
    """Ranked cultivars that would set fruit on one plant, row or bed; with `fits` only those that have room.

    Empty when it takes no pollen or none would do. Raises KeyError when the yard has no such thing.
    """
    if survey.yard.find(plant_id) is None:
        raise KeyError(plant_id)
    net = net_for(survey)
    if plant_id not in net.number or not net.nodes[net.number[plant_id]].takes:
        return []
    number = net.number[plant_id]
    receiver = net.nodes[number].cultivar
    found = [
        suggestion for candidate in candidates(survey, [receiver])
        if (suggestion := suggestion_for(net, candidate, number)) is not None
    ]
    ranked = sorted(found, key=_rank)
    # Room is asked for last and of the crops that matter: it takes longer than all else.
    fit = [one for one in ranked if fits is None or fits(one.key)]
    return _mixed(fit, receiver.crop)[:limit]


def _mixed(ranked: list[Suggestion], crop: str) -> list[Suggestion]:
    """The ranked list with no more than a few of other crops, so that crabapples do not hide the apples."""
    kept, others = [], 0
    for suggestion in ranked:
        others += suggestion.key.crop != crop
        if suggestion.key.crop == crop or others <= _OTHER_CROPS:
            kept.append(suggestion)
    return kept


def _rank(suggestion: Suggestion) -> tuple[float, ...]:
    years = suggestion.overlap if suggestion.overlap is not None else 0.0
    share = suggestion.share if suggestion.share is not None else 0.5
    return (-LEVEL[suggestion.verdict], -LEVEL[suggestion.back], -round(years / 2), -share, -years)


def suggestion_for(net: PollenNet, candidate: Cultivar, number: int) -> Suggestion | None:
    """What a candidate planted beside one thing would do for it; None when it does nothing."""
    node = net.nodes[number]
    verdict = net.judgements.verdict(candidate, node.cultivar)
    if verdict.verdict == "no" or not related(candidate, node.cultivar):
        return None
    back, by = set_in_turn(net, candidate, number)
    alone = not needs_partner(candidate)
    return Suggestion(
        key=candidate.key, verdict=verdict.verdict, back=back, alone=alone, set_by=by,
        overlap=None if verdict.overlap is None else verdict.overlap.shared, share=verdict.share,
        near=pollen_range(node.cultivar.crop, node.size, net.place.limits).best,
        reasons=_reasons(net, candidate, verdict, back, by),
    )


def set_in_turn(net: PollenNet, candidate: Cultivar, number: int) -> tuple[Answer, str | None]:
    """What the yard's plants do for a candidate planted beside one of them, and the id of the best."""
    if not needs_partner(candidate):
        return "yes", None
    receiver, apart = net.nodes[number], net.apart(number)
    best: tuple[int, str | None] = (NO, None)
    for other, node in enumerate(net.nodes):
        if not related(node.cultivar, candidate):
            continue
        reach = pollen_range(candidate.crop, node.size, net.place.limits).best
        if other != number and apart[other] > reach:
            continue
        level = LEVEL[net.judgements.verdict(node.cultivar, candidate).verdict]
        level = min(level, NOT_PROVED) if node.possible else level
        if level > best[0] or (level == best[0] and node.id == receiver.id and level > NO):
            best = (level, node.id)
    answers: Mapping[int, Answer] = {level: answer for answer, level in LEVEL.items()}
    return answers[best[0]], best[1]


_ALONE: Mapping[str, str] = {
    "male": later("{name} is male and bears no fruit itself"),
    "pair": later("{name} is sold as a male and a female"),
    "female": later("{name} crops alone"), "": later("{name} crops alone"),
}
_SET: Mapping[str, str] = {
    "yes": later("{name} is set by {giver}"), "partly": later("{name} is partly set by {giver}"),
    "not proved": later("{name} is probably set by {giver}"),
}


def _reasons(
    net: PollenNet, candidate: Cultivar, verdict: Verdict, back: Answer, by: str | None
) -> tuple[str, ...]:
    words = [reason.words for reason in verdict.reasons if reason.step in {"genetics", "bloom"}]
    if not needs_partner(candidate):
        words.append(tr(_ALONE[sex_of(candidate)], name=candidate.name))
    elif by is not None:
        giver = net.nodes[net.number[by]].cultivar.name
        words.append(tr(_SET[back], name=candidate.name, giver=giver))
    else:
        words.append(tr("nothing here sets {name}: it would need a partner of its own", name=candidate.name))
    return tuple(words)


@frozen(kw_only=True)
class Addition:
    """One plant to add near `anchor` (a thing's id), about at `place`: it serves the things in `serves`.

    Where it is added for the sake of another addition, `serves` holds that one's plant key.
    """

    suggestion: Suggestion
    anchor: str
    place: Point
    serves: tuple[str, ...]


@frozen(kw_only=True)
class Plan:
    """The fewest plants to add so that every plant crops; `left` the ids that no cultivar here can serve."""

    additions: tuple[Addition, ...]
    wanted: tuple[str, ...]
    left: tuple[str, ...]


def lacking(net: PollenNet) -> list[int]:
    """Numbers of the things that no giver surely sets though they need one."""
    _, levels = net.best_donors()
    return [
        number for number, node in enumerate(net.nodes)
        if node.takes and needs_partner(node.cultivar) and levels[number] < YES
    ]

