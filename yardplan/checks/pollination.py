"""Pollination: is every plant set by pollen that is there, near enough and in bloom with it?

A plant that sets nothing alone and has no giver is a conflict; a weak, far or unproved giver a caution;
a kind that crops alone but better crossed an advice.
"""

from __future__ import annotations

import threading

from attrs import frozen

from yardplan.checks.check import Check, Wording
from yardplan.checks.finding import Figure, Finding, Mark, Weight
from yardplan.checks.pollen_layout import ratios, rows_beyond
from yardplan.checks.survey import Survey
from yardplan.language import any_of, later, tr
from yardplan.plants.crop_names import crop_name
from yardplan.plants.cultivar import Cultivar, SelfFruit
from yardplan.plants.pollen import Verdict, better_crossed, needs_partner
from yardplan.plants.pollen_examples import examples_for
from yardplan.plants.pollen_net import NO, NOT_PROVED, YES, PollenNet, net_of
from yardplan.plants.pollen_outlook import Outlook, Outlooks, named, others_in_words, outlooks, why_not
from yardplan.plants.pollen_place import place_for
from yardplan.plants.pollen_range import pollen_range
from yardplan.plants.pollen_reason import kind_of

NAME = "pollination"
_TRIPLOID = 3
#: Kinds of findings on plants that may bear something alone.
_SOME_ALONE = {SelfFruit.PARTLY: "light_alone", SelfFruit.UNKNOWN: "unknown_alone"}

Figures = dict[str, Figure]


@frozen(eq=False)
class _Kept:
    """The last run: outlooks and the finding made of each."""

    outlooks: Outlooks
    findings: tuple[Finding | None, ...]


_last = threading.local()


def net_for(survey: Survey) -> PollenNet:
    """The pollen net of a survey: who sets fruit on whom, and where."""
    place = place_for(survey.yard.site, survey.rules.local, survey.catalogue.cultivars)
    return net_of(survey.stand, place, survey.catalogue.cultivars)


def outlooks_for(survey: Survey) -> Outlooks:
    """What crop to expect of each plant, row and bed of a survey."""
    return _kept_for(net_for(survey)).outlooks


def run(survey: Survey) -> list[Finding]:
    """Findings on pollination."""
    kept = _kept_for(net_for(survey))
    single = (finding for finding in kept.findings if finding is not None)
    return [*single, *ratios(kept.outlooks), *rows_beyond(kept.outlooks)]


def _kept_for(net: PollenNet) -> _Kept:
    """Outlooks and findings of a net; of the last run whatever a move left as it was is taken over."""
    before: _Kept | None = getattr(_last, "kept", None)
    if before is not None and before.outlooks.net is net:
        return before
    now = outlooks(net, before.outlooks if before is not None else None)
    old = before.outlooks.of if before is not None else ()
    kept_all = before is not None and len(before.findings) == len(now.of)
    made: list[Finding | None] = [None] * len(now.of)
    if before is not None and kept_all:
        made = list(before.findings)
    for number in now.renewed:
        outlook = now.of[number]
        if before is not None and number < len(old) and outlook is not None and outlook is old[number]:
            made[number] = before.findings[number]
        else:
            made[number] = None if outlook is None else _finding(net, outlook)
    kept = _Kept(now, tuple(made))
    _last.kept = kept
    return kept


def _finding(net: PollenNet, outlook: Outlook) -> Finding | None:
    """The finding of one taker, None where all is well."""
    if not outlook.needed:
        return None if outlook.level == YES else _better(net, outlook)
    if outlook.donor is None:
        return _unset(net, outlook)
    if outlook.level == YES:
        return _half(net, outlook, outlook.donor)
    return _weak(net, outlook, outlook.donor)


def _figures(net: PollenNet, outlook: Outlook) -> Figures:
    node = net.nodes[outlook.receiver]
    reach = pollen_range(node.cultivar.crop, node.size, net.place.limits)
    figures: Figures = {
        "variety": Figure(node.cultivar.name, "text"), "crop": Figure(crop_name(node.cultivar.crop), "text"),
        "best": Figure(reach.best, "length"), "outer": Figure(reach.outer, "length"),
    }
    if outlook.needed and outlook.level < YES:
        examples = examples_for(node.cultivar, net.cultivars, net.judgements)
        if examples:
            figures["examples"] = Figure(any_of(examples), "text")
    if outlook.others:
        figures["others"] = Figure(others_in_words(net, outlook), "text")
    return figures


def _made(
    net: PollenNet, outlook: Outlook, kind: str, weight: Weight, figures: Figures, source: str
) -> Finding:
    node = net.nodes[outlook.receiver]
    points = node.points[:1]
    shape: Mark = Mark(points)
    if outlook.donor is not None:
        shape = Mark((net.nodes[outlook.donor].points[0], *points), "line")
    return Finding(check=NAME, kind=kind, weight=weight, things=(node.id,), figures=figures, marks=(shape,),
                   source=source)


def must_be_set(cultivar: Cultivar) -> bool:
    """True for a kind without any crop where no plant gives it pollen: there it is a conflict."""
    return needs_partner(cultivar) and cultivar.self_fruitful not in _SOME_ALONE


def _unset(net: PollenNet, outlook: Outlook) -> Finding:
    """Nothing sets this plant."""
    node, figures = net.nodes[outlook.receiver], _figures(net, outlook)
    kind = kind_of(node.cultivar)
    source = kind.source if kind is not None else "memory"
    failed = net.verdict(outlook.others[0], outlook.receiver).failed if outlook.others else None
    source = failed.source if failed is not None else source
    if outlook.alone in _SOME_ALONE:
        return _made(net, outlook, _SOME_ALONE[outlook.alone], Weight.CAUTION, figures, source)
    triploid = outlook.others and all(net.nodes[o].cultivar.ploidy == _TRIPLOID for o in outlook.others)
    return _made(net, outlook, "triploids_only" if triploid else "unset", Weight.CONFLICT, figures, source)


def _donor_figures(net: PollenNet, outlook: Outlook, donor: int) -> Figures:
    verdict, figures = net.verdict(donor, outlook.receiver), _figures(net, outlook)
    figures |= {
        "donor": Figure(named(net, donor), "text"),
        "distance": Figure(net.distance(donor, outlook.receiver), "length"),
    }
    if verdict.overlap is not None:
        figures["overlap"] = Figure(round(verdict.overlap.shared, 1), "days")
        figures["often"] = Figure(verdict.overlap.often, "text")
    if verdict.share is not None:
        figures["share"] = Figure(verdict.share, "share")
    return figures


def _weak(net: PollenNet, outlook: Outlook, donor: int) -> Finding:
    """The best giver is far, weak, unproved or next door and not known."""
    verdict, figures = net.verdict(donor, outlook.receiver), _donor_figures(net, outlook, donor)
    node = net.nodes[donor]
    distance = net.distance(donor, outlook.receiver)
    best, _ = net.reach(donor, outlook.receiver)
    flagged = verdict.flagged
    why = [reason.words for reason in flagged] or [node.words]
    if distance > best:
        why.append(why_not(net, donor, outlook.receiver))
    figures["why"] = Figure("; ".join(map(tr, why)), "text")
    source = flagged[0].source if flagged else "memory"
    if node.possible:
        figures["why"] = Figure(node.words, "text")
        return _made(net, outlook, "possible", Weight.CAUTION, figures, source)
    if verdict.verdict == "yes" and distance > best:
        # The pair's range: that of the smaller tree, not of the kind on its own.
        figures["best"] = Figure(best, "length")
        reach = pollen_range(net.nodes[outlook.receiver].cultivar.crop, node.size, net.place.limits)
        return _made(net, outlook, "far", Weight.CAUTION, figures, reach.source)
    kind = "not_proved" if outlook.level == NOT_PROVED else "weak"
    return _made(net, outlook, kind, Weight.CAUTION, figures, source)


def _half(net: PollenNet, outlook: Outlook, donor: int) -> Finding | None:
    """Every sure giver has half its pollen refused: enough in most years, so no more than an advice."""
    if not net.verdict(donor, outlook.receiver).half:
        return None
    sure = [one for one in net.donors_of(outlook.receiver) if net.level(one, outlook.receiver) == YES]
    if not all(net.verdict(one, outlook.receiver).half for one in sure):
        return None
    figures = _donor_figures(net, outlook, donor)
    return _made(net, outlook, "half", Weight.ADVICE, figures, "niab-pollen-compatibility")


def _better(net: PollenNet, outlook: Outlook) -> Finding | None:
    """A kind that crops alone, better crossed, with no giver that surely helps."""
    gain = better_crossed(net.nodes[outlook.receiver].cultivar)
    if gain is None or outlook.level != NO:
        return None
    figures = _figures(net, outlook) | {"gain": Figure(gain.words, "text")}
    return _made(net, outlook, "better_crossed", Weight.ADVICE, figures, gain.source)


def verdict_between(survey: Survey, donor: str, receiver: str) -> Verdict | None:
    """The verdict on two things of a yard without the distance step; None when one takes no part."""
    net = net_for(survey)
    if donor not in net.number or receiver not in net.number:
        return None
    return net.verdict(net.number[donor], net.number[receiver])


_ADD = later("Add another {crop} that suits it within {best}[, for example {examples}].")

CHECK = Check(
    name=NAME,
    title=later("Pollination"),
    run=run,
    keeps=True,
    wording={
        "unset": Wording(
            title="Nothing sets {variety}",
            message="{a} sets no fruit alone and no plant here sets it[. {others}].",
            clears=_ADD,
        ),
        "triploids_only": Wording(
            title="Only triploids near {variety}",
            message="{a} needs pollen, and the kin it has are triploid and give none[. {others}].",
            clears="Plant two other varieties that also suit each other within {best}: each then sets all.",
        ),
        "light_alone": Wording(
            title="Light crop alone: {variety}",
            message="{a} sets only a light crop alone and no plant here helps it[. {others}].",
            clears=_ADD,
        ),
        "unknown_alone": Wording(
            title="Pollination not known: {variety}",
            message="Nobody knows if {a} sets fruit alone, and no plant here surely sets it[. {others}].",
            clears="Enter whether it is self-fruitful, or add another {crop} within {best}.",
        ),
        "far": Wording(
            title="Partner far off: {variety}",
            message="{donor} suits {a} but stands {distance} away: beyond {best} set falls off"
                    "[ ({overlap} in bloom together, {often})].",
            clears="Bring them within {best} of each other, trunk to trunk.",
        ),
        "weak": Wording(
            title="Weak partner: {variety}",
            message="The best partner of {a} is {donor}, {distance} away, and it is weak: {why}[. {others}].",
            clears=_ADD,
        ),
        "half": Wording(
            title="Half the pollen: {variety}",
            message="{a} takes only about {share} of the pollen of {donor}, {distance} away"
                    "[ ({overlap} in bloom together, {often})]: enough in most years, thin in poor ones.",
            clears="A partner that shares no allele with it would make the crop surer.",
        ),
        "not_proved": Wording(
            title="Partner not proved: {variety}",
            message="{donor}, {distance} away, probably sets {a}"
                    "[ ({overlap} in bloom together, {often})], but: {why}.",
            clears="Most unlike varieties suit each other: rely on it, or add a proved one"
                   "[, as {examples}].",
        ),
        "possible": Wording(
            title="Only an unknown partner: {variety}",
            message="Only {donor}, {distance} away, may help {a}: {why}; its bloom is not known.",
            clears="Find out its variety and its bloom, or add a partner of your own within {best}.",
        ),
        "better_crossed": Wording(
            title="Better with a partner: {variety}",
            message="{a} crops alone; {gain}.",
            clears="Add another {crop} in bloom with it within {best}.",
        ),
        "few_donors": Wording(
            title="Few partners: {group}",
            message="{takers} plants of {group} depend on {givers}: {rule}.",
            clears="Plant more of the giving kind, one for every {ratio}: {layout}.",
        ),
        "row_beyond": Wording(
            title="Row reaches too far: {variety}",
            message="{near} of the {count} plants of {a} stand within {best} of {donor}; farther along the "
                    "row set falls off.",
            clears="Plant the giving kind into the row itself, so that none is farther than {best} from one: "
                   "bees work along rows.",
        ),
    },
)
